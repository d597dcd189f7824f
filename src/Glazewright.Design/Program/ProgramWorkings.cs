using Glazewright.Design.Contracts;
using Glazewright.Design.Plant;

namespace Glazewright.Design.Program;

/// <summary>Figures, findings and omissions of the program as written.</summary>
internal static class ProgramWorkings
{
    public static StageReport Of(ProgramInput input, PlantResult plant, EqList<ProgramPeriod> periods, DefaultStages stages)
    {
        EqList<Figure> figures = Thresholds(plant.House, periods[0], new Source.CommonPractice("thresholds inside the band, stages about a kelvin apart, least times of some minutes"));
        var findings = new List<Finding>();
        foreach (ProgramPeriod parked in periods.Where(p => p.Id.StartsWith("parked", StringComparison.Ordinal) && !input.Schedule.Any(c => c.Id == p.Id)))
        {
            findings.Add(new Finding(
                "program/parked", Severity.Near, plant.House,
                FormattableString.Invariant($"No crop on days {parked.FromDay} to {parked.ToDay} of the year: the program holds {DefaultPeriods.ParkedC:0} °C then."),
                "Give the weeks a crop or an empty period.", new Source.Default("/houses/schedule", "frost-safe for wet pipes")));
        }

        if (plant.Fog is not null && input.Schedule.SelectMany(c => new[] { c.Day, c.Night }).Max(t => t.HumidityAtTargetPercent) is var dampest && dampest > 100 * FogSizing.DampestFraction)
        {
            findings.Add(new Finding(
                "program/humidity-above-fog", Severity.Near, plant.House,
                FormattableString.Invariant($"{dampest:0} % humidity is wished and the fog stops at {100 * FogSizing.DampestFraction:0} %: beyond that drops no longer evaporate but wet crop and floor, and sensors tell little. What lacks can only come from crop and wet floor in a shut house."),
                "Ask for what fog can hold, or take the rest by a wet floor while no sun loads the house; the year counts what comes of it.", new Source.CommonPractice("fog is stopped at 85 to 95 %")));
        }

        if (plant.Pressure is { } pressure)
        {
            findings.Add(new Finding(
                "program/pressure-mode", Severity.Note, plant.House,
                FormattableString.Invariant($"Positive pressure is a mode of its own: the filter fan stops while exhaust runs or vents are open, and above {pressure.FailsAtWindMs / 0.44704:0.0} mph ({pressure.FailsAtWindMs:0.0} m/s) of wind, where the pressure no longer holds."),
                string.Empty, new Source.FirstPrinciples("wind pressure against fan pressure")));
        }

        if (!input.SealedCombustion && plant.Heat?.Choice.Heaters.Any(h => !h.Electric && !h.SealedCombustion) == true)
        {
            findings.Add(new Finding(
                "program/back-draft", Severity.Danger, plant.House,
                "Heaters take their air from the house. The program never runs one together with an exhaust fan, but a program is not a safety device: suction back-drafts flues, and carbon monoxide kills.",
                "Sealed combustion, and a hard-wired interlock with a CO alarm.", new Source.CommonPractice("separate combustion air in tight houses")));
        }

        EqList<string> leftOut =
        [
            "The program is no safety device: high limits, flame safeguard, low-water cut-off, fan guards, emergency stops and hand-off-auto switches are hard-wired outside it.",
            "Where one period follows another the temperature target goes over in the first two hours of the day, whatever the ramp.",
            .. plant is { Curtain: not null, SecondCurtain: null } ? (string[])["One curtain is controlled; a second cloth follows the first."] : [],
        ];
        return new StageReport(figures, findings.ToEqList(), leftOut);
    }

    public static EqList<Figure> Thresholds(string house, ProgramPeriod first, Source source) =>
    [
        Figure.State(house + "/program/cool-above", "Cooling starts above the target by", Unit.Kelvin, first.CoolAboveK, source),
        Figure.State(house + "/program/heat-below", "Heating starts below the target by", Unit.Kelvin, first.HeatBelowK, source),
    ];
}
