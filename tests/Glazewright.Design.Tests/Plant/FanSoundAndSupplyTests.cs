using Glazewright.Design.Brief;
using Glazewright.Design.Catalogues;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.Plant;
using Glazewright.Design.Tests.Brief;
using Glazewright.Design.Tests.Duty;

namespace Glazewright.Design.Tests.Plant;

public class FanSoundAndSupplyTests
{
    private static PlantResult Run(Job job) => PlantStage.Run(
        PlantInput.From(job, "A"), FormStage.Run(FormInput.From(job)).Building("A"), DesignDay.Duty(job), CatalogueReader.Generic);

    // Four equal fans are 6 dB over one; at ten times the distance 20 less: 14 below one fan beside it.
    [Fact]
    public void Four_fans_sound_14_dB_below_one_at_ten_times_the_distance()
    {
        PlantResult plant = Run(DesignDay.With(TestJobs.OneHouse(), e => e with { ExhaustFixed = [new FixedItem("exhaust-36", 4)] }));
        double Of(string id) => plant.Report.Figures.Single(f => f.Id == "A/plant/" + id).Value;
        Assert.Equal(CatalogueReader.Generic.Fans.Single(f => f.Id == "exhaust-36").SoundDb, Of("fan-sound"));
        Assert.Equal(Of("fan-sound") + 6.02 - 20, Of("fan-sound-outside"), 0.01);
        Assert.Contains("dB(A)", plant.Report.Findings.Single(f => f.Code == "plant/fan-sound").What, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_fans_nothing_is_told_of_their_sound() =>
        Assert.DoesNotContain(Run(DesignDay.With(TestJobs.OneHouse(), e => e with { Exhaust = false, WetWall = false })).Report.Findings, f => f.Code == "plant/fan-sound");

    // IEC 60038: 230/400 V. The same watts draw half the current of 115 V.
    [Fact]
    public void A_lot_of_230_and_400_V_has_no_motor_of_another_voltage()
    {
        Job us = DesignDay.With(TestJobs.OneHouse(), e => e with
        {
            Fog = true,
            LampW = 4000,
            PositivePressurePa = 3,
            OscillatingFans = 2,
            BenchPipeW = 10_000,
            UpperFans = new FixedItem("", 0),
            DehumidifierW = 2000,
            RoofVentFraction = 0.1,
        });
        Job there = us with { Utilities = us.Utilities with { Phase = Phase.Three, ServiceV = 400 }, Units = UnitSystem.Metric };
        PlantResult metric = Run(there), here = Run(us);
        Assert.All(metric.Loads, l => Assert.Equal(l.ThreePhase ? 400 : 230, l.VoltageV));
        Assert.Contains(here.Loads, l => l.VoltageV == 115);
        ElectricLoad Control(PlantResult p) => p.Loads.Single(l => l.Id == "A/control");
        Assert.Equal(0.5, Control(metric).FullLoadA / Control(here).FullLoadA, 1e-9);
        Job oneLeg = us with { Utilities = us.Utilities with { Phase = Phase.Single, ServiceV = 230 }, Units = UnitSystem.Metric };
        Assert.All(Run(oneLeg).Loads, l => Assert.Equal(230, l.VoltageV));
    }
}
