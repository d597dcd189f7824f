using Glazewright.Design.Brief;
using Glazewright.Design.Form;
using Glazewright.Design.Framing;
using Glazewright.Design.Takeoff;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Solids;

namespace Glazewright.Papers.Sheets;

/// <summary>Details of the covering: on a purlin, at its joints, at its lower end, and the edge of the floor.</summary>
internal static class SheetDetails
{
    private const double SideM = 0.26;

    /// <summary>Covering on a purlin, cut along the slope between two frames.</summary>
    public static JointPicture? Purlin(JointParts p)
    {
        if (p.Member(MemberRole.Purlin) is not { } purlin || p.Member(MemberRole.Rafter) is not { } rafter)
        {
            return null;
        }

        (double t, bool panel) = FrameDetails.Stuff(p, FaceName.RoofLeft);
        double half = purlin.WidthM / 2;
        List<Entity> all =
        [
            .. JointParts.Plain(new Box(-SideM, -rafter.DepthM, 2 * SideM, rafter.DepthM).Corners(), rafter.Line.Id, Role.Beyond),
            new Entity.Polyline([new(half, -0.8 * purlin.DepthM), new(half + 0.05, -0.8 * purlin.DepthM), new(half + 0.05, -0.2 * purlin.DepthM), new(half, -0.2 * purlin.DepthM)]) { Role = Role.Hidden, Source = "clip" },
            .. JointParts.Tube(new Box(-half, -purlin.DepthM, purlin.WidthM, purlin.DepthM), purlin.WallM, purlin.Line.Id),
            .. JointParts.Sheet(new Box(-SideM, 0, 2 * SideM, t).Corners(), panel, "cover"),
            .. Screwed(p, FaceName.RoofLeft) ? JointParts.Screw(new(0, t), new(0, 1), t + 0.02, WasherM, "screw") : [],
        ];
        FaceForm face = p.House.Form.Face(FaceName.RoofLeft);
        double slopeM = face.Outline.Max(v => v.VM) - face.Outline.Min(v => v.VM);
        int rows = p.House.Form.Members.Where(m => m.Role == MemberRole.Purlin && m.Id.Contains("purlin-left-", StringComparison.Ordinal)).Select(m => m.Id.Split('/')[1]).Distinct().Count();
        List<PartTold> parts =
        [
            new(new(0.03, t + 0.002), Fixing(p, FaceName.RoofLeft) + (Screwed(p, FaceName.RoofLeft) ? $": {p.Length(TakeoffRules.FieldScrewM)} along a purlin, {p.Length(TakeoffRules.EdgeScrewM)} along the edges" : "")),
            new(new(-0.6 * SideM, t / 2), $"{p.Cover(FaceName.RoofLeft)}, {p.Length(t)}"),
            new(new(-half, -0.6 * purlin.DepthM), $"{JointParts.Words(purlin)}, {p.Length(slopeM / (rows + 1))} apart up the slope"),
            new(new(half + 0.05, -0.5 * purlin.DepthM), $"{JointLines.Of(JointKind.Clip).Label}: {JointParts.Whole(p.Count(JointKind.Clip))} in this house"),
            new(new(0.7 * SideM, -0.8 * rafter.DepthM), $"{JointParts.Words(rafter)}, beyond"),
        ];
        return new JointPicture("purlin", "Covering on a purlin, along the slope", new Box(-SideM, -rafter.DepthM - 0.01, 2 * SideM, rafter.DepthM + t + 0.03), all, parts);
    }

    /// <summary>Joint of two pieces of covering, cut along a purlin.</summary>
    public static JointPicture? Seam(JointParts p)
    {
        if (p.Member(MemberRole.Purlin) is not { } purlin)
        {
            return null;
        }

        (double t, bool panel) = FrameDetails.Stuff(p, FaceName.RoofLeft);
        CoverBuying buying = p.Buying(p.Cover(FaceName.RoofLeft));
        double pitch = TakeoffRules.FieldScrewM;
        double side = 0.75 * pitch;
        List<Entity> all =
        [
            .. JointParts.Plain(new Box(-side, -purlin.DepthM, 2 * side, purlin.DepthM).Corners(), purlin.Line.Id, Role.Beyond),
            .. JointParts.Sheet(new Box(-side, 0, side - 0.003, t).Corners(), panel, "cover"),
            .. JointParts.Sheet(new Box(0.003, 0, side - 0.003, t).Corners(), panel, "cover"),
        ];
        bool screwed = Screwed(p, FaceName.RoofLeft);
        if (screwed)
        {
            all.AddRange(JointParts.Screw(new(-pitch / 2, t), new(0, 1), t + 0.02, WasherM, "screw"));
            all.AddRange(JointParts.Screw(new(pitch / 2, t), new(0, 1), t + 0.02, WasherM, "screw"));
            all.Add(new Entity.Dimensions(new(-pitch / 2, t), new(1, 0), [0, pitch], 7, p.Style) { Source = "screw" });
        }

        if (screwed && !panel)
        {
            all.AddRange(JointParts.Plain(new Box(-0.03, t, 0.06, 0.004).Corners(), "joint-profile", Role.Cut));
            all.Add(new Entity.Fill([new Box(-0.003, 0, 0.006, t).Corners()], Paint.Of(Tone.Ink2)) { Role = Role.Fill, Source = "joint-profile" });
        }

        List<PartTold> parts =
        [
            new(new(0, t * 0.8), panel ? $"{p.Named("panels/butyl", "Butyl in panel joints")}: two beads" : screwed ? p.Named("glazing/joint-profile", "Joint profile, cap and base") : EndOf(p, FaceName.RoofLeft)),
            new(new(pitch / 2 + 0.02, t + 0.002), Fixing(p, FaceName.RoofLeft)),
            new(new(-0.8 * side, t / 2), p.Cover(FaceName.RoofLeft) + (screwed ? $", bought {p.Length(buying.ModuleM)} wide" : $", {p.Length(t)}")),
            new(new(0.5 * side, -0.6 * purlin.DepthM), JointParts.Words(purlin)),
        ];
        return new JointPicture("seam", "Joint of the covering, along a purlin", new Box(-side, -purlin.DepthM - 0.01, 2 * side, purlin.DepthM + t + 0.05), all, parts);
    }

    /// <summary>Lower end of the wall's covering on the pony wall, or on the floor.</summary>
    public static JointPicture? Lower(JointParts p)
    {
        if (p.Member(MemberRole.Girt) is not { } girt)
        {
            return null;
        }

        (double t, bool panel) = FrameDetails.Stuff(p, FaceName.Left);
        CoverZone pony = p.House.Form.Face(FaceName.Left).Zones[0];
        bool hasPony = p.House.Form.Face(FaceName.Left).Zones.Count > 1;
        double ponyT = CoverStuff.Of(pony.Cover.Kind).ThicknessM;
        bool ponyPanel = p.Buying(pony.Cover.Kind).Form == CoverForm.Panel;
        string id = p.House.Form.Id + "/left";
        List<Entity> all =
        [
            .. JointParts.Sheet(new Box(-t, 0.006, t, SideM).Corners(), panel, id + "/cover"),
            .. hasPony ? JointParts.Sheet(new Box(-ponyT, -SideM, ponyT, SideM - 0.006).Corners(), ponyPanel, id + "/pony") : [],
            .. JointParts.Tube(new Box(0, -girt.WidthM / 2, girt.DepthM, girt.WidthM), girt.WallM, girt.Line.Id),
            new Entity.Polyline([new(-t, 0.006), new(0, 0.006)]) { Role = Role.Cut, Pen = new Pen(0.9, [], Paint.Of(Tone.Accent)), Source = "tape" },
            new Entity.Polyline([new(-0.003, 0.05), new(-0.003, 0.003), new(-Math.Max(t, hasPony ? ponyT : 0) - 0.02, 0.003), new(-Math.Max(t, hasPony ? ponyT : 0) - 0.02, -0.03)]) { Role = Role.Visible, Source = "edge-profile" },
            .. Screwed(p, FaceName.Left) ? JointParts.Screw(new(-t, girt.WidthM / 4), new(-1, 0), t + 0.02, WasherM, "screw") : [],
        ];
        List<PartTold> parts =
        [
            new(new(-t / 2, 0.75 * SideM), $"{p.Cover(FaceName.Left)}, {p.Length(t)}"),
            new(new(-t / 2, 0.006), EndOf(p, FaceName.Left)),
            new(new(-Math.Max(t, hasPony ? ponyT : 0) - 0.02, -0.015), panel ? p.Named("panels/trim", "Trim and closure around panel fields") : Screwed(p, FaceName.Left) ? p.Named("glazing/edge-profile", "Edge profile") : "Flashing over the pony wall"),
            new(new(girt.DepthM * 0.9, 0), JointParts.Words(girt) + (hasPony ? $", {p.Length(p.House.House.PonyWallM)} up" : "")),
        ];
        if (hasPony)
        {
            parts.Add(new(new(-ponyT / 2, -0.75 * SideM), $"{pony.Cover.Kind}, {p.Length(ponyT)}, with {(ponyPanel ? p.Named("panels/screw", "panel screw with bonded washer") : "screws").ToLowerInvariant()}"));
        }

        double left = -Math.Max(t, ponyT) - 0.06;
        return new JointPicture("lower", hasPony ? "Covering on the pony wall" : "Lower end of the covering", new Box(left, -SideM, girt.DepthM + 0.14 - left, 2 * SideM), all, parts);
    }

    /// <summary>Edge of the floor between two piers.</summary>
    public static JointPicture Edge(JointParts p)
    {
        House house = p.House.House;
        string id = house.Id;
        (double t, bool panel) = (CoverStuff.Of(p.House.Form.Face(FaceName.Left).Zones[0].Cover.Kind).ThicknessM, p.Buying(p.House.Form.Face(FaceName.Left).Zones[0].Cover.Kind).Form == CoverForm.Panel);
        double deep = house.EdgeInsulated ? TakeoffRules.EdgeInsulationM : 0.35;
        double right = 0.7;
        double insulation = house.EdgeInsulated ? 0.05 : 0;
        const double OutM = 0.35, UpM = 0.22;
        double gravel = TakeoffRules.GravelM;
        List<Entity> all =
        [
            new Entity.Hatch([[new(-OutM, 0), new(-t, 0), new(-t, -0.06), new(-OutM, -0.06)]], HatchPattern.Ground, 1.6) { Source = "ground" },
            new Entity.Polyline([new(-OutM, 0), new(-t, 0)]) { Role = Role.Cut, Source = "ground" },
            new Entity.Hatch([new Box(insulation, -TakeoffRules.SlabM, right - insulation, TakeoffRules.SlabM).Corners()], HatchPattern.Concrete, 1.6) { Source = id + "/slab" },
            new Entity.Polyline([new(right, 0), new(insulation, 0), new(insulation, -TakeoffRules.SlabM), new(right, -TakeoffRules.SlabM)]) { Role = Role.Cut, Source = id + "/slab" },
            new Entity.Polyline([new(insulation + 0.03, -TakeoffRules.SlabM / 2), new(right, -TakeoffRules.SlabM / 2)]) { Role = Role.Hidden, Source = id + "/mesh" },
            new Entity.Hatch([new Box(insulation, -TakeoffRules.SlabM - gravel, right - insulation, gravel).Corners()], HatchPattern.Ground, 2.2) { Source = id + "/gravel" },
            new Entity.Polyline([new(insulation, -TakeoffRules.SlabM - gravel), new(right, -TakeoffRules.SlabM - gravel)]) { Role = Role.Beyond, Source = id + "/gravel" },
            .. JointParts.Sheet(new Box(-t, 0.01, t, UpM).Corners(), panel, id + "/left"),
        ];
        List<PartTold> parts = [];
        if (house.EdgeInsulated)
        {
            all.AddRange(JointParts.Sheet(new Box(0, -deep, insulation, deep).Corners(), true, id + "/edge-insulation"));
            parts.Add(new(new(insulation / 2, -0.8 * deep), $"{p.Named("concrete/edge-insulation", "Edge insulation")}: {p.Length(deep)} deep along the perimeter, drawn {p.Length(insulation)} thick (thickness not in the job)"));
        }

        parts.Add(new(new(0.6 * right, -TakeoffRules.SlabM * 0.3), p.Named("concrete/slab", "Slab with mesh, aisles") + "; benches stand on the gravel"));
        parts.Add(new(new(0.8 * right, -TakeoffRules.SlabM - gravel / 2), $"{p.Named("site/gravel", "Gravel base")}, {p.Length(gravel)}"));
        double pierM = house.Frame.PierDiameterM / 2;
        if (pierM > 0)
        {
            all.Add(new Entity.Polyline([new(-pierM, -deep), new(-pierM, 0)]) { Role = Role.Hidden, Source = id + "/pier" });
            all.Add(new Entity.Polyline([new(pierM, -deep), new(pierM, -TakeoffRules.SlabM - gravel)]) { Role = Role.Hidden, Source = id + "/pier" });
            parts.Add(new(new(-pierM, -0.7 * deep), $"Pier beyond, Ø {p.Length(2 * pierM)}: {p.Length(house.Frame.PierDepthM)} deep" + (p.FrostM > 0 ? $", frost {p.Length(p.FrostM)}" : "")));
        }

        parts.Add(new(new(-t / 2, UpM * 0.7), $"{p.House.Form.Face(FaceName.Left).Zones[0].Cover.Kind}, held off the ground and sealed to the floor"));
        double left = -Math.Max(OutM, pierM + 0.06);
        return new JointPicture("edge", "Edge of the floor between piers", new Box(left, -deep - 0.02, right - left, deep + UpM + 0.04), all, parts);
    }

    /// <summary>What closes the lower end of a covering.</summary>
    public static string EndOf(JointParts p, FaceName face) => p.Buying(p.Cover(face)).Form switch
    {
        CoverForm.Sheet => p.Named("glazing/tape", "Solid tape at the top, vented tape at the bottom"),
        CoverForm.Panel => p.Named("panels/trim", "Trim and closure around panel fields"),
        CoverForm.Glass => "Glazing bar and gasket by the maker",
        _ => "Locking profile",
    };

    private static string Fixing(JointParts p, FaceName face) => p.Buying(p.Cover(face)).Form switch
    {
        CoverForm.Sheet => p.Named("glazing/screw", "Self-drilling screw with bonded washer"),
        CoverForm.Panel => p.Named("panels/screw", "Panel screw with bonded washer"),
        CoverForm.Glass => "Bars and clips of the glazing",
        _ => "Locking profile of the film, screwed",
    };

    // Sheets and panels are screwed through; glass lies in bars, film in locking profiles.
    private static bool Screwed(JointParts p, FaceName face) => p.Buying(p.Cover(face)).Form is CoverForm.Sheet or CoverForm.Panel;

    // Washer that the takeoff buys: 3/4 in.
    private const double WasherM = 0.01905;
}
