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
/// <param name="CurtainHeightM">Height of the drawn curtain, m; 0 for no curtain.</param>
/// <param name="CurtainTransmittance">Sun through the cloth; two cloths are counted in series.</param>
/// <param name="CurtainReflectance">Sun turned back by it.</param>
/// <param name="CurtainOpennessFraction">Open share of the weave: passes unscattered.</param>
/// <param name="Units">Sheets and their joints come in these.</param>
/// <param name="FrameReflectance">Of bars and members.</param>
/// <param name="CropReflectance">Of crop and floor together, all sunlight.</param>
/// <param name="CanopyExtinctionFraction">k of 1 − exp(−k·LAI).</param>
public sealed record GainInput(
    string House,
    double LatitudeDeg,
    double RangeBearingDeg,
    EqList<NeighbourBox> Neighbours,
    EqList<HorizonPoint> Horizon,
    double CurtainHeightM,
    double CurtainTransmittance,
    double CurtainReflectance,
    double CurtainOpennessFraction,
    UnitSystem Units,
    double FrameReflectance,
    double CropReflectance,
    double CanopyExtinctionFraction)
{
    /// <summary>Galvanised or aluminium bars, weathered (common practice).</summary>
    public const double UsualFrameReflectance = 0.5;

    /// <summary>Green crop over soil or concrete, all sunlight (common practice: 0.15 to 0.25).</summary>
    public const double UsualCropReflectance = 0.2;

    /// <summary>Curtain under the lower eave when the job gives no height, m.</summary>
    private const double UnderEaveM = 0.15;

    /// <summary>Projects the job.</summary>
    /// <param name="job">The job.</param>
    /// <param name="house">House id.</param>
    /// <param name="catalogue">For the curtain's cloth.</param>
    /// <returns>The input.</returns>
    /// <exception cref="ArgumentException">No such house.</exception>
    public static GainInput From(Job job, string house, Catalogue catalogue)
    {
        House h = job.Houses.FirstOrDefault(x => x.Id == house) ?? throw new ArgumentException($"No house '{house}'.", nameof(house));
        EquipmentChoice equipment = h.Equipment;
        CurtainEntry? cloth = equipment.Curtains == 0
            ? null
            : catalogue.Curtains.FirstOrDefault(c => c.Id == equipment.CurtainEntry) ?? catalogue.Curtains.FirstOrDefault();
        double transmittance = cloth?.SolarTransmittanceFraction ?? 1;
        double reflectance = cloth?.SolarReflectanceFraction ?? 0;
        double openness = cloth?.OpennessFraction ?? 1;
        if (cloth is not null && equipment.Curtains > 1)
        {
            double between = 1 - reflectance * reflectance;
            reflectance += transmittance * transmittance * reflectance / between;
            transmittance = transmittance * transmittance / between;
            openness *= openness;
        }

        double lowerEaveM = Math.Min(h.Roof.LeftEaveM, h.Roof.RightEaveM);
        double heightM = equipment.CurtainHeightM > 0 ? equipment.CurtainHeightM : lowerEaveM - UnderEaveM;
        return new GainInput(
            house,
            job.Site.LatitudeDeg,
            job.Site.RangeBearingDeg,
            job.Site.Neighbours,
            job.Site.Horizon,
            cloth is null ? 0 : heightM,
            transmittance,
            reflectance,
            Math.Min(openness, transmittance),
            job.Units,
            UsualFrameReflectance,
            UsualCropReflectance,
            Science.Light.CanopyLight.BroadbandExtinction);
    }
}
