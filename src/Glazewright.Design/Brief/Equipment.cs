using Glazewright.Design.Contracts;

namespace Glazewright.Design.Brief;

/// <summary>A number of one catalogue entry.</summary>
/// <param name="Entry">Catalogue id.</param>
/// <param name="Count">How many.</param>
public sealed record FixedItem(string Entry, int Count);

/// <summary>Equipment the house has, each system absent, to be sized, or fixed. Fixed items say so; an empty list with the system wanted means "size it".</summary>
/// <param name="Exhaust">Exhaust fans wanted.</param>
/// <param name="ExhaustFixed">Fans fixed by the job.</param>
/// <param name="FanFace">End wall with the fans; the intake is on the other end.</param>
/// <param name="FanFaceSource">Typed, or our choice of the lee end.</param>
/// <param name="ShadeFraction">Shade of the covering or curtain counted when fans are sized, 0 to 1.</param>
/// <param name="TemperatureRiseK">Rise allowed from intake to fans, K.</param>
/// <param name="WetWall">Wet wall wanted.</param>
/// <param name="WetWallEntry">Catalogue id of the pad; empty to choose.</param>
/// <param name="WetWallWidthM">Pad width fixed, m; 0 to size.</param>
/// <param name="WetWallHeightM">Pad height fixed, m; 0 to size.</param>
/// <param name="Fog">Fog wanted.</param>
/// <param name="FogEntry">Catalogue id; empty to choose.</param>
/// <param name="FogNozzles">Nozzles fixed; 0 to size.</param>
/// <param name="Heaters">Heaters wanted.</param>
/// <param name="HeatersFixed">Heaters fixed by the job.</param>
/// <param name="BenchPipeW">Hot-water pipe under the benches, W output; 0 for none.</param>
/// <param name="Curtains">Number of curtains, 0 to 2.</param>
/// <param name="CurtainEntry">Catalogue id of the cloth; empty to choose.</param>
/// <param name="CurtainHeightM">Height of the (first) curtain, m; 0 to place it under the lower eave.</param>
/// <param name="Circulation">Circulation fans wanted.</param>
/// <param name="CirculationFixed">Circulation fans fixed.</param>
/// <param name="PositivePressurePa">Pressure to hold with the filter fan, Pa; 0 for none.</param>
/// <param name="LampW">Lamps, W electric; 0 for none.</param>
/// <param name="InsectScreen">Pest size in words, or "none".</param>
/// <param name="InsectScreenPorosityFraction">Screen porosity; 0 for none.</param>
/// <param name="RoofVentFraction">Roof vent area over floor area; 0 for none.</param>
/// <param name="SideVentFraction">Side vent area over floor area; 0 for none.</param>
/// <param name="SealedCombustion">Sealed combustion heaters; other choices raise a finding.</param>
/// <param name="DehumidifierW">Dehumidifier, W electric; 0 for none.</param>
/// <param name="Co2Ppm">Carbon dioxide to hold by dosing in daylight, ppm; 0 for none.</param>
/// <param name="OscillatingFans">Oscillating fans over the crop; 0 for none.</param>
/// <param name="SecondCurtain">The second of two curtains where it moves by itself; null where there is none, or where both are of one cloth and move alike.</param>
public sealed record EquipmentChoice(
    bool Exhaust,
    EqList<FixedItem> ExhaustFixed,
    Form.FaceName FanFace,
    Source FanFaceSource,
    double ShadeFraction,
    double TemperatureRiseK,
    bool WetWall,
    string WetWallEntry,
    double WetWallWidthM,
    double WetWallHeightM,
    bool Fog,
    string FogEntry,
    int FogNozzles,
    bool Heaters,
    EqList<FixedItem> HeatersFixed,
    double BenchPipeW,
    int Curtains,
    string CurtainEntry,
    double CurtainHeightM,
    bool Circulation,
    EqList<FixedItem> CirculationFixed,
    double PositivePressurePa,
    double LampW,
    string InsectScreen,
    double InsectScreenPorosityFraction,
    double RoofVentFraction,
    double SideVentFraction,
    bool SealedCombustion,
    double DehumidifierW = 0,
    double Co2Ppm = 0,
    int OscillatingFans = 0,
    SecondCurtain? SecondCurtain = null)
{
    /// <summary>Upper fans for the space above the curtain; null for none. An empty entry is chosen, a count of 0 sized.</summary>
    public FixedItem? UpperFans { get; init; }

    /// <summary>How heaters that are sized burn.</summary>
    public Catalogues.HeaterFire HeaterFire { get; init; }

    /// <summary>What the job describes and switches off, in words.</summary>
    public EqList<string> SwitchedOff { get; init; } = [];

    /// <summary>What a curtain that the job gives no height hangs on whole multiples of, m: inches, or centimetres in a metric job.</summary>
    public double CurtainStepM { get; init; } = 0.0254;

    /// <summary>Height of the first curtain, m: as given, else 15 cm (6 in) under the lower eave for its wires and drive, down to the whole inch or centimetre.</summary>
    /// <param name="lowerEaveM">Lower eave, m.</param>
    public double CurtainM(double lowerEaveM) => CurtainHeightM > 0
        ? CurtainHeightM
        : Math.Max(Math.Floor((lowerEaveM - 0.15) / CurtainStepM + 1e-6), 1) * CurtainStepM;

    /// <summary>Cloths of the first curtain that move together.</summary>
    public int Layers => SecondCurtain is null ? Curtains : 1;

    /// <summary>The same house with another number of curtains.</summary>
    /// <param name="count">0 to 2.</param>
    public EquipmentChoice WithCurtains(int count) => this with { Curtains = count, SecondCurtain = count > 1 ? SecondCurtain : null };
}

/// <summary>Link buildings.</summary>
public enum LinkKind
{
    /// <summary>Corridor between houses.</summary>
    Corridor,

    /// <summary>Head house.</summary>
    HeadHouse,

    /// <summary>Control room, pump or boiler room standing alone.</summary>
    ControlRoom,
}

/// <summary>A corridor, head house or control room: a gable building of its own.</summary>
/// <param name="Id">Id.</param>
/// <param name="Kind">Kind.</param>
/// <param name="Name">As printed.</param>
/// <param name="OriginXM">x of its corner with least x and y, range axes, m.</param>
/// <param name="OriginYM">y of that corner, m.</param>
/// <param name="SizeXM">Size along range x, m.</param>
/// <param name="SizeYM">Size along range y, m.</param>
/// <param name="EaveM">Eave height, m.</param>
/// <param name="RiseOverRun">Roof pitch of its centred ridge, which runs along its longer side; 0 for flat.</param>
/// <param name="Cover">Covering of walls and roof.</param>
/// <param name="Rooms">Rooms in words with their sizes (control room, pump and boiler room, wash, toilet).</param>
public sealed record LinkBuilding(
    string Id,
    LinkKind Kind,
    string Name,
    double OriginXM,
    double OriginYM,
    double SizeXM,
    double SizeYM,
    double EaveM,
    double RiseOverRun,
    CoverChoice Cover,
    EqList<Room> Rooms);

/// <summary>A room of a link building.</summary>
/// <param name="Name">What it is.</param>
/// <param name="SizeXM">Size along x, m.</param>
/// <param name="SizeYM">Size along y, m.</param>
public sealed record Room(string Name, double SizeXM, double SizeYM);
