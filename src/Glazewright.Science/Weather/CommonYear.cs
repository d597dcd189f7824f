namespace Glazewright.Science.Weather;

/// <summary>
/// The 365-day calendar of a typical year: hours 0 to 8,759, hour 0 being 00:00 to 01:00 of 1 January in local standard time.
/// Months of a typical year come from different years, so no date-time type is used anywhere.
/// </summary>
public static class CommonYear
{
    /// <summary>Hours in the year.</summary>
    public const int Hours = 8760;

    /// <summary>Minutes in the year.</summary>
    public const int Minutes = Hours * 60;

    private static readonly int[] s_firstDay = [0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334, 365];

    /// <summary>Days in a month.</summary>
    /// <param name="month">1 to 12.</param>
    /// <returns>28 to 31.</returns>
    public static int DaysIn(int month) => s_firstDay[month] - s_firstDay[month - 1];

    /// <summary>Day of the year, 0 to 364, on which a month starts.</summary>
    /// <param name="month">1 to 13; 13 gives 365, the end of the year.</param>
    public static int FirstDayOf(int month) => s_firstDay[month - 1];

    /// <summary>Month, 1 to 12, that holds a day.</summary>
    /// <param name="day">Day of the year, 0 to 364.</param>
    public static int MonthOfDay(int day)
    {
        int month = 1;
        while (month < 12 && day >= s_firstDay[month])
        {
            month++;
        }

        return month;
    }

    /// <summary>Month, day of the month and hour stamp (1 to 24) of an hour of the year.</summary>
    /// <param name="hour">0 to 8,759.</param>
    public static HourStamp StampOf(int hour)
    {
        int day = hour / 24;
        int month = MonthOfDay(day);
        return new HourStamp(month, day - s_firstDay[month - 1] + 1, hour % 24 + 1);
    }
}

/// <summary>A row's stamp: the hour that ends at it.</summary>
/// <param name="Month">1 to 12.</param>
/// <param name="Day">1 to 31.</param>
/// <param name="HourEnding">1 to 24.</param>
public readonly record struct HourStamp(int Month, int Day, int HourEnding);
