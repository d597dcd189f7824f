using System.Runtime.CompilerServices;

namespace Glazewright.Science.Climate;

/// <summary>
/// How the two airs go through a step. What flows to and from air in a step goes by its mean over the step, and the way from the mean to the end is that of an exponential: for one air among
/// surroundings that stand still the answer is exact, however long the step. Implicit Euler, which takes the end for the mean, calls a fifth too little of a swing that takes as long as its step.
/// </summary>
/// <remarks>
/// End over mean of a way that fades with x = Δt Σ G / C is <see cref="PadToFan.EndOverMean"/>(x): 2 for a straight line, 1 where all is over at once. Airs that mix (curtain open) go together
/// and keep a difference that fades for itself, so both are worked out and laid between by how well they mix. The network sees capacities and an exchange that are changed a little
/// (<see cref="BelowOver"/>, <see cref="AboveOver"/>, <see cref="Link"/>) and gives means; <see cref="Ends"/> gives the ends. What is stored is what flowed in, to the rounding.
/// </remarks>
internal readonly struct AirPair
{
    private readonly double perBelow, perAbove; // one over capacity

    /// <summary>Ends over means where the airs do not meet.</summary>
    public readonly double BelowOver, AboveOver;

    /// <summary>Taken from the exchange of the two for their difference, in capacity's unit a step; 0 or less.</summary>
    public readonly double Link;

    /// <summary>Works out how the airs go.</summary>
    /// <param name="below">Capacity of the air below over the step: W/K, or kg/s.</param>
    /// <param name="above">Of the air above.</param>
    /// <param name="fromBelow">What leaves the air below for whatever stands still, same unit.</param>
    /// <param name="fromAbove">What leaves the air above so.</param>
    /// <param name="downward">Stream from above to below.</param>
    /// <param name="upward">Stream from below to above.</param>
    /// <param name="exchange">What goes both ways between them.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public AirPair(double below, double above, double fromBelow, double fromAbove, double downward, double upward, double exchange)
    {
        double both = 1.0 / (below + above), shared = below * above * both;
        (perBelow, perAbove) = (1.0 / below, 1.0 / above);
        double mixes = exchange / shared, together = mixes / (1.0 + mixes), asOne = (fromBelow + fromAbove) * both;
        double b = (fromBelow + downward) * perBelow, a = (fromAbove + upward) * perAbove;
        b += together * (asOne - b);
        a += together * (asOne - a);
        double middle = 0.5 * (a + b);
        BelowOver = EndOverMean.Of(b);
        AboveOver = EndOverMean.Of(a);
        Link = shared * (EndOverMean.Of(middle + mixes) - EndOverMean.Of(middle));
    }

    private static Maths.OctaveTable EndOverMean => HouseModel.EndOverMean;

    /// <summary>From the means of a step to its ends.</summary>
    /// <param name="belowBefore">Start of the air below.</param>
    /// <param name="aboveBefore">Of the air above.</param>
    /// <param name="below">Mean of the air below.</param>
    /// <param name="above">Of the air above.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public (double Below, double Above) Ends(double belowBefore, double aboveBefore, double below, double above)
    {
        double b = below - belowBefore, a = above - aboveBefore, apart = Link * (b - a);
        return (belowBefore + (BelowOver * b) + (apart * perBelow), aboveBefore + (AboveOver * a) - (apart * perAbove));
    }
}
