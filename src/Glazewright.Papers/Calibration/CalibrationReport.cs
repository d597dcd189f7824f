using System.Globalization;
using Glazewright.Design.Calibration;
using Glazewright.Design.Contracts;
using Glazewright.Papers.Answers;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Reports;

namespace Glazewright.Papers.Calibration;

/// <summary>A calibration on paper: marks, fitted sizes, scores, weeks, the error by the hour.</summary>
public static class CalibrationReport
{
    private static readonly CultureInfo I = CultureInfo.InvariantCulture;

    /// <summary>The report.</summary>
    /// <param name="r">The calibration.</param>
    /// <param name="size">Paper.</param>
    /// <returns>One chapter.</returns>
    public static Report Of(CalibrationResult r, SheetSize size)
    {
        ArgumentNullException.ThrowIfNull(r);
        bool fitted = r.TrainedWeeks.Count > 0;
        List<Block> blocks =
        [
            new Block.Opening(r.Name, fitted ? "The built house fitted to its log, and scored" : "An earlier fit scored on another log",
            [
                string.Create(I, $"{r.FirstStamp} to {r.LastStamp}, every {r.StepMinutes} minutes, replayed without a restart"),
                fitted ? $"Fitted on weeks {CalibrationText.Weeks(r.TrainedWeeks)}; scored on weeks {CalibrationText.Weeks(r.ScoredWeeks)}" : $"Scored on weeks {CalibrationText.Weeks(r.ScoredWeeks)}",
            ]),
            new Block.Heading(1, "Marks"),
            new Block.TableOf(new Table(
                [new Column("", 22), new Column("Mark", 64), new Column("Found", 50), new Column("Asked", 36)],
                [.. r.Marks.Select(m => (IReadOnlyList<string>)[CalibrationText.MarkWord(m.State), m.Name, m.Found, m.Asked])])),
            new Block.Heading(1, fitted ? "Fitted sizes" : "Sizes"),
            new Block.TableOf(new Table(
                [new Column("Size", 52), new Column("Value", 34), new Column("Looked for from", 34), new Column("Standing", 52)],
                [.. r.Sizes.Select(v => (IReadOnlyList<string>)
                [
                    v.Range.What, string.Create(I, $"{v.Value:0.###}{CalibrationText.PlusMinus(v)}"), string.Create(I, $"{v.Range.LeastValue:0.##} to {v.Range.MostValue:0.##} {v.Range.UnitText}"), Standing(v),
                ])])),
            new Block.Paragraph("± is two standard errors: what the log tells given the model. What the model itself has wrong is in the scores.", Quiet: true),
            new Block.Heading(1, "Scores of the weeks that were not fitted on"),
            new Block.TableOf(Scores([.. r.Scores, r.Start, .. r.Trained.Count > 0 ? [r.Trained] : Array.Empty<ScoreLine>()])),
            new Block.Heading(1, "Weeks"),
        ];
        foreach ((string name, ScoreLine week) in CalibrationPictures.Chosen(r))
        {
            blocks.Add(new Block.Picture(CalibrationPictures.Air(r, week, name), string.Create(I, $"{Said.Capital(name)} scored week ({week.Name}): error {week.AirRmsK:0.00} K.")));
            blocks.Add(new Block.Picture(CalibrationPictures.Humidity(r, week, name), string.Create(I, $"Its humidity: error {CalibrationText.Number(week.HumidityRmsPercent, "0.0")} % RH.")));
        }

        blocks.Add(new Block.Heading(1, "Where it misses"));
        blocks.Add(new Block.Picture(CalibrationPictures.ByHour(r), "Computed less measured air by the hour of day."));
        blocks.Add(new Block.Picture(CalibrationPictures.Scatter(r), "Scored hours; on the dashed line computed equals measured."));
        blocks.Add(new Block.Heading(1, "To know"));
        blocks.Add(new Block.Bullets([.. r.Report.Findings.OrderByDescending(f => f.Severity).Select(f => f.What + (f.Mend.Length > 0 ? $" Mend: {f.Mend}." : "")), .. r.Report.LeftOut]));
        return new Report($"{r.Name}: calibration", "Measured house against the model", $"{r.Name} · calibration", null, size, blocks);
    }

    /// <summary>Scores as a table.</summary>
    /// <param name="lines">The lines.</param>
    /// <returns>The table.</returns>
    public static Table Scores(IReadOnlyList<ScoreLine> lines) => new(
        [
            new Column("Hours", 54), new Column("Steps", 15, Along.End), new Column("Air, K", 15, Along.End), new Column("mean", 15, Along.End), new Column("Skill", 14, Along.End),
            new Column("RH, %", 15, Along.End), new Column("mean", 14, Along.End), new Column("g/m³", 15, Along.End), new Column("mean", 15, Along.End),
        ],
        [.. lines.Select(s => (IReadOnlyList<string>)
        [
            s.Name, s.Count.ToString(I), CalibrationText.Number(s.AirRmsK, "0.00"), Signed(s.AirBiasK, "0.00"), CalibrationText.Number(s.SkillRatio, "0.00").Replace("-", "−", StringComparison.Ordinal),
            CalibrationText.Number(s.HumidityRmsPercent, "0.0"), Signed(s.HumidityBiasPercent, "0.0"), CalibrationText.Number(1000 * s.VapourRmsKgPerM3, "0.00"), Signed(1000 * s.VapourBiasKgPerM3, "0.00"),
        ])]);

    private static string Signed(double value, string form) => CalibrationText.Number(value, $"+{form};−{form}");

    private static string Standing(FittedValue v) => v.Standing switch
    {
        SizeStanding.AtBound => "at its bound: not determined by this log",
        SizeStanding.NotTold => "hardly told by this log",
        SizeStanding.Given => "of an earlier fit",
        _ => v.TwinWord.Length > 0 ? $"only together with {v.TwinWord}" : "told",
    };
}
