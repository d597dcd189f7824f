namespace Glazewright.Papers.Drawing;

/// <summary>A paper size, lying or standing.</summary>
/// <param name="Name">Its common name.</param>
/// <param name="WidthMm">Width, mm.</param>
/// <param name="HeightMm">Height, mm.</param>
/// <remarks>Sizes: ASME Y14.1 (ANSI B 11 × 17 in, D 22 × 34 in) and ISO 216, from memory.</remarks>
public sealed record SheetSize(string Name, double WidthMm, double HeightMm)
{
    /// <summary>ANSI B lying, 17 × 11 in.</summary>
    public static SheetSize AnsiB { get; } = new("ANSI B", 431.8, 279.4);

    /// <summary>ANSI D lying, 34 × 22 in.</summary>
    public static SheetSize AnsiD { get; } = new("ANSI D", 863.6, 558.8);

    /// <summary>ISO A3 lying.</summary>
    public static SheetSize A3 { get; } = new("A3", 420, 297);

    /// <summary>ISO A1 lying.</summary>
    public static SheetSize A1 { get; } = new("A1", 841, 594);

    /// <summary>US Letter standing, 8.5 × 11 in.</summary>
    public static SheetSize Letter { get; } = new("Letter", 215.9, 279.4);

    /// <summary>ISO A4 standing.</summary>
    public static SheetSize A4 { get; } = new("A4", 210, 297);
}

/// <summary>A drawing scale: one unit on paper stands for <paramref name="Denominator"/> in the model.</summary>
/// <param name="Denominator">1:n, n greater than 0.</param>
/// <param name="Text">How the drawing says it.</param>
public sealed record DrawingScale(double Denominator, string Text)
{
    private static readonly DrawingScale[] FeetScales =
    [
        new(4, "3\" = 1'-0\""), new(8, "1 1/2\" = 1'-0\""), new(12, "1\" = 1'-0\""), new(16, "3/4\" = 1'-0\""), new(24, "1/2\" = 1'-0\""), new(32, "3/8\" = 1'-0\""),
        new(48, "1/4\" = 1'-0\""), new(64, "3/16\" = 1'-0\""), new(96, "1/8\" = 1'-0\""), new(128, "3/32\" = 1'-0\""),
        new(192, "1/16\" = 1'-0\""), new(240, "1\" = 20'"), new(360, "1\" = 30'"), new(480, "1\" = 40'"),
        new(600, "1\" = 50'"), new(720, "1\" = 60'"), new(1200, "1\" = 100'"), new(2400, "1\" = 200'"),
        new(6000, "1\" = 500'"), new(12000, "1\" = 1000'"),
    ];

    private static readonly DrawingScale[] MetricScales =
    [
        new(5, "1:5"), new(10, "1:10"), new(20, "1:20"), new(25, "1:25"), new(50, "1:50"), new(75, "1:75"), new(100, "1:100"),
        new(150, "1:150"), new(200, "1:200"), new(250, "1:250"), new(500, "1:500"), new(1000, "1:1000"),
        new(2000, "1:2000"), new(5000, "1:5000"), new(10000, "1:10 000"),
    ];

    /// <summary>Millimetres on paper for one metre.</summary>
    public double MmPerM => 1000 / Denominator;

    /// <summary>The largest usual scale at which a window fits into the room on paper.</summary>
    /// <param name="widthM">Width of the window, m.</param>
    /// <param name="heightM">Height of the window, m.</param>
    /// <param name="roomWidthMm">Room on paper, mm.</param>
    /// <param name="roomHeightMm">Room on paper, mm.</param>
    /// <param name="style">Feet or metric scales.</param>
    /// <returns>The smallest scale there is when nothing fits: the window will be cut off.</returns>
    public static DrawingScale Choose(double widthM, double heightM, double roomWidthMm, double roomHeightMm, LengthStyle style) =>
        Largest(style, scale => widthM * scale.MmPerM <= roomWidthMm && heightM * scale.MmPerM <= roomHeightMm);

    /// <summary>The largest usual scale for which something holds; the smallest scale there is when it never does.</summary>
    /// <param name="style">Feet or metric scales.</param>
    /// <param name="fits">What must hold.</param>
    public static DrawingScale Largest(LengthStyle style, Func<DrawingScale, bool> fits)
    {
        ArgumentNullException.ThrowIfNull(fits);
        DrawingScale[] scales = style == LengthStyle.FeetInches ? FeetScales : MetricScales;
        return scales.FirstOrDefault(fits) ?? scales[^1];
    }
}
