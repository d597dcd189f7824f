using Glazewright.Science.Sun;

namespace Glazewright.Published.Tests.Science;

/// <summary>
/// Duffie &amp; Beckman, Solar Engineering of Thermal Processes, worked examples of chapter 1. Statements from memory, values recomputed from the closed
/// form with the example's own declination; tolerance 0.05° (0.3° and less to the book's rounded print).
/// </summary>
public class DuffieBeckmanSunGeometry
{
    [Fact]
    public void Example_1_5_1_solar_time_in_Madison()
    {
        SunPosition sun = SolarPosition.At(JulianDay.Of(2003, 2, 3, 10.5, -6), 43, -89.4, 270, 98_000, -5, 64.5);
        double solarTimeH = 10.5 + ((sun.EquationOfTimeMin + (4 * (90 - 89.4))) / 60);
        Assert.Equal(10 + (19 / 60.0), solarTimeH, 1 / 60.0);
    }

    [Fact]
    public void Example_1_6_1_incidence_on_a_tilted_plane()
    {
        SunAngles sun = HourAngleSun.At(43, -14, -22.5);
        double cosine = PlaneToSun.IncidenceCosine(45, 195, 90 - sun.ElevationDeg, sun.AzimuthDeg);
        Assert.Equal(0.8174, cosine, 0.0005);
        Assert.Equal(35.18, Math.Acos(cosine) * 180 / Math.PI, 0.05);
        Assert.Equal(1.666, cosine / Math.Sin(sun.ElevationDeg * Math.PI / 180), 0.002);
    }

    // The second row lies beyond 90° from south: it fails an arcsine without a quadrant.
    [Theory]
    [InlineData(-14, -37.5, 66.55, 180 - 40.08)]
    [InlineData(23.1, 97.5, 79.64, 180 + 112.02)]
    [InlineData(-2.4, 60, 70.32, 180 + 66.77)]
    public void Examples_1_6_2_and_1_6_3_zenith_and_azimuth(
        double declinationDeg, double hourAngleDeg, double zenithDeg, double azimuthDeg)
    {
        SunAngles sun = HourAngleSun.At(43, declinationDeg, hourAngleDeg);
        Assert.Equal(zenithDeg, 90 - sun.ElevationDeg, 0.05);
        Assert.Equal(azimuthDeg, sun.AzimuthDeg, 0.05);
    }

    [Fact]
    public void Example_1_6_3_profile_angle_and_sunset()
    {
        Assert.True(PlaneToSun.TryProfileAngle(19.68, 246.77, 205, out double profileDeg));
        Assert.Equal(25.62, profileDeg, 0.05);
        Assert.Equal(87.76, HourAngleSun.SunsetHourAngleDeg(43, -2.4), 0.05);
    }

    // Declination by the book's Cooper formula for day 105, solar constant 1367; half the last printed digit.
    [Fact]
    public void Examples_1_10_1_and_1_10_2_extraterrestrial_energy()
    {
        double declinationDeg = 23.45 * Math.Sin(2 * Math.PI * (284 + 105) / 365);
        double normalWm2 = 1367 * (1 + (0.033 * Math.Cos(2 * Math.PI * 105 / 365)));
        double sunset = HourAngleSun.SunsetHourAngleDeg(43, declinationDeg);
        double dayMJ = 12 * 3600 / Math.PI * normalWm2 * HourAngleSun.DayIntegral(43, declinationDeg, -sunset, sunset) / 1e6;
        double hourMJ = 12 * 3600 / Math.PI * normalWm2 * HourAngleSun.DayIntegral(43, declinationDeg, -30, -15) / 1e6;
        Assert.Equal(33.77, dayMJ, 0.015);
        Assert.Equal(3.790, hourMJ, 0.0015);
    }
}

/// <summary>
/// Noon altitude 90 − |latitude − declination| at 40° N on the four turning days (standard closed form, from memory), a textbook's worked example of
/// 15 June at 40° N (read), and a public table of sunrise on 1 January 2002 in local mean time (read).
/// </summary>
public class TextbookSunDays
{
    [Theory]
    [InlineData(0, 50.0)]
    [InlineData(23.45, 73.45)]
    [InlineData(-23.45, 26.55)]
    public void Noon_altitude(double declinationDeg, double altitudeDeg) =>
        Assert.Equal(altitudeDeg, HourAngleSun.At(40, declinationDeg, 0).ElevationDeg, 1e-9);

    // Tolerance 0.1°: the declination of the calendar day.
    [Theory]
    [InlineData(6, 21, 73.45, 17)]
    [InlineData(12, 21, 26.55, -100)]
    public void Noon_altitude_by_the_full_algorithm(int month, int day, double altitudeDeg, double longitudeDeg)
    {
        double transitH = DaySpan.Of(2025, month, day, 40, longitudeDeg, 0, 69.2).TransitH;
        SunPosition sun = SolarPosition.At(JulianDay.Of(2025, month, day, transitH, 0), 40, longitudeDeg, 0, 101_325, 10, 69.2);
        Assert.Equal(altitudeDeg, sun.ElevationGeometricDeg, 0.1);
    }

    // Tolerance 0.05° and 1 min: the page's rounding. 65.67° is west of south.
    [Fact]
    public void Two_hours_after_noon_on_15_June()
    {
        SunAngles sun = HourAngleSun.At(40, 23.35, 30);
        Assert.Equal(59.75, sun.ElevationDeg, 0.05);
        Assert.Equal(180 + 65.67, sun.AzimuthDeg, 0.06);
        double sunsetH = HourAngleSun.SunsetHourAngleDeg(40, 23.35) / 15;
        Assert.Equal(14.83, 2 * sunsetH, 0.01);
        Assert.Equal(4 + (36 / 60.0), 12 - sunsetH, 1 / 60.0);
        Assert.Equal(12 + 7 + (24 / 60.0), 12 + sunsetH, 1 / 60.0);
    }

    // Tolerance 2 min: table in whole minutes, its longitude and horizon not stated.
    [Theory]
    [InlineData(0, 6, 0)]
    [InlineData(32, 7, 1)]
    [InlineData(36, 7, 11)]
    [InlineData(42, 7, 28)]
    [InlineData(46, 7, 42)]
    public void Sunrise_on_1_January_2002(double latitudeDeg, int hour, int minute)
    {
        SunDay.RisesAndSets day = Assert.IsType<SunDay.RisesAndSets>(DaySpan.Of(2002, 1, 1, latitudeDeg, 0, 0, 64.3));
        Assert.Equal(hour + (minute / 60.0), day.SunriseH, 2 / 60.0);
    }
}
