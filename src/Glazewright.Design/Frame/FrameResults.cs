using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Mechanics.Checks;
using Glazewright.Mechanics.Loads;
using Glazewright.Mechanics.Sections;

namespace Glazewright.Design.Frame;

/// <summary>Puts a trial's numbers into the stage's result.</summary>
internal static class FrameResults
{
    internal static FrameResult Of(
        FrameInput input, BuildingForm form, FrameLoadSite site, TrialResult trial, FrameSections? instead, (TubeSection Section, SpanUse Use) purlin,
        (TubeSection Section, SpanUse Use) girt)
    {
        List<SectionChoice> sections =
        [
            Choice(MemberRole.Column, trial.Sections.Column, input.Choice.ColumnSection.Length > 0, trial, instead?.Column),
            Choice(MemberRole.Rafter, trial.Sections.Rafter, input.Choice.RafterSection.Length > 0, trial, instead?.Rafter),
            Choice(MemberRole.Purlin, purlin.Section, input.Choice.PurlinSection.Length > 0, purlin.Use),
            Choice(MemberRole.Girt, girt.Section, input.Choice.PurlinSection.Length > 0, girt.Use),
        ];
        EqList<MemberCheck> checks = trial.Uses.Select(u => new MemberCheck(
                $"{input.House}/frame/{u.Part.Name}", u.Part.Role, u.Combination, u.UseFraction, Clause(u), u.BowM, SpanOver(u.SpanM, u.BowM)))
            .Concat([Check(input, purlin.Section, purlin.Use), Check(input, girt.Section, girt.Use)])
            .OrderByDescending(c => c.Utilisation).ThenBy(c => c.Id, StringComparer.Ordinal).ToEqList();
        double roofSnowPa = site.Snow.Cases.Max(c => Math.Max(c.Left.UniformPa, c.Right.UniformPa));
        return new FrameResult(
            input.House,
            sections.ToEqList(),
            input.Snow.GroundPa,
            roofSnowPa,
            site.Thermal.Factor,
            site.MeanVelocityPa,
            checks,
            [Reaction(FaceName.Left, trial.Service.Left), Reaction(FaceName.Right, trial.Service.Right)],
            FrameWords.NotChecked.Concat(Gaps(trial, purlin.Use, girt.Use)).ToEqList(),
            new StageReport(
                FrameWorkings.Figures(input, form, site, trial, purlin.Use, girt.Use).ToEqList(),
                FrameFindings.Of(input, form, site, trial, sections).ToEqList(),
                [
                    "One typical interior frame on its dimension lines; end frames are not analysed.",
                    "Joints between rafters and columns and at the ridge are taken as rigid, bases as chosen; knee braces and haunches are not modelled.",
                    "Slopes are taken as not slippery: no snow is counted as slid off by the smooth sheet.",
                    "The house is taken as enclosed in wind; doors or vents left open in a storm make it partially enclosed and the loads higher.",
                    .. FrameWords.NotChecked.Select(t => "Not checked: " + t),
                ]))
        {
            ByLoad = trial.Service.ByLoad.ToEqList(),
        };
    }

    internal static double SpanOver(double spanM, double bowM) => Math.Abs(bowM) < 1e-9 ? 99_999 : Math.Min(99_999, spanM / Math.Abs(bowM));

    private static SectionChoice Choice(MemberRole role, TubeSection s, bool isFixed, TrialResult trial, TubeSection? instead) =>
        Make(role, s, isFixed, trial.UseOf(role), trial.DeflectionUseOf(role), instead);

    private static SectionChoice Choice(MemberRole role, TubeSection s, bool isFixed, SpanUse use) =>
        Make(role, s, isFixed, use.UseFraction, use.DeflectionUse, null);

    private static SectionChoice Make(MemberRole role, TubeSection s, bool isFixed, double strengthUse, double deflectionUse, TubeSection? instead)
    {
        double use = Math.Max(strengthUse, deflectionUse);
        double margin = use > 0 ? 1 / use - 1 : 99;
        Answer<double> answer = use <= 1
            ? new Answer<double>.Met(use, margin)
            : new Answer<double>.Missed(
                use, margin,
                (deflectionUse > strengthUse ? "Deflection: " : "Strength: ") + (instead is not null
                    ? $"with these bays and bases {instead.Name} would do; closer bays, fixed bases or a collar tie would help too."
                    : isFixed ? "a larger tube, closer bays, fixed bases or a collar tie would help."
                    : "no tube of the list is enough; closer bays, fixed bases or a collar tie would help."));
        var shape = (TubeShape.Rectangular)s.Shape;
        return new SectionChoice(role, s.Name, shape.DepthM, shape.WidthM, TubeNames.OrderedWallM(s), s.MassKgPerM, isFixed, answer);
    }

    private static MemberCheck Check(FrameInput input, TubeSection section, SpanUse use) => new(
        $"{input.House}/{use.Name}", use.Role, use.Combination, use.UseFraction,
        section.Standard == TubeStandard.Structural ? "AISC 360-16 F7, G4, H1 (simple span)" : "AISI S100 C3, C5 (simple span)", use.DeflectionM,
        SpanOver(use.SpanM, use.DeflectionM));

    private static string Clause(PartUse use) => use.Unstable
        ? "AISC 360-16 C1: the frame is unstable under this combination"
        : use.ByShear ? "AISC 360-16 G4 shear" : "AISC 360-16 H1-1 axial force with bending (E3, F7), second order by C2";

    private static BaseReaction Reaction(FaceName side, BaseExtremes b) => new(side, b.DownN, b.UpN, b.ThrustN, b.MomentNm);

    private static IEnumerable<string> Gaps(TrialResult trial, SpanUse purlin, SpanUse girt)
    {
        foreach (CheckGap gap in trial.Gaps.Concat(purlin.Gaps).Concat(girt.Gaps).Distinct().Order())
        {
            yield return gap == CheckGap.ThinWalls
                ? "Local buckling of walls thinner than the rules used here cover: the strength printed for that tube is not good."
                : "Compression members more slender than 200: recommended against (AISC 360 E2).";
        }
    }
}
