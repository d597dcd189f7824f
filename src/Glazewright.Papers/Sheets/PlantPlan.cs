using System.Globalization;
using Glazewright.Design.Behaviour;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.Layout;
using Glazewright.Design.Plant;
using Glazewright.Papers.Answers;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Sets;

namespace Glazewright.Papers.Sheets;

/// <summary>The climate plant of a house in plan: what blows where and how far, what hangs how high, with the duty of each.</summary>
public static class PlantPlan
{
    private static readonly Pen Stream = new(0.35, [], Paint.Of(Tone.Series1));
    private static readonly Pen Loop = new(0.25, [2, 1], Paint.Of(Tone.Series1));
    private static readonly Pen Warm = new(0.35, [3, 1], Paint.Of(Tone.Miss));

    /// <summary>The sheet.</summary>
    /// <param name="source">What the papers are made from.</param>
    /// <param name="house">Which house.</param>
    /// <param name="number">Sheet number.</param>
    public static Sheet Draw(PaperSource source, HouseResults house, string number)
    {
        ArgumentNullException.ThrowIfNull(source);
        ArgumentNullException.ThrowIfNull(house);
        BuildingForm b = house.Form;
        SheetDraft draft = new(source, "plant-" + b.Id, $"House {b.Id}: plant plan", number);
        Box room = draft.Room;
        (string Label, IReadOnlyList<PlacedItem> Items)[] kinds = HousePlan.Kinds(house.Layout);
        Said said = new(source.Job.Units);
        Table key = Key(house, kinds, said, draft.Style);
        // Two halves side by side and the notes below them leave the plan more height than one long table beside the notes.
        Table[] keys = 2 * key.WidthMm + 10 <= room.Width && key.Rows.Count > 6
            ? [key with { Rows = [.. key.Rows.Take((key.Rows.Count + 1) / 2)] }, key with { Rows = [.. key.Rows.Skip((key.Rows.Count + 1) / 2)] }]
            : [key];
        string[] notes = [.. Notes(house, said)];
        double keysMm = keys.Max(TableSetting.HeightMm);
        double notesX = keys.Length > 1 ? room.Left : room.Left + key.WidthMm + 8;
        double notesMm = SheetDraft.NotesMm(notes, room.Right - notesX);
        double stripMm = Math.Min((keys.Length > 1 ? keysMm + notesMm + 4 : Math.Max(keysMm, notesMm)) + 10, 0.62 * room.Height);
        Box plan = room with { Height = room.Height - stripMm };
        Box shown = SitePlan.Bounds([.. PlanSymbols.Footprint(b), .. PlanSymbols.Reach(b, house)]);
        draft.Add("plant", $"Plant plan of house {b.Id}", plan, shown, VentOn(house, FaceName.Left) || VentOn(house, FaceName.Right) ? new Pad(34, 26, 16, 28) : new Pad(34, 18, 16, 20), (scale, _) => Plan(house, kinds, scale, draft.Style, shown));
        draft.North(new(room.Right - 10, plan.Bottom - 22), 6);
        double keysRoomMm = keys.Length > 1 ? stripMm - notesMm - 13 : stripMm - 9;
        for (int i = 0; i < keys.Length; i++)
        {
            draft.Table(i == 0 ? "Equipment; numbers as on the floor plan" : "Equipment, continued", MemberSchedule.Cut(keys[i], keysRoomMm), new(room.Left + i * (key.WidthMm + 10), plan.Bottom + 3));
        }

        draft.Notes(notes, new(notesX, keys.Length > 1 ? plan.Bottom + stripMm - notesMm - 4 : plan.Bottom + 3), room.Right - notesX);
        return draft.Done(
            string.Join("; ", kinds.Select((k, i) => string.Create(CultureInfo.InvariantCulture, $"{i + 1}: {k.Items.Count} × {k.Label}"))) + ".",
            SheetStyle.Preliminary, "Places are proposals. Guards, lock-out and a disconnect in sight of each motor; carbon monoxide alarm wherever fuel is burnt.");
    }

    private static bool VentOn(HouseResults house, FaceName wall) => house.Layout.Placed.Any(p => p.Kind == PlacedKind.Vent && p.Face == wall);

    private static List<Entity> Plan(HouseResults house, (string Label, IReadOnlyList<PlacedItem> Items)[] kinds, DrawingScale scale, LengthStyle style, Box reach)
    {
        BuildingForm b = house.Form;
        double mm = 1 / scale.MmPerM;
        Spot At(double x, double y) => SheetStyle.Flat(b.Origin + x * b.AlongX + y * b.AlongY);
        List<Entity> all = [.. PlanSymbols.Building(b, house)];
        all.AddRange(Circulation(house, At, mm));
        all.AddRange(Heaters(house, At, mm));
        all.AddRange(Exhaust(house, At, mm));
        foreach (PlacedItem line in house.Layout.Placed.Where(p => p.Kind == PlacedKind.FogLine))
        {
            bool upright = line.Size.YM > line.Size.XM;
            double spacing = (line.IsFogAtIntake ? house.Behaviour.Fog?.IntakeSpacingM : house.Behaviour.Fog?.SpacingM) ?? 0;
            for (int i = 0; spacing * scale.MmPerM > 1.2 && i * spacing <= Math.Max(line.Size.XM, line.Size.YM); i++)
            {
                all.Add(new Entity.Arc(At(line.Corner.XM + (upright ? 0 : i * spacing), line.Corner.YM + (upright ? i * spacing : 0)), 0.4 * mm) { Role = Role.Curve, Pen = new Pen(0.25, [], Paint.Of(Tone.Water)), Source = line.Id });
            }
        }

        Entity[] numbers = [.. HousePlan.Numbers(b, kinds, scale)];
        all.AddRange(numbers);
        List<Spot> taken = [.. numbers.OfType<Entity.Label>().Select(l => l.At)];
        foreach (PlacedItem curtain in house.Layout.Placed.Where(p => p.Kind == PlacedKind.Curtain))
        {
            Entity[] drive = [.. Drive(curtain, [.. taken], At, mm)];
            all.AddRange(drive);
            taken.AddRange(drive.OfType<Entity.Label>().Select(l => l.At));
        }

        PlacedItem[] fans = [.. house.Layout.Placed.Where(p => p.Kind == PlacedKind.CirculationFan)];
        Spot first = PlanSymbols.Footprint(b)[0];
        // Numbers of vents stand before them.
        double below = (first.Y - reach.Top) / mm + (VentOn(house, FaceName.Left) ? 17 : 8);
        double above = (reach.Bottom - first.Y - b.WidthM) / mm + (VentOn(house, FaceName.Right) ? 17 : 8);
        foreach (var row in fans.GroupBy(f => f.Corner.YM + f.Size.YM / 2).OrderBy(g => g.Key))
        {
            double[] stations = [0, .. row.Select(f => f.Corner.XM + f.Size.XM / 2).Order().Where(x => x > 0.3 && x < b.LengthM - 0.3), b.LengthM];
            bool low = row.Key < b.WidthM / 2;
            if (stations.Zip(stations.Skip(1)).All(p => (p.Second - p.First) * scale.MmPerM > 13))
            {
                all.Add(new Entity.Dimensions(low ? At(0, -(below - 6) * mm) : At(0, b.WidthM + (above - 6) * mm), new(1, 0), stations, low ? -6 : 6, style) { Source = b.Id + "/circulation" });
            }
        }

        double[] across = [0, .. fans.Select(f => f.Corner.YM + f.Size.YM / 2).Distinct().Order().Where(y => y > 0.2 && y < b.WidthM - 0.2), b.WidthM];
        // Numbers stand up to 12 mm before what is on the wall.
        double beside = (first.X - reach.Left) / mm + 17;
        if (across.Zip(across.Skip(1)).All(p => (p.Second - p.First) * scale.MmPerM > 13))
        {
            all.Add(new Entity.Dimensions(At(-(beside - 6) * mm, 0), new(0, 1), across, 6, style) { Source = b.Id + "/rows" });
        }

        return all;
    }

    /// <summary>The curtain's drive at the near end of the cloth, as the load list has it, clear of the numbers.</summary>
    private static IEnumerable<Entity> Drive(PlacedItem curtain, Spot[] numbers, Func<double, double, Spot> at, double mm)
    {
        foreach (double up in (double[])[0.06, 0.94, 0.3, 0.7, 0.5])
        {
            Spot drive = at(curtain.Corner.XM + 4 * mm, curtain.Corner.YM + up * curtain.Size.YM);
            if (curtain.Size.YM * up > 3 * mm && curtain.Size.YM * (1 - up) > 3 * mm && numbers.All(n => (n - drive).Length() > 6 * mm))
            {
                yield return new Entity.Fill([SheetMarks.Ring(drive, 2.1 * mm)], Paint.Of(Tone.Sheet)) { Role = Role.Fill, Source = curtain.Id };
                yield return new Entity.Arc(drive, 2.1 * mm) { Role = Role.Equipment, Source = curtain.Id };
                yield return new Entity.Label(drive, "M") { Role = Role.Text, Face = Fonts.Face.SemiBold, Along = Along.Middle, Across = Across.Middle, Source = curtain.Id };
                yield break;
            }
        }
    }

    /// <summary>Throws of the circulation fans, and how the air turns at the ends.</summary>
    private static IEnumerable<Entity> Circulation(HouseResults house, Func<double, double, Spot> at, double mm)
    {
        BuildingForm b = house.Form;
        PlacedItem[] fans = [.. house.Layout.Placed.Where(p => p.Kind == PlacedKind.CirculationFan)];
        if (fans.Length == 0)
        {
            yield break;
        }

        // The first half blows from end 1 to end 2, the others back: as the layout hangs them.
        int outward = (fans.Length + 1) / 2;
        double throwM = house.Behaviour.Mixing?.ThrowM ?? 0;
        for (int i = 0; i < fans.Length; i++)
        {
            double way = i < outward ? 1 : -1;
            double x = fans[i].Corner.XM + fans[i].Size.XM / 2;
            double y = fans[i].Corner.YM + fans[i].Size.YM / 2;
            double toX = Math.Clamp(x + way * (throwM > 0 ? throwM : 6), 0.4, b.LengthM - 0.4);
            foreach (Entity e in Arrow(at(x + way * 0.3, y), at(toX, y), Stream, mm, fans[i].Id))
            {
                yield return e;
            }
        }

        double low = fans[0].Corner.YM + fans[0].Size.YM / 2;
        double high = fans[^1].Corner.YM + fans[^1].Size.YM / 2;
        double bow = Math.Min(1.2, 0.05 * b.LengthM);
        if (outward < fans.Length && high - low > 0.5)
        {
            foreach ((double x, double from, double to, double side) in new[] { (b.LengthM - 0.4 - bow, low, high, 1.0), (0.4 + bow, high, low, -1.0) })
            {
                Spot[] turn = [.. Enumerable.Range(0, 13).Select(k => at(x + side * bow * Math.Sin(Math.PI * k / 12), from + (to - from) * (1 - Math.Cos(Math.PI * k / 12)) / 2))];
                yield return new Entity.Polyline(turn) { Role = Role.Curve, Pen = Loop, Source = b.Id + "/loop" };
                foreach (Entity e in Head(turn[^2], turn[^1], Loop, mm, b.Id + "/loop"))
                {
                    yield return e;
                }
            }
        }
    }

    private static IEnumerable<Entity> Heaters(HouseResults house, Func<double, double, Spot> at, double mm)
    {
        EqList<HeaterUnit> units = house.Plant.Heat?.Choice.Heaters ?? [];
        foreach (PlacedItem heater in house.Layout.Placed.Where(p => p.Kind == PlacedKind.Heater))
        {
            double throwM = units.FirstOrDefault(u => u.Id == heater.Id)?.ThrowM ?? 0;
            double x = heater.Corner.XM + heater.Size.XM / 2;
            double y = heater.Corner.YM + heater.Size.YM / 2;
            double way = x < house.Form.LengthM / 2 ? 1 : -1;
            if (throwM > 0)
            {
                foreach (Entity e in Arrow(at(x + way * heater.Size.XM / 2, y), at(Math.Clamp(x + way * throwM, 0.4, house.Form.LengthM - 0.4), y), Warm, mm, heater.Id))
                {
                    yield return e;
                }
            }
        }
    }

    /// <summary>Where the air comes in and where it is drawn out.</summary>
    private static IEnumerable<Entity> Exhaust(HouseResults house, Func<double, double, Spot> at, double mm)
    {
        BuildingForm b = house.Form;
        foreach (PlacedItem item in house.Layout.Placed.Where(p => p.Kind is PlacedKind.Fan or PlacedKind.UpperFan or PlacedKind.UpperLouver or PlacedKind.WetWall || p.Kind == PlacedKind.Louver && !house.Layout.Placed.Any(q => q.Kind == PlacedKind.WetWall && q.Face == p.Face)))
        {
            double x = item.Corner.XM + item.Size.XM / 2;
            double y = item.Corner.YM + item.Size.YM / 2;
            bool outward = item.Kind is PlacedKind.Fan or PlacedKind.UpperFan;
            Spot normal = item.Face switch { FaceName.End1 => new(-1, 0), FaceName.End2 => new(1, 0), FaceName.Left => new(0, -1), _ => new(0, 1) };
            Spot wall = item.Face switch { FaceName.End1 => new(0, y), FaceName.End2 => new(b.LengthM, y), FaceName.Left => new(x, 0), _ => new(x, b.WidthM) };

            // From the fan outwards; from the intake into the house.
            Spot from = wall + (outward ? -5 : -1.5) * mm * normal;
            Spot to = wall + (outward ? -1.2 : -9) * mm * normal;
            foreach (Entity e in Arrow(at(from.X, from.Y), at(to.X, to.Y), new Pen(0.5, [], Paint.Of(Tone.Accent)), mm, item.Id))
            {
                yield return e;
            }
        }
    }

    private static IEnumerable<Entity> Arrow(Spot from, Spot to, Pen pen, double mm, string source)
    {
        yield return new Entity.Polyline([from, to]) { Role = Role.Curve, Pen = pen, Source = source };
        foreach (Entity e in Head(from, to, pen, mm, source))
        {
            yield return e;
        }
    }

    private static IEnumerable<Entity> Head(Spot from, Spot to, Pen pen, double mm, string source)
    {
        Spot back = (from - to).Unit();
        Spot side = new(-back.Y, back.X);
        yield return new Entity.Fill([[to, to + 2 * mm * back + 0.7 * mm * side, to + 2 * mm * back + -0.7 * mm * side]], pen.Paint) { Role = Role.Curve, Source = source };
    }

    private static Table Key(HouseResults house, (string Label, IReadOnlyList<PlacedItem> Items)[] kinds, Said said, LengthStyle style) => new(
        [new("No.", 9, Along.End), new("Equipment", 42), new("Count", 13, Along.End), new("Duty", 108), new("Underside", 22, Along.End)],
        [
            .. kinds.Select((k, i) => (IReadOnlyList<string>)
            [
                (i + 1).ToString(CultureInfo.InvariantCulture), k.Label, k.Items.Count.ToString(CultureInfo.InvariantCulture), Duty(house, k.Items[0], k.Items.Count, said, style), LengthText.Of(k.Items.Min(p => p.Corner.ZM), style),
            ]),
        ]);

    private static string Duty(HouseResults house, PlacedItem item, int count, Said said, LengthStyle style)
    {
        PlantResult plant = house.Plant;
        string Air(double m3PerS) => said.Round(m3PerS, Unit.CubicMetrePerSecond);
        string Power(double powerW) => string.Create(CultureInfo.InvariantCulture, $"{powerW:0} W");
        string Length(double m) => style == LengthStyle.FeetInches ? LengthText.Of(m, style, parts: 1) : said.Text(m, Unit.Metre);
        string Span<T>(IReadOnlyCollection<T> items, Func<T, double> lengthM)
        {
            (string least, string most) = (Length(items.Min(lengthM)), Length(items.Max(lengthM)));
            return least == most ? least : $"{least} to {most}";
        }

        switch (item.Kind)
        {
            case PlacedKind.Fan when plant.Exhaust?.Choice is { } e && e.Dry.Count > 0:
                return $"all {e.Fans.Count.ToString(CultureInfo.InvariantCulture)} fans on: {Air(e.Dry[^1].FlowM3PerS)} at {said.Text(e.Dry[^1].StaticPa, Unit.Pascal)}, {said.Text(e.HouseSpeedMs, Unit.MetrePerSecond)} through the house";
            case PlacedKind.Louver when plant.Exhaust?.Choice is { } e:
                return $"free area of all {said.Text(e.LouverFreeM2, Unit.SquareMetre)}; shut to open in {e.LouverTravelS.ToString("0", CultureInfo.InvariantCulture)} s";
            case PlacedKind.UpperFan when plant.Upper is { } u:
                return $"{Air(u.FlowEachM3PerS)} and {Power(u.PowerEachW)} each, above the drawn curtain";
            case PlacedKind.UpperLouver when plant.Upper is { } u:
                return $"{LengthText.Of(u.InletSizeM, style)} square, opens with its upper fan";
            case PlacedKind.WetWall when plant.WetWall?.Choice is { } w:
                return string.Create(CultureInfo.InvariantCulture, $"{said.Text(w.FaceSpeedMs, Unit.MetrePerSecond)} through the pad, {100 * w.Effectiveness:0} % effective, pump {w.PumpW:0} W");
            case PlacedKind.Heater when plant.Heat?.Choice is { } h && h.Heaters.FirstOrDefault(u => u.Id == item.Id) is { } unit:
                return $"{said.Text(unit.OutputW, Unit.Watt)} each{(unit.ThrowM > 0 ? $", throws {said.Round(unit.ThrowM, Unit.Metre)}" : "")}, {(unit.Electric ? "electric" : unit.SealedCombustion ? "sealed combustion" : "gravity vent")}{(unit.Part is { } part ? string.Create(CultureInfo.InvariantCulture, $", {(part.TwoStage ? "low fire" : "down to")} {100 * part.LeastFraction:0} %") : "")}";
            case PlacedKind.Vent when house.Layout.Flues.FirstOrDefault(f => item.Id.StartsWith(f.Heater + "/vent", StringComparison.Ordinal)) is { } flue:
                FlueLine[] alike = [.. house.Layout.Flues.Where(f => f.Face is not null && f.VentM == flue.VentM && f.Gravity is null == flue.Gravity is null)];
                return $"{LengthText.Of(flue.VentM, style)}{(flue.Gravity is null ? "" : " type B")}, {Span(alike, f => f.RunM)} of pipe, middle {Span(alike, f => f.HeightM)} above the floor";
            case PlacedKind.CirculationFan when plant.Circulation is { } c:
                return $"{Air(c.FlowEachM3PerS)} and {Power(c.PowerEachW)} each, {said.Text(c.CropSpeedMs, Unit.MetrePerSecond)} around the loop";
            case PlacedKind.OscillatingFan when plant.Oscillating is { } o:
                return $"{Air(o.FlowEachM3PerS)} and {Power(o.PowerEachW)} each, sweeps {said.Round(o.RadiusM, Unit.Metre)}";
            case PlacedKind.Curtain when (item.Id.EndsWith("/second-curtain", StringComparison.Ordinal) ? plant.SecondCurtain : plant.Curtain) is { } c:
                return string.Create(CultureInfo.InvariantCulture, $"{said.Round(c.AreaM2, Unit.SquareMetre)}, {c.Layers} cloth{(c.Layers > 1 ? "s" : "")}, drawn in {c.TravelS:0} s, drive M {c.DriveW:0} W");
            case PlacedKind.FogLine when plant.Fog?.Choice is { } f:
                return string.Create(CultureInfo.InvariantCulture, $"{(item.IsFogAtIntake ? f.IntakeNozzles : f.Nozzles - f.IntakeNozzles)} of {f.Nozzles} nozzles on {count} line{(count > 1 ? "s" : "")}, one pump for all, {f.PumpW:0} W; high pressure injects: hospital at once");
            case PlacedKind.ClothBox:
                return $"{said.Round(plant.InsectClothM2, Unit.SquareMetre)} of cloth, vents' own included; front, sides and top; {Length(Math.Min(item.Size.XM, item.Size.YM))} deep";
            case PlacedKind.PressureFan when plant.Pressure is { } p:
                return $"{(p.Fans > 1 ? string.Create(CultureInfo.InvariantCulture, $"{p.Fans} side by side, ") : "")}{Air(p.FlowM3PerS)} filtered, holds {said.Text(p.HeldPa, Unit.Pascal)} in calm air";
            case PlacedKind.LampRow when plant.LampW > 0:
                return string.Create(CultureInfo.InvariantCulture, $"{plant.LampW / 1000:0.0} kW in all");
            default:
                return "";
        }
    }

    private static IEnumerable<string> Notes(HouseResults house, Said said)
    {
        if (house.Plant.InsectClothM2 > 0)
        {
            yield return $"Insect cloth before intake and vents: {said.Round(house.Plant.InsectClothM2, Unit.SquareMetre)}, framed; before the intake a box, so that each square foot of opening has several of cloth.";
        }

        if (house.Behaviour.Mixing is { } mix && house.Plant.Circulation is not null)
        {
            yield return string.Create(
                CultureInfo.InvariantCulture,
                $"Solid arrows: throw of each circulation fan, {said.Round(mix.ThrowM, Unit.Metre)}; dashed: how the loop turns. Loop {said.Round(mix.LoopM, Unit.Metre)}, fans {said.Round(mix.SpacingM, Unit.Metre)} apart, a turn in {mix.TurnS:0} s, mixed in {mix.MixS:0} s. A throw does not prove the air at the leaf: measure with crop.");
        }

        if (house.Plant.Heat is not null)
        {
            yield return "Red dashed arrows: throw of the heaters.";
        }

        if (house.Plant.Exhaust is not null)
        {
            yield return "Heavy arrows: air in and out. Fans start only with the louvers proved open.";
        }

        yield return "Underside: above the floor. Dots on a fog line are nozzles; M is the curtain's drive; dashed outline the curtain. What stands in walls is dimensioned on the wall sheets.";
    }
}
