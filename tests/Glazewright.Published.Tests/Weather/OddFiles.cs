using Glazewright.Science.Weather;

namespace Glazewright.Published.Tests.Weather;

/// <summary>Irregular real files (public repositories; not in this one): each must be read or refused for the right reason.</summary>
public class OddFiles
{
    [Fact]
    public void Thirty_two_fields_and_the_2001_design_line_are_read()
    {
        WeatherYear year = WeatherCases.ReadOrSkip("odd/Houston_TMY2_32-fields_2001-header.epw.gz");
        DesignConditions v = Assert.IsType<HeaderConditions.Printed>(year.Conditions).Values;

        // Read in the header itself.
        Assert.Equal(-2.6, v.Heating996DryBulbC);
        Assert.Equal(-0.4, v.Heating99DryBulbC);
        Assert.Equal(3.6, v.WindAtHeating996Ms);
        Assert.Equal(35.5, v.Cooling04DryBulbC);
        Assert.Equal(24.9, v.Cooling04WetBulbC);
        Assert.Equal(26.6, v.Evaporation04WetBulbC);
        Assert.Equal(10.1, v.HottestMonthDailyRangeK);
        Assert.Equal(36.8, v.MeanAnnualMaxC);
        Assert.Equal(-5.6, v.MeanAnnualMinC);
        Assert.False(v.Return20YearPrinted);
        Assert.Equal(10.6, year.DryBulbC[0]);
        Assert.Equal(ClosureVerdict.Closes, RadiationClosure.Of(year).Verdict);
    }

    [Fact]
    public void Seven_header_lines_lose_no_hour()
    {
        // Scrambled test data: 1 January 01:00 is 5.0 °C (read in the file).
        WeatherReading reading = WeatherFile.Read(File.ReadAllBytes(WeatherCases.FileOrSkip("odd/Synthetic_seven-header-lines_8760.epw.gz")));
        WeatherYear year = Assert.IsType<WeatherReading.Read>(reading).Year;
        Assert.Equal(5.0, year.DryBulbC[0]);
        Assert.Equal(4.4, year.DryBulbC[1]);
    }

    [Fact]
    public void A_leap_year_loses_29_February_and_says_so_and_its_infrared_is_rebuilt_and_listed()
    {
        WeatherYear year = WeatherCases.ReadOrSkip("odd/Boulder_AMY2012_leap_8784.epw.gz");
        Assert.Contains(year.Notes, n => n.Text.Contains("29 February", StringComparison.Ordinal));
        Assert.Contains(year.Notes, n => n.Text.Contains("daylight saving", StringComparison.Ordinal));
        Assert.Equal(8760, year.Gaps.Where(g => g.Field == "Horizontal infrared").Sum(g => g.Hours));
        Assert.True(year.HorizontalInfraredWhm2.IsComplete);
        Assert.IsType<HeaderConditions.None>(year.Conditions);
        Assert.Empty(year.Rejected);
        // Read in the file: 1616 m in the header, rows near 769 hPa; the standard atmosphere has 834 hPa there (ISO 2533).
        Assert.Contains(WeatherReport.Of(year).Findings, f => f.Text.StartsWith("The mean pressure of 769 hPa is not that of 1616 m (834 hPa)", StringComparison.Ordinal));
        Assert.Equal([2012], year.Provenance.RowYears);
    }

    // A satellite's half hours of 2006. With another program (Python, Spencer's sun) its columns close to 3.7 W/m² a quarter hour after the stamps, to 18 at the stamps,
    // to 36 a quarter hour before: each record stands for the half hour that follows. Sums were added up from the file's own columns with another program (awk):
    // 17,520 records, global 3,385,198 W/m² in all, half an hour each.
    [Fact]
    public void Half_hour_records_become_hours_of_the_same_energy_and_close()
    {
        WeatherReading reading = WeatherFile.Read(File.ReadAllBytes(WeatherCases.FileOrSkip("odd/Guilford_AMY2006_30min_17520.epw.gz")));
        WeatherYear year = Assert.IsType<WeatherReading.Read>(reading).Year;
        Assert.Contains(year.Notes, n => n.Text.Contains("2 records an hour", StringComparison.Ordinal) && n.Text.Contains("part that follows the stamp, where the three columns close best (3.7 W/m²)", StringComparison.Ordinal));
        double whm2 = 0;
        for (int h = 0; h < CommonYear.Hours; h++)
        {
            whm2 += year.GhiWhm2[h];
        }

        Assert.Equal(3_385_198 / 2.0, whm2, 1);

        // 1 January, read in the file: 11:00 to 12:00 is stamped 12:00 (418) and 12:30 (435); the air at noon is the row 13:00, 11 °C.
        Assert.Equal((418 + 435) / 2.0, year.GhiWhm2[11], 1e-9);
        Assert.Equal(11, year.DryBulbC[11], 1e-9);
        RadiationClosure closure = RadiationClosure.Of(year);
        Assert.Equal(-0.5, closure.BestOffsetH, 0.1);
    }

    [Theory]
    [InlineData("odd/PVGIS_TMY_45N_8E.csv.gz", "PVGIS")]
    [InlineData("odd/NSRDB_PSM4_TMY_pandas-dump.csv.gz", "NSRDB")]
    public void Other_forms_are_named_and_refused(string file, string form)
    {
        WeatherReading reading = WeatherFile.Read(File.ReadAllBytes(WeatherCases.FileOrSkip(file)));
        WeatherProblem problem = Assert.Single(Assert.IsType<WeatherReading.Refused>(reading).Problems);
        Assert.Equal(WeatherProblemKind.NotAWeatherFile, problem.Kind);
        Assert.Contains(form, problem.What);
    }

    [Fact]
    public void A_satellite_year_with_instants_instead_of_hour_means_is_found_out()
    {
        // Its own header says the instants lie 0.18 h after the stamp; measured when gathered: best at +0.17 h, rms 2.2 against 41 at -0.5 h.
        WeatherYear year = WeatherCases.ReadOrSkip("PVGIS_TMY_45.000N_8.000E_2005-2023.epw.gz");
        RadiationClosure closure = RadiationClosure.Of(year);
        Assert.Equal(ClosureVerdict.ClosesElsewhere, closure.Verdict);
        Assert.Equal(0.17, closure.BestOffsetH, tolerance: 0.02);
        Assert.InRange(closure.BestRmsWm2, 0, 2.25);
        Assert.Equal(41, closure.StatedRmsWm2, tolerance: 0.5);
        Assert.Contains(WeatherReport.Of(year).Findings, f => f.Gravity == WeatherGravity.Warning && f.Text.Contains("stamps or time zone", StringComparison.Ordinal));
        Assert.Equal(ClosureVerdict.Closes, RadiationClosure.Of(year.WithRadiationOffset(closure.BestOffsetH)).Verdict);
    }
}
