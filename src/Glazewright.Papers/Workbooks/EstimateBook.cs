using System.Globalization;
using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Price;
using Glazewright.Papers.Exchange;
using Glazewright.Papers.Sets;

namespace Glazewright.Papers.Workbooks;

/// <summary>The contractor's own estimate as a workbook that goes on calculating: change a quantity, a unit price or a rate, and price and payments follow.</summary>
public static class EstimateBook
{
    private const string Lines = "Lines";
    private const int FirstLine = 3;

    /// <summary>The workbook.</summary>
    /// <param name="source">What the papers are made from.</param>
    /// <returns>Bytes of an xlsx file. It holds cost, margin and rates: for the contractor's own set alone.</returns>
    public static byte[] Bytes(PaperSource source)
    {
        ArgumentNullException.ThrowIfNull(source);
        string name = source.Job.Name.Length > 0 ? source.Job.Name : "Unnamed job";
        IReadOnlyList<PricedLine> lines = source.Price.Lines;
        return BookWriter.Bytes([Price(source, name), LineSheet(lines, source.Job.Units)]);
    }

    private static BookSheet LineSheet(IReadOnlyList<PricedLine> lines, UnitSystem units)
    {
        List<IReadOnlyList<BookCell>> rows =
        [
            [BookCell.Text("Blue cells are yours to change. Ours: 1 counts a line, 0 leaves it out (by others).", CellLook.Note)],
            [.. new[] { "System", "Item", "Description", "Quantity", "Unit", "Unit cost", "Hours per unit", "Class", "Ours", "Cost", "Hours" }.Select(h => BookCell.Text(h, CellLook.Head))],
        ];
        foreach (PricedLine line in lines)
        {
            (double quantity, string per) = Measure.Of(line.Quantity, line.Per, units);
            double shown = quantity == 0 ? 1 : line.Quantity / quantity;
            double ours = Purchases.IsOurs(line.By) ? 1 : 0;
            int row = rows.Count + 1;
            rows.Add(
            [
                BookCell.Text(line.System.ToString()), BookCell.Text(line.Item), BookCell.Text(line.Label), BookCell.Of(quantity, CellLook.Given), BookCell.Text(per),
                BookCell.Of(line.UnitCost * shown, CellLook.GivenMoney), BookCell.Of(line.UnitHours * shown, CellLook.Given), BookCell.Text(line.Class.ToString()), BookCell.Of(ours, CellLook.Count),
                BookCell.Computed(At("I{0}*D{0}*F{0}", row), ours * line.Quantity * line.UnitCost, CellLook.Money),
                BookCell.Computed(At("I{0}*D{0}*G{0}", row), ours * line.Quantity * line.UnitHours, CellLook.Hours),
            ]);
        }

        return new BookSheet(Lines, [16, 26, 52, 12, 8, 12, 14, 13, 7, 14, 10], 2, rows);
    }

    private static BookSheet Price(PaperSource source, string name)
    {
        Pricing pricing = source.Job.Pricing;
        IReadOnlyList<PricedLine> lines = source.Price.Lines;
        int last = Math.Max(FirstLine, FirstLine + lines.Count - 1);
        string column(string letter) => string.Create(CultureInfo.InvariantCulture, $"{Lines}!${letter}${FirstLine}:${letter}${last}");
        double CostOf(PricedLine l) => Purchases.IsOurs(l.By) ? l.Quantity * l.UnitCost : 0;
        double HoursOf(PricedLine l) => Purchases.IsOurs(l.By) ? l.Quantity * l.UnitHours : 0;

        List<IReadOnlyList<BookCell>> rows =
        [
            [BookCell.Text(name + ": estimate", CellLook.Title)],
            [BookCell.Text("The contractor's own: cost, rates and margin. Blue cells are yours to change; everything else follows.", CellLook.Note)],
            [],
            Head("Given", ""),
        ];
        int labourRate = Given("Labour, an hour", pricing.LabourPerHour, CellLook.GivenMoney);
        int taxShare = Given("Sales tax on material", pricing.SalesTaxFraction, CellLook.GivenShare);
        int overheadShare = Given("Overhead, of direct cost", pricing.OverheadFraction, CellLook.GivenShare);
        int contingencyShare = Given("Contingency, of direct cost", pricing.ContingencyFraction, CellLook.GivenShare);
        int marginShare = Given("Margin, share of the price", pricing.MarginOfPriceFraction, CellLook.GivenShare);
        double spread = source.Price.Report.Figures.FirstOrDefault(f => f.Id == "price/spread")?.Value ?? 0;
        int spreadShare = Given("Half width of the price band", spread, CellLook.GivenShare);
        rows.Add([]);
        rows.Add(Head("System", "Material and subcontract", "Own hours"));
        int firstSystem = rows.Count + 1;
        double materialSum = 0;
        double hoursSum = 0;
        foreach (ScopeSystem system in lines.Select(l => l.System).Distinct().Order())
        {
            double cost = lines.Where(l => l.System == system).Sum(CostOf);
            double hours = lines.Where(l => l.System == system).Sum(HoursOf);
            (materialSum, hoursSum) = (materialSum + cost, hoursSum + hours);
            int row = rows.Count + 1;
            rows.Add(
            [
                BookCell.Text(system.ToString()),
                BookCell.Computed(At($"SUMIF({column("A")},A{{0}},{column("J")})", row), cost, CellLook.Money),
                BookCell.Computed(At($"SUMIF({column("A")},A{{0}},{column("K")})", row), hours, CellLook.Hours),
            ]);
        }

        int lastSystem = Math.Max(firstSystem, rows.Count);
        int systems = rows.Count + 1;
        rows.Add(
        [
            BookCell.Text("All systems", CellLook.Total),
            BookCell.Computed(string.Create(CultureInfo.InvariantCulture, $"SUM(B{firstSystem}:B{lastSystem})"), materialSum, CellLook.TotalMoney),
            BookCell.Computed(string.Create(CultureInfo.InvariantCulture, $"SUM(C{firstSystem}:C{lastSystem})"), hoursSum, CellLook.Total),
        ]);
        rows.Add([]);
        rows.Add(Head("From cost to price", "Money"));
        double labour = hoursSum * pricing.LabourPerHour;
        int labourRow = Step("Own labour", $"C{systems}*B{labourRate}", labour);
        double taxed = lines.Where(l => l.Class == PriceClass.Material).Sum(CostOf);
        double tax = taxed * pricing.SalesTaxFraction;
        int taxRow = Step("Sales tax on material lines", $"SUMIF({column("H")},\"{PriceClass.Material}\",{column("J")})*B{taxShare}", tax);
        double direct = materialSum + labour + tax;
        int directRow = Step("Direct cost", $"B{systems}+B{labourRow}+B{taxRow}", direct, total: true);
        int overheadRow = Step("Overhead", $"B{directRow}*B{overheadShare}", direct * pricing.OverheadFraction);
        int contingencyRow = Step("Contingency", $"B{directRow}*B{contingencyShare}", direct * pricing.ContingencyFraction);
        double whole = direct * (1 + pricing.OverheadFraction + pricing.ContingencyFraction);
        int costRow = Step("Cost", $"B{directRow}+B{overheadRow}+B{contingencyRow}", whole, total: true);
        double price = whole / (1 - pricing.MarginOfPriceFraction);
        int priceRow = Step("Price", $"B{costRow}/(1-B{marginShare})", price, total: true);
        Step("Margin", $"B{priceRow}-B{costRow}", price - whole);
        Step("Trap: the same percentage as a mark-up on cost would charge only", $"B{costRow}*(1+B{marginShare})", whole * (1 + pricing.MarginOfPriceFraction));
        Step("Lower end of the band", $"B{priceRow}*(1-B{spreadShare})", price * (1 - spread));
        Step("Upper end of the band", $"B{priceRow}*(1+B{spreadShare})", price * (1 + spread));
        rows.Add([]);
        rows.Add(Head("Payments", "Money", "Share of the price"));
        for (int i = 0; i < pricing.DrawFractions.Count; i++)
        {
            int row = rows.Count + 1;
            rows.Add(
            [
                BookCell.Text(string.Create(CultureInfo.InvariantCulture, $"Payment {i + 1}")),
                BookCell.Computed(At($"B{priceRow}*C{{0}}", row), price * pricing.DrawFractions[i], CellLook.Money),
                BookCell.Of(pricing.DrawFractions[i], CellLook.GivenShare),
            ]);
        }

        return new BookSheet("Price", [60, 24, 20], 0, rows);

        static IReadOnlyList<BookCell> Head(params string[] words) => [.. words.Select(w => BookCell.Text(w, CellLook.Head))];

        int Given(string label, double value, CellLook look)
        {
            rows.Add([BookCell.Text(label), BookCell.Of(value, look)]);
            return rows.Count;
        }

        int Step(string label, FormattableString formula, double value, bool total = false)
        {
            rows.Add(
            [
                BookCell.Text(label, total ? CellLook.Total : CellLook.Text),
                BookCell.Computed(FormattableString.Invariant(formula), value, total ? CellLook.TotalMoney : CellLook.Money),
            ]);
            return rows.Count;
        }
    }

    private static string At(string formula, int row) => string.Format(CultureInfo.InvariantCulture, formula, row);
}
