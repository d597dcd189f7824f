using Glazewright.Science.Maths;
using Glazewright.Science.Network;

namespace Glazewright.Science.Climate;

public sealed partial class HouseModel
{
    private const double Gravity = 9.80665;
    private const double ProfileFadesS = 120.0; // a gradient along a house mixes away in minutes once the fans stop (choice)

    /// <summary>The air streams of one step, kg/s of dry air, and what else is worked out once from the last state.</summary>
    private struct Drive
    {
        public double PressurePa, OutsideC, OutsideHumidity, WindMPerS, SkyC;
        public double BelowC, AboveC, Closed, CanopyCover, LeafAreaIndex, Circulation;
        public double OutsideDensity, AirKgBelow, AirKgAbove;
        public double OutsideBelow, OutsideAbove, Intake, BelowShare, Upward, Downward, Exchange;
        public double IntakeC, IntakeHumidity, HeatEndOverMean, WaterEndOverMean;
        public double ExhaustAirChangesPerHour, FogEvaporated, FogFallen;
        public double VapourBelowPa, VapourAbovePa, KappaBelow, KappaAbove; // vapour pressure = kappa · humidity ratio, secant at the last state
        public double VentM3PerS, LeakM3PerS;

        public static Drive From(in HouseForcing f, HouseState state, HouseParameters house, double stepS)
        {
            Drive d = default;
            d.PressurePa = Clamp(f.PressurePa, 30_000.0, 115_000.0, 101_325.0);
            d.OutsideC = Clamp(f.OutsideC, -90.0, 70.0, 0.0);
            double mostHumid = VapourTable.SaturatedHumidityRatio(d.OutsideC, d.PressurePa);
            d.OutsideHumidity = Clamp(f.OutsideHumidityRatio, 0.0, mostHumid, 0.0);
            d.WindMPerS = Clamp(f.WindMPerS, 0.0, 60.0, 0.0);
            d.SkyC = Clamp(f.SkyC, -120.0, 80.0, d.OutsideC);
            d.Closed = Clamp(f.CurtainClosedFraction, 0.0, 1.0, 0.0);
            d.Circulation = Clamp(f.CirculationFraction, 0.0, 1.0, 0.0);
            d.LeafAreaIndex = Clamp(f.LeafAreaIndex, 0.0, 12.0, 0.0);
            d.CanopyCover = d.LeafAreaIndex > 0.0 ? 1.0 - Elementary.Exp(-0.94 * d.LeafAreaIndex) : 0.0;
            d.BelowC = state.AirBelowC;
            d.AboveC = state.AirAboveC;
            d.OutsideDensity = AirConstants.DensityKgPerM3(d.OutsideC, d.PressurePa);
            double storeDensity = AirConstants.DensityKgPerM3(20.0, 101_325.0);
            d.AirKgBelow = storeDensity * house.AirBelowM3;
            d.AirKgAbove = storeDensity * house.AirAboveM3;
            d.KappaBelow = d.PressurePa / (0.621945 + state.Water[0]);
            d.KappaAbove = d.PressurePa / (0.621945 + state.Water[1]);
            d.VapourBelowPa = d.KappaBelow * state.Water[0];
            d.VapourAbovePa = d.KappaAbove * state.Water[1];
            d.Streams(in f, house);
            d.Fog(in f, state, stepS);
            return d;
        }

        private void Streams(in HouseForcing f, HouseParameters house)
        {
            double belowDensity = AirConstants.DensityKgPerM3(BelowC, PressurePa), aboveDensity = AirConstants.DensityKgPerM3(AboveC, PressurePa);
            double fanBelow = Clamp(f.FanBelowM3PerS, 0.0, 1e5, 0.0) * belowDensity, fanAbove = Clamp(f.FanAboveM3PerS, 0.0, 1e5, 0.0) * aboveDensity;
            double blown = Clamp(f.PositivePressureM3PerS, 0.0, 1e5, 0.0) * OutsideDensity;
            Intake = Math.Max(fanBelow + fanAbove - blown, 0.0);
            BelowShare = fanBelow + fanAbove > 0.0 ? fanBelow / (fanBelow + fanAbove) : 1.0;
            OutsideBelow = blown;
            Upward = fanAbove;
            ExhaustAirChangesPerHour = 3600.0 * (fanBelow + fanAbove) / (belowDensity * (house.AirBelowM3 + house.AirAboveM3));

            // An unbalanced flow presses leaks one way: the sum of squares, as in ASHRAE Fundamentals, infiltration (from memory).
            double meanC = (BelowC * house.AirBelowM3 + AboveC * house.AirAboveM3) / (house.AirBelowM3 + house.AirAboveM3);
            double differenceK = Math.Abs(meanC - OutsideC) + 1e-4;
            double still = house.LeakageBaseM3PerS
                + Math.Sqrt(house.LeakageStackM3PerSRootK * house.LeakageStackM3PerSRootK * differenceK
                    + house.LeakageWindM2 * house.LeakageWindM2 * WindMPerS * WindMPerS);
            double unbalanced = Math.Abs(fanBelow + fanAbove - blown) / OutsideDensity;
            LeakM3PerS = Math.Sqrt(unbalanced * unbalanced + still * still) - unbalanced;
            double lowerArea = house.LowerClear.AreaM2 + house.LowerOpaque.AreaM2, upperArea = house.UpperClear.AreaM2 + house.UpperOpaque.AreaM2;
            double below = lowerArea + upperArea > 0.0 ? lowerArea / (lowerArea + upperArea) : 0.5;
            OutsideBelow += LeakM3PerS * below * OutsideDensity;
            OutsideAbove += LeakM3PerS * (1.0 - below) * OutsideDensity;
            Vents(in f, house, meanC, differenceK);
            CurtainExchange(house, belowDensity, aboveDensity);
        }

        // Boulard and Baille 1995 (roof alone), Kittas, Boulard and Papadakis 1997 (roof and side), both from memory.
        private void Vents(in HouseForcing f, HouseParameters house, double meanC, double differenceK)
        {
            double roof = Clamp(f.RoofVentM2, 0.0, 1e6, 0.0), side = Clamp(f.SideVentM2, 0.0, 1e6, 0.0);
            if (roof + side <= 0.0)
            {
                return;
            }

            double cd = house.VentDischargeFactor, wind = house.VentWindFactor * WindMPerS * WindMPerS;
            double buoyancy = 2.0 * Gravity * differenceK / (meanC + 273.15);
            double through = 0.0, apart = 1.0;
            if (roof > 0.0 && side > 0.0)
            {
                double freePath = 1.0 / (roof * roof) + 1.0 / (side * side);
                double gaps = house.FloorAreaM2 * (1.0 - Closed + Closed * house.Curtain.PorosityFraction) + 1e-3;
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
        private void CurtainExchange(HouseParameters house, double belowDensity, double aboveDensity)
        {
            double open = 1.0 - Closed, differenceK = Math.Abs(BelowC - AboveC);
            double root = Elementary.Cbrt(differenceK);
            double cloth = Closed * house.Curtain.PermeabilityMPerSK * root * root;
            double lift = Gravity * Math.Abs(aboveDensity - belowDensity) / (0.5 * (aboveDensity + belowDensity));
            double gap = open * Math.Sqrt(0.5 * house.CurtainTravelM * open * lift);
            gap = Math.Min(aboveDensity > belowDensity ? gap : 0.1 * gap, 1.0);
            double merged = Math.Max(0.0, (open - 0.9) * 10.0);
            double speed = cloth + gap + open * (0.002 + 0.02 * Circulation) + merged;
            Exchange = speed * house.FloorAreaM2 * 0.5 * (belowDensity + aboveDensity);
        }

        private void Fog(in HouseForcing f, HouseState state, double stepS)
        {
            double spray = Clamp(f.FogKgPerS, 0.0, 1e3, 0.0);
            if (spray <= 0.0)
            {
                return;
            }

            // Room for water until 95 % along the wet-bulb line: in the air that is there and in the air that comes.
            double saturatedPa = VapourTable.PressurePa(BelowC, out double slope);
            double saturated = VapourTable.SaturatedHumidityRatio(BelowC, PressurePa), perK = saturated * slope / saturatedPa;
            double room = Math.Max(0.0, (0.95 * saturated - state.Water[0])
                / (1.0 + 0.95 * perK * AirConstants.LatentHeatJPerKg / AirConstants.SpecificHeatJPerKgK));
            double deficitPa = Math.Max(0.0, saturatedPa - VapourBelowPa);
            double dry = Math.Min(1.0, 1.0 / 3.0 + 2.0 / 3.0 * Math.Max(0.0, deficitPa - 200.0) / 600.0);
            double most = room * (AirKgBelow / stepS + Intake + OutsideBelow);
            FogEvaporated = Math.Min(spray * Clamp(f.FogEfficiency, 0.0, 1.0, 0.0) * dry, most);
            FogFallen = spray - FogEvaporated;
        }
    }

    private static double Clamp(double value, double least, double most, double ifNotANumber) =>
        value >= least ? (value <= most ? value : most) : value < least ? least : ifNotANumber;

    private void SetAir(NetworkState net, in Drive d)
    {
        const double Cp = AirConstants.SpecificHeatJPerKgK;
        double[] rate = net.LinkWPerK;
        rate[link.OutsideBelow] = d.OutsideBelow * Cp;
        rate[link.OutsideAbove] = d.OutsideAbove * Cp;
        rate[link.BelowAbove] = d.Upward * Cp;
        rate[link.AboveBelow] = d.Downward * Cp;
        rate[link.Exchange] = d.Exchange * Cp;
        double total = house.AirBelowM3 + house.AirAboveM3, fast = house.FastMassJPerM2K * house.FloorAreaM2;
        net.CapacityJPerK[HouseNodes.AirBelow] = fast * house.AirBelowM3 / total + d.AirKgBelow * Cp;
        net.CapacityJPerK[HouseNodes.AirAbove] = fast * house.AirAboveM3 / total + d.AirKgAbove * Cp;
    }

    // Done last: the number of transfer units needs every other conductance at the air below.
    private void SetIntake(HouseState state, ref Drive d, in HouseForcing f, double stepS)
    {
        NetworkState net = state.Network;
        double[] rate = net.LinkWPerK;
        d.IntakeC = d.OutsideC;
        d.IntakeHumidity = d.OutsideHumidity;
        d.HeatEndOverMean = d.WaterEndOverMean = 1.0;
        TransferUnits = 0.0;
        if (d.Intake > 0.0)
        {
            double effectiveness = Clamp(f.PadEffectiveness, 0.0, 1.0, 0.0);
            if (effectiveness > 0.0)
            {
                double drop = effectiveness * (d.OutsideC - VapourTable.WetBulbC(d.OutsideC, d.OutsideHumidity, d.PressurePa));
                d.IntakeC -= drop;
                d.IntakeHumidity += drop * AirConstants.SpecificHeatJPerKgK / AirConstants.LatentHeatJPerKg;
            }

            double heatW = rate[link.InnerAir + 1] + rate[link.InnerAir + 3] + rate[link.FloorAir] + rate[link.CanopyAir] + rate[link.CurtainBelow]
                + rate[link.MassAir] + rate[link.Exchange] + rate[link.OutsideBelow] + rate[link.AboveBelow];
            TransferUnits = heatW / (d.Intake * AirConstants.SpecificHeatJPerKgK);
            // The profile grows as the house is flushed; until then the air at the fans is still the mean. Circulation fans stir it,
            // and air that leaves through the curtain leaves at the mean.
            double flushed = stepS * d.Intake / d.AirKgBelow;
            state.Profile = (state.Profile + flushed) / (1.0 + flushed);
            double plug = (1.0 - 0.5 * d.Circulation) * d.BelowShare * state.Profile;
            d.HeatEndOverMean = 1.0 + (PadToFan.EndOverMean(TransferUnits) - 1.0) * plug;
            double waterUnits = (vapourPerPa[0] * d.KappaBelow + d.Exchange + d.OutsideBelow + d.Downward) / d.Intake;
            d.WaterEndOverMean = 1.0 + (PadToFan.EndOverMean(waterUnits) - 1.0) * plug;
        }

        else
        {
            state.Profile /= 1.0 + stepS / ProfileFadesS;
        }

        net.TemperatureC[HouseNodes.Intake] = d.IntakeC;
        rate[link.IntakeBelow] = d.Intake * d.HeatEndOverMean * AirConstants.SpecificHeatJPerKgK;
    }
}
