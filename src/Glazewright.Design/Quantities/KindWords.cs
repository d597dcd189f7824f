using static Glazewright.Design.Quantities.QuantityKind;

namespace Glazewright.Design.Quantities;

/// <summary>The words for a kind of quantity: its name, how it is typed, and the units it is shown in.</summary>
/// <param name="Name">With its article: "a length".</param>
/// <param name="Units">What may follow the number, for a fault's advice.</param>
/// <param name="Metric">Symbol of the metric unit shown.</param>
/// <param name="Customary">Symbol of the customary unit shown; the same as the metric when both use it.</param>
/// <param name="Examples">Texts that are read.</param>
public sealed record KindWords(string Name, IReadOnlyList<string> Units, string Metric, string Customary, params IReadOnlyList<string> Examples)
{
    private static readonly KindWords[] s_all = [.. Enum.GetValues<QuantityKind>().Select(Make)];

    /// <summary>The words for a kind.</summary>
    /// <param name="kind">The kind.</param>
    /// <returns>Its words.</returns>
    public static KindWords Of(QuantityKind kind) => s_all[(int)kind];

    private static KindWords Make(QuantityKind kind) => kind switch
    {
        Length => new("a length", ["ft", "m"], "m", "ft", "12'6\"", "12'-6 1/2\"", "12 ft 6 in", "6 1/2 in", "3.81 m"),
        Pitch => new("a pitch", [":12", "deg"], ":12", ":12", "9.5:12", "26.6 deg"),
        Angle => new("an angle", ["deg"], "deg", "deg", "97 deg"),
        Area => new("an area", ["ft²", "m²"], "m²", "ft²", "84 ft2", "7.8 m2"),
        Volume => new("a volume", ["gal", "L"], "m³", "gal", "500 gal", "1900 L", "2 m3"),
        Mass => new("a weight", ["lb", "kg"], "kg", "lb", "60 lb", "27 kg"),
        Temperature => new("a temperature", ["F", "C"], "°C", "°F", "88 F", "31 C"),
        TemperatureDifference => new("a temperature difference", ["F°", "K"], "K", "F°", "5 F°", "3 K"),
        AirFlow => new("an air flow", ["cfm", "m³/s"], "m³/s", "cfm", "5000 cfm", "2.4 m3/s"),
        WaterFlow => new("a water flow", ["gpm", "L/s"], "L/s", "gpm", "9 gpm", "1.0 gph", "0.6 L/s"),
        Pressure => new("a pressure", ["inwg", "psi", "Pa"], "Pa", "inwg", "0.1 inwg", "25 Pa", "1000 psi"),
        VapourDeficit => new("a vapour pressure deficit", ["kPa"], "kPa", "kPa", "0.8 kPa", "8 hPa"),
        AreaLoad => new("a load on an area", ["psf", "kPa"], "kPa", "psf", "20 psf", "0.96 kPa"),
        LineLoad => new("a load on a length", ["plf", "kN/m"], "kN/m", "plf", "40 plf", "0.6 kN/m"),
        Force => new("a force", ["lbf", "kN"], "kN", "lbf", "250 lbf", "1.1 kN"),
        Stress => new("a strength", ["ksi", "MPa"], "MPa", "ksi", "46 ksi", "320 MPa"),
        Speed => new("a speed", ["mph", "fpm", "m/s"], "m/s", "mph", "105 mph", "350 fpm", "46 m/s"),
        Power => new("a power", ["kBtu/h", "kW"], "kW", "kBtu/h", "125 kBtu/h", "30 kW", "0.5 hp"),
        PowerDensity => new("a power on an area", ["W/m²", "W/ft²"], "W/m²", "Btu/h·ft²", "850 W/m2"),
        Energy => new("an energy", ["kWh", "therm"], "kWh", "kBtu", "12 kWh", "2 therm"),
        EnergyDensity => new("an energy on an area", ["kWh/m²", "MJ/m²"], "kWh/m²", "Btu/ft²", "4.2 kWh/m2", "15 MJ/m2"),
        Fraction => new("a share in percent", ["%"], "%", "%", "45 %"),
        Ratio => new("a pure number", ["%"], "", "", "0.85", "85 %"),
        Voltage => new("a voltage", ["V"], "V", "V", "240 V"),
        Current => new("a current", ["A"], "A", "A", "200 A"),
        Duration => new("a length of time", ["h", "min"], "h", "h", "14 h", "1 h 30 min", "45 s"),
        Transmittance => new("a U value", ["W/m²K", "Btu/h·ft²·F"], "W/m²K", "Btu/h·ft²·F", "2.3 W/m2K", "U-0.41"),
        Resistance => new("an R value", ["m²K/W", "h·ft²·F/Btu"], "m²K/W", "h·ft²·F/Btu", "R-20", "3.5 m2K/W"),
        EdgeTransmittance => new("a heat loss of a slab edge", ["W/mK", "Btu/h·ft·F"], "W/mK", "Btu/h·ft·F", "0.9 W/mK"),
        AirChanges => new("an air change rate", ["ACH"], "ACH", "ACH", "0.5 ACH"),
        DailyLight => new("a daily light integral", ["mol/m²d"], "mol/m²d", "mol/m²d", "17 mol/m2d"),
        PhotonFlux => new("a light level", ["µmol/m²s"], "µmol/m²s", "µmol/m²s", "200 umol/m2s"),
        PhotonEfficacy => new("a lamp efficacy", ["µmol/J"], "µmol/J", "µmol/J", "2.7 umol/J"),
        Concentration => new("an amount in water", ["mg/L", "gr/gal"], "mg/L", "gr/gal", "260 mg/L"),
        GasFraction => new("a gas content", ["ppm"], "ppm", "ppm", "800 ppm"),
        Money => new("an amount of money", ["$"], "$", "$", "$1,200", "1200 $"),
        MoneyPerEnergy => new("a price of energy", ["$/kWh"], "$/kWh", "$/kWh", "0.14 $/kWh", "$1.20/therm"),
        MoneyPerPower => new("a price of demand", ["$/kW"], "$/kW", "$/kW", "9 $/kW"),
        MoneyPerVolume => new("a price by volume", ["$/gal", "$/kgal", "$/m³"], "$/m³", "$/gal", "2.10 $/gal", "6 $/kgal", "0.9 $/m3"),
        MoneyPerTime => new("an hourly rate", ["$/h"], "$/h", "$/h", "58 $/h"),
        MoneyPerLength => new("a price by length", ["$/ft", "$/m"], "$/m", "$/ft", "4.2 $/ft", "14 $/m"),
        MoneyPerArea => new("a price by area", ["$/ft²", "$/m²"], "$/m²", "$/ft²", "3.1 $/ft2", "33 $/m2"),
        MoneyPerMass => new("a price by weight", ["$/lb", "$/kg"], "$/kg", "$/lb", "0.9 $/lb", "2 $/kg"),
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "No such kind."),
    };

    /// <summary>A number with each unit it may have, joined: "30 ft or 30 m".</summary>
    /// <param name="number">The number as typed.</param>
    /// <returns>The advice.</returns>
    public string With(string number) =>
        string.Join(" or ", Units.Select(u => u.StartsWith('$') && u.Length == 1 ? u + number : u is ":12" ? number + u : $"{number} {u}"));
}
