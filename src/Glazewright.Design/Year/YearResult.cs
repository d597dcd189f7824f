using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;

namespace Glazewright.Design.Year;

/// <summary>One house run by its program through one weather year. A typical year leaves the extremes out: that is said wherever this is shown.</summary>
/// <param name="House">House id.</param>
/// <param name="Weather">Which year, in words (file name, or synthetic).</param>
/// <param name="Synthetic">True for a synthetic year.</param>
/// <param name="Held">Counters over the whole year.</param>
/// <param name="Periods">Counters by crop period.</param>
/// <param name="Extremes">Coldest and hottest minutes.</param>
/// <param name="Months">Energy, water and cost by month, January first.</param>
/// <param name="Motors">Runtime and starts.</param>
/// <param name="Hours">Hourly columns.</param>
/// <param name="HeatJ">Heat delivered, J.</param>
/// <param name="FuelJ">Fuel, J gross.</param>
/// <param name="PowerJ">Electric energy, J.</param>
/// <param name="PeakPowerW">Peak quarter-hour electric demand, W.</param>
/// <param name="WaterKg">Water of wet wall (with bleed) and fog, kg.</param>
/// <param name="TranspiredKg">Crop transpiration, kg.</param>
/// <param name="CondensedKg">Condensed on covering and curtain, kg.</param>
/// <param name="Cost">Energy and water for the year at the job's tariffs.</param>
/// <param name="CostLow">Lower end of the price band.</param>
/// <param name="CostHigh">Upper end of the price band.</param>
/// <param name="WorstMonth">Dearest month, 1 to 12.</param>
/// <param name="EnergyClosureFraction">Error of the energy books over heat turned over.</param>
/// <param name="WaterClosureFraction">Error of the water books over water turned over.</param>
/// <param name="Midnights">State at the start of each of the 365 days: any day can be run again from its own.</param>
/// <param name="Report">Figures, findings, what is left out.</param>
/// <param name="Co2Kg">Carbon dioxide dosed, kg.</param>
/// <param name="DriedKg">Water a dehumidifier took out, kg.</param>
public sealed record YearResult(
    string House,
    string Weather,
    bool Synthetic,
    HeldCounters Held,
    EqList<PeriodCounters> Periods,
    YearExtremes Extremes,
    EqList<YearMonth> Months,
    EqList<MotorCounters> Motors,
    HourColumns Hours,
    double HeatJ,
    double FuelJ,
    double PowerJ,
    double PeakPowerW,
    double WaterKg,
    double TranspiredKg,
    double CondensedKg,
    double Cost,
    double CostLow,
    double CostHigh,
    int WorstMonth,
    double EnergyClosureFraction,
    double WaterClosureFraction,
    EqList<YearSnapshot> Midnights,
    StageReport Report,
    double Co2Kg = 0,
    double DriedKg = 0)
{
    /// <summary>Demand charge of the year, money.</summary>
    /// <param name="tariffs">The job's tariffs.</param>
    public double DemandCost(Tariffs tariffs) => Months.Sum(m => m.DemandCost(tariffs));
}

/// <summary>Hours against the targets, with the job's band.</summary>
/// <param name="TotalH">Hours counted.</param>
/// <param name="HeldTemperatureH">Temperature within its band.</param>
/// <param name="HeldHumidityH">Humidity within its band (hours with a humidity target).</param>
/// <param name="HumidityAskedH">Hours with a humidity target.</param>
/// <param name="HeldJointlyH">All targets held.</param>
/// <param name="TooWarmH">Above the band.</param>
/// <param name="TooColdH">Below the band.</param>
/// <param name="TooWetH">Humidity above its band.</param>
/// <param name="TooDryH">Humidity below its band.</param>
/// <param name="TooWarmKh">Degree-hours above the band, K·h.</param>
/// <param name="TooColdKh">Degree-hours below the band, K·h.</param>
/// <param name="AboveNeverH">Hours above the temperature never to be exceeded.</param>
/// <param name="FrostH">Hours at or below 0 °C.</param>
/// <param name="CondensationH">Hours with condensation on the covering.</param>
/// <param name="LeafWetH">Hours with the canopy below the dew point.</param>
/// <param name="WarmFreeCoolingLimitH">Too warm with every cooling stage on: the plant is the limit.</param>
/// <param name="ColdPlantLimitH">Too cold with every heater on: the plant is the limit.</param>
public sealed record HeldCounters(
    double TotalH,
    double HeldTemperatureH,
    double HeldHumidityH,
    double HumidityAskedH,
    double HeldJointlyH,
    double TooWarmH,
    double TooColdH,
    double TooWetH,
    double TooDryH,
    double TooWarmKh,
    double TooColdKh,
    double AboveNeverH,
    double FrostH,
    double CondensationH,
    double LeafWetH,
    double WarmFreeCoolingLimitH,
    double ColdPlantLimitH);

/// <summary>Counters of one crop period.</summary>
/// <param name="Period">Crop period id.</param>
/// <param name="Day">Day part.</param>
/// <param name="Night">Night part.</param>
public sealed record PeriodCounters(string Period, HeldCounters Day, HeldCounters Night);

/// <summary>Extremes and when.</summary>
/// <param name="LowestC">Lowest air temperature at the crop, °C.</param>
/// <param name="LowestMinute">Minute of the year, from 0.</param>
/// <param name="HighestC">Highest air temperature while something grows (of all minutes in a house that is never planted), °C.</param>
/// <param name="HighestMinute">Minute of the year.</param>
/// <param name="OutsideAtLowestC">Outside air then, °C.</param>
/// <param name="OutsideAtHighestC">Outside air then, °C.</param>
/// <param name="OutsideLowestC">Lowest outside air of the year, °C.</param>
/// <param name="OutsideHighestC">Highest outside air of the year, °C.</param>
public sealed record YearExtremes(
    double LowestC, int LowestMinute, double HighestC, int HighestMinute, double OutsideAtLowestC, double OutsideAtHighestC,
    double OutsideLowestC, double OutsideHighestC);

/// <summary>One month.</summary>
/// <param name="HeatJ">Heat delivered, J.</param>
/// <param name="FuelJ">Fuel, J gross.</param>
/// <param name="PowerJ">Electric energy, J.</param>
/// <param name="PeakPowerW">Peak quarter hour, W.</param>
/// <param name="WaterKg">Water, kg.</param>
/// <param name="Cost">Cost at the job's tariffs, money.</param>
/// <param name="HeldJointlyFraction">Share of hours with all targets held.</param>
/// <param name="SunMolPerM2Day">Sunlight absorbed at the crop's plane, mean day, mol/m² of photosynthetic photons.</param>
/// <param name="LampMolPerM2Day">The same of lamps, over the planted floor.</param>
/// <param name="Co2Kg">Carbon dioxide dosed, kg.</param>
public sealed record YearMonth(
    double HeatJ, double FuelJ, double PowerJ, double PeakPowerW, double WaterKg, double Cost, double HeldJointlyFraction,
    double SunMolPerM2Day = 0, double LampMolPerM2Day = 0, double Co2Kg = 0)
{
    /// <summary>Demand charge: the month's highest quarter hour at its price, money.</summary>
    /// <param name="tariffs">The job's tariffs.</param>
    public double DemandCost(Tariffs tariffs)
    {
        ArgumentNullException.ThrowIfNull(tariffs);
        return PeakPowerW * tariffs.DemandPerWattMonth;
    }
}

/// <summary>One motor.</summary>
/// <param name="Actuator">Actuator id.</param>
/// <param name="RuntimeH">Hours on (travel hours for louver and curtain).</param>
/// <param name="Starts">Starts.</param>
public sealed record MotorCounters(string Actuator, double RuntimeH, int Starts);

/// <summary>Hourly means, 8760 rows; hour 0 is 00:00 to 01:00 on 1 January, standard time.</summary>
/// <param name="InsideC">Air at the crop, °C.</param>
/// <param name="InsideRhPercent">Humidity at the crop, %.</param>
/// <param name="UpperC">Air above the curtain, °C.</param>
/// <param name="OutsideC">Outside air, °C.</param>
/// <param name="TargetC">Temperature target, °C.</param>
/// <param name="HeatW">Heat delivered, W.</param>
/// <param name="AirFlowM3PerS">Exhaust flow, m³/s.</param>
/// <param name="CurtainFraction">Curtain drawn.</param>
/// <param name="CoolingFraction">Wet wall or fog on.</param>
/// <param name="DepartureK">Air at the crop less the target; an empty house is never too warm, K.</param>
/// <param name="SecondCurtainFraction">Second curtain drawn; null without one that moves by itself.</param>
public sealed record HourColumns(
    EqList<float> InsideC,
    EqList<float> InsideRhPercent,
    EqList<float> UpperC,
    EqList<float> OutsideC,
    EqList<float> TargetC,
    EqList<float> HeatW,
    EqList<float> AirFlowM3PerS,
    EqList<float> CurtainFraction,
    EqList<float> CoolingFraction,
    EqList<float> DepartureK,
    EqList<float>? SecondCurtainFraction = null);
