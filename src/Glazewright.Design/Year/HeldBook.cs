namespace Glazewright.Design.Year;

/// <summary>Minutes held and not held, one tally for each month, crop period (or none) and part of the day; whatever is asked for is added up from these.</summary>
/// <param name="periods">Crop periods of the schedule.</param>
internal sealed class HeldBook(int periods)
{
    private readonly HeldTally[] tallies = new HeldTally[12 * (periods + 1) * 2];

    /// <summary>The tally that a minute belongs to.</summary>
    /// <param name="month">0 to 11.</param>
    /// <param name="period">Crop period, −1 in a gap.</param>
    /// <param name="day">Day or night.</param>
    public ref HeldTally At(int month, int period, bool day) => ref tallies[(((month * (periods + 1)) + period + 1) * 2) + (day ? 1 : 0)];

    /// <summary>The whole year.</summary>
    public HeldTally Year() => Sum(tallies);

    /// <summary>One month.</summary>
    /// <param name="month">0 to 11.</param>
    public HeldTally Month(int month) => Sum(tallies.AsSpan(month * (periods + 1) * 2, (periods + 1) * 2));

    /// <summary>The days or the nights of one crop period.</summary>
    /// <param name="period">Crop period.</param>
    /// <param name="day">Day or night.</param>
    public HeldTally Period(int period, bool day)
    {
        HeldTally all = default;
        for (int month = 0; month < 12; month++)
        {
            all.Add(in At(month, period, day));
        }

        return all;
    }

    private static HeldTally Sum(ReadOnlySpan<HeldTally> parts)
    {
        HeldTally all = default;
        foreach (ref readonly HeldTally part in parts)
        {
            all.Add(in part);
        }

        return all;
    }
}
