using CsCheck;
using Glazewright.Science.Weather;

namespace Glazewright.Science.Tests.Weather;

/// <summary>Any sky at any latitude: the minutes of every hour hold the hour's energy. What leaves the beam for want of sky is found again in the diffuse, and counted.</summary>
public class MinuteEnergyTests
{
    [Fact]
    public void Every_hour_keeps_global_exactly_and_beam_and_diffuse_but_for_what_is_logged() =>
        Gen.Select(Gen.Double[-66, 66], Gen.Double[-180, 180], Gen.Double[-0.5, 0.5], Gen.Int[1, 1_000_000], Gen.Bool).Sample(
            (latitudeDeg, longitudeDeg, offsetH, seed, physical) =>
            {
                WeatherYear year = Sky(latitudeDeg, longitudeDeg, seed, physical).WithRadiationOffset(offsetH);
                MinuteWeather minutes = MinuteWeather.Expand(year);
                int shift = 30 + (int)Math.Round(offsetH * 60);
                double turned = 0, dark = 0;
                for (int h = 0; h < CommonYear.Hours; h++)
                {
                    double ghi = 0, dhi = 0, beam = 0, outside = 0;
                    for (int k = 0; k < 60; k++)
                    {
                        int m = (h * 60 + shift + k + CommonYear.Minutes) % CommonYear.Minutes;
                        ghi += minutes.GhiWm2[m] / 60;
                        dhi += minutes.DhiWm2[m] / 60;
                        beam += minutes.DniWm2[m] * Math.Max(0, minutes.CosZenith[m]) / 60;
                        outside += 1361 * Math.Max(0, minutes.CosZenith[m]) / 60;
                        Assert.True(minutes.DniWm2[m] >= 0 && minutes.DhiWm2[m] >= -1e-9);
                    }

                    double moved = dhi - year.DhiWhm2[h];
                    Assert.Equal(year.GhiWhm2[h], ghi, 1e-7);
                    Assert.True(moved >= -1e-7, $"hour {h}: diffuse fell by {-moved}");
                    Assert.Equal(year.GhiWhm2[h] - year.DhiWhm2[h] - moved, beam, 1e-7);
                    turned += moved;
                    dark += outside < 21 ? moved : 0;
                }

                // Hours with less than 20 W/m² outside the air are spread as diffuse and counted as hours, not as energy; a milliwatt-hour an hour is not counted.
                Assert.InRange(turned - minutes.Log.BeamTurnedToDiffuseWhm2, -1e-3, dark + CommonYear.Hours * 0.001);
            },
            iter: 5);

    private static WeatherYear Sky(double latitudeDeg, double longitudeDeg, int seed, bool physical)
    {
        double zoneH = Math.Round(longitudeDeg / 15);
        double[] ghi = new double[CommonYear.Hours], dni = new double[CommonYear.Hours], dhi = new double[CommonYear.Hours];
        var chance = new CsCheck.PCG((uint)seed);
        for (int h = 0; h < CommonYear.Hours; h++)
        {
            // Cooper's declination: near enough to put the sun up by day.
            double declination = 23.45 * Math.PI / 180 * Math.Sin(2 * Math.PI * (284 + h / 24) / 365);
            double hourAngle = (h % 24 + 0.5 - 12 + longitudeDeg / 15 - zoneH) * Math.PI / 12;
            double up = Math.Sin(latitudeDeg * Math.PI / 180) * Math.Sin(declination) + Math.Cos(latitudeDeg * Math.PI / 180) * Math.Cos(declination) * Math.Cos(hourAngle);
            double clearness = Part(chance) * (physical ? 0.75 : 1.2);
            ghi[h] = up <= 0 ? 0 : Math.Round(1361 * up * clearness);
            dhi[h] = Math.Round(ghi[h] * (physical ? 1 - 0.8 * clearness / 0.75 * Part(chance) : Part(chance)));
            dni[h] = up > 0.05 ? (ghi[h] - dhi[h]) / up : 0;
        }

        WeatherYear plain = WeatherText.Year(WeatherText.Lines().Bytes());
        return plain with
        {
            Station = plain.Station with { LatitudeDeg = latitudeDeg, LongitudeDeg = longitudeDeg, ZoneH = zoneH },
            GhiWhm2 = new HourlyColumn(ghi),
            DniWhm2 = new HourlyColumn(dni),
            DhiWhm2 = new HourlyColumn(dhi),
        };
    }

    private static double Part(CsCheck.PCG chance) => chance.Next(1_000_001) / 1e6;
}
