using Glazewright.Science.Guards;
using Glazewright.Science.Light.Shadows;

namespace Glazewright.Science.Light;

/// <summary>
/// Light that covers scatter and surfaces throw back, on the cells of a plane: each piece shines evenly over its area, and a cell sees it by the exact
/// form factor of a spot to a polygon. Below a drawn curtain a cell sees its cloth and what is below it.
/// </summary>
public sealed class RoomLight
{
    private const double InPlaneM = 1e-6;

    private readonly double[] areaM2;
    private readonly double[,] leaving;
    private readonly double[] factor;
    private readonly double[] meanFactor;
    private readonly int cells;

    private RoomLight(double[] areaM2, double[,] leaving, double[] factor, int cells)
    {
        this.areaM2 = areaM2;
        this.leaving = leaving;
        this.factor = factor;
        this.cells = cells;
        meanFactor = new double[areaM2.Length];
        for (int i = 0; i < factor.Length; i++)
        {
            meanFactor[i % areaM2.Length] += factor[i] / cells;
        }
    }

    internal static RoomLight Of(IReadOnlyList<Piece> pieces, Radiosity radiosity, ReceivingPlane plane)
    {
        var factor = new double[plane.Count * pieces.Count];
        for (int j = 0; j < pieces.Count; j++)
        {
            // A surface does not see itself: a map on the floor has no light from the floor. Nor does a cell see through the cloth.
            if (pieces[j].Cell != Pieces.Below || pieces[j].Outline.All(p => Math.Abs(plane.Normal.Dot(p - plane.Origin)) < InPlaneM))
            {
                continue;
            }

            Vector3d[] seen = Polygons.CutByPlane(pieces[j].Outline, plane.Origin, plane.Normal);
            Vector3d[][] holes = [.. pieces[j].Holes.Select(h => Polygons.CutByPlane(h, plane.Origin, plane.Normal)).Where(h => h.Length > 0)];
            if (seen.Length == 0)
            {
                continue;
            }

            for (int k = 0; k < plane.Count; k++)
            {
                Vector3d p = plane.Middle(k);
                double f = FormFactor.ToPolygon(p, plane.Normal, seen);
                foreach (Vector3d[] hole in holes)
                {
                    f -= FormFactor.ToPolygon(p, plane.Normal, hole);
                }

                factor[(k * pieces.Count) + j] = Math.Max(0, f);
            }
        }

        return new RoomLight([.. pieces.Select(p => p.AreaM2)], radiosity.Leaving, factor, plane.Count);
    }

    /// <summary>Share of what a cell sees that is any piece of the house: 1 inside a closed house, less on a plane that lies in a face with others beside it.</summary>
    /// <param name="cell">The cell.</param>
    /// <returns>0 to 1.</returns>
    internal double SeenFraction(int cell)
    {
        double sum = 0;
        for (int j = 0; j < areaM2.Length; j++)
        {
            sum += factor[(cell * areaM2.Length) + j];
        }

        return sum;
    }

    /// <summary>Irradiance on each cell.</summary>
    /// <param name="setFreeW">Diffuse light that each piece sets free, W (or any unit of energy), pieces as in the gain table.</param>
    /// <param name="irradianceWm2">Filled, one a cell: the same unit a square metre.</param>
    /// <exception cref="ArgumentOutOfRangeException">Wrong counts.</exception>
    public void Irradiance(ReadOnlySpan<double> setFreeW, Span<double> irradianceWm2)
    {
        Within.Require(irradianceWm2.Length, cells, int.MaxValue);
        Span<double> exitance = stackalloc double[areaM2.Length];
        Exitance(setFreeW, exitance);
        for (int k = 0; k < cells; k++)
        {
            irradianceWm2[k] = Seen(k, exitance);
        }
    }

    /// <summary>Irradiance on one cell.</summary>
    /// <param name="cell">The cell.</param>
    /// <param name="setFreeW">Diffuse light that each piece sets free.</param>
    /// <returns>The same unit a square metre.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Wrong counts.</exception>
    public double IrradianceAt(int cell, ReadOnlySpan<double> setFreeW)
    {
        Within.Require(cell, 0, cells - 1);
        Span<double> exitance = stackalloc double[areaM2.Length];
        Exitance(setFreeW, exitance);
        return Seen(cell, exitance);
    }

    /// <summary>Mean irradiance of all cells.</summary>
    /// <param name="setFreeW">Diffuse light that each piece sets free.</param>
    /// <returns>The same unit a square metre.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Wrong count.</exception>
    public double MeanIrradiance(ReadOnlySpan<double> setFreeW)
    {
        Span<double> exitance = stackalloc double[areaM2.Length];
        Exitance(setFreeW, exitance);
        double sum = 0;
        for (int j = 0; j < exitance.Length; j++)
        {
            sum += meanFactor[j] * exitance[j];
        }

        return sum;
    }

    private void Exitance(ReadOnlySpan<double> setFreeW, Span<double> exitance)
    {
        int n = areaM2.Length;
        Within.Require(setFreeW.Length, n, n);
        for (int i = 0; i < n; i++)
        {
            double sum = 0;
            for (int e = 0; e < n; e++)
            {
                sum += leaving[i, e] * setFreeW[e];
            }

            exitance[i] = sum / areaM2[i];
        }
    }

    private double Seen(int cell, ReadOnlySpan<double> exitance)
    {
        double sum = 0;
        for (int j = 0; j < exitance.Length; j++)
        {
            sum += factor[(cell * exitance.Length) + j] * exitance[j];
        }

        return sum;
    }
}

/// <summary>Form factor of a small flat spot.</summary>
internal static class FormFactor
{
    /// <summary>Share of the spot's light that would reach a polygon in front of it.</summary>
    /// <remarks>Lambert's contour formula: half over π of the sum over edges of the angle seen times the cosine of the edge plane's normal (Howell, Menguc &amp; Siegel, Thermal Radiation Heat Transfer, from memory).</remarks>
    internal static double ToPolygon(Vector3d spot, Vector3d normal, Vector3d[] polygon)
    {
        double sum = 0;
        Vector3d a = polygon[^1] - spot;
        foreach (Vector3d corner in polygon)
        {
            Vector3d b = corner - spot;
            Vector3d turn = a.Cross(b);
            double sine = turn.LengthM;
            if (sine > 1e-15)
            {
                sum += Math.Atan2(sine, a.Dot(b)) * normal.Dot(turn) / sine;
            }

            a = b;
        }

        return Math.Abs(sum) / (2 * Math.PI);
    }
}
