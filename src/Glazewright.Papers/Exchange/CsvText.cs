using System.Globalization;
using System.Text;

namespace Glazewright.Papers.Exchange;

/// <summary>Builds one comma-separated table (RFC 4180, UTF-8, line feed): a header and rows of the same width.</summary>
/// <remarks>Text that a spreadsheet would run as a formula (it begins with = + − @) gets an apostrophe before it.</remarks>
public sealed class CsvText
{
    private readonly StringBuilder _text = new();
    private readonly int _columns;
    private int _at;

    /// <summary>A table with its header.</summary>
    /// <param name="columns">Column names.</param>
    public CsvText(params ReadOnlySpan<string> columns)
    {
        _columns = columns.Length;
        foreach (string column in columns)
        {
            Cell(column);
        }

        End();
    }

    /// <summary>A text cell.</summary>
    /// <param name="text">Any text.</param>
    /// <returns>This table.</returns>
    public CsvText Cell(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        string safe = text.Length > 0 && text[0] is '=' or '+' or '-' or '@' or '\t' or '\r' ? "'" + text : text;
        return Raw(safe.AsSpan().IndexOfAny(",\"\n\r") >= 0 ? "\"" + safe.Replace("\"", "\"\"", StringComparison.Ordinal) + "\"" : safe);
    }

    /// <summary>A number cell.</summary>
    /// <param name="value">Finite value.</param>
    /// <param name="decimals">Digits after the point, 0 to 6.</param>
    /// <returns>This table.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not finite.</exception>
    public CsvText Cell(double value, int decimals)
    {
        if (!double.IsFinite(value))
        {
            throw new ArgumentOutOfRangeException(nameof(value), value, "A table holds numbers only.");
        }

        return Raw((Math.Round(value, decimals, MidpointRounding.AwayFromZero) + 0.0).ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture));
    }

    /// <summary>A whole-number cell.</summary>
    /// <param name="value">Value.</param>
    /// <returns>This table.</returns>
    public CsvText Cell(int value) => Raw(value.ToString(CultureInfo.InvariantCulture));

    /// <summary>Ends the row.</summary>
    /// <returns>This table.</returns>
    /// <exception cref="InvalidOperationException">The row is not as wide as the header.</exception>
    public CsvText End()
    {
        if (_at != _columns)
        {
            throw new InvalidOperationException($"A row of {_at} cells under {_columns} columns.");
        }

        _text.Append('\n');
        _at = 0;
        return this;
    }

    /// <summary>The table's text.</summary>
    /// <returns>Header and rows.</returns>
    public override string ToString() => _text.ToString();

    private CsvText Raw(string cell)
    {
        _text.Append(_at > 0 ? "," : "").Append(cell);
        _at++;
        return this;
    }
}
