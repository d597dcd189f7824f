using Glazewright.Science.Sky;
using Glazewright.Science.Sun;
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
    private const int StepsInHour = 4;

    /// <summary>Ground with snow on it (common practice: 0.6 to 0.7), from a snow depth of 3 cm on.</summary>
    private const double SnowAlbedo = 0.65;

    private const double HidingSnowM = 0.03;
    private readonly List<SunSample> lit = [];
    private readonly double[] domeWhPerM2 = new double[12];
    private readonly double[] horizonWhPerM2 = new double[12];
    private readonly double[] groundWhPerM2 = new double[12];
    private readonly double[] globalWhPerM2 = new double[12];

    private SunSamples()
    {
    }

    /// <summary>Hours that each sample stands for.</summary>
    public const double SampleH = 1.0 / StepsInHour;

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
        ArgumentNullException.ThrowIfNull(year);
        Guards.Within.Require(albedoFraction, 0, 1);
        WeatherStation at = year.Station;
        double pressurePa = Math.Clamp(AirMass.PressureAtPa(Math.Max(-450, at.ElevationM)), 50_000, 108_000);

        // A typical year mixes years; 2011 stands in the middle of the leap cycle, as in the expansion to minutes.
        SunYear sun = SunYear.Compute(
            2011, at.LatitudeDeg, at.LongitudeDeg, at.ZoneH, Math.Clamp(at.ElevationM, -450, 6000), pressurePa, 10, 0.5, 60 / StepsInHour);
        SunSamples samples = new();
        int shift = (int)Math.Round((0.5 + year.RadiationOffsetH) * StepsInHour);
        for (int h = 0; h < CommonYear.Hours; h++)
        {
            double albedo = year.SnowDepthM[h] > HidingSnowM ? SnowAlbedo : albedoFraction;
            samples.Hour(year, h, (h * StepsInHour) + shift, sun, albedo);
        }

        return samples;
    }

    private void Hour(WeatherYear year, int h, int first, SunYear sun, double albedo)
    {
        int month = CommonYear.MonthOfDay(h / 24) - 1;
        double globalWh = Math.Max(0, year.GhiWhm2[h]);
        globalWhPerM2[month] += globalWh;
        if (globalWh <= 0)
        {
            return;
        }

        double upSum = 0;
        int litSteps = 0;
        for (int k = 0; k < StepsInHour; k++)
        {
            double up = sun.Up[Ring(first + k, sun.Up.Length)];
            upSum += Math.Max(0, up);
            litSteps += up > 0 ? 1 : 0;
        }

        if (litSteps == 0)
        {
            domeWhPerM2[month] += globalWh;
            groundWhPerM2[month] += globalWh * albedo;
            return;
        }

        // The beam is what the diffuse leaves, never more than comes from the sun; the rest is diffuse.
        const double mostNormalW = 1361;
        double diffuseWh = Math.Min(globalWh, Math.Max(0, year.DhiWhm2[h]));
        double normalW = Math.Min(mostNormalW, (globalWh - diffuseWh) * StepsInHour / upSum);
        double spreadW = (globalWh - (normalW * upSum / StepsInHour)) * StepsInHour / litSteps;
        for (int k = 0; k < StepsInHour; k++)
        {
            int step = Ring(first + k, sun.Up.Length);
            if (sun.Up[step] > 0)
            {
                Add(month, sun, step, normalW, spreadW, albedo);
            }
        }
    }

    private void Add(int month, SunYear sun, int step, double normalW, double diffuseW, double albedo)
    {
        double up = sun.Up[step];
        double zenithDeg = 90 - sun.ElevationDeg(step);
        double distance = sun.DistanceAu[step / (24 * StepsInHour)];
        double globalW = (normalW * up) + diffuseW;
        SkySources sky = PerezSky.Kernel(
            normalW, diffuseW, globalW, zenithDeg, up, AirMass.RelativeKastenYoung(zenithDeg),
            Extraterrestrial.SolarConstantWm2 / (distance * distance), albedo);
        domeWhPerM2[month] += sky.DomeWm2 * SampleH;
        horizonWhPerM2[month] += sky.HorizonWm2 * SampleH;
        groundWhPerM2[month] += sky.GroundWm2 * SampleH;
        lit.Add(new SunSample(month, sun.East[step], sun.North[step], up, sky.FromSunWm2, sky.DomeWm2, globalW));
    }

    private static int Ring(int step, int steps) => step < 0 ? step + steps : step >= steps ? step - steps : step;
}
