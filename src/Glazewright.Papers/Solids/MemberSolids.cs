using Glazewright.Design.Body;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.Frame;
using Glazewright.Design.GainTables;
using Glazewright.Mechanics.Sections;
using Glazewright.Science.Light;

namespace Glazewright.Papers.Solids;

/// <summary>
/// Frame members as tubes with sawn ends, where the light stage has them: columns, posts and jambs that reach the roof end under the rafters, rafters are plumb at eave and ridge, ties
/// end under both rafters, members along are square. Members along and rafters share the depth below the roof: joints are not designed, so nothing is notched.
/// </summary>
internal static class MemberSolids
{
    private const double LeastM = 0.01;

    public static IEnumerable<SolidPart> Of(BuildingForm house, EqList<MemberSolid> members, MarkFinder marks)
    {
        Dictionary<string, MemberSolid> byId = members.Where(m => m.House == house.Id).ToDictionary(m => m.Line.Id);
        double rafterM = byId.Values.FirstOrDefault(m => m.Line.Role == MemberRole.Rafter)?.DepthM ?? 0;
        foreach (NamedBar bar in HouseBars.Members(house, members))
        {
            MemberSolid member = byId[bar.Id];
            Point3 a = Point(bar.Bar.A);
            Point3 along = Unit(Point(bar.Bar.B) - a);
            Point3 deep = Unit(Point(bar.Bar.HalfDepth));
            SolidFrame frame = new(a, deep.Cross(along), along);
            double lengthM = (Point(bar.Bar.B) - a).LengthM;
            bool reachesRoof = a.ZM + lengthM > house.Roof.HeightM(a.YM, house.WidthM) - 0.02;
            (EndCut start, EndCut end) = Ends(house, member.Line.Role, reachesRoof, a, frame, lengthM, rafterM);
            Profile.Tube tube = Tube(member);
            if (Least(start, end, tube) < LeastM)
            {
                (start, end) = (new EndCut(0), new EndCut(lengthM));
            }

            Prism prism = new(tube, Rounded(start, start.AtM), Rounded(end, start.AtM));
            yield return new SolidPart(
                member.Line.Id, Word(member.Line.Role), marks.Of(member), new SolidKind.Member(member), frame with { Origin = frame.At(0, 0, start.AtM) }, new SolidShape([prism]));
        }
    }

    public static string Word(MemberRole role) => role switch
    {
        MemberRole.CollarTie => "Collar tie",
        MemberRole.EndPost => "End post",
        _ => role.ToString(),
    };

    private static (EndCut Start, EndCut End) Ends(BuildingForm house, MemberRole role, bool reachesRoof, Point3 a, SolidFrame frame, double lengthM, double rafterM)
    {
        RoofProfile roof = house.Roof;
        Point3 across = new(0, 1, 0);
        EndCut Under(bool left)
        {
            double pitch = left ? roof.LeftPitch : roof.RightPitch;
            double run = Math.Sqrt(1 + pitch * pitch);
            Point3 normal = new(0, (left ? -pitch : pitch) / run, 1 / run);
            Point3 eave = left ? new(0, 0, roof.LeftEaveM) : new(0, house.WidthM, roof.RightEaveM);
            return Plane(frame, eave - rafterM * normal, normal);
        }

        bool isLeft = a.YM < roof.RidgeOffsetM;
        return role switch
        {
            MemberRole.Column => (new EndCut(0), Under(isLeft)),
            MemberRole.EndPost or MemberRole.Jamb when reachesRoof => (new EndCut(0), Under(isLeft)),
            MemberRole.Rafter => (Plane(frame, new(0, isLeft ? 0 : house.WidthM, 0), across), Plane(frame, new(0, roof.RidgeOffsetM, 0), across)),
            MemberRole.CollarTie => (Under(left: true), Under(left: false)),
            _ => (new EndCut(0), new EndCut(lengthM)),
        };
    }

    private static EndCut Plane(SolidFrame frame, Point3 on, Point3 normal)
    {
        double along = normal.Dot(frame.AlongZ);
        return Math.Abs(along) < 1e-6
            ? new EndCut(0)
            : new EndCut(normal.Dot(on - frame.Origin) / along, -normal.Dot(frame.AlongX) / along, -normal.Dot(frame.AlongY) / along);
    }

    // Mass counts the wall and the corner as ordered, so the body does too.
    private static Profile.Tube Tube(MemberSolid member)
    {
        double wallM = TubeNames.TryRead(member.Section, out TubeSection? section) ? TubeNames.OrderedWallM(section) : member.WallM;
        double cornerM = Math.Min(Tubes.CornerRadiusFactor * wallM, Math.Min(member.WidthM, member.DepthM) / 2);
        return new Profile.Tube(Prism.Round(member.WidthM), Prism.Round(member.DepthM), Math.Round(wallM, 9), Math.Round(cornerM, 9));
    }

    private static double Least(EndCut start, EndCut end, Profile.Tube tube)
    {
        double least = double.PositiveInfinity;
        foreach (double x in (double[])[-tube.WidthM / 2, tube.WidthM / 2])
        {
            foreach (double y in (double[])[-tube.DepthM / 2, tube.DepthM / 2])
            {
                least = Math.Min(least, end.HeightM(x, y) - start.HeightM(x, y));
            }
        }

        return least;
    }

    private static EndCut Rounded(EndCut cut, double fromM) =>
        new(Prism.Round(cut.AtM - fromM), Math.Round(cut.RiseXFactor, 9) + 0.0, Math.Round(cut.RiseYFactor, 9) + 0.0);

    private static Point3 Point(Vector3d v) => new(v.X, v.Y, v.Z);

    private static Point3 Unit(Point3 v) => 1 / v.LengthM * v;
}
