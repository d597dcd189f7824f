using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.GainTables;
using Glazewright.Design.Plant;
using Glazewright.Design.Program;
using Glazewright.Design.Rehearsals;
using Glazewright.Design.Year;

namespace Glazewright.Design.Tests.Year;

/// <summary>A year with a second curtain that moves by itself.</summary>
public class SecondCurtainYearTests
{
    private static readonly CurtainPlant Second = YearScenes.Plant.Curtain! with { HeightM = 2.0, Purpose = CurtainPurpose.Shade, SolarTransmittanceFraction = 0.4, OpennessFraction = 0.1 };
    private static readonly PlantResult Plant = YearScenes.Plant with { SecondCurtain = Second };

    // Sun under the second as under the first, under both half of that: fixed shares, good enough for books and columns.
    private static readonly GainTable Gains = YearScenes.Gains with { SecondDrawn = YearScenes.Gains.CurtainDrawn, BothDrawn = Half(YearScenes.Gains.CurtainDrawn) };

    private static readonly ProgramDocument Program = YearScenes.Program with
    {
        Actuators = [.. YearScenes.Program.Actuators, new Actuator("A/second-curtain", ActuatorKind.SecondCurtain, 0, 0, 240, "")],
        SecondCurtain = new CurtainControl("A/second-curtain", 15, 5, 600, 0.5, 0.95, 0.04, 0.05, 120, true),
    };

    private static readonly Lazy<YearResult> Two = new(() => Run(Plant, Program));

    private static YearResult Run(PlantResult plant, ProgramDocument program) =>
        YearStage.Run(YearScenes.Input, YearScenes.Form, Gains, YearScenes.Duty, plant, program, YearScenes.Weather, null, TestContext.Current.CancellationToken);

    private static GainSet Half(GainSet set)
    {
        static GainRow Less(GainRow r) => r with { CropPlaneShare = r.CropPlaneShare / 2, EscapeShare = r.EscapeShare + r.CropPlaneShare / 2 };
        return new GainSet(set.Beam.Select(Less).ToEqList(), Less(set.Sky), Less(set.Horizon), Less(set.Ground));
    }

    [Fact]
    public void Books_close_with_both_moving()
    {
        Assert.InRange(Two.Value.EnergyClosureFraction, 0, 1e-6);
        Assert.InRange(Two.Value.WaterClosureFraction, 0, 1e-6);
    }

    [Fact]
    public void It_saves_night_heat_and_shows_in_columns_and_counters()
    {
        // For warmth alone: shade on bright days of cold weeks takes from the sun what the night would have had of it.
        ProgramDocument warmth = Program with { SecondCurtain = Program.SecondCurtain! with { ShadeFraction = 0 } };
        ProgramDocument none = YearScenes.Program with { Curtain = YearScenes.Program.Curtain! with { DrawBelowOutsideC = -90 } };
        YearResult one = YearScenes.Run(), two = Two.Value, open = YearScenes.Run(none);
        double saved = one.HeatJ - Run(Plant, warmth).HeatJ;
        Assert.InRange(saved / one.HeatJ, 0.01, 0.2); // three sheets and a tight house: the first saves 8 %
        Assert.InRange(saved, 0.1 * (open.HeatJ - one.HeatJ), 0.8 * (open.HeatJ - one.HeatJ));
        Assert.Null(one.Hours.SecondCurtainFraction);
        EqList<float> drawn = two.Hours.SecondCurtainFraction!;
        Assert.Equal(8760, drawn.Count);
        Assert.All(drawn, f => Assert.InRange(f, 0, 1));
        Assert.True(drawn.Take(31 * 24).Count(f => f > 0.9) > 200); // January's nights
        Assert.True(Enumerable.Range(0, 24).Max(h => drawn[(190 * 24) + h]) > 0.9); // a day in July
        MotorCounters motor = two.Motors.Single(m => m.Actuator == "A/second-curtain");
        Assert.InRange(motor.Starts, 300, 30_000);
        Assert.InRange(motor.RuntimeH, 20, 700);
    }

    [Fact]
    public void Never_drawn_it_is_not_there()
    {
        // But for the heat the parked cloth holds itself, 300 J/m²K: a part in ten thousand of the year.
        ProgramDocument never = Program with { SecondCurtain = Program.SecondCurtain! with { DrawBelowOutsideC = -90, ShadeFraction = 0 } };
        Assert.Equal(YearScenes.Run().HeatJ, Run(Plant, never).HeatJ, 2e-3 * YearScenes.Run().HeatJ);
    }

    [Fact]
    public void Two_cloths_of_one_kind_driven_alike_are_two_layers()
    {
        PlantResult alike = YearScenes.Plant with { SecondCurtain = YearScenes.Plant.Curtain };
        ProgramDocument both = Program with
        {
            Actuators = [.. YearScenes.Program.Actuators, new Actuator("A/second-curtain", ActuatorKind.SecondCurtain, 0, 0, 180, "")],
            SecondCurtain = YearScenes.Program.Curtain! with { Actuator = "A/second-curtain" },
        };
        PlantResult layers = YearScenes.Plant with { Curtain = YearScenes.Plant.Curtain! with { Layers = 2 } };
        YearResult a = YearStage.Run(YearScenes.Input, YearScenes.Form, Gains, YearScenes.Duty, alike, both, YearScenes.Weather, null, TestContext.Current.CancellationToken);
        YearResult b = YearStage.Run(
            YearScenes.Input, YearScenes.Form, Gains with { CurtainDrawn = Gains.BothDrawn!, SecondDrawn = null, BothDrawn = null }, YearScenes.Duty, layers, YearScenes.Program, YearScenes.Weather, null, TestContext.Current.CancellationToken);

        // One opens after the other, twenty minutes later in a morning: no more difference than that.
        Assert.Equal(b.HeatJ, a.HeatJ, 0.01 * b.HeatJ);
        Assert.Equal(b.Held.HeldTemperatureH, a.Held.HeldTemperatureH, 0.01 * b.Held.TotalH);
    }

    [Fact]
    public void A_day_runs_again_bit_for_bit()
    {
        int day = 12;
        DayReplay replay = DayReplay.Of(YearScenes.Input, YearScenes.Form, Gains, Plant, Program, YearScenes.Weather, Two.Value, day);
        for (int h = 0; h < 24; h++)
        {
            double sum = replay.Minutes.Skip(60 * h).Take(60).Sum(m => m.SecondCurtainFraction);
            Assert.Equal(Two.Value.Hours.SecondCurtainFraction![(day * 24) + h], (float)(sum / 60));
            Assert.Equal(Two.Value.Hours.InsideC[(day * 24) + h], (float)(replay.Minutes.Skip(60 * h).Take(60).Sum(m => m.InsideC) / 60), 1e-5f);
        }

        Assert.Contains(replay.Spells, s => replay.Actuators[s.Actuator] == "A/second-curtain" && s.Because.Contains("drawn for warmth"));
    }

    [Fact]
    public void Each_can_be_stuck_and_with_the_other_still_drawn_the_house_stays_warmer()
    {
        RehearsalRun Of(string id, PlantResult plant, ProgramDocument program, GainTable gains, YearResult year) =>
            RehearsalStage.ByTheMinute(id, Supposed.AsInTheFile, YearScenes.Input, YearScenes.Form, gains, plant, program, YearScenes.Weather, year);
        double first = Of("curtain-stuck", Plant, Program, Gains, Two.Value).WorstC, second = Of("second-curtain-stuck", Plant, Program, Gains, Two.Value).WorstC;
        double alone = Of("curtain-stuck", YearScenes.Plant, YearScenes.Program, YearScenes.Gains, YearScenes.Run()).WorstC;
        // Heaters hold both near the same: which of the two is missed more is lost in how they switch.
        Assert.True(first >= alone - 0.1, $"{first} {alone}");
        Assert.True(second >= alone - 0.1, $"{second} {alone}");
    }
}
