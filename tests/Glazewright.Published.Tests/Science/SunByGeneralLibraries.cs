using Glazewright.Science.Sun;

namespace Glazewright.Published.Tests.Science;

/// <summary>
/// Sun places and times computed with two general-purpose libraries that know nothing of each other: pvlib's solar position (snapshot 6382338a) and
/// astronomy-engine 2.1.19, which agree within 0.0004° and 2 s. Mark: computed with named libraries.
/// </summary>
public class SunByGeneralLibraries
{
    // Tolerance 0.001°: half of the last printed digit and the libraries' own 0.0003°. Delta T 67 s as in the computation.
    [Theory]
    [InlineData(2024, 12, 21, 12.0, -6, 46.83, -92.22, 433, 96230, -10, 19.758, 19.710, 178.222, 1.588)]
    [InlineData(2024, 6, 20, 12.0, -6, 46.83, -92.22, 433, 96230, 15, 66.517, 66.510, 173.868, -1.756)]
    [InlineData(2025, 3, 20, 9.0, -6, 44.98, -93.27, 255, 98300, 0, 27.092, 27.059, 120.516, -7.320)]
    [InlineData(2025, 1, 21, 15.0, -7, 39.74, -104.98, 1609, 83400, 0, 18.785, 18.743, 221.859, -11.458)]
    [InlineData(2025, 10, 1, 16.0, 0, 53.80, -1.55, 60, 100600, 12, 13.742, 13.676, 244.037, 10.466)]
    [InlineData(2025, 7, 4, 14.5, -7, 33.45, -112.07, 340, 97300, 40, 62.186, 62.179, 255.094, -4.570)]
    public void Place(
        int year, int month, int day, double hourH, double zoneH, double latitudeDeg, double longitudeDeg, double elevationM,
        double pressurePa, double airC, double apparentDeg, double geometricDeg, double azimuthDeg, double equationMin)
    {
        SunPosition sun = SolarPosition.At(
            JulianDay.Of(year, month, day, hourH, zoneH), latitudeDeg, longitudeDeg, elevationM, pressurePa, airC, 67);
        Assert.Equal(apparentDeg, sun.ElevationDeg, 0.001);
        Assert.Equal(geometricDeg, sun.ElevationGeometricDeg, 0.001);
        Assert.Equal(azimuthDeg, sun.AzimuthDeg, 0.001);
        Assert.Equal(equationMin, sun.EquationOfTimeMin, 0.001);
    }

    // Tolerance 3 s: the libraries differ by 2 s and print whole seconds. Both were asked for the events of the UT day: a sunset after 18:00 at UTC−6
    // is that of the evening before.
    [Theory]
    [InlineData(2024, 12, 21, 46.83, -92.22, -6, "07:51:21", "12:07:17", "16:23:14")]
    [InlineData(2024, 6, 20, 46.83, -92.22, -6, "04:14:26", "12:10:38", "20:06:37")]
    [InlineData(2025, 3, 20, 46.83, -92.22, -6, "06:11:08", "12:16:09", "18:20:38")]
    [InlineData(2025, 12, 21, 53.55, -113.49, -7, "08:48:31", "12:32:18", "16:16:04")]
    public void Sunrise_transit_sunset(
        int year, int month, int day, double latitudeDeg, double longitudeDeg, double zoneH, string rise, string transit, string set)
    {
        SunDay.RisesAndSets found = Assert.IsType<SunDay.RisesAndSets>(
            DaySpan.Of(year, month, day, latitudeDeg, longitudeDeg, zoneH, 69.2));
        Assert.Equal(ClockH(rise), found.SunriseH, 3 / 3600.0);
        Assert.Equal(ClockH(transit), found.TransitH, 3 / 3600.0);
        int evening = ClockH(set) - zoneH >= 24 ? day - 1 : day;
        SunDay.RisesAndSets before = Assert.IsType<SunDay.RisesAndSets>(
            DaySpan.Of(year, month, evening, latitudeDeg, longitudeDeg, zoneH, 69.2));
        Assert.Equal(ClockH(set), before.SunsetH, 3 / 3600.0);
    }

    // Equation of time to 0.005 min and declination to 0.001° (printed digits).
    [Theory]
    [InlineData(1, 21, -11.345, -19.782)]
    [InlineData(2, 11, -14.184, -13.847)]
    [InlineData(3, 21, -7.059, 0.444)]
    [InlineData(5, 14, 3.674, 18.757)]
    [InlineData(6, 21, -1.854, 23.438)]
    [InlineData(11, 3, 16.437, -15.227)]
    [InlineData(12, 21, 1.819, -23.438)]
    public void Equation_of_time_and_declination_at_noon_2025(int month, int day, double equationMin, double declinationDeg)
    {
        SunPosition sun = SolarPosition.At(JulianDay.Of(2025, month, day, 12, 0), 40, 0, 0, 101_325, 10, 69.2);
        Assert.Equal(equationMin, sun.EquationOfTimeMin, 0.005);
        Assert.Equal(declinationDeg, sun.DeclinationDeg, 0.001);
    }

    // The profile angle and incidence of two of the places above; tolerance 0.01° and 0.02°.
    [Theory]
    [InlineData(18.7847, 221.859, 180, 24.545)]
    [InlineData(18.7847, 221.859, 200, 20.127)]
    [InlineData(27.0917, 120.516, 150, 30.440)]
    public void Profile_angle(double elevationDeg, double sunAzimuthDeg, double wallAzimuthDeg, double expectedDeg)
    {
        Assert.True(PlaneToSun.TryProfileAngle(elevationDeg, sunAzimuthDeg, wallAzimuthDeg, out double profileDeg));
        Assert.Equal(expectedDeg, profileDeg, 0.01);
        Assert.False(PlaneToSun.TryProfileAngle(elevationDeg, sunAzimuthDeg, wallAzimuthDeg + 180, out _));
    }

    [Theory]
    [InlineData(37.5, 180, 18.7847, 221.859, 46.787)]
    [InlineData(90, 150, 27.0917, 120.516, 39.196)]
    public void Incidence(double tiltDeg, double planeAzimuthDeg, double elevationDeg, double sunAzimuthDeg, double expectedDeg)
    {
        double cosine = PlaneToSun.IncidenceCosine(tiltDeg, planeAzimuthDeg, 90 - elevationDeg, sunAzimuthDeg);
        Assert.Equal(expectedDeg, Math.Acos(cosine) * 180 / Math.PI, 0.02);
    }

    private static double ClockH(string text)
    {
        string[] parts = text.Split(':');
        return int.Parse(parts[0], System.Globalization.CultureInfo.InvariantCulture)
            + (int.Parse(parts[1], System.Globalization.CultureInfo.InvariantCulture) / 60.0)
            + (int.Parse(parts[2], System.Globalization.CultureInfo.InvariantCulture) / 3600.0);
    }
}
