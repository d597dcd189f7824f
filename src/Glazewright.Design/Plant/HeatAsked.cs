using Glazewright.Design.Duty;

namespace Glazewright.Design.Plant;

/// <summary>What the heaters are asked for: the house's own loss, and the outside air a filter fan blows in all winter beyond what would leak in anyway.</summary>
/// <param name="FilterWPerK">Warming the filter fan's air, less the infiltration it takes the place of, W/K.</param>
/// <param name="LossWPerK">Loss factor with it, curtain open, W/K.</param>
/// <param name="LossDrawnWPerK">Loss factor with it, curtain drawn, W/K.</param>
/// <param name="NeedW">Larger of the 99.6 % and the frost-safe loss with it, curtain open, W.</param>
internal sealed record HeatAsked(double FilterWPerK, double LossWPerK, double LossDrawnWPerK, double NeedW)
{
    /// <summary>Inside temperature that counts as frost-safe, °C: as in Duty.</summary>
    private const double FrostSafeC = 2;

    public static HeatAsked Of(DutyResult duty, PressurePlant? pressure)
    {
        double densityKgPerM3 = duty.PressurePa / (287.05 * (duty.Conditions.Heating996C + 273.15));
        double leaksWPerK = duty.Losses.Where(l => l.Id.EndsWith("/infiltration", StringComparison.Ordinal)).Sum(l => l.WPerK);
        double filterWPerK = pressure is null ? 0 : Math.Max(pressure.FlowM3PerS * densityKgPerM3 * 1006 - leaksWPerK, 0);
        double needW = Math.Max(
            duty.HeatLossW + filterWPerK * Math.Max(duty.NightTargetC - duty.Conditions.Heating996C, 0),
            duty.FrostLossW + filterWPerK * Math.Max(FrostSafeC - duty.Conditions.ExtremeMinC, 0));
        return new HeatAsked(filterWPerK, duty.LossWPerK + filterWPerK, duty.LossDrawnWPerK + filterWPerK, needW);
    }
}
