using Glazewright.Design.Form;
using Glazewright.Science.Air;
using Glazewright.Science.Crop;
using Glazewright.Science.Heat;
using Glazewright.Science.Optics;
using Glazewright.Science.Roots;

namespace Glazewright.Design.Duty;

/// <summary>Moisture of the closed, unaired house on a cold night.</summary>
internal static class NightMoisture
{
    // Of the indoor film, what radiation carries between room-warm grey surfaces: 0.9 × 4σT³ near 10 °C.
    private const double RadiativeWPerM2K = 4.6;

    /// <summary>The humidity at which transpiration equals what leaks out and what condenses.</summary>
    /// <param name="form">The house's shape.</param>
    /// <param name="outside">Outside air.</param>
    /// <param name="insideC">Air of the house, °C.</param>
    /// <param name="leakM3PerS">Outside air that leaks in, m³/s.</param>
    /// <param name="plantedM2">Ground covered by crop, m².</param>
    /// <param name="leafAreaRatio">Leaf area per planted area.</param>
    /// <returns>The balance; the curtain is open, which is the wetter case for the covering.</returns>
    public static NightBalance Of(
        BuildingForm form, AirState outside, double insideC, double leakM3PerS, double plantedM2, double leafAreaRatio)
    {
        double dryKgPerS = leakM3PerS / outside.VolumeM3PerKg;
        double least = Math.Max(outside.HumidityRatio, 1e-6);
        double most = Saturation.HumidityRatio(insideC, outside.PressurePa);
        CoverZone[] zones = [.. form.Faces.Where(f => f.Name != FaceName.Floor).SelectMany(f => f.Zones).Where(z => z.NetM2 > 0)];
        double Given(AirState air) => plantedM2 / Transpiration.LatentJPerKg * Transpiration.QuickWPerM2(
            0, Math.Max(air.VapourDeficitPa, 0), Math.Min(leafAreaRatio, 10), DutyStage.CropSolarFactor, DutyStage.CropNightWPerM2KPa);
        double Condensed(AirState air) => zones.Sum(z => z.NetM2 * On(form, z, air, outside.DryBulbC).RateKgPerM2S);
        AirState Air(double ratio) => new(insideC, ratio, outside.PressurePa);
        double Surplus(double ratio)
        {
            AirState air = Air(ratio);
            return Given(air) - (dryKgPerS * (ratio - outside.HumidityRatio)) - Condensed(air);
        }

        double settled = least >= most ? most : Surplus(least) <= 0 ? least : Bracketed.Find(Surplus, least, most, 1e-10).Argument;
        AirState house = Air(Math.Min(settled, most));
        (string Id, double C) coldest = zones
            .Select(z => (z.Id, C: On(form, z, house, outside.DryBulbC).WetSurfaceC))
            .DefaultIfEmpty((Id: form.Id, C: insideC))
            .MinBy(z => z.C);
        return new NightBalance(
            house, coldest.C, coldest.Id, Condensed(house), dryKgPerS * Math.Max(house.HumidityRatio - outside.HumidityRatio, 0), Given(house));
    }

    /// <summary>What happens on the inner face of one covering.</summary>
    internal static SteadyCondensation On(BuildingForm form, CoverZone zone, AirState inside, double outsideC)
    {
        FaceForm face = form.Faces.First(f => f.Zones.Any(z => z.Id == zone.Id));
        GenericCover cover = HeatPaths.Cover(zone.Cover);
        double film = Math.Max(SurfaceFilm.IndoorWPerM2K(Math.Clamp(face.TiltDeg, 0, 90), heatUp: true), 1.02 * cover.PracticeUWm2K);
        return Condensation.Steady(inside, outsideC, cover.PracticeUWm2K, film, Math.Max(film - RadiativeWPerM2K, 1));
    }
}
