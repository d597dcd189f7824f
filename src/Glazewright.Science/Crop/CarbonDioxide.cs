using Glazewright.Science.Guards;

namespace Glazewright.Science.Crop;

/// <summary>Carbon dioxide of a house: what a dose must make up, and how fast it is lost.</summary>
public static class CarbonDioxide
{
    /// <summary>Mass of a cubic metre of CO₂ at 20 °C and sea level, kg.</summary>
    public const double DensityKgPerM3 = 1.83;

    /// <summary>Outdoors, ppm by volume (common practice).</summary>
    public const double OutsidePpm = 420;

    /// <summary>What a full crop takes up at noon, kg/s m² of leaf-covered ground: 5 g/m² h (common practice).</summary>
    public const double FullCropUptakeKgPerSM2 = 5e-3 / 3600;

    /// <summary>Dose that holds a level.</summary>
    /// <param name="volumeM3">Volume of the house, m³, 1 to 1e7.</param>
    /// <param name="changesPerHour">Air changes, 1/h, 0 to 100.</param>
    /// <param name="insidePpm">Level to hold, ppm by volume, 0 to 5000.</param>
    /// <param name="outsidePpm">Outside, ppm, 0 to 5000.</param>
    /// <param name="uptakeKgPerS">What the crop takes up, kg/s, 0 to 10.</param>
    /// <param name="pressurePa">Air pressure, Pa, 40 000 to 120 000: a mountain's cubic metre holds less.</param>
    /// <returns>Dose, kg/s; 0 when none is needed.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static double DoseKgPerS(double volumeM3, double changesPerHour, double insidePpm, double outsidePpm, double uptakeKgPerS, double pressurePa = 101_325)
    {
        Within.Require(pressurePa, 40_000, 120_000);
        Within.Require(volumeM3, 1, 1e7);
        Within.Require(changesPerHour, 0, 100);
        Within.Require(insidePpm, 0, 5000);
        Within.Require(outsidePpm, 0, 5000);
        Within.Require(uptakeKgPerS, 0, 10);
        return Math.Max(volumeM3 * changesPerHour / 3600 * (insidePpm - outsidePpm) * 1e-6 * DensityKgPerM3 * pressurePa / 101_325 + uptakeKgPerS, 0);
    }

    /// <summary>Level left after a time without a source.</summary>
    /// <param name="startPpm">Level at the start, ppm, 0 to 5000.</param>
    /// <param name="outsidePpm">Outside, ppm, 0 to 5000.</param>
    /// <param name="changesPerHour">Air changes, 1/h, 0 to 100.</param>
    /// <param name="hours">Time, h, 0 to 1000.</param>
    /// <returns>Level, ppm.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static double AfterPpm(double startPpm, double outsidePpm, double changesPerHour, double hours)
    {
        Within.Require(startPpm, 0, 5000);
        Within.Require(outsidePpm, 0, 5000);
        Within.Require(changesPerHour, 0, 100);
        Within.Require(hours, 0, 1000);
        return outsidePpm + (startPpm - outsidePpm) * Math.Exp(-changesPerHour * hours);
    }
}
