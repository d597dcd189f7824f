using Glazewright.Science.Weather;

namespace Glazewright.Science.Tests.Weather;

/// <summary>What an EPW or TMY3 file says of rain. Fields, codes and missing values: the EPW data dictionary (read).</summary>
public class RainReadingTests
{
    private const int Observation = 26, Codes = 27, Depth = 33, Span = 34;

    private static WeatherYear Read(params (int Hour, int Field, string Value)[] cells)
    {
        string[] lines = WeatherText.Lines();
        foreach ((int hour, int field, string value) in cells)
        {
            lines = lines.With(hour, field, value);
        }

        return WeatherText.Year(lines.Bytes());
    }

    // Nothing but noughts, and codes that are none: nothing is known.
    [Fact]
    public void A_file_without_a_record_says_nothing()
    {
        Assert.Equal(8760, Read().RainFraction.MissingCount);
        Assert.Equal(8760, WeatherText.Year(WeatherText.Lines(32).Bytes()).RainFraction.MissingCount);
        Assert.Equal(8760, Read((5, Observation, "?"), (6, Codes, "rain"), (7, Depth, "wet"), (8, Depth, ""), (9, Depth, "-1")).RainFraction.MissingCount);
    }

    // Second digit: rain, showers, freezing rain; third: squalls, drizzle. Thunder, snow and fog alone are no rain.
    [Theory]
    [InlineData("909999999", 1)]
    [InlineData("959999999", 1)]
    [InlineData("990999999", 1)]
    [InlineData("998999999", 1)]
    [InlineData("919099099", 1)]
    [InlineData("999999999", 0)]
    [InlineData("099999999", 0)]
    [InlineData("999090999", 0)]
    [InlineData("09999999", 1)] // thunder and rain, the leading zero lost: 009999999
    [InlineData("99999999", 0)] // thunder alone: 099999999
    public void Codes_tell_where_someone_looked(string codes, double rain)
    {
        Assert.Equal(rain, Read((40, Observation, "0"), (40, Codes, codes)).RainFraction[40]);
        Assert.True(double.IsNaN(Read((40, Observation, "9"), (40, Codes, codes)).RainFraction[40]));
    }

    [Fact]
    public void Depths_tell_where_some_hour_has_one()
    {
        WeatherYear year = Read((100, Depth, "0.2"), (100, Span, "1"), (200, Depth, "999"), (300, Depth, "999.000"));
        Assert.Equal(1, year.RainFraction[100]);
        Assert.Equal(0, year.RainFraction[99]);
        Assert.True(double.IsNaN(year.RainFraction[200]) && double.IsNaN(year.RainFraction[300]));
        Assert.Equal(2, year.RainFraction.MissingCount);
    }

    // 2.5 mm in six hours: the last three. At the year's start they reach back over its end.
    [Fact]
    public void A_depth_of_several_hours_lies_in_its_last_ones()
    {
        WeatherYear year = Read((50, Depth, "2.5"), (50, Span, "6"), (1, Depth, "4"), (1, Span, "24"), (80, Depth, "7"), (80, Span, "99"));
        Assert.Equal([48, 49, 50], Enumerable.Range(40, 20).Where(h => year.RainFraction[h] == 1));
        Assert.Equal([0, 1, 8758, 8759], Enumerable.Range(0, 8760).Where(h => h is < 10 or > 8750 && year.RainFraction[h] == 1));
        Assert.Equal([80], Enumerable.Range(60, 60).Where(h => year.RainFraction[h] == 1));
    }

    // Both: what was seen stands where no depth was measured, and a depth is rain whatever was seen.
    [Fact]
    public void Seen_and_measured_add_up()
    {
        WeatherYear year = Read((10, Observation, "0"), (10, Codes, "909999999"), (10, Depth, "0"), (20, Observation, "0"), (20, Codes, "999999999"), (20, Depth, "1.5"));
        Assert.Equal((1, 1, 0), (year.RainFraction[10], year.RainFraction[20], year.RainFraction[30]));
    }

    [Fact]
    public void Rain_reaches_the_minutes()
    {
        MinuteWeather minutes = MinuteWeather.Expand(Read((10, Observation, "0"), (10, Codes, "909999999")));
        Assert.Equal(1, minutes.RainByHour[10]);
        Assert.True(double.IsNaN(minutes.RainByHour[11]));
    }
}
