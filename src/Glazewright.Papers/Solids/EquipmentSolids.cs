using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.Layout;

namespace Glazewright.Papers.Solids;

/// <summary>Equipment and benches: boxes of their true size, fans as a frame with a disc, louvers with blades, lines as round tubes, benches with legs.</summary>
internal static class EquipmentSolids
{
    private const double ClothM = 0.002;
    private const double LineM = 0.012;
    private const double TopM = 0.05;
    private const double LegM = 0.05;
    private const double LegStepM = 2.4;
    private const int Sides = 16;

    public static IEnumerable<SolidPart> Of(BuildingForm building, LayoutResult layout)
    {
        foreach (PlacedItem item in layout.Placed.Where(p => p.Kind != PlacedKind.Aisle))
        {
            (SolidFrame frame, EqList<Prism> prisms) = Shape(item);
            if (prisms.Count > 0)
            {
                yield return new SolidPart(item.Id, item.Label, "", new SolidKind.Equipment(item), frame, new SolidShape(prisms))
                {
                    Fills = Filled(building, item),
                };
            }
        }
    }

    // The opening typed for it that it stands in, or else the one that is cut for it.
    private static string Filled(BuildingForm building, PlacedItem item)
    {
        OpeningKind? kind = item.Kind switch
        {
            PlacedKind.Fan => OpeningKind.Fan,
            PlacedKind.Louver => OpeningKind.Louver,
            PlacedKind.UpperFan or PlacedKind.UpperLouver => null,
            PlacedKind.WetWall => OpeningKind.WetWall,
            _ => null,
        };
        if (kind is null)
        {
            return item.Kind is PlacedKind.PressureFan or PlacedKind.UpperFan or PlacedKind.UpperLouver ? item.Id : "";
        }

        bool end = item.Face is FaceName.End1 or FaceName.End2;
        Point2[] place = end
            ? Polygons.Rectangle(item.Corner.YM, item.Corner.ZM, item.Size.YM, item.Size.ZM)
            : Polygons.Rectangle(item.Corner.XM, item.Corner.ZM, item.Size.XM, item.Size.ZM);
        OpeningForm? typed = building.Face(item.Face).Openings.FirstOrDefault(o => o.Opening.Kind == kind
            && Polygons.Common(place, Polygons.Rectangle(o.Opening.OffsetM, o.Opening.SillM, o.Opening.WidthM, o.Opening.HeightM)) is { Count: >= 3 } common
            && Polygons.AreaM2(common) > Polygons.AreaM2(place) / 2);
        return typed?.Id ?? item.Id;
    }

    private static (SolidFrame Frame, EqList<Prism> Prisms) Shape(PlacedItem item)
    {
        (Point3 corner, Point3 size) = (item.Corner, item.Size);
        bool inWall = item.Face is FaceName.Left or FaceName.Right or FaceName.End1 or FaceName.End2;
        switch (item.Kind)
        {
            case PlacedKind.Fan or PlacedKind.PressureFan or PlacedKind.Louver or PlacedKind.UpperFan or PlacedKind.UpperLouver or PlacedKind.IntakeBox or PlacedKind.ClothBox when inWall:
                bool end = item.Face is FaceName.End1 or FaceName.End2;
                SolidFrame wall = end
                    ? new SolidFrame(corner, new Point3(0, 1, 0), new Point3(1, 0, 0))
                    : new SolidFrame(corner + new Point3(0, size.YM, 0), new Point3(1, 0, 0), new Point3(0, -1, 0));
                (double wideM, double deepM) = end ? (size.YM, size.XM) : (size.XM, size.YM);
                return (wall, item.Kind switch
                {
                    PlacedKind.Louver or PlacedKind.UpperLouver => Louver(wideM, size.ZM, deepM),
                    PlacedKind.IntakeBox or PlacedKind.ClothBox => Rim(wideM, size.ZM, deepM, 0.03),
                    _ => Fan(wideM, size.ZM, deepM),
                });
            case PlacedKind.Vent:
                (Point3 axis, double longM, double roundM) = item.Face switch
                {
                    FaceName.Left or FaceName.Right => (new Point3(0, 1, 0), size.YM, size.XM / 2),
                    FaceName.End1 or FaceName.End2 => (new Point3(1, 0, 0), size.XM, size.YM / 2),
                    _ => (new Point3(0, 0, 1), size.ZM, size.XM / 2),
                };
                Point3 middle = corner + 0.5 * (size - longM * axis);
                Point3 across = axis.XM > 0 ? new Point3(0, 1, 0) : axis.YM > 0 ? new Point3(0, 0, 1) : new Point3(1, 0, 0);
                return (new SolidFrame(middle, across, axis), [Prism.Square(new Profile.Disc(Prism.Round(roundM)), 0, longM)]);
            case PlacedKind.CirculationFan or PlacedKind.OscillatingFan when size is { XM: > 0, YM: > 0, ZM: > 0 }:
                return (
                    new SolidFrame(corner + new Point3(0, size.YM / 2, size.ZM / 2), new Point3(0, 1, 0), new Point3(1, 0, 0)),
                    [Prism.Square(new Profile.Disc(Prism.Round(Math.Min(size.YM, size.ZM) / 2)), 0, size.XM)]);
            case PlacedKind.FogLine when size.XM > 0:
                return (new SolidFrame(corner, new Point3(0, 1, 0), new Point3(1, 0, 0)), [Prism.Square(new Profile.Disc(LineM), 0, size.XM)]);
            case PlacedKind.FogLine when size.YM > 0:
                return (new SolidFrame(corner, new Point3(0, 0, 1), new Point3(0, 1, 0)), [Prism.Square(new Profile.Disc(LineM), 0, size.YM)]);
            case PlacedKind.Bench when size is { XM: > 0, YM: > 0, ZM: > TopM }:
                return (SolidFrame.Upright(corner), Bench(size));
            case PlacedKind.Curtain when size is { XM: > 0, YM: > 0 }:
                return (SolidFrame.Upright(corner), [Prism.Square(Profile.Rectangle(0, 0, size.XM, size.YM), 0, ClothM)]);
            default:
                return (SolidFrame.Upright(corner), size is { XM: > 0, YM: > 0, ZM: > 0 } ? [Prism.Square(Profile.Rectangle(0, 0, size.XM, size.YM), 0, size.ZM)] : []);
        }
    }

    private static EqList<Prism> Fan(double wideM, double highM, double deepM)
    {
        double radiusM = 0.45 * Math.Min(wideM, highM);
        EqList<Point2> ring = Profile.Rounded(Enumerable.Range(0, Sides).Select(i => new Point2(
            wideM / 2 + radiusM * Math.Cos(2 * Math.PI * i / Sides), highM / 2 + radiusM * Math.Sin(2 * Math.PI * i / Sides))));
        Profile.Area rim = new(Profile.Rectangle(0, 0, wideM, highM).Outline, [ring]);
        return [Prism.Square(rim, 0, deepM), Prism.Square(new Profile.Area(ring, []), 0.45 * deepM, 0.55 * deepM)];
    }

    private static EqList<Prism> Rim(double wideM, double highM, double deepM, double thickM)
    {
        double t = Math.Min(thickM, Math.Min(wideM, highM) / 4);
        Profile.Area rim = new(Profile.Rectangle(0, 0, wideM, highM).Outline, [Profile.Rectangle(t, t, wideM - 2 * t, highM - 2 * t).Outline]);
        return [Prism.Square(rim, 0, deepM)];
    }

    private static EqList<Prism> Louver(double wideM, double highM, double deepM)
    {
        const double FrameM = 0.04;
        List<Prism> prisms = [.. Rim(wideM, highM, deepM, FrameM)];
        int blades = Math.Clamp((int)Math.Round(highM / 0.15), 1, 20);
        double stepM = (highM - 2 * FrameM) / blades;
        for (int i = 0; i < blades && stepM > 0.02 && wideM > 3 * FrameM; i++)
        {
            prisms.Add(Prism.Square(Profile.Rectangle(FrameM, FrameM + (i + 0.1) * stepM, wideM - 2 * FrameM, 0.8 * stepM), 0.4 * deepM, 0.5 * deepM));
        }

        return prisms.ToEqList();
    }

    private static EqList<Prism> Bench(Point3 size)
    {
        List<Prism> prisms = [Prism.Square(Profile.Rectangle(0, 0, size.XM, size.YM), size.ZM - TopM, size.ZM)];
        int pairs = Math.Max(2, (int)Math.Ceiling(size.XM / LegStepM) + 1);
        double inM = Math.Min(0.15, Math.Min(size.XM, size.YM) / 4);
        for (int i = 0; i < pairs; i++)
        {
            double x = inM + (size.XM - 2 * inM - LegM) * i / (pairs - 1);
            foreach (double y in (double[])[inM, size.YM - inM - LegM])
            {
                prisms.Add(Prism.Square(Profile.Rectangle(x, y, LegM, LegM), 0, size.ZM - TopM));
            }
        }

        return prisms.ToEqList();
    }
}
