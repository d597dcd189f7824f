using Glazewright.Mechanics.Guards;

namespace Glazewright.Mechanics.Sections;

/// <summary>A steel for tube.</summary>
/// <param name="Name">Specification and grade.</param>
/// <param name="YieldPa">Specified least yield stress, Pa.</param>
/// <param name="UltimatePa">Specified least tensile strength, Pa.</param>
/// <param name="ElasticPa">Young's modulus, Pa.</param>
public sealed record Steel(string Name, double YieldPa, double UltimatePa, double ElasticPa)
{
    /// <summary>Young's modulus that AISC 360 uses: 29 000 ksi. Read.</summary>
    public const double StructuralElasticPa = 29000 * UsUnits.PaPerKsi;

    /// <summary>Young's modulus that AISI S100 uses: 29 500 ksi. Read.</summary>
    public const double GaugeElasticPa = 29500 * UsUnits.PaPerKsi;

    /// <summary>ASTM A500 grade B, rectangular: 46 / 58 ksi. Read.</summary>
    public static Steel A500GradeB { get; } = Ksi("ASTM A500 Gr B", 46, 58, StructuralElasticPa);

    /// <summary>ASTM A500 grade C, rectangular: 50 ksi (read) / 62 ksi (from memory).</summary>
    public static Steel A500GradeC { get; } = Ksi("ASTM A500 Gr C", 50, 62, StructuralElasticPa);

    /// <summary>ASTM A653 structural grade 50 class 1 sheet: 50 / 65 ksi. From memory.</summary>
    public static Steel A653Grade50 { get; } = Ksi("ASTM A653 SS Gr 50 Cl 1", 50, 65, GaugeElasticPa);

    /// <summary>ASTM A653 structural grade 33 sheet: 33 / 45 ksi. From memory.</summary>
    public static Steel A653Grade33 { get; } = Ksi("ASTM A653 SS Gr 33", 33, 45, GaugeElasticPa);

    private static Steel Ksi(string name, double yieldKsi, double ultimateKsi, double elasticPa) =>
        new(name, yieldKsi * UsUnits.PaPerKsi, ultimateKsi * UsUnits.PaPerKsi, elasticPa);
}
