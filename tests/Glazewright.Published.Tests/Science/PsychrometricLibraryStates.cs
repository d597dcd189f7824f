using Glazewright.Science.Air;

namespace Glazewright.Published.Tests.Science;

/// <summary>
/// States computed with psychrolib 1.1.1 (npm; MIT), a general psychrometric library after the 2017 Handbook; two rows near freezing read in its test file.
/// The library is called itself, over a sweep, by <see cref="PsychrometricLibraryLive"/> when it has been fetched.
/// </summary>
public class PsychrometricLibraryStates
{
    // The reference is printed to four or five figures: 2e-4 relative, plus half the last printed digit.
    [Theory]
    [InlineData(-20, 0.000634, 0.7179, -18.557)]
    [InlineData(-10, 0.001599, 0.7474, -6.090)]
    [InlineData(0, 0.003774, 0.7785, 9.439)]
    [InlineData(10, 0.007630, 0.8120, 29.285)]
    [InlineData(20, 0.014695, 0.8501, 57.419)]
    [InlineData(30, 0.027203, 0.8964, 99.732)]
    [InlineData(40, 0.048883, 0.9568, 166.132)]
    public void Saturated_air(double dryBulbC, double ratio, double volume, double enthalpyKJ)
    {
        AirState air = AirState.FromRelativeHumidity(dryBulbC, 1, 101_325);
        Assert.Equal(ratio, air.HumidityRatio, 2e-4 * ratio + 5e-7);
        Assert.Equal(volume, air.VolumeM3PerKg, 2e-4 * volume + 5e-5);
        Assert.Equal(enthalpyKJ, air.EnthalpyJPerKg / 1000, 2e-4 * Math.Abs(enthalpyKJ) + 5e-4);
    }

    // IP run of the same library: Btu/lb above 0 °F, ft³/lb; 14.696 psia. Its own IP constants differ by up to 3e-4.
    [Theory]
    [InlineData(40, 0.005194, 12.702)]
    [InlineData(60, 0.011041, 13.333)]
    [InlineData(80, 0.022239, 14.092)]
    [InlineData(95, 0.036576, 14.806)]
    public void Saturated_air_in_inch_pound_units(double dryBulbF, double ratio, double volumeFt3PerLb)
    {
        AirState air = AirState.FromRelativeHumidity((dryBulbF - 32) / 1.8, 1, 14.696 * 6894.757);
        Assert.Equal(ratio, air.HumidityRatio, 3e-4 * ratio);
        Assert.Equal(volumeFt3PerLb, air.VolumeM3PerKg * 35.31467 / 2.2046226, 3e-4 * volumeFt3PerLb);
    }

    private static void Holds(
        AirState air, double ratio, double? wetBulbC, double dewPointC, double humidityPercent, double enthalpyKJ, double volume)
    {
        Assert.Equal(ratio, air.HumidityRatio, 2e-4 * ratio + 5e-7);
        if (wetBulbC is double wetC)
        {
            Assert.Equal(wetC, air.WetBulbC, 0.01);
        }

        Assert.Equal(dewPointC, air.DewPointC, 0.01);
        Assert.Equal(humidityPercent, 100 * air.RelativeHumidityFraction, 0.05);
        Assert.Equal(enthalpyKJ, air.EnthalpyJPerKg / 1000, 2e-4 * Math.Abs(enthalpyKJ) + 1e-3);
        Assert.Equal(volume, air.VolumeM3PerKg, 2e-4 * volume);
    }

    [Fact]
    public void Half_humid_at_25()
    {
        AirState air = AirState.FromRelativeHumidity(25, 0.5, 101_325);
        Holds(air, 0.009881, 17.889, 13.864, 50, 50.322, 0.85804);
        Assert.Equal(1584.6, air.VapourDeficitPa, 0.3);
    }

    [Fact]
    public void Hot_and_dry_from_wet_bulb()
    {
        AirState air = AirState.FromWetBulb(35, 22, 101_325);
        Holds(air, 0.011220, 22, 15.801, 31.90, 64.001, 0.88870);
        Assert.Equal(3832.3, air.VapourDeficitPa, 1.0);
    }

    [Fact]
    public void Thin_air_at_a_mile_high()
    {
        double pressurePa = StandardAtmosphere.PressurePa(1609);
        Assert.Equal(83_431, pressurePa, 1.0);
        AirState air = AirState.FromRelativeHumidity(32, 0.25, pressurePa);
        Holds(air, 0.008997, 17.318, 9.527, 25, 55.228, 1.06505);
        Assert.Equal(3568.9, air.VapourDeficitPa, 1.0);
    }

    [Fact]
    public void Damp_house_at_a_northern_lake()
    {
        double pressurePa = StandardAtmosphere.PressurePa(433);
        Assert.Equal(96_230, pressurePa, 1.0);
        AirState air = AirState.FromRelativeHumidity(18, 0.85, pressurePa);
        Holds(air, 0.011551, 16.337, 15.442, 85, 47.384, 0.88459);
        Assert.Equal(309.6, air.VapourDeficitPa, 0.3);
    }

    [Fact]
    public void Frost_has_a_frost_point()
    {
        AirState air = AirState.FromRelativeHumidity(-20, 0.8, StandardAtmosphere.PressurePa(433));
        Assert.Equal(0.000534, air.HumidityRatio, 6e-7);
        Assert.Equal(-20.320, air.WetBulbC, 0.01);
        Assert.Equal(-22.304, air.DewPointC, 0.01);
        Assert.Equal(-18.803, air.EnthalpyJPerKg / 1000, 0.005);
    }

    [Fact]
    public void From_dew_point()
    {
        AirState air = AirState.FromDewPoint(24, 16, 101_325);
        Holds(air, 0.011366, 18.742, 16, 60.92, 53.077, 0.85717);
        Assert.Equal(1166.7, air.VapourDeficitPa, 0.5);
    }

    [Fact]
    public void From_wet_bulb_at_671_m() =>
        Holds(
            AirState.FromWetBulb(28.5, 17.2, StandardAtmosphere.PressurePa(671)),
            0.008639, null, 10.635, 32.91, 50.736, 0.93872);

    // 40 °C/20 °C and 100 °F/65 °F: the Handbook's example 1 through the library. The inch-pound equation rounds the heat of air to 0.240 (ours is 0.24028):
    // 35 °F × 0.00028 / 1093 = 9e-6 of humidity ratio, which also moves dew point and humidity.
    [Fact]
    public void Example_1_unrounded()
    {
        Holds(AirState.FromWetBulb(40, 20, 101_325), 0.006401, 20, 7.434, 13.98, 56.725, 0.89625);
        AirState inchPound = AirState.FromWetBulb((100 - 32) / 1.8, (65 - 32) / 1.8, 101_325);
        Assert.Equal(0.00519, inchPound.HumidityRatio, 1e-5);
        Assert.Equal(39.98, 32 + 1.8 * inchPound.DewPointC, 0.05);
        Assert.Equal(12.80, 100 * inchPound.RelativeHumidityFraction, 0.05);
        Assert.Equal(14.227, inchPound.VolumeM3PerKg * 35.31467 / 2.2046226, 3e-3);
    }

    // Read in the library's test file, which itself allows 3e-4 relative (its numbers come from an older saturation formula); wet bulb 0.001.
    [Fact]
    public void Near_freezing()
    {
        Assert.Equal(0.0192281, MoistAir.HumidityRatio(30, 25, 95_461), 3e-4 * 0.0192281);
        Assert.Equal(0.00120400, MoistAir.HumidityRatio(-1, -5, 95_461), 3e-4 * 0.00120400);
        Assert.Equal(3.9267, AirState.FromRelativeHumidity(7, 0.61, 100_000).WetBulbC, 0.001);
    }

    [Theory]
    [InlineData(300, 97772.6)]
    [InlineData(1500, 84555.9)]
    [InlineData(2000, 79495.1)]
    public void Standard_pressure(double elevationM, double pressurePa) =>
        Assert.Equal(pressurePa, StandardAtmosphere.PressurePa(elevationM), 0.06);
}
