using Glazewright.Design.Form;
using Glazewright.Mechanics.Guards;
using Glazewright.Mechanics.Loads;
using Glazewright.Science.Optics;

namespace Glazewright.Design.Frame;

/// <summary>The site's loads on one house: snow and wind cases, live load, weights of covering.</summary>
internal sealed record FrameLoadSite(
    GableSection Section,
    double BayM,
    SnowSite SnowSite,
    ThermalChoice Thermal,
    double RoofResistanceM2KPerW,
    RoofSnow Snow,
    WindSite WindSite,
    IReadOnlyList<WindCase> Wind,
    double MeanVelocityPa,
    double LeftRoofDeadPa,
    double RightRoofDeadPa,
    double LeftWallDeadPa,
    double RightWallDeadPa)
{
    /// <summary>Weight of glazing bars, profiles and screws, per covered area: 0.5 psf.</summary>
    internal const double FixingsPa = 0.5 * UsUnits.PaPerPsf;

    /// <summary>Resistance a closed night curtain adds below the roof (common practice; it makes the roof colder).</summary>
    internal const double CurtainResistanceM2KPerW = 0.15;

    private const double Gravity = 9.80665;

    internal static FrameLoadSite Of(FrameInput input, BuildingForm form)
    {
        RoofProfile roof = form.Roof;
        const double LeastRunM = 0.1;
        double leftRunM = Math.Clamp(roof.RidgeOffsetM, LeastRunM, form.WidthM - LeastRunM);
        var section = new GableSection(
            roof.LeftEaveM, leftRunM, form.WidthM - leftRunM, roof.RightEaveM, Math.Max(roof.RidgeM, Math.Max(roof.LeftEaveM, roof.RightEaveM)), form.LengthM);
        LoadEdition snowEdition = EditionOf(input.Snow.Edition);
        var snowSite = new SnowSite(
            new GroundSnow(input.Snow.GroundPa, snowEdition), (RiskCategory)(input.RiskCategory - 1),
            (SurfaceRoughness)(int)input.Wind.Exposure, RoofExposure.Partially, input.Snow.WinterWindFraction);
        GenericCover left = CoverOf(form, FaceName.RoofLeft);
        GenericCover right = CoverOf(form, FaceName.RoofRight);
        double resistance = Math.Max(1 / left.CentreUWm2K, 1 / right.CentreUWm2K) + input.Curtains * CurtainResistanceM2KPerW;
        ThermalChoice thermal = ThermalFactor.Of(
            snowSite.Ground, new RoofThermal(resistance, input.Winter.HeatOff ? null : input.Winter.ColdestC, input.FreezeAlarm));
        var windSite = new WindSite(
            EditionOf(input.Wind.Edition), input.Wind.SpeedMs, (WindExposure)(int)input.Wind.Exposure, input.ElevationM, input.Wind.TopographicFactor);
        return new FrameLoadSite(
            section,
            form.LengthM / Math.Max(1, form.FrameLinesXM.Count - 1),
            snowSite,
            thermal,
            resistance,
            GableSnow.On(snowSite, section, thermal.Factor),
            windSite,
            GableWind.On(windSite, section, Enclosure.Enclosed),
            VelocityPressure.DirectedPa(windSite, section.MeanRoofHeightM),
            left.MassKgPerM2 * Gravity + FixingsPa,
            right.MassKgPerM2 * Gravity + FixingsPa,
            WallPa(form, FaceName.Left),
            WallPa(form, FaceName.Right));
    }

    internal static LoadEdition EditionOf(Brief.LoadEdition edition) =>
        edition == Brief.LoadEdition.Asce716 ? LoadEdition.Asce716 : LoadEdition.Asce722;

    internal static double WallPa(BuildingForm form, FaceName face)
    {
        FaceForm wall = form.Face(face);
        double newtons = wall.Zones.Sum(z => z.GrossM2 * (Cover(z.Cover.Kind).MassKgPerM2 * Gravity + FixingsPa));
        return newtons / wall.AreaM2;
    }

    private static GenericCover CoverOf(BuildingForm form, FaceName face) => Cover(form.Face(face).Zones[0].Cover.Kind);

    private static GenericCover Cover(string kind) => GenericCovers.TryFind(kind, out GenericCover? cover)
        ? cover
        : throw new ArgumentException($"No cover '{kind}'.", nameof(kind));
}
