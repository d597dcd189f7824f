using Glazewright.Design.Contracts;
using Glazewright.Science.Air;
using Glazewright.Science.Flow;

namespace Glazewright.Design.Duty;

/// <summary>One term on the way from the sun to the heat that ventilation takes away, W a square metre of floor.</summary>
/// <param name="Label">What it is.</param>
/// <param name="WPerM2">Its size.</param>
public sealed record VentilationTerm(string Label, double WPerM2);

/// <summary>The two ways of sizing summer ventilation side by side, as heat taken off a square metre of floor.</summary>
/// <param name="BalanceTerms">The balance, term by term, down to what the air carries.</param>
/// <param name="RuleWPerM2">What the factor rule's flow takes off at the same rise.</param>
/// <param name="BalanceWPerM2">What the balance's flow takes off at the same rise.</param>
/// <param name="ElevationFactor">Rule: elevation.</param>
/// <param name="LightFactor">Rule: light.</param>
/// <param name="RiseFactor">Rule: temperature rise.</param>
/// <param name="DistanceFactor">Rule: distance from intake to fans.</param>
public sealed record VentilationCompared(
    EqList<VentilationTerm> BalanceTerms, double RuleWPerM2, double BalanceWPerM2,
    double ElevationFactor, double LightFactor, double RiseFactor, double DistanceFactor);

/// <summary>Works the difference out.</summary>
internal static class VentilationTerms
{
    public static VentilationCompared Of(
        AirState inlet, AirLoad load, double solarW, double storedW, double floorM2, FlowNeed need, FactoredVentilation rule, double riseK)
    {
        double floor = Math.Max(floorM2, 1);
        AirRun run = AlongHouse.March(inlet, Math.Max(need.FlowM3PerS, 0.01), load);
        double TakenOff(double flowM3PerS) => flowM3PerS / inlet.VolumeM3PerKg * inlet.HeatJPerKgK * riseK / floor;
        return new VentilationCompared(
            [
                new("Sun kept inside, shade counted", solarW / floor),
                new("less stored in floor and benches", -storedW / floor),
                new("less turned into vapour by the crop", -run.CropLatentW / floor),
                new("less lost through faces and edge (gained, where air behind the pad is cooler than outside)", -run.LossW / floor),
                new("carried away by the air", (solarW - storedW - run.CropLatentW - run.LossW) / floor),
            ],
            TakenOff(rule.FlowM3PerS),
            TakenOff(need.FlowM3PerS),
            rule.ElevationFactor, rule.LightFactor, rule.RiseFactor, rule.DistanceFactor);
    }
}
