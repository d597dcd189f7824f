using Glazewright.Papers.Fonts;

namespace Glazewright.Papers.Drawing;

/// <summary>Boils a sheet down to marks, which is all that a writer has to know.</summary>
public static class Plot
{
    /// <summary>The sheet as a page of marks.</summary>
    /// <exception cref="ArgumentException">A coordinate is not a number, or lettering is smaller than allowed.</exception>
    public static Page Of(Sheet sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        List<MarkGroup> groups = [];
        foreach (View view in sheet.Views)
        {
            List<Mark> marks = [];
            Placement placement = Placement.Of(view);
            foreach (Entity entity in view.Entities)
            {
                Draw(entity, placement, marks);
            }

            groups.Add(new MarkGroup(view.Id, view.Title, view.OnSheetMm(), marks) { Spoken = Spoken.Picture, Words = Said(sheet) });
        }

        foreach (Inset inset in sheet.Insets)
        {
            groups.AddRange(Of(inset.Drawing).Groups.Select(g => g.Moved(inset.AtMm) with { Id = $"{inset.Drawing.Id}-{g.Id}", Spoken = Spoken.Picture, Words = Said(inset.Drawing) }));
        }

        groups.Add(new MarkGroup("paper", "", null, OnPaper(sheet.OnPaper)));
        foreach (MarkGroup group in groups)
        {
            RequireFinite(group);
        }

        return new Page(sheet.WidthMm, sheet.HeightMm, groups);
    }

    /// <summary>What is read in place of a drawing.</summary>
    public static string Said(Sheet sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        return sheet.Description.Length > 0 ? $"{sheet.Title}. {sheet.Description}" : sheet.Title;
    }

    /// <summary>Things drawn on paper, in mm, as marks.</summary>
    public static IReadOnlyList<Mark> OnPaper(IEnumerable<Entity> entities)
    {
        ArgumentNullException.ThrowIfNull(entities);
        List<Mark> marks = [];
        foreach (Entity entity in entities)
        {
            Draw(entity, Placement.OnSheet, marks);
        }

        return marks;
    }

    private static void Draw(Entity entity, Placement placement, List<Mark> marks)
    {
        string layer = entity.Layer ?? Pens.LayerOf(entity.Role);
        Pen pen = entity.Pen ?? Pens.Of(entity.Role);
        switch (entity)
        {
            case Entity.Polyline line:
                marks.Add(new Mark.Lines(placement.At(line.Points), line.Closed, pen, entity.Role, layer, entity.Source));
                break;
            case Entity.Arc arc:
                marks.Add(new Mark.Curve(
                    placement.At(arc.Centre), arc.Radius * placement.MmPerUnit, arc.StartDeg, arc.SweepDeg, pen, entity.Role, layer, entity.Source));
                break;
            case Entity.Fill fill:
                marks.Add(new Mark.Area(
                    [.. fill.Rings.Select(placement.At)], fill.Paint, fill.OpacityFraction, entity.Role, layer, entity.Source));
                break;
            case Entity.Hatch hatch:
                Pen hatchPen = entity.Pen ?? Pens.Of(Role.Hatch);
                foreach ((Spot a, Spot b) in HatchLines.Of([.. hatch.Rings.Select(placement.At)], hatch.Pattern, hatch.SpacingMm))
                {
                    marks.Add(new Mark.Lines([a, b], false, hatchPen, Role.Hatch, entity.Layer ?? "hatch", entity.Source));
                }

                break;
            case Entity.Label label:
                PlotLabel.Draw(label, placement.At(label.At) + label.ShiftMm, layer, marks);
                break;
            case Entity.Dimensions chain:
                PlotDimensions.Draw(chain, placement, marks);
                break;
            case Entity.Leader leader:
                PlotNotes.Leader(leader, placement.At(leader.Tip), marks);
                break;
            case Entity.Level level:
                PlotNotes.Level(level, placement.At(level.At), marks);
                break;
            default:
                throw new InvalidOperationException("Entities are a closed set.");
        }
    }

    private static void RequireFinite(MarkGroup group)
    {
        foreach (Mark mark in group.Marks)
        {
            bool finite = mark switch
            {
                Mark.Lines lines => lines.Points.All(IsFinite),
                Mark.Curve curve => IsFinite(curve.Centre) && double.IsFinite(curve.RadiusMm),
                Mark.Area area => area.Rings.All(r => r.All(IsFinite)),
                Mark.Words words => IsFinite(words.Start),
                _ => false,
            };
            if (!finite)
            {
                throw new ArgumentException($"{group.Id}: {mark.Source} {mark.Role} is drawn at a place that is not a number.");
            }
        }
    }

    private static bool IsFinite(Spot p) => double.IsFinite(p.X) && double.IsFinite(p.Y);
}

/// <summary>Lays one label: its anchor, its mask, its smallest size.</summary>
internal static class PlotLabel
{
    public static void Draw(Entity.Label label, Spot at, string layer, List<Mark> marks)
    {
        if (!(label.CapHeightMm >= Lettered.SmallestMm))
        {
            throw new ArgumentException($"Lettering of {label.CapHeightMm} mm is smaller than {Lettered.SmallestMm} mm: \"{label.Text}\".");
        }

        string text = Lettering.Drawable(label.Text);
        if (text.Length == 0)
        {
            return;
        }

        double widthMm = Lettering.WidthMm(text, label.Face, label.CapHeightMm);
        double back = label.Along switch { Along.Middle => widthMm / 2, Along.End => widthMm, _ => 0 };
        double down = label.Across switch { Across.Middle => label.CapHeightMm / 2, Across.Top => label.CapHeightMm, _ => 0 };
        double angle = label.AngleDeg * Math.PI / 180;
        Spot along = new(Math.Cos(angle), -Math.Sin(angle));
        Spot under = new(Math.Sin(angle), Math.Cos(angle));
        Spot start = at + -back * along + down * under;
        if (label.Masked)
        {
            double m = 0.6;
            Spot lowLeft = start + -m * along + m * under;
            Spot wide = (widthMm + 2 * m) * along;
            Spot tall = -(label.CapHeightMm + 2 * m) * under;
            marks.Add(new Mark.Area(
                [[lowLeft, lowLeft + wide, lowLeft + wide + tall, lowLeft + tall]], Paint.Of(Tone.Sheet), 1, Role.Text, layer, ""));
        }

        marks.Add(new Mark.Words(
            start, text, label.Face, label.CapHeightMm, label.AngleDeg, label.Paint, Role.Text, label.Layer ?? "text", label.Source));
    }
}
