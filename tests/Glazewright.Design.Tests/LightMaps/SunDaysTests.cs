using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.LightMaps;
using Glazewright.Science.Sun;

namespace Glazewright.Design.Tests.LightMaps;

/// <summary>
/// The sun's table of the light report. Clock times: computed with pvlib's solar position (snapshot 6382338a) and astronomy-engine 2.1.19, which agree within 2 s,
/// for other years than ours: a date's events move by up to 2 min with the leap cycle. Noon heights: closed form 90° − |latitude − declination|.
/// </summary>
public class SunDaysTests
{
    [Theory]
    [InlineData(46.83, -92.22, -6, 12, "07:51:21", "12:07:17", "16:23:14")]
    [InlineData(53.55, -113.49, -7, 12, "08:48:31", "12:32:18", "16:16:04")]
    public void December_keeps_the_libraries_clock(double latitudeDeg, double longitudeDeg, double zoneH, int month, string rise, string transit, string set)
    {
        SunOfDay day = SunDays.Of(At(latitudeDeg, longitudeDeg, zoneH, 90))[month - 1];
        SunDay.RisesAndSets sun = Assert.IsType<SunDay.RisesAndSets>(day.Sun);
        Assert.Equal(Hours(rise), sun.SunriseH, 2 / 60.0);
        Assert.Equal(Hours(transit), sun.TransitH, 2 / 60.0);
        Assert.Equal(Hours(set), sun.SunsetH, 2 / 60.0);
    }

    // 0.1° as in the table: refraction below 0.04° at these heights, declination of the date within 0.03° of the solstice's.
    [Theory]
    [InlineData(40, 6, 73.45, 180), InlineData(40, 12, 26.55, 180), InlineData(-35, 6, 31.57, 0), InlineData(0, 6, 66.57, 0), InlineData(0, 12, 66.57, 180)]
    public void Noon_stands_at_the_closed_form(double latitudeDeg, int month, double elevationDeg, double azimuthDeg)
    {
        SunOfDay day = SunDays.Of(At(latitudeDeg, 0, 0, 90))[month - 1];
        Assert.Equal(elevationDeg, day.NoonElevationDeg, 0.1);
        Assert.Equal(0, Math.IEEERemainder(day.NoonAzimuthDeg - azimuthDeg, 360), 0.5);

        // The ridge runs east: the section shows the noon sun at its own height, on the side it stands. The left wall faces south.
        Assert.Equal(day.NoonElevationDeg, day.ProfileDeg!.Value, 0.01);
        Assert.Equal(azimuthDeg == 180, day.FromLeft);
    }

    [Fact]
    public void Along_the_ridge_there_is_no_angle_and_a_turned_ridge_steepens_it()
    {
        Assert.Null(SunDays.Of(At(45, 0, 0, 0))[11].ProfileDeg);
        SunOfDay turned = SunDays.Of(At(45, 0, 0, 60))[11];
        double elevation = turned.NoonElevationDeg * Math.PI / 180;
        Assert.Equal(Math.Atan(Math.Tan(elevation) / Math.Cos(30 * Math.PI / 180)) * 180 / Math.PI, turned.ProfileDeg!.Value, 0.1);
    }

    [Theory]
    [InlineData(82), InlineData(90), InlineData(-90)]
    public void Beyond_the_circles_the_sun_stays_up_or_down(double latitudeDeg)
    {
        EqList<SunOfDay> days = SunDays.Of(At(latitudeDeg, 0, 0, 90));
        (int june, int december) = latitudeDeg > 0 ? (5, 11) : (11, 5);
        Assert.IsType<SunDay.StaysUp>(days[june].Sun);
        Assert.IsType<SunDay.StaysDown>(days[december].Sun);
        Assert.Null(days[december].ProfileDeg);
        Assert.Equal(90 - Math.Abs(latitudeDeg) + 23.44, days[june].NoonElevationDeg, 0.1);
    }

    private static Site At(double latitudeDeg, double longitudeDeg, double zoneH, double bearingDeg) => TestJobs.OneHouse().Site with
    {
        LatitudeDeg = latitudeDeg,
        LongitudeDeg = longitudeDeg,
        ZoneHours = zoneH,
        RangeBearingDeg = bearingDeg,
        ElevationM = 100,
    };

    private static double Hours(string clock) => TimeSpan.Parse(clock, System.Globalization.CultureInfo.InvariantCulture).TotalHours;
}
