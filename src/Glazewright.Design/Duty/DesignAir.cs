using Glazewright.Design.Contracts;
using Glazewright.Science.Air;
using Glazewright.Science.Flow;

namespace Glazewright.Design.Duty;

/// <summary>The air of the design days, and what acts on it: the states a psychrometric chart of the house is drawn from.</summary>
/// <param name="Days">The design days side by side, each with its source.</param>
/// <param name="Summer">Outside air of the cooling design day.</param>
/// <param name="WetDay">Outside air of the 0.4 % wet-bulb day.</param>
/// <param name="Load">What heats and moistens the air on its way through the house then, shade counted.</param>
/// <param name="WinterNight">Outside air of the 99.6 % night.</param>
/// <param name="NightTarget">Air at the night target.</param>
/// <param name="DampNight">Outside air of the drying night: mild and damp.</param>
/// <param name="Balance">Moisture of the closed house on the 99.6 % night.</param>
/// <param name="Skies">Heat loss on that night under wind and sky.</param>
/// <param name="Ventilation">The two ways of sizing summer ventilation, side by side.</param>
public sealed record DesignAir(
    EqList<DesignCase> Days,
    AirState Summer,
    AirState WetDay,
    AirLoad Load,
    AirState WinterNight,
    AirState NightTarget,
    AirState DampNight,
    NightBalance Balance,
    NightSkies Skies,
    VentilationCompared Ventilation)
{
    /// <summary>Hottest air that the crop of the cooling design day should meet, °C: what it may never exceed or, where that is not said, the day target and the rise allowed.</summary>
    public double HottestWishC { get; init; } = 100;

    /// <summary>What that crop may never exceed, °C; 90 and more where it does not say.</summary>
    public double NeverAboveC { get; init; } = 100;
}

/// <summary>One design day.</summary>
/// <param name="Label">What it is.</param>
/// <param name="DryBulbC">Dry bulb, °C.</param>
/// <param name="WetBulbC">Wet bulb, °C.</param>
/// <param name="WindMs">Wind that goes with it, m/s; negative when nothing says.</param>
/// <param name="Source">Where the temperatures come from.</param>
/// <param name="FromYearC">The same statistic counted in the job's weather year, °C dry bulb (wet bulb for the wet-bulb day).</param>
/// <param name="Use">What it sizes.</param>
public sealed record DesignCase(string Label, double DryBulbC, double WetBulbC, double WindMs, Source Source, double FromYearC, string Use);

/// <summary>Moisture of the closed house on the design night: what the crop gives off leaves by leaks or condenses on the covering.</summary>
/// <param name="House">Air of the house when both are in balance, at the night target.</param>
/// <param name="CoverC">Inner face of the coldest covering, °C.</param>
/// <param name="ColdestZone">That covering's path id.</param>
/// <param name="CondensationKgPerS">Water that condenses on all inner faces, kg/s.</param>
/// <param name="LeakedKgPerS">Vapour that leaks out, kg/s.</param>
/// <param name="TranspirationKgPerS">Vapour the crop gives off, kg/s.</param>
public sealed record NightBalance(
    AirState House, double CoverC, string ColdestZone, double CondensationKgPerS, double LeakedKgPerS, double TranspirationKgPerS);
