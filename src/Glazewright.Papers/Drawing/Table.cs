using Glazewright.Papers.Fonts;

namespace Glazewright.Papers.Drawing;

/// <summary>One column of a table.</summary>
/// <param name="Head">Its heading.</param>
/// <param name="WidthMm">Its width, mm.</param>
/// <param name="Along">How its cells are set: numbers at the end, words at the start.</param>
public sealed record Column(string Head, double WidthMm, Along Along = Along.Start);

/// <summary>A table with a head; cells break into lines as they must.</summary>
/// <param name="Columns">The columns.</param>
/// <param name="Rows">The rows, a text for each column.</param>
public sealed record Table(IReadOnlyList<Column> Columns, IReadOnlyList<IReadOnlyList<string>> Rows)
{
    /// <summary>Height of capitals in cells, mm.</summary>
    public double CapHeightMm { get; init; } = Lettered.SmallestMm;

    /// <summary>Whole width, mm.</summary>
    public double WidthMm => Columns.Sum(c => c.WidthMm);
}

/// <summary>Sets tables as lines and labels, in mm.</summary>
public static class TableSetting
{
    private const double PadMm = 1.4;

    /// <summary>A row made ready: its cells in lines and its height.</summary>
    public sealed record SetRow(IReadOnlyList<IReadOnlyList<string>> CellLines, double HeightMm);

    /// <summary>The head row made ready.</summary>
    public static SetRow Head(Table table) => Set(table, [.. table.Columns.Select(c => c.Head)], Face.SemiBold);

    /// <summary>The body rows made ready.</summary>
    public static IReadOnlyList<SetRow> Body(Table table) => [.. table.Rows.Select(r => Set(table, r, Face.Regular))];

    /// <summary>The entities of a row at a place, in mm on paper.</summary>
    /// <param name="table">The table it belongs to.</param>
    /// <param name="row">The row.</param>
    /// <param name="isHead">Whether it is the head.</param>
    /// <param name="at">Its upper left corner, mm.</param>
    public static IEnumerable<Entity> Draw(Table table, SetRow row, bool isHead, Spot at) => Cells(table, row, isHead, at).SelectMany(c => c);

    /// <summary>A row at a place on paper, cell by cell; the line under it comes with the last.</summary>
    /// <param name="table">The table.</param>
    /// <param name="row">The row.</param>
    /// <param name="isHead">Whether it is the head.</param>
    /// <param name="at">Its upper left corner, mm.</param>
    public static IReadOnlyList<IReadOnlyList<Entity>> Cells(Table table, SetRow row, bool isHead, Spot at)
    {
        ArgumentNullException.ThrowIfNull(table);
        ArgumentNullException.ThrowIfNull(row);
        List<List<Entity>> cells = [];
        double x = at.X;
        for (int c = 0; c < table.Columns.Count; c++)
        {
            Column column = table.Columns[c];
            double textX = column.Along switch
            {
                Along.End => x + column.WidthMm - PadMm,
                Along.Middle => x + column.WidthMm / 2,
                _ => x + PadMm,
            };
            cells.Add([
                .. row.CellLines[c].Select((text, l) => new Entity.Label(new(textX, at.Y + PadMm + table.CapHeightMm + l * LineMm(table)), text, table.CapHeightMm)
                {
                    Role = Role.Text,
                    Along = column.Along,
                    Face = isHead ? Face.SemiBold : Face.Regular,
                }),
            ]);
            x += column.WidthMm;
        }

        double bottom = at.Y + row.HeightMm;
        cells[^1].Add(new Entity.Polyline([new(at.X, bottom), new(at.X + table.WidthMm, bottom)])
        {
            Role = Role.Frame,
            Pen = isHead ? Pens.Of(Role.Frame) : Pens.Of(Role.Grid),
        });
        return cells;
    }

    /// <summary>The whole table at a place on paper, with no page break.</summary>
    public static IReadOnlyList<Entity> DrawAll(Table table, Spot at)
    {
        SetRow head = Head(table);
        List<Entity> entities = [.. Draw(table, head, true, at)];
        double y = at.Y + head.HeightMm;
        foreach (SetRow row in Body(table))
        {
            entities.AddRange(Draw(table, row, false, new(at.X, y)));
            y += row.HeightMm;
        }

        return entities;
    }

    /// <summary>Height of the whole table, mm.</summary>
    public static double HeightMm(Table table) => Head(table).HeightMm + Body(table).Sum(r => r.HeightMm);

    /// <summary>Least width of each column that breaks no word of its head or its cells, mm.</summary>
    public static IReadOnlyList<double> LeastMm(Table table)
    {
        ArgumentNullException.ThrowIfNull(table);
        double Widest(string text, Face face) => Lettering.Drawable(text).Split(' ').Max(w => Lettering.WidthMm(w, face, table.CapHeightMm));
        return
        [
            .. table.Columns.Select((c, i) => 2 * PadMm + 0.01 + Math.Max(
                Widest(c.Head, Face.SemiBold), table.Rows.Where(r => i < r.Count).Select(r => Widest(r[i], Face.Regular)).DefaultIfEmpty(0).Max())),
        ];
    }

    private static double LineMm(Table table) => 1.6 * table.CapHeightMm;

    private static SetRow Set(Table table, IReadOnlyList<string> cells, Face face)
    {
        List<IReadOnlyList<string>> lines = [];
        for (int c = 0; c < table.Columns.Count; c++)
        {
            string text = c < cells.Count ? cells[c] : "";
            lines.Add(TextWrap.Lines(text, face, table.CapHeightMm, table.Columns[c].WidthMm - 2 * PadMm));
        }

        int most = lines.Max(l => l.Count);
        return new SetRow(lines, 2 * PadMm + table.CapHeightMm + (most - 1) * LineMm(table) + 0.4);
    }
}
