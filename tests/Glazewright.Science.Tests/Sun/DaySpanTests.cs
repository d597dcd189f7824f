using CsCheck;
using Glazewright.Science.Sun;

namespace Glazewright.Science.Tests.Sun;

public class DaySpanTests
{
    [Fact]
    public void Polar_day_and_polar_night_are_cases_of_their_own()
    {
        Assert.IsType<SunDay.StaysUp>(DaySpan.Of(2025, 6, 21, 70, 20, 1, 69.2));
        Assert.IsType<SunDay.StaysDown>(DaySpan.Of(2025, 12, 21, 70, 20, 1, 69.2));
        Assert.IsType<SunDay.StaysUp>(DaySpan.Of(2025, 12, 21, -70, 20, 1, 69.2));
        Assert.IsType<SunDay.StaysUp>(DaySpan.Of(2025, 6, 21, 90, 0, 0, 69.2));
    }

    [Fact]
    public void Any_place_and_date_has_an_answer_in_order() =>
        Gen.Select(Gen.Int[1900, 2100], Gen.Int[1, 12], Gen.Int[1, 28], Gen.Double[-90, 90], Gen.Double[-180, 180])
            .Sample(
                (year, month, day, latitudeDeg, longitudeDeg) =>
                {
                    SunDay found = DaySpan.Of(year, month, day, latitudeDeg, longitudeDeg, 0, 69.2);
                    if (found is SunDay.RisesAndSets r)
                    {
                        Assert.True(r.SunriseH < r.TransitH && r.TransitH < r.SunsetH);
                        Assert.InRange(r.DayLengthH, 0, 24.001);
                    }
                },
                iter: 300);

    [Fact]
    public void At_sunrise_the_upper_limb_is_on_the_horizon()
    {
        SunDay.RisesAndSets day = Assert.IsType<SunDay.RisesAndSets>(DaySpan.Of(2025, 4, 9, 42, -90.3, -6, 69.2));
        SunPosition rise = SolarPosition.At(JulianDay.Of(2025, 4, 9, day.SunriseH, -6), 42, -90.3, 0, 101_000, 10, 69.2);

        // Centre at −50′, less the parallax of 9″ that the convention leaves out.
        Assert.Equal(-0.8333, rise.ElevationGeometricDeg, 0.003);
    }

    [Fact]
    public void South_of_the_equator_the_seasons_turn()
    {
        SunDay.RisesAndSets north = Assert.IsType<SunDay.RisesAndSets>(DaySpan.Of(2025, 6, 21, 40, 0, 0, 69.2));
        SunDay.RisesAndSets south = Assert.IsType<SunDay.RisesAndSets>(DaySpan.Of(2025, 6, 21, -40, 0, 0, 69.2));
        Assert.True(north.DayLengthH > south.DayLengthH + 5);
    }
}
