namespace Glazewright.Design.Plant;

/// <summary>What thin air leaves of a burner's rating.</summary>
internal static class BurnerAltitude
{
    private const double FootM = 0.3048;
    private const double FreeToM = 2000 * FootM;

    /// <summary>Share of the rating: all of it up to 2,000 ft, above that 4 % less for each 1,000 ft from the sea (NFPA 54, 11.1.2, read at second hand). Makers' tables go before it.</summary>
    /// <param name="elevationM">Elevation, m.</param>
    /// <returns>0.4 to 1.</returns>
    public static double RatingFraction(double elevationM) => elevationM <= FreeToM ? 1 : Math.Max(1 - 0.04 * elevationM / (1000 * FootM), 0.4);
}
