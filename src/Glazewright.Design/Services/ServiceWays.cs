using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.Layout;
using Glazewright.Design.Plant;

namespace Glazewright.Design.Services;

/// <summary>Leads fuel, water and drains to what they serve: over the yard along the end walls, then along a wall or the aisle of each house.</summary>
internal sealed class ServiceWays
{
    // Pump, tap and valve stand so high; a hung heater's own height is its rise.
    private const double TapM = 0.6;

    private readonly ServicesInput _input;
    private readonly FormResult _form;
    private readonly EqList<PlantResult> _plants;
    private readonly EqList<LayoutResult> _layouts;
    private readonly MainPanelSpot _panel;
    private readonly List<UtilityEntry> _entries = [];
    private readonly List<UtilityPoint> _points = [];
    private readonly List<PipePiece> _pieces = [];

    private ServiceWays(ServicesInput input, FormResult form, EqList<PlantResult> plants, EqList<LayoutResult> layouts, MainPanelSpot panel) =>
        (_input, _form, _plants, _layouts, _panel) = (input, form, plants, layouts, panel);

    /// <summary>The plan.</summary>
    /// <param name="input">What Services reads of the job.</param>
    /// <param name="form">Shapes.</param>
    /// <param name="plants">Plants.</param>
    /// <param name="layouts">Where equipment stands.</param>
    /// <param name="panel">Main panel.</param>
    /// <param name="lines">Services so far, pipes of lines already sized.</param>
    public static ServicePlan Of(
        ServicesInput input, FormResult form, EqList<PlantResult> plants, EqList<LayoutResult> layouts, MainPanelSpot panel, ServicesResult lines)
    {
        ServiceWays ways = new(input, form, plants, layouts, panel);
        if (lines.Electric.Count > 0)
        {
            ways._entries.Add(UtilityEntries.Of(UtilityKind.Power, input, form, panel).Entry);
        }

        ways.Lead(UtilityKind.Fuel, ways.Fuel(lines), lines.Gas.ToDictionary(g => g.Id, g => FluidServices.FlowM3PerS(lines.GasMain, g)), lines.GasMain);
        ways.Lead(UtilityKind.Water, ways.Water(lines), lines.Water.ToDictionary(w => w.Id, w => w.PeakM3PerS), null);
        ways.Lead(UtilityKind.Drain, ways.Drain(lines), lines.Drains.ToDictionary(d => d.Id, d => d.PeakM3PerS), null);
        return new ServicePlan(ways._entries.ToEqList(), ways._points.ToEqList(), ways._pieces.ToEqList());
    }

    private sealed record Tap(string House, string Id, string Line, string Label, Point2 At, double HeightM, double RiseM, bool IsDefault, bool OnMain, TapKind Kind = TapKind.Machine);

    private void Lead(UtilityKind utility, IReadOnlyList<Tap> taps, Dictionary<string, double> flowOf, GasNeed? gas)
    {
        if (taps.Count == 0)
        {
            return;
        }

        (UtilityEntry entry, Point3 inner) = UtilityEntries.Of(utility, _input, _form, _panel);
        _entries.Add(entry);
        Point2 from = new(entry.At.XM, entry.At.YM);
        PipeTree tree = new(from);
        tree.Join(new Point2(inner.XM, inner.YM), "", 0, alongFirst: true);
        Dictionary<Tap, int> nodes = [];
        foreach (BuildingForm house in taps.Select(t => t.House).Distinct().Select(_form.Building).OrderBy(b => Corner(b, utility, inner).FarM))
        {
            Tap[] own = [.. taps.Where(t => t.House == house.Id)];
            (Point2 corner, _) = Corner(house, utility, inner);
            int start = tree.Join(corner, "", 0, alongFirst: false);
            foreach (Tap tap in own.OrderBy(t => t.OnMain ? 0 : 1).ThenBy(t => Math.Abs(t.At.UM - corner.UM) + Math.Abs(t.At.VM - corner.VM)))
            {
                nodes[tap] = tree.Join(tap.At, house.Id, start, alongFirst: true, tap.Line.Length > 0 ? tap.Line : tap.Id, tap.RiseM);
            }
        }

        double longestM = nodes.Values.Max(tree.RunM);
        double Flow(IReadOnlyList<string> lines) => lines.Sum(l => flowOf.GetValueOrDefault(l));
        HashSet<string> floor = [.. taps.Where(t => utility == UtilityKind.Drain && t.OnMain).Select(t => t.Line.Length > 0 ? t.Line : t.Id)];
        string Pipe(IReadOnlyList<string> lines) => utility switch
        {
            UtilityKind.Fuel => FluidServices.PipeName(gas!.Fuel, Flow(lines), longestM),
            UtilityKind.Water => PipeSizes.Supply(Flow(lines)),
            _ => PipeSizes.Drain(Flow(lines), lines.Any(floor.Contains)),
        };
        _points.AddRange(taps.Select(t => new UtilityPoint(
            utility, t.Kind, t.House, t.Id, t.Line, t.Label, new Point3(t.At.UM, t.At.VM, t.HeightM), Pipe(tree.Lines(nodes[t])), tree.RunM(nodes[t]), t.IsDefault)));
        _pieces.AddRange(tree.Pieces().Select(p => new PipePiece(
            utility, p.Scope, p.Way.Select(w => new Point3(w.UM, w.VM, 0)).ToEqList(), p.LengthM, Flow(p.Lines), Pipe(p.Lines))));
    }

    // Where the pipe comes into a house: its end nearer the entry; at the wall nearer it, or on the line of the drains.
    private (Point2 At, double FarM) Corner(BuildingForm b, UtilityKind utility, Point3 from)
    {
        double y = utility == UtilityKind.Drain ? AisleM(b) : TapPlaces.WallM(b, LeftIsNear(b, from));
        Point3 near = new[] { 0, b.LengthM }.Select(x => LoadPlaces.Range(b, new Point3(x, y, 0))).MinBy(p => LoadPlaces.Flat(p, from));
        return (new Point2(near.XM, near.YM), LoadPlaces.Flat(near, from));
    }

    private static bool LeftIsNear(BuildingForm b, Point3 from)
    {
        double M(double y) => Math.Abs(LoadPlaces.Range(b, new Point3(0, y, 0)).YM - from.YM) + Math.Abs(LoadPlaces.Range(b, new Point3(0, y, 0)).XM - from.XM);
        return M(0) <= M(b.WidthM);
    }

    // The widest aisle along the house, else its middle.
    private double AisleM(BuildingForm b)
    {
        PlacedItem? aisle = (_layouts.FirstOrDefault(l => l.House == b.Id)?.Placed ?? []).Where(p => p.Kind == PlacedKind.Aisle && p.Size.XM > p.Size.YM).MaxBy(p => p.Size.YM);
        return aisle is null ? b.WidthM / 2 : Math.Clamp(aisle.Corner.YM + aisle.Size.YM / 2, 0, b.WidthM);
    }

    private Point3 Inner(UtilityKind utility) => UtilityEntries.Of(utility, _input, _form, _panel).Inner;

    private static Point2 Range(BuildingForm b, double x, double y)
    {
        Point3 p = LoadPlaces.Range(b, new Point3(x, y, 0));
        return new Point2(p.XM, p.YM);
    }

    private PlacedItem? Placed(string house, Func<PlacedItem, bool> which) => _layouts.FirstOrDefault(l => l.House == house)?.Placed.FirstOrDefault(which);

    private List<Tap> Fuel(ServicesResult lines)
    {
        List<Tap> taps = [];
        foreach (GasLine g in lines.Gas)
        {
            BuildingForm b = _form.Building(g.House);
            string name = g.Id[(g.House.Length + 1)..];
            if (Placed(g.House, p => p.Id == g.Id) is { } at)
            {
                double z = Math.Max(at.Corner.ZM, 0);
                taps.Add(new Tap(g.House, g.Id, g.Id, $"Burner {name}", Range(b, at.Corner.XM + at.Size.XM / 2, at.Corner.YM + at.Size.YM / 2), z, z, false, false));
            }
            else
            {
                (Point2 corner, _) = Corner(b, UtilityKind.Fuel, Inner(UtilityKind.Fuel));
                taps.Add(new Tap(g.House, g.Id, g.Id, $"Burner {name}", corner, 0, 0, true, false));
            }
        }

        return taps;
    }

    private List<Tap> Water(ServicesResult lines)
    {
        List<Tap> taps = [];
        foreach (WaterLine w in lines.Water)
        {
            BuildingForm b = _form.Building(w.House);
            Point3 from = Inner(UtilityKind.Water);
            bool left = LeftIsNear(b, from);
            (Point2 corner, _) = Corner(b, UtilityKind.Water, from);
            bool first = Math.Abs(LoadPlaces.Range(b, new Point3(0, 0, 0)).XM - corner.UM) < 1e-6;
            switch (w.Id[(w.House.Length + 1)..])
            {
                case "hose":
                    taps.AddRange(TapPlaces.Bibs(b, left).Select((p, i) => new Tap(
                        w.House, FormattableString.Invariant($"{w.Id}-{i + 1}"), w.Id, "Hose bib", Range(b, p.UM, p.VM), TapM, TapM, true, Math.Abs(p.VM - TapPlaces.WallM(b, left)) < 1e-6, TapKind.HoseBib)));
                    break;
                case "irrigation":
                    taps.Add(new Tap(w.House, w.Id, w.Id, "Irrigation valves", Range(b, first ? 1 : b.LengthM - 1, TapPlaces.WallM(b, left)), TapM, TapM, true, true));
                    break;
                case "wet-wall":
                    PlacedItem? pad = Placed(w.House, p => p.Kind == PlacedKind.WetWall);
                    taps.Add(Machine(w, "Wet wall make-up", pad, b, corner));
                    break;
                default:
                    PlacedItem? fog = Placed(w.House, p => p.Kind == PlacedKind.FogLine);
                    taps.Add(Machine(w, "Fog pump", fog, b, corner));
                    break;
            }
        }

        return taps;
    }

    private static Tap Machine(WaterLine w, string label, PlacedItem? item, BuildingForm b, Point2 corner) => item is null
        ? new Tap(w.House, w.Id, w.Id, label, corner, TapM, TapM, true, false)
        : new Tap(w.House, w.Id, w.Id, label, Range(b, Inside(item.Corner.XM, b.LengthM), Inside(item.Corner.YM, b.WidthM)), TapM, TapM, false, false);

    private static double Inside(double at, double most) => Math.Clamp(at, 0, most);

    private List<Tap> Drain(ServicesResult lines)
    {
        List<Tap> taps = [];
        foreach (ServedHouse house in _input.Houses.Where(h => _plants.Any(p => p.House == h.Id)))
        {
            BuildingForm b = _form.Building(house.Id);
            string leach = lines.Drains.Any(d => d.Id == $"{house.Id}/leachate") ? $"{house.Id}/leachate" : "";
            taps.AddRange(TapPlaces.Drains(b, AisleM(b)).Select((p, i) => new Tap(
                house.Id, FormattableString.Invariant($"{house.Id}/floor-drain-{i + 1}"), leach, "Floor drain", Range(b, p.UM, p.VM), 0, 0, true, true, TapKind.FloorDrain)));
            PlacedItem? pad = Placed(house.Id, p => p.Kind == PlacedKind.WetWall);
            foreach (DrainLine d in lines.Drains.Where(d => d.House == house.Id && d.Id != leach))
            {
                string name = d.Id[(house.Id.Length + 1)..];
                if (name == "condensate")
                {
                    foreach (PlacedItem heater in _layouts.FirstOrDefault(l => l.House == house.Id)?.Placed.Where(p => p.Kind == PlacedKind.Heater) ?? [])
                    {
                        taps.Add(new Tap(house.Id, $"{heater.Id}/condensate", d.Id, "Condensate", Range(b, Inside(heater.Corner.XM, b.LengthM), Inside(heater.Corner.YM, b.WidthM)), 0, 0, false, false));
                    }
                }
                else if (pad is not null)
                {
                    // Bleed and dump run off under the far end of the pad, away from the pump.
                    taps.Add(new Tap(house.Id, d.Id, d.Id, d.Label, Range(b, Inside(pad.Corner.XM + pad.Size.XM, b.LengthM), Inside(pad.Corner.YM + pad.Size.YM, b.WidthM)), 0, 0, false, false));
                }
            }
        }

        return taps;
    }
}
