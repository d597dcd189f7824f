namespace Glazewright.Science.Weather;

/// <summary>Statistics of one month of a year. Days run from midnight to midnight of standard time.</summary>
public sealed record MonthStatistics
{
    /// <summary>1 to 12.</summary>
    public required int Month { get; init; }

    /// <summary>Mean dry bulb, °C.</summary>
    public required double MeanC { get; init; }

    /// <summary>Mean of the days' highest hourly dry bulb, °C.</summary>
    public required double MeanDailyMaxC { get; init; }

    /// <summary>Mean of the days' lowest hourly dry bulb, °C.</summary>
    public required double MeanDailyMinC { get; init; }

    /// <summary>Lowest hour, °C.</summary>
    public required double LowestC { get; init; }

    /// <summary>Highest hour, °C.</summary>
    public required double HighestC { get; init; }

    /// <summary>Standard deviation of the days' means (n − 1), K.</summary>
    public required double DailyMeanDeviationK { get; init; }

    /// <summary>Correlation of a day's mean with the next day's, −1 to 1.</summary>
    public required double DailyMeanLag1Ratio { get; init; }

    /// <summary>Global horizontal, Wh/m² a day.</summary>
    public required double GhiWhm2Day { get; init; }

    /// <summary>Direct normal, Wh/m² a day.</summary>
    public required double DniWhm2Day { get; init; }

    /// <summary>Diffuse horizontal, Wh/m² a day.</summary>
    public required double DhiWhm2Day { get; init; }

    /// <summary>Clearness: the month's global over the month's extraterrestrial.</summary>
    public required double ClearnessRatio { get; init; }

    /// <summary>Standard deviation of the days' clearness (n − 1).</summary>
    public required double DailyClearnessDeviationRatio { get; init; }

    /// <summary>Correlation of a day's clearness with the next day's.</summary>
    public required double DailyClearnessLag1Ratio { get; init; }

    /// <summary>Mean relative humidity, %.</summary>
    public required double MeanRhPercent { get; init; }

    /// <summary>Mean dew point, °C.</summary>
    public required double MeanDewPointC { get; init; }

    /// <summary>Mean wind, m/s.</summary>
    public required double MeanWindMs { get; init; }

    /// <summary>Standard deviation of the hourly wind, m/s.</summary>
    public required double WindDeviationMs { get; init; }

    /// <summary>Mean pressure, Pa.</summary>
    public required double MeanPressurePa { get; init; }

    /// <summary>Mean opaque cover over the hours that have it, tenths; 0 when none has.</summary>
    public required double MeanOpaqueTenths { get; init; }

    /// <summary>Heating degree days below 18 °C, K d (sum over days of 18 less the day's mean, where positive).</summary>
    public required double HeatingDegreeDays18 { get; init; }

    /// <summary>Computes the twelve months of a year.</summary>
    /// <param name="year">The year.</param>
    /// <returns>Twelve, January first.</returns>
    public static IReadOnlyList<MonthStatistics> Of(WeatherYear year)
    {
        ArgumentNullException.ThrowIfNull(year);
        double[] extraterrestrial = ExtraterrestrialByDay(year);
        return [.. Enumerable.Range(1, 12).Select(m => Of(year, m, extraterrestrial))];
    }

    /// <summary>Extraterrestrial horizontal of each day, Wh/m².</summary>
    internal static double[] ExtraterrestrialByDay(WeatherYear year)
    {
        var sun = new YearSun(year.Station);
        var sums = new double[365];
        for (int h = 0; h < CommonYear.Hours; h++)
        {
            sums[h / 24] += sun.HourMean(h, 1, 12).ExtraterrestrialWm2;
        }

        return sums;
    }

    private static MonthStatistics Of(WeatherYear year, int month, double[] extraterrestrialWhm2)
    {
        int first = CommonYear.FirstDayOf(month);
        int days = CommonYear.DaysIn(month);
        var means = new double[days];
        var highs = new double[days];
        var lows = new double[days];
        var clearness = new double[days];
        for (int d = 0; d < days; d++)
        {
            ReadOnlySpan<double> dry = year.DryBulbC.Span.Slice((first + d) * 24, 24);
            means[d] = Mean(dry);
            highs[d] = Highest(dry);
            lows[d] = Lowest(dry);
            double e0 = extraterrestrialWhm2[first + d];
            clearness[d] = e0 > 1 ? Sum(year.GhiWhm2.Span.Slice((first + d) * 24, 24)) / e0 : 0;
        }

        ReadOnlySpan<double> Of(HourlyColumn column) => column.Span.Slice(first * 24, days * 24);
        double sky = Sum(extraterrestrialWhm2.AsSpan(first, days));
        return new MonthStatistics
        {
            Month = month,
            MeanC = Mean(Of(year.DryBulbC)),
            MeanDailyMaxC = Mean(highs),
            MeanDailyMinC = Mean(lows),
            LowestC = Lowest(lows),
            HighestC = Highest(highs),
            DailyMeanDeviationK = Deviation(means),
            DailyMeanLag1Ratio = Lag1(means),
            GhiWhm2Day = Sum(Of(year.GhiWhm2)) / days,
            DniWhm2Day = Sum(Of(year.DniWhm2)) / days,
            DhiWhm2Day = Sum(Of(year.DhiWhm2)) / days,
            ClearnessRatio = sky > days ? Sum(Of(year.GhiWhm2)) / sky : 0,
            DailyClearnessDeviationRatio = Deviation(clearness),
            DailyClearnessLag1Ratio = Lag1(clearness),
            MeanRhPercent = Mean(Of(year.RhPercent)),
            MeanDewPointC = Mean(Of(year.DewPointC)),
            MeanWindMs = Mean(Of(year.WindMs)),
            WindDeviationMs = Deviation(Of(year.WindMs)),
            MeanPressurePa = Mean(Of(year.PressurePa)),
            MeanOpaqueTenths = MeanOfPresent(Of(year.OpaqueCoverTenths)),
            HeatingDegreeDays18 = means.Sum(m => Math.Max(0, 18 - m)),
        };
    }

    internal static double Sum(ReadOnlySpan<double> x)
    {
        double sum = 0;
        foreach (double v in x)
        {
            sum += v;
        }

        return sum;
    }

    internal static double Mean(ReadOnlySpan<double> x) => Sum(x) / x.Length;

    internal static double Deviation(ReadOnlySpan<double> x)
    {
        double mean = Mean(x);
        double sum = 0;
        foreach (double v in x)
        {
            sum += (v - mean) * (v - mean);
        }

        return Math.Sqrt(sum / (x.Length - 1));
    }

    /// <summary>The usual estimate of first autocorrelation: products of neighbours about the common mean over the sum of squares.</summary>
    internal static double Lag1(ReadOnlySpan<double> x)
    {
        double mean = Mean(x);
        double products = 0;
        double squares = (x[0] - mean) * (x[0] - mean);
        for (int i = 1; i < x.Length; i++)
        {
            products += (x[i - 1] - mean) * (x[i] - mean);
            squares += (x[i] - mean) * (x[i] - mean);
        }

        return squares > 0 ? products / squares : 0;
    }

    private static double Highest(ReadOnlySpan<double> x)
    {
        double most = x[0];
        foreach (double v in x)
        {
            most = Math.Max(most, v);
        }

        return most;
    }

    private static double Lowest(ReadOnlySpan<double> x)
    {
        double least = x[0];
        foreach (double v in x)
        {
            least = Math.Min(least, v);
        }

        return least;
    }

    private static double MeanOfPresent(ReadOnlySpan<double> x)
    {
        double sum = 0;
        int n = 0;
        foreach (double v in x)
        {
            if (!double.IsNaN(v))
            {
                sum += v;
                n++;
            }
        }

        return n == 0 ? 0 : sum / n;
    }
}
