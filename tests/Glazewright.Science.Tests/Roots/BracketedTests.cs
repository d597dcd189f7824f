using CsCheck;
using Glazewright.Science.Roots;

namespace Glazewright.Science.Tests.Roots;

public class BracketedTests
{
    [Fact]
    public void Finds_every_bracketed_root() => Gen.Select(Gen.Double[-5, 5], Gen.Double[0.1, 4], Gen.Double[0.1, 30]).Sample((root, power, steepness) =>
    {
        double F(double x) => Math.Sign(x - root) * steepness * Math.Pow(Math.Abs(x - root), power);
        RootResult found = Bracketed.Find(F, -7, 9, 1e-10);
        return found.Converged && Math.Abs(found.Argument - root) < 1e-6;
    });

    [Fact]
    public void Without_a_sign_change_it_says_so()
    {
        RootResult none = Bracketed.Find(x => x + 10, 1, 4, 1e-9);
        Assert.False(none.Converged);
        Assert.Equal(1, none.Argument);
    }

    [Fact]
    public void A_root_at_an_end_counts() => Assert.True(Bracketed.Find(x => x - 2, 2, 5, 1e-9).Converged);
}
