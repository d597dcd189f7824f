using Glazewright.Design.Brief;
using Glazewright.Design.Form;
using Glazewright.Science.Air;
using Glazewright.Science.Heat;
using Glazewright.Science.Optics;

namespace Glazewright.Design.Duty;

/// <summary>The paths heat leaves a house by.</summary>
internal static class HeatPaths
{
    /// <summary>Still air and cloth of a drawn curtain, m² K/W: what single glass 6.2 → 2.9 and double film 4.0 → 2.4 W/m²K with a curtain imply (tables from memory).</summary>
    public const double CurtainM2KPerW = 0.17;

    /// <summary>U of the opening itself, closed, W/m²K (common practice).</summary>
    public static double OpeningUWPerM2K(OpeningKind kind) => kind switch
    {
        OpeningKind.Door or OpeningKind.DoubleDoor => 2.5,
        OpeningKind.RollUpDoor => 5.5,
        OpeningKind.SlidingDoor => 2.5,
        OpeningKind.Window => 3.0,
        OpeningKind.Fan => 5.0,
        OpeningKind.Louver => 5.5,
        OpeningKind.WetWall => 5.5,
        OpeningKind.Vent => 3.5,
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "No such opening."),
    };

    public static GenericCover Cover(CoverChoice choice) =>
        GenericCovers.TryFind(choice.Kind, out GenericCover? cover)
            ? cover
            : throw new ArgumentException($"No cover kind '{choice.Kind}'.", nameof(choice));

    /// <summary>Zones and openings, face by face; then infiltration and perimeter.</summary>
    public static List<LossLine> Lines(DutyInput input, BuildingForm form, double pressurePa)
    {
        List<LossLine> lines = [];
        foreach (FaceForm face in form.Faces.Where(f => f.Name != FaceName.Floor))
        {
            foreach (CoverZone zone in face.Zones)
            {
                double u = Cover(zone.Cover).PracticeUWm2K;
                lines.Add(new LossLine(zone.Id, face.Name, zone.NetM2, u, zone.NetM2 * u));
            }

            foreach (OpeningForm opening in face.Openings)
            {
                double u = OpeningUWPerM2K(opening.Opening.Kind);
                lines.Add(new LossLine(opening.Id, face.Name, opening.AreaM2, u, opening.AreaM2 * u));
            }
        }

        lines.Add(new LossLine(
            $"{form.Id}/infiltration", FaceName.Floor, 0, 0,
            SteadyLoss.InfiltrationWPerK(form.VolumeM3, input.AirtightnessPerHour, AirHeatJPerM3K(pressurePa))));
        double f = EdgeWPerMK(input);
        lines.Add(new LossLine($"{form.Id}/perimeter", FaceName.Floor, form.PerimeterM, f, f * form.PerimeterM));
        return lines;
    }

    public static double EdgeWPerMK(DutyInput input) =>
        SlabOnGround.FFactorWPerMK(input.EdgeInsulated ? SlabEdge.TwoFeetDownR10 : SlabEdge.Bare);

    /// <summary>Heat capacity of leaking air by volume, dry air at 5 °C.</summary>
    public static double AirHeatJPerM3K(double pressurePa)
    {
        AirState air = AirState.FromHumidityRatio(5, 0, pressurePa);
        return air.HeatJPerKgK / air.VolumeM3PerKg;
    }

    /// <summary>Share of a face that lies above the curtain.</summary>
    public static double AboveShare(FaceForm face, BuildingForm form, double curtainM)
    {
        if (face.Name is FaceName.RoofLeft or FaceName.RoofRight)
        {
            return 1;
        }

        double top = face.Name switch
        {
            FaceName.Left => form.Roof.LeftEaveM,
            FaceName.Right => form.Roof.RightEaveM,
            _ => 0,
        };
        if (top > 0)
        {
            return Math.Clamp((top - curtainM) / top, 0, 1);
        }

        // End walls: the section above the curtain's level, cut out of the whole section.
        IReadOnlyList<Point2> below = Polygons.Common([.. face.Outline], Polygons.Rectangle(0, 0, form.WidthM, curtainM));
        return face.AreaM2 > 0 ? Math.Clamp(1 - Polygons.AreaM2(below) / face.AreaM2, 0, 1) : 0;
    }
}
