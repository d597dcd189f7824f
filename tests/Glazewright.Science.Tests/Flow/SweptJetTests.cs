using Glazewright.Science.Flow;

namespace Glazewright.Science.Tests.Flow;

public sealed class SweptJetTests
{
    [Fact]
    public void Throw_and_axis_speed_undo_each_other() =>
        Assert.Equal(0.5, SweptJet.AxisMPerS(0.7, 0.45, SweptJet.ThrowM(0.7, 0.45, 0.5)), 1e-12);

    [Theory]
    [InlineData(5, 90, 30)]
    [InlineData(20, 90, 9)]
    [InlineData(12, 60, 8)]
    public void Swept_floor_is_that_of_a_fine_grid(double radiusM, double sweepDeg, double widthM)
    {
        const double StepM = 0.01;
        int inside = 0;
        for (double x = StepM / 2; x < radiusM; x += StepM)
        {
            for (double y = StepM / 2; y < widthM / 2 && x * x + y * y < radiusM * radiusM; y += StepM)
            {
                inside += y <= x * Math.Tan(sweepDeg * Math.PI / 360) ? 1 : 0;
            }
        }

        Assert.Equal(2 * inside * StepM * StepM, SweptJet.CoveredM2(radiusM, sweepDeg, widthM), 0.2);
    }

    [Fact]
    public void Mean_over_a_sweep_is_the_sum_over_its_angles()
    {
        double halfRad = Math.Atan(SweptJet.HalfWidthRatio);
        double mean = Enumerable.Range(0, 9000).Average(i => Math.Exp(-Math.Log(2) * Math.Pow((i - 4499.5) / 100 * Math.PI / 180 / halfRad, 2)));
        Assert.Equal(mean, SweptJet.MeanToPeakRatio(90), 1e-4);
    }
}
