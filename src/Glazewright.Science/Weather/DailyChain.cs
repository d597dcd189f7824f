namespace Glazewright.Science.Weather;

/// <summary>A ring-less first-order chain of daily deviates (mean 0, deviation 1) whose months have given persistence, mean 0 and deviation 1 exactly.</summary>
internal static class DailyChain
{
    public static double[] Of(ReadOnlySpan<double> lag1ByMonth, ref SeededChance chance)
    {
        var x = new double[365];
        double z = chance.NextNormal();
        for (int d = 0; d < 365; d++)
        {
            // A short month's own correlation falls below the process's by about (1 + 4 lag)/n: raise the process by as much.
            double wanted = lag1ByMonth[CommonYear.MonthOfDay(d) - 1];
            double lag = Math.Clamp((wanted + 1.0 / 30) / (1 - 4.0 / 30), -0.95, 0.95);
            z = lag * z + Math.Sqrt(1 - lag * lag) * chance.NextNormal();
            x[d] = z;
        }

        for (int month = 1; month <= 12; month++)
        {
            Span<double> days = x.AsSpan(CommonYear.FirstDayOf(month), CommonYear.DaysIn(month));
            double mean = MonthStatistics.Mean(days);
            double deviation = MonthStatistics.Deviation(days);
            foreach (ref double day in days)
            {
                day = deviation > 1e-9 ? (day - mean) / deviation : 0;
            }
        }

        return x;
    }
}
