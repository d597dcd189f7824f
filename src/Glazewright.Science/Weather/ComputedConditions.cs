using System.Runtime.CompilerServices;

namespace Glazewright.Science.Weather;

/// <summary>
/// Design-like values computed from the hours of one typical year. A typical year leaves the extremes out by construction: these are milder than the
/// values published from many years (3.5 K for one plains station), so they never replace them silently.
/// </summary>
/// <param name="Heating996DryBulbC">Dry bulb exceeded in 99.6 % of this year's hours, °C.</param>
/// <param name="Heating99DryBulbC">The same for 99 %, °C.</param>
/// <param name="LowestDryBulbC">Lowest hour, °C.</param>
/// <param name="Cooling04DryBulbC">Dry bulb exceeded in 0.4 % of the hours, °C.</param>
/// <param name="Cooling04WetBulbC">Mean wet bulb of the hours within 0.5 K of it, °C.</param>
/// <param name="Evaporation04WetBulbC">Wet bulb exceeded in 0.4 % of the hours, °C.</param>
/// <param name="HighestDryBulbC">Highest hour, °C.</param>
/// <param name="HeatingDegreeDays18">Degree days below 18 °C, K d.</param>
public sealed record ComputedConditions(
    double Heating996DryBulbC, double Heating99DryBulbC, double LowestDryBulbC,
    double Cooling04DryBulbC, double Cooling04WetBulbC, double Evaporation04WetBulbC, double HighestDryBulbC,
    double HeatingDegreeDays18)
{
    /// <summary>The label that goes beside each of these numbers.</summary>
    public const string Label = "computed from one typical year";

    /// <summary>A year does not change: it is counted once, however many houses ask.</summary>
    private static readonly ConditionalWeakTable<WeatherYear, ComputedConditions> Counted = [];

    /// <summary>Computes them.</summary>
    /// <param name="year">The year.</param>
    /// <returns>Values in °C.</returns>
    public static ComputedConditions Of(WeatherYear year)
    {
        ArgumentNullException.ThrowIfNull(year);
        return Counted.GetValue(year, Count);
    }

    private static ComputedConditions Count(WeatherYear year)
    {
        double[] dry = Sorted(year.DryBulbC.Span);
        var wet = new double[CommonYear.Hours];
        for (int h = 0; h < wet.Length; h++)
        {
            wet[h] = WeatherMoisture.WetBulbC(year.DryBulbC[h], year.DewPointC[h], year.PressurePa[h]);
        }

        double hot = ExceededIn(dry, 0.004);
        double sum = 0;
        int n = 0;
        for (int h = 0; h < wet.Length; h++)
        {
            if (Math.Abs(year.DryBulbC[h] - hot) <= 0.5)
            {
                sum += wet[h];
                n++;
            }
        }

        return new ComputedConditions(
            ExceededIn(dry, 0.996), ExceededIn(dry, 0.99), dry[0],
            hot, sum / n, ExceededIn(Sorted(wet), 0.004), dry[^1],
            MonthStatistics.Of(year).Sum(m => m.HeatingDegreeDays18));
    }

    private static double[] Sorted(ReadOnlySpan<double> values)
    {
        double[] copy = values.ToArray();
        Array.Sort(copy);
        return copy;
    }

    /// <summary>The value that the stated share of the hours lies above.</summary>
    private static double ExceededIn(double[] sorted, double fraction) =>
        sorted[Math.Clamp((int)Math.Round((1 - fraction) * sorted.Length), 0, sorted.Length - 1)];
}
