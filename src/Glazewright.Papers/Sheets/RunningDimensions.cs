using Glazewright.Papers.Drawing;

namespace Glazewright.Papers.Sheets;

/// <summary>
/// Dimensions that all run from one datum, as a tape is laid: each text at the end of its own line, lines jogged apart where stations crowd, so that texts
/// never meet.
/// </summary>
public static class RunningDimensions
{
    /// <summary>Paper taken below the datum line, mm.</summary>
    public const double BelowMm = 30;

    /// <summary>Paper taken beside the wall, mm.</summary>
    public const double BesideMm = 29.5;

    private const double PitchMm = 3.9;
    private const double StraightMm = 2;
    private const double JogMm = 5.5;
    private const double TextMm = 7.4;

    /// <summary>Distances along x from 0, their texts upright below y = 0.</summary>
    public static IEnumerable<Entity> Below(IEnumerable<double> stationsM, double mmPerM, LengthStyle style, string source)
    {
        double mm = 1 / mmPerM;
        double[] at = Distinct(stationsM);
        double[] spread = Spread([.. at.Select(x => x * mmPerM)], PitchMm);
        for (int i = 0; i < at.Length; i++)
        {
            double textM = spread[i] * mm;
            yield return new Entity.Polyline([new(at[i], -mm), new(at[i], -StraightMm * mm), new(textM, -JogMm * mm), new(textM, -(JogMm + 1) * mm)])
            {
                Role = Role.Dimension,
                Source = source,
            };
            yield return new Entity.Label(new(textM, -TextMm * mm), LengthText.Of(at[i], style))
            {
                Role = Role.Dimension,
                Along = Along.End,
                Across = Across.Middle,
                AngleDeg = 90,
                Source = source,
            };
        }
    }

    /// <summary>Levels above the floor, their texts to the right of x.</summary>
    public static IEnumerable<Entity> Beside(IEnumerable<double> levelsM, double xM, double mmPerM, LengthStyle style, string source)
    {
        double mm = 1 / mmPerM;
        double[] at = Distinct(levelsM);
        double[] spread = Spread([.. at.Select(z => z * mmPerM)], PitchMm);
        for (int i = 0; i < at.Length; i++)
        {
            double textM = spread[i] * mm;
            yield return new Entity.Polyline([new(xM + mm, at[i]), new(xM + StraightMm * mm, at[i]), new(xM + JogMm * mm, textM), new(xM + (JogMm + 1) * mm, textM)])
            {
                Role = Role.Dimension,
                Source = source,
            };
            yield return new Entity.Label(new(xM + TextMm * mm, textM), LengthText.Level(at[i], style)) { Role = Role.Dimension, Across = Across.Middle, Source = source };
        }
    }

    /// <summary>Places no closer than a pitch, each as near its own as that allows (pool adjacent violators: the least sum of squared shifts).</summary>
    public static double[] Spread(double[] wantedMm, double pitchMm)
    {
        List<(double SumMm, int Count)> pools = [];
        for (int i = 0; i < wantedMm.Length; i++)
        {
            (double SumMm, int Count) pool = (wantedMm[i] - i * pitchMm, 1);
            while (pools.Count > 0 && pools[^1].SumMm / pools[^1].Count > pool.SumMm / pool.Count)
            {
                pool = (pool.SumMm + pools[^1].SumMm, pool.Count + pools[^1].Count);
                pools.RemoveAt(pools.Count - 1);
            }

            pools.Add(pool);
        }

        return [.. pools.SelectMany(p => Enumerable.Repeat(p.SumMm / p.Count, p.Count)).Select((m, i) => m + i * pitchMm)];
    }

    private static double[] Distinct(IEnumerable<double> values)
    {
        List<double> kept = [];
        foreach (double value in values.Order())
        {
            if (kept.Count == 0 || value - kept[^1] > 0.003)
            {
                kept.Add(value);
            }
        }

        return [.. kept];
    }
}
