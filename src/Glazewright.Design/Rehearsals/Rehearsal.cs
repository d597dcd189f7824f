using Glazewright.Design.Contracts;

namespace Glazewright.Design.Rehearsals;

/// <summary>Failures tried on the year's coldest night and hottest noon.</summary>
/// <param name="House">House id.</param>
/// <param name="All">What was tried.</param>
public sealed record RehearsalResult(string House, EqList<Rehearsal> All);

/// <summary>Something fails on a day of the year: what happens, as the file has it and at both ends of what air, damp and curtain can make of it.</summary>
/// <param name="Id">Short name (<c>heater-dead</c>).</param>
/// <param name="What">What fails and when, in words.</param>
/// <param name="Day">Day of the common year, 0 to 364.</param>
/// <param name="FromMinute">Minute of the day it fails.</param>
/// <param name="LimitC">The temperature that matters: frost, or what leaves bear.</param>
/// <param name="IsCold">True when the danger is cold.</param>
/// <param name="Tried">How many states of wind, damp and curtain were tried by the minute to find both ends.</param>
/// <param name="Runs">As in the file, then the harshest and the mildest state tried; all three in steps of <see cref="RehearsalStage.StepS"/>.</param>
public sealed record Rehearsal(string Id, string What, int Day, int FromMinute, double LimitC, bool IsCold, int Tried, EqList<RehearsalRun> Runs)
{
    /// <summary>Shortest time to the limit, min, rounded down to five; null when it is never passed that day.</summary>
    public int? SoonestMin => Runs.Min(r => r.ToLimitMin) is { } soonest ? soonest / 5 * 5 : null;

    /// <summary>Longest time to the limit among the runs that pass it, min, rounded down to five; null when one never does.</summary>
    public int? LatestMin => Runs.Any(r => r.ToLimitMin is null) ? null : Runs.Max(r => r.ToLimitMin)!.Value / 5 * 5;

    /// <summary>Worst temperature of all runs, °C.</summary>
    public double WorstC => IsCold ? Runs.Min(r => r.WorstC) : Runs.Max(r => r.WorstC);

    /// <summary>Mildest of the runs' worst temperatures, °C.</summary>
    public double MildestC => IsCold ? Runs.Max(r => r.WorstC) : Runs.Min(r => r.WorstC);
}

/// <summary>One run of a rehearsal.</summary>
/// <param name="State">As in the file, or what was supposed of wind, damp and curtain.</param>
/// <param name="ToLimitMin">Whole minutes from the failure to the limit; null when it is not passed that day.</param>
/// <param name="WorstC">Coldest or hottest air at the crop after the failure.</param>
/// <param name="InsideC">Air at the crop, the failure's minute and every five minutes after it.</param>
/// <param name="ToldBy">The program's alarm that sounds first after the failure; empty when none does that day, or the box has no power.</param>
/// <param name="ToldMin">Whole minutes from the failure to that alarm.</param>
/// <param name="Does">What the lead heater, or the first of the cooling, is told an hour after the failure, in a sentence.</param>
public sealed record RehearsalRun(
    string State, int? ToLimitMin, double WorstC, EqList<float> InsideC, string ToldBy = "", int? ToldMin = null, string Does = "");
