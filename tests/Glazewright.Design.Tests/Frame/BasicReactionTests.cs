using Glazewright.Design.Brief;
using Glazewright.Design.Form;
using Glazewright.Design.Frame;
using Glazewright.Mechanics.Loads;

namespace Glazewright.Design.Tests.Frame;

/// <summary>Base forces by load: statics by hand, and the extremes made of them again.</summary>
public class BasicReactionTests
{
    private static readonly BuildingForm s_form = FormStage.Run(FormInput.From(TestJobs.OneHouse())).Building("A");

    private static FrameResult Run(Func<FrameChoice, FrameChoice> change)
    {
        Job job = TestJobs.OneHouse();
        job = job with { Houses = [job.Houses[0] with { Frame = change(job.Houses[0].Frame) }] };
        return FrameStage.Run(FrameInput.From(job, "A"), s_form, TestContext.Current.CancellationToken);
    }

    // Up and down: the roof live load of 10 psf on the frame's plan area. Across: nothing pushes sideways, so both bases push apart alike.
    [Fact]
    public void Loads_straight_down_are_carried_whole_and_push_out_alike()
    {
        FrameResult r = Run(f => f with { FixedBase = false });
        BasicReaction live = r.ByLoad.Single(b => b.Sort == "Lr");
        FrameLoadSite site = FrameLoadSite.Of(FrameInput.From(TestJobs.OneHouse(), "A"), s_form);
        Assert.Equal(RoofLiveLoad.GreenhousePa * site.Section.WidthM * site.BayM, live.Left.DownN + live.Right.DownN, 1.0);
        foreach (BasicReaction b in r.ByLoad.Where(b => b.Sort != "W"))
        {
            Assert.True(b.Left.DownN >= 0 && b.Right.DownN >= 0, b.Load);
            Assert.Equal(0, b.Left.AcrossN + b.Right.AcrossN, 1e-3 * Math.Max(1, Math.Abs(b.Left.AcrossN)));
            Assert.True(b.Left.AcrossN <= 1e-6, "a loaded gable pushes its left base to the left: " + b.Load);
            Assert.Equal((0, 0), (Math.Round(b.Left.MomentNm, 6), Math.Round(b.Right.MomentNm, 6)));
        }
    }

    // ASCE 7-16 2.4.1(7), 0.6 D + 0.6 W, and (3), D + S: the greatest of each base come back.
    [Theory]
    [InlineData(false), InlineData(true)]
    public void The_extremes_are_made_of_them(bool fixedBase)
    {
        FrameResult r = Run(f => f with { FixedBase = fixedBase });
        BasicReaction One(string sort) => r.ByLoad.Single(b => b.Sort == sort);
        foreach (FaceName side in (FaceName[])[FaceName.Left, FaceName.Right])
        {
            BaseForce Of(BasicReaction b) => side == FaceName.Left ? b.Left : b.Right;
            BaseReaction extremes = r.Reactions.Single(x => x.Side == side);
            double lift = r.ByLoad.Where(b => b.Sort == "W").Max(w => -0.6 * (Of(One("D")).DownN + Of(w).DownN));
            Assert.Equal(Math.Max(lift, 0), extremes.UpN, 1e-6 * Math.Abs(lift));
            double snow = r.ByLoad.Where(b => b.Sort == "S").Max(s => Of(One("D")).DownN + Of(One("C")).DownN + Of(s).DownN);
            Assert.True(extremes.DownN >= snow - 1e-6);
            Assert.Equal(fixedBase, Math.Abs(Of(One("Lr")).MomentNm) > 1);
        }
    }

    // Wind from the left pushes the frame to the right: the bases get it whole, and mirrored it is the other way.
    [Fact]
    public void Wind_across_goes_into_the_bases_the_way_it_blows()
    {
        FrameResult r = Run(f => f);
        double Across(string load) => r.ByLoad.Where(b => b.Load.StartsWith(load, StringComparison.Ordinal)).Average(b => b.Left.AcrossN + b.Right.AcrossN);
        Assert.True(Across("wind from the left") > 100);
        Assert.True(Across("wind from the right") < -100);
    }
}
