using Glazewright.Design.Contracts;
using Glazewright.Design.Duty;
using Glazewright.Design.Form;
using Glazewright.Design.Plant;

namespace Glazewright.Design.Tests.Plant;

/// <summary>The year showed heaters sized without the filter fan's winter air fall short: the asked heat counts it.</summary>
public class FilterFanHeatTests
{
    private static readonly DutyResult Duty = new(
        "A",
        new global::Glazewright.Design.Brief.DesignConditions(-20, -25, 33, 23, 25, new Source.Given("/test")),
        100_000,
        [new LossLine("A/left/cover", FaceName.Left, 100, 3, 300), new LossLine("A/infiltration", FaceName.Floor, 0, 0, 50)],
        350,
        250,
        18,
        350 * 38,
        250 * 38,
        350 * 27,
        0, 0, 0, 0, 0, 0, 0,
        global::Glazewright.Design.Tests.Duty.MadeUpAir.Of,
        StageReport.Empty);

    [Fact]
    public void The_filter_fans_air_is_heated_in_place_of_what_would_leak_in()
    {
        // 0.5 m³/s at −20 °C and 100 kPa: 0.5 · 1.3762 kg/m³ · 1006 J/kgK = 692.2 W/K, less 50 W/K of leaks; 38 K to the night target.
        HeatAsked asked = HeatAsked.Of(Duty, new PressurePlant("filter", 0.5, 5, 400, 3));
        Assert.Equal(642.2, asked.FilterWPerK, 0.5);
        Assert.Equal((350 + asked.FilterWPerK) * 38, asked.NeedW, 1e-6);
        Assert.Equal(250 + asked.FilterWPerK, asked.LossDrawnWPerK, 1e-9);
    }

    [Fact]
    public void Without_one_the_loss_is_the_houses_own()
    {
        HeatAsked asked = HeatAsked.Of(Duty, null);
        Assert.Equal(0, asked.FilterWPerK);
        Assert.Equal(Duty.HeatLossW, asked.NeedW, 1e-9);
    }
}
