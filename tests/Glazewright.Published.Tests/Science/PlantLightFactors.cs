using Glazewright.Science.Light;

namespace Glazewright.Published.Tests.Science;

/// <summary>
/// Faust &amp; Logan 2018, HortScience 53:1250 (abstract read): 0.007265 mol/Wh. Another general library's example 500 → 1150 (read); McCree's 4.57 µmol/J
/// (from memory). Arithmetic tolerance 0.1 % as in the case file.
/// </summary>
public class PlantLightFactors
{
    [Theory]
    [InlineData(2.02, 1010)]
    [InlineData(0.45 * 4.57, 1028)]
    [InlineData(2.3, 1150)]
    public void Photons_of_500_W(double factor, double expected) =>
        Assert.Equal(expected, PlantLight.FluxMicromolM2s(500, factor), 0.001 * expected);

    [Fact]
    public void Factor_in_micromol_per_joule() => Assert.Equal(2.018, PlantLight.MicromolPerJoule, 0.0005);

    [Theory]
    [InlineData(3000, 21.80)]
    [InlineData(6000, 43.59)]
    public void Daily_integral(double energyWhm2, double expected) =>
        Assert.Equal(expected, PlantLight.DailyMolM2(energyWhm2), 0.006);

    [Theory]
    [InlineData(100, 16, 5.76)]
    [InlineData(150, 18, 9.72)]
    [InlineData(105, 18, 6.8)]
    public void Lamp(double flux, double hoursH, double expected) =>
        Assert.Equal(expected, PlantLight.LampMolM2Day(flux, hoursH), 0.006);

    // Outdoor monthly means (computed from the site's normals), mol/m² day.
    [Fact]
    public void Shortfall_for_lettuce_in_a_northern_December()
    {
        double inside = 8.7 * 0.60;
        Assert.Equal(5.2, inside, 0.1);
        Assert.Equal(6.8, 12 - inside, 0.1);
    }
}
