using Glazewright.Design.Brief;
using Glazewright.Design.Catalogues;
using Glazewright.Design.Duty;
using Glazewright.Design.Form;
using Glazewright.Science.Air;
using Glazewright.Science.Flow;

namespace Glazewright.Design.Plant;

/// <summary>Wet wall, curtain, circulation, positive pressure, vents.</summary>
internal static class SmallSystems
{
    /// <summary>Hardness that the pad's water may reach before it scales, mg/L as CaCO₃ (common practice).</summary>
    public const double PadHardnessLimitMgPerL = 800;

    /// <summary>
    /// Pressure over the whole shell that leaks as much as a 4 m/s wind does, Pa: the wind presses in on about a quarter of it with some 6 Pa
    /// (an estimate of our own; a blower-door test would tell).
    /// </summary>
    public const double LeakageReferencePa = 1;

    /// <summary>Cracks that stay open in use, m² (a door sweep).</summary>
    public const double ReliefM2 = 0.02;

    /// <summary>Discharge coefficient of those cracks (sharp edge).</summary>
    public const double ReliefCoefficient = 0.61;

    public static WetWallPlant WetWallOf(PlantInput input, Intake intake, AirState outside, ExhaustRun run)
    {
        PadEntry pad = intake.Pad!;
        int served = Math.Max(run.Wet.Count(p => p.FlowM3PerS / intake.PadM2 <= pad.MostFaceMs), 1);
        double flowM3PerS = run.Wet[served - 1].FlowM3PerS;
        double face = Math.Max(flowM3PerS / intake.PadM2, 0.02);
        double effectiveness = pad.Kind.Effectiveness(Math.Min(face, 20));
        double water = pad.WaterM3PerSPerM * intake.PadWidthM;
        return new WetWallPlant(
            pad.Id,
            intake.PadWidthM,
            intake.PadHeightM,
            pad.ThicknessM,
            face,
            effectiveness,
            water,
            PumpPower.ShaftW(water, 9810 * pad.PumpHeadM, pad.PumpEfficiency),
            pad.SumpMPerM2 * intake.PadM2,
            outside.DryBulbC > 0 ? WetWall.EvaporationKgPerS(outside, effectiveness, flowM3PerS) : 0,
            BleedFraction(input.Utilities.HardnessMgPerL),
            run.Wet[^1].FlowM3PerS / intake.PadM2 > pad.MostFaceMs ? served : null);
    }

    /// <summary>Bleed over evaporation that keeps the sump's hardness at its limit: h / (limit − h), at least a tenth, at most all.</summary>
    public static double BleedFraction(double hardnessMgPerL) =>
        Math.Clamp(hardnessMgPerL / Math.Max(PadHardnessLimitMgPerL - hardnessMgPerL, 1), 0.1, 1);

    public static CurtainPlant CurtainOf(PlantInput input, BuildingForm form, Catalogue catalogue)
    {
        EquipmentChoice e = input.Equipment;
        CurtainEntry cloth = e.CurtainEntry.Length > 0
            ? Pick.ById(catalogue.Curtains, e.CurtainEntry, c => c.Id, $"{input.Pointer}/equipment/curtain")
            : catalogue.Curtains[0];
        double height = e.CurtainM(Math.Min(form.Roof.LeftEaveM, form.Roof.RightEaveM));
        return new CurtainPlant(
            cloth.Id, height, WidthAtM(form, height) * form.LengthM, cloth.SolarTransmittanceFraction, cloth.SolarReflectanceFraction,
            cloth.EmissivityFraction, cloth.OpennessFraction, cloth.TravelS, cloth.DriveW, e.Layers);
    }

    /// <summary>The second curtain under the first, with its own drive; null where there is none that moves by itself.</summary>
    public static CurtainPlant? SecondCurtainOf(PlantInput input, BuildingForm form, Catalogue catalogue, CurtainPlant? first)
    {
        if (first is null || input.Equipment.SecondCurtain is not { } second)
        {
            return null;
        }

        CurtainEntry cloth = Pick.ById(catalogue.Curtains, second.Entry, c => c.Id, $"{input.Pointer}/equipment/secondCurtain/cloth");
        double height = Math.Max(first.HeightM - second.BelowM, 0.1);
        bool darkens = second.Purpose == CurtainPurpose.Blackout;
        return new CurtainPlant(
            cloth.Id, height, WidthAtM(form, height) * form.LengthM, second.SolarTransmittanceFraction, second.SolarReflectanceFraction,
            second.EmissivityFraction, second.OpennessFraction, cloth.TravelS, cloth.DriveW, 1, second.Purpose, darkens ? second.DarkFrom : null, darkens ? second.DarkTo : null);
    }

    /// <summary>Clear width of the section at a height.</summary>
    public static double WidthAtM(BuildingForm form, double heightM)
    {
        double from = heightM <= form.Roof.LeftEaveM ? 0 : (heightM - form.Roof.LeftEaveM) / form.Roof.LeftPitch;
        double to = heightM <= form.Roof.RightEaveM ? form.WidthM : form.WidthM - (heightM - form.Roof.RightEaveM) / form.Roof.RightPitch;
        return Math.Max(to - from, 0);
    }

    public static CirculationPlant CirculationOf(PlantInput input, BuildingForm form, Catalogue catalogue, double dragAreaM2)
    {
        EquipmentChoice e = input.Equipment;
        CirculationEntry fan = e.CirculationFixed.Count > 0
            ? Pick.ById(catalogue.Circulation, e.CirculationFixed[0].Entry, c => c.Id, $"{input.Pointer}/equipment/circulation")
            : catalogue.Circulation[0];
        int count = e.CirculationFixed.Count > 0
            ? e.CirculationFixed.Sum(f => f.Count)
            : Circulation.FanCount(form.FloorAreaM2, fan.FlowM3PerS);
        // An even number makes a loop, out along one side and back along the other.
        count = e.CirculationFixed.Count > 0 ? count : count + count % 2;
        double loopM = 2 * Math.Max(form.LengthM - 6, 3);
        return new CirculationPlant(
            fan.Id, count, fan.FlowM3PerS, fan.PowerW, loopM / Math.Max(count, 1),
            Circulation.LoopSpeedMPerS(count, fan.FlowM3PerS, fan.DiameterM, dragAreaM2));
    }

    /// <summary>Drag area of a house: walls as rough plates, leaves at a tenth of their area each side.</summary>
    public static double DragAreaM2(PlantInput input, BuildingForm form)
    {
        double wallsM2 = form.Faces.Sum(f => f.AreaM2);
        double leaves = input.Schedule.Max(p => p.LeafAreaIndex * p.PlantedFraction) * form.FloorAreaM2;
        return 0.01 * wallsM2 + 0.2 * leaves + 0.5;
    }

    public static (PressurePlant Plant, int Fans, bool Beyond) PressureOf(
        PlantInput input, BuildingForm form, Catalogue catalogue, double densityKgPerM3)
    {
        PressureFanEntry entry = catalogue.PressureFans[0];
        FanCurve curve = Pick.Curve(entry.Points, densityKgPerM3);
        Leakage leakage = Leakage.Through(form.VolumeM3 * input.AirtightnessPerHour / 3600, LeakageReferencePa, 0.65);
        double filterM2 = entry.FilterAtM3PerS / (0.6 * Math.Sqrt(2 * entry.FilterLossPa / FanCurve.StandardDensityKgPerM3));
        HeldPressure held = PositivePressure.Held([], [], leakage, ReliefM2, ReliefCoefficient, densityKgPerM3);
        int fans = 0;
        while (fans < 4 && held.HousePa < input.Equipment.PositivePressurePa)
        {
            fans++;
            held = PositivePressure.Held(
                [new FanGroup(curve, fans)], [new AirPath.Opening(fans * filterM2, 0.6)], leakage, ReliefM2, ReliefCoefficient, densityKgPerM3);
        }

        // The motors' power is kept as unthrottled: a damper saves little of it.
        double powerW = fans * curve.At(held.FanStaticPa).PowerW;
        double askedPa = Math.Min(input.Equipment.PositivePressurePa, 500);
        if (held.HousePa > askedPa)
        {
            // A damper or a speed control holds what is asked: air beyond it would only be heated and lost.
            double flow = PositivePressure.SupplyM3PerS(leakage, ReliefM2, ReliefCoefficient, askedPa, densityKgPerM3);
            double failsMs = Math.Sqrt(2 * askedPa / (densityKgPerM3 * PositivePressure.WindwardCoefficient));
            return (new PressurePlant(entry.Id, flow, askedPa, powerW, failsMs, Math.Max(fans, 1)), fans, held.BeyondTested);
        }

        return (new PressurePlant(entry.Id, held.SupplyM3PerS, held.HousePa, powerW, held.WindFailsMPerS, Math.Max(fans, 1)), fans, held.BeyondTested);
    }
}
