using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Cuts;
using Glazewright.Design.Price;
using Glazewright.Design.Takeoff;
using Glazewright.Papers.Exchange;

namespace Glazewright.Papers.Tests.Exchange;

public class CsvTests
{
    private const double Ft = 0.3048;

    private static readonly TakeoffResult Takeoff = new(
        [new ShopMark("R-01", "tube-4x2x0.120", 19 * Ft, 26.6, 26.6, 2, 40, "A rafter-left × 2"), new ShopMark("C-01", "tube-4x2x0.120", 7.5 * Ft, 0, 26.6, 3, 16, "A column-left × 3")],
        [new SheetPiece("S-01", "polycarbonate-16-triple", "A/roof-left/cover", 4 * Ft, 19 * Ft, 2, 4 * Ft)],
        [
            new TakeoffLine(LineItems.Tube, "tube-4x2x0.120", ScopeSystem.Frame, 128, "kg", "5 pieces", ScopeBy.Us),
            new TakeoffLine("concrete/pier-concrete", "=Pier, \"concrete\"", ScopeSystem.Concrete, 0.764554857984, "m³", "A", ScopeBy.Allowance),
            new TakeoffLine("benches/top", "Bench", ScopeSystem.Benches, 10, "m²", "A", ScopeBy.Owner),
        ],
        StageReport.Empty);

    private static readonly CutsResult Cuts = CutsStage.Run(new CutsInput(UnitSystem.Us, [20 * Ft, 24 * Ft], 0.0025), Takeoff, CancellationToken.None);

    private static readonly PriceResult Price = PriceStage.Run(
        new PriceInput(new Pricing("", 58, 0.09, 0.04, 0.14, 0.05, 30, [1], []), [], 100, 10), Takeoff, Cuts, PriceBook.Generic());

    [Fact]
    public void Materials_are_in_ordering_units_with_bought_tube() => Assert.Equal(
        """"
        system,item,description,quantity,unit,by,from
        Frame,frame/tube,tube-4x2x0.120,297.0,lb,Us,"3 pieces of stock, 64.0 ft, by the cut list"
        Concrete,concrete/pier-concrete,"'=Pier, ""concrete""",1.0,yd³,Allowance,A
        Benches,benches/top,Bench,107.6,ft²,Owner,A

        """".ReplaceLineEndings("\n"),
        ShopCsv.Materials(Takeoff, Cuts, UnitSystem.Us));

    [Fact]
    public void Cuts_show_each_bar_in_saw_order()
    {
        string[] rows = ShopCsv.Cuts(Cuts, UnitSystem.Us).Split('\n');
        Assert.Equal("section,pattern,bars_cut_so,stock,order,mark,length,stop_in,pieces,drop_of_bar", rows[0]);
        Assert.Contains(rows, row => row.Contains(",R-01,\"19'-0\"\"\",228.0000,1,", StringComparison.Ordinal));
        Assert.Equal(5, rows.Skip(1).Where(r => r.StartsWith("tube", StringComparison.Ordinal)).Sum(row =>
        {
            string[] cells = row.Split(',');
            return int.Parse(cells[2], System.Globalization.CultureInfo.InvariantCulture) * int.Parse(cells[8], System.Globalization.CultureInfo.InvariantCulture);
        }));
    }

    [Fact]
    public void A_metric_shop_reads_millimetres() =>
        Assert.Contains(",5791,5791,", ShopCsv.Marks(Takeoff, UnitSystem.Metric), StringComparison.Ordinal);

    // The row's own numbers: bought is pieces, usable drops and waste.
    [Fact]
    public void The_cut_summary_adds_up()
    {
        Assert.NotEmpty(Cuts.Sections);
        string[] lines = ShopCsv.CutSummary(Cuts, UnitSystem.Us).Split('\n', StringSplitOptions.RemoveEmptyEntries);
        string[] head = lines[0].TrimEnd('\r').Split(',');
        int index = 1;
        foreach (Glazewright.Design.Cuts.SectionCuts section in Cuts.Sections)
        {
            string[] row = lines[index++].Replace($"\"{section.Section}\"", "it", StringComparison.Ordinal).Split(',');
            double Of(string name) => double.Parse(row[Array.IndexOf(head, name)], System.Globalization.CultureInfo.InvariantCulture);
            Assert.Equal(Of("bought_ft"), Of("pieces_ft") + Of("usable_drops_ft") + Of("waste_ft"), 0.02);
            Assert.Equal(Of("usable_drops_percent"), 100 * Of("usable_drops_ft") / Of("bought_ft"), 0.06);
        }
    }

    [Fact]
    public void No_money_is_in_any_table_for_the_shop()
    {
        string all = ShopCsv.Materials(Takeoff, Cuts, UnitSystem.Us) + ShopCsv.Marks(Takeoff, UnitSystem.Us) + ShopCsv.Cuts(Cuts, UnitSystem.Us) + ShopCsv.CutSummary(Cuts, UnitSystem.Us);
        Assert.DoesNotContain("cost", all.Replace("least cost", "", StringComparison.Ordinal), StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("$", all, StringComparison.Ordinal);
        Assert.DoesNotContain("margin", all, StringComparison.OrdinalIgnoreCase);
        foreach (double money in Price.Lines.Where(l => l.Cost > 0).SelectMany(l => new[] { l.Cost, l.UnitCost }))
        {
            Assert.DoesNotContain("," + money.ToString("F2", System.Globalization.CultureInfo.InvariantCulture) + ",", all, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Contractor_lines_add_up_to_the_material_and_the_steps_to_the_price()
    {
        double lines = Column(ContractorCsv.Lines(Price, UnitSystem.Us), 6);
        Assert.Equal(Price.Systems.Sum(s => s.Cost), lines, tolerance: 0.02);
        string summary = ContractorCsv.Summary(Price);
        Assert.Equal(Price.Quote.Price, Column(summary, 1), tolerance: 0.06);
        List<string>[] rows = [.. summary.Split('\n').Skip(1).Where(r => r.Length > 0).Select(Cells)];
        Assert.All(rows, r => Assert.Equal(1, r.Skip(1).Count(c => c.Length > 0)));
        double At(string step) => double.Parse(rows.Single(r => r[0].StartsWith(step, StringComparison.Ordinal)).Skip(1).Single(c => c.Length > 0), System.Globalization.CultureInfo.InvariantCulture);
        Assert.Equal(At("price"), At("direct cost") + At("overhead") + At("contingency") + At("margin"), tolerance: 0.03);
    }

    [Fact]
    public void A_metric_shop_is_told_metres() =>
        Assert.Contains("3 pieces of stock, 19.51 m, by the cut list", ShopCsv.Materials(Takeoff, Cuts, UnitSystem.Metric), StringComparison.Ordinal);

    [Fact]
    public void A_row_of_another_width_is_refused() => Assert.Throws<InvalidOperationException>(() => new CsvText("a", "b").Cell("x").End());

    private static double Column(string csv, int index) => csv.Split('\n').Skip(1).Where(r => r.Length > 0)
        .Select(row => Cells(row)[index]).Where(c => c.Length > 0).Sum(c => double.Parse(c, System.Globalization.CultureInfo.InvariantCulture));

    private static List<string> Cells(string row)
    {
        List<string> cells = [""];
        bool quoted = false;
        foreach (char c in row)
        {
            if (c == '"')
            {
                quoted = !quoted;
            }
            else if (c == ',' && !quoted)
            {
                cells.Add("");
            }
            else
            {
                cells[^1] += c;
            }
        }

        return cells;
    }
}
