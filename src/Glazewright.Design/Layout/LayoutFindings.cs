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

    public static void Crowded(bool free, string id, string what, WallPlan wall, List<Finding> findings)
    {
        if (!free)
        {
            findings.Add(new Finding(
                "layout/wall-crowded", Severity.Miss, id,
                Text($"{what} does not fit on its wall beside doors, windows and the rest, or not under the roof ({wall.LengthM / 0.3048:0.0} ft of wall)."),
                "Move the door to another wall, take fewer and larger pieces, or type the openings.", Practice));
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
        BuildingForm house, FormResult form, FaceName face, WallPlace? pad, ExhaustPlant exhaust, List<Finding> findings)
    {
        string id = pad is null ? $"{house.Id}/louver-1" : $"{house.Id}/wet-wall";
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
                if (pad is null)
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
    private static IEnumerable<(BuildingForm Other, double GapM, double FromM, double ToM)> InFront(BuildingForm house, FormResult form, FaceName face)
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
