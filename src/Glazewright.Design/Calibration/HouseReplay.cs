using Glazewright.Design.Calibration.Reading;
using Glazewright.Design.Contracts;
using Glazewright.Science.Climate;

namespace Glazewright.Design.Calibration;

/// <summary>What the model says the air in the house did.</summary>
/// <param name="AirC">Air at the crop at each step, °C.</param>
/// <param name="RelativePercent">Its relative humidity.</param>
/// <param name="VapourKgPerM3">Its water vapour.</param>
/// <param name="HeatW">Heat delivered over the step.</param>
internal sealed record ReplayedAir(float[] AirC, float[] RelativePercent, float[] VapourKgPerM3, float[] HeatW);

/// <summary>Replays a log's outside weather and equipment through the climate model, from its first step to its last without a restart.</summary>
internal sealed class HouseReplay(HouseLog log, ReplayHouse house, EqList<AssumedThermostat> thermostats)
{
    private const double StefanBoltzmann = 5.670374e-8;
    private const double NoSkyK = 8; // sky below air where no long wave is logged: between overcast 2 and clear 20 (choice)
    private const double PipeRadiantFraction = 0.25;
    private readonly double pressureDefaultPa = 101_325;

    /// <summary>Runs.</summary>
    /// <param name="sizes">Values of the sizes.</param>
    /// <param name="upTo">Number of steps to run.</param>
    /// <param name="stepS">Step of the model, s.</param>
    /// <param name="cancel">Looked at once a day.</param>
    public ReplayedAir Run(SizeValues sizes, int upTo, double stepS, CancellationToken cancel)
    {
        int count = Math.Min(upTo, log.Count);
        HouseModel model = new(house.With(sizes));
        ReplayedAir air = new(new float[count], new float[count], new float[count], new float[count]);
        int each = Math.Max(1, (int)Math.Round(log.StepMinutes * 60 / stepS)), day = Math.Max(1, 1440 / log.StepMinutes);
        double subS = log.StepMinutes * 60.0 / each;
        HouseState? state = null;
        Span<double> driven = stackalloc double[QuantityTraits.All.Count];
        for (int i = 0; i < count; i++)
        {
            if (i % day == 0)
            {
                cancel.ThrowIfCancellationRequested();
            }

            double pressurePa = Value(LoggedQuantity.Pressure, i, pressureDefaultPa);
            if (state is null || log.Starts[i])
            {
                double insideC = Value(LoggedQuantity.InsideTemperature, i, 18);
                state = model.NewState(double.IsNaN(insideC) ? 18 : insideC, 0.7, house.DeepGroundC, pressurePa);
            }

            HouseForcing f = Forcing(i, sizes, pressurePa);
            double heatW = 0;
            for (int k = 0; k < each; k++)
            {
                Drive(i, sizes, state.AirBelowC, driven, ref f);
                heatW += f.HeatW / each;
                model.Step(state, in f, subS);
            }

            air.AirC[i] = (float)state.AirBelowC;
            air.RelativePercent[i] = (float)state.RelativeHumidityBelowPercent(pressurePa);
            air.VapourKgPerM3[i] = (float)VapourKgPerM3(VapourTable.VapourPressurePa(state.HumidityRatioBelow, pressurePa), state.AirBelowC);
            air.HeatW[i] = (float)heatW;
        }

        return air;
    }

    /// <summary>Water in air, kg/m³.</summary>
    public static double VapourKgPerM3(double vapourPa, double airC) => vapourPa / (461.5 * (airC + 273.15));

    // What does not hang on the computed air.
    private HouseForcing Forcing(int i, in SizeValues sizes, double pressurePa)
    {
        double outsideC = Value(LoggedQuantity.OutsideTemperature, i, 10);
        double first = Value(LoggedQuantity.Curtain, i, 0), second = Value(LoggedQuantity.SecondCurtain, i, 0);
        LogSun sun = house.Sun;
        double times = sizes[FittedSize.Sun];
        CurtainShares shares = CurtainShares.Of(first, second);
        double past = sun.CropUnderW(i, shares), crop = times * past;
        double leaves = sizes[FittedSize.Leaves], covered = house.Covered(i, leaves);
        double skyWm2 = log.Has(LoggedQuantity.NetSkyRadiation)
            ? StefanBoltzmann * Math.Pow(outsideC + 273.15, 4) + Value(LoggedQuantity.NetSkyRadiation, i, 0)
            : StefanBoltzmann * Math.Pow(outsideC - NoSkyK + 273.15, 4);
        double open = sun.CropW[i] > 0 ? past / sun.CropW[i] : 1;
        return new HouseForcing
        {
            OutsideC = outsideC,
            OutsideHumidityRatio = Value(LoggedQuantity.OutsideHumidity, i, 0.7) * VapourTable.SaturatedHumidityRatio(outsideC, pressurePa),
            PressurePa = pressurePa,
            WindMPerS = Value(LoggedQuantity.Wind, i, 2) * house.WindFactor,
            SkyC = Math.Pow(Math.Max(skyWm2, 50) / StefanBoltzmann, 0.25) - 273.15,
            DeepGroundC = house.DeepGroundC,
            Co2Ppm = Value(LoggedQuantity.Co2, i, 420),
            LeafAreaIndex = house.LeafArea[i] * leaves,
            SunCanopyW = crop * covered,
            SunFloorW = crop * (1 - covered),
            SunAirBelowW = times * sun.AirW[i] * open,
            SunUpperClearW = sun.CoverW[i] * sun.AboveFraction,
            SunLowerClearW = sun.CoverW[i] * (1 - sun.AboveFraction),
            SunLowerOpaqueInnerW = times * sun.OpaqueW[i],
            SunCurtainW = times * sun.InClothsW(i, shares),
            CurtainClosedFraction = house.CurtainCovers * first,
            SecondCurtainClosedFraction = house.CurtainCovers * second,
            LampW = Value(LoggedQuantity.Lamps, i, 0) * house.LampW,
            LampRadiantFraction = house.LampRadiantFraction,
            CirculationFraction = Value(LoggedQuantity.Circulation, i, 0),
            FogEfficiency = house.FogEfficiency,
        };
    }

    // Equipment: as logged, or as the assumed thermostat has it; heat of pipes by the computed air.
    private void Drive(int i, in SizeValues sizes, double airC, Span<double> driven, ref HouseForcing f)
    {
        foreach (LoggedQuantity q in s_driven)
        {
            driven[(int)q] = Value(q, i, 0);
        }

        foreach (AssumedThermostat t in thermostats)
        {
            double width = t.FullAtC - t.NoneAtC;
            driven[(int)t.Quantity] = width == 0 ? 0 : Math.Clamp((airC - t.NoneAtC) / width, 0, 1);
        }

        double fans = driven[(int)LoggedQuantity.Fans], pad = house.Effectiveness(fans);
        f.FanBelowM3PerS = house.FlowM3PerS(fans) * sizes[FittedSize.Fans];
        f.PadEffectiveness = driven[(int)LoggedQuantity.PadPump] * (1 - Math.Pow(1 - pad, sizes[FittedSize.Pad]));
        f.FogKgPerS = driven[(int)LoggedQuantity.Fog] * house.FogKgPerS;
        f.RoofVentM2 = driven[(int)LoggedQuantity.RoofVents] * house.RoofVentM2 * sizes[FittedSize.Vents];
        f.SideVentM2 = driven[(int)LoggedQuantity.SideVents] * house.SideVentM2 * sizes[FittedSize.Vents];
        double railC = Value(LoggedQuantity.RailPipe, i, HousePipes.Off), growC = Value(LoggedQuantity.GrowPipe, i, HousePipes.Off);
        double pipesW = HousePipes.HeatW(house.RailWPerK, house.GrowWPerK, railC, growC, airC) + Value(LoggedQuantity.HeatDelivered, i, 0) * house.Parameters.FloorAreaM2;
        double airW = driven[(int)LoggedQuantity.Heaters] * house.HeatersW;
        f.HeatW = (pipesW + airW) * sizes[FittedSize.Heat];
        f.HeatRadiantFraction = pipesW + airW > 0 ? PipeRadiantFraction * pipesW / (pipesW + airW) : 0;
    }

    private static readonly LoggedQuantity[] s_driven =
        [LoggedQuantity.Fans, LoggedQuantity.PadPump, LoggedQuantity.Fog, LoggedQuantity.RoofVents, LoggedQuantity.SideVents, LoggedQuantity.Heaters];

    private double Value(LoggedQuantity quantity, int i, double otherwise)
    {
        ReadOnlySpan<double> values = log.Of(quantity);
        return values.Length > 0 ? values[i] : otherwise;
    }
}
