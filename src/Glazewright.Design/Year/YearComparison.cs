using Glazewright.Design.Contracts;

namespace Glazewright.Design.Year;

/// <summary>One quantity of two years.</summary>
/// <param name="Id">Short name.</param>
/// <param name="Label">In words.</param>
/// <param name="Unit">Unit of both values.</param>
/// <param name="BeforeValue">Of the first year.</param>
/// <param name="AfterValue">Of the second.</param>
/// <param name="MoreIsBetter">True, false, or null where neither is.</param>
/// <param name="OnlyIn">0 where both years have it; 1 or 2 where only that one has, and the other's value is 0.</param>
public sealed record ComparedValue(string Id, string Label, Unit Unit, double BeforeValue, double AfterValue, bool? MoreIsBetter, int OnlyIn = 0);

/// <summary>Two years of the same weather, side by side: of one plant under two programs, or of two plants or houses.</summary>
public static class YearComparison
{
    /// <summary>Compares.</summary>
    /// <param name="before">One year.</param>
    /// <param name="after">The other.</param>
    /// <returns>Hours held, energy, water, cost, then hours and starts of every motor that either has.</returns>
    public static EqList<ComparedValue> Of(YearResult before, YearResult after)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(after);
        List<ComparedValue> rows =
        [
            Hours("held", "All targets held", h => h.HeldJointlyH, true),
            Hours("temperature-held", "Temperature held", h => h.HeldTemperatureH, true),
            Hours("humidity-held", "Humidity held", h => h.HeldHumidityH, true),
            Hours("too-warm", "Too warm", h => h.TooWarmH, false),
            Hours("too-cold", "Too cold", h => h.TooColdH, false),
            Hours("too-wet", "Too wet", h => h.TooWetH, false),
            Hours("too-dry", "Too dry", h => h.TooDryH, false),
            Hours("never-above", "Above the temperature never to be exceeded", h => h.AboveNeverH, false),
            Hours("frost", "Frost", h => h.FrostH, false),
            Hours("leaf-wet", "Leaves wet", h => h.LeafWetH, false),
            Of("coldest", "Coldest air at the crop", Unit.Celsius, y => y.Extremes.LowestC, null),
            Of("hottest", "Hottest air at the crop", Unit.Celsius, y => y.Extremes.HighestC, null),
            Of("heat", "Heat delivered", Unit.Joule, y => y.HeatJ, false),
            Of("fuel", "Fuel", Unit.Joule, y => y.FuelJ, false),
            Of("power", "Electricity", Unit.ElectricJoule, y => y.PowerJ, false),
            Of("peak", "Peak demand", Unit.ElectricWatt, y => y.PeakPowerW, false),
            Of("water", "Water of wet wall and fog", Unit.WaterCubicMetre, y => y.WaterKg / 1000, false),
            Of("cost", "Energy and water", Unit.Dollar, y => y.Cost, false),
            Of("starts", "Starts of all motors", Unit.Count, y => y.Motors.Sum(m => m.Starts), false),
        ];
        foreach (string id in before.Motors.Concat(after.Motors).Select(m => m.Actuator).Distinct(StringComparer.Ordinal))
        {
            MotorCounters? one = before.Motors.FirstOrDefault(m => m.Actuator == id), other = after.Motors.FirstOrDefault(m => m.Actuator == id);
            int only = other is null ? 1 : one is null ? 2 : 0;
            rows.Add(new($"{id}/hours", $"{id}: running", Unit.Hour, one?.RuntimeH ?? 0, other?.RuntimeH ?? 0, null, only));
            rows.Add(new($"{id}/starts", $"{id}: starts", Unit.Count, one?.Starts ?? 0, other?.Starts ?? 0, only > 0 ? null : false, only));
        }

        return rows.ToEqList();

        ComparedValue Hours(string id, string label, Func<HeldCounters, double> value, bool better) => Of(id, label, Unit.Hour, y => value(y.Held), better);

        ComparedValue Of(string id, string label, Unit unit, Func<YearResult, double> value, bool? better) => new(id, label, unit, value(before), value(after), better);
    }
}
