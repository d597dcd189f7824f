using System.Globalization;
using Glazewright.Design.Contracts;
using Glazewright.Design.Services;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Reports;
using Glazewright.Papers.Sets;

namespace Glazewright.Papers.Plant;

/// <summary>Panels: what feeds them, their schedules, the wire to buy.</summary>
internal static class PanelChapter
{
    public static IEnumerable<Block> Of(PaperSource source)
    {
        EqList<PanelSchedule> panels = source.Services.Panels;
        if (panels.Count == 0)
        {
            yield break;
        }

        bool us = source.Job.Units == UnitSystem.Us;
        yield return new Block.NewPage();
        yield return new Block.Heading(2, "Panels and circuits");
        yield return new Block.Caution(
            "No permission to wire",
            "Laid out to price from, by US practice. A licensed electrician designs, checks and connects under the local code. In a greenhouse: GFCI on receptacles, boxes and fittings for wet and corrosive places (NEC 547 where it applies), an equipment ground in every raceway, steel bonded, a disconnect in sight of each motor, power off and locked before hands go in.");
        yield return new Block.TableOf(Feeders(panels, us));
        yield return new Block.Paragraph(
            $"Runs go along walls and gutter: both level distances in the range's axes, up to the gutter, down to the load, and {(us ? "10 ft" : "3 m")} for ends; several loads on a circuit are reached one after the other, the nearest next. "
            + (panels.Any(p => p.PlaceIsDefault) ? "The job names no dry room for the panels: their place is a default of ours." : "Where the panels hang is a default of ours."),
            Quiet: true);
        foreach (PanelSchedule panel in panels)
        {
            yield return new Block.Heading(2, $"Panel {panel.Id}");
            yield return new Block.TableOf(Schedule(panel, us));
            yield return new Block.Paragraph(
                $"Place: {panel.Place}. {panel.System}. {Whole(panel.MainA)} A {(panel.Id == "main" ? "main" : "breaker in the main panel")}; {panel.SpacesUsed} of {panel.Spaces} spaces, {panel.Spaces - panel.SpacesUsed} spare. "
                + $"Demand by leg while cooling {Legs(panel.CoolingLegVa)} VA, while heating {Legs(panel.HeatingLegVa)} VA: fullest leg {Percent(panel.ImbalanceFraction)} % over the mean.");
        }

        yield return new Block.Heading(2, "Wire to price");
        yield return new Block.TableOf(Wire(panels, us));
        yield return new Block.TableOf(Conduit(panels, us));
        yield return new Block.Paragraph(
            "Copper of 90 °C insulation for wet places, least 12 AWG. Ampacity: 90 °C column of NEC table 310.16 × 0.87 (45 °C) × 0.80 (four to six in a raceway), no more than the 60 °C column up to a 100 A breaker, the 75 °C column above. "
            + "Motors: conductors 125 %, breaker 250 % of the table current and the next rating (430.22, 430.52); overloads by the nameplate in the starter. What is on for hours: 125 %. Several circulation fans or louvers of at most 6 A and 1 hp share a 20 A circuit (430.53). "
            + "Conduit: a circuit in one of its own with its ground, rigid PVC schedule 40, filled to 40 % (three wires and more; 31 % two; chapter 9, tables 1, 4, 5 for THWN-2); two circuits in one take the next size. Feeder breakers are held against 430.62: the largest motor branch's breaker and the rest of the leg, rounded down. "
            + "The current of a short circuit at the panel is not computed: the utility gives its transformer's, the electrician checks the breakers' rating against it. "
            + "Voltage drop: 3 % on a branch, 5 % from the pole; ↑ marks a conductor made heavier for it, with its ground (250.122(B)). Ampacities, resistances, grounds and ratings read at second hand in reprints that agree, 430.53 and 220.14 from memory.",
            Quiet: true);
    }

    internal static Table Feeders(EqList<PanelSchedule> panels, bool us) => new(
        [
            new Column("Panel", 18), new Column("Fed from", 22), new Column("Breaker A", 18, Along.End), new Column("Fullest leg A", 21, Along.End), new Column("Conductors, AWG or kcmil", 43),
            new Column("Run", 25, Along.End), new Column("Drop %", 25, Along.End),
        ],
        [
            .. panels.Select(p => (IReadOnlyList<string>)
            [
                p.Id, p.Feeder.From, Whole(p.MainA), Whole(p.Feeder.DemandA),
                $"{(p.Feeder.Sets > 1 ? Whole(p.Feeder.Sets) + " sets " : "")}{p.Feeder.WireName} {p.Feeder.Material}{Up(p.Feeder.UpsizedFrom)}{(p.Feeder.GroundName.Length > 0 ? ", ground " + p.Feeder.GroundName : "")}",
                Run(p.Feeder.RunM, us), Percent(p.Feeder.DropFraction),
            ]),
        ]);

    internal static Table Schedule(PanelSchedule panel, bool us)
    {
        int legs = panel.CoolingLegVa.Count;
        List<Column> columns = [new Column("No.", 14), new Column("What", legs == 3 ? 37 : 51), new Column("Legs", 12), new Column("Breaker A", 18, Along.End)];
        columns.AddRange(Enumerable.Range(0, legs).Select(leg => new Column($"VA on {"ABC"[leg]}", 14, Along.End)));
        columns.AddRange([new Column("Wire, ground, AWG", 24), new Column("Run", 13, Along.End), new Column("Drop %", 12, Along.End)]);
        return new Table(
            columns,
            [
                .. panel.Circuits.Select(c => (IReadOnlyList<string>)
                [
                    c.Number, c.Label + (c.Gfci ? ", GFCI" : "") + (c.Backup ? " (backup)" : "") + (c.Note.Length > 0 && !c.Gfci ? $"; {c.Note}" : ""), c.Legs, Whole(c.BreakerA),
                    .. c.LegVa.Select(va => va > 0 ? Whole(va) : ""),
                    $"{Whole(c.Wires)} × {c.WireName}{Up(c.UpsizedFrom)}, {c.GroundName}", Run(c.RunM, us), Percent(c.DropFraction),
                ]),
            ]);
    }

    private static Table Wire(EqList<PanelSchedule> panels, bool us)
    {
        (string Name, double AreaMm2, double LengthM)[] parts =
        [
            .. panels.SelectMany(p => p.Circuits).SelectMany(c => new[] { (c.WireName, c.WireMm2, Sets(c) * c.Wires * c.RunM), (c.GroundName, 0.0, Sets(c) * c.RunM) }),
        ];
        return new Table(
            [new Column("Copper, AWG or kcmil", 60), new Column("mm²", 40, Along.End), new Column(us ? "Conductors and grounds, ft" : "Conductors and grounds, m", 72, Along.End)],
            [
                .. parts.GroupBy(p => p.Name).Select(g => (Name: g.Key, AreaMm2: g.Max(p => p.AreaMm2), LengthM: g.Sum(p => p.LengthM))).OrderBy(g => Rank(g.Name)).Select(g => (IReadOnlyList<string>)
                [
                    g.Name, g.AreaMm2 > 0 ? g.AreaMm2.ToString("0.0", CultureInfo.InvariantCulture) : "ground only", Whole(us ? g.LengthM / 0.3048 : g.LengthM),
                ]),
            ]);
    }

    private static Table Conduit(EqList<PanelSchedule> panels, bool us) => new(
        [new Column(us ? "Rigid PVC conduit, trade size" : "Rigid PVC conduit, metric designator", 60), new Column("Circuits", 40, Along.End), new Column(us ? "Length, ft" : "Length, m", 72, Along.End)],
        [
            .. panels.SelectMany(p => p.Circuits).GroupBy(c => (c.ConduitDesignatorMm, c.ConduitInches)).OrderBy(g => g.Key.ConduitDesignatorMm).Select(g => (IReadOnlyList<string>)
            [
                g.Key.ConduitInches.Length == 0 ? "none of the table" : us ? g.Key.ConduitInches : Whole(g.Key.ConduitDesignatorMm), Whole(g.Sum(Sets)), Whole(g.Sum(c => Sets(c) * c.RunM) / (us ? 0.3048 : 1)),
            ]),
        ]);

    private static int Sets(Circuit c) => c.Kind == LoadKind.Feeder ? c.Count : 1;

    // 14 to 1, then 1/0 to 4/0, then thousands of circular mils.
    private static double Rank(string name) => name.EndsWith("/0", StringComparison.Ordinal)
        ? double.Parse(name[..^2], CultureInfo.InvariantCulture) + 0.5
        : double.Parse(name, CultureInfo.InvariantCulture) is var n && n < 50 ? -n : n;

    private static string Run(double runM, bool us) => us ? $"{Whole(runM / 0.3048)} ft" : $"{Whole(runM)} m";

    private static string Up(string from) => from.Length > 0 ? " ↑" : "";

    private static string Legs(EqList<double> va) => string.Join(" / ", va.Select(Whole));

    private static string Percent(double fraction) => (100 * fraction).ToString("0.0", CultureInfo.InvariantCulture);

    private static string Whole(double value) => value.ToString("#,0", CultureInfo.InvariantCulture);
}
