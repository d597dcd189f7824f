using Glazewright.Design.Services;

namespace Glazewright.Design.Tests.Services;

/// <summary>
/// Propane tanks by the trade's rule of thumb (from memory): Btu/h = D × L × 60 a fifth full at 0 °F, halved at −10 °F, doubled at 20 °F.
/// </summary>
public class PropaneTankTests
{
    private const double BtuPerHourW = 0.29307107;

    [Theory]
    [InlineData(0, 1)]
    [InlineData(-10, 0.5)]
    [InlineData(20, 2)]
    [InlineData(-20, 0)]
    [InlineData(-40, 0)]
    public void Vapour_follows_the_cold(double outsideF, double times) =>
        Assert.Equal(times * 60 * 41 * 192 * BtuPerHourW, PropaneTank.VaporisesOneW(41 * 0.0254, 192 * 0.0254, (outsideF - 32) / 1.8), 60.0);

    // 40 kBtu/h at 0 °F: 24 × 68 × 60 = 98 kBtu/h from 120 gal. 300 asks 1,000 gal (472), as 500 gal give 268; 1,000 asks three of them.
    [Theory]
    [InlineData(40, 0, 120, 1)]
    [InlineData(250, 0, 500, 1)]
    [InlineData(300, 0, 1000, 1)]
    [InlineData(1000, 0, 1000, 3)]
    [InlineData(300, -10, 1000, 2)]
    public void The_smallest_that_vaporises_the_load(double kBtuPerHour, double outsideF, double gallons, int count)
    {
        PropaneTank tank = PropaneTank.For(kBtuPerHour * 1000 * BtuPerHourW, (outsideF - 32) / 1.8)!;
        Assert.Equal((Math.Round(gallons), count), (Math.Round(tank.WaterM3 / 0.003785411784), tank.Count));
    }

    // 600 of 1,000 gal at about 91,500 Btu/gal (US energy statistics) against 300 kBtu/h half of the day: 15 days.
    [Fact]
    public void Days_of_supply_are_usable_gallons_over_half_of_the_day() =>
        Assert.Equal(600 * 91_500 / (0.5 * 300_000 * 24.0), PropaneTank.For(300_000 * BtuPerHourW, -17.8)!.SupplyDays, 0.2);

    [Fact]
    public void In_the_greatest_cold_a_vaporiser_is_wanted() => Assert.Null(PropaneTank.For(50_000, -30));
}
