namespace Glazewright.Science.Weather;

/// <summary>What a file's header says of design weather.</summary>
public abstract record HeaderConditions
{
    private HeaderConditions()
    {
    }

    /// <summary>The header has none.</summary>
    public sealed record None : HeaderConditions;

    /// <summary>The header has a line that was not understood; it is not used.</summary>
    public sealed record Unreadable(string Why) : HeaderConditions;

    /// <summary>Design values as printed.</summary>
    /// <param name="Values">The values.</param>
    /// <param name="From">Where they stand, in words.</param>
    public sealed record Printed(DesignConditions Values, string From = "the weather file's header") : HeaderConditions;
}

/// <summary>Climatic design values printed in a weather file's header or in a file beside it, from many years of record (not from the weather file's own rows). Null: that kind of file does not print the value.</summary>
public sealed record DesignConditions
{
    /// <summary>Edition as the header names it.</summary>
    public required string Edition { get; init; }

    /// <summary>Dry bulb exceeded in 99.6 % of the hours of a year, °C.</summary>
    public required double Heating996DryBulbC { get; init; }

    /// <summary>Dry bulb exceeded in 99 % of the hours, °C.</summary>
    public required double Heating99DryBulbC { get; init; }

    /// <summary>Mean wind speed at the 99.6 % dry bulb, m/s.</summary>
    public required double WindAtHeating996Ms { get; init; }

    /// <summary>Wind speed exceeded in 1 % of the hours of the coldest month, m/s.</summary>
    public required double? ColdestMonthWind1PctMs { get; init; }

    /// <summary>Dry bulb exceeded in 0.4 % of the hours, °C.</summary>
    public required double Cooling04DryBulbC { get; init; }

    /// <summary>Mean wet bulb at the 0.4 % dry bulb, °C.</summary>
    public required double Cooling04WetBulbC { get; init; }

    /// <summary>Dry bulb exceeded in 1 % of the hours, °C.</summary>
    public required double Cooling1DryBulbC { get; init; }

    /// <summary>Mean wet bulb at the 1 % dry bulb, °C.</summary>
    public required double Cooling1WetBulbC { get; init; }

    /// <summary>Dry bulb exceeded in 2 % of the hours, °C.</summary>
    public required double Cooling2DryBulbC { get; init; }

    /// <summary>Mean wet bulb at the 2 % dry bulb, °C.</summary>
    public required double Cooling2WetBulbC { get; init; }

    /// <summary>Wet bulb exceeded in 0.4 % of the hours, °C: what an evaporative cooler meets.</summary>
    public required double Evaporation04WetBulbC { get; init; }

    /// <summary>Mean dry bulb at the 0.4 % wet bulb, °C.</summary>
    public required double Evaporation04DryBulbC { get; init; }

    /// <summary>Mean wind speed at the 0.4 % dry bulb, m/s.</summary>
    public required double WindAtCooling04Ms { get; init; }

    /// <summary>Mean daily range of the dry bulb in the hottest month, K.</summary>
    public required double HottestMonthDailyRangeK { get; init; }

    /// <summary>Wind speed exceeded in 1 % of the hours of a year, m/s.</summary>
    public required double? Wind1PctMs { get; init; }

    /// <summary>Mean over the years of each year's lowest dry bulb, °C.</summary>
    public required double? MeanAnnualMinC { get; init; }

    /// <summary>Mean over the years of each year's highest dry bulb, °C.</summary>
    public required double? MeanAnnualMaxC { get; init; }

    /// <summary>Lowest dry bulb of a 20-year return period, °C; an edition that does not print it gets the mean annual value less 1.87 standard deviations (Gumbel).</summary>
    public required double? Return20YearMinC { get; init; }

    /// <summary>Highest dry bulb of a 20-year return period, °C.</summary>
    public required double? Return20YearMaxC { get; init; }

    /// <summary>True when the 20-year values are printed in the header, false when computed from the printed mean and deviation.</summary>
    public required bool Return20YearPrinted { get; init; }

    /// <summary>Coldest month, 1 to 12; 0 when the edition does not print it.</summary>
    public required int ColdestMonth { get; init; }

    /// <summary>Hottest month, 1 to 12; 0 when the edition does not print it.</summary>
    public required int HottestMonth { get; init; }
}
