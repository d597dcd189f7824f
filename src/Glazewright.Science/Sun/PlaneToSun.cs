using Glazewright.Science.Guards;
using static Glazewright.Science.Sun.Degrees;

namespace Glazewright.Science.Sun;

/// <summary>Angles between the sun and a plane.</summary>
public static class PlaneToSun
{
    /// <summary>Cosine of the angle between the sun and the plane's outward normal; negative when the sun is behind (then the plane gets no beam).</summary>
    /// <param name="tiltDeg">Plane's tilt from horizontal, 0 to 180 (90 a wall, above 90 facing down).</param>
    /// <param name="planeAzimuthDeg">Bearing the plane faces, clockwise from north, any finite value.</param>
    /// <param name="zenithDeg">Sun's zenith angle, 0 to 180.</param>
    /// <param name="sunAzimuthDeg">Sun's bearing, any finite value.</param>
    /// <returns>−1 to 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static double IncidenceCosine(double tiltDeg, double planeAzimuthDeg, double zenithDeg, double sunAzimuthDeg)
    {
        Within.Require(tiltDeg, 0, 180);
        Within.RequireFinite(planeAzimuthDeg);
        Within.Require(zenithDeg, 0, 180);
        Within.RequireFinite(sunAzimuthDeg);
        return Math.Clamp(
            (Cos(tiltDeg) * Cos(zenithDeg)) + (Sin(tiltDeg) * Sin(zenithDeg) * Cos(sunAzimuthDeg - planeAzimuthDeg)), -1, 1);
    }

    /// <summary>Profile (vertical shadow) angle: the sun's elevation projected on the vertical plane across a wall.</summary>
    /// <param name="elevationDeg">Sun's elevation, −90 to 90.</param>
    /// <param name="sunAzimuthDeg">Sun's bearing, any finite value.</param>
    /// <param name="wallAzimuthDeg">Bearing the wall faces.</param>
    /// <param name="profileDeg">The angle, degrees, when there is one.</param>
    /// <returns>False when the sun is below the horizon or behind the wall: then the wall is in shade and has no such angle.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    /// <remarks>tan(profile) = tan(elevation) / cos(azimuth difference); Duffie &amp; Beckman, eq. 1.9.1 (from memory).</remarks>
    public static bool TryProfileAngle(
        double elevationDeg, double sunAzimuthDeg, double wallAzimuthDeg, out double profileDeg)
    {
        Within.Require(elevationDeg, -90, 90);
        Within.RequireFinite(sunAzimuthDeg);
        Within.RequireFinite(wallAzimuthDeg);
        double facing = Cos(sunAzimuthDeg - wallAzimuthDeg);
        profileDeg = 0;
        if (elevationDeg < 0 || facing <= 1e-12)
        {
            return false;
        }

        profileDeg = FromRad(Math.Atan2(Sin(elevationDeg), Cos(elevationDeg) * facing));
        return true;
    }
}
