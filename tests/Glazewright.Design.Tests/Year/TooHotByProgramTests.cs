using Glazewright.Design.Contracts;
using Glazewright.Design.Program;
using Glazewright.Design.Year;

namespace Glazewright.Design.Tests.Year;

/// <summary>Hours above a limit: whether the equipment was all on, or the program kept some of it back.</summary>
public class TooHotByProgramTests
{
    private static readonly YearInput s_limited = YearScenes.Input with { Schedule = [.. YearScenes.Input.Schedule.Select(p => p with { NeverAboveC = 29 })] };

    [Fact]
    public void Cooling_that_waits_is_named_when_the_limit_is_passed()
    {
        // The same year with water that waits for an hour, and does so each time.
        ProgramDocument slow = YearScenes.Program with
        {
            Cooling = [.. YearScenes.Program.Cooling.Select(s => s.Settings.Any(x => x.Actuator == "A/pump") ? s with { DelayS = 3600, OffAtK = s.OnAtK - 0.5 } : s)],
        };
        string swift = Text(YearScenes.Program), waiting = Text(slow);
        Assert.Contains("cooling had something left", waiting, StringComparison.Ordinal);
        Assert.True(Left(waiting) > 2 * Left(swift), $"{swift} / {waiting}");
    }

    [Fact]
    public void With_everything_on_nothing_is_blamed_on_the_program()
    {
        ProgramDocument always = YearScenes.Program with
        {
            Cooling = [.. YearScenes.Program.Cooling.Select(s => s with { OnAtK = 0.5, OffAtK = 0, DelayS = 0 })],
        };
        Finding over = YearScenes.Run(always, input: s_limited).Report.Findings.Single(f => f.Code == "year/never-above");
        Assert.DoesNotContain("cooling had something left", over.What, StringComparison.Ordinal);
    }

    private static string Text(ProgramDocument program) => YearScenes.Run(program, input: s_limited).Report.Findings.Single(f => f.Code == "year/never-above").What;

    private static double Left(string text)
    {
        int at = text.IndexOf(" For ", StringComparison.Ordinal);
        return at < 0 ? 0 : double.Parse(text[(at + 5)..text.IndexOf(" h ", at, StringComparison.Ordinal)], System.Globalization.CultureInfo.InvariantCulture);
    }
}
