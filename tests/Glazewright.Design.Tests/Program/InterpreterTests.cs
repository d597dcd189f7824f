using Glazewright.Design.Contracts;
using Glazewright.Design.Program;

namespace Glazewright.Design.Tests.Program;

public class InterpreterTests
{
    private const int Missing = int.MinValue;

    [Fact]
    public void A_quiet_noon_asks_for_nothing_but_the_air_to_move()
    {
        Bench bench = new Bench(SampleProgram.Document()).Run(600);
        Assert.Equal(10_000, bench["A/circulation"]);
        Assert.Equal(10_000, bench["A/pressure-fan"]);
        foreach (string id in new[] { "A/fan-1", "A/fan-2", "A/fan-3", "A/louver", "A/heater-1", "A/fog", "A/wet-wall-pump", "A/curtain" })
        {
            Assert.Equal(0, bench[id]);
        }
    }

    [Fact]
    public void Heat_brings_the_louver_then_fan_by_fan_then_the_pump_and_each_says_why()
    {
        Bench bench = new Bench(SampleProgram.Document()).Set(Reading.InsideTemperature, 2200 + 250).Run(20);
        Assert.Equal(0, bench["A/fan-1"]);
        bench.Run(900);
        Assert.Equal(10_000, bench["A/louver"]);
        Assert.All(new[] { "A/fan-1", "A/fan-2", "A/fan-3", "A/wet-wall-pump" }, id => Assert.Equal(10_000, bench[id]));
        Assert.Equal(0, bench["A/pressure-fan"]);
        Assert.Equal(0, bench["A/circulation"]);
        Assert.Matches(@"^A/fan-3 on: 2\.1 K above the cooling threshold for 1\d min \(stage 3\)$", bench.Say("A/fan-3"));
        bench.Set(Reading.InsideTemperature, 2200).Run(900);
        Assert.Equal(0, bench["A/fan-1"] + bench["A/wet-wall-pump"] + bench["A/louver"]);
    }

    [Fact]
    public void Without_the_louvers_proof_one_fan_runs_and_with_high_suction_none()
    {
        Bench bench = new Bench(SampleProgram.Document()).Set(Reading.InsideTemperature, 2800).Set(Reading.LouverOpenProof, 0).Run(600);
        Assert.Single(new[] { "A/fan-1", "A/fan-2", "A/fan-3" }, id => bench[id] > 0);
        Assert.Contains(new[] { "A/fan-1", "A/fan-2", "A/fan-3" }, id => bench.Why(id) == ReasonCode.NoLouverProof);
        bench.Set(Reading.StaticPressure, 900).Run(120);
        Assert.Equal(0, bench["A/fan-1"] + bench["A/fan-2"] + bench["A/fan-3"]);
        Assert.Contains("stopped: louver not proved", bench.Say("A/fan-1"));
        bench.Set(Reading.LouverOpenProof, 1).Set(Reading.StaticPressure, 150).Run(1200);
        Assert.Equal(30_000, bench["A/fan-1"] + bench["A/fan-2"] + bench["A/fan-3"]);
    }

    [Fact]
    public void Cold_brings_the_lead_heater_then_the_second_and_the_filter_fan_goes_on()
    {
        Bench bench = new Bench(SampleProgram.Document()).Set(Reading.InsideTemperature, 2200 - 60).Run(60);
        Assert.Equal(10_000, bench["A/heater-1"]);
        Assert.Equal(0, bench["A/heater-2"]);
        bench.Set(Reading.InsideTemperature, 2200 - 200).Run(600);
        Assert.Equal(10_000, bench["A/heater-2"]);
        Assert.StartsWith("A/heater-1 on: 1.5 K below the heating threshold", bench.Say("A/heater-1"));
    }

    [Fact]
    public void A_drying_fan_waits_for_the_heater_to_stop_and_the_heater_wins()
    {
        ProgramDocument document = SampleProgram.Document();
        Bench bench = new Bench(document with { Humidity = document.Humidity with { DryHeatK = 0 } }).Set(Reading.InsideTemperature, 2200 - 100).Set(Reading.InsideHumidity, 850).Run(600);
        Assert.Equal(10_000, bench["A/heater-1"]);
        Assert.Equal(0, bench["A/fan-1"] + bench["A/fan-2"]);
        bench.Set(Reading.InsideTemperature, 2200 + 45).Run(600);
        Assert.Equal(0, bench["A/heater-1"]);
        Assert.Equal(10_000, bench["A/fan-1"] + bench["A/fan-2"]);
        Assert.Contains("drying", bench.Say(bench["A/fan-1"] > 0 ? "A/fan-1" : "A/fan-2"));
        bench.Set(Reading.OutsideTemperature, 2800).Set(Reading.OutsideHumidity, 900).Run(600);
        Assert.Equal(0, bench["A/fan-1"] + bench["A/fan-2"]);
    }

    [Fact]
    public void Fog_pulses_at_fine_steps_and_gives_its_share_at_coarse_ones()
    {
        Bench fine = new Bench(SampleProgram.Document()).Set(Reading.InsideHumidity, 400);
        long on = 0;
        for (int s = 0; s < 600; s++)
        {
            fine.Run(1, 1000);
            on += fine["A/fog"];
        }

        Bench coarse = new Bench(SampleProgram.Document()).Set(Reading.InsideHumidity, 400);
        long share = 0;
        for (int m = 0; m < 10; m++)
        {
            coarse.Run(60, 60_000);
            share += coarse["A/fog"] * 60L;
        }

        Assert.Equal(4_000_000, on);
        Assert.Equal(on, share, tolerance: 700);
        fine.Set(Reading.InsideHumidity, 930).Run(1, 1000);
        Assert.Equal(0, fine["A/fog"]);
        fine.Set(Reading.InsideHumidity, Missing).Run(1, 1000);
        Assert.Equal(0, fine["A/fog"]);
    }

    [Fact]
    public void The_curtain_closes_on_a_cold_night_leaves_a_gap_when_wet_opens_in_steps_and_never_under_snow()
    {
        Bench bench = new Bench(SampleProgram.Document()).Set(Reading.Light, 0).Set(Reading.OutsideTemperature, -500).Set(Reading.InsideHumidity, 600).Run(900);
        Assert.Equal(10_000, bench["A/curtain"]);
        Assert.StartsWith("A/curtain 100 % drawn: drawn for warmth: light 0 W/m², outside -5.0 °C", bench.Say("A/curtain"));
        bench.Set(Reading.InsideHumidity, 800).Run(300);
        Assert.Equal(9_600, bench["A/curtain"]);
        bench.Set(Reading.InsideHumidity, 600).Set(Reading.Light, 200).Run(480);
        Assert.InRange(bench["A/curtain"], 8_000, 9_700);
        Assert.Equal(ReasonCode.CurtainInSteps, bench.Why("A/curtain"));
        bench.Run(3600);
        Assert.Equal(0, bench["A/curtain"]);
        bench.Set(Reading.Light, 0).Set(Reading.Snow, 1).Run(1200);
        Assert.Equal(0, bench["A/curtain"]);
        Assert.Equal(ReasonCode.CurtainForSnow, bench.Why("A/curtain"));
    }

    [Fact]
    public void Targets_follow_sunrise_sunset_and_ramps()
    {
        var bench = new Bench(SampleProgram.Document());
        foreach ((int minute, int centiC) in new[] { (0, 1700), (359, 1700), (390, 1950), (420, 2200), (1079, 2200), (1110, 1950), (1140, 1700), (1439, 1700) })
        {
            bench.Set(Reading.TimeOfDay, minute * 60_000).Run(1, 1000);
            Assert.Equal(centiC, bench.Program.TargetOf(bench.State).TemperatureCentiC);
        }
    }

    [Fact]
    public void In_cold_air_cooling_waits_longer_keeps_to_its_first_stage_and_puts_no_water_on_the_pad()
    {
        Bench mild = new Bench(SampleProgram.Document()).Set(Reading.InsideTemperature, 2300).Run(900);
        Assert.True(mild["A/fan-1"] + mild["A/fan-2"] > 0);
        Bench cold = new Bench(SampleProgram.Document()).Set(Reading.OutsideTemperature, -1000).Set(Reading.InsideTemperature, 2300).Run(900);
        Assert.Equal(0, cold["A/fan-1"] + cold["A/fan-2"]);
        cold.Set(Reading.InsideTemperature, 2800).Run(1800);
        Assert.Equal(10_000, cold["A/fan-1"] + cold["A/fan-2"] + cold["A/fan-3"]);
        Bench wet = new Bench(SampleProgram.Document()).Set(Reading.InsideTemperature, 2800).Set(Reading.OutsideTemperature, 1800).Run(1800);
        Assert.Equal(10_000, wet["A/wet-wall-pump"]);
        wet.Set(Reading.OutsideTemperature, 1400).Run(5);
        Assert.Equal(0, wet["A/wet-wall-pump"]);
        Assert.Equal("A/wet-wall-pump off: no water on the wet wall: outside 14.0 °C, limit 15.0 °C", wet.Say("A/wet-wall-pump"));
    }

    [Fact]
    public void From_one_period_to_the_next_the_target_goes_over_in_two_hours()
    {
        var cool = SampleProgram.Herbs with { Id = "cool", FromWeek = 20, ToWeek = 52, Night = new Glazewright.Design.Brief.ClimateTarget(7, 75), Day = new Glazewright.Design.Brief.ClimateTarget(9, 75) };
        var bench = new Bench(ProgramStage.Run(SampleProgram.Input(SampleProgram.Herbs with { ToWeek = 19 }, cool), SampleProgram.Plant()));
        bench.Set(Reading.DayOfYear, 133).Set(Reading.TimeOfDay, 86_390_000).Run(5);
        Assert.Equal(1700, bench.Program.TargetOf(bench.State).TemperatureCentiC);
        bench.Set(Reading.DayOfYear, 134).Set(Reading.TimeOfDay, 0).Run(3600);
        Assert.Equal(1200, bench.Program.TargetOf(bench.State).TemperatureCentiC, tolerance: 5);
        bench.Run(3600);
        Assert.Equal(700, bench.Program.TargetOf(bench.State).TemperatureCentiC, tolerance: 5);
    }

    [Fact]
    public void Equal_fans_take_turns()
    {
        Bench bench = new Bench(SampleProgram.Document());
        var starts = new Dictionary<string, int> { ["A/fan-1"] = 0, ["A/fan-2"] = 0, ["A/fan-3"] = 0 };
        for (int k = 0; k < 10; k++)
        {
            bench.Set(Reading.InsideTemperature, 2200 + 75).Run(600);
            foreach (string id in starts.Keys)
            {
                starts[id] += bench[id] > 0 ? 1 : 0;
            }

            bench.Set(Reading.InsideTemperature, 2200).Run(600);
        }

        Assert.Equal(5, starts["A/fan-1"]);
        Assert.Equal(5, starts["A/fan-2"]);
        Assert.Equal(0, starts["A/fan-3"]);
    }

    [Fact]
    public void Without_a_sensor_the_upper_one_serves_then_it_goes_blind_on_the_safe_side_and_sounds()
    {
        Bench bench = new Bench(SampleProgram.Document()).Set(Reading.InsideTemperature, Missing).Set(Reading.UpperTemperature, 1500).Run(300);
        Assert.Equal(10_000, bench["A/heater-1"]);
        Assert.True(bench.Program.AlarmIsOn(bench.State, bench.Program.AlarmIds.Count - CompiledProgram.OwnAlarms));
        bench.Set(Reading.UpperTemperature, 32_000).Set(Reading.OutsideTemperature, -800).Set(Reading.Light, 0).Run(900);
        Assert.Equal(10_000, bench["A/heater-1"]);
        Assert.Equal(ReasonCode.Blind, bench.Why("A/heater-1"));
        bench.Set(Reading.OutsideTemperature, 3000).Set(Reading.Light, 700).Run(900);
        Assert.Equal(0, bench["A/heater-1"]);
        Assert.True(bench["A/fan-1"] + bench["A/fan-2"] > 0);
    }

    [Fact]
    public void A_stuck_temperature_sounds_after_half_a_day_and_a_moving_one_does_not()
    {
        Bench stuck = new Bench(SampleProgram.Document()).Run(13 * 3600, 60_000);
        Assert.True(stuck.Program.AlarmIsOn(stuck.State, stuck.Program.AlarmIds.Count - CompiledProgram.OwnAlarms + 1));
        var moving = new Bench(SampleProgram.Document());
        for (int h = 0; h < 30; h++)
        {
            moving.Set(Reading.InsideTemperature, 2200 + h % 2).Run(3600, 60_000);
        }

        Assert.False(moving.Program.AlarmIsOn(moving.State, moving.Program.AlarmIds.Count - CompiledProgram.OwnAlarms + 1));
    }

    [Fact]
    public void Alarms_wait_out_their_delay()
    {
        Bench bench = new Bench(SampleProgram.Document()).Set(Reading.InsideTemperature, 500).Run(540);
        Assert.False(bench.Program.AlarmIsOn(bench.State, 0));
        bench.Run(120);
        Assert.Equal("too-cold", bench.Program.AlarmIds[0]);
        Assert.True(bench.Program.AlarmIsOn(bench.State, 0));
    }

    [Fact]
    public void The_clock_goes_on_without_a_clock_reading()
    {
        Bench bench = new Bench(SampleProgram.Document()).Set(Reading.TimeOfDay, 17 * 3_600_000).Run(5);
        bench.Set(Reading.TimeOfDay, Missing).Set(Reading.DayOfYear, Missing).Run(3 * 3600, 60_000);
        Assert.Equal(1700, bench.Program.TargetOf(bench.State).TemperatureCentiC);
    }

    [Fact]
    public void After_a_power_cut_everything_starts_rested_and_one_by_one()
    {
        Bench bench = new Bench(SampleProgram.Document()).Set(Reading.InsideTemperature, 1500).Run(600);
        var before = bench.State.ToArray();
        bench.Program.Restart(before, bench.State);
        bench.Run(30, 1000);
        Assert.Equal(0, bench["A/heater-1"]);
        Assert.Equal(ReasonCode.LeastTimeOff, bench.Why("A/heater-1"));
        bench.Run(900, 1000);
        Assert.Equal(10_000, bench["A/heater-1"]);
    }

    [Fact]
    public void A_hand_is_obeyed_within_the_interlocks()
    {
        Bench bench = new Bench(SampleProgram.Document()).Run(300);
        bench.Program.SetHand(bench.State, bench.Index("A/wet-wall-pump"), 10_000);
        bench.Run(600);
        Assert.Equal(0, bench["A/wet-wall-pump"]);
        Assert.Equal(ReasonCode.Needs, bench.Why("A/wet-wall-pump"));
        bench.Program.SetHand(bench.State, bench.Index("A/louver"), 10_000);
        bench.Program.SetHand(bench.State, bench.Index("A/fan-2"), 10_000);
        bench.Run(600);
        Assert.Equal(10_000, bench["A/wet-wall-pump"]);
        Assert.Equal(ReasonCode.Hand, bench.Why("A/fan-2"));
    }

    [Fact]
    public void Apart_and_in_place_give_the_same_bits_and_a_step_allocates_nothing()
    {
        CompiledProgram program = SampleProgram.Ready(SampleProgram.Document(true, true));
        var apart = new int[program.StateLength];
        var next = new int[program.StateLength];
        var place = new int[program.StateLength];
        var first = new Command[program.Actuators.Count];
        var second = new Command[program.Actuators.Count];
        program.Rest(apart);
        program.Rest(place);
        int[] r = SampleProgram.Readings();
        // A step that allocates does so in every round; the runtime, recompiling a hot loop, may leave a few bytes in one.
        long least = long.MaxValue;
        long before = 0;
        for (int m = 0; m < 20_000; m++)
        {
            r[0] = 1500 + m * 37 % 1500;
            r[1] = 300 + m * 13 % 700;
            r[(int)Reading.TimeOfDay] = m % 1440 * 60_000;
            if (m % 2000 == 0)
            {
                before = GC.GetAllocatedBytesForCurrentThread();
            }

            ProgramInterpreter.Step(program, apart, r, 60_000, next, first);
            (apart, next) = (next, apart);
            ProgramInterpreter.Step(program, place, r, 60_000, place, second);
            if (m % 2000 == 1999)
            {
                least = Math.Min(least, GC.GetAllocatedBytesForCurrentThread() - before);
            }

            if (m < 1000)
            {
                Assert.Equal(first, second);
            }
        }

        Assert.Equal(0, least);
        Assert.True(apart.AsSpan().SequenceEqual(place));
    }

    [Fact]
    public void Short_spans_are_refused()
    {
        CompiledProgram program = SampleProgram.Ready(SampleProgram.Document());
        Assert.Throws<ArgumentException>(() => ProgramInterpreter.Step(program, new int[3], SampleProgram.Readings(), 1000, new int[3], new Command[20]));
        Assert.Throws<ArgumentException>(() => ProgramInterpreter.Step(program, new int[999], new int[2], 1000, new int[999], new Command[20]));
    }
}
