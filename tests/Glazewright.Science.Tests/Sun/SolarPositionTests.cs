using CsCheck;
using Glazewright.Science.Sun;

namespace Glazewright.Science.Tests.Sun;

public class SolarPositionTests
{
    [Fact]
    public void Angles_stay_in_their_ranges_everywhere() =>
        Gen.Select(Gen.Double[2_400_000, 2_500_000], Gen.Double[-90, 90], Gen.Double[-180, 180])
            .Sample(
                (jd, latitudeDeg, longitudeDeg) =>
                {
                    SunPosition sun = SolarPosition.At(jd, latitudeDeg, longitudeDeg, 0, 101_325, 10, 69.2);
                    Assert.InRange(sun.ZenithDeg, -0.001, 180);
                    Assert.InRange(sun.AzimuthDeg, 0, 360);
                    Assert.InRange(sun.DeclinationDeg, -23.5, 23.5);
                    Assert.InRange(sun.DistanceAu, 0.983, 1.017);
                    Assert.InRange(sun.EquationOfTimeMin, -14.6, 16.7);
                },
                iter: 500);

    [Fact]
    public void Moving_east_by_15_degrees_is_moving_on_by_an_hour()
    {
        double jd = JulianDay.Of(2025, 5, 5, 9, 0);
        SunPosition here = SolarPosition.At(jd, 42, 15, 0, 101_325, 10, 69.2);
        SunPosition later = SolarPosition.At(jd + (1 / 24.0), 42, 0, 0, 101_325, 10, 69.2);

        // In that hour the declination moves by 0.01°.
        Assert.Equal(here.ZenithDeg, later.ZenithDeg, 0.02);
        Assert.Equal(here.AzimuthDeg, later.AzimuthDeg, 0.02);
    }

    [Theory]
    [InlineData(double.NaN, 0, 101_325)]
    [InlineData(91, 0, 101_325)]
    [InlineData(45, 181, 101_325)]
    [InlineData(45, 0, 1013.25)]
    public void Slips_are_refused(double latitudeDeg, double longitudeDeg, double pressurePa) =>
        Assert.Throws<ArgumentOutOfRangeException>(
            () => SolarPosition.At(2_460_000, latitudeDeg, longitudeDeg, 0, pressurePa, 10, 69.2));

    [Fact]
    public void Day_31_of_June_is_the_first_of_July() =>
        Assert.Equal(JulianDay.Of(2025, 7, 1, 3, 2), JulianDay.Of(2025, 6, 31, 3, 2), 1e-9);
}
