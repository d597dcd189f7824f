using System.Diagnostics.CodeAnalysis;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace Glazewright.Science.Climate;

/// <summary>One number for each of the four shell parts, worked on side by side: clear above, clear below, opaque above, opaque below.</summary>
[InlineArray(HouseNodes.PartCount)]
internal struct PerPart
{
    private double first;

    /// <summary>The four as one vector.</summary>
    public Vector256<double> Four
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        readonly get => Vector256.LoadUnsafe(in first);
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        set => value.StoreUnsafe(ref first);
    }
}

/// <summary>One number for each ground layer.</summary>
[InlineArray(HouseParameters.GroundLayerCount)]
internal struct PerLayer
{
    private double first;

    /// <summary>The upper four.</summary>
    public readonly Vector256<double> Upper => Vector256.LoadUnsafe(in first);

    /// <summary>The deepest two.</summary>
    public readonly Vector128<double> Deepest => Vector128.LoadUnsafe(in first, 4);
}

/// <summary>One number for each surface that can be wet: four of the shell, then cloth, leaves, floor. The last lane goes with the air below: no film, its own saturation.</summary>
[InlineArray(Lanes)]
internal struct PerSurface
{
    public const int Lanes = 8;

    private double first;

    /// <summary>Of the shell parts.</summary>
    public Vector256<double> Shell
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        readonly get => Vector256.LoadUnsafe(in first);
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        set => value.StoreUnsafe(ref first);
    }

    /// <summary>Of cloth, leaves and floor; last the air below.</summary>
    public Vector256<double> Inside
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        readonly get => Vector256.LoadUnsafe(in first, HouseNodes.PartCount);
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        set => value.StoreUnsafe(ref first, HouseNodes.PartCount);
    }
}

/// <summary>One number for each solved node: temperatures, capacities or gains. Doubles only, side by side, in the order of <see cref="HouseNodes"/>.</summary>
[StructLayout(LayoutKind.Sequential)]
internal struct PerNode
{
    public PerPart Inner, Outer;
    public double Curtain, Canopy, Floor, AirBelow;
    public double AirAbove, Mass;
    public PerLayer Ground;

    /// <summary>Cloth, leaves, floor and the air below, in the lanes of <see cref="PerSurface.Inside"/>.</summary>
    public Vector256<double> Inside
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        readonly get => Vector256.LoadUnsafe(in Curtain);
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        set => value.StoreUnsafe(ref Curtain);
    }

    /// <summary>The numbers in a row.</summary>
    [UnscopedRef]
    public Span<double> Row => MemoryMarshal.CreateSpan(ref Unsafe.As<PerPart, double>(ref Inner), HouseNodes.SolvedCount);
}

/// <summary>Links of the house's network over one step, W/K; streams too, mass flow × specific heat.</summary>
internal struct HouseRates
{
    public PerPart Core, OuterAir, OuterSky, OuterGround, InnerAir;
    public PerPart FloorParts, CanopyParts, CurtainParts;
    public double LowerPair, UpperPair; // clear to opaque within one space
    public PerPart Ring; // from each part to the next, the last to the first: between walls and roof
    public double FloorCurtain, CanopyCurtain, CanopyFloor;
    public double FloorSky, CanopySky, CurtainSky;
    public double FloorAir, CanopyAir, CurtainBelow, CurtainAbove, MassAir;
    public double FloorGround, Deep, Edge;
    public PerLayer Below; // from each ground layer to the next deeper one; the last is the deep one's and stands in Deep
    public double OutsideBelow, OutsideAbove, IntakeBelow, Upward, Downward, Exchange;
    public PerSurface Latent; // tangent of evaporation at the old temperature

    public readonly double WallRoof => Ring[0];

    public readonly double WallRoofOpaque => Ring[1];

    public readonly double WallOpaqueRoofOpaque => Ring[2];

    public readonly double WallOpaqueRoof => Ring[3];
}

/// <summary>Temperatures given from outside the network, °C.</summary>
internal struct HouseBounds
{
    public double OutsideC, SkyC, DeepC, IntakeC;
}
