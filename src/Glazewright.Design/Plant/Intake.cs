using Glazewright.Design.Brief;
using Glazewright.Design.Catalogues;
using Glazewright.Design.Form;
using Glazewright.Design.Layout;
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

    /// <summary>Free louver area that the target pressure asks, m²: more than there is where the wall has no room; 0 for typed openings.</summary>
    public double LouverAskedM2 { get; init; }

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
        var intakeWall = new WallPlan(form, LayoutInput.Opposite(e.FanFace), WallModule.Inches);
        PadEntry? pad = null;
        double widthM = 0;
        double heightM = 0;
        if (e.WetWall)
        {
            pad = e.WetWallEntry.Length > 0
                ? Pick.ById(catalogue.Pads, e.WetWallEntry, p => p.Id, $"{input.Pointer}/equipment/wetWall")
                : catalogue.Pads.MaxBy(p => p.ThicknessM)!;
            (widthM, heightM) = PadSize(e, openings, pad, intakeWall, flowM3PerS);
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

        double padM2 = pad is null ? 0 : widthM * heightM;
        double AskedM2(LouverEntry l) => AskedFreeM2(l, flowM3PerS, densityKgPerM3, padM2);
        (LouverEntry louver, int count) = LouverChoice.Of(catalogue, form, intakeWall, pad is null ? null : (widthM, heightM), AskedM2);
        double grossM2 = count * louver.SizeM * louver.SizeM;
        return new Intake(
            louver, count, grossM2, grossM2 * louver.FreeFraction, false, pad is not null, pad, widthM, heightM, screenM2, screenCoefficient,
            form.SectionAreaM2)
        {
            LouverAskedM2 = AskedM2(louver),
        };
    }

    /// <summary>The same intake with all the louver area that is asked, whether the wall has room or not.</summary>
    public Intake AsAsked()
    {
        double oneM2 = Louver.SizeM * Louver.SizeM;
        return With(Math.Max((int)Math.Ceiling(LouverAskedM2 / (oneM2 * Louver.FreeFraction) - 1e-9), LouverCount));
    }

    /// <summary>The same intake with another count of its louvers.</summary>
    public Intake With(int louvers)
    {
        double grossM2 = louvers * Louver.SizeM * Louver.SizeM;
        return this with { LouverCount = louvers, LouverGrossM2 = grossM2, LouverFreeM2 = grossM2 * Louver.FreeFraction };
    }

    /// <summary>What the louvers take at a flow, Pa.</summary>
    public double LouverPa(double flowM3PerS, double densityKgPerM3) => LouverPath().LossPa(flowM3PerS, densityKgPerM3);

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
        EquipmentChoice e, List<OpeningForm> openings, PadEntry pad, WallPlan wall, double flowM3PerS)
    {
        if (e.WetWallWidthM > 0 && e.WetWallHeightM > 0)
        {
            return (e.WetWallWidthM, e.WetWallHeightM);
        }

        if (openings.Find(o => o.Opening.Kind == OpeningKind.WetWall) is { } typed)
        {
            return (typed.Opening.WidthM, typed.Opening.HeightM);
        }

        // The lowest pad that serves at its rated face speed in the widest run between the doors of its wall; the one of most area if none does.
        double areaM2 = VentilationRules.PadAreaM2(flowM3PerS, pad.Kind.RatedFaceMPerS);
        double RunM(double h) => Math.Max(Math.Floor((wall.WidestRunM(WallPacking.Sill(wall, h), h) - wall.Module.StepM) / InchM) * InchM, 2 * FootM);
        List<double> heights = [.. pad.HeightsM.Where(h => h <= wall.LowEaveM).DefaultIfEmpty(pad.HeightsM.Min()).Order()];
        double heightM = heights.Find(h => Math.Ceiling(areaM2 / h / FootM) * FootM <= RunM(h));
        if (heightM > 0)
        {
            return (Math.Ceiling(areaM2 / heightM / FootM) * FootM, heightM);
        }

        heightM = heights.MaxBy(h => h * Math.Min(RunM(h), areaM2 / h));
        return (Math.Min(Math.Ceiling(areaM2 / heightM / FootM) * FootM, RunM(heightM)), heightM);
    }

    private const double FootM = 0.3048;
    private const double InchM = 0.0254;

    private static double AskedFreeM2(LouverEntry louver, double flowM3PerS, double densityKgPerM3, double padM2) => Math.Max(
        flowM3PerS / (louver.DischargeCoefficient * Math.Sqrt(2 * (padM2 > 0 ? 0.5 * LouverTargetPa : LouverTargetPa) / densityKgPerM3)),
        0.6 * padM2);
}
