using Glazewright.Design.Contracts;
using Glazewright.Science.Air;
using Glazewright.Science.Weather;

namespace Glazewright.Design.Duty;

/// <summary>Design conditions: typed first, then the design-day file, the statistics file and the header of the weather (the reader of the job keeps that order), and only then the year's own hours, which leave the extremes out.</summary>
internal static class DesignWeather
{
    public static Brief.DesignConditions Of(Brief.DesignConditions? typed, WeatherYear year)
    {
        if (typed is not null)
        {
            return typed;
        }

        ComputedConditions c = ComputedConditions.Of(year);
        if (year.Conditions is HeaderConditions.Printed printed)
        {
            DesignConditions v = printed.Values;
            string lowest = v.MeanAnnualMinC is null ? "; no yearly extreme printed: the lower of the 99.6 % value and this year's lowest hour" : "";
            return new Brief.DesignConditions(
                v.Heating996DryBulbC,
                v.MeanAnnualMinC ?? Math.Min(v.Heating996DryBulbC, c.LowestDryBulbC),
                v.Cooling04DryBulbC,
                v.Cooling04WetBulbC,
                v.Evaporation04WetBulbC,
                new Source.Standard($"ASHRAE climatic design values in {printed.From}", v.Edition + lowest, Source.Mark.ReadSecondHand));
        }

        return new Brief.DesignConditions(
            c.Heating996DryBulbC,
            c.LowestDryBulbC,
            c.Cooling04DryBulbC,
            Math.Min(c.Cooling04WetBulbC, c.Cooling04DryBulbC),
            c.Evaporation04WetBulbC,
            new Source.Default("/site/design", ComputedConditions.Label));
    }

    /// <summary>Outside air of the cooling design day; a wet bulb lower than bone-dry air could have counts as bone dry.</summary>
    public static AirState Outside(Brief.DesignConditions conditions, double pressurePa)
    {
        double dryestC = MoistAir.WetBulbC(conditions.Cooling04C, 0, pressurePa);
        return conditions.CoincidentWetBulbC <= dryestC
            ? AirState.FromHumidityRatio(conditions.Cooling04C, 1e-5, pressurePa)
            : AirState.FromWetBulb(conditions.Cooling04C, Math.Min(conditions.CoincidentWetBulbC, conditions.Cooling04C), pressurePa);
    }

    /// <summary>A mild, damp night: among the hours that need heating, outside air wetter than in nine of ten.</summary>
    public static AirState DryingNight(WeatherYear year, double nightC, double pressurePa)
    {
        List<(double DewC, double DryC)> cold = [];
        for (int hour = 0; hour < CommonYear.Hours; hour++)
        {
            if (year.GhiWhm2[hour] <= 0 && year.DryBulbC[hour] < nightC - 3)
            {
                cold.Add((year.DewPointC[hour], year.DryBulbC[hour]));
            }
        }

        if (cold.Count == 0)
        {
            return AirState.FromRelativeHumidity(Math.Min(nightC - 3, 15), 0.9, pressurePa);
        }

        cold.Sort();
        (double dewC, double dryC) = cold[(int)(0.9 * (cold.Count - 1))];
        return AirState.FromDewPoint(dryC, Math.Min(dewC, dryC), pressurePa);
    }
}
