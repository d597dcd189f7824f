using Glazewright.Science.Air;
using Glazewright.Science.Crop;

namespace Glazewright.Published.Tests.Science;

/// <summary>
/// Allen et al. 1998, FAO Irrigation and Drainage Paper 56, worked examples. 2 to 6, 8 to 10, 17 and 18: read at second hand (test files of two
/// libraries that quote them), recomputed; 19: inputs from memory, recomputed.
/// </summary>
public class Fao56Examples
{
    [Fact]
    public void Example_2_pressure_and_psychrometric_constant()
    {
        Assert.Equal(81.756, Fao56.PressureKPa(1800), 0.005);
        Assert.Equal(0.05437, Fao56.PsychrometricKPaPerK(81.756), 0.00005);
    }

    [Fact]
    public void Example_3_mean_of_the_two_not_of_the_temperature()
    {
        Assert.Equal(3.075, Fao56.SaturationKPa(24.5), 0.0005);
        Assert.Equal(1.705, Fao56.SaturationKPa(15), 0.0005);
        Assert.Equal(2.39, 0.5 * (Fao56.SaturationKPa(24.5) + Fao56.SaturationKPa(15)), 0.005);
        Assert.Equal(2.30, Fao56.SaturationKPa(19.75), 0.005);
    }

    [Fact]
    public void Example_4_psychrometer() =>
        Assert.Equal(1.91, Fao56.VapourOfPsychrometerKPa(25.6, 19.5, Fao56.PressureKPa(1200)), 0.005);

    [Fact]
    public void Examples_5_and_6_actual_vapour_pressure_and_deficit()
    {
        double actual = 0.5 * (Fao56.SaturationKPa(18) * 0.82 + Fao56.SaturationKPa(25) * 0.54);
        Assert.Equal(1.7015, actual, 0.0005);
        Assert.Equal(0.916, 0.5 * (Fao56.SaturationKPa(18) + Fao56.SaturationKPa(25)) - actual, 0.005);
    }

    [Fact]
    public void Examples_8_and_9_extraterrestrial_and_daylight()
    {
        Assert.Equal(32.194, Fao56.DailyExtraterrestrialMjPerM2(-20, 246), 0.01);
        Assert.Equal(11.666, Fao56.DaylightH(-20, 246), 0.005);
    }

    // May 15 is day 135; the example prints 25.1, 10.9 and 14.5 (14.45 in one quotation).
    [Fact]
    public void Example_10_solar_radiation_from_sunshine()
    {
        double extraterrestrial = Fao56.DailyExtraterrestrialMjPerM2(-22.9, 135);
        double daylight = Fao56.DaylightH(-22.9, 135);
        Assert.Equal(25.1, extraterrestrial, 0.05);
        Assert.Equal(10.9, daylight, 0.05);
        Assert.Equal(14.475, Fao56.SolarOfSunshineMjPerM2(7.1, daylight, extraterrestrial), 0.05);
    }

    // Annex and case table: computed from eq. 21 with another program.
    [Theory]
    [InlineData(45, 15, 11.931)]
    [InlineData(45, 172, 41.911)]
    [InlineData(45.72, 105, 32.984)]
    [InlineData(50.8, 187, 41.088)]
    [InlineData(46.83, 355, 9.331)]
    [InlineData(33.45, 185, 41.257)]
    public void Daily_extraterrestrial_radiation(double latitudeDeg, int day, double published) =>
        Assert.Equal(published, Fao56.DailyExtraterrestrialMjPerM2(latitudeDeg, day), 0.01);

    [Fact]
    public void Example_17_Bangkok_in_April()
    {
        const double latitudeDeg = 13 + 44 / 60.0;
        double extraterrestrial = Fao56.DailyExtraterrestrialMjPerM2(latitudeDeg, 105);
        double daylight = Fao56.DaylightH(latitudeDeg, 105);
        double solar = Fao56.SolarOfSunshineMjPerM2(8.5, daylight, extraterrestrial);
        double clear = Fao56.ClearSkyMjPerM2(extraterrestrial, 2);
        double longWave = Fao56.NetLongWaveMjPerM2(34.8, 25.6, 2.85, solar / clear);
        double saturation = 0.5 * (Fao56.SaturationKPa(34.8) + Fao56.SaturationKPa(25.6));
        Assert.Equal(38.06, extraterrestrial, 0.01);
        Assert.Equal(12.31, daylight, 0.01);
        Assert.Equal(22.65, solar, 0.01);
        Assert.Equal(28.54, clear, 0.01);
        Assert.Equal(3.11, longWave, 0.01);
        Assert.Equal(14.33, 0.77 * solar - longWave, 0.01);
        Assert.Equal(4.42, saturation, 0.01);
        Assert.Equal(0.246, Fao56.SlopeKPaPerK(30.2), 0.0005);
        double mm = Fao56.DailyMm(0.77 * solar - longWave - 0.14, 30.2, 2, saturation - 2.85, Fao56.PressureKPa(2));
        Assert.Equal(5.72, mm, 0.01);
    }

    [Fact]
    public void Example_18_Uccle_in_July()
    {
        double extraterrestrial = Fao56.DailyExtraterrestrialMjPerM2(50.8, 187);
        double daylight = Fao56.DaylightH(50.8, 187);
        double solar = Fao56.SolarOfSunshineMjPerM2(9.25, daylight, extraterrestrial);
        double clear = Fao56.ClearSkyMjPerM2(extraterrestrial, 100);
        double saturation = 0.5 * (Fao56.SaturationKPa(21.5) + Fao56.SaturationKPa(12.3));
        double actual = 0.5 * (Fao56.SaturationKPa(12.3) * 0.84 + Fao56.SaturationKPa(21.5) * 0.63);
        double longWave = Fao56.NetLongWaveMjPerM2(21.5, 12.3, actual, solar / clear);
        double wind = Fao56.WindAtTwoMetresMPerS(2.78, 10);
        Assert.Equal(2.079, wind, 0.0005);
        Assert.Equal(1.997, saturation, 0.0005);
        Assert.Equal(1.409, actual, 0.0005);
        Assert.Equal(22.07, solar, 0.01);
        Assert.Equal(30.90, clear, 0.01);
        Assert.Equal(3.71, longWave, 0.01);
        Assert.Equal(13.28, 0.77 * solar - longWave, 0.01);
        double mm = Fao56.DailyMm(0.77 * solar - longWave, 16.9, wind, saturation - actual, Fao56.PressureKPa(100));
        Assert.Equal(3.880, mm, 0.005);
    }

    [Fact]
    public void Example_19_an_hour_at_NDiaye()
    {
        double extraterrestrial = Fao56.PeriodExtraterrestrialMjPerM2(16.217, -16.25, -15, 274, 14.5, 1);
        double clear = Fao56.ClearSkyMjPerM2(extraterrestrial, 8);
        double saturation = Fao56.SaturationKPa(38);
        double actual = 0.52 * saturation;
        double longWave = Fao56.NetLongWaveMjPerM2(38, 38, actual, 2.450 / clear) / 24;
        double net = 0.77 * 2.450 - longWave;
        Assert.Equal(3.543, extraterrestrial, 0.001);
        Assert.Equal(2.658, clear, 0.001);
        Assert.Equal(6.625, saturation, 0.001);
        Assert.Equal(3.445, actual, 0.001);
        Assert.Equal(0.137, longWave, 0.001);
        Assert.Equal(1.749, net, 0.001);
        double mm = Fao56.HourlyMm(net - 0.1 * net, 38, 3.3, saturation - actual, Fao56.PressureKPa(8));
        Assert.Equal(0.627, mm, 0.003);
    }

    // Vapour pressure deficits from FAO's own curve; the Handbook's differs by less than 0.1 % from 0 to 40 °C.
    [Theory]
    [InlineData(20, 0.80, 0.468)]
    [InlineData(25, 0.70, 0.950)]
    [InlineData(18, 0.90, 0.206)]
    [InlineData(28, 0.60, 1.512)]
    [InlineData(32, 0.45, 2.615)]
    public void Deficit_of_air(double airC, double humidity, double publishedKPa)
    {
        Assert.Equal(publishedKPa, (1 - humidity) * Fao56.SaturationKPa(airC), 0.0006);
        Assert.Equal(publishedKPa, MoistAir.VapourDeficitPa(airC, humidity, airC) / 1000, 0.001 * publishedKPa + 0.0006);
    }

    [Fact]
    public void Deficit_at_a_cooler_leaf() => Assert.Equal(0.592, MoistAir.VapourDeficitPa(25, 0.70, 23) / 1000, 0.003);
}
