using Glazewright.Design.Contracts;

namespace Glazewright.Design.Calibration;

/// <summary>What a column of a log can hold.</summary>
public enum LoggedQuantity
{
    /// <summary>Outside dry bulb.</summary>
    OutsideTemperature,

    /// <summary>Outside relative humidity.</summary>
    OutsideHumidity,

    /// <summary>Global light outside on a horizontal plane.</summary>
    OutsideRadiation,

    /// <summary>Net long-wave exchange of a horizontal surface with the sky, negative when it loses.</summary>
    NetSkyRadiation,

    /// <summary>Wind.</summary>
    Wind,

    /// <summary>Barometric pressure.</summary>
    Pressure,

    /// <summary>Air at the crop.</summary>
    InsideTemperature,

    /// <summary>Relative humidity at the crop.</summary>
    InsideHumidity,

    /// <summary>Photon flux at the crop, lamps not in it.</summary>
    InsideLight,

    /// <summary>Carbon dioxide inside.</summary>
    Co2,

    /// <summary>Roof vents' opening; several columns are averaged.</summary>
    RoofVents,

    /// <summary>Side vents' opening; several columns are averaged.</summary>
    SideVents,

    /// <summary>How far the curtain is closed.</summary>
    Curtain,

    /// <summary>How far a second curtain is closed.</summary>
    SecondCurtain,

    /// <summary>Exhaust fans, share of their full flow.</summary>
    Fans,

    /// <summary>Pump on the wet wall.</summary>
    PadPump,

    /// <summary>Fog, share of its full spray.</summary>
    Fog,

    /// <summary>Heaters, share of what is installed.</summary>
    Heaters,

    /// <summary>Heat delivered, a floor area's share.</summary>
    HeatDelivered,

    /// <summary>Water of the lower pipes.</summary>
    RailPipe,

    /// <summary>Water of the upper pipes.</summary>
    GrowPipe,

    /// <summary>Lamps, share of what is installed; several columns are averaged.</summary>
    Lamps,

    /// <summary>Circulation fans.</summary>
    Circulation,
}

/// <summary>What a quantity is measured in.</summary>
public enum LoggedKind
{
    /// <summary>Temperature, °C inside.</summary>
    Temperature,

    /// <summary>A share, 0 to 1 inside.</summary>
    Share,

    /// <summary>Radiation or heat on an area, W/m².</summary>
    Flux,

    /// <summary>Speed, m/s.</summary>
    Speed,

    /// <summary>Pressure, Pa.</summary>
    Pressure,

    /// <summary>Photon flux, µmol/m²s.</summary>
    PhotonFlux,

    /// <summary>Gas, ppm.</summary>
    Gas,
}

/// <summary>What is known of a quantity before any log is read.</summary>
/// <param name="Quantity">Which.</param>
/// <param name="Word">Its word in a column map.</param>
/// <param name="Kind">What it is measured in.</param>
/// <param name="LowestValue">Below this no such reading can be, inside unit.</param>
/// <param name="HighestValue">Above this no such reading can be, inside unit.</param>
/// <param name="LeapValue">A reading this far from both its neighbours is a spike; 0 for none.</param>
/// <param name="StuckHours">Without any change for this long a sensor is taken for stuck; 0 for never.</param>
/// <param name="State">True for what is switched or driven: it holds between readings instead of sliding.</param>
public sealed record QuantityTraits(
    LoggedQuantity Quantity, string Word, LoggedKind Kind, double LowestValue, double HighestValue, double LeapValue, double StuckHours, bool State)
{
    /// <summary>All quantities, in the order of the enumeration.</summary>
    public static EqList<QuantityTraits> All { get; } =
    [
        new(LoggedQuantity.OutsideTemperature, "outside-temperature", LoggedKind.Temperature, -60, 60, 10, 12, false),
        new(LoggedQuantity.OutsideHumidity, "outside-humidity", LoggedKind.Share, 0, 1.1, 0, 48, false),
        new(LoggedQuantity.OutsideRadiation, "outside-radiation", LoggedKind.Flux, -20, 1600, 0, 0, false),
        new(LoggedQuantity.NetSkyRadiation, "net-sky-radiation", LoggedKind.Flux, -300, 150, 0, 0, false),
        new(LoggedQuantity.Wind, "wind", LoggedKind.Speed, 0, 60, 0, 0, false),
        new(LoggedQuantity.Pressure, "pressure", LoggedKind.Pressure, 50_000, 110_000, 2000, 0, false),
        new(LoggedQuantity.InsideTemperature, "inside-temperature", LoggedKind.Temperature, -40, 70, 8, 6, false),
        new(LoggedQuantity.InsideHumidity, "inside-humidity", LoggedKind.Share, 0, 1.1, 0, 12, false),
        new(LoggedQuantity.InsideLight, "inside-light", LoggedKind.PhotonFlux, -20, 3000, 0, 0, false),
        new(LoggedQuantity.Co2, "co2", LoggedKind.Gas, 150, 10_000, 0, 0, false),
        new(LoggedQuantity.RoofVents, "roof-vents", LoggedKind.Share, -0.05, 1.1, 0, 0, true),
        new(LoggedQuantity.SideVents, "side-vents", LoggedKind.Share, -0.05, 1.1, 0, 0, true),
        new(LoggedQuantity.Curtain, "curtain", LoggedKind.Share, -0.05, 1.1, 0, 0, true),
        new(LoggedQuantity.SecondCurtain, "second-curtain", LoggedKind.Share, -0.05, 1.1, 0, 0, true),
        new(LoggedQuantity.Fans, "fans", LoggedKind.Share, -0.05, 1.1, 0, 0, true),
        new(LoggedQuantity.PadPump, "pad-pump", LoggedKind.Share, -0.05, 1.1, 0, 0, true),
        new(LoggedQuantity.Fog, "fog", LoggedKind.Share, -0.05, 1.1, 0, 0, true),
        new(LoggedQuantity.Heaters, "heaters", LoggedKind.Share, -0.05, 1.1, 0, 0, true),
        new(LoggedQuantity.HeatDelivered, "heat-delivered", LoggedKind.Flux, -1, 1500, 0, 0, true),
        new(LoggedQuantity.RailPipe, "rail-pipe", LoggedKind.Temperature, -5, 130, 0, 0, true),
        new(LoggedQuantity.GrowPipe, "grow-pipe", LoggedKind.Temperature, -5, 130, 0, 0, true),
        new(LoggedQuantity.Lamps, "lamps", LoggedKind.Share, -0.05, 1.1, 0, 0, true),
        new(LoggedQuantity.Circulation, "circulation", LoggedKind.Share, -0.05, 1.1, 0, 0, true),
    ];

    /// <summary>Traits of a quantity.</summary>
    /// <param name="quantity">Which.</param>
    /// <returns>Its traits.</returns>
    public static QuantityTraits Of(LoggedQuantity quantity) => All[(int)quantity];
}
