using System.Globalization;

namespace Glazewright.Science.Weather;

/// <summary>The words of the weather readers, in one place.</summary>
internal static class WeatherWords
{
    private static string Say(FormattableString text) => FormattableString.Invariant(text);

    public static string SunMoved(double offsetH) => Say($"Radiation taken as the mean of the hour centred {offsetH:+0.00;-0.00} h from the stamp, as asked.");

    public static WeatherProblem TooLarge(int limitBytes) => new(
        WeatherProblemKind.NotAWeatherFile, 0, 0, Say($"The file is larger than {limitBytes / 1_000_000} MB when opened."), "An hourly year is 1 to 2 MB.");

    public static WeatherProblem Damaged() => new(
        WeatherProblemKind.DamagedCompression, 0, 0, "The gzip data break off or are damaged.", "Copy the file again; 'gunzip -t' must pass.");

    public static WeatherProblem Empty() => new(
        WeatherProblemKind.NotAWeatherFile, 0, 0, "The file is empty.", "An EPW file (first line LOCATION,…) or a TMY3 CSV file.");

    public static WeatherProblem Unknown(string firstLine) => new(
        WeatherProblemKind.NotAWeatherFile, 1, 0, $"Not a weather file that can be read: it starts '{firstLine}'.",
        "An EPW file (first line LOCATION,…) or a TMY3 CSV file (second line Date (MM/DD/YYYY),Time (HH:MM),…), plain or .gz.");

    public static WeatherProblem KnownButUnread(string kind) => new(
        WeatherProblemKind.NotAWeatherFile, 1, 0, $"This looks like {kind}, which is not read.", "Convert it to EPW first.");

    public static WeatherProblem NoHeader(string key) => new(
        WeatherProblemKind.Header, 0, 0, $"The header line {key} is absent.", "EPW headers: LOCATION … DATA PERIODS, one line each, then the rows.");

    public static WeatherProblem BadHeader(int line, int column, string field, string text, string right) => new(
        WeatherProblemKind.Header, line, column, $"{field} is '{text}'.", right);

    public static WeatherProblem Period(int line, string what, string right) => new(WeatherProblemKind.Period, line, 0, what, right);

    public static WeatherProblem FieldCount(int line, int found, string right) => new(
        WeatherProblemKind.FieldCount, line, 0, Say($"The row has {found} fields."), right);

    public static WeatherProblem OutOfOrder(int line, HourStamp wanted, string found) => new(
        WeatherProblemKind.Sequence, line, 0, $"The row is stamped {found}.",
        Say($"Here stands {wanted.Month}/{wanted.Day} hour {wanted.HourEnding}: rows run hour by hour from 1/1 hour 1 to 12/31 hour 24."));

    public static WeatherProblem EndsEarly(int line, int rows)
    {
        HourStamp next = CommonYear.StampOf(Math.Min(rows, CommonYear.Hours - 1));
        return new WeatherProblem(
            WeatherProblemKind.Sequence, line, 0, Say($"The file ends after {rows} hourly rows."),
            Say($"8760 rows; the next would be {next.Month}/{next.Day} hour {next.HourEnding}. The file was probably cut off while copying."));
    }

    public static WeatherProblem TooManyRows(int line) => new(
        WeatherProblemKind.Period, line, 0, "There are rows after 12/31 hour 24.", "One year of 8760 hours; take several years apart into one file each.");

    public static WeatherProblem NotANumber(int line, int column, string field, string text) => new(
        WeatherProblemKind.NotANumber, line, column, $"{field} is '{text}'.", "A number with a decimal point.");

    public static WeatherProblem TooManyImpossible(int line, int column, FieldLimit limit, int hours, double first, int most) => new(
        WeatherProblemKind.OutOfRange, line, column,
        Say($"{limit.Field} holds impossible values in {Hours(hours)}; here stands {first}."),
        Say($"{limit.Least} to {limit.Most} {limit.Unit}. Up to {most} hours (1 % of the year) are taken out and filled; more is a wrong unit, a shifted column or a damaged file."));

    public static string Rejected(WeatherRejected r) => Say(
        $"{r.Field}: {Hours(r.Hours)} with {(r.Hours == 1 ? "an impossible value" : "impossible values")}, first {r.FirstValue} {r.Unit} in line {r.FirstLine} (possible: {r.LeastValue} to {r.MostValue}): {r.How}.");

    public static string Filled(WeatherGap gap)
    {
        HourStamp at = CommonYear.StampOf(gap.FirstHour);
        string line = gap.FirstLine > 0 ? Say($", line {gap.FirstLine}") : "";
        string where = gap.Hours >= CommonYear.Hours ? "" : Say($" ({(gap.Hours == 1 ? "" : "first ")}{at.Month}/{at.Day} hour {at.HourEnding}{line})");
        return Say($"{gap.Field}: {Hours(gap.Hours)} made up{where}: {gap.How}.");
    }

    public static WeatherNote Converted(string field, string unit, string to, double seen, double now) => new(
        Say($"{field} is in {unit}, not the {to} of the format (values near {seen:0.###} cannot be {to}): converted, {seen:0.###} {unit} being {now:0.##} {to}. Make sure of it."), WeatherGravity.Warning);

    public static WeatherNote WindUnitUnknown(double meanMs, IEnumerable<(string Unit, double Ms)> others) => new(
        Say($"Wind speed: a mean of {meanMs:0.0} m/s is hardly a place's; it may be another unit ({string.Join(", ", others.Select(o => Say($"{o.Unit} would make {o.Ms:0.0} m/s")))}). The file does not tell which, so nothing was changed."), WeatherGravity.Warning);

    public static string Hours(int count) => count == 1 ? "1 hour" : Say($"{count} hours");

    public static WeatherProblem MissingRun(int line, int column, string field, int hours, int longest) => new(
        WeatherProblemKind.Missing, line, column, Say($"{field} is missing for {Hours(hours)} from here."),
        longest == 0 ? "No hole is allowed by the gap rule." : Say($"Holes of up to {longest} hours may be filled; choose another year or another station."));

    public static WeatherProblem MissingSun(int line, int column, string field, int hours) => new(
        WeatherProblemKind.Missing, line, column, Say($"{field} is missing in {hours} daylight {(hours == 1 ? "hour" : "hours")}, first here."),
        "Radiation is not made up: the global, or two of global, direct and diffuse, must be there.");

    public static WeatherProblem NoSun(int line, int column, double yearKwhm2, double fraction) => new(
        WeatherProblemKind.OutOfRange, line, column,
        Say($"Global radiation adds up to {yearKwhm2:0.#} kWh/m² in the year, {100 * fraction:0.#} % of what reaches the top of the air: there is no sun in this file."),
        "25 to 75 %. Zeros stand where nothing was measured, or the column is in another unit; take a file with radiation, or twelve months of normals.");

    public static WeatherNote DarkMonth(int month, double fraction) => new(
        Say($"Global radiation of {CultureInfo.InvariantCulture.DateTimeFormat.GetMonthName(month)} is {100 * fraction:0.#} % of what reaches the top of the air; real months have 10 to 80 %. It is used as it stands: that month is dark here, and perhaps not outdoors."), WeatherGravity.Warning);

    public static WeatherProblem MoreProblems(int more) => new(
        WeatherProblemKind.NotAWeatherFile, 0, 0, Say($"{more} more {(more == 1 ? "problem" : "problems")} of the same kinds."), "See those listed.");

    public static WeatherProblem NoColumn(string name) => new(
        WeatherProblemKind.Header, 2, 0, $"The column '{name}' is absent.", "A TMY3 file names all its columns in line 2.");
}
