using System.Globalization;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.Layout;
using Glazewright.Design.Services;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Plant;
using Glazewright.Papers.Sets;

namespace Glazewright.Papers.Sheets;

/// <summary>What the other trades connect: electric of the range and of each house, and each house's gas, water, drains and controls points.</summary>
public static class ServiceSheets
{
    private const string ByTrades = "To price from: design and work by licensed trades under the code adopted locally.";

    /// <summary>Service, generator, panels and the loads outside the houses.</summary>
    /// <param name="source">What the papers are made from.</param>
    /// <param name="number">Sheet number.</param>
    public static Sheet Power(PaperSource source, string number)
    {
        ArgumentNullException.ThrowIfNull(source);
        bool us = source.Job.Units == UnitSystem.Us;
        SheetDraft draft = new(source, "power", "Power of the range", number);
        Box room = draft.Room;
        ServicesResult services = source.Services;
        double leftY = room.Top;
        if (services.Power is { } power)
        {
            leftY = draft.Table("Service and standby", ServicesChapter.PowerTable(power, source.Job.Utilities), new(room.Left, leftY)) + 6;
        }

        HashSet<string> houses = [.. source.Houses.Select(h => h.Form.Id)];
        LoadLine[] others = [.. services.Electric.Where(l => !houses.Contains(l.House))];
        if (others.Length > 0)
        {
            leftY = draft.Table("Loads outside the houses", MemberSchedule.Cut(Loads(services, others), room.Bottom - leftY - 8), new(room.Left, leftY)) + 4;
        }

        double x = room.Left + 188;
        double wideMm = room.Right - x;
        double y = draft.Table("Panels and what feeds them", MemberSchedule.Cut(PanelChapter.Feeders(services.Panels, us), 0.42 * room.Height), new(x, room.Top)) + 6;
        if (services.Panels.FirstOrDefault(p => p.Id == "main") is { } main)
        {
            y = draft.Table($"Main panel, {Whole(main.MainA)} A", MemberSchedule.Cut(Widened(PanelChapter.Schedule(main, us), wideMm), room.Bottom - y - 24), new(x, y)) + 3;
            y = draft.Notes([$"Main panel: {main.Place}. {main.System}."], new(x, y), wideMm);
        }

        WirePlan(draft, source, new Box(room.Left, leftY, x - 6 - room.Left, room.Bottom - leftY), new Box(room.Left, Math.Max(leftY, y) + 2, room.Width, room.Bottom - Math.Max(leftY, y) - 2));
        return draft.Done($"Power of the range: {services.Electric.Count} lines of load, {services.Panels.Count} panels.", ByTrades, "A generator only behind a transfer switch: back-feed kills line crews.");
    }

    // Wire on the plan of the range, in whichever room beside or below the tables shows it larger.
    private static void WirePlan(SheetDraft draft, PaperSource source, Box beside, Box below)
    {
        const double LeastMm = 42;
        EqList<UtilityEntry> entries = source.Services.Plan.Entries;
        Box shown = SitePlan.Bounds([.. source.Form.Buildings.SelectMany(PlanSymbols.Footprint), .. entries.Where(e => e.Utility == UtilityKind.Power).Select(e => SheetStyle.Flat(e.At))]);
        Pad pad = new(10, 18, 10, 4);
        double Scale(Box room) => room.Height < LeastMm ? 0 : Math.Min((room.Width - pad.Left - pad.Right) / shown.Width, (room.Height - SheetDraft.TitleMm - pad.Top - pad.Bottom) / shown.Height);
        Box room = Scale(beside) > Scale(below) ? beside : below;
        if (Scale(room) <= 0 || source.Services.Panels.Count == 0)
        {
            return;
        }

        draft.Add("power", "Wire of the range", room, shown, pad, (scale, window) =>
        {
            double mm = 1 / scale.MmPerM;
            List<Entity> all = [];
            foreach (BuildingForm b in source.Form.Buildings.Reverse())
            {
                all.AddRange(PlanSymbols.Building(b, source.Houses.FirstOrDefault(h => h.Form.Id == b.Id), hung: false));
            }

            all.AddRange(WaysDrawn.Wire(source.Services));
            all.AddRange(Tags.Draw(
                [
                    .. WaysDrawn.Marks(source.Services, UtilityKind.Power),
                    .. source.Form.Buildings.Where(b => b.IsHouse).Select(b => new Tag(SheetStyle.Flat(b.Origin + 0.5 * b.LengthM * b.AlongX + 0.5 * b.WidthM * b.AlongY), PipeSheet.Short(b.Id), b.Id)),
                ],
                scale.MmPerM, Inner(window, mm)));
            return all;
        });
        draft.Paper.AddRange(WaysDrawn.Legend([(WaysDrawn.PenOf(UtilityKind.Power), "E  entry and feeders"), (WaysDrawn.Circuit, "circuits of machines")], new(room.Right - 76, room.Top + 2)));
        draft.North(new(room.Right - 10, room.Top + 12), 6);
    }

    /// <summary>Loads of a house where they stand, and its panel.</summary>
    /// <param name="source">What the papers are made from.</param>
    /// <param name="house">Which house.</param>
    /// <param name="number">Sheet number.</param>
    public static Sheet Electric(PaperSource source, HouseResults house, string number)
    {
        ArgumentNullException.ThrowIfNull(source);
        ArgumentNullException.ThrowIfNull(house);
        BuildingForm b = house.Form;
        bool us = source.Job.Units == UnitSystem.Us;
        SheetDraft draft = new(source, "electric-" + b.Id, $"House {b.Id}: electric", number);
        Box room = draft.Room;
        LoadLine[] lines = [.. source.Services.Electric.Where(l => l.House == b.Id)];
        Table loads = Loads(source.Services, lines);
        PanelSchedule? panel = source.Services.Panels.FirstOrDefault(p => p.Id == b.Id);
        Table? schedule = panel is null ? null : Widened(PanelChapter.Schedule(panel, us), room.Width - loads.WidthMm - 6);
        double stripMm = Math.Min(Math.Max(TableSetting.HeightMm(loads), schedule is null ? 0 : TableSetting.HeightMm(schedule)) + 10, 0.56 * room.Height);
        Box plan = room with { Height = room.Height - stripMm };
        EqList<Glazewright.Design.Plant.PlantResult> plants = source.Houses.Select(h => h.Plant).ToEqList();
        EqList<LayoutResult> layouts = source.Houses.Select(h => h.Layout).ToEqList();
        Box shown = SitePlan.Bounds([.. PlanSymbols.Footprint(b), .. PlanSymbols.Reach(b, house)]);
        draft.Add("electric", $"Electric points of house {b.Id}", plan, shown, new Pad(16, 10, 16, 10), (scale, window) =>
        {
            double mm = 1 / scale.MmPerM;
            List<Entity> all = [.. PlanSymbols.Building(b, house, hung: false), .. WaysDrawn.Wire(source.Services)];
            List<Tag> tags = [];
            for (int i = 0; i < lines.Length; i++)
            {
                string mark = (i + 1).ToString(CultureInfo.InvariantCulture);
                foreach (Point3 spot in LoadSpots.Of(lines[i], source.Form, plants, layouts))
                {
                    Spot at = SheetStyle.Flat(spot);
                    all.AddRange(Point(lines[i].Kind, at, mm, lines[i].Id));
                    if (lines[i].Kind is not (LoadKind.Lights or LoadKind.Receptacles))
                    {
                        tags.Add(new Tag(at, mark, lines[i].Id));
                    }
                }
            }

            all.AddRange(Tags.Draw(tags, scale.MmPerM, Inner(window, mm)));
            return all;
        });
        draft.North(new(room.Right - 10, plan.Bottom - 22), 6);
        draft.Table("Loads; numbers as on the plan", MemberSchedule.Cut(loads, stripMm - 9), new(room.Left, plan.Bottom + 3));
        double x = room.Left + loads.WidthMm + 6;
        if (panel is not null && schedule is not null)
        {
            draft.Table($"Panel {b.Id}, {Whole(panel.MainA)} A, {panel.SpacesUsed.ToString(CultureInfo.InvariantCulture)} of {panel.Spaces.ToString(CultureInfo.InvariantCulture)} spaces", MemberSchedule.Cut(schedule, stripMm - 9), new(x, plan.Bottom + 3));
        }

        string place = panel is null ? "" : $" Panel: {panel.Place}.";
        return draft.Done(
            $"Electric points of {b.Name}: {lines.Length} lines of load.", ByTrades,
            $"Crossed rings: lights; rings with strokes: outlets; spots: machines; thin lines: their circuits.{place} Wet place: GFCI, a disconnect in sight of each motor.");
    }

    /// <summary>Burners with their vents, water users, drains and controls points of a house.</summary>
    /// <param name="source">What the papers are made from.</param>
    /// <param name="house">Which house.</param>
    /// <param name="number">Sheet number.</param>
    public static Sheet Piping(PaperSource source, HouseResults house, string number)
    {
        ArgumentNullException.ThrowIfNull(source);
        ArgumentNullException.ThrowIfNull(house);
        BuildingForm b = house.Form;
        ServicesResult services = source.Services;
        bool us = source.Job.Units == UnitSystem.Us;
        SheetDraft draft = new(source, "piping-" + b.Id, $"House {b.Id}: gas, water, controls", number);
        Box room = draft.Room;
        List<Tag> tags = [];
        List<IReadOnlyList<string>> rows = [];
        PlacedItem? Placed(string id) => house.Layout.Placed.FirstOrDefault(p => p.Id == id);
        Spot At(PlacedItem p, double share) => SheetStyle.Flat(b.Origin + (p.Corner.XM + share * p.Size.XM) * b.AlongX + (p.Corner.YM + share * p.Size.YM) * b.AlongY);
        void Put(string mark, string what, string size, string note, PlacedItem? item, double share)
        {
            rows.Add([mark, what, size, "", "", item is null ? note + (note.Length > 0 ? "; " : "") + "place not in the job" : note]);
            if (item is not null)
            {
                tags.Add(new Tag(At(item, share), mark, item.Id));
            }
        }

        // Every tap of a line carries its mark; the line's row tells pipe and run to the farthest.
        void PutLine(string mark, string what, string size, string note, string line)
        {
            UtilityPoint[] taps = [.. services.Plan.Points.Where(p => p.Line == line && p.House == b.Id)];
            rows.Add([
                mark, (taps.Length > 1 ? Whole(taps.Length) + " × " : "") + what, size, taps.Length == 0 ? "" : PipeSheet.Size(taps[0].Pipe), taps.Length == 0 ? "" : WaysDrawn.Run(taps.Max(t => t.RunM), source.Job.Units), note + (taps.Any(t => t.IsDefault) ? (note.Length > 0 ? "; " : "") + "place a default of ours" : "")]);
            tags.AddRange(taps.Select(t => new Tag(SheetStyle.Flat(t.At), mark, t.Id)));
        }

        Answers.Said said = new(source.Job.Units);
        foreach ((GasLine g, int i) in services.Gas.Where(g => g.House == b.Id).Select((g, i) => (g, i)))
        {
            FlueLine? flue = house.Layout.Flues.FirstOrDefault(f => f.Heater == g.Id);
            string vent = flue is null ? "" : flue.Face is null ? (flue.Unplaced ? $"; vent Ø {LengthText.Of(flue.VentM, draft.Style)}" : "; no place for its vent found") : $"; vent Ø {LengthText.Of(flue.VentM, draft.Style)} through {ElevationSheet.Title(flue.Face.Value).ToLowerInvariant()}";
            PutLine($"G{Whole(i + 1)}", $"Burner {g.Entry}", $"{said.Text(g.InputW, Unit.Watt)} input", (g.Sealed ? "sealed combustion" : "gravity vent, air from the house") + vent, g.Id);
        }

        foreach ((WaterLine w, int i) in services.Water.Where(w => w.House == b.Id).Select((w, i) => (w, i)))
        {
            PutLine($"W{Whole(i + 1)}", w.Label, $"{ServicesChapter.Flow(w.PeakM3PerS, us)}, {ServicesChapter.Volume(w.DayM3, us)} a day", w.Quality, w.Id);
        }

        foreach ((DrainLine d, int i) in services.Drains.Where(d => d.House == b.Id).Select((d, i) => (d, i)))
        {
            PutLine($"D{Whole(i + 1)}", "Drain: " + d.Label, $"{ServicesChapter.Flow(d.PeakM3PerS, us)}, {ServicesChapter.Volume(d.DayM3, us)} a day", d.Carries, d.Id);
        }

        UtilityPoint[] bare = [.. services.Plan.Points.Where(p => p.House == b.Id && p.Line.Length == 0)];
        if (bare.Length > 0)
        {
            PutLine("FD", "Floor drain", "", "", "");
        }

        foreach ((PlacedItem s, int i) in house.Layout.Placed.Where(p => p.Kind == PlacedKind.Sensor).Select((s, i) => (s, i)))
        {
            Put($"S{Whole(i + 1)}", s.Label, "", $"{SheetStyle.Length(s.Corner.ZM, draft.Style)} above the floor", s, 0.5);
        }

        Table list = new([new("Mark", 14), new("What", 58), new("Size", 42), new("Pipe", 18), new("Run", 16, Along.End), new("Note", 62)], rows);
        Table points = new(
            [new("Wired to the control box", 74), new("No.", 12, Along.End), new("DO", 12, Along.End), new("DI", 12, Along.End), new("AI", 12, Along.End), new("AO", 12, Along.End), new("", 26)],
            [
                .. services.Points.Where(p => p.House == b.Id).Select(p => (IReadOnlyList<string>)
                [
                    p.Label, Whole(p.Count), Some(p.DigitalOut), Some(p.DigitalIn), Some(p.AnalogIn), Some(p.AnalogOut), "",
                ]),
            ]);
        double stripMm = Math.Min(Math.Max(TableSetting.HeightMm(list), TableSetting.HeightMm(points)) + 10, 0.56 * room.Height);
        Box plan = room with { Height = room.Height - stripMm };
        Box shown = SitePlan.Bounds([.. PlanSymbols.Footprint(b), .. PlanSymbols.Reach(b, house)]);
        draft.Add("piping", $"Gas, water and sensors of house {b.Id}", plan, shown, new Pad(16, 10, 16, 10), (scale, window) =>
        {
            double mm = 1 / scale.MmPerM;
            List<Entity> all = [.. PlanSymbols.Building(b, house, hung: false)];
            foreach (PlacedItem item in house.Layout.Placed.Where(p => p.Kind is PlacedKind.Heater or PlacedKind.FogLine or PlacedKind.Sensor or PlacedKind.Vent))
            {
                all.AddRange(PlanSymbols.Item(b, item));
            }

            all.AddRange(WaysDrawn.Pipe(services.Plan, mm));
            all.AddRange(WaysDrawn.Taps(services.Plan.Points.Where(p => p.House == b.Id), mm));
            all.AddRange(house.Layout.Flues.Where(f => f.Face is not null && f.Gravity is null).SelectMany(f => Vent(b, f, Placed(f.Heater))));
            all.AddRange(Tags.Draw(tags, scale.MmPerM, Inner(window, mm)));
            all.AddRange(WaysLeaving.Words(services.Plan, window, mm, [.. all]));
            return all;
        });
        draft.North(new(room.Right - 10, plan.Bottom - 22), 6);
        draft.Table("Gas, water, drains, sensors", MemberSchedule.Cut(list, stripMm - 9), new(room.Left, plan.Bottom + 3));
        if (points.Rows.Count > 0)
        {
            draft.Table("Controls points, low voltage", MemberSchedule.Cut(points, stripMm - 9), new(room.Left + list.WidthMm + 8, plan.Bottom + 3));
        }

        return draft.Done(
            $"Gas, water, drains and controls points of {b.Name}: {rows.Count} marks.", ByTrades,
            "Water full, fuel chain-dotted, drains dashed, vents thin and dashed; rings: bibs and gravity vents, squares: floor drains. Hard-wired: high limits, flame safeguard, low-temperature alarm, emergency stops. CO alarm where fuel is burnt.");
    }

    // What is fed takes the room that is left, so that few rows break.
    private static Table Widened(Table table, double widthMm) => table with
    {
        Columns = [.. table.Columns.Select((c, i) => i == 1 ? c with { WidthMm = c.WidthMm + Math.Max(0, widthMm - table.WidthMm) } : c)],
    };

    private static Box Inner(Box window, double mm) => new(window.Left + 4 * mm, window.Top + 4 * mm, window.Width - 8 * mm, window.Height - 8 * mm);

    private static IEnumerable<Entity> Point(LoadKind kind, Spot at, double mm, string source)
    {
        double r = 1.2 * mm;
        switch (kind)
        {
            case LoadKind.Lights:
                yield return new Entity.Arc(at, r) { Role = Role.Beyond, Source = source };
                yield return new Entity.Polyline([at + r * new Spot(-0.7, -0.7), at + r * new Spot(0.7, 0.7)]) { Role = Role.Beyond, Source = source };
                yield return new Entity.Polyline([at + r * new Spot(-0.7, 0.7), at + r * new Spot(0.7, -0.7)]) { Role = Role.Beyond, Source = source };
                break;
            case LoadKind.Receptacles:
                yield return new Entity.Arc(at, r) { Role = Role.Beyond, Source = source };
                yield return new Entity.Polyline([at + r * new Spot(-0.4, -1.5), at + r * new Spot(-0.4, 1.5)]) { Role = Role.Beyond, Source = source };
                yield return new Entity.Polyline([at + r * new Spot(0.4, -1.5), at + r * new Spot(0.4, 1.5)]) { Role = Role.Beyond, Source = source };
                break;
            default:
                yield return new Entity.Fill([SheetMarks.Ring(at, 0.8 * mm)], Paint.Of(Tone.Ink)) { Role = Role.Fill, Source = source };
                break;
        }
    }

    /// <summary>The vent's way from the heater to its wall, along the walls.</summary>
    private static IEnumerable<Entity> Vent(BuildingForm b, FlueLine flue, PlacedItem? heater)
    {
        FacePlane plane = b.Face(flue.Face!.Value).Plane;
        Spot wall = SheetStyle.Flat(plane.At(new Point2(flue.AlongM, 0)));
        Spot outward = new Spot(plane.Normal.XM, plane.Normal.YM).Unit();
        if (heater is not null)
        {
            Spot from = SheetStyle.Flat(b.Origin + (heater.Corner.XM + heater.Size.XM / 2) * b.AlongX + (heater.Corner.YM + heater.Size.YM / 2) * b.AlongY);
            Spot bend = wall + (from - wall).Dot(outward) * outward;
            yield return new Entity.Polyline([from, bend, wall]) { Role = Role.Hidden, Source = flue.Heater + "/vent" };
        }
    }

    private static Table Loads(ServicesResult services, LoadLine[] lines)
    {
        ILookup<string, string> circuits = services.Panels.SelectMany(p => p.Circuits).SelectMany(c => c.Loads.Select(l => (Load: l, c.Number))).ToLookup(c => c.Load, c => c.Number);
        return new Table(
            [
                new("No.", 11, Along.End), new("Load", 62), new("Count", 14, Along.End), new("W each", 18, Along.End), new("V, phases", 22, Along.End), new("A each", 16, Along.End), new("Circuits", 38),
            ],
            [
                .. lines.Select((l, i) => (IReadOnlyList<string>)
                [
                    (i + 1).ToString(CultureInfo.InvariantCulture), l.Label + (l.Backup ? " (backup)" : ""), Whole(l.Count), Whole(l.RunningW), $"{Whole(l.VoltageV)}, {(l.ThreePhase ? "3" : "1")}",
                    l.CurrentA.ToString("0.0", CultureInfo.InvariantCulture), string.Join("; ", circuits[l.Id].Distinct()),
                ]),
            ]);
    }

    private static string Some(int count) => count == 0 ? "" : Whole(count);

    private static string Whole(double value) => value.ToString("#,0", CultureInfo.InvariantCulture);
}
