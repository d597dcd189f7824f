using System.Globalization;
using System.Text;
using Glazewright.Papers.Drawing;

namespace Glazewright.Papers.Dxf;

/// <summary>A block: marks that come several times in the same shape, about their own lower left corner.</summary>
internal sealed record DxfBlock(string Name, IReadOnlyList<Mark> Marks);

/// <summary>A place where a block stands.</summary>
internal sealed record DxfPlaced(string Block, double X, double Y, string Layer);

/// <summary>
/// A sheet's views in drawing units at true size: x right, y up, the first view where the model has it and the others beside it; what repeats is made a block.
/// </summary>
/// <param name="Marks">Marks in drawing units; lengths on paper are those of their view's scale.</param>
/// <param name="Blocks">Blocks.</param>
/// <param name="Placed">Where they stand.</param>
internal sealed record DxfScene(IReadOnlyList<(Mark Mark, double UnitsPerMm)> Marks, IReadOnlyList<(DxfBlock Block, double UnitsPerMm)> Blocks, IReadOnlyList<DxfPlaced> Placed)
{
    /// <summary>Room between views, share of the wider one.</summary>
    private const double GapShare = 0.15;

    /// <summary>Lays the views out.</summary>
    /// <param name="sheet">A sheet with views.</param>
    /// <param name="unitsPerM">Drawing units in a metre.</param>
    public static DxfScene Of(Sheet sheet, double unitsPerM)
    {
        List<(Mark, double)> marks = [];
        List<(DxfBlock, double)> blocks = [];
        List<DxfPlaced> placed = [];
        double right = 0;
        for (int v = 0; v < sheet.Views.Count; v++)
        {
            View view = sheet.Views[v];
            double unitsPerMm = unitsPerM / view.Scale.MmPerM;
            double shiftX = v == 0 ? 0 : right + (GapShare * view.WindowM.Width * unitsPerM) - (view.WindowM.Left * unitsPerM);
            MarkGroup group = Plot.Of(sheet with { Views = [view], OnPaper = [], Insets = [] }).Groups[0];
            List<Mark> inView =
            [
                .. group.Marks.Where(m => Seen(m, group.ClipMm!.Value)).Select(m => ToModel(m, view, unitsPerM, shiftX)),
                new Mark.Words(
                    new Spot((view.WindowM.Left * unitsPerM) + shiftX, (view.WindowM.Top * unitsPerM) - (8 * unitsPerMm)), view.Title, Fonts.Face.SemiBold, 3.5 * unitsPerMm, 0,
                    Paint.Of(Tone.Ink), Role.Text, "text", ""),
            ];
            right = ((view.WindowM.Left + view.WindowM.Width) * unitsPerM) + shiftX;
            string before = string.Create(CultureInfo.InvariantCulture, $"{sheet.Id}-{v + 1}");
            Repeats(inView, before, unitsPerMm, marks, blocks, placed);
        }

        return new DxfScene(marks, blocks, placed);
    }

    // Parts drawn alike, named by their paths, become one block in several places.
    private static void Repeats(
        List<Mark> inView, string before, double unitsPerMm, List<(Mark, double)> marks, List<(DxfBlock, double)> blocks, List<DxfPlaced> placed)
    {
        var parts = inView.Select((m, i) => (Mark: m, Index: i)).Where(p => p.Mark.Source.Length > 0).GroupBy(p => p.Mark.Source)
            .Select(g =>
            {
                Mark[] own = [.. g.Select(p => p.Mark)];
                Spot corner = Corner(own);
                return (Marks: own, Indices: g.Select(p => p.Index).ToArray(), Corner: corner, Shape: Shape(own, corner));
            })
            .GroupBy(p => p.Shape).Where(g => g.Count() >= 2).ToArray();
        HashSet<int> taken = [];
        foreach (var alike in parts)
        {
            string name = string.Create(CultureInfo.InvariantCulture, $"PART-{before}-{blocks.Count + 1:000}");
            var first = alike.First();
            blocks.Add((new DxfBlock(name, [.. first.Marks.Select(m => Moved(m, new Spot(-first.Corner.X, -first.Corner.Y)))]), unitsPerMm));
            foreach (var one in alike)
            {
                placed.Add(new DxfPlaced(name, one.Corner.X, one.Corner.Y, one.Marks[0].Layer));
                taken.UnionWith(one.Indices);
            }
        }

        marks.AddRange(inView.Where((_, i) => !taken.Contains(i)).Select(m => (m, unitsPerMm)));
    }

    private static Mark ToModel(Mark mark, View view, double unitsPerM, double shiftX)
    {
        double unitsPerMm = unitsPerM / view.Scale.MmPerM;
        double bottomMm = view.AtMm.Y + (view.WindowM.Height * view.Scale.MmPerM);
        return mark switch
        {
            Mark.Lines l => l with { Points = [.. l.Points.Select(At)] },
            Mark.Curve c => c with { Centre = At(c.Centre), RadiusMm = c.RadiusMm * unitsPerMm },
            Mark.Area a => a with { Rings = [.. a.Rings.Select(r => (IReadOnlyList<Spot>)[.. r.Select(At)])] },
            Mark.Words w => w with { Start = At(w.Start), CapHeightMm = w.CapHeightMm * unitsPerMm },
            _ => throw new InvalidOperationException("Marks are a closed set."),
        };

        Spot At(Spot p) => new(
            ((p.X - view.AtMm.X) * unitsPerMm) + (view.WindowM.Left * unitsPerM) + shiftX,
            ((bottomMm - p.Y) * unitsPerMm) + (view.WindowM.Top * unitsPerM));
    }

    private static bool Seen(Mark mark, Box window) => Points(mark).Any(p =>
        p.X >= window.Left - 1e-6 && p.X <= window.Right + 1e-6 && p.Y >= window.Top - 1e-6 && p.Y <= window.Bottom + 1e-6)
        || mark is Mark.Lines or Mark.Area;

    private static Spot Corner(IReadOnlyList<Mark> marks)
    {
        Spot[] all = [.. marks.SelectMany(Points)];
        return new Spot(all.Min(p => p.X), all.Min(p => p.Y));
    }

    /// <summary>Points that a mark is known by.</summary>
    internal static IEnumerable<Spot> Points(Mark mark) => mark switch
    {
        Mark.Lines l => l.Points,
        Mark.Curve c => [c.Centre],
        Mark.Area a => a.Rings.SelectMany(r => r),
        Mark.Words w => [w.Start],
        _ => [],
    };

    private static Mark Moved(Mark mark, Spot by) => mark switch
    {
        Mark.Lines l => l with { Points = [.. l.Points.Select(p => p + by)] },
        Mark.Curve c => c with { Centre = c.Centre + by },
        Mark.Area a => a with { Rings = [.. a.Rings.Select(r => (IReadOnlyList<Spot>)[.. r.Select(p => p + by)])] },
        Mark.Words w => w with { Start = w.Start + by },
        _ => mark,
    };

    // What is drawn, but not where: parts with the same words here are alike.
    private static string Shape(IReadOnlyList<Mark> marks, Spot corner)
    {
        StringBuilder shape = new();
        foreach (Mark mark in marks)
        {
            shape.Append(mark.GetType().Name).Append(mark.Layer).Append(mark.Role);
            switch (mark)
            {
                case Mark.Lines l:
                    shape.Append(l.Closed);
                    break;
                case Mark.Curve c:
                    shape.Append(CultureInfo.InvariantCulture, $"{c.RadiusMm:0.0000} {c.StartDeg:0.00} {c.SweepDeg:0.00}");
                    break;
                case Mark.Words w:
                    shape.Append(w.Text).Append(CultureInfo.InvariantCulture, $"{w.CapHeightMm:0.000} {w.AngleDeg:0.0}");
                    break;
                case Mark.Area a:
                    shape.Append(a.Paint);
                    break;
            }

            foreach (Spot p in Points(mark))
            {
                shape.Append(CultureInfo.InvariantCulture, $"({p.X - corner.X:0.000},{p.Y - corner.Y:0.000})");
            }
        }

        return shape.ToString();
    }
}
