using Glazewright.Science.Guards;

namespace Glazewright.Science.Shape;

/// <summary>The sun at solar noon in the plane of a cross-section.</summary>
/// <remarks>
/// Noon altitude is 90° less the distance between latitude and declination (Duffie &amp; Beckman, eq. 1.6.7 for zenith angle at noon; from memory). The
/// profile angle is that of the projection on the section's plane: tan ψ = tan α / cos(azimuth difference), the same work, eq. 1.9.1 (from memory).
/// </remarks>
public static class NoonSunAngle
{
    /// <summary>Declination at the June solstice, degrees (obliquity of the ecliptic, Astronomical Almanac; from memory).</summary>
    public const double SolsticeDeclinationDeg = 23.44;

    /// <summary>Altitude at solar noon.</summary>
    /// <param name="latitudeDeg">North positive, −90 to 90.</param>
    /// <param name="declinationDeg">−24 to 24.</param>
    /// <returns>Degrees over the horizon; below 0 in polar night.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static double AltitudeDeg(double latitudeDeg, double declinationDeg)
    {
        Within.Require(latitudeDeg, -90, 90);
        Within.Require(declinationDeg, -24, 24);
        return 90 - Math.Abs(latitudeDeg - declinationDeg);
    }

    /// <summary>Profile angle at solar noon, counted from the horizon on the near side over the zenith.</summary>
    /// <param name="latitudeDeg">North positive, −90 to 90.</param>
    /// <param name="declinationDeg">−24 to 24.</param>
    /// <param name="nearAzimuthDeg">Bearing that the near wall faces, any finite value.</param>
    /// <returns>Degrees: below 90 the sun stands on the near side, above 90 on the far side; at or below 0 it is not up.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static double ProfileDeg(double latitudeDeg, double declinationDeg, double nearAzimuthDeg)
    {
        double altitudeRad = AltitudeDeg(latitudeDeg, declinationDeg) * Math.PI / 180;
        Within.RequireFinite(nearAzimuthDeg);
        double sunAzimuthDeg = latitudeDeg >= declinationDeg ? 180 : 0;
        double facing = Math.Cos((sunAzimuthDeg - nearAzimuthDeg) * Math.PI / 180);
        return altitudeRad <= 0 ? -Math.Atan2(-Math.Sin(altitudeRad), Math.Cos(altitudeRad)) * 180 / Math.PI
            : Math.Atan2(Math.Sin(altitudeRad), Math.Cos(altitudeRad) * facing) * 180 / Math.PI;
    }

    /// <summary>Bearing of the equator: south in the northern hemisphere and on the equator, north in the southern.</summary>
    /// <param name="latitudeDeg">North positive, −90 to 90.</param>
    /// <returns>180 or 0.</returns>
    public static double EquatorAzimuthDeg(double latitudeDeg) => latitudeDeg >= 0 ? 180 : 0;

    /// <summary>Declination of the longest day.</summary>
    /// <param name="latitudeDeg">North positive.</param>
    /// <returns>23.44 or −23.44.</returns>
    public static double LongestDayDeclinationDeg(double latitudeDeg) => latitudeDeg >= 0 ? SolsticeDeclinationDeg : -SolsticeDeclinationDeg;

    /// <summary>
    /// Latitude at which the noon sun has a wanted profile angle on the near side of a house that faces the equator as this one does.
    /// </summary>
    /// <param name="profileDeg">0 to 90.</param>
    /// <param name="declinationDeg">−24 to 24.</param>
    /// <param name="isNorthern">Hemisphere.</param>
    /// <param name="turnedDeg">Angle between the near wall's bearing and the equator's, −89 to 89.</param>
    /// <param name="latitudeDeg">The latitude when there is one, north positive.</param>
    /// <returns>False when no latitude of that hemisphere has it.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static bool TryLatitude(double profileDeg, double declinationDeg, bool isNorthern, double turnedDeg, out double latitudeDeg)
    {
        Within.Require(profileDeg, 0, 90);
        Within.Require(declinationDeg, -24, 24);
        Within.Require(turnedDeg, -89, 89);
        double altitudeDeg = Math.Atan2(
            Math.Sin(profileDeg * Math.PI / 180) * Math.Cos(turnedDeg * Math.PI / 180), Math.Cos(profileDeg * Math.PI / 180)) * 180 / Math.PI;
        double away = 90 - altitudeDeg;
        latitudeDeg = isNorthern ? declinationDeg + away : declinationDeg - away;
        return isNorthern ? latitudeDeg is >= 0 and <= 90 : latitudeDeg is <= 0 and >= -90;
    }
}
