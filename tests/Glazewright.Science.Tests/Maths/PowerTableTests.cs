using CsCheck;
using Glazewright.Science.Maths;

namespace Glazewright.Science.Tests.Maths;

/// <summary>Powers by pieces against the runtime's own power.</summary>
public class PowerTableTests
{
    // Chords over 1/64 octave: |e (e − 1)| / (8 · 64²) is 4.9e-6 to 7.7e-6 of the value for these exponents.
    [Theory]
    [InlineData(1.0 / 3), InlineData(0.25), InlineData(0.8), InlineData(0.49)]
    public void Pieces_follow_the_power(double exponent)
    {
        PowerTable table = new(exponent);
        Gen.Double[-6.9, 6.9].Sample(
            log =>
            {
                double x = Math.Exp(log), exact = Math.Pow(x, exponent);
                Assert.InRange(table.Of(x), exact * (1 - 8e-6), exact * (1 + 1e-14));
            },
            iter: 5000);
    }

    [Theory]
    [InlineData(8.0, 2.0), InlineData(0.125, 0.5), InlineData(512.0, 8.0), InlineData(1.0 / 512, 0.125)]
    public void Powers_of_two_are_exact(double x, double cubeRoot) => Assert.Equal(cubeRoot, new PowerTable(1.0 / 3).Of(x), 1e-14);

    [Fact]
    public void Total_and_rising_at_the_edges()
    {
        PowerTable table = new(0.25);
        Assert.Equal(0.0, table.Of(0));
        Assert.Equal(0.0, table.Of(-1));
        Assert.Equal(0.0, table.Of(double.NaN));
        Assert.Equal(table.Of(1e9), table.Of(double.PositiveInfinity));
        double before = -1;
        for (double x = 1e-6; x < 1e5; x *= 1.01)
        {
            Assert.True(table.Of(x) >= before);
            before = table.Of(x);
        }
    }
}
