using Glazewright.Design.Contracts;
using Glazewright.Design.Document;
using Glazewright.Design.Quantities;
using Glazewright.Science.Heat;

namespace Glazewright.Design.Brief.Reading;

/// <summary>Fields of scope, tariffs and pricing.</summary>
internal static class MoneyFields
{
    private const double KWhJ = 3.6e6;

    public static ScopeLine Scope(FieldReader f) => new(
        f.Choice<ScopeSystem>("system", null, "System."),
        f.Choice<ScopeBy>("by", null, "Who supplies it: us, owner, other-trade, excluded or allowance."),
        f.Words("note", "", "What the quote says of it.", "owner digs the trenches", 200));

    public static Tariffs Tariffs(FieldReader f, Brief.FuelKind fuel)
    {
        string usual = fuel switch
        {
            Brief.FuelKind.Propane => "2.10 $/gal",
            Brief.FuelKind.NaturalGas => "1.20 $/therm",
            Brief.FuelKind.Oil => "3.60 $/gal",
            _ => "0 $/kWh",
        };
        Quantity price = f.Price("fuel", [QuantityKind.MoneyPerVolume, QuantityKind.MoneyPerEnergy], usual, "Fuel, delivered: by volume or by energy of gross heat. The default goes with the fuel.");
        return new Tariffs(
            price.Kind == QuantityKind.MoneyPerEnergy ? price.Inside / KWhJ : price.Inside / HeatJPerM3(fuel),
            $"{QuantityFormat.Number(price.Unit.FromInside(price.Inside), 6)} {price.Unit.Symbol} {FuelWords.Of(fuel)}",
            f.Quantity("power", QuantityKind.MoneyPerEnergy, "0 $/kWh", "5 $/kWh", "0.14 $/kWh", "Electric energy.") / KWhJ,
            f.Quantity("demand", QuantityKind.MoneyPerPower, "0 $/kW", "200 $/kW", "9 $/kW", "Electric demand, a month.") / 1000,
            f.Quantity("water", QuantityKind.MoneyPerVolume, "0 $/kgal", "200 $/kgal", "6 $/kgal", "Water."),
            f.Fraction("spread", "0 %", "100 %", "20 %", "Half width of the band that the yearly cost is shown with."),
            f.Words("priceDate", "", "Date of these prices.", "2027-02", 40),
            f.Quantity("co2", QuantityKind.Money, "0 $", "100 $", "0.30 $", "Carbon dioxide for dosing, a kilogram."));
    }

    public static Pricing Pricing(FieldReader f)
    {
        string book = f.Words("book", "", "Name of the price book; left out, the embedded generic one with invented prices.", "yard-2027", 80);
        double labour = f.Quantity("labour", QuantityKind.MoneyPerTime, "1 $/h", "1000 $/h", "58 $/h", "Labour rate, burden included.");
        double overhead = f.Fraction("overhead", "0 %", "100 %", "9 %", "Overhead on direct cost.");
        double contingency = f.Fraction("contingency", "0 %", "100 %", "4 %", "Contingency on direct cost.");
        double margin = f.Fraction("margin", "0 %", "80 %", "14 %", "Margin as a share of the price, not a mark-up on cost.");
        double tax = f.Fraction("salesTax", "0 %", "30 %", "0 %", "Sales tax on material.");
        int validDays = f.Whole("validDays", 1, 365, 30, "Days the quote is valid.");
        int before = f.FaultCount;
        EqList<double> draws = f.Quantities("draws", QuantityKind.Fraction, "0 %", "100 %", 1, 12, ["20 %", "25 %", "25 %", "20 %", "10 %"], "Payment draws; together 100 %.");
        if (f.FaultCount == before && Math.Abs(draws.Sum() - 1) > 1e-6)
        {
            f.Add(FaultKind.Contradiction, "draws", $"the draws come to {QuantityFormat.Number(100 * draws.Sum(), 6)} %", "draws that come to 100 %");
        }

        string due = f.Words("due", "", "When the payments are due, in their order, parted by semicolons; left out, from the signing of the contract by what stands to the hand-over.", "signing; delivery of the frame; frame stands; covered and closed; start-up and hand-over", 600);
        EqList<string> each = due.Split(';', StringSplitOptions.TrimEntries).Where(d => d.Length > 0).ToEqList();
        if (f.FaultCount == before && each.Count > 0 && each.Count != draws.Count)
        {
            f.Add(FaultKind.Contradiction, "due", FormattableString.Invariant($"{each.Count} due, {draws.Count} payments"), "as many as there are draws, parted by semicolons");
        }

        EqList<PriceOverride> overrides = f.Several("overrides", 0, 400, "the price book holds", "Unit prices fixed by the job.", o => new PriceOverride(
            o.Words("item", null, "Item of the price book.", "slab", 80),
            o.Quantity("unitCost", QuantityKind.Money, "0 $", "10000000 $", null, "Money per the item's unit.")));
        return new Pricing(book, labour, overhead, contingency, margin, tax, validDays, draws, overrides)
        {
            DrawsDue = each.Count > 0 ? each : Brief.Pricing.UsualDue(draws.Count),
        };
    }

    private static double HeatJPerM3(Brief.FuelKind fuel) => fuel switch
    {
        Brief.FuelKind.Propane => Fuel.HeatJPerUnit(Science.Heat.FuelKind.PropaneGallon) / UnitTable.GallonM3,
        Brief.FuelKind.Oil => Fuel.HeatJPerUnit(Science.Heat.FuelKind.FuelOilGallon) / UnitTable.GallonM3,
        _ => Fuel.NaturalGasJPerM3,
    };
}
