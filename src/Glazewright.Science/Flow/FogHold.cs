using Glazewright.Science.Air;
using Glazewright.Science.Guards;

namespace Glazewright.Science.Flow;

/// <summary>Fog at the intake and along the house, no more of it than needed.</summary>
/// <param name="IntakeKgPerS">Water that evaporates in the air as it enters, kg/s.</param>
/// <param name="AlongKgPerS">Water that evaporates evenly on the way to the fans, kg/s.</param>
/// <param name="Run">The air on its way, from behind the fog at the intake.</param>
/// <param name="Reached">The hottest air there is no hotter than wished.</param>
public sealed record FogHeld(double IntakeKgPerS, double AlongKgPerS, AirRun Run, bool Reached)
{
    /// <summary>All water that evaporates, kg/s.</summary>
    public double WaterKgPerS => IntakeKgPerS + AlongKgPerS;
}

/// <summary>Finds the fog that holds the hottest air on its way through the house at a temperature.</summary>
/// <remarks>
/// Air that enters too hot is brought to the wish at the intake, or as near as its humidity lets it; what sun and crop add is met along the house.
/// Bisection over <see cref="Fog.Spray"/> and <see cref="AlongHouse.March"/>: more fog is cooler and damper everywhere. First-law balance, ours; see docs/methods/air-and-plant.md.
/// </remarks>
public static class FogHold
{
    private const int Halvings = 20;
    /// <summary>Temperature the water is sprayed at, °C: a well's (common practice).</summary>
    public const double WaterC = 15;

    /// <summary>Least fog that holds the hottest air at a temperature; where none does, the most that the air and the nozzles allow.</summary>
    /// <param name="inlet">Air that enters, −20 to 60 °C.</param>
    /// <param name="flowM3PerS">Its flow, m³/s, 0.01 to 1e4.</param>
    /// <param name="load">What else acts on it.</param>
    /// <param name="hottestC">Hottest air wished, °C, −60 to 100.</param>
    /// <param name="mostKgPerS">Most water that the nozzles let evaporate, kg/s, 0 to 100.</param>
    /// <param name="dampestFraction">Relative humidity that fog may bring no air above, 0 to 1.</param>
    /// <returns>The fog and the air with it.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static FogHeld Least(
        AirState inlet, double flowM3PerS, AirLoad load, double hottestC, double mostKgPerS, double dampestFraction)
    {
        Within.Require(hottestC, -60, 100);
        AirRun none = AlongHouse.March(inlet, flowM3PerS, load);
        if (none.HottestC <= hottestC)
        {
            return new FogHeld(0, 0, none, true);
        }

        (AirState fogged, double atIntake) = Intake(inlet, flowM3PerS, hottestC, mostKgPerS, dampestFraction);
        // The march keeps to the inlet's flow of dry air, whatever its volume after the fog.
        double flow = flowM3PerS * fogged.VolumeM3PerKg / inlet.VolumeM3PerKg;
        double most = Math.Max(Math.Min(mostKgPerS, MostPerKg * flowM3PerS / inlet.VolumeM3PerKg) - atIntake, 0);
        AirRun With(double kgPerS) => AlongHouse.March(fogged, flow, load with { FogKgPerS = kgPerS });
        AirRun full = With(most);
        if (full.DampestFraction > dampestFraction)
        {
            most = With(0).DampestFraction > dampestFraction ? 0 : Largest(0, most, kg => With(kg).DampestFraction <= dampestFraction);
            full = With(most);
        }

        if (full.HottestC > hottestC)
        {
            return new FogHeld(atIntake, most, full, false);
        }

        double least = most - Largest(0, most, spared => With(most - spared).HottestC <= hottestC);
        return new FogHeld(atIntake, least, With(least), true);
    }

    /// <summary>The air with all of the fog on: at the intake as much as its humidity lets it take, the rest along the house.</summary>
    /// <param name="inlet">Air that enters, −20 to 60 °C.</param>
    /// <param name="flowM3PerS">Its flow, m³/s, 0.01 to 1e4.</param>
    /// <param name="load">What else acts on it.</param>
    /// <param name="waterKgPerS">Water that would evaporate in dry air, kg/s, 0 to 100.</param>
    /// <param name="dampestFraction">Relative humidity up to which it is taken at the intake, 0 to 1.</param>
    /// <returns>What the air takes up of it and the air on its way, saturated at most; nothing is held, so nothing counts as reached.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static FogHeld All(AirState inlet, double flowM3PerS, AirLoad load, double waterKgPerS, double dampestFraction)
    {
        (AirState fogged, double atIntake) = Intake(inlet, flowM3PerS, -60, waterKgPerS, dampestFraction);
        AirRun run = AlongHouse.March(
            fogged, flowM3PerS * fogged.VolumeM3PerKg / inlet.VolumeM3PerKg, load with { FogKgPerS = Math.Max(waterKgPerS - atIntake, 0) });
        return new FogHeld(atIntake, run.FogKgPerS, run, false);
    }

    // Air cannot take up a tenth of its own weight: what is beyond it falls whatever the nozzles give.
    private const double MostPerKg = 0.1;

    private static (AirState Fogged, double KgPerS) Intake(AirState inlet, double flowM3PerS, double wishC, double mostKgPerS, double dampestFraction)
    {
        Within.Require(flowM3PerS, 0.01, 1e4);
        Within.Require(mostKgPerS, 0, 100);
        Within.Require(dampestFraction, 0, 1);
        double dryKgPerS = flowM3PerS / inlet.VolumeM3PerKg;
        AirState With(double kgPerKg) => Fog.Spray(inlet, kgPerKg, WaterC).State;
        if (inlet.DryBulbC <= wishC || inlet.RelativeHumidityFraction >= dampestFraction)
        {
            return (inlet, 0);
        }

        double most = Math.Min(mostKgPerS / dryKgPerS, MostPerKg);
        if (With(most).RelativeHumidityFraction > dampestFraction)
        {
            most = Largest(0, most, kg => With(kg).RelativeHumidityFraction <= dampestFraction);
        }

        if (With(most).DryBulbC < wishC)
        {
            most -= Largest(0, most, spared => With(most - spared).DryBulbC <= wishC);
        }

        return (With(most), most * dryKgPerS);
    }

    // The largest value for which something is true that is true at the lower end and false from some value on.
    private static double Largest(double lower, double upper, Func<double, bool> still)
    {
        for (int i = 0; i < Halvings; i++)
        {
            double middle = 0.5 * (lower + upper);
            (lower, upper) = still(middle) ? (middle, upper) : (lower, middle);
        }

        return lower;
    }
}
