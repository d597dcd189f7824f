using System.Globalization;
using System.Text;

namespace Glazewright.Science.Weather;

/// <summary>
/// TMY3 CSV (68 or 71 columns, read by the names in line 2). Radiation is the mean of the hour that ends at the stamp; large negatives are missing.
/// The format is described in its user's manual, Wilcox and Marion 2008 (from memory); thresholds read at second hand.
/// </summary>
internal sealed class Tmy3Reader(string contentSha256, GapRule gaps)
{
    private static readonly Tmy3Field[] s_fields =
    [
        new("Dry-bulb (C)", RawYear.DryBulb, "Dry bulb", 1),
        new("Dew-point (C)", RawYear.DewPoint, "Dew point", 1),
        new("RHum (%)", RawYear.Rh, "Relative humidity", 1),
        new("Pressure (mbar)", RawYear.Pressure, "Station pressure", 100),
        new("GHI (W/m^2)", RawYear.Ghi, "Global radiation", 1),
        new("DNI (W/m^2)", RawYear.Dni, "Direct radiation", 1),
        new("DHI (W/m^2)", RawYear.Dhi, "Diffuse radiation", 1),
        new("Wdir (degrees)", RawYear.WindFrom, "Wind direction", 1),
        new("Wspd (m/s)", RawYear.Wind, "Wind speed", 1),
        new("OpqCld (tenths)", RawYear.Opaque, "Opaque sky cover", 1),
    ];

    private readonly ProblemList _problems = new();
    private readonly RawYear _raw = new() { PressureUnitPa = 100 };

    public WeatherReading Read(ReadOnlySpan<byte> text)
    {
        var lines = new TextLines(text);
        lines.TryNext(out ReadOnlySpan<byte> first);
        WeatherStation? station = ReadStation(SplitQuoted(PlainText.Line(first)));
        lines.TryNext(out ReadOnlySpan<byte> second);
        string[] names = Encoding.Latin1.GetString(second).Split(',');
        int[] at = [.. s_fields.Select(f => Array.FindIndex(names, n => n.Trim() == f.Column))];
        for (int i = 0; i < at.Length; i++)
        {
            if (at[i] < 0)
            {
                _problems.Add(WeatherWords.NoColumn(s_fields[i].Column));
            }
        }

        for (int i = 0; i < at.Length; i++)
        {
            _raw.FileColumn[s_fields[i].Target] = at[i] + 1;
        }

        int depthAt = Array.FindIndex(names, n => n.Trim() == "Lprecip depth (mm)"), spanAt = Array.FindIndex(names, n => n.Trim() == "Lprecip quantity (hr)");
        var years = new SortedSet<int>();
        var notes = new List<WeatherNote>();
        int row = 0;
        int leap = 0;
        while (!_problems.Any && lines.TryNext(out ReadOnlySpan<byte> line))
        {
            string rowText = Encoding.Latin1.GetString(line);
            if (rowText.Trim().Length == 0)
            {
                continue;
            }

            string[] cells = rowText.Split(',');
            if (cells.Length != names.Length)
            {
                _problems.Add(WeatherWords.FieldCount(lines.Number, cells.Length, FormattableString.Invariant($"{names.Length} fields, as named in line 2.")));
                break;
            }

            if (!TryStamp(cells[0], cells[1], out int year, out HourStamp found))
            {
                _problems.Add(WeatherWords.NotANumber(lines.Number, 1, "The stamp (MM/DD/YYYY, HH:MM)", cells[0] + "," + cells[1]));
                break;
            }

            if (found is { Month: 2, Day: 29 })
            {
                leap++;
                continue;
            }

            if (row >= CommonYear.Hours)
            {
                _problems.Add(WeatherWords.TooManyRows(lines.Number));
                break;
            }

            HourStamp expected = CommonYear.StampOf(row);
            if (found != expected)
            {
                _problems.Add(WeatherWords.OutOfOrder(lines.Number, expected, cells[0] + " " + cells[1]));
                break;
            }

            years.Add(year);
            _raw.Line[row] = lines.Number;
            for (int i = 0; i < s_fields.Length; i++)
            {
                _raw.Columns[s_fields[i].Target][row] = Value(cells[at[i]], s_fields[i], at[i] + 1, lines.Number);
            }

            if (depthAt >= 0)
            {
                _raw.Rain.Depth(row, Amount(cells[depthAt]), spanAt >= 0 ? Amount(cells[spanAt]) : double.NaN);
            }

            row++;
        }

        if (!_problems.Any && row < CommonYear.Hours)
        {
            _problems.Add(WeatherWords.EndsEarly(lines.Number, row));
        }

        if (_problems.Any)
        {
            return _problems.ToRefused();
        }

        if (leap > 0)
        {
            notes.Add(new WeatherNote("A leap year: its 24 rows of 29 February are left out, so that the year has 8760 hours."));
        }

        var provenance = new WeatherProvenance(WeatherOrigin.Tmy3File, $"TMY3 file of {station!.Name}", contentSha256, [.. years]);
        return new YearAssembly(station, provenance, new HeaderConditions.None(), _raw, notes, gaps, _problems).Build();
    }

    private WeatherStation? ReadStation(List<string> f)
    {
        if (f.Count < 7)
        {
            _problems.Add(WeatherWords.FieldCount(1, f.Count, "station,\"name\",state,zone,latitude,longitude,elevation"));
            return null;
        }

        double zone = Number(f, 3, "Time zone", -12, 14);
        double lat = Number(f, 4, "Latitude", -90, 90);
        double lon = Number(f, 5, "Longitude", -180, 180);
        double elevation = Number(f, 6, "Elevation", -450, 6000);
        return new WeatherStation(f[1], f[2], string.Empty, "TMY3", f[0], lat, lon, zone, elevation);
    }

    private double Number(List<string> f, int at, string name, double least, double most)
    {
        if (!double.TryParse(f[at], NumberStyles.Float, CultureInfo.InvariantCulture, out double x) || !(x >= least && x <= most))
        {
            _problems.Add(WeatherWords.BadHeader(1, at + 1, name, f[at].Trim(), FormattableString.Invariant($"A number from {least} to {most}.")));
            return 0;
        }

        return x;
    }

    private double Value(string cell, Tmy3Field field, int column, int line)
    {
        if (string.IsNullOrWhiteSpace(cell))
        {
            return double.NaN;
        }

        if (!double.TryParse(cell, NumberStyles.Float, CultureInfo.InvariantCulture, out double x) || !double.IsFinite(x))
        {
            _problems.Add(WeatherWords.NotANumber(line, column, field.Name, cell.Trim()));
            return double.NaN;
        }

        return x < -90 && IsMissingCode(cell) ? double.NaN : x * field.Factor;
    }

    // Missing ones are far below nothing.
    private static double Amount(string cell) =>
        double.TryParse(cell, NumberStyles.Float, CultureInfo.InvariantCulture, out double x) && x is >= 0 and < 999 ? x : double.NaN;

    // -99, -999, -9900 and the like: nines, then noughts. Another number so low is impossible.
    private static bool IsMissingCode(string cell) =>
        cell.Trim().TrimStart('-').Split('.')[0].TrimEnd('0').All(c => c == '9');

    /// <summary>mm/dd/yyyy and 01:00 to 24:00; 24:00 is no clock time, so no time type reads it.</summary>
    private static bool TryStamp(string date, string time, out int year, out HourStamp stamp)
    {
        year = 0;
        stamp = default;
        string[] d = date.Split('/');
        string[] t = time.Split(':');
        if (d.Length != 3 || t.Length < 2 || !Int(d[0], out int month) || !Int(d[1], out int day) || !Int(d[2], out year) || !Int(t[0], out int hour))
        {
            return false;
        }

        stamp = new HourStamp(month, day, hour);
        return true;
    }

    private static bool Int(string text, out int value) =>
        int.TryParse(text, NumberStyles.Integer, CultureInfo.InvariantCulture, out value);

    private static List<string> SplitQuoted(string line)
    {
        var fields = new List<string>();
        var field = new StringBuilder();
        bool quoted = false;
        foreach (char c in line)
        {
            if (c == '"')
            {
                quoted = !quoted;
            }
            else if (c == ',' && !quoted)
            {
                fields.Add(field.ToString().Trim());
                field.Clear();
            }
            else
            {
                field.Append(c);
            }
        }

        fields.Add(field.ToString().Trim());
        return fields;
    }

    private sealed record Tmy3Field(string Column, int Target, string Name, double Factor);
}
