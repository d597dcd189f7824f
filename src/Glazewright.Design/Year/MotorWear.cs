using Glazewright.Design.Contracts;
using Glazewright.Design.Plant;
using Glazewright.Design.Program;

namespace Glazewright.Design.Year;

/// <summary>What a kind of motor is made for.</summary>
/// <param name="Part">What of it wears, in words.</param>
/// <param name="LifeStarts">Starts it is made for.</param>
/// <param name="LifeCycles">Full travels there and back that it is made for; infinite for one that does not travel.</param>
/// <param name="UsualYears">How old half of its kind get whatever moves them, years.</param>
/// <param name="Source">Where these numbers come from.</param>
internal sealed record WearLimit(string Part, double LifeStarts, double LifeCycles, double UsualYears, Source Source)
{
    /// <summary>Years until it has done what it is made for, by the sooner of starts and travel; infinite for one that never moves.</summary>
    /// <param name="startsPerYear">Starts a year.</param>
    /// <param name="cyclesPerYear">Full travels there and back a year.</param>
    public double Years(double startsPerYear, double cyclesPerYear) => Math.Min(LifeStarts / startsPerYear, double.IsFinite(LifeCycles) ? LifeCycles / cyclesPerYear : double.PositiveInfinity);
}

/// <summary>
/// Lives of motors by their starts and travel. A type test tells what a kind must stand, not when one fails: real ones last longer or shorter, by load, damp and care, and the maker's number goes before these.
/// How old a kind usually gets: ASHRAE Handbook, HVAC Applications, median service lives (quoted: propeller fans 15 years, gas or electric unit heaters 13, sump and well pumps 10, pipe-mounted ones 10,
/// compressors 20, motor starters 17, electric controls 16).
/// </summary>
internal static class MotorWear
{
    /// <summary>Full cycles of an actuator made to open and shut, no more.</summary>
    public const double OnOffCycles = 10_000;

    /// <summary>Starts of an actuator made for modulating duty.</summary>
    public const double ModulatingStarts = 1_800_000;

    private const double Contactor = 250_000;
    private const double Never = double.PositiveInfinity;

    private static readonly Source.Standard PartTurn =
        new("EN 15714-2:2009", "endurance of part-turn actuators up to 125 N·m: classes A and B 10,000 cycles of 90° there and back, class C 1,800,000 starts", Source.Mark.ReadSecondHand);

    private static readonly Source.CommonPractice Switched =
        new("contactors of fans, pumps and lamps are declared for 200,000 to 300,000 switchings at their load, larger than needed they last for a million; ages by ASHRAE's table of service lives");

    private static readonly WearLimit Louver = new(
        "a damper's motor", ModulatingStarts, 60_000, 16,
        new Source.CommonPractice("motors of dampers are declared for 60,000 to 100,000 full cycles; one made to open and shut alone is proved for 10,000, one for modulating duty for 1,800,000 starts (EN 15714-2:2009, classes A to C, as quoted); age by ASHRAE's table of service lives"));

    private static readonly WearLimit Vent = new("a vent's drive", Contactor, OnOffCycles, 16, PartTurn);

    private static readonly WearLimit Cloth = new(
        "a curtain's drive", Contactor, 10_000, 16,
        new Source.Standard("EN 13561 and EN 13659", "highest class of endurance of blinds and shutters, 10,000 cycles", Source.Mark.FromMemory));

    private static readonly WearLimit Burner = new(
        "a burner's gas valve", 100_000, Never, 13,
        new Source.Standard("ANSI Z21.21 and UL 353", "endurance of automatic gas valves and of controls that cycle, 100,000", Source.Mark.FromMemory));

    private static readonly WearLimit Element = new(
        "an electric heater's contactor", 100_000, Never, 13,
        new Source.Standard("UL 508", "endurance of contactors for resistance air heating, 100,000", Source.Mark.ReadSecondHand));

    private static readonly WearLimit Fan = new("a fan's contactor", Contactor, Never, 15, Switched);

    private static readonly WearLimit Pump = new("a pump's contactor", Contactor, Never, 10, Switched);

    private static readonly WearLimit Compressor = new("a compressor", 100_000, Never, 20, new Source.CommonPractice("small compressors are made for some 100,000 starts; age by ASHRAE's table of service lives"));

    private static readonly WearLimit Valve = new(
        "a gas valve", 100_000, Never, 16, new Source.Standard("UL 429", "endurance of electrically operated valves, 100,000", Source.Mark.FromMemory));

    private static readonly WearLimit Lamp = new("the lamps' contactor", Contactor, Never, 17, Switched);

    /// <summary>What a motor is made for.</summary>
    /// <param name="kind">Its kind.</param>
    /// <param name="burns">A heater that burns.</param>
    public static WearLimit Of(ActuatorKind kind, bool burns) => kind switch
    {
        ActuatorKind.Louver => Louver,
        ActuatorKind.RoofVent or ActuatorKind.SideVent => Vent,
        ActuatorKind.Curtain or ActuatorKind.SecondCurtain => Cloth,
        ActuatorKind.Heater => burns ? Burner : Element,
        ActuatorKind.Fan or ActuatorKind.UpperFan or ActuatorKind.Circulation or ActuatorKind.PressureFan => Fan,
        ActuatorKind.WetWallPump or ActuatorKind.Fog or ActuatorKind.BenchPipe => Pump,
        ActuatorKind.Dehumidifier => Compressor,
        ActuatorKind.Co2Valve => Valve,
        ActuatorKind.Lamps => Lamp,
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "No such kind."),
    };

    /// <summary>Motors of a year that are worn out before their kind is old, the soonest first.</summary>
    /// <param name="counted">What each did in a year.</param>
    /// <param name="program">What they are.</param>
    /// <param name="plant">Which heaters burn.</param>
    public static IEnumerable<WornMotor> Worn(EqList<MotorCounters> counted, ProgramDocument program, PlantResult plant) =>
        from motor in counted
        where motor.Starts > 0
        let what = program.Actuators.First(a => a.Id == motor.Actuator)
        let burns = plant.Heat?.Choice.Heaters.Any(h => h.Id == motor.Actuator && !h.Electric) == true
        let limit = Of(what.Kind, burns)
        let cycles = what.TravelS > 0 ? motor.RuntimeH * 3600 / (2 * what.TravelS) : 0
        let years = limit.Years(motor.Starts, cycles)
        where years < limit.UsualYears
        orderby years
        select new WornMotor(what, limit, burns, motor.Starts, cycles, years);
}

/// <summary>A motor that moves too often.</summary>
/// <param name="Motor">Which.</param>
/// <param name="Limit">What its kind is made for.</param>
/// <param name="Burns">A heater that burns.</param>
/// <param name="Starts">Starts a year.</param>
/// <param name="Cycles">Full travels there and back a year; 0 for one that does not travel.</param>
/// <param name="Years">Years until it has done what it is made for.</param>
internal sealed record WornMotor(Actuator Motor, WearLimit Limit, bool Burns, int Starts, double Cycles, double Years)
{
    /// <summary>Its travel wears it out before its starts do.</summary>
    public bool ByTravel => Limit.LifeCycles / Cycles < Limit.LifeStarts / Starts;
}
