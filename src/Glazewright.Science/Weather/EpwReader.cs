using System.Globalization;
using System.Text;

namespace Glazewright.Science.Weather;

/// <summary>
/// EPW rows and headers. Headers are found by key (a real file lacks COMMENTS 2); rows have 32 to 35 fields. Field order, units and missing codes: the format's
/// data dictionary (read at second hand); nines at or above the missing code are missing, another number there is impossible.
/// </summary>
internal sealed partial class EpwReader(string contentSha256, GapRule gaps)
{
    private const int MostFields = 35;
    private const int ObservationAt = 26; // present weather: observation, then its codes
    private const int DepthAt = 33; // liquid precipitation: depth, mm, then its hours

    private static readonly EpwField[] s_fields =
    [
        new(6, "Dry bulb", 99.9),
        new(7, "Dew point", 99.9),
        new(8, "Relative humidity", 999),
        new(9, "Station pressure", 999_999),
        new(12, "Horizontal infrared", 9999),
        new(13, "Global radiation", 9999),
        new(14, "Direct radiation", 9999),
        new(15, "Diffuse radiation", 9999),
        new(20, "Wind direction", 999),
        new(21, "Wind speed", 999),
        new(23, "Opaque sky cover", 99),
        new(30, "Snow depth", 999),
    ];

    private readonly ProblemList _problems = new();
    private readonly RawYear _raw = new();
    private readonly List<WeatherNote> _notes = [];
    private readonly SortedSet<int> _years = [];
    private WeatherStation? _station;
    private HeaderConditions _conditions = new HeaderConditions.None();
    private int _wantedFields;
    private bool _broken;
    private int _leapRows;
    private int _perHour = 1;
    private PartHours? _parts;

    public WeatherReading Read(ReadOnlySpan<byte> text)
    {
        var lines = new TextLines(text);
        bool inRows = false;
        int row = 0;
        while (lines.TryNext(out ReadOnlySpan<byte> line))
        {
            if (inRows)
            {
                if (!IsBlank(line))
                {
                    ReadRow(line, lines.Number, ref row);
                }

                if (_broken)
                {
                    break;
                }
            }
            else
            {
                inRows = ReadHeader(PlainText.Line(line), lines.Number);
            }
        }

        if (_station is null && !_problems.Any)
        {
            _problems.Add(WeatherWords.NoHeader("LOCATION"));
        }

        if (!inRows)
        {
            _problems.Add(WeatherWords.NoHeader("DATA PERIODS"));
        }
        else if (!_broken && row < CommonYear.Hours * _perHour)
        {
            _problems.Add(WeatherWords.EndsEarly(lines.Number, row / _perHour));
        }

        if (_problems.Any)
        {
            return _problems.ToRefused();
        }

        for (int i = 0; i < s_fields.Length; i++)
        {
            _raw.FileColumn[i] = s_fields[i].Index + 1;
        }

        if (_parts is not null)
        {
            _notes.Add(_parts.Gather(_station!, _raw));
        }

        if (_leapRows > 0)
        {
            _notes.Add(new WeatherNote("A leap year: its rows of 29 February are left out, so that the year has 8760 hours."));
        }

        var provenance = new WeatherProvenance(
            WeatherOrigin.EpwFile, $"EPW file of {_station!.Name} ({_station.Source})", contentSha256, [.. _years]);
        return new YearAssembly(_station, provenance, _conditions, _raw, _notes, gaps, _problems).Build();
    }

    /// <summary>True when the line is DATA PERIODS, after which the rows start.</summary>
    private bool ReadHeader(string line, int number)
    {
        int comma = line.IndexOf(',');
        string key = (comma < 0 ? line : line[..comma]).Trim().ToUpperInvariant();
        switch (key)
        {
            case "LOCATION":
                _station = ReadStation(line.Split(','), number);
                return false;
            case "DESIGN CONDITIONS":
                _conditions = EpwDesignLine.Parse(line);
                if (_conditions is HeaderConditions.Unreadable odd)
                {
                    _notes.Add(new WeatherNote($"The header's design conditions are not used: {odd.Why}."));
                }

                return false;
            case "HOLIDAYS/DAYLIGHT SAVINGS" or "HOLIDAYS/DAYLIGHT SAVING":
                string[] saving = line.Split(',');
                if (saving.Length > 2 && saving[2].Trim() is not ("0" or ""))
                {
                    _notes.Add(new WeatherNote("The header declares daylight saving; the rows are standard time all the same and are read so."));
                }

                return false;
            case "DATA PERIODS":
                ReadPeriods(line.Split(','), number);
                return true;
            default:
                return false;
        }
    }

    private WeatherStation? ReadStation(string[] f, int line)
    {
        if (f.Length < 10)
        {
            _problems.Add(WeatherWords.FieldCount(line, f.Length, "LOCATION,city,region,country,source,station,latitude,longitude,zone,elevation"));
            return null;
        }

        double lat = Number(f, 6, "Latitude", -90, 90, line);
        double lon = Number(f, 7, "Longitude", -180, 180, line);
        double zone = Number(f, 8, "Time zone", -12, 14, line);
        double elevation = Number(f, 9, "Elevation", -450, 6000, line);
        if (Math.Abs(zone - lon / 15) > 3.5)
        {
            _notes.Add(new WeatherNote("Time zone and longitude are more than 3.5 hours apart: one of them is probably wrong."));
        }

        return new WeatherStation(f[1].Trim(), f[2].Trim(), f[3].Trim(), f[4].Trim(), f[5].Trim(), lat, lon, zone, elevation);
    }

    private double Number(string[] f, int at, string name, double least, double most, int line)
    {
        if (!double.TryParse(f[at], NumberStyles.Float, CultureInfo.InvariantCulture, out double x) || !(x >= least && x <= most))
        {
            _problems.Add(WeatherWords.BadHeader(line, at + 1, name, f[at].Trim(), FormattableString.Invariant($"A number from {least} to {most}.")));
            return 0;
        }

        return x;
    }

    private void ReadPeriods(string[] f, int line)
    {
        if (f.Length > 1 && f[1].Trim() != "1")
        {
            _problems.Add(WeatherWords.Period(line, $"The file declares {f[1].Trim()} data periods.", "One period, 1/1 to 12/31."));
        }

        if (f.Length > 2 && f[2].Trim() != "1")
        {
            if (int.TryParse(f[2].Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out int perHour) && perHour is > 1 and <= 60 && 60 % perHour == 0)
            {
                _perHour = perHour;
                _parts = new PartHours(perHour);
            }
            else
            {
                _problems.Add(WeatherWords.Period(line, $"The file has {f[2].Trim()} records an hour.", "A whole number of records that divides 60 minutes."));
                _broken = true;
            }
        }
    }

    private void ReadRow(ReadOnlySpan<byte> line, int number, ref int row)
    {
        Span<int> starts = stackalloc int[MostFields + 3];
        int count = Split(line, starts);
        int wanted = _wantedFields == 0 ? count : _wantedFields;
        if (count is < 32 or > MostFields || count != wanted)
        {
            _problems.Add(WeatherWords.FieldCount(
                number, count, _wantedFields == 0 ? "35 fields (older files 32)." : FormattableString.Invariant($"{wanted} fields, as in the rows above.")));
            _broken = _wantedFields == 0 || row >= CommonYear.Hours * _perHour;
            row++;
            return;
        }

        _wantedFields = count;
        if (!TryStamp(line, starts, out int year, out HourStamp found))
        {
            _problems.Add(WeatherWords.NotANumber(number, 1, "The stamp (year, month, day, hour)", Text(line, starts, 0, 4)));
            row++;
            return;
        }

        if (found is { Month: 2, Day: 29 })
        {
            _leapRows++;
            return;
        }

        if (row >= CommonYear.Hours * _perHour)
        {
            _problems.Add(WeatherWords.TooManyRows(number));
            _broken = true;
            return;
        }

        HourStamp expected = CommonYear.StampOf(row / _perHour);
        if (found != expected || !MinuteFits(line, starts, row))
        {
            _problems.Add(WeatherWords.OutOfOrder(number, expected, FormattableString.Invariant($"{found.Month}/{found.Day} hour {found.HourEnding}")));
            _broken = true;
            return;
        }

        _years.Add(year);
        if (row % _perHour == 0)
        {
            _raw.Line[row / _perHour] = number;
        }

        double[][] columns = _parts?.Columns ?? _raw.Columns;
        for (int i = 0; i < s_fields.Length; i++)
        {
            if (s_fields[i].Index < count)
            {
                columns[i][row] = Value(line, starts, s_fields[i], number);
            }
        }

        ReadRain(line, starts, count, row / _perHour);
        row++;
    }

    // Nothing but the rain contact goes by these: what cannot be read in them is no fault of the file.
    private void ReadRain(ReadOnlySpan<byte> line, Span<int> starts, int count, int hour)
    {
        _raw.Rain.Seen(hour, Cell(line, starts, ObservationAt).SequenceEqual("0"u8), Cell(line, starts, ObservationAt + 1));
        if (count > DepthAt + 1)
        {
            _raw.Rain.Depth(hour, Amount(Cell(line, starts, DepthAt), 999), Amount(Cell(line, starts, DepthAt + 1), 99));
        }
    }

    private static ReadOnlySpan<byte> Cell(ReadOnlySpan<byte> line, Span<int> starts, int at) => line[starts[at]..(starts[at + 1] - 1)].Trim((byte)' ');

    private static double Amount(ReadOnlySpan<byte> cell, double missing) =>
        double.TryParse(cell, NumberStyles.Float, CultureInfo.InvariantCulture, out double x) && x >= 0 && x < missing ? x : double.NaN;

    // Minutes of the parts run 0, 30 or 30, 60; one record an hour may carry either.
    private bool MinuteFits(ReadOnlySpan<byte> line, Span<int> starts, int row)
    {
        if (_parts is null)
        {
            return true;
        }

        if (!TryInt(line, starts, 4, out int minute))
        {
            return false;
        }

        if (row == 0)
        {
            _parts.StampsStart = minute == 0;
        }

        return minute == (row % _perHour + (_parts.StampsStart ? 0 : 1)) * 60 / _perHour;
    }

    private double Value(ReadOnlySpan<byte> line, Span<int> starts, EpwField field, int number)
    {
        ReadOnlySpan<byte> text = line[starts[field.Index]..(starts[field.Index + 1] - 1)].Trim((byte)' ');
        if (text.IsEmpty)
        {
            return double.NaN;
        }

        if (!double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out double x) || !double.IsFinite(x))
        {
            _problems.Add(WeatherWords.NotANumber(number, field.Index + 1, field.Name, Encoding.Latin1.GetString(text)));
            return double.NaN;
        }

        return x >= field.MissingAtOrAbove && IsNines(text) ? double.NaN : x;
    }

    private static bool IsBlank(ReadOnlySpan<byte> line) => line.Trim((byte)' ').IsEmpty;

    private sealed record EpwField(int Index, string Name, double MissingAtOrAbove);
}
