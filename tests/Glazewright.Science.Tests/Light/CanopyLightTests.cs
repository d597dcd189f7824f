using CsCheck;
using Glazewright.Science.Light;

namespace Glazewright.Science.Tests.Light;

public class CanopyLightTests
{
    [Fact]
    public void Shares_sum_to_one_and_grow_with_leaf_area() =>
        Gen.Select(Gen.Double[0, 10], Gen.Double[0, 0.6], Gen.Double[0, 0.6]).Sample((lai, canopy, floor) =>
        {
            double caught = CanopyLight.CaughtFraction(lai, CanopyLight.BroadbandExtinction);
            CanopySplit split = CanopyLight.Split(caught, canopy, floor);
            Assert.Equal(1, split.CanopyFraction + split.FloorFraction, 1e-12);
            CanopySplit more = CanopyLight.Split(CanopyLight.CaughtFraction(lai + 1, 0.5), canopy, floor);
            Assert.True(more.CanopyFraction >= split.CanopyFraction);
        });

    [Fact]
    public void An_empty_house_gives_all_to_the_floor() =>
        Assert.Equal(0, CanopyLight.Split(CanopyLight.CaughtFraction(0, 0.7), 0.2, 0.4).CanopyFraction);
}
