using static Glazewright.Design.Quantities.QuantityKind;
using static Glazewright.Design.Quantities.UnitFamily;

namespace Glazewright.Design.Quantities;

/// <summary>
/// Every unit that is read. Factors are the exact definitions of the international yard and pound agreement (foot 0.3048 m, pound
/// 0.45359237 kg), the U.S. gallon of 231 in³, standard gravity 9.80665 m/s², the International Table Btu of 1055.05585262 J, the
/// therm of 100 000 such Btu, and the conventional inch of water at 4 °C, 249.08891 Pa (NIST SP 811, Appendix B: from memory, checked against
/// a general unit library in the tests).
/// </summary>
public static class UnitTable
{
    internal const double FootM = 0.3048;
    internal const double InchM = 0.0254;
    private const double PoundKg = 0.45359237;
    private const double PoundN = PoundKg * 9.80665;
    /// <summary>US liquid gallon, m³ (exact).</summary>
    public const double GallonM3 = 231 * InchM * InchM * InchM;
    private const double BtuJ = 1055.05585262;
    private const double RankineK = 5.0 / 9;
    private const double SquareFootM2 = FootM * FootM;
    private const double CubicFootM3 = SquareFootM2 * FootM;
    private const double InchWaterPa = 249.08891;
    private const double BtuPerHourW = BtuJ / 3600;
    private const double KWhJ = 3.6e6;

    private static readonly UnitOfMeasure[] s_all =
    [
        Of("ft", Length, FootM, Customary, "'", "foot", "feet"),
        Of("in", Length, InchM, Customary, "\"", "inch", "inches"),
        Of("yd", Length, 3 * FootM, Customary, "yard", "yards"),
        Of("mi", Length, 5280 * FootM, Customary, "mile", "miles"),
        Of("m", Length, 1, Metric, "metre", "metres", "meter", "meters"),
        Of("cm", Length, 0.01, Metric),
        Of("mm", Length, 0.001, Metric),
        Of("km", Length, 1000, Metric),

        Of("%", Pitch, 0.01, Both, "percent"),
        Of("deg", Angle, 1, Both, "degree", "degrees"),
        Of("rad", Angle, 180 / Math.PI, Both),

        // Latitudes and longitudes as they stand on a map: south and west are negative.
        Of("N", Angle, 1, Both, "degn", "north", "degnorth"),
        Of("S", Angle, -1, Both, "degs", "south", "degsouth"),
        Of("E", Angle, 1, Both, "dege", "east", "degeast"),
        Of("W", Angle, -1, Both, "degw", "west", "degwest"),

        Of("ft²", Area, SquareFootM2, Customary, "sqft", "sf", "squarefeet"),
        Of("in²", Area, InchM * InchM, Customary, "sqin"),
        Of("acre", Area, 43560 * SquareFootM2, Customary, "acres", "ac"),
        Of("m²", Area, 1, Metric, "sqm"),
        Of("cm²", Area, 1e-4, Metric),
        Of("mm²", Area, 1e-6, Metric),
        Of("ha", Area, 10_000, Metric),

        Of("gal", Volume, GallonM3, Customary, "gallon", "gallons"),
        Of("kgal", Volume, 1000 * GallonM3, Customary),
        Of("ft³", Volume, CubicFootM3, Customary, "cuft", "cf"),
        Of("yd³", Volume, 27 * CubicFootM3, Customary, "cuyd", "cy"),
        Of("L", Volume, 0.001, Metric, "liter", "liters", "litre", "litres"),
        Of("m³", Volume, 1, Metric, "cum"),

        Of("lb", Mass, PoundKg, Customary, "lbs", "pound", "pounds"),
        Of("oz", Mass, PoundKg / 16, Customary),
        Of("kg", Mass, 1, Metric),
        Of("g", Mass, 0.001, Metric),
        Of("t", Mass, 1000, Metric, "tonne", "tonnes"),

        new("°F", Temperature, RankineK, -32 * RankineK, Customary, "F", "fahrenheit"),
        new("°C", Temperature, 1, 0, Metric, "C", "celsius"),
        new("K", Temperature, 1, -273.15, Metric, "kelvin"),

        Of("F°", TemperatureDifference, RankineK, Customary, "fdeg", "fahrenheitdegrees", "deltaf", "deltadegf"),
        Of("C°", TemperatureDifference, 1, Metric, "cdeg", "celsiusdegrees", "deltac", "deltadegc"),
        Of("K", TemperatureDifference, 1, Metric, "kelvin"),

        Of("cfm", AirFlow, CubicFootM3 / 60, Customary, "ft3/min"),
        Of("m³/s", AirFlow, 1, Metric),
        Of("m³/h", AirFlow, 1.0 / 3600, Metric, "m3/hr", "cmh"),
        Of("L/s", AirFlow, 0.001, Metric),

        Of("gpm", WaterFlow, GallonM3 / 60, Customary, "gal/min"),
        Of("gph", WaterFlow, GallonM3 / 3600, Customary, "gal/h", "gal/hr"),
        Of("gpd", WaterFlow, GallonM3 / 86400, Customary, "gal/d", "gal/day"),
        Of("L/s", WaterFlow, 0.001, Metric),
        Of("L/min", WaterFlow, 0.001 / 60, Metric, "lpm"),
        Of("L/h", WaterFlow, 0.001 / 3600, Metric),
        Of("m³/h", WaterFlow, 1.0 / 3600, Metric),
        Of("m³/s", WaterFlow, 1, Metric),

        Of("inwg", Pressure, InchWaterPa, Customary, "inwc", "\"wc", "\"wg", "inh2o", "inchwater", "inchesofwater"),
        Of("psi", Pressure, PoundN / (InchM * InchM), Customary, "psig", "lb/in2", "lbf/in2"),
        Of("Pa", Pressure, 1, Metric),
        Of("hPa", Pressure, 100, Metric),
        Of("kPa", Pressure, 1000, Metric),
        Of("MPa", Pressure, 1e6, Metric),
        Of("bar", Pressure, 1e5, Metric),
        Of("mbar", Pressure, 100, Metric),

        Of("kPa", VapourDeficit, 1, Both),
        Of("hPa", VapourDeficit, 0.1, Both),
        Of("mbar", VapourDeficit, 0.1, Both),
        Of("Pa", VapourDeficit, 0.001, Both),

        Of("psf", AreaLoad, PoundN / SquareFootM2, Customary, "lb/ft2", "lbf/ft2", "lb/sqft"),
        Of("Pa", AreaLoad, 1, Metric, "n/m2"),
        Of("kPa", AreaLoad, 1000, Metric, "kn/m2"),
        Of("plf", LineLoad, PoundN / FootM, Customary, "lb/ft", "lbf/ft"),
        Of("N/m", LineLoad, 1, Metric),
        Of("kN/m", LineLoad, 1000, Metric),
        Of("lbf", Force, PoundN, Customary, "lb", "lbs"),
        Of("kip", Force, 1000 * PoundN, Customary, "kips"),
        Of("N", Force, 1, Metric),
        Of("kN", Force, 1000, Metric),
        Of("ksi", Stress, 1000 * PoundN / (InchM * InchM), Customary),
        Of("psi", Stress, PoundN / (InchM * InchM), Customary),
        Of("MPa", Stress, 1e6, Metric, "N/mm2"),

        Of("mph", Speed, 5280 * FootM / 3600, Customary, "mi/h"),
        Of("fpm", Speed, FootM / 60, Customary, "ft/min"),
        Of("ft/s", Speed, FootM, Customary, "fps"),
        Of("m/s", Speed, 1, Metric),
        Of("km/h", Speed, 1 / 3.6, Metric, "kph", "kmh"),

        Of("Btu/h", Power, BtuPerHourW, Customary, "btuh", "btu/hr"),
        Of("kBtu/h", Power, 1000 * BtuPerHourW, Customary, "mbh", "kbtuh", "kbtu/hr"),
        Of("hp", Power, 550 * FootM * PoundN, Customary),
        Of("W", Power, 1, Both, "watt", "watts"),
        Of("kW", Power, 1000, Both),
        Of("MW", Power, 1e6, Metric),
        Of("W/m²", PowerDensity, 1, Metric),
        Of("W/ft²", PowerDensity, 1 / SquareFootM2, Customary, "w/sqft"),
        Of("Btu/h·ft²", PowerDensity, BtuPerHourW / SquareFootM2, Customary, "btu/hft2", "btuh/ft2", "btu/hrft2"),
        Of("kWh", Energy, KWhJ, Both),
        Of("MWh", Energy, 1000 * KWhJ, Both),
        Of("kBtu", Energy, 1000 * BtuJ, Customary),
        Of("Btu", Energy, BtuJ, Customary),
        Of("therm", Energy, 1e5 * BtuJ, Customary, "therms"),
        Of("MJ", Energy, 1e6, Metric),
        Of("kJ", Energy, 1000, Metric),
        Of("J", Energy, 1, Metric),
        Of("kWh/m²", EnergyDensity, KWhJ, Metric, "kwh/m2d", "kwh/m2day"),
        Of("Wh/m²", EnergyDensity, 3600, Metric, "wh/m2d"),
        Of("MJ/m²", EnergyDensity, 1e6, Metric, "mj/m2d", "mj/m2day"),
        Of("Btu/ft²", EnergyDensity, BtuJ / SquareFootM2, Customary),

        Of("%", Fraction, 0.01, Both, "percent"),
        Of("%", Ratio, 0.01, Both, "percent"),
        Of("V", Voltage, 1, Both, "volt", "volts"),
        Of("kV", Voltage, 1000, Both),
        Of("A", Current, 1, Both, "amp", "amps"),
        Of("d", Duration, 86400, Both, "day", "days"),
        Of("h", Duration, 3600, Both, "hr", "hrs", "hour", "hours"),
        Of("min", Duration, 60, Both, "minute", "minutes"),
        Of("s", Duration, 1, Both, "sec", "second", "seconds"),
        Of("wk", Duration, 7 * 86400, Both, "week", "weeks"),

        Of("Btu/h·ft²·F", Transmittance, BtuPerHourW / (SquareFootM2 * RankineK), Customary, "btu/hft2f", "btu/hrft2f", "btu/ft2hf", "btuh/ft2f"),
        Of("W/m²K", Transmittance, 1, Metric),
        Of("h·ft²·F/Btu", Resistance, SquareFootM2 * RankineK / BtuPerHourW, Customary, "ft2fh/btu", "ft2hf/btu", "hrft2f/btu"),
        Of("m²K/W", Resistance, 1, Metric),
        Of("Btu/h·ft·F", EdgeTransmittance, BtuPerHourW / (FootM * RankineK), Customary, "btu/hftf", "btu/hrftf"),
        Of("W/mK", EdgeTransmittance, 1, Metric),
        Of("ACH", AirChanges, 1, Both, "airchanges/h", "/h"),

        Of("mol/m²d", DailyLight, 1, Metric, "mol/m2day", "mol"),
        Of("µmol/m²s", PhotonFlux, 1, Metric),
        Of("µmol/J", PhotonEfficacy, 1, Metric),
        Of("mg/L", Concentration, 1, Metric, "ppm", "g/m3"),
        Of("gr/gal", Concentration, PoundKg / 7000 * 1e6 / (GallonM3 * 1000), Customary, "gpg", "grains/gal"),
        Of("ppm", GasFraction, 1, Both, "umol/mol"),

        Of("$", Money, 1, Both),
        Of("$/kWh", MoneyPerEnergy, 1, Both),
        Of("$/MWh", MoneyPerEnergy, 0.001, Both),
        Of("$/therm", MoneyPerEnergy, KWhJ / (1e5 * BtuJ), Customary),
        Of("$/GJ", MoneyPerEnergy, KWhJ / 1e9, Metric),
        Of("$/kW", MoneyPerPower, 1, Both, "$/kwmonth", "$/kwmo"),
        Of("$/gal", MoneyPerVolume, 1 / GallonM3, Customary),
        Of("$/kgal", MoneyPerVolume, 1 / (1000 * GallonM3), Customary, "$/1000gal"),
        Of("$/ft³", MoneyPerVolume, 1 / CubicFootM3, Customary, "$/cuft"),
        Of("$/yd³", MoneyPerVolume, 1 / (27 * CubicFootM3), Customary, "$/cuyd"),
        Of("$/L", MoneyPerVolume, 1000, Metric),
        Of("$/m³", MoneyPerVolume, 1, Metric),
        Of("$/h", MoneyPerTime, 1, Both, "$/hr", "$/hour"),
        Of("$/ft", MoneyPerLength, 1 / FootM, Customary),
        Of("$/m", MoneyPerLength, 1, Metric),
        Of("$/ft²", MoneyPerArea, 1 / SquareFootM2, Customary, "$/sqft"),
        Of("$/m²", MoneyPerArea, 1, Metric),
        Of("$/lb", MoneyPerMass, 1 / PoundKg, Customary),
        Of("$/kg", MoneyPerMass, 1, Metric),
    ];

    private static readonly ILookup<string, UnitOfMeasure> s_bySpelling = s_all
        .SelectMany(unit => unit.Spellings.Prepend(unit.Symbol).Select(s => (Key: QuantityText.UnitKey(s).ToLowerInvariant(), Unit: unit)))
        .Distinct()
        .ToLookup(pair => pair.Key, pair => pair.Unit);

    private static readonly UnitOfMeasure[][] s_byKind = [.. Enum.GetValues<QuantityKind>().Select(kind => s_all.Where(unit => unit.Kind == kind).ToArray())];

    /// <summary>Every unit, in the order of the table.</summary>
    public static IReadOnlyList<UnitOfMeasure> All => s_all;

    /// <summary>The units of one kind, in the order of the table.</summary>
    /// <param name="kind">What is measured.</param>
    /// <returns>At least one unit.</returns>
    public static IReadOnlyList<UnitOfMeasure> Of(QuantityKind kind) => s_byKind[(int)kind];

    /// <summary>The units, of whatever kind, that a spelling can mean.</summary>
    /// <param name="key">Spelling in normal form (<see cref="QuantityText.UnitKey"/>).</param>
    /// <returns>None, one, or several of different kinds (Pa is a pressure and a load).</returns>
    public static IReadOnlyList<UnitOfMeasure> Spelled(string key) =>
        [.. s_bySpelling[key.ToLowerInvariant()].Where(u => !u.CaseMatters || key.StartsWith('M') || !key.Equals(u.Symbol, StringComparison.OrdinalIgnoreCase))];

    private static UnitOfMeasure Of(string symbol, QuantityKind kind, double factor, UnitFamily system, params string[] spellings) =>
        new(symbol, kind, factor, 0, system, spellings);
}
