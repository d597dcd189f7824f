using System.Globalization;

namespace Glazewright.Papers.Drawing;

/// <summary>Values behind a picture, cell by cell, so that one can point at them.</summary>
/// <param name="Name">What is shown there, where a drawing has several; may be empty.</param>
/// <param name="PlotMm">Where the cells lie on the drawing, mm.</param>
/// <param name="Columns">Cells along, from the left.</param>
/// <param name="Rows">Cells up, from the bottom.</param>
/// <param name="At">The value of a column and row; not-a-number for none.</param>
/// <param name="ColumnName">A column in words.</param>
/// <param name="RowName">A row in words; empty where there is only one.</param>
/// <param name="Unit">Unit behind the values, or empty.</param>
/// <param name="Decimals">Digits after the point.</param>
public sealed record ReadingGrid(
    string Name, Box PlotMm, int Columns, int Rows, Func<int, int, double> At, Func<int, string> ColumnName, Func<int, string> RowName, string Unit, int Decimals)
{
    /// <summary>What is told of a column and row where it is more than one value: all curves of a moment, a command with its reason. Null for the value with its unit.</summary>
    public Func<int, int, string>? Words { get; init; }

    /// <summary>What is told of a cell.</summary>
    /// <param name="column">From the left.</param>
    /// <param name="row">From the bottom.</param>
    public string Told(int column, int row)
    {
        if (Words is not null)
        {
            return Words(column, row);
        }

        double value = At(column, row);
        return double.IsNaN(value) ? "none" : Number(value, Decimals) + (Unit.Length > 0 ? " " + Unit : "");
    }

    /// <summary>A value with a minus sign as it is printed.</summary>
    /// <param name="value">A number.</param>
    /// <param name="decimals">Digits after the point.</param>
    public static string Number(double value, int decimals) => (Math.Round(value, decimals) + 0.0).ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture).Replace('-', '−');

    /// <summary>The grids of a drawing and of those laid on it, each where it lies there.</summary>
    /// <param name="sheet">The drawing.</param>
    public static IReadOnlyList<ReadingGrid> Of(Sheet sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        return
        [
            .. sheet.Readings,
            .. sheet.Insets.SelectMany(i => Of(i.Drawing).Select(g => g with
            {
                Name = g.Name.Length > 0 ? g.Name : i.Drawing.Title,
                PlotMm = g.PlotMm with { Left = g.PlotMm.Left + i.AtMm.X, Top = g.PlotMm.Top + i.AtMm.Y },
            })),
        ];
    }

    /// <summary>Cells of a plan or another picture without names of their own.</summary>
    /// <param name="name">What is shown there.</param>
    /// <param name="plotMm">Where the cells lie, mm.</param>
    /// <param name="columns">Cells along.</param>
    /// <param name="rows">Cells up.</param>
    /// <param name="values">Values, along fastest, first row at the bottom.</param>
    /// <param name="unit">Unit.</param>
    /// <param name="decimals">Digits after the point.</param>
    public static ReadingGrid Plain(string name, Box plotMm, int columns, int rows, IReadOnlyList<double> values, string unit, int decimals) => new(
        name, plotMm, columns, rows, (x, y) => values[y * columns + x],
        x => string.Create(CultureInfo.InvariantCulture, $"cell {x + 1} of {columns} from the left"), y => string.Create(CultureInfo.InvariantCulture, $"{y + 1} of {rows} from the bottom"), unit, decimals);

    /// <summary>The same with values in another unit.</summary>
    /// <param name="timesRatio">What values are multiplied by.</param>
    /// <param name="unit">The unit.</param>
    /// <param name="decimals">Digits after the point.</param>
    public ReadingGrid In(double timesRatio, string unit, int decimals) => this with { At = (x, y) => timesRatio * At(x, y), Unit = unit, Decimals = decimals };
}
