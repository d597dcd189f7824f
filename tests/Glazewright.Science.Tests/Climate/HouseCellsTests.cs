using Glazewright.Science.Climate;

namespace Glazewright.Science.Tests.Climate;

/// <summary>A house cut into cells along its length.</summary>
public class HouseCellsTests
{
    private const double LengthM = 30;

    private static readonly HouseForcing Fans = TestHouses.SunnyDay(30, 700) with { FanBelowM3PerS = 12, LeafAreaIndex = 1, PadEffectiveness = 0.7 };

    // One cell is the house, bit for bit.
    [Fact]
    public void One_cell_is_the_house()
    {
        HouseModel model = new(TestHouses.Glass);
        HouseState whole = model.NewState(18, 0.7, 12, 101_325);
        HouseCells cells = new(TestHouses.Glass, 1, LengthM);
        cells.Start(whole);
        HouseForcing night = TestHouses.ClearNight(-5) with { HeatW = 20_000, LeafAreaIndex = 2, CurtainClosedFraction = 0.96 };
        for (int i = 0; i < 500; i++)
        {
            HouseForcing now = i < 250 ? night : Fans;
            model.Step(whole, in now, 10);
            cells.Step(in now, [1], 10);
        }

        Assert.Equal(whole.AirBelowC, cells.State(0).AirBelowC);
        Assert.Equal(whole.HumidityRatioBelow, cells.State(0).HumidityRatioBelow);
        Assert.Equal(whole.FilmKg(WetSurface.UpperClear), cells.State(0).FilmKg(WetSurface.UpperClear));
    }

    // Nothing that differs along the house: every cell is the house as one, to rounding.
    [Fact]
    public void Without_a_difference_all_cells_are_alike_and_like_the_house()
    {
        HouseModel model = new(TestHouses.Glass);
        HouseState whole = model.NewState(18, 0.7, 12, 101_325);
        HouseCells cells = new(TestHouses.Glass, 6, LengthM);
        cells.Start(whole);
        HouseForcing night = TestHouses.ClearNight(-5) with { HeatW = 20_000, LeafAreaIndex = 2, CurtainClosedFraction = 0.96 };
        double[] even = [.. Enumerable.Repeat(1.0 / 6, 6)];
        for (int i = 0; i < 720; i++)
        {
            model.Step(whole, in night, 10);
            cells.Step(in night, even, 10);
        }

        for (int c = 0; c < 6; c++)
        {
            Assert.Equal(whole.AirBelowC, cells.State(c).AirBelowC, 1e-5);
            Assert.Equal(whole.AirAboveC, cells.State(c).AirAboveC, 1e-5);
            Assert.Equal(whole.HumidityRatioBelow, cells.State(c).HumidityRatioBelow, 1e-9);
            Assert.Equal(whole.FilmKg(WetSurface.UpperClear) / 6, cells.State(c).FilmKg(WetSurface.UpperClear), 1e-6);
        }
    }

    // Fans on: warmer from the wet wall to the fans, and the air that leaves the last cell is what the plug-flow profile of the house as one says within a fifth of the rise.
    [Fact]
    public void Air_warms_along_the_house_as_the_profile_says()
    {
        HouseModel model = new(TestHouses.Glass);
        HouseState whole = model.NewState(28, 0.6, 14, 101_325);
        HouseCells cells = new(TestHouses.Glass, 8, LengthM);
        cells.Start(whole);
        double[] even = [.. Enumerable.Repeat(1.0 / 8, 8)];
        for (int i = 0; i < 3600; i++)
        {
            model.Step(whole, in Fans, 5);
            cells.Step(in Fans, even, 5);
        }

        for (int c = 1; c < 8; c++)
        {
            Assert.True(cells.State(c).AirBelowC > cells.State(c - 1).AirBelowC);
        }

        ref readonly HouseFluxes one = ref model.LastFluxes;
        double riseK = one.FanEndC - one.IntakeC;
        Assert.True(riseK > 1, $"rise {riseK}");
        Assert.Equal(one.FanEndC, cells.LastFluxes(7).FanEndC, 0.2 * riseK);
        Assert.Equal(one.IntakeC, cells.LastFluxes(0).IntakeC, 1e-9);
        Assert.Equal(whole.AirBelowC, Enumerable.Range(0, 8).Average(c => cells.State(c).AirBelowC), 0.2 * riseK);
    }

    // What one cell gives the next takes: heat and water of all cells close together, with the streams between them.
    [Fact]
    public void Books_close_from_cell_to_cell()
    {
        HouseCells cells = new(TestHouses.Glass, 5, LengthM);
        cells.Start(new HouseModel(TestHouses.Glass).NewState(26, 0.6, 14, 101_325));
        double[] even = [.. Enumerable.Repeat(0.2, 5)];
        for (int i = 0; i < 200; i++)
        {
            cells.Step(in Fans, even, 5);
            for (int c = 0; c < 5; c++)
            {
                Assert.Equal(0, cells.LastFluxes(c).HeatResidualW, 1e-4);
                Assert.Equal(0, cells.LastFluxes(c).WaterResidualKgPerS, 1e-9);
                if (c > 0)
                {
                    Assert.Equal(cells.LastFluxes(c - 1).FanEndC, cells.LastFluxes(c).IntakeC, 1e-9);
                }
            }
        }
    }

    // A heater at one end: the far end lags, and less so with circulation fans (common practice: they are there for that).
    [Fact]
    public void A_heater_at_one_end_leaves_the_other_cold_and_circulation_helps()
    {
        double Spread(double circulation)
        {
            HouseCells cells = new(TestHouses.Glass, 6, LengthM);
            cells.Start(new HouseModel(TestHouses.Glass).NewState(14, 0.7, 12, 101_325));
            HouseForcing night = TestHouses.ClearNight(-5) with { HeatW = 25_000, CirculationFraction = circulation };
            for (int i = 0; i < 2160; i++)
            {
                cells.Step(in night, [1, 0, 0, 0, 0, 0], 5);
            }

            for (int c = 1; c < 6; c++)
            {
                Assert.True(cells.State(c).AirBelowC < cells.State(c - 1).AirBelowC);
            }

            return cells.State(0).AirBelowC - cells.State(5).AirBelowC;
        }

        double still = Spread(0);
        double stirred = Spread(1);
        Assert.True(stirred < 0.5 * still, $"{still} K still, {stirred} K stirred");
    }
}
