using CsCheck;
using Glazewright.Science.Climate;

namespace Glazewright.Science.Tests.Climate;

public class VapourTableTests
{
    // ASHRAE Handbook—Fundamentals (2017, SI), ch. 1, table 3, read at second hand; 300 ppm is the Handbook's own claim.
    [Theory]
    [InlineData(-20, 103.24), InlineData(-5, 401.74), InlineData(5, 872.6), InlineData(25, 3169.7), InlineData(50, 12351.3), InlineData(100, 101418.0)]
    public void Saturation_pressure_of_the_handbook(double temperatureC, double publishedPa) =>
        Assert.Equal(publishedPa, VapourTable.PressurePa(temperatureC), 300e-6 * publishedPa);

    // Computed from the same equations in plain form; the table must follow between its points too.
    [Fact]
    public void The_pieces_follow_the_formula() =>
        Gen.Double[-99, 119].Where(c => Math.Abs(c - 0.01) > 1e-9).Sample(
            c =>
            {
                double t = c + 273.15;
                double log = c < 0.01
                    ? -5.6745359e3 / t + 6.3925247 - 9.677843e-3 * t + 6.2215701e-7 * t * t + 2.0747825e-9 * t * t * t - 9.484024e-13 * t * t * t * t + 4.1635019 * Math.Log(t)
                    : -5.8002206e3 / t + 1.3914993 - 4.8640239e-2 * t + 4.1764768e-5 * t * t - 1.4452093e-8 * t * t * t + 6.5459673 * Math.Log(t);
                double exact = Math.Exp(log);
                Assert.Equal(exact, VapourTable.PressurePa(c), 1e-7 * exact);
            },
            iter: 5000);

    [Fact]
    public void The_slope_is_the_derivative() =>
        Gen.Double[-90, 110].Where(c => Math.Abs(c - 0.01) > 0.01).Sample(
            c =>
            {
                VapourTable.PressurePa(c, out double slope);
                double difference = (VapourTable.PressurePa(c + 1e-4) - VapourTable.PressurePa(c - 1e-4)) / 2e-4;
                Assert.Equal(difference, slope, 1e-4 * Math.Abs(slope) + 1e-6);
            },
            iter: 2000);

    // Psychrometric states computed with psychrolib 1.1.1 (general library). The model's constant heats move the wet bulb by up to 0.1 K.
    [Theory]
    [InlineData(25, 0.009881, 101325, 17.889), InlineData(35, 0.011220, 101325, 22.0), InlineData(32, 0.008997, 83431, 17.318), InlineData(18, 0.011551, 96230, 16.337)]
    public void Wet_bulb_of_known_states(double dryBulbC, double humidityRatio, double pressurePa, double wetBulbC) =>
        Assert.Equal(wetBulbC, VapourTable.WetBulbC(dryBulbC, humidityRatio, pressurePa), 0.1);

    // The lines of ice and water meet at the triple point: no jump there, nor at 0 °C.
    [Theory]
    [InlineData(0), InlineData(0.01)]
    public void There_is_no_jump(double temperatureC) =>
        Assert.Equal(VapourTable.PressurePa(temperatureC - 1e-12), VapourTable.PressurePa(temperatureC + 1e-12), 1e-5);

    [Fact]
    public void Wet_bulb_always_converges_at_or_below_the_dry_bulb() =>
        Gen.Select(Gen.Double[-50, 60], Gen.Double[0, 1], Gen.Double[60000, 105000]).Sample(
            (dryC, share, pressurePa) =>
            {
                double w = share * VapourTable.SaturatedHumidityRatio(dryC, pressurePa);
                double wetC = VapourTable.WetBulbC(dryC, w, pressurePa);
                Assert.True(wetC <= dryC);
                double balance = AirConstants.LatentHeatJPerKg * (VapourTable.SaturatedHumidityRatio(wetC, pressurePa) - w)
                    - AirConstants.SpecificHeatJPerKgK * (dryC - wetC);
                Assert.Equal(0.0, balance, 1e-3);
            },
            iter: 5000);

    [Fact]
    public void Total_at_the_edges()
    {
        Assert.True(double.IsFinite(VapourTable.PressurePa(double.NaN)));
        Assert.True(double.IsFinite(VapourTable.PressurePa(1e9)));
        Assert.True(double.IsFinite(VapourTable.SaturatedHumidityRatio(150, 50000)));
    }
}
