using System.Globalization;
using NodaTime;
using NodaTime.TimeZones;

namespace Glazewright.Design.Calibration.Reading;

/// <summary>From the log's own stamps to minutes since 1970 UTC and back, summer time included.</summary>
internal sealed class LogClock
{
    private readonly DateTimeZone zone;

    private LogClock(DateTimeZone zone) => this.zone = zone;

    /// <summary>Finds a zone by its IANA name, or a steady offset as +01:00.</summary>
    public static bool TryFind(string name, out LogClock clock)
    {
        clock = new LogClock(DateTimeZone.Utc);
        if (name.Length == 6 && name[0] is '+' or '-' && name.Length == 6
            && int.TryParse(name.AsSpan(1, 2), NumberStyles.None, CultureInfo.InvariantCulture, out int hours)
            && int.TryParse(name.AsSpan(4, 2), NumberStyles.None, CultureInfo.InvariantCulture, out int minutes)
            && name[3] == ':' && hours <= 14 && minutes < 60)
        {
            clock = new LogClock(DateTimeZone.ForOffset(Offset.FromSeconds((name[0] == '-' ? -1 : 1) * (hours * 3600 + minutes * 60))));
            return true;
        }

        if (DateTimeZoneProviders.Tzdb.GetZoneOrNull(name) is not { } found)
        {
            return false;
        }

        clock = new LogClock(found);
        return true;
    }

    /// <summary>Minutes since 1970 UTC; of a doubled hour the first that lies after what came before.</summary>
    public double Utc(LocalDateTime local, double after)
    {
        ZoneLocalMapping mapping = zone.MapLocal(local);
        ZonedDateTime early = mapping.Count == 0 ? zone.ResolveLocal(local, Resolvers.LenientResolver) : mapping.First();
        double utc = Minutes(early.ToInstant());
        return mapping.Count == 2 && utc <= after ? Minutes(mapping.Last().ToInstant()) : utc;
    }

    /// <summary>The local time of a minute.</summary>
    public LocalDateTime Local(double utcMinute) => Instant.FromUnixTimeSeconds((long)Math.Round(utcMinute * 60)).InZone(zone).LocalDateTime;

    private static double Minutes(Instant instant) => instant.ToUnixTimeSeconds() / 60.0;
}
