using System.Globalization;
using System.Text.RegularExpressions;
using Glazewright.Design.Contracts;
using Glazewright.Design.Document;
using Glazewright.Design.Quantities;

namespace Glazewright.Web.Fields;

/// <summary>What people write into a field in words, as the document has it: "north-south" for a bearing, "2.35 per gallon" for a price, "72 degrees" in a job of °F.</summary>
public static partial class SpokenWords
{
    private static readonly (string Word, string Unit)[] s_measures =
        [("gallon", "gal"), ("gallons", "gal"), ("gal", "gal"), ("liter", "L"), ("litre", "L"), ("l", "L"), ("therm", "therm"), ("therms", "therm"), ("kwh", "kWh"), ("kilowatt hour", "kWh"), ("kilowatt-hour", "kWh"), ("1000 gallons", "kgal"), ("1000 gal", "kgal"), ("kgal", "kgal")];

    /// <summary>A text as the document has it.</summary>
    /// <param name="pointer">The field.</param>
    /// <param name="kind">What is measured there.</param>
    /// <param name="typed">What was typed.</param>
    /// <param name="units">Units of the job.</param>
    /// <returns>The text, changed only where it is known what is meant.</returns>
    public static string Plain(string pointer, QuantityKind kind, string typed, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(pointer);
        ArgumentNullException.ThrowIfNull(typed);
        string text = typed.Trim();
        return kind switch
        {
            QuantityKind.Angle when pointer == "/site/bearing" => Bearing(text),
            QuantityKind.Temperature or QuantityKind.TemperatureDifference when Degrees().Match(text) is { Success: true } bare => $"{bare.Groups[1].Value} {(units == UnitSystem.Us ? "F" : "C")}",
            QuantityKind.MoneyPerVolume or QuantityKind.MoneyPerEnergy when Prices().Match(text) is { Success: true } price => Price(text, price),
            _ => text,
        };
    }

    /// <summary>The unit in which a price is usually told; empty where it must be typed.</summary>
    /// <param name="pointer">The field.</param>
    /// <param name="document">The job, for the fuel it chose.</param>
    /// <param name="units">Units of the job.</param>
    public static string PriceUnit(string pointer, JobDocument document, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(document);
        bool us = units == UnitSystem.Us;
        return pointer switch
        {
            "/tariffs/fuel" => ((document.Find("/utilities/fuel") as TextNode)?.Text ?? "propane") switch
            {
                "propane" or "oil" => us ? "$/gal" : "$/L",
                "natural-gas" => us ? "$/therm" : "$/m³",
                _ => "",
            },
            "/tariffs/water" => us ? "$/kgal" : "$/m³",
            _ => "",
        };
    }

    /// <summary>Whether a field holds weeks of a plan.</summary>
    /// <param name="pointer">The field.</param>
    public static bool IsWeeks(string pointer)
    {
        ArgumentNullException.ThrowIfNull(pointer);
        return pointer.StartsWith("/houses/", StringComparison.Ordinal) && pointer.EndsWith("/weeks", StringComparison.Ordinal);
    }

    /// <summary>Months, dates or weeks as the document has them, in whole weeks.</summary>
    /// <param name="typed">What was typed.</param>
    /// <returns>What is understood, with its first and last day, or what is wrong; the document's text, which is what was typed where that is not understood.</returns>
    public static (string Words, bool IsRight, string Stored) Weeks(string typed) =>
        !YearSpan.TryRead(typed, out YearSpan span, out Misreading? misreading) ? ($"{misreading.Wrong}. Right: {misreading.Right}", false, typed)
        : !span.TryWholeWeeks(out YearSpan weeks) ? ($"A period runs over whole weeks. Right: {span.WeeksAround}", false, typed)
        : ($"{weeks.WeeksText}: {Day(weeks.FirstDay)} to {Day(weeks.LastDay)}{(weeks == span ? "" : ", the whole weeks nearest to it")}", true, weeks.WeeksText);

    private static string Day(int day) => new DateOnly(2027, 1, 1).AddDays(day - 1).ToString("MMMM d", CultureInfo.InvariantCulture);

    // The ridges run both ways; end 1 is taken to be the south or the west one, as the field's default does.
    private static string Bearing(string text) => text.ToUpperInvariant().Replace(" ", "", StringComparison.Ordinal).Replace("TO", "-", StringComparison.Ordinal).Replace('–', '-') switch
    {
        "N-S" or "S-N" or "NS" or "NORTH-SOUTH" or "NORTHSOUTH" or "SOUTH-NORTH" => "0 deg",
        "E-W" or "W-E" or "EW" or "EAST-WEST" or "EASTWEST" or "WEST-EAST" => "90 deg",
        _ => text,
    };

    private static string Price(string text, Match price)
    {
        string per = price.Groups[2].Value.Trim().ToLowerInvariant();
        string unit = s_measures.FirstOrDefault(m => m.Word == per).Unit ?? "";
        return unit.Length == 0 ? text : $"{price.Groups[1].Value} $/{unit}";
    }

    [GeneratedRegex(@"^([-+−]?\d+(?:\.\d+)?)\s*(?:°|deg\.?|degs|degrees?)$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Degrees();

    [GeneratedRegex(@"^\$?\s*(\d[\d,]*(?:\.\d+)?|\.\d+)\s*(?:\$|dollars?|USD)?\s*(?:/|\b(?:per|an?)\b)\s*([\w -]+)$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Prices();
}
