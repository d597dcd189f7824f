namespace Glazewright.Papers.Workbooks;

/// <summary>What a cell is, and so how it looks.</summary>
internal enum CellLook
{
    Text,
    Title,
    Note,
    Head,
    Count,
    Number,
    Hours,
    Money,
    Share,

    /// <summary>A number that the reader may change: blue on pale yellow, as estimators mark their inputs.</summary>
    Given,
    GivenMoney,
    GivenShare,
    Total,
    TotalMoney,
}

/// <summary>A cell: words, a number, or a formula with the value it has now.</summary>
/// <param name="Words">Text; null for a number.</param>
/// <param name="Value">The number, or a formula's value.</param>
/// <param name="Formula">Without the equals sign; null for none.</param>
/// <param name="Look">How it looks.</param>
internal readonly record struct BookCell(string? Words, double Value, string? Formula, CellLook Look)
{
    public static BookCell Empty { get; } = new("", 0, null, CellLook.Text);

    public static BookCell Text(string words, CellLook look = CellLook.Text) => new(words, 0, null, look);

    public static BookCell Of(double value, CellLook look = CellLook.Number) => new(null, value, null, look);

    public static BookCell Computed(string formula, double value, CellLook look) => new(null, value, formula, look);
}

/// <summary>One sheet of a workbook.</summary>
/// <param name="Name">On its tab.</param>
/// <param name="ColumnChars">Widths of the columns, in characters.</param>
/// <param name="FrozenRows">Rows that stay when scrolling.</param>
/// <param name="Rows">Top to bottom.</param>
internal sealed record BookSheet(string Name, IReadOnlyList<double> ColumnChars, int FrozenRows, IReadOnlyList<IReadOnlyList<BookCell>> Rows);
