using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Program;

namespace Glazewright.Design.Tests.Program;

public class ProgramFaultTests
{
    private static readonly ProgramDocument s_sound = SampleProgram.Document();

    private static EqList<Fault> Faults(ProgramDocument document) =>
        Assert.IsType<ProgramCompilation.Faulty>(ProgramCompiler.Compile(document)).Faults;

    [Fact]
    public void The_default_program_has_none_with_any_plant()
    {
        foreach (bool wetWall in new[] { true, false })
        {
            foreach (bool vents in new[] { true, false })
            {
                Assert.IsType<ProgramCompilation.Ready>(ProgramCompiler.Compile(SampleProgram.Document(wetWall, vents)));
            }
        }

        var bare = new Glazewright.Design.Plant.PlantResult("B", null, null, null, null, null, null, null, null, 0, 0, [], StageReport.Empty);
        Assert.IsType<ProgramCompilation.Ready>(ProgramCompiler.Compile(ProgramStage.Run(SampleProgram.Input() with { House = "B" }, bare)));
    }

    [Fact]
    public void A_gap_or_an_overlap_in_the_year_is_named_by_its_day()
    {
        ProgramDocument gap = s_sound with { Periods = [s_sound.Periods[0] with { FromDay = 10, ToDay = 300 }] };
        Fault fault = Assert.Single(Faults(gap));
        Assert.Equal("/periods", fault.Pointer);
        Assert.Contains("day 1 ", fault.Wrong);
        ProgramDocument twice = s_sound with { Periods = [s_sound.Periods[0], s_sound.Periods[0] with { FromDay = 200, ToDay = 210 }], Lamps = null };
        Assert.Contains("day 200", Assert.Single(Faults(twice)).Wrong);
    }

    [Fact]
    public void More_alarms_than_the_box_can_hold_are_a_fault()
    {
        Alarm one = s_sound.Alarms[0];
        EqList<Alarm> many = Enumerable.Range(0, CompiledProgram.MostAlarms + 1).Select(i => one with { Id = $"alarm-{i}" }).ToEqList();
        Assert.Equal("/alarms", Assert.Single(Faults(s_sound with { Alarms = many })).Pointer);
        Assert.IsType<ProgramCompilation.Ready>(ProgramCompiler.Compile(s_sound with { Alarms = many.Skip(1).ToEqList() }));
    }

    [Fact]
    public void A_day_without_night_is_a_gap()
    {
        ProgramPeriod p = s_sound.Periods[0];
        Fault fault = Assert.Single(Faults(s_sound with { Periods = [p with { DayEnds = p.DayStarts }] }));
        Assert.Equal("/periods/0/dayEnds", fault.Pointer);
    }

    [Fact]
    public void Crossing_setpoints_are_named_with_their_distances()
    {
        ProgramPeriod p = s_sound.Periods[0] with { CoolAboveK = 0, HeatBelowK = 0 };
        Fault fault = Assert.Single(Faults(s_sound with { Periods = [p] }));
        Assert.Equal((FaultKind.Contradiction, "/periods/0"), (fault.Kind, fault.Pointer));
        Assert.Contains("cross", fault.Wrong);
    }

    [Fact]
    public void A_stage_naming_what_the_house_lacks_is_told_what_there_is()
    {
        ControlStage stage = s_sound.Cooling[0];
        Fault fault = Assert.Single(Faults(s_sound with { Cooling = [stage with { Settings = [new ActuatorSetting("A/fan-9", 1)] }] }));
        Assert.Equal((FaultKind.NotFound, "/cooling/0/settings/0/actuator"), (fault.Kind, fault.Pointer));
        Assert.Contains("A/fan-3", fault.Right);
    }

    [Fact]
    public void A_ring_of_interlocks_is_walked()
    {
        ProgramDocument ring = s_sound with
        {
            Interlocks =
            [
                .. s_sound.Interlocks,
                new Interlock.OnlyWith("A/louver", "A/wet-wall-pump"),
            ],
        };
        Fault fault = Assert.Single(Faults(ring));
        Assert.Equal("/interlocks", fault.Pointer);
        Assert.Contains("→", fault.Wrong);
        Assert.Contains("A/wet-wall-pump", fault.Wrong);
    }

    [Fact]
    public void All_faults_come_at_once()
    {
        ProgramDocument bad = s_sound with
        {
            Actuators = [s_sound.Actuators[0], s_sound.Actuators[0], .. s_sound.Actuators.Skip(1)],
            Heating = [s_sound.Heating[0] with { OffAtK = 5 }],
            Humidity = s_sound.Humidity with { FogCeilingPercent = double.NaN },
            Alarms = [new Alarm("x", Reading.Wind, 5, 3, 0), new Alarm("x", Reading.Wind, null, null, -1)],
            Curtain = s_sound.Curtain! with { Actuator = "A/fan-1" },
            Lamps = s_sound.Lamps! with { HoursByPeriod = [] },
        };
        EqList<Fault> faults = Faults(bad);
        foreach (string pointer in new[] { "/actuators/1/id", "/heating/0/offAtK", "/humidity/fogCeilingPercent", "/alarms/0", "/alarms/1/id", "/alarms/1", "/alarms/1/delayS", "/curtain/actuator", "/lamps/hoursByPeriod" })
        {
            Assert.Contains(faults, f => f.Pointer == pointer);
        }
    }

    [Fact]
    public void Crop_weeks_become_days_without_gap_and_the_holes_are_parked()
    {
        CropPeriod herbs = SampleProgram.Herbs;
        ProgramDocument d = ProgramStage.Run(
            SampleProgram.Input(herbs with { Id = "winter", FromWeek = 50, ToWeek = 10 }, herbs with { Id = "spring", FromWeek = 12, ToWeek = 30 }),
            SampleProgram.Plant());
        Assert.IsType<ProgramCompilation.Ready>(ProgramCompiler.Compile(d));
        Assert.Equal(["parked", "spring", "parked-2", "winter"], d.Periods.Select(p => p.Id));
        Assert.Equal((344, 70), (d.Periods[^1].FromDay, d.Periods[^1].ToDay));
        Assert.Equal(2, d.Report.Findings.Count(f => f.Code == "program/parked"));
    }
}
