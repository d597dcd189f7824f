using Glazewright.Science.Guards;

namespace Glazewright.Science.Climate;

/// <summary>What lies over the floor when two curtains stand somewhere between open and drawn; the shares sum to 1.</summary>
/// <param name="OpenFraction">Under neither cloth.</param>
/// <param name="FirstFraction">Under the first alone.</param>
/// <param name="SecondFraction">Under the second alone.</param>
/// <param name="BothFraction">Under both.</param>
public readonly record struct CurtainShares(double OpenFraction, double FirstFraction, double SecondFraction, double BothFraction)
{
    /// <summary>Two curtains that are drawn from the same side, as bundles stacked at one truss are: the one drawn less lies all under or over the other.</summary>
    /// <param name="firstFraction">First curtain, 0 open to 1 drawn.</param>
    /// <param name="secondFraction">Second curtain, 0 open to 1 drawn.</param>
    /// <returns>The shares.</returns>
    public static CurtainShares Of(double firstFraction, double secondFraction) => firstFraction >= secondFraction
        ? new(1.0 - firstFraction, firstFraction - secondFraction, 0.0, secondFraction)
        : new(1.0 - secondFraction, 0.0, secondFraction - firstFraction, firstFraction);
}

/// <summary>What the model uses of the cloth that is drawn, whole or a mean over two.</summary>
internal struct ClothNow
{
    public double UpperEmissivity, LowerEmissivity, LongWaveTransmittance, PermeabilityMPerSK, PorosityFraction, FilmFraction;

    public static ClothNow Of(CurtainCloth c) => new()
    {
        UpperEmissivity = c.UpperEmissivity,
        LowerEmissivity = c.LowerEmissivity,
        LongWaveTransmittance = c.LongWaveTransmittance,
        PermeabilityMPerSK = c.PermeabilityMPerSK,
        PorosityFraction = c.PorosityFraction,
        FilmFraction = c.FilmFraction,
    };
}

/// <summary>
/// Two curtains, the first over the second, each with its own position. Where both are drawn they act as one cloth (<see cref="Both"/>), and over the closed area the
/// doubled and the single part count by their areas.
/// </summary>
public sealed class CurtainPair
{
    // Films at a cloth between still airs: 1.7 ΔT^⅓ at 2 K; in the gap two of them, one after the other; σ·4T³ at 10 °C. W/(m² K).
    private const double FilmWPerM2K = 2.14, GapFilmWPerM2K = 1.07, RadiantWPerM2K = 5.15;

    private readonly ClothNow one, two, doubled;

    /// <summary>Takes the two cloths.</summary>
    /// <param name="first">The upper one.</param>
    /// <param name="second">The lower one.</param>
    /// <exception cref="ArgumentOutOfRangeException">A property out of range.</exception>
    public CurtainPair(CurtainCloth first, CurtainCloth second)
    {
        one = ClothNow.Of(first);
        two = ClothNow.Of(second);
        doubled = ClothNow.Of(Both(first, second));
    }

    /// <summary>
    /// Two drawn cloths as one. Between them lies still air: its convection (two films in series) beside the radiation of their facing sides. That resistance is shared
    /// out over all that the pair exchanges with below and above, so that the heat through both is that of the two in series; air has two to pass, and what long wave
    /// passes the one meets the other.
    /// </summary>
    /// <param name="upper">Upper cloth.</param>
    /// <param name="lower">Lower cloth.</param>
    /// <returns>The one cloth.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A property out of range.</exception>
    public static CurtainCloth Both(CurtainCloth upper, CurtainCloth lower)
    {
        ArgumentNullException.ThrowIfNull(upper);
        ArgumentNullException.ThrowIfNull(lower);
        Within.Require(upper.PermeabilityMPerSK, 0, 1);
        Within.Require(lower.PermeabilityMPerSK, 0, 1);
        double k = SeriesFraction(upper, lower);
        double passes = upper.PermeabilityMPerSK + lower.PermeabilityMPerSK;
        double holes = upper.PorosityFraction * upper.PorosityFraction + lower.PorosityFraction * lower.PorosityFraction;
        return new CurtainCloth
        {
            UpperEmissivity = k * upper.UpperEmissivity,
            LowerEmissivity = k * lower.LowerEmissivity,
            FilmFraction = k,
            LongWaveTransmittance = upper.LongWaveTransmittance * lower.LongWaveTransmittance,
            CapacityJPerM2K = upper.CapacityJPerM2K + lower.CapacityJPerM2K,
            PermeabilityMPerSK = passes > 0 ? upper.PermeabilityMPerSK * lower.PermeabilityMPerSK / passes : 0,
            PorosityFraction = holes > 0 ? upper.PorosityFraction * lower.PorosityFraction / Math.Sqrt(holes) : 0,
        };
    }

    /// <summary>Heat that passes from side to side of two cloths over what would pass if they touched: both outer sides' resistance over that with the gap between them.</summary>
    private static double SeriesFraction(CurtainCloth upper, CurtainCloth lower)
    {
        double sides = 1 / (FilmWPerM2K + RadiantWPerM2K * upper.UpperEmissivity) + 1 / (FilmWPerM2K + RadiantWPerM2K * lower.LowerEmissivity);
        double a = upper.LowerEmissivity, b = lower.UpperEmissivity;
        double gap = 1 / (GapFilmWPerM2K + RadiantWPerM2K * a * b / Math.Max(a + b - a * b, 1e-6));
        return sides / (sides + gap);
    }

    /// <summary>What the closed area is like with both curtains somewhere.</summary>
    /// <param name="first">First curtain, 0 to 1.</param>
    /// <param name="second">Second curtain, 0 to 1.</param>
    /// <param name="now">The mean cloth.</param>
    /// <returns>Closed share of the floor: the larger of the two.</returns>
    internal double Closed(double first, double second, ref ClothNow now)
    {
        double closed = Math.Max(first, second);
        if (closed <= 0.0)
        {
            now = one;
            return 0.0;
        }

        double both = Math.Min(first, second) / closed;
        ClothNow single = first >= second ? one : two;
        now.UpperEmissivity = Mean(both, doubled.UpperEmissivity, single.UpperEmissivity);
        now.LowerEmissivity = Mean(both, doubled.LowerEmissivity, single.LowerEmissivity);
        now.LongWaveTransmittance = Mean(both, doubled.LongWaveTransmittance, single.LongWaveTransmittance);
        now.PermeabilityMPerSK = Mean(both, doubled.PermeabilityMPerSK, single.PermeabilityMPerSK);
        now.PorosityFraction = Mean(both, doubled.PorosityFraction, single.PorosityFraction);
        now.FilmFraction = Mean(both, doubled.FilmFraction, single.FilmFraction);
        return closed;
    }

    // 1 and 0 give the cloths as they are, to the bit.
    private static double Mean(double share, double doubled, double single) => share * doubled + (1.0 - share) * single;
}
