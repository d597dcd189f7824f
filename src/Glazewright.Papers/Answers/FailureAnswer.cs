using System.Globalization;
using Glazewright.Design.Contracts;
using Glazewright.Design.Rehearsals;
using Glazewright.Papers.Charts;
using Glazewright.Papers.Days;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Reports;
using Glazewright.Papers.Sets;

namespace Glazewright.Papers.Answers;

/// <summary>What if something fails?</summary>
internal static class FailureAnswer
{
    private const double StepMin = 5;

    public static QuestionAnswered? Of(PaperSource source, HouseResults house)
    {
        EqList<Rehearsal> rehearsals = house.Rehearsals;
        if (rehearsals.Count == 0)
        {
            return null;
        }

        Said said = new(source.Job.Units);
        rehearsals = rehearsals.Select(r => r with { What = UsReasons.Of(r.What, source.Job.Units) }).ToEqList();
        Rehearsal shown = rehearsals.FirstOrDefault(r => r.Id == "heater-dead") ?? rehearsals.FirstOrDefault(r => r.Id == "boiler-dead") ?? rehearsals[0];
        string brief = $"{Short(shown)}: {Time(shown, said)}";
        List<Block> blocks =
        [
            new Block.TableOf(new Table(
                [new Column("What fails", 58), new Column("Day", 22), new Column("What happens", 36), new Column("Program's alarm", 32), new Column("Worst air at the crop", 24, Along.End)],
                [.. rehearsals.Select(r => (IReadOnlyList<string>)[Said.Capital(r.What), DayReport.Name(r.Day), Time(r, said), Told(r), Worst(r, said)])])),
            .. Doings(rehearsals, source.Job.Units),
            new Block.Picture(Trace(shown, said), $"{Said.Capital(shown.What)}: air at the crop from the failure on, as in the file and at both ends of what was tried."),
            new Block.Paragraph(
                $"Tried on the model on the typical year's coldest and hottest days with a crop, in calm ({(source.Job.Units == UnitSystem.Us ? "1 mph" : "0.5 m/s")}) and windy ({(source.Job.Units == UnitSystem.Us ? "18 mph" : "8 m/s")}) air, in a damp and a dry house, with the curtain open and shut, and as the file has it: the times are from the harshest to the mildest of these, rounded down to five minutes. A worse year is colder. The program's alarm reaches no one by itself: the independent alarm with its own thermostat, battery and dialler does. Alarms that reach someone, and backup heat or power, are what these times ask for.", Quiet: true),
        ];
        Standing standing = shown.Id is not ("heater-dead" or "boiler-dead") ? Standing.None : shown.SoonestMin is null ? Standing.Held : Standing.Miss;
        return new QuestionAnswered($"What if something fails in house {house.Form.Id}?", brief, $"In house {house.Form.Id}, {Short(shown)}: {Time(shown, said)}.", standing, blocks);
    }

    private static string Short(Rehearsal r) => r.Id switch { "heater-dead" => "largest heater out on the coldest night", "boiler-dead" => "the boiler out on the coldest night", _ => r.What };

    private static string Time(Rehearsal r, Said said)
    {
        string limit = r.IsCold ? "frost" : said.Round(r.LimitC, Unit.Celsius);
        return r.SoonestMin is not { } soonest
            ? $"no {limit}{(r.IsCold ? " that day" : " reached")}"
            : r.LatestMin is { } latest
                ? latest == soonest ? $"{limit} after {Span(soonest)}" : $"{limit} after {Span(soonest)} to {Span(latest)}"
                : $"{limit} after {Span(soonest)} at the soonest, in the mildest state not that day";
    }

    // The alarm that sounds first, and when, from the soonest to the latest of the states.
    private static string Told(Rehearsal r)
    {
        RehearsalRun[] heard = [.. r.Runs.Where(x => x.ToldMin is not null)];
        if (heard.Length == 0)
        {
            return "none";
        }

        int soonest = heard.Min(x => x.ToldMin!.Value), latest = heard.Max(x => x.ToldMin!.Value);
        string when = soonest == latest ? Exactly(soonest) : $"{Exactly(soonest)} to {Exactly(latest)}";
        return $"{string.Join(", ", heard.Select(x => x.ToldBy.Replace('-', ' ')).Distinct())} after {when}{(heard.Length < r.Runs.Count ? ", not in every state" : "")}";
    }

    private static string Exactly(int minutes) => minutes < 120 ? string.Create(CultureInfo.InvariantCulture, $"{minutes} min") : Span(minutes);

    // What the program does with a thermometer that tells wrong.
    private static IEnumerable<Block> Doings(EqList<Rehearsal> rehearsals, UnitSystem units)
    {
        string[] lines = [.. rehearsals.Where(r => r.Id.StartsWith("sensor-", StringComparison.Ordinal) && r.Runs[0].Does.Length > 0).Select(r => $"{Said.Capital(r.What)}: an hour later {UsReasons.Of(r.Runs[0].Does, units)}.")];
        return lines.Length == 0 ? [] : [new Block.Bullets([.. lines])];
    }

    private static string Worst(Rehearsal r, Said said)
    {
        string low = said.Text(Math.Min(r.WorstC, r.MildestC), Unit.Celsius);
        string high = said.Text(Math.Max(r.WorstC, r.MildestC), Unit.Celsius);
        return low == high ? low : $"{low} to {high}";
    }

    private static string Span(int minutes) => minutes < 5 ? "less than 5 min" : minutes < 120
        ? string.Create(CultureInfo.InvariantCulture, $"{minutes} min")
        : string.Create(CultureInfo.InvariantCulture, $"{minutes / 60} h{(minutes % 60 > 0 ? $" {minutes % 60} min" : "")}");

    // Whole hours, not more than seven of them.
    private static IReadOnlyList<(double At, string Text)> Hours(double lengthH)
    {
        double stepH = Math.Max(1, Math.Ceiling(lengthH / 7));
        return [.. Enumerable.Range(0, (int)(lengthH / stepH) + 1).Select(i => (i * stepH / Math.Max(lengthH, stepH), string.Create(CultureInfo.InvariantCulture, $"+{i * stepH:0} h")))];
    }

    private static Sheet Trace(Rehearsal r, Said said)
    {
        string unit = said.Of(20, Unit.Celsius).Unit;
        int steps = r.Runs[0].InsideC.Count - 1;
        return StripChart.Draw(
            "failure-" + r.Id, Said.Capital(r.What), unit,
            [.. r.Runs.Select(x => new Strip(x.State, [.. x.InsideC.Select(c => said.Of(c, Unit.Celsius).Value)]))],
            null,
            Hours(steps * StepMin / 60.0),
            Said.WidthMm, 40, step => string.Create(CultureInfo.InvariantCulture, $"after {step * StepMin / 60:0} h {step * StepMin % 60:00} min"));
    }
}
