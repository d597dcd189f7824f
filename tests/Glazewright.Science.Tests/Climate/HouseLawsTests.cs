using Glazewright.Science.Climate;

namespace Glazewright.Science.Tests.Climate;

/// <summary>The model's laws one by one, against the numbers their sources give (films and resistances: from memory; flows and fluxes: computed from the printed form).</summary>
public class HouseLawsTests
{
    // Bot's two branches meet at 4 m/s: 7.60 and 7.58.
    [Theory]
    [InlineData(0.0, 2.8), InlineData(1.0, 4.0), InlineData(3.999999, 7.6), InlineData(4.0, 7.579), InlineData(8.0, 13.195)]
    public void Outer_film_of_gabled_glass(double windMPerS, double wPerM2K) =>
        Assert.Equal(wPerM2K, HouseFilms.OuterWPerM2K(OuterWindLaw.Gabled, windMPerS), 0.001);

    [Theory]
    [InlineData(0.0, 0.95), InlineData(1.0, 7.71), InlineData(4.0, 14.283)]
    public void Outer_film_of_tunnels(double windMPerS, double wPerM2K) =>
        Assert.Equal(wPerM2K, HouseFilms.OuterWPerM2K(OuterWindLaw.Tunnel, windMPerS), 0.005);

    // By hand from the printed equations: 3.26 · 3^0.89 = 8.667, 3.55 · 3^0.617 = 6.992.
    [Theory]
    [InlineData(0.0, 0.0, 0.0), InlineData(0.0, 1.0, 3.405), InlineData(0.0, 3.0, 7.829), InlineData(0.93, 3.0, 7.829), InlineData(1.0, 3.0, 8.667)]
    public void Forced_film_on_smooth_faces(double slopeCosine, double windMPerS, double wPerM2K) =>
        Assert.Equal(wPerM2K, HouseFilms.ForcedOnSmoothFaceWPerM2K(slopeCosine, windMPerS), 0.001);

    // Still 9.482/7.283 · 8^⅓ = 2.604 on a wall warmer than the air, 2.619 colder; a flat roof 9.482/6.283 · 2 = 3.018 warmer, 1.810/2.382 · 2 = 1.520 colder than the air; √(2.604² + 7.829²) = 8.251.
    [Theory]
    [InlineData(8.0, 0.0, 0.0, 1.67, 2.604), InlineData(-8.0, 1.0, 0.0, 2.17, 1.520), InlineData(8.0, 1.0, 0.0, 1.11, 3.018)]
    [InlineData(8.0, 0.0, 3.0, 1.0, 8.251), InlineData(8.0, 0.0, 3.0, 1.11, 8.872), InlineData(-8.0, 0.0, 3.0, 1.67, 12.032)]
    public void Outer_film_of_opaque_faces(double faceAboveAirK, double slopeCosine, double windMPerS, double roughnessFactor, double wPerM2K) =>
        Assert.Equal(wPerM2K, HouseFilms.OpaqueOuterWPerM2K(faceAboveAirK, slopeCosine, windMPerS, roughnessFactor), 0.001);

    // Nu = 0.14 Ra^(1/3) at 20 °C: β 1/293, ν 15.1e-6, a 21.4e-6, k 0.0257 give 1.6 to 1.7 ΔT^(1/3).
    [Fact]
    public void Roof_film_is_the_turbulent_law_of_the_textbooks()
    {
        double textbook = 0.0257 * 0.14 * Math.Cbrt(9.81 / 293 / (15.1e-6 * 21.4e-6));
        Assert.Equal(textbook, HouseFilms.UnderRoofWPerM2K(1, 1), 0.03 * textbook);
        Assert.Equal(1.7 * 2, HouseFilms.UnderRoofWPerM2K(8, 1), 1e-12);
        Assert.True(HouseFilms.UnderRoofWPerM2K(-8, 1) < 0.4 * HouseFilms.UnderRoofWPerM2K(8, 1));
        Assert.Equal(1.7 * 2 / Math.Pow(0.8, 2.0 / 3), HouseFilms.UnderRoofWPerM2K(8, 0.8), 1e-9);
    }

    [Theory]
    [InlineData(8.0, 3.4), InlineData(-16.0, 2.6)]
    public void Floor_film(double floorAboveAirK, double wPerM2K) => Assert.Equal(wPerM2K, HouseFilms.FloorWPerM2K(floorAboveAirK), 1e-9);

    [Fact]
    public void Wall_film() => Assert.Equal(2.62, HouseFilms.WallWPerM2K(-8), 1e-9);

    // 6.4e-9 (greenhouse texts) to 6.9e-9 kg/(s m² Pa) per W/(m² K); psychrometric constant 66 Pa/K.
    [Fact]
    public void Lewis_relation()
    {
        Assert.InRange(HouseFilms.VapourPerFilmAtPascal / 101_325, 6.4e-9, 6.9e-9);
        Assert.Equal(66.0, AirConstants.SpecificHeatJPerKgK * 101_325 / (0.621945 * AirConstants.LatentHeatJPerKg), 2.0);
    }

    // LAI 3 at 24 °C and 1 kPa: about 452 s/m in 300 W/m² over the floor, 222 g/m²h; at night with 0.5 kPa about 1509 s/m, 45 g/m²h.
    [Theory]
    [InlineData(93.0, 1000, 452, 222), InlineData(0.0, 500, 1509, 45)]
    public void Leaves_in_sun_and_at_night(double absorbedWPerM2, double deficitPa, double stomatalSPerM, double gramPerM2H)
    {
        double stomata = StomatalSPerM(82, absorbedWPerM2, 200, deficitPa);
        Assert.Equal(stomatalSPerM, stomata, 0.01 * stomatalSPerM);
        double flux = LeafResistance.CanopyFactorAtPascal(3, 1.2) / 101_325 / (LeafResistance.BoundarySPerM(false) + stomata) * deficitPa * 3.6e6;
        Assert.Equal(gramPerM2H, flux, 0.05 * gramPerM2H);
    }

    [Fact]
    public void Leaves_close_in_dry_air_and_rich_carbon_dioxide_but_not_without_end()
    {
        Assert.Equal(82 * 5.8 * (500.0 + 4.3) / (500.0 + 0.54), StomatalSPerM(82, 500, 200, 5000), 1e-9);
        Assert.Equal(1.5, StomatalSPerM(82, 500, 1200, 500) / StomatalSPerM(82, 500, 200, 500), 1e-9);
    }

    // (S/2) Cd √(Cw v²): no difference of temperature, wind 3 m/s, 10 m² of roof vent: 5 · 0.65 · 0.3 · 3.
    [Fact]
    public void Roof_vents_in_wind()
    {
        HouseModel model = new(TestHouses.Glass);
        HouseState s = model.NewState(20, 0.5, 20, 101_325);
        HouseForcing f = TestHouses.ClearNight(20) with { SkyC = 20, WindMPerS = 3, RoofVentM2 = 10 };
        model.Step(s, in f, 1);
        Assert.Equal(5 * 0.65 * 0.3 * 3, model.LastFluxes.VentM3PerS, 0.01);
    }

    // Roof and side openings by stack alone, Kittas, Boulard and Papadakis 1997 (from memory): Cd √([Sr Ss]² / (Sr² + Ss²) · 2 g ΔT/T · H), the ASHRAE stack law with two openings in
    // series; each opening's own circulation adds what the wide open curtain plane leaves apart: under 0.5 %.
    [Theory]
    [InlineData(12.0, 5.0, 4.0), InlineData(6.0, 9.0, 10.0)]
    public void Roof_and_side_vents_by_stack(double roofM2, double sideM2, double warmerK)
    {
        HouseModel model = new(TestHouses.Glass);
        HouseState s = model.NewState(20 + warmerK, 0.3, 20, 101_325);
        HouseForcing f = TestHouses.ClearNight(20) with { SkyC = 20, WindMPerS = 0, RoofVentM2 = roofM2, SideVentM2 = sideM2 };
        model.Step(s, in f, 1);
        double expected = 0.65 * Math.Sqrt(Math.Pow(roofM2 * sideM2, 2) / (roofM2 * roofM2 + sideM2 * sideM2) * 2 * 9.80665 * warmerK / (293.15 + warmerK) * 2.5);
        Assert.Equal(expected, model.LastFluxes.VentM3PerS, 0.005 * expected);
    }

    // Leaks: √(stack² ΔT + wind² v²) m³/s.
    [Fact]
    public void Leaks_by_wind_and_stack()
    {
        HouseModel model = new(TestHouses.Glass);
        HouseState s = model.NewState(20, 0.5, 20, 101_325);
        HouseForcing f = TestHouses.ClearNight(-5) with { WindMPerS = 4 };
        model.Step(s, in f, 1);
        Assert.Equal(Math.Sqrt(0.02 * 0.02 * 25 + 0.03 * 0.03 * 16), model.LastFluxes.LeakM3PerS, 1e-3);
    }

    private static double StomatalSPerM(double leastSPerM, double absorbedWPerM2, double co2Ppm, double deficitPa)
    {
        (double resistance, double over, _) = LeafResistance.Stomatal(leastSPerM, absorbedWPerM2, co2Ppm, deficitPa);
        return resistance / over;
    }
}
