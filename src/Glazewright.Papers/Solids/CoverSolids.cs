using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.Layout;

namespace Glazewright.Papers.Solids;

/// <summary>The covering of every zone as a plate outside the face, with its holes, and the doors, windows and vents in them.</summary>
internal static class CoverSolids
{
    private const double EdgeM = 1e-3;
    private const double LeafM = 0.045;

    public static IEnumerable<SolidPart> Of(BuildingForm building, LayoutResult layout)
    {
        foreach (FaceForm face in building.Faces.Where(f => f.Zones.Count > 0))
        {
            List<Hole> holes = Holes(building, face, layout);
            foreach (CoverZone zone in face.Zones)
            {
                if (Plate(building, face, zone, holes) is { } plate)
                {
                    yield return plate;
                }
            }

            foreach (OpeningForm opening in face.Openings)
            {
                if (Leaf(building, face, opening) is { } leaf)
                {
                    yield return leaf;
                }
            }
        }
    }

    /// <summary>Openings as typed, equipment framed in the wall where none is typed, and where another building leans on a link building.</summary>
    private static List<Hole> Holes(BuildingForm building, FaceForm face, LayoutResult layout)
    {
        List<Hole> holes = [.. face.Openings.Select(o => new Hole(o.Id, Polygons.Rectangle(o.Opening.OffsetM, o.Opening.SillM, o.Opening.WidthM, o.Opening.HeightM)))];
        if (building.IsHouse && face.Name is FaceName.Left or FaceName.Right or FaceName.End1 or FaceName.End2)
        {
            foreach (WallOpening item in WallFraming.Openings(building, layout, face.Name).Where(o => !o.IsDoor && o.Framed))
            {
                Hole hole = new(item.Id, Polygons.Rectangle(item.UM, item.VM, item.WidthM, item.HeightM));
                if (!holes.Exists(h => h.Meets(hole)))
                {
                    holes.Add(hole);
                }
            }
        }

        if (!building.IsHouse)
        {
            holes.AddRange(face.LeanedOn.Select(outline => new Hole("", outline)));
        }

        return holes;
    }

    private static SolidPart? Plate(BuildingForm building, FaceForm face, CoverZone zone, List<Hole> holes)
    {
        CoverStuff stuff = CoverStuff.Of(zone.Cover.Kind);
        SolidFrame axes = Axes(building, face);
        bool outward = axes.AlongZ.Dot(Own(building, face.Plane.Normal)) > 0;
        EqList<Point2> outline = Profile.Rounded(zone.Outline);
        List<SolidHole> through = [];
        int leaning = 0;
        foreach (Hole hole in holes)
        {
            EqList<Point2> piece = Profile.Rounded(Polygons.Common(hole.Outline, outline));
            if (piece.Count >= 3 && Polygons.AreaM2(piece) > 1e-6)
            {
                string id = hole.Opening.Length > 0 ? $"{zone.Id}/hole/{hole.Opening}" : FormattableString.Invariant($"{zone.Id}/leaned-on-{++leaning}");
                through.Add(new SolidHole(id, hole.Opening, piece));
            }
        }

        Profile.Area profile = new(outline, through.Select(h => h.Outline).ToEqList());
        return profile.AreaM2 < 1e-6
            ? null
            : new SolidPart(
                zone.Id, stuff.Name, "", new SolidKind.Cover(zone, stuff, face.Name is FaceName.RoofLeft or FaceName.RoofRight),
                outward ? axes : axes with { Origin = axes.Origin - stuff.ThicknessM * axes.AlongZ }, new SolidShape([Prism.Square(profile, 0, stuff.ThicknessM)]))
            {
                Holes = through.ToEqList(),
            };
    }

    // Leaves stand in the plane of the covering's inner face; a vent lies on it.
    private static SolidPart? Leaf(BuildingForm building, FaceForm face, OpeningForm opening)
    {
        Opening o = opening.Opening;
        if (!o.Kind.IsTyped())
        {
            return null;
        }

        SolidFrame axes = Axes(building, face);
        double frameM = Math.Min(0.05, Math.Min(o.WidthM, o.HeightM) / 8);
        EqList<Point2>[] panes = o.Kind == OpeningKind.DoubleDoor
            ?
            [
                Profile.Rounded(Polygons.Rectangle(frameM, frameM, o.WidthM / 2 - 1.5 * frameM, o.HeightM - 2 * frameM)),
                Profile.Rounded(Polygons.Rectangle(o.WidthM / 2 + frameM / 2, frameM, o.WidthM / 2 - 1.5 * frameM, o.HeightM - 2 * frameM)),
            ]
            : [Profile.Rounded(Polygons.Rectangle(frameM, frameM, o.WidthM - 2 * frameM, o.HeightM - 2 * frameM))];
        Profile.Area rim = new(Profile.Rounded(Polygons.Rectangle(0, 0, o.WidthM, o.HeightM)), panes.ToEqList());
        IEnumerable<Prism> within = panes.Select(p => Prism.Square(new Profile.Area(p, []), LeafM / 4, LeafM * 3 / 4));
        SolidFrame at = axes with { Origin = axes.At(o.OffsetM, o.SillM, 0) - LeafM / 2 * axes.AlongZ };
        return new SolidPart(
            opening.Id, o.Kind switch { OpeningKind.DoubleDoor => "Double door", OpeningKind.RollUpDoor => "Roll-up door", OpeningKind.SlidingDoor => "Sliding door", _ => o.Kind.ToString() } + (o.Exit ? ", way out" : ""), "", new SolidKind.Leaf(o), at,
            new SolidShape([Prism.Square(rim, 0, LeafM), .. within]))
        {
            Fills = opening.Id,
        };
    }

    private static SolidFrame Axes(BuildingForm building, FaceForm face)
    {
        Point3 u = Own(building, face.Plane.U);
        Point3 from = face.Plane.Origin - building.Origin;
        return new SolidFrame(Own(building, from), u, u.Cross(Own(building, face.Plane.V)));
    }

    private static Point3 Own(BuildingForm building, Point3 v) => new(v.Dot(building.AlongX), v.Dot(building.AlongY), v.ZM);

    private sealed record Hole(string Opening, IReadOnlyList<Point2> Outline)
    {
        public bool Meets(Hole other) =>
            Outline.Min(p => p.UM) < other.Outline.Max(p => p.UM) - EdgeM && Outline.Max(p => p.UM) > other.Outline.Min(p => p.UM) + EdgeM
            && Outline.Min(p => p.VM) < other.Outline.Max(p => p.VM) - EdgeM && Outline.Max(p => p.VM) > other.Outline.Min(p => p.VM) + EdgeM;
    }
}
