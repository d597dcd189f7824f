namespace Glazewright.Science.Weather;

/// <summary>Falling snow from the depth of snow on the ground: the only thing that hourly files record.</summary>
internal static class SnowFall
{
    /// <summary>From here on it rains (common practice: 1 to 2 °C at the station's height).</summary>
    private const double RainFromC = 2;

    /// <summary>Growth of the cover hour by hour; a gap in the record is bridged by the last depth before it.</summary>
    /// <param name="depthM">Depth on the ground, m; NaN where it is not recorded.</param>
    /// <param name="dryBulbC">Air.</param>
    /// <returns>m in each hour; empty where no hour is recorded.</returns>
    public static double[] ByHourM(HourlyColumn depthM, HourlyColumn dryBulbC)
    {
        ReadOnlySpan<double> depth = depthM.Span;
        double last = double.NaN;
        foreach (double d in depth)
        {
            last = double.IsNaN(d) ? last : d;
        }

        if (double.IsNaN(last))
        {
            return [];
        }

        // The year is a ring: what lies at its end lay at its beginning.
        double[] fallen = new double[depth.Length];
        for (int h = 0; h < depth.Length; h++)
        {
            if (!double.IsNaN(depth[h]))
            {
                fallen[h] = dryBulbC[h] <= RainFromC ? Math.Max(depth[h] - last, 0) : 0;
                last = depth[h];
            }
        }

        return fallen;
    }
}
