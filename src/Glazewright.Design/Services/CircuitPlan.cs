using System.Globalization;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;

namespace Glazewright.Design.Services;

/// <summary>A circuit before its legs and conductors are chosen.</summary>
internal sealed record CircuitDraft(
    LoadLine Line, string Label, int Count, double CurrentA, double LeastA, double BreakerA, string Rule, bool MotorRule, bool RoundUp, bool Gfci, double RunM, double DropRunM, string Note)
{
    /// <summary>Apparent power, VA.</summary>
    public double Va => CurrentA * Line.VoltageV * (Line.ThreePhase ? Math.Sqrt(3) : 1);

    /// <summary>Way over the ground, range axes.</summary>
    public EqList<Point3> Way { get; init; } = [];
}

/// <summary>Lines of the load list into branch circuits.</summary>
internal static class CircuitPlan
{
    /// <summary>General circuits: breaker, A.</summary>
    public const double GeneralA = 20;

    /// <summary>Most such a circuit is loaded, A: four fifths.</summary>
    public const double GeneralLoadA = 16;

    /// <summary>Receptacles on a circuit in a wet house (common practice; 220.14 would allow 13).</summary>
    public const int ReceptaclesEach = 8;

    // NEC 430.53(A), from memory: several motors of at most 1 hp and 6 A on a 120 V circuit of 20 A.
    private const double GroupedMotorA = 6;

    public static IEnumerable<CircuitDraft> Of(LoadLine line, LoadPlaces places, Point3 panel)
    {
        if (line.Kind == LoadKind.GrowLamps)
        {
            return Lamps(line, places, panel);
        }

        if (line.Kind == LoadKind.Electronics)
        {
            // The control box hangs beside the panel.
            return [General(line, line.Label, [panel], places, panel, line.CurrentA * line.Count, PowerServices.ContinuousRatio, "125 % of what is on for hours", "")];
        }

        (List<Point3> spots, bool known) = places.Of(line);
        string unknown = known ? "" : "not placed by the layout: middle of the house taken";
        bool motor = line.Kind is LoadKind.Motor or LoadKind.ShortTimeMotor;
        int each = line.Kind switch
        {
            LoadKind.Lights => Math.Max(1, (int)Math.Floor(GeneralLoadA / line.CurrentA)),
            LoadKind.Receptacles => ReceptaclesEach,
            _ when motor && MayShare(line) => Math.Max(1, (int)Math.Floor(GeneralLoadA / line.CurrentA - (PowerServices.ContinuousRatio - 1))),
            _ => 1,
        };
        return Parts(line.Count, each).Select(part =>
        {
            List<Point3> here = spots.GetRange(part.First, part.Count);
            string label = Named(line, part, each);
            double currentA = part.Count * line.CurrentA;
            return motor ? Motor(line, label, here, places, panel, currentA, unknown)
                : line.Kind == LoadKind.Receptacles ? General(line, label, here, places, panel, currentA, 1, "180 VA each", "GFCI at the first outlet or breaker; covers rated for wet places in use")
                : General(line, label, here, places, panel, currentA, PowerServices.ContinuousRatio, "125 % of what is on for hours", line.Kind == LoadKind.ElectricHeat && currentA > 48 ? "over 48 A: elements on circuits of their own (NEC 424.22)" : unknown);
        });
    }

    private static bool MayShare(LoadLine line) =>
        line.VoltageV <= 125 && line.CurrentA <= GroupedMotorA && line.MotorHp <= 1 && line.Id.EndsWith("/circulation", StringComparison.Ordinal) | line.Id.EndsWith("/louver", StringComparison.Ordinal);

    private static CircuitDraft Motor(LoadLine line, string label, List<Point3> spots, LoadPlaces places, Point3 panel, double currentA, string note)
    {
        (double runM, double dropRunM) = places.Chain(panel, line.House, spots);
        double leastA = currentA + (PowerServices.ContinuousRatio - 1) * line.CurrentA;
        bool group = spots.Count > 1;
        return new CircuitDraft(
            line, label, spots.Count, currentA, leastA, group ? GeneralA : BranchSizing.MotorBreakerA(line.CurrentA),
            group ? "several small motors, 430.53(A)" : "250 %, next rating, 430.52", !group, true, false, runM, dropRunM, note)
        {
            Way = LoadPlaces.Way(panel, spots),
        };
    }

    private static CircuitDraft General(LoadLine line, string label, List<Point3> spots, LoadPlaces places, Point3 panel, double currentA, double ratio, string rule, string note)
    {
        (double runM, double dropRunM) = places.Chain(panel, line.House, spots);
        bool outlets = line.Kind == LoadKind.Receptacles;
        return new CircuitDraft(
            line, label, spots.Count, currentA, ratio * currentA, ConductorTable.NextBreakerA(Math.Max(ratio * currentA, GeneralA)), rule, false, !outlets, outlets, runM, dropRunM, note)
        {
            Way = LoadPlaces.Way(panel, spots),
        };
    }

    private static IEnumerable<CircuitDraft> Lamps(LoadLine line, LoadPlaces places, Point3 panel)
    {
        double allA = line.Count * line.CurrentA;
        int circuits = Math.Max(1, (int)Math.Ceiling(allA / GeneralLoadA - 1e-9));
        for (int i = 0; i < circuits; i++)
        {
            string label = circuits == 1 ? line.Label : string.Create(CultureInfo.InvariantCulture, $"{line.Label}, {i + 1} of {circuits}");
            yield return General(line, label, places.LampRow(line.House, i), places, panel, allA / circuits, PowerServices.ContinuousRatio, "125 % of what is on for hours", "") with { Count = 1 };
        }
    }

    // Even parts: seven of at most four are four and three.
    private static IEnumerable<(int First, int Count, int Index, int Of)> Parts(int count, int each)
    {
        int parts = (count + each - 1) / each;
        int first = 0;
        for (int i = 0; i < parts; i++)
        {
            int n = count / parts + (i < count % parts ? 1 : 0);
            yield return (first, n, i, parts);
            first += n;
        }
    }

    private static string Named(LoadLine line, (int First, int Count, int Index, int Of) part, int each) => part.Of == 1
        ? line.Id[^2] == '-' && char.IsAsciiDigit(line.Id[^1]) ? $"{line.Label} {line.Id[^1]}" : line.Count > 1 ? string.Create(CultureInfo.InvariantCulture, $"{line.Label}, {line.Count}") : line.Label
        : each == 1 ? string.Create(CultureInfo.InvariantCulture, $"{line.Label} {part.Index + 1}")
        : string.Create(CultureInfo.InvariantCulture, $"{line.Label}, {part.Count} ({part.Index + 1} of {part.Of})");
}
