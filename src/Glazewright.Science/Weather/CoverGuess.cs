namespace Glazewright.Science.Weather;

/// <summary>Cloud cover for hours without observation: from clearness while the sun is well up, a straight line over the night between the last and the next such hour.</summary>
internal static class CoverGuess
{
    public static double[] From(WeatherStation station, double[] ghiWhm2, double[] observedTenths)
    {
        var cover = new double[ghiWhm2.Length];
        var sun = new YearSun(station);
        for (int h = 0; h < cover.Length; h++)
        {
            if (!double.IsNaN(observedTenths[h]))
            {
                cover[h] = observedTenths[h];
                continue;
            }

            LitHour lit = sun.HourMean(h, 1, 6);
            cover[h] = lit.LitCosine > 0.15 ? SkyInfrared.CoverFromClearnessTenths(ghiWhm2[h] / lit.ExtraterrestrialWm2) : double.NaN;
        }

        Bridge(cover);
        return cover;
    }

    private static void Bridge(double[] x)
    {
        int n = x.Length;
        int start = Array.FindIndex(x, v => !double.IsNaN(v));
        if (start < 0)
        {
            Array.Fill(x, 5);
            return;
        }

        int last = start;
        for (int i = 1; i <= n; i++)
        {
            int at = (start + i) % n;
            if (double.IsNaN(x[at]))
            {
                continue;
            }

            int length = (at - last + n - 1) % n;
            for (int k = 1; k <= length; k++)
            {
                x[(last + k) % n] = x[last] + (x[at] - x[last]) * k / (length + 1);
            }

            last = at;
        }
    }
}
