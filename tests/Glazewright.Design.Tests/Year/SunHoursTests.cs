using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Year;
using Glazewright.Science.Sun;
using Glazewright.Science.Weather;

namespace Glazewright.Design.Tests.Year;

/// <summary>
/// The year's sunrise and sunset at any latitude, against the solar position algorithm's own events (its horizon lies 0.83° lower: refraction and disc, which the
/// schedule leaves out).
/// </summary>
public class SunHoursTests
{
    private static readonly CropPeriod BySun = new(
        "all", "herbs", 1, 52, new ClimateTarget(22, 65), new ClimateTarget(17, 75), new DayMark.Sunrise(30), new DayMark.Sunset(-30), 60, 30, 2, 0.6, 0, 0, false);

    [Fact]
    public void A_sun_that_sets_after_midnight_does_not_make_the_whole_day_light()
    {
        // Up from 02:55 to 24:03, as at 65° N, 22° W by Greenwich time in June.
        double[] up = [.. Enumerable.Range(0, 1440).Select(m => m is < 3 or >= 175 ? 1.0 : -1.0)];
        for (int m = 0; m < 1440; m++)
        {
            up[m] *= 1 - Math.Abs(m - 810) / 2000.0;
        }

        Assert.Equal(new SunHours(175, 1440, false, false), SunHours.Of(up));
    }

    [Theory]
    [InlineData(82), InlineData(90), InlineData(-90), InlineData(70), InlineData(0), InlineData(-35)]
    public void Polar_days_and_nights_are_those_of_the_solar_position_algorithm(double latitudeDeg)
    {
        YearTargets targets = new([BySun], MinuteWeather.Expand(Dim(latitudeDeg)));
        int down = 0, up = 0;
        for (int day = 0; day < 365; day++)
        {
            int month = CommonYear.MonthOfDay(day);
            SunDay sun = DaySpan.Of(2011, month, day - CommonYear.FirstDayOf(month) + 1, latitudeDeg, 0, 0, 66);
            down += sun is SunDay.StaysDown ? 1 : 0;
            up += sun is SunDay.StaysUp ? 1 : 0;
            if (Math.Abs(latitudeDeg) < 50)
            {
                // 0.83° of depression is 3.3 min at the equator, 4.1 at 35° on the equinox and some 5 at the solstices.
                SunDay.RisesAndSets span = Assert.IsType<SunDay.RisesAndSets>(sun);
                Assert.InRange(targets.SunriseMinute[day] - span.SunriseH * 60, 2.5, 6.5);
                Assert.InRange(targets.SunsetMinute[day] - span.SunsetH * 60, -6.5, -2.5);
            }
        }

        // The lower horizon costs the polar night, and gives the polar day, the days in which the declination moves 0.83°: at most 0.4° a day near the equinox,
        // much slower near the solstices.
        Assert.InRange(targets.DaysWithoutSun - down, 0, 12);
        Assert.InRange(up - targets.DaysWithoutNight, 0, 12);
        for (int day = 0; day < 365; day++)
        {
            bool dark = targets.SunriseMinute[day] == targets.SunsetMinute[day];
            Asked noon = targets.At(day * 1440 + 725);
            Assert.True(!dark || (!noon.Day && noon.TemperatureC == 17));
        }
    }

    private static WeatherYear Dim(double latitudeDeg)
    {
        var station = new WeatherStation("Invented", "", "", "", "0", latitudeDeg, 0, 0, 100);
        return SyntheticYear.Make(
            station, [.. Enumerable.Range(1, 12).Select(m => MonthlyNormals.FromGlobal(station, m, 5, 9, 1, 3, 0.6, 0, 0, 0.1, 4))], 3, 270);
    }
}
