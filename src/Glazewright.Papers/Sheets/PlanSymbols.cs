using Glazewright.Design.Brief;
using Glazewright.Design.Form;
using Glazewright.Design.Layout;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Sets;

namespace Glazewright.Papers.Sheets;

/// <summary>How buildings, openings and equipment look from above, in range axes.</summary>
internal static class PlanSymbols
{
    /// <summary>Corners of a building's footprint.</summary>
    public static IReadOnlyList<Spot> Footprint(BuildingForm b) =>
    [
        SheetStyle.Flat(b.Origin),
        SheetStyle.Flat(b.Origin + b.LengthM * b.AlongX),
        SheetStyle.Flat(b.Origin + b.LengthM * b.AlongX + b.WidthM * b.AlongY),
        SheetStyle.Flat(b.Origin + b.WidthM * b.AlongY),
    ];

    /// <summary>Points outside the footprint that door leaves and equipment on the walls reach.</summary>
    public static IEnumerable<Spot> Reach(BuildingForm b, HouseResults? house)
    {
        foreach (FaceForm face in b.Faces.Where(f => f.Name is FaceName.Left or FaceName.Right or FaceName.End1 or FaceName.End2))
        {
            Spot outward = new Spot(face.Plane.Normal.XM, face.Plane.Normal.YM).Unit();
            foreach (Opening o in face.Openings.Select(o => o.Opening))
            {
                double byM = o.Kind switch { OpeningKind.Door => o.WidthM, OpeningKind.DoubleDoor => o.WidthM / 2, OpeningKind.Fan => 0.45, OpeningKind.WetWall => 0.15, _ => 0.08 };
                yield return SheetStyle.Flat(face.Plane.At(new Point2(o.OffsetM, 0))) + byM * outward;
                yield return SheetStyle.Flat(face.Plane.At(new Point2(o.OffsetM + o.WidthM, 0))) + byM * outward;
            }
        }

        foreach (PlacedItem item in house?.Layout.Placed.Where(p => p.Face != FaceName.Floor) ?? [])
        {
            foreach ((double x, double y) in ((double, double)[])[(0, 0), (1, 0), (0, 1), (1, 1)])
            {
                yield return SheetStyle.Flat(b.Origin + (item.Corner.XM + x * item.Size.XM) * b.AlongX + (item.Corner.YM + y * item.Size.YM) * b.AlongY);
            }
        }
    }

    /// <summary>Walls, ridge, frame lines, openings, benches and what hangs on walls; what hangs inside when asked.</summary>
    public static IEnumerable<Entity> Building(BuildingForm b, HouseResults? house, bool hung = true)
    {
        IReadOnlyList<Spot> ring = Footprint(b);
        yield return new Entity.Fill([ring], Paint.Of(b.IsHouse ? Tone.Sheet : Tone.Wash)) { Role = Role.Fill, Source = b.Id };
        if (house is not null)
        {
            foreach (PlacedItem item in house.Layout.Placed.Where(i => hung || i.Face != FaceName.Floor || i.Kind is PlacedKind.Bench or PlacedKind.Aisle).OrderBy(i => i.Kind is PlacedKind.Bench or PlacedKind.Aisle ? 0 : 1))
            {
                foreach (Entity entity in Item(b, item))
                {
                    yield return entity;
                }
            }

            foreach (double x in b.FrameLinesXM.Skip(1).SkipLast(1))
            {
                Spot left = SheetStyle.Flat(b.Origin + x * b.AlongX);
                Spot right = SheetStyle.Flat(b.Origin + x * b.AlongX + b.WidthM * b.AlongY);
                Spot across = (right - left).Unit();
                yield return new Entity.Polyline([left, left + 0.35 * across]) { Role = Role.Beyond, Source = $"{b.Id}/frame" };
                yield return new Entity.Polyline([right, right + -0.35 * across]) { Role = Role.Beyond, Source = $"{b.Id}/frame" };
            }

            yield return new Entity.Polyline([
                SheetStyle.Flat(b.Origin + b.Roof.RidgeOffsetM * b.AlongY), SheetStyle.Flat(b.Origin + b.Roof.RidgeOffsetM * b.AlongY + b.LengthM * b.AlongX),
            ])
            { Role = Role.Centre, Source = b.Id + "/ridge" };
        }

        yield return new Entity.Polyline(ring, true) { Role = Role.Cut, Source = b.Id };
        foreach (FaceForm face in b.Faces.Where(f => f.Name is FaceName.Left or FaceName.Right or FaceName.End1 or FaceName.End2))
        {
            foreach (OpeningForm opening in face.Openings)
            {
                foreach (Entity entity in Opening(face, opening))
                {
                    yield return entity;
                }
            }
        }
    }

    private static IEnumerable<Entity> Opening(FaceForm face, OpeningForm form)
    {
        Opening o = form.Opening;
        Spot a = SheetStyle.Flat(face.Plane.At(new Point2(o.OffsetM, 0)));
        Spot b = SheetStyle.Flat(face.Plane.At(new Point2(o.OffsetM + o.WidthM, 0)));
        Spot outward = new Spot(face.Plane.Normal.XM, face.Plane.Normal.YM).Unit();
        IReadOnlyList<Spot> gap = [a + -0.08 * outward, b + -0.08 * outward, b + 0.08 * outward, a + 0.08 * outward];
        switch (o.Kind)
        {
            case OpeningKind.Door or OpeningKind.DoubleDoor:
                yield return new Entity.Fill([gap], Paint.Of(Tone.Sheet)) { Role = Role.Fill, Source = form.Id };
                foreach (Entity leaf in o.Kind == OpeningKind.Door ? Leaf(a, b, outward, form.Id) : Leaf(a, 0.5 * (a + b), outward, form.Id).Concat(Leaf(b, 0.5 * (a + b), outward, form.Id)))
                {
                    yield return leaf;
                }

                break;
            case OpeningKind.RollUpDoor or OpeningKind.SlidingDoor:
                // A coil inside along the whole opening, dashed; a leaf before the wall.
                yield return new Entity.Fill([gap], Paint.Of(Tone.Sheet)) { Role = Role.Fill, Source = form.Id };
                yield return o.Kind == OpeningKind.RollUpDoor
                    ? new Entity.Polyline([a, b, b + -0.4 * outward, a + -0.4 * outward], true) { Role = Role.Hidden, Source = form.Id }
                    : new Entity.Polyline([a + 0.05 * outward, b + 0.05 * outward, b + 0.1 * outward, a + 0.1 * outward], true) { Role = Role.Visible, Source = form.Id };
                break;
            case OpeningKind.Fan:
                IReadOnlyList<Spot> box = [a, b, b + 0.45 * outward, a + 0.45 * outward];
                yield return new Entity.Polyline(box, true) { Role = Role.Equipment, Source = form.Id };
                yield return new Entity.Polyline([box[0], box[2]]) { Role = Role.Equipment, Source = form.Id };
                yield return new Entity.Polyline([box[1], box[3]]) { Role = Role.Equipment, Source = form.Id };
                break;
            case OpeningKind.WetWall:
                IReadOnlyList<Spot> pad = [a + -0.15 * outward, b + -0.15 * outward, b + 0.15 * outward, a + 0.15 * outward];
                yield return new Entity.Fill([pad], Paint.Of(Tone.Water), 0.5) { Role = Role.Fill, Source = form.Id };
                yield return new Entity.Polyline(pad, true) { Role = Role.Equipment, Source = form.Id };
                break;
            default:
                yield return new Entity.Fill([gap], Paint.Of(Tone.Sheet)) { Role = Role.Fill, Source = form.Id };
                yield return new Entity.Polyline(gap, true) { Role = o.Kind == OpeningKind.Louver ? Role.Equipment : Role.Beyond, Source = form.Id };
                break;
        }
    }

    private static IEnumerable<Entity> Leaf(Spot hinge, Spot latch, Spot outward, string id)
    {
        double width = (latch - hinge).Length();
        Spot open = hinge + width * outward;
        yield return new Entity.Polyline([hinge, open]) { Role = Role.Visible, Source = id };
        double start = Math.Atan2((latch - hinge).Y, (latch - hinge).X) * 180 / Math.PI;
        double end = Math.Atan2(outward.Y, outward.X) * 180 / Math.PI;
        double sweep = (end - start + 540) % 360 - 180;
        yield return new Entity.Arc(hinge, width, start, sweep) { Role = Role.Beyond, Source = id };
    }

    /// <summary>A placed piece from above.</summary>
    public static IEnumerable<Entity> Item(BuildingForm b, PlacedItem item)
    {
        Spot At(double x, double y) => SheetStyle.Flat(b.Origin + x * b.AlongX + y * b.AlongY);
        (double x0, double y0) = (item.Corner.XM, item.Corner.YM);
        (double x1, double y1) = (x0 + item.Size.XM, y0 + item.Size.YM);
        IReadOnlyList<Spot> box = [At(x0, y0), At(x1, y0), At(x1, y1), At(x0, y1)];
        bool flat = item.Size.XM < 0.02 || item.Size.YM < 0.02;
        switch (item.Kind)
        {
            case PlacedKind.Bench:
                yield return new Entity.Fill([box], Paint.Of(Tone.Held), 0.14) { Role = Role.Fill, Source = item.Id };
                yield return new Entity.Polyline(box, true) { Role = Role.Beyond, Source = item.Id };
                break;
            case PlacedKind.Aisle:
                break;
            case PlacedKind.Curtain:
                // Drawn a little inside its size, or the walls would cover it.
                double inset = Math.Min(0.2, Math.Min(item.Size.XM, item.Size.YM) / 4);
                yield return new Entity.Polyline([At(x0 + inset, y0 + inset), At(x1 - inset, y0 + inset), At(x1 - inset, y1 - inset), At(x0 + inset, y1 - inset)], true)
                {
                    Role = Role.Hidden,
                    Source = item.Id,
                };
                break;
            case PlacedKind.CirculationFan or PlacedKind.OscillatingFan:
                Spot centre = 0.5 * (box[0] + box[2]);
                yield return new Entity.Arc(centre, Math.Max(0.25, Math.Max(item.Size.XM, item.Size.YM) / 2)) { Role = Role.Equipment, Source = item.Id };
                yield return new Entity.Polyline([centre + new Spot(-0.18, 0), centre + new Spot(0.18, 0)]) { Role = Role.Equipment, Source = item.Id };
                yield return new Entity.Polyline([centre + new Spot(0, -0.18), centre + new Spot(0, 0.18)]) { Role = Role.Equipment, Source = item.Id };
                break;
            case PlacedKind.Vent when item.Face is FaceName.RoofLeft or FaceName.RoofRight:
                Spot pipe = 0.5 * (box[0] + box[2]);
                yield return new Entity.Arc(pipe, item.Size.XM / 2) { Role = Role.Equipment, Source = item.Id };
                yield return new Entity.Arc(pipe, item.Size.XM) { Role = Role.Equipment, Source = item.Id };
                break;
            case PlacedKind.Sensor:
                yield return new Entity.Arc(0.5 * (box[0] + box[2]), 0.18) { Role = Role.Equipment, Source = item.Id };
                break;
            case PlacedKind.FogLine or PlacedKind.LampRow:
                Paint paint = Paint.Of(item.Kind == PlacedKind.FogLine ? Tone.Water : Tone.Sun);
                yield return new Entity.Polyline(
                    item.Size.XM >= item.Size.YM ? [At(x0, (y0 + y1) / 2), At(x1, (y0 + y1) / 2)] : [At((x0 + x1) / 2, y0), At((x0 + x1) / 2, y1)])
                {
                    Role = Role.Equipment,
                    Source = item.Id,
                    Pen = new Pen(0.25, [1, 0.8], paint),
                };
                break;
            case PlacedKind.WetWall:
                if (!flat)
                {
                    yield return new Entity.Fill([box], Paint.Of(Tone.Water), 0.5) { Role = Role.Fill, Source = item.Id };
                }

                yield return new Entity.Polyline(box, true) { Role = Role.Equipment, Source = item.Id, Pen = new Pen(flat ? 0.7 : 0.25, [], Paint.Of(Tone.Water)) };
                break;
            default:
                yield return new Entity.Polyline(box, true) { Role = Role.Equipment, Source = item.Id };
                if (!flat && item.Kind is PlacedKind.Fan or PlacedKind.UpperFan or PlacedKind.Heater or PlacedKind.PressureFan)
                {
                    yield return new Entity.Polyline([box[0], box[2]]) { Role = Role.Equipment, Source = item.Id };
                    yield return new Entity.Polyline([box[1], box[3]]) { Role = Role.Equipment, Source = item.Id };
                }

                break;
        }
    }
}
