using Glazewright.Design.Contracts;
using Glazewright.Design.Document;
using Glazewright.Design.Form;
using Glazewright.Design.Quantities;

namespace Glazewright.Design.Brief.Reading;

/// <summary>Fields of a house's openings, and whether they fit.</summary>
internal static class OpeningFields
{
    private const double FootM = 0.3048;

    public static EqList<Opening> Read(FieldReader house, RoofProfile roof, double widthM, double lengthM, bool roofed)
    {
        int before = house.FaultCount;
        EqList<Opening> openings = house.Several("openings", 0, 200, "one double door in end 1", "Doors, windows and vents, and fans, louvers or a wet wall whose place is fixed.", f => Opening(f, roof, widthM, lengthM));
        if (house.FaultCount > before || !roofed)
        {
            return openings;
        }

        if (!house.IsGiven("openings"))
        {
            double doorM = Math.Min(6 * FootM, 0.4 * widthM);
            return [new Opening("door-1", OpeningKind.DoubleDoor, FaceName.End1, 1 * FootM, 0, doorM, Math.Min(7 * FootM, 0.9 * roof.HeightM(FootM, widthM)), true)];
        }

        foreach (OpeningMisfit misfit in FaceOutlines.Misfits(openings, roof, widthM, lengthM))
        {
            Opening opening = openings[misfit.Index];
            string pointer = "openings/" + HouseFields.Text(misfit.Index);
            if (misfit.OtherIndex < 0)
            {
                house.AddBelow(FaultKind.DoesNotFit, pointer, $"{opening.Id} reaches off its face by {Area(misfit.AreaM2)}", $"an offset, sill and size inside the {FaceWord(opening.Face)}");
            }
            else
            {
                house.AddBelow(FaultKind.DoesNotFit, pointer, $"{opening.Id} and {openings[misfit.OtherIndex].Id} overlap by {Area(misfit.AreaM2)}", "openings beside each other");
            }
        }

        return openings;
    }

    private static Opening Opening(FieldReader f, RoofProfile roof, double widthM, double lengthM)
    {
        string id = f.IdText("opening-" + HouseFields.Text(f.Index + 1), "Id, unique in the house.");
        OpeningKind kind = f.Choice<OpeningKind>("kind", null, "What it is.");
        FaceName face = f.Choice<FaceName>("face", null, "Face it is in.", (FaceName.End1, "end-1"), (FaceName.End2, "end-2"));
        if (face == FaceName.Floor)
        {
            f.Add(FaultKind.UnknownChoice, "face", "an opening cannot be in the floor", "left, right, end-1, end-2, roof-left or roof-right");
        }

        (string width, string height, string sill) = Usual(kind);
        double openingWidthM = f.LengthM("width", "4 in", "200 ft", f.IsDescribing ? "3 ft" : width, "Size along the face; left out, the usual size of its kind.");
        double heightM = f.LengthM("height", "4 in", "60 ft", f.IsDescribing ? "7 ft" : height, "Size up the face; left out, the usual size of its kind.");
        double sillM = f.LengthM("sill", "0 ft", "40 ft", f.IsDescribing ? "0 ft" : sill, "Height of its lower edge; left out, the usual height of its kind.");
        double alongM = face is FaceName.End1 or FaceName.End2 ? widthM : lengthM;
        double? offsetM = f.LengthMOrBlank("offset", "0 ft", "1000 ft", "in the middle of the face", "Nearer edge from end 1 (side walls, roofs) or from the left wall (end walls).");
        bool exit = f.Flag("exit", kind is OpeningKind.Door or OpeningKind.DoubleDoor, "A way out.");
        double? hungKg = f.QuantityOrBlank("hung", QuantityKind.Mass, "1 lb", "5000 lb", "the usual weight of its size", "What a roll-up door (curtain and coil) or sliding door (leaf and track) hangs on its header, by the maker; other kinds have no use for it.");
        return new Opening(id, kind, face, offsetM ?? (alongM - openingWidthM) / 2, sillM, openingWidthM, heightM, exit) { HungKg = hungKg };
    }

    private static (string Width, string Height, string Sill) Usual(OpeningKind kind) => kind switch
    {
        OpeningKind.Door => ("3'-0\"", "7'-0\"", "0 ft"),
        OpeningKind.DoubleDoor => ("6'-0\"", "7'-0\"", "0 ft"),
        OpeningKind.Window => ("3'-0\"", "3'-0\"", "3'-0\""),
        OpeningKind.Fan => ("3'-3\"", "3'-3\"", "3'-0\""),
        OpeningKind.Louver => ("3'-0\"", "3'-0\"", "3'-0\""),
        OpeningKind.Vent => ("8'-0\"", "3'-0\"", "3'-0\""),
        OpeningKind.RollUpDoor or OpeningKind.SlidingDoor => ("10'-0\"", "8'-0\"", "0 ft"),
        _ => ("10'-0\"", "5'-0\"", "2'-0\""),
    };

    private static string FaceWord(FaceName face) => face switch
    {
        FaceName.Left => "left wall",
        FaceName.Right => "right wall",
        FaceName.End1 => "end wall at end 1",
        FaceName.End2 => "end wall at end 2",
        FaceName.RoofLeft => "left slope",
        _ => "right slope",
    };

    private static string Area(double areaM2) => $"{QuantityFormat.In(QuantityKind.Area, areaM2, UnitFamily.Customary)} ({QuantityFormat.In(QuantityKind.Area, areaM2, UnitFamily.Metric)})";
}
