using System.Runtime.CompilerServices;
using Glazewright.Science.Maths;

namespace Glazewright.Science.Climate;

/// <summary>
/// The climate of one greenhouse: air below and above the curtain, cloth, four shell parts with an inner and an outer face, canopy, floor, layered
/// ground, slow mass; water in both airs and on seven surfaces. A step freezes the coefficients at the last state, solves all temperatures in one
/// implicit linear system (<see cref="HouseSolver"/>), the airs by their means over the step (<see cref="AirPair"/>), then both humidities together. Heat that the humidity solution moved differently from
/// what the temperatures were told is carried into the next step, so both books close.
/// </summary>
/// <remarks>Equations and sources: docs/methods/climate-model.md. One thread works on a model at a time.</remarks>
public sealed partial class HouseModel
{
    private const double LatentJPerKg = AirConstants.LatentHeatJPerKg;

    private static readonly OctaveTable ThirdRoot = OctaveTable.OfPower(1.0 / 3), FourthRoot = OctaveTable.OfPower(0.25), GableWind = OctaveTable.OfPower(0.8), TunnelWind = OctaveTable.OfPower(0.49);
    private static readonly OctaveTable FlatRoofWind = WindOn(1.0), AllSidesWind = WindOn(0.0);
    private static readonly OctaveTable EndOverMean = new(PadToFan.EndOverMean, PadToFan.EndOverMean); // within 1.4e-5 of itself

    private readonly HouseParameters house;
    private readonly HouseSolver solver = new();
    private readonly Part[] parts;
    private readonly double upperShare, lowerShare; // of clear area in the shell above and below, for radiation
    private readonly double belowShare; // of the shell, for leaks
    private readonly double airShareBelow; // of the air
    private readonly AirStores airJPerK, airKg;
    private HouseFluxes fluxes;
    private HouseRates rates;
    private PerNode capacity, gain, was;
    private readonly CurtainPair? pair; // two curtains that move by themselves
    private ClothNow cloth;
    private double pairFirst = double.NaN, pairSecond = double.NaN;
    private PerPart areaM2, skyWPerK4, groundWPerK4;

    /// <summary>Builds the model of a house.</summary>
    /// <param name="house">Sizes and properties.</param>
    /// <exception cref="ArgumentOutOfRangeException">A size out of range.</exception>
    public HouseModel(HouseParameters house)
    {
        house.Check();
        this.house = house;
        parts = [new(house.UpperClear, true), new(house.LowerClear, false), new(house.UpperOpaque, true), new(house.LowerOpaque, false)];
        upperShare = ShareOf(house.UpperClear.AreaM2, house.UpperOpaque.AreaM2);
        lowerShare = ShareOf(house.LowerClear.AreaM2, house.LowerOpaque.AreaM2);
        double lowerM2 = house.LowerClear.AreaM2 + house.LowerOpaque.AreaM2, upperM2 = house.UpperClear.AreaM2 + house.UpperOpaque.AreaM2;
        belowShare = lowerM2 + upperM2 > 0.0 ? lowerM2 / (lowerM2 + upperM2) : 0.5;
        airShareBelow = house.AirBelowM3 / (house.AirBelowM3 + house.AirAboveM3);
        airKg = new AirStores(StoreKgPerM3 * house.AirBelowM3, StoreKgPerM3 * house.AirAboveM3);
        double fastJPerK = house.FastMassJPerM2K * house.FloorAreaM2; // what goes with the air
        airJPerK = new AirStores(
            fastJPerK * airShareBelow + airKg.Below * AirConstants.SpecificHeatJPerKgK, fastJPerK * (1.0 - airShareBelow) + airKg.Above * AirConstants.SpecificHeatJPerKgK);
        cloth = ClothNow.Of(house.Curtain);
        pair = house.SecondCurtain is { } second ? new CurtainPair(house.Curtain, second) : null;
        for (int s = 0; s < HouseNodes.SurfaceCount; s++)
        {
            latentJPerKg[s] = house.CondensationHeats || s == (int)WetSurface.Canopy ? LatentJPerKg : 0.0;
            holdsKg[s] = s switch
            {
                < HouseNodes.PartCount => house.FilmHoldsKgPerM2 * parts[s].AreaM2,
                (int)WetSurface.Floor => house.FloorHoldsKgPerM2 * house.FloorAreaM2,
                _ => house.FilmHoldsKgPerM2 * house.FloorAreaM2,
            };
        }

        SetFixed();
    }

    /// <summary>What moved over the last step.</summary>
    public ref readonly HouseFluxes LastFluxes => ref fluxes;

    /// <summary>Number of transfer units of heat along the house in the last step, for <see cref="PadToFan"/>.</summary>
    public double TransferUnits { get; private set; }

    /// <summary>Means of both airs over the last step, °C.</summary>
    internal (double Below, double Above) LastMeansC { get; private set; }

    /// <summary>Heat capacity of the airs, J/K.</summary>
    internal ref readonly AirStores AirJPerK => ref airJPerK;

    /// <summary>The links of the last step, for checks: that between the airs as it gives their means.</summary>
    internal ref readonly HouseRates LastRates => ref rates;

    /// <summary>Capacities and gains of the last step, for checks.</summary>
    internal (PerNode Capacity, PerNode Gain) LastTerms => (capacity, gain);

    /// <summary>A state at rest: everything at one temperature, air at one relative humidity, ground sliding to its deep temperature.</summary>
    /// <param name="temperatureC">Temperature of air and all surfaces, °C.</param>
    /// <param name="relativeHumidityFraction">0 to 1.</param>
    /// <param name="deepGroundC">Temperature below the last layer, °C.</param>
    /// <param name="pressurePa">Barometric pressure, Pa.</param>
    public HouseState NewState(double temperatureC, double relativeHumidityFraction, double deepGroundC, double pressurePa)
    {
        HouseState state = new();
        state.Temperature.Row.Fill(temperatureC);
        double depthM = 0.0, totalM = house.Ground.Sum(g => g.ThicknessM);
        for (int layer = 0; layer < HouseParameters.GroundLayerCount; layer++)
        {
            double middleM = depthM + house.Ground[layer].ThicknessM / 2.0;
            state.Temperature.Ground[layer] = temperatureC + (deepGroundC - temperatureC) * middleM / totalM;
            depthM += house.Ground[layer].ThicknessM;
        }

        double vapourPa = relativeHumidityFraction * VapourTable.PressurePa(temperatureC);
        state.WaterBelow = state.WaterAbove = 0.621945 * vapourPa / (pressurePa - vapourPa);
        state.KeepSaturation();
        return state;
    }

    /// <summary>Takes one step of any length.</summary>
    /// <param name="state">The house; changed in place.</param>
    /// <param name="forcing">What acts over the step.</param>
    /// <param name="stepS">Step, s, above 0 (a minute in the year, 1 to 5 s in replays).</param>
    public void Step(HouseState state, in HouseForcing forcing, double stepS)
    {
        if (!forcing.IsWorkedOut && !forcing.AllNumbers)
        {
            StepMended(state, in forcing, stepS);
            return;
        }

        StepByNumbers(state, in forcing, stepS);
    }

    // Apart, so that the room for the mended copy is not made ready in every step.
    [MethodImpl(MethodImplOptions.NoInlining)]
    private void StepMended(HouseState state, in HouseForcing forcing, double stepS)
    {
        HouseForcing mended = forcing.Mended();
        StepByNumbers(state, in mended, stepS);
    }

    private void StepByNumbers(HouseState state, in HouseForcing forcing, double stepS)
    {
        double perS = 1.0 / stepS;
        Drive d = default;
        d.Set(in forcing, state, this, stepS);
        if (d.Closed != viewClosed || d.LeafAreaIndex != viewLeaves)
        {
            SetViews(in d);
        }

        SetShell(state, in d);
        SetInside(state, in d);
        SetAir(in d);
        SetGains(state, in d, in forcing);
        SetLatent(state, in d, in forcing, stepS, perS);
        SetIntake(state, ref d, in forcing, stepS);
        AirPair airs = Airs(in d, stepS, perS);
        HouseBounds bounds = new() { OutsideC = d.OutsideC, SkyC = d.SkyC, DeepC = d.DeepC, IntakeC = d.IntakeC };
        solver.Step(
            ref state.Temperature, ref was, ref capacity, ref gain, ref rates, in bounds, d.Closed > 0.0, parts[2].AreaM2 > 0.0, parts[3].AreaM2 > 0.0, perS);
        (double belowC, double aboveC) = LastMeansC = (state.Temperature.AirBelow, state.Temperature.AirAbove);
        (state.Temperature.AirBelow, state.Temperature.AirAbove) = airs.Ends(d.BelowC, d.AboveC, belowC, aboveC);
        state.KeepSaturation();
        SolveHumidity(state, in d, in forcing, stepS, perS);
        BookHeat(state, in d, belowC, aboveC, perS);
    }

    private double ClosedByTwo(CurtainPair two, double first, double second)
    {
        if (first != pairFirst || second != pairSecond)
        {
            (pairFirst, pairSecond) = (first, second);
            two.Closed(first, second, ref cloth);
            viewClosed = double.NaN;
        }

        return Math.Max(first, second);
    }

    private static OctaveTable WindOn(double slopeCosine) =>
        new(v => HouseFilms.ForcedOnSmoothFaceWPerM2K(slopeCosine, v), v => v > 0.0 ? HouseFilms.ForcedOnSmoothFaceWPerM2K(slopeCosine, v) : 0.0);

    private static double ShareOf(double clearM2, double opaqueM2) => clearM2 + opaqueM2 > 0.0 ? clearM2 / (clearM2 + opaqueM2) : 1.0;

    private void SetFixed()
    {
        capacity.Curtain = Math.Max((house.Curtain.CapacityJPerM2K + (house.SecondCurtain?.CapacityJPerM2K ?? 0.0)) * house.FloorAreaM2, 10.0);
        for (int p = 0; p < HouseNodes.PartCount; p++)
        {
            capacity.Inner[p] = capacity.Outer[p] = parts[p].HalfCapacityJPerK;
            rates.Core[p] = parts[p].CoreWPerK;
            areaM2[p] = parts[p].AreaM2;
            skyWPerK4[p] = parts[p].SkyWPerK4;
            groundWPerK4[p] = parts[p].GroundWPerK4;
        }

        capacity.Floor = house.Ground[0].CapacityJPerM3K * Math.Min(house.Ground[0].ThicknessM * 0.1, 0.005) * house.FloorAreaM2;
        capacity.Mass = Math.Max(house.MassJPerK, 1.0);
        rates.FloorGround = house.FloorAreaM2 / (house.Ground[0].ThicknessM / 2.0 / house.Ground[0].ConductivityWPerMK);
        for (int layer = 0; layer < HouseParameters.GroundLayerCount; layer++)
        {
            GroundLayer here = house.Ground[layer];
            capacity.Ground[layer] = here.CapacityJPerM3K * here.ThicknessM * house.FloorAreaM2;
            double half = here.ThicknessM / 2.0 / here.ConductivityWPerMK;
            if (layer + 1 < HouseParameters.GroundLayerCount)
            {
                rates.Below[layer] = house.FloorAreaM2 / (half + house.Ground[layer + 1].ThicknessM / 2.0 / house.Ground[layer + 1].ConductivityWPerMK);
            }
            else
            {
                rates.Deep = house.FloorAreaM2 / half;
            }
        }

        rates.Edge = house.EdgeLossWPerK;
        rates.MassAir = Math.Max(5.5 * house.MassSurfaceM2, 0.01);
    }

    /// <summary>A shell part with what is worked out of it once.</summary>
    private readonly struct Part
    {
        public readonly bool IsAbove, IsWall;
        public readonly double AreaM2, InnerEmissivity, CoreWPerK, HalfCapacityJPerK;
        public readonly double SkyWPerK4, GroundWPerK4; // σ ε view area
        public readonly double StillWarmFactor, StillColdFactor, RoughnessFactor; // outside, of opaque parts
        public readonly OctaveTable OpaqueWind;
        public readonly double WarmFactor; // air warmer than the surface, by the third root: 1.7 (cos s)^−⅔ under a roof, 1.31 at a wall

        public Part(ShellPart part, bool isAbove)
        {
            IsAbove = isAbove;
            AreaM2 = part.AreaM2;
            InnerEmissivity = part.InnerEmissivity;
            CoreWPerK = part.CoreWPerM2K * part.AreaM2;
            HalfCapacityJPerK = Math.Max(part.CapacityJPerM2K * part.AreaM2 / 2.0, 1.0);
            SkyWPerK4 = StefanBoltzmann * part.OuterEmissivity * part.SkyViewFraction * part.AreaM2;
            GroundWPerK4 = StefanBoltzmann * part.OuterEmissivity * (1.0 - part.SkyViewFraction) * part.AreaM2;
            StillWarmFactor = HouseFilms.StillOutsideFactor(part.SlopeCosine, isWarmer: true);
            StillColdFactor = HouseFilms.StillOutsideFactor(part.SlopeCosine, isWarmer: false);
            RoughnessFactor = part.OuterRoughnessFactor;
            OpaqueWind = part.SlopeCosine >= HouseFilms.FlatCosine ? FlatRoofWind : AllSidesWind;
            IsWall = part.SlopeCosine < 0.2;
            WarmFactor = IsWall ? 1.31 : HouseFilms.UnderRoofWPerM2K(1.0, part.SlopeCosine);
        }
    }
}
