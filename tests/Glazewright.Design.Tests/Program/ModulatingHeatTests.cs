using CsCheck;
using Glazewright.Design.Brief;
using Glazewright.Design.Catalogues;
using Glazewright.Design.Contracts;
using Glazewright.Design.Plant;
using Glazewright.Design.Program;

namespace Glazewright.Design.Tests.Program;

/// <summary>Heaters that burn at part of their fire: what the program tells them.</summary>
public class ModulatingHeatTests
{
    private static readonly PartFire Modulating = new(0.25, 0.82, false), LowHigh = new(0.5, 0.8, true);

    private static ProgramDocument Of(PartFire part)
    {
        PlantResult plant = SampleProgram.Plant();
        HeatPlant heat = plant.Heat!.Choice;
        return ProgramStage.Run(SampleProgram.Input(), plant with
        {
            Heat = new Answer<HeatPlant>.Met(heat with { Heaters = heat.Heaters.Select(h => h with { Part = part }).ToEqList() }, 0),
        });
    }

    // Midnight; the threshold lies 0.5 K below the night's 17 °C.
    private static Bench Night(ProgramDocument d, int centiC) =>
        new Bench(d).Set(Reading.TimeOfDay, 0).Set(Reading.OutsideTemperature, 0).Set(Reading.Light, 0).Set(Reading.InsideTemperature, centiC);

    [Fact]
    public void It_lights_at_its_least_fire_and_burns_more_the_colder_it_is()
    {
        ProgramDocument d = Of(Modulating);
        Bench just = Night(d, 1630).Run(5), colder = Night(d, 1530).Run(5), cold = Night(d, 1400).Run(5);
        Assert.InRange(just["A/heater-1"], 2500, 4000);
        Assert.InRange(colder["A/heater-1"], just["A/heater-1"] + 2000, 9999);
        Assert.Equal(10_000, cold["A/heater-1"]);
        Assert.Equal(0, just["A/heater-2"]);
        Assert.InRange(colder["A/heater-2"], 2500, 9999);
        Assert.Equal(2500, Night(d, 1649).Run(5)["A/heater-1"]);
        Assert.Contains("on 3", just.Say("A/heater-1"), StringComparison.Ordinal);
    }

    // By hand: 0.65 K below where it is held, over a band of 2 K, is 32.5 %, and in 15 min of that as much again.
    [Fact]
    public void A_distance_that_stays_adds_as_much_again_in_the_reset_time()
    {
        Bench b = Night(Of(Modulating), 1630).Run(5);
        int first = b["A/heater-1"];
        Assert.Equal(3250, first, 30.0);
        b.Run(900);
        Assert.Equal(2 * first, b["A/heater-1"], 0.05 * 10_000);
        // Held where it should be it stays as it is; above that it comes down to its least and then lets go.
        b.Set(Reading.InsideTemperature, 1695).Run(600);
        int held = b["A/heater-1"];
        Assert.Equal(held, b.Run(600)["A/heater-1"]);
        b.Set(Reading.InsideTemperature, 1725).Run(3600);
        Assert.Equal(2500, b["A/heater-1"]);
        Assert.Equal(0, b.Set(Reading.InsideTemperature, 1750).Run(5)["A/heater-1"]);
        // Lit anew it begins at the proportion again.
        Assert.Equal(first, b.Run(300).Set(Reading.InsideTemperature, 1630).Run(5)["A/heater-1"], 30.0);
    }

    [Fact]
    public void Small_changes_are_left_alone()
    {
        Bench b = Night(Of(Modulating), 1600).Run(5);
        int before = b["A/heater-1"];
        Assert.Equal(before, b.Set(Reading.InsideTemperature, 1605).Run(5)["A/heater-1"]);
        Assert.True(b.Set(Reading.InsideTemperature, 1620).Run(5)["A/heater-1"] < before);
    }

    [Fact]
    public void Kept_on_by_its_least_time_it_burns_at_its_least_fire()
    {
        Bench b = Night(Of(Modulating), 1400).Run(5);
        Assert.Equal(10_000, b["A/heater-1"]);
        b.Set(Reading.InsideTemperature, 1900).Run(5);
        Assert.Equal((2500, ReasonCode.LeastTimeOn), (b["A/heater-1"], b.Why("A/heater-1")));
        Assert.Equal(0, b.Run(300)["A/heater-1"]);
    }

    [Fact]
    public void The_hand_too_gets_no_less_than_the_least_fire()
    {
        Bench b = Night(Of(Modulating), 1900);
        b.Program.SetHand(b.State, b.Index("A/heater-1"), 1000);
        Assert.Equal(2500, b.Run(5)["A/heater-1"]);
        b.Program.SetHand(b.State, b.Index("A/heater-1"), 6000);
        Assert.Equal(6000, b.Run(5)["A/heater-1"]);
    }

    [Fact]
    public void All_low_fires_come_before_the_first_high_one()
    {
        ProgramDocument d = Of(LowHigh);
        Assert.Equal(["A/heater-1", "A/heater-2", "A/heater-1", "A/heater-2"], d.Heating.Select(s => s.Settings[0].Actuator));
        Assert.Equal([0.5, 0.5, 1, 1], d.Heating.Select(s => s.Settings[0].LevelFraction));
        Assert.All(d.Heating, s => Assert.Null(s.Modulates));
        Assert.Equal((5000, 0), (Night(d, 1640).Run(5)["A/heater-1"], Night(d, 1640).Run(5)["A/heater-2"]));
        Assert.Equal((5000, 5000), (Night(d, 1580).Run(5)["A/heater-1"], Night(d, 1580).Run(5)["A/heater-2"]));
        Assert.Equal((10_000, 5000), (Night(d, 1520).Run(5)["A/heater-1"], Night(d, 1520).Run(5)["A/heater-2"]));
        Assert.Equal((10_000, 10_000), (Night(d, 1400).Run(5)["A/heater-1"], Night(d, 1400).Run(5)["A/heater-2"]));
    }

    [Fact]
    public void Under_any_readings_it_is_off_or_burns_from_its_least_fire_up()
    {
        foreach (PartFire part in new[] { Modulating, LowHigh })
        {
            ProgramDocument d = Of(part);
            int least = (int)(10_000 * part.LeastFraction);
            Gen.Select(Gen.Int[-1000, 3500], Gen.Int[0, 3].Select(i => new[] { 1000, 5000, 60_000, 600_000 }[i]), Gen.Int[1, 20], Gen.Int[-1, 10_000]).Array[1, 40].Sample(run =>
            {
                Bench b = Night(d, 1600);
                foreach ((int inside, int dtMs, int steps, int hand) in run)
                {
                    b.Program.SetHand(b.State, b.Index("A/heater-2"), hand);
                    for (int k = 0; k < steps; k++)
                    {
                        b.Set(Reading.InsideTemperature, inside).Run(dtMs / 1000, dtMs);
                        Assert.True(b["A/heater-1"] == 0 || b["A/heater-1"] >= least, $"{b["A/heater-1"]}");
                        Assert.True(b["A/heater-2"] == 0 || b["A/heater-2"] >= least, $"{b["A/heater-2"]}");
                    }
                }
            });
        }
    }

    [Fact]
    public void It_stands_in_the_file_the_narrative_and_what_a_job_may_change()
    {
        ProgramDocument d = Of(Modulating);
        string text = ProgramJson.Write(d);
        Assert.Contains("\"modulates\"", text, StringComparison.Ordinal);
        Assert.Equal(d with { Report = StageReport.Empty }, Assert.IsType<ProgramReading.Read>(ProgramJson.Read(text)).Document with { Report = StageReport.Empty });
        string told = string.Join("\n", ControlNarrative.Of(d, UnitSystem.Metric).SelectMany(p => p.Lines));
        Assert.Contains("from least fire up: all of it over 2.0 K below", told, StringComparison.Ordinal);
        Assert.Contains("never below 25 % while it burns", told, StringComparison.Ordinal);
        Assert.Equal(2, ProgramParts.Of("heating").Find(d, "heater-1", "band"));
        Assert.Null(ProgramParts.Of("heating").Find(SampleProgram.Document(), "heater-1", "band"));
        // Programs of on-off heaters are written as before.
        Assert.DoesNotContain("modulates", ProgramJson.Write(SampleProgram.Document()), StringComparison.Ordinal);
        Assert.DoesNotContain("leastFraction", ProgramJson.Write(SampleProgram.Document()), StringComparison.Ordinal);
    }

    [Fact]
    public void What_cannot_be_is_a_fault_at_its_place()
    {
        ProgramDocument d = Of(Modulating), plain = SampleProgram.Document();
        void Told(ProgramDocument program, string pointer) =>
            Assert.Contains(Assert.IsType<ProgramCompilation.Faulty>(ProgramCompiler.Compile(program)).Faults, f => f.Pointer == pointer);
        ControlStage first = d.Heating[0];
        Told(plain with { Heating = [plain.Heating[0] with { Modulates = new(2, 900, 0.05) }, .. plain.Heating.Skip(1)] }, "/heating/0/modulates");
        Told(d with { Cooling = [d.Cooling[0] with { Modulates = new(2, 900, 0.05) }, .. d.Cooling.Skip(1)] }, "/cooling/0/modulates");
        Told(d with { Heating = [first with { Modulates = new(0.1, 900, 0.05) }] }, "/heating/0/modulates/bandK");
        Told(d with { Heating = [first with { Modulates = new(2, 5, 0.05) }] }, "/heating/0/modulates/resetS");
        Told(d with { Heating = [first with { Modulates = new(2, 900, 0.9) }] }, "/heating/0/modulates/deadbandFraction");
        Told(d with { Actuators = [.. d.Actuators.Select(a => a.Kind == ActuatorKind.Fan ? a with { LeastFraction = 0.3 } : a)] }, $"/actuators/{Array.FindIndex([.. d.Actuators], a => a.Kind == ActuatorKind.Fan)}/leastFraction");
        Told(d with { Actuators = [.. d.Actuators.Select(a => a.Kind == ActuatorKind.Heater ? a with { LeastFraction = 0 } : a)] }, $"/actuators/{Array.FindIndex([.. d.Actuators], a => a.Kind == ActuatorKind.Heater)}/leastFraction");
    }
}
