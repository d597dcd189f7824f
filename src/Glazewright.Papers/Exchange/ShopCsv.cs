using Glazewright.Design.Contracts;
using Glazewright.Design.Cuts;
using Glazewright.Design.Price;
using Glazewright.Design.Takeoff;

namespace Glazewright.Papers.Exchange;

/// <summary>
/// Tables for the shop, the crew and other trades: quantities, marks and cuts. They are made from Takeoff and Cuts alone, whose records hold no
/// cost: none can slip in.
/// </summary>
public static class ShopCsv
{
    /// <summary>Everything to buy or make, by system; tube and sheet as the cut lists buy them.</summary>
    /// <param name="takeoff">Takeoff.</param>
    /// <param name="cuts">Cut lists.</param>
    /// <param name="units">Units people order in.</param>
    /// <returns>The table.</returns>
    public static string Materials(TakeoffResult takeoff, CutsResult cuts, UnitSystem units)
    {
        CsvText csv = new("system", "item", "description", "quantity", "unit", "by", "from");
        foreach (TakeoffLine line in Purchases.Of(takeoff, cuts, units))
        {
            (double quantity, string per) = Measure.Of(line.Quantity, line.Per, units);
            csv.Cell(line.System.ToString()).Cell(line.Item).Cell(line.Label).Cell(quantity, per is "each" or "load" or "day" ? (quantity % 1 == 0 ? 0 : 2) : 1)
                .Cell(per).Cell(line.By.ToString()).Cell(line.From).End();
        }

        return csv.ToString();
    }

    /// <summary>What is ordered first: things of long lead, the longest first.</summary>
    /// <param name="takeoff">Takeoff.</param>
    /// <param name="cuts">Cut lists.</param>
    /// <param name="units">Units people order in.</param>
    /// <returns>The table; weeks are common practice.</returns>
    public static string Orders(TakeoffResult takeoff, CutsResult cuts, UnitSystem units)
    {
        CsvText csv = new("item", "description", "quantity", "unit", "least_weeks", "most_weeks", "waits_for", "from");
        foreach (OrderLine o in OrderList.Of(Purchases.Of(takeoff, cuts, units)))
        {
            (double quantity, string per) = Measure.Of(o.Quantity, o.Per, units);
            csv.Cell(o.Item).Cell(o.Label).Cell(quantity, per is "each" or "load" or "day" ? (quantity % 1 == 0 ? 0 : 2) : 1).Cell(per)
                .Cell(o.LeastWeeks).Cell(o.MostWeeks).Cell(o.WaitsFor).Cell(o.From).End();
        }

        return csv.ToString();
    }

    /// <summary>Shop marks of the frame and of sheets and panels.</summary>
    /// <param name="takeoff">Takeoff.</param>
    /// <param name="units">Units of the shop.</param>
    /// <returns>The table; mass is of tube only.</returns>
    public static string Marks(TakeoffResult takeoff, UnitSystem units)
    {
        CsvText csv = new("mark", "section", "length", "stop_" + StopUnit(units), "saw_angle_a_deg", "saw_angle_b_deg", "width", "count", "mass_each_" + (units == UnitSystem.Us ? "lb" : "kg"), "where");
        foreach (ShopMark mark in takeoff.Marks)
        {
            csv.Cell(mark.Mark).Cell(mark.Section).Cell(Measure.Length(mark.LengthM, units)).Cell(Measure.Stop(mark.LengthM, units), StopDecimals(units))
                .Cell(mark.AngleADeg, 1).Cell(mark.AngleBDeg, 1).Cell("").Cell(mark.Count).Cell(Measure.Mass(mark.MassEachKg, units), 1).Cell(mark.Where).End();
        }

        foreach (SheetPiece piece in takeoff.Sheets)
        {
            csv.Cell(piece.Mark).Cell(piece.CoverKind).Cell(Measure.Length(piece.LengthM, units)).Cell(Measure.Stop(piece.LengthM, units), StopDecimals(units))
                .Cell(0, 1).Cell(0, 1).Cell(Measure.Length(piece.TrimmedWidthM, units)).Cell(piece.Count).Cell("").Cell(piece.Zone).End();
        }

        return csv.ToString();
    }

    /// <summary>Cut list: one row a run of equal pieces on a bar, in the order of the saw.</summary>
    /// <param name="cuts">Cut lists.</param>
    /// <param name="units">Units of the shop.</param>
    /// <returns>The table; the n − 1 kerf rule and squared ends are named in the summary.</returns>
    public static string Cuts(CutsResult cuts, UnitSystem units)
    {
        CsvText csv = new("section", "pattern", "bars_cut_so", "stock", "order", "mark", "length", "stop_" + StopUnit(units), "pieces", "drop_of_bar");
        foreach (SectionCuts section in cuts.Sections)
        {
            for (int p = 0; p < section.Patterns.Count; p++)
            {
                BarPattern pattern = section.Patterns[p];
                int order = 0;
                for (int i = 0; i < pattern.Pieces.Count;)
                {
                    CutPiece piece = pattern.Pieces[i];
                    int run = 1;
                    while (i + run < pattern.Pieces.Count && pattern.Pieces[i + run] == piece)
                    {
                        run++;
                    }

                    csv.Cell(section.Section).Cell(p + 1).Cell(pattern.Times).Cell(Measure.Length(pattern.StockM, units)).Cell(++order).Cell(piece.Mark)
                        .Cell(Measure.Length(piece.LengthM, units)).Cell(Measure.Stop(piece.LengthM, units), StopDecimals(units)).Cell(run)
                        .Cell(Measure.Length(pattern.DropM, units)).End();
                    i += run;
                }
            }
        }

        return csv.ToString();
    }

    /// <summary>One row a section: what is bought, and where it goes (pieces, drops long enough for the rack, waste: kerf, squared ends, shorter drops), and what no list could beat.</summary>
    /// <param name="cuts">Cut lists.</param>
    /// <param name="units">Units people order in.</param>
    /// <returns>The table.</returns>
    public static string CutSummary(CutsResult cuts, UnitSystem units)
    {
        string per = units == UnitSystem.Us ? "ft" : "m";
        CsvText csv = new("section", "bars", "bought_" + per, "pieces_" + per, "usable_drops_" + per, "waste_" + per, "usable_drops_percent", "waste_percent", "objective_" + per, "bound_" + per, "proved_best", "objective_counts", "kerf_rule");
        foreach (SectionCuts section in cuts.Sections)
        {
            csv.Cell(section.Section).Cell(section.Bars).Cell(Length(section.Patterns.Sum(p => p.Times * p.StockM)), 2)
                .Cell(Length(section.Patterns.Sum(p => p.Times * p.Pieces.Sum(piece => piece.LengthM))), 2)
                .Cell(Length(section.UsableDropM), 2).Cell(Length(section.WasteFraction * BoughtM(section)), 2).Cell(BoughtM(section) > 0 ? 100 * section.UsableDropM / BoughtM(section) : 0, 1).Cell(section.WasteFraction * 100, 1)
                .Cell(Length(section.Objective), 2).Cell(Length(section.Bound), 2).Cell(section.Proven ? "yes" : "no").Cell(section.ObjectiveIs)
                .Cell("n - 1 kerfs: the saw passes between pieces").End();
        }

        return csv.ToString();

        double Length(double lengthM) => Measure.Of(lengthM, "m", units).Quantity;
        static double BoughtM(SectionCuts section) => section.Patterns.Sum(p => p.Times * p.StockM);
    }

    private static string StopUnit(UnitSystem units) => units == UnitSystem.Us ? "in" : "mm";

    private static int StopDecimals(UnitSystem units) => units == UnitSystem.Us ? 4 : 0;
}
