using CsCheck;
using Glazewright.Science.Optics;

namespace Glazewright.Science.Tests.Optics;

public class CoverOpticsTests
{
    public static TheoryData<string> Ids => [.. GenericCovers.All.Select(c => c.Id)];

    [Theory]
    [MemberData(nameof(Ids))]
    public void Shares_sum_to_one_and_transmittance_falls_with_the_angle(string id)
    {
        Assert.True(GenericCovers.TryFind(id, out GenericCover? cover));
        CoverOptics optics = cover.Optics(CoverCondition.InUse);
        double before = 1;
        for (double angle = 0; angle <= 90; angle += 0.25)
        {
            LightShares shares = optics.At(angle);
            Assert.Equal(1, shares.TransmittanceFraction + shares.ReflectanceFraction + shares.AbsorptanceFraction, 1e-9);
            Assert.InRange(shares.TransmittanceFraction, 0, before + 2e-4);
            before = shares.TransmittanceFraction;
        }

        Assert.Equal(0, optics.At(90).TransmittanceFraction, 1e-9);
        Assert.InRange(optics.Diffuse.TransmittanceFraction, 0, optics.At(0).TransmittanceFraction);
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void New_and_clean_at_normal_incidence_is_the_stated_light(string id)
    {
        Assert.True(GenericCovers.TryFind(id, out GenericCover? cover));
        Assert.Equal(cover.NominalTransmittanceFraction, cover.Optics(CoverCondition.New).At(0).TransmittanceFraction, 0.0015);
    }

    [Fact]
    public void Dirt_takes_its_share_and_warms_the_cover()
    {
        Assert.True(GenericCovers.TryFind("polycarbonate-8-twin", out GenericCover? cover));
        LightShares clean = cover.Optics(CoverCondition.New).At(30);
        LightShares dirty = cover.Optics(new CoverCondition(0.1, 0)).At(30);
        Assert.Equal(0.9 * clean.TransmittanceFraction, dirty.TransmittanceFraction, 1e-12);
        Assert.Equal(clean.ReflectanceFraction, dirty.ReflectanceFraction, 1e-12);
        Assert.Equal(clean.AbsorptanceFraction + (0.1 * clean.TransmittanceFraction), dirty.AbsorptanceFraction, 1e-12);
    }

    [Fact]
    public void A_table_that_does_not_sum_to_one_is_refused()
    {
        LightShares[] rows = [.. Enumerable.Repeat(new LightShares(0.5, 0.2, 0.2), CoverOptics.Entries)];
        Assert.Throws<ArgumentOutOfRangeException>(() => CoverOptics.FromTable(rows, 0));
    }

    [Fact]
    public void A_stated_light_above_what_the_walls_pass_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(
            () => CoverTable.Of(new CoverMake.Ribbed(new Sheet(1.585, 0.005), 3, 0.80, 1), CoverCondition.New, 0));

    [Fact]
    public void Any_stack_keeps_its_energy() =>
        Gen.Select(Gen.Double[0, 90], Gen.Double[1, 2], Gen.Double[0, 1], Gen.Int[1, 8]).Sample(
            (angle, index, extinction, count) =>
            {
                LightShares shares = SheetStack.At(angle, new Sheet(index, extinction), count);
                Assert.InRange(shares.TransmittanceFraction, 0, 1);
                Assert.InRange(shares.ReflectanceFraction, 0, 1);
                Assert.Equal(1, shares.TransmittanceFraction + shares.ReflectanceFraction + shares.AbsorptanceFraction, 1e-9);
            },
            iter: 2000);
}
