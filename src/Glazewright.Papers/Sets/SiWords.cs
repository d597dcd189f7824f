using System.Text.RegularExpressions;
using Glazewright.Design.Contracts;

namespace Glazewright.Papers.Sets;

/// <summary>Findings say a quantity in US units with SI behind it in brackets; a metric job hears the SI alone.</summary>
public static partial class SiWords
{
    /// <summary>The report as a metric reader hears it.</summary>
    /// <param name="report">As the stage said it.</param>
    /// <returns>The same with SI alone.</returns>
    public static StageReport Of(StageReport report) => report with
    {
        Findings = report.Findings.Select(f => f with { What = Of(f.What), Mend = Of(f.Mend) }).ToEqList(),
        LeftOut = report.LeftOut.Select(Of).ToEqList(),
    };

    /// <summary>A sentence with "79 °F (26.3 °C)" made "26.3 °C".</summary>
    /// <param name="text">The sentence.</param>
    /// <returns>The sentence without the US half of each pair.</returns>
    public static string Of(string text) => Pair().Replace(text, "${si}");

    [GeneratedRegex(@"(?:[±−-]?\d[\d,]*(?:\.\d+)? ?(?:°F|F°|lb|psf|ft²|ft|in|cfm|mph|kBtu/h|Btu/h|gal)|\d+'-\d+(?: \d+/\d+)?""|\d+(?: \d+/\d+)?"") \((?<si>[±−-]?\d[\d,]*(?:\.\d+)? ?(?:°C|K|kN|N|kPa|Pa|m²|m³|mm|m|kW|W|km/h|m/s|L|kg)(?:/\w+)?)\)", RegexOptions.CultureInvariant)]
    private static partial Regex Pair();
}
