using System.Globalization;
using Glazewright.Design.Contracts;
using Glazewright.Design.LightMaps;
using Glazewright.Papers.Charts;
using Glazewright.Papers.Drawing;

namespace Glazewright.Papers.Light;

/// <summary>Plans of the direct sun at single moments, in tenths of the sun outdoors.</summary>
internal static class MomentMaps
{
    private const double GapMm = 4;
    private const double HeadMm = 5;

    /// <summary>The picture, two to a row.</summary>
    /// <param name="id">Short name.</param>
    /// <param name="title">What it shows.</param>
    /// <param name="moments">One or more.</param>
    /// <param name="proportionRatio">Length over width of the plan.</param>
    /// <param name="widthMm">Width on paper, mm.</param>
    public static Sheet Draw(string id, string title, EqList<LightMoment> moments, double proportionRatio, double widthMm)
    {
        CarpetClass[] classes =
        [
            .. Enumerable.Range(0, 6).Select(i => new CarpetClass(
                i == 5 ? double.PositiveInfinity : 0.05 + (0.15 * i),
                string.Create(CultureInfo.InvariantCulture, $"{(i == 0 ? "<5" : i == 5 ? "≥65" : $"{5 + (15 * (i - 1))}–{5 + (15 * i)}")} %"),
                Ramp.Sequential.Step(i, 6))),
        ];
        double cellMm = (widthMm - GapMm) / 2;
        double highMm = Math.Clamp(cellMm / proportionRatio, 8, 60);
        double wideMm = Math.Min(cellMm, highMm * proportionRatio);
        List<Entity> all = [];
        List<ReadingGrid> readings = [];
        for (int i = 0; i < moments.Count; i++)
        {
            LightMoment moment = moments[i];
            double left = i % 2 * (cellMm + GapMm);
            double top = i / 2 * (highMm + HeadMm + 2);
            all.Add(new Entity.Label(new(left + 0.5, top + HeadMm - 1.5), Head(moment)) { Role = Role.Text });
            Box plot = new(left + 0.5, top + HeadMm, wideMm - 1, highMm);
            for (int c = 0; c < classes.Length; c++)
            {
                IReadOnlyList<IReadOnlyList<Spot>> region =
                [
                    .. GridOutline.Of(moment.CountX, moment.CountY, (x, y) => CarpetPlot.ClassOf(moment.SpotFraction[(y * moment.CountX) + x], classes) >= c)
                        .Select(r => (IReadOnlyList<Spot>)[.. r.Select(p => new Spot(plot.Left + (p.X * plot.Width / moment.CountX), plot.Bottom - (p.Y * plot.Height / moment.CountY)))]),
                ];
                if (region.Count > 0)
                {
                    all.Add(new Entity.Fill(region, classes[c].Paint) { Role = Role.Fill });
                }
            }

            readings.Add(ReadingGrid.Plain(Head(moment).Split(": ")[0], plot, moment.CountX, moment.CountY, [.. moment.SpotFraction.Select(f => (double)f)], "", 0).In(100, "% of the direct sun", 0));
            all.Add(new Entity.Polyline(plot.Corners(), true) { Role = Role.Frame, Pen = new Pen(0.25, [], Paint.Of(Tone.Edge)) });
        }

        double bottomMm = ((moments.Count + 1) / 2 * (highMm + HeadMm + 2)) + 6;
        all.AddRange(CarpetPlot.Key(classes, "of the direct sun", 0.5, bottomMm - 1, widthMm));
        return new Sheet(id, title, $"{title}. {string.Join("; ", moments.Select(Head))}.", widthMm, bottomMm, [], all) { Readings = readings };
    }

    private static string Head(LightMoment m) => string.Create(
        CultureInfo.InvariantCulture,
        $"{m.Day}, {Math.Floor(m.SolarHour):0}:{60 * (m.SolarHour - Math.Floor(m.SolarHour)):00}: sun {m.ElevationDeg:0}° high, mean {100 * m.MeanFraction:0} %");
}
