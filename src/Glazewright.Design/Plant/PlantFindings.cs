using Glazewright.Design.Brief;
using Glazewright.Design.Catalogues;
using Glazewright.Design.Contracts;
using Glazewright.Science.Flow;
using static Glazewright.Design.Plant.PlantWords;

namespace Glazewright.Design.Plant;

/// <summary>What Plant finds about air and water.</summary>
internal static class PlantFindings
{
    private static readonly Source Practice = new Source.CommonPractice("the trade's limits for fans, pads and fog");

    /// <summary>Wet-bulb depression from which air without wet wall or fog is told, K: our judgement.</summary>
    private const double DesertDepressionK = 10;

    /// <summary>Fog that sprays so many times what is asked is told: our judgement.</summary>
    private const double MostOversizedFactor = 2;

    public static IEnumerable<Finding> Of(PlantFacts f) =>
        [.. SwitchedOff(f), .. Air(f), .. Water(f), .. HotDay.Of(f), .. Upper(f), .. FanSound.Of(f), .. PlantSafetyFindings.Heat(f), .. PlantSafetyFindings.Power(f), .. PlantSafetyFindings.Rest(f)];

    private static IEnumerable<Finding> SwitchedOff(PlantFacts f) => f.Input.Equipment.SwitchedOff.Select(what => new Finding(
        "plant/switched-off", Severity.Note, f.Input.House,
        $"The job describes {what} and switches it off: nothing of it is counted, drawn or priced.",
        "Set use to true, or leave the description out.", new Source.Given($"{f.Input.Pointer}/equipment")));

    private static IEnumerable<Finding> Air(PlantFacts f)
    {
        if (f.Run is null || f.Intake is null)
        {
            yield break;
        }

        string house = f.Input.House;
        OperatingPoint all = f.Run.Wet[^1];
        if (all.FlowM3PerS < f.NeededM3PerS)
        {
            (string name, double lossPa) = f.Tightest();
            bool fogHolds = f.Fog?.Cooling is { Reached: true };
            yield return new Finding(
                "plant/fans-short", fogHolds ? Severity.Near : Severity.Miss, $"{house}/fan-1",
                ExhaustLimit(f, all, name, lossPa),
                fogHolds
                    ? Text($"With the fog the hottest day is held by {f.Fog!.Cooling!.FansOn} of them; another fan, or a freer path, helps while the fog rests.")
                    : lossPa > MostlyFraction * all.StaticPa ? $"Enlarge the {name}." : "Add a fan, or enlarge what takes the pressure.", Practice);
        }

        if (f.Run.Beyond)
        {
            yield return new Finding(
                "plant/fan-beyond-tested", Severity.Miss, $"{house}/fan-1",
                Text($"With all fans on the static pressure is {InWg(all.StaticPa)} in. w.g., past the fans' last tested point: the flow is a guess, motors run hot and air may fall back through the shutters."),
                "Free the intake or run fewer fans with the pad on.", Practice);
        }

        (string tight, double tightPa) = f.Tightest();
        if (tight == "intake louvers" && tightPa > 15)
        {
            yield return new Finding(
                "plant/louver-tight", Severity.Near, $"{house}/louver",
                Text($"The louvers take {InWg(tightPa)} in. w.g.: their free area is {Sqft(f.Intake.LouverFreeM2)} ft² of {Sqft(f.Intake.LouverGrossM2)} ft² of frame."),
                "Count the free area, not the frame: add louvers.", Practice);
        }

        if (LouverRoom.Short(f) is { } room)
        {
            yield return room;
        }

        double houseMs = all.FlowM3PerS / Math.Max(f.Form.SectionAreaM2, 1);
        double faceMs = all.FlowM3PerS / f.Run.Fans.Sum(e => Math.PI / 4 * e.DiameterM * e.DiameterM);
        yield return new Finding(
            "plant/air-speed", houseMs > 2 * 0.44704 ? Severity.Near : Severity.Note, house,
            Text($"All fans on: {Mph(faceMs)} mph at the fan faces, {Mph(houseMs)} mph through the house. The speed at the leaf is the second one; from about 2 mph leaves suffer, below 0.2 mph air stands."),
            houseMs > 2 * 0.44704 ? "Stage the fans, or baffle the air away from young plants." : "",
            new Source.CommonPractice("about 2 mph at the leaf stresses, 0.2 mph stagnates"));
        double last = f.Run.Fans[0].Points[0].FlowM3PerS / f.Run.Fans.Sum(e => e.Points[0].FlowM3PerS);
        if (last > 0.4)
        {
            yield return new Finding(
                "plant/coarse-first-stage", Severity.Near, $"{house}/fan-1",
                Text($"The first stage is {100 * last:0} % of all the air: mild days will cycle it on and off."),
                "Make one fan smaller or give it a speed drive.", Practice);
        }

        if (f.Intake.ScreenM2 > 0)
        {
            yield return new Finding(
                "plant/insect-screen", Severity.Near, $"{house}/louver",
                Text($"The insect screen needs {Sqft(f.Intake.ScreenM2)} ft² of cloth in a box. Clean: {Cfm(all.FlowM3PerS)} cfm at {InWg(all.StaticPa)} in. w.g.; with {100 * Intake.DirtyFraction:0} % blocked: {Cfm(f.Run.AllDirty.FlowM3PerS)} cfm at {InWg(f.Run.AllDirty.StaticPa)} in. w.g., dirty. Two cloths of one porosity can differ by 2.5 times."),
                "Ask for the cloth's own pressure curve and leave room to wash it.",
                new Source.Paper("López et al. 2016, Sensors 16:690", "abstract", Source.Mark.Read));
        }
    }

    private static IEnumerable<Finding> Upper(PlantFacts f)
    {
        if (f.Upper is not { } upper)
        {
            yield break;
        }

        string house = f.Input.House;
        bool small = upper.FlowM3PerS < upper.NeededM3PerS;
        yield return new Finding(
            "plant/upper-fans", small ? Severity.Near : Severity.Note, $"{house}/upper-fan-1",
            Text($"{upper.Count} upper fan{(upper.Count == 1 ? "" : "s")} move{(upper.Count == 1 ? "s" : "")} {Cfm(upper.FlowM3PerS)} cfm through the space above the drawn curtain; {Cfm(upper.NeededM3PerS)} cfm keep it within {UpperFans.RiseK * 1.8:0} F° of outside on the hottest design day."),
            small ? Text($"{Math.Ceiling(upper.NeededM3PerS / upper.FlowEachM3PerS - 1e-9):0} of them, a larger size, or a cloth that turns more of the sun back.") : "",
            Practice);
    }

    // A thicker pad takes faster air; a side wall has room where an end wall has none.
    private static string Thicker(PlantFacts f, Catalogues.PadEntry entry) =>
        f.Catalogue.Pads.Where(p => p.MostFaceMs > entry.MostFaceMs).MaxBy(p => p.MostFaceMs) is { } thick
            ? Text($", take {thick.Id}, which serves them with {Sqft(f.RatedM3PerS / thick.Kind.RatedFaceMPerS)} ft², or give it a side wall")
            : ", or give it a side wall";

    // A pad that lets few fans run may cool less than all fans would without it.
    private static string WithoutPad(PlantFacts f)
    {
        ExhaustRun free = ExhaustSizing.Run(f.Run!.Fans, f.Intake! with { Pad = null }, f.Outside.DensityKgPerM3);
        double withC = DesignDayAir.Of(f.Outside, f.Duty, f.Run.Wet, f.WetWall, null).Run.HottestC;
        double withoutC = DesignDayAir.Of(f.Outside, f.Duty, free.Wet, null, null).Run.HottestC;
        return withoutC < withC - 0.1 ? Text($" As it is, it is worse than none: all fans without it leave the hottest day's air at {F(withoutC)}, with it {F(withC)}.") : "";
    }

    private static IEnumerable<Finding> Water(PlantFacts f)
    {
        string house = f.Input.House;
        if (f.WetWall is { } pad && f.Intake?.Pad is { } entry && f.Run is not null)
        {
            if (pad.MostFans is { } most)
            {
                bool carries = f.AllFansFaceMs > entry.Kind.CarryOverMPerS;
                bool serves = pad.FaceSpeedMs <= entry.MostFaceMs;
                yield return new Finding(
                    "plant/pad-too-fast", Severity.Miss, $"{house}/wet-wall",
                    PadLimit(f.AllFansFaceMs, entry.MostFaceMs, f.Intake.PadM2, f.RatedM3PerS, entry.Kind.RatedFaceMPerS)
                        + (carries ? " Water blows off the pad and the motors run hot." : ""),
                    Text($"Enlarge the pad{Thicker(f, entry)}. Until then the program runs at most {most} of {f.Run.Fans.Count} fans while water runs{(serves ? "" : ", and even one draws too fast")}.{WithoutPad(f)}"),
                    new Source.CommonPractice("face speed of corrugated pads: 250 fpm at 4 in, 350 to 400 fpm at 6 in; sources disagree"));
            }

            yield return new Finding(
                "plant/design-day-intake", Severity.Note, $"{house}/wet-wall",
                Text($"With {Running(pad, f.Run.Fans.Count)}, the pad is {100 * pad.Effectiveness:0} % effective: air of {F(f.Outside.DryBulbC)} comes in at {F(f.IntakeC)} on the design day."),
                "", Practice);
            double dayKg = pad.EvaporationKgPerS * (1 + pad.BleedFraction) * 8 * 3600;
            double asked = pad.EvaporationKgPerS * (1 + pad.BleedFraction) + (f.Fog?.KgPerS ?? 0);
            double well = f.Input.Utilities.WellM3PerS * 998;
            if (well > 0)
            {
                yield return new Finding(
                    "plant/water", asked > well ? Severity.Miss : asked > 0.5 * well ? Severity.Near : Severity.Note, $"{house}/wet-wall",
                    Text($"On the design day pad and fog draw {Gph(asked)} gal/h, about {dayKg / 998 / 0.003785411784:N0} gal a day for the pad with {100 * pad.BleedFraction:0} % bleed; the well gives {Gph(well)} gal/h, before any irrigation."),
                    asked > 0.5 * well ? "A storage tank that fills at night." : "",
                    Practice);
            }

            yield return new Finding(
                "plant/pad-water-quality", f.Input.Utilities.HardnessMgPerL > 200 ? Severity.Near : Severity.Note, $"{house}/wet-wall",
                Text($"Water of {f.Input.Utilities.HardnessMgPerL:0} mg/L hardness scales the pad: bleed {100 * pad.BleedFraction:0} % of what evaporates. Standing warm water in sump and lines can grow Legionella: drain and disinfect by plan."),
                "Bleed, a sump that drains, and a maintenance calendar.", Practice);
        }

        double depressionK = f.Outside.DryBulbC - f.Outside.WetBulbC;
        if (f.Run is not null && f.WetWall is null && f.Fog is null && depressionK > DesertDepressionK)
        {
            yield return new Finding(
                "plant/dry-air-unused", f.Outside.DryBulbC > f.Input.Schedule.Min(p => p.NeverAboveC) ? Severity.Miss : Severity.Near, $"{house}/fan-1",
                Text($"Outside air of {F(f.Outside.DryBulbC)} with a wet bulb of {F(f.Outside.WetBulbC)} comes in as it is, and no fan cools below it. A wet wall would bring it in at about {F(f.Outside.DryBulbC - Duty.DutyStage.AssumedPadEffectiveness * depressionK)}."),
                "A wet wall or fog: air this dry is the cheapest cooling there is, if there is water.",
                new Source.FirstPrinciples("air cools along its wet-bulb line"));
        }

        if (f.Fog is { } fog)
        {
            if (fog.KgPerS * fog.EvaporatedFraction < f.FogAsked.NeedKgPerS)
            {
                yield return new Finding(
                    "plant/fog-short", Severity.Miss, $"{house}/fog", FogLimit(fog.KgPerS * fog.EvaporatedFraction, f.FogAsked),
                    "More nozzles, or less ventilation while fogging.", Practice);
            }

            if (f.Input.Equipment.FogNozzles > 0 && fog.KgPerS * fog.EvaporatedFraction > MostOversizedFactor * f.FogAsked.NeedKgPerS)
            {
                yield return new Finding(
                    "plant/fog-large", Severity.Near, $"{house}/fog",
                    Text($"{fog.Nozzles:N0} nozzles spray {Gph(fog.KgPerS)} gal/h at a time; the most the design days' air takes up is {Gph(f.FogAsked.NeedKgPerS)} gal/h. The rest can only fall on crop and floor: the fog will run in short pulses, and pump, tube and water are bought for more."),
                    Text($"{Math.Max(Math.Ceiling(fog.Nozzles * f.FogAsked.NeedKgPerS / (fog.KgPerS * fog.EvaporatedFraction) - 1e-9), 1):N0} nozzles serve, or several groups with a valve each."),
                    Practice);
            }

            bool high = fog.PressurePa > 2e6;
            yield return new Finding(
                "plant/fog-injection", high ? Severity.Danger : Severity.Note, $"{house}/fog",
                high
                    ? Text($"Fog at {Psi(fog.PressurePa)} psi can inject water or oil through the skin: to hospital at once, even if it looks small. Rated tube and fittings, relief valve, guarded pump room. Shut off, lock out and bleed the line before anyone touches a nozzle.")
                        + (fog.PressurePa > 8.3e6 ? " This is far above the usual 800 to 1,200 psi." : "")
                    : "Low-pressure mist wets leaves and floor: a third or less evaporates.",
                high && fog.PressurePa > 8.3e6 ? "Ask whether 1,000 psi serves: smaller pump, cheaper tube." : "",
                Practice);
            yield return new Finding(
                "plant/fog-water-quality", Severity.Note, $"{house}/fog",
                "Fog water must be filtered and soft (nozzles clog), and lines must not stand warm: Legionella.",
                "Filter, softener or RO, drain-back at night.", Practice);
        }
    }
}
