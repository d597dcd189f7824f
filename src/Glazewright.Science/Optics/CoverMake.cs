using Glazewright.Science.Guards;

namespace Glazewright.Science.Optics;

/// <summary>How a cover is made, as far as light can tell.</summary>
public abstract record CoverMake
{
    private CoverMake()
    {
    }

    /// <summary>Plain parallel sheets.</summary>
    /// <param name="Sheet">The sheet.</param>
    /// <param name="Count">How many.</param>
    public sealed record Plain(Sheet Sheet, int Count) : CoverMake;

    /// <summary>A profiled or multiwall sheet: plain walls and the ribs between them (<see cref="RibbedSheet"/>).</summary>
    /// <param name="Wall">One wall.</param>
    /// <param name="Walls">Walls that light crosses.</param>
    /// <param name="NominalTransmittanceFraction">Stated transmittance at normal incidence.</param>
    /// <param name="RibDepthRatio">Depth of the ribs, all layers together, over their spacing, 0 to 5.</param>
    public sealed record Ribbed(Sheet Wall, int Walls, double NominalTransmittanceFraction, double RibDepthRatio) : CoverMake;

    /// <summary>An opaque panel.</summary>
    /// <param name="InsideReflectanceFraction">Of its inside face.</param>
    public sealed record Opaque(double InsideReflectanceFraction) : CoverMake;
}

/// <summary>State of a cover in use: stated factors, not computed.</summary>
/// <param name="DirtFraction">Share of the transmitted light that dirt takes (kept as heat in the cover), 0 to 0.5.</param>
/// <param name="AgeingFraction">Share of the transmitted light that ageing takes (thrown back and kept half each), 0 to 0.5.</param>
/// <param name="CondensationFraction">Share of the transmitted light that drops on the inner face throw back, 0 to 0.5.</param>
public readonly record struct CoverCondition(double DirtFraction, double AgeingFraction, double CondensationFraction = 0)
{
    /// <summary>New and clean.</summary>
    public static CoverCondition New => new(0, 0);

    /// <summary>A washed house some years old: dirt 0.05, ageing 0.02 (common practice: dirt factors of 0.90 to 0.97).</summary>
    public static CoverCondition InUse => new(0.05, 0.02);
}

/// <summary>Makes the table of a cover.</summary>
public static class CoverTable
{
    /// <summary>The cover's table at each degree, and for a ribbed sheet at each five degrees from its ribs.</summary>
    /// <param name="make">How it is made.</param>
    /// <param name="condition">Its state.</param>
    /// <param name="hazeFraction">Scattered share of what passes, 0 to 1.</param>
    /// <returns>The table.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range, NaN, or a stated transmittance above what the walls alone would pass.</exception>
    public static CoverOptics Of(CoverMake make, CoverCondition condition, double hazeFraction)
    {
        ArgumentNullException.ThrowIfNull(make);
        Within.Require(condition.DirtFraction, 0, 0.5);
        Within.Require(condition.AgeingFraction, 0, 0.5);
        Within.Require(condition.CondensationFraction, 0, 0.5);
        int columns = make is CoverMake.Ribbed ? CoverOptics.RibEntries : 1;
        var rows = new LightShares[CoverOptics.Entries * columns];
        for (int i = 0; i < rows.Length; i++)
        {
            rows[i] = InUse(NewAt(make, i / columns, i % columns * CoverOptics.RibStepDeg), condition);
        }

        return CoverOptics.FromTable(rows, hazeFraction);
    }

    private static LightShares NewAt(CoverMake make, double incidenceDeg, double acrossDeg)
    {
        switch (make)
        {
            case CoverMake.Plain plain:
                return SheetStack.At(incidenceDeg, plain.Sheet, plain.Count);
            case CoverMake.Ribbed ribbed:
                return RibbedSheet.At(ribbed, incidenceDeg, acrossDeg);
            case CoverMake.Opaque opaque:
                Within.Require(opaque.InsideReflectanceFraction, 0, 1);
                return new LightShares(0, opaque.InsideReflectanceFraction, 1 - opaque.InsideReflectanceFraction);
            default:
                throw new ArgumentOutOfRangeException(nameof(make));
        }
    }

    private static LightShares InUse(LightShares clean, CoverCondition condition)
    {
        double aged = clean.TransmittanceFraction * condition.AgeingFraction;
        double dirty = (clean.TransmittanceFraction - aged) * condition.DirtFraction;
        double wet = (clean.TransmittanceFraction - aged - dirty) * condition.CondensationFraction;
        double transmittance = clean.TransmittanceFraction - aged - dirty - wet;
        double reflectance = clean.ReflectanceFraction + (aged / 2) + wet;
        return new LightShares(transmittance, reflectance, Math.Max(0, 1 - transmittance - reflectance));
    }
}
