using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.Frame;
using Glazewright.Design.Pipeline;

namespace Glazewright.Design.Tests.Frame;

public class FrameStageTests
{
    private static FrameResult Run(Job job, string house = "A") => FrameStage.Run(
        FrameInput.From(job, house), FormStage.Run(FormInput.From(job)).Building(house), TestContext.Current.CancellationToken);

    private static Job With(Job job, Func<House, House> change) => job with { Houses = job.Houses.Select(change).ToEqList() };

    private static Job WithFrame(Job job, Func<FrameChoice, FrameChoice> change) => With(job, h => h with { Frame = change(h.Frame) });

    private static Job Sized() => WithFrame(
        TestJobs.OneHouse(), f => f with { RafterSection = "tube-4x2x0.120", ColumnSection = "tube-4x4x3/16", PurlinSection = "tube-2x2x0.120" });

    private static double FigureOf(FrameResult r, string id) => r.Report.Figures.Single(f => f.Id == "A/frame/" + id).Value;

    [Fact]
    public void Everything_free_is_sized_and_passes()
    {
        FrameResult r = Run(TestJobs.OneHouse());
        foreach (SectionChoice s in r.Sections)
        {
            Assert.False(s.Fixed);
            Assert.IsType<Answer<double>.Met>(s.Answer);
            Assert.True(TubeNames.TryRead(s.Section, out _));
        }

        Assert.NotNull(r.Section(MemberRole.Column));
        Assert.NotNull(r.Section(MemberRole.Rafter));
        Assert.NotNull(r.Section(MemberRole.Purlin));
        Assert.All(r.Checks, c => Assert.InRange(c.Utilisation, 0.01, 1));
        Assert.Equal(r.Checks.OrderByDescending(c => c.Utilisation), r.Checks);
    }

    [Fact]
    public void A_small_fixed_tube_is_kept_and_told_as_missed()
    {
        FrameResult r = Run(WithFrame(TestJobs.OneHouse(), f => f with { RafterSection = "tube-2x2x0.120" }));
        SectionChoice rafter = r.Section(MemberRole.Rafter)!;
        Assert.True(rafter.Fixed);
        Answer<double>.Missed missed = Assert.IsType<Answer<double>.Missed>(rafter.Answer);
        Assert.True(missed.Margin < 0);
        Assert.Contains("would do", missed.Limit, StringComparison.Ordinal);
        Assert.Contains(r.Report.Findings, f => f.Code == "frame/member-overworked" && f.Severity == Severity.Danger);
    }

    [Fact]
    public void Every_number_is_marked_preliminary_and_tells_what_was_not_checked()
    {
        FrameResult r = Run(Sized());
        Assert.Contains(r.Report.Findings, f => f.Code == "frame/preliminary");
        foreach (string word in (string[])["Connections", "Uplift", "Foundations", "Bracing", "End walls", "Erection"])
        {
            Assert.Contains(r.NotChecked, t => t.StartsWith(word, StringComparison.Ordinal));
            Assert.Contains(r.Report.LeftOut, t => t.Contains(word, StringComparison.Ordinal));
        }

        Assert.All(
            r.Report.Figures.Where(f => f.Id.Contains("/use-", StringComparison.Ordinal)), f => Assert.Contains("not for construction", f.Caution, StringComparison.Ordinal));
    }

    [Fact]
    public void Derived_figures_agree_with_the_engine()
    {
        FrameResult r = Run(Sized());
        Assert.Equal(r.VelocityPressurePa, FigureOf(r, "velocity-pressure"), 1e-9);
        Assert.Equal(r.ThermalFactor, FigureOf(r, "thermal-factor"));
        double balanced = Math.Max(FigureOf(r, "roof-snow-left"), FigureOf(r, "roof-snow-right"));
        Assert.Equal(r.RoofSnowPa, balanced, 1e-9);
    }

    // 7-16, risk I, Ce 1.0, panel on one slope so Ct 1.0: 0.7 · 1.0 · 1.0 · 0.8 · 1600 = 896 Pa; the 6:12 slope keeps all of it.
    [Fact]
    public void Roof_snow_by_hand()
    {
        FrameResult r = Run(Sized());
        Assert.Equal(1.0, r.ThermalFactor);
        Assert.Equal(896, FigureOf(r, "flat-snow"), 1e-9);
        Assert.Equal(896, FigureOf(r, "roof-snow-left"), 1e-9);
        // 9:12 is 36.87°: (70 − 36.87)/40 of it.
        Assert.Equal(896 * (70 - Math.Atan(0.75) * 180 / Math.PI) / 40, FigureOf(r, "roof-snow-right"), 1e-6);
    }

    [Fact]
    public void Parking_the_house_cold_raises_the_snow_and_says_so()
    {
        CropPeriod parked = TestJobs.House("A", 0, 0).Schedule[0] with
        {
            Id = "parked",
            Crop = "parked",
            FromWeek = 51,
            ToWeek = 2,
            Day = new ClimateTarget(3.3, 0),
            Night = new ClimateTarget(3.3, 0),
        };
        Job cold = With(Sized(), h => h with { Schedule = [h.Schedule[0] with { FromWeek = 3, ToWeek = 50 }, parked] });
        FrameResult r = Run(cold);
        Assert.Equal(1.1, r.ThermalFactor);
        Finding finding = Assert.Single(r.Report.Findings, f => f.Code == "frame/greenhouse-snow-not-credited");
        Assert.Contains("parked", finding.What, StringComparison.Ordinal);
        Assert.Contains("weeks 51 to 2", finding.What, StringComparison.Ordinal);
        Assert.Contains("Ct 1.00", finding.Mend, StringComparison.Ordinal);
        // The panel slope keeps its heat in: 0.85 was never on offer.
        Assert.Contains("Ct 1.10, not 1.00, which is 10 % more snow", finding.What, StringComparison.Ordinal);
    }

    [Fact]
    public void Cold_weeks_of_summer_do_not_count_north_of_the_equator_and_do_south_of_it()
    {
        CropPeriod idle = TestJobs.House("A", 0, 0).Schedule[0] with
        {
            Crop = "empty",
            FromWeek = 26,
            ToWeek = 30,
            Day = new ClimateTarget(5, 0),
            Night = new ClimateTarget(5, 0),
        };
        House house = TestJobs.House("A", 0, 0) with { };
        house = house with { Schedule = [house.Schedule[0], idle] };
        Assert.Equal(17, WinterHeat.Of(house, true, northern: true).ColdestC);
        Assert.Equal(5, WinterHeat.Of(house, true, northern: false).ColdestC);
    }

    [Fact]
    public void Thin_clear_roof_kept_warm_gets_the_greenhouse_factor_with_a_warning()
    {
        var twin = new CoverChoice("polycarbonate-8-twin", 1, 1, 0);
        Job job = With(Sized(), h => h with
        {
            Coverings = h.Coverings.Select(c => c with { Cover = twin }).ToEqList(),
            Equipment = h.Equipment with { Curtains = 0 },
        });
        FrameResult r = Run(job);
        Assert.Equal(0.85, r.ThermalFactor);
        Assert.Contains(r.Report.Findings, f => f.Code == "frame/snow-relies-on-heat" && f.Severity == Severity.Danger);
        Assert.Equal(1.0, Run(With(job, h => h with { Equipment = h.Equipment with { Curtains = 1 } })).ThermalFactor);
        Assert.Equal(1.0, Run(job with { Occupancy = job.Occupancy with { FreezeAlarm = false } }).ThermalFactor);
    }

    [Fact]
    public void Customers_make_the_frame_heavier_by_the_risk_category()
    {
        FrameResult staff = Run(Sized());
        Job open = Sized();
        FrameResult customers = Run(open with { Occupancy = open.Occupancy with { RiskCategory = 2 } });
        Assert.Equal(1 / 0.8, customers.RoofSnowPa / staff.RoofSnowPa, 1e-9);
        Assert.True(customers.Checks.First(c => c.Role == MemberRole.Rafter).Utilisation > staff.Checks.First(c => c.Role == MemberRole.Rafter).Utilisation);
    }

    [Fact]
    public void The_edition_changes_factors_and_importance()
    {
        Job old = Sized();
        Job current = old with
        {
            Site = old.Site with
            {
                Snow = old.Site.Snow with { Edition = LoadEdition.Asce722 },
                Wind = old.Site.Wind with { Edition = LoadEdition.Asce722 },
            }
        };
        FrameResult a = Run(old);
        FrameResult b = Run(current);
        Assert.All(a.Checks, c => Assert.Contains("ASCE 7-16", c.Combination, StringComparison.Ordinal));
        Assert.All(b.Checks, c => Assert.Contains("ASCE 7-22", c.Combination, StringComparison.Ordinal));
        Assert.NotEqual(a.RoofSnowPa, b.RoofSnowPa);
    }

    [Fact]
    public void Mixed_editions_are_told()
    {
        Job old = Sized();
        Job mixed = old with { Site = old.Site with { Wind = old.Site.Wind with { Edition = LoadEdition.Asce722 } } };
        Assert.Contains(Run(mixed).Report.Findings, f => f.Code == "frame/editions-mixed" && f.Severity == Severity.Danger);
        Assert.DoesNotContain(Run(old).Report.Findings, f => f.Code == "frame/editions-mixed");
    }

    [Fact]
    public void A_collar_tie_takes_thrust_off_the_bases()
    {
        FrameResult without = Run(Sized());
        FrameResult with = Run(WithFrame(Sized(), f => f with { CollarTieHeightM = 3.9 }));
        Assert.True(FigureOf(with, "thrust") < FigureOf(without, "thrust"));
        Assert.True(FigureOf(with, "ridge-drop") < FigureOf(without, "ridge-drop"));
        Assert.Contains(with.Checks, c => c.Role == MemberRole.CollarTie);
    }

    [Fact]
    public void Fixed_bases_stiffen_the_frame_and_carry_moment()
    {
        FrameResult @fixed = Run(Sized());
        FrameResult pinned = Run(WithFrame(Sized(), f => f with { FixedBase = false }));
        Assert.True(FigureOf(@fixed, "sway") < FigureOf(pinned, "sway"));
        Assert.All(@fixed.Reactions, r => Assert.True(r.MomentNm > 0));
        Assert.All(pinned.Reactions, r => Assert.Equal(0, r.MomentNm));
    }

    [Fact]
    public void Twice_the_bay_works_the_frame_about_twice_as_hard()
    {
        FrameResult near = Run(Sized());
        FrameResult far = Run(With(Sized(), h => h with { LengthM = 2 * h.LengthM }));
        double ratio = far.Reactions[0].UpN / near.Reactions[0].UpN;
        Assert.InRange(ratio, 1.8, 2.4);
    }

    // Reactions of gravity: balanced snow plus all weights must stand on the two bases.
    [Fact]
    public void A_mirrored_house_has_mirrored_reactions()
    {
        Job job = Sized();
        House h = job.Houses[0];
        var mirrored = new RoofProfile(
            h.Roof.RightEaveM, h.Roof.LeftEaveM, h.WidthM - h.Roof.RidgeOffsetM, h.Roof.RightPitch, h.Roof.LeftPitch, h.Roof.Solved);
        FaceName Swap(FaceName f) => f switch
        {
            FaceName.Left => FaceName.Right,
            FaceName.Right => FaceName.Left,
            FaceName.RoofLeft => FaceName.RoofRight,
            FaceName.RoofRight => FaceName.RoofLeft,
            _ => f,
        };
        FrameResult a = Run(job);
        FrameResult b = Run(With(job, x => x with
        {
            Roof = mirrored,
            Coverings = x.Coverings.Select(c => c with { Face = Swap(c.Face) }).ToEqList(),
            Openings = [],
        }));
        Assert.Equal(a.Reactions[0].DownN, b.Reactions[1].DownN, 1e-3);
        Assert.Equal(a.Reactions[1].UpN, b.Reactions[0].UpN, 1e-3);
        Assert.Equal(a.Checks[0].Utilisation, b.Checks[0].Utilisation, 1e-6);
    }

    [Fact]
    public void Neighbours_are_found_with_their_gap_and_their_snow()
    {
        Job job = TestJobs.TwoHouses();
        FrameInput a = FrameInput.From(job, "A");
        NeighbourRoof b = Assert.Single(a.Neighbours, n => n.Id == "B");
        Assert.True(b.OnLeft);
        Assert.Equal(2.6, b.GapM, 1e-9);
        FrameResult r = Run(job);
        Assert.Contains(r.Report.Findings, f => f.Code == "frame/snow-between" && f.What.Contains("House B", StringComparison.Ordinal));
    }

    [Fact]
    public void A_shallow_pier_under_a_fixed_base_is_told_and_a_pinned_base_says_nothing_of_it()
    {
        Assert.Contains(Run(Sized()).Report.Findings, f => f.Code == "frame/pier-depth" && f.Severity == Severity.Danger);
        FrameResult deep = Run(WithFrame(Sized(), f => f with { PierDepthM = 6 }));
        Assert.Contains(deep.Report.Findings, f => f.Code == "frame/pier-depth" && f.Severity == Severity.Near);
        FrameResult pinned = Run(WithFrame(Sized(), f => f with { FixedBase = false }));
        Assert.DoesNotContain(pinned.Report.Findings, f => f.Code == "frame/pier-depth");
    }

    [Fact]
    public void No_snow_place_has_no_snow_talk()
    {
        Job job = Sized();
        FrameResult r = Run(job with { Site = job.Site with { Snow = job.Site.Snow with { GroundPa = 0 } } });
        Assert.Equal(0, r.RoofSnowPa);
        Assert.DoesNotContain(r.Report.Findings, f => f.Code.Contains("snow", StringComparison.Ordinal));
        Assert.All(r.Checks, c => Assert.True(double.IsFinite(c.Utilisation)));
    }

    [Fact]
    public void Same_input_same_bytes()
    {
        Assert.Equal(Canonical.Hash(Run(TestJobs.OneHouse())), Canonical.Hash(Run(TestJobs.OneHouse())));
        Job job = TestJobs.OneHouse();
        Job dearer = job with { Pricing = job.Pricing with { LabourPerHour = 70 } };
        Assert.Equal(Canonical.Hash(FrameInput.From(job, "A")), Canonical.Hash(FrameInput.From(dearer, "A")));
    }

    [Theory]
    [InlineData("tube-4x2x0.120", true), InlineData("tube-4x4x3/16", true), InlineData("tube-1.5x1.5x0.075", true), InlineData("tube-4x2", false)]
    [InlineData("4x2x0.120", false), InlineData("tube-4x2x1", false), InlineData("tube-4x2xfat", false), InlineData("tube-400x2x0.12", false), InlineData("", false)]
    public void Tube_names(string name, bool good) => Assert.Equal(good, TubeNames.TryRead(name, out _));
}
