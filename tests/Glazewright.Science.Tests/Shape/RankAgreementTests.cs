using Glazewright.Science.Shape;

namespace Glazewright.Science.Tests.Shape;

/// <summary>Small cases counted by hand.</summary>
public class RankAgreementTests
{
    [Fact]
    public void Same_order_is_one_and_turned_round_is_minus_one()
    {
        Assert.Equal(new RankAgreement(1, 1, 4), RankAgreement.Of([1, 2, 3, 4], [10, 20, 40, 80]));
        Assert.Equal(new RankAgreement(-1, -1, 4), RankAgreement.Of([1, 2, 3, 4], [8, 4, 2, 1]));
    }

    // Five things, one neighbouring pair and one pair two apart swapped: 10 pairs, those against counted one by one.
    [Fact]
    public void Five_things_by_hand()
    {
        // 1 2 3 4 5 against 2 1 5 4 3: against are (1,2), (3,4), (3,5), (4,5): tau = (6 − 4)/10; ranks differ by 1 1 2 0 2: rho = 1 − 6·10/120.
        RankAgreement agreement = RankAgreement.Of([1, 2, 3, 4, 5], [2, 1, 5, 4, 3]);
        Assert.Equal(0.2, agreement.KendallTauRatio, 1e-12);
        Assert.Equal(0.5, agreement.SpearmanRhoRatio, 1e-12);
    }

    // Tau-b with a tie on one side: pairs 3, one tied in the second: (2 − 0)/√(3·2).
    [Fact]
    public void Ties_count_for_neither()
    {
        Assert.Equal(2 / Math.Sqrt(6), RankAgreement.Of([1, 2, 3], [1, 2, 2]).KendallTauRatio, 1e-12);
        Assert.Equal(0, RankAgreement.Of([1, 1, 1], [1, 2, 3]).KendallTauRatio);
        Assert.Equal(0, RankAgreement.Of([], []).SpearmanRhoRatio);
        Assert.Throws<ArgumentException>(() => RankAgreement.Of([1], [1, 2]));
    }
}
