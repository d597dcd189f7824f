using Glazewright.Design.Year;

namespace Glazewright.Papers.Exchange;

/// <summary>The year of one house as data: its hourly means, in SI with the unit in each heading.</summary>
public static class YearCsv
{
    /// <summary>The year's hours.</summary>
    /// <param name="year">The house's year.</param>
    /// <returns>One row an hour of the common year in standard time: air outside, at the crop and above the curtain, what was asked, heat, exhaust air, curtains, wet wall or fog.</returns>
    public static string Hours(YearResult year)
    {
        ArgumentNullException.ThrowIfNull(year);
        HourColumns of = year.Hours;
        string[] second = of.SecondCurtainFraction is null ? [] : ["second_curtain_drawn_fraction"];
        CsvText table = new([
            "month", "day", "hour_ending", "outside_c", "inside_c", "target_c", "inside_less_target_k", "inside_rh_percent", "above_curtain_c", "heat_w", "exhaust_m3_per_s",
            "curtain_drawn_fraction", "wet_wall_or_fog_on_fraction", .. second]);
        DateTime first = new(2011, 1, 1, 0, 0, 0, DateTimeKind.Unspecified);
        for (int h = 0; h < of.InsideC.Count; h++)
        {
            DateTime at = first.AddHours(h);
            table.Cell(at.Month).Cell(at.Day).Cell(at.Hour + 1)
                .Cell(of.OutsideC[h], 1).Cell(of.InsideC[h], 1).Cell(of.TargetC[h], 1).Cell(of.DepartureK[h], 1).Cell(of.InsideRhPercent[h], 1).Cell(of.UpperC[h], 1)
                .Cell(of.HeatW[h], 0).Cell(of.AirFlowM3PerS[h], 3).Cell(of.CurtainFraction[h], 3).Cell(of.CoolingFraction[h], 3);
            if (of.SecondCurtainFraction is { } drawn)
            {
                table.Cell(drawn[h], 3);
            }

            table.End();
        }

        return table.ToString();
    }
}
