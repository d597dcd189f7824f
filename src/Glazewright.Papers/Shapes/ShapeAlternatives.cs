using Glazewright.Design.Shape;

namespace Glazewright.Papers.Shapes;

/// <summary>The few shapes that show what there is to choose from.</summary>
public static class ShapeAlternatives
{
    /// <summary>For each choice of clear faces the shape of most light in the dark month and the one of least glazing, of those the full map looked at.</summary>
    /// <param name="result">What the finder found.</param>
    /// <param name="most">At most so many.</param>
    /// <returns>By light of the dark month, the most first.</returns>
    public static IReadOnlyList<ShapeCheck> Of(ShapeResult result, int most)
    {
        ArgumentNullException.ThrowIfNull(result);
        double Light(ShapeCheck c) => DarkMonthMol(c, result);
        return
        [
            .. result.Checked
                .GroupBy(c => c.Score.Shape.Clear)
                .SelectMany(g => new[] { g.MaxBy(Light)!, g.MinBy(c => c.Score.GlazingM2)! }.Distinct())
                .OrderByDescending(Light)
                .Take(most),
        ];
    }

    /// <summary>Bench light of the dark month: by the full map where it was asked, else by the section, mol/m²d.</summary>
    /// <param name="check">A shape.</param>
    /// <param name="result">What the finder found.</param>
    public static double DarkMonthMol(ShapeCheck check, ShapeResult result)
    {
        ArgumentNullException.ThrowIfNull(check);
        ArgumentNullException.ThrowIfNull(result);
        return check.Full?.MonthMolPerM2Day[result.WinterMonth] ?? check.Score.WinterMolPerM2Day;
    }

    /// <summary>The same of the bright month.</summary>
    /// <param name="check">A shape.</param>
    /// <param name="result">What the finder found.</param>
    public static double BrightMonthMol(ShapeCheck check, ShapeResult result)
    {
        ArgumentNullException.ThrowIfNull(check);
        ArgumentNullException.ThrowIfNull(result);
        return check.Full?.MonthMolPerM2Day[result.SummerMonth] ?? check.Score.SummerMolPerM2Day;
    }
}
