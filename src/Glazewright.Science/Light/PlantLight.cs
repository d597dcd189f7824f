using Glazewright.Science.Guards;

namespace Glazewright.Science.Light;

/// <summary>Photosynthetic light: photons from energy, and the day's sum.</summary>
/// <remarks>
/// Published factors from global energy to photons run from 2.02 to 2.30 µmol/J, 14 % apart; the default here is the lowest of them, and every
/// output says which was used.
/// </remarks>
public static class PlantLight
{
    /// <summary>Photons of daylight per joule of all sunlight, µmol/J: 0.007265 mol/Wh.</summary>
    /// <remarks>Faust &amp; Logan 2018, HortScience 53:1250 (abstract read).</remarks>
    public const double MicromolPerJoule = 0.007265e6 / 3600;

    /// <summary>Photon flux.</summary>
    /// <param name="globalWm2">All sunlight, W/m², 0 to 1500.</param>
    /// <param name="micromolPerJoule">Factor, 1.8 to 2.4 µmol/J.</param>
    /// <returns>µmol/m² s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static double FluxMicromolM2s(double globalWm2, double micromolPerJoule = MicromolPerJoule)
    {
        Within.Require(globalWm2, 0, 1500);
        Within.Require(micromolPerJoule, 1.8, 2.4);
        return globalWm2 * micromolPerJoule;
    }

    /// <summary>Daily light integral from a day's energy.</summary>
    /// <param name="globalWhm2Day">Energy of the day, Wh/m², 0 to 15 000.</param>
    /// <param name="micromolPerJoule">Factor, 1.8 to 2.4 µmol/J.</param>
    /// <returns>mol/m² day.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static double DailyMolM2(double globalWhm2Day, double micromolPerJoule = MicromolPerJoule)
    {
        Within.Require(globalWhm2Day, 0, 15_000);
        Within.Require(micromolPerJoule, 1.8, 2.4);
        return globalWhm2Day * 3600 * micromolPerJoule / 1e6;
    }

    /// <summary>Daily light integral of a lamp.</summary>
    /// <param name="fluxUmolPerM2S">Photon flux, µmol/m² s, 0 to 3000.</param>
    /// <param name="hoursH">Hours a day, 0 to 24.</param>
    /// <returns>mol/m² day.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static double LampMolM2Day(double fluxUmolPerM2S, double hoursH)
    {
        Within.Require(fluxUmolPerM2S, 0, 3000);
        Within.Require(hoursH, 0, 24);
        return fluxUmolPerM2S * hoursH * 3600 / 1e6;
    }
}
