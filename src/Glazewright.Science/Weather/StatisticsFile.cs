using System.Globalization;
using System.IO.Compression;
using System.Text;

namespace Glazewright.Science.Weather;

/// <summary>
/// Reads the design conditions out of the statistics file (.stat) that travels beside many EPW files: rows named "Design Stat", "Units" and then Heating,
/// Cooling or Extremes, with a name over each value. Layout: read in public files.
/// </summary>
public static class StatisticsFile
{
    private const int LimitBytes = 4_000_000;

    /// <summary>Reads a statistics file, plain or gzip.</summary>
    /// <param name="content">The whole file.</param>
    /// <returns>The design values; none when the file has no such rows, unreadable when they lack a value or contradict each other.</returns>
    public static HeaderConditions Read(ReadOnlySpan<byte> content)
    {
        if (!TryText(content, out string text))
        {
            return new HeaderConditions.Unreadable("the statistics file is damaged or far too large");
        }

        Dictionary<string, Dictionary<string, double>> groups = [];
        string[] names = [];
        string edition = "";
        foreach (string line in text.Split('\n'))
        {
            string[] cells = line.Trim().Split('\t', StringSplitOptions.TrimEntries);
            if (edition.Length == 0 && line.Contains("Design Conditions from", StringComparison.Ordinal) && line.Split('"') is { Length: >= 3 } quoted)
            {
                edition = quoted[1];
            }
            else if (cells[0] == "Design Stat")
            {
                names = cells;
            }
            else if (cells[0] is "Heating" or "Cooling" or "Extremes" && names.Length > 1)
            {
                groups.TryAdd(cells[0], Values(names, cells));
                names = [];
            }
        }

        return groups.Count == 0 ? new HeaderConditions.None()
            : Of(groups, edition) is { } values
                ? EpwDesignLine.Plausible(values) ? new HeaderConditions.Printed(values) : new HeaderConditions.Unreadable("the design values of the statistics file contradict each other")
                : new HeaderConditions.Unreadable("the statistics file lacks some design values");
    }

    private static Dictionary<string, double> Values(string[] names, string[] cells)
    {
        Dictionary<string, double> values = [];
        for (int i = 1; i < Math.Min(names.Length, cells.Length); i++)
        {
            if (double.TryParse(cells[i], NumberStyles.Float, CultureInfo.InvariantCulture, out double value) && double.IsFinite(value))
            {
                values.TryAdd(names[i], value);
            }
        }

        return values;
    }

    private static DesignConditions? Of(Dictionary<string, Dictionary<string, double>> groups, string edition)
    {
        bool whole = true;
        double At(string group, string name)
        {
            if (groups.TryGetValue(group, out Dictionary<string, double>? values) && values.TryGetValue(name, out double value))
            {
                return value;
            }

            whole = false;
            return 0;
        }

        var read = new DesignConditions
        {
            Edition = edition,
            ColdestMonth = (int)At("Heating", "ColdestMonth"),
            Heating996DryBulbC = At("Heating", "DB996"),
            Heating99DryBulbC = At("Heating", "DB990"),
            WindAtHeating996Ms = At("Heating", "WS_DB996"),
            ColdestMonthWind1PctMs = At("Heating", "WS010c"),
            HottestMonth = (int)At("Cooling", "HottestMonth"),
            HottestMonthDailyRangeK = At("Cooling", "DBR"),
            Cooling04DryBulbC = At("Cooling", "DB004"),
            Cooling04WetBulbC = At("Cooling", "WB_DB004"),
            Cooling1DryBulbC = At("Cooling", "DB010"),
            Cooling1WetBulbC = At("Cooling", "WB_DB010"),
            Cooling2DryBulbC = At("Cooling", "DB020"),
            Cooling2WetBulbC = At("Cooling", "WB_DB020"),
            Evaporation04WetBulbC = At("Cooling", "WB004"),
            Evaporation04DryBulbC = At("Cooling", "DB_WB004"),
            WindAtCooling04Ms = At("Cooling", "WS_DB004"),
            Wind1PctMs = At("Extremes", "WS010"),
            MeanAnnualMinC = At("Extremes", "DBmin_mean"),
            MeanAnnualMaxC = At("Extremes", "DBmax_mean"),
            Return20YearMinC = At("Extremes", "DBmin20years"),
            Return20YearMaxC = At("Extremes", "DBmax20years"),
            Return20YearPrinted = true,
        };
        return whole ? read : null;
    }

    private static bool TryText(ReadOnlySpan<byte> content, out string text)
    {
        text = "";
        try
        {
            if (content.Length > 2 && content[0] == 0x1F && content[1] == 0x8B)
            {
                using var from = new GZipStream(new MemoryStream(content.ToArray()), CompressionMode.Decompress);
                var into = new byte[LimitBytes + 1];
                int length = from.ReadAtLeast(into, into.Length, throwOnEndOfStream: false);
                text = Encoding.Latin1.GetString(into, 0, Math.Min(length, LimitBytes));
                return length <= LimitBytes;
            }
        }
        catch (InvalidDataException)
        {
            return false;
        }

        text = content.Length <= LimitBytes ? Encoding.Latin1.GetString(content) : "";
        return content.Length <= LimitBytes;
    }
}
