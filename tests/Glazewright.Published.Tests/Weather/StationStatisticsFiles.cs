using Glazewright.Science.Weather;

namespace Glazewright.Published.Tests.Weather;

/// <summary>Design conditions in the statistics files of public weather stations (read; outside the repository) against the values in the headers of the same stations' EPW files, read by a separate program. ASHRAE Handbook—Fundamentals 2009.</summary>
public class StationStatisticsFiles
{
    [Theory]
    [InlineData("USA_CO_Denver.Intl.AP.725650_TMY3")]
    [InlineData("USA_GA_Atlanta-Hartsfield-Jackson.Intl.AP.722190_TMY3")]
    [InlineData("USA_NY_Buffalo-Greater.Buffalo.Intl.AP.725280_TMY3")]
    public void Say_what_the_header_says(string station)
    {
        HeaderConditions read = StatisticsFile.Read(File.ReadAllBytes(WeatherCases.FileOrSkip(Path.Combine("design", station + ".stat.gz"))));
        DesignConditions ours = Assert.IsType<HeaderConditions.Printed>(read).Values;
        DesignConditions header = Assert.IsType<HeaderConditions.Printed>(WeatherCases.ReadOrSkip(station + ".epw.gz").Conditions).Values;
        Assert.Contains("2009", ours.Edition);
        Assert.Equal(header with { Edition = ours.Edition }, ours);
    }

    // Denver as the sister table prints it: −17.4, 34.6 / 15.7, lowest of an average year −22.7.
    [Fact]
    public void Denver()
    {
        DesignConditions v = Assert.IsType<HeaderConditions.Printed>(
            StatisticsFile.Read(File.ReadAllBytes(WeatherCases.FileOrSkip(Path.Combine("design", "USA_CO_Denver.Intl.AP.725650_TMY3.stat.gz"))))).Values;
        Assert.Equal([-17.4, 34.6, 15.7, -22.7], [v.Heating996DryBulbC, v.Cooling04DryBulbC, v.Cooling04WetBulbC, v.MeanAnnualMinC]);
    }
}
