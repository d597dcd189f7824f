using System.Globalization;
using System.Text.RegularExpressions;

namespace Glazewright.Science.Weather;

/// <summary>One design day as its file has it.</summary>
/// <param name="Month">1 to 12.</param>
/// <param name="DryBulbC">Highest dry bulb, °C.</param>
/// <param name="RangeK">Daily range, K.</param>
/// <param name="WetBulbC">Wet bulb at the highest dry bulb, °C; the dry bulb where none was asked.</param>
/// <param name="WindMs">Wind, m/s.</param>
internal sealed record DesignDay(int Month, double DryBulbC, double RangeK, double WetBulbC, double WindMs);

/// <summary>The design days of a file, asked for by name; what is missing or impossible goes to the list of problems.</summary>
internal sealed class DesignDays(IReadOnlyList<InputObject> days, ProblemList problems)
{
    private static readonly DesignDay s_none = new(1, 0, 0, 0, 0);

    public DesignDay Find(string season, string percent, string what, bool wetBulb)
    {
        // "Ann" keeps a month's days out; the digit before is looked at so that 2% is not found in 12%.
        Regex name = new(
            $@"\bAnn\b.*\b{season}\s+(0(?=\.))?{Regex.Escape(percent)}(\.0)?\s*%.*\s{Regex.Escape(what)}\s*$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant, TimeSpan.FromSeconds(1));
        InputObject[] found = [.. days.Where(d => name.IsMatch(d.At(1)))];
        if (found.Length != 1)
        {
            problems.Add(new WeatherProblem(
                found.Length == 0 ? WeatherProblemKind.Missing : WeatherProblemKind.Header,
                found.Length == 0 ? 0 : found[1].Line,
                0,
                found.Length == 0 ? $"No design day is named as the yearly {season} {percent}% {what}." : $"A second design day is named as the yearly {season} {percent}% {what}.",
                $"One design day with a name like 'Place Ann {season} {percent}% Condns {what}'."));
            return s_none;
        }

        InputObject day = found[0];
        double month = Field(day, 2, "Month", 1, 12);
        double dryC = Field(day, 5, "Highest dry bulb (°C)", -60, 60);
        double rangeK = Field(day, 6, "Daily range (K)", 0, 40);
        double windMs = Field(day, 16, "Wind (m/s)", 0, 60);
        double wetC = dryC;
        if (wetBulb)
        {
            wetC = Field(day, 10, "Wet bulb (°C)", -60, 45);
            if (!day.At(9).Replace("-", "", StringComparison.Ordinal).StartsWith("Wetbulb", StringComparison.OrdinalIgnoreCase))
            {
                problems.Add(WeatherWords.BadHeader(day.LineOf(9), 0, "The humidity condition", day.At(9), "'Wetbulb' for this day."));
            }
        }

        return new DesignDay((int)month, dryC, rangeK, wetC, windMs);
    }

    private double Field(InputObject day, int at, string field, double least, double most)
    {
        string right = FormattableString.Invariant($"A number from {least} to {most}, in '{day.At(1)}'.");
        if (DesignDayFile.Number(day.At(at)) is not double value)
        {
            problems.Add(new WeatherProblem(
                at < day.Fields.Count && day.At(at).Length > 0 ? WeatherProblemKind.NotANumber : WeatherProblemKind.Missing, day.LineOf(at), 0,
                day.At(at).Length > 0 ? $"{field} is '{day.At(at)}'." : $"{field} is missing.", right));
            return 0;
        }

        if (value < least || value > most)
        {
            problems.Add(new WeatherProblem(
                WeatherProblemKind.OutOfRange, day.LineOf(at), 0, string.Create(CultureInfo.InvariantCulture, $"{field} is {value}."), right));
        }

        return value;
    }
}
