using Glazewright.Science.Weather;

namespace Glazewright.Published.Tests.Weather;

/// <summary>Design days in the .ddy files of public weather stations (read; outside the repository) against the headers of the same stations' EPW files and the statistics files beside them. ASHRAE Handbook—Fundamentals 2009.</summary>
public class StationDesignDayFiles
{
    [Theory]
    [InlineData("USA_CO_Denver.Intl.AP.725650_TMY3")]
    [InlineData("USA_GA_Atlanta-Hartsfield-Jackson.Intl.AP.722190_TMY3")]
    [InlineData("USA_NY_Buffalo-Greater.Buffalo.Intl.AP.725280_TMY3")]
    public void Say_what_the_header_says(string station)
    {
        DesignConditions ours = Read(station);
        DesignConditions header = Assert.IsType<HeaderConditions.Printed>(WeatherCases.ReadOrSkip(station + ".epw.gz").Conditions).Values;
        Assert.Contains("2009", ours.Edition);
        Assert.Equal(Comparable(header, ours.Edition), Comparable(ours, ours.Edition));
    }

    [Theory]
    [InlineData("USA_FL_MacDill.AFB.747880_TMY3")]
    [InlineData("USA_CO_Denver.Intl.AP.725650_TMY3")]
    public void Say_what_the_statistics_file_says(string station)
    {
        DesignConditions ours = Read(station);
        DesignConditions statistics = Assert.IsType<HeaderConditions.Printed>(
            StatisticsFile.Read(File.ReadAllBytes(WeatherCases.FileOrSkip(Path.Combine("design", station + ".stat.gz"))))).Values;
        Assert.Equal(Comparable(statistics, ours.Edition), Comparable(ours, ours.Edition));
    }

    // Denver as the sister table prints it: −17.4, 34.6 / 15.7, lowest of an average year −22.7.
    [Fact]
    public void Denver()
    {
        DesignConditions v = Read("USA_CO_Denver.Intl.AP.725650_TMY3");
        Assert.Equal([-17.4, 34.6, 15.7, -22.7], [v.Heating996DryBulbC, v.Cooling04DryBulbC, v.Cooling04WetBulbC, v.MeanAnnualMinC]);
    }

    private static DesignConditions Read(string station) => Assert.IsType<DesignFileReading.Read>(
        DesignDayFile.Read(File.ReadAllBytes(WeatherCases.FileOrSkip(Path.Combine("design", station + ".ddy.gz"))))).Values;

    // A design-day file does not print return periods or yearly wind.
    private static DesignConditions Comparable(DesignConditions v, string edition) => v with
    {
        Edition = edition,
        ColdestMonthWind1PctMs = null,
        Wind1PctMs = null,
        Return20YearMinC = null,
        Return20YearMaxC = null,
        Return20YearPrinted = false,
    };
}
