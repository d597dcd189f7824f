using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;

namespace Glazewright.Design.Form;

/// <summary>A face placed in range axes, before it is known what it shares with other buildings.</summary>
internal sealed record RawFace(
    string Id,
    FaceName Name,
    FacePlane Plane,
    IReadOnlyList<Point2> Outline,
    (string Name, CoverChoice Cover, IReadOnlyList<Point2> Outline)[] Zones,
    EqList<Opening> Openings,
    double AzimuthDeg)
{
    /// <summary>Places a face.</summary>
    public static RawFace Place(
        string building,
        FaceName face,
        RoofProfile roof,
        double widthM,
        double lengthM,
        Point3 origin,
        Point3 alongX,
        Point3 alongY,
        double bearingDeg,
        IReadOnlyList<Point2> outline,
        (string Name, CoverChoice Cover, IReadOnlyList<Point2> Outline)[] zones,
        EqList<Opening> openings)
    {
        Point3 World(Point3 own) => own.XM * alongX + own.YM * alongY + new Point3(0, 0, own.ZM);
        double leftRun = Math.Sqrt(1 + roof.LeftPitch * roof.LeftPitch);
        double rightRun = Math.Sqrt(1 + roof.RightPitch * roof.RightPitch);
        Point3 x = new(1, 0, 0);
        Point3 y = new(0, 1, 0);
        Point3 z = new(0, 0, 1);
        (Point3 At, Point3 U, Point3 V, Point3 Normal) own = face switch
        {
            FaceName.Left => (new(0, 0, 0), x, z, new(0, -1, 0)),
            FaceName.Right => (new(0, widthM, 0), x, z, y),
            FaceName.End1 => (new(0, 0, 0), y, z, new(-1, 0, 0)),
            FaceName.End2 => (new(lengthM, 0, 0), y, z, x),
            FaceName.RoofLeft => (
                new(0, 0, roof.LeftEaveM), x, new(0, 1 / leftRun, roof.LeftPitch / leftRun), new(0, -roof.LeftPitch / leftRun, 1 / leftRun)),
            FaceName.RoofRight => (
                new(0, widthM, roof.RightEaveM), x, new(0, -1 / rightRun, roof.RightPitch / rightRun), new(0, roof.RightPitch / rightRun, 1 / rightRun)),
            _ => (new(0, 0, 0), x, y, new(0, 0, -1)),
        };
        FacePlane plane = new(origin + World(own.At), World(own.U), World(own.V), World(own.Normal));
        return new RawFace(
            $"{building}/{Word(face)}", face, plane, outline, zones, openings, Compass.AzimuthDeg(plane.Normal, bearingDeg));
    }

    /// <summary>Path word of a face.</summary>
    public static string Word(FaceName face) => face switch
    {
        FaceName.RoofLeft => "roof-left",
        FaceName.RoofRight => "roof-right",
        _ => face.ToString().ToLowerInvariant(),
    };

    /// <summary>The finished face, with areas exposed and shared.</summary>
    public FaceForm Finish(List<SharedPiece> shared)
    {
        List<SharedPiece> mine = [.. shared.Where(p => p.FaceId == Id)];
        double areaM2 = Polygons.AreaM2(Outline);
        double sharedM2 = mine.Sum(p => p.AreaM2);
        EqList<CoverZone> zones = Zones.Select(zone =>
        {
            double grossM2 = Polygons.AreaM2(zone.Outline);
            double zoneSharedM2 = mine.Sum(p => Area(Polygons.Common(zone.Outline, p.Outline)));
            double openM2 = Openings.Sum(o =>
            {
                IReadOnlyList<Point2> box = Polygons.Common(
                    zone.Outline, Polygons.Rectangle(o.OffsetM, o.SillM, o.WidthM, o.HeightM));
                return Area(box) - mine.Sum(p => Area(Polygons.Common(box, p.Outline)));
            });
            return new CoverZone(
                $"{Id}/{zone.Name}", zone.Cover, zone.Outline.ToEqList(), grossM2, Math.Max(0, grossM2 - zoneSharedM2 - openM2), zoneSharedM2);
        }).ToEqList();
        return new FaceForm(
            Id,
            Name,
            Plane,
            Outline.ToEqList(),
            zones,
            Openings.Select(o => new OpeningForm($"{Id}/{o.Id}", o, o.WidthM * o.HeightM)).ToEqList(),
            areaM2,
            areaM2 - sharedM2,
            sharedM2,
            Math.Acos(Math.Clamp(Plane.Normal.ZM, -1, 1)) * 180 / Math.PI,
            AzimuthDeg,
            mine.Select(p => p.Outline).ToEqList());
    }

    private static double Area(IReadOnlyList<Point2> outline) => outline.Count == 0 ? 0 : Polygons.AreaM2(outline);
}
