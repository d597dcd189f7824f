using System.Globalization;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.Plant;

namespace Glazewright.Design.Layout;

/// <summary>Conflicts of Layout, in words.</summary>
internal static class LayoutFindings
{
    /// <summary>How far in front of an intake another building still matters, m.</summary>
    private const double AlleyM = 6;

    public static Source Practice { get; } = new Source.CommonPractice("clearances of greenhouse equipment");

    public static void Typed(bool free, string id, string what, List<Finding> findings)
    {
        if (!free)
        {
            findings.Add(new Finding(
                "layout/wall-crowded", Severity.Miss, id,
                $"{what} is typed where a door, a window, a building or other equipment stands, or not under the roof.",
                "Move the opening, or leave it out and let it be placed.", Practice));
        }
    }

    /// <summary>Fans that find no place: what the others move is the plant's own operating point with that many on.</summary>
    public static void FansShort(ExhaustPlant exhaust, List<FanUnit> rest, int fits, WallPlan wall, List<Finding> findings)
    {
        int on = exhaust.Fans.Count - rest.Count + fits;
        OperatingPoint all = exhaust.Wet[^1];
        string moved = on > 0
            ? Text($"{PlantWords.Cfm(exhaust.Wet[on - 1].FlowM3PerS)} cfm at {PlantWords.InWg(exhaust.Wet[on - 1].StaticPa)} in. w.g.")
            : "nothing";
        double largestM = rest.Max(f => f.SizeM);
        double stackedM = wall.Module.LeastSillM + 2 * largestM + wall.Module.GapM + 0.1;
        findings.Add(new Finding(
            "layout/wall-crowded", Severity.Miss, rest[fits].Id,
            Text($"{on} of {exhaust.Fans.Count} fans fit on their wall of {Feet(wall.LengthM)} beside doors and each other, {wall.Module.GapM / 0.0254:0} in between and {wall.Module.EdgeM / 0.0254:0} in from the corners. Those move {moved}; all would move {PlantWords.Cfm(all.FlowM3PerS)} cfm. The others are not drawn."),
            Text($"Fewer and larger fans, the door on another wall, or eaves of {Feet(stackedM)} for two rows of the largest."), Practice));
    }

    /// <summary>Louvers that find no place: the speed and the pressure in those that do, at the plant's flow.</summary>
    public static void LouversShort(string house, ExhaustPlant exhaust, int count, int fits, double sizeM, string where, List<Finding> findings)
    {
        double freeM2 = exhaust.LouverFreeM2 * fits / count;
        Plant.OperatingPoint all = exhaust.Wet[^1];
        string through = fits == 0
            ? "no air comes in but by the pad's own shutters or the doors"
            : exhaust.ByLouvers is { } by && by.Count >= fits
                ? Text($"with every fan on {PlantWords.Cfm(by[fits - 1].FlowM3PerS)} cfm pass them at {PlantWords.Fpm(by[fits - 1].FlowM3PerS / freeM2)} fpm and {PlantWords.InWg(by[fits - 1].StaticPa)} in. w.g. across the fans, instead of {PlantWords.Cfm(all.FlowM3PerS)} cfm at {PlantWords.InWg(all.StaticPa)} in. w.g.")
                : Text($"all {PlantWords.Cfm(all.FlowM3PerS)} cfm through them would go {PlantWords.Fpm(all.FlowM3PerS / freeM2)} fpm");
        findings.Add(new Finding(
            "layout/louvers-short", Severity.Miss, $"{house}/louver-{fits + 1}",
            Text($"{fits} of {count} louvers of {sizeM / 0.0254:0} in fit on {where}: {PlantWords.Sqft(freeM2)} ft² of {PlantWords.Sqft(exhaust.LouverFreeM2)} ft² free; {through}. The others are not drawn."),
            "A taller eave for another row, the door on another wall, or louvers typed on a side wall.", Practice));
    }

    public static void AcrossFrames(bool clear, string id, string what, WallPlan wall, List<Finding> findings)
    {
        if (!clear)
        {
            findings.Add(new Finding(
                "layout/across-frames", Severity.Near, id,
                Text($"The {what} do not fit between the frames of the {(wall.Name == FaceName.Left ? "left" : "right")} wall, or not outside its braced bays: columns or rods stand in the openings."),
                "Wider bays, smaller pieces, or an end wall; the engineer may move the bracing.", Practice));
        }
    }

    /// <summary>Posts that openings cut, wall by wall.</summary>
    public static void PostsHeadedOff(BuildingForm house, LayoutResult layout, List<Finding> findings)
    {
        foreach (FaceName face in (FaceName[])[FaceName.End1, FaceName.End2])
        {
            WallOpening[] cutting = [.. WallFraming.Openings(house, layout, face).Where(o => o.PostsCut.Count > 0)];
            if (cutting.Length > 0)
            {
                int posts = cutting.SelectMany(o => o.PostsCut).Distinct().Count();
                string by = string.Join(", ", cutting.Select(o => o.Label.ToLowerInvariant()).Distinct());
                findings.Add(new Finding(
                    "layout/posts-headed-off", Severity.Note, $"{house.Id}/{(face == FaceName.End1 ? "end1" : "end2")}",
                    Text($"{posts} of {WallFraming.Posts(house, face).Count} posts of the {(face == FaceName.End1 ? "end 1" : "end 2")} wall stand in openings ({by}): each ends on a header and on a sill, and the jambs take its wind."),
                    "Their first sizes stand with the wall; the engineer confirms them.", Practice));
            }
        }
    }

    public static void CurtainHeight(BuildingForm house, CurtainPlant cloth, double lowEaveM, List<Finding> findings)
    {
        if (cloth.HeightM > lowEaveM - 0.05)
        {
            findings.Add(new Finding(
                "layout/curtain-above-eave", Severity.Miss, $"{house.Id}/curtain",
                Text($"The curtain at {Feet(cloth.HeightM)} runs into the roof: the lower eave is at {Feet(lowEaveM)}. It cannot close from wall to wall."),
                Text($"Hang it at {Feet(lowEaveM - 0.1524)}, 6 in under the eave, or raise the eave."),
                new Source.FirstPrinciples("section geometry")));
        }
    }

    public static void Alley(
        BuildingForm house, FormResult form, FaceName face, WallPlace? pad, bool wetWall, ExhaustPlant exhaust, List<Finding> findings)
    {
        string id = !wetWall ? $"{house.Id}/louver-1" : $"{house.Id}/wet-wall";
        double flow = exhaust.Wet[^1].FlowM3PerS;
        double heightM = pad?.HeightM ?? 1.5;
        double widthM = pad?.WidthM ?? Math.Sqrt(exhaust.LouverGrossM2);
        double wallM = face is FaceName.End1 or FaceName.End2 ? house.WidthM : house.LengthM;
        double padFromM = pad?.UM ?? 0;
        double padToM = pad is { } p ? p.UM + p.WidthM : wallM;
        foreach ((BuildingForm other, double gapM, double from, double to) in InFront(house, form, face))
        {
            double facingM = Math.Min(to, padToM) - Math.Max(from, padFromM);
            if (facingM < 0.05)
            {
                continue;
            }

            if (gapM < 0.1)
            {
                // Louvers find their place beside it; only a wet wall behind it is walled in.
                if (!wetWall)
                {
                    continue;
                }

                findings.Add(new Finding(
                    "layout/intake-walled", Severity.Miss, id,
                    Text($"{other.Name} stands against {facingM / 0.3048:0.0} ft of the wet wall: no air comes through there."),
                    "Move the intake or the building.", Practice));
                continue;
            }

            // Air comes into the alley from both its ends and from above.
            double mouthM2 = gapM * (2 * heightM + widthM);
            findings.Add(new Finding(
                "layout/intake-alley", Severity.Near, id,
                Text($"The intake draws through the {Feet(gapM)} alley to {other.Name}: {flow / mouthM2 / 0.44704:0.0} mph of draught in it with all fans on, and whatever warm or used air stands there comes in."),
                "Keep flues, vents and wash water out of the alley; a wider alley or an intake on a free wall would be better.", Practice));
        }
    }

    public static void FanOutlet(BuildingForm house, FormResult form, FaceName face, ExhaustPlant exhaust, List<Finding> findings)
    {
        double largestM = exhaust.Fans.Max(f => f.DiameterM);
        foreach ((BuildingForm other, double gapM, double _, double _) in InFront(house, form, face))
        {
            if (gapM < 4 * largestM)
            {
                findings.Add(new Finding(
                    "layout/fans-blow-at-building", gapM < 1.5 * largestM ? Severity.Miss : Severity.Near, exhaust.Fans[0].Id,
                    Text($"The fans blow at {other.Name}, {Feet(gapM)} away; they want {Feet(4 * largestM)} (four diameters) of free air."),
                    "Put the fans on the other end or move the building.", Practice));
            }
        }
    }

    public static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);

    private static string Feet(double lengthM)
    {
        int inches = (int)Math.Round(lengthM / 0.0254);
        return Text($"{inches / 12}'-{inches % 12}\"");
    }

    // Buildings in front of a wall, near enough to matter: the gap and the part of the wall they face.
    public static IEnumerable<(BuildingForm Other, double GapM, double FromM, double ToM)> InFront(BuildingForm house, FormResult form, FaceName face)
    {
        FacePlane plane = house.Face(face).Plane;
        double wallM = face is FaceName.End1 or FaceName.End2 ? house.WidthM : house.LengthM;
        foreach (BuildingForm other in form.Buildings.Where(b => b.Id != house.Id))
        {
            Point3[] corners =
            [
                other.Origin,
                other.Origin + other.LengthM * other.AlongX,
                other.Origin + other.WidthM * other.AlongY,
                other.Origin + other.LengthM * other.AlongX + other.WidthM * other.AlongY,
            ];
            double gapM = corners.Min(c => (c - plane.Origin).Dot(plane.Normal));
            double from = corners.Min(c => plane.On(c).UM);
            double to = corners.Max(c => plane.On(c).UM);
            double facingM = Math.Min(to, wallM) - Math.Max(from, 0);
            if (gapM > -0.05 && gapM < AlleyM && facingM > 0.3)
            {
                yield return (other, Math.Max(gapM, 0), from, to);
            }
        }
    }
}
