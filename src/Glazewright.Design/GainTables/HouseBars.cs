using Glazewright.Design.Body;
using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.Layout;
using Glazewright.Design.Takeoff;
using Glazewright.Science.Light;
using Glazewright.Science.Light.Shadows;
using Glazewright.Science.Optics;

namespace Glazewright.Design.GainTables;

/// <summary>A bar that throws a shadow, with its name.</summary>
/// <param name="Id">Path id of the member, joint or piece of equipment.</param>
/// <param name="Bar">Its body, in the house's own axes.</param>
public sealed record NamedBar(string Id, ShadeBar Bar);

/// <summary>What stands in the light inside a house: frame members, joints of the covering, equipment overhead, benches.</summary>
public static class HouseBars
{
    /// <summary>How near a face's plane both ends of a member lie when it stands against that face, m.</summary>
    private const double OnPlaneM = 0.05;

    /// <summary>Cap or profile over a joint of sheets, width and depth, m (common practice: 40 × 25 mm).</summary>
    private const double JointWidthM = 0.040;

    private const double JointDepthM = 0.025;

    /// <summary>A parked curtain: one bundle at each frame, width and depth, m (common practice: 4 × 6 in).</summary>
    private const double BundleWidthM = 0.10;

    private const double BundleDepthM = 0.15;

    private const double BenchThicknessM = 0.05;

    /// <summary>A fan's or louver's frame, m.</summary>
    private const double InWallM = 0.05;

    /// <summary>Frame members with their true sizes, moved inside the faces they stand against.</summary>
    /// <param name="house">The house.</param>
    /// <param name="members">Members of all houses; those of this one count.</param>
    /// <returns>One bar a member.</returns>
    public static IEnumerable<NamedBar> Members(BuildingForm house, EqList<MemberSolid> members)
    {
        (Vector3d Normal, Vector3d Point)[] faces =
            [.. house.Faces.Where(f => f.Name != FaceName.Floor).Select(f => (Turned(house, f.Plane.Normal), HouseEnclosure.Own(house, f.Plane.Origin)))];
        foreach (MemberSolid m in members.Where(m => m.House == house.Id && m.Line.LengthM > 1e-6))
        {
            Vector3d a = HouseEnclosure.Own(house, m.Line.A);
            Vector3d b = HouseEnclosure.Own(house, m.Line.B);
            (Vector3d Normal, Vector3d Point)[] against =
                [.. faces.Where(f => Math.Abs(f.Normal.Dot(a - f.Point)) < OnPlaneM && Math.Abs(f.Normal.Dot(b - f.Point)) < OnPlaneM)];
            Vector3d depth = m.Line.Role switch
            {
                MemberRole.EndPost => new Vector3d(1, 0, 0),
                MemberRole.Girt when Math.Abs(b.X - a.X) < 1e-6 => new Vector3d(1, 0, 0),
                MemberRole.Column or MemberRole.Girt => new Vector3d(0, 1, 0),
                MemberRole.Purlin or MemberRole.Jamb or MemberRole.Header or MemberRole.Sill when against.Length > 0 => against[0].Normal,
                _ => new Vector3d(0, 0, 1),
            };
            ShadeBar bar = ShadeBar.FourSided(a, b, depth, m.WidthM, m.DepthM);
            Vector3d inward = default;
            foreach ((Vector3d normal, _) in against)
            {
                double half = Math.Abs(bar.HalfWidth.Dot(normal)) + Math.Abs(bar.HalfDepth.Dot(normal));
                inward -= half * normal;
            }

            yield return new NamedBar(m.Line.Id, bar with { A = bar.A + inward, B = bar.B + inward });
        }
    }

    /// <summary>Joints of sheets and lites on clear faces, running up each face at the module they are bought in.</summary>
    /// <param name="house">The house.</param>
    /// <param name="units">Sheets come in the job's units.</param>
    /// <returns>One bar a joint.</returns>
    public static IEnumerable<NamedBar> Joints(BuildingForm house, UnitSystem units)
    {
        foreach (FaceForm face in house.Faces.Where(f => f.Name != FaceName.Floor))
        {
            Vector3d normal = Turned(house, face.Plane.Normal);
            foreach (CoverZone zone in face.Zones.Where(z => IsClear(z.Cover.Kind)))
            {
                double module = CoverBuying.Of(zone.Cover.Kind, units).ModuleM;
                double fromU = zone.Outline.Min(p => p.UM);
                double toU = zone.Outline.Max(p => p.UM);
                int joints = Math.Max(0, (int)Math.Ceiling((toU - fromU) / module - 1e-9) - 1);
                for (int i = 1; i <= joints; i++)
                {
                    if (Across(zone.Outline, fromU + (i * module)) is not ({ } low, { } high))
                    {
                        continue;
                    }

                    Vector3d inward = -JointDepthM / 2 * normal;
                    yield return new NamedBar(
                        $"{zone.Id}/joint-{i:00}",
                        ShadeBar.FourSided(
                            HouseEnclosure.Own(house, face.Plane.At(low)) + inward, HouseEnclosure.Own(house, face.Plane.At(high)) + inward,
                            normal, JointWidthM, JointDepthM));
                }
            }
        }
    }

    /// <summary>Equipment that hangs inside or stands in the walls: heaters, circulation fans, lamps, exhaust fans, louvers, wet wall; the parked curtain's bundles.</summary>
    /// <param name="house">The house.</param>
    /// <param name="layout">Where things sit.</param>
    /// <returns>One bar a piece.</returns>
    public static IEnumerable<NamedBar> Equipment(BuildingForm house, LayoutResult layout)
    {
        foreach (PlacedItem item in layout.Placed)
        {
            if (item.Kind is PlacedKind.Heater or PlacedKind.CirculationFan or PlacedKind.OscillatingFan or PlacedKind.LampRow
                && item.Size.XM > 0.01 && item.Size.YM > 0.01 && item.Size.ZM > 0.01)
            {
                yield return new NamedBar(item.Id, ShadeBar.Box(Vector(item.Corner), Vector(item.Size)) with { Cause = ShadeCause.Equipment });
            }

            if (item.CutsCover)
            {
                // Set in a wall: as thick as its frame at least, and inside the wall's plane.
                Vector3d size = new(Math.Max(item.Size.XM, InWallM), Math.Max(item.Size.YM, InWallM), Math.Max(item.Size.ZM, InWallM));
                Vector3d corner = Vector(item.Corner);
                yield return new NamedBar(
                    item.Id,
                    ShadeBar.Box(
                        new Vector3d(
                            Math.Clamp(corner.X, 0, Math.Max(0, house.LengthM - size.X)),
                            Math.Clamp(corner.Y, 0, Math.Max(0, house.WidthM - size.Y)),
                            corner.Z),
                        size) with
                    { Cause = ShadeCause.Equipment });
            }

            if (item.Kind == PlacedKind.Curtain && item.Size.YM > 0.1)
            {
                for (int i = 0; i < house.FrameLinesXM.Count - 1; i++)
                {
                    // Beside the frame, so that its bundle lies partly in the frame's own shadow.
                    double x = Math.Min(house.FrameLinesXM[i] + BundleWidthM, house.LengthM - BundleWidthM);
                    Vector3d from = new(x, item.Corner.YM, item.Corner.ZM - (BundleDepthM / 2));
                    yield return new NamedBar(
                        $"{item.Id}/parked-{i + 1:00}",
                        ShadeBar.FourSided(from, from + new Vector3d(0, item.Size.YM, 0), new Vector3d(0, 0, 1), BundleWidthM, BundleDepthM)
                        with
                        { Cause = ShadeCause.Curtain });
                }
            }
        }
    }

    /// <summary>Benches, for the floor below them.</summary>
    /// <param name="layout">Where they sit.</param>
    /// <returns>One box a bench.</returns>
    public static IEnumerable<NamedBar> Benches(LayoutResult layout) => layout.Placed
        .Where(p => p.Kind == PlacedKind.Bench && p.Size.XM > 0.01 && p.Size.YM > 0.01)
        .Select(p => new NamedBar(
            p.Id,
            ShadeBar.Box(
                new Vector3d(p.Corner.XM, p.Corner.YM, Math.Max(0.01, p.Corner.ZM + p.Size.ZM - BenchThicknessM)),
                new Vector3d(p.Size.XM, p.Size.YM, BenchThicknessM)) with
            { Cause = ShadeCause.Equipment }));

    private static bool IsClear(string kind) => GenericCovers.TryFind(kind, out GenericCover? cover) && cover.Make is not CoverMake.Opaque;

    private static Vector3d Vector(Point3 p) => new(p.XM, p.YM, p.ZM);

    private static Vector3d Turned(BuildingForm house, Point3 direction) =>
        new(direction.Dot(house.AlongX), direction.Dot(house.AlongY), direction.ZM);

    // The two ends of the line u = const in a convex outline.
    private static (Point2? Low, Point2? High) Across(EqList<Point2> outline, double u)
    {
        double low = double.PositiveInfinity;
        double high = double.NegativeInfinity;
        for (int i = 0; i < outline.Count; i++)
        {
            Point2 p = outline[i];
            Point2 q = outline[(i + 1) % outline.Count];
            if ((p.UM <= u && q.UM > u) || (p.UM > u && q.UM <= u))
            {
                double v = p.VM + ((u - p.UM) / (q.UM - p.UM) * (q.VM - p.VM));
                low = Math.Min(low, v);
                high = Math.Max(high, v);
            }
        }

        return high - low > 0.01 ? (new Point2(u, low), new Point2(u, high)) : (null, null);
    }
}
