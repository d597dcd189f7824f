using System.Globalization;
using Glazewright.Design.Calibration;
using Glazewright.Papers.Charts;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Fonts;

namespace Glazewright.Papers.Calibration;

/// <summary>Pictures of a calibration: weeks, measured against computed; all scored hours as dots; the error by the hour of day.</summary>
public static class CalibrationPictures
{
    private static readonly string[] s_names = ["best", "typical", "worst"];

    /// <summary>Best, typical and worst of the scored weeks, by the air's error.</summary>
    /// <param name="result">The calibration.</param>
    /// <returns>Name and week; fewer than three where there are fewer weeks.</returns>
    public static IReadOnlyList<(string Name, ScoreLine Week)> Chosen(CalibrationResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        ScoreLine[] weeks = [.. result.Weeks.Where(w => w.Count * 2 >= result.Weeks.Max(x => x.Count)).OrderBy(w => w.AirRmsK).ThenBy(w => w.Id, StringComparer.Ordinal)];
        return weeks.Length < 3 ? [.. weeks.Select((w, i) => (s_names[i], w))] : [(s_names[0], weeks[0]), (s_names[1], weeks[weeks.Length / 2]), (s_names[2], weeks[^1])];
    }

    /// <summary>Air of a week.</summary>
    /// <param name="result">The calibration.</param>
    /// <param name="week">Which.</param>
    /// <param name="name">What it is called.</param>
    /// <returns>The picture.</returns>
    public static Sheet Air(CalibrationResult result, ScoreLine week, string name)
    {
        LogHour[] hours = HoursOf(result, week);
        return StripChart.Draw(
            $"air-{name}", $"The {name} scored week, air at the crop", "°C",
            [new Strip("measured", [.. hours.Select(h => h.MeasuredC)]), new Strip("computed", [.. hours.Select(h => h.ComputedC)]), new Strip("outside", [.. hours.Select(h => h.OutsideC)])],
            null, Days(hours), 172, 44);
    }

    /// <summary>Humidity of a week.</summary>
    /// <param name="result">The calibration.</param>
    /// <param name="week">Which.</param>
    /// <param name="name">What it is called.</param>
    /// <returns>The picture.</returns>
    public static Sheet Humidity(CalibrationResult result, ScoreLine week, string name)
    {
        LogHour[] hours = HoursOf(result, week);
        return StripChart.Draw(
            $"humidity-{name}", $"The {name} scored week, humidity at the crop", "% RH",
            [new Strip("measured", [.. hours.Select(h => h.MeasuredPercent)]), new Strip("computed", [.. hours.Select(h => h.ComputedPercent)])],
            null, Days(hours), 172, 30);
    }

    /// <summary>Every scored hour: measured along, computed up.</summary>
    /// <param name="result">The calibration.</param>
    /// <returns>The picture.</returns>
    public static Sheet Scatter(CalibrationResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        LogHour[] all = [.. result.Hours.Where(h => !h.Trained && double.IsFinite(h.MeasuredC) && double.IsFinite(h.ComputedC))];
        int stride = Math.Max(1, all.Length / 1500);
        LogHour[] hours = [.. all.Where((_, i) => i % stride == 0)];
        AxisTicks ticks = AxisTicks.Over(hours.Select(h => Math.Min(h.MeasuredC, h.ComputedC)).DefaultIfEmpty(0).Min(), hours.Select(h => Math.Max(h.MeasuredC, h.ComputedC)).DefaultIfEmpty(1).Max());
        const double width = 100;
        ChartBox box = new(width, 100, leftMm: 10, rightMm: 5, topMm: 7, bottomMm: 12);
        List<Entity> marks = [.. box.ValueAxis(ticks, "computed, °C")];
        foreach (double value in ticks.Values())
        {
            marks.Add(new Entity.Polyline([new(X(value), box.Plot.Top), new(X(value), box.Plot.Bottom)]) { Role = Role.Grid });
            marks.Add(new Entity.Label(new(X(value), box.Plot.Bottom + 4.5), ticks.Text(value)) { Role = Role.Text, Along = Along.Middle, Paint = Paint.Of(Tone.Ink2) });
        }

        marks.Add(new Entity.Label(new(box.Plot.Right, box.Plot.Bottom + 9.5), "measured, °C") { Role = Role.Text, Along = Along.End, Paint = Paint.Of(Tone.Ink2) });
        foreach (LogHour h in hours)
        {
            Spot at = new(X(h.MeasuredC), box.Y(ticks, h.ComputedC));
            marks.Add(new Entity.Fill([[at + new Spot(-0.35, -0.35), at + new Spot(0.35, -0.35), at + new Spot(0.35, 0.35), at + new Spot(-0.35, 0.35)]], Paint.Of(h.GlobalWm2 > 50 ? Tone.Sun : Tone.Accent), 0.55) { Role = Role.Fill });
        }

        marks.Add(new Entity.Polyline([new(X(ticks.Low), box.Y(ticks, ticks.Low)), new(X(ticks.High), box.Y(ticks, ticks.High))]) { Role = Role.Curve, Pen = new Pen(0.3, [2, 1], Paint.Of(Tone.Ink)) });
        marks.AddRange(ChartKey.Row([("by day", Tone.Sun), ("by night", Tone.Accent)], new Spot(box.Plot.Right, 3.6)));
        string said = string.Create(CultureInfo.InvariantCulture, $"{all.Length} scored hours, every {stride}. drawn; root mean square error {result.Scores[0].AirRmsK:0.00} K, mean {result.Scores[0].AirBiasK:0.00} K.");
        return new Sheet("scatter", "Computed against measured air", said, width, 100, [], marks);

        double X(double value) => box.Plot.Left + box.Plot.Width * Math.Clamp((value - ticks.Low) / (ticks.High - ticks.Low), 0, 1);
    }

    /// <summary>Mean error by the hour of day.</summary>
    /// <param name="result">The calibration.</param>
    /// <returns>The picture.</returns>
    public static Sheet ByHour(CalibrationResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        (double, string)[] marks = [.. Enumerable.Range(0, 8).Select(i => (3 * i / 23.0, (3 * i).ToString("00", CultureInfo.InvariantCulture)))];
        double[] bias = [.. Enumerable.Range(0, 24).Select(h => result.ByHour.FirstOrDefault(e => e.Hour == h)?.AirBiasK ?? double.NaN)];
        double[] rms = [.. Enumerable.Range(0, 24).Select(h => result.ByHour.FirstOrDefault(e => e.Hour == h)?.AirRmsK ?? double.NaN)];
        return StripChart.Draw("by-hour", "Error of the air by the hour of day, scored weeks", "K", [new Strip("mean", bias), new Strip("root mean square", rms)], null, marks, 172, 40);
    }

    private static LogHour[] HoursOf(CalibrationResult result, ScoreLine week)
    {
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(week);
        int number = int.Parse(week.Id, CultureInfo.InvariantCulture);
        return [.. result.Hours.Where(h => h.Week == number)];
    }

    private static (double Fraction, string Text)[] Days(LogHour[] hours) =>
        [.. Enumerable.Range(0, hours.Length).Where(i => hours[i].Start[11..13] is "00")
            .Select(i => (i / (double)Math.Max(1, hours.Length - 1), hours[i].Start[5..10])).Where(m => m.Item1 < 0.95)];
}
