using System.Globalization;
using Glazewright.Design.Body;
using Glazewright.Design.Brief;
using Glazewright.Design.Form;
using Glazewright.Design.Framing;
using Glazewright.Design.Layout;
using Glazewright.Papers.Answers;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Sets;
using Glazewright.Papers.Solids;

namespace Glazewright.Papers.Sheets;

/// <summary>Two opposite walls of a house on a sheet, with the schedule of their openings.</summary>
public static class WallSheet
{
    /// <summary>The walls the air passes: fans on one, wet wall and louvers on the other.</summary>
    /// <param name="source">What the papers are made from.</param>
    /// <param name="house">Which house.</param>
    /// <param name="number">Sheet number.</param>
    public static Sheet Air(PaperSource source, HouseResults house, string number)
    {
        ArgumentNullException.ThrowIfNull(house);
        FaceName fans = house.House.Equipment.FanFace;
        return Draw(source, house, [LayoutInput.Opposite(fans), fans], number, "walls", "fan and intake walls");
    }

    /// <summary>The other two walls.</summary>
    /// <param name="source">What the papers are made from.</param>
    /// <param name="house">Which house.</param>
    /// <param name="number">Sheet number.</param>
    public static Sheet Others(PaperSource source, HouseResults house, string number)
    {
        ArgumentNullException.ThrowIfNull(house);
        return WallView.IsEnd(house.House.Equipment.FanFace)
            ? Draw(source, house, [FaceName.Left, FaceName.Right], number, "side-walls", "side walls, rods")
            : Draw(source, house, [FaceName.End1, FaceName.End2], number, "end-walls", "end walls");
    }

    private static Sheet Draw(PaperSource source, HouseResults house, FaceName[] faces, string number, string id, string what)
    {
        ArgumentNullException.ThrowIfNull(source);
        BuildingForm b = house.Form;
        LengthStyle style = SheetStyle.Lengths(source.Job);
        SheetSize size = SheetStyle.Size(source.Job);
        Box room = Furniture.RoomMm(size);
        List<WallGroup> first = WallView.Groups(house, faces[0], 1);
        List<WallGroup> second = WallView.Groups(house, faces[1], first.Count + 1);
        List<WallGroup>[] groups = [first, second];
        Table key = Schedule(source, house, [(faces[0], first), (faces[1], second)], style);
        double keyMm = key.Rows.Count == 0 ? 0 : Math.Min(TableSetting.HeightMm(key) + 4, 0.5 * room.Height);
        bool ends = WallView.IsEnd(faces[0]);
        double wallM = WallView.LengthM(b, faces[0]);
        double highM = faces.Max(f => WallView.HeightM(b, f));

        // End walls stand side by side, long walls one over the other.
        double cellWidthMm = ends ? room.Width / 2 : room.Width;
        double cellHeightMm = (room.Height - keyMm - 4) / (ends ? 1 : 2);
        const double BelowMm = RunningDimensions.BelowMm + 18, AboveMm = 5, LeftMm = 6, TitleMm = 12;
        double sidesMm = LeftMm + RunningDimensions.BesideMm;
        DrawingScale scale = DrawingScale.Largest(
            style, s => wallM * s.MmPerM + sidesMm <= cellWidthMm && highM * s.MmPerM + BelowMm + AboveMm <= cellHeightMm - TitleMm);
        string title = $"House {b.Id}: {what}";
        List<View> views = [];
        List<Entity> paper =
        [
            .. SheetStyle.Border(
                source.Job, title, number, scale.Text, SheetStyle.Preliminary,
                ends
                    ? "Posts, headers, sills, jambs: first sizes as simple spans; joints are not designed. End frames are portals; rods stand in side walls and roof, first and last free bay."
                    : "Dashed crosses: bays supposed to be rod-braced, as the takeoff counts them; not designed. Headers, sills and jambs: first sizes as simple spans."),
        ];
        for (int i = 0; i < faces.Length; i++)
        {
            double left = room.Left + (ends ? i * cellWidthMm : 0);
            double top = room.Top + (ends ? 0 : i * cellHeightMm);
            double viewHeightMm = cellHeightMm - TitleMm;
            double spareMm = cellWidthMm - wallM * scale.MmPerM - sidesMm;
            Box window = new(-(LeftMm + spareMm / 2) / scale.MmPerM, -BelowMm / scale.MmPerM, cellWidthMm / scale.MmPerM, viewHeightMm / scale.MmPerM);
            string name = Title(house, faces[i]);
            views.Add(new View($"wall-{i + 1}", name, scale, window, new(left, top), [.. WallView.Draw(source, house, faces[i], groups[i], scale.MmPerM, style)]));
            paper.AddRange(Furniture.ViewTitle(new(left + 2, top + viewHeightMm + 5), name, scale.Text, Math.Min(cellWidthMm - 6, 150)));
        }

        if (keyMm > 0)
        {
            paper.AddRange(TableSetting.DrawAll(key, new(room.Left, room.Bottom - keyMm + 2)));
        }

        string words = string.Join("; ", groups.SelectMany(g => g).Select(g => string.Create(CultureInfo.InvariantCulture, $"{g.Number}: {g.Members.Count} × {g.First.Label}")));
        return new Sheet($"{id}-{b.Id}", title, $"{Said.Capital(what)} of {b.Name}. {words}.", size.WidthMm, size.HeightMm, views, paper);
    }

    private static string Title(HouseResults house, FaceName face)
    {
        // Left wall or end 1 on the left: end 1 and the right wall are then seen from inside.
        FaceName fans = house.House.Equipment.FanFace;
        string name = face switch { FaceName.End1 => "End 1", FaceName.End2 => "End 2", FaceName.Left => "Left wall", _ => "Right wall" };
        string use = face == fans ? " (fans)" : face == LayoutInput.Opposite(fans) ? " (intake)" : "";
        string seen = face is FaceName.End1 or FaceName.Right ? "from inside" : "from outside";
        return $"{name}{use}, faces {SheetStyle.Facing(house.Form, face)}, seen {seen}";
    }

    private static Table Schedule(PaperSource source, HouseResults house, IReadOnlyList<(FaceName Face, List<WallGroup> Groups)> walls, LengthStyle style)
    {
        MarkFinder finder = new(source.Takeoff.Marks);
        Dictionary<string, MemberSolid> members = source.Body.Members.Where(m => m.House == house.Form.Id).ToDictionary(m => m.Line.Id);
        string Pieces(FaceName face, WallGroup g, Func<FramedOpening, IEnumerable<string>> of) => string.Join(", ", house.Framing.Openings
            .Where(f => f.Face == face && g.Members.Any(o => o.Id == f.Id)).SelectMany(of).Where(members.ContainsKey).Select(id => members[id])
            .GroupBy(m => m.Line.Role == MemberRole.EndPost ? "post" : m.Line.Role == MemberRole.Column ? "column" : m.Section.Replace("tube-", "", StringComparison.Ordinal))
            .Select(alike => alike.Key is "post" or "column" ? alike.Key : $"{Marks(alike)} {alike.Key}"));
        string Marks(IEnumerable<MemberSolid> alike)
        {
            string[] all = [.. alike.Select(finder.Of).Distinct().Order(StringComparer.Ordinal)];
            return all.Length <= 2 ? string.Join(", ", all) : $"{all[0]} to {all[^1]}";
        }

        string Size(double wideM, double highM) => $"{LengthText.Of(wideM, style)} × {LengthText.Of(highM, style)}";
        string Cut(WallGroup g)
        {
            int posts = g.Members.SelectMany(o => o.PostsCut).Distinct().Count();
            return !g.First.Framed ? "on the box" : posts == 0 ? "none" : posts.ToString(CultureInfo.InvariantCulture);
        }

        return new Table(
            [
                new("No.", 10, Along.End), new("Opening", 48), new("Count", 13, Along.End), new("Size", 32), new("Rough opening", 41),
                new("Left edges, from left", 62), new("Sill", 20, Along.End), new("Head", 20, Along.End), new("Posts cut", 20), new("Header", 35), new("Sill piece", 35), new("Jambs", 50),
            ],
            [
                .. walls.SelectMany(w => w.Groups.Select(g => (IReadOnlyList<string>)
                [
                    g.Number.ToString(CultureInfo.InvariantCulture),
                    g.First.Label,
                    g.Members.Count.ToString(CultureInfo.InvariantCulture),
                    Size(g.First.WidthM, g.First.HeightM),
                    g.First.Framed ? Size(g.First.RoughWidthM, g.First.RoughHeightM) : "",
                    string.Join(", ", g.Members.Select(o => LengthText.Of(o.UM, style))),
                    LengthText.Of(g.First.VM, style),
                    LengthText.Of(g.First.VM + g.First.HeightM, style),
                    Cut(g),
                    Pieces(w.Face, g, f => [f.Header]),
                    Pieces(w.Face, g, f => [f.Sill]),
                    Pieces(w.Face, g, f => [f.LeftJamb, f.RightJamb]),
                ])),
            ]);
    }
}
