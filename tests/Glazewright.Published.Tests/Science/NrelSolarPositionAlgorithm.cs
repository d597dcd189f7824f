using Glazewright.Science.Sun;

namespace Glazewright.Published.Tests.Science;

/// <summary>
/// Reda &amp; Andreas 2004 (rev. 2008), NREL/TP-560-34302, worked example, table A5.1: 17 October 2003, 12:30:30, zone −7 h. Numbers read at second hand
/// (a general library's tests that quote the report); equation of time, incidence, sunrise, transit and sunset from memory.
/// </summary>
public class NrelSolarPositionAlgorithm
{
    private static readonly double Jd = JulianDay.Of(2003, 10, 17, 12 + (30.5 / 60), -7);

    private static readonly SunPositionWorking Example = SolarPosition.Working(
        Jd, latitudeDeg: 39.742476, longitudeDeg: -105.1786, elevationM: 1830.14, pressurePa: 82_000, airC: 11, ttMinusUtSeconds: 67);

    // Tolerance: half a unit of the last printed digit.
    [Fact]
    public void Table_A5_1_times()
    {
        SunEphemerisState s = Example.Ephemeris;
        Assert.Equal(2452930.312847, s.JulianDayUt, 5e-7);
        Assert.Equal(0.0379277987, s.JulianCenturyUt, 1e-9);
        Assert.Equal(2452930.313623, s.JulianEphemerisDay, 5e-7);
        Assert.Equal(0.037927819917, s.JulianEphemerisCenturyNumber, 1e-11);
        Assert.Equal(0.003792781992, s.JulianEphemerisMillenniumNumber, 1e-12);
    }

    [Fact]
    public void Table_A5_1_earth()
    {
        SunEphemerisState s = Example.Ephemeris;
        Assert.Equal(24.0182616917, s.HeliocentricLongitudeDeg, 5e-9);
        Assert.Equal(-0.0001011219, s.HeliocentricLatitudeDeg, 5e-11);
        Assert.Equal(0.9965422974, s.DistanceAu, 5e-11);
        Assert.Equal(204.0182616917, s.GeocentricLongitudeDeg, 5e-9);
        Assert.Equal(0.0001011219, s.GeocentricLatitudeDeg, 5e-11);
    }

    [Fact]
    public void Table_A5_1_nutation_and_place()
    {
        SunEphemerisState s = Example.Ephemeris;
        Assert.Equal(17185.861179, s.MoonElongationDeg, 5e-6);
        Assert.Equal(1722.893218, s.SunAnomalyDeg, 5e-6);
        Assert.Equal(18234.075703, s.MoonAnomalyDeg, 5e-6);
        Assert.Equal(18420.071012, s.MoonLatitudeArgumentDeg, 5e-6);
        Assert.Equal(51.686951, s.MoonNodeDeg, 5e-6);
        Assert.Equal(-0.00399840, s.NutationLongitudeDeg, 5e-9);
        Assert.Equal(0.00166657, s.NutationObliquityDeg, 5e-9);
        Assert.Equal(84379.672625, s.MeanObliquityArcsec, 5e-6);
        Assert.Equal(23.440465, s.TrueObliquityDeg, 5e-7);
        Assert.Equal(-0.005711, s.AberrationDeg, 5e-7);
        Assert.Equal(204.0085519281, s.ApparentLongitudeDeg, 5e-9);
        Assert.Equal(318.515579, s.MeanSiderealDeg, 5e-6);
        Assert.Equal(318.511910, s.ApparentSiderealDeg, 5e-6);
        Assert.Equal(202.227408, s.RightAscensionDeg, 5e-6);
        Assert.Equal(-9.31434, s.DeclinationDeg, 5e-6);
    }

    [Fact]
    public void Table_A5_1_observer()
    {
        Assert.Equal(11.105900, Example.HourAngleDeg, 5e-6);
        Assert.Equal(0.002451, Example.ParallaxDeg, 5e-7);
        Assert.Equal(-0.000369, Example.RightAscensionParallaxDeg, 5e-7);
        Assert.Equal(202.22704, Example.TopocentricRightAscensionDeg, 5e-6);
        Assert.Equal(-9.316179, Example.TopocentricDeclinationDeg, 5e-6);
        Assert.Equal(11.10627, Example.TopocentricHourAngleDeg, 5e-6);
        Assert.Equal(39.872046, Example.Position.ElevationGeometricDeg, 5e-6);
        Assert.Equal(0.016332, Example.RefractionDeg, 5e-7);
        Assert.Equal(39.888378, Example.Position.ElevationDeg, 5e-6);
        Assert.Equal(50.11162, Example.Position.ZenithDeg, 5e-6);
        Assert.Equal(14.340241, Example.AstronomersAzimuthDeg, 5e-6);
        Assert.Equal(194.340241, Example.Position.AzimuthDeg, 5e-6);
    }

    [Fact]
    public void Table_A5_1_incidence_and_equation_of_time()
    {
        double cosine = PlaneToSun.IncidenceCosine(30, 180 - 10, Example.Position.ZenithDeg, Example.Position.AzimuthDeg);
        Assert.Equal(25.18700, Math.Acos(cosine) * 180 / Math.PI, 5e-5);
        Assert.Equal(14.641503, Example.Position.EquationOfTimeMin, 1e-5);
    }

    // Tolerance 2 s: the report interpolates three daily places, we solve on the ephemeris itself. The report works on the UT day, in which the
    // sunset of 17 October (0:20 UT) is that of the evening of the 16th by local time.
    [Fact]
    public void Sunrise_transit_and_sunset()
    {
        SunDay.RisesAndSets day = Assert.IsType<SunDay.RisesAndSets>(DaySpan.Of(2003, 10, 17, 39.742476, -105.1786, -7, 67));
        Assert.Equal(ClockH(6, 12, 43), day.SunriseH, 2 / 3600.0);
        Assert.Equal(ClockH(11, 46, 4), day.TransitH, 2 / 3600.0);
        SunDay.RisesAndSets before = Assert.IsType<SunDay.RisesAndSets>(DaySpan.Of(2003, 10, 16, 39.742476, -105.1786, -7, 67));
        Assert.Equal(ClockH(17, 20, 19), before.SunsetH, 2 / 3600.0);
    }

    private static double ClockH(int hour, int minute, int second) => hour + (minute / 60.0) + (second / 3600.0);
}
