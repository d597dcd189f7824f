using Glazewright.Mechanics.Loads;

namespace Glazewright.Mechanics.Checks;

/// <summary>A nominal strength with its factors.</summary>
/// <param name="NominalValue">Nominal strength, in the unit the member says (N or N·m).</param>
/// <param name="ResistanceFactor">φ of LRFD.</param>
/// <param name="SafetyFactor">Ω of ASD.</param>
/// <param name="Limit">What limits it.</param>
public sealed record Strength(double NominalValue, double ResistanceFactor, double SafetyFactor, StrengthLimit Limit)
{
    /// <summary>Available strength by a method.</summary>
    /// <param name="method">LRFD or ASD.</param>
    /// <returns>φ·nominal or nominal/Ω, in the nominal's unit.</returns>
    public double Available(DesignMethod method) =>
        method == DesignMethod.Lrfd ? ResistanceFactor * NominalValue : NominalValue / SafetyFactor;
}

/// <summary>What limits a strength.</summary>
public enum StrengthLimit
{
    /// <summary>Yielding of the whole section.</summary>
    Yielding,

    /// <summary>Flexural buckling of the member.</summary>
    FlexuralBuckling,

    /// <summary>Flexural buckling with thin walls counted at their effective width.</summary>
    ThinWallBuckling,

    /// <summary>Local buckling of a compression wall in bending.</summary>
    LocalBuckling,

    /// <summary>Lateral-torsional buckling.</summary>
    LateralTorsionalBuckling,

    /// <summary>Shear yielding or buckling of the walls.</summary>
    Shear,
}

/// <summary>Something a check does not cover.</summary>
public enum CheckGap
{
    /// <summary>Walls thinner than the rules implemented here allow for.</summary>
    ThinWalls,

    /// <summary>Slenderness over 200 in compression (a recommendation of AISC 360 E2).</summary>
    VerySlender,
}
