using Glazewright.Design.Contracts;

namespace Glazewright.Design.Brief;

/// <summary>The brief, read and checked as a whole: it exists only when the document has no faults. SI inside.</summary>
/// <param name="Name">Name of the job, as on the title block.</param>
/// <param name="Revision">Revision mark; empty for none.</param>
/// <param name="Date">Date of the papers, as typed (ISO); empty prints "undated draft".</param>
/// <param name="Units">Which units people read.</param>
/// <param name="Datum">What dimensions are measured to.</param>
/// <param name="Site">Where, and what the sky and the ground do there.</param>
/// <param name="Lot">The piece of land and its limits.</param>
/// <param name="Utilities">What power, gas and water the lot has.</param>
/// <param name="Occupancy">Who enters and under which codes.</param>
/// <param name="Band">What counts as held.</param>
/// <param name="Houses">Greenhouses, in the order typed.</param>
/// <param name="Links">Corridors, head house, control room.</param>
/// <param name="Scope">Who supplies what.</param>
/// <param name="Tariffs">What energy and water cost.</param>
/// <param name="Pricing">How the job is priced.</param>
public sealed record Job(
    string Name,
    string Revision,
    string Date,
    UnitSystem Units,
    Datum Datum,
    Site Site,
    Lot Lot,
    Utilities Utilities,
    Occupancy Occupancy,
    HeldBand Band,
    EqList<House> Houses,
    EqList<LinkBuilding> Links,
    EqList<ScopeLine> Scope,
    Tariffs Tariffs,
    Pricing Pricing)
{
    /// <summary>Paper of the drawing sheets.</summary>
    public SheetPaper Sheets { get; init; }

    /// <summary>Who the papers are from and for.</summary>
    public Parties Parties { get; init; } = Parties.None;
}

/// <summary>Who the papers are from and for, as printed; empty where not given.</summary>
/// <param name="Contractor">Who designs, builds and quotes.</param>
/// <param name="Customer">Who it is built for.</param>
/// <param name="Address">Address of the job.</param>
/// <param name="Number">Number of the job or quote.</param>
public sealed record Parties(string Contractor, string Customer, string Address, string Number)
{
    /// <summary>Nobody named.</summary>
    public static Parties None { get; } = new("", "", "", "");
}

/// <summary>Paper of drawing sheets, in the size that goes with the job's units.</summary>
public enum SheetPaper
{
    /// <summary>ANSI B, or A3 in metric jobs.</summary>
    Small,

    /// <summary>ANSI D, or A1 in metric jobs.</summary>
    Large,
}

/// <summary>What a plan dimension is measured to.</summary>
public enum PlanDatum
{
    /// <summary>Outside face of the steel, both sides.</summary>
    OutToOutOfSteel,

    /// <summary>Outside face of the covering, both sides.</summary>
    OutToOutOfCovering,

    /// <summary>Clear between the inside faces.</summary>
    ClearInside,
}

/// <summary>What a height is measured from.</summary>
public enum HeightDatum
{
    /// <summary>Finished floor.</summary>
    FinishedFloor,

    /// <summary>Top of the pier.</summary>
    TopOfPier,

    /// <summary>Outside grade.</summary>
    Grade,
}

/// <summary>What an eave height is measured to.</summary>
public enum EaveDatum
{
    /// <summary>Top of the steel at the eave.</summary>
    TopOfSteel,

    /// <summary>Under the gutter.</summary>
    UnderGutter,
}

/// <summary>The datum of each dimension of the job: wrong here is every cut wrong.</summary>
/// <param name="Plan">Widths and lengths.</param>
/// <param name="Heights">Where heights start.</param>
/// <param name="Eave">Where eave heights end.</param>
public sealed record Datum(PlanDatum Plan, HeightDatum Heights, EaveDatum Eave);

/// <summary>What counts as held.</summary>
/// <param name="TemperatureK">Half width of the temperature band, K.</param>
/// <param name="HumidityPercent">Half width of the humidity band, % RH.</param>
/// <param name="VpdKPa">Half width of the band where a vapour pressure deficit is asked, kPa.</param>
public sealed record HeldBand(double TemperatureK, double HumidityPercent, double VpdKPa = 0.18);

/// <summary>Who supplies or does a thing.</summary>
public enum ScopeBy
{
    /// <summary>In our price.</summary>
    Us,

    /// <summary>By the owner.</summary>
    Owner,

    /// <summary>By another trade under its own contract.</summary>
    OtherTrade,

    /// <summary>Not part of the job at all.</summary>
    Excluded,

    /// <summary>In our price as an allowance, settled later.</summary>
    Allowance,
}

/// <summary>The systems a scope line can speak of.</summary>
public enum ScopeSystem
{
    /// <summary>Clearing, grading, gravel, drainage.</summary>
    Sitework,

    /// <summary>Piers, slab, walks.</summary>
    Concrete,

    /// <summary>Tube frame.</summary>
    Frame,

    /// <summary>Glazing sheets, profiles and screws.</summary>
    Glazing,

    /// <summary>Insulated panels and trim.</summary>
    Panels,

    /// <summary>Doors and windows.</summary>
    Doors,

    /// <summary>Fans, louvers, wet wall, fog, filter fan.</summary>
    Cooling,

    /// <summary>Heaters, boiler, pipe.</summary>
    Heating,

    /// <summary>Curtain and drive.</summary>
    Curtain,

    /// <summary>Circulation fans and lamps.</summary>
    AirAndLamps,

    /// <summary>Control box, sensors, low voltage.</summary>
    Controls,

    /// <summary>Power wiring.</summary>
    Electrical,

    /// <summary>Water, drain, gas.</summary>
    Plumbing,

    /// <summary>Benches.</summary>
    Benches,

    /// <summary>Permits and engineer.</summary>
    Permits,

    /// <summary>Mobilising, lifts, freight, cleaning up.</summary>
    General,
}

/// <summary>Who supplies one system.</summary>
/// <param name="System">The system.</param>
/// <param name="By">Who.</param>
/// <param name="Note">What the quote says of it; may be empty.</param>
public sealed record ScopeLine(ScopeSystem System, ScopeBy By, string Note);
