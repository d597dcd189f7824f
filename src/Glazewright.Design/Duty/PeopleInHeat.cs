using Glazewright.Design.Contracts;
using Glazewright.Science.Air;
using static Glazewright.Design.Duty.DutyFindings;

namespace Glazewright.Design.Duty;

/// <summary>The wished climate as people who work in it feel it.</summary>
internal static class PeopleInHeat
{
    /// <summary>Reference values of ISO 7243 for people used to heat, °C WBGT: moderate work, and light work.</summary>
    private const double ModerateWorkC = 28;
    private const double LightWorkC = 30;
    private const double ModerateUnusedC = 26;

    /// <summary>
    /// The most trying target with a humidity: 0.7 wet bulb + 0.3 globe, the globe no warmer than the air, as out of the sun. What the sun adds on people's heads comes on top.
    /// </summary>
    public static double LeastWbgtC(double airC, double humidityPercent, double pressurePa) =>
        0.7 * AirState.FromRelativeHumidity(airC, Math.Clamp(humidityPercent / 100, 0, 1), pressurePa).WetBulbC + 0.3 * airC;

    public static Finding? Of(DutyFacts f)
    {
        var asked = f.Input.Schedule.SelectMany(p => new[] { p.Day, p.Night }).Where(t => t.HumidityAtTargetPercent > 0 && t.TemperatureC is > 15 and < 50)
            .Select(t => (Target: t, WbgtC: LeastWbgtC(t.TemperatureC, t.HumidityAtTargetPercent, f.Result.PressurePa))).ToArray();
        if (asked.Length == 0 || asked.MaxBy(a => a.WbgtC) is not { WbgtC: >= ModerateUnusedC } worst)
        {
            return null;
        }

        string work = worst.WbgtC >= LightWorkC ? Text($"light work ({LightWorkC:0} °C)")
            : worst.WbgtC >= ModerateWorkC ? Text($"moderate work ({ModerateWorkC:0} °C)") : Text($"moderate work for people not used to it ({ModerateUnusedC:0} °C)");
        return new Finding(
            "duty/people-in-heat", worst.WbgtC >= LightWorkC ? Severity.Danger : worst.WbgtC >= ModerateWorkC ? Severity.Near : Severity.Note, f.Input.House,
            Text($"{C(worst.Target.TemperatureC)} at {worst.Target.HumidityAtTargetPercent:0} % is a wet-bulb globe temperature of {C(worst.WbgtC)} out of the sun, above the limit of {work}; sun on head and back comes on top."),
            "Work early, rest in the cool with water by a plan, never alone, and know heat stroke; or run that climate while nobody is in the house. Local rules on work in heat decide.",
            new Source.Standard("ISO 7243:2017", "reference values of WBGT by metabolic class, 30, 28 and 26 °C", Source.Mark.FromMemory));
    }
}
