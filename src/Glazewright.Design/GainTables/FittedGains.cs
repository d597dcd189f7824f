using Glazewright.Design.Contracts;
using Glazewright.Science.Light;

namespace Glazewright.Design.GainTables;

/// <summary>The gain table of a house with its equipment, and the light that was traced for it: the light map sums the same beams over its planes.</summary>
/// <param name="Table">The table.</param>
/// <param name="CropReflectance">Of the crop that was traced.</param>
/// <param name="Traced">With the curtain open, then drawn where there is one.</param>
public sealed record FittedGains(GainTable Table, double CropReflectance, EqList<TracedLight> Traced);

/// <summary>Light traced through a house in one position of its curtain.</summary>
/// <param name="CaughtSkyFraction">By piece: share of even light that bars catch before it.</param>
/// <param name="BeamM2">Diffuse light set free per unit of beam: node, then piece.</param>
/// <param name="DomeM2">Per unit of the even sky, by piece.</param>
/// <param name="HorizonM2">Per unit of the horizon band.</param>
/// <param name="GroundM2">Per unit of the ground's light.</param>
public sealed record TracedLight(
    EqList<double> CaughtSkyFraction, EqList<double> BeamM2, EqList<double> DomeM2, EqList<double> HorizonM2, EqList<double> GroundM2)
{
    internal static TracedLight Of(KnownLight known) => new(
        known.CaughtSkyFraction.ToEqList(), known.SetFree.BeamM2.ToEqList(), known.SetFree.DomeM2.ToEqList(), known.SetFree.HorizonM2.ToEqList(), known.SetFree.GroundM2.ToEqList());

    internal KnownLight With(InsideViews views) => new(views, CaughtSkyFraction, new LightSetFree(BeamM2, DomeM2, HorizonM2, GroundM2));
}
