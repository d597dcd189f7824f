using Glazewright.Science.Weather;

namespace Glazewright.Published.Tests.Weather;

/// <summary>Hours of rain in public files, counted in their text with another tool (awk: codes with a second or third digit below 9 where the observation is 0; depths above 0 and below 999).</summary>
public class RainOfTypicalYears
{
    // Columns: file, hours known, hours of rain. Bologna: 1,902 by its codes and 82 more by depths in hours without them.
    [Theory]
    [InlineData("CAN_BC_Vancouver.Intl.AP.718920_CWEC2016.epw.gz", 8760, 1321)]
    [InlineData("USA_IL_Chicago-OHare.Intl.AP.725300_TMY3.epw.gz", 719, 30)]
    [InlineData("USA_FL_Miami.Intl.AP.722020_TMY3.epw.gz", 3692, 114)]
    [InlineData("PVGIS_TMY_45.000N_8.000E_2005-2023.epw.gz", 0, 0)]
    [InlineData("TMY3_723170_NC-Greensboro.csv.gz", 8760, 358)]
    public void Are_read_as_counted(string file, int known, int wet)
    {
        WeatherYear year = WeatherCases.ReadOrSkip(file);
        Assert.Equal(known, 8760 - year.RainFraction.MissingCount);
        Assert.Equal(wet, Enumerable.Range(0, 8760).Count(h => year.RainFraction[h] == 1));
    }
}
