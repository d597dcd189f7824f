namespace Glazewright.Science.Weather;

/// <summary>Plain questions to a weather year; each limit is our own choice and stands in docs/methods/weather.md.</summary>
internal static class SanityChecks
{
    private const double LargestJumpK = 15;
    private const int LongestConstantHours = 24;

    public static void Add(WeatherYear year, List<WeatherFinding> findings)
    {
        Jumps(year, findings);
        Constant(year, findings);
        Sky(year, findings);
        Humidity(year, findings);
        Pressure(year, findings);
        double wind = MonthStatistics.Mean(year.WindMs.Span);
        if (wind is < 0.5 or > 10)
        {
            Warn(findings, FormattableString.Invariant($"The year's mean wind of {wind:0.0} m/s is unlikely (0.5 to 10)."));
        }
    }

    /// <summary>Rms of infrared against Clark and Allen from the row's own values, W/m², over hours with observed cover; 0 when there are none.</summary>
    public static double InfraredRmsWm2(WeatherYear year)
    {
        double sum = 0;
        int n = 0;
        for (int h = 0; h < CommonYear.Hours; h++)
        {
            if (!double.IsNaN(year.OpaqueCoverTenths[h]))
            {
                double miss = year.HorizontalInfraredWhm2[h]
                    - SkyInfrared.ClarkAllenWm2(year.DryBulbC[h], year.DewPointC[h], year.OpaqueCoverTenths[h]);
                sum += miss * miss;
                n++;
            }
        }

        return n == 0 ? 0 : Math.Sqrt(sum / n);
    }

    private static void Warn(List<WeatherFinding> findings, string text) => findings.Add(new WeatherFinding(WeatherGravity.Warning, text));

    // Weather moves a year's mean by less than 2 % of the standard atmosphere's.
    private static void Pressure(WeatherYear year, List<WeatherFinding> findings)
    {
        double mean = MonthStatistics.Mean(year.PressurePa.Span);
        double standard = WeatherMoisture.StandardPressurePa(year.Station.ElevationM);
        if (Math.Abs(mean / standard - 1) > 0.03)
        {
            Warn(findings, FormattableString.Invariant($"The mean pressure of {mean / 100:0} hPa is not that of {year.Station.ElevationM:0} m ({standard / 100:0} hPa): reduced to sea level, or the elevation is wrong. It is used as it stands."));
        }
    }

    private static void Jumps(WeatherYear year, List<WeatherFinding> findings)
    {
        int count = 0;
        double worst = 0;
        for (int h = 1; h < CommonYear.Hours; h++)
        {
            double jump = Math.Abs(year.DryBulbC[h] - year.DryBulbC[h - 1]);
            count += jump > LargestJumpK ? 1 : 0;
            worst = Math.Max(worst, jump);
        }

        if (count > 0)
        {
            Warn(findings, FormattableString.Invariant($"The dry bulb jumps more than {LargestJumpK:0} K within an hour {(count == 1 ? "once" : FormattableString.Invariant($"{count} times"))}, by up to {worst:0.0} K; left as it stands."));
        }
    }

    private static void Constant(WeatherYear year, List<WeatherFinding> findings)
    {
        int longest = 1;
        int run = 1;
        for (int h = 1; h < CommonYear.Hours; h++)
        {
            run = year.DryBulbC[h] == year.DryBulbC[h - 1] ? run + 1 : 1;
            longest = Math.Max(longest, run);
        }

        if (longest > LongestConstantHours)
        {
            Warn(findings, FormattableString.Invariant($"The dry bulb does not change for {longest} hours on end: a stuck instrument or a filled hole."));
        }
    }

    private static void Sky(WeatherYear year, List<WeatherFinding> findings)
    {
        var sun = new YearSun(year.Station);
        int above = 0;
        int night = 0;
        for (int h = 0; h < CommonYear.Hours; h++)
        {
            LitHour lit = sun.HourMean(h + 0.5 + year.RadiationOffsetH, 1, 12);
            above += lit.ExtraterrestrialWm2 > 50 && year.GhiWhm2[h] > 1.2 * lit.ExtraterrestrialWm2 ? 1 : 0;
            night += lit.MeanCosine < -0.1 && year.GhiWhm2[h] > 5 ? 1 : 0;
        }

        if (above > 0)
        {
            Warn(findings, FormattableString.Invariant($"Global radiation exceeds 1.2 times the extraterrestrial in {WeatherWords.Hours(above)}; left as it stands."));
        }

        if (night > 0)
        {
            Warn(findings, FormattableString.Invariant($"There is sun in {WeatherWords.Hours(night)} of deep night: time zone, longitude or stamps are wrong."));
        }
    }

    private static void Humidity(WeatherYear year, List<WeatherFinding> findings)
    {
        double sum = 0;
        for (int h = 0; h < CommonYear.Hours; h++)
        {
            double rh = 100 * WeatherMoisture.SaturationPa(year.DewPointC[h]) / WeatherMoisture.SaturationPa(year.DryBulbC[h]);
            sum += Math.Abs(rh - year.RhPercent[h]);
        }

        double mean = sum / CommonYear.Hours;
        if (mean > 5)
        {
            Warn(findings, FormattableString.Invariant($"Relative humidity and dew point disagree by {mean:0.0} % on average; the dew point is used."));
        }
    }
}
