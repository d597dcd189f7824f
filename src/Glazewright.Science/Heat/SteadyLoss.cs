using Glazewright.Science.Guards;

namespace Glazewright.Science.Heat;

/// <summary>Steady heat balance of one well-mixed house: faces, leaking air, fans, heat sources.</summary>
/// <remarks>First law; ANSI/ASABE EP406 in its heat-loss form (from memory), with the air's own density in place of its round constant.</remarks>
public static class SteadyLoss
{
    /// <summary>Heat a kelvin of leaking air costs.</summary>
    /// <param name="volumeM3">Volume of the house, m³, 0 to 1e7.</param>
    /// <param name="changesPerH">Air changes an hour, 0 to 200.</param>
    /// <param name="volumetricHeatJPerM3K">Heat capacity of the air by volume, J/(m³ K), 500 to 2000.</param>
    /// <returns>W/K.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static double InfiltrationWPerK(double volumeM3, double changesPerH, double volumetricHeatJPerM3K)
    {
        Within.Require(volumeM3, 0, 1e7);
        Within.Require(changesPerH, 0, 200);
        Within.Require(volumetricHeatJPerM3K, 500, 2000);
        return volumeM3 * changesPerH / 3600 * volumetricHeatJPerM3K;
    }

    /// <summary>Rise of the inside over the outside.</summary>
    /// <param name="heatW">Sensible heat put in, W, finite.</param>
    /// <param name="conductanceWPerK">Through faces and ground, W/K, 0 to 1e8.</param>
    /// <param name="airWPerK">Carried by air that passes through, W/K, 0 to 1e8; not both zero.</param>
    /// <returns>Inside less outside, K.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static double RiseK(double heatW, double conductanceWPerK, double airWPerK)
    {
        Within.RequireFinite(heatW);
        Within.Require(conductanceWPerK, 0, 1e8);
        Within.Require(airWPerK, 0, 1e8);
        Within.Require(conductanceWPerK + airWPerK, 1e-9, 2e8);
        return heatW / (conductanceWPerK + airWPerK);
    }

    /// <summary>Seasonal heat by degree-days. Ignores the sun: an hourly year must come out lower.</summary>
    /// <param name="conductanceWPerK">Loss coefficient, W/K, 0 to 1e8.</param>
    /// <param name="degreeDaysKDay">Degree-days at the house's own base, K day, 0 to 15 000.</param>
    /// <returns>Heat, J.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static double DegreeDayHeatJ(double conductanceWPerK, double degreeDaysKDay)
    {
        Within.Require(conductanceWPerK, 0, 1e8);
        Within.Require(degreeDaysKDay, 0, 15_000);
        return conductanceWPerK * degreeDaysKDay * 86_400;
    }

    /// <summary>Degree-days of a series of daily mean temperatures.</summary>
    /// <param name="dailyMeansC">Daily means, °C.</param>
    /// <param name="baseC">Balance temperature, °C, −30 to 40.</param>
    /// <returns>Heating degree-days, K day.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static double HeatingDegreeDaysKDay(ReadOnlySpan<double> dailyMeansC, double baseC)
    {
        Within.Require(baseC, -30, 40);
        double sumKDay = 0;
        foreach (double meanC in dailyMeansC)
        {
            Within.Require(meanC, -90, 70, nameof(dailyMeansC));
            sumKDay += Math.Max(baseC - meanC, 0);
        }

        return sumKDay;
    }
}
