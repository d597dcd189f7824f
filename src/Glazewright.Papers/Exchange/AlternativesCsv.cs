using System.Globalization;
using Glazewright.Design.Choices;
using Glazewright.Design.Contracts;
using Glazewright.Papers.Sets;

namespace Glazewright.Papers.Exchange;

/// <summary>Alternatives of the climate plant with their first cost: for the contractor's own set and no other.</summary>
public static class AlternativesCsv
{
    /// <summary>All houses.</summary>
    /// <param name="source">What the papers are made from.</param>
    /// <returns>One row an alternative, in the job's units; cost is direct cost of the climate equipment.</returns>
    public static string Table(PaperSource source)
    {
        ArgumentNullException.ThrowIfNull(source);
        bool us = source.Job.Units == UnitSystem.Us;
        (string air, string degree, string water, string heat) = us ? ("cfm", "F", "gal_per_h", "Btu_per_h") : ("m3_per_h", "C", "L_per_h", "W");
        CsvText table = new(
            "house", "about", "alternative", $"air_{air}", $"hottest_{degree}", "humidity_there_percent", $"hottest_on_wet_bulb_day_{degree}", "cooling_W", $"water_{water}", $"heat_{heat}",
            $"holds_99.6_percent_night_{degree}", $"one_out_holds_{degree}", $"night_loss_curtain_drawn_{heat}", $"night_fuel_{heat}", "night_heat_power_W", "first_cost", "cost_over_chosen", "without_price");
        double Air(double m3PerS) => us ? m3PerS / 0.00047194745 : m3PerS * 3600;
        double Degrees(double celsius) => us ? celsius * 1.8 + 32 : celsius;
        double Water(double kgPerS) => 3600 * kgPerS / 0.998 / (us ? 3.785411784 : 1);
        double Heat(double powerW) => us ? powerW / 0.29307107 : powerW;
        foreach (HouseResults house in source.Houses.Where(h => h.FirstCosts.Count == h.Choices.Alternatives.Count))
        {
            for (int i = 0; i < house.FirstCosts.Count; i++)
            {
                Alternative a = house.Choices.Alternatives[i];
                FirstCost cost = house.FirstCosts[i];
                table.Cell(house.Form.Id).Cell(a.Kind.ToString()).Cell(a.Label).Cell(Moved(a, Air(a.FlowM3PerS), 0)).Cell(Moved(a, Degrees(a.HottestC), 1)).Cell(Moved(a, 100 * a.DampestFraction, 0)).Cell(Moved(a, Degrees(a.WetDayC), 1))
                    .Cell(a.CoolingW, 0).Cell(Water(a.WaterKgPerS), 0).Cell(Heat(a.HeatW), 0).Cell(Degrees(a.HoldsC), 1).Cell(Degrees(a.OneOutC), 1).Cell(Heat(a.NightLossW), 0).Cell(Heat(a.NightFuelW), 0)
                    .Cell(a.NightPowerW, 0).Cell(cost.Cost, 0).Cell(cost.Cost - house.FirstCosts[0].Cost, 0).Cell(string.Join(" ", cost.WithoutPrice)).End();
            }
        }

        return table.ToString();
    }

    // Without exhaust fans nobody computed the hottest day: an empty cell, no zero.
    private static string Moved(Alternative a, double value, int decimals) =>
        a.FlowM3PerS > 0 ? value.ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture) : "";
}
