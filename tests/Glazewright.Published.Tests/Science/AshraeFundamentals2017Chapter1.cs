using Glazewright.Science.Air;

namespace Glazewright.Published.Tests.Science;

/// <summary>
/// ASHRAE Handbook—Fundamentals (2017), ch. 1, "Psychrometrics". Tables 1 to 3 and example 1: read at second hand (a psychrometric library's test
/// file that quotes them). Examples 2 and 4: statement from memory, answers recomputed from the chapter's equations.
/// </summary>
public class AshraeFundamentals2017Chapter1
{
    private const double SeaLevelPa = 101_325;

    // Tolerance 300 ppm: the Handbook's own claim for eqs (5) and (6) against its table 3.
    [Theory]
    [InlineData(-20, 103.24)]
    [InlineData(-5, 401.74)]
    [InlineData(5, 872.6)]
    [InlineData(25, 3169.7)]
    [InlineData(50, 12351.3)]
    [InlineData(100, 101418.0)]
    public void Table_3_saturation_pressure(double dryBulbC, double publishedPa) =>
        Assert.Equal(publishedPa, Saturation.PressurePa(dryBulbC), 300e-6 * publishedPa);

    // Half the last digit printed.
    [Fact]
    public void Table_3_saturation_pressure_in_deep_frost() => Assert.Equal(1.08, Saturation.PressurePa(-60), 0.005);

    // IP table, psi; 300 ppm as above, plus half the last digit of the coldest value.
    [Theory]
    [InlineData(-4, 0.014974)]
    [InlineData(23, 0.058268)]
    [InlineData(41, 0.12656)]
    [InlineData(77, 0.45973)]
    [InlineData(122, 1.79140)]
    public void Table_3_saturation_pressure_in_psi(double dryBulbF, double publishedPsi) =>
        Assert.Equal(publishedPsi, Saturation.PressurePa((dryBulbF - 32) / 1.8) / 6894.757, 300e-6 * publishedPsi);

    // Tolerance 1 % (3 % in frost): the table has the enhancement factor, the ideal-gas form has not.
    [Theory]
    [InlineData(-20, 0.0006373, 0.03)]
    [InlineData(-5, 0.0024863, 0.03)]
    [InlineData(5, 0.005425, 0.01)]
    [InlineData(25, 0.020173, 0.01)]
    [InlineData(50, 0.086863, 0.01)]
    public void Table_2_saturated_humidity_ratio(double dryBulbC, double published, double share) =>
        Assert.Equal(published, Saturation.HumidityRatio(dryBulbC, SeaLevelPa), share * published);

    [Theory]
    [InlineData(-20, -18.542, 0.01)]
    [InlineData(5, 18.639, 0.01)]
    [InlineData(25, 76.504, 0.01)]
    [InlineData(50, 275.353, 0.01)]
    public void Table_2_saturated_enthalpy(double dryBulbC, double publishedKJ, double share)
    {
        double ratio = Saturation.HumidityRatio(dryBulbC, SeaLevelPa);
        Assert.Equal(publishedKJ, MoistAir.EnthalpyJPerKg(dryBulbC, ratio) / 1000, share * Math.Abs(publishedKJ));
    }

    // Pressures are printed to 1 Pa (1000 m: 0.001 kPa); temperatures to 0.1 °C.
    [Theory]
    [InlineData(-500, 107478, 18.2)]
    [InlineData(0, 101325, 15.0)]
    [InlineData(500, 95461, 11.8)]
    [InlineData(1000, 89875, 8.5)]
    [InlineData(4000, 61640, -11.0)]
    [InlineData(10000, 26436, -50.0)]
    public void Table_1_standard_atmosphere(double elevationM, double publishedPa, double publishedC)
    {
        Assert.Equal(publishedPa, StandardAtmosphere.PressurePa(elevationM), 1.0);
        Assert.Equal(publishedC, StandardAtmosphere.TemperatureC(elevationM), 0.0501);
    }

    // By the mercury column (3386.39 Pa/in). The inch-pound table prints 14.175 psi at 1000 ft; its own formula and the 28.855 in. say 14.1726.
    [Theory]
    [InlineData(1000, 28.855)]
    [InlineData(2000, 27.821)]
    [InlineData(3000, 26.817)]
    [InlineData(4000, 25.842)]
    [InlineData(5000, 24.896)]
    [InlineData(6000, 23.978)]
    [InlineData(8000, 22.225)]
    public void Table_1_in_inches_of_mercury(double elevationFt, double published) =>
        Assert.Equal(published, StandardAtmosphere.PressurePa(elevationFt * 0.3048) / 3386.39, 0.001);

    // Read off a chart in print: last digit ±1; its dew point by 0.5.
    [Fact]
    public void Example_1_state_of_air_at_40_dry_20_wet()
    {
        AirState air = AirState.FromWetBulb(40, 20, SeaLevelPa);
        Assert.Equal(0.0065, air.HumidityRatio, 0.00011);
        Assert.Equal(7, air.DewPointC, 0.5);
        Assert.Equal(14, 100 * air.RelativeHumidityFraction, 1.0);
        Assert.Equal(56.7, air.EnthalpyJPerKg / 1000, 0.1);
        Assert.Equal(0.896, air.VolumeM3PerKg, 0.001);
    }

    // 10 m³/s of saturated air at 2 °C heated to 40 °C. Handbook 490 kW (from memory); recomputed 490.9 and 12.740 kg/s.
    [Fact]
    public void Example_2_heating_coil()
    {
        AirState cold = AirState.FromRelativeHumidity(2, 1, SeaLevelPa);
        double dryKgPerS = 10 / cold.VolumeM3PerKg;
        AirState warm = AirState.FromHumidityRatio(40, cold.HumidityRatio, SeaLevelPa);
        double heatKW = dryKgPerS * (warm.EnthalpyJPerKg - cold.EnthalpyJPerKg) / 1000;
        Assert.Equal(12.740, dryKgPerS, 0.001);
        Assert.Equal(490.9, heatKW, 0.1);
        Assert.Equal(40, AirProcess.Heat(cold, heatKW * 1000 / dryKgPerS).State.DryBulbC, 1e-9);
    }

    // Handbook 19.5 and 14.6 °C from the chart (from memory); recomputed 19.63 and 14.56.
    [Fact]
    public void Example_4_mixing_of_two_streams()
    {
        AirState outdoor = AirState.FromWetBulb(4, 2, SeaLevelPa);
        AirState indoor = AirState.FromRelativeHumidity(25, 0.5, SeaLevelPa);
        Assert.Equal(0.7896, outdoor.VolumeM3PerKg, 0.0001);
        Assert.Equal(0.8580, indoor.VolumeM3PerKg, 0.0001);
        WettedAir mixed = AirProcess.Mix(
            outdoor, 2 / outdoor.VolumeM3PerKg, indoor, 6.25 / indoor.VolumeM3PerKg);
        Assert.Equal(19.63, mixed.State.DryBulbC, 0.02);
        Assert.Equal(14.56, mixed.State.WetBulbC, 0.02);
        Assert.Equal(0, mixed.LiquidKgPerKg);
    }
}
