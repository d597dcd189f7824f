using Glazewright.Design.Services;

namespace Glazewright.Published.Tests.Design;

/// <summary>Worked voltage drops. Read: an electrical course's page (16 AWG by chapter 9 table 8), the answer to a problem of a residential wiring textbook (10 A at 140 ft).</summary>
public class VoltageDropExamples
{
    private const double FootM = 0.3048;

    // 16 AWG, 4.99 Ω per 1,000 ft, 100 ft, 4 A: "4.0 volts".
    [Fact]
    public void There_and_back() => Assert.Equal(4.0, BranchSizing.DropV(4.99 / 304.8, 4, 100 * FootM, threePhase: false), tolerance: 0.05);

    // 120 V, 10 A, 140 ft, 3 %: 10 AWG.
    [Fact]
    public void Three_percent_at_140_feet_asks_for_10_awg() => Assert.Equal(
        "10", BranchSizing.Choose(new ConductorTask(10, 20, false, true, 10, 120, false, 140 * FootM, 0.03)).Used.Name);

    // The same answer gives 8 AWG 2.19 V by 12.9 Ω·cmil/ft, a constant rounded up from the table's 12.6: ours lies 2 % lower, by that constant.
    [Fact]
    public void Eight_awg_by_table_is_lower_than_by_the_round_constant()
    {
        ConductorSize eight = ConductorTable.Copper.Single(c => c.Name == "8");
        double ours = BranchSizing.DropV(eight.OhmPerM, 10, 140 * FootM, threePhase: false);
        double constant = eight.OhmPerKiloFoot * eight.CircularMil / 1000;
        Assert.Equal(2.19, ours * 12.9 / constant, tolerance: 0.005);
    }
}
