using Glazewright.Mechanics.Guards;

namespace Glazewright.Mechanics.Loads;

/// <summary>Snow on one slope, per horizontal area.</summary>
/// <param name="UniformPa">On the whole slope, Pa.</param>
/// <param name="SurchargePa">More, next to the ridge, Pa.</param>
/// <param name="SurchargeRunM">How far from the ridge the surcharge reaches, horizontal m.</param>
public sealed record SlopeSnow(double UniformPa, double SurchargePa = 0, double SurchargeRunM = 0);

/// <summary>Which snow case of a gable.</summary>
public enum SnowCaseKind
{
    /// <summary>Balanced, each slope with its own slope factor.</summary>
    Balanced,

    /// <summary>Balanced with the rain-on-snow surcharge.</summary>
    RainOnSnow,

    /// <summary>The least load of a low slope.</summary>
    LowSlopeLeast,

    /// <summary>Wind has carried snow from the left slope to the right.</summary>
    DriftedToRight,

    /// <summary>Wind has carried snow from the right slope to the left.</summary>
    DriftedToLeft,
}

/// <summary>One snow case.</summary>
/// <param name="Kind">Which.</param>
/// <param name="Left">On the left slope.</param>
/// <param name="Right">On the right slope.</param>
public sealed record SnowCase(SnowCaseKind Kind, SlopeSnow Left, SlopeSnow Right);

/// <summary>Snow on a gable roof.</summary>
/// <param name="Edition">The edition every number here belongs to.</param>
/// <param name="FlatPa">Flat roof snow pf, Pa.</param>
/// <param name="ExposureFactor">Ce.</param>
/// <param name="ThermalFactor">Ct.</param>
/// <param name="ImportanceFactor">Is (1 in 7-22).</param>
/// <param name="LeftSlopeFactor">Cs of the left slope.</param>
/// <param name="RightSlopeFactor">Cs of the right slope.</param>
/// <param name="Cases">Every case that applies; partial loading of continuous purlins is not among them.</param>
public sealed record RoofSnow(
    LoadEdition Edition,
    double FlatPa,
    double ExposureFactor,
    double ThermalFactor,
    double ImportanceFactor,
    double LeftSlopeFactor,
    double RightSlopeFactor,
    IReadOnlyList<SnowCase> Cases);
