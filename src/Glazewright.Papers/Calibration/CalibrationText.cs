using System.Globalization;
using System.Text;
using Glazewright.Design.Calibration;
using Glazewright.Design.Contracts;

namespace Glazewright.Papers.Calibration;

/// <summary>A calibration as plain text: what was read, what was fitted, how it does on the weeks it was not fitted on, marks, findings.</summary>
public static class CalibrationText
{
    private static readonly CultureInfo I = CultureInfo.InvariantCulture;

    /// <summary>The text.</summary>
    /// <param name="r">The calibration.</param>
    /// <returns>Lines, LF.</returns>
    public static string Of(CalibrationResult r)
    {
        ArgumentNullException.ThrowIfNull(r);
        StringBuilder t = new();
        t.Append(I, $"{r.Name}\n{r.FirstStamp} to {r.LastStamp}, every {r.StepMinutes} min, {r.Steps} steps, replayed without a restart\n");
        t.Append(r.TrainedWeeks.Count > 0 ? $"Fitted on weeks {Weeks(r.TrainedWeeks)}; scored on weeks {Weeks(r.ScoredWeeks)}\n\n" : $"Sizes of an earlier fit; scored on weeks {Weeks(r.ScoredWeeks)}\n\n");
        int widest = r.Sizes.Max(s => s.Range.What.Length);
        t.Append(r.TrainedWeeks.Count > 0 ? "Fitted\n" : "Given\n");
        foreach (FittedValue v in r.Sizes)
        {
            t.Append(I, $"  {v.Range.What.PadRight(widest)}  {v.Value,8:0.###}{PlusMinus(v),-10} {v.Range.UnitText}  (from {v.Range.LeastValue:0.##} to {v.Range.MostValue:0.##}, began at {v.Range.StartValue:0.##}){StandingWords(v)}\n");
        }

        t.Append("\nScored weeks                                  steps     air   mean  skill   humidity   mean    water   mean\n");
        foreach (ScoreLine s in r.Scores)
        {
            Line(t, s);
        }

        t.Append("For comparison\n");
        Line(t, r.Start);
        if (r.Trained.Count > 0)
        {
            Line(t, r.Trained);
        }

        t.Append("Errors are computed less measured: root mean square and mean; skill is 1 - error over that of the mean by the hour of day.\n\nMarks\n");
        int name = r.Marks.Max(m => m.Name.Length);
        foreach (CalibrationMark m in r.Marks)
        {
            t.Append(I, $"  {MarkSign(m.State)} {MarkWord(m.State),-8} {m.Name.PadRight(name)}  {m.Found}; asked: {m.Asked}\n");
        }

        if (r.Report.Findings.Count > 0)
        {
            t.Append("\nTo know\n");
            foreach (Finding f in r.Report.Findings.OrderByDescending(f => f.Severity))
            {
                t.Append(I, $"  {(f.Severity >= Severity.Miss ? "■" : f.Severity == Severity.Near ? "▲" : "·")} {f.What}{(f.Mend.Length > 0 ? " Mend: " + f.Mend + "." : "")}\n");
            }
        }

        if (r.JobFragment.Length > 0)
        {
            t.Append(I, $"\nFor the job's house: {r.JobFragment}\nThe other fitted sizes have no field in a job: they say how far the built house is from what the design takes.\n");
        }

        foreach (string left in r.Report.LeftOut)
        {
            t.Append(I, $"{left}\n");
        }

        return t.ToString();
    }

    /// <summary>Sign of a mark's state; beside it always stands the word.</summary>
    /// <param name="state">The state.</param>
    /// <returns>● ■ –.</returns>
    public static string MarkSign(MarkState state) => state switch { MarkState.Met => "●", MarkState.Missed => "■", _ => "–" };

    /// <summary>Word of a mark's state.</summary>
    /// <param name="state">The state.</param>
    /// <returns>met, missed or no hours.</returns>
    public static string MarkWord(MarkState state) => state switch { MarkState.Met => "met", MarkState.Missed => "missed", _ => "no hours" };

    /// <summary>What to think of a fitted value, in words.</summary>
    /// <param name="v">The value.</param>
    /// <returns>Words with a leading space, or nothing.</returns>
    public static string StandingWords(FittedValue v)
    {
        ArgumentNullException.ThrowIfNull(v);
        return v.Standing switch
        {
            SizeStanding.AtBound => "  ▲ at its bound: not determined by this log",
            SizeStanding.NotTold => "  ▲ hardly told by this log",
            _ => "",
        };
    }

    internal static string PlusMinus(FittedValue v) => double.IsNaN(v.PlusMinusValue) ? "" : string.Create(I, $" ± {v.PlusMinusValue:0.###}");

    internal static string Weeks(EqList<int> weeks) => string.Join(", ", weeks.Select(w => w.ToString(I)));

    // A little below nothing rounds to nothing and would keep its own sign before the form's.
    internal static string Number(double value, string form) => double.IsNaN(value) ? "" : value.ToString(form, I) is var text && text.StartsWith("-+", StringComparison.Ordinal) ? text[1..] : text;

    private static void Line(StringBuilder t, ScoreLine s) => t.Append(
        I,
        $"  {s.Name,-42}{s.Count,7}{Number(s.AirRmsK, "0.00 K"),8}{Number(s.AirBiasK, "+0.00;-0.00"),7}{Number(s.SkillRatio, "0.00"),7}{Number(s.HumidityRmsPercent, "0.0 \\%"),11}{Number(s.HumidityBiasPercent, "+0.0;-0.0"),7}{Number(1000 * s.VapourRmsKgPerM3, "0.00"),9}{Number(1000 * s.VapourBiasKgPerM3, "+0.00;-0.00"),7}\n");
}
