using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;

namespace Glazewright.Design.Form;

/// <summary>Form: exact planes, areas and centre lines of every building, and where buildings meet.</summary>
public static class FormStage
{
    /// <summary>Raise when results change.</summary>
    public const int Version = 2;

    /// <summary>Computes the shapes.</summary>
    /// <param name="input">Shapes as typed.</param>
    /// <returns>The range's form.</returns>
    public static FormResult Run(FormInput input)
    {
        List<Solid> solids = [.. input.Houses.Select(h => HouseSolid(h, input.RangeBearingDeg))];
        solids.AddRange(input.Links.Select(l => LinkSolid(l, input.RangeBearingDeg)));
        List<SharedPiece> shared = SharedFaces.Find([.. solids.SelectMany(s => s.Faces)]);
        EqList<BuildingForm> buildings = solids.Select(s => Build(s, shared)).ToEqList();
        return new FormResult(buildings, shared.ToEqList(), FormWorkings.Report(input, buildings, shared));
    }

    private static Solid HouseSolid(HouseShape h, double bearingDeg)
    {
        Point3 origin = new(h.OriginXM, h.OriginYM, 0);
        Point3 x = new(1, 0, 0);
        Point3 y = new(0, 1, 0);
        CoverChoice CoverOf(FaceName face) => h.Coverings.First(c => c.Face == face).Cover;
        RawFace[] faces = [.. Enum.GetValues<FaceName>().Select(face =>
        {
            Point2[] outline = FaceOutlines.Of(face, h.Roof, h.WidthM, h.LengthM);
            bool wall = face is FaceName.Left or FaceName.Right or FaceName.End1 or FaceName.End2;
            EqList<Opening> openings = h.Openings.Where(o => o.Face == face).ToEqList();
            (string Name, CoverChoice Cover, IReadOnlyList<Point2> Outline)[] zones =
                face == FaceName.Floor ? []
                : wall && h.PonyWallM > 0 ? Split(outline, h.PonyWallM, h.PonyWallCovering, CoverOf(face))
                : [("cover", CoverOf(face), outline)];
            return RawFace.Place(h.Id, face, h.Roof, h.WidthM, h.LengthM, origin, x, y, bearingDeg, outline, zones, openings);
        })];
        EqList<MemberLine> members = MemberLines.Of(h)
            .Select(m => m with { A = m.A + origin, B = m.B + origin }).ToEqList();
        EqList<double> lines = Enumerable.Range(0, h.BayCount + 1).Select(i => h.LengthM * i / h.BayCount).ToEqList();
        return new Solid(h.Id, h.Name, true, origin, x, y, h.LengthM, h.WidthM, h.Roof, faces, lines, members);
    }

    private static Solid LinkSolid(LinkBuilding l, double bearingDeg)
    {
        bool along = l.SizeXM >= l.SizeYM;
        double lengthM = along ? l.SizeXM : l.SizeYM;
        double widthM = along ? l.SizeYM : l.SizeXM;
        Point3 x = along ? new(1, 0, 0) : new(0, 1, 0);
        Point3 y = along ? new(0, 1, 0) : new(-1, 0, 0);
        Point3 origin = new(along ? l.OriginXM : l.OriginXM + l.SizeXM, l.OriginYM, 0);
        RoofProfile roof = new(l.EaveM, l.EaveM, widthM / 2, l.RiseOverRun, l.RiseOverRun, SolvedRoofPart.None);
        RawFace[] faces = [.. Enum.GetValues<FaceName>().Select(face =>
        {
            Point2[] outline = FaceOutlines.Of(face, roof, widthM, lengthM);
            return RawFace.Place(
                l.Id, face, roof, widthM, lengthM, origin, x, y, bearingDeg, outline,
                face == FaceName.Floor ? [] : [("cover", l.Cover, outline)], []);
        })];
        return new Solid(l.Id, l.Name, false, origin, x, y, lengthM, widthM, roof, faces, [], []);
    }

    private static (string Name, CoverChoice Cover, IReadOnlyList<Point2> Outline)[] Split(
        Point2[] outline, double ponyM, CoverChoice pony, CoverChoice cover)
    {
        double width = outline.Max(p => p.UM);
        double top = outline.Max(p => p.VM);
        IReadOnlyList<Point2> below = Polygons.Common(outline, Polygons.Rectangle(0, 0, width, Math.Min(ponyM, top)));
        IReadOnlyList<Point2> above = ponyM < top ? Polygons.Common(outline, Polygons.Rectangle(0, ponyM, width, top - ponyM)) : [];
        return above.Count == 0 ? [("pony", pony, below)] : [("pony", pony, below), ("cover", cover, above)];
    }

    private static BuildingForm Build(Solid s, List<SharedPiece> shared)
    {
        EqList<FaceForm> faces = s.Faces.Select(f => f.Finish(shared)).ToEqList();
        FaceForm end = faces.First(f => f.Name == FaceName.End1);
        double sharedBaseM = shared.Where(p => s.Faces.Any(f => f.Id == p.FaceId))
            .Sum(p => p.Outline.Where(q => q.VM < 1e-6).Select(q => q.UM).DefaultIfEmpty(0).Max()
                - p.Outline.Where(q => q.VM < 1e-6).Select(q => q.UM).DefaultIfEmpty(0).Min());
        return new BuildingForm(
            s.Id,
            s.Name,
            s.IsHouse,
            s.Origin,
            s.AlongX,
            s.AlongY,
            s.LengthM,
            s.WidthM,
            s.Roof,
            faces,
            s.FrameLinesXM,
            s.Members,
            s.LengthM * s.WidthM,
            end.AreaM2 * s.LengthM,
            end.AreaM2,
            2 * (s.LengthM + s.WidthM) - sharedBaseM);
    }

    private sealed record Solid(
        string Id,
        string Name,
        bool IsHouse,
        Point3 Origin,
        Point3 AlongX,
        Point3 AlongY,
        double LengthM,
        double WidthM,
        RoofProfile Roof,
        RawFace[] Faces,
        EqList<double> FrameLinesXM,
        EqList<MemberLine> Members);
}
