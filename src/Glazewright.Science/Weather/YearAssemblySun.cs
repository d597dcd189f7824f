using Glazewright.Science.Sky;

namespace Glazewright.Science.Weather;

/// <summary>Completing the radiation: never by a line between hours.</summary>
internal sealed partial class YearAssembly
{
    private void CompleteSun()
    {
        double[] ghi = raw.Columns[RawYear.Ghi];
        double[] dni = raw.Columns[RawYear.Dni];
        double[] dhi = raw.Columns[RawYear.Dhi];
        int dark = 0, closed = 0, split = 0, unknown = 0;
        int firstDark = -1, firstClosed = -1, firstSplit = -1, firstUnknown = -1;
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
                // Twilight is in the file's hours though the sun is down: what is given stays, and is diffuse.
                double known = !double.IsNaN(ghi[h]) ? ghi[h] : !double.IsNaN(dhi[h]) ? dhi[h] : 0;
                (ghi[h], dhi[h], dni[h]) = (known, double.IsNaN(dhi[h]) ? known : dhi[h], double.IsNaN(dni[h]) ? 0 : dni[h]);
                firstDark = dark++ == 0 ? h : firstDark;
            }
            else if (missing == 1)
            {
                Close(ref ghi[h], ref dni[h], ref dhi[h], lit.LitCosine);
                firstClosed = closed++ == 0 ? h : firstClosed;
            }
            else if (!double.IsNaN(ghi[h]))
            {
                BeamAndDiffuse parts = DiscSplit.Split(
                    ghi[h], Math.Acos(Math.Clamp(lit.LitCosine, -1, 1)) * 180 / Math.PI, lit.ExtraterrestrialWm2 / lit.LitCosine, raw.Columns[RawYear.Pressure][h]);
                dni[h] = parts.BeamNormalWm2;
                dhi[h] = parts.DiffuseHorizontalWm2;
                firstSplit = split++ == 0 ? h : firstSplit;
            }
            else
            {
                firstUnknown = unknown++ == 0 ? h : firstUnknown;
            }
        }

        Record("Radiation", dark, firstDark, "no beam, the sun being down: diffuse is the global given, or zero");
        Record("Radiation", closed, firstClosed, "the missing one of global, direct and diffuse from the other two");
        Record("Radiation", split, firstSplit, "direct and diffuse split from the global by Maxwell's DISC model of 1987; accepted models differ by 20 % in the beam, a measured beam is better");
        if (unknown > 0)
        {
            problems.Add(WeatherWords.MissingSun(raw.Line[firstUnknown], raw.FileColumn[RawYear.Ghi], "Radiation", unknown));
        }
        else
        {
            LookForDarkness(ghi, sun);
        }
    }

    /// <summary>Zeros where a station had no instrument are not dark weather: a year of them is refused, a month of them is told.</summary>
    private void LookForDarkness(double[] ghi, YearSun sun)
    {
        // Cloudy basins keep a quarter of a year's sun, the darkest month anywhere a tenth of its own (common knowledge); half of that is left for doubt.
        const double LeastOfYear = 0.10;
        const double LeastOfMonth = 0.05;
        const double LeastSkyWm2 = 20;
        var given = new double[12];
        var sky = new double[12];
        for (int h = 0; h < ghi.Length; h++)
        {
            int month = CommonYear.MonthOfDay(h / 24) - 1;
            given[month] += ghi[h];
            sky[month] += sun.HourMean(h, 1, 12).ExtraterrestrialWm2;
        }

        if (given.Sum() < LeastOfYear * sky.Sum())
        {
            problems.Add(WeatherWords.NoSun(raw.Line[0], raw.FileColumn[RawYear.Ghi], given.Sum() / 1000, given.Sum() / sky.Sum()));
            return;
        }

        for (int m = 0; m < 12; m++)
        {
            if (sky[m] > LeastSkyWm2 * 24 * CommonYear.DaysIn(m + 1) && given[m] < LeastOfMonth * sky[m])
            {
                notes.Add(WeatherWords.DarkMonth(m + 1, given[m] / sky[m]));
            }
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
