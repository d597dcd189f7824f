using Glazewright.Design.Contracts;
using Glazewright.Design.Services;

namespace Glazewright.Design.Tests.Services;

/// <summary>
/// Conduit fill: counts of THHN and THWN-2 wires in electrical metallic tubing, an electrician's reprint of NEC annex C (read at second hand), from the tubing's
/// inside areas of chapter 9, table 4 (read at second hand). Motor feeder: the shape of NEC annex D, example D8 (from memory).
/// </summary>
public class ConduitAndFeederTests
{
    // Total areas of tubing, square inches: 1/2 0.304, 3/4 0.533, 1 0.864, 1-1/4 1.496, 1-1/2 2.036, 2 3.356.
    [Theory]
    [InlineData("14", 12, 22, 35, 61, 84, 138)]
    [InlineData("12", 9, 16, 26, 45, 61, 101)]
    [InlineData("10", 5, 10, 16, 28, 38, 63)]
    [InlineData("8", 3, 6, 9, 16, 22, 36)]
    [InlineData("6", 2, 4, 7, 12, 16, 26)]
    [InlineData("4", 1, 2, 4, 7, 10, 16)]
    [InlineData("3", 1, 1, 3, 6, 8, 13)]
    [InlineData("2", 1, 1, 3, 5, 7, 11)]
    [InlineData("1", 1, 1, 1, 4, 5, 8)]
    public void Tubing_takes_as_many_wires_as_annex_C_prints(string wire, params int[] published)
    {
        double[] insides = [0.304, 0.533, 0.864, 1.496, 2.036, 3.356];
        Assert.Equal(published, insides.Select(i => ConduitTable.Most(i, wire)));
    }

    // 4 × 0.7073 + 0.3237 = 3.15 in²: 40 % of 3 is 2.91, of 3-1/2 3.89.
    // By hand: 3 × 0.0507 + 0.0211 = 0.1732 in²: 40 % of 1/2 is 0.114, of 3/4 0.203.
    [Fact]
    public void The_ground_counts_and_the_smallest_that_takes_all_is_taken()
    {
        Assert.Equal(("3/4", 21), (ConduitTable.Of(3, "6", "10")!.Inches, ConduitTable.Of(3, "6", "10")!.DesignatorMm));
        Assert.Equal("1/2", ConduitTable.Of(2, "12", "12")!.Inches);
        Assert.Equal("3-1/2", ConduitTable.Of(4, "500", "4/0")!.Inches);
        Assert.Null(ConduitTable.Of(8, "500", "4/0"));
    }

    // Example D8: 34 A with a device of 110 A, two of 40 A with 60 A: conductors 1.25 · 40 + 40 + 34 = 124 A; device 110 + 40 + 40 = 190 A, so 175 A.
    [Fact]
    public void A_feeder_of_motors_is_that_of_annex_D()
    {
        Assert.Equal(124, FeederBreaker.ConductorsA(40, [40, 34]), 9);
        Assert.Equal(190, FeederBreaker.MostA(110, [40, 40]), 9);
        Assert.Equal(175, FeederBreaker.RoundedDownA(190));
        Assert.Equal(200, FeederBreaker.RoundedDownA(200));
    }

    [Fact]
    public void Leg_by_leg_and_season_by_season()
    {
        static Circuit Of(string legs, LoadKind kind, double currentA, double breakerA, LoadSeason season) => new(
            "1", "", [], kind, 1, legs, [], 230, false, currentA, currentA, breakerA, "", "12", 3.3, 2, "12", 20, 1, 1, 0, 0.03, "", false, false, season, 1, "");
        PanelSchedule panel = new(
            "A", "", false, "", 60, 24, 4,
            [
                Of("AB", LoadKind.Motor, 10, 25, LoadSeason.Cooling), Of("A", LoadKind.Motor, 5, 15, LoadSeason.Cooling),
                Of("B", LoadKind.ElectricHeat, 40, 50, LoadSeason.Heating), Of("B", LoadKind.Motor, 6, 15, LoadSeason.Heating),
            ],
            [], [], 0, new FeederRun("main", "copper", 1, "6", 13.3, "10", 60, 65, 50, 1, 0, ""));

        // Leg A cooling: 25 + 5; leg B cooling 25; leg B heating 15 + 40.
        Assert.Equal(55, panel.MotorFeederMostA, 9);
        Assert.Equal(0, (panel with { Circuits = [panel.Circuits[2]] }).MotorFeederMostA);
        Assert.Equal(("1/2", 16), (panel.Circuits[0].ConduitInches, panel.Circuits[0].ConduitDesignatorMm));
    }
}
