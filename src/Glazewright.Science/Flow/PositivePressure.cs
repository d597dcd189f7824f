using Glazewright.Science.Guards;
using Glazewright.Science.Roots;

namespace Glazewright.Science.Flow;

/// <summary>A house kept above the outside pressure by filtered air.</summary>
/// <param name="HousePa">Pressure in the house over still outside air, Pa.</param>
/// <param name="SupplyM3PerS">Air the fan brings, m³/s.</param>
/// <param name="FanStaticPa">Static pressure across the fan (house and filter), Pa.</param>
/// <param name="BeyondTested">The fan works past its last tested point.</param>
/// <param name="WindFailsMPerS">Wind at which the windward wall sees more than the house holds, m/s: from there on air leaks in.</param>
public sealed record HeldPressure(
    double HousePa, double SupplyM3PerS, double FanStaticPa, bool BeyondTested, double WindFailsMPerS);

/// <summary>Positive pressure: what supply holds it, and what a fan can hold.</summary>
public static class PositivePressure
{
    /// <summary>Windward wall pressure coefficient used for the wind it fails at (common practice: 0.6 to 0.8).</summary>
    public const double WindwardCoefficient = 0.7;

    /// <summary>Air that holds a pressure.</summary>
    /// <param name="leakage">The house's leaks.</param>
    /// <param name="reliefM2">Open relief or crack, m², 0 to 1000.</param>
    /// <param name="dischargeCoefficient">Of the relief, 0.05 to 1.</param>
    /// <param name="pressurePa">Pressure to hold, Pa, 0 to 500.</param>
    /// <param name="densityKgPerM3">Density, kg/m³, 0.5 to 1.6.</param>
    /// <returns>Supply, m³/s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static double SupplyM3PerS(
        Leakage leakage, double reliefM2, double dischargeCoefficient, double pressurePa, double densityKgPerM3)
    {
        Within.Require(pressurePa, 0, 500);
        return leakage.FlowM3PerS(pressurePa)
            + Openings.OrificeM3PerS(reliefM2, dischargeCoefficient, pressurePa, densityKgPerM3);
    }

    /// <summary>What a filter fan holds against the leaks.</summary>
    /// <param name="fans">Supply fans, at the air's density.</param>
    /// <param name="filterPath">Filter and inlet, in series.</param>
    /// <param name="leakage">The house's leaks.</param>
    /// <param name="reliefM2">Open relief or crack, m², 0 to 1000.</param>
    /// <param name="dischargeCoefficient">Of the relief, 0.05 to 1.</param>
    /// <param name="densityKgPerM3">Density, kg/m³, 0.5 to 1.6.</param>
    /// <returns>The pressure held and the wind it fails at.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static HeldPressure Held(
        IReadOnlyList<FanGroup> fans,
        IReadOnlyList<AirPath> filterPath,
        Leakage leakage,
        double reliefM2,
        double dischargeCoefficient,
        double densityKgPerM3)
    {
        double shutOffPa = 0;
        foreach (FanGroup group in fans)
        {
            shutOffPa = group.Count > 0 ? Math.Max(shutOffPa, group.Curve.ShutOffPa) : shutOffPa;
        }

        if (shutOffPa == 0)
        {
            return new HeldPressure(0, 0, 0, false, 0);
        }

        double HousePa(double staticPa) =>
            staticPa - FanSystem.LossPa(filterPath, FanSystem.Together(fans, staticPa).FlowM3PerS, densityKgPerM3);
        double Surplus(double staticPa)
        {
            double housePa = Math.Max(HousePa(staticPa), 0);
            return FanSystem.Together(fans, staticPa).FlowM3PerS
                - leakage.FlowM3PerS(housePa)
                - Openings.OrificeM3PerS(reliefM2, dischargeCoefficient, housePa, densityKgPerM3);
        }

        double fanPa = Bracketed.Find(Surplus, 0, shutOffPa, 1e-9).Argument;
        FanOutput output = FanSystem.Together(fans, fanPa);
        double heldPa = Math.Max(HousePa(fanPa), 0);
        double failsMPerS = Math.Sqrt(2 * heldPa / (densityKgPerM3 * WindwardCoefficient));
        return new HeldPressure(heldPa, output.FlowM3PerS, fanPa, output.BeyondTested, failsMPerS);
    }

    /// <summary>What the house holds in wind: every wall leaks by its own pressure.</summary>
    /// <param name="supplyM3PerS">Air the filter fan brings, taken as steady, m³/s, 0 to 1000.</param>
    /// <param name="leakage">The house's leaks, spread over walls and roof by <paramref name="walls"/>.</param>
    /// <param name="walls">Share of the leaks and wind pressure coefficient of each wall; shares sum to 1.</param>
    /// <param name="crack">A crack that stays open in use, beside the leaks.</param>
    /// <param name="windMPerS">Wind, m/s, 0 to 60.</param>
    /// <param name="densityKgPerM3">Density, kg/m³, 0.5 to 1.6.</param>
    /// <returns>Pressure in the house over still outside air, and what leaks in unfiltered.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range, NaN, or shares that do not sum to 1.</exception>
    /// <remarks>Mass balance with Q = C ΔPⁿ on each wall; the fan's own curve would give a little more as the pressure falls.</remarks>
    public static PressureInWind InWind(
        double supplyM3PerS, Leakage leakage, IReadOnlyList<WallLeak> walls, OpenCrack crack, double windMPerS, double densityKgPerM3)
    {
        Within.Require(supplyM3PerS, 0, 1000);
        Within.Require(windMPerS, 0, 60);
        Within.Require(densityKgPerM3, 0.5, 1.6);
        Within.Require(walls.Sum(w => w.Fraction), 0.999, 1.001);
        double headPa = 0.5 * densityKgPerM3 * windMPerS * windMPerS;
        double Out(double housePa, WallLeak wall)
        {
            double overPa = housePa - wall.Coefficient * headPa;
            return Math.Sign(overPa) * wall.Fraction * leakage.CoefficientM3PerSPaN * Math.Pow(Math.Abs(overPa), leakage.Exponent);
        }

        double Through(double housePa)
        {
            double overPa = housePa - crack.Coefficient * headPa;
            return Math.Sign(overPa) * Openings.OrificeM3PerS(crack.AreaM2, crack.DischargeCoefficient, Math.Abs(overPa), densityKgPerM3);
        }

        double mostPa = 600 + 2 * headPa;
        double heldPa = Bracketed.Find(p => walls.Sum(w => Out(p, w)) + Through(p) - supplyM3PerS, -mostPa, mostPa, 1e-9).Argument;
        double highest = walls.Max(w => w.Coefficient) * headPa;
        return new PressureInWind(heldPa, walls.Sum(w => Math.Max(-Out(heldPa, w), 0)) + Math.Max(-Through(heldPa), 0), heldPa - highest);
    }
}

/// <summary>A wall's part of the leaks.</summary>
/// <param name="Fraction">Share of the house's leaks.</param>
/// <param name="Coefficient">Wind pressure coefficient of the wall.</param>
public readonly record struct WallLeak(double Fraction, double Coefficient);

/// <summary>A crack that stays open in use, such as a door's sweep.</summary>
/// <param name="AreaM2">Area, m², 0 to 1000.</param>
/// <param name="DischargeCoefficient">Discharge coefficient, 0.02 to 1.</param>
/// <param name="Coefficient">Wind pressure coefficient of its wall.</param>
public readonly record struct OpenCrack(double AreaM2, double DischargeCoefficient, double Coefficient);

/// <summary>A house under filter-fan pressure in wind.</summary>
/// <param name="HousePa">Over still outside air, Pa.</param>
/// <param name="UnfilteredM3PerS">What leaks in past the filter, m³/s.</param>
/// <param name="LeastOverWallPa">House over the wall that the wind presses most, Pa; negative where it leaks in.</param>
public sealed record PressureInWind(double HousePa, double UnfilteredM3PerS, double LeastOverWallPa);
