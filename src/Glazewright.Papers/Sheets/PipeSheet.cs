using System.Globalization;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.Services;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Sets;

namespace Glazewright.Papers.Sheets;

/// <summary>Where fuel and water enter the range and drains leave it, the ways of pipe between, and how long they are.</summary>
public static class PipeSheet
{
    private const double GapMm = 8;

    /// <summary>The sheet.</summary>
    /// <param name="source">What the papers are made from.</param>
    /// <param name="number">Sheet number.</param>
    public static Sheet Draw(PaperSource source, string number)
    {
        ArgumentNullException.ThrowIfNull(source);
        ServicePlan plan = source.Services.Plan;
        SheetDraft draft = new(source, "pipes", "Pipes of the range", number);
        Box room = draft.Room;
        UtilityKind[] kinds = [UtilityKind.Fuel, UtilityKind.Water, UtilityKind.Drain];
        Table sizes = Sizes(source);
        Table points = Points(source, room.Width - sizes.WidthMm - GapMm);
        Table entries = Entries(source, sizes.WidthMm);
        double leftMm = TableSetting.HeightMm(entries) + TableSetting.HeightMm(sizes) + 30;
        double stripMm = Math.Min(Math.Max(leftMm, Math.Min(TableSetting.HeightMm(points), leftMm) + 10), 0.68 * room.Height);
        Box view = room with { Height = room.Height - stripMm };
        Box shown = SitePlan.Bounds([
            .. source.Form.Buildings.SelectMany(PlanSymbols.Footprint),
            .. source.Form.Buildings.SelectMany(b => PlanSymbols.Reach(b, source.Houses.FirstOrDefault(h => h.Form.Id == b.Id))),
            .. plan.Entries.Select(e => SheetStyle.Flat(e.At)),
        ]);
        draft.Add("pipes", "Gas, water and drains", view, shown, new Pad(14, 12, 60, 10), (scale, window) =>
        {
            double mm = 1 / scale.MmPerM;
            List<Entity> all = [];
            foreach (BuildingForm b in source.Form.Buildings.Reverse())
            {
                all.AddRange(PlanSymbols.Building(b, source.Houses.FirstOrDefault(h => h.Form.Id == b.Id), hung: false));
            }

            all.AddRange(WaysDrawn.Pipe(plan, mm));
            all.AddRange(WaysDrawn.Taps(plan.Points, mm));
            Box inner = new(window.Left + 4 * mm, window.Top + 4 * mm, window.Width - 8 * mm, window.Height - 8 * mm);
            all.AddRange(Tags.Draw(
                [.. WaysDrawn.Marks(source.Services, kinds), .. source.Form.Buildings.Where(b => b.IsHouse).Select(b => new Tag(SheetStyle.Flat(b.Origin + 0.5 * b.LengthM * b.AlongX + 0.5 * b.WidthM * b.AlongY), Short(b.Id), b.Id))],
                scale.MmPerM, inner));
            return all;
        });
        draft.North(new(room.Right - 10, view.Top + 12), 6);
        draft.Paper.AddRange(WaysDrawn.Legend(
            [.. kinds.Where(k => plan.Pieces.Any(p => p.Utility == k)).Select(k => (WaysDrawn.PenOf(k), $"{WaysDrawn.Letter(k)}  {WaysDrawn.Means(k)}"))], new(room.Right - 54, view.Top + 22)));
        double y = draft.Table("Where they enter and leave", entries, new(room.Left, view.Bottom + 3)) + 5;
        draft.Table("Pipe by size", MemberSchedule.Cut(sizes, room.Bottom - y - 7), new(room.Left, y));
        draft.Table("What is served, and the run to it", MemberSchedule.Cut(points, stripMm - 9), new(room.Left + sizes.WidthMm + GapMm, view.Bottom + 3));
        return draft.Done(
            string.Create(CultureInfo.InvariantCulture, $"Gas, water and drains of the range: {plan.Points.Count} points, {plan.Pieces.Count} pieces of pipe."),
            "To price from: design and work by licensed trades under the code adopted locally. Ways follow walls, the ends of houses and the aisle; have the utilities located before digging.",
            "Rings: hose bibs; squares: floor drains; spots: what is piped. Gas outdoors by the supplier's clearances from openings, tanks and meters.");
    }

    internal static string Short(string id) => id.Length <= 3 ? id : id[..3];

    private static Table Entries(PaperSource source, double widthMm) => new(
        [new("", 9), new("What", 18), new("Where", widthMm - 27)],
        [
            .. source.Services.Plan.Entries.Where(e => e.Utility != UtilityKind.Power).Select(e => (IReadOnlyList<string>)
            [
                WaysDrawn.Letter(e.Utility), e.Utility.ToString(), e.Words,
            ]),
        ]);

    private static Table Sizes(PaperSource source) => new(
        [new("What", 22), new("Size", 24), new("In houses", 26, Along.End), new("Outside", 26, Along.End), new("All", 26, Along.End)],
        [
            .. source.Services.Plan.Pieces.GroupBy(p => (p.Utility, p.Pipe)).OrderBy(g => g.Key.Utility).ThenBy(g => g.Max(p => p.FlowM3PerS)).Select(g => (IReadOnlyList<string>)
            [
                g.Key.Utility.ToString(), Size(g.Key.Pipe), Some(g.Where(p => p.House.Length > 0).Sum(p => p.LengthM), source.Job.Units),
                Some(g.Where(p => p.House.Length == 0).Sum(p => p.LengthM), source.Job.Units), WaysDrawn.Run(g.Sum(p => p.LengthM), source.Job.Units),
            ]),
        ]);

    private static Table Points(PaperSource source, double widthMm) => new(
        [new("House", 16), new("What", Math.Min(widthMm - 16 - 26 - 30 - 44, 96)), new("Size", 26), new("Run", 30, Along.End), new("Place", 44)],
        [
            .. source.Services.Plan.Points.GroupBy(p => (p.House, p.Utility, p.Label, p.Pipe, p.IsDefault)).OrderBy(g => g.Key.Utility).Select(g => (IReadOnlyList<string>)
            [
                g.Key.House, (g.Count() > 1 ? g.Count().ToString(CultureInfo.InvariantCulture) + " × " : "") + g.Key.Label, Size(g.Key.Pipe), Runs([.. g.Select(p => p.RunM)], source.Job.Units),
                g.Key.IsDefault ? "a default of ours" : "as laid out",
            ]),
        ]);

    private static string Runs(double[] runsM, UnitSystem units)
    {
        string least = WaysDrawn.Run(runsM.Min(), units);
        string most = WaysDrawn.Run(runsM.Max(), units);
        return least == most ? most : $"{least[..least.IndexOf(' ', StringComparison.Ordinal)]}–{most}";
    }

    private static string Some(double lengthM, UnitSystem units) => lengthM < 0.01 ? "" : WaysDrawn.Run(lengthM, units);

    /// <summary>Nominal size, or who sizes it.</summary>
    internal static string Size(string pipe) => pipe.Length == 0 ? "by the trade" : pipe;
}
