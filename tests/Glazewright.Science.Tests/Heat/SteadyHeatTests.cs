using CsCheck;
using Glazewright.Science.Air;
using Glazewright.Science.Heat;

namespace Glazewright.Science.Tests.Heat;

public class SteadyHeatTests
{
    [Fact]
    public void A_covering_has_its_core_back_from_its_own_films() => Gen.Double[0.1, 6].Sample(u =>
        BuildUp.CoreM2KPerW(u, 8.29, 34) == 0 ? 1 / u <= 1 / 8.29 + 1 / 34.0 : Math.Abs(BuildUp.UValueWPerM2K(8.29, [BuildUp.CoreM2KPerW(u, 8.29, 34)], 34) - u) < 1e-12);

    [Fact]
    public void More_wind_loses_more_and_more_layers_less()
    {
        double core = BuildUp.CoreM2KPerW(3.3, 8.29, 34);
        double calm = BuildUp.UValueWPerM2K(9.1, [core], SurfaceFilm.OutdoorWPerM2K(1));
        double gale = BuildUp.UValueWPerM2K(9.1, [core], SurfaceFilm.OutdoorWPerM2K(15));
        Assert.True(calm < gale);
        Assert.True(BuildUp.UValueWPerM2K(8, [0.2, 0.3], 30) < BuildUp.UValueWPerM2K(8, [0.2], 30));
    }

    [Fact]
    public void Films_meet_their_table()
    {
        Assert.Equal(9.26, SurfaceFilm.IndoorWPerM2K(0, heatUp: true), 1e-9);
        Assert.Equal(9.09, SurfaceFilm.IndoorWPerM2K(45, heatUp: true), 1e-9);
        Assert.Equal(8.29, SurfaceFilm.IndoorWPerM2K(90, heatUp: false), 1e-9);
        Assert.Equal(6.13, SurfaceFilm.IndoorWPerM2K(0, heatUp: false), 1e-9);
        Assert.Equal(22.7, SurfaceFilm.OutdoorWPerM2K(3.4), 1e-9);
        Assert.Equal(34.0, SurfaceFilm.OutdoorWPerM2K(6.7), 1e-9);
    }

    [Fact]
    public void Condensing_warms_the_surface_and_closes_its_balance()
    {
        AirState inside = AirState.FromRelativeHumidity(18, 0.8, 98_000);
        SteadyCondensation state = Condensation.Steady(inside, -20, uValueWPerM2K: 5.5, indoorFilmWPerM2K: 8.3, convectiveWPerM2K: 3);
        Assert.True(state.WetSurfaceC > state.DrySurfaceC + 0.5);
        double outward = 1 / (1 / 5.5 - 1 / 8.3) * (state.WetSurfaceC + 20);
        double inward = 8.3 * (18 - state.WetSurfaceC) + 2.45e6 * state.RateKgPerM2S;
        Assert.Equal(outward, inward, 1e-3);
        Assert.False(Condensation.Steady(AirState.FromRelativeHumidity(18, 0.2, 98_000), 5, 2, 8.3, 3).Wet);
    }

    [Fact]
    public void Slab_formulas_meet_where_they_change_over() => Gen.Select(Gen.Double[2, 30], Gen.Double[0.5, 3]).Sample((breadthM, ground) =>
    {
        // The standard's two branches differ by under 1 % where equivalent thickness equals characteristic breadth.
        double area = breadthM * 50;
        double below = SlabOnGround.UValueWPerM2K(area, 100, breadthM * 0.999999, ground);
        double above = SlabOnGround.UValueWPerM2K(area, 100, breadthM * 1.000001, ground);
        return Math.Abs(below / above - 1) < 0.01;
    });

    [Fact]
    public void Edge_insulation_only_helps()
    {
        double thicknessM = SlabOnGround.EquivalentThicknessM(0.2, 0, 1.5);
        double shallow = SlabOnGround.EdgeWPerMK(0.3, 0.05, 0.035, thicknessM, 1.5);
        double deep = SlabOnGround.EdgeWPerMK(1.2, 0.05, 0.035, thicknessM, 1.5);
        Assert.True(deep < shallow && shallow < 0);
        Assert.Equal(0, SlabOnGround.EdgeWPerMK(0, 0.05, 0.035, thicknessM, 1.5));
    }

    [Fact]
    public void Degree_days_count_only_cold_days() =>
        Assert.Equal(15, SteadyLoss.HeatingDegreeDaysKDay([10, 25, 13], 19), 1e-12);

    [Fact]
    public void A_house_that_loses_nothing_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => SteadyLoss.RiseK(1000, 0, 0));
}
