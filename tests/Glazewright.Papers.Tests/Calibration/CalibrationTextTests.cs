using Glazewright.Papers.Calibration;

namespace Glazewright.Papers.Tests.Calibration;

public sealed class CalibrationTextTests
{
    [Theory]
    [InlineData(-0.001, "+0.00")]
    [InlineData(0.001, "+0.00")]
    [InlineData(-0.02, "−0.02")]
    [InlineData(double.NaN, "")]
    public void A_difference_has_one_sign(double value, string expected) => Assert.Equal(expected, CalibrationText.Number(value, "+0.00;−0.00"));
}
