using Glazewright.Design.Contracts;
using Glazewright.Design.Form;

namespace Glazewright.Design.Services;

/// <summary>One circuit of a panel.</summary>
/// <param name="Number">Spaces it takes, odd ones on the left (<c>1,3</c>).</param>
/// <param name="Label">What it feeds.</param>
/// <param name="Loads">Ids of the load list's lines it feeds; a panel's id for a feeder.</param>
/// <param name="Kind">What kind of load.</param>
/// <param name="Count">How many machines, fixtures or outlets.</param>
/// <param name="Legs">Legs it stands on (<c>AB</c>).</param>
/// <param name="LegVa">Load on each leg of the panel, VA.</param>
/// <param name="NominalV">Nominal voltage, V.</param>
/// <param name="ThreePhase">Three-phase.</param>
/// <param name="CurrentA">Current of all it feeds at once, A.</param>
/// <param name="LeastA">Least ampacity of its conductors, A.</param>
/// <param name="BreakerA">Breaker, A.</param>
/// <param name="BreakerRule">By which rule.</param>
/// <param name="WireName">Copper conductor, AWG or kcmil.</param>
/// <param name="WireMm2">Its area, mm².</param>
/// <param name="Wires">Conductors without the ground.</param>
/// <param name="GroundName">Copper equipment ground, AWG.</param>
/// <param name="AmpacityA">Ampacity after heat, bundling and terminals, A.</param>
/// <param name="RunM">Wire from the panel to the farthest thing it feeds, m.</param>
/// <param name="DropRunM">One-way length at which all of the current would drop as much as the loads do where they stand, m.</param>
/// <param name="DropFraction">Voltage drop at the far end.</param>
/// <param name="LimitFraction">Most drop it was given.</param>
/// <param name="UpsizedFrom">Size that the ampacity alone asks when the drop asked for more; else empty.</param>
/// <param name="Gfci">Ground-fault protection for people.</param>
/// <param name="Backup">On the generator.</param>
/// <param name="Season">When it runs.</param>
/// <param name="DemandFraction">Share counted in the demand.</param>
/// <param name="Note">What else to know.</param>
public sealed record Circuit(
    string Number,
    string Label,
    EqList<string> Loads,
    LoadKind Kind,
    int Count,
    string Legs,
    EqList<double> LegVa,
    double NominalV,
    bool ThreePhase,
    double CurrentA,
    double LeastA,
    double BreakerA,
    string BreakerRule,
    string WireName,
    double WireMm2,
    int Wires,
    string GroundName,
    double AmpacityA,
    double RunM,
    double DropRunM,
    double DropFraction,
    double LimitFraction,
    string UpsizedFrom,
    bool Gfci,
    bool Backup,
    LoadSeason Season,
    double DemandFraction,
    string Note)
{
    /// <summary>Legs it takes.</summary>
    public int Poles => Legs.Length;

    /// <summary>Corners of its way over the ground from the panel, range axes, m; empty for a feeder. Rises and ends are in the run, not here.</summary>
    public EqList<Point3> Way { get; init; } = [];

    /// <summary>Trade size of rigid PVC conduit for this circuit alone (a set, of several), inches; empty when none takes it.</summary>
    public string ConduitInches => ConduitTable.Of(Wires, WireName, GroundName)?.Inches ?? "";

    /// <summary>The same by its metric designator, mm; zero when none takes it.</summary>
    public int ConduitDesignatorMm => ConduitTable.Of(Wires, WireName, GroundName)?.DesignatorMm ?? 0;
}

/// <summary>What feeds a panel.</summary>
/// <param name="From">Panel or pole.</param>
/// <param name="Material">Copper or aluminium.</param>
/// <param name="Sets">Sets of conductors in parallel.</param>
/// <param name="WireName">Each hot conductor, AWG or kcmil.</param>
/// <param name="WireMm2">Its area, mm².</param>
/// <param name="GroundName">Copper equipment ground; empty for the service run.</param>
/// <param name="BreakerA">Breaker or main that guards it, A.</param>
/// <param name="AmpacityA">Ampacity of all sets, A.</param>
/// <param name="DemandA">Current on the fullest leg, A.</param>
/// <param name="RunM">One way, m.</param>
/// <param name="DropFraction">Voltage drop.</param>
/// <param name="UpsizedFrom">Size by ampacity alone when the drop asked for more; else empty.</param>
public sealed record FeederRun(
    string From, string Material, int Sets, string WireName, double WireMm2, string GroundName, double BreakerA, double AmpacityA, double DemandA, double RunM,
    double DropFraction, string UpsizedFrom);

/// <summary>A panel with its circuits.</summary>
/// <param name="Id">Panel id: a house's, or <c>main</c>.</param>
/// <param name="Place">Where it hangs, in words.</param>
/// <param name="PlaceIsDefault">The job has no control room or head house for it.</param>
/// <param name="System">Its voltage and legs.</param>
/// <param name="MainA">Main breaker, or the feeder's breaker, A.</param>
/// <param name="Spaces">Spaces to buy.</param>
/// <param name="SpacesUsed">Spaces taken.</param>
/// <param name="Circuits">Circuits in the order of their numbers.</param>
/// <param name="CoolingLegVa">Demand on each leg while cooling, VA.</param>
/// <param name="HeatingLegVa">Demand on each leg while heating, VA.</param>
/// <param name="ImbalanceFraction">Fullest leg over the mean less one, in the season in which the fuller leg is larger.</param>
/// <param name="Feeder">What feeds it.</param>
/// <param name="LegV">Voltage from a leg to neutral, V.</param>
public sealed record PanelSchedule(
    string Id,
    string Place,
    bool PlaceIsDefault,
    string System,
    double MainA,
    int Spaces,
    int SpacesUsed,
    EqList<Circuit> Circuits,
    EqList<double> CoolingLegVa,
    EqList<double> HeatingLegVa,
    double ImbalanceFraction,
    FeederRun Feeder,
    double LegV = 120)
{
    /// <summary>Where it hangs, range axes, m.</summary>
    public Point3 At { get; init; }

    /// <summary>
    /// Most the breaker of the feeder may be, A: the largest breaker of a motor branch (or of a feeder it feeds) and the current of all else on the fullest leg (NEC 430.62(A),
    /// 430.63), in the season that asks for more. A standard rating between is not rounded up. Zero for a panel without motors.
    /// </summary>
    public double MotorFeederMostA => new[] { LoadSeason.Cooling, LoadSeason.Heating }
        .SelectMany(season => "ABC".Select(leg => MostA([.. Circuits.Where(c => c.Legs.Contains(leg, StringComparison.Ordinal) && In(c.Season, season))]))).Max();

    private static double MostA(Circuit[] onLeg)
    {
        Circuit? largest = onLeg.Where(c => c.Kind is LoadKind.Motor or LoadKind.ShortTimeMotor or LoadKind.Feeder).MaxBy(c => c.BreakerA);
        return largest is null ? 0 : FeederBreaker.MostA(largest.BreakerA, [.. onLeg.Where(c => c != largest).Select(c => c.CurrentA)]);
    }

    private static bool In(LoadSeason load, LoadSeason season) => load == LoadSeason.Always || load == season || (load == LoadSeason.ExhaustOff && season == LoadSeason.Heating);
}

/// <summary>Breaker of a feeder of motors.</summary>
internal static class FeederBreaker
{
    /// <summary>NEC 430.62(A): no more than the largest branch's breaker and the full-load currents of the rest, A.</summary>
    public static double MostA(double largestBreakerA, IReadOnlyList<double> otherA) => largestBreakerA + otherA.Sum();

    /// <summary>NEC 430.24: conductors carry 125 % of the largest motor and the others' currents, A.</summary>
    public static double ConductorsA(double largestA, IReadOnlyList<double> otherA) => 1.25 * largestA + otherA.Sum();

    /// <summary>Largest standard rating that is not above a current; the smallest when none is.</summary>
    public static double RoundedDownA(double currentA) => ConductorTable.BreakersA.LastOrDefault(b => b <= currentA + 1e-9, ConductorTable.BreakersA[0]);
}
