using System.Globalization;
using Glazewright.Design.Contracts;
using Glazewright.Design.Plant;
using Glazewright.Design.Program;

namespace Glazewright.Design.Year;

/// <summary>Motors that move too often, in words: what it means in years, what would lessen it and what that costs.</summary>
internal static class MotorWords
{
    private const string Compare = " Two programs compared over the year tell the cost.";

    /// <summary>A finding for each kind of motor that is worn out early, of the one that is so soonest.</summary>
    public static IEnumerable<Finding> Findings(EqList<MotorCounters> counted, ProgramDocument program, PlantResult plant) =>
        from motor in MotorWear.Worn(counted, program, plant)
        group motor by motor.Limit into kind
        let first = kind.First()
        select new Finding("year/motor-wear", Severity.Near, first.Motor.Id, What(first, [.. kind.Skip(1).Select(m => m.Motor.Id)]), Mend(first, program, plant), first.Limit.Source);

    private static string What(WornMotor m, string[] others)
    {
        string does = m.Motor.Kind is ActuatorKind.Heater
            ? Text($"Starts {m.Starts:N0} times a year, the air swinging with it")
            : m.Cycles > 0 ? Text($"Starts {m.Starts:N0} times a year and travels as far as {m.Cycles:N0} times open and shut") : Text($"Starts {m.Starts:N0} times a year");
        string made = m.ByTravel ? Text($"{m.Limit.LifeCycles:N0} full cycles") : Text($"{m.Limit.LifeStarts:N0} starts");
        string onOff = m.Motor.Kind is ActuatorKind.Louver ? Text($", the {MotorWear.OnOffCycles:N0} of one proved to open and shut alone in {Years(MotorWear.OnOffCycles / m.Cycles)}") : "";
        string fuel = m.Burns ? " Wear, and the fuel that a burner wastes while it purges and warms up, are not in the cost." : " Its wear is not in the cost.";
        string too = others.Length == 0 ? "" : $" Early too: {string.Join(", ", others)}.";
        return Text($"{does}: the {made} that {m.Limit.Part} is made for are done in about {Years(m.Years)}{onOff}; half of its kind reach {m.Limit.UsualYears:0} years.{fuel}{too}");
    }

    private static string Mend(WornMotor m, ProgramDocument program, PlantResult plant) => m.Motor.Kind switch
    {
        ActuatorKind.Louver => Text($"A motor for modulating duty ({MotorWear.ModulatingStarts:N0} starts). In the program {Purging(m, program)}drying or a first cooling stage that lets go later (humidity dryDeadband, cooling offAt): the air swings wider.") + Compare,
        ActuatorKind.RoofVent or ActuatorKind.SideVent => "A drive for modulating duty. In the program a longer delay of the first cooling stage, or drying that lets go later (humidity dryDeadband): the air swings wider." + Compare,
        ActuatorKind.Curtain or ActuatorKind.SecondCurtain => "In the program a smaller gap while drying (gap), less heat let go (warmGap), or larger steps when it opens (openStep): damper and warmer nights, colder air let down at once." + Compare,
        ActuatorKind.Heater => Heater(plant) + " In the program a heating stage that lets go later (heating offAt), less added heat while drying (humidity dryHeat): the air swings wider or is damper. A longer least time on is no cure: what it overshoots calls the fans." + Compare,
        ActuatorKind.Fan => "In the program a first cooling stage that lets go later (cooling offAt), or drying that does (humidity dryDeadband): the air swings wider. A contactor of the next size lasts longer." + Compare,
        ActuatorKind.WetWallPump or ActuatorKind.Fog or ActuatorKind.BenchPipe => "In the program a stage that lets go later (offAt), or a longer least time off (motors minOff): the air swings wider. A contactor of the next size lasts longer." + Compare,
        ActuatorKind.Dehumidifier => "In the program drying that lets go later (humidity dryDeadband), or a longer least time off (motors minOff): the humidity swings wider." + Compare,
        ActuatorKind.Co2Valve => "In the program a wider deadband of the gas (co2 deadband): its content swings wider." + Compare,
        _ => "In the program longer least times (motors minOn, minOff)." + Compare,
    };

    private static string Purging(WornMotor m, ProgramDocument program) => program.Humidity.Purge is { OnS: > 0 } purge && purge.Settings.Any(s => s.Actuator == m.Motor.Id)
        ? Text($"longer pauses between turns of drying (humidity purgePause, now {purge.PauseS / 60.0:0.#} min; purge 0 s ends them): damper cold days and less fuel; or ")
        : "";

    private static string Heater(PlantResult plant) => plant.Heat?.Choice.Heaters.All(x => x.Electric || x.Part is { TwoStage: false }) == true
        ? "A smaller first heater."
        : "A smaller first heater, or one that burns at part of its fire (heaterFire).";

    private static string Years(double years) => years < 1.5 ? Text($"{Math.Max(1, Math.Round(12 * years)):0} month{(Math.Round(12 * years) > 1 ? "s" : "")}") : years < 9.5 ? Text($"{years:0.#} years") : Text($"{years:0} years");

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
