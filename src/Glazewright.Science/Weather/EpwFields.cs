using System.Globalization;
using System.Text;

namespace Glazewright.Science.Weather;

/// <summary>Taking a row apart.</summary>
internal sealed partial class EpwReader
{
    private static bool TryStamp(ReadOnlySpan<byte> line, Span<int> starts, out int year, out HourStamp stamp)
    {
        bool ok = TryInt(line, starts, 0, out year) & TryInt(line, starts, 1, out int month)
            & TryInt(line, starts, 2, out int day) & TryInt(line, starts, 3, out int hour);
        stamp = new HourStamp(month, day, hour);
        return ok;
    }

    // A missing code is written in nines (99.9, 999, 9999.0); some writers use more of them than the format asks.
    private static bool IsNines(ReadOnlySpan<byte> text)
    {
        int point = text.IndexOf((byte)'.');
        ReadOnlySpan<byte> whole = point < 0 ? text : text[..point];
        return whole.IndexOfAnyExcept((byte)'9') < 0 && (point < 0 || text[(point + 1)..].IndexOfAnyExcept((byte)'9', (byte)'0') < 0);
    }

    private static bool TryInt(ReadOnlySpan<byte> line, Span<int> starts, int at, out int value)
    {
        bool ok = double.TryParse(line[starts[at]..(starts[at + 1] - 1)], NumberStyles.Float, CultureInfo.InvariantCulture, out double x)
            && x is >= -9999 and <= 9999 && x == Math.Truncate(x);
        value = ok ? (int)x : 0;
        return ok;
    }

    private static string Text(ReadOnlySpan<byte> line, Span<int> starts, int from, int to) =>
        Encoding.Latin1.GetString(line[starts[from]..(starts[to] - 1)]);

    /// <summary>Starts of the fields, and one past the last field's end + 1; gives the count. A trailing comma adds no field.</summary>
    private static int Split(ReadOnlySpan<byte> line, Span<int> starts)
    {
        line = line.TrimEnd((byte)' ');
        if (!line.IsEmpty && line[^1] == (byte)',')
        {
            line = line[..^1];
        }

        int count = 1;
        starts[0] = 0;
        for (int i = 0; i < line.Length; i++)
        {
            if (line[i] == (byte)',')
            {
                if (count <= MostFields)
                {
                    starts[count] = i + 1;
                }

                count++;
            }
        }

        if (count <= MostFields)
        {
            starts[count] = line.Length + 1;
        }

        return count;
    }
}
