using System.Globalization;
using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;

namespace Glazewright.Design.Program;

/// <summary>The words of the program's reasons, in one place.</summary>
public static class ProgramWords
{
    /// <summary>One command in a sentence: "fan-3 on: 1.2 K above the cooling threshold for 4 min (stage 3)".</summary>
    /// <param name="program">The program the command comes from.</param>
    /// <param name="actuator">The command's place among the commands.</param>
    /// <param name="command">The command.</param>
    /// <returns>The sentence, invariant culture, SI.</returns>
    public static string Say(CompiledProgram program, int actuator, Command command)
    {
        ArgumentNullException.ThrowIfNull(program);
        Actuator a = program.Actuators[actuator];
        string state = ProgramCompiler.Moves(a.Kind)
            ? string.Create(CultureInfo.InvariantCulture, $"{command.Level / 100.0:0} % {(a.Kind is ActuatorKind.Curtain or ActuatorKind.SecondCurtain ? "drawn" : "open")}")
            : command.Level == 0 ? "off"
            : command.Level == 10_000 ? "on" : string.Create(CultureInfo.InvariantCulture, $"on {command.Level / 100.0:0} %");
        return $"{a.Id} {state}: {Because(program, command)}";
    }

    /// <summary>A change in words: "cooling stages, fan-2: comes on this far above the threshold".</summary>
    /// <param name="change">The change.</param>
    public static string Place(ProgramChange change)
    {
        ArgumentNullException.ThrowIfNull(change);
        ProgramPart part = ProgramParts.Of(change.Part);
        return Place(part, change.Name, part.Fields.First(f => f.Key == change.Field));
    }

    /// <summary>What a job may change, in the same words.</summary>
    /// <param name="part">Part of the program.</param>
    /// <param name="name">Name of the thing in it; empty where the part is one thing.</param>
    /// <param name="field">The field.</param>
    public static string Place(ProgramPart part, string name, ProgramField field)
    {
        ArgumentNullException.ThrowIfNull(part);
        ArgumentNullException.ThrowIfNull(name);
        ArgumentNullException.ThrowIfNull(field);
        return $"{char.ToLowerInvariant(part.Title[0])}{part.Title[1..]}{(name.Length > 0 ? ", " + name : "")}: {field.Words}";
    }

    internal static Finding WithoutTarget(ProgramDocument written, ProgramChange change)
    {
        IReadOnlyList<string> names = ProgramParts.Of(change.Part).Names(written);
        bool isThere = names.Contains(change.Name);
        string has = change.Name.Length == 0 ? "the house has none" : isThere ? "it has no such value" : names.Count == 0 ? "there is none of its kind" : $"there is {string.Join(", ", names)}";
        return new Finding(
            "program/change-without-target", Severity.Near, written.House,
            $"A change of the control program has nothing to change ({Place(change)}): {has}. The program runs without it.",
            "Take the change back, or give it to what stands in its place.", new Source.Given(change.Pointer));
    }

    internal static Finding OutOfOrder(string part, string house, string later, double laterK, string earlier, double earlierK, ProgramChange at)
    {
        string way = part == "heating" ? "below" : "above";
        string K(double kelvin) => Text($"{1.8 * kelvin:0.0} F°");
        return new Finding(
            "program/stage-out-of-order", Severity.Near, house,
            $"{later} now comes on before {earlier}: at {K(laterK)} {way} the threshold, {earlier} at {K(earlierK)}. The technician's changes stand while the stages beside them are written anew with the plant.",
            "Take the change back, or give the stages behind it distances of their own.", new Source.Given(at.Pointer));
    }

    internal static Finding Changed(string house, IReadOnlyList<ProgramChange> changes)
    {
        const int MostTold = 6;
        string more = changes.Count > MostTold ? $"; and {Text($"{changes.Count - MostTold}")} more" : "";
        return new Finding(
            "program/changed", Severity.Note, house,
            $"{Text($"{changes.Count}")} {(changes.Count == 1 ? "value" : "values")} of the control program {(changes.Count == 1 ? "is" : "are")} the technician's own, not as written from plant and wish ({string.Join("; ", changes.Take(MostTold).Select(Place))}{more}).",
            "", new Source.Given(changes[0].Pointer));
    }

    // The job calls a stage by what it brings on.
    internal static string InJobNames(string wrong, ProgramDocument written)
    {
        foreach ((ControlStage stage, string name) in written.Cooling.Zip(StageNames.Of(written.Cooling, written.House)).Concat(written.Heating.Zip(StageNames.Of(written.Heating, written.House))))
        {
            wrong = wrong.Replace($"'{stage.Id}'", $"'{name}'", StringComparison.Ordinal);
        }

        return wrong;
    }

    // What the checks say is worded for the program's file, where a key carries its unit.
    internal static string InJobKeys(string right)
    {
        foreach ((string file, string job) in (ReadOnlySpan<(string, string)>)[("onAtK", "onAt"), ("coolAboveK", "coolAbove"), ("heatBelowK", "heatBelow"), ("fromK", "from"), ("windMs", "wind"), ("drawBelowLightWm2", "drawBelowLight")])
        {
            right = right.Replace(file, job, StringComparison.Ordinal);
        }

        return right;
    }

    private static string Because(CompiledProgram program, Command c)
    {
        string Other(int i) => i >= 0 && i < program.Actuators.Count ? program.Actuators[i].Id : "?";
        return (ReasonCode)c.Reason switch
        {
            ReasonCode.Idle => "nothing asks for it",
            ReasonCode.Cooling when c.A < 0 => Text($"already {-c.A / 100.0:0.0} K below the cooling threshold, but not past its dead band (stage {c.C})"),
            ReasonCode.Cooling => Past(c, "above the cooling threshold"),
            ReasonCode.Heating when c.A < 0 => Text($"already {-c.A / 100.0:0.0} K above the heating threshold, but not past its dead band (stage {c.C})"),
            ReasonCode.Heating => Past(c, "below the heating threshold"),
            ReasonCode.Drying => Text($"drying: {c.A / 10.0:0.0} % RH, starts at {c.B / 10.0:0.0} %, outside air holds {Share(c.C)} of the vapour inside"),
            ReasonCode.Fogging => Text($"humidifying: {c.A / 10.0:0.0} % RH, starts below {c.B / 10.0:0.0} %, never above {c.C / 10.0:0.0} %"),
            ReasonCode.CurtainForWarmth => Text($"drawn for warmth: light {Light(c.A)}, outside {Degrees(c.B)}, gap {c.C / 100.0:0} %"),
            ReasonCode.CurtainForShade => Text($"drawn for shade: light {Light(c.A)}, {c.B / 100.0:0.0} K above the cooling threshold"),
            ReasonCode.CurtainForDark => Text($"drawn to darken until {c.B / 60:00}:{c.B % 60:00}{(c.C > 0 ? Text($", gap {c.C / 100.0:0} %") : string.Empty)}"),
            ReasonCode.CurtainLetsHeatGo => Text($"opened {c.B / 100.0:0} % of at most {c.C / 100.0:0} % to let heat go: {c.A / 100.0:0.0} K past the cooling threshold"),
            ReasonCode.Purging => Text($"throws wet air out for a while: {c.A / 10.0:0.0} % RH, starts at {c.B / 10.0:0.0} %, outside air holds {Share(c.C)} of the vapour inside"),
            ReasonCode.CurtainForSnow => "held open for snow",
            ReasonCode.CurtainInSteps => Text($"opening in steps of {c.B / 100.0:0} %, {c.A / 100.0:0} % drawn, next step in {Span(c.C)}"),
            ReasonCode.Photoperiod => Text($"making up the day: {c.A} of {c.C} min, outside light {Light(c.B)}"),
            ReasonCode.Dosing => Text($"dosing: {c.A} ppm, up to {c.B} ppm, light {Light(c.C)}"),
            ReasonCode.UpperAir => Text($"air above the curtain {c.A / 100.0:0.0} K warmer than outside, {c.B / 100.0:0.0} K above the cooling threshold, curtain {c.C / 100.0:0} % drawn"),
            ReasonCode.Background => "runs when nothing else asks",
            ReasonCode.LeastTimeOn => Text($"on for {Span(c.A)}, least time on {Span(c.B)}"),
            ReasonCode.LeastTimeOff => Text($"off for {Span(c.A)}, least time off {Span(c.B)}"),
            ReasonCode.NotWith => $"not together with {Other(c.A)}",
            ReasonCode.Wind => Text($"{Wind(c.A)}: not over {c.B / 100.0:0} %, until it has been calmer for {Span(c.C)}"),
            ReasonCode.Rain => Text($"rain: not over {c.B / 100.0:0} %, until it has been dry for {Span(c.C)}"),
            ReasonCode.OnlySoMany => Text($"{Other(c.A)} goes with {c.B} of these at most"),
            ReasonCode.WaitsFor => $"waits until {Other(c.A)} has stopped",
            ReasonCode.Needs => $"needs {Other(c.A)}, which is not there yet",
            ReasonCode.NeededBy => $"kept for {Other(c.A)}, which still runs",
            ReasonCode.NoLouverProof => Text($"louver not proved open: at most {c.A} fan without proof"),
            ReasonCode.LouverFault => Text($"stopped: louver not proved open and static pressure {Pressure(c.A)} above {c.B / 10.0:0} Pa, {Span(c.C)} to go"),
            ReasonCode.NearSaturation => Text($"no fog at {c.A / 10.0:0.0} % RH, ceiling {c.B / 10.0:0.0} %"),
            ReasonCode.HumidityUnknown => "no fog without a humidity reading",
            ReasonCode.Blind => Text($"no temperature inside: by outside air {Degrees(c.A)} and light {Light(c.B)}"),
            ReasonCode.TooColdForWater => Text($"no water on the wet wall: outside {Degrees(c.A)}, limit {Degrees(c.B)}"),
            ReasonCode.TooDampForWater => Text($"no water on the wet wall: outside humidity {c.A / 10.0:0.0} %, limit {c.B / 10.0:0.0} %"),
            ReasonCode.Hand => Text($"by hand, {c.A / 100.0:0} %"),
            _ => Text($"reason {c.Reason} ({c.A}, {c.B}, {c.C})"),
        };
    }

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);

    // A stage without a wait comes on the moment its threshold is reached.
    private static string Past(Command c, string what) => Text(
        $"{(Math.Abs(c.A) < 5 ? "at" + what[what.IndexOf(' ', StringComparison.Ordinal)..] : Text($"{c.A / 100.0:0.0} K {what}"))}{(c.B > 0 ? " for " + Span(c.B) : string.Empty)} (stage {c.C})");

    private static string Span(int seconds) => seconds >= 120 ? Text($"{seconds / 60} min") : Text($"{seconds} s");

    private static string Degrees(int centi) => centi == int.MinValue ? "unknown" : Text($"{centi / 100.0:0.0} °C");

    private static string Wind(int centi) => centi == int.MinValue ? "wind unknown" : Text($"wind {centi / 100.0:0.0} m/s");

    private static string Light(int wm2) => wm2 == int.MinValue ? "unknown" : Text($"{wm2} W/m²");

    private static string Pressure(int decipascals) => decipascals == int.MinValue ? "(unknown)" : Text($"{decipascals / 10.0:0} Pa");

    private static string Share(int perMille) => perMille == int.MinValue ? "an unknown share" : Text($"{perMille / 10.0:0} %");
}
