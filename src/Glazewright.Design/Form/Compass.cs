namespace Glazewright.Design.Form;

/// <summary>Compass directions of range axes.</summary>
public static class Compass
{
    private static readonly string[] Words = ["north", "north-east", "east", "south-east", "south", "south-west", "west", "north-west"];

    /// <summary>Azimuth of a direction, clockwise from true north.</summary>
    /// <param name="direction">In range axes; straight up or down gives 0.</param>
    /// <param name="bearingDeg">Bearing of +x.</param>
    /// <returns>0 up to 360, °.</returns>
    public static double AzimuthDeg(Point3 direction, double bearingDeg)
    {
        double b = bearingDeg * Math.PI / 180;
        double east = direction.XM * Math.Sin(b) - direction.YM * Math.Cos(b);
        double north = direction.XM * Math.Cos(b) + direction.YM * Math.Sin(b);
        if (Math.Abs(east) < 1e-12 && Math.Abs(north) < 1e-12)
        {
            return 0;
        }

        double azimuthDeg = Math.Atan2(east, north) * 180 / Math.PI;
        return azimuthDeg < -1e-9 ? azimuthDeg + 360 : Math.Max(azimuthDeg, 0);
    }

    /// <summary>The nearest of eight compass words.</summary>
    /// <param name="azimuthDeg">Clockwise from north, °.</param>
    /// <returns>A word.</returns>
    public static string Word(double azimuthDeg) => Words[(int)Math.Round(((azimuthDeg % 360) + 360) % 360 / 45) % 8];
}
