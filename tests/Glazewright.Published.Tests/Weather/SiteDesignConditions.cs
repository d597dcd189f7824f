using System.Globalization;
using Glazewright.Science.Weather;

namespace Glazewright.Published.Tests.Weather;

/// <summary>
/// Climatic design values as printed in the headers of 27 public EPW files, ASHRAE Handbook—Fundamentals 2009 and 2017 (DS-1; read in the headers by a separate
/// program into a table outside the repository), and values of the typical years themselves (DS-2; computed with numpy).
/// </summary>
public class SiteDesignConditions
{
    public static TheoryData<string> Sites()
    {
        var data = new TheoryData<string>();
        foreach (string line in Table().Skip(1))
        {
            string[] f = Cells(line);
            if (f[^1].Contains("header line 2 of ", StringComparison.Ordinal) && WeatherCases.Folder is string folder
                && File.Exists(Path.Combine(folder, f[^1].Replace("header line 2 of ", string.Empty, StringComparison.Ordinal))))
            {
                data.Add(f[0]);
            }
        }

        if (data.Count == 0)
        {
            data.Add("absent");
        }

        return data;
    }

    [Theory]
    [MemberData(nameof(Sites))]
    public void Header_values_are_read_exactly_and_a_typical_year_does_not_replace_them(string site)
    {
        WeatherCases.FileOrSkip("site-design-conditions.csv");
        string[] names = Cells(Table()[0]);
        string[] row = Cells(Table().First(l => l.StartsWith(site + ",", StringComparison.Ordinal)));
        double Cell(string name) => double.Parse(row[Array.IndexOf(names, name)], CultureInfo.InvariantCulture);
        WeatherYear year = WeatherCases.ReadOrSkip(row[^1].Replace("header line 2 of ", string.Empty, StringComparison.Ordinal));
        DesignConditions v = Assert.IsType<HeaderConditions.Printed>(year.Conditions).Values;
        Assert.Contains(row[Array.IndexOf(names, "design_edition")][^4..], v.Edition);
        foreach ((string name, double? read) in new (string, double?)[]
        {
            ("heating_99.6_db_c", v.Heating996DryBulbC), ("heating_99_db_c", v.Heating99DryBulbC), ("mcws_at_99.6_db_ms", v.WindAtHeating996Ms),
            ("wind_1pct_coldest_month_ms", v.ColdestMonthWind1PctMs), ("daily_range_hottest_month_c", v.HottestMonthDailyRangeK),
            ("cooling_0.4_db_c", v.Cooling04DryBulbC), ("cooling_0.4_mcwb_c", v.Cooling04WetBulbC), ("cooling_1_db_c", v.Cooling1DryBulbC),
            ("cooling_1_mcwb_c", v.Cooling1WetBulbC), ("evaporation_0.4_wb_c", v.Evaporation04WetBulbC), ("evaporation_0.4_mcdb_c", v.Evaporation04DryBulbC),
            ("mcws_at_0.4_db_ms", v.WindAtCooling04Ms), ("extreme_wind_1pct_ms", v.Wind1PctMs), ("mean_annual_min_db_c", v.MeanAnnualMinC),
            ("mean_annual_max_db_c", v.MeanAnnualMaxC), ("return20y_min_db_c", v.Return20YearMinC), ("return20y_max_db_c", v.Return20YearMaxC),
        })
        {
            Assert.True(Cell(name) == read, $"{name}: {read} for {Cell(name)}");
        }

        Assert.Equal(Cell("coldest_month"), v.ColdestMonth);
        Assert.Equal(Cell("hottest_month"), v.HottestMonth);

        // Percentile definitions differ by one rank of 8,760, one printed step of 0.1 K or (Celsius from Fahrenheit) 0.6 K.
        ComputedConditions computed = ComputedConditions.Of(year);
        Assert.Equal(Cell("typical_year_p0.4_low_db_c"), computed.Heating996DryBulbC, tolerance: 0.6);
        Assert.Equal(Cell("typical_year_p99.6_high_db_c"), computed.Cooling04DryBulbC, tolerance: 0.6);
        Assert.Equal(Cell("typical_year_min_c"), computed.LowestDryBulbC, tolerance: 0.051);
        Assert.Equal(Cell("typical_year_max_c"), computed.HighestDryBulbC, tolerance: 0.051);
        Assert.Equal(Cell("hdd18_typical_year"), computed.HeatingDegreeDays18, tolerance: 2);
        double milder = computed.Heating996DryBulbC - v.Heating996DryBulbC;
        Assert.Equal(milder > 0.5, WeatherReport.Of(year).Findings.Any(f => f.Text.Contains("milder", StringComparison.Ordinal)));
    }

    /// <summary>DS-1 and DS-2 as printed in the case list: Duluth and Denver.</summary>
    [Theory]
    [InlineData("USA_MN_Duluth.Intl.AP.727450_TMY3.epw.gz", -28.6, 29.2, 21.0, -26.7)]
    [InlineData("USA_CO_Denver.Intl.AP.725650_TMY3.epw.gz", -17.4, 34.6, 15.7, -13.9)]
    public void Duluth_and_Denver(string file, double heatingC, double coolingC, double wetBulbC, double typicalC)
    {
        WeatherYear year = WeatherCases.ReadOrSkip(file);
        DesignConditions v = Assert.IsType<HeaderConditions.Printed>(year.Conditions).Values;
        Assert.Equal(heatingC, v.Heating996DryBulbC, tolerance: 0.05);
        Assert.Equal(coolingC, v.Cooling04DryBulbC, tolerance: 0.05);
        Assert.Equal(wetBulbC, v.Cooling04WetBulbC, tolerance: 0.05);
        Assert.Equal(typicalC, ComputedConditions.Of(year).Heating996DryBulbC, tolerance: 0.11);
        Assert.Contains(WeatherReport.Of(year).Findings, f => f.Gravity == WeatherGravity.Warning && f.Text.Contains(ComputedConditions.Label, StringComparison.Ordinal));
    }

    private static string[] Table() =>
        WeatherCases.Folder is string folder && File.Exists(Path.Combine(folder, "site-design-conditions.csv"))
            ? File.ReadAllLines(Path.Combine(folder, "site-design-conditions.csv"))
            : ["absent"];

    /// <summary>Station names in the table hold no commas outside quotes.</summary>
    private static string[] Cells(string line)
    {
        var cells = new List<string>();
        bool quoted = false;
        int from = 0;
        for (int i = 0; i <= line.Length; i++)
        {
            if (i == line.Length || (line[i] == ',' && !quoted))
            {
                cells.Add(line[from..i].Trim('"'));
                from = i + 1;
            }
            else if (line[i] == '"')
            {
                quoted = !quoted;
            }
        }

        return [.. cells];
    }
}
