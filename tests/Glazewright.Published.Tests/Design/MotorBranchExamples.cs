using Glazewright.Design.Services;

namespace Glazewright.Published.Tests.Design;

/// <summary>
/// Worked examples of motor circuits. Read: a code trainer's questions and answers in an electricians' magazine (2014, and motor calculations of 2004), an electrician's
/// arithmetic page (5 hp), and a code forum's three motors on one feeder.
/// </summary>
public class MotorBranchExamples
{
    // 7-1/2 hp, three-phase, 230 V: 27.5 A, 10 AWG at 60 °C, 60 A. 3 hp, 115 V: 42.5 A, 6 AWG at 60 °C. 5 hp, 230 V single-phase: 35 A, 10 AWG at 75 °C, 70 A.
    [Theory]
    [InlineData(7.5, 230, true, 27.5, 60, "10"), InlineData(3, 115, false, 42.5, 60, "6"), InlineData(5, 230, false, 35, 75, "10")]
    public void Conductors_carry_125_percent(double sizeHp, double voltageV, bool threePhase, double publishedA, double terminalC, string publishedSize)
    {
        double leastA = PowerServices.ContinuousRatio * MotorTable.FullLoadA(sizeHp, voltageV, threePhase)!.Value;
        Assert.Equal(publishedA, leastA, 1e-9);
        Assert.Equal(publishedSize, ConductorTable.Copper.First(c => (terminalC > 60 ? c.At75A : c.At60A) >= leastA).Name);
    }

    [Theory]
    [InlineData(7.5, 230, true, 60), InlineData(5, 230, false, 70), InlineData(1.5, 115, false, 50)]
    public void Breakers_are_250_percent_and_the_next_rating(double sizeHp, double voltageV, bool threePhase, double publishedA) =>
        Assert.Equal(publishedA, BranchSizing.MotorBreakerA(MotorTable.FullLoadA(sizeHp, voltageV, threePhase)!.Value));

    // Two of 124 A, one of 77 A, one of 11 A at 480 V: 1.25 × 124 + 124 + 77 + 11 = 367 A (430.24).
    [Fact]
    public void A_feeder_carries_a_quarter_more_of_its_largest_motor()
    {
        LoadLine Motors(string id, int count, double currentA) => new(
            "A", id, id, count, 1, 1, 480, true, currentA, true, currentA, "", LoadSeason.Always, 1, 1.25 * currentA, false, LoadKind.Motor);
        (double baseVa, double quarterVa) = PowerServices.Demand([Motors("a", 2, 124), Motors("b", 1, 77), Motors("c", 1, 11)], LoadSeason.Cooling);
        Assert.Equal(367, (baseVa + quarterVa) / (480 * Math.Sqrt(3)), 1e-9);
    }
}
