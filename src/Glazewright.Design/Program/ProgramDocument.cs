using System.Runtime.InteropServices;
using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;

namespace Glazewright.Design.Program;

/// <summary>The control program of one house as a document: structured data, no expressions. The technician edits it; the interpreter runs it.</summary>
/// <param name="House">House id.</param>
/// <param name="Periods">What is wanted through the year; no gaps, no overlaps.</param>
/// <param name="Actuators">What can be commanded; commands come in this order.</param>
/// <param name="Cooling">Cooling stages, first on first.</param>
/// <param name="Heating">Heating stages, lead first.</param>
/// <param name="Humidity">Drying and humidifying.</param>
/// <param name="Curtain">Curtain; null without one.</param>
/// <param name="Lamps">Lamps; null without any.</param>
/// <param name="Interlocks">What forbids what.</param>
/// <param name="Alarms">Alarms with delays.</param>
/// <param name="Report">Figures and findings.</param>
/// <param name="Guard">Watch over the louver; null without one.</param>
/// <param name="Background">What runs when nothing else asks; null for nothing.</param>
/// <param name="ColdAir">How cooling holds back while the outside air is cold; null for no difference.</param>
/// <param name="Co2">Carbon dioxide; null without dosing.</param>
/// <param name="SecondCurtain">Second curtain that moves by itself; null without one.</param>
/// <param name="UpperAir">Upper fans above the curtain; null without any.</param>
/// <param name="Weather">How far vents may open in wind and rain; null without vents.</param>
/// <param name="Sensors">Sensors; left out for one of each kind, aspirated and true.</param>
public sealed record ProgramDocument(
    string House,
    EqList<ProgramPeriod> Periods,
    EqList<Actuator> Actuators,
    EqList<ControlStage> Cooling,
    EqList<ControlStage> Heating,
    HumidityControl Humidity,
    CurtainControl? Curtain,
    LampControl? Lamps,
    EqList<Interlock> Interlocks,
    EqList<Alarm> Alarms,
    StageReport Report,
    LouverGuard? Guard = null,
    EqList<BackgroundRule>? Background = null,
    ColdAirRule? ColdAir = null,
    Co2Control? Co2 = null,
    [property: LeftOutWhenNone] CurtainControl? SecondCurtain = null,
    [property: LeftOutWhenNone] UpperAirControl? UpperAir = null,
    [property: LeftOutWhenNone] EqList<WeatherLimit>? Weather = null,
    [property: LeftOutWhenNone] EqList<Sensor>? Sensors = null);

/// <summary>What is wanted in some weeks.</summary>
/// <param name="Id">Crop period id.</param>
/// <param name="FromDay">First day of the year, 1 to 365.</param>
/// <param name="ToDay">Last day; less than the first wraps over the year's end.</param>
/// <param name="Day">Day target.</param>
/// <param name="Night">Night target.</param>
/// <param name="DayStarts">When day begins.</param>
/// <param name="DayEnds">When day ends.</param>
/// <param name="RampMinutes">Straight ramp between the targets, min.</param>
/// <param name="CoolAboveK">Cooling starts this far above the target, K.</param>
/// <param name="HeatBelowK">Heating starts this far below the target, K.</param>
public sealed record ProgramPeriod(
    string Id,
    int FromDay,
    int ToDay,
    ClimateTarget Day,
    ClimateTarget Night,
    DayMark DayStarts,
    DayMark DayEnds,
    int RampMinutes,
    double CoolAboveK,
    double HeatBelowK);

/// <summary>What an actuator is: the house model maps commands by it.</summary>
public enum ActuatorKind
{
    /// <summary>Exhaust fan, on or off.</summary>
    Fan,

    /// <summary>Motor louver, 0 to 1 with travel time.</summary>
    Louver,

    /// <summary>Pump of the wet wall, on or off.</summary>
    WetWallPump,

    /// <summary>Fog, on or off (pulses).</summary>
    Fog,

    /// <summary>Heater, on or off, or from its least fire up.</summary>
    Heater,

    /// <summary>Hot-water pipe, on or off.</summary>
    BenchPipe,

    /// <summary>Curtain, 0 open to 1 drawn with travel time.</summary>
    Curtain,

    /// <summary>Circulation fans, on or off.</summary>
    Circulation,

    /// <summary>Filter fan, on or off.</summary>
    PressureFan,

    /// <summary>Roof vent, 0 to 1 with travel time.</summary>
    RoofVent,

    /// <summary>Side vent, 0 to 1 with travel time.</summary>
    SideVent,

    /// <summary>Lamps, on or off.</summary>
    Lamps,

    /// <summary>Dehumidifier, on or off.</summary>
    Dehumidifier,

    /// <summary>Valve of the carbon dioxide, on or off.</summary>
    Co2Valve,

    /// <summary>Second curtain with its own drive, 0 open to 1 drawn with travel time.</summary>
    SecondCurtain,

    /// <summary>Upper fans above the curtain with their inlets, on or off together.</summary>
    UpperFan,
}

/// <summary>One thing that can be commanded.</summary>
/// <param name="Id">Path id (<c>A/fan-1</c>).</param>
/// <param name="Kind">What it is.</param>
/// <param name="MinOnS">Least time on, s.</param>
/// <param name="MinOffS">Least time off, s.</param>
/// <param name="TravelS">Full travel of a motor that moves, s; 0 for on/off.</param>
/// <param name="RotationGroup">Takes turns for equal wear with all of the same group (equal machines only); empty for none.</param>
/// <param name="LeastFraction">Least level of a heater that burns at part of its fire, 0.05 to 1: asked for less it runs at that, and while it must stay on unasked too; left out for on or off.</param>
public sealed record Actuator(
    string Id, ActuatorKind Kind, int MinOnS, int MinOffS, int TravelS, string RotationGroup, [property: LeftOutWhenNone] double? LeastFraction = null);

/// <summary>One stage: comes on past a threshold, goes off within it.</summary>
/// <param name="Id">Stage id (<c>cool-2</c>).</param>
/// <param name="OnAtK">Distance from the cooling (heating) threshold at which it comes on, K, not negative.</param>
/// <param name="OffAtK">Distance at which it goes off, K; below <paramref name="OnAtK"/>.</param>
/// <param name="DelayS">How long past it before it acts, s.</param>
/// <param name="Settings">Actuators it drives and how far.</param>
/// <param name="Modulates">How it drives them while it is on; left out for as far as they go at once.</param>
public sealed record ControlStage(
    string Id, double OnAtK, double OffAtK, int DelayS, EqList<ActuatorSetting> Settings, [property: LeftOutWhenNone] Modulation? Modulates = null);

/// <summary>
/// How a stage that is on drives its heaters: in proportion to the distance from half way between where it comes on and where it goes off, and slowly by more as long as a distance is left
/// (proportional and integral action). Each time it comes on it begins at the least fire.
/// </summary>
/// <param name="BandK">Distance over which it goes from nothing to all, K, 0.5 to 30.</param>
/// <param name="ResetS">Time in which a distance that stays adds once more what it asks in proportion, s, 60 to 86,400; 0 for proportional alone.</param>
/// <param name="DeadbandFraction">Smaller changes are left alone, so that valve and damper rest, 0 to 0.5.</param>
public sealed record Modulation(double BandK, int ResetS, double DeadbandFraction);

/// <summary>An actuator and how far it is driven.</summary>
/// <param name="Actuator">Actuator id.</param>
/// <param name="LevelFraction">0 to 1.</param>
public sealed record ActuatorSetting(string Actuator, double LevelFraction);

/// <summary>Drying and humidifying.</summary>
/// <param name="DryAbovePercent">Drying starts this far above the humidity target, % RH.</param>
/// <param name="DryDeadbandPercent">And stops this far below where it started.</param>
/// <param name="Drying">Actuators driven while drying (a fan or vent a little, heat).</param>
/// <param name="DryOnlyAboveOutsideC">No drying by outside air when it is colder than this, °C.</param>
/// <param name="FogBelowPercent">Fog starts this far below the target.</param>
/// <param name="FogDeadbandPercent">And stops this far above where it started.</param>
/// <param name="FogCeilingPercent">Never fogs above this humidity, %.</param>
/// <param name="Fogging">Actuators driven while fogging.</param>
/// <param name="FogOnS">Pulse on, s.</param>
/// <param name="FogOffS">Pulse off, s.</param>
/// <param name="DryHeatK">The heating threshold rises by this while the air is too wet and drying by outside air helps, K; null for not at all.</param>
/// <param name="Purge">How it dries by outside air that is too cold to do it on end; null for not at all.</param>
public sealed record HumidityControl(
    double DryAbovePercent,
    double DryDeadbandPercent,
    EqList<ActuatorSetting> Drying,
    double DryOnlyAboveOutsideC,
    double FogBelowPercent,
    double FogDeadbandPercent,
    double FogCeilingPercent,
    EqList<ActuatorSetting> Fogging,
    int FogOnS,
    int FogOffS,
    [property: LeftOutWhenNone] double? DryHeatK = null,
    [property: LeftOutWhenNone] PurgeRule? Purge = null);

/// <summary>Drying in turns: wet air is thrown out, then the heaters warm what came in.</summary>
/// <param name="OnS">Time for the outside air once it flows, s; heat goes on by its own thresholds.</param>
/// <param name="PauseS">Time for the heat after it, s.</param>
/// <param name="LeastBelowK">Ends early, or never starts, this far below the heating threshold, K.</param>
/// <param name="Settings">Actuators driven meanwhile, gentler ones than in mild air.</param>
public sealed record PurgeRule(int OnS, int PauseS, double LeastBelowK, EqList<ActuatorSetting> Settings);

/// <summary>Curtain rules.</summary>
/// <param name="Actuator">Actuator id.</param>
/// <param name="DrawBelowLightWm2">Drawn for warmth when outside light is below this, W/m².</param>
/// <param name="DrawBelowOutsideC">And outside air is colder than this, °C.</param>
/// <param name="ShadeAboveLightWm2">Drawn for shade above this light, W/m².</param>
/// <param name="ShadeAboveInsideK">And inside is this far above the cooling threshold, K.</param>
/// <param name="ShadeFraction">How far it is drawn for shade; 0 for never.</param>
/// <param name="GapFraction">Gap left for humidity when drawn at night.</param>
/// <param name="OpenStepFraction">Opens in steps of this, so that cold air is never dumped.</param>
/// <param name="OpenStepS">Wait between the steps, s.</param>
/// <param name="HoldOpenOnSnow">Opened (never drawn) while snow lies or falls.</param>
/// <param name="Dark">Hours that it darkens, whatever light and air; null for none.</param>
/// <param name="Warm">How far it opens at night to let heat go; null for not at all.</param>
public sealed record CurtainControl(
    string Actuator,
    double DrawBelowLightWm2,
    double DrawBelowOutsideC,
    double ShadeAboveLightWm2,
    double ShadeAboveInsideK,
    double ShadeFraction,
    double GapFraction,
    double OpenStepFraction,
    int OpenStepS,
    bool HoldOpenOnSnow,
    [property: LeftOutWhenNone] DarkHours? Dark = null,
    [property: LeftOutWhenNone] WarmGap? Warm = null);

/// <summary>
/// A drawn curtain as a valve for heat: while no heater is asked for and the air is past the cooling threshold, as it is before cold air raises it, the curtain opens step by step; below that it stays,
/// and a deadband lower it is drawn again.
/// </summary>
/// <param name="MostFraction">Opens at most this far, 0 to 1.</param>
/// <param name="PastK">From this far past the cooling threshold, K.</param>
/// <param name="DeadbandK">Drawn again this far below that, K.</param>
public sealed record WarmGap(double MostFraction, double PastK, double DeadbandK);

/// <summary>When a curtain darkens the house.</summary>
/// <param name="From">Drawn from here.</param>
/// <param name="To">Until here.</param>
public sealed record DarkHours(DayMark From, DayMark To);

/// <summary>Lamp rules.</summary>
/// <param name="Actuator">Actuator id.</param>
/// <param name="HoursByPeriod">Photoperiod, h, in the order of the program's periods.</param>
/// <param name="OffAboveLightWm2">Off above this outside light, W/m².</param>
public sealed record LampControl(string Actuator, EqList<double> HoursByPeriod, double OffAboveLightWm2);

/// <summary>Carbon dioxide rules: dosed in daylight while the house is shut. Without a reading nothing is dosed.</summary>
/// <param name="Actuator">Actuator id of the valve.</param>
/// <param name="TargetPpm">Dosing stops here, ppm.</param>
/// <param name="DeadbandPpm">And starts this far below, ppm.</param>
/// <param name="OnlyAboveLightWm2">Only above this outside light, W/m².</param>
/// <param name="RestsWith">No dosing while any of these is asked for: its air would carry the gas out.</param>
public sealed record Co2Control(string Actuator, double TargetPpm, double DeadbandPpm, double OnlyAboveLightWm2, EqList<string> RestsWith);

/// <summary>Upper fans: on while the curtain is drawn and the air above it, warmer than the cooling threshold, is far warmer than outside. Without either reading they rest.</summary>
/// <param name="Actuator">Actuator id.</param>
/// <param name="OnAboveOutsideK">On from this far above outside air, K.</param>
/// <param name="DeadbandK">And off when it has fallen by this, K.</param>
/// <param name="DrawnFraction">Only while the curtain is told to be drawn at least this far.</param>
public sealed record UpperAirControl(string Actuator, double OnAboveOutsideK, double DeadbandK, double DrawnFraction);

/// <summary>
/// How far motors may open in wind and rain, whoever asks, the hand too. Without a wind reading they go as in wind, not as in storm: a house must not cook over a broken sensor. Without a rain
/// reading they go as in dry weather. A hard-wired switch stays beside it.
/// </summary>
/// <param name="Actuators">Actuator ids of motors.</param>
/// <param name="WindMs">From this wind they open only so far, m/s.</param>
/// <param name="InWindFraction">So far, 0 to 1.</param>
/// <param name="StormMs">From this wind they shut, m/s; above <paramref name="WindMs"/>.</param>
/// <param name="InRainFraction">So far while it rains, 0 to 1.</param>
/// <param name="CalmS">How long calmer or dry weather must last before they open again, s.</param>
public sealed record WeatherLimit(EqList<string> Actuators, double WindMs, double InWindFraction, double StormMs, double InRainFraction, int CalmS);

/// <summary>What forbids what. A closed case.</summary>
public abstract record Interlock
{
    private Interlock()
    {
    }

    /// <summary>Never both on: the first wins.</summary>
    /// <param name="Winner">Actuator id.</param>
    /// <param name="Loser">Actuator id.</param>
    public sealed record NotBoth(string Winner, string Loser) : Interlock;

    /// <summary>On only while another is on.</summary>
    /// <param name="Actuator">Actuator id.</param>
    /// <param name="Needs">Actuator id that must be on.</param>
    public sealed record OnlyWith(string Actuator, string Needs) : Interlock;

    /// <summary>On only while at least one of several is on.</summary>
    /// <param name="Actuator">Actuator id.</param>
    /// <param name="NeedsAny">Actuator ids of which one must be on.</param>
    public sealed record OnlyWithAny(string Actuator, EqList<string> NeedsAny) : Interlock;

    /// <summary>While one is on, only so many of others: it takes no more air, water or current than they may ask of it together.</summary>
    /// <param name="Actuator">Actuator id; it must not be one of the counted.</param>
    /// <param name="Counted">Actuator ids that are counted.</param>
    /// <param name="Most">How many of them may be on with it, at least 1.</param>
    public sealed record OnlySoMany(string Actuator, EqList<string> Counted, int Most) : Interlock;

    /// <summary>On only when the louver's end switch proves it open; the guard says how many may run before.</summary>
    /// <param name="Actuator">Actuator id.</param>
    public sealed record NeedsLouverProof(string Actuator) : Interlock;
}

/// <summary>Watch over the intake louver: a stuck one makes fans fold panels, and pull at curtain and doors.</summary>
/// <param name="Louver">Actuator id of the louver.</param>
/// <param name="FansWithoutProof">Fans that may run before the end switch proves the louver open.</param>
/// <param name="GraceS">How long after the louver's travel the proof may be missing, s.</param>
/// <param name="LimitPa">Static pressure above which, without proof, every fan is stopped, Pa.</param>
/// <param name="LockS">How long they stay stopped, s.</param>
public sealed record LouverGuard(string Louver, int FansWithoutProof, int GraceS, double LimitPa, int LockS);

/// <summary>What runs when nothing else asks: circulation, the filter fan.</summary>
/// <param name="Actuator">Actuator id.</param>
/// <param name="LevelFraction">How far, 0 to 1.</param>
/// <param name="RestsWith">It rests while any of these is asked for.</param>
/// <param name="RestsAboveWindMs">It rests above this wind, m/s; 0 for never.</param>
public sealed record BackgroundRule(string Actuator, double LevelFraction, EqList<string> RestsWith, double RestsAboveWindMs);

/// <summary>An alarm.</summary>
/// <param name="Id">Alarm id.</param>
/// <param name="Reading">What it watches.</param>
/// <param name="Low">Alarm below, in the reading's unit; null for none.</param>
/// <param name="High">Alarm above; null for none.</param>
/// <param name="DelayS">How long before it sounds, s.</param>
public sealed record Alarm(string Id, Reading Reading, double? Low, double? High, int DelayS);

/// <summary>What the control box reads: the index into the readings, with its fixed-point unit. A missing reading is <see cref="int.MinValue"/>.</summary>
public enum Reading
{
    /// <summary>Air at the crop, 0.01 °C.</summary>
    InsideTemperature,

    /// <summary>Humidity at the crop, 0.1 %.</summary>
    InsideHumidity,

    /// <summary>Air above the curtain, 0.01 °C.</summary>
    UpperTemperature,

    /// <summary>Outside air, 0.01 °C.</summary>
    OutsideTemperature,

    /// <summary>Outside humidity, 0.1 %.</summary>
    OutsideHumidity,

    /// <summary>Wind, 0.01 m/s.</summary>
    Wind,

    /// <summary>Outside global light, W/m².</summary>
    Light,

    /// <summary>Snow lies or falls: 0 or 1.</summary>
    Snow,

    /// <summary>Louver end switch proves open: 0 or 1.</summary>
    LouverOpenProof,

    /// <summary>Static pressure across the fan wall, 0.1 Pa.</summary>
    StaticPressure,

    /// <summary>Day of the year, 1 to 365.</summary>
    DayOfYear,

    /// <summary>Time of day, standard, ms.</summary>
    TimeOfDay,

    /// <summary>Sunrise that day, ms of the day.</summary>
    Sunrise,

    /// <summary>Sunset that day, ms of the day.</summary>
    Sunset,

    /// <summary>Carbon dioxide at the crop, ppm; a box without it may leave it out.</summary>
    Co2,

    /// <summary>It rains: 0 or 1; a box without it may leave it out.</summary>
    Rain,

    /// <summary>A second thermometer over the crop, 0.01 °C; a box without it may leave it out.</summary>
    SecondTemperature,
}

/// <summary>What one actuator is told, and why.</summary>
/// <param name="Level">0 off or shut to 10 000 on, open or drawn.</param>
/// <param name="Reason">Why, as a code of the program's reasons.</param>
/// <param name="A">First number of the reason.</param>
/// <param name="B">Second number.</param>
/// <param name="C">Third number.</param>
[StructLayout(LayoutKind.Sequential)]
public readonly record struct Command(int Level, int Reason, int A, int B, int C);

/// <summary>
/// How cooling holds back in the cold. A fan that changes the air once in a few minutes makes a house plunge when that air is cold; heater and fan would then chase each other.
/// </summary>
/// <param name="FromK">The cooling threshold starts to rise when the outside air is this far below the target, K.</param>
/// <param name="FullK">And has risen in full at this distance, K.</param>
/// <param name="RaiseK">By this much, K.</param>
/// <param name="StagesWhenCold">Cooling stages that may come on beyond the full distance.</param>
/// <param name="NoWaterBelowC">No water on the wet wall when the outside air is colder than this, °C.</param>
/// <param name="NoWaterAbovePercent">No water on the wet wall when the outside air is damper than this, %: nearly saturated it hardly cools and comes in wet; left out for no such limit. Without a reading water runs.</param>
public sealed record ColdAirRule(double FromK, double FullK, double RaiseK, int StagesWhenCold, double NoWaterBelowC, [property: LeftOutWhenNone] double? NoWaterAbovePercent = null);
