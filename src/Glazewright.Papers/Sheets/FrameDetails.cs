using System.Globalization;
using Glazewright.Design.Body;
using Glazewright.Design.Brief;
using Glazewright.Design.Form;
using Glazewright.Design.Framing;
using Glazewright.Design.Takeoff;
using Glazewright.Papers.Drawing;

namespace Glazewright.Papers.Sheets;

/// <summary>Joints of the tube frame: ridge, eave, foot, end of a rod.</summary>
internal static class FrameDetails
{
    /// <summary>Two rafters at the ridge, in the plane of a frame.</summary>
    public static JointPicture? Ridge(JointParts p)
    {
        if (p.Member(MemberRole.Rafter) is not { } rafter)
        {
            return null;
        }

        RoofProfile roof = p.House.Form.Roof;
        string id = p.House.Form.Id + "/ridge";
        double reach = Math.Max(0.36, 2.2 * rafter.DepthM);
        (double downLeft, double downRight) = (FrameEnds.Plumb(rafter.DepthM, roof.LeftPitch), FrameEnds.Plumb(rafter.DepthM, roof.RightPitch));
        List<Entity> all = [];
        List<PartTold> parts = [];
        if (p.Member(MemberRole.Ridge) is { } along)
        {
            double top = -Math.Max(roof.LeftPitch, roof.RightPitch) * along.WidthM / 2;
            all.Add(new Entity.Polyline(new Box(-along.WidthM / 2, top - along.DepthM, along.WidthM, along.DepthM).Corners(), true) { Role = Role.Hidden, Source = along.Line.Id });
        }

        foreach ((double side, double pitch, double down, FaceName face) in new[] { (-1.0, roof.LeftPitch, downLeft, FaceName.RoofLeft), (1.0, roof.RightPitch, downRight, FaceName.RoofRight) })
        {
            Spot far = new(side * reach, -pitch * reach);
            all.InsertRange(0, JointParts.Plain([new(0, 0), far, far - new Spot(0, down), new(0, -down)], rafter.Line.Id));
            (double t, bool panel) = Stuff(p, face);
            double up = t * Math.Sqrt(1 + pitch * pitch);
            all.AddRange(JointParts.Sheet([new(side * 0.01, -pitch * 0.01), far, far + new Spot(0, up), new(side * 0.01, -pitch * 0.01 + up)], panel, $"{p.House.Form.Id}/{(side < 0 ? "roof-left" : "roof-right")}"));
            Spot cap = new(side * 0.15, -pitch * 0.15 + up + 0.004);
            all.Add(new Entity.Polyline([new(0, up + 0.004), cap]) { Role = Role.Cut, Source = id + "-cap" });
            parts.Add(new(far + new Spot(-side * 0.3 * reach, (pitch * 0.3 * reach) + up / 2), $"{p.Cover(face)}, {p.Length(t)}"));
        }

        double ring = 0.75 * Math.Max(downLeft, downRight);
        all.Add(JointParts.Open(new(0, -Math.Max(downLeft, downRight) / 2), ring, id + "-joint"));
        parts.Insert(0, new(new(-0.7 * reach, -roof.LeftPitch * 0.7 * reach - downLeft / 2), JointParts.Words(rafter) + ", plumb cut"));
        parts.Add(new(new(0.1, Stuff(p, FaceName.RoofRight).ThicknessM + 0.004 - 0.1 * roof.RightPitch), p.Named("panels/ridge-cap", "Ridge cap, each side")));
        if (p.Member(MemberRole.Ridge) is { } ridge)
        {
            parts.Add(new(new(0, -0.7 * ridge.DepthM), JointParts.Words(ridge) + ", between the frames"));
        }

        parts.Add(new(new(ring * 0.7, -Math.Max(downLeft, downRight) / 2 - ring * 0.7), Joint(p, JointKind.Ridge) + (p.Count(JointKind.Tie) > 0 ? $", {JointParts.Whole(p.Count(JointKind.Tie))} more where ties meet rafters" : "")));
        double low = -Math.Max(roof.LeftPitch, roof.RightPitch) * reach - Math.Max(downLeft, downRight);
        return new JointPicture("ridge", "Ridge", new Box(-reach, low, 2 * reach, 0.08 - low), all, parts);
    }

    /// <summary>Column and rafter at the left eave.</summary>
    public static JointPicture? Eave(JointParts p)
    {
        if (p.Member(MemberRole.Rafter) is not { } rafter || p.Member(MemberRole.Column) is not { } column)
        {
            return null;
        }

        double pitch = p.House.Form.Roof.LeftPitch;
        string id = p.House.Form.Id;
        double down = FrameEnds.Plumb(rafter.DepthM, pitch);
        double reach = Math.Max(0.42, 2.4 * column.DepthM);
        double low = -down - Math.Max(0.2, 1.2 * column.DepthM);
        (double roofT, bool roofPanel) = Stuff(p, FaceName.RoofLeft);
        (double wallT, bool wallPanel) = Stuff(p, FaceName.Left);
        double up = roofT * Math.Sqrt(1 + pitch * pitch);
        List<Entity> all =
        [
            .. JointParts.Plain([new(0, low), new(column.DepthM, low), new(column.DepthM, pitch * column.DepthM - down), new(0, -down)], column.Line.Id),
            .. JointParts.Plain([new(0, 0), new(reach, pitch * reach), new(reach, pitch * reach - down), new(0, -down)], rafter.Line.Id),
        ];
        List<PartTold> parts = [new(new(0.75 * reach, 0.75 * pitch * reach - down / 2), JointParts.Words(rafter)), new(new(column.DepthM / 2, low + 0.06), JointParts.Words(column))];
        if (p.Member(MemberRole.Eave) is { } eave)
        {
            all.Add(new Entity.Polyline(new Box(0.002, -eave.DepthM, eave.WidthM, eave.DepthM).Corners(), true) { Role = Role.Hidden, Source = eave.Line.Id });
            parts.Add(new(new(eave.WidthM / 2, -eave.DepthM / 2), JointParts.Words(eave) + ", between the frames"));
        }

        Spot end = new(-wallT - 0.05, -pitch * (wallT + 0.05));
        all.AddRange(JointParts.Sheet([end, new(reach, pitch * reach), new(reach, pitch * reach + up), end + new Spot(0, up)], roofPanel, id + "/roof-left"));
        all.AddRange(JointParts.Sheet([new(-wallT, low), new(0, low), new(0, -0.02), new(-wallT, -0.02 - pitch * wallT)], wallPanel, id + "/left"));
        all.Add(new Entity.Polyline([end, end + new Spot(0, up)]) { Role = Role.Cut, Pen = new Pen(0.9, [], Paint.Of(Tone.Accent)), Source = "tape" });
        Spot gutter = new(-wallT - 0.005, end.Y - 0.02);
        all.Add(new Entity.Polyline([gutter, gutter + new Spot(0, -0.1), gutter + new Spot(-0.12, -0.1), gutter + new Spot(-0.12, 0)]) { Role = Role.Visible, Source = id + "/gutter" });
        double ring = 0.8 * down;
        all.Add(JointParts.Open(new(column.DepthM / 2, -down / 2), ring, id + "/eave-joint"));
        parts.Add(new(new(column.DepthM / 2 + ring * 0.7, -down / 2 - ring * 0.7), Joint(p, JointKind.Eave)));
        parts.Add(new(gutter + new Spot(-0.06, -0.1), p.Named("panels/gutter", "Eave gutter, also for condensate")));
        parts.Add(new(end + new Spot(0, up / 2), SheetDetails.EndOf(p, FaceName.RoofLeft)));
        double left = -wallT - 0.16;
        return new JointPicture("eave", "Eave, left", new Box(left, low, reach - left, pitch * reach + up - low), all, parts);
    }

    /// <summary>Foot of a column on its pier.</summary>
    public static JointPicture? Foot(JointParts p)
    {
        FrameChoice frame = p.House.House.Frame;
        if (p.Member(MemberRole.Column) is not { } column)
        {
            return null;
        }

        double half = frame.PierDiameterM > 0 ? frame.PierDiameterM / 2 : column.DepthM;
        string id = p.House.Form.Id;
        const double HighM = 0.35, DeepM = 0.45;
        double foot = frame.FixedBase ? -DeepM : 0.012;
        Spot[] pier = [new(-half, -DeepM), new(-half, 0), new(half, 0), new(half, -DeepM)];
        Box steel = new(-column.DepthM / 2, foot, column.DepthM, HighM - foot);
        List<Entity> all =
        [
            new Entity.Hatch([frame.FixedBase ? [pier[0], pier[1], new(steel.Left, 0), new(steel.Left, -DeepM)] : pier], HatchPattern.Concrete, 1.6) { Source = id + "/pier" },
            .. frame.FixedBase ? [new Entity.Hatch([[new(steel.Right, -DeepM), new(steel.Right, 0), pier[2], pier[3]]], HatchPattern.Concrete, 1.6) { Source = id + "/pier" }] : (Entity[])[],
            new Entity.Polyline(pier) { Role = Role.Cut, Source = id + "/pier" },
            .. JointParts.Plain(steel.Corners(), column.Line.Id),
        ];
        List<PartTold> parts = [new(new(0, 0.7 * HighM), JointParts.Words(column))];
        string bases = JointLines.Of(JointKind.Base).Label;
        if (!frame.FixedBase)
        {
            double plate = Math.Min(half, column.DepthM);
            all.AddRange(JointParts.Plain(new Box(-plate, 0, 2 * plate, 0.012).Corners(), id + "/base-plate", Role.Cut));
            foreach (double side in (double[])[-1, 1])
            {
                double x = side * 0.5 * (plate + column.DepthM / 2);
                all.Add(new Entity.Polyline([new(x, 0.04), new(x, -0.3)]) { Role = Role.Hidden, Source = id + "/anchor" });
            }

            parts.Add(new(new(plate * 0.8, 0.006), $"{bases}: {JointParts.Whole(p.Count(JointKind.Base))} in this house"));
        }
        else
        {
            parts.Add(new(new(steel.Right, -0.5 * DeepM), $"Cast in, base taken as fixed; {bases.ToLowerInvariant()}: {JointParts.Whole(p.Count(JointKind.Base))} counted in this house"));
        }

        parts.Add(new(new(-0.7 * half, -0.6 * DeepM), $"{p.Named("concrete/pier", "Pier")}: Ø {p.Length(frame.PierDiameterM)}, {p.Length(frame.PierDepthM)} deep"));
        Glazewright.Design.Frame.BaseReaction? worst = p.House.Frame.Reactions.MaxBy(r => r.UpN);
        if (worst is not null)
        {
            parts.Add(new(new(0.75 * half, -0.8 * DeepM), $"Uplift up to {p.Said.Text(worst.UpN, Glazewright.Design.Contracts.Unit.Newton)}, thrust {p.Said.Text(worst.ThrustN, Glazewright.Design.Contracts.Unit.Newton)} (allowable-stress level): anchors, embedment and pull-out are not designed"));
        }

        return new JointPicture("foot", frame.FixedBase ? "Column foot, cast in" : "Column foot", new Box(-half - 0.08, -DeepM, 2 * half + 0.16, HighM + DeepM), all, parts);
    }

    /// <summary>Lower end of a rod in a braced bay of the wall, seen from outside.</summary>
    public static JointPicture? Rod(JointParts p)
    {
        if (p.Braced.FirstOrDefault(b => b.Face is FaceName.Left or FaceName.Right) is not { } bay || p.Member(MemberRole.Column) is not { } column)
        {
            return null;
        }

        RodLine rod = bay.Rods[0];
        double riseM = rod.To.ZM - rod.From.ZM;
        double runM = Math.Sqrt(Math.Max(rod.LengthM * rod.LengthM - riseM * riseM, 0));
        double angleDeg = Math.Atan2(riseM, runM) * 180 / Math.PI;
        const double SideM = 0.7;
        Spot along = new Spot(runM, riseM).Unit();
        double length = SideM / Math.Max(Math.Abs(along.X), along.Y);
        double half = column.WidthM / 2;
        string id = p.House.Form.Id;
        List<Entity> all =
        [
            new Entity.Polyline([new(-0.2, 0), new(SideM, 0)]) { Role = Role.Cut, Source = "ground" },
            .. JointParts.Plain([new(-half, 0), new(half, 0), new(half, SideM), new(-half, SideM)], column.Line.Id),
            new Entity.Polyline([new(0, 0), length * along]) { Role = Role.Hidden, Pen = new Pen(0.5, [3, 1], Paint.Of(Tone.Ink)), Source = bay.Id + "/rod" },
            JointParts.Open(new(0, 0.03), 0.12, bay.Id + "/end"),
            new Entity.Arc(new(0, 0), 0.28, 0, angleDeg) { Role = Role.Dimension, Source = bay.Id },
        ];
        int walls = p.Braced.Count(b => b.Face is FaceName.Left or FaceName.Right);
        List<PartTold> parts =
        [
            new(0.75 * length * along, $"{JointLines.Bracing}: {JointParts.Whole(walls)} bays of walls, {JointParts.Whole(p.Braced.Count - walls)} of roof, two rods each"),
            new(0.28 * new Spot(Math.Cos(angleDeg * Math.PI / 360), Math.Sin(angleDeg * Math.PI / 360)), string.Create(CultureInfo.InvariantCulture, $"Rod {p.Length(rod.LengthM)} from joint to joint, {angleDeg:0}° from level; diameter, thread and turnbuckle not designed")),
            new(new(0, 0.6 * SideM), JointParts.Words(column)),
            new(new(-0.08, 0.1), "Rod end on the column by the foot: plate or lug not designed; it hangs on the same anchors as the base"),
        ];
        return new JointPicture("rod", "End of a bracing rod", new Box(-0.2, -0.05, SideM + 0.2, SideM + 0.05), all, parts);
    }

    private static string Joint(JointParts p, JointKind kind) =>
        $"{JointLines.Of(kind).Label}: {JointParts.Whole(p.Count(kind))} of this kind";

    /// <summary>Thickness of the covering of a face, and whether it is a panel.</summary>
    public static (double ThicknessM, bool IsPanel) Stuff(JointParts p, FaceName face) => (Solids.CoverStuff.Of(p.Cover(face)).ThicknessM, p.Buying(p.Cover(face)).Form == CoverForm.Panel);
}
