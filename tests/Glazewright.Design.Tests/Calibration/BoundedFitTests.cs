using CsCheck;
using Glazewright.Design.Calibration;

namespace Glazewright.Design.Tests.Calibration;

public class BoundedFitTests
{
    // Rosenbrock's valley as two residuals, least at (1, 1) (textbook).
    [Fact]
    public void A_curved_valley_is_followed_to_its_least()
    {
        var ended = BoundedFit.Search([-1.2, 1], [-2, -2], [2, 2], p => [10 * (p[1] - p[0] * p[0]), 1 - p[0]], 1, (_, _) => { });
        Assert.Equal(1, ended.Values[0], 0.02);
        Assert.Equal(1, ended.Values[1], 0.04);
    }

    // Model: a linear problem with one variable clamped at its bound has its least where the other is solved with that one fixed.
    [Fact]
    public void Random_linear_problems_keep_their_bounds_and_find_the_least() =>
        Gen.Double[-3, 3].Array[8].Sample(
            c =>
            {
                double[] R(double[] p) => [c[0] * p[0] + c[1] * p[1] - c[2], c[3] * p[0] + c[4] * p[1] - c[5], 0.3 * p[0] - c[6], 0.3 * p[1] - c[7]];
                var ended = BoundedFit.Search([0.5, 0.5], [0, 0], [1, 1], R, 1, (_, _) => { });
                double best = double.MaxValue;
                for (int i = 0; i <= 200; i++)
                {
                    for (int j = 0; j <= 200; j++)
                    {
                        best = Math.Min(best, R([i / 200.0, j / 200.0]).Sum(r => r * r));
                    }
                }

                Assert.All(ended.Values, v => Assert.InRange(v, 0, 1));
                double found = ended.Residuals.Sum(r => r * r);
                Assert.True(found <= best * 1.02 + 1e-3, $"{found} against {best}");
            },
            iter: 60);

    // A straight line through points with known errors: the textbook's standard error of slope and height.
    [Fact]
    public void Uncertainty_of_a_straight_line_is_the_textbooks()
    {
        Random chance = new(3);
        double[] x = [.. Enumerable.Range(0, 400).Select(i => i / 400.0)];
        double[] y = [.. x.Select(v => 2 + 3 * v + 0.1 * (chance.NextDouble() + chance.NextDouble() + chance.NextDouble() - 1.5) * 2)];
        var ended = BoundedFit.Search([1, 1], [0, 0], [10, 10], p => [.. x.Select((v, i) => p[0] + p[1] * v - y[i])], 1, (_, _) => { });
        double meanX = x.Average(), spread = x.Sum(v => (v - meanX) * (v - meanX)), variance = ended.Residuals.Sum(r => r * r) / (x.Length - 2);
        double slopeError = Math.Sqrt(variance / spread);
        SizeRange range = new(FittedSize.Sun, "sun", "", 1, 0, 10, "");
        var values = FitConfidence.Of([range, range], ended, x.Length);
        Assert.Equal(2 * slopeError, values[1].PlusMinusValue, 0.2 * slopeError); // ρ of white noise is near nothing, not nothing
        Assert.Equal(3, ended.Values[1], 3 * slopeError);
    }
}
