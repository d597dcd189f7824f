using Glazewright.Science.Guards;
using Glazewright.Science.Sun;
using Glazewright.Science.Weather;

namespace Glazewright.Science.Sky;

/// <summary>A lit quarter hour of a weather year.</summary>
/// <param name="HourOfYear">Hour whose radiation it carries, 0 to 8759.</param>
/// <param name="Month">0 to 11.</param>
/// <param name="Sources">Mean power of the quarter by source, W/m².</param>
/// <param name="AzimuthDeg">Sun's bearing.</param>
/// <param name="ElevationDeg">Sun's elevation; 0 when the file has light with the sun down.</param>
/// <param name="EastCosine">East part of the unit vector to the sun; all three are 0 when the sun is down.</param>
/// <param name="NorthCosine">North part.</param>
/// <param name="UpCosine">Upward part.</param>
/// <param name="GlobalWm2">All, horizontal, W/m².</param>
public readonly record struct SkyQuarter(
    int HourOfYear,
    int Month,
    SkySources Sources,
    double AzimuthDeg,
    double ElevationDeg,
    double EastCosine,
    double NorthCosine,
    double UpCosine,
    double GlobalWm2);

/// <summary>
/// A weather year in quarter hours: beam and diffuse of each hour spread over its lit quarters so that the hour's energy stays, then split by where in the
/// sky the light comes from.
/// </summary>
public static class SkyQuarters
{
    /// <summary>Quarters in an hour: the sun moves 3.75° at most in one.</summary>
    public const int InHour = 4;

    /// <summary>Ground with snow on it (common practice: 0.6 to 0.7).</summary>
    private const double SnowAlbedo = 0.65;

    /// <summary>Snow deeper than this hides the ground, m.</summary>
    private const double HidingSnowM = 0.03;

    /// <summary>Most beam there can be, W/m².</summary>
    private const double MostNormalWm2 = 1361;

    /// <summary>Goes through the year in order.</summary>
    /// <param name="year">The weather.</param>
    /// <param name="albedo">Of the ground without snow.</param>
    /// <param name="visit">Called for each lit quarter.</param>
    /// <param name="evenSky">All diffuse light from an evenly bright sky (Liu and Jordan), for comparison.</param>
    /// <exception cref="ArgumentOutOfRangeException">Albedo outside 0 to 1.</exception>
    public static void Walk(WeatherYear year, double albedo, Action<SkyQuarter> visit, bool evenSky = false)
    {
        ArgumentNullException.ThrowIfNull(year);
        ArgumentNullException.ThrowIfNull(visit);
        Within.Require(albedo, 0, 1);
        WeatherStation at = year.Station;
        double pressurePa = Math.Clamp(AirMass.PressureAtPa(Math.Max(-450, at.ElevationM)), 50_000, 108_000);

        // A typical year mixes years; 2011 stands in the middle of the leap cycle, as in the expansion to minutes.
        SunYear sun = SunYear.Compute(
            2011, at.LatitudeDeg, at.LongitudeDeg, at.ZoneH, Math.Clamp(at.ElevationM, -450, 6000), pressurePa, 10, 0.5, 60 / InHour);
        int shift = (int)Math.Round((0.5 + year.RadiationOffsetH) * InHour);
        int steps = sun.Up.Length;
        for (int h = 0; h < CommonYear.Hours; h++)
        {
            double globalWh = Math.Max(0, year.GhiWhm2[h]);
            if (globalWh > 0)
            {
                Hour(year, albedo, visit, sun, h, (h * InHour) + shift, steps, globalWh, evenSky);
            }
        }
    }

    private static void Hour(
        WeatherYear year, double albedo, Action<SkyQuarter> visit, SunYear sun, int h, int first, int steps, double globalWh, bool evenSky)
    {
        int month = CommonYear.MonthOfDay(h / 24) - 1;
        double upSum = 0;
        int lit = 0;
        for (int k = 0; k < InHour; k++)
        {
            double up = sun.Up[Ring(first + k, steps)];
            upSum += up > 0 ? up : 0;
            lit += up > 0 ? 1 : 0;
        }

        double groundAlbedo = year.SnowDepthM[h] > HidingSnowM ? SnowAlbedo : albedo;
        if (lit == 0)
        {
            // All of it in one quarter, from an even sky.
            double globalW = globalWh * InHour;
            visit(new SkyQuarter(h, month, new SkySources(0, 0, globalW, 0, globalW * groundAlbedo), 0, 0, 0, 0, 0, globalW));
            return;
        }

        double diffuseWh = Math.Min(globalWh, Math.Max(0, year.DhiWhm2[h]));
        double normalW = Math.Min(MostNormalWm2, (globalWh - diffuseWh) * InHour / upSum);
        double spreadW = (globalWh - (normalW * upSum / InHour)) * InHour / lit;
        for (int k = 0; k < InHour; k++)
        {
            int step = Ring(first + k, steps);
            double up = sun.Up[step];
            if (up <= 0)
            {
                continue;
            }

            double elevationDeg = sun.ElevationDeg(step);
            double zenithDeg = 90 - elevationDeg;
            double distance = sun.DistanceAu[step / (24 * InHour)];
            SkySources sky = evenSky
                ? new SkySources(normalW, 0, spreadW, 0, ((normalW * up) + spreadW) * groundAlbedo)
                : PerezSky.Kernel(
                    normalW, spreadW, (normalW * up) + spreadW, zenithDeg, up, AirMass.RelativeKastenYoung(zenithDeg),
                    Extraterrestrial.SolarConstantWm2 / (distance * distance), groundAlbedo);
            visit(new SkyQuarter(
                h, month, sky, sun.AzimuthDeg(step), elevationDeg, sun.East[step], sun.North[step], up, (normalW * up) + spreadW));
        }
    }

    private static int Ring(int step, int steps) => step < 0 ? step + steps : step >= steps ? step - steps : step;
}
