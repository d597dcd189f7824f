using System.Globalization;
using System.Text;
using Glazewright.Science.Weather;

namespace Glazewright.Science.Tests.Weather;

/// <summary>Values that cannot be, columns in another unit, texts from other systems: taken out, converted or read, and always said.</summary>
public class BadValueTests
{
    private static readonly string[] s_sound = WeatherText.Lines();
    private static readonly WeatherYear s_demo = WeatherText.Year(WeatherText.Demo());

    [Fact]
    public void A_few_impossible_values_are_listed_with_field_hours_line_and_how_they_were_filled()
    {
        WeatherYear year = WeatherText.Year(s_sound.With(2000, 6, "500").With(3012, 13, "50000").With(3013, 13, "50000").With(20, 8, "140").With(40, 9, "977").Bytes());
        Assert.Equal(
            [("Dry bulb", 1, 2009, 500.0), ("Relative humidity", 1, 29, 140.0), ("Station pressure", 1, 49, 977.0), ("Global radiation", 2, 3021, 50_000.0)],
            year.Rejected.Select(r => (r.Field, r.Hours, r.FirstLine, r.FirstValue)));
        WeatherYear sound = WeatherText.Year(s_sound.Bytes());
        Assert.Equal(0.5 * (sound.DryBulbC[1999] + sound.DryBulbC[2001]), year.DryBulbC[2000], 9);
        Assert.Equal(sound.DhiWhm2[3012], year.GhiWhm2[3012], 9);
        string[] told = [.. WeatherReport.Of(year).Findings.Where(f => f.Gravity == WeatherGravity.Warning).Select(f => f.Text)];
        Assert.Contains(told, t => t.StartsWith("Dry bulb: 1 hour with an impossible value, first 500 °C in line 2009", StringComparison.Ordinal) && t.Contains("straight line", StringComparison.Ordinal));
        Assert.Contains(told, t => t.StartsWith("Global radiation: 2 hours with impossible values, first 50000 Wh/m² in line 3021", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(87, false), InlineData(88, true)]
    public void More_than_a_hundredth_of_the_year_refuses_the_file(int hours, bool refused)
    {
        string[] spoiled = [.. s_sound];
        for (int i = 0; i < hours; i++)
        {
            spoiled = i * 99 < CommonYear.Hours ? Set(spoiled, i * 99, 6, "500") : spoiled;
        }

        if (refused)
        {
            WeatherProblem problem = Assert.Single(WeatherText.Problems(spoiled.Bytes()));
            Assert.Equal((WeatherProblemKind.OutOfRange, WeatherText.FirstRow + 1, 7), (problem.Kind, problem.Line, problem.Column));
            Assert.Contains("88 hours", problem.What, StringComparison.Ordinal);
            Assert.Contains("Up to 87 hours (1 % of the year)", problem.Right, StringComparison.Ordinal);
            return;
        }

        Assert.Equal(87, WeatherText.Year(spoiled.Bytes()).Rejected.Single().Hours);
    }

    [Fact]
    public void Missing_codes_in_more_nines_than_asked_are_missing_and_not_impossible()
    {
        WeatherYear year = WeatherText.Year(s_sound.With(100, 6, "9999.0").With(200, 21, "999.00").Bytes());
        Assert.Empty(year.Rejected);
        Assert.Equal(2, year.Gaps.Count);
        Assert.Contains(WeatherReport.Of(year).Findings, f => f.Text.StartsWith("Dry bulb: 1 hour made up (1/5 hour 5, line 109)", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("6 7", 1.8, 32, "0.0", "°F"), InlineData("6 7", 1, 273.15, "0.00", " K,"), InlineData("13 14 15", 3.6, 0, "0.0", "kJ/m²"), InlineData("13 14 15", 0.0036, 0, "0.0000", "MJ/m²"), InlineData("13 14 15", 0.001, 0, "0.0000", "kWh/m²")]
    [InlineData("9", 0.01, 0, "0.0", "hPa (mbar)"), InlineData("9", 0.001, 0, "0.00", "kPa"), InlineData("9", 0.0075006, 0, "0.0", "mmHg"), InlineData("9", 0.0002953, 0, "0.000", "inHg")]
    [InlineData("21", 3.6, 0, "0.0", "km/h"), InlineData("15", 3.6, 0, "0.0", "kJ/m²"), InlineData("7", 1.8, 32, "0.0", "°F")]
    public void A_column_in_another_unit_is_told_and_converted(string fields, double scale, double zero, string format, string unit)
    {
        int[] changed = [.. fields.Split(' ').Select(f => int.Parse(f, CultureInfo.InvariantCulture))];
        WeatherYear year = WeatherText.Year(Demo((field, x) => changed.Contains(field) ? (x * scale + zero).ToString(format, CultureInfo.InvariantCulture) : null));
        Assert.Equal(changed.Length, year.Notes.Count(n => n.Gravity == WeatherGravity.Warning && n.Text.Contains(unit, StringComparison.Ordinal)));
        Assert.Empty(year.Rejected);
        Assert.Empty(year.Gaps);
        // What the printed digits of the other unit leave.
        for (int h = 0; h < CommonYear.Hours; h++)
        {
            Assert.Equal(s_demo.DryBulbC[h], year.DryBulbC[h], tolerance: 0.06);
            Assert.Equal(s_demo.PressurePa[h], year.PressurePa[h], tolerance: 7);
            Assert.Equal(s_demo.GhiWhm2[h], year.GhiWhm2[h], tolerance: 0.06);
            Assert.Equal(s_demo.DniWhm2[h], year.DniWhm2[h], tolerance: 0.06);
            Assert.Equal(s_demo.DhiWhm2[h], year.DhiWhm2[h], tolerance: 0.06);
            Assert.Equal(s_demo.WindMs[h], year.WindMs[h], tolerance: 0.02);
        }
    }

    [Theory]
    [InlineData(1.943844, "knots"), InlineData(2.236936, "mph")]
    public void A_windy_places_knots_and_miles_are_told_by_the_knots_they_were_read_in(double scale, string unit)
    {
        // The demo's wind doubled: the mean passes what any place has, in either unit.
        WeatherYear year = WeatherText.Year(Demo((field, x) => field == 21 ? (2 * scale * x).ToString("0.0", CultureInfo.InvariantCulture) : null));
        Assert.Contains(year.Notes, n => n.Gravity == WeatherGravity.Warning && n.Text.StartsWith("Wind speed", StringComparison.Ordinal) && n.Text.Contains(unit, StringComparison.Ordinal));
    }

    [Fact]
    public void A_wind_of_no_known_unit_is_left_and_said()
    {
        int i = 0;
        WeatherYear year = WeatherText.Year(Demo((field, _) => field == 21 ? (15 + i++ % 97 * 0.1).ToString("0.0", CultureInfo.InvariantCulture) : null));
        Assert.Contains(year.Notes, n => n.Text.Contains("nothing was changed", StringComparison.Ordinal));
        Assert.Equal(15.1, year.WindMs[1], 9);
    }

    [Fact]
    public void A_sound_year_is_not_touched()
    {
        Assert.Empty(s_demo.Rejected);
        Assert.Empty(WeatherReport.Changed(s_demo));
    }

    [Fact]
    public void Names_in_UTF_8_and_Latin_1_and_texts_in_UTF_16_or_with_old_line_ends_are_read()
    {
        string[] lines = [.. s_sound];
        lines[0] = lines[0].Replace("Testfield", "Zürich-Kloten", StringComparison.Ordinal);
        string text = string.Join('\n', lines) + "\n";
        byte[][] forms =
        [
            Encoding.UTF8.GetBytes(text), Encoding.Latin1.GetBytes(text), [0xFF, 0xFE, .. Encoding.Unicode.GetBytes(text)], [0xFE, 0xFF, .. Encoding.BigEndianUnicode.GetBytes(text)],
            Encoding.Unicode.GetBytes(text), Encoding.Latin1.GetBytes(text.Replace('\n', '\r')), [0xFF, 0xFE, .. Encoding.Unicode.GetBytes(text.Replace('\n', '\r'))],
        ];
        WeatherYear plain = WeatherText.Year(s_sound.Bytes());
        foreach (byte[] form in forms.Concat(forms.Select(WeatherText.Gzip)))
        {
            WeatherYear year = WeatherText.Year(form);
            Assert.Equal("Zürich-Kloten", year.Station.Name);
            Assert.Equal(plain.DryBulbC, year.DryBulbC);
        }
    }

    [Fact]
    public void A_year_with_global_only_is_split_listed_and_closes()
    {
        WeatherYear year = WeatherText.Year(Demo((field, _) => field is 14 or 15 ? "9999" : null));
        WeatherGap gap = Assert.Single(year.Gaps, g => g.How.Contains("DISC", StringComparison.Ordinal));
        Assert.InRange(gap.Hours, 4000, 4800);
        Assert.Equal(ClosureVerdict.Closes, RadiationClosure.Of(year).Verdict);
        Assert.Equal(s_demo.GhiWhm2, year.GhiWhm2);
        // Direct of the year against the file's own column: models of a split differ by a fifth.
        Assert.InRange(year.DniWhm2.Span.ToArray().Sum() / s_demo.DniWhm2.Span.ToArray().Sum(), 0.8, 1.2);
    }

    private static string[] Set(string[] lines, int hour, int field, string value)
    {
        string[] cells = lines[WeatherText.FirstRow + hour].Split(',');
        cells[field] = value;
        lines[WeatherText.FirstRow + hour] = string.Join(',', cells);
        return lines;
    }

    private static byte[] Demo(Func<int, double, string?> change)
    {
        using var gzip = new System.IO.Compression.GZipStream(new MemoryStream(WeatherText.Demo()), System.IO.Compression.CompressionMode.Decompress);
        using var reader = new StreamReader(gzip, Encoding.Latin1);
        string[] lines = reader.ReadToEnd().TrimEnd().Split('\n');
        for (int i = WeatherText.FirstRow; i < lines.Length; i++)
        {
            string[] cells = lines[i].Split(',');
            foreach (int field in (int[])[6, 7, 9, 13, 14, 15, 21])
            {
                cells[field] = change(field, double.Parse(cells[field], CultureInfo.InvariantCulture)) ?? cells[field];
            }

            lines[i] = string.Join(',', cells);
        }

        return lines.Bytes();
    }
}
