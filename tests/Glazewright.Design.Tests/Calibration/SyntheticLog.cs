using System.Globalization;
using System.Text;
using Glazewright.Design.Calibration;
using Glazewright.Design.Calibration.Reading;
using Glazewright.Design.Contracts;

namespace Glazewright.Design.Tests.Calibration;

/// <summary>Logs of a house that is known, because our own model made them: weather from sines and chance, equipment by simple rules.</summary>
internal static class SyntheticLog
{
    public const string Map = """
        {
          "glazewrightColumns": 1,
          "name": "made log",
          "clock": "+01:00",
          "tables": [
            {
              "name": "log",
              "time": { "column": "time" },
              "columns": [
                { "column": "tin", "is": "inside-temperature", "unit": "C" },
                { "column": "rhin", "is": "inside-humidity", "unit": "%" },
                { "column": "tout", "is": "outside-temperature", "unit": "C" },
                { "column": "rhout", "is": "outside-humidity", "unit": "%" },
                { "column": "sun", "is": "outside-radiation", "unit": "W/m2" },
                { "column": "sky", "is": "net-sky-radiation", "unit": "W/m2" },
                { "column": "wind", "is": "wind", "unit": "m/s" },
                { "column": "vent", "is": "roof-vents", "unit": "%" },
                { "column": "screen", "is": "curtain", "unit": "%" },
                { "column": "pipe", "is": "rail-pipe", "unit": "C", "zeroIsOff": true }
              ]
            }
          ],
          "house": { "floor": "500 m2", "heightBelow": "4 m", "sun": "60 %", "roofVents": "4 %", "leafAreaFirst": "1", "leafAreaGrown": "1" }
        }
        """;

    /// <summary>Rows of the log; inside is left at a stand-in until a house has been run.</summary>
    public static string Text(int weeks, int stepMinutes, Func<int, (double AirC, double Percent)>? inside, int seed = 7)
    {
        Random chance = new(seed);
        StringBuilder text = new("time,tin,rhin,tout,rhout,sun,sky,wind,vent,screen,pipe\n");
        DateTime at = new(2025, 3, 3, 0, 0, 0, DateTimeKind.Unspecified);
        double cloud = 0.5, warm = 0;
        for (int i = 0; i < weeks * 7 * 1440 / stepMinutes; i++, at = at.AddMinutes(stepMinutes))
        {
            double hour = at.TimeOfDay.TotalHours, keep = Math.Exp(-stepMinutes / 400.0);
            cloud = Math.Clamp(0.5 + (cloud - 0.5) * keep + 0.5 * Math.Sqrt(1 - keep * keep) * (chance.NextDouble() * 2 - 1) * 1.7, 0, 1);
            warm = warm * Math.Exp(-stepMinutes / 3000.0) + 0.25 * Math.Sqrt(stepMinutes / 5.0) * (chance.NextDouble() - 0.5);
            double up = Math.Max(0, Math.Sin(Math.PI * (hour - 6) / 12)), sun = 800 * up * (1 - 0.8 * cloud);
            double outC = 8 + warm + 5 * Math.Sin(2 * Math.PI * (hour - 9) / 24) + 2 * (up - 0.3), wind = 1 + 4 * chance.NextDouble();
            bool dark = hour is < 6 or > 19;
            double vent = Math.Clamp((sun - 250) / 4 + 10 * (outC - 8), 0, 100), pipe = dark || sun < 60 ? 70 - 1.5 * outC : 0;
            (double airC, double percent) = inside?.Invoke(i) ?? (20, 70);
            text.Append(CultureInfo.InvariantCulture, $"{at:yyyy-MM-dd HH:mm},{airC:0.000},{percent:0.00},{outC:0.00},{75 - 15 * up:0.0},{sun:0},{-90 + 70 * cloud:0},{wind:0.0},{vent:0},{(dark ? 100 : 0)},{Math.Max(pipe, 0):0.0}\n");
        }

        return text.ToString();
    }

    /// <summary>Reads the map.</summary>
    public static ColumnMap Columns(string map = Map)
    {
        var outcome = ColumnMapReader.Read(map);
        Assert.Empty(outcome.Faults);
        return outcome.Value!;
    }

    /// <summary>Reads a log.</summary>
    public static HouseLog Read(ColumnMap map, params string[] texts)
    {
        Assert.Empty(LogReader.Read(map, texts, out HouseLog? log));
        return log!;
    }
}
