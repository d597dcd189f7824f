using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.Price;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Reports;
using Glazewright.Papers.Sets;
using Glazewright.Papers.Sheets;

namespace Glazewright.Papers.Answers;

/// <summary>The quote as laid before the grower: what is built, by whom, for how much, paid when, and what stays open. Reads the price's quote alone: no cost, margin or rate.</summary>
public static class QuoteReport
{
    /// <summary>The report; none without a price.</summary>
    /// <param name="source">What the papers are made from.</param>
    public static Report? Of(PaperSource source)
    {
        ArgumentNullException.ThrowIfNull(source);
        QuoteResult quote = source.Price.Quote;
        if (PriceAnswer.Of(source) is not { } price)
        {
            return null;
        }

        Job job = source.Job;
        string name = job.Name.Length > 0 ? job.Name : "Unnamed job";
        string date = PaperDate.Of(job) is { } day ? day.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture) : "undated draft";
        List<Block> blocks =
        [
            new Block.Opening(name, "Quote", [.. Parties(job), $"Date: {date}. Good for {quote.ValidDays} days from the date both sides sign it; until then a draft.", .. AnswersReport.Facts(source)]),
            price.Blocks.OfType<Block.Figures>().First(),
            new Block.Heading(1, "What is built"),
            new Block.TableOf(Built(source)),
            new Block.Heading(1, "Who does what"),
            new Block.TableOf(new Table(
                [new("By", 44), new("What", 130)],
                [.. quote.Scope.GroupBy(s => s.By).OrderBy(g => g.Key).Select(g => (IReadOnlyList<string>)[PriceAnswer.By(g.Key), PriceAnswer.Systems(g)])])),
            new Block.Heading(1, "Payments"),
            new Block.TableOf(new Table(
                [new("Payment", 30), new("Amount", 34, Along.End), new("Share", 22, Along.End), new("Due at (to be agreed)", 88)],
                [.. quote.Draws.Select((d, i) => (IReadOnlyList<string>)[FormattableString.Invariant($"{i + 1} of {quote.Draws.Count}"), Said.Money(d), Said.Percent(quote.Price > 0 ? d / quote.Price : 0) + " %", ""])])),
        ];
        string[] alternates =
        [
            .. source.Houses.SelectMany(h => h.Choices.Alternatives.Skip(1).Select(a => (a.Label, h.Form.Id)))
                .GroupBy(a => a.Label).Select(g => $"{g.Key} (house {string.Join(", ", g.Select(a => a.Id).Distinct())})"),
        ];
        if (alternates.Length > 0)
        {
            blocks.Add(new Block.Heading(1, "Alternates"));
            blocks.Add(new Block.Paragraph("Worked out beside the chosen plant (plant.pdf); we price any of them on request.", Quiet: true));
            blocks.Add(new Block.Bullets(alternates));
        }

        blocks.AddRange(
        [
            new Block.Heading(1, "On what terms"),
            Cautions.Weather(source),
            new Block.Bullets([.. Terms(source)]),
            new Block.Heading(1, "Care that the predictions take for granted"),
            new Block.TableOf(CareList.Table(source)),
            new Block.Heading(1, "Dates"),
            new Block.TableOf(Blank("Milestone", ["Permit in hand", "Order of long-lead items", "Ground work", "Frame stands", "Covered", "Equipment runs", "Start-up and hand-over"])),
            new Block.Heading(1, "Signed"),
            new Block.TableOf(Blank("Side", ["For the owner", "For the contractor"])),
        ]);
        return new Report(name + ": quote", "Quote, a draft until signed", name + " · quote, a draft until signed", PaperDate.Of(job), PaperDate.Size(job), blocks);
    }

    private static IEnumerable<string> Parties(Job job)
    {
        (string contractor, string customer, string address, string number) = job.Parties;
        string[] said =
        [
            contractor.Length > 0 ? "From " + contractor : "",
            customer.Length > 0 ? "For " + customer : "",
            address,
            number.Length > 0 ? "No. " + number : "",
        ];
        return said.Where(s => s.Length > 0);
    }

    private static Table Blank(string what, IReadOnlyList<string> rows) => new(
        [new(what, 62), new("Name or remark", 62), new("Date", 50)],
        [.. rows.Select(r => (IReadOnlyList<string>)[r, "", ""])]);

    private static Table Built(PaperSource source)
    {
        LengthStyle style = SheetStyle.Lengths(source.Job);
        List<IReadOnlyList<string>> rows = [];
        foreach (BuildingForm b in source.Form.Buildings)
        {
            rows.Add([b.IsHouse ? "House " + b.Id : b.Name, $"{LengthText.Of(b.WidthM, style)} × {LengthText.Of(b.LengthM, style)}, ridge {LengthText.Of(b.Roof.RidgeM, style)}"]);
        }

        foreach (HouseResults house in source.Houses)
        {
            string id = "House " + house.Form.Id;
            string covers = string.Join("; ", house.House.Coverings.GroupBy(c => CoverLook.Of(c.Cover).Name).Select(g => $"{g.Key}: {string.Join(", ", g.Select(c => FaceWord(house.Form, c.Face)))}"));
            rows.Add([id + ", covering", covers]);
            if (house.Plant.Exhaust is not null)
            {
                rows.Add([id + ", cooling", PlantAnswers.Cooling(source, house).Brief]);
            }

            if (house.Plant.Heat is { } heat)
            {
                rows.Add([id + ", heat", FormattableString.Invariant($"{heat.Choice.Heaters.Count} {(heat.Choice.Heaters.Count == 1 ? "heater" : "heaters")}, {new Said(source.Job.Units).Text(heat.Choice.Heaters.Sum(h => h.OutputW), Unit.Watt)} together")]);
            }

            if (house.Plant.BenchPipeW > 0)
            {
                rows.Add([id + ", bench pipe", $"{new Said(source.Job.Units).Text(house.Plant.BenchPipeW, Unit.Watt)} of hot-water pipe under the benches, with its boiler"]);
            }

            if (house.Plant.Curtain is { } curtain)
            {
                rows.Add([id + ", curtain", $"{(house.Plant.SecondCurtain is null ? "one curtain" : "two curtains")}, {new Said(source.Job.Units).Round(curtain.AreaM2, Unit.SquareMetre)} each, with drive"]);
            }

            if (house.Plant.Circulation is { } air)
            {
                rows.Add([id + ", air circulation", FormattableString.Invariant($"{air.Count} {(air.Count == 1 ? "fan" : "fans")}")]);
            }

            rows.Add([id + ", benches", house.Layout.BenchM2 > 0 ? new Said(source.Job.Units).Round(house.Layout.BenchM2, Unit.SquareMetre) : "none"]);
            rows.Add([id + ", controls and power", FormattableString.Invariant($"control box with its program (control.pdf), sensors and alarm; {house.Plant.Loads.Sum(l => l.Count)} loads wired (services in plant.pdf)")]);
        }

        return new Table([new("Part", 62), new("As drawn", 112)], rows);
    }

    private static string FaceWord(BuildingForm b, FaceName face) =>
        SheetStyle.Facing(b, face) + (face is FaceName.RoofLeft or FaceName.RoofRight ? " roof" : " wall");

    private static IEnumerable<string> Terms(PaperSource source)
    {
        if (source.Price.Quote.Scope.Any(s => s.By == ScopeBy.Allowance))
        {
            yield return "An allowance is settled at actual cost; its amount is to be written in by us before signing.";
        }

        yield return "What is excluded or by others is not in the price; nor is rock, groundwater, unsuitable soil or what the authority asks for beyond the papers of this set.";
        yield return "Structure, foundation, gas and power are subject to licensed design and to the permits; a change they bring is a change order: old, new, difference in price and days, signed.";
        yield return "Warranties are those of the makers of covering, fans, heaters and controls, handed over with their papers; care as listed below.";
        yield return "The price band is the contractor's uncertainty until offers of suppliers are in.";
    }
}
