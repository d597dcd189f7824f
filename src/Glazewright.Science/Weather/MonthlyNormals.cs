namespace Glazewright.Science.Weather;

/// <summary>Normals of one month, from a job or a table: what a synthetic year is made to keep. A site without a weather file must give twelve of them.</summary>
/// <param name="MeanC">Mean dry bulb, °C, −60 to 45.</param>
/// <param name="DailyRangeK">Mean of the days' highest less lowest hourly dry bulb, K, 1 to 30.</param>
/// <param name="DailyMeanDeviationK">Standard deviation of the days' means, K, 0 to 15.</param>
/// <param name="DailyMeanLag1Ratio">Correlation of one day's mean with the next, 0 to 0.95.</param>
/// <param name="DewPointC">Mean dew point, °C, up to the mean dry bulb.</param>
/// <param name="ClearnessRatio">Month's global over extraterrestrial, 0.05 to 0.8.</param>
/// <param name="DailyClearnessDeviationRatio">Standard deviation of the days' clearness, 0 to 0.3.</param>
/// <param name="DailyClearnessLag1Ratio">Correlation of one day's clearness with the next, −0.5 to 0.95.</param>
/// <param name="DiffuseFraction">Month's diffuse over global, 0.1 to 1.</param>
/// <param name="WindMs">Mean wind at 10 m, m/s, 0.2 to 15.</param>
/// <param name="WindDeviationMs">Standard deviation of the hourly wind, m/s, 0.1 to 10.</param>
public sealed record MonthlyNormals(
    double MeanC, double DailyRangeK, double DailyMeanDeviationK, double DailyMeanLag1Ratio, double DewPointC,
    double ClearnessRatio, double DailyClearnessDeviationRatio, double DailyClearnessLag1Ratio, double DiffuseFraction,
    double WindMs, double WindDeviationMs)
{
    /// <summary>The normals that a year's own month shows.</summary>
    /// <param name="month">Its statistics.</param>
    public static MonthlyNormals Of(MonthStatistics month)
    {
        ArgumentNullException.ThrowIfNull(month);
        return new MonthlyNormals(
            month.MeanC, month.MeanDailyMaxC - month.MeanDailyMinC, month.DailyMeanDeviationK, Math.Clamp(month.DailyMeanLag1Ratio, 0, 0.95),
            Math.Min(month.MeanDewPointC, month.MeanC), Math.Clamp(month.ClearnessRatio, 0.05, 0.8), month.DailyClearnessDeviationRatio,
            Math.Clamp(month.DailyClearnessLag1Ratio, -0.5, 0.95), Math.Clamp(month.DhiWhm2Day / Math.Max(1, month.GhiWhm2Day), 0.1, 1),
            Math.Max(0.2, month.MeanWindMs), Math.Max(0.1, month.WindDeviationMs));
    }

    /// <summary>
    /// Normals from what a job usually knows: the month's mean daily global radiation instead of a clearness, and no diffuse share, wind spread or persistence of
    /// clearness, which get stated defaults: diffuse share after Page (1961), 1 − 1.13 kt (from memory); wind spread 0.52 of the mean, the Rayleigh distribution's; lag 0.25.
    /// </summary>
    /// <param name="station">Place.</param>
    /// <param name="month">1 to 12.</param>
    /// <param name="meanC">Mean dry bulb, °C.</param>
    /// <param name="meanDailyMaxC">Mean daily highest, °C.</param>
    /// <param name="meanDailyMinC">Mean daily lowest, °C.</param>
    /// <param name="dailyMeanDeviationK">Day-to-day deviation of daily means, K.</param>
    /// <param name="dailyMeanLag1Ratio">Day-to-day correlation.</param>
    /// <param name="dewPointC">Mean dew point, °C.</param>
    /// <param name="ghiWhm2Day">Mean daily global horizontal, Wh/m².</param>
    /// <param name="dailyClearnessDeviationRatio">Day-to-day deviation of clearness.</param>
    /// <param name="windMs">Mean wind, m/s.</param>
    /// <returns>Normals; clearness is kept within 0.05 and 0.8.</returns>
    public static MonthlyNormals FromGlobal(
        WeatherStation station, int month, double meanC, double meanDailyMaxC, double meanDailyMinC, double dailyMeanDeviationK, double dailyMeanLag1Ratio,
        double dewPointC, double ghiWhm2Day, double dailyClearnessDeviationRatio, double windMs)
    {
        ArgumentNullException.ThrowIfNull(station);
        Guards.Within.Require(month, 1, 12);
        Guards.Within.Require(meanDailyMinC, -70, meanDailyMaxC);
        Guards.Within.Require(ghiWhm2Day, 0, 15_000);
        double clearness = Math.Clamp(ghiWhm2Day / Math.Max(0.03, ExtraterrestrialWhm2Day(station, month)), LeastClearness, MostClearness);
        return new MonthlyNormals(
            meanC, Math.Max(1, meanDailyMaxC - meanDailyMinC), dailyMeanDeviationK, dailyMeanLag1Ratio, Math.Min(dewPointC, meanC),
            clearness, dailyClearnessDeviationRatio, 0.25, Math.Clamp(1 - 1.13 * clearness, 0.15, 1), windMs, Math.Max(0.1, 0.5227 * windMs));
    }

    /// <summary>Least share of the extraterrestrial that a month of normals may have.</summary>
    public const double LeastClearness = 0.05;

    /// <summary>Largest.</summary>
    public const double MostClearness = 0.8;

    /// <summary>Mean daily radiation on the level at the top of the air.</summary>
    /// <param name="station">Place.</param>
    /// <param name="month">1 to 12.</param>
    /// <returns>Wh/m² a day; 0 in polar night.</returns>
    /// <exception cref="ArgumentOutOfRangeException">No such month.</exception>
    public static double ExtraterrestrialWhm2Day(WeatherStation station, int month)
    {
        ArgumentNullException.ThrowIfNull(station);
        Guards.Within.Require(month, 1, 12);
        var sun = new YearSun(station);
        double sky = 0;
        for (int h = CommonYear.FirstDayOf(month) * 24; h < CommonYear.FirstDayOf(month + 1) * 24; h++)
        {
            sky += sun.HourMean(h, 1, 12).ExtraterrestrialWm2;
        }

        return sky / CommonYear.DaysIn(month);
    }

    internal void RequireSane()
    {
        Guards.Within.Require(MeanC, -60, 45);
        Guards.Within.Require(DailyRangeK, 1, 30);
        Guards.Within.Require(DailyMeanDeviationK, 0, 15);
        Guards.Within.Require(DailyMeanLag1Ratio, 0, 0.95);
        Guards.Within.Require(DewPointC, -70, MeanC);
        Guards.Within.Require(ClearnessRatio, 0.05, 0.8);
        Guards.Within.Require(DailyClearnessDeviationRatio, 0, 0.3);
        Guards.Within.Require(DailyClearnessLag1Ratio, -0.5, 0.95);
        Guards.Within.Require(DiffuseFraction, 0.1, 1);
        Guards.Within.Require(WindMs, 0.2, 15);
        Guards.Within.Require(WindDeviationMs, 0.1, 10);
    }
}
