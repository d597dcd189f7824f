using System.Globalization;
using Glazewright.Design.Brief;
using Glazewright.Design.Form;
using Glazewright.Design.Layout;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Fonts;
using Glazewright.Papers.Sets;

namespace Glazewright.Papers.Sheets;

/// <summary>Both walls the air passes: fans on one, wet wall and louvers on the other, with doors and posts, placed and dimensioned.</summary>
public static class EndWalls
{
    /// <summary>The sheet.</summary>
    /// <param name="source">What the papers are made from.</param>
    /// <param name="house">Which house.</param>
    /// <param name="number">Sheet number.</param>
    public static Sheet Draw(PaperSource source, HouseResults house, string number)
    {
        ArgumentNullException.ThrowIfNull(source);
        ArgumentNullException.ThrowIfNull(house);
        LengthStyle style = SheetStyle.Lengths(source.Job);
        SheetSize size = SheetStyle.Size(source.Job);
        Box room = Furniture.RoomMm(size);
        FaceName fanFace = house.House.Equipment.FanFace;
        FaceName[] faces = [LayoutInput.Opposite(fanFace), fanFace];
        WallThing[][] things = [.. faces.Select(f => Things(house, f))];
        Table key = Key(faces, things, style);
        double keyMm = things.All(t => t.Length == 0) ? 0 : Math.Min(TableSetting.HeightMm(key) + 4, 0.5 * room.Height);
        bool ends = fanFace is FaceName.End1 or FaceName.End2;
        double wallM = ends ? house.Form.WidthM : house.Form.LengthM;
        double highM = ends ? house.Form.Roof.RidgeM : Math.Max(house.Form.Roof.LeftEaveM, house.Form.Roof.RightEaveM);

        // End walls stand side by side, long walls one over the other.
        double cellWidthMm = ends ? room.Width / 2 : room.Width;
        double cellHeightMm = (room.Height - keyMm - 4) / (ends ? 1 : 2);
        const double BelowMm = 30, AboveMm = 4, SideMm = 12;
        DrawingScale scale = DrawingScale.Largest(style, s => wallM * s.MmPerM + 2 * SideMm <= cellWidthMm && highM * s.MmPerM + BelowMm + AboveMm <= cellHeightMm - 12);
        List<View> views = [];
        List<Entity> paper = [.. SheetStyle.Border(
            source.Job, $"House {house.Form.Id}: fan and intake walls", number, scale.Text, SheetStyle.Preliminary,
            "Places are proposals. Framing around openings, bracing, flashing and guards by those who build and install them.")];
        for (int i = 0; i < faces.Length; i++)
        {
            double left = room.Left + (ends ? i * cellWidthMm : 0);
            double top = room.Top + (ends ? 0 : i * cellHeightMm);
            double viewHeightMm = cellHeightMm - 12;
            Box window = new(wallM / 2 - cellWidthMm / 2 / scale.MmPerM, -BelowMm / scale.MmPerM, cellWidthMm / scale.MmPerM, viewHeightMm / scale.MmPerM);
            int from = i == 0 ? 0 : things[0].Length;
            views.Add(new View($"wall-{i + 1}", Title(house, faces[i], i == 0), scale, window, new(left, top), [.. Wall(house, faces[i], things[i], from, wallM, style)]));
            paper.AddRange(Furniture.ViewTitle(new(left + 2, top + viewHeightMm + 6), Title(house, faces[i], i == 0), scale.Text, Math.Min(cellWidthMm - 6, 140)));
        }

        if (keyMm > 0)
        {
            paper.AddRange(TableSetting.DrawAll(key, new(room.Left, room.Bottom - keyMm + 2)));
        }

        string words = string.Join("; ", things.SelectMany(t => t).Select((t, n) => string.Create(CultureInfo.InvariantCulture, $"{n + 1}: {t.Label}")));
        return new Sheet("walls-" + house.Form.Id, $"House {house.Form.Id}: fan and intake walls", $"Both walls the air passes of {house.Form.Name}. {words}.", size.WidthMm, size.HeightMm, views, paper);
    }

    private sealed record WallThing(string Label, double UM, double VM, double WidthM, double HeightM, bool IsDoor, string Source);

    private static string Title(HouseResults house, FaceName face, bool intake)
    {
        // Left wall or end 1 on the left: end 1 and the right wall are then seen from inside.
        string name = face switch { FaceName.End1 => "End 1", FaceName.End2 => "End 2", FaceName.Left => "Left wall", _ => "Right wall" };
        string seen = face is FaceName.End1 or FaceName.Right ? "from inside" : "from outside";
        return $"{name} ({(intake ? "intake" : "fans")}), faces {SheetStyle.Facing(house.Form, face)}, seen {seen}";
    }

    private static WallThing[] Things(HouseResults house, FaceName face)
    {
        bool end = face is FaceName.End1 or FaceName.End2;
        return
        [
            .. house.Form.Face(face).Openings
                .Where(o => o.Opening.Kind is OpeningKind.Door or OpeningKind.DoubleDoor or OpeningKind.Window or OpeningKind.Vent)
                .Select(o => new WallThing(
                    o.Opening.Kind switch { OpeningKind.Door => "Door", OpeningKind.DoubleDoor => "Double door", OpeningKind.Window => "Window", _ => "Vent" },
                    o.Opening.OffsetM, o.Opening.SillM, o.Opening.WidthM, o.Opening.HeightM, true, o.Opening.Id)),
            .. house.Layout.Placed
                .Where(p => p.Face == face && (p.Kind is PlacedKind.Fan or PlacedKind.Louver or PlacedKind.WetWall or PlacedKind.PressureFan))
                .OrderBy(p => p.Kind).ThenBy(p => end ? p.Corner.YM : p.Corner.XM)
                .Select(p => new WallThing(p.Label, end ? p.Corner.YM : p.Corner.XM, p.Corner.ZM, end ? p.Size.YM : p.Size.XM, p.Size.ZM, false, p.Id)),
        ];
    }

    private static Table Key(FaceName[] faces, WallThing[][] things, LengthStyle style)
    {
        List<string[]> cells = [];
        for (int f = 0; f < faces.Length; f++)
        {
            foreach (WallThing t in things[f])
            {
                cells.Add([
                    (cells.Count + 1).ToString(CultureInfo.InvariantCulture), t.Label, $"{LengthText.Of(t.WidthM, style)} × {LengthText.Of(t.HeightM, style)}", LengthText.Of(t.UM, style), LengthText.Of(t.VM, style),
                ]);
            }
        }

        int half = (cells.Count + 1) / 2;
        string[] Row(int i) => i < cells.Count ? cells[i] : ["", "", "", "", ""];
        Column[] columns = [new("No.", 11, Along.End), new("What", 52), new("Width × height", 44), new("From left", 26, Along.End), new("Above floor", 28, Along.End)];
        return new Table([.. columns, .. columns], [.. Enumerable.Range(0, half).Select(i => (IReadOnlyList<string>)[.. Row(i), .. Row(half + i)])]);
    }

    private static IEnumerable<Entity> Wall(HouseResults house, FaceName face, WallThing[] things, int from, double wallM, LengthStyle style)
    {
        BuildingForm b = house.Form;
        bool end = face is FaceName.End1 or FaceName.End2;
        double eaveM = face == FaceName.Left ? b.Roof.LeftEaveM : b.Roof.RightEaveM;
        IReadOnlyList<Spot> outline = end ? Profile.Points(b) : [new(0, 0), new(0, eaveM), new(wallM, eaveM), new(wallM, 0)];
        yield return new Entity.Polyline([.. outline], true) { Role = Role.Visible, Source = $"{b.Id}/{face}" };
        yield return new Entity.Polyline([new(-0.4, 0), new(wallM + 0.4, 0)]) { Role = Role.Cut, Source = "ground" };
        foreach (MemberLine post in b.Members.Where(m => m.Role is MemberRole.EndPost or MemberRole.Column))
        {
            Spot foot = On(b, face, post.A);
            Spot head = On(b, face, post.B);
            double off = Off(b, face, post.A);
            if (Math.Abs(off) < 0.2 && Math.Abs(foot.X - head.X) < 0.05)
            {
                yield return new Entity.Polyline([foot, head]) { Role = Role.Beyond, Source = post.Id };
            }
        }

        foreach ((WallThing t, int i) in things.Select((t, i) => (t, i)))
        {
            Spot[] box = [new(t.UM, t.VM), new(t.UM + t.WidthM, t.VM), new(t.UM + t.WidthM, t.VM + t.HeightM), new(t.UM, t.VM + t.HeightM)];
            yield return new Entity.Polyline(box, true) { Role = t.IsDoor ? Role.Visible : Role.Equipment, Source = t.Source };
            if (t.Label.StartsWith("Fan", StringComparison.Ordinal) && !t.IsDoor)
            {
                yield return new Entity.Arc(new(t.UM + t.WidthM / 2, t.VM + t.HeightM / 2), 0.43 * Math.Min(t.WidthM, t.HeightM)) { Role = Role.Equipment, Source = t.Source };
            }

            // Louvers before a wet wall lie over it: their numbers stand at different heights.
            double share = t.Label.StartsWith("Louver", StringComparison.Ordinal) ? 0.2 : t.Label.StartsWith("Wet", StringComparison.Ordinal) ? 0.8 : 0.5;
            yield return new Entity.Label(new(t.UM + t.WidthM / 2, t.VM + share * t.HeightM), (from + i + 1).ToString(CultureInfo.InvariantCulture))
            {
                Role = Role.Text,
                Along = Along.Middle,
                Across = Across.Middle,
                Face = Face.SemiBold,
                Masked = true,
                Source = t.Source,
            };
        }

        List<double> stations = [0];
        foreach (double at in things.SelectMany(t => (double[])[t.UM, t.UM + t.WidthM]).Where(u => u > 0.05 && u < wallM - 0.05).Order())
        {
            if (at - stations[^1] > 0.02)
            {
                stations.Add(at);
            }
        }

        stations.Add(wallM);
        if (stations.Count > 2)
        {
            yield return new Entity.Dimensions(new(0, 0), new(1, 0), stations, -12, style) { Source = $"{b.Id}/{face}" };
        }

        yield return new Entity.Dimensions(new(0, 0), new(1, 0), [0, wallM], -24, style) { Source = $"{b.Id}/{face}" };
    }

    private static Spot On(BuildingForm b, FaceName face, Point3 p)
    {
        Point3 d = p - b.Origin;
        return new(d.Dot(face is FaceName.End1 or FaceName.End2 ? b.AlongY : b.AlongX), d.ZM);
    }

    private static double Off(BuildingForm b, FaceName face, Point3 p)
    {
        Point3 d = p - b.Origin;
        return face switch
        {
            FaceName.End1 => d.Dot(b.AlongX),
            FaceName.End2 => d.Dot(b.AlongX) - b.LengthM,
            FaceName.Left => d.Dot(b.AlongY),
            _ => d.Dot(b.AlongY) - b.WidthM,
        };
    }
}
