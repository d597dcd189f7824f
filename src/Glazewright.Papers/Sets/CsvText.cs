using System.Globalization;
using System.Text;

namespace Glazewright.Papers.Sets;

/// <summary>Writes comma-separated values (RFC 4180): UTF-8, LF line ends, quotes only where they are needed.</summary>
internal static class CsvText
{
    public static byte[] Bytes(IReadOnlyList<string> head, IEnumerable<IReadOnlyList<string>> rows)
    {
        StringBuilder text = new();
        Row(text, head);
        foreach (IReadOnlyList<string> row in rows)
        {
            Row(text, row);
        }

        return new UTF8Encoding(false).GetBytes(text.ToString());
    }

    public static string Number(double value, int decimals) =>
        Math.Round(value, decimals, MidpointRounding.AwayFromZero).ToString("0." + new string('#', decimals), CultureInfo.InvariantCulture);

    private static void Row(StringBuilder text, IReadOnlyList<string> cells)
    {
        for (int i = 0; i < cells.Count; i++)
        {
            text.Append(i == 0 ? "" : ",").Append(Cell(cells[i]));
        }

        text.Append('\n');
    }

    private static string Cell(string cell)
    {
        // A spreadsheet takes a cell that begins so for a formula; an apostrophe keeps it text.
        string safe = cell.Length > 0 && cell[0] is '=' or '+' or '@' ? "'" + cell : cell;
        return safe.AsSpan().IndexOfAny(',', '"', '\n') >= 0 || safe.Contains('\r', StringComparison.Ordinal)
            ? "\"" + safe.Replace("\"", "\"\"", StringComparison.Ordinal) + "\""
            : safe;
    }
}
