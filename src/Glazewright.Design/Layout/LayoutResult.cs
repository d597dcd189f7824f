using Glazewright.Design.Contracts;
using Glazewright.Design.Form;

namespace Glazewright.Design.Layout;

/// <summary>What a placed thing is: papers choose its symbol by this.</summary>
public enum PlacedKind
{
    /// <summary>Exhaust fan.</summary>
    Fan,

    /// <summary>Intake louver.</summary>
    Louver,

    /// <summary>Wet wall.</summary>
    WetWall,

    /// <summary>Box before a wet wall with louvers on its face.</summary>
    IntakeBox,

    /// <summary>Heater.</summary>
    Heater,

    /// <summary>Circulation fan.</summary>
    CirculationFan,

    /// <summary>Curtain plane.</summary>
    Curtain,

    /// <summary>Fog line.</summary>
    FogLine,

    /// <summary>Filter fan.</summary>
    PressureFan,

    /// <summary>Bench.</summary>
    Bench,

    /// <summary>Aisle.</summary>
    Aisle,

    /// <summary>Sensor.</summary>
    Sensor,

    /// <summary>Lamp row.</summary>
    LampRow,

    /// <summary>Oscillating fan over the crop.</summary>
    OscillatingFan,

    /// <summary>Upper fan, above the curtain.</summary>
    UpperFan,

    /// <summary>Inlet louver of an upper fan.</summary>
    UpperLouver,

    /// <summary>Vent of a heater: the pipes outside a wall, or the pipe up through the roof.</summary>
    Vent,

    /// <summary>Framed box of insect cloth before the intake.</summary>
    ClothBox,
}

/// <summary>Where each piece of equipment of one house sits.</summary>
/// <param name="House">House id.</param>
/// <param name="Placed">The pieces.</param>
/// <param name="BenchM2">Bench area, m².</param>
/// <param name="Report">Figures and findings (conflicts).</param>
public sealed record LayoutResult(string House, EqList<PlacedItem> Placed, double BenchM2, StageReport Report)
{
    /// <summary>Vents of the fuel-burning heaters, in the heaters' order, then the boiler's.</summary>
    public EqList<FlueLine> Flues { get; init; } = [];
}

/// <summary>A placed piece: a box in the house's own axes, flat ones have one zero size.</summary>
/// <param name="Id">Path id.</param>
/// <param name="Kind">What it is.</param>
/// <param name="Label">Short label for drawings.</param>
/// <param name="Corner">Corner with the least coordinates, house axes, m.</param>
/// <param name="Size">Size along x, y, z, m.</param>
/// <param name="Face">Face it sits in, or the floor for things inside.</param>
public sealed record PlacedItem(string Id, PlacedKind Kind, string Label, Point3 Corner, Point3 Size, FaceName Face)
{
    /// <summary>A fog line across the intake, not along the house.</summary>
    public bool IsFogAtIntake { get; init; }

    /// <summary>Stands in a hole of its wall's covering.</summary>
    public bool CutsCover => Kind is PlacedKind.Fan or PlacedKind.Louver or PlacedKind.UpperFan or PlacedKind.UpperLouver or PlacedKind.WetWall;
}
