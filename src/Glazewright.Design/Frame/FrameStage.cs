using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Mechanics.Sections;

namespace Glazewright.Design.Frame;

/// <summary>Frame: loads by the named edition, a typical interior frame analysed and sized, purlins and girts, bases. Always preliminary.</summary>
public static class FrameStage
{
    /// <summary>Raise when results change.</summary>
    public const int Version = 2;

    /// <summary>Sizes or checks the frame of a house.</summary>
    /// <param name="input">What the job says.</param>
    /// <param name="form">The house's form.</param>
    /// <param name="cancel">Looked at before every combination.</param>
    /// <returns>Sections, checks, reactions, and what was not checked.</returns>
    /// <exception cref="ArgumentException">A section name that is no tube, or a covering that is not in the list.</exception>
    public static FrameResult Run(FrameInput input, BuildingForm form, CancellationToken cancel)
    {
        FrameLoadSite site = FrameLoadSite.Of(input, form);
        double leftSlopeM = FaceOutlines.LeftSlopeM(form.Roof);
        double rightSlopeM = FaceOutlines.RightSlopeM(form.Roof, form.WidthM);
        double wish = input.Choice.PurlinSpacingM;
        double leftM = SecondaryMembers.SpacingM(leftSlopeM, wish);
        double rightM = SecondaryMembers.SpacingM(rightSlopeM, wish);
        (TubeSection purlin, SpanUse purlinUse) = FrameSizing.Span(
            input.Choice.PurlinSection,
            s => Worse(SecondaryMembers.Purlin(input, site, s, leftM, true), SecondaryMembers.Purlin(input, site, s, rightM, false)));
        double leftGirtM = SecondaryMembers.SpacingM(form.Roof.LeftEaveM - Math.Min(input.PonyWallM, form.Roof.LeftEaveM * 0.9), wish);
        double rightGirtM = SecondaryMembers.SpacingM(form.Roof.RightEaveM - Math.Min(input.PonyWallM, form.Roof.RightEaveM * 0.9), wish);
        (TubeSection girt, SpanUse girtUse) = FrameSizing.Span(
            input.Choice.PurlinSection,
            s => Worse(SecondaryMembers.Girt(input, site, s, leftGirtM, true), SecondaryMembers.Girt(input, site, s, rightGirtM, false)));
        double spacingM = Math.Max(leftM, rightM);
        TrialResult trial = FrameSizing.Frame(input, purlin, (s, stop) => FrameTrial.Run(input, site, s, spacingM, stop, cancel));
        return FrameResults.Of(input, form, site, trial, Instead(input, trial, purlin, site, spacingM, cancel), (purlin, purlinUse), (girt, girtUse));
    }

    // Typed tubes that are not enough are kept, but the reader is told which of the list would be.
    private static FrameSections? Instead(
        FrameInput input, TrialResult trial, TubeSection purlin, FrameLoadSite site, double spacingM, CancellationToken cancel)
    {
        bool columnFixed = input.Choice.ColumnSection.Length > 0;
        bool rafterFixed = input.Choice.RafterSection.Length > 0;
        bool enough = FrameSizing.Passes(trial);
        if (enough || (!columnFixed && !rafterFixed))
        {
            return null;
        }

        FrameInput open = input with { Choice = input.Choice with { ColumnSection = "", RafterSection = "" } };
        TrialResult sized = FrameSizing.Frame(open, purlin, (s, stop) => FrameTrial.Run(open, site, s, spacingM, stop, cancel));
        return FrameSizing.Passes(sized) ? sized.Sections : null;
    }

    private static SpanUse Worse(SpanUse a, SpanUse b) =>
        Math.Max(a.UseFraction, a.DeflectionUse) >= Math.Max(b.UseFraction, b.DeflectionUse) ? a : b;
}
