using Glazewright.Design.Services;

namespace Glazewright.Design.Tests.Services;

/// <summary>First sizes of supplies and drains.</summary>
public class PipeSizesTests
{
    private const double Gpm = 0.003785411784 / 60;

    // By hand, 5 ft/s through schedule 40: 3/4 in passes 8.3 gpm, 1 in 13.5, 2 in 52 (common practice: water tables of the trade give 8, 13 and 50).
    [Theory]
    [InlineData(3, "1/2 in"), InlineData(8, "3/4 in"), InlineData(9, "1 in"), InlineData(13, "1 in"), InlineData(50, "2 in"), InlineData(5000, "")]
    public void Supplies(double gpm, string size) => Assert.Equal(size, PipeSizes.Supply(gpm * Gpm));

    // Half full at 1/4 in a foot with n 0.011: 1-1/2 in carries about 6.4 gpm, 2 in 12.5, 3 in 36, 4 in 74 (Manning's equation).
    [Theory]
    [InlineData(1, "1-1/2 in"), InlineData(6.5, "2 in"), InlineData(12.5, "2 in"), InlineData(35.9, "3 in"), InlineData(74, "4 in")]
    public void Drains(double gpm, string size) => Assert.Equal(size, PipeSizes.Drain(gpm * Gpm));
}
