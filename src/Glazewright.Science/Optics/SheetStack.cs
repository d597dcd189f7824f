using Glazewright.Science.Guards;

namespace Glazewright.Science.Optics;

/// <summary>One plain sheet.</summary>
/// <param name="RefractiveIndexRatio">Against air, 1 to 3.</param>
/// <param name="ExtinctionThicknessFactor">Extinction coefficient times thickness, K·L, a pure number, 0 to 10.</param>
public readonly record struct Sheet(double RefractiveIndexRatio, double ExtinctionThicknessFactor);

/// <summary>Parallel sheets with air between them: each polarisation is followed through all reflections, and only then averaged.</summary>
/// <remarks>
/// Single sheet: Duffie &amp; Beckman, eqs 5.2.1 to 5.2.3 and Bouguer's law eq. 5.2.4 (from memory). Stack: the adding method (net radiation), exact for
/// incoherent reflections.
/// </remarks>
public static class SheetStack
{
    /// <summary>Shares of a stack of equal sheets.</summary>
    /// <param name="incidenceDeg">From the normal, 0 to 90; at 90 all is reflected.</param>
    /// <param name="sheet">The sheet.</param>
    /// <param name="count">How many, 1 to 20.</param>
    /// <returns>Three fractions that sum to 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static LightShares At(double incidenceDeg, Sheet sheet, int count)
    {
        Within.Require(incidenceDeg, 0, 90);
        Within.Require(sheet.RefractiveIndexRatio, 1, 3);
        Within.Require(sheet.ExtinctionThicknessFactor, 0, 10);
        Within.Require(count, 1, 20);
        double cosOut = incidenceDeg >= 90 ? 0 : Math.Cos(incidenceDeg * Math.PI / 180);
        double sinIn = Math.Sin(incidenceDeg * Math.PI / 180) / sheet.RefractiveIndexRatio;
        double cosIn = Math.Sqrt(Math.Max(0, 1 - (sinIn * sinIn)));

        // An index of 1 at grazing incidence has an infinite path inside; a clear sheet still passes all of it.
        double along = sheet.ExtinctionThicknessFactor == 0 ? 1 : Math.Exp(-sheet.ExtinctionThicknessFactor / Math.Max(cosIn, 1e-12));
        (double perpendicular, double parallel) = Fresnel.Kernel(cosOut, cosIn, sheet.RefractiveIndexRatio);
        (double t1, double r1) = Stack(perpendicular, along, count);
        (double t2, double r2) = Stack(parallel, along, count);
        double transmittance = (t1 + t2) / 2;
        double reflectance = (r1 + r2) / 2;
        return new LightShares(transmittance, reflectance, Math.Max(0, 1 - transmittance - reflectance));
    }

    /// <summary>Hemispherical shares for evenly diffuse light: 2 ∫ x(θ) cos θ sin θ dθ.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="count">How many, 1 to 20.</param>
    /// <returns>Three fractions that sum to 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static LightShares Diffuse(Sheet sheet, int count)
    {
        const int steps = 360;
        double transmittance = 0;
        double reflectance = 0;
        for (int i = 0; i < steps; i++)
        {
            // Even steps in sin² θ carry equal flux.
            double incidenceDeg = Math.Asin(Math.Sqrt((i + 0.5) / steps)) * 180 / Math.PI;
            LightShares shares = At(incidenceDeg, sheet, count);
            transmittance += shares.TransmittanceFraction / steps;
            reflectance += shares.ReflectanceFraction / steps;
        }

        return new LightShares(transmittance, reflectance, Math.Max(0, 1 - transmittance - reflectance));
    }

    private static (double Transmittance, double Reflectance) Stack(double surface, double along, int count)
    {
        double round = 1 - (surface * along * surface * along);
        double t = round <= 0 ? 0 : along * (1 - surface) * (1 - surface) / round;
        double r = surface + (surface * along * t);
        double stackT = t;
        double stackR = r;
        for (int i = 1; i < count; i++)
        {
            double between = 1 - (stackR * r);
            if (between <= 0)
            {
                return (0, 1);
            }

            // Equal sheets: the stack is the same from both sides.
            stackR += stackT * stackT * r / between;
            stackT = stackT * t / between;
        }

        return (stackT, stackR);
    }
}
