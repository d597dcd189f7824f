using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;

namespace Glazewright.Design.Services;

/// <summary>Panels, circuits, conductors: one panel a house beside the main one, or the main one alone for a single house.</summary>
internal sealed class PanelBuilder
{
    /// <summary>Most drop on a branch, and from the pole to the last load (NEC 210.19 and 215.2, informational notes).</summary>
    public const double BranchFraction = 0.03;

    /// <summary>Most drop in all.</summary>
    public const double WholeFraction = 0.05;

    // What a branch is given at least where pole and feeder have used up the rest.
    private const double LeastBranchFraction = 0.01;

    private const string Letters = "ABC";

    private readonly ServicesInput _input;
    private readonly FormResult _form;
    private readonly LoadPlaces _places;
    private readonly PanelSystem _system;
    private readonly FeederRun _service;
    private readonly (Point3 Spot, string Words, bool IsDefault) _main;

    private PanelBuilder(ServicesInput input, FormResult form, LoadPlaces places, PowerNeed power, MainPanelSpot main)
    {
        _input = input;
        _form = form;
        _places = places;
        _system = PanelSystem.Of(input.Utilities.Phase, input.Utilities.ServiceV, input.Metric);
        _service = ServiceRun.Of(input.Utilities, power.DemandA);
        _main = (main.At, main.Words, main.IsDefault);
    }

    public static EqList<PanelSchedule> Build(ServicesInput input, FormResult form, LoadPlaces places, EqList<LoadLine> lines, PowerNeed power, MainPanelSpot main)
    {
        PanelBuilder builder = new(input, form, places, power, main);
        if (input.Houses.Count < 2)
        {
            return [builder.Panel("main", lines, [], builder._main, null)];
        }

        List<PanelSchedule> houses = [.. input.Houses.Select(h => builder.Panel(h.Id, [.. lines.Where(l => l.House == h.Id)], [], builder.HousePlace(h), builder._main.Spot))];
        string[] served = [.. input.Houses.Select(h => h.Id)];
        return [builder.Panel("main", [.. lines.Where(l => !served.Contains(l.House))], houses, builder._main, null), .. houses];
    }

    private PanelSchedule Panel(string id, IReadOnlyList<LoadLine> lines, IReadOnlyList<PanelSchedule> fed, (Point3 Spot, string Words, bool IsDefault) place, Point3? from)
    {
        CircuitDraft[] drafts = [.. lines.SelectMany(l => CircuitPlan.Of(l, _places, place.Spot))];
        LegLoad[] loads = [.. drafts.Select(Load)];
        (double, double)[] already = [.. Enumerable.Range(0, _system.Legs).Select(leg => (fed.Sum(f => f.CoolingLegVa[leg]), fed.Sum(f => f.HeatingLegVa[leg])))];
        int[] starts = LegBalance.Assign(loads, _system, already);
        double[] cooling = Sums(loads, starts, l => l.CoolingVa, [.. already.Select(a => a.Item1)]);
        double[] heating = Sums(loads, starts, l => l.HeatingVa, [.. already.Select(a => a.Item2)]);
        double[] worst = cooling.Max() >= heating.Max() ? cooling : heating;
        FeederRun feeder = from is { } spot
            ? Feeder(lines, cooling, heating, drafts, LoadPlaces.Flat(spot, place.Spot) + LoadPlaces.EndsM)
            : _service with { DemandA = _service.DemandA * (1 + LegBalance.Imbalance(worst)) };
        double upstream = _service.DropFraction + (from is null ? 0 : feeder.DropFraction);
        double limit = Math.Clamp(WholeFraction - upstream, LeastBranchFraction, BranchFraction);
        PanelSpaces spaces = new(_system.Legs);
        List<(int First, Circuit Circuit)> circuits = [];
        foreach (PanelSchedule panel in fed)
        {
            (string number, int first) = spaces.Take(_system.Legs, 0);
            circuits.Add((first, FeederCircuit(panel, number)));
        }

        foreach (int i in Enumerable.Range(0, drafts.Length).OrderByDescending(i => loads[i].Poles).ThenBy(i => i))
        {
            (string number, int first) = spaces.Take(loads[i].Poles, starts[i]);
            circuits.Add((first, Branch(drafts[i], id, number, starts[i], loads[i].Poles, limit)));
        }

        return new PanelSchedule(
            id, place.Words, place.IsDefault, _system.Words, feeder.BreakerA, spaces.ToBuy(), spaces.Used, circuits.OrderBy(c => c.First).Select(c => c.Circuit).ToEqList(),
            cooling.ToEqList(), heating.ToEqList(), LegBalance.Imbalance(worst), feeder, _system.NeutralV)
        {
            At = place.Spot,
        };
    }

    private LegLoad Load(CircuitDraft draft)
    {
        int poles = _system.Poles(draft.Line.ThreePhase, draft.Line.VoltageV);
        double legVa = draft.Line.DemandFraction * draft.Va / poles;
        return new LegLoad(poles, draft.Line.CountsIn(LoadSeason.Cooling) ? legVa : 0, draft.Line.CountsIn(LoadSeason.Heating) ? legVa : 0);
    }

    private double[] Sums(LegLoad[] loads, int[] starts, Func<LegLoad, double> of, double[] sums)
    {
        for (int i = 0; i < loads.Length; i++)
        {
            for (int p = 0; p < loads[i].Poles; p++)
            {
                sums[(starts[i] + p) % _system.Legs] += of(loads[i]);
            }
        }

        return sums;
    }

    private FeederRun Feeder(IReadOnlyList<LoadLine> lines, double[] cooling, double[] heating, CircuitDraft[] drafts, double runM)
    {
        double Fullest(double[] legVa, LoadSeason season)
        {
            (double baseVa, double quarterVa) = PowerServices.Demand(lines, season);
            return (baseVa * (1 + LegBalance.Imbalance(legVa)) + quarterVa) / (_system.LineV * _system.RootRatio);
        }

        double demandA = Math.Max(Fullest(cooling, LoadSeason.Cooling), Fullest(heating, LoadSeason.Heating));
        double breakerA = ConductorTable.NextBreakerA(Math.Max(demandA, drafts.Select(d => d.BreakerA).DefaultIfEmpty(CircuitPlan.GeneralA).Max()));
        double limit = Math.Max(ServiceRun.LimitFraction - _service.DropFraction, 0.005);
        ConductorChoice choice = default;
        int sets = 0;
        do
        {
            sets++;
            choice = BranchSizing.Choose(new ConductorTask(demandA, breakerA, false, true, demandA, _system.LineV, _system.Legs == 3, runM, limit, sets));
        }
        while (!choice.Carries && sets < 6);

        return new FeederRun(
            "main", "copper", sets, choice.Used.Name, choice.Used.AreaMm2, choice.Ground.Name, breakerA, choice.AmpacityA, demandA, runM, choice.DropFraction,
            choice.Used == choice.Asked ? "" : choice.Asked.Name);
    }

    private Circuit Branch(CircuitDraft draft, string panel, string number, int start, int poles, double limit)
    {
        LoadLine line = draft.Line;
        double nominalV = _system.CircuitV(line.VoltageV);
        ConductorChoice choice = BranchSizing.Choose(new ConductorTask(
            draft.LeastA, draft.BreakerA, draft.MotorRule, draft.RoundUp, draft.CurrentA, nominalV, line.ThreePhase, draft.DropRunM, limit));
        double[] legVa = new double[_system.Legs];
        for (int p = 0; p < poles; p++)
        {
            legVa[(start + p) % _system.Legs] += draft.Va / poles;
        }

        bool suits = _system.Suits(line.ThreePhase, line.VoltageV);
        string note = !suits ? "the panel does not give its voltage or phases" : !choice.Carries ? "no single conductor of the table carries it: split it" : draft.Note;
        return new Circuit(
            number, panel == line.House ? draft.Label : $"{_form.Building(line.House).Name}: {draft.Label}", [line.Id], line.Kind, draft.Count, Legs(start, poles), legVa.ToEqList(), nominalV, line.ThreePhase,
            draft.CurrentA, draft.LeastA, draft.BreakerA, draft.Rule, choice.Used.Name, choice.Used.AreaMm2, poles == 1 ? 2 : poles, choice.Ground.Name, choice.AmpacityA,
            draft.RunM, draft.DropRunM, choice.DropFraction, limit, choice.Used == choice.Asked ? "" : choice.Asked.Name, draft.Gfci, line.Backup, line.Season, line.DemandFraction, note)
        {
            Way = draft.Way,
        };
    }

    private Circuit FeederCircuit(PanelSchedule panel, string number)
    {
        FeederRun f = panel.Feeder;
        double[] legVa = [.. Enumerable.Range(0, _system.Legs).Select(leg => panel.Circuits.Sum(c => c.LegVa[leg]))];
        return new Circuit(
            number, $"Panel {panel.Id}", [panel.Id], LoadKind.Feeder, f.Sets, Legs(0, _system.Legs), legVa.ToEqList(), _system.LineV, _system.Legs == 3, f.DemandA, f.DemandA, f.BreakerA,
            "430.24, 215.2", f.WireName, f.WireMm2, _system.Legs + 1, f.GroundName, f.AmpacityA, f.RunM, f.RunM, f.DropFraction, Math.Max(ServiceRun.LimitFraction - _service.DropFraction, 0.005),
            f.UpsizedFrom, false, panel.Circuits.Any(c => c.Backup), LoadSeason.Always, 1, f.Sets > 1 ? "sets in parallel: see the panel's feeder" : "");
    }

    private string Legs(int start, int poles) => string.Concat(Enumerable.Range(0, poles).Select(p => Letters[(start + p) % _system.Legs]));

    /// <summary>The control room, else the head house, else any link building, else the first house's corner.</summary>
    public static MainPanelSpot MainPlace(ServicesInput input, FormResult form)
    {
        ServedLink? link = input.Links.FirstOrDefault(l => l.HasControlRoom) ?? input.Links.FirstOrDefault(l => l.Kind == LinkKind.HeadHouse) ?? input.Links.FirstOrDefault();
        if (link is null)
        {
            BuildingForm first = form.Building(input.Houses[0].Id);
            return new MainPanelSpot(Corner(first), first.Id, 0, 0, $"corner of {first.Name}, end 1, weatherproof; the job has no head house or control room", true);
        }

        BuildingForm b = form.Building(link.Id);
        double meanX = input.Houses.Average(h => Middle(form.Building(h.Id)).XM);
        double meanY = input.Houses.Average(h => Middle(form.Building(h.Id)).YM);
        Point3 houses = new(meanX, meanY, 0);
        Point3 At((double Along, double Across) w) => LoadPlaces.Range(b, new Point3(w.Along * b.LengthM, w.Across * b.WidthM, LoadPlaces.PanelM));
        (double Along, double Across) wall = new[] { (0.5, 0.0), (0.5, 1.0), (0.0, 0.5), (1.0, 0.5) }.MinBy(w => LoadPlaces.Flat(At(w), houses));
        string room = link.HasControlRoom ? "control room" : "";
        string words = room.Length > 0 && link.Kind != LinkKind.ControlRoom ? $"{room} of {b.Name}" : b.Name;
        return new MainPanelSpot(
            At(wall), b.Id, wall.Along, wall.Across, $"{words}, the wall nearest the houses (a default of ours)", !link.HasControlRoom && link.Kind != LinkKind.HeadHouse);
    }

    private (Point3 Spot, string Words, bool IsDefault) HousePlace(ServedHouse house)
    {
        if (_input.Links.Count > 0)
        {
            return (_main.Spot, "beside the main panel, in the dry", false);
        }

        BuildingForm b = _form.Building(house.Id);
        return (Corner(b), $"corner of {b.Name}, end 1, weatherproof", true);
    }

    private static Point3 Corner(BuildingForm b) => LoadPlaces.Range(b, new Point3(0, 0, LoadPlaces.PanelM));

    private static Point3 Middle(BuildingForm b) => LoadPlaces.Range(b, new Point3(b.LengthM / 2, b.WidthM / 2, 0));
}
