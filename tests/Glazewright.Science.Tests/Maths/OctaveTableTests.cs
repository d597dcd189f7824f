using CsCheck;
using Glazewright.Science.Climate;
using Glazewright.Science.Maths;

namespace Glazewright.Science.Tests.Maths;

/// <summary>Curves by pieces against the runtime's own power.</summary>
public class OctaveTableTests
{
    // Chords over 1/64 octave: |e (e − 1)| / (8 · 64²) is 4.9e-6 to 7.7e-6 of the value for these exponents.
    [Theory]
    [InlineData(1.0 / 3), InlineData(0.25), InlineData(0.8), InlineData(0.49)]
    public void Pieces_follow_the_power(double exponent)
    {
        OctaveTable table = OctaveTable.OfPower(exponent);
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
    public void Powers_of_two_are_exact(double x, double cubeRoot) => Assert.Equal(cubeRoot, OctaveTable.OfPower(1.0 / 3).Of(x), 1e-14);

    // Chords over 1/64 octave miss a curve by at most N² f″ / (8 · 64²): at most 0.456, at N = 4.65, for this one, so 1.4e-5.
    // The house model's rise along the house by number of transfer units, N / (1 − N e^−N / (1 − e^−N)) in another form, by the runtime's own exponential.
    [Fact]
    public void Pieces_follow_the_rise_along_a_house()
    {
        OctaveTable table = new(PadToFan.EndOverMean, PadToFan.EndOverMean);
        Gen.Double[-11, 5.5].Sample(
            log =>
            {
                double n = Math.Exp(log), gone = -double.ExpM1(-n), exact = gone / (1 - (gone / n));
                // Below 1e-4 the fraction's own cancellation is larger than what is looked for.
                Assert.Equal(n < 1e-4 ? 2 - (n / 3) : exact, table.Of(n), 1.4e-5);
            },
            iter: 5000);
        Assert.Equal(2.0, table.Of(0), 1e-12);
    }

    [Fact]
    public void Total_and_rising_at_the_edges()
    {
        OctaveTable table = OctaveTable.OfPower(0.25);
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
