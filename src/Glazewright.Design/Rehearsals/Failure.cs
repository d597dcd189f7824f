using Glazewright.Design.Program;
using Glazewright.Design.Year;
using Glazewright.Science.Climate;

namespace Glazewright.Design.Rehearsals;

/// <summary>A failure in a run, in a supposed wind and with a supposed curtain; the base fails nothing.</summary>
/// <param name="supposed">Wind and curtain from the failure on.</param>
/// <param name="curtains">The curtains' places among the actuators.</param>
internal abstract class Failure(Supposed supposed, int[] curtains) : Tamper
{
    /// <summary>Whether it has failed.</summary>
    public bool IsOn { get; set; }

    /// <summary>Whether the curtain is where it is supposed to be: a while before the failure, so that house has settled.</summary>
    public bool CurtainIsSet { get; set; }

    public override void Weather(ref HouseForcing forcing)
    {
        if (IsOn && !double.IsNaN(supposed.WindMs))
        {
            forcing.WindMPerS = supposed.WindMs;
        }
    }

    public sealed override void Command(int minute, Span<Command> commands)
    {
        Fail(commands);
        for (int i = 0; CurtainIsSet && i < curtains.Length && supposed.CurtainFraction is { } stands; i++)
        {
            ref Command told = ref commands[curtains[i]];
            told = told with { Level = (int)(10_000 * stands) };
        }
    }

    /// <summary>Changes what the equipment is told.</summary>
    protected virtual void Fail(Span<Command> commands)
    {
    }
}

/// <summary>An actuator that does not answer: off, shut, or open curtain.</summary>
internal sealed class Dead(Supposed supposed, int[] curtains, int dead) : Failure(supposed, curtains)
{
    protected override void Fail(Span<Command> commands)
    {
        if (IsOn)
        {
            commands[dead] = commands[dead] with { Level = 0 };
        }
    }
}

/// <summary>No power: what is switched is off, what travels stays where it was told last.</summary>
internal sealed class Outage(Supposed supposed, int[] curtains, bool[] travels) : Failure(supposed, curtains)
{
    private int[]? stays;

    protected override void Fail(Span<Command> commands)
    {
        if (!IsOn || stays is null)
        {
            stays ??= new int[commands.Length];
            for (int i = 0; i < commands.Length; i++)
            {
                stays[i] = travels[i] ? commands[i].Level : 0;
            }
        }

        for (int i = 0; i < commands.Length && IsOn; i++)
        {
            commands[i] = commands[i] with { Level = stays[i] };
        }
    }
}

/// <summary>No reading of the air inside.</summary>
internal sealed class Deaf(Supposed supposed, int[] curtains) : Failure(supposed, curtains)
{
    public override void Read(int minute, Span<int> readings)
    {
        if (IsOn)
        {
            readings[(int)Reading.InsideTemperature] = int.MinValue;
            readings[(int)Reading.InsideHumidity] = int.MinValue;
        }
    }
}
