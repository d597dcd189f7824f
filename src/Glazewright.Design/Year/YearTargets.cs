using System.Runtime.CompilerServices;
using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Program;
using Glazewright.Science.Weather;

namespace Glazewright.Design.Year;

/// <summary>What the grower asks for at a minute: ramps followed.</summary>
/// <param name="Period">Index of the crop period, −1 in a gap.</param>
/// <param name="Day">Day part.</param>
/// <param name="TemperatureC">Target, °C.</param>
/// <param name="HumidityPercent">Target, %; 0 when not asked.</param>
/// <param name="Empty">Nothing grows: the temperature is a floor, and warmer is no miss.</param>
/// <param name="VpdKPa">Deficit asked in place of a humidity, kPa; 0 when it is not.</param>
internal readonly record struct Asked(int Period, bool Day, double TemperatureC, double HumidityPercent, bool Empty, double VpdKPa = 0)
{
    /// <summary>How far the air is from what is asked, K; an empty house is never too warm.</summary>
    /// <param name="airC">Air at the crop, °C.</param>
    public double DepartureK(double airC) => Empty ? Math.Min(airC - TemperatureC, 0) : airC - TemperatureC;
}

/// <summary>The schedule laid over the year: period of each day, start and end of its day part.</summary>
internal sealed class YearTargets
{
    public const int Days = 365;

    private const int MinutesInDay = 1440;

    private readonly EqList<CropPeriod> schedule;
    private readonly int[] periodOfDay = new int[Days];
    private readonly DayPart[] dayParts = new DayPart[Days];
    private Asked steady = new(-1, false, 0, 0, true); // asked once a ramp is over, until another day part or period begins
    private int steadySince;

    public YearTargets(EqList<CropPeriod> schedule, MinuteWeather weather)
    {
        this.schedule = schedule;
        SunriseMinute = new int[Days];
        SunsetMinute = new int[Days];
        for (int day = 0; day < Days; day++)
        {
            SunHours sun = weather.SunByDay[day];
            (SunriseMinute[day], SunsetMinute[day]) = (sun.RiseMinute, sun.SetMinute);
            DaysWithoutSun += sun.StaysDown ? 1 : 0;
            DaysWithoutNight += sun.StaysUp ? 1 : 0;
            periodOfDay[day] = PeriodOf(day);
            if (periodOfDay[day] >= 0)
            {
                CropPeriod p = schedule[periodOfDay[day]];
                dayParts[day] = DayPart.Between(
                    KindOf(p.DayStarts), Minute(p.DayStarts, day), KindOf(p.DayEnds), Minute(p.DayEnds, day), MinutesInDay);
            }
        }
    }

    /// <summary>Days on which the sun does not rise.</summary>
    public int DaysWithoutSun { get; }

    /// <summary>Days on which it does not set.</summary>
    public int DaysWithoutNight { get; }

    /// <summary>First minute of each day with the sun up (720 where it never rises, 0 where it never sets).</summary>
    public int[] SunriseMinute { get; }

    /// <summary>First minute of each day after sunset (720 where the sun never rises, 1440 where it never sets).</summary>
    public int[] SunsetMinute { get; }

    /// <summary>Period of a day, −1 in a gap.</summary>
    /// <param name="day">0 to 364.</param>
    public int Period(int day) => periodOfDay[day];

    /// <summary>What is asked for at a minute of the year.</summary>
    /// <param name="minute">Minute of the year.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public Asked At(int minute)
    {
        int day = minute / 1440, of = minute - day * 1440, period = periodOfDay[day];
        if (period < 0)
        {
            return new Asked(-1, false, 0, 0, true);
        }

        (bool isDay, int since) = dayParts[day].At(of, MinutesInDay);
        if (since >= steadySince && isDay == steady.Day && period == steady.Period)
        {
            return steady;
        }

        CropPeriod p = schedule[period];
        ClimateTarget now = isDay ? p.Day : p.Night, before = isDay ? p.Night : p.Day;
        double done = p.RampMinutes > 0 && since < p.RampMinutes ? (since + 0.5) / p.RampMinutes : 1;
        double humidity = now.HumidityPercent > 0 && before.HumidityPercent > 0
            ? before.HumidityPercent + (now.HumidityPercent - before.HumidityPercent) * done
            : now.HumidityPercent;
        double deficit = now.VpdKPa is double kPa ? before.VpdKPa is double from ? from + ((kPa - from) * done) : kPa : 0;
        Asked asked = new(period, isDay, before.TemperatureC + (now.TemperatureC - before.TemperatureC) * done, humidity, p.PlantedFraction <= 0, deficit);
        if (done >= 1)
        {
            (steady, steadySince) = (asked, p.RampMinutes);
        }

        return asked;
    }

    private static DayPart.Mark KindOf(DayMark mark) => mark switch
    {
        DayMark.Clock => DayPart.Mark.Clock,
        DayMark.Sunrise => DayPart.Mark.Sunrise,
        DayMark.Sunset => DayPart.Mark.Sunset,
        _ => throw new ArgumentOutOfRangeException(nameof(mark)),
    };

    // Not brought into the day: an hour before a sunrise at 00:30 is the evening before.
    private int Minute(DayMark mark, int day) => mark switch
    {
        DayMark.Clock c => c.Minute,
        DayMark.Sunrise s => SunriseMinute[day] + s.OffsetMinutes,
        DayMark.Sunset s => SunsetMinute[day] + s.OffsetMinutes,
        _ => throw new ArgumentOutOfRangeException(nameof(mark)),
    };

    private int PeriodOf(int day)
    {
        int week = Math.Min(day / 7 + 1, 52);
        for (int i = 0; i < schedule.Count; i++)
        {
            CropPeriod p = schedule[i];
            if (p.FromWeek <= p.ToWeek ? week >= p.FromWeek && week <= p.ToWeek : week >= p.FromWeek || week <= p.ToWeek)
            {
                return i;
            }
        }

        return -1;
    }
}
