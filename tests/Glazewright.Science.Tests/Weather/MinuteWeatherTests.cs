using Glazewright.Science.Sun;
using Glazewright.Science.Weather;

namespace Glazewright.Science.Tests.Weather;

public class MinuteWeatherTests
{
    private static readonly WeatherYear s_demo = WeatherText.Year(WeatherText.Demo());
    private static readonly MinuteWeather s_minutes = MinuteWeather.Expand(s_demo);

    [Fact]
    public void Every_hour_keeps_its_global_radiation_and_the_parts_stay_physical()
    {
        double turned = 0;
        for (int h = 0; h < CommonYear.Hours; h++)
        {
            double ghi = 0;
            double dhi = 0;
            for (int m = h * 60; m < h * 60 + 60; m++)
            {
                ghi += s_minutes.GhiWm2[m];
                dhi += s_minutes.DhiWm2[m];
                Assert.InRange(s_minutes.DniWm2[m], 0, 1410);
                Assert.InRange(s_minutes.DhiWm2[m], 0, 800);
                Assert.Equal(s_minutes.GhiWm2[m], s_minutes.DhiWm2[m] + s_minutes.DniWm2[m] * Math.Max(0, s_minutes.CosZenith[m]), 9);
            }

            Assert.Equal(s_demo.GhiWhm2[h], ghi / 60, 8);
            turned += dhi / 60 - Math.Min(s_demo.DhiWhm2[h], s_demo.GhiWhm2[h]);
        }

        // Diffuse may only gain, from low suns and capped beams: under 0.5 % of the year's 1,407 kWh/m2.
        Assert.InRange(turned, 0, 7000);
    }

    [Fact]
    public void Direct_radiation_by_the_minute_agrees_with_the_file_over_the_year()
    {
        double file = 0;
        double ours = 0;
        for (int h = 0; h < CommonYear.Hours; h++)
        {
            file += s_demo.DniWhm2[h];
        }

        foreach (double dni in s_minutes.DniWm2)
        {
            ours += dni / 60;
        }

        Assert.Equal(1, ours / file, tolerance: 0.02);
    }

    [Fact]
    public void States_meet_the_file_at_the_stamps_and_join_over_the_year_end()
    {
        for (int h = 0; h < CommonYear.Hours; h++)
        {
            int last = h * 60 + 59;
            int next = (last + 1) % CommonYear.Minutes;
            Assert.Equal(s_demo.DryBulbC[h], 0.5 * (s_minutes.DryBulbC[last] + s_minutes.DryBulbC[next]), tolerance: 0.12);
            Assert.Equal(s_demo.PressurePa[h], 0.5 * (s_minutes.PressurePa[last] + s_minutes.PressurePa[next]), tolerance: 8);
        }

        Assert.Equal(s_minutes.DryBulbC[CommonYear.Minutes - 1], s_minutes.DryBulbC[0], tolerance: 0.15);
    }

    [Fact]
    public void Vapour_never_passes_saturation_and_the_sky_is_colder_than_the_air_most_of_the_time()
    {
        int colder = 0;
        for (int m = 0; m < CommonYear.Minutes; m++)
        {
            Assert.InRange(s_minutes.VapourPressurePa[m], 1, WeatherMoistureProbe.SaturationPa(s_minutes.DryBulbC[m]) * (1 + 1e-9));
            Assert.InRange(s_minutes.HumidityRatio[m], 0, 0.03);
            colder += s_minutes.SkyC[m] <= s_minutes.DryBulbC[m] + 0.1 ? 1 : 0;
        }

        Assert.True(colder > 0.99 * CommonYear.Minutes);
    }

    [Fact]
    public void A_sun_of_instants_a_sixth_of_an_hour_late_is_kept_over_its_own_hours()
    {
        WeatherYear moved = s_demo.WithRadiationOffset(0.17);
        MinuteWeather minutes = MinuteWeather.Expand(moved);
        double all = 0;
        foreach (double ghi in minutes.GhiWm2.All())
        {
            all += ghi / 60;
        }

        double file = 0;
        foreach (double ghi in s_demo.GhiWhm2.Span)
        {
            file += ghi;
        }

        Assert.Equal(file, all, tolerance: 1e-3);
    }

    /// <summary>The room's full solar position (another algorithm, refracted) as second opinion, every 37th minute: geometric elevation and azimuth within 0.05°.</summary>
    [Fact]
    public void The_sun_of_the_minutes_is_the_sun_of_the_room()
    {
        WeatherStation at = s_demo.Station;
        SunYear year = SunYear.Compute(2011, at.LatitudeDeg, at.LongitudeDeg, at.ZoneH, at.ElevationM, 99_000, 10);
        for (int m = 0; m < CommonYear.Minutes; m += 37)
        {
            double ours = Math.Asin(s_minutes.CosZenith[m]) * 180 / Math.PI;
            double room = year.ElevationDeg(m);

            // Refraction lifts the room's sun by less than 0.06° above 15° of elevation and by up to 0.6° at the horizon.
            if (room > 15)
            {
                Assert.InRange(room - ours, -0.02, 0.09);
            }
            else if (room > -0.5)
            {
                Assert.InRange(room - ours, -0.05, 0.65);
            }

            if (room is > 1 and < 70)
            {
                Assert.InRange(Math.Abs(Math.IEEERemainder(year.AzimuthDeg(m) - s_minutes.SunAzimuthDeg[m], 360)) * Math.Cos(room * Math.PI / 180), 0, 0.05);
            }
        }
    }

    [Fact]
    public void Twice_gives_the_same_bits()
    {
        MinuteWeather again = MinuteWeather.Expand(s_demo);
        Assert.True(again.GhiWm2.All().SequenceEqual(s_minutes.GhiWm2.All()));
        Assert.True(again.SkyLongwaveWm2.SequenceEqual(s_minutes.SkyLongwaveWm2));
    }

    /// <summary>Independent of the room's own formula: Magnus form of Alduchov and Eskridge (1996), good to 0.4 % (from memory), raised by 1 % as a bound.</summary>
    private static class WeatherMoistureProbe
    {
        public static double SaturationPa(double c) =>
            1.01 * (c >= 0 ? 610.94 * Math.Exp(17.625 * c / (c + 243.04)) : Math.Max(611.21 * Math.Exp(22.587 * c / (c + 273.86)), 0));
    }
}
