using System.Globalization;
using System.Text.RegularExpressions;
using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Papers.Reports;

namespace Glazewright.Papers.Sets;

/// <summary>
/// Stages say quantities in US units, often with SI behind them in brackets; a metric job hears SI alone. What has no SI beside it is converted here,
/// to about the digits it was said with. A bare "in" is a quantity only before what it can measure: elsewhere it is the preposition.
/// </summary>
public static partial class SiWords
{
    private const string Number = @"[±−-]?\d[\d,]*(?:\.\d+)?";
    private const string UsUnit = @"(?:°F|F°|lb|psf|psi|W/ft²|ft²|ft|in|cfm|gpm|mph|kBtu/h|Btu/h|gal)";
    private const string SiUnit = @"(?:°C|K|kN|N|kPa|Pa|W/m²|m²|m³|mm|cm|m|kW|W|km/h|m/s|L|kg)(?:/\w+)?";

    // What a size in inches can stand before.
    private const string Sized =
        @"(?= ?(?:exhaust|circulation|oscillating|filter|motor|corrugated|insulated|bare|steel|bonded|washer|type B|×|Fan|fans?\b|louver|pipe|between|from|above|under|over|fit|is too|too high|or close|[:,;.)]|$))";

    private static readonly Dictionary<string, string> PipeSizes = new(StringComparer.Ordinal)
    {
        ["1/2"] = "DN 15",
        ["3/4"] = "DN 20",
        ["1"] = "DN 25",
        ["1-1/4"] = "DN 32",
        ["1-1/2"] = "DN 40",
        ["2"] = "DN 50",
        ["2-1/2"] = "DN 65",
        ["3"] = "DN 80",
        ["4"] = "DN 100",
        ["6"] = "DN 150",
    };

    // Longest first, so that "cfm/ft²" is not heard as "cfm".
    private static readonly (string Us, string Si, double Factor, double Offset, int Decimals)[] Units =
    [
        ("gal a square foot", "L a square metre", 3.785411784 / 0.09290304, 0, 0),
        ("cfm a square foot", "m³/h a square metre", 1.69901082 / 0.09290304, 0, 0),
        ("cfm/ft²", "m³/h·m²", 1.69901082 / 0.09290304, 0, 0),
        ("in. w.g.", "Pa", 249.08891, 0, 0),
        ("in. w.c.", "Pa", 249.08891, 0, 0),
        ("kBtu/h", "kW", 0.29307107, 0, 1),
        ("Btu/h", "W", 0.29307107, 0, 0),
        ("ft³/h", "m³/h", 0.028316847, 0, 1),
        ("lb/h", "kg/h", 0.45359237, 0, 1),
        ("gal/h", "L/h", 3.785411784, 0, 0),
        ("ft²", "m²", 0.09290304, 0, 0),
        ("ft³", "m³", 0.028316847, 0, 1),
        ("cfm", "m³/h", 1.69901082, 0, 0),
        ("gpm", "L/min", 3.785411784, 0, 1),
        ("fpm", "m/s", 0.00508, 0, 2),
        ("mph", "m/s", 0.44704, 0, 1),
        ("psf", "kPa", 0.04788026, 0, 2),
        ("psi", "MPa", 0.006894757, 0, 2),
        ("gal", "L", 3.785411784, 0, 0),
        ("°F", "°C", 1 / 1.8, -32, 1),
        ("F°", "K", 1 / 1.8, 0, 1),
        ("ft", "m", 0.3048, 0, 1),
        ("lb", "kg", 0.45359237, 0, 0),
    ];

    /// <summary>The report as a metric reader hears it.</summary>
    /// <param name="report">As the stage said it.</param>
    /// <returns>The same with SI alone.</returns>
    public static StageReport Of(StageReport report) => report with
    {
        Figures = report.Figures.Select(f => f with { Label = Of(f.Label), Caution = Of(f.Caution) }).ToEqList(),
        Findings = report.Findings.Select(f => f with { What = Of(f.What), Mend = Of(f.Mend) }).ToEqList(),
        LeftOut = report.LeftOut.Select(Of).ToEqList(),
    };

    /// <summary>A sentence with "79 °F (26.3 °C)" made "26.3 °C", "2.1 m (7 ft)" made "2.1 m" and "15 mph" made "6.7 m/s".</summary>
    /// <param name="text">The sentence.</param>
    /// <returns>The sentence in SI.</returns>
    public static string Of(string text)
    {
        text = PairOfRanges().Replace(text, "${si}");
        // The first number of "0.4 to 1.1 mph" and "3 × 4 ft" has its unit only behind the second.
        text = Range().Replace(text, "${a} ${us}${w}${b} ${us}");
        string one = Behind().Replace(Pair().Replace(text, "${si}"), "${si}");
        one = PipeSize().Replace(one, m => PipeSizes.TryGetValue(m.Groups["n"].Value, out string? dn) ? dn : m.Value);
        one = FeetInches().Replace(one, m => Said(Whole(m, "ft") * 0.3048 + (Whole(m, "in") + Fraction(m.Groups["part"].Value)) * 0.0254, 2) + " m");
        one = Inches().Replace(one, m => ((Value(m.Groups["n"].Value) + Fraction(m.Groups["part"].Value)) * 25.4).ToString("0", CultureInfo.InvariantCulture) + " mm");
        return Lone().Replace(one, m =>
        {
            (_, string si, double factor, double offset, int decimals) = Array.Find(Units, u => u.Us == m.Groups["us"].Value);
            return $"{Said((Value(m.Groups["n"].Value) + offset) * factor, decimals)} {si}";
        });
    }

    /// <summary>A pipe size in inches by its metric name, "DN 40".</summary>
    /// <param name="inches">As "1-1/2 in".</param>
    internal static string Nominal(string inches) => PipeSizes.TryGetValue(inches.Replace(" in", "", StringComparison.Ordinal), out string? dn) ? dn : inches;

    /// <summary>A paper as readers of a job's units hear it.</summary>
    /// <param name="report">As it was written.</param>
    /// <param name="units">The job's units.</param>
    /// <returns>The same; for a metric job with every text, figure and cell in SI.</returns>
    public static Report Heard(Report report, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(report);
        return units == UnitSystem.Us ? report : report with { Blocks = [.. report.Blocks.Select(Of)] };
    }

    private static Block Of(Block block) => block switch
    {
        Block.Opening o => o with { Facts = [.. o.Facts.Select(Of)] },
        Block.Heading h => h with { Text = Of(h.Text) },
        Block.Paragraph p => p with { Text = Of(p.Text) },
        Block.Lead l => l with { Text = Of(l.Text) },
        Block.Bullets b => b with { Items = [.. b.Items.Select(Of)] },
        Block.Figures f => f with { Items = [.. f.Items.Select(i => i with { Label = Of(i.Label), Limit = Of(i.Limit) })] },
        Block.TableOf t => t with { Table = t.Table with { Rows = [.. t.Table.Rows.Select(r => (IReadOnlyList<string>)[.. r.Select(Of)])] } },
        Block.Picture p => p with { Caption = Of(p.Caption) },
        Block.Caution c => c with { Text = Of(c.Text) },
        _ => block,
    };

    /// <summary>A number as typed in US words: commas, a true minus sign.</summary>
    private static double Value(string number) => double.Parse(number.Replace(",", "", StringComparison.Ordinal).Replace('−', '-').TrimStart('±'), CultureInfo.InvariantCulture);

    private static double Whole(Match m, string group) => Value(m.Groups[group].Value);

    private static double Fraction(string part)
    {
        string[] halves = part.Trim(' ', '-').Split('/');
        return halves.Length == 2 ? Value(halves[0]) / Value(halves[1]) : 0;
    }

    private static string Said(double value, int decimals)
    {
        int shown = Math.Abs(value) >= 1000 ? 0 : decimals == 0 && value != 0 && Math.Abs(value) < 10 ? 1 : decimals;
        string text = value.ToString("N" + shown.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
        return text.TrimStart('-', '0', '.', ',').Length == 0 ? text.TrimStart('-') : text.Replace('-', '−');
    }

    [GeneratedRegex(@"(?<![\w.'])(?<a>" + Number + ")(?<w> to | × | of the |–)(?<b>" + Number + ") ?(?<us>" + UsUnit + @")(?![\w/·²³])", RegexOptions.CultureInvariant)]
    private static partial Regex Range();

    [GeneratedRegex("(?<![\\w.])" + Number + " to " + Number + " ?" + UsUnit + @" \((?<si>" + Number + " to " + Number + " ?" + SiUnit + @")\)", RegexOptions.CultureInvariant)]
    private static partial Regex PairOfRanges();

    [GeneratedRegex(@"(?:" + Number + " ?" + UsUnit + @"|\d+'-\d+(?: \d+/\d+)?""|\d+(?: \d+/\d+)?""|\d+/\d+ in a foot) \((?<si>" + Number + " ?(?:" + SiUnit + @"|%))\)", RegexOptions.CultureInvariant)]
    private static partial Regex Pair();

    [GeneratedRegex("(?<si>" + Number + " ?" + SiUnit + @") \(" + Number + " ?" + UsUnit + @"\)", RegexOptions.CultureInvariant)]
    private static partial Regex Behind();

    [GeneratedRegex(@"(?<![\d/.-])(?<n>\d(?:-\d/\d)?|\d/\d) in(?= (?:bare pipe|steel))", RegexOptions.CultureInvariant)]
    private static partial Regex PipeSize();

    [GeneratedRegex(@"(?<![\d'""])(?<ft>\d+)'-(?<in>\d+)(?<part> \d+/\d+)?""", RegexOptions.CultureInvariant)]
    private static partial Regex FeetInches();

    [GeneratedRegex(@"(?<![\d/.,'])(?<n>\d+(?:\.\d+)?)(?<part>-\d/\d)? in(?!\. w)" + Sized, RegexOptions.CultureInvariant)]
    private static partial Regex Inches();

    [GeneratedRegex("(?<![\\w.])(?<n>" + Number + @") ?(?<us>gal a square foot|cfm a square foot|cfm/ft²|in\. w\.[gc]\.|kBtu/h|Btu/h|ft³/h|lb/h|gal/h|ft²|ft³|cfm|gpm|fpm|mph|psf|psi|gal|°F|F°|ft|lb)(?![\w/·²³])", RegexOptions.CultureInvariant)]
    private static partial Regex Lone();
}
