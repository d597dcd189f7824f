using Glazewright.Design.Contracts;
using Glazewright.Science.Air;
using Glazewright.Science.Weather;

namespace Glazewright.Design.Duty;

/// <summary>The design days of a site side by side, each with where it comes from and what the job's own weather year says to it.</summary>
internal static class DesignDayList
{
    private const string WettestDay = "Wettest design day, 0.4 % wet bulb";

    /// <summary>Wind beside a statistic that nothing states, m/s: told as unknown.</summary>
    private const double NotStated = -1;

    /// <summary>Outside air of the 99.6 % night: its humidity is the mean of the year's hours within 2 K of its own 99.6 % value.</summary>
    public static AirState WinterNight(Brief.DesignConditions conditions, WeatherYear year, double pressurePa)
    {
        double nearC = ComputedConditions.Of(year).Heating996DryBulbC;
        double sum = 0;
        int hours = 0;
        for (int hour = 0; hour < CommonYear.Hours; hour++)
        {
            if (Math.Abs(year.DryBulbC[hour] - nearC) <= 2)
            {
                sum += year.RhPercent[hour];
                hours++;
            }
        }

        double humidity = hours > 0 ? Math.Clamp(sum / hours / 100, 0.2, 1) : 0.8;
        return AirState.FromRelativeHumidity(conditions.Heating996C, humidity, pressurePa);
    }

    /// <summary>Outside air of the wettest day in a list of design days.</summary>
    public static AirState WetDay(EqList<DesignCase> days, double pressurePa)
    {
        DesignCase day = days.First(d => d.Label == WettestDay);
        double leastC = MoistAir.WetBulbC(day.DryBulbC, 0, pressurePa);
        return AirState.FromWetBulb(day.DryBulbC, Math.Clamp(day.WetBulbC, leastC + 1e-6, day.DryBulbC), pressurePa);
    }

    public static EqList<DesignCase> Of(
        Brief.DesignConditions c, WeatherYear year, AirState winter, AirState summer, AirState damp, double pressurePa)
    {
        ComputedConditions counted = ComputedConditions.Of(year);
        DesignConditions? printed = (year.Conditions as HeaderConditions.Printed)?.Values;
        bool fromHeader = c.Source is Source.Standard;
        Source own = new Source.FirstPrinciples($"counted in the weather year {year.Provenance.Label}");
        double extremeWetC = AirState.FromRelativeHumidity(Math.Max(c.ExtremeMinC, -59), winter.RelativeHumidityFraction, pressurePa).WetBulbC;
        double wetBulbDayDryC = Math.Max(fromHeader && printed is not null ? printed.Evaporation04DryBulbC : DryAtWetBulb(year, counted.Evaporation04WetBulbC), c.Evaporation04C);
        return
        [
            new("Coldest design night, 99.6 %", c.Heating996C, winter.WetBulbC, printed?.WindAtHeating996Ms ?? WindNear(year, counted.Heating996DryBulbC), c.Source, counted.Heating996DryBulbC, "heaters, to the night target"),
            new("Year's lowest, mean of many years", c.ExtremeMinC, extremeWetC, NotStated, c.Source, counted.LowestDryBulbC, "heaters, frost-safe at least"),
            new("Hottest design day, 0.4 %", c.Cooling04C, summer.WetBulbC, printed?.WindAtCooling04Ms ?? WindNear(year, counted.Cooling04DryBulbC), c.Source, counted.Cooling04DryBulbC, "fans, wet wall"),
            new(WettestDay, wetBulbDayDryC, c.Evaporation04C, NotStated, c.Source, counted.Evaporation04WetBulbC, "the least a wet wall or fog can do"),
            new("Damp mild night", damp.DryBulbC, damp.WetBulbC, NotStated, own, damp.DryBulbC, "airing and heat against humidity"),
        ];
    }

    private static double WindNear(WeatherYear year, double dryBulbC) => MeanWhere(year.DryBulbC, dryBulbC, year.WindMs);

    private static double MeanWhere(HourlyColumn column, double value, HourlyColumn asked)
    {
        double sum = 0;
        int hours = 0;
        for (int hour = 0; hour < CommonYear.Hours; hour++)
        {
            if (Math.Abs(column[hour] - value) <= 1)
            {
                sum += asked[hour];
                hours++;
            }
        }

        return hours > 0 ? sum / hours : NotStated;
    }

    // Mean dry bulb of the hours whose wet bulb lies within 0.5 K of a value.
    private static double DryAtWetBulb(WeatherYear year, double wetBulbC)
    {
        double sum = 0;
        int hours = 0;
        for (int hour = 0; hour < CommonYear.Hours; hour++)
        {
            if (year.DryBulbC[hour] >= wetBulbC - 0.5
                && Math.Abs(MoistAir.WetBulbC(Math.Clamp(year.DryBulbC[hour], -60, 80), Ratio(year, hour), year.PressurePa[hour]) - wetBulbC) <= 0.5)
            {
                sum += year.DryBulbC[hour];
                hours++;
            }
        }

        return hours > 0 ? sum / hours : wetBulbC;
    }

    private static double Ratio(WeatherYear year, int hour) => MoistAir.HumidityRatioOfVapour(
        Saturation.PressurePa(Math.Min(year.DewPointC[hour], year.DryBulbC[hour])), year.PressurePa[hour]);
}
