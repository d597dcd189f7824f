using Glazewright.Science.Guards;

namespace Glazewright.Science.Optics;

/// <summary>Reflection where light enters a clear material from air.</summary>
/// <remarks>Fresnel's and Snell's laws; Duffie &amp; Beckman, Solar Engineering of Thermal Processes, eqs 5.1.1 to 5.1.4 (from memory).</remarks>
public static class Fresnel
{
    /// <summary>Reflection of a surface.</summary>
    /// <param name="incidenceDeg">From the normal, 0 to 90.</param>
    /// <param name="refractiveIndexRatio">Of the material against air, 1 to 3.</param>
    /// <returns>Fractions by polarisation and the angle inside.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static SurfaceReflection At(double incidenceDeg, double refractiveIndexRatio)
    {
        Within.Require(incidenceDeg, 0, 90);
        Within.Require(refractiveIndexRatio, 1, 3);
        double cosOut = Math.Cos(incidenceDeg * Math.PI / 180);
        double sinIn = Math.Sin(incidenceDeg * Math.PI / 180) / refractiveIndexRatio;
        double cosIn = Math.Sqrt(Math.Max(0, 1 - (sinIn * sinIn)));
        (double perpendicular, double parallel) = Kernel(cosOut, cosIn, refractiveIndexRatio);
        return new SurfaceReflection(perpendicular, parallel, Math.Asin(sinIn) * 180 / Math.PI);
    }

    // The quotient form of the amplitudes has no 0/0 at normal incidence, unlike the tangent form in the textbook.
    internal static (double Perpendicular, double Parallel) Kernel(double cosOut, double cosIn, double n)
    {
        if (cosOut <= 0)
        {
            return (1, 1);
        }

        double s = (cosOut - (n * cosIn)) / (cosOut + (n * cosIn));
        double p = ((n * cosOut) - cosIn) / ((n * cosOut) + cosIn);
        return (s * s, p * p);
    }
}
