namespace Glazewright.Design.Takeoff;

/// <summary>Rules of thumb by which quantities follow from shape. Common practice, from memory, each an ordinary middle value; lengths m.</summary>
public static class TakeoffRules
{
    /// <summary>Ground worked beyond the walls on every side (10 ft).</summary>
    public const double GroundMarginM = 3.048;

    /// <summary>Gravel base under floors (4 in).</summary>
    public const double GravelM = 0.1016;

    /// <summary>Slab (4 in).</summary>
    public const double SlabM = 0.1016;

    /// <summary>Depth of the thickened slab edge below a panel building (12 in beyond the slab, 12 in wide).</summary>
    public const double SlabEdgeM = 0.3048;

    /// <summary>Depth of edge insulation (24 in).</summary>
    public const double EdgeInsulationM = 0.6096;

    /// <summary>Screws along a purlin in the field of a sheet or panel (12 in).</summary>
    public const double FieldScrewM = 0.3048;

    /// <summary>Screws along the edges (8 in).</summary>
    public const double EdgeScrewM = 0.2032;

    /// <summary>Share of screws lost or stripped.</summary>
    public const double ScrewWasteFraction = 0.08;

    /// <summary>Share of profile and trim lost at ends and laps.</summary>
    public const double TrimWasteFraction = 0.08;

    /// <summary>Share of concrete spilt and over-dug.</summary>
    public const double ConcreteWasteFraction = 0.08;

    /// <summary>One downspout for so much gutter (40 ft).</summary>
    public const double DownspoutM = 12.192;

    /// <summary>Sheets are ordered so much longer than the face and trimmed at the eave end (1 in).</summary>
    public const double SheetAllowanceM = 0.0254;

    /// <summary>Curtain support wires stand so far apart (18 in).</summary>
    public const double CurtainWireM = 0.4572;


    /// <summary>A truck load, kg.</summary>
    public const double TruckLoadKg = 9_000;

    /// <summary>A lift on site for so much envelope, m² a day.</summary>
    public const double EnvelopePerLiftDayM2 = 60;

    /// <summary>Vent and as much combustion-air pipe of a boiler whose place is not known (20 ft).</summary>
    public const double BoilerVentM = 6.096;

    /// <summary>Elbows of each of its pipes.</summary>
    public const int BoilerVentElbows = 2;
}
