using System.Globalization;
using NodaTime;

namespace Glazewright.Design.Calibration.Reading;

/// <summary>One stamp as typed in a log.</summary>
internal static class StampReader
{
    private static readonly LocalDateTime s_spreadsheetZero = new(1899, 12, 30, 0, 0);

    /// <summary>Reads a stamp; UNIX seconds come back as UTC.</summary>
    public static bool TryRead(ReadOnlySpan<char> text, StampForm form, out LocalDateTime stamp)
    {
        text = text.Trim().Trim('"');
        stamp = default;
        if (form is StampForm.SpreadsheetDays or StampForm.UnixSeconds)
        {
            if (!double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out double number))
            {
                return false;
            }

            double seconds = form == StampForm.SpreadsheetDays ? number * 86_400 : number;
            if (!(seconds is > 0 and < 1e10))
            {
                return false;
            }

            stamp = (form == StampForm.SpreadsheetDays ? s_spreadsheetZero : new LocalDateTime(1970, 1, 1, 0, 0)).PlusSeconds((long)Math.Round(seconds));
            return true;
        }

        Span<int> part = stackalloc int[6];
        part.Clear();
        int count = 0;
        int at = 0;
        while (at < text.Length && count < 6)
        {
            int start = at;
            while (at < text.Length && char.IsAsciiDigit(text[at]))
            {
                at++;
            }

            if (at == start || at - start > 4)
            {
                return false;
            }

            part[count++] = int.Parse(text[start..at], NumberStyles.None, CultureInfo.InvariantCulture);
            while (at < text.Length && text[at] is '-' or '/' or '.' or ':' or ' ' or 'T')
            {
                at++;
            }
        }

        // What follows whole seconds (fractions, Z) is not read; text elsewhere is no stamp.
        if (count < 3 || (at < text.Length && count < 6))
        {
            return false;
        }

        (int year, int month, int day) = form switch
        {
            StampForm.MonthDayYear => (part[2], part[0], part[1]),
            StampForm.DayMonthYear => (part[2], part[1], part[0]),
            _ => (part[0], part[1], part[2]),
        };
        year += year < 100 ? 2000 : 0;
        if (year is < 1900 or > 2200 || month is < 1 or > 12 || day < 1 || day > CalendarSystem.Iso.GetDaysInMonth(year, month) || part[3] > 23 || part[4] > 59 || part[5] > 59)
        {
            return false;
        }

        stamp = new LocalDateTime(year, month, day, part[3], part[4], part[5]);
        return true;
    }
}
