using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Glazewright.Science.Climate;

/// <summary>
/// How the two airs go through a step. What flows to and from air in a step goes by its mean over the step, and the way from the mean to the end is that of an exponential: for one air among
/// surroundings that stand still the answer is exact, however long the step. Implicit Euler, which takes the end for the mean, makes a fifth too little of a swing that takes as long as its step.
/// </summary>
/// <remarks>
/// End over mean of a way that fades with x = Δt Σ G / C is <see cref="PadToFan.EndOverMean"/>(x): 2 for a straight line, 1 where all is over at once. Airs that mix (curtain open) go together
/// and keep a difference that fades for itself, so both are worked out and laid between by how well they mix. The network sees stores and an exchange that are changed a little
/// (<see cref="BelowStores"/>, <see cref="AboveStores"/>, <see cref="Link"/>) and gives means; <see cref="Ends"/> gives the ends. What is stored is what flowed in, to the rounding.
/// Exponentially fitted steps: Liniger and Willoughby 1970 (from memory); the pair is ours.
/// </remarks>
internal readonly struct AirPair
{
    private readonly double belowOver, aboveOver, perBelow, perAbove;

    /// <summary>What the air below stores for each unit that its mean goes, a second: W/K, or kg/s.</summary>
    public readonly double BelowStores;

    /// <summary>The air above.</summary>
    public readonly double AboveStores;

    /// <summary>What the exchange of the two is changed by, for their difference: 0 or less, never as much as the exchange.</summary>
    public readonly double Link;

    /// <summary>Works out how the airs go.</summary>
    /// <param name="stores">What they can store.</param>
    /// <param name="perS">One over the step, 1/s.</param>
    /// <param name="stepS">Step, s.</param>
    /// <param name="fromBelow">What leaves the air below for whatever stands still: W/K, or kg/s.</param>
    /// <param name="fromAbove">What leaves the air above so.</param>
    /// <param name="downward">Stream from above to below.</param>
    /// <param name="upward">Stream from below to above.</param>
    /// <param name="exchange">What goes both ways between them.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public AirPair(in AirStores stores, double perS, double stepS, double fromBelow, double fromAbove, double downward, double upward, double exchange)
    {
        (perBelow, perAbove) = (stores.PerBelow * stepS, stores.PerAbove * stepS);
        double mixes = exchange * stores.PerShared * stepS, together = mixes / (1.0 + mixes), asOne = (fromBelow + fromAbove) * stores.PerBoth * stepS;
        double b = (fromBelow + downward) * perBelow, a = (fromAbove + upward) * perAbove;
        b += together * (asOne - b);
        a += together * (asOne - a);
        double middle = 0.5 * (a + b);
        Vector256<double> over = EndOverMean(Vector256.Create(b, a, middle, middle + mixes));
        (belowOver, aboveOver) = (over.GetElement(0), over.GetElement(1));
        BelowStores = stores.Below * perS * belowOver;
        AboveStores = stores.Above * perS * aboveOver;
        Link = stores.Shared * perS * (over.GetElement(3) - over.GetElement(2));
    }

    private AirPair(in AirStores stores, double perS)
    {
        (belowOver, aboveOver) = (1.0, 1.0);
        (BelowStores, AboveStores) = (stores.Below * perS, stores.Above * perS);
        IsPlain = true;
    }

    /// <summary>Ends are taken for means: implicit Euler.</summary>
    public readonly bool IsPlain { get; }

    /// <summary>Airs whose ends are taken for their means: what cannot go below nothing, for where the curve would.</summary>
    /// <param name="stores">What they can store.</param>
    /// <param name="perS">One over the step, 1/s.</param>
    public static AirPair Plain(in AirStores stores, double perS) => new(in stores, perS);

    /// <summary>From the means of a step to its ends.</summary>
    /// <param name="belowBefore">Start of the air below.</param>
    /// <param name="aboveBefore">Of the air above.</param>
    /// <param name="below">Mean of the air below.</param>
    /// <param name="above">Of the air above.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public (double Below, double Above) Ends(double belowBefore, double aboveBefore, double below, double above)
    {
        double b = below - belowBefore, a = above - aboveBefore, apart = Link * (b - a);
        return (belowBefore + (belowOver * b) + (apart * perBelow), aboveBefore + (aboveOver * a) - (apart * perAbove));
    }

    /// <summary><see cref="PadToFan.EndOverMean"/> as a fraction of two polynomials, right at both ends and within 4e-5 between (fitted by us; test: AirPairTests).</summary>
    /// <param name="x">0 or more.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static Vector256<double> EndOverMean(Vector256<double> x)
    {
        const double A0 = 281.28191992, A1 = 120.37269814, A2 = 31.370948579, A3 = 4.6712407014, B1 = 147.24537920, B2 = 37.296276208;
        Vector256<double> under = Fma(Fma(Fma(x + Vector256.Create(A3), x, A2), x, A1), x, A0), over = Fma(Fma(Fma(x + Vector256.Create(A3 + 1.0), x, B2), x, B1), x, 2.0 * A0);
        return over / under;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector256<double> Fma(Vector256<double> a, Vector256<double> b, double plus) => Vector256.FusedMultiplyAdd(a, b, Vector256.Create(plus));
}

/// <summary>What two airs can store, J/K or kg, with what is worked out of it once.</summary>
/// <param name="Below">The air below the curtain.</param>
/// <param name="Above">The air above.</param>
internal readonly record struct AirStores(double Below, double Above)
{
    public readonly double PerBelow = 1.0 / Below, PerAbove = 1.0 / Above, PerBoth = 1.0 / (Below + Above);

    /// <summary>Of their difference.</summary>
    public readonly double Shared = Below * Above / (Below + Above), PerShared = (Below + Above) / (Below * Above);
}
