using Glazewright.Science.Climate;

namespace Glazewright.Science.Tests.Climate;

/// <summary>Invented houses and weather for the climate tests.</summary>
internal static class TestHouses
{
    public static HouseParameters Glass { get; } = new()
    {
        FloorAreaM2 = 200,
        AirBelowM3 = 500,
        AirAboveM3 = 300,
        UpperClear = new ShellPart { AreaM2 = 250, CoreWPerM2K = 250, CapacityJPerM2K = 8400, SlopeCosine = 0.9, SkyViewFraction = 0.95, InnerEmissivity = 0.88, OuterEmissivity = 0.88 },
        LowerClear = new ShellPart { AreaM2 = 150, CoreWPerM2K = 250, CapacityJPerM2K = 8400, InnerEmissivity = 0.88, OuterEmissivity = 0.88 },
        EdgeLossWPerK = 45,
        LeakageWindM2 = 0.03,
        LeakageStackM3PerSRootK = 0.02,
        CurtainTravelM = 8,
    };

    public static HouseParameters TripleWall { get; } = Glass with
    {
        UpperClear = Glass.UpperClear with { CoreWPerM2K = 2.9, CapacityJPerM2K = 3300 },
        LowerClear = Glass.LowerClear with { CoreWPerM2K = 2.9, CapacityJPerM2K = 3300, AreaM2 = 110 },
        LowerOpaque = new ShellPart { AreaM2 = 40, CoreWPerM2K = 0.35, CapacityJPerM2K = 12000 },
        UpperOpaque = new ShellPart { AreaM2 = 20, CoreWPerM2K = 0.35, CapacityJPerM2K = 12000, SlopeCosine = 0.8, SkyViewFraction = 0.9 },
    };

    public static HouseForcing ClearNight(double outsideC) => new()
    {
        OutsideC = outsideC,
        OutsideHumidityRatio = 0.7 * VapourTable.SaturatedHumidityRatio(outsideC, 101325),
        PressurePa = 101325,
        WindMPerS = 1.0,
        SkyC = outsideC - 20,
        DeepGroundC = 10,
        Co2Ppm = 420,
    };

    public static HouseForcing SunnyDay(double outsideC, double absorbedWPerM2 = 400) => ClearNight(outsideC) with
    {
        WindMPerS = 3,
        SkyC = outsideC - 14,
        SunFloorW = 0.4 * absorbedWPerM2 * 200,
        SunCanopyW = 0.5 * absorbedWPerM2 * 200,
        SunUpperClearW = 0.1 * absorbedWPerM2 * 200,
        LeafAreaIndex = 2.5,
    };

    public static HouseState Run(HouseModel model, HouseForcing forcing, int minutes, HouseState? state = null, double stepS = 60)
    {
        state ??= model.NewState(15, 0.7, 10, 101325);
        for (int i = 0; i < minutes * 60 / stepS; i++)
        {
            model.Step(state, in forcing, stepS);
        }

        return state;
    }
}
