using Glazewright.Science.Guards;

namespace Glazewright.Science.Light;

/// <summary>What the faces of a house see of each other from inside, its curtain in one position: it rests on their outlines alone, not on coverings, bars or crop.</summary>
/// <param name="ExchangeAreasM2">Area times share of the light leaving one piece that reaches another, m²: row-major, pieces in order; symmetric.</param>
public sealed record InsideViews(IReadOnlyList<double> ExchangeAreasM2)
{
    /// <summary>Finds the views of a house.</summary>
    /// <param name="enclosure">The house; its bars do not count.</param>
    /// <param name="curtain">A drawn curtain, or null.</param>
    /// <returns>The views.</returns>
    /// <exception cref="ArgumentException">The curtain misses the house.</exception>
    public static InsideViews Of(Enclosure enclosure, CurtainPlane? curtain)
    {
        ArgumentNullException.ThrowIfNull(enclosure);
        return Of(Pieces.Of(enclosure, curtain));
    }

    internal static InsideViews Of(IReadOnlyList<Piece> pieces)
    {
        double[,] square = ViewFactors.ExchangeAreas(pieces, EnclosureGains.Rays);
        return new InsideViews([.. square.Cast<double>()]);
    }

    /// <summary>As a square of so many pieces.</summary>
    internal double[,] Square(int pieces)
    {
        Within.Require(ExchangeAreasM2.Count, pieces * pieces, pieces * pieces);
        var square = new double[pieces, pieces];
        for (int i = 0; i < pieces; i++)
        {
            for (int j = 0; j < pieces; j++)
            {
                square[i, j] = ExchangeAreasM2[(i * pieces) + j];
            }
        }

        return square;
    }
}
