using System.Runtime.CompilerServices;

namespace Glazewright.Science.Climate;

/// <summary>
/// What acts on the house over one step: weather, absorbed sun by part, and the equipment as it really acts (after travel, curves and limits).
/// Values out of physical range are clamped by the model, which stays finite.
/// </summary>
public struct HouseForcing
{
    /// <summary>Outside dry bulb, °C.</summary>
    public double OutsideC { get; set; }

    /// <summary>Outside humidity ratio, kg/kg dry air.</summary>
    public double OutsideHumidityRatio { get; set; }

    /// <summary>
    /// Promised by who fills it: every field is a number, the humidity ratio is not above saturation, and <see cref="OutsideWetBulbC"/> is that of the outside air. The model then need not look.
    /// </summary>
    public bool IsWorkedOut { get; set; }

    /// <summary>Outside wet bulb, °C (<see cref="VapourTable.WetBulbC"/>); read only when <see cref="IsWorkedOut"/>.</summary>
    public double OutsideWetBulbC { get; set; }

    /// <summary>Barometric pressure, Pa.</summary>
    public double PressurePa { get; set; }

    /// <summary>Wind at the house, m/s.</summary>
    public double WindMPerS { get; set; }

    /// <summary>Sky temperature, °C.</summary>
    public double SkyC { get; set; }

    /// <summary>Undisturbed ground below the last layer, °C.</summary>
    public double DeepGroundC { get; set; }

    /// <summary>Sun absorbed in the clear shell above, W.</summary>
    public double SunUpperClearW { get; set; }

    /// <summary>Sun absorbed in the clear shell below, W.</summary>
    public double SunLowerClearW { get; set; }

    /// <summary>Sun absorbed on the inner face of the opaque shell above, W.</summary>
    public double SunUpperOpaqueInnerW { get; set; }

    /// <summary>Sun absorbed on the inner face of the opaque shell below, W.</summary>
    public double SunLowerOpaqueInnerW { get; set; }

    /// <summary>Sun absorbed on the outer face of the opaque shell above, W.</summary>
    public double SunUpperOpaqueOuterW { get; set; }

    /// <summary>Sun absorbed on the outer face of the opaque shell below, W.</summary>
    public double SunLowerOpaqueOuterW { get; set; }

    /// <summary>Sun absorbed in the curtain, W.</summary>
    public double SunCurtainW { get; set; }

    /// <summary>Sun absorbed in the canopy, W.</summary>
    public double SunCanopyW { get; set; }

    /// <summary>Sun absorbed by floor and benches, W.</summary>
    public double SunFloorW { get; set; }

    /// <summary>Sun absorbed by the slow mass, W.</summary>
    public double SunMassW { get; set; }

    /// <summary>Sun that bars below the curtain hand to the air at once, W.</summary>
    public double SunAirBelowW { get; set; }

    /// <summary>Sun that bars above the curtain hand to the air at once, W.</summary>
    public double SunAirAboveW { get; set; }

    /// <summary>Leaf area per floor area, m²/m².</summary>
    public double LeafAreaIndex { get; set; }

    /// <summary>Carbon dioxide, ppm.</summary>
    public double Co2Ppm { get; set; }

    /// <summary>Exhaust from below the curtain, m³/s.</summary>
    public double FanBelowM3PerS { get; set; }

    /// <summary>Exhaust from above the curtain, m³/s; its air passes the curtain's gaps.</summary>
    public double FanAboveM3PerS { get; set; }

    /// <summary>Effectiveness of the wet wall on the intake air, 0 dry to 1.</summary>
    public double PadEffectiveness { get; set; }

    /// <summary>Whether the air that fans draw in comes from the part of the house before this one, not from outdoors.</summary>
    public bool DrawsUpstream { get; set; }

    /// <summary>That air's temperature, °C.</summary>
    public double UpstreamC { get; set; }

    /// <summary>That air's humidity ratio, kg/kg.</summary>
    public double UpstreamHumidityRatio { get; set; }

    /// <summary>Outdoor air blown in by the positive-pressure fan, m³/s.</summary>
    public double PositivePressureM3PerS { get; set; }

    /// <summary>Outdoor air drawn through the space above the curtain by upper fans with inlets of their own, m³/s.</summary>
    public double UpperAirM3PerS { get; set; }

    /// <summary>Open roof vent area, m².</summary>
    public double RoofVentM2 { get; set; }

    /// <summary>Open side vent area, m² (open louvers and doors too, while no fan runs).</summary>
    public double SideVentM2 { get; set; }

    /// <summary>Water sprayed as fog, kg/s.</summary>
    public double FogKgPerS { get; set; }

    /// <summary>Share of the fog that evaporates in dry air (0.7 to 0.95 at 60 bar and above, 0.3 to 0.6 at 4 bar).</summary>
    public double FogEfficiency { get; set; }

    /// <summary>Heat delivered, W, the on-fraction counted.</summary>
    public double HeatW { get; set; }

    /// <summary>Share of the heat that goes to the air above the curtain.</summary>
    public double HeatAboveFraction { get; set; }

    /// <summary>Share of the heat radiated to canopy and floor.</summary>
    public double HeatRadiantFraction { get; set; }

    /// <summary>Water vapour let into the house (unvented burners, evaporators), kg/s; its latent heat comes with it.</summary>
    public double VapourKgPerS { get; set; }

    /// <summary>Water that a dehumidifier takes out of the air below, kg/s; its heat of condensation stays in that air. Its electric power is part of <see cref="LampW"/>.</summary>
    public double DryingKgPerS { get; set; }

    /// <summary>Electric power of lamps and motors inside, W.</summary>
    public double LampW { get; set; }

    /// <summary>Share of that power that reaches canopy and floor as radiation.</summary>
    public double LampRadiantFraction { get; set; }

    /// <summary>Closed share of the curtain, 0 open to 1 closed.</summary>
    public double CurtainClosedFraction { get; set; }

    /// <summary>Closed share of the second curtain, where the house has one.</summary>
    public double SecondCurtainClosedFraction { get; set; }

    /// <summary>Circulation fans, 0 off to 1 all on.</summary>
    public double CirculationFraction { get; set; }

    /// <summary>True when there is a number in every field. Sums that overflow count as none: they are looked at one by one.</summary>
    internal readonly bool AllNumbers
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        get => !double.IsNaN(
            (OutsideC + SkyC + SunUpperOpaqueInnerW + SunCurtainW + SunAirBelowW + FanBelowM3PerS + UpstreamHumidityRatio + SideVentM2 + HeatAboveFraction + LampW + CirculationFraction)
            + (OutsideHumidityRatio + DeepGroundC + SunLowerOpaqueInnerW + SunCanopyW + SunAirAboveW + FanAboveM3PerS + PositivePressureM3PerS + FogKgPerS + HeatRadiantFraction + LampRadiantFraction)
            + (PressurePa + SunUpperClearW + SunUpperOpaqueOuterW + SunFloorW + LeafAreaIndex + PadEffectiveness + UpperAirM3PerS + FogEfficiency + VapourKgPerS + CurtainClosedFraction)
            + (WindMPerS + SunLowerClearW + SunLowerOpaqueOuterW + SunMassW + Co2Ppm + UpstreamC + RoofVentM2 + HeatW + DryingKgPerS + SecondCurtainClosedFraction + OutsideWetBulbC));
    }

    /// <summary>The same with a likely value wherever there is no number.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    internal readonly HouseForcing Mended()
    {
        HouseForcing f = this;
        f.IsWorkedOut = false;
        f.OutsideC = Or(OutsideC, 0.0);
        f.OutsideHumidityRatio = Or(OutsideHumidityRatio, 0.0);
        f.OutsideWetBulbC = Or(OutsideWetBulbC, f.OutsideC);
        f.PressurePa = Or(PressurePa, 101_325.0);
        f.WindMPerS = Or(WindMPerS, 0.0);
        f.SkyC = Or(SkyC, f.OutsideC);
        f.DeepGroundC = Or(DeepGroundC, 10.0);
        f.SunUpperClearW = Or(SunUpperClearW, 0.0);
        f.SunLowerClearW = Or(SunLowerClearW, 0.0);
        f.SunUpperOpaqueInnerW = Or(SunUpperOpaqueInnerW, 0.0);
        f.SunLowerOpaqueInnerW = Or(SunLowerOpaqueInnerW, 0.0);
        f.SunUpperOpaqueOuterW = Or(SunUpperOpaqueOuterW, 0.0);
        f.SunLowerOpaqueOuterW = Or(SunLowerOpaqueOuterW, 0.0);
        f.SunCurtainW = Or(SunCurtainW, 0.0);
        f.SunCanopyW = Or(SunCanopyW, 0.0);
        f.SunFloorW = Or(SunFloorW, 0.0);
        f.SunMassW = Or(SunMassW, 0.0);
        f.SunAirBelowW = Or(SunAirBelowW, 0.0);
        f.SunAirAboveW = Or(SunAirAboveW, 0.0);
        f.LeafAreaIndex = Or(LeafAreaIndex, 0.0);
        f.Co2Ppm = Or(Co2Ppm, 420.0);
        f.FanBelowM3PerS = Or(FanBelowM3PerS, 0.0);
        f.FanAboveM3PerS = Or(FanAboveM3PerS, 0.0);
        f.PadEffectiveness = Or(PadEffectiveness, 0.0);
        f.UpstreamC = Or(UpstreamC, f.OutsideC);
        f.UpstreamHumidityRatio = Or(UpstreamHumidityRatio, f.OutsideHumidityRatio);
        f.PositivePressureM3PerS = Or(PositivePressureM3PerS, 0.0);
        f.UpperAirM3PerS = Or(UpperAirM3PerS, 0.0);
        f.RoofVentM2 = Or(RoofVentM2, 0.0);
        f.SideVentM2 = Or(SideVentM2, 0.0);
        f.FogKgPerS = Or(FogKgPerS, 0.0);
        f.FogEfficiency = Or(FogEfficiency, 0.0);
        f.HeatW = Or(HeatW, 0.0);
        f.HeatAboveFraction = Or(HeatAboveFraction, 0.0);
        f.HeatRadiantFraction = Or(HeatRadiantFraction, 0.0);
        f.VapourKgPerS = Or(VapourKgPerS, 0.0);
        f.DryingKgPerS = Or(DryingKgPerS, 0.0);
        f.LampW = Or(LampW, 0.0);
        f.LampRadiantFraction = Or(LampRadiantFraction, 0.0);
        f.CurtainClosedFraction = Or(CurtainClosedFraction, 0.0);
        f.SecondCurtainClosedFraction = Or(SecondCurtainClosedFraction, 0.0);
        f.CirculationFraction = Or(CirculationFraction, 0.0);
        return f;

        static double Or(double value, double instead) => double.IsNaN(value) ? instead : value;
    }
}
