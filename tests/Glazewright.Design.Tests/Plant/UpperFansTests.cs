using Glazewright.Design.Brief;
using Glazewright.Design.Catalogues;
using Glazewright.Design.Contracts;
using Glazewright.Design.Document;
using Glazewright.Design.Duty;
using Glazewright.Design.Form;
using Glazewright.Design.Layout;
using Glazewright.Design.Plant;
using Glazewright.Design.Program;
using Glazewright.Design.Tests.Brief;
using Glazewright.Design.Tests.Duty;

namespace Glazewright.Design.Tests.Plant;

/// <summary>Upper fans from the job to layout and program.</summary>
public class UpperFansTests
{
    private static readonly Job s_job = DesignDay.With(TestJobs.OneHouse(), e => e.WithCurtains(1) with { UpperFans = new FixedItem("", 0) });

    private static BuildingForm Form(Job job) => FormStage.Run(FormInput.From(job)).Building(job.Houses[0].Id);

    private static PlantResult Run(Job job) => PlantStage.Run(PlantInput.From(job, job.Houses[0].Id), Form(job), DesignDay.Duty(job), CatalogueReader.Generic);

    // (share of the sun the cloth absorbs × sun / 8 K − loss above it) / (ρ c): by hand from the stage's own inputs.
    [Fact]
    public void The_air_asked_is_the_heat_that_has_to_go()
    {
        PlantResult plant = Run(s_job);
        UpperFanPlant upper = plant.Upper!;
        DutyResult duty = DesignDay.Duty(s_job);
        double absorbed = 1 - plant.Curtain!.SolarTransmittanceFraction - plant.Curtain.SolarReflectanceFraction;
        double loss = UpperFans.LossWPerK(Form(s_job), duty, plant.Curtain);
        Assert.InRange(loss, 1, duty.LossWPerK);
        double air = (Math.Max(absorbed, 0.05) * duty.SolarGainW - 8 * loss) / (8 * 1006 * duty.Air.Summer.DensityKgPerM3);
        Assert.Equal(Math.Max(air, 0), upper.NeededM3PerS, 1e-3 * Math.Max(air, 1));
        Assert.True(upper.FlowM3PerS >= upper.NeededM3PerS);
        Assert.Contains(plant.Loads, l => l.Id.EndsWith("/upper-fans", StringComparison.Ordinal) && l.Count == upper.Count);
        Assert.Equal(upper.FlowM3PerS, plant.Report.Figures.Single(f => f.Id == "A/plant/upper-flow").Value, 1e-9);
        Assert.Equal(upper.NeededM3PerS, plant.Report.Figures.Single(f => f.Id == "A/plant/upper-air").Value, 1e-6);
    }

    [Fact]
    public void None_without_a_wish_or_a_curtain()
    {
        Assert.Null(Run(TestJobs.OneHouse()).Upper);
        Assert.Null(Run(DesignDay.With(s_job, e => e.WithCurtains(0))).Upper);
    }

    [Fact]
    public void They_sit_in_the_gables_above_the_cloth_and_under_the_roof()
    {
        PlantResult plant = Run(s_job);
        BuildingForm form = Form(s_job);
        LayoutResult layout = LayoutStage.Run(LayoutInput.From(s_job, "A"), FormStage.Run(FormInput.From(s_job)), plant);
        foreach (PlacedKind kind in (PlacedKind[])[PlacedKind.UpperFan, PlacedKind.UpperLouver])
        {
            PlacedItem[] placed = [.. layout.Placed.Where(p => p.Kind == kind)];
            Assert.Equal(plant.Upper!.Count, placed.Length);
            Assert.All(placed, p =>
            {
                Assert.True(p.Corner.ZM >= plant.Curtain!.HeightM + 0.15 - 1e-9);
                double top = p.Corner.ZM + p.Size.ZM;
                Assert.True(top < form.Roof.HeightM(p.Corner.YM, form.WidthM) && top < form.Roof.HeightM(p.Corner.YM + p.Size.YM, form.WidthM));
            });
        }

        Assert.DoesNotContain(layout.Report.Findings, f => f.Code == "layout/upper-fan-room");
    }

    [Fact]
    public void Too_many_for_the_gable_are_told()
    {
        Job job = DesignDay.With(s_job, e => e with { UpperFans = new FixedItem("exhaust-36", 8) });
        LayoutResult layout = LayoutStage.Run(LayoutInput.From(job, "A"), FormStage.Run(FormInput.From(job)), Run(job));
        Assert.Contains(layout.Report.Findings, f => f.Code == "layout/upper-fan-room" && f.Severity == Severity.Miss);
    }

    // On 5 K over outside with the curtain drawn and the air above it past the cooling threshold; off 2 K below; never on a cold night under a drawn curtain.
    [Fact]
    public void They_run_while_a_drawn_shade_holds_heat_above_it()
    {
        ProgramDocument document = ProgramStage.Run(ProgramInput.From(s_job, "A"), Run(s_job));
        CompiledProgram program = ((ProgramCompilation.Ready)ProgramCompiler.Compile(document)).Program;
        int fans = program.Actuators.ToList().FindIndex(a => a.Kind == ActuatorKind.UpperFan);
        var state = new int[program.StateLength];
        program.Rest(state);
        var commands = new Command[program.Count];
        int Step(int insideC, int upperC, int outsideC, int light)
        {
            int[] readings = new int[Enum.GetValues<Reading>().Length];
            Array.Fill(readings, int.MinValue);
            readings[(int)Reading.InsideTemperature] = 100 * insideC;
            readings[(int)Reading.UpperTemperature] = upperC == int.MinValue ? upperC : 100 * upperC;
            readings[(int)Reading.OutsideTemperature] = 100 * outsideC;
            readings[(int)Reading.Light] = light;
            readings[(int)Reading.TimeOfDay] = light > 0 ? 12 * 3_600_000 : 2 * 3_600_000;
            readings[(int)Reading.DayOfYear] = 180;
            for (int i = 0; i < 90; i++)
            {
                ProgramInterpreter.Step(program, state, readings, 60_000, state, commands);
            }

            return commands[fans].Level;
        }

        Assert.Equal(10_000, Step(32, 42, 32, 900));
        Assert.Equal((int)ReasonCode.UpperAir, commands[fans].Reason);
        Assert.Equal(10_000, Step(32, 36, 32, 900)); // within the deadband
        Assert.Equal(0, Step(32, 34, 32, 900));
        Assert.Equal(0, Step(32, 36, 32, 900)); // and from rest it waits for 5 K
        Assert.Equal(0, Step(32, int.MinValue, 32, 900));
        Assert.Equal(0, Step(15, 4, -15, 0)); // a cold night: far over outside, not warm
    }

    [Fact]
    public void Its_rules_are_written_read_and_checked()
    {
        ProgramDocument document = ProgramStage.Run(ProgramInput.From(s_job, "A"), Run(s_job));
        Assert.Equal(document.UpperAir, ((ProgramReading.Read)ProgramJson.Read(ProgramJson.Write(document))).Document.UpperAir);
        Assert.Contains(ControlNarrative.Of(document, UnitSystem.Metric).SelectMany(p => p.Lines), l => l.Contains("air above it is warmer", StringComparison.Ordinal));
        EqList<Fault> faults = ((ProgramCompilation.Faulty)ProgramCompiler.Compile(document with { UpperAir = new UpperAirControl("A/louver", 90, 2, 0) })).Faults;
        Assert.Contains(faults, f => f.Pointer == "/upperAir/actuator");
        Assert.Contains(faults, f => f.Pointer == "/upperAir/onAboveOutsideK");
        Assert.Contains(faults, f => f.Pointer == "/upperAir/drawnFraction");
    }

    [Fact]
    public void In_a_house_without_a_curtain_they_are_a_fault()
    {
        Assert.Contains(
            Examples.Faults(new Edit("/houses/0/equipment", """{ "curtains": 0, "upperFans": { "use": true } }""")), f => f.Pointer.EndsWith("/equipment/upperFans", StringComparison.Ordinal));
    }
}
