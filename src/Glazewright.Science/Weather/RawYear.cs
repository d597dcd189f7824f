namespace Glazewright.Science.Weather;

/// <summary>What a reader has gathered, before holes are looked at. NaN is missing.</summary>
internal sealed class RawYear
{
    public const int DryBulb = 0;
    public const int DewPoint = 1;
    public const int Rh = 2;
    public const int Pressure = 3;
    public const int Infrared = 4;
    public const int Ghi = 5;
    public const int Dni = 6;
    public const int Dhi = 7;
    public const int WindFrom = 8;
    public const int Wind = 9;
    public const int Opaque = 10;
    public const int Snow = 11;

    public RawYear()
    {
        foreach (double[] column in Columns)
        {
            Array.Fill(column, double.NaN);
        }
    }

    /// <summary>Columns in the order of the constants, in the units of EPW (snow in cm).</summary>
    public double[][] Columns { get; } = [.. Enumerable.Range(0, 12).Select(_ => new double[CommonYear.Hours])];

    /// <summary>1-based comma field of each column in the file; 0 when it has none.</summary>
    public int[] FileColumn { get; } = new int[12];

    /// <summary>Unit that the format states pressure in, Pa; the column itself holds Pa.</summary>
    public double PressureUnitPa { get; init; } = 1;

    /// <summary>Rain; unknown until a record says.</summary>
    public RainRecord Rain { get; } = new();

    /// <summary>File line of each hour.</summary>
    public int[] Line { get; } = new int[CommonYear.Hours];
}
