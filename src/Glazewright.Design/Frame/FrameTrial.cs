using Glazewright.Design.Form;
using Glazewright.Mechanics.Checks;
using Glazewright.Mechanics.Frames;
using Glazewright.Mechanics.Loads;
using Glazewright.Mechanics.Sections;

namespace Glazewright.Design.Frame;

/// <summary>How hard one part works, and when.</summary>
internal sealed record PartUse(
    FramePart Part, double UseFraction, bool ByShear, string Combination, double TensionN, double MomentNm, double BowM, double SpanM, bool Unstable);

/// <summary>What a trial of sections gives.</summary>
internal sealed record TrialResult(
    FrameSections Sections,
    TypicalFrame Frame,
    IReadOnlyList<PartUse> Uses,
    int Combinations,
    IReadOnlyList<CheckGap> Gaps,
    ServiceResult Service,
    bool FirstOrderOnly)
{
    internal double UseOf(MemberRole role) => Uses.Where(u => Group(u.Part.Role) == Group(role)).Max(u => u.UseFraction);

    internal double DeflectionUseOf(MemberRole role) =>
        Uses.Where(u => Group(u.Part.Role) == Group(role)).Max(u => Math.Abs(u.BowM) * DeflectionLimit.Greenhouse.SpanOverRatio / u.SpanM);

    // The collar tie is cut of the rafter's tube, so it sizes it too.
    private static MemberRole Group(MemberRole role) => role == MemberRole.CollarTie ? MemberRole.Rafter : role;
}

/// <summary>Service behaviour and bases, first order with full stiffness.</summary>
internal sealed record ServiceResult(
    double RidgeDropM, double EaveSpreadM, double SwayM, double SnowThrustN, BaseExtremes Left, BaseExtremes Right, IReadOnlyList<BasicReaction> ByLoad, IReadOnlyDictionary<string, double> BowM);

/// <summary>Extremes at one base over the ASD combinations.</summary>
internal sealed record BaseExtremes(double DownN, double UpN, double ThrustN, double MomentNm);

/// <summary>
/// Strength of a frame on trial: every LRFD combination of every snow and wind case, second order on reduced stiffness with notional loads
/// (AISC 360-16 chapter C, direct analysis: 0.8 of stiffness, 0.002 of gravity sideways in the combinations without wind; effective length is then
/// the length). From memory.
/// </summary>
internal static class FrameTrial
{
    internal const double StiffnessFactor = 0.8;
    internal const double NotionalFraction = 0.002;
    internal const double UnstableUse = 99;
    private const int Pieces = 2;
    private const double WithinFraction = 0.75;

    internal static TrialResult Run(FrameInput input, FrameLoadSite site, FrameSections sections, double purlinSpacingM, bool stopWhenOverworked, CancellationToken cancel)
    {
        double collarM = input.Choice.CollarTieHeightM;
        Steel SteelFor(TubeSection s) => SteelOf(input, s);
        TypicalFrame frame = TypicalFrame.Of(
            site.Section, collarM, input.Choice.FixedBase, sections, StiffnessFactor * Steel.StructuralElasticPa);
        TypicalFrame stiff = TypicalFrame.Of(site.Section, collarM, input.Choice.FixedBase, sections, Steel.StructuralElasticPa);
        FrameLoadCases cases = FrameLoadCases.Of(
            site, frame, sections, purlinSpacingM, input.Choice.CollateralPa + input.Choice.CropLoadPa);
        ServiceResult service = FrameService.Of(site, stiff, cases);
        FramePart[] parts = [.. frame.Parts];
        MemberCapacity[] capacities = [.. parts.Select(p => Capacity(p, frame, sections, purlinSpacingM, SteelFor))];
        (string Name, FrameLoading Loading)[] combinations = [.. FrameCombinations.Strength(site, frame, cases)];
        FrameOutcome[] first = [.. FrameAnalysis.FirstOrder(frame.Model, [.. combinations.Select(c => c.Loading)])];
        PartUse[][] uses = [.. parts.Select((p, i) => first.Select(
            (o, c) => Worst(p, capacities[i], o.OrThrow(), combinations[c].Name, frame, service)).ToArray())];
        CheckGap[] gaps = [.. capacities.SelectMany(c => c.Gaps).Distinct().Order()];
        PartUse[] firstBest = [.. uses.Select(u => u.MaxBy(x => x.UseFraction)!)];
        if (stopWhenOverworked && firstBest.Any(u => u.UseFraction > 1))
        {
            return new TrialResult(sections, frame, firstBest, combinations.Length, gaps, service, FirstOrderOnly: true);
        }

        // Second order for those within three quarters of the governing one of any member: the sway of such a frame is not amplified by a
        // third more in one combination than in another, or it is far past use anyway.
        bool[] close = [.. combinations.Select((_, c) => uses.Where((u, i) => u[c].UseFraction >= WithinFraction * firstBest[i].UseFraction).Any())];
        var best = new PartUse[parts.Length];
        for (int c = 0; c < combinations.Length; c++)
        {
            cancel.ThrowIfCancellationRequested();
            if (!close[c])
            {
                continue;
            }

            (string name, FrameLoading loading) = combinations[c];
            FrameOutcome outcome = FrameAnalysis.SecondOrder(frame.Model, loading, Pieces);
            for (int i = 0; i < parts.Length; i++)
            {
                PartUse use = outcome is FrameOutcome.Solved solved
                    ? Worst(parts[i], capacities[i], solved.Result, name, frame, service)
                    : new PartUse(parts[i], UnstableUse, false, name, 0, 0, service.BowM[parts[i].Name], SpanM(parts[i], frame), true);
                if (best[i] is null || use.UseFraction > best[i].UseFraction)
                {
                    best[i] = use;
                }
            }
        }

        return new TrialResult(sections, frame, best, combinations.Length, gaps, service, FirstOrderOnly: false);
    }

    internal static Steel SteelOf(FrameInput input, TubeSection section) => new(
        "tube as ordered", input.Choice.YieldPa, input.Choice.YieldPa,
        section.Standard == TubeStandard.Structural ? Steel.StructuralElasticPa : Steel.GaugeElasticPa);

    internal static double SpanM(FramePart part, TypicalFrame frame) => part.Pieces.Sum(p => frame.Model.LengthM(p.Member));

    private static MemberCapacity Capacity(
        FramePart part, TypicalFrame frame, FrameSections sections, double purlinSpacingM, Func<TubeSection, Steel> steel)
    {
        double longestM = part.Pieces.Max(p => frame.Model.LengthM(p.Member));
        double wholeM = SpanM(part, frame);
        (TubeSection section, double acrossM) = part.Role switch
        {
            MemberRole.Column => (sections.Column, wholeM),
            MemberRole.Rafter => (sections.Rafter, Math.Min(purlinSpacingM, wholeM)),
            _ => (sections.Rafter, wholeM),
        };
        double inPlaneM = part.Role == MemberRole.Rafter ? longestM : wholeM;
        return TubeCheck.CapacityOf(section, steel(section), new MemberLengths(inPlaneM, acrossM, acrossM), DesignMethod.Lrfd);
    }

    private static PartUse Worst(
        FramePart part, MemberCapacity capacity, FrameSolution result, string name, TypicalFrame frame, ServiceResult service)
    {
        double use = -1;
        bool byShear = false;
        double tensionN = 0;
        double momentNm = 0;
        foreach (FramePiece piece in part.Pieces)
        {
            foreach (MemberStation s in result.Members[piece.Member].Stations())
            {
                Utilisation u = TubeCheck.Of(capacity, new MemberForces(s.TensionN, s.MomentNm, 0, s.ShearN));
                if (u.LargestRatio > use)
                {
                    use = u.LargestRatio;
                    byShear = u.ShearRatio > u.InteractionRatio;
                    tensionN = s.TensionN;
                    momentNm = s.MomentNm;
                }
            }
        }

        return new PartUse(part, Math.Min(use, UnstableUse), byShear, name, tensionN, momentNm, service.BowM[part.Name], SpanM(part, frame), false);
    }
}
