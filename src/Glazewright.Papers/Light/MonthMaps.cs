using System.Globalization;
using Glazewright.Design.Contracts;
using Glazewright.Design.LightMaps;
using Glazewright.Papers.Charts;
using Glazewright.Papers.Drawing;
using Glazewright.Science.Weather;

namespace Glazewright.Papers.Light;

/// <summary>Light plans on one scale of colours, a month each.</summary>
internal static class MonthMaps
{
    private const double GapMm = 4;
    private const double HeadMm = 5;

    /// <summary>The picture, in two or three columns.</summary>
    /// <param name="id">Short name.</param>
    /// <param name="title">What it shows.</param>
    /// <param name="columns">Cells along.</param>
    /// <param name="rows">Cells across.</param>
    /// <param name="months">Twelve months, and the year after them where it is to be drawn.</param>
    /// <param name="shown">Which of them to draw, 0 to 12, in order.</param>
    /// <param name="proportionRatio">Length over width of what is mapped.</param>
    /// <param name="widthMm">Width on paper, mm.</param>
    public static Sheet Draw(
        string id, string title, int columns, int rows, EqList<LightMonth> months, IReadOnlyList<int> shown, double proportionRatio, double widthMm)
    {
        IReadOnlyList<CarpetClass> classes = Classes(months);
        int across = proportionRatio >= 2.2 && shown.Count <= 6 ? 2 : 3;
        double wideMm = (widthMm - ((across - 1) * GapMm)) / across;
        double highMm = Math.Clamp(wideMm / proportionRatio, 8, 60);
        wideMm = Math.Min(wideMm, highMm * proportionRatio);
        List<Entity> all = [];
        List<ReadingGrid> readings = [];
        for (int i = 0; i < shown.Count; i++)
        {
            int m = shown[i];
            double left = i % across * (((widthMm - ((across - 1) * GapMm)) / across) + GapMm);
            double top = i / across * (highMm + HeadMm + 2);
            LightMonth month = months[m];
            all.Add(new Entity.Label(
                new(left + 0.5, top + HeadMm - 1.5),
                string.Create(CultureInfo.InvariantCulture, $"{(m == 12 ? "Year" : CultureInfo.InvariantCulture.DateTimeFormat.GetAbbreviatedMonthName(m + 1))}: mean {month.MeanMolPerM2Day:0.0}, least {(month.LeastMolPerM2Day < 0.05 ? "<0.1" : month.LeastMolPerM2Day.ToString("0.0", CultureInfo.InvariantCulture))}"))
            {
                Role = Role.Text,
            });
            Box plot = new(left + 0.5, top + HeadMm, wideMm - 1, highMm);
            for (int c = 0; c < classes.Count; c++)
            {
                IReadOnlyList<IReadOnlyList<Spot>> region =
                [
                    .. GridOutline.Of(columns, rows, (x, y) => CarpetPlot.ClassOf(month.PointMolPerM2Day[(y * columns) + x], classes) >= c)
                        .Select(r => (IReadOnlyList<Spot>)[.. r.Select(p => new Spot(plot.Left + (p.X * plot.Width / columns), plot.Bottom - (p.Y * plot.Height / rows)))]),
                ];
                if (region.Count > 0)
                {
                    all.Add(new Entity.Fill(region, classes[c].Paint) { Role = Role.Fill });
                }
            }

            readings.Add(ReadingGrid.Plain(m == 12 ? "Year" : CultureInfo.InvariantCulture.DateTimeFormat.GetMonthName(m + 1), plot, columns, rows, month.PointMolPerM2Day, "mol/m² a day", 1));
            all.Add(new Entity.Polyline(plot.Corners(), true) { Role = Role.Frame, Pen = new Pen(0.25, [], Paint.Of(Tone.Edge)) });
        }

        double bottomMm = ((shown.Count + across - 1) / across * (highMm + HeadMm + 2)) + 6;
        all.AddRange(CarpetPlot.Key(classes, "mol/m² a day", 0.5, bottomMm - 1, widthMm));
        string said = string.Join("; ", months.Select((m, i) => string.Create(
            CultureInfo.InvariantCulture, $"{(i == 12 ? "the year" : CultureInfo.InvariantCulture.DateTimeFormat.GetMonthName(i + 1))}: mean {m.MeanMolPerM2Day:0.0}, least {m.LeastMolPerM2Day:0.0}, most {m.PointMolPerM2Day.Max():0.0}")));
        return new Sheet(id, title, $"{title}, mol/m² a day. {said}.", widthMm, bottomMm, [], all) { Readings = readings };
    }

    /// <summary>Twelve months with the year's mean day after them.</summary>
    /// <param name="months">January first.</param>
    public static EqList<LightMonth> WithYear(EqList<LightMonth> months)
    {
        double[] mean = new double[months[0].PointMolPerM2Day.Count];
        for (int m = 0; m < 12; m++)
        {
            for (int k = 0; k < mean.Length; k++)
            {
                mean[k] += months[m].PointMolPerM2Day[k] * CommonYear.DaysIn(m + 1) / 365;
            }
        }

        return months.Append(new LightMonth(mean.Average(), mean.Min(), mean.Average() > 0 ? mean.Min() / mean.Average() : 1, EqList.Own(mean))).ToEqList();
    }

    // One scale for the year, its steps finer where crops go short: about equal ratios.
    private static List<CarpetClass> Classes(EqList<LightMonth> months)
    {
        double low = Math.Max(0.1, months.Min(m => m.LeastMolPerM2Day));
        double high = Math.Max(low * 1.2, months.Max(m => m.PointMolPerM2Day.Max()));
        double[] round = [0.1, 0.2, 0.5, 1, 2, 3, 4, 5, 6, 8, 10, 12, 15, 20, 25, 30, 40, 50, 60];
        double[] limits = [.. round.Where(r => r > low && r < high)];
        while (limits.Length > 8)
        {
            limits = [.. limits.Where((_, i) => i % 2 == limits.Length % 2)];
        }

        List<CarpetClass> classes = [];
        for (int c = 0; c <= limits.Length; c++)
        {
            double below = c == limits.Length ? double.PositiveInfinity : limits[c];
            string name = c == 0
                ? limits.Length == 0 ? "all" : "<" + Text(limits[0])
                : c == limits.Length ? "≥" + Text(limits[^1]) : $"{Text(limits[c - 1])}–{Text(limits[c])}";
            classes.Add(new CarpetClass(below, name, Ramp.Sequential.Step(c, limits.Length + 1)));
        }

        return classes;

        static string Text(double v) => v.ToString("0.#", CultureInfo.InvariantCulture);
    }
}
