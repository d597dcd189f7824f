using System.Globalization;
using Glazewright.Design.Calibration;
using Glazewright.Design.Calibration.Reading;
using Glazewright.Design.Contracts;

namespace Glazewright.Design.Tests.Calibration;

public class LogReaderTests
{
    private static readonly string s_text = SyntheticLog.Text(4, 10, i => (20 + 3 * Math.Sin(i / 20.0), 70 + 5 * Math.Sin(i / 31.0)));

    [Fact]
    public void A_whole_log_has_nothing_to_tell()
    {
        HouseLog log = SyntheticLog.Read(SyntheticLog.Columns(), s_text);
        Assert.Equal(10, log.StepMinutes);
        Assert.Equal(4 * 7 * 144, log.Count);
        Assert.Empty(log.Notes);
        Assert.True(log.Whole.IndexOf(false) < 0);
    }

    [Theory]
    [InlineData("", "log is empty")]
    [InlineData("time,tin\n", "log has headings and no rows")]
    public void An_empty_file_is_a_fault(string text, string wrong) => Assert.Equal(wrong, Assert.Single(LogReader.Read(SyntheticLog.Columns(), [text], out _)).Wrong);

    [Fact]
    public void Every_fault_of_the_columns_comes_at_once_with_its_place()
    {
        string text = s_text.Replace("rhin", "humidity", StringComparison.Ordinal).Replace(",wind,", ",gusts,", StringComparison.Ordinal);
        EqList<Fault> faults = LogReader.Read(SyntheticLog.Columns(), [text], out HouseLog? log);
        Assert.Null(log);
        Assert.Equal(["/tables/0/columns/1/column", "/tables/0/columns/6/column"], faults.Select(f => f.Pointer));
        Assert.Contains("humidity", faults[0].Right, StringComparison.Ordinal);
    }

    [Fact]
    public void Words_among_the_numbers_are_a_fault_with_row_and_text()
    {
        string text = Edit(s_text, 40, 1, "broken");
        Fault fault = Assert.Single(LogReader.Read(SyntheticLog.Columns(), [text], out _));
        Assert.Equal("/tables/0/columns/0", fault.Pointer);
        Assert.Equal("log, tin: 1 cells are no numbers, the first in row 41: 'broken'", fault.Wrong);
        Assert.Empty(LogReader.Read(SyntheticLog.Columns(SyntheticLog.Map.Replace("\"name\": \"log\",", "\"name\": \"log\", \"missing\": \"broken\",", StringComparison.Ordinal)), [text], out _));
    }

    [Fact]
    public void Fahrenheit_taken_for_Celsius_is_found_out()
    {
        string text = string.Join('\n', s_text.Split('\n').Select((line, i) => i == 0 || line.Length == 0 ? line : Replace(line, 1, c => (c * 1.8 + 32 + 20).ToString("0.0", CultureInfo.InvariantCulture))));
        Fault fault = Assert.Single(LogReader.Read(SyntheticLog.Columns(), [text], out _));
        Assert.Equal("/tables/0/columns/0/unit", fault.Pointer);
        Assert.Contains("readings cannot be", fault.Wrong, StringComparison.Ordinal);
    }

    [Fact]
    public void A_few_readings_that_cannot_be_count_as_missing_and_are_told()
    {
        HouseLog log = SyntheticLog.Read(SyntheticLog.Columns(), Edit(Edit(s_text, 100, 1, "-127"), 101, 1, "850"));
        Assert.Contains(log.Notes, n => n.Code == "log/cannot-be" && n.What.Contains("2 readings", StringComparison.Ordinal));
        Assert.Contains(log.Notes, n => n.Code == "log/gaps");
        Assert.True(double.IsNaN(log.Of(LoggedQuantity.InsideTemperature)[99]));
    }

    [Fact]
    public void A_spike_and_a_stuck_sensor_are_told_and_not_used()
    {
        string text = Edit(s_text, 500, 1, "45");
        for (int row = 1000; row < 1080; row++)
        {
            text = Edit(text, row, 1, "19.5");
        }

        HouseLog log = SyntheticLog.Read(SyntheticLog.Columns(), text);
        Assert.Contains(log.Notes, n => n.Code == "log/spikes");
        Assert.Contains(log.Notes, n => n.Code == "log/stuck" && n.What.Contains("13 h in all", StringComparison.Ordinal));
        Assert.True(double.IsNaN(log.Of(LoggedQuantity.InsideTemperature)[1040]));
    }

    [Fact]
    public void Time_that_goes_back_is_a_fault_unless_the_map_lets_such_rows_go()
    {
        string[] lines = s_text.Split('\n');
        (lines[300], lines[301]) = (lines[301], lines[300]);
        string text = string.Join('\n', lines);
        Assert.Contains("time goes back 1 times, first in row 302", Assert.Single(LogReader.Read(SyntheticLog.Columns(), [text], out _)).Wrong, StringComparison.Ordinal);
        ColumnMap lenient = SyntheticLog.Columns(SyntheticLog.Map.Replace("\"column\": \"time\"", "\"column\": \"time\", \"dropBackwards\": true", StringComparison.Ordinal));
        Assert.Contains(SyntheticLog.Read(lenient, text).Notes, n => n.Code == "log/rows-dropped");
    }

    [Fact]
    public void Gaps_are_filled_told_and_not_scored_and_a_long_one_starts_the_house_anew()
    {
        string[] lines = s_text.Split('\n');
        string text = string.Join('\n', lines.Where((_, i) => i is < 400 or >= 412 and (< 2000 or >= 2200)));
        HouseLog log = SyntheticLog.Read(SyntheticLog.Columns(), text);
        LogNote note = Assert.Single(log.Notes, n => n.Code == "log/gaps");
        Assert.Contains("up to 2", note.What, StringComparison.Ordinal);
        Assert.Contains("33.5 h", note.What, StringComparison.Ordinal);
        Assert.False(log.Whole[405]);
        Assert.True(log.Whole[398]);
        Assert.Equal(1, log.Starts[1..].Count(true));
        Assert.True(log.Starts[2199]);
        // Straight between its neighbours.
        ReadOnlySpan<double> sky = log.Of(LoggedQuantity.NetSkyRadiation);
        Assert.Equal(sky[398] + 6.0 / 13 * (sky[411] - sky[398]), sky[404], 1e-9);
    }

    [Fact]
    public void A_doubled_hour_of_autumn_is_two_hours()
    {
        string map = SyntheticLog.Map.Replace("+01:00", "Europe/Berlin", StringComparison.Ordinal);
        List<string> rows = ["time,tin,rhin,tout,rhout,sun,sky,wind,vent,screen,pipe"];
        DateTime utc = new(2025, 10, 12, 0, 0, 0, DateTimeKind.Unspecified);
        for (int i = 0; i < 28 * 48; i++, utc = utc.AddMinutes(30))
        {
            DateTime local = utc.AddHours(utc < new DateTime(2025, 10, 26, 1, 0, 0, DateTimeKind.Unspecified) ? 2 : 1);
            rows.Add(string.Create(CultureInfo.InvariantCulture, $"{local:yyyy-MM-dd HH:mm},{20 + Math.Sin(i / 5.0):0.00},{70 + i % 7},{5 + i % 11},{80 + i % 3},{i % 5},-50,2,0,0,0"));
        }

        HouseLog log = SyntheticLog.Read(SyntheticLog.Columns(map), string.Join('\n', rows));
        Assert.Empty(log.Notes);
        Assert.Equal(28 * 48, log.Count);
        Assert.Equal(30, log.StepMinutes);
        Assert.Equal((0, 30), (log.At(log.Count - 1).Hour, log.At(log.Count - 1).Minute)); // 23:30 UTC, winter time
        Assert.Equal(2, log.At(0).Hour); // 00:00 UTC, summer time
    }

    [Theory]
    [InlineData(1)]
    [InlineData(7)]
    [InlineData(60)]
    public void Any_step_from_a_minute_to_an_hour_is_read(int minutes) =>
        Assert.Equal(minutes, SyntheticLog.Read(SyntheticLog.Columns(), SyntheticLog.Text(4, minutes, i => (20 + Math.Sin(i / 9.0), 70 + Math.Cos(i / 7.0)))).StepMinutes);

    [Theory]
    [InlineData("8/14/2018 3:05", StampForm.MonthDayYear, 2018, 8, 14, 3, 5)]
    [InlineData("14.8.18 13:05", StampForm.DayMonthYear, 2018, 8, 14, 13, 5)]
    [InlineData("2018-08-14T03:05:00Z", StampForm.YearMonthDay, 2018, 8, 14, 3, 5)]
    [InlineData("43326.1284722222", StampForm.SpreadsheetDays, 2018, 8, 14, 3, 5)]
    [InlineData("1534215900", StampForm.UnixSeconds, 2018, 8, 14, 3, 5)]
    public void Stamps_of_every_form_are_read(string text, StampForm form, int year, int month, int day, int hour, int minute)
    {
        Assert.True(StampReader.TryRead(text, form, out NodaTime.LocalDateTime stamp));
        Assert.Equal((year, month, day, hour, minute), (stamp.Year, stamp.Month, stamp.Day, stamp.Hour, stamp.Minute));
    }

    [Theory]
    [InlineData("", StampForm.YearMonthDay)]
    [InlineData("2018-13-01", StampForm.YearMonthDay)]
    [InlineData("2018-02-30 00:00", StampForm.YearMonthDay)]
    [InlineData("yesterday", StampForm.MonthDayYear)]
    [InlineData("NaN", StampForm.SpreadsheetDays)]
    [InlineData("99999999999999", StampForm.UnixSeconds)]
    public void What_is_no_stamp_is_not_taken_for_one(string text, StampForm form) => Assert.False(StampReader.TryRead(text, form, out _));

    private static string Edit(string text, int line, int cell, string to)
    {
        string[] lines = text.Split('\n');
        string[] cells = lines[line].Split(',');
        cells[cell] = to;
        lines[line] = string.Join(',', cells);
        return string.Join('\n', lines);
    }

    private static string Replace(string line, int cell, Func<double, string> to)
    {
        string[] cells = line.Split(',');
        cells[cell] = to(double.Parse(cells[cell], CultureInfo.InvariantCulture));
        return string.Join(',', cells);
    }
}
