using Glazewright.Design.Body;
using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Science.Light;
using Glazewright.Science.Optics;
using Covering = Glazewright.Science.Light.FaceCovering;

namespace Glazewright.Design.GainTables;

/// <summary>A house of the job as the closed body that the light computation knows, in the house's own axes.</summary>
internal static class HouseEnclosure
{
    /// <summary>Smaller parts than this carry no light worth counting, m².</summary>
    private const double LeastM2 = 1e-3;

    /// <summary>How near its plane a member stands to shade a face, m.</summary>
    private const double OnPlaneM = 0.05;

    /// <summary>Inside reflectance of doors, fans, louvers and walls towards other buildings (common practice).</summary>
    private const double PlainReflectance = 0.5;

    /// <summary>A wet pad is dark.</summary>
    private const double PadReflectance = 0.15;

    public static Enclosure Of(
        BuildingForm house,
        EqList<SharedPiece> shared,
        IEnumerable<NamedBar> bars,
        double frameReflectance,
        double cropReflectance)
    {
        List<EnclosureFace> faces = [];
        foreach (FaceForm face in house.Faces)
        {
            if (face.Name == FaceName.Floor)
            {
                faces.Add(new EnclosureFace(face.Id, Corners(house, face, face.Outline), new Covering.CropPlane(cropReflectance), []));
                continue;
            }

            List<SharedPiece> touching = [.. shared.Where(p => p.FaceId == face.Id)];
            foreach (CoverZone zone in face.Zones.Where(z => z.GrossM2 > LeastM2))
            {
                Covering covering = Of(zone.Cover, frameReflectance);
                faces.Add(new EnclosureFace(
                    zone.Id, Corners(house, face, zone.Outline), covering, Patches(house, face, zone, covering, touching, frameReflectance)));
            }
        }

        return Enclosure.Of(faces, [.. bars.Select(b => b.Bar)]);
    }

    /// <summary>
    /// Members that stand in a face's plane of a neighbour, as one family of bars for each kind: length × width and length × depth over the face's area. A
    /// member on an edge counts by half for each of its faces.
    /// </summary>
    public static IReadOnlyList<BarFamily> Bars(BuildingForm axes, BuildingForm house, FaceForm face, EqList<MemberSolid> members)
    {
        List<BarFamily> bars = [];
        IEnumerable<IGrouping<MemberRole, MemberSolid>> kinds = members
            .Where(m => m.House == house.Id && Away(face, m.Line.A) < OnPlaneM && Away(face, m.Line.B) < OnPlaneM)
            .GroupBy(m => m.Line.Role)
            .OrderBy(g => g.Key);
        foreach (IGrouping<MemberRole, MemberSolid> kind in kinds)
        {
            double widthM2 = 0;
            double depthM2 = 0;
            foreach (MemberSolid m in kind)
            {
                double lengthM = m.Line.LengthM
                    / house.Faces.Count(f => f.Name != FaceName.Floor && Away(f, m.Line.A) < OnPlaneM && Away(f, m.Line.B) < OnPlaneM);
                widthM2 += lengthM * m.WidthM;
                depthM2 += lengthM * m.DepthM;
            }

            MemberLine line = kind.First().Line;
            Vector3d along = (Own(axes, line.B) - Own(axes, line.A)).Unit();
            bars.Add(new BarFamily(along, Math.Min(0.5, widthM2 / face.AreaM2), Math.Min(2, depthM2 / face.AreaM2)));
        }

        return bars;
    }

    private static double Away(FaceForm face, Point3 p) => Math.Abs((p - face.Plane.Origin).Dot(face.Plane.Normal));

    private static Covering Of(CoverChoice choice, double frameReflectance)
    {
        if (!GenericCovers.TryFind(choice.Kind, out GenericCover? kind))
        {
            throw new ArgumentException($"No cover kind '{choice.Kind}'.", nameof(choice));
        }

        return kind.Make is CoverMake.Opaque
            ? new Covering.Opaque(Math.Min(0.95, choice.InsideReflectanceFraction))
            : new Covering.Clear(
                kind.Optics(new CoverCondition(1 - choice.DirtFactor, 1 - choice.AgeingFactor, 1 - choice.CondensationFactor)),
                0,
                frameReflectance,
                StateFactor: choice.DirtFactor * choice.AgeingFactor * choice.CondensationFactor);
    }

    private static List<EnclosurePatch> Patches(
        BuildingForm house,
        FaceForm face,
        CoverZone zone,
        Covering covering,
        List<SharedPiece> touching,
        double frameReflectance)
    {
        List<EnclosurePatch> patches = [];
        foreach (SharedPiece piece in touching)
        {
            Add(piece.OtherFaceId, piece.Outline, new Covering.Opaque(PlainReflectance));
        }

        foreach (OpeningForm opening in face.Openings)
        {
            Opening o = opening.Opening;
            Point2[] box = Form.Polygons.Rectangle(o.OffsetM, o.SillM, o.WidthM, o.HeightM);

            // An opening into another building is part of the shared wall.
            if (touching.TrueForAll(p => Form.Polygons.Common(box, p.Outline).Count == 0)
                && Of(o.Kind, covering, frameReflectance) is { } filling)
            {
                Add(opening.Id, box, filling);
            }
        }

        return patches;

        void Add(string id, IReadOnlyList<Point2> outline, Covering filling)
        {
            IReadOnlyList<Point2> part = Form.Polygons.Common(zone.Outline, outline);
            if (part.Count >= 3 && Form.Polygons.AreaM2(part) > LeastM2)
            {
                patches.Add(new EnclosurePatch($"{zone.Id}/{id}", Corners(house, face, part), filling));
            }
        }
    }

    // Null: the opening lets light as the face around it does.
    private static Covering? Of(OpeningKind kind, Covering around, double frameReflectance) => kind switch
    {
        OpeningKind.Vent => null,
        OpeningKind.Window => around is Covering.Clear
            ? null
            : Of(new CoverChoice("polycarbonate-single", 0.95, 1, 0), frameReflectance),
        OpeningKind.WetWall => new Covering.Opaque(PadReflectance),
        _ => new Covering.Opaque(PlainReflectance),
    };

    /// <summary>Corners in the house's axes, anticlockwise seen from outside; the face may be another building's.</summary>
    public static Vector3d[] Corners(BuildingForm house, FaceForm face, IReadOnlyList<Point2> outline)
    {
        Vector3d[] corners = [.. outline.Select(p => Own(house, face.Plane.At(p)))];
        Point3 turned = face.Plane.U.Cross(face.Plane.V);

        // Face axes may be left-handed seen from outside.
        if (turned.Dot(face.Plane.Normal) < 0)
        {
            Array.Reverse(corners);
        }

        return corners;
    }

    /// <summary>A point of the range in the house's axes.</summary>
    public static Vector3d Own(BuildingForm house, Point3 p)
    {
        Point3 from = p - house.Origin;
        return new Vector3d(from.Dot(house.AlongX), from.Dot(house.AlongY), from.ZM);
    }
}
