using Glazewright.Design.Contracts;

namespace Glazewright.Design.Behaviour;

/// <summary>How the chosen plant behaves away from its one sizing point. A part the house does not have is null.</summary>
/// <param name="House">House id.</param>
/// <param name="Exhaust">Fans, louvers and wind.</param>
/// <param name="Fog">Fog drops, lines and what the air takes.</param>
/// <param name="Mixing">Circulation and heat.</param>
/// <param name="Curtain">Curtain drawn, opened by a gap.</param>
/// <param name="Pressure">Filter fan in wind and with a door open.</param>
/// <param name="Kinds">Equipment of other kinds, sized simply.</param>
public sealed record BehaviourResult(
    string House,
    ExhaustBehaviour? Exhaust,
    FogBehaviour? Fog,
    MixingBehaviour? Mixing,
    CurtainBehaviour? Curtain,
    PressureBehaviour? Pressure,
    EqList<KindSized> Kinds)
{
    /// <summary>Wet wall, fog, both or neither by month; null without fans or without a weather year.</summary>
    public SeasonResult? Season { get; init; }

    /// <summary>Combustion air of open-flue heaters; null where none stands.</summary>
    public CombustionAir? Combustion { get; init; }
}

/// <summary>A flow at some setting.</summary>
/// <param name="OpenDeg">How far the louver blades stand open, °.</param>
/// <param name="WindMs">Wind on the fan wall, m/s.</param>
/// <param name="FlowM3PerS">Air, all fans on, m³/s.</param>
/// <param name="StaticPa">Static pressure across the fans, Pa.</param>
/// <param name="BeyondTested">Past the fans' tested points.</param>
public sealed record FlowAt(double OpenDeg, double WindMs, double FlowM3PerS, double StaticPa, bool BeyondTested);

/// <summary>Air at a place between intake and fans.</summary>
/// <param name="FromIntakeM">Distance, m.</param>
/// <param name="DryBulbC">Dry bulb, °C.</param>
/// <param name="HumidityFraction">Relative humidity.</param>
public sealed record AirAt(double FromIntakeM, double DryBulbC, double HumidityFraction);

/// <summary>Fans, louvers and wind.</summary>
/// <param name="ByAngle">All fans on, the pad off, by how far the louver blades stand open.</param>
/// <param name="ByWind">All fans on as on the design day, by wind square on the fan wall, intake in the lee.</param>
/// <param name="ChangesPerHour">Air changes with all fans on, 1/h.</param>
/// <param name="Along">Air along the house on the hottest design day: all fans on or, with fog that cools, those that run with it.</param>
/// <param name="FarthestM">Distance from intake to fans at which the allowed rise is used up at this air speed, m.</param>
/// <param name="DeadCornerM">Length behind the intake wall beside its openings where air stands or turns back, m.</param>
/// <param name="UpperM3PerS">Air that upper fans must move to keep the space above a drawn shade within 8 K of outside, m³/s; 0 without a curtain.</param>
/// <param name="UpperFans">So many of the smallest fan.</param>
public sealed record ExhaustBehaviour(
    EqList<FlowAt> ByAngle,
    EqList<FlowAt> ByWind,
    double ChangesPerHour,
    EqList<AirAt> Along,
    double FarthestM,
    double DeadCornerM,
    double UpperM3PerS,
    int UpperFans);

/// <summary>Fog drops, lines and what the air takes.</summary>
/// <param name="DropM">Diameter of the large drops taken, m.</param>
/// <param name="LifeS">Time until such a drop is gone in the design day's air, s.</param>
/// <param name="FallM">How far it falls, m.</param>
/// <param name="DampLifeS">The same in air of 80 % humidity, s.</param>
/// <param name="DampFallM">How far it falls there, m.</param>
/// <param name="HeightM">Height of the nozzles over the crop, m.</param>
/// <param name="Lines">Fog lines.</param>
/// <param name="SpacingM">Nozzle to nozzle on the lines along the house, m; 0 without any there.</param>
/// <param name="IntakeSpacingM">Nozzle to nozzle on the line across the intake, m; 0 without one.</param>
/// <param name="RoomKgPerS">Most the design day's air can take on its way through the house until it is saturated, behind the pad if there is one, kg/s: with all fans on or, with fog that cools, those that run with it.</param>
/// <param name="VentedFraction">Share of the spray that air takes up before the fans draw it out.</param>
public sealed record FogBehaviour(
    double DropM, double LifeS, double FallM, double DampLifeS, double DampFallM, double HeightM, int Lines, double SpacingM, double IntakeSpacingM, double RoomKgPerS, double VentedFraction);

/// <summary>Circulation and heat.</summary>
/// <param name="LoopM">Length of the loop, m.</param>
/// <param name="TurnS">Time of one turn, s.</param>
/// <param name="MixS">Time until the house is mixed: three turns, s.</param>
/// <param name="SpreadK">Expected difference between the air at the heater and that coming back to it on the 99.6 % night, K.</param>
/// <param name="ThrowM">Throw of one fan, m.</param>
/// <param name="SpacingM">Distance between fans, m.</param>
/// <param name="PipeM">Hot-water pipe that would give the night's heat instead, m.</param>
public sealed record MixingBehaviour(double LoopM, double TurnS, double MixS, double SpreadK, double ThrowM, double SpacingM, double PipeM);

/// <summary>A curtain opened by a gap.</summary>
/// <param name="GapM">Width of the gap along the house, m.</param>
/// <param name="FlowM3PerS">Air that trades places, m³/s.</param>
/// <param name="BelowC">Below the cloth, °C.</param>
/// <param name="AboveC">Above it, °C.</param>
public sealed record GapAt(double GapM, double FlowM3PerS, double BelowC, double AboveC);

/// <summary>Curtain drawn, opened by a gap.</summary>
/// <param name="NightSavedFraction">Heat saved on the 99.6 % night by drawing it.</param>
/// <param name="Night">Design night, heaters at the drawn house's need.</param>
/// <param name="HalfOpenC">Below, the cloth fully open, the same heat, °C.</param>
/// <param name="StackM">Width of the parked bundle, m.</param>
/// <param name="StackShadeFraction">Share of the floor it shades from straight above.</param>
/// <param name="Two">Each of two curtains alone and both; null without a second that moves by itself.</param>
public sealed record CurtainBehaviour(
    double NightSavedFraction, EqList<GapAt> Night, double HalfOpenC, double StackM, double StackShadeFraction, TwoCurtains? Two = null)
{
    /// <summary>A cold sunny morning, heaters off: the same gaps.</summary>
    public EqList<GapAt> Morning { get; init; } = [];

    /// <summary>Below on that morning with the cloth fully open, °C.</summary>
    public double MorningOpenC { get; init; }

    /// <summary>Sun on the cloth that morning, W/m².</summary>
    public double MorningSunWm2 { get; init; }
}

/// <summary>What two curtains do, each alone and both drawn.</summary>
/// <param name="FirstSavedFraction">Heat the first saves on the 99.6 % night.</param>
/// <param name="SecondSavedFraction">The second.</param>
/// <param name="BothSavedFraction">Both.</param>
/// <param name="FirstShadeFraction">Sun that the first cloth keeps from the crop.</param>
/// <param name="SecondShadeFraction">The second.</param>
/// <param name="BothShadeFraction">Both, with what goes to and fro between them.</param>
public sealed record TwoCurtains(
    double FirstSavedFraction, double SecondSavedFraction, double BothSavedFraction, double FirstShadeFraction, double SecondShadeFraction, double BothShadeFraction);

/// <summary>Pressure really reached.</summary>
/// <param name="WindMs">Wind, m/s.</param>
/// <param name="HousePa">House over still outside air, Pa.</param>
/// <param name="LeastPa">House over the windward wall, Pa; negative: it leaks in there.</param>
/// <param name="UnfilteredM3PerS">What leaks in, m³/s.</param>
public sealed record PressureAt(double WindMs, double HousePa, double LeastPa, double UnfilteredM3PerS);

/// <summary>Filter fan in wind and with a door open.</summary>
/// <param name="ByWind">By wind.</param>
/// <param name="DoorOpenPa">Held in calm air with one door of 2 m² open, Pa.</param>
/// <param name="ScreenM2">Insect cloth for its air at 7.5 Pa clean, m²; of 35 % porosity where the job names none.</param>
public sealed record PressureBehaviour(EqList<PressureAt> ByWind, double DoorOpenPa, double ScreenM2);

/// <summary>Equipment of another kind, sized simply.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="InJob">The job asks for it; else it is told as what it would take.</param>
/// <param name="Size">Its size in words.</param>
/// <param name="Holds">What that holds, in words.</param>
/// <param name="Caution">What must be minded; may be empty.</param>
public sealed record KindSized(string Kind, bool InJob, string Size, string Holds, string Caution);
