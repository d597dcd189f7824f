using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Science.Weather;

namespace Glazewright.Design.Duty;

/// <summary>Which crop period rules when, and which night target meets the coldest weather.</summary>
public static class CropWeeks
{
    /// <summary>Weeks in the schedule's year; the last takes the year's odd days.</summary>
    public const int Weeks = 52;

    /// <summary>Week of a day.</summary>
    /// <param name="day">Day of the year, 0 to 364.</param>
    /// <returns>1 to 52.</returns>
    public static int OfDay(int day) => Math.Min(day / 7 + 1, Weeks);

    /// <summary>The period that rules a week.</summary>
    /// <param name="schedule">Schedule without gaps.</param>
    /// <param name="week">1 to 52.</param>
    /// <returns>The period.</returns>
    /// <exception cref="ArgumentException">A gap in the schedule.</exception>
    public static CropPeriod In(EqList<CropPeriod> schedule, int week) =>
        schedule.FirstOrDefault(p => p.FromWeek <= p.ToWeek
            ? week >= p.FromWeek && week <= p.ToWeek
            : week >= p.FromWeek || week <= p.ToWeek)
        ?? throw new ArgumentException($"No crop period covers week {week}.", nameof(schedule));

    /// <summary>The warmest night target among the weeks that can meet the design cold.</summary>
    /// <param name="schedule">Schedule without gaps.</param>
    /// <param name="year">Weather.</param>
    /// <param name="withinK">A week can meet it when its coldest hour is within this of the year's coldest, K.</param>
    /// <returns>The period whose night target that is.</returns>
    internal static CropPeriod WarmestInTheCold(EqList<CropPeriod> schedule, WeatherYear year, double withinK)
    {
        double[] coldest = new double[Weeks];
        Array.Fill(coldest, double.PositiveInfinity);
        for (int hour = 0; hour < CommonYear.Hours; hour++)
        {
            int week = OfDay(hour / 24) - 1;
            coldest[week] = Math.Min(coldest[week], year.DryBulbC[hour]);
        }

        double least = coldest.Min();
        return Enumerable.Range(0, Weeks)
            .Where(w => coldest[w] <= least + withinK)
            .Select(w => In(schedule, w + 1))
            .MaxBy(p => p.Night.TemperatureC)!;
    }
}
