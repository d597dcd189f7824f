using System.Text;
using Glazewright.Science.Weather;

namespace Glazewright.Science.Tests.Weather;

/// <summary>An invented station.</summary>
public class DesignDayFileTests
{
    private static readonly string s_sound = Sound();

    [Fact]
    public void A_sound_file_is_read_by_names_and_the_lower_extreme_is_the_minimum()
    {
        DesignFileReading.Read read = Assert.IsType<DesignFileReading.Read>(Of(s_sound));
        DesignConditions v = read.Values;
        Assert.Equal((-18, 33, 22, 24, 29), (v.Heating996DryBulbC, v.Cooling04DryBulbC, v.Cooling04WetBulbC, v.Evaporation04WetBulbC, v.Evaporation04DryBulbC));
        Assert.Equal((-23.5, 36.5), (v.MeanAnnualMinC, v.MeanAnnualMaxC));
        Assert.Equal((3.5, 4.5, 1, 7), (v.WindAtHeating996Ms, v.WindAtCooling04Ms, v.ColdestMonth, v.HottestMonth));
        Assert.Equal("Invented Values 2031", v.Edition);
        Assert.Equal(new DesignPlace(42, -93.5), read.Station);
    }

    [Fact]
    public void Line_ends_letter_codes_case_and_comments_do_not_matter()
    {
        DesignConditions v = Assert.IsType<DesignFileReading.Read>(Of(s_sound)).Values;
        foreach (byte[] other in new[]
        {
            Encoding.Latin1.GetBytes(s_sound.Replace("\n", "\r\n", StringComparison.Ordinal)),
            [0xEF, 0xBB, 0xBF, .. Encoding.UTF8.GetBytes(s_sound)],
            [0xFF, 0xFE, .. Encoding.Unicode.GetBytes(s_sound)],
            Encoding.Latin1.GetBytes(s_sound.Replace("SizingPeriod:DesignDay", "SIZINGPERIOD:DESIGNDAY", StringComparison.Ordinal)),
            Encoding.Latin1.GetBytes(s_sound.Replace(",\n ", ", ", StringComparison.Ordinal)),
        })
        {
            Assert.Equal(v, Assert.IsType<DesignFileReading.Read>(DesignDayFile.Read(other)).Values);
        }

        DesignConditions bare = Assert.IsType<DesignFileReading.Read>(Of(string.Join('\n', s_sound.Split('\n').Where(l => !l.StartsWith('!'))))).Values;
        Assert.Equal((null, "edition not named"), (bare.MeanAnnualMinC, bare.Edition));
    }

    [Fact]
    public void All_that_is_wrong_is_told_at_once_with_its_line()
    {
        string bad = s_sound
            .Replace("\n -18,", "\n cold,", StringComparison.Ordinal)
            .Replace("\n 33,", "\n 91,", StringComparison.Ordinal)
            .Replace("\n 21.5,", "\n ,", StringComparison.Ordinal)
            .Replace("Ann Clg 2%", "Ann Clg 3%", StringComparison.Ordinal);
        IReadOnlyList<WeatherProblem> problems = Assert.IsType<DesignFileReading.Refused>(Of(bad)).Problems;
        string[] lines = bad.Split('\n');
        Assert.Equal(4, problems.Count);
        Assert.Equal(" cold,", lines[problems.Single(p => p.Kind == WeatherProblemKind.NotANumber).Line - 1]);
        Assert.Equal(" 91,", lines[problems.Single(p => p.Kind == WeatherProblemKind.OutOfRange).Line - 1]);
        Assert.Contains(problems, p => p.Kind == WeatherProblemKind.Missing && p.What.Contains("Clg 2%", StringComparison.Ordinal));
        Assert.Contains(problems, p => p.Kind == WeatherProblemKind.Missing && p.What.StartsWith("Wet bulb", StringComparison.Ordinal) && p.Line > 0);
    }

    [Fact]
    public void Cut_off_contradicting_doubled_and_empty_files()
    {
        Assert.Contains(Assert.IsType<DesignFileReading.Refused>(Of(s_sound.TrimEnd()[..^1])).Problems, p => p.What.Contains("does not end", StringComparison.Ordinal));
        Assert.IsType<DesignFileReading.Refused>(Of(s_sound.Replace("\n -15,", "\n -25,", StringComparison.Ordinal)));
        Assert.Contains(Assert.IsType<DesignFileReading.Refused>(Of(s_sound + Day("Ann Htg 99% Condns DB", 1, -14, 0, "-14", 3))).Problems, p => p.What.StartsWith("A second", StringComparison.Ordinal));
        Assert.IsType<DesignFileReading.Refused>(DesignDayFile.Read([0x1F, 0x8B, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10]));
        Assert.IsType<DesignFileReading.Refused>(Of("just words"));
        Assert.IsType<DesignFileReading.None>(Of(""));
        Assert.IsType<DesignFileReading.None>(Of("! no design days here\nSite:Location, Nowhere, 1, 2, 0, 0;\n"));
    }

    [Fact]
    public void Days_of_single_months_are_not_taken_for_the_years()
    {
        string more = s_sound + Day("January .4% Condns DB=>MCWB", 1, 12, 8, "7", 3);
        Assert.Equal(33, Assert.IsType<DesignFileReading.Read>(Of(more)).Values.Cooling04DryBulbC);
    }

    private static DesignFileReading Of(string text) => DesignDayFile.Read(Encoding.Latin1.GetBytes(text));

    private static string Sound() =>
        "! Using Design Conditions from \"Invented Values 2031\"\n"
        + "! Nowhere Extreme Annual Temperatures, Max Drybulb=-23.5\u00B0C Min Drybulb=36.5\u00B0C\n"
        + "Site:Location,\n Nowhere,\n 42,\n -93.5,\n -6,\n 290;\n"
        + Day("Ann Htg 99.6% Condns DB", 1, -18, 0, "-18.2", 3.5)
        + Day("Ann Htg 99% Condns DB", 1, -15, 0, "-15.1", 3.5)
        + Day("Ann Clg .4% Condns DB=>MWB", 7, 33, 11, "22", 4.5)
        + Day("Ann Clg 1% Condns DB=>MWB", 7, 31, 11, "21.5", 4.5)
        + Day("Ann Clg 2% Condns DB=>MWB", 7, 30, 11, "21", 4.5)
        + Day("Ann Clg .4% Condns WB=>MDB", 7, 29, 11, "24", 4.5);

    private static string Day(string name, int month, double dryC, double rangeK, string wetC, double windMs) => FormattableString.Invariant(
        $"SizingPeriod:DesignDay,\n Nowhere {name}, !- Name\n {month},\n 21,\n WinterDesignDay,\n {dryC},\n {rangeK},\n DefaultMultipliers,\n ,\n Wetbulb,\n {wetC},\n ,\n ,\n ,\n ,\n 98000.,\n {windMs},\n 270,\n No,\n No,\n No,\n ASHRAEClearSky;\n");
}
