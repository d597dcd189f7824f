using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.GainTables;
using Glazewright.Design.Tests.Contracts;
using Glazewright.Science.Sky;

namespace Glazewright.Design.Tests.GainTables;

public class GainTableStageTests
{
    private static readonly SkySources Beam = new(600, 0, 0, 0, 0);

    private static readonly GainTable Usual = LightJobs.BothWays(TestJobs.OneHouse());

    [Fact]
    public void Shares_of_every_row_sum_to_one()
    {
        foreach (GainSet set in new[] { Usual.CurtainOpen, Usual.CurtainDrawn })
        {
            Assert.Equal(72 * 37, set.Beam.Count);
            foreach (GainRow row in set.Beam.Append(set.Sky).Append(set.Horizon).Append(set.Ground))
            {
                Assert.Equal(1, row.ShareSum, 1e-9);
                Assert.True(row.ApertureM2 >= 0 && row.CropPlaneShare >= 0 && row.EscapeShare >= 0);
            }
        }
    }

    // Bearing 90: the left wall looks south. All else opaque, so only a southern sun gets in.
    [Fact]
    public void The_left_wall_looks_south_when_the_ridge_bears_east()
    {
        Design.Brief.Job job = LightJobs.Turned(
            LightJobs.Covered(TestJobs.OneHouse(), (FaceName.RoofLeft, TestJobs.Panel), (FaceName.End2, TestJobs.Panel)), 90);
        GainField field = new(LightJobs.Gains(job), drawn: false);
        Assert.True(field.At(Beam, 180, 20, 90).CropPlaneW > 1000);
        Assert.Equal(0, field.At(Beam, 0, 20, 90).CropPlaneW, 1e-6);

        // 20° past the wall's own line the morning sun is already behind it.
        Assert.True(field.At(Beam, 110, 20, 90).CropPlaneW > 100);
        Assert.Equal(0, field.At(Beam, 70, 20, 90).CropPlaneW, 1e-6);
    }

    [Fact]
    public void House_and_sun_turned_together_change_nothing()
    {
        GainField here = new(Usual, false);
        Assert.Equal(here.At(Beam, 150, 35, 95).CropPlaneW, here.At(Beam, 190, 35, 135).CropPlaneW, 1e-9);
    }

    [Fact]
    public void The_parts_sum_to_the_aperture_times_the_light()
    {
        GainField field = new(Usual, false);
        GainRow row = Usual.CurtainOpen.Beam[(10 * 37) + 14];
        SunW sun = field.At(Beam, 95 + 50, 35, 95);
        Assert.Equal(600 * row.ApertureM2, sun.CoverW + sun.CurtainW + sun.CropPlaneW + sun.OpaqueW + sun.FrameW + sun.EscapeW, 1e-6);
    }

    [Fact]
    public void A_drawn_curtain_takes_from_the_crop()
    {
        GainRow open = Usual.CurtainOpen.Sky;
        GainRow drawn = Usual.CurtainDrawn.Sky;
        Assert.Equal(0, open.CurtainShare);
        Assert.True(drawn.CurtainShare > 0.05);
        Assert.True(drawn.CropPlaneShare < 0.8 * open.CropPlaneShare);
        Assert.Equal(open.ApertureM2, drawn.ApertureM2, 1e-6 * open.ApertureM2);
    }

    [Fact]
    public void Without_a_curtain_both_positions_are_the_same()
    {
        Design.Brief.Job job = TestJobs.OneHouse();
        job = job with { Houses = [job.Houses[0] with { Equipment = job.Houses[0].Equipment with { Curtains = 0 } }] };
        GainTable table = LightJobs.BothWays(job);
        Assert.Equal(table.CurtainOpen, table.CurtainDrawn);
    }

    [Fact]
    public void Thicker_members_take_more()
    {
        GainTable thick = LightJobs.Gains(TestJobs.OneHouse(), widthM: 0.10);
        Assert.True(thick.CurtainOpen.Sky.FrameShare > Usual.CurtainOpen.Sky.FrameShare * 1.1);
        Assert.True(thick.CurtainOpen.Sky.CropPlaneShare < Usual.CurtainOpen.Sky.CropPlaneShare);
    }

    // The corridor and the house in front take light from the rear house's left wall; far apart they take none.
    [Fact]
    public void Neighbours_take_light_and_distance_gives_it_back()
    {
        Design.Brief.Job two = TestJobs.TwoHouses();
        double near = Past(two);
        double far = Past(two with { Links = [], Houses = [two.Houses[0] with { OriginYM = 200 }, two.Houses[1]] });
        double alone = Past(two with { Links = [], Houses = [two.Houses[0]] });
        Assert.InRange(near, 0.7, 0.97);
        Assert.InRange(far, near + 0.02, 1.003);

        // 0.3 %: 36 azimuths of sky against the closed form.
        Assert.Equal(1, alone, 0.003);
    }

    [Fact]
    public void A_hill_to_the_south_takes_the_low_sun()
    {
        Design.Brief.Job job = TestJobs.OneHouse();
        job = job with { Site = job.Site with { Horizon = [new(90, 0), new(185, 31), new(280, 0)] } };
        GainField field = new(LightJobs.Gains(job), false);
        GainField open = new(Usual, false);
        Assert.Equal(0, field.At(Beam, 185, 26, 95).CropPlaneW, 1e-9);
        Assert.True(open.At(Beam, 185, 26, 95).CropPlaneW > 1000);
        Assert.Equal(open.At(Beam, 185, 40, 95).CropPlaneW, field.At(Beam, 185, 40, 95).CropPlaneW, 1e-6);
    }

    private static double Past(Design.Brief.Job job) =>
        LightJobs.Gains(job).Report.Figures.Single(f => f.Id == "A/gain/sky-past-neighbours").Value;

    [Fact]
    public void Derived_figures_follow_from_their_printed_inputs()
    {
        Assert.Contains(Usual.Report.Figures, f => f.Id == "A/gain/noon-winter");
        foreach (Figure figure in Usual.Report.Figures)
        {
            if (figure.Working is Working.Derived derived)
            {
                Assert.Equal(figure.Value, FormulaReader.Evaluate(derived.Formula, derived.Inputs), 1e-9 * Math.Abs(figure.Value));
            }

            Assert.InRange(figure.Value, 0, 1000);
        }

        Assert.NotEmpty(Usual.Report.LeftOut);
    }

    [Fact]
    public void An_unknown_cover_is_refused() =>
        Assert.Throws<ArgumentException>(() => LightJobs.Gains(
            LightJobs.Covered(TestJobs.OneHouse(), (FaceName.Left, new Design.Brief.CoverChoice("no-such-cover", 1, 1, 0)))));
}
