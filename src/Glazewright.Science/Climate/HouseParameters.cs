using Glazewright.Science.Guards;

namespace Glazewright.Science.Climate;

/// <summary>Which published law of wind convection the clear shell follows.</summary>
public enum OuterWindLaw
{
    /// <summary>Gabled glass roofs: 2.8 + 1.2 v below 4 m/s, 2.5 v^0.8 above (Bot 1983, thesis Wageningen; from memory).</summary>
    Gabled,

    /// <summary>Smooth film tunnels: 0.95 + 6.76 v^0.49 (Papadakis, Frangoudakis, Kyritsis 1992, J. Agric. Eng. Res. 51:191; from memory).</summary>
    Tunnel,
}

/// <summary>One part of the shell: all faces of one kind that meet one air space.</summary>
public sealed record ShellPart
{
    /// <summary>A part that is not there.</summary>
    public static ShellPart None { get; } = new() { AreaM2 = 0.0 };

    /// <summary>Area, m²; 0 where the house has no such part.</summary>
    public required double AreaM2 { get; init; }

    /// <summary>Conductance of the sheet itself, surface to surface, W/(m² K): 1/(1/U − 1/8 − 1/23) for a stated U.</summary>
    public double CoreWPerM2K { get; init; } = 5.0;

    /// <summary>Heat capacity, J/(m² K), halved between inner and outer surface.</summary>
    public double CapacityJPerM2K { get; init; } = 3000.0;

    /// <summary>Long-wave emissivity of the inner face, 0 to 1.</summary>
    public double InnerEmissivity { get; init; } = 0.9;

    /// <summary>Long-wave emissivity of the outer face, 0 to 1.</summary>
    public double OuterEmissivity { get; init; } = 0.9;

    /// <summary>Share of the outer face's hemisphere that is sky: (1 + cos slope) / 2 on open ground.</summary>
    public double SkyViewFraction { get; init; } = 0.5;

    /// <summary>Cosine of the slope, 1 flat roof to 0 wall; walls (below 0.2) take the law of vertical plates.</summary>
    public double SlopeCosine { get; init; }

    /// <summary>Long-wave transmittance, 0 for glass, acrylic and polycarbonate, 0.2 to 0.6 for thin films; used for the clear part above.</summary>
    public double LongWaveTransmittance { get; init; }

    /// <summary>Roughness of the outer face of an opaque part, 1 glass to 2.17 stucco (<see cref="HouseFilms.OpaqueOuterWPerM2K(double, double, double)"/>); clear parts have the house's wind law.</summary>
    public double OuterRoughnessFactor { get; init; } = HouseFilms.SmoothRoughnessFactor;

    internal void Check()
    {
        Within.Require(OuterRoughnessFactor, 1, 2.5);
        Within.Require(AreaM2, 0, 1e6);
        Within.Require(CoreWPerM2K, 0.05, 1e4);
        Within.Require(CapacityJPerM2K, 0, 1e7);
        Within.Require(InnerEmissivity, 0, 1);
        Within.Require(OuterEmissivity, 0, 1);
        Within.Require(SkyViewFraction, 0, 1);
        Within.Require(SlopeCosine, 0, 1);
        Within.Require(LongWaveTransmittance, 0, 1);
    }
}

/// <summary>The cloth that parts the two air spaces when it is closed.</summary>
public sealed record CurtainCloth
{
    /// <summary>Emissivity of the upper face.</summary>
    public double UpperEmissivity { get; init; } = 0.6;

    /// <summary>Emissivity of the lower face.</summary>
    public double LowerEmissivity { get; init; } = 0.6;

    /// <summary>Long-wave transmittance of the cloth.</summary>
    public double LongWaveTransmittance { get; init; } = 0.1;

    /// <summary>Heat capacity, J/(m² K).</summary>
    public double CapacityJPerM2K { get; init; } = 300.0;

    /// <summary>Air through the closed cloth: m/s for a difference of 1 K to the power 2/3 (tight 0.05e-3 to loose 0.25e-3: after Balemans 1989, thesis Ghent; from memory).</summary>
    public double PermeabilityMPerSK { get; init; } = 0.1e-3;

    /// <summary>Area of the pores over area of the cloth, for pressure-driven flow to roof vents and upper fans.</summary>
    public double PorosityFraction { get; init; } = 0.01;

    /// <summary>Convection at its two sides over that of a plain cloth: below 1 where it stands for two cloths with still air between them.</summary>
    public double FilmFraction { get; init; } = 1.0;
}

/// <summary>One layer of the ground under the floor.</summary>
/// <param name="ThicknessM">Thickness, m.</param>
/// <param name="ConductivityWPerMK">Conductivity, W/(m K): dry soil 0.5, moist 1.0, wet 2.0, concrete 1.5.</param>
/// <param name="CapacityJPerM3K">Heat capacity, J/(m³ K): about 2.0e6.</param>
public readonly record struct GroundLayer(double ThicknessM, double ConductivityWPerMK, double CapacityJPerM3K);

/// <summary>A greenhouse as the two-zone climate model sees it: sizes and properties, no job.</summary>
public sealed record HouseParameters
{
    /// <summary>Number of ground layers the model carries.</summary>
    public const int GroundLayerCount = 6;

    /// <summary>Floor area, m².</summary>
    public required double FloorAreaM2 { get; init; }

    /// <summary>Air below the curtain's level, m³.</summary>
    public required double AirBelowM3 { get; init; }

    /// <summary>Air above it, m³.</summary>
    public required double AirAboveM3 { get; init; }

    /// <summary>Equal parts that the house is cut into along its length, of which this is one: fans' air goes through all of them.</summary>
    public int PartsAlong { get; init; } = 1;

    /// <summary>Clear shell that meets the air above (roof, gable tops).</summary>
    public required ShellPart UpperClear { get; init; }

    /// <summary>Clear shell that meets the air below (walls).</summary>
    public required ShellPart LowerClear { get; init; }

    /// <summary>Opaque shell that meets the air above.</summary>
    public ShellPart UpperOpaque { get; init; } = ShellPart.None;

    /// <summary>Opaque shell that meets the air below.</summary>
    public ShellPart LowerOpaque { get; init; } = ShellPart.None;

    /// <summary>The law of wind convection outside on the clear parts.</summary>
    public OuterWindLaw WindLaw { get; init; } = OuterWindLaw.Gabled;

    /// <summary>The curtain's cloth; with none, leave it and keep the closed fraction at 0.</summary>
    public CurtainCloth Curtain { get; init; } = new();

    /// <summary>Cloth of a second curtain that hangs under the first and moves by itself; null where there is none.</summary>
    public CurtainCloth? SecondCurtain { get; init; }

    /// <summary>Distance over which the curtain's gap opens, m (one span's width).</summary>
    public double CurtainTravelM { get; init; } = 8.0;

    /// <summary>Share of what the floor radiates upward that meets the curtain's plane directly (parallel rectangles); the rest meets the walls.</summary>
    public double FloorToCurtainViewFraction { get; init; } = 0.7;

    /// <summary>Emissivity of floor and benches.</summary>
    public double FloorEmissivity { get; init; } = 0.95;

    /// <summary>Ground layers from the floor downward; six of them.</summary>
    public IReadOnlyList<GroundLayer> Ground { get; init; } =
        [new(0.025, 1.0, 2.0e6), new(0.05, 1.0, 2.0e6), new(0.1, 1.0, 2.0e6), new(0.2, 1.0, 2.0e6), new(0.4, 1.0, 2.0e6), new(0.8, 1.0, 2.0e6)];

    /// <summary>Loss at the floor's edge to outdoors, W/K (perimeter × 0.7 insulated to 1.4 bare W/(m K)).</summary>
    public double EdgeLossWPerK { get; init; }

    /// <summary>Heat capacity that follows the air within minutes (bars, benches, boundary layers), J/(m² K) of floor.</summary>
    public double FastMassJPerM2K { get; init; } = 7000.0;

    /// <summary>Slow thermal mass (water barrels, full benches), J/K.</summary>
    public double MassJPerK { get; init; }

    /// <summary>Surface of that mass, m², with 5.5 W/(m² K).</summary>
    public double MassSurfaceM2 { get; init; }

    /// <summary>Leakage by stack effect, m³/s per √K.</summary>
    public double LeakageStackM3PerSRootK { get; init; }

    /// <summary>Leakage by wind, m³/s per m/s.</summary>
    public double LeakageWindM2 { get; init; }

    /// <summary>Leakage that is always there, m³/s.</summary>
    public double LeakageBaseM3PerS { get; init; }

    /// <summary>Discharge coefficient of vents where nothing else is said.</summary>
    public const double UsualVentDischargeFactor = 0.65;

    /// <summary>Wind coefficient of vents where nothing else is said.</summary>
    public const double UsualVentWindFactor = 0.09;

    /// <summary>Height of one roof opening where nothing else is said, m.</summary>
    public const double UsualRoofVentHeightM = 0.6;

    /// <summary>Height of one side opening where nothing else is said, m.</summary>
    public const double UsualSideVentHeightM = 1.0;

    /// <summary>Discharge coefficient of vents, 0.60 to 0.75 without mesh.</summary>
    public double VentDischargeFactor { get; init; } = UsualVentDischargeFactor;

    /// <summary>Wind coefficient of vents, 0.07 to 0.12.</summary>
    public double VentWindFactor { get; init; } = UsualVentWindFactor;

    /// <summary>Height of one roof opening, m.</summary>
    public double RoofVentHeightM { get; init; } = UsualRoofVentHeightM;

    /// <summary>Height of one side opening, m.</summary>
    public double SideVentHeightM { get; init; } = UsualSideVentHeightM;

    /// <summary>Height between mid side vent and mid roof vent, m.</summary>
    public double VentHeightDifferenceM { get; init; } = 2.5;

    /// <summary>Water a surface holds before it runs off, kg/m².</summary>
    public double FilmHoldsKgPerM2 { get; init; } = 0.07;

    /// <summary>Water the floor holds before it drains, kg/m².</summary>
    public double FloorHoldsKgPerM2 { get; init; } = 0.2;

    /// <summary>Share of the floor that is always wet (irrigation), 0 to 1.</summary>
    public double WetFloorFraction { get; init; }

    /// <summary>Least leaf resistance to vapour, s/m (82: Stanghellini 1987, thesis Wageningen; from memory).</summary>
    public double LeastStomatalResistanceSPerM { get; init; } = 82.0;

    /// <summary>False leaves the heat of condensation and re-evaporation out: a switch for showing what it does, not for use.</summary>
    public bool CondensationHeats { get; init; } = true;

    /// <summary>Requires every size in its range.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A size out of range or NaN.</exception>
    public void Check()
    {
        Within.Require(FloorAreaM2, 0.5, 1e6);
        Within.Require(AirBelowM3, 0.5, 1e7);
        Within.Require(AirAboveM3, 0.1, 1e7);
        Within.Require(PartsAlong, 1, 1000);
        UpperClear.Check();
        LowerClear.Check();
        UpperOpaque.Check();
        LowerOpaque.Check();
        Within.Require(CurtainTravelM, 0.1, 100);
        Within.Require(FloorToCurtainViewFraction, 0, 1);
        Within.Require(FloorEmissivity, 0.01, 1);
        Within.Require(Ground.Count, GroundLayerCount, GroundLayerCount);
        foreach (GroundLayer layer in Ground)
        {
            Within.Require(layer.ThicknessM, 0.005, 20);
            Within.Require(layer.ConductivityWPerMK, 0.01, 10);
            Within.Require(layer.CapacityJPerM3K, 1e4, 1e7);
        }

        Within.Require(EdgeLossWPerK, 0, 1e6);
        Within.Require(FastMassJPerM2K, 0, 1e6);
        Within.Require(MassJPerK, 0, 1e12);
        Within.Require(MassSurfaceM2, 0, 1e6);
        Within.Require(LeakageStackM3PerSRootK, 0, 1e3);
        Within.Require(LeakageWindM2, 0, 1e3);
        Within.Require(LeakageBaseM3PerS, 0, 1e3);
        Within.Require(VentDischargeFactor, 0, 1);
        Within.Require(VentWindFactor, 0, 1);
        Within.Require(RoofVentHeightM, 0, 20);
        Within.Require(SideVentHeightM, 0, 20);
        Within.Require(VentHeightDifferenceM, 0, 50);
        Within.Require(FilmHoldsKgPerM2, 0, 10);
        Within.Require(FloorHoldsKgPerM2, 0, 100);
        Within.Require(WetFloorFraction, 0, 1);
        Within.Require(LeastStomatalResistanceSPerM, 1, 1e4);
    }
}
