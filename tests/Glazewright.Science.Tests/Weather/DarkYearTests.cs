using System.Globalization;
using Glazewright.Science.Weather;

namespace Glazewright.Science.Tests.Weather;

/// <summary>A file whose radiation is zeros is no dark place; records of half hours become hours.</summary>
public class DarkYearTests
{
    [Fact]
    public void A_year_without_sun_is_refused_in_plain_words()
    {
        string[] lines = Sun((_, _) => 0);
        WeatherProblem problem = Assert.Single(Assert.IsType<WeatherReading.Refused>(WeatherFile.Read(lines.Bytes())).Problems);
        Assert.Equal((WeatherProblemKind.OutOfRange, 14), (problem.Kind, problem.Column));
        Assert.Contains("no sun", problem.What, StringComparison.Ordinal);
    }

    [Fact]
    public void A_month_without_sun_is_a_warning_and_stays_dark()
    {
        WeatherYear year = Assert.IsType<WeatherReading.Read>(WeatherFile.Read(Sun((h, sun) => CommonYear.StampOf(h).Month == 4 ? 0 : sun).Bytes())).Year;
        WeatherNote note = Assert.Single(year.Notes, n => n.Text.Contains("April", StringComparison.Ordinal));
        Assert.Equal(WeatherGravity.Warning, note.Gravity);
        Assert.Contains(WeatherReport.Changed(year), f => f.Text == note.Text);
        Assert.Equal(0, year.GhiWhm2[CommonYear.FirstDayOf(4) * 24 + 12]);
    }

    [Fact]
    public void A_sound_year_has_no_such_note() =>
        Assert.Empty(Assert.IsType<WeatherReading.Read>(WeatherFile.Read(WeatherText.Lines().Bytes())).Year.Notes);

    // Beyond the circle months without sun are nothing to tell.
    [Fact]
    public void Polar_nights_are_not_told()
    {
        string[] lines = Sun((h, sun) => CommonYear.StampOf(h).Month is 11 or 12 or 1 or 2 ? 0 : sun);
        lines[0] = lines[0].Replace("45.0,7.5", "80.0,7.5", StringComparison.Ordinal);
        Assert.DoesNotContain(Assert.IsType<WeatherReading.Read>(WeatherFile.Read(lines.Bytes())).Year.Notes, n => n.Text.Contains("dark", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(true), InlineData(false)]
    public void Half_hours_keep_their_energy_and_give_the_air_at_the_hours_end(bool stampsStart)
    {
        string[] whole = WeatherText.Lines();
        List<string> halves = [.. whole.Take(WeatherText.FirstRow - 1), "DATA PERIODS,1,2,Data,Sunday,1/1,12/31"];
        for (int h = 0; h < CommonYear.Hours; h++)
        {
            for (int k = 0; k < 2; k++)
            {
                string[] cells = WeatherText.Cells(h);
                cells[4] = stampsStart ? (30 * k).ToString(CultureInfo.InvariantCulture) : (30 * (k + 1)).ToString(CultureInfo.InvariantCulture);
                cells[6] = (k == (stampsStart ? 0 : 1) ? 10 + (h % 24) : -5).ToString(CultureInfo.InvariantCulture);
                cells[15] = cells[13];
                halves.Add(string.Join(',', cells));
            }
        }

        WeatherYear year = Assert.IsType<WeatherReading.Read>(WeatherFile.Read(halves.Bytes())).Year;
        WeatherYear hourly = Assert.IsType<WeatherReading.Read>(WeatherFile.Read(whole.Bytes())).Year;
        Assert.Equal(Sum(hourly), Sum(year), 1e-6 * Sum(hourly));

        // The record stamped at the hour's end is the next hour's first, or this one's last.
        Assert.Equal(stampsStart ? 22 : 21, year.DryBulbC[11], 1e-9);
    }

    [Theory]
    [InlineData("7"), InlineData("0"), InlineData("x")]
    public void Records_that_do_not_divide_the_hour_are_refused(string perHour)
    {
        string[] lines = WeatherText.Lines();
        lines[WeatherText.FirstRow - 1] = $"DATA PERIODS,1,{perHour},Data,Sunday,1/1,12/31";
        Assert.Equal(WeatherProblemKind.Period, Assert.IsType<WeatherReading.Refused>(WeatherFile.Read(lines.Bytes())).Problems[0].Kind);
    }

    [Fact]
    public void Half_hours_out_of_step_are_refused_at_their_line()
    {
        string[] lines = WeatherText.Lines();
        lines[WeatherText.FirstRow - 1] = "DATA PERIODS,1,2,Data,Sunday,1/1,12/31";
        Assert.Equal(WeatherProblemKind.Sequence, Assert.IsType<WeatherReading.Refused>(WeatherFile.Read(lines.Bytes())).Problems[0].Kind);
    }

    private static double Sum(WeatherYear year)
    {
        double sum = 0;
        foreach (double x in year.GhiWhm2.Span)
        {
            sum += x;
        }

        return sum;
    }

    private static string[] Sun(Func<int, double, double> of)
    {
        List<string> lines = [.. WeatherText.Headers];
        for (int h = 0; h < CommonYear.Hours; h++)
        {
            string[] cells = WeatherText.Cells(h);
            string sun = of(h, double.Parse(cells[13], CultureInfo.InvariantCulture)).ToString("0.0", CultureInfo.InvariantCulture);
            (cells[13], cells[15]) = (sun, sun);
            lines.Add(string.Join(',', cells));
        }

        return [.. lines];
    }
}
