using Glazewright.Science.Maths;
using Glazewright.Science.Sky;

namespace Glazewright.Science.Weather;

/// <summary>
/// Radiation of a synthetic year. A day's clearness is spread over its hours after Collares-Pereira and Rabl (1979), Solar Energy 22:155; diffuse share by
/// the hourly clearness after Erbs, Klein and Duffie (1982), Solar Energy 28:293, bent so that the month keeps its own diffuse fraction (both from memory).
/// Clouds within a day are not invented.
/// </summary>
internal sealed class SyntheticSun
{
    private const double LeastClearness = 0.04;
    private const double MostClearness = 0.82;

    private SyntheticSun()
    {
    }

    public double[] GhiWhm2 { get; } = new double[CommonYear.Hours];

    public double[] DniWhm2 { get; } = new double[CommonYear.Hours];

    public double[] DhiWhm2 { get; } = new double[CommonYear.Hours];

    /// <summary>Clearness of each day, keeping each month's energy exactly and its spread and persistence as far as the limits of clearness allow.</summary>
    public static double[] DailyClearness(WeatherStation station, IReadOnlyList<MonthlyNormals> normals, SeededChance chance)
    {
        double[] lag = [.. normals.Select(n => n.DailyClearnessLag1Ratio)];
        double[] z = DailyChain.Of(lag, ref chance);
        double[] sky = SkyByDay(station);
        var clearness = new double[365];
        for (int month = 1; month <= 12; month++)
        {
            MonthlyNormals n = normals[month - 1];
            int first = CommonYear.FirstDayOf(month);
            int days = CommonYear.DaysIn(month);
            double total = MonthStatistics.Sum(sky.AsSpan(first, days));
            double shift = 0;
            double stretch = 1;
            for (int round = 0; round < 60; round++)
            {
                double energy = 0;
                for (int d = first; d < first + days; d++)
                {
                    clearness[d] = Math.Clamp(n.ClearnessRatio + shift + stretch * n.DailyClearnessDeviationRatio * z[d], LeastClearness, MostClearness);
                    energy += clearness[d] * sky[d];
                }

                shift += total > 0 ? n.ClearnessRatio - energy / total : 0;
                double deviation = MonthStatistics.Deviation(clearness.AsSpan(first, days));
                stretch = Math.Clamp(stretch * (deviation > 1e-6 ? n.DailyClearnessDeviationRatio / deviation : 1), 0.5, 2.5);
            }
        }

        return clearness;
    }

    public static SyntheticSun Of(WeatherStation station, IReadOnlyList<MonthlyNormals> normals, double[] clearness)
    {
        var result = new SyntheticSun();
        var sun = new YearSun(station);
        var lit = new LitHour[CommonYear.Hours];
        for (int h = 0; h < lit.Length; h++)
        {
            lit[h] = sun.HourMean(h, 1, 12);
        }

        for (int day = 0; day < 365; day++)
        {
            result.SpreadDay(station, day, clearness[day], lit);
        }

        for (int month = 1; month <= 12; month++)
        {
            result.SplitMonth(month, normals[month - 1].DiffuseFraction, lit);
        }

        return result;
    }

    private static double[] SkyByDay(WeatherStation station)
    {
        var sun = new YearSun(station);
        var sky = new double[365];
        for (int h = 0; h < CommonYear.Hours; h++)
        {
            sky[h / 24] += sun.HourMean(h, 1, 12).ExtraterrestrialWm2;
        }

        return sky;
    }

    private void SpreadDay(WeatherStation station, int day, double clearness, LitHour[] lit)
    {
        double sky = 0;
        double shaped = 0;
        Span<double> shape = stackalloc double[24];
        var sun = new YearSun(station);
        SunElements noon = sun.ElementsAt(day * 24 + 12);
        double latitudeRad = Math.Clamp(station.LatitudeDeg, -89, 89) * Math.PI / 180;
        double cosSunset = Math.Clamp(-Elementary.Sin(latitudeRad) / Elementary.Cos(latitudeRad) * noon.SinDeclination / noon.CosDeclination, -1, 1);
        double sunset = Elementary.Acos(cosSunset);
        double a = 0.409 + 0.5016 * Elementary.Sin(sunset - Math.PI / 3);
        double b = 0.6609 - 0.4767 * Elementary.Sin(sunset - Math.PI / 3);
        for (int k = 0; k < 24; k++)
        {
            double e0 = lit[day * 24 + k].ExtraterrestrialWm2;
            double hourAngle = noon.HourAngleRad + (k - 11.5) * (Math.PI / 12);
            shape[k] = e0 * Math.Max(0.1, a + b * Elementary.Cos(hourAngle));
            shaped += shape[k];
            sky += e0;
        }

        for (int k = 0; k < 24; k++)
        {
            GhiWhm2[day * 24 + k] = shaped > 0 ? Math.Round(shape[k] * clearness * sky / shaped, 1) : 0;
        }
    }

    /// <summary>Erbs share per hour, its complement scaled by one factor a month (bisection) so that the month's diffuse share is the normal one.</summary>
    private void SplitMonth(int month, double wantedFraction, LitHour[] lit)
    {
        int from = CommonYear.FirstDayOf(month) * 24;
        int to = CommonYear.FirstDayOf(month + 1) * 24;
        double low = 0;
        double high = 4;
        for (int i = 0; i < 50; i++)
        {
            double mid = 0.5 * (low + high);
            if (DiffuseShare(from, to, mid, lit) > wantedFraction)
            {
                low = mid;
            }
            else
            {
                high = mid;
            }
        }

        double factor = 0.5 * (low + high);
        for (int h = from; h < to; h++)
        {
            double dhi = Math.Round(GhiWhm2[h] * Share(h, factor, lit), 1);
            DhiWhm2[h] = dhi;
            DniWhm2[h] = lit[h].LitCosine > 0 ? Math.Round((GhiWhm2[h] - dhi) / lit[h].LitCosine, 1) : 0;
        }
    }

    private double DiffuseShare(int from, int to, double factor, LitHour[] lit)
    {
        double ghi = 0;
        double dhi = 0;
        for (int h = from; h < to; h++)
        {
            ghi += GhiWhm2[h];
            dhi += GhiWhm2[h] * Share(h, factor, lit);
        }

        return ghi > 0 ? dhi / ghi : 1;
    }

    private double Share(int h, double factor, LitHour[] lit)
    {
        if (lit[h].ExtraterrestrialWm2 <= 0 || GhiWhm2[h] <= 0)
        {
            return 1;
        }

        double beamShare = (1 - ErbsShare.DiffuseFraction(Math.Min(2, GhiWhm2[h] / lit[h].ExtraterrestrialWm2))) * factor;

        // The sky never lets more than 0.8 of the beam outside the air through.
        double most = 0.8 * lit[h].ExtraterrestrialWm2 / GhiWhm2[h];
        return 1 - Math.Clamp(beamShare, 0, Math.Min(0.97, most));
    }
}
