using Glazewright.Papers.Drawing;
using Glazewright.Papers.Fonts;
using PdfSharp.Drawing;
using PdfSharp.UniversalAccessibility;

namespace Glazewright.Papers.Pdf;

/// <summary>Lays the marks of pages through PDFsharp, keeping the fonts of one file.</summary>
/// <param name="structure">What tells a reader by ear which marks are heading, text or picture.</param>
internal sealed class PdfMarks(StructureBuilder structure)
{
    private readonly Dictionary<(Face Face, double CapHeightMm), XFont> fonts = [];

    public void Draw(XGraphics graphics, Page page)
    {
        IReadOnlyList<MarkGroup> groups = page.Groups;
        for (int i = 0; i < groups.Count;)
        {
            int next = i + 1;
            if (IsCell(groups[i]))
            {
                while (next < groups.Count && IsCell(groups[next]))
                {
                    next++;
                }

                DrawTable(graphics, page, i, next);
                i = next;
                continue;
            }

            while (next < groups.Count && groups[i].Spoken == Spoken.Picture && groups[next].Spoken == Spoken.Picture && groups[next].Words == groups[i].Words)
            {
                next++;
            }

            MarkGroup[] together = [.. groups.Skip(i).Take(next - i).Where(g => g.Marks.Count > 0)];
            i = next;
            if (together.Length == 0)
            {
                continue;
            }

            Begin(together[0], page);
            foreach (MarkGroup group in together)
            {
                Draw(graphics, group);
            }

            structure.End();
        }
    }

    private static bool IsCell(MarkGroup group) => group.Spoken is Spoken.Cell or Spoken.HeadCell;

    private void DrawTable(XGraphics graphics, Page page, int first, int end)
    {
        structure.BeginElement(PdfBlockLevelElementTag.Table);
        for (int i = first; i < end;)
        {
            string row = page.Groups[i].Words;
            structure.BeginElement(PdfBlockLevelElementTag.TableRow);
            for (; i < end && page.Groups[i].Words == row; i++)
            {
                structure.BeginElement(page.Groups[i].Spoken == Spoken.HeadCell ? PdfBlockLevelElementTag.TableHeaderCell : PdfBlockLevelElementTag.TableDataCell);
                Draw(graphics, page.Groups[i]);
                structure.End();
            }

            structure.End();
        }

        structure.End();
    }

    private void Begin(MarkGroup group, Page page)
    {
        switch (group.Spoken)
        {
            case Spoken.Picture:
                Box box = group.ClipMm ?? new Box(0, 0, page.WidthMm, page.HeightMm);
                structure.BeginElement(PdfIllustrationElementTag.Figure, Lettering.Drawable(group.Words), new XRect(Pt(box.Left), Pt(box.Top), Pt(box.Width), Pt(box.Height)));
                break;
            case Spoken.Furniture:
                structure.BeginArtifact();
                break;
            default:
                structure.BeginElement(group.Spoken switch
                {
                    Spoken.Heading1 => PdfBlockLevelElementTag.Heading1,
                    Spoken.Heading2 => PdfBlockLevelElementTag.Heading2,
                    Spoken.Heading3 => PdfBlockLevelElementTag.Heading3,
                    _ => PdfBlockLevelElementTag.Paragraph,
                });
                break;
        }
    }

    private void Draw(XGraphics graphics, MarkGroup group)
    {
        XGraphicsState? state = null;
        if (group.ClipMm is Box box)
        {
            state = graphics.Save();
            graphics.IntersectClip(new XRect(Pt(box.Left), Pt(box.Top), Pt(box.Width), Pt(box.Height)));
        }

        foreach (Mark mark in group.Marks)
        {
            Draw(graphics, mark);
        }

        if (state is not null)
        {
            graphics.Restore(state);
        }
    }

    private void Draw(XGraphics graphics, Mark mark)
    {
        switch (mark)
        {
            case Mark.Lines lines when lines.Points.Count < 2:
                break;
            case Mark.Lines { Closed: true } ring:
                graphics.DrawPolygon(PenOf(ring.Pen), Points(ring.Points));
                break;
            case Mark.Lines lines:
                graphics.DrawLines(PenOf(lines.Pen), Points(lines.Points));
                break;
            case Mark.Curve curve:
                XRect around = new(
                    Pt(curve.Centre.X - curve.RadiusMm), Pt(curve.Centre.Y - curve.RadiusMm), Pt(2 * curve.RadiusMm), Pt(2 * curve.RadiusMm));
                if (Math.Abs(curve.SweepDeg) >= 360)
                {
                    graphics.DrawEllipse(PenOf(curve.Pen), around);
                }
                else
                {
                    graphics.DrawArc(PenOf(curve.Pen), around, -curve.StartDeg, -curve.SweepDeg);
                }

                break;
            case Mark.Area area:
                XGraphicsPath path = new() { FillMode = XFillMode.Alternate };
                foreach (IReadOnlyList<Spot> ring in area.Rings)
                {
                    path.AddPolygon(Points(ring));
                }

                graphics.DrawPath(new XSolidBrush(Colour(area.Paint, area.OpacityFraction)), path);
                break;
            case Mark.Words words:
                Letter(graphics, words);
                break;
            default:
                throw new InvalidOperationException("Marks are a closed set.");
        }
    }

    private void Letter(XGraphics graphics, Mark.Words words)
    {
        if (!fonts.TryGetValue((words.Face, words.CapHeightMm), out XFont? font))
        {
            font = PdfFonts.Font(words.Face, words.CapHeightMm);
            fonts.Add((words.Face, words.CapHeightMm), font);
        }

        XPoint start = Point(words.Start);
        XSolidBrush brush = new(Colour(words.Paint, 1));
        if (words.AngleDeg == 0)
        {
            graphics.DrawString(words.Text, font, brush, start);
            return;
        }

        XGraphicsState state = graphics.Save();
        graphics.RotateAtTransform(-words.AngleDeg, start);
        graphics.DrawString(words.Text, font, brush, start);
        graphics.Restore(state);
    }

    private static XPen PenOf(Pen pen)
    {
        XPen drawn = new(Colour(pen.Paint, 1), Pt(pen.WidthMm)) { LineJoin = XLineJoin.Round };
        if (pen.DashesMm.Count > 0)
        {
            // PDFsharp counts dashes in line widths.
            drawn.DashPattern = [.. pen.DashesMm.Select(d => d / pen.WidthMm)];
        }

        return drawn;
    }

    private static XColor Colour(Paint paint, double opacityFraction)
    {
        int rgb = paint.OnPaper();
        int alpha = (int)Math.Round(255 * Math.Clamp(opacityFraction, 0, 1));
        return XColor.FromArgb(alpha, (rgb >> 16) & 0xFF, (rgb >> 8) & 0xFF, rgb & 0xFF);
    }

    private static XPoint[] Points(IReadOnlyList<Spot> points) => [.. points.Select(Point)];

    private static XPoint Point(Spot p) => new(Pt(p.X), Pt(p.Y));

    private static double Pt(double mm) => mm * PdfBookWriter.PtPerMm;
}
