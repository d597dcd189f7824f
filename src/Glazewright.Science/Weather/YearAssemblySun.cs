namespace Glazewright.Science.Weather;

/// <summary>Completing the radiation: never by a line between hours.</summary>
internal sealed partial class YearAssembly
{
    private void CompleteSun()
    {
        double[] ghi = raw.Columns[RawYear.Ghi];
        double[] dni = raw.Columns[RawYear.Dni];
        double[] dhi = raw.Columns[RawYear.Dhi];
        int dark = 0, closed = 0, unknown = 0;
        int firstDark = -1, firstClosed = -1, firstUnknown = -1;
        var sun = new YearSun(station);
        for (int h = 0; h < ghi.Length; h++)
        {
            int missing = (double.IsNaN(ghi[h]) ? 1 : 0) + (double.IsNaN(dni[h]) ? 1 : 0) + (double.IsNaN(dhi[h]) ? 1 : 0);
            if (missing == 0)
            {
                continue;
            }

            LitHour lit = sun.HourMean(h, 1, 12);
            if (lit.ExtraterrestrialWm2 <= 0)
            {
                ghi[h] = dni[h] = dhi[h] = 0;
                firstDark = dark++ == 0 ? h : firstDark;
            }
            else if (missing == 1)
            {
                Close(ref ghi[h], ref dni[h], ref dhi[h], lit.LitCosine);
                firstClosed = closed++ == 0 ? h : firstClosed;
            }
            else
            {
                firstUnknown = unknown++ == 0 ? h : firstUnknown;
            }
        }

        Record("Radiation", dark, firstDark, "zero, the sun being down");
        Record("Radiation", closed, firstClosed, "the missing one of global, direct and diffuse from the other two");
        if (unknown > 0)
        {
            problems.Add(WeatherWords.MissingSun(raw.Line[firstUnknown], 14, "Radiation", unknown));
        }
    }

    private static void Close(ref double ghi, ref double dni, ref double dhi, double cosZenith)
    {
        if (double.IsNaN(ghi))
        {
            ghi = dni * cosZenith + dhi;
        }
        else if (double.IsNaN(dni))
        {
            dni = Math.Clamp((ghi - dhi) / Math.Max(0.087, cosZenith), 0, 1100);
        }
        else
        {
            dhi = Math.Clamp(ghi - dni * cosZenith, 0, ghi);
        }
    }
}
