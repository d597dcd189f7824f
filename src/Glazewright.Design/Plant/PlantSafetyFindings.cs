using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using static Glazewright.Design.Plant.PlantWords;

namespace Glazewright.Design.Plant;

/// <summary>What Plant finds about heat, power, curtain and pressure.</summary>
internal static class PlantSafetyFindings
{
    private static readonly Source Practice = new Source.CommonPractice("the trade's safety rules for greenhouse plant");

    /// <summary>Output of the first heater over the design loss from which it is called coarse: our judgement.</summary>
    private const double CoarseRatio = 1.5;

    public static IEnumerable<Finding> Heat(PlantFacts f)
    {
        string house = f.Input.House;
        bool pipe = f.Input.Equipment.BenchPipeW > 0;
        string at = f.Heat is not null ? $"{house}/heater-1" : pipe ? $"{house}/bench-pipe" : house;
        if (f.Heat is not null)
        {
            foreach (Finding burner in Burners(f, f.Heat))
            {
                yield return burner;
            }
        }
        else if (!pipe)
        {
            bool planted = f.Input.Schedule.Any(c => c.PlantedFraction > 0);
            if (f.HeatAsked.NeedW > 0)
            {
                yield return new Finding(
                    "plant/no-heat", planted && f.Duty.Conditions.Heating996C < 2 ? Severity.Miss : Severity.Near, house,
                    Text($"The house has no heat: on the 99.6 % night it comes to about the {F(f.Duty.Conditions.Heating996C)} outside, where {KBtu(f.HeatAsked.NeedW)} kBtu/h would hold {F(f.Duty.NightTargetC)}."),
                    "Heaters or bench pipe; or no crop in those weeks, and pipes drained.", Practice);
            }

            yield break;
        }

        if (pipe && f.Input.Utilities.Fuel == FuelKind.None)
        {
            yield return new Finding(
                "plant/boiler-without-fuel", Severity.Miss, $"{house}/bench-pipe",
                "The bench pipes hang on a boiler that burns fuel, and the lot has none: as it is, nothing warms them.",
                "A fuel for the lot, or electric heaters in the pipe's place.", new Source.Given("/utilities/fuel"));
        }

        if (f.HeatW < f.HeatAsked.NeedW)
        {
            yield return new Finding(
                "plant/heat-short", Severity.Miss, at, HeatLimit(f.HeatW, f.Duty, f.HeatAsked),
                (f.Heat is null ? "More pipe with its boiler, or heaters beside it" : "Larger or more heaters") + (f.HeatAsked.FilterWPerK > 0 ? ", or rest the filter fan in cold weather." : "."), Practice);
        }

        double holdsOpenC = f.Heat?.OneOutHoldsOpenC ?? Math.Min(f.Duty.Conditions.Heating996C, f.Duty.NightTargetC);
        bool freezes = holdsOpenC < 2;
        yield return new Finding(
            "plant/one-heater-out", freezes ? Severity.Miss : holdsOpenC < f.Duty.NightTargetC - 0.05 ? Severity.Near : Severity.Note, at,
            f.Heat is { } heat ? OneOut(f, heat) : Text($"One boiler warms the bench pipes; with it dead the house comes to {FloorF(holdsOpenC)} on the 99.6 % night."),
            freezes ? "Split the heat over more units so that one dead heater does not freeze the crop." : "",
            Practice);
        double extremeHoldsC = f.Duty.Conditions.ExtremeMinC + f.HeatW / f.HeatAsked.LossWPerK;
        yield return new Finding(
            "plant/extreme-night", extremeHoldsC < 2 ? Severity.Miss : Severity.Note, at,
            Text($"On the year's coldest night ({F(f.Duty.Conditions.ExtremeMinC)}) all heat holds {FloorF(Math.Min(extremeHoldsC, f.Duty.NightTargetC))}{(f.Curtain is null ? "" : " with the curtain open")}."),
            extremeHoldsC < 2 ? "More heat: it is not frost-safe." : "",
            f.Duty.Conditions.Source);
    }

    private static string OneOut(PlantFacts f, HeatPlant heat)
    {
        bool pipe = f.Input.Equipment.BenchPipeW > 0;
        bool boiler = f.Input.Equipment.BenchPipeW > heat.Heaters.Max(h => h.OutputW);
        return Text($"{heat.Heaters.Count} heater{(heat.Heaters.Count == 1 ? "" : "s")}{(pipe ? " and the bench pipes' boiler" : "")}; with {(boiler ? "the boiler" : heat.Heaters.Count == 1 ? "it" : "the largest")} dead {(heat.Heaters.Count == 1 && !pipe ? "the house comes to" : "the rest hold")} {FloorF(heat.OneOutHoldsC)}{(f.Curtain is null ? "" : Text($" with the curtain drawn, {FloorF(heat.OneOutHoldsOpenC)} with it open,"))} on the 99.6 % night.");
    }

    private static IEnumerable<Finding> Burners(PlantFacts f, HeatPlant heat)
    {
        string house = f.Input.House;
        bool burns = heat.Heaters.Any(h => !h.Electric);
        bool open = heat.Heaters.Any(h => !h.Electric && !h.SealedCombustion);
        if (open)
        {
            yield return new Finding(
                "plant/open-combustion", Severity.Danger, $"{house}/heater-1",
                f.Run is not null
                    ? "A gravity vent in a house with exhaust fans back-drafts: carbon monoxide kills people, and traces of ethylene kill the crop first. An interlock is not enough in a tight house."
                    : "A gravity vent in a tight house can back-draft: carbon monoxide kills people, and traces of ethylene kill the crop first.",
                "Sealed combustion heaters that take their air from outside; a CO alarm in any case.", Practice);
        }
        else if (burns)
        {
            yield return new Finding(
                "plant/carbon-monoxide", Severity.Note, $"{house}/heater-1",
                "Sealed combustion keeps flue gas out of the house as long as flue and heat exchanger are sound: a CO alarm and a yearly check stay needed. Gas work by a licensed fitter.",
                "", Practice);
        }

        double rating = BurnerAltitude.RatingFraction(f.Input.ElevationM);
        if (burns && rating < 1)
        {
            yield return new Finding(
                "plant/burners-in-thin-air", Severity.Near, $"{house}/heater-1",
                Text($"At {f.Input.ElevationM / 0.3048:N0} ft ({f.Input.ElevationM:N0} m) burners are counted with {100 * rating:0} % of their rating: 4 % less for each 1,000 ft."),
                "Have the maker's altitude table, orifices and setting done by a licensed fitter: a burner that gets too little air makes carbon monoxide.",
                new Source.Standard("NFPA 54", "11.1.2, high-altitude ratings", Source.Mark.ReadSecondHand));
        }

        double needW = f.HeatAsked.NeedW;
        double coarse = needW > 0 ? heat.Heaters[0].LeastW / needW : 0;
        if (coarse > CoarseRatio)
        {
            yield return new Finding(
                "plant/heater-coarse", coarse > 2 * CoarseRatio ? Severity.Miss : Severity.Near, $"{house}/heater-1",
                Text($"The first heater alone {(heat.Heaters[0].Part is null ? "gives" : "gives at its least fire")} {coarse:0.0} times what the coldest night asks: on every other night even its shortest run overheats the house, and air and crop swing with it."),
                "Smaller or modulating heaters (heaterFire), electric ones in a very small house.", Practice);
        }
    }

    public static IEnumerable<Finding> Power(PlantFacts f)
    {
        string house = f.Input.House;
        Utilities lot = f.Input.Utilities;
        foreach (ElectricLoad load in f.Loads.Where(l => l.ThreePhase && lot.Phase == Phase.Single))
        {
            yield return new Finding(
                "plant/three-phase", Severity.Miss, load.Id,
                $"{load.Label} needs three phases; the lot has single-phase power.",
                "A single-phase motor, or a converter priced in.",
                new Source.Given("/utilities/phase"));
        }

        double apparentVa = f.Loads.Sum(l => l.Count * l.FullLoadA * l.VoltageV * (l.ThreePhase ? Math.Sqrt(3) : 1));
        double amps = apparentVa / lot.ServiceV / (lot.Phase == Phase.Three ? Math.Sqrt(3) : 1);
        if (lot.ServiceA > 0)
        {
            yield return new Finding(
                "plant/service", amps > lot.ServiceA ? Severity.Miss : amps > 0.8 * lot.ServiceA ? Severity.Near : Severity.Note, house,
                Text($"Everything of this house on at once draws {amps:0} A of the lot's {lot.ServiceA:0} A, other houses and buildings not counted. The panels' demand is another number: of all houses, cooling or heating by whichever draws more, with the code's allowances for motors."),
                amps > 0.8 * lot.ServiceA ? "A larger service, or a program that never runs heat and cooling together." : "",
                Practice);
        }

        yield return new Finding(
            "plant/electrical-work", Severity.Note, house,
            "Wet location: GFCI, corrosion-proof boxes, a disconnect in sight of each motor, lock-out before reaching into fans, steel bonded to ground. By a licensed electrician. A generator only behind a transfer switch: back-feed kills line crews.",
            "", Practice);
    }

    // Light of a bright day behind it stays below what short-day crops count as day, about 2 µmol/m²s of 2,000 (common practice).
    private const double DarkEnough = 0.001;

    public static IEnumerable<Finding> Rest(PlantFacts f)
    {
        string house = f.Input.House;
        foreach ((CurtainPlant cloth, string name) in new[] { (f.Curtain, "curtain"), (f.SecondCurtain, "second-curtain") }.Where(c => c.Item1 is not null).Select(c => (c.Item1!, c.Item2)))
        {
            string spread = f.Catalogue.Curtains.First(c => c.Id == cloth.Entry).FlameSpread;
            bool heaters = f.Heat?.Heaters.Any(h => !h.Electric) == true || f.Input.Equipment.LampW > 0;
            yield return new Finding(
                "plant/curtain-fire", spread == "A" ? Severity.Note : Severity.Near, $"{house}/{name}",
                $"Cloth of flame-spread class {spread}."
                    + (heaters ? " Keep lamps, heaters and flues out of its clearance above and below; leave the fire break the insurer asks; motor cut-out on alarm." : ""),
                spread == "A" ? "" : "A class A cloth.",
                Practice);
        }

        if (f.SecondCurtain is { Purpose: CurtainPurpose.Blackout } dark && dark.SolarTransmittanceFraction > DarkEnough)
        {
            yield return new Finding(
                "plant/blackout-leaks", Severity.Miss, $"{house}/second-curtain",
                Text($"The blackout cloth lets {100 * dark.SolarTransmittanceFraction:0.#} % of the light through: a short-day crop counts that as day."),
                "A cloth of 0.1 % or less, with overlapping seams and skirts.",
                Practice);
        }

        if (f.Pressure is { } pressure)
        {
            bool short_ = pressure.HeldPa < f.Input.Equipment.PositivePressurePa;
            yield return new Finding(
                "plant/positive-pressure", short_ ? Severity.Miss : Severity.Near, $"{house}/filter-fan",
                Text($"{f.PressureFans} filter fan{(f.PressureFans == 1 ? " holds" : "s hold")} {InWg(pressure.HeldPa)} in. w.g. with {Cfm(pressure.FlowM3PerS)} cfm in calm air with doors shut{(short_ ? "" : ", throttled to that by a damper or a speed control (assumed)")}; from {Mph(pressure.FailsAtWindMs)} mph of wind the windward wall leaks in all the same. It is a mode of its own: off while exhaust fans run."),
                short_ ? "Tighten the house, or give up the pressure." : "",
                Practice);
        }

        if (f.Pressure is { FlowM3PerS: > 0 } filter && OtherKinds.Co2Of(f.Input, f.Form, filter, f.Duty.PressurePa) is { } gas)
        {
            double allKgPerS = gas.DoseKgPerS / OtherKinds.Co2SpareRatio;
            double sealedKgPerS = OtherKinds.Co2Of(f.Input, f.Form, null, f.Duty.PressurePa)!.DoseKgPerS / OtherKinds.Co2SpareRatio;
            double thrown = allKgPerS > 0 ? 1 - sealedKgPerS / allKgPerS : 0;
            yield return new Finding(
                "plant/co2-with-filter-fan", thrown > 0.25 ? Severity.Near : Severity.Note, $"{house}/co2-valve",
                Text($"While the filter fan runs, {gas.TargetPpm:#,0} ppm take {allKgPerS * 3600 / 0.45359237:0.0} lb/h of carbon dioxide in full light; without it {sealedKgPerS * 3600 / 0.45359237:0.0} lb/h. {100 * thrown:0} % is blown out through the leaks, all day."),
                "Tighten the house, so that less air holds the pressure; dose less while it runs; or choose between the two.",
                Practice);
        }

        if (f.Run is null && f.Vents is { } vents)
        {
            VentAir air = VentAir.Of(vents, f.Form, f.Duty.Air.Summer.DryBulbC);
            double share = air.BothM3PerS / Math.Max(f.Duty.VentilationM3PerS, 0.01);
            if (share < 1)
            {
                yield return new Finding(
                    "plant/vents-short", share < 0.7 ? Severity.Miss : Severity.Near, $"{house}/{(vents.RoofM2 > 0 ? "roof-vent" : "side-vent")}",
                    Text($"The vents pass {Cfm(air.BothM3PerS)} cfm, {100 * share:0} % of the {Cfm(f.Duty.VentilationM3PerS)} cfm the design day asks, when the house is {VentAir.WarmerK * 1.8:0} F° warmer than outside and a wind of {Mph(VentAir.BreezeMs)} mph blows; less in a calm.")
                        + (vents.ScreenedFraction < 1 ? Text($" The insect screen leaves {100 * vents.ScreenedFraction:0} % of what the bare openings would pass.") : "")
                        + (air.Alone ? " Air comes and goes by the same openings." : ""),
                    air.Alone
                        ? Text($"Vents in the {(vents.RoofM2 > 0 ? "side" : "roof")} too, so that air comes in low and leaves high; or exhaust fans for the hottest days.")
                        : "Roof and side vents of 15 to 20 % of the floor each (common practice), more shade, or exhaust fans for the hottest days.",
                    Practice);
            }
        }

        if (f.Circulation is { Count: > 0 } circulation)
        {
            yield return new Finding(
                "plant/circulation", circulation.CropSpeedMs is < 0.2 * 0.44704 or > 2 * 0.44704 ? Severity.Near : Severity.Note, $"{house}/circulation",
                Text($"{circulation.Count} fans, {circulation.SpacingM / 0.3048:0} ft apart: about {Mph(circulation.CropSpeedMs)} mph around the loop on average, by a momentum balance with this crop's drag. Throw alone does not prove an even loop; corners behind benches can stand still."),
                "Hang them where no head meets them, guarded; check with smoke.",
                Practice);
        }

        int asked = f.Input.Equipment.OscillatingFans;
        OscillatingPlant swept = OscillatingFans.Of(asked, f.Form, f.Catalogue);
        int needed = swept.Needed;
        bool slow = f.Circulation is { Count: > 0, CropSpeedMs: < OscillatingPlant.MeanMs };
        if (asked > 0 ? asked < needed : slow)
        {
            yield return new Finding(
                "plant/oscillating", Severity.Near, $"{house}/oscillating",
                asked > 0
                    ? Text($"{asked} oscillating fan{(asked == 1 ? "" : "s")} of the {needed} this floor takes: {swept.NeededByPeak} for {Mph(OscillatingPlant.PeakMs)} mph while the jet passes, {swept.NeededByMean} for a mean of {Mph(OscillatingPlant.MeanMs)} mph over a sweep; the {(swept.NeededByMean > swept.NeededByPeak ? "mean" : "peak")} governs.")
                    : Text($"The circulation loop moves air past the crop at {Mph(f.Circulation!.CropSpeedMs)} mph; {Mph(OscillatingPlant.MeanMs)} to {Mph(OscillatingPlant.PeakMs)} are wanted."),
                Text($"equipment.oscillatingFans {needed}: free-jet throw, the best case; foliage slows it."),
                Practice);
        }
    }
}
