using Glazewright.Design.Contracts;

namespace Glazewright.Design.Layout;

/// <summary>A double-wall (type B) gas vent straight up through the roof: what draws is the warm gas in it, no fan.</summary>
/// <param name="AcrossM">Middle of the pipe across the house, from the left wall, m.</param>
/// <param name="RoofM">Height of the roof there, m.</param>
/// <param name="OverRoofM">Cap above the roof there, m.</param>
/// <param name="RiseM">Cap above the heater's flue collar, m.</param>
/// <param name="CapacityW">Fuel input the pipe carries at that height by the table, W.</param>
/// <param name="DraftPa">Theoretical draft of warm gas of that height, Pa.</param>
/// <param name="FansPullPa">Pressure all exhaust fans pull the house below outside, Pa; zero without fans.</param>
/// <param name="AirPa">Pressure of the air at the site's elevation, Pa.</param>
public sealed record GravityVent(double AcrossM, double RoofM, double OverRoofM, double RiseM, double CapacityW, double DraftPa, double FansPullPa, double AirPa);

/// <summary>Sizes, heights and draft of gravity vents. The adopted code, the listing and a licensed fitter decide.</summary>
internal static class GravityRules
{
    /// <summary>Mean gas temperature in the vent behind a draft hood, K: about 300 °F (common practice), cooler than the 360 °F at the hood itself.</summary>
    public const double GasK = 273.15 + 150;

    /// <summary>Outside air the draft is told for, K: 10 °C, a wet spring night with heat and fans.</summary>
    public const double OutsideK = 273.15 + 10;

    /// <summary>Least rise of a gravity vent over the highest draft hood or flue collar: 5 ft.</summary>
    public const double LeastRiseM = 5 * FlueRules.FootM;

    /// <summary>From this height above the roof a pipe is braced or guyed (common practice).</summary>
    public const double BraceM = 5 * FlueRules.FootM;

    /// <summary>Vertical walls nearer than this take the vent 2 ft above what stands within 10 ft.</summary>
    public const double WallM = 8 * FlueRules.FootM;

    private const double KiloBtuPerHourW = 293.07107;
    private const double GasConstantAir = 287.05;
    private const double GravityMs2 = 9.80665;

    // Fuel input in kBtu/h of one draft-hood appliance on a straight vent (no lateral), rows by height in ft, columns by diameter 3 to 8 in.
    private static readonly double[] HeightsFt = [6, 8, 10, 15, 20];
    private static readonly double[] Inches = [3, 4, 5, 6, 7, 8];

    private static readonly double[][] MostKBtu =
    [
        [46, 86, 141, 205, 285, 370],
        [50, 94, 155, 235, 320, 415],
        [53, 100, 166, 255, 345, 450],
        [58, 112, 187, 285, 390, 525],
        [61, 119, 202, 307, 430, 575],
    ];

    // Roof pitch over 12 up to which the cap may stand so many feet above the roof.
    private static readonly (double Over12, double Feet)[] AboveRoof =
    [
        (6, 1), (7, 1.25), (8, 1.5), (9, 2), (10, 2.5), (11, 3.25), (12, 4), (14, 5), (16, 6), (18, 7), (20, 7.5), (21, 8),
    ];

    public static Source Table { get; } = new Source.Standard(
        "NFPA 54 / IFGC", "table 13.1(a) / 504.2(1), type B double-wall vent, single appliance, natural draft, no lateral", Source.Mark.ReadSecondHand);

    public static Source Roof { get; } = new Source.Standard(
        "NFPA 54 / IFGC", "height of listed caps above the roof by pitch; 5 ft above the draft hood; 8 ft from vertical walls", Source.Mark.ReadSecondHand);

    public static Source Draft { get; } = new Source.FirstPrinciples("weight of outside air less that of warm gas, ideal gas, gas taken as air");

    /// <summary>Input a straight vent carries, W, by straight lines between the table's heights; below its least height nothing.</summary>
    public static double CapacityW(int size, double riseM)
    {
        double feet = riseM / FlueRules.FootM + 1e-9;
        if (feet < HeightsFt[0])
        {
            return 0;
        }

        int row = Math.Min(HeightsFt.Count(h => h <= feet), HeightsFt.Length - 1);
        double share = Math.Min((feet - HeightsFt[row - 1]) / (HeightsFt[row] - HeightsFt[row - 1]), 1);
        return (MostKBtu[row - 1][size] + share * (MostKBtu[row][size] - MostKBtu[row - 1][size])) * KiloBtuPerHourW;
    }

    /// <summary>Smallest table diameter that carries an input, m, and what it carries, W; zero diameter beyond the table (8 in), then with what 8 in carries.</summary>
    public static (double DiameterM, double CapacityW) Pipe(double inputW, double riseM)
    {
        int size = Array.FindIndex([.. Inches.Select((_, i) => CapacityW(i, riseM))], c => c >= inputW);
        return size < 0 ? (0, CapacityW(Inches.Length - 1, riseM)) : (Inches[size] * 0.0254, CapacityW(size, riseM));
    }

    /// <summary>Least height of a listed cap above a roof of a pitch (rise over run), m; steeper than 21:12 by the last row.</summary>
    public static double AboveRoofM(double pitch)
    {
        int row = Array.FindIndex(AboveRoof, r => 12 * pitch <= r.Over12 + 1e-9);
        return AboveRoof[row < 0 ? ^1 : row].Feet * FlueRules.FootM;
    }

    /// <summary>Theoretical draft, Pa: g h p/R (1/T outside − 1/T gas).</summary>
    public static double DraftPa(double riseM, double pressurePa, double outsideK, double gasK) =>
        GravityMs2 * riseM * pressurePa / GasConstantAir * (1 / outsideK - 1 / gasK);
}
