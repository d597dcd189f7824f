using System.Globalization;
using Glazewright.Design.Body;
using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.Frame;
using Glazewright.Design.Framing;
using Glazewright.Papers.Answers;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Exchange;
using Glazewright.Papers.Fonts;
using Glazewright.Papers.Sets;

namespace Glazewright.Papers.Sheets;

/// <summary>Piers of a house with marks, grid and dimensions, the pier in section, and what the frame brings to its bases.</summary>
public static class FoundationPlan
{
    private const double StripMm = 84;
    private const double DetailMm = 104;

    /// <summary>The sheet.</summary>
    /// <param name="source">What the papers are made from.</param>
    /// <param name="house">Which house.</param>
    /// <param name="number">Sheet number.</param>
    public static Sheet Draw(PaperSource source, HouseResults house, string number)
    {
        ArgumentNullException.ThrowIfNull(source);
        ArgumentNullException.ThrowIfNull(house);
        BuildingForm b = house.Form;
        string title = $"House {b.Id}: foundation plan";
        SheetDraft draft = new(source, "foundation-" + b.Id, title, number);
        Box room = draft.Room;
        Box plan = room with { Height = room.Height - StripMm };
        HouseGrid grid = new(b, plan with { Height = plan.Height - SheetDraft.TitleMm }, draft.Style);
        draft.Add("foundation", $"Foundation plan of house {b.Id}{grid.Part}", plan, grid.Window, grid.Scale, (scale, _) => Plan(source, house, grid, number));
        draft.North(new(room.Right - 10, plan.Bottom - 22), 6);
        FrameChoice frame = house.House.Frame;
        double y = plan.Bottom + 4;
        if (HasPiers(frame))
        {
            Box detail = new(room.Right - DetailMm, y, DetailMm, room.Bottom - y);
            draft.Add("pier", "1  Pier F1", detail, new Box(-1.1, -frame.PierDepthM - 0.15, 2.2, frame.PierDepthM + 0.75), new Pad(2, 2, 2, 2), (scale, window) => Detail(source, house, scale, window, draft.Style), withBar: false);
        }

        double tableMm = room.Width - DetailMm - 8;
        double below = draft.Table("Piers", Piers(source, house, draft.Style), new(room.Left, y)) + 4;
        below = draft.Table("Reactions of a typical frame at its bases, allowable-stress level; greatest of each, not acting together", Reactions(house, source.Job.Units), new(room.Left, below)) + 2;
        draft.Notes(Fitting(Notes(house, source.Job, draft.Style), tableMm, room.Bottom - below), new(room.Left, below), tableMm);
        string words = string.Create(CultureInfo.InvariantCulture, $"{Count(source, house, "F1")} piers F1 under columns, {Count(source, house, "F2")} piers F2 under end posts, {Count(source, house, "F3")} piers F3 under jambs.");
        return draft.Done(words, SheetStyle.Preliminary, "Piers as typed in the job: foundation and anchors are not designed here.");
    }

    /// <summary>Piers of a mark, holes framed.</summary>
    internal static int Count(PaperSource source, HouseResults house, string mark) => Of(source, house).Count(p => p.Mark == mark);

    private static EqList<Pier> Of(PaperSource source, HouseResults house) => PierPlan.Of(house.Form.Id, source.Body.Members, house.House.Frame.PierDiameterM);

    private static bool HasPiers(FrameChoice frame) => frame is { PierDiameterM: > 0, PierDepthM: > 0 };

    // Whole notes, as many as there is room for: the danger ones stand first.
    private static List<string> Fitting(IEnumerable<string> notes, double widthMm, double roomMm)
    {
        List<string> kept = [];
        foreach (string note in notes)
        {
            if (SheetDraft.NotesMm([.. kept, note], widthMm) <= roomMm)
            {
                kept.Add(note);
            }
        }

        return kept;
    }

    private static List<Entity> Plan(PaperSource source, HouseResults house, HouseGrid grid, string number)
    {
        BuildingForm b = house.Form;
        double mm = 1 / grid.Scale.MmPerM;
        double radius = house.House.Frame.PierDiameterM / 2;
        List<Entity> all = [.. grid.Lines([0, .. Posts(b, 0), b.WidthM])];
        IReadOnlyList<Spot> edge = grid.IsWhole
            ? [grid.At(0, 0), grid.At(b.LengthM, 0), grid.At(b.LengthM, b.WidthM), grid.At(0, b.WidthM), grid.At(0, 0)]
            : [grid.At(grid.EndM, 0), grid.At(0, 0), grid.At(0, b.WidthM), grid.At(grid.EndM, b.WidthM)];
        all.Add(new Entity.Polyline(edge) { Role = Role.Hidden, Source = b.Id + "/wall" });
        TakenRoom taken = new();
        Dictionary<string, string> marks = Of(source, house).ToDictionary(p => p.Member, p => p.Mark);
        foreach (Pier pier in Of(source, house))
        {
            Point3 own = pier.Foot - b.Origin;
            Spot at = grid.At(own.Dot(b.AlongX), own.Dot(b.AlongY));
            taken.Add(TakenRoom.Round(grid.Scale.MmPerM * new Spot(at.X, -at.Y), 2 * radius / mm, 2 * radius / mm));
        }

        foreach (MemberSolid solid in source.Body.Members.Where(m => m.House == b.Id && PierPlan.HasFoot(m)))
        {
            MemberLine member = solid.Line;
            string mark = marks.GetValueOrDefault(member.Id, "");
            Point3 own = member.A - b.Origin;
            (double x, double y) = (own.Dot(b.AlongX), own.Dot(b.AlongY));
            if (x > grid.EndM + 1e-6)
            {
                continue;
            }

            Spot at = grid.At(x, y);
            bool column = member.Role == MemberRole.Column;
            if (radius > 0 && mark.Length > 0)
            {
                all.Add(new Entity.Hatch([SheetMarks.Ring(at, radius)], HatchPattern.Concrete, 1.1) { Source = member.Id + "/pier" });
                all.Add(new Entity.Arc(at, radius) { Role = Role.Visible, Source = member.Id + "/pier" });
            }

            double half = 0.5 * solid.WidthM;
            all.Add(new Entity.Fill([new Box(at.X - half, at.Y - half, 2 * half, 2 * half).Corners()], Paint.Of(Tone.Ink)) { Role = Role.Fill, Source = member.Id });
            bool far = x > b.LengthM / 2;
            bool high = y > b.WidthM / 2;
            double wide = Lettering.WidthMm(mark, Face.Regular, Lettered.SmallestMm);
            double offMm = radius / mm + 1;

            // Beside the grid line, inside the wall, on the side where no pier stands; end posts and jambs inward of theirs.
            bool side = !column && (y < 0.05 || y > b.WidthM - 0.05);
            double aside = 0.9 + wide / 2;
            double inward = (high ? 1 : -1) * (offMm + 1.25);
            double ahead = (far ? -1 : 1) * (offMm + wide / 2);
            Spot[] tries = side ? [new(0, inward)]
                : column ? [new(aside, inward), new(-aside, inward)]
                : [new(ahead, 0), new(ahead, 2), new(ahead, -2)];
            Spot? free = mark.Length == 0 ? null : tries.Select(t => (Spot?)t).FirstOrDefault(t => taken.Take(TakenRoom.Round(grid.Scale.MmPerM * new Spot(at.X, -at.Y) + t!.Value, wide, Lettered.SmallestMm)));
            if (free is Spot shift)
            {
                all.Add(new Entity.Label(at, mark) { Role = Role.Text, Across = Across.Middle, Along = Along.Middle, ShiftMm = shift, Source = member.Id });
            }
        }

        if (HasPiers(house.House.Frame) && grid.BayMm > 24)
        {
            Spot first = grid.At(grid.BayMm * mm, 0);
            double out_ = radius / mm;
            all.Add(new Entity.Polyline([first + 0.7071 * radius * new Spot(-1, 1), first + (out_ + 6) * 0.7071 * mm * new Spot(-1, 1)]) { Role = Role.Dimension, Source = "detail" });
            all.AddRange(SheetMarks.Detail(first + (out_ + 11) * 0.7071 * mm * new Spot(-1, 1), "1", number, grid.Scale.MmPerM, true, "detail"));
        }

        return all;
    }

    private static IEnumerable<double> Posts(BuildingForm b, double xM) => b.Members
        .Where(m => m.Role == MemberRole.EndPost).Select(m => m.A - b.Origin).Where(p => Math.Abs(p.Dot(b.AlongX) - xM) < 0.05).Select(p => p.Dot(b.AlongY)).Order();

    private static List<Entity> Detail(PaperSource source, HouseResults house, DrawingScale scale, Box window, LengthStyle style)
    {
        FrameChoice frame = house.House.Frame;
        double mm = 1 / scale.MmPerM;
        double half = frame.PierDiameterM / 2;
        double deep = frame.PierDepthM;
        double steel = 0.5 * (house.Frame.Section(MemberRole.Column)?.DepthM ?? 0.1);
        double band = 4 * mm;
        string id = house.Form.Id + "/pier";
        List<Entity> all = [];
        foreach ((double from, double to) in new[] { (window.Left, -half), (half, window.Right) })
        {
            all.Add(new Entity.Hatch([[new(from, 0), new(to, 0), new(to, -band), new(from, -band)]], HatchPattern.Ground, 1.6) { Source = "ground" });
            all.Add(new Entity.Polyline([new(from, 0), new(to, 0)]) { Role = Role.Cut, Source = "ground" });
        }

        IReadOnlyList<Spot> pier = [new(-half, 0), new(-half, -deep), new(half, -deep), new(half, 0)];
        double foot = frame.FixedBase ? Math.Max(-0.75 * deep, -1.2) : 0;
        double head = window.Bottom - 3 * mm;
        Box column = new(-steel, foot, 2 * steel, head - foot);
        all.Add(new Entity.Hatch(frame.FixedBase ? [pier, new Box(-steel, foot, 2 * steel, -foot).Corners()] : [pier], HatchPattern.Concrete, 1.4) { Source = id });
        all.Add(new Entity.Polyline(pier, true) { Role = Role.Cut, Source = id });
        all.Add(new Entity.Polyline(column.Corners(), true) { Role = Role.Cut, Pen = new Pen(0.35, [], Paint.Of(Tone.Ink)), Source = house.Form.Id + "/column" });
        if (!frame.FixedBase)
        {
            double plate = Math.Min(half, 2 * steel);
            all.Add(new Entity.Polyline(new Box(-plate, 0, 2 * plate, 0.012).Corners(), true) { Role = Role.Cut, Source = house.Form.Id + "/base-plate" });
        }

        double frostM = source.Job.Site.Ground.FrostDepthM;
        if (frostM > 0 && frostM < deep + 0.12)
        {
            all.Add(new Entity.Polyline([new(half + 2 * mm, -frostM), new(half + 34 * mm, -frostM)]) { Role = Role.Hidden, Source = "frost" });
            all.Add(new Entity.Label(new(half + 4 * mm, -frostM), $"frost {LengthText.Of(frostM, style)}") { Role = Role.Text, ShiftMm = new(0, -1), Source = "frost" });
        }

        all.Add(new Entity.Dimensions(new(-half, -deep), new(0, 1), [0, deep], 8, style) { Source = id });
        string section = house.Frame.Section(MemberRole.Column)?.Section ?? "column";
        all.Add(new Entity.Leader(new(steel, head - 5 * mm), new(6, 0), frame.FixedBase ? $"{section}\ncast in: base\ntaken as fixed" : $"{section}\non a base plate; plate\nand anchors not\ndesigned"));

        all.Add(new Entity.Label(new(-half, 0), $"F1  Ø {LengthText.Of(2 * half, style)}") { Role = Role.Text, Along = Along.End, ShiftMm = new(-2, -2.5), Source = id });
        return all;
    }

    private static Table Piers(PaperSource source, HouseResults house, LengthStyle style)
    {
        UnitSystem units = source.Job.Units;
        FrameChoice frame = house.House.Frame;
        string Concrete(int count)
        {
            (double quantity, string per) = Measure.Of(Math.PI / 4 * frame.PierDiameterM * frame.PierDiameterM * frame.PierDepthM * count, "m³", units);
            return string.Create(CultureInfo.InvariantCulture, $"{quantity:0.00} {per}");
        }

        IReadOnlyList<string> Row(string mark, string under, int count) =>
        [
            mark, under, count.ToString(CultureInfo.InvariantCulture), HasPiers(frame) ? LengthText.Of(frame.PierDiameterM, style) : "not given",
            HasPiers(frame) ? LengthText.Of(frame.PierDepthM, style) : "not given", HasPiers(frame) ? Concrete(count) : "–",
        ];
        return new Table(
            [new("Mark", 16), new("Under", 74), new("Count", 18, Along.End), new("Diameter", 30, Along.End), new("Depth", 30, Along.End), new("Concrete, all", 34, Along.End)],
            [
                Row("F1", frame.FixedBase ? "columns, cast in (base fixed)" : "columns, on base plates (base pinned)", Count(source, house, "F1")),
                Row("F2", "end-wall posts", Count(source, house, "F2")),
                .. Count(source, house, "F3") is int jambs and > 0 ? (IReadOnlyList<string>[])[Row("F3", "jambs of openings", jambs)] : [],
            ]);
    }

    internal static Table Reactions(HouseResults house, UnitSystem units)
    {
        Said said = new(units);
        string Force(double forceN) => forceN > 0 ? said.Text(forceN, Unit.Newton) : "none";
        Figure? gravity = house.Frame.Report.Figures.FirstOrDefault(f => f.Id == house.Form.Id + "/frame/thrust");
        return new Table(
            [
                new("Base", 22), new("Gravity, down", 36, Along.End), new("Wind, uplift", 36, Along.End), new("Gravity, outward", 36, Along.End), new("All, horizontal", 36, Along.End), new("All, moment", 36, Along.End),
            ],
            [
                .. house.Frame.Reactions.Select(r => (IReadOnlyList<string>)
                [
                    r.Side == FaceName.Left ? "L, left" : "R, right", Force(r.DownN), Force(r.UpN), gravity is null ? "–" : Force(gravity.Value), Force(r.ThrustN),
                    r.MomentNm > 0 ? said.Text(r.MomentNm, Unit.NewtonMetre) : "none",
                ]),
            ]);
    }

    private static IEnumerable<string> Notes(HouseResults house, Job job, LengthStyle style)
    {
        StageReport report = style == LengthStyle.FeetInches ? house.Frame.Report : SiWords.Of(house.Frame.Report);
        foreach (Finding f in report.Findings.Where(f => f.Code is "frame/uplift" or "frame/pier-depth"))
        {
            yield return f.What;
        }

        yield return "Interior frames are analysed; bases of end frames, end posts and jambs are not. Piers that meet are dug as one. Not checked: " + string.Join("; ", house.Frame.NotChecked.Select(t => t.Split(':')[0].TrimEnd('.').ToLowerInvariant())) + ".";
        yield return $"Soil: {(job.Site.Ground.Soil.Length > 0 ? job.Site.Ground.Soil : "not given")}; {(job.Site.Ground.FrostDepthM > 0 ? "frost " + SheetStyle.Length(job.Site.Ground.FrostDepthM, style) : "no frost")}. Anchor places to within {(style == LengthStyle.FeetInches ? "1/8\"" : "3 mm")} of the template (common practice).";
    }
}
