using Glazewright.Science.Guards;

namespace Glazewright.Science.Heat;

/// <summary>How the edge of a slab is insulated, as the perimeter table lists it. R in h ft² °F/Btu, as the trade sells it.</summary>
public enum SlabEdge
{
    /// <summary>No insulation: also for soil and gravel floors (common practice).</summary>
    Bare,

    /// <summary>R-5 to 2 ft down.</summary>
    TwoFeetDownR5,

    /// <summary>R-10 to 2 ft down.</summary>
    TwoFeetDownR10,

    /// <summary>R-15 to 2 ft down.</summary>
    TwoFeetDownR15,

    /// <summary>R-5 to 4 ft down.</summary>
    FourFeetDownR5,

    /// <summary>R-10 to 4 ft down.</summary>
    FourFeetDownR10,

    /// <summary>R-15 to 4 ft down.</summary>
    FourFeetDownR15,
}

/// <summary>Heat lost through a floor on the ground: the perimeter rule and the standard's equivalent-thickness method.</summary>
public static class SlabOnGround
{
    /// <summary>One Btu/(h ft °F) in W/(m K).</summary>
    public const double PerimeterUnitWPerMK = 1.730735;

    private const double IndoorFilmM2KPerW = 0.17;
    private const double OutdoorFilmM2KPerW = 0.04;

    /// <summary>Perimeter factor of an unheated slab.</summary>
    /// <param name="edge">Edge insulation.</param>
    /// <returns>F, W per metre of perimeter and kelvin between inside and outside air.</returns>
    /// <remarks>State energy code table (WAC 51-11C, A106.1), read; the same rows stand in ASHRAE 90.1 appendix A.</remarks>
    public static double FFactorWPerMK(SlabEdge edge) => PerimeterUnitWPerMK * edge switch
    {
        SlabEdge.Bare => 0.73,
        SlabEdge.TwoFeetDownR5 => 0.58,
        SlabEdge.TwoFeetDownR10 => 0.54,
        SlabEdge.TwoFeetDownR15 => 0.52,
        SlabEdge.FourFeetDownR5 => 0.54,
        SlabEdge.FourFeetDownR10 => 0.48,
        SlabEdge.FourFeetDownR15 => 0.45,
        _ => throw new ArgumentOutOfRangeException(nameof(edge), edge, "Not in the table."),
    };

    /// <summary>Heat loss by the perimeter rule.</summary>
    /// <param name="fFactorWPerMK">F, W/(m K), 0 to 5.</param>
    /// <param name="perimeterM">Exposed perimeter, m, 0 to 100 000.</param>
    /// <param name="differenceK">Inside air less outside air, K, −120 to 120.</param>
    /// <returns>Heat loss, W.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static double PerimeterLossW(double fFactorWPerMK, double perimeterM, double differenceK)
    {
        Within.Require(fFactorWPerMK, 0, 5);
        Within.Require(perimeterM, 0, 100_000);
        Within.Require(differenceK, -120, 120);
        return fFactorWPerMK * perimeterM * differenceK;
    }

    /// <summary>Equivalent thickness of a slab: the ground that resists as much.</summary>
    /// <param name="wallThicknessM">Full thickness of the walls, m, 0 to 2.</param>
    /// <param name="slabM2KPerW">Resistance of the slab and its all-over insulation, m² K/W, 0 to 20.</param>
    /// <param name="groundWPerMK">Conductivity of the ground, W/(m K), 0.2 to 5.</param>
    /// <returns>Equivalent thickness, m.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    /// <remarks>ISO 13370:2017, eq. for d_t, downward film 0.17 and outdoor film 0.04 m² K/W; from memory.</remarks>
    public static double EquivalentThicknessM(double wallThicknessM, double slabM2KPerW, double groundWPerMK)
    {
        Within.Require(wallThicknessM, 0, 2);
        Within.Require(slabM2KPerW, 0, 20);
        Within.Require(groundWPerMK, 0.2, 5);
        return wallThicknessM + groundWPerMK * (IndoorFilmM2KPerW + slabM2KPerW + OutdoorFilmM2KPerW);
    }

    /// <summary>U-value of a slab on the ground between inside and outside air, steady.</summary>
    /// <param name="areaM2">Floor area, m², 1 to 1e7.</param>
    /// <param name="perimeterM">Exposed perimeter, m, 1 to 100 000.</param>
    /// <param name="equivalentThicknessM">From <see cref="EquivalentThicknessM"/>, m, 0.01 to 100.</param>
    /// <param name="groundWPerMK">Conductivity of the ground, W/(m K), 0.2 to 5.</param>
    /// <returns>U-value, W/(m² K).</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    /// <remarks>ISO 13370:2017, slab-on-ground floors, characteristic dimension B′ = A/(P/2); from memory.</remarks>
    public static double UValueWPerM2K(
        double areaM2, double perimeterM, double equivalentThicknessM, double groundWPerMK)
    {
        Within.Require(areaM2, 1, 1e7);
        Within.Require(perimeterM, 1, 100_000);
        Within.Require(equivalentThicknessM, 0.01, 100);
        Within.Require(groundWPerMK, 0.2, 5);
        double breadthM = areaM2 / (0.5 * perimeterM);
        return equivalentThicknessM < breadthM
            ? 2 * groundWPerMK / (Math.PI * breadthM + equivalentThicknessM)
                * Math.Log(Math.PI * breadthM / equivalentThicknessM + 1)
            : groundWPerMK / (0.457 * breadthM + equivalentThicknessM);
    }

    /// <summary>What insulation down the edge takes off, per metre of perimeter.</summary>
    /// <param name="depthM">Depth of the insulation below ground, m, 0 to 3.</param>
    /// <param name="insulationThicknessM">Its thickness, m, 0 to 0.5.</param>
    /// <param name="insulationWPerMK">Its conductivity, W/(m K), 0.01 to 0.2.</param>
    /// <param name="equivalentThicknessM">Of the slab without it, m, 0.01 to 100.</param>
    /// <param name="groundWPerMK">Conductivity of the ground, W/(m K), 0.2 to 5.</param>
    /// <returns>Line transmittance, W/(m K), zero or negative: add perimeter × this to area × U.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    /// <remarks>ISO 13370:2017, vertical edge insulation; from memory.</remarks>
    public static double EdgeWPerMK(
        double depthM,
        double insulationThicknessM,
        double insulationWPerMK,
        double equivalentThicknessM,
        double groundWPerMK)
    {
        Within.Require(depthM, 0, 3);
        Within.Require(insulationThicknessM, 0, 0.5);
        Within.Require(insulationWPerMK, 0.01, 0.2);
        Within.Require(equivalentThicknessM, 0.01, 100);
        Within.Require(groundWPerMK, 0.2, 5);
        double extraM = Math.Max(insulationThicknessM / insulationWPerMK - insulationThicknessM / groundWPerMK, 0) * groundWPerMK;
        return -groundWPerMK / Math.PI
            * (Math.Log(2 * depthM / equivalentThicknessM + 1)
                - Math.Log(2 * depthM / (equivalentThicknessM + extraM) + 1));
    }
}
