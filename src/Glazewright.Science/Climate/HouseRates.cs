using System.Diagnostics.CodeAnalysis;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace Glazewright.Science.Climate;

/// <summary>One number for each of the four shell parts: clear above, clear below, opaque above, opaque below.</summary>
[InlineArray(HouseNodes.PartCount)]
internal struct PerPart
{
    private double first;
}

/// <summary>One number for each ground layer.</summary>
[InlineArray(HouseParameters.GroundLayerCount)]
internal struct PerLayer
{
    private double first;
}

/// <summary>One number for each surface that can be wet.</summary>
[InlineArray(HouseNodes.SurfaceCount)]
internal struct PerSurface
{
    private double first;
}

/// <summary>One number for each solved node: temperatures, capacities or gains. Doubles only, side by side, in the order of <see cref="HouseNodes"/>.</summary>
[StructLayout(LayoutKind.Sequential)]
internal struct PerNode
{
    public double AirBelow, AirAbove, Curtain;
    public PerPart Inner, Outer;
    public double Canopy, Floor;
    public PerLayer Ground;
    public double Mass;

    /// <summary>The numbers in a row.</summary>
    [UnscopedRef]
    public Span<double> Row => MemoryMarshal.CreateSpan(ref AirBelow, HouseNodes.SolvedCount);
}

/// <summary>Links of the house's network over one step, W/K; streams too, mass flow × specific heat.</summary>
internal struct HouseRates
{
    public PerPart Core, OuterAir, OuterSky, OuterGround, InnerAir;
    public PerPart FloorParts, CanopyParts, CurtainParts;
    public double LowerPair, UpperPair; // clear to opaque within one space
    public double WallRoof, WallRoofOpaque, WallOpaqueRoof, WallOpaqueRoofOpaque;
    public double FloorCurtain, CanopyCurtain, CanopyFloor;
    public double FloorSky, CanopySky, CurtainSky;
    public double FloorAir, CanopyAir, CurtainBelow, CurtainAbove, MassAir;
    public double FloorGround, Deep, Edge;
    public PerLayer Below; // from each ground layer to the next deeper one; the last is the deep one's and stands in Deep
    public double OutsideBelow, OutsideAbove, IntakeBelow, Upward, Downward, Exchange;
    public PerSurface Latent; // tangent of evaporation at the old temperature
}

/// <summary>Temperatures given from outside the network, °C.</summary>
internal struct HouseBounds
{
    public double OutsideC, SkyC, DeepC, IntakeC;
}
