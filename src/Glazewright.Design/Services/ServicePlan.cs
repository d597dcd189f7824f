using Glazewright.Design.Contracts;
using Glazewright.Design.Form;

namespace Glazewright.Design.Services;

/// <summary>What is led over the ground.</summary>
public enum UtilityKind
{
    /// <summary>Electric power.</summary>
    Power,

    /// <summary>Gas or oil.</summary>
    Fuel,

    /// <summary>Water.</summary>
    Water,

    /// <summary>What runs off.</summary>
    Drain,
}

/// <summary>What a point of a utility is.</summary>
public enum TapKind
{
    /// <summary>Hose bib.</summary>
    HoseBib,

    /// <summary>Floor drain.</summary>
    FloorDrain,

    /// <summary>A machine, valve or run-off with a pipe of its own.</summary>
    Machine,
}

/// <summary>Where things are tapped and the ways to them: along walls, under floors, in trenches between buildings. First ways to measure and price by.</summary>
/// <param name="Entries">Where each utility enters, or the drains leave.</param>
/// <param name="Points">Taps, drains and machines that are served.</param>
/// <param name="Pieces">Pipe between branches, each of one size; empty for power, whose ways stand with the circuits.</param>
public sealed record ServicePlan(EqList<UtilityEntry> Entries, EqList<UtilityPoint> Points, EqList<PipePiece> Pieces)
{
    /// <summary>Nothing is led anywhere.</summary>
    public static ServicePlan None { get; } = new([], [], []);
}

/// <summary>Where a utility enters the range, or the drains leave it.</summary>
/// <param name="Utility">Which.</param>
/// <param name="At">On the ground, range axes, m.</param>
/// <param name="Words">In words.</param>
/// <param name="IsDefault">The job does not say; a default of ours.</param>
public sealed record UtilityEntry(UtilityKind Utility, Point3 At, string Words, bool IsDefault);

/// <summary>A tap, drain or machine that is served.</summary>
/// <param name="Utility">Which utility.</param>
/// <param name="Kind">Bib, floor drain or machine.</param>
/// <param name="House">House id.</param>
/// <param name="Id">Path id (<c>A/hose-2</c>).</param>
/// <param name="Line">Id of the gas, water or drain line it belongs to; empty for a floor drain of a house that has none.</param>
/// <param name="Label">What it is.</param>
/// <param name="At">Range axes, m.</param>
/// <param name="Pipe">Size of the pipe to it, nominal; empty where none of our table serves.</param>
/// <param name="RunM">Pipe from the entry to it, the rise to what hangs included, m.</param>
/// <param name="IsDefault">Its place is a default of ours, not the layout's.</param>
public sealed record UtilityPoint(UtilityKind Utility, TapKind Kind, string House, string Id, string Line, string Label, Point3 At, string Pipe, double RunM, bool IsDefault);

/// <summary>Pipe of one size between two branches.</summary>
/// <param name="Utility">Which utility.</param>
/// <param name="House">House it lies in; empty outside the houses.</param>
/// <param name="Way">Corners from the entry's side, range axes, m; without the rise.</param>
/// <param name="LengthM">Its length, the rise included, m.</param>
/// <param name="FlowM3PerS">All it may carry at once, m³/s; of gas at standard conditions.</param>
/// <param name="Pipe">Nominal size; empty where none of our table serves.</param>
public sealed record PipePiece(UtilityKind Utility, string House, EqList<Point3> Way, double LengthM, double FlowM3PerS, string Pipe);
