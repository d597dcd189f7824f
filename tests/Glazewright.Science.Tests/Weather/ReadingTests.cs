using System.Text;
using Glazewright.Science.Weather;

namespace Glazewright.Science.Tests.Weather;

public class ReadingTests
{
    private static readonly string[] s_sound = WeatherText.Lines();

    [Fact]
    public void A_sound_file_is_read_the_same_plain_packed_with_Windows_ends_a_mark_a_trailing_comma_and_no_last_newline()
    {
        WeatherYear plain = WeatherText.Year(s_sound.Bytes());
        Assert.Empty(plain.Gaps);
        Assert.Equal(-2 + 4 * Math.Sin(2 * Math.PI * (1 - 9) / 24), plain.DryBulbC[0], tolerance: 0.051);
        Assert.Equal(0.12, plain.SnowDepthM[0], 12);
        Assert.Equal(45, plain.Station.LatitudeDeg);
        byte[] packed = WeatherText.Gzip(s_sound.Bytes());
        Assert.Equal(plain.Provenance.ContentSha256, WeatherText.Year(packed).Provenance.ContentSha256);
        foreach (byte[] same in new[]
        {
            packed,
            s_sound.Bytes("\r\n"),
            [0xEF, 0xBB, 0xBF, .. s_sound.Bytes()],
            s_sound.Select((l, i) => i < WeatherText.FirstRow ? l : l + ",").Bytes(),
            Encoding.Latin1.GetBytes(string.Join('\n', s_sound)),
            s_sound.Select(l => l.Replace(",60,", ", 60 ,", StringComparison.Ordinal)).Bytes(),
            s_sound.Where(l => !l.StartsWith("COMMENTS 2", StringComparison.Ordinal)).Bytes(),
        })
        {
            Assert.Equal(plain.DryBulbC, WeatherText.Year(same).DryBulbC);
            Assert.Equal(plain.GhiWhm2, WeatherText.Year(same).GhiWhm2);
        }
    }

    [Fact]
    public void Thirty_two_fields_are_enough()
    {
        Assert.Equal(WeatherText.Year(s_sound.Bytes()).DryBulbC, WeatherText.Year(WeatherText.Lines(32).Bytes()).DryBulbC);
        Assert.Equal(WeatherProblemKind.FieldCount, WeatherText.Problems(WeatherText.Lines(31).Bytes())[0].Kind);
    }

    [Fact]
    public void Short_holes_are_filled_and_listed_long_ones_and_strict_rules_refuse_with_line_and_column()
    {
        string[] spoiled = s_sound;
        for (int h = 100; h < 103; h++)
        {
            spoiled = spoiled.With(h, 6, "99.9");
        }

        WeatherYear year = WeatherText.Year(spoiled.Bytes());
        WeatherGap gap = Assert.Single(year.Gaps);
        Assert.Equal(("Dry bulb", 3, 100), (gap.Field, gap.Hours, gap.FirstHour));
        WeatherYear sound = WeatherText.Year(s_sound.Bytes());
        Assert.Equal(0.5 * (sound.DryBulbC[99] + sound.DryBulbC[103]), year.DryBulbC[101], 9);
        WeatherProblem strict = Assert.Single(WeatherText.Problems(spoiled.Bytes(), GapRule.RefuseAny));
        Assert.Equal((WeatherProblemKind.Missing, WeatherText.FirstRow + 101, 7), (strict.Kind, strict.Line, strict.Column));
        for (int h = 103; h < 108; h++)
        {
            spoiled = spoiled.With(h, 6, "99.9");
        }

        Assert.Contains("8 hours", Assert.Single(WeatherText.Problems(spoiled.Bytes())).What);
    }

    [Fact]
    public void A_hole_over_the_year_end_is_closed_round_the_ring()
    {
        string[] spoiled = s_sound.With(8759, 21, "999").With(0, 21, "9999").With(1, 21, "7.5").With(8758, 21, "1.5");
        WeatherYear year = WeatherText.Year(spoiled.Bytes());
        Assert.Equal(3.5, year.WindMs[8759], 9);
        Assert.Equal(5.5, year.WindMs[0], 9);
    }

    [Fact]
    public void Missing_dew_point_pressure_infrared_and_one_radiation_are_computed_and_said_so()
    {
        string[] lines = s_sound;
        int noon = 180 * 24 + 12;
        lines = lines.With(5, 7, "99.9").With(noon, 13, "9999").With(noon, 12, "9999");
        lines = [.. lines.Select((l, i) => i < WeatherText.FirstRow ? l : l.Replace(",97700,", ",999999,", StringComparison.Ordinal))];
        WeatherYear year = WeatherText.Year(lines.Bytes());
        Assert.Equal(4, year.Gaps.Count);
        Assert.Equal(8760, year.Gaps.Single(g => g.Field == "Station pressure").Hours);
        Assert.Equal(97773, year.PressurePa[0], tolerance: 5);
        Assert.Equal(year.DhiWhm2[noon], year.GhiWhm2[noon], 9);
        Assert.InRange(year.HorizontalInfraredWhm2[noon], 250, 450);
        Assert.True(year.DewPointC[5] < year.DryBulbC[5]);
    }

    [Fact]
    public void Daylight_without_two_of_three_radiation_values_is_refused_and_the_dark_is_zero()
    {
        string[] dark = s_sound.With(0, 13, "9999").With(0, 15, "9999");
        Assert.Equal(0, WeatherText.Year(dark.Bytes()).GhiWhm2[0]);
        string[] day = s_sound.With(12, 13, "9999").With(12, 15, "9999");
        Assert.Equal(WeatherProblemKind.Missing, Assert.Single(WeatherText.Problems(day.Bytes())).Kind);
    }

    [Fact]
    public void Every_bad_field_is_named_at_once()
    {
        string[] spoiled = s_sound.With(10, 6, "warm").With(20, 8, "?").With(30, 13, "NaN").With(40, 9, "1e999");
        IReadOnlyList<WeatherProblem> problems = WeatherText.Problems(spoiled.Bytes());
        Assert.Equal(
            [(WeatherProblemKind.NotANumber, 19, 7), (WeatherProblemKind.NotANumber, 29, 9), (WeatherProblemKind.NotANumber, 39, 14), (WeatherProblemKind.NotANumber, 49, 10)],
            problems.Select(p => (p.Kind, p.Line, p.Column)));
    }

    [Fact]
    public void A_year_with_8759_rows_a_swapped_row_a_second_year_or_a_short_row_is_refused()
    {
        Assert.Contains("8759", Assert.Single(WeatherText.Problems(s_sound[..^1].Bytes())).What);
        string[] swapped = [.. s_sound];
        (swapped[50], swapped[51]) = (swapped[51], swapped[50]);
        WeatherProblem order = Assert.Single(WeatherText.Problems(swapped.Bytes()));
        Assert.Equal((WeatherProblemKind.Sequence, 51), (order.Kind, order.Line));
        Assert.Equal(WeatherProblemKind.Period, Assert.Single(WeatherText.Problems(s_sound.Concat(s_sound[WeatherText.FirstRow..]).Bytes())).Kind);
        string[] cut = [.. s_sound];
        cut[200] = "2001,1,9,1,60,?9,3.0";
        Assert.Equal((WeatherProblemKind.FieldCount, 201), WeatherText.Problems(cut.Bytes()).Select(p => (p.Kind, p.Line)).Single());
        string text = string.Join('\n', s_sound);
        Assert.NotEmpty(WeatherText.Problems(Encoding.Latin1.GetBytes(text[..(text.Length / 2)])));
    }

    [Fact]
    public void Broken_packing_emptiness_and_other_files_are_named()
    {
        byte[] packed = WeatherText.Gzip(s_sound.Bytes());
        Assert.Equal(WeatherProblemKind.DamagedCompression, WeatherText.Problems(packed[..(packed.Length / 2)])[0].Kind);
        byte[] bent = [.. packed];
        bent[bent.Length / 2] ^= 0xFF;
        Assert.IsType<WeatherReading.Refused>(WeatherFile.Read(bent));
        Assert.Contains("empty", WeatherText.Problems([])[0].What);
        Assert.Contains("{\"a\": 1}", WeatherText.Problems(Encoding.ASCII.GetBytes("{\"a\": 1}\n"))[0].What);
        Assert.Equal(WeatherProblemKind.NotAWeatherFile, WeatherText.Problems([0x89, 0x50, 0x4E, 0x47, 13, 10, 26, 10, 0, 1])[0].Kind);
        Assert.Contains(WeatherText.Problems(s_sound.Where(l => !l.StartsWith("LOCATION", StringComparison.Ordinal)).Bytes()), p => p.What.Contains("LOCATION", StringComparison.Ordinal));
        Assert.Contains(WeatherText.Problems(s_sound.Where(l => !l.StartsWith("DATA P", StringComparison.Ordinal)).Bytes()), p => p.What.Contains("DATA PERIODS", StringComparison.Ordinal));
        string[] lost = [.. s_sound];
        lost[0] = "LOCATION,Testfield,-,-,invented,000001,95.0,east,1.0,300.0";
        Assert.Equal([7, 8], WeatherText.Problems(lost.Bytes()).Select(p => p.Column));
    }

    [Fact]
    public void Snow_recorded_as_zero_all_winter_means_unknown()
    {
        string[] bare = [.. s_sound.Select((l, i) => i < WeatherText.FirstRow ? l : l.Replace(",12,0,0,0,0", ",0,0,0,0,0", StringComparison.Ordinal))];
        WeatherYear year = WeatherText.Year(bare.Bytes());
        Assert.Equal(8760, year.SnowDepthM.MissingCount);
        Assert.Contains(year.Notes, n => n.Text.Contains("Snow depth", StringComparison.Ordinal));
    }

    [Fact]
    public void The_demo_year_is_what_its_notes_say()
    {
        // Facts of examples/weather/README: computed when the file was made.
        WeatherYear year = WeatherText.Year(WeatherText.Demo());
        WeatherReport report = WeatherReport.Of(year);
        Assert.Equal(ClosureVerdict.Closes, report.Closure.Verdict);
        Assert.Equal(-22.8, report.Computed.LowestDryBulbC);
        Assert.Equal(35.0, report.Computed.HighestDryBulbC);
        Assert.Equal(-20.0, report.Computed.Heating996DryBulbC, tolerance: 0.051);
        Assert.Equal(32.2, report.Computed.Cooling04DryBulbC, tolerance: 0.051);
        Assert.Equal(-4.6, report.Months[0].MeanC, tolerance: 0.051);
        Assert.Equal(24.1, report.Months[6].MeanC, tolerance: 0.051);
        Assert.Equal(1500, report.Months[11].GhiWhm2Day, tolerance: 5.1);
        Assert.Equal(6290, report.Months[5].GhiWhm2Day, tolerance: 5.1);
        Assert.False(year.SnowDepthM.IsComplete);
        Assert.Contains(report.Findings, f => f.Text.Contains("prints no design conditions", StringComparison.Ordinal));
    }
}
