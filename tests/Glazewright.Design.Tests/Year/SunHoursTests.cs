using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Year;
using Glazewright.Science.Sun;
using Glazewright.Science.Weather;

namespace Glazewright.Design.Tests.Year;

/// <summary>
/// The year's sunrise and sunset at any latitude, against the solar position algorithm's own events, which agree with two general libraries (Published tests).
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
                // Whole minutes, and a sun known to 0.01°: 1.2 min.
                SunDay.RisesAndSets span = Assert.IsType<SunDay.RisesAndSets>(sun);
                Assert.Equal(span.SunriseH * 60, targets.SunriseMinute[day], 1.2);
                Assert.Equal(span.SunsetH * 60, targets.SunsetMinute[day], 1.2);
            }
        }

        // Ours are calendar days, the algorithm's reach 12 h either side of the highest stand: the days on which the season turns may fall differently.
        Assert.InRange(targets.DaysWithoutSun - down, -1, 1);
        Assert.InRange(targets.DaysWithoutNight - up, -2, 2);
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
