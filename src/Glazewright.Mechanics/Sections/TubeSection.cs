namespace Glazewright.Mechanics.Sections;

/// <summary>A tube with its section properties. Strong means bending in the plane of its depth.</summary>
/// <param name="Name">What the trade calls it.</param>
/// <param name="Shape">Outline and wall.</param>
/// <param name="Standard">Which rules it is checked by.</param>
/// <param name="AreaM2">Area of metal, m².</param>
/// <param name="StrongInertiaM4">Second moment, strong axis, m⁴.</param>
/// <param name="WeakInertiaM4">Second moment, weak axis, m⁴.</param>
/// <param name="StrongElasticModulusM3">Elastic section modulus, strong axis, m³.</param>
/// <param name="WeakElasticModulusM3">Elastic section modulus, weak axis, m³.</param>
/// <param name="StrongPlasticModulusM3">Plastic section modulus, strong axis, m³.</param>
/// <param name="WeakPlasticModulusM3">Plastic section modulus, weak axis, m³.</param>
/// <param name="TorsionConstantM4">St Venant constant by the thin closed-section formula, m⁴.</param>
/// <param name="MassKgPerM">Mass, kg/m, from the wall the mill rolls (not the reduced design wall).</param>
public sealed record TubeSection(
    string Name,
    TubeShape Shape,
    TubeStandard Standard,
    double AreaM2,
    double StrongInertiaM4,
    double WeakInertiaM4,
    double StrongElasticModulusM3,
    double WeakElasticModulusM3,
    double StrongPlasticModulusM3,
    double WeakPlasticModulusM3,
    double TorsionConstantM4,
    double MassKgPerM)
{
    /// <summary>Radius of gyration, strong axis, m.</summary>
    public double StrongGyrationM => Math.Sqrt(StrongInertiaM4 / AreaM2);

    /// <summary>Radius of gyration, weak axis, m.</summary>
    public double WeakGyrationM => Math.Sqrt(WeakInertiaM4 / AreaM2);

    /// <summary>
    /// Slenderness of the wall along the depth: flat part over wall. Structural tube takes the flat as depth − 3t
    /// (AISC 360 B4.1b(d)); gauge tube takes it between the bends.
    /// </summary>
    public double WebSlendernessRatio => Shape switch
    {
        TubeShape.Rectangular r => FlatM(r.DepthM, r) / r.WallM,
        TubeShape.Round r => r.DiameterM / r.WallM,
        _ => throw new InvalidOperationException("A tube shape without a slenderness."),
    };

    /// <summary>Slenderness of the wall along the width, as <see cref="WebSlendernessRatio"/>.</summary>
    public double FlangeSlendernessRatio => Shape switch
    {
        TubeShape.Rectangular r => FlatM(r.WidthM, r) / r.WallM,
        TubeShape.Round r => r.DiameterM / r.WallM,
        _ => throw new InvalidOperationException("A tube shape without a slenderness."),
    };

    private double FlatM(double sideM, TubeShape.Rectangular r) =>
        Math.Max(0, Standard == TubeStandard.Structural ? sideM - 3 * r.WallM : sideM - 2 * r.OuterRadiusM);
}
