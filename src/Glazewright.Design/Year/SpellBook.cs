using Glazewright.Design.Contracts;
using Glazewright.Design.Program;

namespace Glazewright.Design.Year;

/// <summary>Turns commands minute by minute into stretches of one level and one reason.</summary>
internal sealed class SpellBook(CompiledProgram program)
{
    private readonly List<CommandSpell> spells = [];
    private readonly Command[] open = new Command[program.Actuators.Count];
    private readonly int[] since = new int[program.Actuators.Count];
    private bool started;

    /// <summary>Notes what was told in a minute.</summary>
    public void Note(int minute, ReadOnlySpan<Command> commands)
    {
        for (int i = 0; i < open.Length; i++)
        {
            if (started && open[i].Level == commands[i].Level && open[i].Reason == commands[i].Reason)
            {
                continue;
            }

            if (started)
            {
                End(i, minute);
            }

            open[i] = commands[i];
            since[i] = minute;
        }

        started = true;
    }

    /// <summary>Ends what is open and gives all back by time, then by actuator.</summary>
    public EqList<CommandSpell> Close(int minute)
    {
        for (int i = 0; started && i < open.Length; i++)
        {
            End(i, minute);
        }

        return spells.OrderBy(s => s.FromMinute).ThenBy(s => s.Actuator).ToEqList();
    }

    private void End(int i, int minute) =>
        spells.Add(new CommandSpell(i, since[i], minute, open[i].Level / 10_000.0, ProgramWords.Say(program, i, open[i])));
}
