using System.Globalization;
using Glazewright.Design.Body;
using Glazewright.Design.Form;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Sets;
using Glazewright.Papers.Solids;

namespace Glazewright.Papers.Sheets;

/// <summary>One frame of a house square on, its members at their depth with their shop marks, and the schedules of sections and pieces.</summary>
public static class TypicalFrame
{
    /// <summary>The sheet.</summary>
    /// <param name="source">What the papers are made from.</param>
    /// <param name="house">Which house.</param>
    /// <param name="number">Sheet number.</param>
    public static Sheet Draw(PaperSource source, HouseResults house, string number)
    {
        ArgumentNullException.ThrowIfNull(source);
        ArgumentNullException.ThrowIfNull(house);
        BuildingForm b = house.Form;
        string title = $"House {b.Id}: typical frame";
        SheetDraft draft = new(source, "frame-" + b.Id, title, number);
        Box room = draft.Room;
        Table sections = MemberSchedule.Sections(house, source.Job.Units, draft.Style);
        Table pieces = MemberSchedule.Lines(source, house, draft.Style, MemberSchedule.Frame);
        double stripMm = Math.Max(TableSetting.HeightMm(sections) + 24, Math.Min(TableSetting.HeightMm(pieces) + 8, 0.42 * room.Height));
        Box view = room with { Height = room.Height - stripMm };
        double belowM = house.House.Frame.PierDepthM;
        Box shown = new(0, 0, b.WidthM, b.Roof.RidgeM);
        int line = Typical(b);
        draft.Add(
            "frame", string.Create(CultureInfo.InvariantCulture, $"Typical frame of house {b.Id}, line {line + 1}, looking {Compass.Word(b.Face(FaceName.End1).AzimuthDeg)}"), view, shown, new Pad(46, 14, 46, 32),
            (scale, window) => Frame(source, house, line, scale, draft.Style, belowM));
        double y = view.Bottom + 3;
        double left = draft.Table("Sections", sections, new(room.Left, y));
        draft.Notes(
            [
                string.Create(CultureInfo.InvariantCulture, $"{b.FrameLinesXM.Count} frames. Members out to out on the frame's lines. Welds, bolts, gussets, knees, ridge and base connections are not designed."),
                "Steel sections by first analysis of one interior frame, for review.",
            ],
            new(room.Left, left), sections.WidthMm);
        draft.Table("Pieces of frames and end walls in this house", MemberSchedule.Cut(pieces, stripMm - 8), new(room.Left + sections.WidthMm + 10, y));
        return draft.Done($"Typical frame of {b.Name} with sections and pieces.", SheetStyle.Preliminary, "Not checked: " + (house.Frame.NotChecked.Count == 0 ? "nothing is claimed." : string.Join("; ", house.Frame.NotChecked.Select(t => t.Split(':')[0].TrimEnd('.').ToLowerInvariant())) + "."));
    }

    /// <summary>The frame line nearest the middle, from 0.</summary>
    internal static int Typical(BuildingForm b) => (b.FrameLinesXM.Count - 1) / 2;

    private static List<Entity> Frame(PaperSource source, HouseResults house, int line, DrawingScale scale, LengthStyle style, double pierM)
    {
        BuildingForm b = house.Form;
        double mm = 1 / scale.MmPerM;
        List<Entity> all = [];
        double half = house.House.Frame.PierDiameterM / 2;
        foreach (double y in (double[])[0, b.WidthM])
        {
            double deep = Math.Min(pierM, 14 * mm);
            if (half > 0 && pierM > 0)
            {
                all.Add(new Entity.Polyline([new(y - half, -deep), new(y - half, 0), new(y + half, 0), new(y + half, -deep)]) { Role = Role.Hidden, Source = b.Id + "/pier" });
            }

            all.Add(new Entity.Polyline([new(y, -22 * mm), new(y, 6 * mm)]) { Role = Role.Centre, Source = b.Id + "/grid" });
            all.AddRange(SheetMarks.Bubble(new(y, -(22 + SheetMarks.BubbleMm) * mm), y == 0 ? "L" : "R", scale.MmPerM, b.Id + "/grid"));
        }

        all.Add(new Entity.Polyline([new(-24 * mm, 0), new(b.WidthM + 9 * mm, 0)]) { Role = Role.Cut, Source = "ground" });
        MarkFinder finder = new(source.Takeoff.Marks);
        string prefix = FormattableString.Invariant($"{b.Id}/frame-{line + 1:00}/");
        double rafterM = source.Body.Members.FirstOrDefault(m => m.Line.Id.StartsWith(prefix, StringComparison.Ordinal) && m.Line.Role == MemberRole.Rafter)?.DepthM ?? 0;
        foreach (MemberSolid m in source.Body.Members.Where(m => m.Line.Id.StartsWith(prefix, StringComparison.Ordinal)).OrderBy(m => m.Line.Role == MemberRole.CollarTie ? 0 : 1))
        {
            Spot from = new((m.Line.A - b.Origin).Dot(b.AlongY), m.Line.A.ZM - b.Origin.ZM);
            Spot to = new((m.Line.B - b.Origin).Dot(b.AlongY), m.Line.B.ZM - b.Origin.ZM);
            bool isRight = m.Line.Id.EndsWith("right", StringComparison.Ordinal);
            bool tie = m.Line.Role == MemberRole.CollarTie;
            IReadOnlyList<Spot> band = FrameEnds.Ring(b, m.Line.Role, from, to, m.DepthM, rafterM, isRight);
            all.Add(new Entity.Fill([band], Paint.Of(Tone.Wash)) { Role = Role.Fill, Source = m.Line.Id });
            all.Add(new Entity.Polyline(band, true) { Role = Role.Visible, Source = m.Line.Id });
            string mark = finder.Of(m);
            if (mark.Length > 0)
            {
                // Rafters' marks stand over the roof near the eave, the others inside.
                bool rafter = m.Line.Role == MemberRole.Rafter;
                Spot along = from + (rafter ? 0.25 : tie ? 0.6 : 0.5) * (to - from);
                Spot tip = rafter ? along : along + (tie ? 0.5 : 1) * m.DepthM * (tie ? new Spot(0, -1) : new Spot(isRight ? -1 : 1, 0));
                Spot toMm = rafter ? new(isRight ? 5 : -5, -5) : tie ? new(3, 5) : new(isRight ? -6 : 6, 0);
                all.Add(new Entity.Leader(tip, toMm, mark) { Source = m.Line.Id });
            }
        }

        all.Add(new Entity.Dimensions(new(0, 0), new(1, 0), [0, b.Roof.RidgeOffsetM, b.WidthM], -12, style) { Source = b.Id + "/ridge" });
        all.Add(new Entity.Dimensions(new(0, 0), new(1, 0), [0, b.WidthM], -18.5, style) { Source = b.Id + "/width" });
        all.AddRange(RunningDimensions.Beside([0, b.Roof.RightEaveM, b.Roof.RidgeM, .. b.Members.Where(m => m.Role == MemberRole.CollarTie).Take(1).Select(m => m.A.ZM - b.Origin.ZM)], b.WidthM + 10 * mm, scale.MmPerM, style, b.Id + "/levels"));
        if (Math.Abs(b.Roof.LeftEaveM - b.Roof.RightEaveM) > 0.003)
        {
            all.Add(new Entity.Level(new(-22 * mm, b.Roof.LeftEaveM), LengthText.Level(b.Roof.LeftEaveM, style), true) { Source = b.Id + "/left-eave" });
        }

        foreach ((Spot eave, double pitch, bool right) in new[] { (new Spot(0, b.Roof.LeftEaveM), b.Roof.LeftPitch, false), (new Spot(b.WidthM, b.Roof.RightEaveM), b.Roof.RightPitch, true) })
        {
            Spot middle = eave + 0.65 * (new Spot(b.Roof.RidgeOffsetM, b.Roof.RidgeM) - eave);
            all.Add(new Entity.Label(middle, SheetStyle.Pitch(pitch, style)) { Role = Role.Text, Along = right ? Along.Start : Along.End, ShiftMm = new(right ? 4 : -4, -4), Source = b.Id + "/pitch" });
        }

        return all;
    }
}
