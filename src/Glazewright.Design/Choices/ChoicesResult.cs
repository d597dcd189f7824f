using Glazewright.Design.Contracts;
using Glazewright.Design.Takeoff;

namespace Glazewright.Design.Choices;

/// <summary>What the job's fixed choices hold, and what others would: one change at a time, all else as chosen.</summary>
/// <param name="House">House id.</param>
/// <param name="Fixed">Each quantity the job fixes, against what is asked of it.</param>
/// <param name="Alternatives">The plant as chosen first, then the alternatives.</param>
public sealed record ChoicesResult(string House, EqList<FixedChoice> Fixed, EqList<Alternative> Alternatives);

/// <summary>A quantity fixed by the job.</summary>
/// <param name="What">What is fixed, in words.</param>
/// <param name="Asked">What is asked, in words with its unit.</param>
/// <param name="Holds">What it holds.</param>
/// <param name="MarginFraction">Held over asked, less one; negative falls short; null where nothing is asked in that unit.</param>
/// <param name="Ours">What we would have chosen.</param>
public sealed record FixedChoice(string What, string Asked, string Holds, double? MarginFraction, string Ours);

/// <summary>What a choice is about.</summary>
public enum ChoiceKind
{
    /// <summary>As chosen.</summary>
    Chosen,

    /// <summary>Number of fans.</summary>
    Fans,

    /// <summary>Wet wall, fog, both, none.</summary>
    Cooling,

    /// <summary>Kind and number of heaters.</summary>
    Heat,

    /// <summary>Number of curtains.</summary>
    Curtain,
}

/// <summary>The plant with one thing changed.</summary>
/// <param name="Kind">What is changed.</param>
/// <param name="Label">In words.</param>
/// <param name="FlowM3PerS">Air, all fans on, m³/s; 0 without fans.</param>
/// <param name="HottestC">Hottest air in the house on the hottest design day, °C.</param>
/// <param name="DampestFraction">Relative humidity there.</param>
/// <param name="WetDayC">Hottest air on the 0.4 % wet-bulb day, °C.</param>
/// <param name="CoolingW">Electric power of cooling, all on, W.</param>
/// <param name="WaterKgPerS">Water drawn then, kg/s.</param>
/// <param name="HeatW">Heat that can be given, W.</param>
/// <param name="HoldsC">What it holds on the 99.6 % night, curtain open, never above the target, °C.</param>
/// <param name="OneOutC">The same with the largest heat source dead, °C.</param>
/// <param name="NightLossW">Loss of that night with the curtain drawn, W.</param>
/// <param name="NightFuelW">Fuel then, W gross; 0 for electric heat.</param>
/// <param name="NightPowerW">Electric power then for heat, W.</param>
/// <param name="Lines">What it takes to buy.</param>
public sealed record Alternative(
    ChoiceKind Kind,
    string Label,
    double FlowM3PerS,
    double HottestC,
    double DampestFraction,
    double WetDayC,
    double CoolingW,
    double WaterKgPerS,
    double HeatW,
    double HoldsC,
    double OneOutC,
    double NightLossW,
    double NightFuelW,
    double NightPowerW,
    EqList<TakeoffLine> Lines);
