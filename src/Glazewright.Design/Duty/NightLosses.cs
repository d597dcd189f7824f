using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Science.Flow;
using Glazewright.Science.Heat;
using Glazewright.Science.Optics;
using Glazewright.Science.Weather;

namespace Glazewright.Design.Duty;

/// <summary>Heat loss of one path on the 99.6 % night under three skies.</summary>
/// <param name="Id">Covering, opening, infiltration or perimeter.</param>
/// <param name="PracticeW">By the trade's U, as the heaters are sized.</param>
/// <param name="WindyW">Overcast and windy.</param>
/// <param name="ClearW">Clear and nearly calm.</param>
/// <param name="InnerFaceC">Inner face on the clear night, °C; the inside temperature for paths without a face.</param>
public sealed record PathNight(string Id, double PracticeW, double WindyW, double ClearW, double InnerFaceC);

/// <summary>The design night's loss by path, with wind and sky.</summary>
/// <param name="WindMs">Wind of the windy night, m/s.</param>
/// <param name="SkyC">Temperature that the clear sky radiates with, °C.</param>
/// <param name="WindyChangesPerHour">Air changes by leakage on the windy night.</param>
/// <param name="ClearChangesPerHour">The same on the clear, calm night: warmth alone drives them.</param>
/// <param name="Paths">Path by path.</param>
public sealed record NightSkies(
    double WindMs, double SkyC, double WindyChangesPerHour, double ClearChangesPerHour, EqList<PathNight> Paths);

/// <summary>Computes the design night's loss under three skies.</summary>
internal static class NightLosses
{
    /// <summary>Wind of the calm night, m/s.</summary>
    public const double CalmMs = 0.5;

    // Stated air changes hold in this wind and warmth: our reading of a number that is stated without either.
    private const double StatedWindMs = 4;
    private const double StatedWarmthK = 20;

    // Handbook basic model, one storey, isolated rural site (shelter class 2; from memory).
    private const double StackCoefficient = 0.000145;
    private const double WindCoefficient = 0.000246;

    /// <summary>Air changes by wind and stack from those stated: the Handbook's basic model, scaled so that a 4 m/s wind and 20 K give the stated number.</summary>
    public static double ChangesPerHour(double statedPerHour, double warmthK, double windMs) => statedPerHour
        * Leakage.InfiltrationM3PerS(1000, StackCoefficient, Math.Clamp(warmthK, -80, 80), WindCoefficient, Math.Clamp(windMs, 0, 40))
        / Leakage.InfiltrationM3PerS(1000, StackCoefficient, StatedWarmthK, WindCoefficient, StatedWindMs);

    public static NightSkies Of(
        DutyInput input, BuildingForm form, IReadOnlyList<LossLine> lines, double insideC, double outsideC, double outsideDewC, double windMs, double pressurePa)
    {
        double skyC = SkyTemperature.ClearC(Math.Max(outsideC, -60), Math.Clamp(outsideDewC, -70, 40));
        double warmthK = Math.Max(insideC - outsideC, 0);
        double windy = ChangesPerHour(input.AirtightnessPerHour, warmthK, windMs);
        double calm = ChangesPerHour(input.AirtightnessPerHour, warmthK, CalmMs);
        double airWPerK = HeatPaths.AirHeatJPerM3K(pressurePa) * form.VolumeM3 / 3600;
        List<PathNight> paths = [];
        foreach (LossLine line in lines)
        {
            double practiceW = line.WPerK * warmthK;
            if (line.Id.EndsWith("/infiltration", StringComparison.Ordinal))
            {
                paths.Add(new PathNight(line.Id, practiceW, windy * airWPerK * warmthK, calm * airWPerK * warmthK, insideC));
                continue;
            }

            CoverZone? zone = form.Faces.SelectMany(f => f.Zones).FirstOrDefault(z => z.Id == line.Id);
            if (zone is null || line.AreaM2 <= 0)
            {
                paths.Add(new PathNight(line.Id, practiceW, practiceW, practiceW, insideC));
                continue;
            }

            GenericCover cover = HeatPaths.Cover(zone.Cover);
            double tiltDeg = Math.Clamp(form.Face(line.Face).TiltDeg, 0, 90);
            double coreM2KPerW = BuildUp.CoreM2KPerW(cover.CentreUWm2K, indoorFilmWPerM2K: 8.3, outdoorFilmWPerM2K: 23);
            NightLoss overcast = SkyExposedWall.Of(insideC, outsideC, outsideC, tiltDeg, windMs, coreM2KPerW);
            NightLoss clear = SkyExposedWall.Of(insideC, outsideC, Math.Max(skyC, -119), tiltDeg, CalmMs, coreM2KPerW);

            // Ribs, laps, bars and edges are what the trade's U has over the sheet's middle; wind and sky act on them alike.
            double ribs = cover.PracticeUWm2K / cover.CentreUWm2K;
            paths.Add(new PathNight(
                line.Id, practiceW, ribs * overcast.FluxWPerM2 * line.AreaM2, ribs * clear.FluxWPerM2 * line.AreaM2, clear.InnerFaceC));
        }

        return new NightSkies(windMs, skyC, windy, calm, paths.ToEqList());
    }

    /// <summary>Wind of the windy design night: the coldest month's 1 % wind where a header prints it, else the wind beside the 99.6 % dry bulb, at least 6.7 m/s (15 mph).</summary>
    public static double WindMs(WeatherYear year) =>
        Math.Clamp(year.Conditions is HeaderConditions.Printed printed ? Math.Max(printed.Values.WindAtHeating996Ms, 6.7) : 6.7, 0, 40);
}
