namespace Glazewright.Design.Calibration.Reading;

/// <summary>A delimited text as it stands: headings and cells. Quotes around a cell are taken off; a quoted separator stays in its cell.</summary>
internal sealed class LogTable
{
    private readonly Dictionary<string, int> _columns = new(StringComparer.Ordinal);
    private readonly List<string[]> _rows = [];

    /// <summary>Headings in order.</summary>
    public IReadOnlyList<string> Headings { get; private set; } = [];

    /// <summary>Number of rows under the headings.</summary>
    public int Count => _rows.Count;

    /// <summary>Reads a text.</summary>
    public static LogTable Parse(string text, char separator)
    {
        LogTable table = new();
        foreach (ReadOnlySpan<char> raw in text.AsSpan().TrimStart('\uFEFF').EnumerateLines())
        {
            if (raw.IsWhiteSpace())
            {
                continue;
            }

            string[] cells = Cells(raw, separator);
            if (table.Headings.Count == 0)
            {
                table.Headings = cells;
                for (int i = 0; i < cells.Length; i++)
                {
                    table._columns.TryAdd(cells[i], i);
                }
            }
            else
            {
                table._rows.Add(cells);
            }
        }

        return table;
    }

    /// <summary>Place of a column; −1 when it is not there.</summary>
    public int Find(string heading) => _columns.GetValueOrDefault(heading, -1);

    /// <summary>A cell; empty when the row is short.</summary>
    public string Cell(int row, int column) => column < _rows[row].Length ? _rows[row][column] : "";

    private static string[] Cells(ReadOnlySpan<char> line, char separator)
    {
        List<string> cells = [];
        int start = 0;
        bool quoted = false;
        for (int i = 0; i <= line.Length; i++)
        {
            if (i < line.Length && line[i] == '"')
            {
                quoted = !quoted;
            }
            else if (i == line.Length || (line[i] == separator && !quoted))
            {
                cells.Add(line[start..i].Trim().Trim('"').Trim().ToString());
                start = i + 1;
            }
        }

        return [.. cells];
    }
}
