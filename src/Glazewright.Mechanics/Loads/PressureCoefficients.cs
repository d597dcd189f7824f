using Glazewright.Mechanics.Guards;

namespace Glazewright.Mechanics.Loads;

/// <summary>Two coefficients a windward roof must carry, each in its own case.</summary>
/// <param name="LowerFactor">The one toward suction.</param>
/// <param name="UpperFactor">The one toward pressure.</param>
public sealed record RoofPair(double LowerFactor, double UpperFactor);

/// <summary>External pressure coefficients Cp of the directional procedure.</summary>
/// <remarks>ASCE 7 figure 27.3-1, the same in both editions. Table read at second hand.</remarks>
public static class PressureCoefficients
{
    /// <summary>Windward wall. Read.</summary>
    public const double WindwardWallFactor = 0.8;

    /// <summary>Side wall. Read.</summary>
    public const double SideWallFactor = -0.7;

    /// <summary>Gust effect factor of a rigid building. Read.</summary>
    public const double GustFactor = 0.85;

    private static readonly double[] Angles = [10, 15, 20, 25, 30, 35, 45];
    private static readonly double[] HeightRatios = [0.25, 0.5, 1.0];
    private static readonly double[][] Lower =
    [
        [-0.7, -0.5, -0.3, -0.2, -0.2, 0.0, 0.0],
        [-0.9, -0.7, -0.4, -0.3, -0.2, -0.2, 0.0],
        [-1.3, -1.0, -0.7, -0.5, -0.3, -0.2, 0.0],
    ];

    private static readonly double[][] Upper =
    [
        [-0.18, 0.0, 0.2, 0.3, 0.3, 0.4, 0.4],
        [-0.18, -0.18, 0.0, 0.2, 0.2, 0.3, 0.4],
        [-0.18, -0.18, -0.18, 0.0, 0.2, 0.2, 0.3],
    ];

    private static readonly double[] LeewardAngles = [10, 15, 20];
    private static readonly double[][] LeewardRows = [[-0.3, -0.5, -0.6], [-0.5, -0.5, -0.6], [-0.7, -0.6, -0.6]];

    /// <summary>Leeward wall.</summary>
    /// <param name="lengthRatio">Plan dimension along the wind over that across it, 0 up.</param>
    /// <returns>−0.5 to −0.2.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Negative or NaN.</exception>
    public static double LeewardWall(double lengthRatio)
    {
        Require.Within(lengthRatio, 0, 1e6);
        return Along([1, 2, 4], [-0.5, -0.3, -0.2], lengthRatio);
    }

    /// <summary>Windward slope, wind square to the ridge, slope 10° or more.</summary>
    /// <param name="angleDeg">Slope, degrees, 10 to 90.</param>
    /// <param name="heightRatio">Mean roof height over plan dimension along the wind, 0 up.</param>
    /// <returns>The two values, each interpolated in its own column of the table.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range.</exception>
    public static RoofPair WindwardRoof(double angleDeg, double heightRatio)
    {
        Require.Within(angleDeg, 10, 90);
        Require.Within(heightRatio, 0, 1e6);
        var lower = new double[3];
        var upper = new double[3];
        for (int row = 0; row < 3; row++)
        {
            lower[row] = Along(Angles, Lower[row], angleDeg);
            // From 60° up 0.01 θ; between 45° and 60° on the way there.
            upper[row] = angleDeg <= 45
                ? Along(Angles, Upper[row], angleDeg)
                : angleDeg >= 60 ? 0.01 * angleDeg : Along([45, 60], [Upper[row][^1], 0.6], angleDeg);
        }

        return new RoofPair(Along(HeightRatios, lower, heightRatio), Along(HeightRatios, upper, heightRatio));
    }

    /// <summary>Leeward slope, wind square to the ridge, slope 10° or more.</summary>
    /// <param name="angleDeg">Slope, degrees, 10 to 90.</param>
    /// <param name="heightRatio">Mean roof height over plan dimension along the wind, 0 up.</param>
    /// <returns>−0.7 to −0.3.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range.</exception>
    public static double LeewardRoof(double angleDeg, double heightRatio)
    {
        Require.Within(angleDeg, 10, 90);
        Require.Within(heightRatio, 0, 1e6);
        double[] rows = [.. LeewardRows.Select(r => Along(LeewardAngles, r, angleDeg))];
        return Along(HeightRatios, rows, heightRatio);
    }

    /// <summary>
    /// Roof with the wind along the ridge, or any slope below 10°: the suction value, by distance from the windward edge. The other value is
    /// always −0.18.
    /// </summary>
    /// <param name="distanceRatio">Distance from the windward edge over mean roof height, 0 up.</param>
    /// <param name="heightRatio">Mean roof height over plan dimension along the wind, 0 up.</param>
    /// <returns>−1.3 to −0.3.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range.</exception>
    public static double FlowAlongRoof(double distanceRatio, double heightRatio)
    {
        Require.Within(distanceRatio, 0, 1e6);
        Require.Within(heightRatio, 0, 1e6);
        double low = distanceRatio <= 1 ? -0.9 : distanceRatio <= 2 ? -0.5 : -0.3;
        double tall = distanceRatio <= 0.5 ? -1.3 : -0.7;
        return Along([0.5, 1.0], [low, tall], heightRatio);
    }

    internal static double Along(ReadOnlySpan<double> at, ReadOnlySpan<double> values, double x)
    {
        if (x <= at[0])
        {
            return values[0];
        }

        for (int i = 1; i < at.Length; i++)
        {
            if (x <= at[i])
            {
                return values[i - 1] + (values[i] - values[i - 1]) * (x - at[i - 1]) / (at[i] - at[i - 1]);
            }
        }

        return values[^1];
    }
}
