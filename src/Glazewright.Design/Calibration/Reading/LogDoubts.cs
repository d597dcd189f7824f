using System.Globalization;

namespace Glazewright.Design.Calibration.Reading;

/// <summary>Takes out what a sensor cannot have meant: spikes, and readings that stood still for hours.</summary>
internal static class LogDoubts
{
    public static LogSeries Sieve(LogSeries s, List<LogNote> notes)
    {
        QuantityTraits traits = QuantityTraits.Of(s.Quantity);
        bool[] bad = new bool[s.Values.Length];
        int spikes = traits.LeapValue > 0 ? Spikes(s, traits.LeapValue, bad) : 0;
        (int spells, double hours) = traits.StuckHours > 0 ? Stuck(s, traits, bad) : (0, 0);
        if (spikes > 0)
        {
            notes.Add(new LogNote("log/spikes", string.Create(CultureInfo.InvariantCulture, $"{s.Name}: {spikes} readings leap away from both their neighbours and count as missing")));
        }

        if (spells > 0)
        {
            notes.Add(new LogNote("log/stuck", string.Create(CultureInfo.InvariantCulture, $"{s.Name}: {spells} times the reading stood still for more than {traits.StuckHours:0} h ({hours:0} h in all): a stuck sensor, counted as missing")));
        }

        int left = bad.Count(b => !b);
        if (left == bad.Length || left < 2)
        {
            return s;
        }

        return s with { Utc = [.. s.Utc.Where((_, i) => !bad[i])], Values = [.. s.Values.Where((_, i) => !bad[i])] };
    }

    private static int Spikes(LogSeries s, double leap, bool[] bad)
    {
        int count = 0;
        for (int i = 1; i + 1 < bad.Length; i++)
        {
            double before = s.Values[i] - s.Values[i - 1], after = s.Values[i] - s.Values[i + 1];
            bool near = s.Utc[i + 1] - s.Utc[i - 1] <= 150;
            if (near && !bad[i - 1] && before * after > 0 && Math.Min(Math.Abs(before), Math.Abs(after)) > leap)
            {
                bad[i] = true;
                count++;
            }
        }

        return count;
    }

    private static (int Spells, double Hours) Stuck(LogSeries s, QuantityTraits traits, bool[] bad)
    {
        int spells = 0, start = 0;
        double all = 0;
        for (int i = 1; i <= s.Values.Length; i++)
        {
            if (i < s.Values.Length && s.Values[i] == s.Values[start])
            {
                continue;
            }

            double hours = (s.Utc[i - 1] - s.Utc[start]) / 60;
            bool saturated = traits.Kind == LoggedKind.Share && s.Values[start] > 0.985; // fog and dew do last a night
            if (hours > traits.StuckHours && !saturated && i - start > 3)
            {
                spells++;
                all += hours;
                Array.Fill(bad, true, start, i - start);
            }

            start = i;
        }

        return (spells, all);
    }
}
