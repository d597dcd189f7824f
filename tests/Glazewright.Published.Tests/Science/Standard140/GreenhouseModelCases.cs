using static Glazewright.Published.Tests.Science.Standard140.BuildingEnvelopeCases;
using static Glazewright.Published.Tests.Science.Standard140.Figure;

namespace Glazewright.Published.Tests.Science.Standard140;

/// <summary>
/// The light cases of ASHRAE Standard 140-2020 through the greenhouse model of the product (<see cref="HouseBox"/>); ranges and acceptance as in <see cref="BuildingEnvelopeCases"/>.
/// Opaque faces have the model's own film of rough faces. What misses its range is told (<see cref="Missed"/>): cooling by 2 to 4 %, heating's greatest hour after a set back by 3 %.
/// </summary>
public class GreenhouseModelCases
{
    [Fact]
    public void Case_600_light_box_with_double_glass() =>
        Loads(Year(BoxCase.Case600), In(3.993, 4.504), Missed(5.432, 6.162, 0.024), Near(3.020, 3.359), Near(5.422, 6.481));

    [Fact]
    public void Case_620_glass_to_east_and_west() =>
        Loads(Year(BoxCase.Case620), In(4.094, 4.719), In(3.841, 4.404), Near(3.038, 3.385), In(3.955, 4.797));

    [Fact]
    public void Case_640_set_back_at_night() =>
        Loads(Year(BoxCase.Case600 with { Control = BoxCase.SetBack }), In(2.403, 2.682), Missed(5.237, 5.893, 0.024), In(4.039, 4.658), Near(5.365, 6.429));

    [Fact]
    public void Case_670_single_pane() =>
        Loads(Year(BoxCase.Case670), In(5.300, 6.140), In(5.954, 6.623), In(3.655, 4.221), In(5.839, 6.925));

    [Fact]
    public void Case_680_thick_insulation() =>
        Loads(Year(BoxCase.Case680), In(1.732, 2.286), Missed(5.932, 6.529, 0.039), In(1.778, 2.126), In(5.761, 7.051));

    [Fact]
    public void Case_600FF_light_box_left_to_itself() =>
        Floats(Year(BoxCase.Case600.FreeFloat).Zones[0], In(-13.8, -9.9), In(62.4, 68.4), In(24.3, 26.1));

    // The network of many slices and six walls, with the same outer films: how far the house's lumped shell, views and coupling move a figure (bounds: choice).
    [Fact]
    public void With_the_same_outer_films_the_detailed_network_says_the_same()
    {
        foreach (BoxCase box in new[] { BoxCase.Case600, BoxCase.Case620, BoxCase.Case670, BoxCase.Case680 })
        {
            BoxYear house = Year(box), network = BoxYear.Run(box with { HouseOutside = true }, BoxSky.OrSkip());
            Assert.Equal(1, house.HeatMWh / network.HeatMWh, 0.04);
            Assert.Equal(1, house.CoolMWh / network.CoolMWh, 0.04);
            Assert.Equal(1, house.PeakHeatKw / network.PeakHeatKw, 0.04);
            Assert.Equal(1, house.PeakCoolKw / network.PeakCoolKw, 0.04);
        }

        BoxCase free = BoxCase.Case600.FreeFloat;
        ZoneAir alone = Year(free).Zones[0], detailed = BoxYear.Run(free with { HouseOutside = true }, BoxSky.OrSkip()).Zones[0];
        Assert.Equal(detailed.LeastC, alone.LeastC, 0.5);
        Assert.Equal(detailed.MostC, alone.MostC, 0.5);
        Assert.Equal(detailed.MeanC, alone.MeanC, 0.5);
    }

    private static BoxYear Year(BoxCase box) => BoxYear.Run(new HouseBox(box, BoxSky.OrSkip()), box);
}
