using System.Globalization;
using Glazewright.Design.Body;
using Glazewright.Design.Form;
using Glazewright.Design.Layout;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Fonts;
using Glazewright.Papers.Sets;
using Glazewright.Papers.Solids;

namespace Glazewright.Papers.Sheets;

/// <summary>The roof's framing from above: rafters, ridge, eaves, purlins and supposed bracing, each piece with its shop mark.</summary>
public static class FramingPlan
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
        string title = $"House {b.Id}: roof framing";
        SheetDraft draft = new(source, "framing-" + b.Id, title, number);
        Box room = draft.Room;
        Table marks = MemberSchedule.Lines(source, house, draft.Style, MemberSchedule.Along);
        string[] notes =
        [
            $"{b.FrameLinesXM.Count} frames, {SheetStyle.Length(b.LengthM / Math.Max(1, b.FrameLinesXM.Count - 1), draft.Style)} apart; rafters and columns as on the typical frame. Girts and columns stand on the wall sheets.",
            "Dashed crosses: bays supposed to be rod-braced, as the takeoff counts them; rods and their connections are not designed. Brace every frame as it stands: none stands alone in wind.",
        ];
        double tableMm = Math.Min(TableSetting.HeightMm(marks), 0.4 * room.Height) + 8;
        double stripMm = Math.Max(tableMm, SheetDraft.NotesMm(notes, room.Width - marks.WidthMm - 8) + 8);
        Box plan = room with { Height = room.Height - stripMm };
        HouseGrid grid = new(b, plan with { Height = plan.Height - SheetDraft.TitleMm }, draft.Style);
        draft.Add("framing", $"Roof framing of house {b.Id}{grid.Part}", plan, grid.Window, grid.Scale, (_, _) => Plan(source, house, grid, draft.Style));
        draft.North(new(room.Right - 10, plan.Bottom - 22), 6);
        draft.Table("Members along the house", MemberSchedule.Cut(marks, tableMm - 6), new(room.Left, plan.Bottom + 3));
        draft.Notes(notes, new(room.Left + marks.WidthMm + 8, plan.Bottom + 3), room.Width - marks.WidthMm - 8);
        return draft.Done(
            $"Roof framing of {b.Name}: {b.Members.Count(m => m.Role == MemberRole.Rafter)} rafters, {b.Members.Count(m => m.Role == MemberRole.Purlin)} purlins.", SheetStyle.Preliminary, "Connections, bracing and end walls are not designed.");
    }

    private static List<Entity> Plan(PaperSource source, HouseResults house, HouseGrid grid, LengthStyle style)
    {
        BuildingForm b = house.Form;
        double mm = 1 / grid.Scale.MmPerM;
        double bayM = grid.BayMm * mm;
        List<Entity> all = [.. grid.Lines([0, b.Roof.RidgeOffsetM, b.WidthM])];
        foreach ((FaceName wall, double eaveY) in new[] { (FaceName.Left, 0.0), (FaceName.Right, b.WidthM) })
        {
            foreach (Bay bay in BracedBays.On(b, wall).Where(bay => bay.ToM <= grid.EndM + 1e-6))
            {
                all.Add(new Entity.Polyline([grid.At(bay.FromM, eaveY), grid.At(bay.ToM, b.Roof.RidgeOffsetM)]) { Role = Role.Hidden, Source = b.Id + "/bracing" });
                all.Add(new Entity.Polyline([grid.At(bay.FromM, b.Roof.RidgeOffsetM), grid.At(bay.ToM, eaveY)]) { Role = Role.Hidden, Source = b.Id + "/bracing" });
            }
        }

        MarkFinder finder = new(source.Takeoff.Marks);
        List<(MemberSolid Member, double X, double Y, double X2, double Y2)> pieces = [];
        foreach (MemberSolid m in source.Body.Members.Where(m => m.House == b.Id && m.Line.Role is MemberRole.Rafter or MemberRole.Ridge or MemberRole.Eave or MemberRole.Purlin))
        {
            Point3 from = m.Line.A - b.Origin;
            Point3 to = m.Line.B - b.Origin;
            (double x, double x2) = (from.Dot(b.AlongX), to.Dot(b.AlongX));
            if (Math.Min(x, x2) <= grid.EndM + (m.Line.Role == MemberRole.Rafter ? 1e-6 : -1e-6))
            {
                pieces.Add((m, x, from.Dot(b.AlongY), Math.Min(x2, grid.EndM), to.Dot(b.AlongY)));
            }
        }

        foreach ((MemberSolid m, double x, double y, double x2, double y2) in pieces)
        {
            bool rafter = m.Line.Role == MemberRole.Rafter;
            all.Add(new Entity.Polyline([grid.At(x, y), grid.At(x2, y2)]) { Role = rafter ? Role.Visible : Role.Beyond, Pen = rafter ? new Pen(0.5, [], Paint.Of(Tone.Ink)) : new Pen(0.25, [], Paint.Of(Tone.Ink)), Source = m.Line.Id });
            if (!rafter && x2 < grid.EndM - 1e-6)
            {
                // A joint of two pieces: a short stroke across.
                all.Add(new Entity.Polyline([grid.At(x2 - 1.2 * mm, y2 - 0.8 * mm), grid.At(x2 - 1.2 * mm, y2 + 0.8 * mm)]) { Role = Role.Beyond, Source = m.Line.Id });
            }
        }

        // Rows that stand too close together keep every other's marks out.
        double[] rows = [.. pieces.Where(p => p.Member.Line.Role != MemberRole.Rafter).Select(p => Math.Round(p.Y, 4)).Distinct().Order()];
        List<double> lettered = [];
        foreach (double row in rows)
        {
            if (lettered.Count == 0 || (row - lettered[^1]) / mm > 4.4)
            {
                lettered.Add(row);
            }
        }

        foreach ((MemberSolid m, double x, double y, double x2, double y2) in pieces)
        {
            string mark = finder.Of(m);
            double wide = mark.Length == 0 ? 0 : Lettering.WidthMm(mark, Face.Regular, Lettered.SmallestMm);
            if (wide == 0)
            {
                continue;
            }

            if (m.Line.Role != MemberRole.Rafter)
            {
                if (grid.BayMm > wide + 4.5 && lettered.Exists(r => Math.Abs(r - y) < 1e-3) && x + bayM / 2 < x2)
                {
                    all.Add(Mark(grid.At(x + bayM / 2, y), mark, m.Line.Id));
                }

                continue;
            }

            // Beside its line, between the eave and the first purlin.
            double edge = Math.Min(y, y2) < 1e-6 ? 0 : b.WidthM;
            double next = rows.Where(r => Math.Abs(r - edge) > 0.01).OrderBy(r => Math.Abs(r - edge)).FirstOrDefault(edge);
            if (Math.Abs(next - edge) / mm > 5.5 && grid.BayMm > wide + 4)
            {
                bool last = x > b.LengthM - 1e-6;
                all.Add(Mark(grid.At(x, (edge + next) / 2), mark, m.Line.Id) with { Along = last ? Along.End : Along.Start, ShiftMm = new(last ? -1.2 : 1.2, 0) });
            }
        }

        return all;
    }

    private static Entity.Label Mark(Spot at, string text, string source) => new(at, text)
    {
        Role = Role.Text,
        Along = Along.Middle,
        Across = Across.Middle,
        Masked = true,
        Source = source,
    };
}
