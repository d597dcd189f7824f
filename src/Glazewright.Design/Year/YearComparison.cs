using Glazewright.Design.Contracts;

namespace Glazewright.Design.Year;

/// <summary>One quantity of two years.</summary>
/// <param name="Id">Short name.</param>
/// <param name="Label">In words.</param>
/// <param name="Unit">Unit of both values.</param>
/// <param name="BeforeValue">Of the first year.</param>
/// <param name="AfterValue">Of the second.</param>
/// <param name="MoreIsBetter">True, false, or null where neither is.</param>
public sealed record ComparedValue(string Id, string Label, Unit Unit, double BeforeValue, double AfterValue, bool? MoreIsBetter);

/// <summary>Two years of the same house and weather, side by side.</summary>
public static class YearComparison
{
    /// <summary>Compares.</summary>
    /// <param name="before">One year.</param>
    /// <param name="after">The other.</param>
    /// <returns>Hours held, energy, water, cost, then hours and starts of every motor that both have.</returns>
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
        ];
        foreach (MotorCounters motor in before.Motors)
        {
            if (after.Motors.FirstOrDefault(m => m.Actuator == motor.Actuator) is { } other)
            {
                rows.Add(new($"{motor.Actuator}/hours", $"{motor.Actuator}: running", Unit.Hour, motor.RuntimeH, other.RuntimeH, null));
                rows.Add(new($"{motor.Actuator}/starts", $"{motor.Actuator}: starts", Unit.Count, motor.Starts, other.Starts, false));
            }
        }

        return rows.ToEqList();

        ComparedValue Hours(string id, string label, Func<HeldCounters, double> value, bool better) => Of(id, label, Unit.Hour, y => value(y.Held), better);

        ComparedValue Of(string id, string label, Unit unit, Func<YearResult, double> value, bool? better) => new(id, label, unit, value(before), value(after), better);
    }
}
