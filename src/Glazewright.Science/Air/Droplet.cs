using Glazewright.Science.Guards;

namespace Glazewright.Science.Air;

/// <summary>What becomes of a falling drop.</summary>
/// <param name="LifetimeS">Time until it is gone, s; infinite in saturated air.</param>
/// <param name="FallM">How far it falls until then, m; infinite in saturated air.</param>
public sealed record DropletFate(double LifetimeS, double FallM);

/// <summary>Fog drops: how fast they fall and how soon they are gone.</summary>
/// <remarks>
/// Diameter squared shrinks in proportion to time and wet-bulb depression: d² = d₀² − 8 k ΔT t/(ρ_w L), conduction to a drop at its wet bulb (textbook; ventilation
/// of small drops left out). The spray literature's 84.8 µm²/(s K) (Holterman 2003) and 80 (Amsden 1962) are from memory; ours is 84.
/// Terminal speed by Schiller and Naumann's drag. A cloud of drops cools and moistens its own air: judge by the air it ends in.
/// </remarks>
public static class Droplet
{
    private const double ConductivityWPerMK = 0.0257;
    private const double LatentJPerKg = 2.45e6;
    private const double WaterKgPerM3 = 998;
    private const double ViscosityPaS = 1.82e-5;
    private const double GravityMPerS2 = 9.81;

    /// <summary>Square of diameter lost by second and kelvin of wet-bulb depression, m²/(s K).</summary>
    public const double ShrinkM2PerSK = 8 * ConductivityWPerMK / (WaterKgPerM3 * LatentJPerKg);

    /// <summary>Terminal speed of a water drop in still air.</summary>
    /// <param name="diameterM">Diameter, m, 1e-6 to 1e-3.</param>
    /// <param name="densityKgPerM3">Density of the air, kg/m³, 0.5 to 1.6.</param>
    /// <returns>Speed, m/s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static double TerminalMPerS(double diameterM, double densityKgPerM3)
    {
        Within.Require(diameterM, 1e-6, 1e-3);
        Within.Require(densityKgPerM3, 0.5, 1.6);
        return Speed(diameterM, densityKgPerM3);
    }

    /// <summary>Lifetime and fall of a drop.</summary>
    /// <param name="diameterM">Diameter when it leaves the nozzle, m, 1e-6 to 1e-3.</param>
    /// <param name="depressionK">Dry bulb less wet bulb of the air around it, K, 0 to 40.</param>
    /// <param name="densityKgPerM3">Density of the air, kg/m³, 0.5 to 1.6.</param>
    /// <returns>Its fate.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static DropletFate Fate(double diameterM, double depressionK, double densityKgPerM3)
    {
        Within.Require(diameterM, 1e-6, 1e-3);
        Within.Require(depressionK, 0, 40);
        Within.Require(densityKgPerM3, 0.5, 1.6);
        double rate = ShrinkM2PerSK * depressionK;
        if (rate <= 0)
        {
            return new DropletFate(double.PositiveInfinity, double.PositiveInfinity);
        }

        double lifeS = diameterM * diameterM / rate;
        const int Steps = 200;
        double fallM = 0;
        for (int i = 0; i < Steps; i++)
        {
            double left = 1 - (i + 0.5) / Steps;
            fallM += Speed(diameterM * Math.Sqrt(left), densityKgPerM3) * lifeS / Steps;
        }

        return new DropletFate(lifeS, fallM);
    }

    private static double Speed(double diameterM, double densityKgPerM3)
    {
        double stokes = (WaterKgPerM3 - densityKgPerM3) * GravityMPerS2 * diameterM * diameterM / (18 * ViscosityPaS);
        double speed = stokes;
        for (int i = 0; i < 60; i++)
        {
            double reynolds = densityKgPerM3 * speed * diameterM / ViscosityPaS;
            speed = 0.5 * (speed + stokes / (1 + 0.15 * Math.Pow(reynolds, 0.687)));
        }

        return speed;
    }
}
