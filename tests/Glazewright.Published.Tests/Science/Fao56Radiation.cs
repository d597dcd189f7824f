using Glazewright.Science.Sky;
using Glazewright.Science.Sun;

namespace Glazewright.Published.Tests.Science;

/// <summary>
/// FAO Irrigation and Drainage Paper 56 (Allen and others 1998), examples 8 to 10: read at second hand (a library's tests that quote them) further days
/// computed from the paper's eq. 21.
/// </summary>
public class Fao56Radiation
{
    // Half of the last printed digit.
    [Fact]
    public void Example_8_extraterrestrial_at_20_S()
    {
        Assert.Equal(0.120, HourAngleSun.DeclinationFao56Deg(246) * Math.PI / 180, 0.0005);
        Assert.Equal(1.527, HourAngleSun.SunsetHourAngleDeg(-20, HourAngleSun.DeclinationFao56Deg(246)) * Math.PI / 180, 0.0005);
        Assert.Equal(32.2, HourAngleSun.DailyExtraterrestrialFao56MJm2(-20, 246), 0.05);
    }

    [Fact]
    public void Example_9_daylight_hours() =>
        Assert.Equal(11.7, HourAngleSun.SunsetHourAngleDeg(-20, HourAngleSun.DeclinationFao56Deg(246)) * 24 / 180, 0.05);

    // 15 May stands for the month (day 135); printed 25.1, 10.9 and 14.45 to 14.5.
    [Fact]
    public void Example_10_sunshine_in_May_at_22_54_S()
    {
        double outside = HourAngleSun.DailyExtraterrestrialFao56MJm2(-22.9, 135);
        double daylightH = HourAngleSun.SunsetHourAngleDeg(-22.9, HourAngleSun.DeclinationFao56Deg(135)) * 24 / 180;
        Assert.Equal(25.1, outside, 0.05);
        Assert.Equal(10.9, daylightH, 0.05);
        Assert.InRange((0.25 + (0.50 * 7.1 / daylightH)) * outside, 14.4, 14.55);
    }

    [Theory]
    [InlineData(45, 15, 11.931)]
    [InlineData(45, 172, 41.911)]
    [InlineData(45.72, 105, 32.984)]
    [InlineData(50.8, 187, 41.088)]
    [InlineData(46.83, 355, 9.331)]
    [InlineData(33.45, 185, 41.257)]
    public void Daily_extraterrestrial(double latitudeDeg, int dayOfYear, double expectedMJm2) =>
        Assert.Equal(expectedMJm2, HourAngleSun.DailyExtraterrestrialFao56MJm2(latitudeDeg, dayOfYear), 0.01);
}

/// <summary>Normal extraterrestrial irradiance with the constant 1366.1 W/m² by Spencer's series and the one-term form; computed with pvlib (snapshot 6382338a).</summary>
public class ExtraterrestrialByGeneralLibrary
{
    [Theory]
    [InlineData(1, 1413.98)]
    [InlineData(80, 1376.89)]
    [InlineData(172, 1321.62)]
    [InlineData(264, 1355.05)]
    [InlineData(355, 1412.71)]
    public void Spencer(int dayOfYear, double expectedWm2) =>
        Assert.Equal(expectedWm2, Extraterrestrial.NormalWm2(dayOfYear, 1366.1), 0.01);

    [Theory]
    [InlineData(1, 1411.18)]
    [InlineData(80, 1374.78)]
    [InlineData(172, 1321.75)]
    [InlineData(355, 1410.52)]
    public void One_term(int dayOfYear, double expectedWm2) =>
        Assert.Equal(expectedWm2, Extraterrestrial.NormalOneTermWm2(dayOfYear, 1366.1), 0.01);
}
