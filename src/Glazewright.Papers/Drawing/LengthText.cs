using System.Globalization;
using Glazewright.Design.Quantities;

namespace Glazewright.Papers.Drawing;

/// <summary>How lengths are written on a drawing.</summary>
public enum LengthStyle
{
    /// <summary>Feet, inches and sixteenths: 12'-6 1/2".</summary>
    FeetInches,

    /// <summary>Whole millimetres: 3823.</summary>
    Millimetres,
}

/// <summary>Writes lengths as a drawing shows them; a length below one foot has no feet.</summary>
public static class LengthText
{
    /// <summary>The length in the given style.</summary>
    /// <param name="lengthM">Length, m, finite.</param>
    /// <param name="style">How.</param>
    /// <param name="parts">Finest fraction of an inch, as a power of two: 16 is sixteenths.</param>
    /// <exception cref="ArgumentOutOfRangeException">Not finite.</exception>
    public static string Of(double lengthM, LengthStyle style, int parts = 16)
    {
        if (!double.IsFinite(lengthM))
        {
            throw new ArgumentOutOfRangeException(nameof(lengthM), lengthM, "A length on a drawing is a number.");
        }

        return style == LengthStyle.FeetInches
            ? FeetInches.Format(lengthM, parts)
            : Math.Round(1000 * lengthM, MidpointRounding.AwayFromZero).ToString("0", CultureInfo.InvariantCulture);
    }

    /// <summary>A level above or below the datum: with its sign, ±0 for the datum itself.</summary>
    public static string Level(double heightM, LengthStyle style)
    {
        string text = Of(Math.Abs(heightM), style);
        string zero = Of(0, style);
        return (text == zero ? "±" : heightM > 0 ? "+" : "−") + text;
    }
}
