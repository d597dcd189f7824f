using BenchmarkDotNet.Attributes;
using Glazewright.Science.Climate;

namespace Glazewright.Bench.Climate;

/// <summary>A year of minute steps of the house model alone, and its parts.</summary>
[MemoryDiagnoser]
public class HouseYear
{
    private const int Steps = 525_600;

    private HouseModel model = null!;
    private HouseState state = null!;

    /// <summary>An invented triple-wall house.</summary>
    [GlobalSetup]
    public void Setup()
    {
        model = new HouseModel(new HouseParameters
        {
            FloorAreaM2 = 250,
            AirBelowM3 = 520,
            AirAboveM3 = 330,
            UpperClear = new ShellPart { AreaM2 = 180, CoreWPerM2K = 4, SlopeCosine = 0.9, SkyViewFraction = 0.95 },
            LowerClear = new ShellPart { AreaM2 = 80, CoreWPerM2K = 4 },
            UpperOpaque = new ShellPart { AreaM2 = 120, CoreWPerM2K = 0.35, CapacityJPerM2K = 8000, SlopeCosine = 0.8, SkyViewFraction = 0.9 },
            LowerOpaque = new ShellPart { AreaM2 = 120, CoreWPerM2K = 0.35, CapacityJPerM2K = 8000 },
            LeakageWindM2 = 0.05,
            LeakageStackM3PerSRootK = 0.06,
            EdgeLossWPerK = 55,
        });
        state = model.NewState(18, 0.7, 10, 101_325);
    }

    /// <summary>All steps, with day and night, fans and curtain.</summary>
    /// <returns>The last air temperature, °C.</returns>
    [Benchmark(OperationsPerInvoke = Steps)]
    public double Step()
    {
        HouseForcing f = new() { OutsideHumidityRatio = 0.004, PressurePa = 101_325, WindMPerS = 3, DeepGroundC = 10, LeafAreaIndex = 2, Co2Ppm = 420 };
        for (int minute = 0; minute < Steps; minute++)
        {
            int of = minute % 1440;
            bool day = of is > 420 and < 1080;
            f.OutsideC = 5 + of / 200.0;
            f.SkyC = f.OutsideC - 15;
            f.SunCanopyW = day ? 40_000 : 0;
            f.SunFloorW = day ? 20_000 : 0;
            f.FanBelowM3PerS = of is > 600 and < 900 ? 6 : 0;
            f.HeatW = day ? 0 : minute % 2 * 40_000;
            f.CurtainClosedFraction = day ? 0 : 0.96;
            model.Step(state, in f, 60);
        }

        return state.AirBelowC;
    }
}
