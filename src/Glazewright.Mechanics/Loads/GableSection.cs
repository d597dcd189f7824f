using Glazewright.Mechanics.Guards;

namespace Glazewright.Mechanics.Loads;

/// <summary>The outline that snow and wind see: two walls, two slopes, maybe unlike. Left and right as the section is drawn.</summary>
/// <param name="LeftEaveM">Height of the left eave, m.</param>
/// <param name="LeftRunM">Horizontal run of the left slope, m.</param>
/// <param name="RightRunM">Horizontal run of the right slope, m.</param>
/// <param name="RightEaveM">Height of the right eave, m.</param>
/// <param name="RidgeM">Height of the ridge, m.</param>
/// <param name="LengthM">Length along the ridge, m.</param>
public sealed record GableSection(
    double LeftEaveM, double LeftRunM, double RightRunM, double RightEaveM, double RidgeM, double LengthM)
{
    /// <summary>Width across, m.</summary>
    public double WidthM => LeftRunM + RightRunM;

    /// <summary>Left slope from the horizontal, degrees.</summary>
    public double LeftAngleDeg => Math.Atan2(RidgeM - LeftEaveM, LeftRunM) * 180 / Math.PI;

    /// <summary>Right slope from the horizontal, degrees.</summary>
    public double RightAngleDeg => Math.Atan2(RidgeM - RightEaveM, RightRunM) * 180 / Math.PI;

    /// <summary>
    /// Mean roof height, m: the mean of ridge and the higher eave (ASCE 7 section 26.2 takes one eave; the higher is the safe reading
    /// for unlike eaves).
    /// </summary>
    public double MeanRoofHeightM => (Math.Max(LeftEaveM, RightEaveM) + RidgeM) / 2;

    internal void Check()
    {
        Require.Within(LeftRunM, 0.1, 100);
        Require.Within(RightRunM, 0.1, 100);
        Require.Within(LeftEaveM, 0.1, 30);
        Require.Within(RightEaveM, 0.1, 30);
        Require.Within(RidgeM, Math.Max(LeftEaveM, RightEaveM), 60);
        Require.Within(LengthM, 0.1, 1000);
    }
}
