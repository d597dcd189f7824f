using Glazewright.Design.Brief;
using Glazewright.Design.Catalogues;
using Glazewright.Design.Contracts;
using Glazewright.Design.GainTables;
using Glazewright.Science.Light;

namespace Glazewright.Design.LightMaps;

/// <summary>What LightMaps reads of the job for one house.</summary>
/// <param name="House">House id.</param>
/// <param name="LatitudeDeg">For the far wall and the solstices.</param>
/// <param name="RangeBearingDeg">Bearing of +x.</param>
/// <param name="Neighbours">Boxes that shade, range axes.</param>
/// <param name="Horizon">Skyline; empty for a flat one.</param>
/// <param name="AlbedoFraction">Ground reflectance without snow.</param>
/// <param name="Benches">Benches: the map lies on them when there are any.</param>
/// <param name="Schedule">For the crop's light wish.</param>
/// <param name="UmolPerJ">Photons per joule of all sunlight, µmol/J.</param>
/// <param name="Units">Sheets and their joints come in these.</param>
/// <param name="FrameReflectance">Of bars and members.</param>
/// <param name="CropReflectance">Of crop and floor, photosynthetic light.</param>
/// <param name="Curtain">The curtain; null for none.</param>
/// <param name="LampUmolPerS">Photons that all lamps send to the crop, µmol/s.</param>
public sealed record LightInput(
    string House,
    double LatitudeDeg,
    double RangeBearingDeg,
    EqList<NeighbourBox> Neighbours,
    EqList<HorizonPoint> Horizon,
    double AlbedoFraction,
    EqList<Bench> Benches,
    EqList<CropPeriod> Schedule,
    double UmolPerJ,
    UnitSystem Units,
    double FrameReflectance,
    double CropReflectance,
    HouseCurtain? Curtain,
    double LampUmolPerS = 0)
{
    /// <summary>A leafy crop turns back little photosynthetic light (common practice: 0.05 to 0.10, more over bare concrete).</summary>
    public const double UsualCropParReflectance = 0.10;

    /// <summary>Projects the job.</summary>
    /// <param name="job">The job.</param>
    /// <param name="house">House id.</param>
    /// <param name="catalogue">For the curtain's cloth; null to leave the curtain out.</param>
    /// <returns>The input.</returns>
    /// <exception cref="ArgumentException">No such house.</exception>
    public static LightInput From(Job job, string house, Catalogue? catalogue = null)
    {
        House h = job.Houses.FirstOrDefault(x => x.Id == house) ?? throw new ArgumentException($"No house '{house}'.", nameof(house));
        return new LightInput(
            house,
            job.Site.LatitudeDeg,
            job.Site.RangeBearingDeg,
            job.Site.Neighbours,
            job.Site.Horizon,
            job.Site.Ground.AlbedoFraction,
            h.Benches,
            h.Schedule,
            PlantLight.MicromolPerJoule,
            job.Units,
            GainInput.UsualFrameReflectance,
            UsualCropParReflectance,
            catalogue is null ? null : HouseCurtain.From(h, catalogue),
            catalogue is null ? 0 : h.Equipment.LampW * Plant.OtherKinds.LampUmolPerJ(catalogue));
    }
}
