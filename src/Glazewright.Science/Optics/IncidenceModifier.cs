using Glazewright.Science.Guards;

namespace Glazewright.Science.Optics;

/// <summary>Simple angle modifiers and equivalent angles, kept as second opinions beside the full stack.</summary>
public static class IncidenceModifier
{
    /// <summary>Transmission into one surface and through a thickness, relative to normal incidence.</summary>
    /// <param name="incidenceDeg">0 to 90.</param>
    /// <param name="sheet">Index and extinction thickness.</param>
    /// <returns>1 at normal incidence, 0 at 90°.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    /// <remarks>De Soto, Klein, Beckman 2006, Solar Energy 80:78.</remarks>
    public static double OneSurface(double incidenceDeg, Sheet sheet)
    {
        SurfaceReflection oblique = Fresnel.At(incidenceDeg, sheet.RefractiveIndexRatio);
        SurfaceReflection normal = Fresnel.At(0, sheet.RefractiveIndexRatio);
        double cosIn = Math.Cos(oblique.RefractionDeg * Math.PI / 180);
        double obliquePath = sheet.ExtinctionThicknessFactor == 0 ? 1 : Math.Exp(-sheet.ExtinctionThicknessFactor / Math.Max(cosIn, 1e-12));
        return (1 - oblique.MeanFraction) * obliquePath / ((1 - normal.MeanFraction) * Math.Exp(-sheet.ExtinctionThicknessFactor));
    }

    /// <summary>1 − b (1/cos θ − 1), not below zero.</summary>
    /// <param name="incidenceDeg">0 to 90.</param>
    /// <param name="coefficientRatio">b, 0 to 1.</param>
    /// <returns>0 to 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    /// <remarks>Souka &amp; Safwat 1966; ANSI/ASHRAE 93 form.</remarks>
    public static double Ashrae(double incidenceDeg, double coefficientRatio)
    {
        Within.Require(incidenceDeg, 0, 90);
        Within.Require(coefficientRatio, 0, 1);
        if (incidenceDeg >= 90)
        {
            return 0;
        }

        return Math.Max(0, 1 - (coefficientRatio * ((1 / Math.Cos(incidenceDeg * Math.PI / 180)) - 1)));
    }

    /// <summary>Beam angle at which a flat cover transmits as it does the sky's diffuse light.</summary>
    /// <param name="tiltDeg">0 to 90.</param>
    /// <returns>Degrees.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    /// <remarks>Brandemuehl &amp; Beckman 1980, Solar Energy 24:511; Duffie &amp; Beckman, eq. 5.4.2.</remarks>
    public static double SkyEquivalentDeg(double tiltDeg)
    {
        Within.Require(tiltDeg, 0, 90);
        return 59.7 - (0.1388 * tiltDeg) + (0.001497 * tiltDeg * tiltDeg);
    }

    /// <summary>The same for light from the ground.</summary>
    /// <param name="tiltDeg">0 to 90.</param>
    /// <returns>Degrees.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    /// <remarks>Brandemuehl &amp; Beckman 1980; Duffie &amp; Beckman, eq. 5.4.1.</remarks>
    public static double GroundEquivalentDeg(double tiltDeg)
    {
        Within.Require(tiltDeg, 0, 90);
        return 90 - (0.5788 * tiltDeg) + (0.002693 * tiltDeg * tiltDeg);
    }
}
