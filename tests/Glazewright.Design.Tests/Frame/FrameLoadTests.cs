using Glazewright.Design.Brief;
using Glazewright.Design.Form;
using Glazewright.Design.Frame;
using Glazewright.Mechanics.Frames;
using Glazewright.Mechanics.Loads;

namespace Glazewright.Design.Tests.Frame;

/// <summary>What the typical frame carries, against areas and pressures multiplied by hand: the two bases must hold exactly that.</summary>
public class FrameLoadTests
{
    private const double Gravity = 9.80665;

    private sealed record Set(FrameInput Input, BuildingForm Form, FrameLoadSite Site, FrameSections Sections, TypicalFrame Frame, FrameLoadCases Cases);

    private static Set Make(double collarM)
    {
        Job job = TestJobs.OneHouse();
        job = job with { Houses = [job.Houses[0] with { Frame = job.Houses[0].Frame with { CollarTieHeightM = collarM, CropLoadPa = 40 } }] };
        FrameInput input = FrameInput.From(job, "A");
        BuildingForm form = FormStage.Run(FormInput.From(job)).Building("A");
        FrameLoadSite site = FrameLoadSite.Of(input, form);
        var sections = new FrameSections(TubeNames.Of("tube-4x4x0.188"), TubeNames.Of("tube-4x2x0.120"), TubeNames.Of("tube-2x2x0.120"));
        TypicalFrame frame = TypicalFrame.Of(site.Section, collarM, false, sections, 2e11);
        return new Set(input, form, site, sections, frame, FrameLoadCases.Of(site, frame, sections, 1.2, 140));
    }

    private static (double AcrossN, double UpN) Held(Set set, FrameLoading loading)
    {
        FrameSolution r = FrameAnalysis.FirstOrder(set.Frame.Model, loading).OrThrow();
        return (r.Reactions.Sum(x => x.AcrossN), r.Reactions.Sum(x => x.UpN));
    }

    [Theory]
    [InlineData(0.0), InlineData(3.9)]
    public void Snow_with_its_surcharge(double collarM)
    {
        Set set = Make(collarM);
        Assert.Equal(collarM > 0, set.Frame.Collar is not null);
        foreach ((SnowCase snow, FrameLoading loading) in set.Cases.Snow)
        {
            double byHandN = set.Site.BayM * (
                snow.Left.UniformPa * set.Site.Section.LeftRunM + snow.Left.SurchargePa * snow.Left.SurchargeRunM
                + snow.Right.UniformPa * set.Site.Section.RightRunM + snow.Right.SurchargePa * snow.Right.SurchargeRunM);
            (double acrossN, double upN) = Held(set, loading);
            Assert.Equal(byHandN, upN, 1e-6 * byHandN);
            Assert.Equal(0, acrossN, 1e-6 * byHandN);
        }
    }

    [Theory]
    [InlineData(0.0), InlineData(3.9)]
    public void Wind_on_each_surface(double collarM)
    {
        Set set = Make(collarM);
        GableSection s = set.Site.Section;
        double bay = set.Site.BayM;
        foreach ((WindCase wind, FrameLoading loading) in set.Cases.Wind)
        {
            (double acrossN, double upN) = Held(set, loading);
            if (wind is WindCase.Pressures p)
            {
                // Pressure on a plane pushes across with its height and down with its run.
                double across = bay * (p.LeftWallPa * s.LeftEaveM + p.LeftRoofPa * (s.RidgeM - s.LeftEaveM)
                    - p.RightRoofPa * (s.RidgeM - s.RightEaveM) - p.RightWallPa * s.RightEaveM);
                double down = bay * (p.LeftRoofPa * s.LeftRunM + p.RightRoofPa * s.RightRunM);
                Assert.Equal(-across, acrossN, 1e-5 * (1 + Math.Abs(across)));
                Assert.Equal(down, upN, 1e-5 * (1 + Math.Abs(down)));
                continue;
            }

            var push = (WindCase.LeastPush)wind;
            bool left = push.From == WindFrom.Left;
            double eaveM = left ? s.LeftEaveM : s.RightEaveM;
            double pushN = bay * (push.WallPa * eaveM + push.RoofPa * (s.RidgeM - eaveM));
            Assert.Equal(left ? -pushN : pushN, acrossN, 1e-5 * pushN);
        }
    }

    [Fact]
    public void Weights_of_cover_fixings_purlins_and_frame()
    {
        Set set = Make(0);
        GableSection s = set.Site.Section;
        double leftSlopeM = FaceOutlines.LeftSlopeM(set.Form.Roof);
        double rightSlopeM = FaceOutlines.RightSlopeM(set.Form.Roof, set.Form.WidthM);
        const double Fixings = 0.5 * 47.88025898;
        double purlinPa = set.Sections.Purlin.MassKgPerM * Gravity / 1.2;
        // Triple wall 2.7 kg/m² and 3-in panel 12 kg/m²; the left wall is panel below the 0.75 m pony wall.
        double leftWallPa = ((0.75 * 12) + ((s.LeftEaveM - 0.75) * 2.7)) / s.LeftEaveM * Gravity;
        double coverN = set.Site.BayM * (
            (leftSlopeM * ((2.7 * Gravity) + Fixings + purlinPa)) + (rightSlopeM * ((12 * Gravity) + Fixings + purlinPa))
            + (s.LeftEaveM * (leftWallPa + Fixings + purlinPa)) + (s.RightEaveM * ((12 * Gravity) + Fixings + purlinPa)));
        double ownN = Gravity * ((set.Sections.Rafter.MassKgPerM * (leftSlopeM + rightSlopeM)) + (set.Sections.Column.MassKgPerM * (s.LeftEaveM + s.RightEaveM)));
        Assert.Equal(coverN + ownN, Held(set, set.Cases.Dead).UpN, 1e-4 * coverN);
        Assert.Equal(140 * set.Form.WidthM * set.Site.BayM, Held(set, set.Cases.Collateral).UpN, 1e-3);
        Assert.Equal(478.8025898 * set.Form.WidthM * set.Site.BayM, Held(set, set.Cases.RoofLive).UpN, 1e-3);
    }

    [Fact]
    public void Combinations_count_every_case_and_never_mix_rain_or_least_snow_with_wind()
    {
        Set set = Make(0);
        string[] names = [.. FrameCombinations.Strength(set.Site, set.Frame, set.Cases).Select(c => c.Name)];
        int snows = set.Cases.Snow.Count;
        int pressures = set.Cases.Wind.Count(w => w.Case is WindCase.Pressures);
        int winds = set.Cases.Wind.Count;
        // Without wind, each twice for notional loads: 1.4D, two live, one roof live, snow as companion and as principal; with wind: roof live or snow each
        // as principal and as companion, and uplift with every wind.
        int expected = (2 * (1 + 1 + 1 + snows + snows)) + (2 * pressures) + (2 * snows * pressures) + winds;
        Assert.Equal(expected, names.Length);
        Assert.Contains(names, n => n.StartsWith("0.9D + W", StringComparison.Ordinal) && n.Contains("least wind", StringComparison.Ordinal));
    }

    [Fact]
    public void A_typed_spacing_is_shared_out_evenly_and_never_exceeded()
    {
        Assert.Equal(1.2, SecondaryMembers.SpacingM(6, 1.2), 1e-12);
        Assert.Equal(1.0, SecondaryMembers.SpacingM(6, 1.199), 1e-12);
        Assert.Equal(0.8, SecondaryMembers.SpacingM(0.8, 1.2), 1e-12);
    }
}
