using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Duty;
using Glazewright.Design.Form;
using Glazewright.Design.Pipeline;
using Glazewright.Design.Tests.Contracts;

namespace Glazewright.Design.Tests.Duty;

public class DutyStageTests
{
    private static double ShellWPerK(DutyResult duty) => duty.Losses.Where(l => l.Face != FaceName.Floor).Sum(l => l.WPerK);

    [Fact]
    public void Loss_is_the_sum_of_its_lines_times_the_difference()
    {
        DutyResult duty = DesignDay.Duty(TestJobs.OneHouse());
        Assert.Equal(duty.Losses.Sum(l => l.WPerK), duty.LossWPerK, 1e-9);
        Assert.Equal(duty.LossWPerK * (17 + 20), duty.HeatLossW, 1e-6);
        Assert.Equal(duty.LossWPerK * (2 + 24), duty.FrostLossW, 1e-6);
        Assert.True(duty.LossDrawnWPerK < duty.LossWPerK);
    }

    // One wet bulb typed, the other from the weather file: the two must still be of one place.
    [Fact]
    public void Wet_bulbs_of_two_places_are_told()
    {
        Job job = TestJobs.OneHouse();
        Assert.DoesNotContain(DesignDay.Duty(job).Report.Findings, f => f.Code == "duty/wet-bulbs-out-of-order");
        job = job with { Site = job.Site with { Design = job.Site.Design! with { Evaporation04C = job.Site.Design.CoincidentWetBulbC - 1 } } };
        Assert.Equal(Severity.Miss, DesignDay.Duty(job).Report.Findings.Single(f => f.Code == "duty/wet-bulbs-out-of-order").Severity);
    }

    // The asymmetric 24 × 48 ft house of the published cases has its own test on the physics; here the stage's areas and U by hand for one face.
    [Fact]
    public void A_face_by_hand()
    {
        DutyResult duty = DesignDay.Duty(TestJobs.OneHouse());
        LossLine roof = duty.Losses.Single(l => l.Id == "A/roof-left/cover");
        double slopeM = Math.Sqrt(5 * 5 + 2.5 * 2.5);
        Assert.Equal(slopeM * 31.7, roof.AreaM2, 1e-6);
        Assert.Equal(2.6, roof.UWPerM2K);
        LossLine edge = duty.Losses.Single(l => l.Id == "A/perimeter");
        Assert.Equal(2 * (7.9 + 31.7), edge.AreaM2, 1e-9);
        Assert.Equal(0.54 * 1.730735, edge.UWPerM2K, 1e-9);
    }

    [Fact]
    public void Two_joined_houses_lose_what_they_would_alone_less_twice_the_shared_wall()
    {
        Job apart = TestJobs.OneHouse() with { Houses = [TestJobs.House("A", 0, 20), TestJobs.House("B", 0, 0)] };
        Job joined = apart with { Houses = [TestJobs.House("A", 0, 7.9), TestJobs.House("B", 0, 0)] };
        double alone = ShellWPerK(DesignDay.Duty(apart, "A")) + ShellWPerK(DesignDay.Duty(apart, "B"));
        double together = ShellWPerK(DesignDay.Duty(joined, "A")) + ShellWPerK(DesignDay.Duty(joined, "B"));
        FormResult form = FormStage.Run(FormInput.From(joined));
        double sharedM2 = form.Building("A").Face(FaceName.Left).SharedM2;
        Assert.True(sharedM2 > 60);
        // The left wall is triple-wall above a panel pony wall; the right wall is panel all over.
        double leftM2 = form.Building("A").Face(FaceName.Left).Zones.Single(z => z.Id.EndsWith("/cover", StringComparison.Ordinal)).SharedM2;
        double expected = alone - (leftM2 * 2.6 + (sharedM2 - leftM2) * 0.35) - sharedM2 * 0.35;
        Assert.Equal(expected, together, 1e-6);
    }

    [Theory]
    [InlineData(0, null), InlineData(290, null), InlineData(310, "310 m (1017 ft) above"), InlineData(-310, "310 m (1017 ft) below")]
    public void A_place_far_above_or_below_its_station_is_told(double stepM, string? told)
    {
        Job job = TestJobs.OneHouse();
        DutyResult duty = DesignDay.Duty(job with { Site = job.Site with { ElevationM = DesignDay.Year.Station.ElevationM + stepM } });
        Finding[] found = [.. duty.Report.Findings.Where(f => f.Code == "duty/station-elevation")];
        Assert.Equal(told is null ? 0 : 1, found.Length);
        Assert.All(found, f => Assert.Contains(told!, f.What, StringComparison.Ordinal));
    }

    // Polders lie some metres below the sea; hundreds are more often a wrong sign.
    [Theory]
    [InlineData(-7, false), InlineData(-200, true)]
    public void A_place_far_below_the_sea_is_told(double elevationM, bool told)
    {
        Job job = TestJobs.OneHouse();
        DutyResult duty = DesignDay.Duty(job with { Site = job.Site with { ElevationM = elevationM } });
        Assert.Equal(told, duty.Report.Findings.Any(f => f.Code == "duty/below-sea-level"));
        Assert.True(duty.PressurePa > 101_325);
    }

    [Fact]
    public void A_colder_site_and_a_warmer_crop_need_more_heat()
    {
        Job job = TestJobs.OneHouse();
        Job colder = job with { Site = job.Site with { Design = job.Site.Design! with { Heating996C = -28 } } };
        Assert.Equal(45 / 37.0, DesignDay.Duty(colder).HeatLossW / DesignDay.Duty(job).HeatLossW, 1e-9);
    }

    [Fact]
    public void The_night_target_is_the_warmest_of_the_cold_weeks_only()
    {
        Job job = TestJobs.OneHouse();
        CropPeriod herbs = job.Houses[0].Schedule[0];
        EqList<CropPeriod> schedule =
        [
            herbs with { Id = "plugs", FromWeek = 1, ToWeek = 10, Night = new ClimateTarget(21, 80) },
            herbs with { Id = "hot", FromWeek = 11, ToWeek = 42, Night = new ClimateTarget(25, 60) },
            herbs with { Id = "parked", FromWeek = 43, ToWeek = 52, Night = new ClimateTarget(4, 0) },
        ];
        Job planned = job with { Houses = [job.Houses[0] with { Schedule = schedule }] };
        Assert.Equal(21, DesignDay.Duty(planned).NightTargetC);
    }

    [Fact]
    public void More_sun_or_less_shade_asks_for_more_air()
    {
        Job job = TestJobs.OneHouse();
        DutyResult shaded = DesignDay.Duty(DesignDay.With(job, e => e with { ShadeFraction = 0.6 }));
        DutyResult bare = DesignDay.Duty(DesignDay.With(job, e => e with { ShadeFraction = 0 }));
        Assert.Equal(0.4, shaded.SolarGainW / bare.SolarGainW, 1e-9);
        Assert.True(bare.VentilationRuleM3PerS > shaded.VentilationRuleM3PerS);
        Assert.True(bare.VentilationBalanceM3PerS > shaded.VentilationBalanceM3PerS);
        Assert.Equal(Math.Max(bare.VentilationRuleM3PerS, bare.VentilationBalanceM3PerS), bare.VentilationM3PerS);
    }

    [Fact]
    public void Turning_the_house_to_the_north_brings_less_sun()
    {
        Job job = TestJobs.OneHouse();
        Job turned = job with { Site = job.Site with { RangeBearingDeg = job.Site.RangeBearingDeg + 180 } };
        Assert.True(DesignDay.Duty(turned).SolarGainW < 0.97 * DesignDay.Duty(job).SolarGainW);
    }

    [Fact]
    public void An_empty_house_gives_no_moisture()
    {
        Job job = TestJobs.OneHouse();
        EqList<CropPeriod> empty = [job.Houses[0].Schedule[0] with { LeafAreaIndex = 0 }];
        DutyResult duty = DesignDay.Duty(job with { Houses = [job.Houses[0] with { Schedule = empty }] });
        Assert.Equal(0, duty.TranspirationKgPerS);
        Assert.Equal(0, duty.NightMoistureKgPerS);
        double storedW = duty.Report.Figures.Single(f => f.Id == "A/duty/stored").Value;
        Assert.True(storedW > 0);
        Assert.Equal(duty.SolarGainW - storedW, duty.SensibleGainW, 1e-6);
    }

    [Fact]
    public void Without_typed_conditions_the_result_says_where_they_come_from()
    {
        Job job = TestJobs.OneHouse();
        DutyResult duty = DesignDay.Duty(job with { Site = job.Site with { Design = null } });
        bool typical = duty.Conditions.Source is Source.Default;
        Assert.Equal(typical, duty.Report.Findings.Any(f => f.Code == "duty/typical-year-conditions"));
        Assert.Equal(typical, duty.Report.Figures.Single(f => f.Id == "A/duty/heating-99.6").Caution.Length > 0);
        Assert.True(duty.Conditions.ExtremeMinC < duty.Conditions.Heating996C);
    }

    // Typed conditions 5 K off the year's own statistics to either side, and at them.
    [Theory]
    [InlineData(0, ""), InlineData(5, "duty/year-harsher-than-design"), InlineData(-5, "duty/year-milder-than-design")]
    public void Design_conditions_far_from_the_year_are_told(double yearHarsherK, string told)
    {
        Job job = TestJobs.OneHouse();
        Glazewright.Science.Weather.ComputedConditions year = Glazewright.Science.Weather.ComputedConditions.Of(DesignDay.Year);
        DesignConditions typed = new(
            year.Heating996DryBulbC + yearHarsherK, year.Heating996DryBulbC - 10, year.Cooling04DryBulbC - yearHarsherK, year.Evaporation04WetBulbC - 1 - yearHarsherK,
            year.Evaporation04WetBulbC - yearHarsherK, new Source.Given("/site/design"));
        Finding[] found = [.. DesignDay.Duty(job with { Site = job.Site with { Design = typed } }).Report.Findings.Where(f => f.Code.StartsWith("duty/year-", StringComparison.Ordinal))];
        Assert.Equal(told.Length > 0 ? [told] : [], found.Select(f => f.Code));
        Assert.All(found, f => Assert.Equal(3, f.What.Split(" against ").Length - 1));
    }

    [Fact]
    public void Every_derived_figure_comes_out_of_its_printed_inputs()
    {
        foreach (Figure figure in DesignDay.Duty(TestJobs.OneHouse()).Report.Figures)
        {
            if (figure.Working is Working.Derived derived)
            {
                double again = FormulaReader.Evaluate(derived.Formula, derived.Inputs);
                Assert.Equal(figure.Value, again, 1e-9 * Math.Max(1, Math.Abs(figure.Value)));
            }
        }
    }

    [Fact]
    public void Figures_are_the_results_numbers()
    {
        DutyResult duty = DesignDay.Duty(TestJobs.OneHouse());
        double Value(string name) => duty.Report.Figures.Single(f => f.Id == $"A/duty/{name}").Value;
        Assert.Equal(duty.LossWPerK, Value("loss-factor"), 1e-6);
        Assert.Equal(duty.LossDrawnWPerK, Value("loss-factor-drawn"), 1e-6);
        Assert.Equal(duty.HeatLossW, Value("heat-loss"), 1e-3);
        Assert.Equal(duty.FrostLossW, Value("frost-loss"), 1e-3);
        Assert.Equal(duty.SolarGainW, Value("solar-gain"), 1e-3);
        Assert.Equal(duty.VentilationRuleM3PerS, Value("ventilation-rule"), 1e-6);
        Assert.Equal(duty.VentilationM3PerS, Value("ventilation"), 1e-6);
        Assert.Equal(duty.NightMoistureKgPerS, Value("night-moisture"), 1e-9);
        Assert.Equal(duty.SensibleGainW, Value("sensible-gain"), 1e-3);
        Assert.Equal(duty.PressurePa, Value("pressure"), 1e-6);
    }

    [Fact]
    public void Same_inputs_same_hash() =>
        Assert.Equal(Canonical.Hash(DesignDay.Duty(TestJobs.OneHouse())), Canonical.Hash(DesignDay.Duty(TestJobs.OneHouse())));
}
