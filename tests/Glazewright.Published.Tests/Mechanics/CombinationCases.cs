using Glazewright.Mechanics.Loads;

namespace Glazewright.Published.Tests.Mechanics;

/// <summary>
/// Basic load combinations of ASCE 7. Uplift combinations: an open program's tests (read). 7-22 ASD snow factor 0.7 and LRFD 1.0: magazine
/// articles on the edition (read). The rest from memory.
/// </summary>
public class CombinationCases
{
    private static LoadCombination Find(LoadEdition edition, DesignMethod method, Func<LoadCombination, bool> which) =>
        LoadCombinations.Of(edition, method).Single(which);

    [Theory]
    [InlineData(LoadEdition.Asce716), InlineData(LoadEdition.Asce722)]
    public void Uplift(LoadEdition edition)
    {
        LoadCombination strength = Find(edition, DesignMethod.Lrfd, c => c.DeadFactor == 0.9);
        Assert.Equal((1.0, 0.0, 0.0), (strength.WindFactor, strength.SnowFactor, strength.CollateralFactor));
        LoadCombination allowable = Find(edition, DesignMethod.Asd, c => c.DeadFactor == 0.6);
        Assert.Equal((0.6, 0.0, 0.0), (allowable.WindFactor, allowable.SnowFactor, allowable.CollateralFactor));
    }

    [Theory]
    [InlineData(LoadEdition.Asce716, 1.6, 0.5, 1.0), InlineData(LoadEdition.Asce722, 1.0, 0.3, 0.7)]
    public void Snow_factors(LoadEdition edition, double principal, double companion, double asd)
    {
        double[] lrfd = [.. LoadCombinations.Of(edition, DesignMethod.Lrfd).Select(c => c.SnowFactor).Where(f => f != 0).Distinct().Order()];
        Assert.Equal([companion, principal], lrfd);
        Assert.Equal(asd, LoadCombinations.Of(edition, DesignMethod.Asd).Max(c => c.SnowFactor));
        Assert.Contains(LoadCombinations.Of(edition, DesignMethod.Asd), c => Math.Abs(c.SnowFactor - 0.75 * asd) < 1e-12 && c.WindFactor == 0.45);
    }

    [Fact]
    public void A_ground_snow_of_one_edition_does_not_go_into_combinations_of_the_other()
    {
        var site = new SnowSite(new GroundSnow(1500, LoadEdition.Asce722), RiskCategory.II, SurfaceRoughness.C, RoofExposure.Partially, 0.45);
        RoofSnow snow = GableSnow.On(site, new GableSection(2.5, 4, 5, 2, 5, 20), 1.0);
        Assert.Throws<ArgumentException>(() => LoadCombinations.Of(LoadEdition.Asce716, DesignMethod.Lrfd)[5].FactorFor(snow));
        Assert.Equal(1.0, LoadCombinations.Of(LoadEdition.Asce722, DesignMethod.Lrfd)[5].FactorFor(snow));
    }
}
