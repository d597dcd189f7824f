using Glazewright.Design.Brief;
using Glazewright.Design.Catalogues;
using Glazewright.Design.Form;
using Glazewright.Science.Flow;

namespace Glazewright.Design.Plant;

/// <summary>The way air comes in: louvers, pad, screen, and the house to the fans.</summary>
/// <param name="Louver">Louver entry counted (for typed openings: the one whose figures are used).</param>
/// <param name="LouverCount">How many of it when sized; 0 for typed openings.</param>
/// <param name="LouverGrossM2">Frame area.</param>
/// <param name="LouverFreeM2">Free area fully open.</param>
/// <param name="LouverTyped">Openings of this kind stand in the job.</param>
/// <param name="InSeries">The louvers stand before the pad; otherwise they are shut while the pad runs.</param>
/// <param name="Pad">Pad entry; null without a wet wall.</param>
/// <param name="PadWidthM">Pad width.</param>
/// <param name="PadHeightM">Pad height.</param>
/// <param name="ScreenM2">Insect screen area; 0 for none.</param>
/// <param name="ScreenCoefficient">Its discharge coefficient.</param>
/// <param name="SectionM2">Section of the house.</param>
internal sealed record Intake(
    LouverEntry Louver,
    int LouverCount,
    double LouverGrossM2,
    double LouverFreeM2,
    bool LouverTyped,
    bool InSeries,
    PadEntry? Pad,
    double PadWidthM,
    double PadHeightM,
    double ScreenM2,
    double ScreenCoefficient,
    double SectionM2)
{
    /// <summary>Velocity heads lost in the house (common practice).</summary>
    public const double HouseHeads = 1.5;

    /// <summary>Pressure a louver may take when we size it, Pa (about 0.04 in w.g.); half of it when a pad stands behind.</summary>
    public const double LouverTargetPa = 10;

    /// <summary>Pressure a clean screen may take when we size it, Pa (0.03 in w.g.).</summary>
    public const double ScreenTargetPa = 7.5;

    /// <summary>Louver pieces one house may have while a larger size is to be had (common practice: each is a motor, a frame and a leak).</summary>
    public const int MostLouvers = 8;

    /// <summary>Share of the screen that dirt blocks between cleanings (common practice).</summary>
    public const double DirtyFraction = 0.3;

    public double PadM2 => PadWidthM * PadHeightM;

    /// <summary>Pieces in series while the pad is dry or off.</summary>
    public List<(string Name, AirPath Path)> Dry(double clogFraction)
    {
        List<(string, AirPath)> path = [("intake louvers", LouverPath())];
        if (Pad is not null && InSeries)
        {
            path.Add(("pad", new AirPath.Pad(PadM2, Pad.Kind)));
        }

        return Finish(path, clogFraction);
    }

    /// <summary>Pieces in series while the pad runs.</summary>
    public List<(string Name, AirPath Path)> Wet(double clogFraction)
    {
        if (Pad is null || InSeries)
        {
            return Dry(clogFraction);
        }

        return Finish([("pad", new AirPath.Pad(PadM2, Pad.Kind))], clogFraction);
    }

    /// <summary>Chooses the intake for a flow.</summary>
    public static Intake For(PlantInput input, BuildingForm form, Catalogue catalogue, double flowM3PerS, double densityKgPerM3)
    {
        EquipmentChoice e = input.Equipment;
        List<OpeningForm> openings = [.. form.Faces.SelectMany(f => f.Openings)];
        PadEntry? pad = null;
        double widthM = 0;
        double heightM = 0;
        if (e.WetWall)
        {
            pad = e.WetWallEntry.Length > 0
                ? Pick.ById(catalogue.Pads, e.WetWallEntry, p => p.Id, $"{input.Pointer}/equipment/wetWall")
                : catalogue.Pads.MaxBy(p => p.ThicknessM)!;
            (widthM, heightM) = PadSize(e, openings, pad, form, flowM3PerS);
        }

        List<OpeningForm> typed = [.. openings.Where(o => o.Opening.Kind == OpeningKind.Louver)];
        double screenCoefficient = e.InsectScreenPorosityFraction > 0 ? ScreenCoefficientOf(e.InsectScreenPorosityFraction) : 0;
        double screenM2 = screenCoefficient > 0
            ? flowM3PerS / (screenCoefficient * Math.Sqrt(2 * ScreenTargetPa / densityKgPerM3))
            : 0;
        if (typed.Count > 0)
        {
            double gross = typed.Sum(o => o.AreaM2);
            LouverEntry nearest = catalogue.Louvers.MinBy(l => Math.Abs(l.SizeM - Math.Sqrt(typed.Max(o => o.AreaM2))))!;
            return new Intake(
                nearest, 0, gross, gross * nearest.FreeFraction, true, false, pad, widthM, heightM, screenM2, screenCoefficient, form.SectionAreaM2);
        }

        (LouverEntry louver, int count) = Louvers(catalogue, form, flowM3PerS, densityKgPerM3, pad is null ? 0 : widthM * heightM);
        double grossM2 = count * louver.SizeM * louver.SizeM;
        return new Intake(
            louver, count, grossM2, grossM2 * louver.FreeFraction, false, pad is not null, pad, widthM, heightM, screenM2, screenCoefficient,
            form.SectionAreaM2);
    }

    /// <summary>
    /// Discharge coefficient from porosity, on the cautious line through two measured screens (0.263: 0.151; 0.350: 0.207). A third of 0.360 measured
    /// 0.325: porosity alone does not size a screen.
    /// </summary>
    public static double ScreenCoefficientOf(double porosityFraction) =>
        Math.Clamp(0.151 + (0.207 - 0.151) / (0.350 - 0.263) * (porosityFraction - 0.263), 0.05, 0.6);

    private AirPath LouverPath() => new AirPath.Louver(LouverGrossM2, Louver.FreeFraction, 90, Louver.DischargeCoefficient);

    private List<(string Name, AirPath Path)> Finish(List<(string, AirPath)> path, double clogFraction)
    {
        if (ScreenM2 > 0)
        {
            path.Add(("insect screen", new AirPath.Screen(ScreenM2, ScreenCoefficient, clogFraction)));
        }

        path.Add(("house", new AirPath.House(Math.Max(SectionM2, 1), HouseHeads)));
        return path;
    }

    private static (double WidthM, double HeightM) PadSize(
        EquipmentChoice e, List<OpeningForm> openings, PadEntry pad, BuildingForm form, double flowM3PerS)
    {
        if (e.WetWallWidthM > 0 && e.WetWallHeightM > 0)
        {
            return (e.WetWallWidthM, e.WetWallHeightM);
        }

        if (openings.Find(o => o.Opening.Kind == OpeningKind.WetWall) is { } typed)
        {
            return (typed.Opening.WidthM, typed.Opening.HeightM);
        }

        // The lowest pad that serves at its rated face speed in the widest run between the doors of its wall; the tallest and widest if none does.
        double mostWidthM = Math.Max(FreeRunM(form, Layout.LayoutInput.Opposite(e.FanFace)), 0.6);
        double areaM2 = VentilationRules.PadAreaM2(flowM3PerS, pad.Kind.RatedFaceMPerS);
        double lowEaveM = Math.Min(form.Roof.LeftEaveM, form.Roof.RightEaveM);
        List<double> heights = [.. pad.HeightsM.Where(h => h <= lowEaveM).DefaultIfEmpty(pad.HeightsM.Min()).Order()];
        double heightM = heights.Find(h => areaM2 / h <= mostWidthM);
        heightM = heightM > 0 ? heightM : heights[^1];
        return (Math.Min(Math.Ceiling(areaM2 / heightM / FootM) * FootM, mostWidthM), heightM);
    }

    private const double FootM = 0.3048;

    private static double FreeRunM(BuildingForm form, FaceName face)
    {
        double lengthM = face is FaceName.End1 or FaceName.End2 ? form.WidthM : form.LengthM;
        double at = 0.3;
        double widest = 0;
        foreach (Opening door in form.Face(face).Openings.Select(o => o.Opening)
            .Where(o => o.Kind is OpeningKind.Door or OpeningKind.DoubleDoor or OpeningKind.Window).OrderBy(o => o.OffsetM))
        {
            widest = Math.Max(widest, door.OffsetM - 0.15 - at);
            at = Math.Max(at, door.OffsetM + door.WidthM + 0.15);
        }

        return Math.Max(widest, lengthM - 0.3 - at) - 0.1;
    }

    private static (LouverEntry Louver, int Count) Louvers(
        Catalogue catalogue, BuildingForm form, double flowM3PerS, double densityKgPerM3, double padM2)
    {
        // The least frame area that gives the free area in at most eight pieces; when no size does, the fewest pieces.
        (LouverEntry Louver, int Count)? best = null;
        (int Over, double GrossM2) least = (int.MaxValue, double.PositiveInfinity);
        double lowEaveM = Math.Min(form.Roof.LeftEaveM, form.Roof.RightEaveM);
        double targetPa = padM2 > 0 ? 0.5 * LouverTargetPa : LouverTargetPa;
        foreach (LouverEntry louver in catalogue.Louvers.Where(l => l.SizeM <= lowEaveM))
        {
            double freeM2 = louver.SizeM * louver.SizeM * louver.FreeFraction;
            double neededM2 = Math.Max(
                flowM3PerS / (louver.DischargeCoefficient * Math.Sqrt(2 * targetPa / densityKgPerM3)),
                0.6 * padM2);
            int count = Math.Max((int)Math.Ceiling(neededM2 / freeM2 - 1e-9), 1);
            double grossM2 = count * louver.SizeM * louver.SizeM;
            (int Over, double GrossM2) rank = (Math.Max(count - MostLouvers, 0), grossM2);
            if (best is null || rank.CompareTo(least) < 0)
            {
                (best, least) = ((louver, count), rank);
            }
        }

        return best ?? (catalogue.Louvers[0], 1);
    }
}
