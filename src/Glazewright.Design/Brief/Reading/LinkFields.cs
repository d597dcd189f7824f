using Glazewright.Design.Contracts;
using Glazewright.Design.Document;
using Glazewright.Design.Quantities;

namespace Glazewright.Design.Brief.Reading;

/// <summary>Fields of corridors, head houses and control rooms.</summary>
internal static class LinkFields
{
    public static LinkBuilding Read(FieldReader f)
    {
        string id = f.IdText("link-" + HouseFields.Text(f.Index + 1), "Short id, unique among all buildings.");
        LinkKind kind = f.Choice<LinkKind>("kind", null, "What it is.");
        return new LinkBuilding(
            id,
            kind,
            f.Words("name", f.IsDescribing ? "Corridor" : Name(kind), "Name as printed.", "Head house", 60),
            f.LengthM("x", "-3000 ft", "3000 ft", null, "Its corner nearest end 1 and the left side, along the ridges from the range's zero point."),
            f.LengthM("y", "-3000 ft", "3000 ft", null, "That corner across the ridges."),
            f.LengthM("sizeX", "2 ft", "500 ft", null, "Size along the ridges."),
            f.LengthM("sizeY", "2 ft", "500 ft", null, "Size across the ridges."),
            f.LengthM("eave", "6 ft", "30 ft", "8 ft", "Eave height."),
            f.PitchRatio("pitch", "3:12", "Pitch of its centred ridge, along its longer side; 0:12 for flat."),
            Cover(f),
            f.Several("rooms", 0, 30, "no rooms are named", "Rooms.", r => new Room(
                r.Words("name", null, "What it is.", "Control room", 60),
                r.LengthM("sizeX", "2 ft", "200 ft", null, "Size along x."),
                r.LengthM("sizeY", "2 ft", "200 ft", null, "Size along y."))));
    }

    private static CoverChoice Cover(FieldReader f) =>
        new(f.Word("covering", HouseFields.Covers, "panel-76", "Covering of walls and roof."), 1, 1, 0.7);

    private static string Name(LinkKind kind) => kind switch
    {
        LinkKind.Corridor => "Corridor",
        LinkKind.HeadHouse => "Head house",
        _ => "Control room",
    };
}
