using Glazewright.Science.Maths;
using Glazewright.Science.Sky;

namespace Glazewright.Science.Weather;

/// <summary>
/// The sky of every lit minute as plain sources, once for all houses and variants under it. Air mass after Kasten and Young 1989 from the minute's geometric zenith,
/// with our own elementary functions, so that the bits do not depend on the processor.
/// </summary>
internal static class SkyExpansion
{
    private const double SolarConstantWm2 = 1361;

    public static void Fill(MinuteWeather to)
    {
        for (int day = 0; day < CommonYear.Minutes / 1440; day++)
        {
            double outsideAir = SolarConstantWm2 * (1 + 0.033 * Elementary.Cos(2 * Math.PI / 365 * day));
            for (int m = day * 1440; m < (day + 1) * 1440; m++)
            {
                double global = to.Ghi[m];
                if (global <= 0)
                {
                    continue;
                }

                double up = to.Up[m];
                double zenithDeg = Elementary.Acos(up) * (180 / Math.PI);
                double massAir = 1 / (Math.Max(up, 0) + 0.50572 * Elementary.Pow(Math.Max(96.07995 - Math.Min(zenithDeg, 90), 0.1), -1.6364));
                SkySources sky = PerezSky.Kernel(to.Dni[m], to.Dhi[m], global, zenithDeg, up, massAir, outsideAir, albedoFraction: 0);
                to.FromSun.Set(m, sky.FromSunWm2);
                to.Dome.Set(m, sky.DomeWm2);
                to.Horizon.Set(m, sky.HorizonWm2);
                to.Elevation.Set(m, 90 - zenithDeg);
            }
        }
    }
}
