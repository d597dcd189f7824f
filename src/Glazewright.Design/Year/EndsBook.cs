using System.Runtime.CompilerServices;

namespace Glazewright.Design.Year;

/// <summary>Minutes in which one end of the house misses while fans pull air along it; without fans both ends are the mean. The targets themselves are counted against the mean.</summary>
internal struct EndsBook
{
    private int tooWarm, tooCold, aboveNever;

    /// <summary>Hours the hot end is above the band.</summary>
    public readonly double TooWarmH => tooWarm / 60.0;

    /// <summary>Hours the cold end is below the band.</summary>
    public readonly double TooColdH => tooCold / 60.0;

    /// <summary>Hours the hot end is above the temperature never to be exceeded.</summary>
    public readonly double AboveNeverH => aboveNever / 60.0;

    /// <summary>Counts one minute of a period with targets.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Add(in Asked ask, double oneEndC, double otherEndC, double bandK, double neverAboveC)
    {
        double hotC = Math.Max(oneEndC, otherEndC);
        tooWarm += ask.DepartureK(hotC) > bandK ? 1 : 0;
        tooCold += ask.DepartureK(Math.Min(oneEndC, otherEndC)) < -bandK ? 1 : 0;
        aboveNever += hotC > neverAboveC ? 1 : 0;
    }
}
