using Glazewright.Science.Sun;

namespace Glazewright.Science.Tests.Sun;

public class SunYearTests
{
    // 0.0003° is what the full algorithm's authors claim; the table must not spend more than that again.
    [Theory]
    [InlineData(42.0, -90.3, -6.0)]
    [InlineData(52.1, 5.2, 1.0)]
    [InlineData(-33.9, 151.2, 10.0)]
    [InlineData(68.0, 20.0, 1.0)]
    [InlineData(0.0, 0.0, 0.0)]
    [InlineData(90.0, 0.0, 0.0)]
    [InlineData(-90.0, 0.0, 0.0)]
    public void Every_minute_agrees_with_the_full_algorithm(double latitudeDeg, double longitudeDeg, double zoneH)
    {
        SunYear table = SunYear.Compute(2023, latitudeDeg, longitudeDeg, zoneH, 200, 98_900, 9);
        double firstJd = JulianDay.Of(2023, 1, 1, 0, zoneH);
        double worstRad = 0;
        for (int minute = 0; minute < SunYear.MinutesInYear; minute += 499)
        {
            SunPosition full = SolarPosition.At(
                firstJd + ((minute + 0.5) / 1440), latitudeDeg, longitudeDeg, 200, 98_900, 9, SolarPosition.DeltaTSeconds);
            double zenith = full.ZenithDeg * Math.PI / 180;
            double azimuth = full.AzimuthDeg * Math.PI / 180;
            double east = (Math.Sin(zenith) * Math.Sin(azimuth)) - table.East[minute];
            double north = (Math.Sin(zenith) * Math.Cos(azimuth)) - table.North[minute];
            double up = Math.Cos(zenith) - table.Up[minute];
            worstRad = Math.Max(worstRad, Math.Sqrt((east * east) + (north * north) + (up * up)));
        }

        Assert.InRange(worstRad * 180 / Math.PI, 0, 0.0003);
    }

    [Fact]
    public void Vectors_have_length_one()
    {
        SunYear table = SunYear.Compute(2023, 42, -90, -6, 200, 98_900, 9);
        for (int minute = 0; minute < SunYear.MinutesInYear; minute += 61)
        {
            double square = (table.East[minute] * table.East[minute]) + (table.North[minute] * table.North[minute])
                + (table.Up[minute] * table.Up[minute]);
            Assert.Equal(1, square, 1e-12);
        }
    }

    [Fact]
    public void A_leap_year_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => SunYear.Compute(2024, 42, -90, -6, 200, 98_900, 9));
}
