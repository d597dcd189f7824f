namespace Glazewright.Science.Light;

/// <summary>
/// The gain of a convex house. The beam is exact: each clear face is projected along the sun on every inside face and the common areas are taken, less
/// what the bars inside catch; what is reflected or scattered is then followed as diffuse light between all faces (radiosity).
/// </summary>
/// <remarks>
/// Limits: reflections inside are treated as diffuse; light that bars catch is taken evenly from all
/// that enters through a face; with a curtain drawn, bars below it are counted before it; what shades from outside is dark itself; the crop has no height. Sky and ground rows are sums of beam rows over the hemisphere, so all rows follow the same physics.
/// </remarks>
public static class EnclosureGains
{
    /// <summary>Rays a piece for the view factors: 8192 keep them within about 0.003 of the closed forms.</summary>
    public const int Rays = 8192;

    /// <summary>Computes the table.</summary>
    /// <param name="enclosure">The house.</param>
    /// <param name="curtain">A drawn curtain, or null.</param>
    /// <param name="grid">Sun nodes.</param>
    /// <returns>Rows whose parts sum to their aperture within 1e-9.</returns>
    /// <exception cref="ArgumentException">The curtain misses the house.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Curtain fractions out of range.</exception>
    public static EnclosureGainTable Compute(Enclosure enclosure, CurtainPlane? curtain, SunGrid grid) =>
        Compute(enclosure, curtain, grid, Surroundings.None);

    /// <summary>Computes the table with what stands around the house.</summary>
    /// <param name="enclosure">The house.</param>
    /// <param name="curtain">A drawn curtain, or null.</param>
    /// <param name="grid">Sun nodes.</param>
    /// <param name="surroundings">Bodies and skyline; what they take is no part of the aperture.</param>
    /// <returns>Rows whose parts sum to their aperture within 1e-9.</returns>
    /// <exception cref="ArgumentException">The curtain misses the house.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Curtain fractions out of range.</exception>
    public static EnclosureGainTable Compute(Enclosure enclosure, CurtainPlane? curtain, SunGrid grid, Surroundings surroundings) =>
        new HouseLight(enclosure, curtain, surroundings).Gains(grid, null);
}
