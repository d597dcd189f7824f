using System.Globalization;
using System.IO.Compression;
using System.Text.RegularExpressions;

namespace Glazewright.Science.Weather;

/// <summary>
/// Reads design conditions out of a design-day file (.ddy): objects "SizingPeriod:DesignDay" of an open input text, the yearly ones told by their names
/// (Htg 99.6% … DB, Clg .4% … DB=>MWB). The yearly extremes stand in comments only. Layout: read in public files.
/// </summary>
public static partial class DesignDayFile
{
    private const int LimitBytes = 4_000_000;

    /// <summary>Reads a design-day file, plain or gzip, of any common letter code and line end.</summary>
    /// <param name="content">The whole file.</param>
    /// <returns>The values, none when the file has no design days, or every problem found.</returns>
    public static DesignFileReading Read(ReadOnlySpan<byte> content)
    {
        if (!TryOpen(content, out byte[] opened))
        {
            return new DesignFileReading.Refused([WeatherWords.Damaged()]);
        }

        List<string> comments = [];
        IReadOnlyList<InputObject> objects = InputObjects.Of(PlainText.Of(opened), comments, out InputObject? unended);
        ProblemList problems = new();
        if (unended is not null && (unended.Class.StartsWith("SizingPeriod", StringComparison.OrdinalIgnoreCase) || objects.Count == 0))
        {
            problems.Add(new WeatherProblem(
                WeatherProblemKind.Header, unended.Line, 0, objects.Count == 0 ? "No object of this text ends." : "This design day does not end.", "A semicolon after the last field; the file was probably cut off."));
        }

        InputObject[] days = [.. objects.Where(o => o.Class.Equals("SizingPeriod:DesignDay", StringComparison.OrdinalIgnoreCase))];
        if (days.Length == 0)
        {
            return problems.Any ? new DesignFileReading.Refused(problems.ToRefused().Problems) : new DesignFileReading.None();
        }

        DesignConditions? values = Values(new DesignDays(days, problems), comments);
        DesignPlace? place = Place(objects, problems);
        if (!problems.Any && !EpwDesignLine.Plausible(values))
        {
            problems.Add(new WeatherProblem(
                WeatherProblemKind.OutOfRange, days[0].Line, 0, "The design values contradict each other.", "99.6 % at or below 99 %, 0.4 % at or above 1 % and 2 %, each wet bulb at or below its dry bulb."));
        }

        return problems.Any ? new DesignFileReading.Refused(problems.ToRefused().Problems) : new DesignFileReading.Read(values, place);
    }

    private static DesignConditions Values(DesignDays days, List<string> comments)
    {
        DesignDay cold = days.Find("Htg", "99.6", "DB", wetBulb: false);
        DesignDay cold99 = days.Find("Htg", "99", "DB", wetBulb: false);
        DesignDay hot = days.Find("Clg", ".4", "DB=>MWB", wetBulb: true);
        DesignDay hot1 = days.Find("Clg", "1", "DB=>MWB", wetBulb: true);
        DesignDay hot2 = days.Find("Clg", "2", "DB=>MWB", wetBulb: true);
        DesignDay wet = days.Find("Clg", ".4", "WB=>MDB", wetBulb: true);

        // Some files swap the labels "Max" and "Min" of the extremes: the lower one is the minimum.
        Match extremes = comments.Select(c => Extremes().Match(c)).FirstOrDefault(m => m.Success) ?? Match.Empty;
        double? one = Number(extremes.Groups["a"].Value);
        double? other = Number(extremes.Groups["b"].Value);
        string edition = comments.Select(c => Edition().Match(c)).FirstOrDefault(m => m.Success)?.Groups["e"].Value ?? "edition not named";
        return new DesignConditions
        {
            Edition = edition,
            ColdestMonth = cold.Month,
            Heating996DryBulbC = cold.DryBulbC,
            Heating99DryBulbC = cold99.DryBulbC,
            WindAtHeating996Ms = cold.WindMs,
            ColdestMonthWind1PctMs = null,
            HottestMonth = hot.Month,
            HottestMonthDailyRangeK = hot.RangeK,
            Cooling04DryBulbC = hot.DryBulbC,
            Cooling04WetBulbC = hot.WetBulbC,
            Cooling1DryBulbC = hot1.DryBulbC,
            Cooling1WetBulbC = hot1.WetBulbC,
            Cooling2DryBulbC = hot2.DryBulbC,
            Cooling2WetBulbC = hot2.WetBulbC,
            Evaporation04WetBulbC = wet.WetBulbC,
            Evaporation04DryBulbC = wet.DryBulbC,
            WindAtCooling04Ms = hot.WindMs,
            Wind1PctMs = null,
            MeanAnnualMinC = one is double a && other is double b ? Math.Min(a, b) : null,
            MeanAnnualMaxC = one is double c && other is double d ? Math.Max(c, d) : null,
            Return20YearMinC = null,
            Return20YearMaxC = null,
            Return20YearPrinted = false,
        };
    }

    private static DesignPlace? Place(IReadOnlyList<InputObject> objects, ProblemList problems)
    {
        if (objects.FirstOrDefault(o => o.Class.Equals("Site:Location", StringComparison.OrdinalIgnoreCase)) is not { } site)
        {
            return null;
        }

        if (Number(site.At(2)) is double latitudeDeg and >= -90 and <= 90 && Number(site.At(3)) is double longitudeDeg and >= -180 and <= 180)
        {
            return new DesignPlace(latitudeDeg, longitudeDeg);
        }

        problems.Add(WeatherWords.BadHeader(site.LineOf(2), 0, "The place", $"{site.At(2)}, {site.At(3)}", "Latitude −90 to 90 and longitude −180 to 180, degrees."));
        return null;
    }

    internal static double? Number(string text) =>
        double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out double value) && double.IsFinite(value) ? value : null;

    private static bool TryOpen(ReadOnlySpan<byte> content, out byte[] opened)
    {
        opened = content.ToArray();
        if (content.Length > 2 && content[0] == 0x1F && content[1] == 0x8B)
        {
            try
            {
                using var from = new GZipStream(new MemoryStream(opened), CompressionMode.Decompress);
                var into = new byte[LimitBytes + 1];
                int length = from.ReadAtLeast(into, into.Length, throwOnEndOfStream: false);
                opened = into[..length];
            }
            catch (InvalidDataException)
            {
                return false;
            }
        }

        return opened.Length <= LimitBytes;
    }

    [GeneratedRegex(@"Extreme Annual Temperatures.*?=\s*(?<a>-?\d+(\.\d+)?).*?=\s*(?<b>-?\d+(\.\d+)?)", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Extremes();

    [GeneratedRegex("Using Design Conditions from \"(?<e>[^\"]+)\"", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Edition();
}
