using System.Runtime.CompilerServices;
using Glazewright.Design.Program;

namespace Glazewright.Design.Year;

/// <summary>The rain contact and what it did: it is closed for the whole of an hour in which the file has rain, open where the file does not say.</summary>
internal sealed class YearRain
{
    private readonly bool[] wetByHour;
    private readonly int[] held; // actuators that rain holds back
    private int minutes, heldMinutes, tooWarmMinutes;

    /// <summary>Of a weather year and a program.</summary>
    /// <param name="byHour">1 rain, 0 dry, NaN unknown; empty where nothing is known.</param>
    /// <param name="program">Whose vents are held back.</param>
    public YearRain(ReadOnlySpan<double> byHour, ProgramDocument program)
    {
        wetByHour = new bool[YearTargets.Days * 24];
        for (int h = 0; h < byHour.Length && h < wetByHour.Length; h++)
        {
            wetByHour[h] = byHour[h] > 0;
            KnownH += double.IsNaN(byHour[h]) ? 0 : 1;
        }

        HashSet<string> ids = [.. (program.Weather ?? []).Where(w => w.InRainFraction < 1).SelectMany(w => w.Actuators)];
        IsRead = program.Weather is { Count: > 0 } || program.Alarms.Any(a => a.Reading == Reading.Rain);
        held = [.. Enumerable.Range(0, program.Actuators.Count).Where(i => ids.Contains(program.Actuators[i].Id))];
    }

    /// <summary>Hours of the year of which the file says whether it rained.</summary>
    public int KnownH { get; }

    /// <summary>Whether the program reads the contact.</summary>
    public bool IsRead { get; }

    /// <summary>Whether rain holds something back in this house.</summary>
    public bool HoldsVents => held.Length > 0;

    /// <summary>Hours of rain that were counted.</summary>
    public double RainedH => minutes / 60.0;

    /// <summary>Hours in which it kept a vent from opening as far as was asked.</summary>
    public double HeldH => heldMinutes / 60.0;

    /// <summary>Of them, hours in which the air was too warm.</summary>
    public double TooWarmH => tooWarmMinutes / 60.0;

    /// <summary>The contact.</summary>
    /// <param name="minute">Minute of the year.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public bool IsTold(int minute) => wetByHour[minute / 60];

    /// <summary>Counts a minute of a house with such vents.</summary>
    public void Count(int minute, ReadOnlySpan<Command> commands, bool tooWarm)
    {
        minutes += IsTold(minute) ? 1 : 0;
        foreach (int i in held)
        {
            if (commands[i].Reason == (int)ReasonCode.Rain)
            {
                heldMinutes++;
                tooWarmMinutes += tooWarm ? 1 : 0;
                break;
            }
        }
    }
}
