using Glazewright.Design.Brief;
using Glazewright.Design.Catalogues;
using Glazewright.Design.Contracts;
using Glazewright.Design.Duty;
using Glazewright.Design.Form;
using Glazewright.Design.Layout;
using Glazewright.Science.Flow;

namespace Glazewright.Design.Plant;

/// <summary>Fans against their intake: what they move, one stage after another.</summary>
/// <param name="Fans">Catalogue entries in stage order.</param>
/// <param name="Dry">Operating points, 1 to all fans, pad off.</param>
/// <param name="Wet">The same, pad running.</param>
/// <param name="AllDirty">All fans with a dirty screen, pad as on the design day.</param>
/// <param name="Beyond">All fans on: some fan is past its tested points.</param>
internal sealed record ExhaustRun(
    List<FanEntry> Fans, EqList<OperatingPoint> Dry, EqList<OperatingPoint> Wet, OperatingPoint AllDirty, bool Beyond);

/// <summary>Chooses fans, or takes the job's, and finds what they move.</summary>
internal static class ExhaustSizing
{
    public static List<FanEntry> Fixed(PlantInput input, Catalogue catalogue) =>
        [.. input.Equipment.ExhaustFixed
            .SelectMany(f => Enumerable.Repeat(Pick.ById(catalogue.Fans, f.Entry, e => e.Id, $"{input.Pointer}/equipment/exhaust"), f.Count))
            .OrderBy(f => f.DiameterM).ThenBy(f => f.Id, StringComparer.Ordinal)];

    public static double NeededM3PerS(DutyResult duty) => Math.Max(duty.VentilationM3PerS, 0.01);

    /// <summary>Fans and the intake that carries them: fans come in sizes and move more than asked, so what is sized for them carries that, not the bare need.</summary>
    public static (Intake Intake, ExhaustRun Run) Settle(
        PlantInput input, BuildingForm form, Catalogue catalogue, List<FanEntry> fans, Intake asked, double neededM3PerS, double densityKgPerM3)
    {
        Intake intake = asked;
        ExhaustRun run = Run(fans, intake, densityKgPerM3);
        for (int round = 0; round < 2 && run.Wet[^1].FlowM3PerS > neededM3PerS; round++)
        {
            intake = Intake.For(input, form, catalogue, run.Wet[^1].FlowM3PerS, densityKgPerM3);
            run = Run(fans, intake, densityKgPerM3);
        }

        return (intake, run);
    }

    public static ExhaustRun Run(List<FanEntry> fans, Intake intake, double densityKgPerM3)
    {
        Dictionary<string, FanCurve> curves = fans.Select(f => f.Id).Distinct()
            .ToDictionary(id => id, id => Pick.Curve(fans.First(f => f.Id == id).Points, densityKgPerM3));
        bool beyond = false;
        OperatingPoint Point(int on, List<(string Name, AirPath Path)> path)
        {
            FanGroup[] groups = [.. fans.Take(on).GroupBy(f => f.Id).Select(g => new FanGroup(curves[g.Key], g.Count()))];
            FanSystem.TryFind(groups, [.. path.Select(p => p.Path)], densityKgPerM3, out var point);
            beyond = point.BeyondTested;
            return new OperatingPoint(on, point.FlowM3PerS, point.StaticPa, point.PowerW);
        }

        EqList<OperatingPoint> dry = Enumerable.Range(1, fans.Count).Select(n => Point(n, intake.Dry(0))).ToEqList();
        EqList<OperatingPoint> wet = Enumerable.Range(1, fans.Count).Select(n => Point(n, intake.Wet(0))).ToEqList();
        bool beyondAll = beyond;
        OperatingPoint dirty = Point(fans.Count, intake.Wet(intake.ScreenM2 > 0 ? Intake.DirtyFraction : 0));
        return new ExhaustRun(fans, dry, wet, dirty, beyondAll);
    }

    /// <summary>
    /// The mix of at most two sizes that moves the flow with little to spare, a small first stage, few fans and little power, and fits between the
    /// doors of its wall, in two rows where the eave allows. When none does, the one that moves most within its tested points.
    /// </summary>
    public static List<FanEntry> Choose(
        PlantInput input, BuildingForm form, Catalogue catalogue, Intake intake, double neededM3PerS, double densityKgPerM3)
    {
        List<FanEntry> sizes = [.. catalogue.Fans
            .Where(f => f.Phases == 1 || input.Utilities.Phase == Phase.Three)
            .OrderBy(f => f.DiameterM).ThenBy(f => f.Phases)];
        var wall = new WallPlan(form, input.Equipment.FanFace, WallModule.Inches);
        AirPath[] path = [.. intake.Wet(0).Select(p => p.Path)];
        Dictionary<string, FanCurve> curves = sizes.ToDictionary(f => f.Id, f => Pick.Curve(f.Points, densityKgPerM3));
        List<FanEntry>? best = null;
        double bestScore = double.PositiveInfinity;
        List<FanEntry> most = [sizes[0]];
        double mostM3PerS = 0;
        bool mostBeyond = true;
        foreach (FanEntry big in sizes)
        {
            foreach (FanEntry small in sizes.Where(s => s.DiameterM < big.DiameterM || s == big))
            {
                for (int bigCount = 1; bigCount <= 6; bigCount++)
                {
                    for (int smallCount = 0; smallCount <= (small == big ? 0 : 4); smallCount++)
                    {
                        List<FanEntry> fans = [.. Enumerable.Repeat(small, smallCount), .. Enumerable.Repeat(big, bigCount)];
                        double free = fans.Sum(f => f.Points[0].FlowM3PerS);
                        if (free > 2.2 * neededM3PerS + small.Points[0].FlowM3PerS || !WallPacking.Fits(wall, [.. fans.Select(f => f.FrameM)]))
                        {
                            // One more small fan makes it worse.
                            break;
                        }

                        FanGroup[] groups = smallCount > 0
                            ? [new FanGroup(curves[small.Id], smallCount), new FanGroup(curves[big.Id], bigCount)]
                            : [new FanGroup(curves[big.Id], bigCount)];
                        FanSystem.TryFind(groups, path, densityKgPerM3, out var point);
                        // Past their tested points fans move a flow that is a guess: a smaller set that is known comes first.
                        if ((mostBeyond && !point.BeyondTested) || (mostBeyond == point.BeyondTested && point.FlowM3PerS > mostM3PerS))
                        {
                            (most, mostM3PerS, mostBeyond) = (fans, point.FlowM3PerS, point.BeyondTested);
                        }

                        double first = fans[0].Points[0].FlowM3PerS / free;
                        double score = point.FlowM3PerS / neededM3PerS - 1 + 0.03 * fans.Count + Math.Max(first - 0.3, 0)
                            + point.PowerW / point.FlowM3PerS / 1000;
                        if (point.FlowM3PerS >= neededM3PerS && !point.BeyondTested && score < bestScore)
                        {
                            (best, bestScore) = (fans, score);
                        }
                    }
                }
            }
        }

        return best ?? most;
    }

    public static ExhaustPlant Plant(string house, ExhaustRun run, Intake intake, double densityKgPerM3)
    {
        EqList<FanUnit> units = run.Fans
            .Select((f, i) => new FanUnit($"{house}/fan-{i + 1}", f.Id, f.DiameterM, f.FrameM)).ToEqList();
        double flow = run.Wet[^1].FlowM3PerS;
        double faceM2 = run.Fans.Sum(f => Math.PI / 4 * f.DiameterM * f.DiameterM);
        return new ExhaustPlant(
            units, run.Dry, run.Wet, intake.LouverFreeM2, intake.LouverGrossM2, intake.Louver.TravelS,
            flow / Math.Max(intake.SectionM2, 1), flow / faceM2,
            intake.LouverCount, intake.LouverTyped ? 0 : intake.Louver.SizeM,
            Enumerable.Range(1, intake.LouverCount).Select(n => AllOn(run.Fans, intake.With(n), densityKgPerM3)).ToEqList());
    }

    private static OperatingPoint AllOn(List<FanEntry> fans, Intake intake, double densityKgPerM3)
    {
        FanGroup[] groups = [.. fans.GroupBy(f => f.Id).Select(g => new FanGroup(Pick.Curve(g.First().Points, densityKgPerM3), g.Count()))];
        FanSystem.TryFind(groups, [.. intake.Wet(0).Select(p => p.Path)], densityKgPerM3, out var point);
        return new OperatingPoint(fans.Count, point.FlowM3PerS, point.StaticPa, point.PowerW);
    }
}
