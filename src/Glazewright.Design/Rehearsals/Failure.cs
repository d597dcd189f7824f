using Glazewright.Design.Program;
using Glazewright.Design.Year;
using Glazewright.Science.Climate;

namespace Glazewright.Design.Rehearsals;

/// <summary>A failure in a run, in a supposed wind and with a supposed curtain; the base fails nothing.</summary>
/// <param name="supposed">Wind and curtain from the failure on.</param>
/// <param name="curtain">The curtain's place among the actuators; below 0 where there is none.</param>
internal abstract class Failure(Supposed supposed, int curtain) : Tamper
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
        if (CurtainIsSet && curtain >= 0 && supposed.CurtainFraction is { } stands)
        {
            commands[curtain] = commands[curtain] with { Level = (int)(10_000 * stands) };
        }
    }

    /// <summary>Changes what the equipment is told.</summary>
    protected virtual void Fail(Span<Command> commands)
    {
    }
}

/// <summary>An actuator that does not answer: off, shut, or open curtain.</summary>
internal sealed class Dead(Supposed supposed, int curtain, int dead) : Failure(supposed, curtain)
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
internal sealed class Outage(Supposed supposed, int curtain, bool[] travels) : Failure(supposed, curtain)
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
internal sealed class Deaf(Supposed supposed, int curtain) : Failure(supposed, curtain)
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
