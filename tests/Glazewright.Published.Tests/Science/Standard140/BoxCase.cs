namespace Glazewright.Published.Tests.Science.Standard140;

/// <summary>Which way a face of the box looks.</summary>
internal enum Facing
{
    Roof,
    Floor,
    North,
    East,
    South,
    West,
}

/// <summary>A layer of a wall.</summary>
internal readonly record struct Layer(double ThicknessM, double ConductivityWPerMK, double DensityKgPerM3, double SpecificHeatJPerKgK);

/// <summary>An opaque surface of a zone; layers from inside to outside. Behind it another zone, or the weather.</summary>
internal sealed record OpaqueFace(int Zone, Facing Facing, double AreaM2, Layer[] Layers, double SunShareFraction, int? ZoneBehind = null);

/// <summary>Glass in a wall: equal clear panes.</summary>
internal sealed record GlassFace(int Zone, Facing Facing, double AreaM2, int Panes);

/// <summary>A zone of well-stirred air.</summary>
internal sealed record AirZone(double VolumeM3, double GainW);

/// <summary>Set points and night fan by the time of the day, h; not-a-number where the plant is off.</summary>
internal sealed record Control(Func<double, double> HeatToC, Func<double, double> CoolToC, Func<double, bool> NightFan)
{
    public static Control Off { get; } = new(_ => double.NaN, _ => double.NaN, _ => false);

    public static Control Between(double heatToC, double coolToC) => new(_ => heatToC, _ => coolToC, _ => false);
}

/// <summary>
/// The cases of ASHRAE Standard 140-2020 (section 5, tests of building envelope and fabric) as a description: geometry, layers, glass, gains, set points. Read at
/// second hand: the case sheets of an open building-simulation validation project that restate tables 5-1 to 5-46 (docs/bestest_cases, one page a case), layers
/// and sizes of cases 600, 900, 680 and 960 the same in an open Modelica library of the buildings-simulation community.
/// </summary>
internal sealed record BoxCase
{
    /// <summary>Infiltration, 1/h of the zone's volume, at the site's own density.</summary>
    public double InfiltrationPerH { get; init; } = 0.5;

    /// <summary>Night fan, m³/h at the site's own density (1700 standard m³/h is the mass flow of 1409 at 1.0156/1.2255 of the density).</summary>
    public const double NightFanM3PerH = 1700;

    /// <summary>Density and specific heat of the air at 1650 m as the standard's summary tables take them.</summary>
    public const double AirJPerM3K = 1.0156 * 1015;

    /// <summary>Share of the 200 W that radiates.</summary>
    public const double GainRadiantFraction = 0.6;

    public double OutsideAbsorptance { get; init; } = 0.6;

    public double Emissivity { get; init; } = 0.9;

    /// <summary>The standard's own constants in place of the product's laws of inner films: what the laws do to a figure.</summary>
    public bool ConstantInnerFilms { get; init; }

    /// <summary>Rough outer faces with the greenhouse model's law for opaque parts in place of the Handbook's film.</summary>
    public bool HouseOutside { get; init; }

    public required AirZone[] Zones { get; init; }

    public required OpaqueFace[] Opaque { get; init; }

    public required GlassFace[] Glass { get; init; }

    public required Control Control { get; init; }

    private static readonly Layer Plasterboard12 = new(0.012, 0.16, 950, 840), Plasterboard10 = Plasterboard12 with { ThicknessM = 0.010 };
    private static readonly Layer Siding = new(0.009, 0.14, 530, 900), Deck = Siding with { ThicknessM = 0.019 };

    private static readonly Layer[] LightWall = [Plasterboard12, new(0.066, 0.04, 12, 840), Siding];
    private static readonly Layer[] LightFloor = [new(0.025, 0.14, 650, 1200), new(1.003, 0.04, 0, 0)];
    private static readonly Layer[] LightRoof = [Plasterboard10, new(0.1118, 0.04, 12, 840), Deck];
    private static readonly Layer[] HeavyWall = [new(0.100, 0.51, 1400, 1000), new(0.0615, 0.04, 10, 1400), Siding];
    private static readonly Layer[] HeavyFloor = [new(0.080, 1.13, 1400, 1000), new(1.007, 0.04, 0, 0)];
    private static readonly Layer[] WarmWall = [Plasterboard12, new(0.250, 0.04, 10, 1400), Siding];
    private static readonly Layer[] WarmRoof = [Plasterboard10, new(0.400, 0.04, 12, 840), Deck];
    private static readonly Layer[] CommonWall = [new(0.20, 0.51, 1400, 1000)];

    // Where the sun that came in ends: floor, ceiling, east and west wall, north, south; the rest goes out again through the glass.
    private static readonly double[] SunOfSouthGlass = [0.642, 0.167, 0.038, 0.053, 0.027];
    private static readonly double[] SunOfSinglePane = [0.641, 0.166, 0.038, 0.052, 0.025];
    private static readonly double[] SunOfEastWestGlass = [0.642, 0.167, 0.025, 0.053, 0.053];
    private static readonly double[] SunOfSunspace = [0.6, 0.05, 0.02, 0.2, 0.03];

    public static BoxCase Case600 { get; } = Box(LightWall, LightRoof, LightFloor, SunOfSouthGlass, 12, 0, 2);

    public static BoxCase Case620 { get; } = Box(LightWall, LightRoof, LightFloor, SunOfEastWestGlass, 0, 6, 2);

    public static BoxCase Case670 { get; } = Box(LightWall, LightRoof, LightFloor, SunOfSinglePane, 12, 0, 1);

    public static BoxCase Case680 { get; } = Box(WarmWall, WarmRoof, LightFloor, SunOfSouthGlass, 12, 0, 2);

    public static BoxCase Case900 { get; } = Box(HeavyWall, LightRoof, HeavyFloor, SunOfSouthGlass, 12, 0, 2);

    /// <summary>Nothing but conduction: no glass, no air change, no gain, bright and poorly radiating faces, one set point.</summary>
    public static BoxCase Case195 { get; } = Box(LightWall, LightRoof, LightFloor, SunOfSouthGlass, 0, 0, 0) with
    {
        InfiltrationPerH = 0,
        OutsideAbsorptance = 0.1,
        Emissivity = 0.1,
        Zones = [new(129.6, 0)],
        Control = Control.Between(20, 20),
    };

    /// <summary>From 20 °C down to 10 °C at 23 h, up again from 7 to 8 h along a straight line.</summary>
    public static Control SetBack { get; } = new(h => h < 7 || h >= 23 ? 10 : h < 8 ? 10 + 10 * (h - 7) : 20, _ => 27, _ => false);

    /// <summary>Cooled by day, aired by night, never heated.</summary>
    public static Control NightAir { get; } = new(_ => double.NaN, h => h is > 7 and <= 18 ? 27 : double.NaN, h => h is <= 7 or > 18);

    /// <summary>The case without plant; a night fan stays.</summary>
    public BoxCase FreeFloat => this with { Control = Control.Off with { NightFan = Control.NightFan } };

    /// <summary>A light box behind a heavy sunspace 2 m deep that carries the glass; between them 20 cm of concrete, no air passes.</summary>
    public static BoxCase Case960 { get; } = new()
    {
        Zones = [new(129.6, 200), new(43.2, 0)],
        Opaque =
        [
            new(0, Facing.Roof, 48, LightRoof, 0), new(0, Facing.Floor, 48, LightFloor, 0), new(0, Facing.North, 21.6, LightWall, 0),
            new(0, Facing.East, 16.2, LightWall, 0), new(0, Facing.West, 16.2, LightWall, 0),
            new(1, Facing.North, 21.6, CommonWall, SunOfSunspace[3], ZoneBehind: 0),
            new(1, Facing.Roof, 16, LightRoof, SunOfSunspace[1]), new(1, Facing.Floor, 16, HeavyFloor, SunOfSunspace[0]),
            new(1, Facing.East, 5.4, HeavyWall, SunOfSunspace[2]), new(1, Facing.West, 5.4, HeavyWall, SunOfSunspace[2]),
            new(1, Facing.South, 9.6, HeavyWall, SunOfSunspace[4]),
        ],
        Glass = [new(1, Facing.South, 12, 2)],
        Control = Control.Between(20, 27),
    };

    // 8 m × 6 m × 2.7 m, 200 W, 20 and 27 °C.
    private static BoxCase Box(Layer[] wall, Layer[] roof, Layer[] floor, double[] sun, double southGlassM2, double eastAndWestGlassM2, int panes)
    {
        GlassFace[] glass = [new(0, Facing.South, southGlassM2, panes), new(0, Facing.East, eastAndWestGlassM2, panes), new(0, Facing.West, eastAndWestGlassM2, panes)];
        return new BoxCase
        {
            Zones = [new(129.6, 200)],
            Opaque =
            [
                new(0, Facing.Roof, 48, roof, sun[1]), new(0, Facing.Floor, 48, floor, sun[0]), new(0, Facing.North, 21.6, wall, sun[3]),
                new(0, Facing.East, 16.2 - eastAndWestGlassM2, wall, sun[2]), new(0, Facing.South, 21.6 - southGlassM2, wall, sun[4]),
                new(0, Facing.West, 16.2 - eastAndWestGlassM2, wall, sun[2]),
            ],
            Glass = [.. glass.Where(g => g.AreaM2 > 0)],
            Control = Control.Between(20, 27),
        };
    }
}
