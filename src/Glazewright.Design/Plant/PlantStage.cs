using Glazewright.Design.Catalogues;
using Glazewright.Design.Contracts;
using Glazewright.Design.Duty;
using Glazewright.Design.Form;
using Glazewright.Science.Air;

namespace Glazewright.Design.Plant;

/// <summary>Plant: each climate system of one house, chosen, sized, or as the job fixes it; then what that holds and where it falls short.</summary>
public static class PlantStage
{
    /// <summary>Raise when results change.</summary>
    public const int Version = 16;

    /// <summary>Sizes the plant of one house.</summary>
    /// <param name="input">What Plant reads of the job.</param>
    /// <param name="form">The house's shape.</param>
    /// <param name="duty">What the design days ask.</param>
    /// <param name="catalogue">Equipment to choose from.</param>
    /// <returns>The plant.</returns>
    /// <exception cref="ArgumentException">An entry fixed by the job is not in the catalogue.</exception>
    public static PlantResult Run(PlantInput input, BuildingForm form, DutyResult duty, Catalogue catalogue)
    {
        var e = input.Equipment;
        AirState outside = DesignWeather.Outside(duty.Conditions, duty.PressurePa);
        double density = outside.DensityKgPerM3;
        double needed = ExhaustSizing.NeededM3PerS(duty);
        Intake? intake = null;
        ExhaustRun? run = null;
        if (e.Exhaust)
        {
            intake = Intake.For(input, form, catalogue, needed, density);
            List<FanEntry> fans = e.ExhaustFixed.Count > 0
                ? ExhaustSizing.Fixed(input, catalogue)
                : ExhaustSizing.Choose(input, form, catalogue, intake, needed, density);
            (intake, run) = ExhaustSizing.Settle(input, form, catalogue, fans, intake, needed, density);
        }

        WetWallPlant? wetWall = intake?.Pad is not null && run is not null
            ? SmallSystems.WetWallOf(input, intake, outside, run)
            : null;
        FogAsked fogAsked = e.Fog ? FogSizing.Asked(input, duty, outside, run, wetWall) : FogAsked.Nothing;
        FogPlant? fog = e.Fog ? FogSizing.Of(input, duty, outside, run, wetWall, catalogue, fogAsked) : null;
        CurtainPlant? curtain = e.Curtains > 0 ? SmallSystems.CurtainOf(input, form, catalogue) : null;
        CurtainPlant? second = SmallSystems.SecondCurtainOf(input, form, catalogue, curtain);
        double drag = SmallSystems.DragAreaM2(input, form);
        CirculationPlant? circulation = e.Circulation ? SmallSystems.CirculationOf(input, form, catalogue, drag) : null;
        (PressurePlant Plant, int Fans, bool Beyond)? pressure =
            e.PositivePressurePa > 0 ? SmallSystems.PressureOf(input, form, catalogue, density) : null;
        HeatPlant? heat = e.Heaters ? HeatSizing.Plant(input, duty, HeatAsked.Of(duty, pressure?.Plant), catalogue) : null;
        UpperFanPlant? upper = UpperFans.Of(e.UpperFans, input, form, duty, UpperFans.ClothOf(curtain, second), catalogue, density);
        VentPlant? vents = e.RoofVentFraction > 0 || e.SideVentFraction > 0
            ? new VentPlant(e.RoofVentFraction * form.FloorAreaM2, e.SideVentFraction * form.FloorAreaM2, 180, VentAir.ScreenedFraction(e.InsectScreenPorosityFraction))
            : null;
        EqList<ElectricLoad> loads = LoadList.Of(
            input.House, MotorSupply.Of(input.Utilities, input.Metric), run?.Fans ?? [], intake, wetWall, fog, heat, curtain, second, circulation,
            pressure is { } p ? (p.Plant, p.Fans) : null, vents, e.LampW, e.BenchPipeW, e.DehumidifierW, e.OscillatingFans, upper, catalogue);
        var facts = new PlantFacts(
            input, form, duty, catalogue, outside, needed, intake, run, wetWall, fog, fogAsked, heat, curtain, circulation, drag,
            pressure?.Plant, pressure?.Fans ?? 0, pressure?.Beyond ?? false, vents, loads, second, upper);
        return new PlantResult(
            input.House,
            run is null || intake is null ? null : PlantAnswers.Exhaust(facts, ExhaustSizing.Plant(input.House, run, intake, density)),
            wetWall is null ? null : PlantAnswers.WetWall(facts, wetWall),
            fog is null ? null : PlantAnswers.Fog(facts, fog),
            heat is null ? null : PlantAnswers.Heat(facts, heat),
            curtain,
            circulation,
            pressure?.Plant,
            vents,
            e.LampW,
            e.BenchPipeW,
            loads,
            PlantWorkings.Report(facts),
            OtherKinds.DehumidifierOf(e),
            OtherKinds.Co2Of(input, form, pressure?.Plant, duty.PressurePa),
            OtherKinds.LampUmolPerJ(catalogue),
            e.OscillatingFans > 0 ? OscillatingFans.Of(e.OscillatingFans, form, catalogue) : null,
            second)
        {
            Upper = upper,
            InsectClothM2 = (intake?.ScreenM2 ?? 0) + (e.InsectScreenPorosityFraction > 0 && vents is not null ? vents.RoofM2 + vents.SideM2 : 0),
            LampEachW = catalogue.Lamps.Count > 0 ? catalogue.Lamps[0].PowerW : 320,
            BenchPipeWPerM = catalogue.Pipes[0].OutputWPerM,
        };
    }
}
