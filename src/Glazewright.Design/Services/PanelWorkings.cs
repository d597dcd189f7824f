using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using static Glazewright.Design.Plant.PlantWords;

namespace Glazewright.Design.Services;

/// <summary>Figures and findings of panels and circuits.</summary>
internal static class PanelWorkings
{
    private const double NearImbalanceFraction = 0.1;

    // Below this difference between a leg and the mean nobody moves a breaker.
    private const double NearImbalanceA = 10;

    private static readonly Source Tables = new Source.Standard("NEC", "table 310.16, chapter 9 table 8, table 250.122, 240.6", Source.Mark.ReadSecondHand);
    private static readonly Source Rules = new Source.Standard("NEC", "430.22, 430.24, 430.52, 210.19, 215.2", Source.Mark.ReadSecondHand);
    private static readonly Source Layout = new Source.FirstPrinciples("where the layout puts panel and load");
    private static readonly Source Practice = new Source.CommonPractice("the trade's first layout of circuits, for a licensed electrician to confirm");

    public static void Add(ServicesInput input, ServicesResult r, List<Figure> figures, List<Finding> findings)
    {
        if (r.Panels.Count == 0)
        {
            return;
        }

        foreach (PanelSchedule panel in r.Panels)
        {
            Panel(panel, figures, findings);
            Motors(panel, figures, findings);
        }

        Drops(input, r, figures, findings);
        Fit(input, r, findings);
        findings.Add(new Finding(
            "services/circuits", Severity.Note, "",
            "Circuits are laid out by US practice (NEC 2023) to price from: copper of 90 °C insulation, 45 °C under the roof, up to six current-carrying conductors in a raceway, terminals of 60 °C up to 100 A. Electricity in wet houses kills: the schedule is no permission to wire.",
            "A licensed electrician designs, checks and connects under the locally adopted code; nameplates of what is bought rule.", Practice));
    }

    private static readonly Source MotorFeeder = new Source.Standard("NEC", "430.62(A), 430.63", Source.Mark.ReadSecondHand);

    private static void Panel(PanelSchedule panel, List<Figure> figures, List<Finding> findings)
    {
        EqList<double> worst = panel.CoolingLegVa.Max() >= panel.HeatingLegVa.Max() ? panel.CoolingLegVa : panel.HeatingLegVa;
        double mean = worst.Sum() / worst.Count;
        if (mean > 0)
        {
            Term[] legs = [.. worst.Select((va, i) => Term.Of($"leg{i + 1}", $"Demand on leg {"ABC"[i]}, VA", va, Unit.None, Layout))];
            figures.Add(Figure.Derive(
                $"services/panel-{panel.Id}/imbalance", $"Panel {panel.Id}: fullest leg over the mean", Unit.Fraction,
                legs.Aggregate(Term.Max) / (Term.Total(legs) / Term.Of("n", "Legs", worst.Count, Unit.Count, Layout)) - 1, Practice));
        }

        bool lopsided = panel.ImbalanceFraction > NearImbalanceFraction && (worst.Max() - mean) / panel.LegV > NearImbalanceA;
        findings.Add(new Finding(
            "services/panel", lopsided ? Severity.Near : Severity.Note, "",
            Text($"Panel {panel.Id}, {panel.Place}: {panel.System}, {panel.MainA:0} A, {panel.Circuits.Count} circuits in {panel.SpacesUsed} of {panel.Spaces} spaces; fullest leg {panel.Feeder.DemandA:0} A, {100 * panel.ImbalanceFraction:0} % over the mean."),
            lopsided ? "A few large one-pole loads decide: 230 V versions of them would even the legs." : "", Practice));
    }

    private static void Motors(PanelSchedule panel, List<Figure> figures, List<Finding> findings)
    {
        double mostA = panel.MotorFeederMostA;
        if (mostA <= 0)
        {
            return;
        }

        double downA = FeederBreaker.RoundedDownA(mostA);
        figures.Add(Figure.Observe(
            $"services/panel-{panel.Id}/motor-feeder", $"Panel {panel.Id}: most its breaker may be for its motors", Unit.Ampere, downA,
            $"Largest motor branch's breaker of panel {panel.Id} and the currents of all else on the leg, down to a standard rating",
            [new WorkingInput("most", "Before rounding down", "", mostA, Unit.Ampere, Rules)], "The larger season; a leg at a time", MotorFeeder));
        // The main breaker is the lot's; 430.62 rules the feeders.
        if (panel.Id != "main" && panel.MainA > downA + 1e-9)
        {
            findings.Add(new Finding(
                "services/motor-feeder", Severity.Near, "",
                Text($"Panel {panel.Id}: a breaker of {panel.MainA:0} A stands above the {downA:0} A that its motors allow (largest motor branch and the rest of the leg, rounded down)."),
                "The next smaller rating that carries the demand, or a breaker with an adjustable trip: the electrician decides.", MotorFeeder));
        }
    }

    private static void Drops(ServicesInput input, ServicesResult r, List<Figure> figures, List<Finding> findings)
    {
        Circuit[] branches = [.. r.Panels.SelectMany(p => p.Circuits).Where(c => c.Kind != LoadKind.Feeder)];
        if (branches.Length == 0)
        {
            return;
        }

        Circuit worst = branches.MaxBy(c => c.DropFraction)!;
        PanelSchedule home = r.Panels.First(p => p.Circuits.Contains(worst));
        ConductorSize wire = ConductorTable.Copper.First(c => c.Name == worst.WireName);
        double legs = worst.ThreePhase ? Math.Sqrt(3) : 2;
        figures.Add(Figure.Derive(
            "services/worst-drop", $"Largest voltage drop of a branch: {home.Id} {worst.Number}, {worst.Label}", Unit.Fraction,
            Term.Of("ways", "There and back, √3 on three phases", legs, Unit.None, Layout)
                * Term.Of("ohm", $"Copper {worst.WireName} AWG at 75 °C, Ω/m", wire.OhmPerM, Unit.None, Tables)
                * Term.Of("amp", "Current of all it feeds", worst.CurrentA, Unit.Ampere, Tables)
                * Term.Of("run", "Run to the middle of what it feeds", worst.DropRunM, Unit.Metre, Layout)
                / Term.Of("volts", "Nominal voltage", worst.NominalV, Unit.None, Layout),
            Rules));
        Circuit[] over = [.. branches.Where(c => c.DropFraction > c.LimitFraction + 1e-9)];
        Circuit[] upsized = [.. branches.Where(c => c.UpsizedFrom.Length > 0)];
        double farM = branches.Max(c => c.RunM);
        findings.Add(new Finding(
            "services/voltage-drop", over.Length > 0 ? Severity.Miss : Severity.Note, worst.Loads[0],
            Text($"Largest drop of a branch {100 * worst.DropFraction:0.0} % ({worst.Label}), allowed {100 * worst.LimitFraction:0.0} %; the longest run {(input.Metric ? Text($"{farM:0} m") : Text($"{farM / 0.3048:0} ft"))}. {upsized.Length} of {branches.Length} circuits have heavier conductors than their load asks, for the drop alone{(over.Length > 0 ? Text($"; {over.Length} miss the limit with the heaviest of the table") : "")}."),
            over.Length > 0 ? "A panel near the load, or a higher voltage." : upsized.Length > branches.Length / 2 ? "A panel in each house's end would shorten the runs: compare a feeder with so much copper." : "", Rules));
        FeederRun service = r.Panels[0].Feeder;
        if (service.DropFraction > ServiceRun.LimitFraction)
        {
            findings.Add(new Finding(
                "services/service-drop", Severity.Near, "",
                Text($"The run from the pole drops {100 * service.DropFraction:0.0} % with {service.Sets} set{(service.Sets == 1 ? "" : "s")} of {service.WireName} aluminium; the branches are left {100 * worst.LimitFraction:0.0} %."),
                "A transformer nearer the houses, or parallel cables.", Rules));
        }
    }

    private static void Fit(ServicesInput input, ServicesResult r, List<Finding> findings)
    {
        PanelSystem system = PanelSystem.Of(input.Utilities.Phase, input.Utilities.ServiceV, input.Metric);
        LoadLine[] unsuited = [.. r.Electric.Where(l => !system.Suits(l.ThreePhase, l.VoltageV))];
        if (unsuited.Length > 0 || system.StepDown)
        {
            findings.Add(new Finding(
                "services/voltage", Severity.Near, unsuited.Length > 0 ? unsuited[0].Id : "",
                Text($"The lot gives {input.Utilities.ServiceV:0} V, {(input.Utilities.Phase == Phase.Three ? "three-phase" : "single-phase")}: {(system.StepDown ? "no 120 V without a transformer" : Text($"{unsuited.Length} line{(unsuited.Length == 1 ? "" : "s")} of the load list want another voltage or phase ({unsuited[0].Label} first)"))}."),
                system.StepDown ? "A step-down transformer and panel behind it, or equipment for the lot's voltage; the schedule is that of such a panel." : "Equipment for the lot's voltage, or a transformer.", Practice));
        }

        if (input.Metric || system.NeutralV > 200)
        {
            findings.Add(new Finding(
                "services/us-practice", Severity.Near, "",
                "Conductors and breakers are by US practice, with areas in mm² beside: outside North America cable sections, breakers and residual-current devices follow IEC 60364 and the national rules, which are not computed here.",
                "Take loads, circuits, legs and run lengths from here; let the local designer choose sections and devices.", Practice));
        }

        foreach (PanelSchedule panel in r.Panels.Where(p => p.PlaceIsDefault).Take(1))
        {
            findings.Add(new Finding(
                "services/panel-place", Severity.Near, "",
                $"The job says no dry room for the panels: they are drawn at the {panel.Place}. Run lengths change with the place.",
                "A control room or head house: panels last longer and are safer dry.", Practice));
        }
    }
}
