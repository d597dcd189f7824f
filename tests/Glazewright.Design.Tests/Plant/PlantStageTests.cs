using Glazewright.Design.Brief;
using Glazewright.Design.Catalogues;
using Glazewright.Design.Contracts;
using Glazewright.Design.Duty;
using Glazewright.Design.Form;
using Glazewright.Design.Pipeline;
using Glazewright.Design.Plant;
using Glazewright.Design.Tests.Contracts;
using Glazewright.Design.Tests.Duty;
using Glazewright.Science.Air;
using Glazewright.Science.Flow;

namespace Glazewright.Design.Tests.Plant;

public class PlantStageTests
{
    private static PlantResult Run(Job job)
    {
        BuildingForm form = FormStage.Run(FormInput.From(job)).Building("A");
        return PlantStage.Run(PlantInput.From(job, "A"), form, DesignDay.Duty(job), CatalogueReader.Generic);
    }

    private static PlantResult Run(Func<EquipmentChoice, EquipmentChoice> change) => Run(DesignDay.With(TestJobs.OneHouse(), change));

    [Fact]
    public void Sized_fans_move_what_is_asked_and_stage_upward()
    {
        DutyResult duty = DesignDay.Duty(TestJobs.OneHouse());
        Answer<ExhaustPlant> answer = Run(TestJobs.OneHouse()).Exhaust!;
        Answer<ExhaustPlant>.Met met = Assert.IsType<Answer<ExhaustPlant>.Met>(answer);
        Assert.True(met.Choice.Wet[^1].FlowM3PerS >= duty.VentilationM3PerS);
        Assert.True(met.Margin < 0.5);
        for (int i = 1; i < met.Choice.Wet.Count; i++)
        {
            Assert.True(met.Choice.Wet[i].FlowM3PerS > met.Choice.Wet[i - 1].FlowM3PerS);
            Assert.True(met.Choice.Wet[i].StaticPa > met.Choice.Wet[i - 1].StaticPa);
        }
    }

    // An independent hand: the point put back into the fan tables (by density) and into each piece of the path.
    [Fact]
    public void The_operating_point_lies_on_both_curves()
    {
        Job job = DesignDay.With(TestJobs.OneHouse(), e => e with
        {
            ExhaustFixed = [new FixedItem("exhaust-36", 2), new FixedItem("exhaust-24", 2)],
            WetWallEntry = "pad-6",
            WetWallWidthM = 4.2672,
            WetWallHeightM = 1.8288,
        });
        ExhaustPlant plant = Run(job).Exhaust!.Choice;
        DutyResult duty = DesignDay.Duty(job);
        double density = AirState.FromWetBulb(33.3, 23.7, duty.PressurePa).DensityKgPerM3;
        Assert.Equal(["exhaust-24", "exhaust-24", "exhaust-36", "exhaust-36"], plant.Fans.Select(f => f.Entry));
        Catalogue catalogue = CatalogueReader.Generic;
        double sectionM2 = FormStage.Run(FormInput.From(job)).Building("A").SectionAreaM2;
        foreach (Design.Plant.OperatingPoint p in plant.Wet)
        {
            double flow = plant.Fans.Take(p.FansOn)
                .Sum(f => Interpolate(catalogue.Fans.Single(e => e.Id == f.Entry).Points, p.StaticPa / (density / 1.2)));
            double louverPa = 0.5 * density * Math.Pow(p.FlowM3PerS / (plant.LouverFreeM2 * 0.62), 2);
            double padPa = 0.09 * 249.08891 * Math.Pow(p.FlowM3PerS / (4.2672 * 1.8288) / (350 * 0.00508), 1.75) * density / 1.2;
            double housePa = 1.5 * 0.5 * density * Math.Pow(p.FlowM3PerS / sectionM2, 2);
            Assert.Equal(p.FlowM3PerS, flow, 1e-4 * flow);
            Assert.Equal(p.StaticPa, louverPa + padPa + housePa, 0.1);
        }
    }

    [Fact]
    public void Four_large_fans_against_a_small_pad_are_told_so()
    {
        PlantResult plant = Run(e => e with
        {
            ExhaustFixed = [new FixedItem("exhaust-48", 4)],
            WetWallEntry = "pad-6",
            WetWallWidthM = 4.2672,
            WetWallHeightM = 1.8288,
        });
        Answer<WetWallPlant>.Missed missed = Assert.IsType<Answer<WetWallPlant>.Missed>(plant.WetWall);
        Assert.True(missed.Margin < -0.2);
        Assert.True(plant.Exhaust!.Choice.Wet[^1].FlowM3PerS / (4.2672 * 1.8288) > 2.6);
        Assert.True(missed.Choice.FaceSpeedMs <= 400 * 0.00508);
        Finding finding = plant.Report.Findings.Single(f => f.Code == "plant/pad-too-fast");
        Assert.Equal(Severity.Miss, finding.Severity);
        Assert.Contains("78,400 cfm", finding.What, StringComparison.Ordinal);
        Assert.Contains("933 fpm", finding.What, StringComparison.Ordinal);
        Assert.Contains("224 ft²", finding.What, StringComparison.Ordinal);
        Assert.True(plant.Exhaust!.Choice.Wet[^1].FlowM3PerS < 0.7 * 78_400 * 0.00047194745);
        Assert.Contains(plant.Report.Findings, f => f.Code == "plant/fan-beyond-tested");
        // By hand: 4.2672 × 1.8288 m of pad carry 400 fpm at most, 15.86 m³/s; the program runs as many fans as stay below it.
        int most = plant.Exhaust.Choice.Wet.Where(p => p.FlowM3PerS <= 4.2672 * 1.8288 * 400 * 0.00508).Max(p => p.FansOn);
        Assert.InRange(most, 1, 3);
        Assert.Equal(most, missed.Choice.MostFans);
        Assert.Contains($"the program runs at most {most} of 4 fans while water runs.", finding.Mend, StringComparison.Ordinal);
    }

    // A pad the size of a window: the same fans breathe freely without it, and the finding says so.
    [Fact]
    public void A_pad_that_is_worse_than_none_is_told_so()
    {
        Finding finding = Run(e => e with
        {
            ExhaustFixed = [new FixedItem("exhaust-48", 4)],
            WetWallEntry = "pad-6",
            WetWallWidthM = 1.2,
            WetWallHeightM = 0.6,
        }).Report.Findings.Single(f => f.Code == "plant/pad-too-fast");
        Assert.Contains("and even one draws too fast.", finding.Mend, StringComparison.Ordinal);
        Assert.Contains("it is worse than none", finding.Mend, StringComparison.Ordinal);
    }

    [Fact]
    public void The_rise_that_is_told_is_that_of_the_march()
    {
        Job job = DesignDay.With(TestJobs.OneHouse(), e => e with { ExhaustFixed = [new FixedItem("exhaust-24", 2)], WetWall = false });
        DutyResult duty = DesignDay.Duty(job);
        PlantResult plant = Run(job);
        AirStep house = AirStory.Summer(duty, plant).Steps[^1];
        double riseF = 1.8 * (house.States.Max(s => s.DryBulbC) - house.States[0].DryBulbC);
        Assert.Contains(
            FormattableString.Invariant($"the air warms about {riseF:0} F° on its way,"), plant.Report.Findings.Single(f => f.Code == "plant/fans-short").What, StringComparison.Ordinal);
    }

    // By hand: 1.2 air changes of leaks against 0.6 m³/s and more of the filter fan.
    [Fact]
    public void Gas_blown_out_by_the_filter_fan_is_counted_and_told()
    {
        PlantResult without = Run(e => e with { Co2Ppm = 1000 });
        PlantResult with = Run(e => e with { Co2Ppm = 1000, PositivePressurePa = 10 });
        Assert.DoesNotContain(without.Report.Findings, f => f.Code == "plant/co2-with-filter-fan");
        double more = with.Co2!.DoseKgPerS - without.Co2!.DoseKgPerS;
        BuildingForm form = FormStage.Run(FormInput.From(TestJobs.OneHouse())).Building("A");
        double leaksM3PerS = PlantInput.From(TestJobs.OneHouse(), "A").AirtightnessPerHour * form.VolumeM3 / 3600;
        Assert.Equal(1.5 * (with.Pressure!.FlowM3PerS - leaksM3PerS) * (1000 - 420) * 1e-6 * 1.83 * DesignDay.Duty(TestJobs.OneHouse()).PressurePa / 101_325, more, 1e-9);
        Assert.Contains("is blown out through the leaks", with.Report.Findings.Single(f => f.Code == "plant/co2-with-filter-fan").What, StringComparison.Ordinal);
    }

    // Vents alone: the same air as the plant's paper tells, and a finding where it is less than asked.
    [Theory]
    [InlineData(0.02, true)]
    [InlineData(0.5, false)]
    public void Vents_that_fall_short_are_told(double fraction, bool shortOfIt)
    {
        PlantResult plant = Run(e => e with { Exhaust = false, WetWall = false, Fog = false, RoofVentFraction = fraction, SideVentFraction = fraction });
        Finding? finding = plant.Report.Findings.FirstOrDefault(f => f.Code == "plant/vents-short");
        Assert.Equal(shortOfIt, finding is not null);
        if (finding is not null)
        {
            Assert.Equal(Severity.Miss, finding.Severity);
        }
    }

    [Fact]
    public void A_sized_pad_runs_at_a_face_speed_it_can_take()
    {
        PlantResult plant = Run(TestJobs.OneHouse());
        Assert.IsType<Answer<WetWallPlant>.Met>(plant.WetWall);
        Assert.InRange(plant.WetWall!.Choice.FaceSpeedMs, 1.0, 400 * 0.00508);
        Assert.DoesNotContain(plant.Report.Findings, f => f.Code == "plant/pad-too-fast");
    }

    [Fact]
    public void Both_air_speeds_are_told_and_the_house_is_far_slower()
    {
        PlantResult plant = Run(TestJobs.OneHouse());
        ExhaustPlant fans = plant.Exhaust!.Choice;
        Assert.InRange(fans.HouseSpeedMs, 0.2, 1.5);
        Assert.InRange(fans.FanFaceSpeedMs, 4, 9);
        Assert.Contains("mph through the house", plant.Report.Findings.Single(f => f.Code == "plant/air-speed").What, StringComparison.Ordinal);
    }

    [Fact]
    public void One_heater_out_holds_what_the_rest_can()
    {
        Job job = DesignDay.With(TestJobs.OneHouse(), e => e with { HeatersFixed = [new FixedItem("sealed-75", 1), new FixedItem("sealed-125", 1)] });
        DutyResult duty = DesignDay.Duty(job);
        HeatPlant heat = Run(job).Heat!.Choice;
        double left = 75_000 * 0.29307107;
        Assert.Equal(left, heat.OneOutW, 1);
        Assert.Equal(Math.Min(-20 + left / duty.LossDrawnWPerK, 17), heat.OneOutHoldsC, 1e-3);
        Assert.Equal(Math.Min(-20 + left / duty.LossWPerK, 17), heat.OneOutHoldsOpenC, 1e-3);
        Assert.True(heat.OneOutHoldsOpenC < heat.OneOutHoldsC);
        Assert.Equal(200_000 * 0.29307107 / duty.HeatLossW - 1, Run(job).Heat!.Margin, 1e-4);
    }

    // One boiler feeds all bench pipes: where it gives more than any heater, it is the one that must not die.
    [Theory]
    [InlineData(10_000, false), InlineData(60_000, true)]
    public void The_boiler_counts_as_the_largest_where_it_is(double pipeW, bool boiler)
    {
        Job job = DesignDay.With(TestJobs.OneHouse(), e => e with { HeatersFixed = [new FixedItem("sealed-75", 1), new FixedItem("sealed-125", 1)], BenchPipeW = pipeW });
        PlantResult plant = Run(job);
        double left = boiler ? 200_000 * 0.29307107 : 75_000 * 0.29307107 + pipeW;
        Assert.Equal(left, plant.Heat!.Choice.OneOutW, 1);
        Assert.Equal(left, plant.Report.Figures.Single(f => f.Id == "A/plant/heat-one-out").Value, 1);
        Assert.Contains(boiler ? "with the boiler dead" : "with the largest dead", plant.Report.Findings.Single(f => f.Code == "plant/one-heater-out").What, StringComparison.Ordinal);
    }

    // A pad of 14 ft takes 14 × 0.8 = 11.2 gal/min over it, a pump of 11.2 × 6 m / 0.25 (166 W), whatever the air does.
    [Fact]
    public void Water_over_the_pad_pump_and_loss_stand_among_the_figures()
    {
        PlantResult plant = Run(e => e with { WetWallEntry = "pad-6", WetWallWidthM = 14 * 0.3048, WetWallHeightM = 6 * 0.3048 });
        WetWallPlant pad = plant.WetWall!.Choice;
        double Value(string name) => plant.Report.Figures.Single(f => f.Id == "A/plant/" + name).Value;
        Assert.Equal(11.2 * 3.785411784e-3 / 60 * 998, Value("pad-water"), 1e-6);
        Assert.Equal(pad.PumpW, Value("pad-pump"), 0.003 * pad.PumpW); // water of 998 kg/m³ against 1000
        double rho = DesignDay.Duty(TestJobs.OneHouse()).Air.Summer.DensityKgPerM3;
        Assert.Equal(0.09 * 249.08891 * Math.Pow(pad.FaceSpeedMs / (350 * 0.00508), 1.75) * rho / 1.2, Value("pad-loss"), 1e-2);
    }

    [Fact]
    public void Too_little_heat_is_missed_with_what_it_holds()
    {
        PlantResult plant = Run(e => e with { HeatersFixed = [new FixedItem("electric-10", 1)] });
        Answer<HeatPlant>.Missed missed = Assert.IsType<Answer<HeatPlant>.Missed>(plant.Heat);
        Assert.Contains("holds", missed.Limit, StringComparison.Ordinal);
        Assert.Contains(plant.Report.Findings, f => f.Code == "plant/one-heater-out" && f.Severity == Severity.Miss);
    }

    [Fact]
    public void Sized_heaters_come_in_two_or_more_with_reserve()
    {
        PlantResult plant = Run(TestJobs.OneHouse());
        Answer<HeatPlant>.Met met = Assert.IsType<Answer<HeatPlant>.Met>(plant.Heat);
        Assert.True(met.Choice.Heaters.Count >= 2);
        Assert.True(met.Margin >= 0.0999);
        Assert.All(met.Choice.Heaters, h => Assert.True(h.SealedCombustion));
    }

    [Fact]
    public void A_gravity_flue_beside_fans_is_a_danger()
    {
        PlantResult plant = Run(e => e with { SealedCombustion = false });
        Assert.Equal(Severity.Danger, plant.Report.Findings.Single(f => f.Code == "plant/open-combustion").Severity);
        Assert.DoesNotContain(Run(TestJobs.OneHouse()).Report.Findings, f => f.Code == "plant/open-combustion");
    }

    [Fact]
    public void A_three_phase_motor_on_a_single_phase_lot_is_found()
    {
        PlantResult plant = Run(e => e with { ExhaustFixed = [new FixedItem("exhaust-54-three-phase", 2)] });
        Assert.Contains(plant.Report.Findings, f => f.Code == "plant/three-phase" && f.Severity == Severity.Miss);
        Assert.DoesNotContain(Run(TestJobs.OneHouse()).Loads, l => l.ThreePhase);
    }

    [Fact]
    public void Three_thousand_psi_is_cautioned_more_than_one_thousand()
    {
        string What(string entry) => Run(e => e with { Fog = true, FogEntry = entry, FogNozzles = 24 })
            .Report.Findings.Single(f => f.Code == "plant/fog-injection").What;
        Assert.Contains("hospital", What("fog-1000"), StringComparison.Ordinal);
        Assert.Contains("far above", What("fog-3000"), StringComparison.Ordinal);
        Assert.DoesNotContain("far above", What("fog-1000"), StringComparison.Ordinal);
    }

    [Fact]
    public void Fog_of_24_nozzles_by_hand()
    {
        FogPlant fog = Run(e => e with { Fog = true, FogEntry = "fog-1000", FogNozzles = 24 }).Fog!.Choice;
        double gallonsPerS = 24 / 3600.0;
        Assert.Equal(gallonsPerS * 3.785411784 * 0.998, fog.KgPerS, 1e-4 * fog.KgPerS);
        Assert.Equal(24 / 60.0 * 1000 / 1714 / 0.70 * 745.7, fog.PumpW, 0.002 * fog.PumpW);
    }

    [Fact]
    public void A_dirty_screen_takes_air_away()
    {
        PlantResult plant = Run(e => e with { InsectScreen = "thrips", InsectScreenPorosityFraction = 0.3 });
        Assert.Contains("blocked", plant.Report.Findings.Single(f => f.Code == "plant/insect-screen").What, StringComparison.Ordinal);
        Assert.True(plant.Exhaust!.Choice.Wet[^1].StaticPa > Run(TestJobs.OneHouse()).Exhaust!.Choice.Wet[0].StaticPa);
    }

    // The leak by the power law from its value at 1 Pa, the door crack as an orifice: both by hand.
    [Fact]
    public void A_filter_fan_is_throttled_to_the_pressure_asked()
    {
        Job job = DesignDay.With(TestJobs.OneHouse(), e => e with { PositivePressurePa = 5 });
        PressurePlant plant = Run(job).Pressure!;
        double volumeM3 = FormStage.Run(FormInput.From(job)).Building("A").VolumeM3;
        double density = AirState.FromWetBulb(33.3, 23.7, DesignDay.Duty(job).PressurePa).DensityKgPerM3;
        double leaks = volumeM3 * job.Houses[0].AirtightnessPerHour / 3600 * Math.Pow(5, 0.65);
        Assert.Equal(leaks + 0.02 * 0.61 * Math.Sqrt(2 * 5 / density), plant.FlowM3PerS, 1e-4);
        PressurePlant beyond = Run(DesignDay.With(job, e => e with { PositivePressurePa = 400 })).Pressure!;
        Assert.True(beyond.HeldPa < 400);
    }

    // A larger size is taken before a ninth piece; beyond what eight of the largest give, the largest size makes the fewest.
    // Rounding up to whole pieces can give many small ones less frame than few large ones: so every flow is tried.
    [Fact]
    public void Louvers_are_few()
    {
        Job job = TestJobs.OneHouse();
        BuildingForm form = FormStage.Run(FormInput.From(job)).Building("A");
        double largestM = CatalogueReader.Generic.Louvers.Select(l => l.SizeM).Where(m => m <= Math.Min(form.Roof.LeftEaveM, form.Roof.RightEaveM)).Max();
        for (int tenth = 20; tenth <= 250; tenth++)
        {
            Intake intake = Intake.For(PlantInput.From(job, "A"), form, CatalogueReader.Generic, 0.1 * tenth, 1.1);
            Assert.True(
                intake.LouverCount is >= 1 and <= Intake.MostLouvers || intake.Louver.SizeM == largestM,
                $"{intake.LouverCount} × {intake.Louver.Id} at {0.1 * tenth} m³/s");
        }
    }

    [Fact]
    public void A_leaky_house_holds_less_pressure()
    {
        Job tight = DesignDay.With(TestJobs.OneHouse(), e => e with { PositivePressurePa = 5 });
        Job leaky = tight with { Houses = [tight.Houses[0] with { AirtightnessPerHour = 4 }] };
        PressurePlant held = Run(tight).Pressure!;
        Assert.Equal(5, held.HeldPa, 1e-9);
        PressurePlant loose = Run(leaky).Pressure!;
        Assert.True(loose.HeldPa < held.HeldPa || loose.FlowM3PerS > 1.5 * held.FlowM3PerS);
        Assert.Equal(Math.Sqrt(2 * held.HeldPa / (0.7 * AirState.FromWetBulb(33.3, 23.7, DesignDay.Duty(tight).PressurePa).DensityKgPerM3)), held.FailsAtWindMs, 1e-6);
    }

    [Fact]
    public void Desert_air_that_comes_in_dry_is_told_with_what_a_wet_wall_would_do()
    {
        Job job = DesignDay.With(TestJobs.OneHouse(), e => e with { WetWall = false, Fog = false });
        job = job with { Site = job.Site with { Design = job.Site.Design! with { Cooling04C = 43.4, CoincidentWetBulbC = 21.1 } } };
        Finding dry = Run(job).Report.Findings.Single(f => f.Code == "plant/dry-air-unused");
        Assert.Equal(Severity.Miss, dry.Severity);

        // 43.4 − 0.8 × (43.4 − 21.1) = 25.56 °C: the published pad case of the same pair (78 °F).
        Assert.Contains("78 °F", dry.What, StringComparison.Ordinal);
        Assert.DoesNotContain(Run(DesignDay.With(job, e => e with { Fog = true })).Report.Findings, f => f.Code == "plant/dry-air-unused");
    }

    [Fact]
    public void A_house_without_systems_has_none()
    {
        PlantResult plant = Run(e => e with
        {
            Exhaust = false,
            WetWall = false,
            Heaters = false,
            Curtains = 0,
            Circulation = false,
        });
        Assert.Null(plant.Exhaust);
        Assert.Null(plant.WetWall);
        Assert.Null(plant.Heat);
        Assert.Null(plant.Curtain);
        Assert.Null(plant.Circulation);
        Assert.Equal("A/control", Assert.Single(plant.Loads).Id);
    }

    [Fact]
    public void An_entry_that_is_not_there_is_refused() =>
        Assert.Throws<ArgumentException>(() => Run(e => e with { ExhaustFixed = [new FixedItem("exhaust-99", 1)] }));

    [Fact]
    public void The_backup_list_keeps_one_heater_one_fan_circulation_and_the_box()
    {
        string[] kept = [.. Run(TestJobs.OneHouse()).Loads.Where(l => l.Backup).Select(l => l.Label)];
        Assert.Contains(kept, l => l.Contains("exhaust", StringComparison.Ordinal));
        Assert.Contains("Unit heater fan and ignition", kept);
        Assert.Contains("Circulation fans", kept);
        Assert.Contains("Control box, sensors, alarm", kept);
    }

    [Fact]
    public void Every_derived_figure_comes_out_of_its_printed_inputs()
    {
        PlantResult plant = Run(e => e with { Fog = true, PositivePressurePa = 5, BenchPipeW = 13_000, LampW = 4500 });
        int derived = 0;
        foreach (Figure figure in plant.Report.Figures)
        {
            if (figure.Working is Working.Derived d)
            {
                double again = FormulaReader.Evaluate(d.Formula, d.Inputs);
                Assert.Equal(figure.Value, again, 1e-9 * Math.Max(1, Math.Abs(figure.Value)));
                derived++;
            }
        }

        Assert.True(derived > 15);
        Assert.Equal(plant.WetWall!.Choice.Effectiveness, plant.Report.Figures.Single(f => f.Id == "A/plant/pad-effectiveness").Value, 1e-9);
        Assert.Equal(plant.Heat!.Choice.OneOutHoldsC, plant.Report.Figures.Single(f => f.Id == "A/plant/one-out-holds").Value, 1e-9);
    }

    [Fact]
    public void Same_inputs_same_hash() =>
        Assert.Equal(Canonical.Hash(Run(TestJobs.OneHouse())), Canonical.Hash(Run(TestJobs.OneHouse())));

    private static double Interpolate(EqList<FanPoint> points, double staticPa)
    {
        for (int i = 1; i < points.Count; i++)
        {
            if (staticPa <= points[i].StaticPa)
            {
                double share = (staticPa - points[i - 1].StaticPa) / (points[i].StaticPa - points[i - 1].StaticPa);
                return points[i - 1].FlowM3PerS + share * (points[i].FlowM3PerS - points[i - 1].FlowM3PerS);
            }
        }

        throw new InvalidOperationException("Past the tested points.");
    }
}
