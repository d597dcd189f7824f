using System.Globalization;
using Glazewright.Design.Contracts;
using Glazewright.Papers.Reports;

namespace Glazewright.Papers.Answers;

/// <summary>How numbers are said in answers, in the reader's units.</summary>
internal sealed class Said(UnitSystem units)
{
    /// <summary>Share of hours from which a wish counts as held, and from which as near.</summary>
    public const double HeldFraction = 0.97;

    /// <summary>Share of hours below which a wish counts as missed.</summary>
    public const double NearFraction = 0.90;

    /// <summary>Width of a report's text, mm.</summary>
    public const double WidthMm = 172;

    public Shown Of(double value, Unit unit) => Shown.Of(value, unit, units);

    public string Text(double value, Unit unit) => Of(value, unit).Text;

    public string Round(double value, Unit unit)
    {
        Shown shown = Of(value, unit);
        return (shown with { Decimals = 0 }).Text;
    }

    /// <summary>A value that is held, in whole units shown, never said higher than it is.</summary>
    public string Floor(double value, Unit unit)
    {
        Shown shown = Of(value, unit);
        return (shown with { Value = Math.Floor(shown.Value + 1e-6), Decimals = 0 }).Text;
    }

    public BigFigure Big(string label, double value, Unit unit, string limit = "", Standing standing = Standing.None, int? decimals = null)
    {
        Shown shown = Of(value, unit);
        shown = decimals is int d ? shown with { Decimals = d } : shown;
        return new BigFigure(label, shown.Number, shown.Unit, limit, standing);
    }

    /// <summary>A big figure that is held, in whole units shown, never said higher than it is.</summary>
    public BigFigure BigFloor(string label, double value, Unit unit, string limit, Standing standing)
    {
        Shown shown = Of(value, unit);
        shown = shown with { Value = Math.Floor(shown.Value + 1e-6), Decimals = 0 };
        return new BigFigure(label, shown.Number, shown.Unit, limit, standing);
    }

    public static string Money(double amount) => "$" + Math.Round(amount).ToString("#,0", CultureInfo.InvariantCulture);

    public static string Hours(double hours) => hours.ToString("N0", CultureInfo.InvariantCulture);

    /// <summary>A share in percent; never rounded up to 100 nor down to 0.</summary>
    public static string Percent(double fraction)
    {
        double percent = 100 * fraction;
        return percent is > 99.5 and < 100 ? ">99" : percent is > 0 and < 0.5 ? "<1" : percent.ToString("0", CultureInfo.InvariantCulture);
    }

    public static Standing Share(double fraction) =>
        fraction >= HeldFraction ? Standing.Held : fraction >= NearFraction ? Standing.Near : Standing.Miss;

    public static Standing Worst(IEnumerable<Standing> standings) => standings.DefaultIfEmpty(Standing.None).Max();

    public static string Month(int number) => CultureInfo.InvariantCulture.DateTimeFormat.GetMonthName(number);

    public static string Capital(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];

    public static string Listed(IEnumerable<string> items)
    {
        string[] all = [.. items];
        return all.Length switch { 0 => "", 1 => all[0], _ => string.Join(", ", all[..^1]) + " and " + all[^1] };
    }
}
