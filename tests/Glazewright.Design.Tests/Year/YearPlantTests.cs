using CsCheck;
using Glazewright.Design.Program;
using Glazewright.Design.Tests.Program;
using Glazewright.Design.Year;
using Glazewright.Science.Climate;

namespace Glazewright.Design.Tests.Year;

/// <summary>The equipment of the year against plain book-keeping of its own.</summary>
public class YearPlantTests
{
    // Commands that stay for some minutes and change now and then: what ran on unchanged is counted as if told every minute.
    [Fact]
    public void Runtimes_starts_and_power_are_those_of_the_commands()
    {
        int n = YearScenes.Program.Actuators.Count;
        Gen.Select(Gen.Int[0, 2].Array[n], Gen.Int[1, 9]).Array[1, 30].Sample(parts =>
        {
            YearPlant plant = new(YearScenes.Program, YearScenes.Plant, YearHouse.Build(YearScenes.Input, YearScenes.Form, YearScenes.Plant));
            YearPlant fresh = new(YearScenes.Program, YearScenes.Plant, YearHouse.Build(YearScenes.Input, YearScenes.Form, YearScenes.Plant));
            double[] runtimeS = new double[n], saved = new double[plant.SavedLength];
            int[] starts = new int[n], before = new int[n];
            Command[] commands = new Command[n];
            HouseForcing a = default, b = default;
            foreach ((int[] levels, int minutes) in parts)
            {
                for (int m = 0; m < minutes; m++)
                {
                    bool moved = m == 0;
                    for (int i = 0; i < n; i++)
                    {
                        commands[i] = new Command(levels[i] * 5000, 0, 0, 0, 0);
                        starts[i] += levels[i] > 0 && before[i] == 0 ? 1 : 0;
                        runtimeS[i] += levels[i] * 0.5 * 60;
                        before[i] = levels[i];
                    }

                    plant.Act(commands, moved, 60, false, ref a);
                    // Loaded anew each minute, it cannot know what it was told before.
                    fresh.Act(commands, true, 60, false, ref b);
                    fresh.Save(saved);
                    fresh.Load(saved);
                    Assert.Equal(b, a);
                    Assert.Equal(fresh.PowerW, plant.PowerW);
                    Assert.Equal(fresh.AllCooling, plant.AllCooling);
                }
            }

            foreach ((Actuator actuator, int i) in YearScenes.Program.Actuators.Select((x, i) => (x, i)).Where(x => x.x.TravelS == 0))
            {
                Assert.Equal(runtimeS[i] / 3600, plant.Motors()[i].RuntimeH, 1e-9);
                Assert.Equal(starts[i], plant.Motors()[i].Starts);
            }
        });
    }

    // Pulses of one call are one start, whether it fogs for humidity or to cool; a call that ends is another.
    [Theory]
    [InlineData(ReasonCode.Fogging)]
    [InlineData(ReasonCode.Cooling)]
    public void Fog_starts_once_a_call(ReasonCode why)
    {
        ProgramDocument program = SampleProgram.Document();
        YearPlant plant = new(program, SampleProgram.Plant(), YearHouse.Build(YearScenes.Input, YearScenes.Form, SampleProgram.Plant()));
        int fog = program.Actuators.ToList().FindIndex(a => a.Kind == ActuatorKind.Fog);
        Command[] commands = new Command[program.Actuators.Count];
        HouseForcing f = default;
        (int Level, ReasonCode Why)[] told = [(10_000, why), (0, why), (10_000, why), (0, ReasonCode.Idle), (10_000, why), (0, why), (10_000, why)];
        foreach ((int level, ReasonCode reason) in told)
        {
            commands[fog] = new Command(level, (int)reason, 0, 0, 0);
            plant.Act(commands, true, 20, false, ref f);
        }

        Assert.Equal(2, plant.Motors()[fog].Starts);
        Assert.Equal(4 * 20 / 3600.0, plant.Motors()[fog].RuntimeH, 1e-9);
    }
}
