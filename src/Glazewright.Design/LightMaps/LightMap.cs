using Glazewright.Design.Contracts;

namespace Glazewright.Design.LightMaps;

/// <summary>Light on the floor and benches of one house through the year.</summary>
/// <param name="House">House id.</param>
/// <param name="CountX">Grid points along the house.</param>
/// <param name="CountY">Grid points across.</param>
/// <param name="HeightM">Height of the grid, m.</param>
/// <param name="Months">January first.</param>
/// <param name="OutsideMolPerM2Day">Outside, by month, mol/m²d.</param>
/// <param name="Report">Figures, findings, what is left out (members as a first estimate).</param>
public sealed record LightMap(
    string House,
    int CountX,
    int CountY,
    double HeightM,
    EqList<LightMonth> Months,
    EqList<double> OutsideMolPerM2Day,
    StageReport Report);

/// <summary>One month's light.</summary>
/// <param name="MeanMolPerM2Day">Mean over the grid, mol/m²d.</param>
/// <param name="LeastMolPerM2Day">Darkest point, mol/m²d.</param>
/// <param name="EvennessRatio">Darkest over mean.</param>
/// <param name="PointMolPerM2Day">Each point, x fastest, mol/m²d.</param>
public sealed record LightMonth(
    double MeanMolPerM2Day, double LeastMolPerM2Day, double EvennessRatio, EqList<double> PointMolPerM2Day);
