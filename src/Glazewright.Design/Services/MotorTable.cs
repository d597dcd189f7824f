namespace Glazewright.Design.Services;

/// <summary>Full-load currents by which conductors and protection of motors are sized; the nameplate sets the overload only.</summary>
/// <remarks>NEC tables 430.248 (single-phase) and 430.250 (three-phase), read at second hand in two reprints that agree. Between standard sizes the next larger one counts.</remarks>
public static class MotorTable
{
    /// <summary>Efficiency taken to find a small motor's size from the power it draws (common practice: 0.6 to 0.75).</summary>
    public const double Efficiency = 0.68;

    /// <summary>Service factor a fan or pump motor may run into (common practice).</summary>
    public const double ServiceFactor = 1.15;

    private const double HorsepowerW = 745.69987;

    private static readonly double[] Sizes = [1.0 / 6, 0.25, 1.0 / 3, 0.5, 0.75, 1, 1.5, 2, 3, 5, 7.5, 10];
    private static readonly double[] At115V = [4.4, 5.8, 7.2, 9.8, 13.8, 16, 20, 24, 34, 56, 80, 100];
    private static readonly double[] At208V = [2.4, 3.2, 4.0, 5.4, 7.6, 8.8, 11, 13.2, 18.7, 30.8, 44, 55];
    private static readonly double[] At230V = [2.2, 2.9, 3.6, 4.9, 6.9, 8, 10, 12, 17, 28, 40, 50];
    private static readonly double[] ThreeSizes = [0.5, 0.75, 1, 1.5, 2, 3, 5, 7.5, 10];
    private static readonly double[] ThreeAt208V = [2.4, 3.5, 4.6, 6.6, 7.5, 10.6, 16.7, 24.2, 30.8];
    private static readonly double[] ThreeAt230V = [2.2, 3.2, 4.2, 6.0, 6.8, 9.6, 15.2, 22, 28];
    private static readonly double[] ThreeAt460V = [1.1, 1.6, 2.1, 3.0, 3.4, 4.8, 7.6, 11, 14];

    /// <summary>The standard size a motor is taken to have.</summary>
    /// <param name="drawnW">Electric power it draws at work, W.</param>
    /// <param name="threePhase">Three-phase.</param>
    /// <returns>Horsepower; null below the smallest of the table by far (a twelfth of a horsepower) or above its largest.</returns>
    public static double? SizeHp(double drawnW, bool threePhase)
    {
        double shaftHp = drawnW * Efficiency / ServiceFactor / HorsepowerW;
        double[] sizes = threePhase ? ThreeSizes : Sizes;
        if (shaftHp < 1.0 / 12 || shaftHp > sizes[^1] + 1e-9)
        {
            return null;
        }

        return sizes.First(s => s >= shaftHp - 1e-9);
    }

    /// <summary>Full-load current by the table.</summary>
    /// <param name="sizeHp">A standard size.</param>
    /// <param name="voltageV">System voltage: 110 to 120 counts as 115, 200 to 208 as 208, 220 to 240 as 230, 440 to 480 as 460.</param>
    /// <param name="threePhase">Three-phase.</param>
    /// <returns>Current, A; null when the table has no such size or voltage.</returns>
    public static double? FullLoadA(double sizeHp, double voltageV, bool threePhase)
    {
        double[]? column = (threePhase, voltageV) switch
        {
            (false, >= 110 and <= 120) => At115V,
            (false, >= 200 and <= 208) => At208V,
            (false, >= 220 and <= 240) => At230V,
            (true, >= 200 and <= 208) => ThreeAt208V,
            (true, >= 220 and <= 240) => ThreeAt230V,
            (true, >= 440 and <= 480) => ThreeAt460V,
            _ => null,
        };
        int at = Array.FindIndex(threePhase ? ThreeSizes : Sizes, s => Math.Abs(s - sizeHp) < 1e-6);
        return column is null || at < 0 ? null : column[at];
    }
}
