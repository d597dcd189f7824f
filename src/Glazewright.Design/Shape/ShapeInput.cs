using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.LightMaps;
using Glazewright.Science.Light;
using Glazewright.Science.Shape;
using Glazewright.Science.Sun;

namespace Glazewright.Design.Shape;

/// <summary>What the shape finder reads of the job for one house; wishes with their defaults filled in.</summary>
/// <param name="House">House id.</param>
/// <param name="Units">Which units people read.</param>
/// <param name="LatitudeDeg">North positive.</param>
/// <param name="RangeBearingDeg">Bearing of +x.</param>
/// <param name="AlbedoFraction">Ground without snow.</param>
/// <param name="WidthM">Across.</param>
/// <param name="LengthM">Along.</param>
/// <param name="Roof">The contractor's choice.</param>
/// <param name="PonyWallM">Top of the pony walls.</param>
/// <param name="Coverings">What covers each face.</param>
/// <param name="PonyWallCovering">Covering of the pony walls.</param>
/// <param name="BenchHeightM">Height the light is taken at; the floor without benches.</param>
/// <param name="UmolPerJ">Photons per joule of all sunlight, µmol/J.</param>
/// <param name="CropReflectance">Of crop and floor, photosynthetic light.</param>
/// <param name="FrameFraction">Share of clear faces under bars and members.</param>
/// <param name="NoonDeclinationDeg">Declination of the noon wish's date.</param>
/// <param name="NoonDay">That date in words.</param>
/// <param name="Wishes">As typed, or unsaid.</param>
/// <param name="RidgeAtMostM">Highest ridge.</param>
/// <param name="EaveAtLeastM">Lowest eave.</param>
/// <param name="EaveAtMostM">Highest eave.</param>
public sealed record ShapeInput(
    string House,
    UnitSystem Units,
    double LatitudeDeg,
    double RangeBearingDeg,
    double AlbedoFraction,
    double WidthM,
    double LengthM,
    RoofProfile Roof,
    double PonyWallM,
    EqList<Brief.FaceCovering> Coverings,
    CoverChoice PonyWallCovering,
    double BenchHeightM,
    double UmolPerJ,
    double CropReflectance,
    double FrameFraction,
    double NoonDeclinationDeg,
    string NoonDay,
    ShapeWishes Wishes,
    double RidgeAtMostM,
    double EaveAtLeastM,
    double EaveAtMostM)
{
    /// <summary>Bars and members in a clear face (common practice: structure and bars together 5 to 12 % of slender tube houses); the full map has each of them.</summary>
    public const double UsualFrameFraction = 0.08;

    /// <summary>What the highest eave is over the higher drawn one when nothing is said, m (2 ft).</summary>
    public const double UsualEaveRoomM = 0.6096;

    /// <summary>Projects the job.</summary>
    /// <param name="job">The job.</param>
    /// <param name="house">House id.</param>
    /// <returns>The input.</returns>
    /// <exception cref="ArgumentException">No such house.</exception>
    public static ShapeInput From(Job job, string house)
    {
        ArgumentNullException.ThrowIfNull(job);
        House h = job.Houses.FirstOrDefault(x => x.Id == house) ?? throw new ArgumentException($"No house '{house}'.", nameof(house));
        ShapeWishes wishes = h.ShapeWishes ?? ShapeWishes.Unsaid;
        double latitudeDeg = job.Site.LatitudeDeg;
        double lowM = wishes.EaveAtLeastM ?? Math.Min(h.Roof.LeftEaveM, h.Roof.RightEaveM);
        return new ShapeInput(
            house,
            job.Units,
            latitudeDeg,
            job.Site.RangeBearingDeg,
            job.Site.Ground.AlbedoFraction,
            h.WidthM,
            h.LengthM,
            h.Roof,
            h.PonyWallM,
            h.Coverings,
            h.PonyWallCovering,
            h.Benches.Count == 0 ? 0 : h.Benches.Average(b => b.HeightM),
            PlantLight.MicromolPerJoule,
            LightInput.UsualCropParReflectance,
            UsualFrameFraction,
            wishes.NoonDate.Length == 0 ? NoonSunAngle.LongestDayDeclinationDeg(latitudeDeg) : DeclinationDeg(wishes.NoonDate),
            wishes.NoonDate.Length == 0 ? (latitudeDeg >= 0 ? "21 June" : "21 December") : wishes.NoonDate,
            wishes,
            wishes.RidgeAtMostM ?? h.Roof.RidgeM,
            lowM,
            Math.Max(lowM, wishes.EaveAtMostM ?? Math.Max(h.Roof.LeftEaveM, h.Roof.RightEaveM) + UsualEaveRoomM));
    }

    private static double DeclinationDeg(string date)
    {
        DateOnly day = DateOnly.ParseExact(date, "yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture);
        return SolarPosition.Working(
            JulianDay.Of(Math.Clamp(day.Year, 1600, 2999), day.Month, day.Day, 12, 0), 0, 0, 0, 101_325, 15, SolarPosition.DeltaTSeconds).Ephemeris.DeclinationDeg;
    }
}
