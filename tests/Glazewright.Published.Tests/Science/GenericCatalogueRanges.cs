using Glazewright.Design.Catalogues;

namespace Glazewright.Published.Tests.Science;

/// <summary>
/// The invented catalogue stays in the ranges the trade quotes. Large fans and pad water: common practice (rules of thumb, pad rules from memory of the
/// pad suppliers' and extension sheets).
/// </summary>
public class GenericCatalogueRanges
{
    private const double CfmM3PerS = 0.00047194745;

    // At 0.05 in. w.g.; 15 to 22 cfm a watt; 5 to 10 % less air at 0.10.
    [Theory]
    [InlineData("exhaust-36", 9_000, 11_000)]
    [InlineData("exhaust-48", 19_000, 23_000)]
    [InlineData("exhaust-54", 25_000, 28_000)]
    public void Large_fans(string id, double leastCfm, double mostCfm)
    {
        FanEntry fan = CatalogueReader.Generic.Fans.Single(f => f.Id == id);
        double cfm = fan.Points[1].FlowM3PerS / CfmM3PerS;
        Assert.Equal(0.05 * 249.08891, fan.Points[1].StaticPa, 1e-6);
        Assert.InRange(cfm, leastCfm, mostCfm);
        Assert.InRange(cfm / fan.Points[1].PowerW, 15, 22);
        Assert.InRange(1 - fan.Points[2].FlowM3PerS / fan.Points[1].FlowM3PerS, 0.05, 0.10);
    }

    // 94.06 ft² of 4-in pad, 4 ft high, 23.5 ft long: 11.8 gpm and a sump of 75 gal.
    [Fact]
    public void Pad_water_and_sump_of_a_30_by_96_house()
    {
        PadEntry pad = CatalogueReader.Generic.Pads.Single(p => p.Id == "pad-4");
        Assert.Equal(11.8, pad.WaterM3PerSPerM * 23.5 * 0.3048 / 6.309020e-5, 0.06);
        Assert.Equal(75, pad.SumpMPerM2 * 94.06 * 0.09290304 / 0.003785411784, 0.5);
        Assert.Equal(250, pad.Kind.RatedFaceMPerS / 0.00508, 1e-6);
        Assert.Equal(350, CatalogueReader.Generic.Pads.Single(p => p.Id == "pad-6").Kind.RatedFaceMPerS / 0.00508, 1e-6);
    }
}
