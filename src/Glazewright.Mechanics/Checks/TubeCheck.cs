using Glazewright.Mechanics.Guards;
using Glazewright.Mechanics.Loads;
using Glazewright.Mechanics.Sections;

namespace Glazewright.Mechanics.Checks;

/// <summary>Lengths a member is checked with.</summary>
/// <param name="StrongLengthM">Effective length for buckling in the plane of its depth, m.</param>
/// <param name="WeakLengthM">Effective length for buckling out of it, m.</param>
/// <param name="UnbracedM">Length between braces against lateral buckling in bending, m.</param>
public sealed record MemberLengths(double StrongLengthM, double WeakLengthM, double UnbracedM);

/// <summary>Forces at a point of a member.</summary>
/// <param name="TensionN">Axial force, tension positive, N.</param>
/// <param name="StrongMomentNm">Moment about the strong axis, N·m, any sign.</param>
/// <param name="WeakMomentNm">Moment about the weak axis, N·m, any sign.</param>
/// <param name="ShearN">Shear along the depth, N, any sign.</param>
public sealed record MemberForces(double TensionN, double StrongMomentNm, double WeakMomentNm, double ShearN);

/// <summary>A member with its strengths, computed once and used for many forces.</summary>
/// <param name="Section">The tube.</param>
/// <param name="Steel">The steel.</param>
/// <param name="Lengths">Its lengths.</param>
/// <param name="Method">LRFD or ASD.</param>
/// <param name="Tension">Tension strength, N.</param>
/// <param name="Compression">Compression strength, N.</param>
/// <param name="StrongBending">Strong-axis bending strength, N·m.</param>
/// <param name="WeakBending">Weak-axis bending strength, N·m.</param>
/// <param name="Shear">Shear strength, N.</param>
/// <param name="SlendernessRatio">KL/r of the worse axis.</param>
/// <param name="Gaps">What the strengths do not cover.</param>
public sealed record MemberCapacity(
    TubeSection Section,
    Steel Steel,
    MemberLengths Lengths,
    DesignMethod Method,
    Strength Tension,
    Strength Compression,
    Strength StrongBending,
    Strength WeakBending,
    Strength Shear,
    double SlendernessRatio,
    IReadOnlyList<CheckGap> Gaps);

/// <summary>How much of a member's strength its forces use.</summary>
/// <param name="InteractionRatio">Axial force with bending (H1).</param>
/// <param name="ShearRatio">Shear.</param>
public sealed record Utilisation(double InteractionRatio, double ShearRatio)
{
    /// <summary>The larger.</summary>
    public double LargestRatio => Math.Max(InteractionRatio, ShearRatio);
}

/// <summary>Checks members.</summary>
public static class TubeCheck
{
    /// <summary>Strengths of a member.</summary>
    /// <param name="section">The tube; structural tube goes by AISC 360, gauge tube by AISI S100.</param>
    /// <param name="steel">The steel.</param>
    /// <param name="lengths">Its lengths, m, 0 to 60.</param>
    /// <param name="method">LRFD or ASD.</param>
    /// <returns>The strengths and what they do not cover.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A length out of range.</exception>
    public static MemberCapacity CapacityOf(TubeSection section, Steel steel, MemberLengths lengths, DesignMethod method)
    {
        bool structural = section.Standard == TubeStandard.Structural;
        double slenderness = StructuralTube.SlendernessRatio(section, lengths.StrongLengthM, lengths.WeakLengthM);
        var gaps = new List<CheckGap>();
        if (slenderness > 200)
        {
            gaps.Add(CheckGap.VerySlender);
        }

        bool covered = structural
            ? section.Shape is TubeShape.Round || Math.Max(section.WebSlendernessRatio, section.FlangeSlendernessRatio)
                <= 5.70 * Math.Sqrt(steel.ElasticPa / steel.YieldPa)
            : GaugeTube.CoversBending(section, steel, strong: true) && GaugeTube.CoversBending(section, steel, strong: false);
        if (!covered)
        {
            gaps.Add(CheckGap.ThinWalls);
        }

        return new MemberCapacity(
            section, steel, lengths, method, StructuralTube.TensionN(section, steel),
            structural
                ? StructuralTube.CompressionN(section, steel, lengths.StrongLengthM, lengths.WeakLengthM)
                : GaugeTube.CompressionN(section, steel, lengths.StrongLengthM, lengths.WeakLengthM),
            structural
                ? StructuralTubeBending.StrongNM(section, steel, lengths.UnbracedM)
                : GaugeTube.BendingNM(section, steel, strong: true),
            structural ? StructuralTubeBending.WeakNM(section, steel) : GaugeTube.BendingNM(section, steel, strong: false),
            structural ? StructuralTube.ShearN(section, steel) : GaugeTube.ShearN(section, steel),
            slenderness, gaps);
    }

    /// <summary>Share of strength used.</summary>
    /// <param name="capacity">The member's strengths.</param>
    /// <param name="forces">Second-order forces of one combination at one point.</param>
    /// <returns>
    /// Interaction: structural tube by AISC 360 eqs H1-1a and H1-1b; gauge tube by the straight sum of AISI S100 C5, which is the safe side of both.
    /// </returns>
    /// <exception cref="ArgumentOutOfRangeException">A force that is not finite.</exception>
    public static Utilisation Of(MemberCapacity capacity, MemberForces forces)
    {
        Require.Finite(forces.TensionN);
        Require.Finite(forces.StrongMomentNm);
        Require.Finite(forces.WeakMomentNm);
        Require.Finite(forces.ShearN);
        DesignMethod method = capacity.Method;
        Strength axialStrength = forces.TensionN >= 0 ? capacity.Tension : capacity.Compression;
        double axial = Math.Abs(forces.TensionN) / axialStrength.Available(method);
        double bending = Math.Abs(forces.StrongMomentNm) / capacity.StrongBending.Available(method)
            + Math.Abs(forces.WeakMomentNm) / capacity.WeakBending.Available(method);
        double interaction = capacity.Section.Standard == TubeStandard.Gauge ? axial + bending
            : axial >= 0.2 ? axial + 8.0 / 9 * bending
            : axial / 2 + bending;
        return new Utilisation(interaction, Math.Abs(forces.ShearN) / capacity.Shear.Available(method));
    }
}
