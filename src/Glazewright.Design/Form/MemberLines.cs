using Glazewright.Design.Contracts;

namespace Glazewright.Design.Form;

/// <summary>Centre lines of a house's frame in its own axes: frames at the bay lines, purlins, girts, ridge and eaves along, posts in the end walls.</summary>
public static class MemberLines
{
    /// <summary>Widest spacing of end-wall posts, m (8 ft: common practice).</summary>
    private const double EndPostSpacingM = 2.4384;

    /// <summary>The members of a house.</summary>
    /// <param name="house">Its shape.</param>
    /// <returns>Members in order: frames from end 1, then members along, then end posts.</returns>
    public static EqList<MemberLine> Of(HouseShape house)
    {
        List<MemberLine> members = [];
        RoofProfile roof = house.Roof;
        double w = house.WidthM;
        for (int i = 0; i <= house.BayCount; i++)
        {
            double x = house.LengthM * i / house.BayCount;
            string frame = $"{house.Id}/frame-{i + 1:00}";
            Point3 ridge = new(x, roof.RidgeOffsetM, roof.RidgeM);
            Point3 left = new(x, 0, roof.LeftEaveM);
            Point3 right = new(x, w, roof.RightEaveM);
            members.Add(new($"{frame}/column-left", MemberRole.Column, new Point3(x, 0, 0), left));
            members.Add(new($"{frame}/column-right", MemberRole.Column, new Point3(x, w, 0), right));
            members.Add(new($"{frame}/rafter-left", MemberRole.Rafter, left, ridge));
            members.Add(new($"{frame}/rafter-right", MemberRole.Rafter, right, ridge));
            double tie = house.CollarTieHeightM;
            if (tie > Math.Max(roof.LeftEaveM, roof.RightEaveM) && tie < roof.RidgeM)
            {
                members.Add(new(
                    $"{frame}/collar-tie",
                    MemberRole.CollarTie,
                    new Point3(x, (tie - roof.LeftEaveM) / roof.LeftPitch, tie),
                    new Point3(x, w - (tie - roof.RightEaveM) / roof.RightPitch, tie)));
            }
        }

        Along(members, house, "ridge", MemberRole.Ridge, roof.RidgeOffsetM, roof.RidgeM);
        Along(members, house, "eave-left", MemberRole.Eave, 0, roof.LeftEaveM);
        Along(members, house, "eave-right", MemberRole.Eave, w, roof.RightEaveM);
        Spread(members, house, "purlin-left", MemberRole.Purlin, new(0, 0, roof.LeftEaveM), new(0, roof.RidgeOffsetM, roof.RidgeM));
        Spread(members, house, "purlin-right", MemberRole.Purlin, new(0, w, roof.RightEaveM), new(0, roof.RidgeOffsetM, roof.RidgeM));
        Girts(members, house, "left", 0, roof.LeftEaveM);
        Girts(members, house, "right", w, roof.RightEaveM);
        EndPosts(members, house, "end1", 0);
        EndPosts(members, house, "end2", house.LengthM);
        return members.ToEqList();
    }

    // Members strictly between two edges, no further apart than the purlin spacing.
    private static void Spread(List<MemberLine> members, HouseShape house, string name, MemberRole role, Point3 from, Point3 to)
    {
        int spaces = Math.Max(1, (int)Math.Ceiling((to - from).LengthM / house.PurlinSpacingM - 1e-9));
        for (int i = 1; i < spaces; i++)
        {
            Point3 p = from + i / (double)spaces * (to - from);
            Along(members, house, $"{name}-{i}", role, p.YM, p.ZM);
        }
    }

    private static void Girts(List<MemberLine> members, HouseShape house, string side, double yM, double eaveM)
    {
        double from = house.PonyWallM;
        if (from > 0 && from < eaveM)
        {
            Along(members, house, $"girt-{side}-sill", MemberRole.Girt, yM, from);
        }

        Spread(members, house, $"girt-{side}", MemberRole.Girt, new(0, yM, Math.Min(from, eaveM)), new(0, yM, eaveM));
    }

    // One line along the house, in pieces of as many whole bays as the longest stock tube spans.
    private static void Along(List<MemberLine> members, HouseShape house, string name, MemberRole role, double yM, double zM)
    {
        double bayM = house.LengthM / house.BayCount;
        int step = Math.Clamp((int)Math.Floor(house.LongestStockM / bayM + 1e-9), 1, house.BayCount);
        for (int bay = 0, piece = 1; bay < house.BayCount; bay += step, piece++)
        {
            int to = Math.Min(bay + step, house.BayCount);
            members.Add(new($"{house.Id}/{name}/{piece:00}", role, new Point3(bay * bayM, yM, zM), new Point3(to * bayM, yM, zM)));
        }
    }

    private static void EndPosts(List<MemberLine> members, HouseShape house, string end, double xM)
    {
        int spaces = Math.Max(1, (int)Math.Ceiling(house.WidthM / EndPostSpacingM - 1e-9));
        for (int i = 1; i < spaces; i++)
        {
            double y = house.WidthM * i / spaces;
            members.Add(new(
                $"{house.Id}/{end}/post-{i}",
                MemberRole.EndPost,
                new Point3(xM, y, 0),
                new Point3(xM, y, house.Roof.HeightM(y, house.WidthM))));
        }
    }
}
