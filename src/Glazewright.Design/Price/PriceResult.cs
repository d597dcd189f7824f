using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;

namespace Glazewright.Design.Price;

/// <summary>What the job costs and what is charged. Everything but <see cref="Quote"/> is the contractor's own.</summary>
/// <param name="Lines">Priced lines.</param>
/// <param name="Systems">Direct cost by system.</param>
/// <param name="LabourHours">Labour, h.</param>
/// <param name="LabourCost">Labour, money.</param>
/// <param name="DirectCost">Direct cost, money.</param>
/// <param name="Overhead">Overhead, money.</param>
/// <param name="Contingency">Contingency, money.</param>
/// <param name="Margin">Margin, money.</param>
/// <param name="MarkupTrapPrice">Price if the margin were taken as a mark-up on cost: shown as the trap.</param>
/// <param name="Quote">What the customer sees.</param>
/// <param name="Report">Figures and findings.</param>
public sealed record PriceResult(
    EqList<PricedLine> Lines,
    EqList<SystemCost> Systems,
    double LabourHours,
    double LabourCost,
    double DirectCost,
    double Overhead,
    double Contingency,
    double Margin,
    double MarkupTrapPrice,
    QuoteResult Quote,
    StageReport Report);

/// <summary>A takeoff line with its cost: contractor only.</summary>
/// <param name="Item">Price-book item.</param>
/// <param name="Label">What it is.</param>
/// <param name="System">System.</param>
/// <param name="Quantity">How much.</param>
/// <param name="Per">Unit.</param>
/// <param name="UnitCost">Money per unit.</param>
/// <param name="Cost">Money.</param>
/// <param name="LabourHours">Hours.</param>
/// <param name="By">Who supplies it; costs of others' lines are zero.</param>
/// <param name="Class">What the money buys.</param>
/// <param name="UnitHours">Own hours per unit.</param>
public sealed record PricedLine(
    string Item,
    string Label,
    ScopeSystem System,
    double Quantity,
    string Per,
    double UnitCost,
    double Cost,
    double LabourHours,
    ScopeBy By,
    PriceClass Class,
    double UnitHours);

/// <summary>Direct cost of one system: contractor only.</summary>
/// <param name="System">System.</param>
/// <param name="Cost">Material and subcontract, money.</param>
/// <param name="LabourHours">Hours.</param>
public sealed record SystemCost(ScopeSystem System, double Cost, double LabourHours);

/// <summary>What the customer sees of the price: no cost, no margin, no rate.</summary>
/// <param name="Price">Price, money.</param>
/// <param name="LowPrice">Lower end of the band.</param>
/// <param name="HighPrice">Upper end of the band.</param>
/// <param name="PricePerFloorM2">Price by floor area, money a m².</param>
/// <param name="PricePerBenchM2">Price by bench area, money a m²; 0 without benches.</param>
/// <param name="Draws">Payments, money.</param>
/// <param name="ValidDays">Days valid.</param>
/// <param name="Scope">Who supplies each system.</param>
public sealed record QuoteResult(
    double Price,
    double LowPrice,
    double HighPrice,
    double PricePerFloorM2,
    double PricePerBenchM2,
    EqList<double> Draws,
    int ValidDays,
    EqList<ScopeLine> Scope)
{
    /// <summary>When each payment is due, as printed.</summary>
    public EqList<string> Due { get; init; } = [];
}
