using System.Globalization;
using System.Text;
using Glazewright.Papers.Drawing;

namespace Glazewright.Papers.Exchange;

/// <summary>One of our own CSV tables as a table for eyes: the same cells, headings in words.</summary>
internal static class CsvTable
{
    /// <summary>The table.</summary>
    /// <param name="csv">One of our own.</param>
    /// <param name="columns">Headings of the columns wanted, in their order; none for all.</param>
    public static Table Of(string csv, params string[] columns)
    {
        List<IReadOnlyList<string>> rows = [.. Rows(csv)];
        if (columns.Length > 0)
        {
            int[] places = [.. columns.Select(c => rows[0].ToList().IndexOf(c))];
            rows = [.. rows.Select(r => (IReadOnlyList<string>)[.. places.Select(p => r[p])])];
        }

        bool[] numbers = [.. rows[0].Select((_, c) => rows.Count > 1 && rows.Skip(1).All(r => r[c].Length == 0 || double.TryParse(r[c], NumberStyles.Float, CultureInfo.InvariantCulture, out double _)))];
        return new Table([.. rows[0].Select((h, c) => new Column(Words(h), 20, numbers[c] ? Along.End : Along.Start))], [.. rows.Skip(1)]);
    }

    /// <summary>The same table with columns of money said as money.</summary>
    /// <param name="table">One of our own.</param>
    /// <param name="heads">Headings of those columns, in words.</param>
    public static Table InMoney(this Table table, params string[] heads)
    {
        bool[] isMoney = [.. table.Columns.Select(c => heads.Contains(c.Head))];
        return new Table(table.Columns, [.. table.Rows.Select(r => (IReadOnlyList<string>)[.. r.Select((text, c) => isMoney[c] ? Money(text) : text)])]);
    }

    // To the cent, as the table has it: its rows are added up by eye.
    private static string Money(string number) =>
        decimal.TryParse(number, NumberStyles.Float, CultureInfo.InvariantCulture, out decimal amount) ? (amount < 0 ? "−$" : "$") + Math.Abs(amount).ToString("#,0.00", CultureInfo.InvariantCulture) : number;

    private static string Words(string head) => head.Length == 0 ? "" : char.ToUpperInvariant(head[0]) + head[1..].Replace('_', ' ');

    private static IEnumerable<IReadOnlyList<string>> Rows(string csv)
    {
        List<string> row = [];
        StringBuilder cell = new();
        bool quoted = false;
        for (int i = 0; i < csv.Length; i++)
        {
            char c = csv[i];
            if (quoted)
            {
                if (c != '"')
                {
                    cell.Append(c);
                }
                else if (i + 1 < csv.Length && csv[i + 1] == '"')
                {
                    cell.Append(csv[++i]);
                }
                else
                {
                    quoted = false;
                }
            }
            else if (c == '"')
            {
                quoted = true;
            }
            else if (c is ',' or '\n')
            {
                row.Add(cell.ToString().TrimEnd('\r'));
                cell.Clear();
                if (c == '\n')
                {
                    yield return row;
                    row = [];
                }
            }
            else
            {
                cell.Append(c);
            }
        }
    }
}
