using Glazewright.Design.Contracts;
using Glazewright.Design.Form;

namespace Glazewright.Design.Brief;

/// <summary>One greenhouse.</summary>
/// <param name="Id">Short id, letters and digits.</param>
/// <param name="Name">Name as printed.</param>
/// <param name="OriginXM">x of the corner end 1 / left in range axes, m.</param>
/// <param name="OriginYM">y of that corner, m.</param>
/// <param name="WidthM">Across the ridge, m.</param>
/// <param name="LengthM">Along the ridge, m.</param>
/// <param name="Roof">The roof, solved.</param>
/// <param name="BayCount">Number of bays.</param>
/// <param name="PonyWallM">Height of the pony wall, m; 0 for none.</param>
/// <param name="Coverings">What covers each face; one entry a face, pony wall apart.</param>
/// <param name="PonyWallCovering">Covering of the pony wall.</param>
/// <param name="Openings">Doors, windows, vents and the openings for fans, louvers and wet wall typed by the user.</param>
/// <param name="Frame">Frame choices.</param>
/// <param name="Equipment">Equipment choices, each fixed or to be sized.</param>
/// <param name="Benches">Bench runs.</param>
/// <param name="MainAisleM">Width of the main aisle, m.</param>
/// <param name="Schedule">Crop schedule; covers the whole year.</param>
/// <param name="AirtightnessPerHour">Air changes by leakage at 4 m/s and small temperature difference, 1/h.</param>
/// <param name="EdgeInsulated">True when the slab edge is insulated.</param>
/// <param name="ShapeWishes">Wishes of its shape, for the shape finder; null when none are typed.</param>
public sealed record House(
    string Id,
    string Name,
    double OriginXM,
    double OriginYM,
    double WidthM,
    double LengthM,
    RoofProfile Roof,
    int BayCount,
    double PonyWallM,
    EqList<FaceCovering> Coverings,
    CoverChoice PonyWallCovering,
    EqList<Opening> Openings,
    FrameChoice Frame,
    EquipmentChoice Equipment,
    EqList<Bench> Benches,
    double MainAisleM,
    EqList<CropPeriod> Schedule,
    double AirtightnessPerHour,
    bool EdgeInsulated,
    ShapeWishes? ShapeWishes = null)
{
    /// <summary>Values of its control program that the technician changes.</summary>
    public EqList<ProgramChange> ProgramChanges { get; init; } = [];
}

/// <summary>A covering by name from the generic list, with its choices.</summary>
/// <param name="Kind">Id of the cover kind (<c>polycarbonate-16-triple</c>, <c>panel-76</c>, <c>glass-4</c> …).</param>
/// <param name="DirtFactor">Light kept after dirt, 0.7 to 1.</param>
/// <param name="AgeingFactor">Light kept after ageing, 0.7 to 1.</param>
/// <param name="InsideReflectanceFraction">Inside reflectance of an opaque covering.</param>
/// <param name="CondensationFactor">Light kept behind drops on the inner face, all year, 0.8 to 1.</param>
public sealed record CoverChoice(string Kind, double DirtFactor, double AgeingFactor, double InsideReflectanceFraction, double CondensationFactor = 1);

/// <summary>What covers one face.</summary>
/// <param name="Face">The face.</param>
/// <param name="Cover">The covering.</param>
public sealed record FaceCovering(FaceName Face, CoverChoice Cover);

/// <summary>Kinds of openings.</summary>
public enum OpeningKind
{
    /// <summary>One leaf.</summary>
    Door,

    /// <summary>Two leaves.</summary>
    DoubleDoor,

    /// <summary>Window.</summary>
    Window,

    /// <summary>Exhaust fan.</summary>
    Fan,

    /// <summary>Motor louver.</summary>
    Louver,

    /// <summary>Roof or side vent.</summary>
    Vent,

    /// <summary>Evaporative pad.</summary>
    WetWall,

    /// <summary>Curtain of slats that rolls up over its opening and runs in guides beside it.</summary>
    RollUpDoor,

    /// <summary>Leaf that hangs from a track over its opening and slides aside before the wall.</summary>
    SlidingDoor,
}

/// <summary>What kinds of openings have in common.</summary>
public static class OpeningKinds
{
    /// <summary>Whether people or carts go through it.</summary>
    /// <param name="kind">Kind.</param>
    public static bool IsDoor(this OpeningKind kind) => kind is OpeningKind.Door or OpeningKind.DoubleDoor or OpeningKind.RollUpDoor or OpeningKind.SlidingDoor;

    /// <summary>Whether its place is fixed by the job alone: doors, windows and vents.</summary>
    /// <param name="kind">Kind.</param>
    public static bool IsTyped(this OpeningKind kind) => kind.IsDoor() || kind is OpeningKind.Window or OpeningKind.Vent;
}

/// <summary>An opening in a face. Along a side wall u runs with x from end 1; along an end wall with y from the left; up a roof v runs along the slope from the eave.</summary>
/// <param name="Id">Id, unique in the house.</param>
/// <param name="Kind">Kind.</param>
/// <param name="Face">Face.</param>
/// <param name="OffsetM">u of its nearer edge, m.</param>
/// <param name="SillM">v of its lower edge, m.</param>
/// <param name="WidthM">Size along u, m.</param>
/// <param name="HeightM">Size along v, m.</param>
/// <param name="Exit">True for a way out.</param>
public sealed record Opening(
    string Id, OpeningKind Kind, FaceName Face, double OffsetM, double SillM, double WidthM, double HeightM, bool Exit)
{
    /// <summary>What a roll-up or sliding door hangs on its header, kg: curtain and coil, or leaf and track; null for the usual weight of its size.</summary>
    public double? HungKg { get; init; }
}

/// <summary>Frame choices.</summary>
/// <param name="RafterSection">Section name (<c>tube-4x2x0.120</c>); empty to size it.</param>
/// <param name="ColumnSection">Section name; empty to size it.</param>
/// <param name="PurlinSection">Section name; empty to size it.</param>
/// <param name="CollarTieHeightM">Height of a collar tie, m; 0 for none.</param>
/// <param name="FixedBase">True for columns cast in piers taken as fixed; false for pinned.</param>
/// <param name="PurlinSpacingM">Greatest purlin spacing along the slope, m.</param>
/// <param name="YieldPa">Yield strength of the tube, Pa.</param>
/// <param name="CollateralPa">Allowance for hung equipment, Pa on plan.</param>
/// <param name="CropLoadPa">Hung crop, Pa on plan.</param>
/// <param name="StockLengthsM">Stock lengths of tube, m.</param>
/// <param name="KerfM">Saw kerf, m.</param>
/// <param name="PierDiameterM">Pier diameter, m.</param>
/// <param name="PierDepthM">Pier depth, m.</param>
public sealed record FrameChoice(
    string RafterSection,
    string ColumnSection,
    string PurlinSection,
    double CollarTieHeightM,
    bool FixedBase,
    double PurlinSpacingM,
    double YieldPa,
    double CollateralPa,
    double CropLoadPa,
    EqList<double> StockLengthsM,
    double KerfM,
    double PierDiameterM,
    double PierDepthM);

/// <summary>A run of benches along x, on the floor plan.</summary>
/// <param name="Id">Id.</param>
/// <param name="OffsetYM">y of its nearer edge from the left wall, m.</param>
/// <param name="WidthM">Width, m.</param>
/// <param name="StartXM">Start from end 1, m.</param>
/// <param name="LengthM">Length, m.</param>
/// <param name="HeightM">Height of the top, m.</param>
public sealed record Bench(string Id, double OffsetYM, double WidthM, double StartXM, double LengthM, double HeightM);
