using System.Globalization;

namespace Glazewright.Design.Quantities;

/// <summary>A moment of the day: by the clock, or by the sun.</summary>
public abstract record TimeOfDay
{
    private TimeOfDay()
    {
    }

    /// <summary>Reads <c>06:30</c>, <c>6:30 pm</c>, <c>sunrise</c>, <c>sunrise+0:30</c>, <c>sunset - 45 min</c>.</summary>
    /// <param name="text">What was typed.</param>
    /// <param name="time">The time, when the answer is true.</param>
    /// <param name="misreading">What is wrong and what would be right, when it is false.</param>
    /// <returns>True when the text is a time of day.</returns>
    public static bool TryRead(
        string text,
        [System.Diagnostics.CodeAnalysis.NotNullWhen(true)] out TimeOfDay? time,
        [System.Diagnostics.CodeAnalysis.NotNullWhen(false)] out Misreading? misreading)
    {
        ArgumentNullException.ThrowIfNull(text);
        string plain = text.Length > 40 ? "" : QuantityText.Plain(text).ToLowerInvariant();
        time = plain.StartsWith("sunrise", StringComparison.Ordinal) ? BySun(plain[7..], isSunrise: true)
            : plain.StartsWith("sunset", StringComparison.Ordinal) ? BySun(plain[6..], isSunrise: false)
            : ByClock(plain);
        misreading = time is not null ? null : new Misreading($"'{text}' is not a time of day", "06:30 or 6:30 pm or sunrise+0:30");
        return time is not null;
    }

    private static Sun? BySun(string rest, bool isSunrise)
    {
        string offset = rest.Trim();
        if (offset.Length == 0)
        {
            return new Sun(isSunrise, 0);
        }

        int sign = offset[0] switch { '+' => 1, '-' => -1, _ => 0 };
        string amount = offset[1..].Trim();
        int minutes = HoursMinutes(amount) is int clock ? clock
            : QuantityReader.TryRead(amount, QuantityKind.Duration, out Quantity quantity, out _) && quantity.Inside <= 43_200 ? (int)Math.Round(quantity.Inside / 60)
            : -1;
        return sign == 0 || minutes is < 0 or > 720 ? null : new Sun(isSunrise, sign * minutes);
    }

    private static Clock? ByClock(string text)
    {
        bool pm = text.EndsWith("pm", StringComparison.Ordinal);
        bool am = text.EndsWith("am", StringComparison.Ordinal);
        string digits = pm || am ? text[..^2].Trim() : text;
        int? minutes = HoursMinutes((pm || am) && !digits.Contains(':', StringComparison.Ordinal) ? digits + ":00" : digits);
        if (minutes is not int m || m > 1440)
        {
            return null;
        }

        if (!pm && !am)
        {
            return new Clock(m);
        }

        return m is < 60 or >= 780 ? null : new Clock(m % 720 + (pm ? 720 : 0));
    }

    private static int? HoursMinutes(string text)
    {
        string[] parts = text.Split(':');
        return parts.Length == 2 && parts[1].Length == 2 && parts[0].Length is 1 or 2
            && int.TryParse(parts[0], NumberStyles.None, CultureInfo.InvariantCulture, out int hours)
            && int.TryParse(parts[1], NumberStyles.None, CultureInfo.InvariantCulture, out int minutes) && minutes < 60 && hours <= 24
            ? hours * 60 + minutes
            : null;
    }

    /// <summary>By the clock, in the zone's standard time.</summary>
    /// <param name="Minutes">Minutes after midnight, 0 to 1440.</param>
    public sealed record Clock(int Minutes) : TimeOfDay
    {
        /// <inheritdoc/>
        public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Minutes / 60:00}:{Minutes % 60:00}");
    }

    /// <summary>By the sun of the day.</summary>
    /// <param name="IsSunrise">True from sunrise, false from sunset.</param>
    /// <param name="OffsetMinutes">Minutes after it (negative before), −720 to 720.</param>
    public sealed record Sun(bool IsSunrise, int OffsetMinutes) : TimeOfDay
    {
        /// <inheritdoc/>
        public override string ToString()
        {
            int size = Math.Abs(OffsetMinutes);
            string name = IsSunrise ? "sunrise" : "sunset";
            return OffsetMinutes == 0 ? name
                : string.Create(CultureInfo.InvariantCulture, $"{name}{(OffsetMinutes < 0 ? '-' : '+')}{size / 60}:{size % 60:00}");
        }
    }
}
