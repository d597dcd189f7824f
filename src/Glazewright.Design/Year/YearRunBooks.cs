using System.Runtime.Intrinsics;
using Glazewright.Science.Climate;

namespace Glazewright.Design.Year;

/// <summary>What the year adds up: energy and water by parts of minutes, hours held by how each minute ends.</summary>
internal sealed partial class YearRun
{
    /// <summary>Books what flowed in a part of a minute.</summary>
    private void Book(in Asked ask, double partS)
    {
        ref readonly HouseFluxes x = ref model.LastFluxes;
        ref MonthTally m = ref months[month];
        m.HeatJ += Plant.HeatW * partS;
        m.FuelJ += Plant.FuelW * partS;
        m.PowerJ += Plant.PowerW * partS;
        m.WaterKg += (x.PadWaterKgPerS * (1 + Bleed) + x.FogEvaporatedKgPerS + x.FogFallenKgPerS) * partS;
        m.LightMol += (acted.SunCanopyW + acted.SunFloorW) * lightMolPerJ * partS;
        if (Plant.LampW > 0)
        {
            double plantedFraction = ask.Period >= 0 ? input.Schedule[ask.Period].PlantedFraction : 0;
            m.LampMol += Plant.LampW * lampUmolPerJ * 1e-6 * partS / (plantedFraction > 0 ? plantedFraction * floorM2 : floorM2);
        }

        m.Co2Kg += Plant.DoseKgPerS * partS;
        DriedKg += x.DriedKgPerS * partS;
        quarterJ += Plant.PowerW * partS;
        bool fans = Plant.FlowM3PerS > 0;
        balance.Add(in x, fans, partS);
        sinceFansS = fans ? 0 : sinceFansS + partS;
        if (fans && ask.Period >= 0 && acted.OutsideC < ask.TemperatureC - 10)
        {
            WinterFanAirJ += Math.Max(x.AirLossW, 0) * partS;
        }

        TranspiredKg += x.TranspirationKgPerS * partS;
        CondensedKg += Math.Max(x.CondensedKgPerS, 0) * partS;
        HeatTurnedJ += (x.SunW + x.HeatW + x.LampW + Math.Abs(x.ShellLossW) + Math.Abs(x.AirLossW) + Math.Abs(x.LatentW)) * partS;
        HeatMissedJ += Math.Abs(x.HeatResidualW) * partS;
        WaterTurnedKg += (x.TranspirationKgPerS + x.FogEvaporatedKgPerS + x.FogFallenKgPerS + Math.Abs(x.AirWaterLossKgPerS)) * partS;
        WaterMissedKg += Math.Abs(x.WaterResidualKgPerS) * partS;
        if (acted.PositivePressureM3PerS > 0)
        {
            FilterFanJ += acted.PositivePressureM3PerS * AirConstants.DensityKgPerM3(acted.OutsideC, acted.PressurePa)
                * AirConstants.SpecificHeatJPerKgK * Math.Max(state.AirBelowC - acted.OutsideC, 0) * partS;
        }
    }

    /// <summary>Counts a minute by how it ends.</summary>
    private void Count(int minute)
    {
        ref readonly HouseForcing forcing = ref acted;
        double airC = state.AirBelowC, percent = percentNow;
        bool wetCover = state.FilmKg(WetSurface.UpperClear) + state.FilmKg(WetSurface.LowerClear) > wetCoverKg;
        bool wetLeaf = state.FilmKg(WetSurface.Canopy) > wetLeafKg;
        MinuteSeen seen = new(airC, percent, state.SaturationBelowPa, wetCover, wetLeaf, Plant.AllCooling, Plant.AllHeating);
        Asked ask = Targets.At(minute);
        double neverAboveC = ask.Period >= 0 ? input.Schedule[ask.Period].NeverAboveC : double.MaxValue;
        ref MonthTally m = ref months[month];
        Held.At(month, ask.Period, ask.Day).Add(in ask, in seen, input.Band, neverAboveC);

        if (airC < LowestC)
        {
            (LowestC, LowestMinute) = (airC, minute);
        }

        // An empty house may bake: once something grows, only minutes with a crop compete for the hottest.
        bool planted = ask.Period >= 0 && !ask.Empty;
        if (planted == hottestPlanted ? airC > HighestC : planted)
        {
            (HighestC, HighestMinute, hottestPlanted) = (airC, minute, planted);
        }

        if (ask.Period >= 0)
        {
            ref readonly HouseFluxes x = ref model.LastFluxes;
            bool fans = Plant.FlowM3PerS > 0;
            ends.Add(in ask, fans ? x.IntakeC : airC, fans ? x.FanEndC : airC, input.Band.TemperatureK, neverAboveC);
        }

        if (airC > neverAboveC)
        {
            overWithMoreMinutes += seen.AllCooling ? 0 : 1;
            if (airC > HighestOverC)
            {
                (HighestOverC, OutsideAtHighestOverC, HighestOverHadMore) = (airC, forcing.OutsideC, !seen.AllCooling);
            }
        }

        if (minute % 15 == 14)
        {
            m.PeakW = Math.Max(m.PeakW, quarterJ / 900);
            quarterJ = 0;
        }

        if (sinceFansS <= 600)
        {
            coldAfterFansMinutes += ask.Period >= 0 && airC < ask.TemperatureC - input.Band.TemperatureK ? 1 : 0;
            frostAfterFansMinutes += airC <= 0 ? 1 : 0;
        }

        if (rain.HoldsVents)
        {
            rain.Count(minute, commands, ask is { Period: >= 0, Empty: false } && airC > ask.TemperatureC + input.Band.TemperatureK);
        }

        if (snow.IsTold)
        {
            snow.Count(forcing.OutsideC, weather.GhiWm2[minute]);
        }

        minutesSinceOpening = Plant.CurtainFraction < curtainBefore || Plant.SecondCurtainFraction < secondBefore ? 0 : minutesSinceOpening + 1;
        (curtainBefore, secondBefore) = (Plant.CurtainFraction, Plant.SecondCurtainFraction);
        if (airC <= 0 && minutesSinceOpening <= 10)
        {
            frostAfterCurtainMinutes++;
        }

        hourState += Vector256.Create(airC, percent, state.AirAboveC, forcing.OutsideC);
        hourPlant += Vector256.Create(ask.TemperatureC, means.HeatW, means.FlowM3PerS, means.CurtainFraction);
        hourMore += Vector256.Create(means.CoolingFraction, ask.DepartureK(airC), means.SecondCurtainFraction, 0);
        if (minute % 60 == 59)
        {
            if (!double.IsFinite(airC))
            {
                throw new InvalidOperationException($"The year came to something that is no number in the hour before minute {minute}.");
            }

            for (int i = 0; i < hours.Length; i++)
            {
                Vector256<double> sums = i < 4 ? hourState : i < 8 ? hourPlant : hourMore;
                hours[i][minute / 60] = (float)(sums.GetElement(i % 4) / 60);
            }

            hourState = hourPlant = hourMore = default;
        }
    }
}
