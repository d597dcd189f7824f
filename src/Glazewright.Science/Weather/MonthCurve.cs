namespace Glazewright.Science.Weather;

/// <summary>A yearly ring of daily values, straight lines between mid-month knots, whose months have given means.</summary>
internal static class MonthCurve
{
    /// <summary>Daily values, 365, whose monthly means are the targets.</summary>
    /// <param name="monthMeans">Twelve targets.</param>
    public static double[] Daily(ReadOnlySpan<double> monthMeans)
    {
        double[] knots = monthMeans.ToArray();
        double[] days = Lines(knots);

        // The months' own means of the lines are a diagonally dominant function of the knots: correcting each knot by its month's miss converges.
        for (int round = 0; round < 200; round++)
        {
            double worst = 0;
            for (int m = 0; m < 12; m++)
            {
                double miss = monthMeans[m] - Mean(days, m + 1);
                knots[m] += miss;
                worst = Math.Max(worst, Math.Abs(miss));
            }

            days = Lines(knots);
            if (worst < 1e-9)
            {
                break;
            }
        }

        return days;
    }

    public static double Mean(ReadOnlySpan<double> days, int month) =>
        MonthStatistics.Mean(days.Slice(CommonYear.FirstDayOf(month), CommonYear.DaysIn(month)));

    private static double[] Lines(double[] knots)
    {
        var days = new double[365];
        for (int m = 0; m < 12; m++)
        {
            double from = Middle(m);
            double to = m == 11 ? Middle(0) + 365 : Middle(m + 1);
            double next = knots[(m + 1) % 12];
            for (int d = (int)Math.Ceiling(from); d < to; d++)
            {
                days[d % 365] = knots[m] + (next - knots[m]) * (d - from) / (to - from);
            }
        }

        return days;
    }

    private static double Middle(int month0) => 0.5 * (CommonYear.FirstDayOf(month0 + 1) + CommonYear.FirstDayOf(month0 + 2) - 1);
}
