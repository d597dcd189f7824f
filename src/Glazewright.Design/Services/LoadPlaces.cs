using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.Layout;
using Glazewright.Design.Plant;

namespace Glazewright.Design.Services;

/// <summary>Where loads stand, range axes, and how long a run to them is.</summary>
internal sealed class LoadPlaces(FormResult form, EqList<PlantResult> plants, EqList<LayoutResult> layouts)
{
    /// <summary>Height a panel hangs at, m.</summary>
    public const double PanelM = 1.4;

    /// <summary>Wire for ends and connections of a run, m.</summary>
    public const double EndsM = 3;

    private const int LampPieces = 4;

    /// <summary>One place for each of a line's machines, and whether the layout has them all.</summary>
    public (List<Point3> Spots, bool Known) Of(LoadLine line)
    {
        BuildingForm building = form.Building(line.House);
        if (plants.FirstOrDefault(p => p.House == line.House) is not { } plant || line.Kind is LoadKind.Lights or LoadKind.Receptacles or LoadKind.Appliance)
        {
            return ([.. Spread(building, line)], true);
        }

        EqList<PlacedItem> placed = layouts.FirstOrDefault(l => l.House == line.House)?.Placed ?? [];
        string name = line.Id[(line.House.Length + 1)..];
        IEnumerable<PlacedItem> items = name switch
        {
            "upper-fans" => placed.Where(p => p.Kind == PlacedKind.UpperFan),
            "upper-louvers" => placed.Where(p => p.Kind == PlacedKind.UpperLouver),
            "louver" => placed.Where(p => p.Kind == PlacedKind.Louver),
            "wet-wall-pump" => placed.Where(p => p.Kind == PlacedKind.WetWall),
            "fog-pump" => placed.Where(p => p.Kind == PlacedKind.FogLine),
            "curtain-drive" => placed.Where(p => p.Kind == PlacedKind.Curtain && !p.Id.EndsWith("/second-curtain", StringComparison.Ordinal)),
            "second-curtain-drive" => placed.Where(p => p.Id.EndsWith("/second-curtain", StringComparison.Ordinal)),
            "circulation" => placed.Where(p => p.Kind == PlacedKind.CirculationFan),
            "oscillating" => placed.Where(p => p.Kind == PlacedKind.OscillatingFan),
            _ when FansOf(plant, name) is { Count: > 0 } fans => fans.SelectMany(f => placed.Where(p => p.Id == f)),
            _ => placed.Where(p => p.Id == line.Id),
        };
        bool atEdge = name is "wet-wall-pump" or "fog-pump" or "curtain-drive" or "second-curtain-drive";
        List<Point3> spots = [.. items.Select(p => Range(building, atEdge ? Edge(p) : Centre(p))).Take(line.Count)];
        bool known = spots.Count == line.Count;
        while (spots.Count < line.Count)
        {
            spots.Add(spots.Count > 0 ? spots[^1] : Range(building, new Point3(building.LengthM / 2, building.WidthM / 2, EaveM(building) / 2)));
        }

        return (spots, known);
    }

    /// <summary>Places along the lamp row a circuit is given, a quarter of its load at each.</summary>
    public List<Point3> LampRow(string house, int circuit)
    {
        BuildingForm building = form.Building(house);
        PlacedItem[] rows = [.. (layouts.FirstOrDefault(l => l.House == house)?.Placed ?? []).Where(p => p.Kind == PlacedKind.LampRow)];
        (Point3 corner, Point3 size) = rows.Length > 0
            ? (rows[circuit % rows.Length].Corner, rows[circuit % rows.Length].Size)
            : (new Point3(0, building.WidthM / 2, EaveM(building)), new Point3(building.LengthM, 0, 0));
        return [.. Enumerable.Range(0, LampPieces).Select(k => Range(building, new Point3(corner.XM + (k + 0.5) / LampPieces * size.XM, corner.YM, corner.ZM)))];
    }

    /// <summary>The corners of a circuit's way over the ground: along the walls from the panel, the nearest place next.</summary>
    /// <param name="panel">Panel, range axes.</param>
    /// <param name="spots">Places.</param>
    public static EqList<Point3> Way(Point3 panel, IReadOnlyList<Point3> spots)
    {
        List<Point3> left = [.. spots];
        List<Point3> way = [panel];
        while (left.Count > 0)
        {
            Point3 next = left.MinBy(p => Flat(way[^1], p))!;
            left.Remove(next);
            if (Math.Abs(next.XM - way[^1].XM) > 1e-6 && Math.Abs(next.YM - way[^1].YM) > 1e-6)
            {
                // Across along the end wall first, then along the house.
                way.Add(new Point3(way[^1].XM, next.YM, next.ZM));
            }

            way.Add(next);
        }

        return way.ToEqList();
    }

    /// <summary>Wire through all places, the nearest next, and the length at which all current would drop as much at the last.</summary>
    /// <param name="panel">Panel, range axes.</param>
    /// <param name="building">Building the loads stand in.</param>
    /// <param name="spots">Places, each with the same current.</param>
    public (double RunM, double DropRunM) Chain(Point3 panel, string building, IReadOnlyList<Point3> spots)
    {
        double gutterM = EaveM(form.Building(building));
        List<Point3> left = [.. spots];
        Point3 at = panel;
        double along = 0;
        double moment = 0;
        while (left.Count > 0)
        {
            Point3 next = left.MinBy(p => Flat(at, p))!;
            along += along == 0
                ? Flat(panel, next) + Math.Abs(gutterM - PanelM) + Math.Abs(gutterM - next.ZM) + EndsM
                : Flat(at, next) + Math.Abs(at.ZM - next.ZM);
            moment += along;
            left.Remove(next);
            at = next;
        }

        return (along, spots.Count == 0 ? 0 : moment / spots.Count);
    }

    /// <summary>Along the walls: both level distances, m.</summary>
    public static double Flat(Point3 a, Point3 b) => Math.Abs(a.XM - b.XM) + Math.Abs(a.YM - b.YM);

    /// <summary>A point of a building's own axes in range axes.</summary>
    public static Point3 Range(BuildingForm b, Point3 p) => new(
        b.Origin.XM + b.AlongX.XM * p.XM + b.AlongY.XM * p.YM,
        b.Origin.YM + b.AlongX.YM * p.XM + b.AlongY.YM * p.YM,
        b.Origin.ZM + p.ZM);

    private static double EaveM(BuildingForm b) => Math.Min(b.Roof.LeftEaveM, b.Roof.RightEaveM);

    private static Point3 Centre(PlacedItem p) => new(p.Corner.XM + p.Size.XM / 2, p.Corner.YM + p.Size.YM / 2, p.Corner.ZM + p.Size.ZM / 2);

    // Pump or drive at the near end of a long thing; a pump stands low.
    private static Point3 Edge(PlacedItem p) => new(p.Corner.XM, p.Corner.YM, p.Kind == PlacedKind.Curtain ? p.Corner.ZM : 0.5);

    private static List<string> FansOf(PlantResult plant, string name)
    {
        EqList<FanUnit> fans = plant.Exhaust?.Choice.Fans ?? [];
        // The load list keeps the first fan of the first kind on the generator.
        string kept = fans.Count > 0 ? fans[0].Entry : "";
        if (name == kept + "-backup")
        {
            return [fans[0].Id];
        }

        return [.. fans.Where(f => f.Entry == name).Skip(name == kept ? 1 : 0).Select(f => f.Id)];
    }

    // Evenly along the building: receptacles on both long walls, lights along the middle, fixed equipment in the middle.
    private static IEnumerable<Point3> Spread(BuildingForm b, LoadLine line)
    {
        bool alongX = b.LengthM >= b.WidthM;
        (double longM, double wideM) = alongX ? (b.LengthM, b.WidthM) : (b.WidthM, b.LengthM);
        bool walls = line.Kind == LoadKind.Receptacles && line.Count > 1;
        double z = line.Kind == LoadKind.Lights ? EaveM(b) : 1;
        int first = walls ? (line.Count + 1) / 2 : line.Count;
        for (int i = 0; i < line.Count; i++)
        {
            bool back = i >= first;
            int row = back ? line.Count - first : first;
            double u = longM * ((back ? i - first : i) + 0.5) / row;
            double v = walls ? back ? wideM : 0 : wideM / 2;
            yield return Range(b, alongX ? new Point3(u, v, z) : new Point3(v, u, z));
        }
    }
}
