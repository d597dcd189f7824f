using Glazewright.Design.Brief;
using Glazewright.Design.Choices;
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
                [new("Payment", 30), new("Amount", 34, Along.End), new("Share", 22, Along.End), new("Due at", 88)],
                [.. quote.Draws.Select((d, i) => (IReadOnlyList<string>)[FormattableString.Invariant($"{i + 1} of {quote.Draws.Count}"), Said.Money(d), Said.Percent(quote.Price > 0 ? d / quote.Price : 0) + " %", i < quote.Due.Count ? quote.Due[i] : ""])])),
        ];
        if (source.Alternates.All.Count > 0)
        {
            blocks.Add(new Block.Heading(1, "Alternates"));
            blocks.Add(new Block.TableOf(new Table(
                [new("One thing changed", 74), new("House", 16), new("To the price", 34, Along.End), new("What it does", 50)],
                [.. source.Alternates.All.Select(a => (IReadOnlyList<string>)[a.Label, a.House, a.IsWhole ? Difference(a.DifferencePrice) : "on request", Does(source, a)])])));
            blocks.Add(new Block.Paragraph(
                "Each alone beside the chosen plant, priced as the quote is and good as long; two of them together are not the sum. Cutting of tube and sheet is taken as in the quote. More on each in plant.pdf.", Quiet: true));
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

    // To ten dollars: an alternate is no finer than that.
    private static string Difference(double amount)
    {
        double tens = 10 * Math.Round(amount / 10);
        return tens == 0 ? "the same" : (tens < 0 ? "− " : "+ ") + Said.Money(Math.Abs(tens));
    }

    private static string Does(PaperSource source, PricedAlternate alternate)
    {
        Said said = new(source.Job.Units);
        return source.Houses.FirstOrDefault(h => h.Form.Id == alternate.House)?.Choices.Alternatives.FirstOrDefault(a => a.Label == alternate.Label) switch
        {
            { Kind: ChoiceKind.Fans or ChoiceKind.Cooling } a => $"hottest day {said.Text(a.HottestC, Unit.Celsius)}",
            { Kind: ChoiceKind.Heat } a => $"coldest night {said.Floor(a.HoldsC, Unit.Celsius)}, one dead {said.Floor(a.OneOutC, Unit.Celsius)}",
            { Kind: ChoiceKind.Curtain } a => $"night loss {said.Text(a.NightLossW, Unit.Watt)}",
            _ => "",
        };
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
                rows.Add([id + ", curtain", $"{(house.Plant.SecondCurtain is null ? "one curtain" : "two curtains")}, {new Said(source.Job.Units).Round(curtain.AreaM2, Unit.SquareMetre)}{(house.Plant.SecondCurtain is null ? "" : " each")}, with drive"]);
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
