using Glazewright.Science.Flow;

namespace Glazewright.Published.Tests.Science;

/// <summary>International Fuel Gas Code 2018, tables 402.4(3) and 402.4(4): natural gas in schedule 40 pipe, 3 and 6 in. w.c. of drop. Read.</summary>
public class FuelGasPipeTables
{
    private const double CubicFootPerHour = 0.028316846592 / 3600;

    // Tolerance 1.5 %: the tables print two or three digits and end on round numbers.
    [Theory]
    [InlineData(0.622, 10, 3, 454), InlineData(0.824, 40, 3, 448), InlineData(1.049, 60, 3, 678), InlineData(1.380, 30, 3, 2030)]
    [InlineData(2.067, 50, 3, 4430), InlineData(3.068, 80, 3, 9690), InlineData(0.622, 70, 6, 230), InlineData(1.610, 20, 6, 5500), InlineData(4.026, 40, 6, 41800)]
    public void Table_402_4(double insideIn, double lengthFt, double dropInWc, double publishedCfh) => Assert.Equal(
        publishedCfh,
        GasPipe.FlowM3PerS(insideIn * 0.0254, lengthFt * 0.3048, dropInWc * 249.08891, GasPipe.NaturalGasRatio) / CubicFootPerHour,
        0.015 * publishedCfh);
}
