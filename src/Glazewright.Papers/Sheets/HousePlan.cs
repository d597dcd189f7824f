using System.Globalization;
using Glazewright.Design.Brief;
using Glazewright.Design.Form;
using Glazewright.Design.Layout;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Fonts;
using Glazewright.Papers.Sets;

namespace Glazewright.Papers.Sheets;

/// <summary>The floor plan of a house: frames, doors, benches and aisles, and its equipment by number with a key.</summary>
public static class HousePlan
{
    /// <summary>The sheet.</summary>
    /// <param name="source">What the papers are made from.</param>
    /// <param name="house">Which house.</param>
    /// <param name="number">Sheet number.</param>
    /// <param name="section">Number of the sheet with the cross-section; empty to leave its mark out.</param>
    public static Sheet Draw(PaperSource source, HouseResults house, string number, string section = "")
    {
        ArgumentNullException.ThrowIfNull(source);
        ArgumentNullException.ThrowIfNull(house);
        LengthStyle style = SheetStyle.Lengths(source.Job);
        SheetSize size = SheetStyle.Size(source.Job);
        Box room = Furniture.RoomMm(size);
        (string Label, IReadOnlyList<PlacedItem> Items)[] kinds = Kinds(house.Layout);
        Table key = Key(kinds);
        double keyMm = kinds.Length == 0 ? 0 : Math.Min(TableSetting.HeightMm(key) + 6, 0.5 * room.Height);
        Box view = new(room.Left, room.Top, room.Width, room.Height - 14 - keyMm);
        View drawn = ViewOf(house, kinds, view, style, section);
        string title = $"House {house.Form.Id}: floor plan";
        List<Entity> paper =
        [
            .. SheetStyle.Border(source.Job, title, number, drawn.Scale.Text, SheetStyle.Preliminary, "Places of equipment are proposals; clearances, guards and disconnects by the trades that install it."),
            .. Furniture.ViewTitle(new(room.Left, room.Bottom - 7), title, drawn.Scale.Text, 110),
            .. Furniture.ScaleBar(new(room.Right - 80, room.Bottom - 9), drawn.Scale, style),
            .. Furniture.North(new(room.Right - 12, room.Bottom - 24 - keyMm), source.Job.Site.RangeBearingDeg - 90, 7),
        ];
        if (kinds.Length > 0)
        {
            paper.AddRange(TableSetting.DrawAll(key, new(room.Left, view.Bottom + 2)));
        }

        string words = string.Join("; ", kinds.Select((k, i) => string.Create(CultureInfo.InvariantCulture, $"{i + 1}: {k.Items.Count} × {k.Label}")));
        return new Sheet("floor-" + house.Form.Id, title, $"Floor plan of {house.Form.Name}. {words}.", size.WidthMm, size.HeightMm, [drawn], paper);
    }

    internal static (string Label, IReadOnlyList<PlacedItem> Items)[] Kinds(LayoutResult layout) =>
    [
        .. layout.Placed.Where(p => p.Kind is not (PlacedKind.Bench or PlacedKind.Aisle))
            .GroupBy(p => (p.Kind, Label: Bare(p.Label)))
            .Select(g => (g.Key.Label, (IReadOnlyList<PlacedItem>)[.. g])),
    ];

    /// <summary>A label without the running number at its end, so that like things share a line of the key.</summary>
    private static string Bare(string label)
    {
        string bare = label.TrimEnd('0', '1', '2', '3', '4', '5', '6', '7', '8', '9');
        return bare.Length < label.Length && bare.EndsWith(' ') ? bare.TrimEnd() : label;
    }

    private static Table Key((string Label, IReadOnlyList<PlacedItem> Items)[] kinds)
    {
        int half = (kinds.Length + 1) / 2;
        string[] Cells(int i) => i < kinds.Length
            ? [(i + 1).ToString(CultureInfo.InvariantCulture), kinds[i].Label, kinds[i].Items.Count.ToString(CultureInfo.InvariantCulture)]
            : ["", "", ""];
        return new Table(
            [new("No.", 14, Along.End), new("Equipment", 90), new("Count", 20, Along.End), new("No.", 24, Along.End), new("Equipment", 90), new("Count", 20, Along.End)],
            [.. Enumerable.Range(0, half).Select(i => (IReadOnlyList<string>)[.. Cells(i), .. Cells(half + i)])]);
    }

    private static View ViewOf(HouseResults house, (string Label, IReadOnlyList<PlacedItem> Items)[] kinds, Box roomMm, LengthStyle style, string section)
    {
        BuildingForm b = house.Form;
        IReadOnlyList<Spot> ring = PlanSymbols.Footprint(b);
        (double lowX, double highX) = (ring.Min(p => p.X), ring.Max(p => p.X));
        (double lowY, double highY) = (ring.Min(p => p.Y), ring.Max(p => p.Y));
        DrawingScale scale = DrawingScale.Choose(highX - lowX, highY - lowY, roomMm.Width - 54, roomMm.Height - 44, style);
        double wide = roomMm.Width / scale.MmPerM;
        double tall = roomMm.Height / scale.MmPerM;
        double spareMm = roomMm.Width - (highX - lowX) * scale.MmPerM;
        double leftMm = spareMm > 80 ? spareMm / 2 : 38 + (spareMm - 54) / 2;
        Box window = new(lowX - leftMm / scale.MmPerM, (lowY + highY - tall) / 2, wide, tall);
        List<Entity> all = [.. PlanSymbols.Building(b, house)];
        List<double> frames = [.. b.FrameLinesXM];
        bool roomy = frames.Count > 1 && (frames[1] - frames[0]) * scale.MmPerM > 11;
        Spot corner = ring[3];
        if (roomy)
        {
            all.Add(new Entity.Dimensions(corner, new(1, 0), frames, 8, style) { Source = b.Id + "/frames" });
        }

        all.Add(new Entity.Dimensions(corner, new(1, 0), [0, b.LengthM], roomy ? 16 : 8, style) { Source = b.Id + "/length" });
        List<double> across = Stations(house, scale);

        // Doors swing and louvers stand out over the paper: the dimensions stand beyond them, as far as the sheet has room.
        double outM = PlanSymbols.Reach(b, house).Select(p => lowX - p.X).DefaultIfEmpty(0).Max();
        double clearMm = Math.Clamp(outM * scale.MmPerM + 8, 16, Math.Max(16, leftMm - 18));
        if (across.Count > 2)
        {
            all.Add(new Entity.Dimensions(ring[0], new(0, 1), across, clearMm, style) { Source = b.Id + "/across" });
        }

        all.Add(new Entity.Dimensions(ring[0], new(0, 1), [0, b.WidthM], across.Count > 2 ? clearMm + 10 : clearMm, style) { Source = b.Id + "/width" });
        all.AddRange(Numbers(b, kinds, scale));
        all.AddRange(Section(b, house, scale, section));
        return new View("floor", $"Floor plan of house {b.Id}", scale, window, new(roomMm.Left, roomMm.Top), all);
    }

    /// <summary>Where the cross-section cuts, marked outside the left wall unless a door or equipment stands there.</summary>
    private static IEnumerable<Entity> Section(BuildingForm b, HouseResults house, DrawingScale scale, string section)
    {
        double x = b.FrameLinesXM.Count > 0 ? b.FrameLinesXM[TypicalFrame.Typical(b)] : b.LengthM / 2;
        Spot foot = SheetStyle.Flat(b.Origin + x * b.AlongX);
        Spot outward = new(-b.AlongY.XM, -b.AlongY.YM);
        Spot along = new(b.AlongX.XM, b.AlongX.YM);
        bool blocked = PlanSymbols.Reach(b, house).Any(p => (p - foot).Dot(outward) > 0.1 && Math.Abs((p - foot).Dot(along)) * scale.MmPerM < 22);
        return section.Length == 0 || blocked ? [] : SheetMarks.Section(foot + 1.5 / scale.MmPerM * outward, outward, -1 * along, "1", section, scale.MmPerM, b.Id + "/section");
    }

    /// <summary>Stations across the house: walls and edges of benches, or the walls alone where they crowd.</summary>
    private static List<double> Stations(HouseResults house, DrawingScale scale)
    {
        List<double> stations = [];
        IEnumerable<double> edges = house.House.Benches.SelectMany(b => (double[])[b.OffsetYM, b.OffsetYM + b.WidthM]).Concat([0, house.Form.WidthM]);
        foreach (double edge in edges.Order())
        {
            if (stations.Count == 0 || edge - stations[^1] > 0.05)
            {
                stations.Add(edge);
            }
        }

        int crowded = stations.Zip(stations.Skip(1)).Count(p => (p.Second - p.First) * scale.MmPerM < 11);
        return crowded > 2 ? [0, house.Form.WidthM] : stations;
    }

    /// <summary>Numbered rings beside the equipment, each at the first place where it covers no other; never outside end 1, where the dimensions stand.</summary>
    internal static IEnumerable<Entity> Numbers(BuildingForm b, (string Label, IReadOnlyList<PlacedItem> Items)[] kinds, DrawingScale scale) => Tags.Draw(
        kinds.SelectMany((kind, k) => kind.Items.Select(item => new Tag(
            SheetStyle.Flat(b.Origin + (item.Corner.XM + item.Size.XM / 2) * b.AlongX + (item.Corner.YM + item.Size.YM / 2) * b.AlongY),
            (k + 1).ToString(CultureInfo.InvariantCulture), item.Id, item.Face == FaceName.End1))),
        scale.MmPerM);
}
