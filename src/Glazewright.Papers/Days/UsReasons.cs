using System.Globalization;
using System.Text.RegularExpressions;
using Glazewright.Design.Contracts;
using Glazewright.Design.Year;

namespace Glazewright.Papers.Days;

/// <summary>The control box thinks in SI and says its reasons so: a US reader hears them in °F, F°, mph and inches of water. Light stays in W/m², as sensors for greenhouses are read in the US too.</summary>
public static partial class UsReasons
{
    /// <summary>A reason as a reader hears it.</summary>
    /// <param name="reason">As the program said it.</param>
    /// <param name="units">Units of the reader.</param>
    public static string Of(string reason, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(reason);
        return units == UnitSystem.Metric ? reason : Quantity().Replace(reason, match =>
        {
            double value = double.Parse(match.Groups[1].Value, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture);
            return match.Groups[2].Value switch
            {
                "K" => FormattableString.Invariant($"{Us(value, Unit.Kelvin):0.0} F°"),
                "°C" => FormattableString.Invariant($"{Us(value, Unit.Celsius):0.0} °F"),
                "m/s" => FormattableString.Invariant($"{Us(value, Unit.MetrePerSecond):0} mph"),
                _ => FormattableString.Invariant($"{Us(value, Unit.Pascal):0.00} in. w.g."),
            };
        });
    }

    /// <summary>A day with its reasons as a reader hears them.</summary>
    /// <param name="day">The day.</param>
    /// <param name="units">Units of the reader.</param>
    public static DayReplay Of(DayReplay day, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(day);
        return units == UnitSystem.Metric ? day : day with { Spells = day.Spells.Select(s => s with { Because = Of(s.Because, units) }).ToEqList() };
    }

    private static double Us(double value, Unit unit) => Shown.Of(value, unit, UnitSystem.Us).Value;

    [GeneratedRegex(@"(-?[0-9]+(?:\.[0-9]+)?) (K|°C|m/s|Pa)(?![\w/])", RegexOptions.CultureInvariant)]
    private static partial Regex Quantity();
}
