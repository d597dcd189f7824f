using Glazewright.Design.Contracts;
using Glazewright.Design.Form;

namespace Glazewright.Design.Duty;

/// <summary>What the design days ask of one house.</summary>
/// <param name="House">House id.</param>
/// <param name="Conditions">The design conditions used, with their source.</param>
/// <param name="PressurePa">Barometric pressure at the site.</param>
/// <param name="Losses">Heat loss factor face by face, infiltration and perimeter last.</param>
/// <param name="LossWPerK">Heat loss factor, curtain open, W/K.</param>
/// <param name="LossDrawnWPerK">Heat loss factor, curtain drawn, W/K; equal when there is none.</param>
/// <param name="NightTargetC">Warmest night target in the heating season, °C.</param>
/// <param name="HeatLossW">Loss at the 99.6 % day at that target, curtain open, W.</param>
/// <param name="HeatLossDrawnW">The same with the curtain drawn, W.</param>
/// <param name="FrostLossW">Loss at the mean annual extreme minimum with 2 °C inside, W.</param>
/// <param name="SolarGainW">Sun absorbed inside at the cooling design hour, W.</param>
/// <param name="TranspirationKgPerS">Crop transpiration then, kg/s.</param>
/// <param name="SensibleGainW">Sun less what floor and benches store and what the crop turns into vapour, W.</param>
/// <param name="VentilationRuleM3PerS">By the factor rule.</param>
/// <param name="VentilationBalanceM3PerS">By the energy and moisture balance along the house.</param>
/// <param name="VentilationM3PerS">The one later stages use.</param>
/// <param name="NightMoistureKgPerS">Moisture to remove on the drying night, kg/s.</param>
/// <param name="Air">States of the design days' air.</param>
/// <param name="Report">Figures and findings.</param>
public sealed record DutyResult(
    string House,
    Brief.DesignConditions Conditions,
    double PressurePa,
    EqList<LossLine> Losses,
    double LossWPerK,
    double LossDrawnWPerK,
    double NightTargetC,
    double HeatLossW,
    double HeatLossDrawnW,
    double FrostLossW,
    double SolarGainW,
    double TranspirationKgPerS,
    double SensibleGainW,
    double VentilationRuleM3PerS,
    double VentilationBalanceM3PerS,
    double VentilationM3PerS,
    double NightMoistureKgPerS,
    DesignAir Air,
    StageReport Report);

/// <summary>One path heat leaves by.</summary>
/// <param name="Id">Zone id, or <c>A/infiltration</c>, <c>A/perimeter</c>.</param>
/// <param name="Face">Face it belongs to; the floor for air and perimeter.</param>
/// <param name="AreaM2">Area, m² (perimeter: m; infiltration: 0).</param>
/// <param name="UWPerM2K">U value with outside film, W/m²K (perimeter: W/mK).</param>
/// <param name="WPerK">Loss factor, W/K.</param>
public sealed record LossLine(string Id, FaceName Face, double AreaM2, double UWPerM2K, double WPerK);
