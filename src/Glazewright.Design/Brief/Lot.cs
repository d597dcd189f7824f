using Glazewright.Design.Contracts;

namespace Glazewright.Design.Brief;

/// <summary>The lot, in range axes (x along the ridges, y across).</summary>
/// <param name="SizeXM">Size along x, m; 0 when not given.</param>
/// <param name="SizeYM">Size along y, m; 0 when not given.</param>
/// <param name="OriginXM">x of the lot's corner nearest end 1 and the left side, m.</param>
/// <param name="OriginYM">y of that corner, m.</param>
/// <param name="SetbackEnd1M">Setback from the line before end 1, m.</param>
/// <param name="SetbackEnd2M">Setback from the line behind end 2, m.</param>
/// <param name="SetbackLeftM">Setback from the line on the left (low y), m.</param>
/// <param name="SetbackRightM">Setback from the line on the right (high y), m.</param>
/// <param name="FallFraction">Slope of the ground.</param>
/// <param name="AccessWidthM">Width a truck or lift finds, m; 0 when not given.</param>
/// <param name="Notes">Easements, flood, neighbours' windows, in words.</param>
public sealed record Lot(
    double SizeXM,
    double SizeYM,
    double OriginXM,
    double OriginYM,
    double SetbackEnd1M,
    double SetbackEnd2M,
    double SetbackLeftM,
    double SetbackRightM,
    double FallFraction,
    double AccessWidthM,
    string Notes);

/// <summary>Electric service.</summary>
public enum Phase
{
    /// <summary>Single-phase, three-wire.</summary>
    Single,

    /// <summary>Three-phase.</summary>
    Three,
}

/// <summary>Fuel at the lot.</summary>
public enum FuelKind
{
    /// <summary>Propane from a tank.</summary>
    Propane,

    /// <summary>Natural gas from a main.</summary>
    NaturalGas,

    /// <summary>Fuel oil.</summary>
    Oil,

    /// <summary>No fuel: electric heat only.</summary>
    None,
}

/// <summary>What power, gas and water the lot has.</summary>
/// <param name="Phase">Electric service.</param>
/// <param name="ServiceV">Line voltage, V.</param>
/// <param name="ServiceA">Service size, A.</param>
/// <param name="PoleDistanceM">Distance to the pole, m.</param>
/// <param name="Fuel">Fuel.</param>
/// <param name="FuelPressurePa">Fuel pressure at the building, Pa.</param>
/// <param name="WellM3PerS">Water the well or main gives, m³/s.</param>
/// <param name="WaterPressurePa">Water pressure, Pa.</param>
/// <param name="HardnessMgPerL">Hardness as CaCO₃, mg/L.</param>
/// <param name="AlkalinityMgPerL">Alkalinity as CaCO₃, mg/L.</param>
/// <param name="DrainTo">Where drain water may go, in words.</param>
public sealed record Utilities(
    Phase Phase,
    double ServiceV,
    double ServiceA,
    double PoleDistanceM,
    FuelKind Fuel,
    double FuelPressurePa,
    double WellM3PerS,
    double WaterPressurePa,
    double HardnessMgPerL,
    double AlkalinityMgPerL,
    string DrainTo)
{
    /// <summary>Where they enter the range, as far as the job says.</summary>
    public UtilityPlaces Places { get; init; } = UtilityPlaces.NotSaid;
}

/// <summary>Where power, fuel and water enter and drains leave, each null when the job does not say.</summary>
/// <param name="Power">Meter or first disconnect.</param>
/// <param name="Fuel">Outlet of the regulator at tank or meter.</param>
/// <param name="Water">Where the water line comes up.</param>
/// <param name="Drain">Where the drains leave the range.</param>
public sealed record UtilityPlaces(RangeSpot? Power, RangeSpot? Fuel, RangeSpot? Water, RangeSpot? Drain)
{
    /// <summary>The job says of none.</summary>
    public static UtilityPlaces NotSaid { get; } = new(null, null, null, null);
}

/// <summary>A place on the ground, range axes.</summary>
/// <param name="XM">Along the ridges, m.</param>
/// <param name="YM">Across, m.</param>
public sealed record RangeSpot(double XM, double YM);

/// <summary>Who enters.</summary>
public enum Visitors
{
    /// <summary>Staff only.</summary>
    StaffOnly,

    /// <summary>Customers come in.</summary>
    Customers,

    /// <summary>Pupils or tours come in.</summary>
    Pupils,
}

/// <summary>Occupancy and codes.</summary>
/// <param name="Visitors">Who enters.</param>
/// <param name="RiskCategory">Risk category, 1 to 4.</param>
/// <param name="RiskSource">Typed, or our reading of who enters.</param>
/// <param name="Authority">Authority having jurisdiction, in words.</param>
/// <param name="BuildingCode">Adopted code and edition, as typed.</param>
/// <param name="HeatedAllWinter">True when the owner keeps it heated every winter day.</param>
/// <param name="FreezeAlarm">True when a temperature alarm or attendant is always there in winter.</param>
public sealed record Occupancy(
    Visitors Visitors,
    int RiskCategory,
    Source RiskSource,
    string Authority,
    string BuildingCode,
    bool HeatedAllWinter,
    bool FreezeAlarm);

/// <summary>What energy and water cost.</summary>
/// <param name="FuelPerJoule">Fuel, money a joule of gross heat content.</param>
/// <param name="FuelShown">How it was typed or defaulted, in words (<c>2.10 $/gal propane</c>).</param>
/// <param name="PowerPerJoule">Electric energy, money a joule.</param>
/// <param name="DemandPerWattMonth">Electric demand, money a watt and month.</param>
/// <param name="WaterPerM3">Water, money a cubic metre.</param>
/// <param name="SpreadFraction">Half width of the price band the yearly cost is shown with.</param>
/// <param name="PriceDate">Date of the tariff, as typed; may be empty.</param>
/// <param name="Co2PerKg">Carbon dioxide for dosing, money a kilogram.</param>
public sealed record Tariffs(
    double FuelPerJoule,
    string FuelShown,
    double PowerPerJoule,
    double DemandPerWattMonth,
    double WaterPerM3,
    double SpreadFraction,
    string PriceDate,
    double Co2PerKg = 0);

/// <summary>How the job is priced: the contractor's own.</summary>
/// <param name="PriceBook">Name of the price book; empty for the embedded generic one.</param>
/// <param name="LabourPerHour">Labour rate, money an hour.</param>
/// <param name="OverheadFraction">Overhead on direct cost.</param>
/// <param name="ContingencyFraction">Contingency on direct cost.</param>
/// <param name="MarginOfPriceFraction">Margin as a share of the price (not a mark-up on cost).</param>
/// <param name="SalesTaxFraction">Sales tax on material.</param>
/// <param name="ValidDays">Days the quote is valid.</param>
/// <param name="DrawFractions">Payment draws; they sum to one.</param>
/// <param name="Overrides">Unit prices fixed by the job.</param>
public sealed record Pricing(
    string PriceBook,
    double LabourPerHour,
    double OverheadFraction,
    double ContingencyFraction,
    double MarginOfPriceFraction,
    double SalesTaxFraction,
    int ValidDays,
    EqList<double> DrawFractions,
    EqList<PriceOverride> Overrides)
{
    private static readonly string[] Milestones = ["signing of the contract", "delivery of the frame", "frame stands", "covered and closed", "start-up and hand-over"];

    /// <summary>When each payment is due, as printed; as many as there are draws.</summary>
    public EqList<string> DrawsDue { get; init; } = UsualDue(DrawFractions.Count);

    /// <summary>What payments usually wait for: the first for the signature, the last for the hand-over, those between for what stands by then (common practice).</summary>
    /// <param name="draws">Number of payments.</param>
    /// <returns>A milestone each, from the first to the last.</returns>
    public static EqList<string> UsualDue(int draws) => draws switch
    {
        <= 1 => Milestones.Take(draws).ToEqList(),
        _ => Enumerable.Range(0, draws).Select(i => draws <= Milestones.Length || i is 0 || i == draws - 1
            ? Milestones[(int)Math.Round((Milestones.Length - 1.0) * i / (draws - 1), MidpointRounding.AwayFromZero)]
            : "progress, by agreed milestone").ToEqList(),
    };
}

/// <summary>A unit price or an allowance fixed by the job.</summary>
/// <param name="Item">Price-book item id.</param>
/// <param name="UnitCost">Money per the item's unit.</param>
public sealed record PriceOverride(string Item, double UnitCost);
