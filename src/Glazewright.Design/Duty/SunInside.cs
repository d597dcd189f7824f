using Glazewright.Design.GainTables;
using Glazewright.Science.Sky;

namespace Glazewright.Design.Duty;

/// <summary>Where the sun's watts go in one moment.</summary>
/// <param name="CropPlaneW">Absorbed at the crop plane, W.</param>
/// <param name="InsideW">Absorbed inside in all: crop plane, frame, opaque walls, curtain, W.</param>
/// <param name="CoverW">Absorbed in the covering, W.</param>
public readonly record struct SunInside(double CropPlaneW, double InsideW, double CoverW)
{
    /// <summary>Reads the gain table at a moment's sky.</summary>
    /// <param name="table">Gain table.</param>
    /// <param name="set">Curtain open or drawn.</param>
    /// <param name="sky">Sky as four sources.</param>
    /// <param name="azimuthInHouseDeg">Sun's azimuth, clockwise from the house's +x.</param>
    /// <param name="elevationDeg">Sun's elevation.</param>
    /// <returns>Watts.</returns>
    public static SunInside At(GainTable table, GainSet set, SkySources sky, double azimuthInHouseDeg, double elevationDeg)
    {
        int rows = (int)Math.Round(90 / table.ElevationStepDeg) + 1;
        int columns = (int)Math.Round(360 / table.AzimuthStepDeg);
        double azimuth = ((azimuthInHouseDeg % 360) + 360) % 360 / table.AzimuthStepDeg;
        double elevation = Math.Clamp(elevationDeg, 0, 90) / table.ElevationStepDeg;
        int i = Math.Min((int)azimuth, columns - 1);
        int j = Math.Min((int)elevation, rows - 2);
        double a = azimuth - i;
        double e = elevation - j;
        SunInside sum = default;
        if (elevationDeg > 0)
        {
            int next = (i + 1) % columns;
            sum += sky.FromSunWm2 * (1 - a) * (1 - e) * Of(set.Beam[i * rows + j]);
            sum += sky.FromSunWm2 * a * (1 - e) * Of(set.Beam[next * rows + j]);
            sum += sky.FromSunWm2 * (1 - a) * e * Of(set.Beam[i * rows + j + 1]);
            sum += sky.FromSunWm2 * a * e * Of(set.Beam[next * rows + j + 1]);
        }

        sum += sky.DomeWm2 * Of(set.Sky);
        sum += sky.HorizonWm2 * Of(set.Horizon);
        sum += sky.GroundWm2 * Of(set.Ground);
        return sum;
    }

    /// <summary>Sum of two.</summary>
    public static SunInside operator +(SunInside a, SunInside b) =>
        new(a.CropPlaneW + b.CropPlaneW, a.InsideW + b.InsideW, a.CoverW + b.CoverW);

    /// <summary>Scaled.</summary>
    public static SunInside operator *(double factor, SunInside a) =>
        new(factor * a.CropPlaneW, factor * a.InsideW, factor * a.CoverW);

    private static SunInside Of(GainRow row) => new(
        row.ApertureM2 * row.CropPlaneShare,
        row.ApertureM2 * (row.CropPlaneShare + row.OpaqueShare + row.FrameShare + row.CurtainShare),
        row.ApertureM2 * row.CoverShare);
}
