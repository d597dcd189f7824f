using System.Globalization;

namespace Glazewright.Design.Quantities;

/// <summary>Lengths as the shop and the crew write them: feet, inches and a reduced fraction of an inch.</summary>
public static class FeetInches
{
    /// <summary>Writes a length, rounded to a fraction of an inch: <c>26'-0"</c>, <c>12'-6 1/2"</c>, <c>3/4"</c>.</summary>
    /// <param name="lengthM">Length, m, −100 km to 100 km.</param>
    /// <param name="denominator">Finest fraction: 1, 2, 4, 8, 16, 32 or 64.</param>
    /// <returns>The text; below one foot without the feet.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN, or another denominator.</exception>
    public static string Format(double lengthM, int denominator = 16)
    {
        Science.Guards.Within.Require(lengthM, -100_000, 100_000);
        if (denominator is < 1 or > 64 || !int.IsPow2(denominator))
        {
            throw new ArgumentOutOfRangeException(nameof(denominator), denominator, "A power of two from 1 to 64.");
        }

        long parts = (long)Math.Round(Math.Abs(lengthM) / UnitTable.InchM * denominator, MidpointRounding.AwayFromZero);
        string sign = lengthM < 0 && parts > 0 ? "-" : "";
        long wholeInches = parts / denominator;
        long rest = parts % denominator;
        long feet = wholeInches / 12;
        long inches = wholeInches % 12;
        string fraction = Reduced(rest, denominator);
        string inchText = fraction.Length == 0 ? Text(inches) : inches == 0 && feet == 0 ? fraction : $"{Text(inches)} {fraction}";
        return feet == 0 ? $"{sign}{inchText}\"" : $"{sign}{Text(feet)}'-{inchText}\"";
    }

    private static string Reduced(long top, long bottom)
    {
        if (top == 0)
        {
            return "";
        }

        while (top % 2 == 0)
        {
            top /= 2;
            bottom /= 2;
        }

        return $"{Text(top)}/{Text(bottom)}";
    }

    private static string Text(long number) => number.ToString(CultureInfo.InvariantCulture);
}
