namespace Glazewright.Science.Weather;

/// <summary>The minutes of a calendar day between sunrise and sunset.</summary>
/// <param name="RiseMinute">First minute with the sun up before its highest stand, 0 to 1440.</param>
/// <param name="SetMinute">First minute with it down after that, 0 to 1440.</param>
/// <param name="StaysDown">It does not rise: both marks stand at noon by the clock.</param>
/// <param name="StaysUp">It does not set: the marks stand at the day's ends.</param>
public readonly record struct SunHours(int RiseMinute, int SetMinute, bool StaysDown, bool StaysUp)
{
    /// <summary>Sine of −0.8333°: 34′ of refraction and 16′ of disc, as almanacs and clocks have it.</summary>
    private const double Horizon = -0.014543;

    /// <summary>Finds them.</summary>
    /// <param name="up">Cosine of the zenith angle of the sun's centre, refraction left out, a value a minute.</param>
    /// <remarks>
    /// Counted from the highest stand outwards: where summer's sun sets a little after midnight, that tail belongs to the day before and does not make the whole
    /// day light.
    /// </remarks>
    public static SunHours Of(ReadOnlySpan<double> up)
    {
        int highest = 0;
        bool stays = true;
        for (int m = 0; m < up.Length; m++)
        {
            highest = up[m] > up[highest] ? m : highest;
            stays &= up[m] > Horizon;
        }

        if (!(up[highest] > Horizon))
        {
            return new SunHours(up.Length / 2, up.Length / 2, true, false);
        }

        int rise = highest, set = highest + 1;
        while (rise > 0 && up[rise - 1] > Horizon)
        {
            rise--;
        }

        while (set < up.Length && up[set] > Horizon)
        {
            set++;
        }

        return new SunHours(rise, set, false, stays);
    }

    /// <summary>Finds those of each day of a year.</summary>
    /// <param name="up">The cosine for each minute of the year.</param>
    internal static SunHours[] ByDay(MinuteColumn up)
    {
        const int MinutesInDay = 1440;
        SunHours[] days = new SunHours[up.Length / MinutesInDay];
        double[] day = new double[MinutesInDay];
        for (int d = 0; d < days.Length; d++)
        {
            up.CopyTo(d * MinutesInDay, day);
            days[d] = Of(day);
        }

        return days;
    }
}
