using Glazewright.Design.Choices;
using Glazewright.Papers.Sets;

namespace Glazewright.Papers.Exchange;

/// <summary>Alternatives of the climate plant with their first cost: for the contractor's own set and no other.</summary>
public static class AlternativesCsv
{
    /// <summary>All houses.</summary>
    /// <param name="source">What the papers are made from.</param>
    /// <returns>One row an alternative; cost is direct cost of the climate equipment.</returns>
    public static string Table(PaperSource source)
    {
        ArgumentNullException.ThrowIfNull(source);
        CsvText table = new(
            "house", "about", "alternative", "air_m3_per_s", "hottest_C", "humidity_there_percent", "hottest_on_wet_bulb_day_C", "cooling_W", "water_L_per_h", "heat_W",
            "holds_99.6_percent_night_C", "one_out_holds_C", "night_loss_curtain_drawn_W", "night_fuel_W", "night_heat_power_W", "first_cost", "cost_over_chosen", "without_price");
        foreach (HouseResults house in source.Houses.Where(h => h.FirstCosts.Count == h.Choices.Alternatives.Count))
        {
            for (int i = 0; i < house.FirstCosts.Count; i++)
            {
                Alternative a = house.Choices.Alternatives[i];
                FirstCost cost = house.FirstCosts[i];
                table.Cell(house.Form.Id).Cell(a.Kind.ToString()).Cell(a.Label).Cell(a.FlowM3PerS, 3).Cell(a.HottestC, 1).Cell(100 * a.DampestFraction, 0).Cell(a.WetDayC, 1)
                    .Cell(a.CoolingW, 0).Cell(3600 * a.WaterKgPerS / 0.998, 0).Cell(a.HeatW, 0).Cell(a.HoldsC, 1).Cell(a.OneOutC, 1).Cell(a.NightLossW, 0).Cell(a.NightFuelW, 0)
                    .Cell(a.NightPowerW, 0).Cell(cost.Cost, 0).Cell(cost.Cost - house.FirstCosts[0].Cost, 0).Cell(string.Join(" ", cost.WithoutPrice)).End();
            }
        }

        return table.ToString();
    }
}
