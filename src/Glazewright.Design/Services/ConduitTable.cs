namespace Glazewright.Design.Services;

/// <summary>A conduit by its trade size.</summary>
/// <param name="Inches">Trade size, inches.</param>
/// <param name="DesignatorMm">Metric designator.</param>
/// <param name="AreaIn2">Inside area, square inches.</param>
internal sealed record ConduitSize(string Inches, int DesignatorMm, double AreaIn2);

/// <summary>What fits into a conduit: National Electrical Code, chapter 9.</summary>
/// <remarks>
/// Table 1 (53 % of the inside for one wire, 31 % for two, 40 % for more), table 5 (THHN and THWN-2) and table 4 for electrical metallic tubing read at second hand;
/// table 4 for rigid PVC schedule 40, which is taken here for its bore and because it does not rust, from memory.
/// </remarks>
internal static class ConduitTable
{
    /// <summary>Rigid PVC, schedule 40, smallest first.</summary>
    public static readonly ConduitSize[] Pvc40 =
    [
        new("1/2", 16, 0.285), new("3/4", 21, 0.508), new("1", 27, 0.832), new("1-1/4", 35, 1.453), new("1-1/2", 41, 1.986), new("2", 53, 3.291),
        new("2-1/2", 63, 4.695), new("3", 78, 7.268), new("3-1/2", 91, 9.737), new("4", 103, 12.554),
    ];

    private static readonly Dictionary<string, double> WireIn2 = new(StringComparer.Ordinal)
    {
        ["14"] = 0.0097,
        ["12"] = 0.0133,
        ["10"] = 0.0211,
        ["8"] = 0.0366,
        ["6"] = 0.0507,
        ["4"] = 0.0824,
        ["3"] = 0.0973,
        ["2"] = 0.1158,
        ["1"] = 0.1562,
        ["1/0"] = 0.1855,
        ["2/0"] = 0.2223,
        ["3/0"] = 0.2679,
        ["4/0"] = 0.3237,
        ["250"] = 0.3970,
        ["300"] = 0.4608,
        ["350"] = 0.5242,
        ["400"] = 0.5863,
        ["500"] = 0.7073,
    };

    /// <summary>Area of a wire with its insulation, square inches.</summary>
    public static double AreaIn2(string wire) => WireIn2[wire];

    /// <summary>Share of the inside that wires may fill.</summary>
    public static double FillFraction(int wires) => wires switch { 1 => 0.53, 2 => 0.31, _ => 0.40 };

    /// <summary>Smallest conduit for a circuit of its own, its ground counted; null when none of the table takes it.</summary>
    public static ConduitSize? Of(int wires, string wire, string ground)
    {
        int count = wires + (ground.Length > 0 ? 1 : 0);
        double areaIn2 = wires * AreaIn2(wire) + (ground.Length > 0 ? AreaIn2(ground) : 0);
        return Array.Find(Pvc40, c => areaIn2 <= FillFraction(count) * c.AreaIn2 + 1e-9);
    }

    /// <summary>How many wires of one size a conduit takes, a last one counted from 0.8 of it (note 7 to the tables).</summary>
    public static int Most(double insideIn2, string wire)
    {
        double area = AreaIn2(wire);
        int Fit(int wires) => (int)Math.Floor(FillFraction(wires) * insideIn2 / area + 0.2 + 1e-9);
        int many = Fit(3);
        return many >= 3 ? many : Fit(2) >= 2 ? 2 : Math.Min(Fit(1), 1);
    }
}
