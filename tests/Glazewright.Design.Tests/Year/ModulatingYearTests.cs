using Glazewright.Design.Catalogues;
using Glazewright.Design.Contracts;
using Glazewright.Design.Plant;
using Glazewright.Design.Program;
using Glazewright.Design.Year;
using Glazewright.Science.Climate;

namespace Glazewright.Design.Tests.Year;

/// <summary>Burners that turn down, in the year.</summary>
public class ModulatingYearTests
{
    private static PlantResult With(PartFire part) => YearScenes.Plant with
    {
        Heat = new Answer<HeatPlant>.Met(YearScenes.Plant.Heat!.Choice with { Heaters = YearScenes.Plant.Heat.Choice.Heaters.Select(h => h with { Part = part }).ToEqList() }, 0.2),
    };

    // By hand: 29 kW; half fire of a burner that has 80 % at a quarter and 82 % at full fire has 80 2/3 %.
    [Theory]
    [InlineData(2500, 0.80)]
    [InlineData(5000, 0.80 + 0.02 / 3)]
    [InlineData(10_000, 0.82)]
    public void Fuel_goes_by_the_fire_and_the_fan_does_not(int level, double efficiency)
    {
        PlantResult made = With(new PartFire(0.25, 0.80, false));
        ProgramDocument program = ProgramStage.Run(ProgramInput.From(YearScenes.Job, "A"), made);
        YearPlant plant = new(program, made, YearHouse.Build(YearScenes.Input, YearScenes.Form, made));
        Command[] commands = new Command[program.Actuators.Count];
        HouseForcing forcing = default;
        plant.Act(commands, true, 60, false, ref forcing);
        double idleW = plant.PowerW;
        commands[Array.FindIndex([.. program.Actuators], a => a.Id == "A/heater-1")] = new Command(level, 0, 0, 0, 0);
        for (int minute = 0; minute < 3; minute++)
        {
            plant.Act(commands, true, 60, false, ref forcing);
        }

        Assert.Equal(29_000 * level / 10_000.0, plant.HeatW, 1e-6);
        Assert.Equal(plant.HeatW / efficiency, plant.FuelW, 1e-6);
        Assert.Equal(150, plant.PowerW - idleW, 1e-9);
        MotorCounters counted = plant.Motors().Single(m => m.Actuator == "A/heater-1");
        Assert.Equal((3 / 60.0, 1), (Math.Round(counted.RuntimeH, 9), counted.Starts));
    }

    // The same house, sun and weather: only how its heaters burn is another.
    [Fact]
    public void It_starts_far_less_often_and_holds_as_well()
    {
        YearResult onOff = YearScenes.Run(ProgramStage.Run(ProgramInput.From(YearScenes.Job, "A"), YearScenes.Plant));
        PlantResult plant = With(new PartFire(0.25, 0.82, false));
        YearResult modulating = YearScenes.Run(ProgramStage.Run(ProgramInput.From(YearScenes.Job, "A"), plant), plant);
        static int Starts(YearResult y) => y.Motors.Where(m => m.Actuator.Contains("heater", StringComparison.Ordinal)).Sum(m => m.Starts);
        Assert.True(Starts(modulating) < Starts(onOff) / 3, $"{Starts(onOff)} before, {Starts(modulating)} now");
        Assert.True(modulating.Held.HeldTemperatureH > onOff.Held.HeldTemperatureH - 50, $"{onOff.Held.HeldTemperatureH:0} before, {modulating.Held.HeldTemperatureH:0} now");
        Assert.InRange(modulating.FuelJ, 0.88 * onOff.FuelJ, onOff.FuelJ);
        Assert.InRange(modulating.EnergyClosureFraction, -1e-6, 1e-6);
    }
}
