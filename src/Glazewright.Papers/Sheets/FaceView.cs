using Glazewright.Design.Brief;
using Glazewright.Design.Form;
using Glazewright.Design.Layout;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Sets;

namespace Glazewright.Papers.Sheets;

/// <summary>A face of a house seen square on from outside: where its u runs from right to left, it is turned round.</summary>
internal sealed class FaceView
{
    private readonly BuildingForm _b;
    private readonly FaceForm _face;
    private readonly double _highU;

    public FaceView(BuildingForm b, FaceName name)
    {
        _b = b;
        Name = name;
        _face = b.Face(name);
        _highU = _face.Outline.Max(p => p.UM);

        // Seen from outside, left and end 2 run to the right; the others run to the left.
        IsTurned = Turned(name);
    }

    public FaceName Name { get; }

    public bool IsTurned { get; }

    /// <summary>Whether a face's start lies to the right as it is seen from outside.</summary>
    public static bool Turned(FaceName name) => name is FaceName.Right or FaceName.End1 or FaceName.RoofRight;

    /// <summary>Vents of heaters that end in this wall, seen end on.</summary>
    public IEnumerable<Entity> VentEnds(HouseLook house)
    {
        foreach (PlacedItem pipe in house.Layout.Placed.Where(p => p.Kind == PlacedKind.Vent && p.Face == Name))
        {
            (double u, double wide) = IsEnd ? (pipe.Corner.YM, pipe.Size.YM) : (pipe.Corner.XM, pipe.Size.XM);
            yield return new Entity.Arc(At(u + wide / 2, pipe.Corner.ZM + pipe.Size.ZM / 2), wide / 2) { Role = Role.Equipment, Source = pipe.Id };
        }
    }

    public FaceForm Face => _face;

    public bool IsEnd => WallView.IsEnd(Name);

    public bool IsRoof => Name is FaceName.RoofLeft or FaceName.RoofRight;

    /// <summary>Extent of the face, m.</summary>
    public Box Extent => new(0, 0, _highU, _face.Outline.Max(p => p.VM));

    public Spot At(double uM, double vM) => new(IsTurned ? _highU - uM : uM, vM);

    public IReadOnlyList<Spot> Ring(IEnumerable<Point2> outline) => [.. outline.Select(p => At(p.UM, p.VM))];

    public IReadOnlyList<Spot> Rectangle(double uM, double vM, double wideM, double highM) =>
        [At(uM, vM), At(uM + wideM, vM), At(uM + wideM, vM + highM), At(uM, vM + highM)];

    /// <summary>Holes of the face on the drawing.</summary>
    public IReadOnlyList<(Box Box, WallOpening Hole)> Holes(HouseLook house)
    {
        IEnumerable<WallOpening> holes = IsRoof
            ? _face.Openings.Select(o => new WallOpening(o.Id, "Roof vent", true, o.Opening.OffsetM, o.Opening.SillM, o.Opening.WidthM, o.Opening.HeightM, o.Opening.WidthM, o.Opening.HeightM, [], true))
            : WallFraming.Openings(_b, house.Layout, Name);
        return [.. holes.Select(h => (SitePlan.Bounds(Rectangle(h.UM, h.VM, h.WidthM, h.HeightM)), h))];
    }

    /// <summary>Coverings as tints: clear ones like water, others like paper board, with an edge between them.</summary>
    public IEnumerable<Entity> Coverings()
    {
        foreach (CoverZone zone in _face.Zones)
        {
            bool clear = CoverLook.Of(zone.Cover).Clear;
            yield return new Entity.Fill([Ring(zone.Outline)], Paint.Of(clear ? Tone.Water : Tone.Wash), clear ? 0.18 : 1) { Role = Role.Fill, Source = zone.Id };
            yield return new Entity.Polyline(Ring(zone.Outline), true) { Role = Role.Beyond, Source = zone.Id };
        }
    }

    public IEnumerable<Entity> Openings(HouseLook house, Role door, Role equipment)
    {
        foreach ((Box box, WallOpening hole) in Holes(house))
        {
            yield return new Entity.Fill([box.Corners()], Paint.Of(Tone.Sheet)) { Role = Role.Fill, Source = hole.Id };
            if (hole.Label.StartsWith("Louver", StringComparison.Ordinal) || hole.Label.StartsWith("Wet", StringComparison.Ordinal))
            {
                yield return new Entity.Hatch([box.Corners()], HatchPattern.Upright, 1.3) { Source = hole.Id };
            }

            yield return new Entity.Polyline(box.Corners(), true) { Role = hole.IsDoor ? door : equipment, Source = hole.Id };
            if (hole.Label == "Double door")
            {
                double middle = box.Left + box.Width / 2;
                yield return new Entity.Polyline([new(middle, box.Top), new(middle, box.Bottom)]) { Role = Role.Beyond, Source = hole.Id };
            }
            else if ((hole.Label.StartsWith("Fan", StringComparison.Ordinal) || hole.Label.StartsWith("Upper fan", StringComparison.Ordinal)))
            {
                yield return new Entity.Arc(new(box.Left + box.Width / 2, box.Top + box.Height / 2), 0.43 * Math.Min(box.Width, box.Height)) { Role = equipment, Source = hole.Id };
            }
        }
    }
}
