using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;

namespace Glazewright.Design.Services;

/// <summary>What electrician, gas fitter, plumber and controls technician price from. Sizes are first ones, for licensed trades to confirm.</summary>
/// <param name="Electric">Electric loads of all houses, in order.</param>
/// <param name="Power">Demand, service and generator; null without loads.</param>
/// <param name="Gas">Burners.</param>
/// <param name="GasMain">What feeds them; null without burners.</param>
/// <param name="Water">Water users.</param>
/// <param name="Supply">Their sum against the well; null without users.</param>
/// <param name="Drains">What must run off.</param>
/// <param name="Points">Controls inputs and outputs.</param>
/// <param name="Panels">Panels with their circuits, the main one first; empty without loads.</param>
/// <param name="Report">Figures and findings.</param>
public sealed record ServicesResult(
    EqList<LoadLine> Electric,
    PowerNeed? Power,
    EqList<GasLine> Gas,
    GasNeed? GasMain,
    EqList<WaterLine> Water,
    WaterNeed? Supply,
    EqList<DrainLine> Drains,
    EqList<PointLine> Points,
    EqList<PanelSchedule> Panels,
    StageReport Report)
{
    /// <summary>Where things are tapped, and the ways to them.</summary>
    public ServicePlan Plan { get; init; } = ServicePlan.None;

    /// <summary>Nothing to serve.</summary>
    public static ServicesResult None { get; } = new([], null, [], null, [], null, [], [], [], StageReport.Empty);
}

/// <summary>When a load runs: loads of summer and winter do not add up.</summary>
public enum LoadSeason
{
    /// <summary>All year.</summary>
    Always,

    /// <summary>Cooling.</summary>
    Cooling,

    /// <summary>Heating.</summary>
    Heating,

    /// <summary>While the house's exhaust fans stand still: a filter fan presses in what they would draw out, so the two are exclusive modes.</summary>
    ExhaustOff,
}

/// <summary>What kind of load a line or circuit is: the code's rules go by it.</summary>
public enum LoadKind
{
    /// <summary>A motor that may run for hours.</summary>
    Motor,

    /// <summary>A drive of louvers, curtain or vents: minutes an hour.</summary>
    ShortTimeMotor,

    /// <summary>Fixed electric heat.</summary>
    ElectricHeat,

    /// <summary>Lamps over the crop.</summary>
    GrowLamps,

    /// <summary>Work lights.</summary>
    Lights,

    /// <summary>Receptacles.</summary>
    Receptacles,

    /// <summary>Control box and sensors.</summary>
    Electronics,

    /// <summary>Fixed equipment of a head house or control room.</summary>
    Appliance,

    /// <summary>A further panel.</summary>
    Feeder,
}

/// <summary>One line of the electric load list.</summary>
/// <param name="House">Id of the house, head house, corridor or control room.</param>
/// <param name="Id">Path id.</param>
/// <param name="Label">What it is.</param>
/// <param name="Count">How many.</param>
/// <param name="RunningW">Running power each, W.</param>
/// <param name="MotorHp">Standard motor size it is taken to have, horsepower; 0 for what is no table motor.</param>
/// <param name="VoltageV">Voltage, V.</param>
/// <param name="ThreePhase">Three-phase.</param>
/// <param name="CurrentA">Current each for sizing conductors, A: by table for motors of a standard size, else running.</param>
/// <param name="ByTable">The current is from the motor table.</param>
/// <param name="StartA">Starting current each, A.</param>
/// <param name="Starting">How it starts.</param>
/// <param name="Season">When it runs.</param>
/// <param name="DemandFraction">Share counted in the demand.</param>
/// <param name="CircuitA">Least ampacity of a branch circuit of one, A.</param>
/// <param name="Backup">On the generator.</param>
/// <param name="Kind">What kind of load.</param>
public sealed record LoadLine(
    string House,
    string Id,
    string Label,
    int Count,
    double RunningW,
    double MotorHp,
    double VoltageV,
    bool ThreePhase,
    double CurrentA,
    bool ByTable,
    double StartA,
    string Starting,
    LoadSeason Season,
    double DemandFraction,
    double CircuitA,
    bool Backup,
    LoadKind Kind)
{
    /// <summary>True when the line counts in the demand of a season; what waits for the exhaust fans counts with the heating.</summary>
    /// <param name="season">Cooling or heating.</param>
    /// <returns>Whether it counts.</returns>
    public bool CountsIn(LoadSeason season) => Season == LoadSeason.Always || Season == season || (Season == LoadSeason.ExhaustOff && season == LoadSeason.Heating);

    /// <summary>Counts at 125 %: what may be on for three hours and is no motor.</summary>
    public bool Continuous => Kind is LoadKind.ElectricHeat or LoadKind.GrowLamps or LoadKind.Lights or LoadKind.Electronics or LoadKind.Appliance;

    /// <summary>Apparent power of all of the line at the sizing current, VA.</summary>
    public double SizingVa => Count * CurrentA * VoltageV * (ThreePhase ? Math.Sqrt(3) : 1);

    /// <summary>What one adds to the others while it starts, VA.</summary>
    public double StartVa => StartA * VoltageV * (ThreePhase ? Math.Sqrt(3) : 1);
}

/// <summary>Demand, service and generator of the range.</summary>
/// <param name="ConnectedW">Connected, W.</param>
/// <param name="SummerVa">Demand while cooling, VA.</param>
/// <param name="WinterVa">Demand while heating, VA.</param>
/// <param name="DemandA">Larger of both, each with a quarter of its largest motor and of what is on for hours, A.</param>
/// <param name="ServiceA">Smallest standard service that carries it, A; 0 past the table.</param>
/// <param name="HasA">Service of the lot, A.</param>
/// <param name="DropFraction">Voltage drop over the run to the pole at the demand.</param>
/// <param name="BackupW">Backup list running, W.</param>
/// <param name="BackupVa">The same, VA.</param>
/// <param name="StartVa">Most while the worst one of them starts last, VA.</param>
/// <param name="StartId">Which one.</param>
/// <param name="GeneratorVa">Smallest usual generator that carries that, VA; 0 past the list.</param>
public sealed record PowerNeed(
    double ConnectedW,
    double SummerVa,
    double WinterVa,
    double DemandA,
    double ServiceA,
    double HasA,
    double DropFraction,
    double BackupW,
    double BackupVa,
    double StartVa,
    string StartId,
    double GeneratorVa);

/// <summary>A burner.</summary>
/// <param name="House">House id.</param>
/// <param name="Id">Path id.</param>
/// <param name="Entry">Catalogue id.</param>
/// <param name="OutputW">Heat to the house, W.</param>
/// <param name="InputW">Gross fuel input, W.</param>
/// <param name="Sealed">Sealed combustion.</param>
/// <param name="AirM3PerS">Combustion air it draws, m³/s.</param>
/// <param name="Pipe">First size of its branch, nominal; empty for oil, or where no size of our table serves.</param>
public sealed record GasLine(string House, string Id, string Entry, double OutputW, double InputW, bool Sealed, double AirM3PerS, string Pipe = "");

/// <summary>Fuel for all burners.</summary>
/// <param name="Fuel">Which fuel.</param>
/// <param name="InputW">All burners on, W gross.</param>
/// <param name="FlowM3PerS">Gas, m³/s at standard conditions; liquid for oil.</param>
/// <param name="PerHour">In selling units an hour: gallons or therms.</param>
/// <param name="HasPa">Pressure at the building, Pa.</param>
/// <param name="LeastPa">What such burners ask at their inlet, Pa; 0 for oil.</param>
/// <param name="RunM">Longest run taken, m.</param>
/// <param name="PipeM">Inside diameter of the main for it, m; 0 when none serves or for oil.</param>
/// <param name="PipeName">Its nominal size.</param>
public sealed record GasNeed(
    FuelKind Fuel, double InputW, double FlowM3PerS, double PerHour, double HasPa, double LeastPa, double RunM, double PipeM, string PipeName)
{
    /// <summary>An estimate of the propane supplier's tanks; null for another fuel, where the coldest is not known, or where only a vaporiser serves.</summary>
    public PropaneTank? Tank { get; init; }
}

/// <summary>A water user.</summary>
/// <param name="House">House id.</param>
/// <param name="Id">Path id.</param>
/// <param name="Label">What it is.</param>
/// <param name="PeakM3PerS">Most it draws, m³/s.</param>
/// <param name="DayM3">On the design day, m³.</param>
/// <param name="Quality">What water it needs.</param>
/// <param name="Pipe">First size of its supply, nominal; empty where none of our table serves.</param>
public sealed record WaterLine(string House, string Id, string Label, double PeakM3PerS, double DayM3, string Quality, string Pipe = "");

/// <summary>Water against the well.</summary>
/// <param name="PeakM3PerS">All users at once, m³/s.</param>
/// <param name="DayM3">Design day, m³.</param>
/// <param name="WellM3PerS">Well or main, m³/s.</param>
/// <param name="WellDayM3">What it gives in a day, m³.</param>
/// <param name="TankM3">Tank that carries the peak hours, m³.</param>
/// <param name="Pipe">First size of the main, nominal; empty where none of our table serves.</param>
public sealed record WaterNeed(double PeakM3PerS, double DayM3, double WellM3PerS, double WellDayM3, double TankM3, string Pipe = "");

/// <summary>Water that runs off.</summary>
/// <param name="House">House id.</param>
/// <param name="Id">Path id.</param>
/// <param name="Label">What it is.</param>
/// <param name="PeakM3PerS">Most at once, m³/s.</param>
/// <param name="DayM3">On the design day, m³.</param>
/// <param name="Carries">What is in it.</param>
/// <param name="Pipe">First size of the drain, nominal; empty where none of our table serves.</param>
public sealed record DrainLine(string House, string Id, string Label, double PeakM3PerS, double DayM3, string Carries, string Pipe = "");

/// <summary>Controls points of one kind of machine or sensor.</summary>
/// <param name="House">House id, or <c>range</c>.</param>
/// <param name="Label">What is wired.</param>
/// <param name="Count">How many.</param>
/// <param name="DigitalOut">Contacts out, all of them.</param>
/// <param name="DigitalIn">Contacts in.</param>
/// <param name="AnalogIn">Measured values in.</param>
/// <param name="AnalogOut">Set values out.</param>
/// <param name="Why">What the points are.</param>
public sealed record PointLine(string House, string Label, int Count, int DigitalOut, int DigitalIn, int AnalogIn, int AnalogOut, string Why)
{
    /// <summary>Price item of the sensor; empty for a machine, whose sensors come with it.</summary>
    public string Item { get; init; } = "";
}
