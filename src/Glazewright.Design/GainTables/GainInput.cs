using Glazewright.Design.Brief;
using Glazewright.Design.Catalogues;
using Glazewright.Design.Contracts;

namespace Glazewright.Design.GainTables;

/// <summary>What GainTables reads of the job for one house, beside its form and body.</summary>
/// <param name="House">House id.</param>
/// <param name="LatitudeDeg">For the noon figures.</param>
/// <param name="RangeBearingDeg">Bearing of +x.</param>
/// <param name="Neighbours">Boxes that shade, range axes.</param>
/// <param name="Horizon">Skyline; empty for a flat one.</param>
/// <param name="Curtain">The curtain; null for none.</param>
/// <param name="Units">Sheets and their joints come in these.</param>
/// <param name="FrameReflectance">Of bars and members.</param>
/// <param name="CropReflectance">Of crop and floor together, all sunlight.</param>
/// <param name="CanopyExtinctionFraction">k of 1 − exp(−k·LAI).</param>
/// <param name="SecondCurtain">The second curtain where it moves by itself; null for none.</param>
public sealed record GainInput(
    string House,
    double LatitudeDeg,
    double RangeBearingDeg,
    EqList<NeighbourBox> Neighbours,
    EqList<HorizonPoint> Horizon,
    HouseCurtain? Curtain,
    UnitSystem Units,
    double FrameReflectance,
    double CropReflectance,
    double CanopyExtinctionFraction,
    HouseCurtain? SecondCurtain = null)
{
    /// <summary>Galvanised or aluminium bars, weathered (common practice).</summary>
    public const double UsualFrameReflectance = 0.5;

    /// <summary>Green crop over soil or concrete, all sunlight (common practice: 0.15 to 0.25).</summary>
    public const double UsualCropReflectance = 0.2;

    /// <summary>Projects the job.</summary>
    /// <param name="job">The job.</param>
    /// <param name="house">House id.</param>
    /// <param name="catalogue">For the curtain's cloth.</param>
    /// <returns>The input.</returns>
    /// <exception cref="ArgumentException">No such house.</exception>
    public static GainInput From(Job job, string house, Catalogue catalogue)
    {
        House h = job.Houses.FirstOrDefault(x => x.Id == house) ?? throw new ArgumentException($"No house '{house}'.", nameof(house));
        return new GainInput(
            house,
            job.Site.LatitudeDeg,
            job.Site.RangeBearingDeg,
            job.Site.Neighbours,
            job.Site.Horizon,
            HouseCurtain.From(h, catalogue),
            job.Units,
            UsualFrameReflectance,
            UsualCropReflectance,
            Science.Light.CanopyLight.BroadbandExtinction,
            HouseCurtain.SecondOf(h));
    }
}
