using Glazewright.Science.Climate;
using Glazewright.Science.Crop;

namespace Glazewright.Design.Year;

/// <summary>
/// Carbon dioxide in the house's air, both spaces as one: what outside air brings and takes, what is dosed, what the crop takes up. Implicit over a step, so it never leaves the range between
/// compensation point and what the dose can reach.
/// </summary>
/// <remarks>
/// Uptake of a full canopy: P · I / (I + 150 W/m²) · (c − 50) / (c + 250), with P so that 5 g/m² h are taken up at 420 ppm in 300 W/m² absorbed; 1,000 ppm then raises it by 38 %
/// (common practice: 30 to 40 %). The night's breathing of crop and substrate is left out.
/// </remarks>
internal sealed class YearCo2
{
    private const double MolarMassKg = 0.04401;
    private const double GasConstant = 8.314462;
    private const double HalfLightWm2 = 150;
    private const double CompensationPpm = 50;
    private const double HalfPpm = 250;
    private const double MostUptakeKgPerSM2 = CarbonDioxide.FullCropUptakeKgPerSM2 / (300.0 / (300 + HalfLightWm2)) / ((CarbonDioxide.OutsidePpm - CompensationPpm) / (CarbonDioxide.OutsidePpm + HalfPpm));

    /// <summary>Level now, ppm.</summary>
    public double Ppm { get; set; } = CarbonDioxide.OutsidePpm;

    /// <summary>Mass of one ppm in a cubic metre, kg.</summary>
    public static double KgPerM3Ppm(double airC, double pressurePa) => pressurePa * MolarMassKg * 1e-6 / (GasConstant * (airC + 273.15));

    /// <summary>Most a crop would take up in a light, were there no end of carbon dioxide, kg/s.</summary>
    /// <param name="cropM2">Planted ground, m².</param>
    /// <param name="absorbedWm2">Light absorbed by the canopy, W/m² of that ground.</param>
    public static double MostUptakeKgPerS(double cropM2, double absorbedWm2) =>
        absorbedWm2 > 0 ? MostUptakeKgPerSM2 * cropM2 * absorbedWm2 / (absorbedWm2 + HalfLightWm2) : 0;

    /// <summary>Goes on for one step.</summary>
    /// <param name="volumeM3">Air of the house, m³.</param>
    /// <param name="flowM3PerS">Outside air that comes in and goes out, at the house's temperature, m³/s.</param>
    /// <param name="kgPerM3Ppm">From <see cref="KgPerM3Ppm"/>.</param>
    /// <param name="doseKgPerS">Dosed, kg/s.</param>
    /// <param name="mostUptakeKgPerS">From <see cref="MostUptakeKgPerS"/>.</param>
    /// <param name="stepS">Step, s.</param>
    public void Step(double volumeM3, double flowM3PerS, double kgPerM3Ppm, double doseKgPerS, double mostUptakeKgPerS, double stepS)
    {
        double held = volumeM3 * kgPerM3Ppm / stepS, carried = flowM3PerS * kgPerM3Ppm, taken = mostUptakeKgPerS / (Ppm + HalfPpm);
        Ppm = (held * Ppm + carried * CarbonDioxide.OutsidePpm + doseKgPerS + taken * CompensationPpm) / (held + carried + taken);
    }
}
