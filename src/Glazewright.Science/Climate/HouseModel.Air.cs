using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Glazewright.Science.Climate;

public sealed partial class HouseModel
{
    private const double Gravity = 9.80665;
    private const double WetBulbKelvin = AirConstants.LatentHeatJPerKg / AirConstants.SpecificHeatJPerKgK; // what evaporating a kilogram a kilogram cools air by, K
    private const double StoreKgPerM3 = 101_325.0 / (AirConstants.GasConstantJPerKgK * 293.15); // the air that is in the house, as at 20 °C
    /// <summary>Mass of dry air that a volume is taken to hold, kg.</summary>
    internal static double StoredAirKg(double volumeM3) => StoreKgPerM3 * volumeM3;

    private const double ProfileFadesS = 120.0; // a gradient along a house mixes away in minutes once the fans stop (choice)

    /// <summary>The air streams of one step, kg/s of dry air, and what else is worked out once from the last state.</summary>
    private struct Drive
    {
        public double PressurePa, OutsideC, OutsideHumidity, WindMPerS, SkyC, DeepC;
        public double BelowC, AboveC, Closed, LeafAreaIndex, Circulation;
        public double PerPa, BelowDensity, OutsideDensity, OutsideDensityInverse, AirKgBelow;
        public double OutsideBelow, OutsideAbove, Intake, IntakeFromOutside, BelowShare, Upward, Downward, Exchange;
        public double IntakeC, IntakeHumidity, HeatEndOverMean, WaterEndOverMean;
        public double ForcedFilm, FogEvaporated, FogFallen, Dried;
        public double VapourBelowPa, VapourAbovePa, KappaBelow, KappaAbove; // vapour pressure = kappa · humidity ratio, secant at the last state
        public double VentM3PerS, LeakM3PerS;
        public bool Moving; // leaves in moving air

        public void Set(in HouseForcing f, HouseState state, HouseModel model, double stepS)
        {
            HouseParameters house = model.house;
            AirKgBelow = model.airKg.Below;
            PressurePa = Clamp(f.PressurePa, 30_000.0, 115_000.0);
            OutsideC = Clamp(f.OutsideC, -90.0, 70.0);
            double humidity = double.MaxNative(f.OutsideHumidityRatio, 0.0);
            OutsideHumidity = f.IsWorkedOut ? humidity : NotAboveSaturation(humidity);
            WindMPerS = Clamp(f.WindMPerS, 0.0, 60.0);
            SkyC = Clamp(f.SkyC, -120.0, 80.0);
            DeepC = Clamp(f.DeepGroundC, -60.0, 60.0);
            Closed = Clamp(f.CurtainClosedFraction, 0.0, 1.0);
            if (model.pair is { } two)
            {
                Closed = model.ClosedByTwo(two, Closed, Clamp(f.SecondCurtainClosedFraction, 0.0, 1.0));
            }

            Circulation = Clamp(f.CirculationFraction, 0.0, 1.0);
            LeafAreaIndex = Clamp(f.LeafAreaIndex, 0.0, 12.0);
            BelowC = state.AirBelowC;
            AboveC = state.AirAboveC;
            double perDensity = AirConstants.PascalPerDensity(OutsideC);
            Vector128<double> outside = Vector128.Create(1.0, PressurePa) / Vector128.Create(PressurePa, perDensity);
            PerPa = outside.ToScalar();
            OutsideDensity = outside.GetElement(1);
            OutsideDensityInverse = perDensity * PerPa;
            // One division for four: density of both airs, kappa of both.
            Vector256<double> four = Vector256.Create(PressurePa) / Vector256.Create(
                AirConstants.PascalPerDensity(BelowC), AirConstants.PascalPerDensity(AboveC), 0.621945 + state.WaterBelow, 0.621945 + state.WaterAbove);
            KappaBelow = four.GetElement(2);
            KappaAbove = four.GetElement(3);
            VapourBelowPa = KappaBelow * state.WaterBelow;
            VapourAbovePa = KappaAbove * state.WaterAbove;
            BelowDensity = four.ToScalar();
            Streams(in f, model, BelowDensity, four.GetElement(1));
            // A machine dries no further than a fifth of what the air holds in one step: the book stays positive whatever is asked.
            Dried = f.DryingKgPerS > 0.0 ? double.MinNative(f.DryingKgPerS, 0.2 * state.WaterBelow * AirKgBelow / stepS) : 0.0;
            if (f.FogKgPerS > 0.0)
            {
                Fog(in f, state, stepS);
            }
        }

        [MethodImpl(MethodImplOptions.NoInlining)]
        private readonly double NotAboveSaturation(double humidity)
        {
            double saturatedPa = double.MinNative(VapourTable.PressurePa(OutsideC), 0.95 * PressurePa), dryPa = PressurePa - saturatedPa;
            return humidity * dryPa <= 0.621945 * saturatedPa ? humidity : 0.621945 * saturatedPa / dryPa;
        }

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        private void Streams(in HouseForcing f, HouseModel model, double belowDensity, double aboveDensity)
        {
            HouseParameters house = model.house;
            double fanBelow = Clamp(f.FanBelowM3PerS, 0.0, 1e5) * belowDensity, fanAbove = Clamp(f.FanAboveM3PerS, 0.0, 1e5) * aboveDensity;
            double blown = Clamp(f.PositivePressureM3PerS, 0.0, 1e5) * OutsideDensity;
            Intake = double.MaxNative(fanBelow + fanAbove - blown, 0.0);
            BelowShare = fanBelow + fanAbove > 0.0 ? fanBelow / (fanBelow + fanAbove) : 1.0;
            OutsideBelow = blown;
            Upward = fanAbove;
            double changesPerHour = fanBelow + fanAbove > 0.0 ? 3600.0 * (fanBelow + fanAbove) / (belowDensity * house.PartsAlong * (house.AirBelowM3 + house.AirAboveM3)) : 0.0;
            ForcedFilm = double.MaxNative(4.0 * Circulation, double.MinNative(0.06 * changesPerHour, 6.0));
            Moving = Circulation > 0.0 || changesPerHour > 10.0;

            // An unbalanced flow presses leaks one way: the sum of squares, as in ASHRAE Fundamentals, infiltration (from memory).
            double meanC = AboveC + model.airShareBelow * (BelowC - AboveC);
            double differenceK = Math.Abs(meanC - OutsideC) + 1e-4;
            double square = house.LeakageStackM3PerSRootK * house.LeakageStackM3PerSRootK * differenceK
                + house.LeakageWindM2 * house.LeakageWindM2 * WindMPerS * WindMPerS;
            double unbalanced = Math.Abs(fanBelow + fanAbove - blown) * OutsideDensityInverse, alone = house.LeakageBaseM3PerS;
            if (alone > 0.0)
            {
                double still = alone + Math.Sqrt(square);
                square = still * still;
            }

            LeakM3PerS = Math.Sqrt(unbalanced * unbalanced + square) - unbalanced;
            OutsideBelow += LeakM3PerS * model.belowShare * OutsideDensity;
            OutsideAbove += LeakM3PerS * (1.0 - model.belowShare) * OutsideDensity;
            if (f.UpperAirM3PerS > 0.0)
            {
                OutsideAbove += Clamp(f.UpperAirM3PerS, 0.0, 1e5) * OutsideDensity;
            }

            if (f.RoofVentM2 > 0.0 || f.SideVentM2 > 0.0)
            {
                Vents(in f, model, meanC, differenceK);
            }

            CurtainExchange(model, belowDensity, aboveDensity);
        }

        // Boulard and Baille 1995 (roof alone), Kittas, Boulard and Papadakis 1997 (roof and side), both from memory.
        private void Vents(in HouseForcing f, HouseModel model, double meanC, double differenceK)
        {
            HouseParameters house = model.house;
            double roof = Clamp(f.RoofVentM2, 0.0, 1e6), side = Clamp(f.SideVentM2, 0.0, 1e6);
            double cd = house.VentDischargeFactor, wind = house.VentWindFactor * WindMPerS * WindMPerS;
            double buoyancy = 2.0 * Gravity * differenceK / (meanC + 273.15);
            double through = 0.0, apart = 1.0;
            if (roof > 0.0 && side > 0.0)
            {
                double freePath = 1.0 / (roof * roof) + 1.0 / (side * side);
                double gaps = house.FloorAreaM2 * (1.0 - Closed + Closed * model.cloth.PorosityFraction) + 1e-3;
                double passed = freePath / (freePath + 1.0 / (gaps * gaps));
                double half = (roof + side) / 2.0;
                through = cd * Math.Sqrt(passed * (buoyancy * house.VentHeightDifferenceM / freePath + half * half * wind));
                apart = 1.0 - passed;
            }

            double roofAlone = apart * roof / 2.0 * cd * Math.Sqrt(buoyancy * house.RoofVentHeightM / 4.0 + wind);
            double sideAlone = apart * side / 2.0 * cd * Math.Sqrt(buoyancy * house.SideVentHeightM / 4.0 + wind);
            VentM3PerS = through + roofAlone + sideAlone;
            OutsideAbove += roofAlone * OutsideDensity;
            OutsideBelow += sideAlone * OutsideDensity;
            if (meanC >= OutsideC)
            {
                OutsideBelow += through * OutsideDensity;
                Upward += through * OutsideDensity;
            }
            else
            {
                OutsideAbove += through * OutsideDensity;
                Downward += through * OutsideDensity;
            }
        }

        // Cloth after Balemans 1989, gap after Miguel 1998 (both theses, from memory); near open the two airs merge.
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        private void CurtainExchange(HouseModel model, double belowDensity, double aboveDensity)
        {
            double open = 1.0 - Closed, differenceK = Math.Abs(BelowC - AboveC);
            double root = ThirdRoot.Of(differenceK);
            double cloth = Closed * model.cloth.PermeabilityMPerSK * root * root;
            double lift = Gravity * Math.Abs(aboveDensity - belowDensity) / (0.5 * (aboveDensity + belowDensity));
            double gap = open * Math.Sqrt(0.5 * model.house.CurtainTravelM * open * lift);
            gap = double.MinNative(aboveDensity > belowDensity ? gap : 0.1 * gap, 1.0);
            double merged = double.MaxNative(0.0, (open - 0.9) * 10.0);
            double speed = cloth + gap + open * (0.002 + 0.02 * Circulation) + merged;
            Exchange = speed * model.house.FloorAreaM2 * 0.5 * (belowDensity + aboveDensity);
        }

        private void Fog(in HouseForcing f, HouseState state, double stepS)
        {
            double spray = Clamp(f.FogKgPerS, 0.0, 1e3);
            // Room for water until 95 % along the wet-bulb line: in the air that is there and in the air that comes.
            double saturatedPa = state.SaturationBelowPa, slope = state.SlopeBelow;
            double saturated = VapourTable.SaturatedHumidityRatio(BelowC, PressurePa), perK = saturated * slope / saturatedPa;
            double room = Math.Max(0.0, (0.95 * saturated - state.WaterBelow) / (1.0 + 0.95 * perK * WetBulbKelvin));
            // Saturation bends along that line: once more from where the tangent led (without it a hundredth and a half too little fog evaporated).
            double cooledC = BelowC - WetBulbKelvin * room, cooledPa = VapourTable.PressurePa(cooledC, out double cooledSlope);
            double cooled = VapourTable.SaturatedHumidityRatio(cooledC, PressurePa);
            room = Math.Max(0.0, room + (0.95 * cooled - state.WaterBelow - room) / (1.0 + 0.95 * cooled * cooledSlope / cooledPa * WetBulbKelvin));
            double deficitPa = Math.Max(0.0, saturatedPa - VapourBelowPa);
            double dry = Math.Min(1.0, 1.0 / 3.0 + 2.0 / 3.0 * Math.Max(0.0, deficitPa - 200.0) / 600.0);
            double comes = Intake + OutsideBelow;
            double most = room * (AirKgBelow / stepS + comes / EndOverMean.Of(comes * stepS / AirKgBelow));
            FogEvaporated = Math.Min(spray * Clamp(f.FogEfficiency, 0.0, 1.0) * dry, most);
            FogFallen = spray - FogEvaporated;
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static double Clamp(double value, double least, double most) => double.MinNative(double.MaxNative(value, least), most);

    private void SetAir(in Drive d)
    {
        const double Cp = AirConstants.SpecificHeatJPerKgK;
        rates.OutsideBelow = d.OutsideBelow * Cp;
        rates.OutsideAbove = d.OutsideAbove * Cp;
        rates.Upward = d.Upward * Cp;
        rates.Downward = d.Downward * Cp;
        rates.Exchange = d.Exchange * Cp;
    }

    /// <summary>The airs' terms become what gives their means over the step.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private AirPair Airs(in Drive d, double stepS, double perS)
    {
        AirPair airs = new(
            in airJPerK, perS, stepS,
            rates.OutsideBelow + rates.IntakeBelow + rates.CurtainBelow + rates.InnerAir[1] + rates.InnerAir[3] + rates.FloorAir + rates.CanopyAir + rates.MassAir,
            rates.OutsideAbove + rates.CurtainAbove + rates.InnerAir[0] + rates.InnerAir[2], rates.Downward, rates.Upward, rates.Exchange);
        capacity.AirBelow = airs.BelowStores * stepS;
        capacity.AirAbove = airs.AboveStores * stepS;
        rates.Exchange += airs.Link;
        double apartW = airs.Link * (d.BelowC - d.AboveC);
        gain.AirBelow += apartW;
        gain.AirAbove -= apartW;
        return airs;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static double InSeries(double a, double b) => a + b > 0.0 ? a * b / (a + b) : 0.0;

    // Done last: the number of transfer units needs every other conductance at the air below.
    private void SetIntake(HouseState state, ref Drive d, in HouseForcing f, double stepS)
    {
        d.IntakeC = d.OutsideC;
        d.IntakeHumidity = d.OutsideHumidity;
        d.HeatEndOverMean = d.WaterEndOverMean = 1.0;
        TransferUnits = 0.0;
        if (d.Intake > 0.0)
        {
            double effectiveness = Clamp(f.PadEffectiveness, 0.0, 1.0);
            d.IntakeFromOutside = d.Intake;
            if (f.DrawsUpstream)
            {
                d.IntakeFromOutside = 0.0;
                d.IntakeC = Clamp(f.UpstreamC, -90.0, 90.0);
                d.IntakeHumidity = Clamp(f.UpstreamHumidityRatio, 0.0, 0.5);
            }
            else if (effectiveness > 0.0)
            {
                double wetC = f.IsWorkedOut ? f.OutsideWetBulbC : VapourTable.WetBulbC(d.OutsideC, d.OutsideHumidity, d.PressurePa);
                double drop = effectiveness * (d.OutsideC - wetC);
                d.IntakeC -= drop;
                d.IntakeHumidity += drop * AirConstants.SpecificHeatJPerKgK / AirConstants.LatentHeatJPerKg;
            }

            // The air above is drawn along too: it holds the air below back only as far as it is itself held, by the roof and by outdoor air.
            double heldAbove = rates.InnerAir[0] + rates.InnerAir[2] + rates.CurtainAbove + rates.OutsideAbove;
            double heatW = rates.InnerAir[1] + rates.InnerAir[3] + rates.FloorAir + rates.CanopyAir + rates.CurtainBelow
                + rates.MassAir + InSeries(rates.Exchange, heldAbove) + rates.OutsideBelow + rates.Downward;
            double perIntake = 1.0 / d.Intake;
            TransferUnits = heatW * (1.0 / AirConstants.SpecificHeatJPerKgK) * perIntake;
            // The profile grows as the house is flushed; until then the air at the fans is still the mean. Circulation fans stir it,
            // and air that leaves through the curtain leaves at the mean.
            double flushed = stepS * d.Intake / d.AirKgBelow, endOverMean = EndOverMean.Of(flushed), grows = (1.0 - state.Profile) * flushed / (endOverMean + flushed);
            double plug = (1.0 - 0.5 * d.Circulation) * d.BelowShare * (state.Profile + grows);
            state.Profile += endOverMean * grows;
            d.HeatEndOverMean = 1.0 + (EndOverMean.Of(TransferUnits) - 1.0) * plug;
            double waterUnits = (perPaBelow * d.KappaBelow + InSeries(d.Exchange, d.OutsideAbove) + d.OutsideBelow + d.Downward) * perIntake;
            d.WaterEndOverMean = 1.0 + (EndOverMean.Of(waterUnits) - 1.0) * plug;
        }
        else if (state.Profile > 0.0)
        {
            double fades = stepS / ProfileFadesS, endOverMean = EndOverMean.Of(fades);
            double left = state.Profile * (1.0 - endOverMean * fades / (endOverMean + fades));
            state.Profile = left > 1e-9 ? left : 0.0;
        }

        rates.IntakeBelow = d.Intake * d.HeatEndOverMean * AirConstants.SpecificHeatJPerKgK;
    }
}
