using System.Text;
using Glazewright.Science.Weather;

namespace Glazewright.Science.Tests.Weather;

/// <summary>An invented station.</summary>
public class StatisticsFileTests
{
    private const string Sound =
        " Statistics for Nowhere\n - Displaying Design Conditions from \"Climate Design Data, invented\"\n"
        + "\tDesign Stat\tColdestMonth\tDB996\tDB990\tWS010c\tWS_DB996\n\tUnits\t{}\t{C}\t{C}\t{m/s}\t{m/s}\n\tHeating\t1\t-18\t-15\t11\t3\n"
        + "\tDesign Stat\tHottestMonth\tDBR\tDB004\tWB_DB004\tDB010\tWB_DB010\tDB020\tWB_DB020\tWB004\tDB_WB004\tWS_DB004\n\tUnits\n\tCooling\t7\t12\t33\t22\t31\t21.5\t30\t21\t24\t30\t4\n"
        + "\tDesign Stat\tWS010\tDBmin_mean\tDBmax_mean\tDBmin20years\tDBmax20years\n\tUnits\n\tExtremes\t12\t-23\t36\t-28\t39\n";

    [Fact]
    public void A_sound_file_is_read_by_names()
    {
        DesignConditions v = Assert.IsType<HeaderConditions.Printed>(Read(Sound)).Values;
        Assert.Equal((-18, 22, 24, -23, 11), (v.Heating996DryBulbC, v.Cooling04WetBulbC, v.Evaporation04WetBulbC, v.MeanAnnualMinC, v.ColdestMonthWind1PctMs));
        Assert.Equal("Climate Design Data, invented", v.Edition);
    }

    [Fact]
    public void A_missing_or_contradicting_value_is_not_guessed()
    {
        Assert.IsType<HeaderConditions.Unreadable>(Read(Sound.Replace("WB_DB004", "other", StringComparison.Ordinal)));
        Assert.IsType<HeaderConditions.Unreadable>(Read(Sound.Replace("\t33\t22", "\t33\t34", StringComparison.Ordinal)));
        Assert.IsType<HeaderConditions.Unreadable>(Read(Sound.Replace("-18", "cold", StringComparison.Ordinal)));
        Assert.IsType<HeaderConditions.None>(Read("nothing of the kind\n"));
        Assert.IsType<HeaderConditions.None>(Read(""));
        Assert.IsType<HeaderConditions.Unreadable>(StatisticsFile.Read([0x1F, 0x8B, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10]));
    }

    private static HeaderConditions Read(string text) => StatisticsFile.Read(Encoding.Latin1.GetBytes(text));
}
