using CsCheck;
using Glazewright.Design.Services;

namespace Glazewright.Design.Tests.Services;

public class BranchSizingTests
{
    private static readonly Gen<ConductorTask> Tasks =
        from leastA in Gen.Double[0.5, 290]
        from motor in Gen.Bool
        from outlets in Gen.Bool
        from three in Gen.Bool
        from runM in Gen.Double[1, 400]
        from limit in Gen.Double[0.01, 0.03]
        from volts in Gen.Int[0, 3].Select(i => new double[] { 120, 208, 240, 480 }[i])
        select new ConductorTask(
            leastA, motor ? BranchSizing.MotorBreakerA(leastA / 1.25) : ConductorTable.NextBreakerA(Math.Max(leastA, 20)), motor, !outlets, leastA / 1.25, volts, three, runM, limit);

    [Fact]
    public void What_is_chosen_carries_is_guarded_and_keeps_the_drop_or_is_the_heaviest() => Tasks.Sample(
        t =>
        {
            ConductorChoice c = BranchSizing.Choose(t);
            bool heaviest = c.Used == ConductorTable.Copper[^1];
            Assert.True(c.AmpacityA >= t.LeastA - 1e-9 || !c.Carries);
            Assert.True(c.DropFraction <= t.LimitFraction + 1e-9 || heaviest);
            Assert.True(c.Used.CircularMil >= c.Asked.CircularMil && c.Asked.CircularMil >= 6530);
            Assert.True(c.Ground.CircularMil <= c.Used.CircularMil);
            if (!t.MotorRule && c.Carries)
            {
                Assert.True(t.BreakerA <= (t.RoundUp ? ConductorTable.NextBreakerA(c.AmpacityA) : c.AmpacityA));
                Assert.True(t.BreakerA <= ConductorTable.SmallConductorLimitA(c.Used));
            }

            // The size before would not do.
            int at = Array.IndexOf(ConductorTable.Copper, c.Used);
            if (c.Used != c.Asked)
            {
                Assert.True(BranchSizing.DropV(ConductorTable.Copper[at - 1].OhmPerM, t.DropA, t.DropRunM, t.ThreePhase) / t.NominalV > t.LimitFraction);
            }
        },
        iter: 2000);

    [Fact]
    public void A_longer_run_never_gets_a_lighter_conductor() => Tasks.Sample(
        t => Assert.True(BranchSizing.Choose(t with { DropRunM = 1.3 * t.DropRunM }).Used.CircularMil >= BranchSizing.Choose(t).Used.CircularMil),
        iter: 500);

    // By hand: 12 A at 120 V over 60 m: 12 AWG drops 2 × 6.33e-3 × 12 × 60 / 120 = 7.6 %, 8 AWG 3.01 %, 6 AWG 1.9 %.
    [Fact]
    public void A_long_run_is_made_heavier_and_its_ground_with_it()
    {
        ConductorChoice c = BranchSizing.Choose(new ConductorTask(15, 20, false, true, 12, 120, false, 60, 0.03));
        Assert.Equal(("12", "6"), (c.Asked.Name, c.Used.Name));
        Assert.Equal(2 * 0.491 / 304.8 * 12 * 60 / 120, c.DropFraction, 1e-12);
        // 12 AWG ground × 26,240 / 6,530: as heavy as the conductors.
        Assert.Equal("6", c.Ground.Name);
    }

    // 40 A × 0.87 × 0.80 = 27.8 A of 10 AWG: a 30 A breaker may stand above it, not where it feeds several receptacles.
    [Fact]
    public void Heat_and_full_raceways_count()
    {
        ConductorSize ten = ConductorTable.Copper.Single(c => c.Name == "10");
        Assert.Equal(27.84, BranchSizing.AmpacityA(ten, 30), 1e-9);
        Assert.Equal("10", BranchSizing.Choose(new ConductorTask(27, 30, false, true, 20, 240, false, 5, 0.03)).Used.Name);
        Assert.Equal("8", BranchSizing.Choose(new ConductorTask(27, 30, false, false, 20, 240, false, 5, 0.03)).Used.Name);
    }

    [Fact]
    public void What_no_conductor_carries_is_told() => Assert.False(BranchSizing.Choose(new ConductorTask(350, 400, false, true, 300, 240, false, 10, 0.03)).Carries);
}
