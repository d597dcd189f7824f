using Glazewright.Science.Sky;
using Glazewright.Science.Weather;

namespace Glazewright.Science.Shape;

/// <summary>One lit quarter hour of a weather year.</summary>
/// <param name="Month">0 January to 11.</param>
/// <param name="EastCosine">East part of the unit vector to the sun.</param>
/// <param name="NorthCosine">North part.</param>
/// <param name="UpCosine">Upward part.</param>
/// <param name="FromSunWm2">Beam and the sky close round the sun, on a plane facing it, W/m².</param>
/// <param name="DomeWm2">Even sky, horizontal, W/m².</param>
/// <param name="GlobalWm2">All, horizontal, W/m².</param>
public readonly record struct SunSample(
    int Month, double EastCosine, double NorthCosine, double UpCosine, double FromSunWm2, double DomeWm2, double GlobalWm2);

/// <summary>
/// A weather year's light by quarter hours, before any house is turned into it: beam and diffuse of each hour are spread over its lit quarter hours so that the hour's
/// energy stays; the diffuse is split as Perez and others have it.
/// </summary>
public sealed class SunSamples
{
    private readonly List<SunSample> lit = [];
    private readonly double[] domeWhPerM2 = new double[12];
    private readonly double[] horizonWhPerM2 = new double[12];
    private readonly double[] groundWhPerM2 = new double[12];
    private readonly double[] globalWhPerM2 = new double[12];

    private SunSamples()
    {
    }

    /// <summary>Hours that each sample stands for.</summary>
    public const double SampleH = 1.0 / SkyQuarters.InHour;

    /// <summary>The lit quarter hours in order.</summary>
    public IReadOnlyList<SunSample> Lit => lit;

    /// <summary>Even sky by month, horizontal, Wh/m².</summary>
    public ReadOnlySpan<double> DomeWhPerM2 => domeWhPerM2;

    /// <summary>Horizon band by month, on an upright wall, Wh/m²; may be negative.</summary>
    public ReadOnlySpan<double> HorizonWhPerM2 => horizonWhPerM2;

    /// <summary>Light from the ground by month, on a plane facing down, Wh/m².</summary>
    public ReadOnlySpan<double> GroundWhPerM2 => groundWhPerM2;

    /// <summary>Global by month, horizontal, Wh/m².</summary>
    public ReadOnlySpan<double> GlobalWhPerM2 => globalWhPerM2;

    /// <summary>Reads a year.</summary>
    /// <param name="year">The weather.</param>
    /// <param name="albedoFraction">Ground without snow, 0 to 1.</param>
    /// <returns>Its samples.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static SunSamples Of(WeatherYear year, double albedoFraction)
    {
        SunSamples samples = new();
        SkyQuarters.Walk(year, albedoFraction, samples.Add);
        for (int h = 0; h < CommonYear.Hours; h++)
        {
            samples.globalWhPerM2[CommonYear.MonthOfDay(h / 24) - 1] += Math.Max(0, year.GhiWhm2[h]);
        }

        return samples;
    }

    private void Add(SkyQuarter q)
    {
        domeWhPerM2[q.Month] += q.Sources.DomeWm2 * SampleH;
        horizonWhPerM2[q.Month] += q.Sources.HorizonWm2 * SampleH;
        groundWhPerM2[q.Month] += q.Sources.GroundWm2 * SampleH;
        if (q.UpCosine > 0)
        {
            lit.Add(new SunSample(q.Month, q.EastCosine, q.NorthCosine, q.UpCosine, q.Sources.FromSunWm2, q.Sources.DomeWm2, q.GlobalWm2));
        }
    }
}
