using Glazewright.Design.Contracts;
using Glazewright.Design.Program;

namespace Glazewright.Design.Year;

/// <summary>Turns commands, step by step, into stretches of one level and one reason.</summary>
/// <param name="program">What commands mean.</param>
/// <param name="stepsAMinute">So many of its steps make a minute; 1 to give times back in steps.</param>
internal sealed class SpellBook(CompiledProgram program, double stepsAMinute = 1)
{
    private readonly List<CommandSpell> spells = [];
    private readonly Command[] open = new Command[program.Actuators.Count];
    private readonly int[] since = new int[program.Actuators.Count];
    private bool started;

    /// <summary>Notes what was told from a step on.</summary>
    public void Note(int step, ReadOnlySpan<Command> commands)
    {
        for (int i = 0; i < open.Length; i++)
        {
            if (started && open[i].Level == commands[i].Level && open[i].Reason == commands[i].Reason)
            {
                continue;
            }

            if (started)
            {
                End(i, step);
            }

            open[i] = commands[i];
            since[i] = step;
        }

        started = true;
    }

    /// <summary>Ends what is open and gives all back by time, then by actuator.</summary>
    public EqList<CommandSpell> Close(int step)
    {
        for (int i = 0; started && i < open.Length; i++)
        {
            End(i, step);
        }

        return spells.OrderBy(s => s.FromMinute).ThenBy(s => s.Actuator).ToEqList();
    }

    private void End(int i, int step) =>
        spells.Add(new CommandSpell(i, since[i] / stepsAMinute, step / stepsAMinute, open[i].Level / 10_000.0, ProgramWords.Say(program, i, open[i])));
}
