using Glazewright.Design.Quantities;

namespace Glazewright.Design.Tests.Quantities;

/// <summary>What a builder types is understood; the arithmetic is done by hand from the definitions of the units (foot 0.3048 m).</summary>
public class QuantityReaderTests
{
    [Theory]
    [InlineData("12'6\"", 3.81), InlineData("12'-6 1/2\"", 3.8227), InlineData("12 ft 6 in", 3.81), InlineData("6 1/2 in", 0.1651)]
    [InlineData("3.81 m", 3.81), InlineData("381 cm", 3.81), InlineData("12' 6\"", 3.81), InlineData("12’-6½”", 3.8227), InlineData("12′ 6″", 3.81)]
    [InlineData("26'", 7.9248), InlineData("26'-0\"", 7.9248), InlineData("26 feet", 7.9248), InlineData("½ in", 0.0127), InlineData("1/2\"", 0.0127)]
    [InlineData("12ft6in", 3.81), InlineData("12ft 2in", 3.7084), InlineData("12.5 ft", 3.81), InlineData("-2'6\"", -0.762), InlineData("1,500 mm", 1.5)]
    [InlineData("6-1/2 in", 0.1651), InlineData("12'6''", 3.81), InlineData("5 ft. 3 in.", 1.6002), InlineData("3 m 81 cm", 3.81), InlineData("12 ft and 6 in", 3.81)]
    [InlineData("0'-3 5/8\"", 0.092075), InlineData("  26  ft ", 7.9248), InlineData("1e1 m", 10)]
    public void Lengths(string typed, double metres) => Assert.Equal(metres, Read(typed, QuantityKind.Length).Inside, 1e-12);

    [Theory]
    [InlineData("9.5:12", 9.5 / 12), InlineData("9.5 : 12", 9.5 / 12), InlineData("9 1/2 : 12", 9.5 / 12), InlineData("6/12", 0.5), InlineData("6 in 12", 0.5)]
    [InlineData("45 deg", 1), InlineData("45°", 1), InlineData("50 %", 0.5), InlineData("1:1", 1), InlineData("30 deg", 0.57735026918962573)]
    public void Pitches(string typed, double riseOverRun) => Assert.Equal(riseOverRun, Read(typed, QuantityKind.Pitch).Inside, 1e-12);

    [Theory]
    [InlineData("88 F", 31.111111111111), InlineData("31 C", 31), InlineData("88°F", 31.111111111111), InlineData("−4 °F", -20), InlineData("-40 C", -40)]
    [InlineData("304.15 K", 31), InlineData("88 deg F", 31.111111111111), InlineData("32F", 0)]
    public void Temperatures(string typed, double celsius) => Assert.Equal(celsius, Read(typed, QuantityKind.Temperature).Inside, 1e-9);

    [Theory]
    [InlineData("5 F°", 2.7777777777777777), InlineData("5 K", 5), InlineData("9 C°", 9), InlineData("-9 F°", -5)]
    public void Temperature_differences(string typed, double kelvin) =>
        Assert.Equal(kelvin, Read(typed, QuantityKind.TemperatureDifference).Inside, 1e-12);

    [Theory]
    [InlineData("3 F"), InlineData("3F"), InlineData("3 deg F"), InlineData("3 °F"), InlineData("3 degrees F"), InlineData("3 Fahrenheit")]
    public void Degrees_where_only_a_difference_stands_are_one(string typed)
    {
        Quantity read = Read(typed, QuantityKind.TemperatureDifference);
        Assert.Equal(3 / 1.8, read.Inside, 1e-12);
        Assert.Equal("3 F° (1.667 K)", read.Echo);
        Assert.Equal(3, Read(typed.Replace("Fahrenheit", "F", StringComparison.Ordinal).Replace('F', 'C'), QuantityKind.TemperatureDifference).Inside, 1e-12);
    }

    [Theory]
    [InlineData("8'-6", 2.5908), InlineData("8' 6", 2.5908), InlineData("12'-6 1/2", 3.8227)]
    public void Behind_a_foot_mark_stand_inches(string typed, double m) => Assert.Equal(m, Read(typed, QuantityKind.Length).Inside, 1e-9);

    [Theory]
    [InlineData("11\" WC"), InlineData("11\"w.c."), InlineData("11 in wc"), InlineData("11 in. W.C."), InlineData("11 inWG"), InlineData("11 inwg")]
    public void Water_gauge_is_written_in_many_ways(string typed) => Assert.Equal(11 * 249.08891, Read(typed, QuantityKind.Pressure).Inside, 1e-6);

    [Theory]
    [InlineData("88.3 W", -88.3), InlineData("88.3° W", -88.3), InlineData("41.9 N", 41.9), InlineData("41.9°N", 41.9), InlineData("88.3 degrees west", -88.3), InlineData("41.9 North", 41.9), InlineData("33 S", -33)]
    public void Degrees_of_a_map(string typed, double deg) => Assert.Equal(deg, Read(typed, QuantityKind.Angle).Inside, 1e-12);

    [Theory]
    [InlineData("65-70"), InlineData("65 - 70 F"), InlineData("65 F to 70 F"), InlineData("65–70°F")]
    public void A_range_is_called_one(string typed) => Assert.Equal(($"'{typed}' is a range", "one number, as 88 F"), (Refused(typed, QuantityKind.Temperature).Wrong, Refused(typed, QuantityKind.Temperature).Right));

    [Theory]
    [InlineData("5"), InlineData("5 deg")]
    public void A_temperature_difference_without_its_scale_is_refused_and_told_how(string typed)
    {
        Misreading misreading = Refused(typed, QuantityKind.TemperatureDifference);
        Assert.Equal("5 F° or 5 K", misreading.Right);
    }

    [Fact]
    public void A_difference_where_a_temperature_is_wanted_is_refused() =>
        Assert.Equal("'5 F°' is a temperature difference; a temperature is wanted", Refused("5 F°", QuantityKind.Temperature).Wrong);

    // Expected by hand: 5000 ft³/min = 5000·0.3048³/60; psf = 0.45359237·9.80665/0.3048²; Btu_IT = 1055.05585262 J; gallon = 231 in³.
    [Theory]
    [InlineData("5000 cfm", QuantityKind.AirFlow, 2.3597372), InlineData("28,200 cfm", QuantityKind.AirFlow, 13.308918)]
    [InlineData("0.1 inwg", QuantityKind.Pressure, 24.908891), InlineData("0.10 in. w.g.", QuantityKind.Pressure, 24.908891), InlineData("1000 psi", QuantityKind.Pressure, 6894757.3)]
    [InlineData("20 psf", QuantityKind.AreaLoad, 957.60518), InlineData("0.96 kPa", QuantityKind.AreaLoad, 960), InlineData("1500 psf", QuantityKind.AreaLoad, 71820.389)]
    [InlineData("105 mph", QuantityKind.Speed, 46.9392), InlineData("46 m/s", QuantityKind.Speed, 46), InlineData("336 fpm", QuantityKind.Speed, 1.70688)]
    [InlineData("125 kBtu/h", QuantityKind.Power, 36633.884), InlineData("30 kW", QuantityKind.Power, 30000), InlineData("1 hp", QuantityKind.Power, 745.69987)]
    [InlineData("9 gpm", QuantityKind.WaterFlow, 5.6781177e-4), InlineData("1.0 gph", QuantityKind.WaterFlow, 1.0515033e-6)]
    [InlineData("260 mg/L", QuantityKind.Concentration, 260), InlineData("45 %", QuantityKind.Fraction, 0.45), InlineData("1.5%", QuantityKind.Fraction, 0.015)]
    [InlineData("240 V", QuantityKind.Voltage, 240), InlineData("200 A", QuantityKind.Current, 200), InlineData("14 h", QuantityKind.Duration, 50400)]
    [InlineData("1 h 30 min", QuantityKind.Duration, 5400), InlineData("1h30min", QuantityKind.Duration, 5400)]
    [InlineData("2.10 $/gal", QuantityKind.MoneyPerVolume, 554.76131), InlineData("$2.10/gal", QuantityKind.MoneyPerVolume, 554.76131)]
    [InlineData("6 $/kgal", QuantityKind.MoneyPerVolume, 1.5850323), InlineData("$6/1,000 gal", QuantityKind.MoneyPerVolume, 1.5850323)]
    [InlineData("0.14 $/kWh", QuantityKind.MoneyPerEnergy, 0.14), InlineData("9 $/kW-month", QuantityKind.MoneyPerPower, 9), InlineData("58 $/h", QuantityKind.MoneyPerTime, 58)]
    [InlineData("$1,200", QuantityKind.Money, 1200), InlineData("-$50", QuantityKind.Money, -50), InlineData("€12.50", QuantityKind.Money, 12.5), InlineData("7 EUR", QuantityKind.Money, 7)]
    [InlineData("R-20", QuantityKind.Resistance, 3.5222037), InlineData("RSI 3.5", QuantityKind.Resistance, 3.5), InlineData("20 h·ft²·°F/Btu", QuantityKind.Resistance, 3.5222037)]
    [InlineData("U-0.5", QuantityKind.Transmittance, 2.8391317), InlineData("2.3 W/m²K", QuantityKind.Transmittance, 2.3), InlineData("2.3 W/(m2 K)", QuantityKind.Transmittance, 2.3)]
    [InlineData("17 mol/m2d", QuantityKind.DailyLight, 17), InlineData("17 mol/m²/d", QuantityKind.DailyLight, 17), InlineData("200 µmol/m²·s", QuantityKind.PhotonFlux, 200)]
    [InlineData("84 sq ft", QuantityKind.Area, 7.8038554), InlineData("500 gal", QuantityKind.Volume, 1.8927059), InlineData("5 lb 8 oz", QuantityKind.Mass, 2.494758)]
    [InlineData("0.85", QuantityKind.Ratio, 0.85), InlineData("85 %", QuantityKind.Ratio, 0.85), InlineData("2 MJ", QuantityKind.Energy, 2e6), InlineData("1 gr/gal", QuantityKind.Concentration, 17.118061)]
    public void Every_kind(string typed, QuantityKind kind, double inside) => Assert.Equal(inside, Read(typed, kind).Inside, Math.Abs(inside) * 1e-7);

    [Theory]
    [InlineData("30", "30 has no unit", "30 ft or 30 m")]
    [InlineData("30 kg", "'30 kg' is a weight; a length is wanted", "30 ft or 30 m")]
    [InlineData("30 cubits", "'cubits' in '30 cubits' is not a unit of a length", "30 ft or 30 m")]
    [InlineData("5' 14\"", "'5' 14\"': 14 in is more than one ft", "carry it over into ft")]
    [InlineData("6\" 5'", "'6\" 5'': 5 ' cannot follow in", "12'6\" or 12'-6 1/2\" or 12 ft 6 in")]
    [InlineData("3,81 m", "'3,81 m' cannot be read as a length: the comma in 3,81 does not part thousands; a decimal is written 3.81", "12'6\" or 12'-6 1/2\" or 12 ft 6 in")]
    [InlineData("12 3/2 in", "'12 3/2 in' cannot be read as a length: 3/2 is not a proper fraction", "12'6\" or 12'-6 1/2\" or 12 ft 6 in")]
    [InlineData("1/0 in", "'1/0 in' cannot be read as a length: 1/0 divides by nothing", "12'6\" or 12'-6 1/2\" or 12 ft 6 in")]
    [InlineData("wide", "'wide' cannot be read as a length: there is no number at 'wide'", "12'6\" or 12'-6 1/2\" or 12 ft 6 in")]
    [InlineData("", "nothing is typed; a length is wanted", "12'6\" or 12'-6 1/2\" or 12 ft 6 in")]
    public void Refusals_say_what_is_wrong_and_what_would_be_right(string typed, string wrong, string right)
    {
        Misreading misreading = Refused(typed, QuantityKind.Length);
        Assert.Equal(wrong, misreading.Wrong);
        Assert.Equal(right, misreading.Right);
    }

    [Theory]
    [InlineData("0.1 in", QuantityKind.Pressure), InlineData("5", QuantityKind.Pressure), InlineData("45", QuantityKind.Fraction), InlineData("30 mw", QuantityKind.Power)]
    [InlineData("5 psi", QuantityKind.AirFlow), InlineData("NaN m", QuantityKind.Length), InlineData("1e300 m", QuantityKind.Length), InlineData("9.5:0", QuantityKind.Pitch)]
    [InlineData("90 deg", QuantityKind.Pitch), InlineData("--5 m", QuantityKind.Length), InlineData("5 m m", QuantityKind.Length), InlineData("R-", QuantityKind.Resistance)]
    public void Refused_too(string typed, QuantityKind kind) => Refused(typed, kind);

    [Theory]
    [InlineData("26'-0\"", QuantityKind.Length, "26'-0\" (7.92 m)"), InlineData("26 ft", QuantityKind.Length, "26'-0\" (7.92 m)"), InlineData("3.81 m", QuantityKind.Length, "3.81 m (12'-6\")")]
    [InlineData("6 1/2 in", QuantityKind.Length, "6 1/2\" (165.1 mm)"), InlineData("9.5:12", QuantityKind.Pitch, "9.5:12 (38.37 deg)"), InlineData("26.6 deg", QuantityKind.Pitch, "26.6 deg (6.009:12)")]
    [InlineData("88 F", QuantityKind.Temperature, "88 °F (31.1 °C)"), InlineData("5 F°", QuantityKind.TemperatureDifference, "5 F° (2.778 K)")]
    [InlineData("5000 cfm", QuantityKind.AirFlow, "5,000 cfm (2.36 m³/s)"), InlineData("0.1 inwg", QuantityKind.Pressure, "0.1 inwg (24.91 Pa)"), InlineData("45 %", QuantityKind.Fraction, "45 %")]
    [InlineData("R-20", QuantityKind.Resistance, "R-20 (3.522 m²K/W)"), InlineData("$2.10/gal", QuantityKind.MoneyPerVolume, "2.1 $/gal (554.8 $/m³)"), InlineData("€1200", QuantityKind.Money, "€1,200")]
    [InlineData("20 psf", QuantityKind.AreaLoad, "20 psf (0.9576 kPa)"), InlineData("9 gpm", QuantityKind.WaterFlow, "9 gpm (0.5678 L/s)"), InlineData("0.85", QuantityKind.Ratio, "0.85")]
    public void The_echo_says_both_families(string typed, QuantityKind kind, string echo) => Assert.Equal(echo, Read(typed, kind).Echo);

    [Fact]
    public void Each_example_of_each_kind_is_read()
    {
        foreach (QuantityKind kind in Enum.GetValues<QuantityKind>())
        {
            foreach (string example in KindWords.Of(kind).Examples)
            {
                Read(example, kind);
            }
        }
    }

    [Fact]
    public void Each_unit_symbol_and_spelling_is_read_as_itself()
    {
        foreach (UnitOfMeasure unit in UnitTable.All)
        {
            foreach (string spelling in unit.Spellings.Prepend(unit.Symbol))
            {
                Quantity quantity = Read("2 " + spelling, unit.Kind);
                double expected = unit.ToInside(2);
                Assert.Equal(unit.Kind == QuantityKind.Pitch && unit.Symbol != "%" ? Math.Tan(expected) : expected, quantity.Inside, 1e-12 * Math.Abs(expected));
            }
        }
    }

    internal static Quantity Read(string typed, QuantityKind kind)
    {
        Assert.True(QuantityReader.TryRead(typed, kind, out Quantity quantity, out Misreading? misreading), $"{typed}: {misreading?.Wrong}");
        return quantity;
    }

    private static Misreading Refused(string typed, QuantityKind kind)
    {
        Assert.False(QuantityReader.TryRead(typed, kind, out _, out Misreading? misreading), typed);
        Assert.NotEqual("", misreading.Right);
        return misreading;
    }
}
