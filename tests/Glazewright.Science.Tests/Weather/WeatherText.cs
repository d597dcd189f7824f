using System.Globalization;
using System.IO.Compression;
using System.Text;
using Glazewright.Science.Weather;

namespace Glazewright.Science.Tests.Weather;

/// <summary>Weather files written for a test: a plain sound year, to be spoiled line by line.</summary>
internal static class WeatherText
{
    public static readonly string[] Headers =
    [
        "LOCATION,Testfield,-,-,invented,000001,45.0,7.5,1.0,300.0",
        "DESIGN CONDITIONS,0",
        "TYPICAL/EXTREME PERIODS,0",
        "GROUND TEMPERATURES,0",
        "HOLIDAYS/DAYLIGHT SAVINGS,No,0,0,0",
        "COMMENTS 1,",
        "COMMENTS 2,",
        "DATA PERIODS,1,1,Data,Sunday, 1/ 1,12/31",
    ];

    /// <summary>Index of the first row in <see cref="Lines"/>.</summary>
    public const int FirstRow = 8;

    public static string[] Lines(int fields = 35)
    {
        var lines = new List<string>(Headers);
        for (int h = 0; h < CommonYear.Hours; h++)
        {
            lines.Add(string.Join(',', Cells(h).Take(fields)));
        }

        return [.. lines];
    }

    public static string[] Cells(int hour)
    {
        HourStamp at = CommonYear.StampOf(hour);
        double sun = Math.Max(0, Math.Sin((at.HourEnding - 6.5) / 12 * Math.PI)) * 500;
        string Number(double x) => x.ToString("0.0", CultureInfo.InvariantCulture);
        string[] cells = [.. Enumerable.Repeat("0", 35)];
        cells[0] = "2001";
        cells[1] = at.Month.ToString(CultureInfo.InvariantCulture);
        cells[2] = at.Day.ToString(CultureInfo.InvariantCulture);
        cells[3] = at.HourEnding.ToString(CultureInfo.InvariantCulture);
        cells[4] = "60";
        cells[5] = "?9";
        cells[6] = Number(10 - 12 * Math.Cos(2 * Math.PI * hour / 8760.0) + 4 * Math.Sin(2 * Math.PI * (at.HourEnding - 9) / 24));
        cells[7] = Number(2 - 8 * Math.Cos(2 * Math.PI * hour / 8760.0));
        cells[8] = "60";
        cells[9] = "97700";
        cells[12] = "300";
        cells[13] = Number(sun);
        cells[14] = "0";
        cells[15] = Number(sun);
        cells[20] = "270";
        cells[21] = "3.0";
        cells[22] = "5";
        cells[23] = "5";
        cells[30] = "12";
        return cells;
    }

    public static string[] With(this string[] lines, int hour, int field, string value)
    {
        string[] copy = [.. lines];
        string[] cells = copy[FirstRow + hour].Split(',');
        cells[field] = value;
        copy[FirstRow + hour] = string.Join(',', cells);
        return copy;
    }

    public static byte[] Bytes(this IEnumerable<string> lines, string newline = "\n") =>
        Encoding.Latin1.GetBytes(string.Join(newline, lines) + newline);

    public static byte[] Gzip(byte[] bytes)
    {
        using var packed = new MemoryStream();
        using (var gzip = new GZipStream(packed, CompressionLevel.Fastest))
        {
            gzip.Write(bytes);
        }

        return packed.ToArray();
    }

    public static WeatherYear Year(byte[] bytes, GapRule? rule = null) =>
        WeatherFile.Read(bytes, rule) switch
        {
            WeatherReading.Read read => read.Year,
            WeatherReading.Refused refused => throw new InvalidOperationException(string.Join("; ", refused.Problems.Select(p => $"{p.Line}:{p.Column} {p.What} {p.Right}"))),
            _ => throw new InvalidOperationException(),
        };

    public static IReadOnlyList<WeatherProblem> Problems(byte[] bytes, GapRule? rule = null) =>
        Assert.IsType<WeatherReading.Refused>(WeatherFile.Read(bytes, rule)).Problems;

    /// <summary>The committed demo year.</summary>
    public static byte[] Demo()
    {
        for (DirectoryInfo? at = new(AppContext.BaseDirectory); at is not null; at = at.Parent)
        {
            string path = Path.Combine(at.FullName, "examples", "weather", "demo-continental-42N.epw.gz");
            if (File.Exists(path))
            {
                return File.ReadAllBytes(path);
            }
        }

        throw new FileNotFoundException("examples/weather/demo-continental-42N.epw.gz");
    }
}
