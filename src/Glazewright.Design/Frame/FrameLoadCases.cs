using Glazewright.Mechanics.Frames;
using Glazewright.Mechanics.Loads;
using Glazewright.Mechanics.Sections;

namespace Glazewright.Design.Frame;

/// <summary>Every basic load of a typical frame as solver loads, N and m, unfactored.</summary>
internal sealed record FrameLoadCases(
    FrameLoading Dead,
    FrameLoading Collateral,
    FrameLoading RoofLive,
    IReadOnlyList<(SnowCase Case, FrameLoading Loading)> Snow,
    IReadOnlyList<(WindCase Case, FrameLoading Loading)> Wind,
    double GravityN)
{
    private const double Gravity = 9.80665;

    internal static FrameLoadCases Of(FrameLoadSite site, TypicalFrame frame, FrameSections sections, double purlinSpacingM, double collateralPa)
    {
        double bay = site.BayM;
        double PurlinPa() => sections.Purlin.MassKgPerM * Gravity / purlinSpacingM;
        double Own(TubeSection s) => s.MassKgPerM * Gravity;
        var dead = new List<MemberLoad>();
        void Hang(FramePart part, double coverPa, TubeSection own) =>
            dead.AddRange(part.Spread(SpreadDirection.UpPerLength, -(coverPa * bay + Own(own))));
        Hang(frame.LeftColumn, site.LeftWallDeadPa + PurlinPa(), sections.Column);
        Hang(frame.RightColumn, site.RightWallDeadPa + PurlinPa(), sections.Column);
        Hang(frame.LeftRafter, site.LeftRoofDeadPa + PurlinPa(), sections.Rafter);
        Hang(frame.RightRafter, site.RightRoofDeadPa + PurlinPa(), sections.Rafter);
        if (frame.Collar is not null)
        {
            Hang(frame.Collar, 0, sections.Rafter);
        }

        FrameLoading OnPlan(double leftPa, double rightPa) => new(
            [],
            [
                .. frame.LeftRafter.Spread(SpreadDirection.UpPerRun, -leftPa * bay), .. frame.RightRafter.Spread(SpreadDirection.UpPerRun, -rightPa * bay),
            ]);
        double gravityN = dead.OfType<MemberLoad.Spread>().Sum(s => -s.FromNPerM * (s.ToFraction - s.FromFraction) * frame.Model.LengthM(s.Member))
            + site.Section.WidthM * bay * (collateralPa + RoofLiveLoad.GreenhousePa + site.Snow.FlatPa);
        return new FrameLoadCases(
            new FrameLoading([], dead),
            OnPlan(collateralPa, collateralPa),
            OnPlan(RoofLiveLoad.GreenhousePa, RoofLiveLoad.GreenhousePa),
            [.. site.Snow.Cases.Select(c => (c, SnowLoading(c, site, frame)))],
            [.. site.Wind.Select(c => (c, WindLoading(c, site, frame)))],
            gravityN);
    }

    private static FrameLoading SnowLoading(SnowCase snow, FrameLoadSite site, TypicalFrame frame)
    {
        double bay = site.BayM;
        double left = 1 - snow.Left.SurchargeRunM / site.Section.LeftRunM;
        double right = snow.Right.SurchargeRunM / site.Section.RightRunM;
        return new FrameLoading(
            [],
            [
                .. frame.LeftRafter.Spread(SpreadDirection.UpPerRun, -snow.Left.UniformPa * bay),
                .. frame.LeftRafter.Spread(SpreadDirection.UpPerRun, -snow.Left.SurchargePa * bay, Math.Clamp(left, 0, 1), 1),
                .. frame.RightRafter.Spread(SpreadDirection.UpPerRun, -snow.Right.UniformPa * bay),
                .. frame.RightRafter.Spread(SpreadDirection.UpPerRun, -snow.Right.SurchargePa * bay, 0, Math.Clamp(right, 0, 1)),
            ]);
    }

    private static FrameLoading WindLoading(WindCase wind, FrameLoadSite site, TypicalFrame frame)
    {
        double bay = site.BayM;
        if (wind is WindCase.Pressures p)
        {
            // Positive pressure pushes in, against the members' outward normal.
            return new FrameLoading(
                [],
                [
                    .. frame.LeftColumn.Spread(SpreadDirection.Normal, -p.LeftWallPa * bay), .. frame.LeftRafter.Spread(SpreadDirection.Normal, -p.LeftRoofPa * bay),
                    .. frame.RightRafter.Spread(SpreadDirection.Normal, -p.RightRoofPa * bay), .. frame.RightColumn.Spread(SpreadDirection.Normal, -p.RightWallPa * bay),
                ]);
        }

        var push = (WindCase.LeastPush)wind;
        bool fromLeft = push.From == WindFrom.Left;
        double sign = fromLeft ? 1 : -1;
        return new FrameLoading(
            [],
            [
                .. (fromLeft ? frame.LeftColumn : frame.RightColumn).Spread(SpreadDirection.AcrossPerRise, sign * push.WallPa * bay),
                .. (fromLeft ? frame.LeftRafter : frame.RightRafter).Spread(SpreadDirection.AcrossPerRise, sign * push.RoofPa * bay),
            ]);
    }
}
