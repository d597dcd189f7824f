using System.Globalization;
using Glazewright.Design.Calibration.Reading;
using Glazewright.Design.Contracts;
using NodaTime;

namespace Glazewright.Design.Calibration;

/// <summary>Words of the calibration.</summary>
internal static class CalibrationWords
{
    private static readonly CultureInfo I = CultureInfo.InvariantCulture;
    private static readonly Source s_practice = new Source.CommonPractice("a fit is trusted where its log can tell it");

    public static string Stamp(LocalDateTime at) => string.Create(I, $"{at.Year:0000}-{at.Month:00}-{at.Day:00} {at.Hour:00}:{at.Minute:00}");

    public static string Week(int week) => week.ToString(I);

    /// <summary>The job's field that a fitted house has a better value for.</summary>
    public static string Fragment(JobHouse? job, EqList<FittedValue> values)
    {
        FittedValue? leaks = values.FirstOrDefault(v => v.Range.Size == FittedSize.Leaks && v.Standing == SizeStanding.Told);
        return job is null || leaks is null
            ? ""
            : string.Create(I, $"{{ \"id\": \"{job.Input.House}\", \"airtightness\": \"{leaks.Value * job.Input.AirtightnessPerHour:0.00} ACH\" }}");
    }

    public static StageReport Report(ColumnMap map, HouseLog log, EqList<FittedValue> values, BoundedFit.Ended ended, EqList<ScoreLine> scores)
    {
        List<Finding> findings = [.. log.Notes.Select(n => Note(n.Code, n.What, n.Code is "log/stuck" or "log/assumed" ? Severity.Near : Severity.Note, ""))];
        foreach (FittedValue v in values)
        {
            if (v.Standing == SizeStanding.AtBound)
            {
                findings.Add(Note(
                    "fit/at-bound", $"{v.Range.What} ended at {(v.Value - v.Range.LeastValue < v.Range.MostValue - v.Value ? "the least" : "the most")} of its range ({v.Value.ToString("0.##", I)} {v.Range.UnitText}): it is not determined by this log, and what is missing elsewhere is put on it",
                    Severity.Near, "measure it, or look for what the log does not tell"));
            }
            else if (v.Standing == SizeStanding.NotTold)
            {
                findings.Add(Note(
                    "fit/not-told", string.Create(I, $"{v.Range.What}: ± {v.PlusMinusValue:0.##} {v.Range.UnitText} is a large part of its range: this log does not tell it"), Severity.Near, "leave it as stated, or log what would tell it"));
            }

            if (v.TwinWord.Length > 0 && string.CompareOrdinal(v.Range.Word, v.TwinWord) < 0)
            {
                findings.Add(Note("fit/twins", string.Create(I, $"{v.Range.Word} and {v.TwinWord} can hardly be told apart by this log (correlation {v.TwinCorrelationRatio:0.00}): only the two together are known"), Severity.Near, "fit one of them"));
            }
        }

        if (!ended.Settled)
        {
            findings.Add(Note("fit/not-settled", $"the search was ended after {ended.Rounds.ToString(I)} rounds, still falling", Severity.Near, ""));
        }

        if (!log.Has(LoggedQuantity.OutsideRadiation))
        {
            findings.Add(Note(
                "fit/no-light", log.Has(LoggedQuantity.InsideLight)
                    ? "the light outside is not logged: it is taken back from the light at the crop, so vents, shade and lamps are in it"
                    : string.Create(I, $"no light is logged: the sun is taken as {100 * (map.House?.ClearnessFraction ?? 0):0} % of that above the atmosphere, the same for clear and dull days"),
                Severity.Near, "log the light outside"));
        }

        if (!log.Has(LoggedQuantity.Wind))
        {
            findings.Add(Note("fit/no-wind", "wind is not logged: 2 m/s all the time", Severity.Near, "log the wind"));
        }

        if (!log.Has(LoggedQuantity.NetSkyRadiation))
        {
            findings.Add(Note("fit/no-sky", "long wave of the sky is not logged: a sky 14 F° (8 K) below the air", Severity.Note, ""));
        }

        if (scores[0].SkillRatio < 0)
        {
            findings.Add(Note("fit/no-skill", "the fitted house is further from the measured air than the mean by the hour of day: do not use it", Severity.Miss, "look at what is not logged, and at the map"));
        }

        return new StageReport([], findings.ToEqList(),
        [
            "One sensor is one place: a house differs by a degree or two from end to end.",
            "Uncertainties say what the log tells given the model; what the model itself has wrong is in the scores.",
            "Neighbouring compartments, doors and people are not in the model.",
        ]);
    }

    private static Finding Note(string code, string what, Severity severity, string mend) => new(code, severity, "", char.ToUpperInvariant(what[0]) + what[1..] + ".", mend, s_practice);
}
