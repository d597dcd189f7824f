using Glazewright.Design.Contracts;
using Glazewright.Design.Program;
using Glazewright.Design.Tests.Program;
using Glazewright.Design.Year;

namespace Glazewright.Design.Tests.Year;

/// <summary>Motors that move too often: by hand on both sides of what each kind is made for.</summary>
public class MotorWearTests
{
    private static WornMotor[] Worn(params MotorCounters[] counted) => [.. MotorWear.Worn([.. counted], SampleProgram.Document(), SampleProgram.Plant())];

    // 60,000 cycles over 16 years are 3,750 a year; a full travel takes 45 s, there and back 90 s: 93.75 h on the way.
    [Theory]
    [InlineData(93.7, 0)]
    [InlineData(93.8, 1)]
    public void A_louver_wears_by_its_travel(double travelH, int worn)
    {
        Assert.Equal(45, SampleProgram.Document().Actuators.Single(a => a.Id == "A/louver").TravelS);
        WornMotor[] found = Worn(new MotorCounters("A/louver", travelH, 20_000));
        Assert.Equal(worn, found.Length);
        Assert.All(found, m => Assert.True(m.ByTravel));
    }

    // One that is made to modulate stands 1,800,000 starts: 112,500 a year for 16 years.
    [Theory]
    [InlineData(112_500, 0)]
    [InlineData(112_501, 1)]
    public void Or_by_its_starts_where_each_moves_it_little(int starts, int worn)
    {
        WornMotor[] found = Worn(new MotorCounters("A/louver", 1, starts));
        Assert.Equal(worn, found.Length);
        Assert.All(found, m => Assert.False(m.ByTravel));
    }

    // 100,000 over 13 years are 7,692.3 a year; 250,000 over 15 years 16,666.7; 10,000 cycles of 2 × 240 s over 16 years are 83.3 h a year.
    [Theory]
    [InlineData("A/heater-1", 100, 7_692, 0)]
    [InlineData("A/heater-1", 100, 7_693, 1)]
    [InlineData("A/fan-1", 100, 16_666, 0)]
    [InlineData("A/fan-1", 100, 16_667, 1)]
    [InlineData("A/curtain", 83.3, 700, 0)]
    [InlineData("A/curtain", 83.4, 700, 1)]
    [InlineData("A/wet-wall-pump", 100, 25_000, 0)]
    [InlineData("A/wet-wall-pump", 100, 25_001, 1)]
    public void Each_kind_has_its_limit(string actuator, double runtimeH, int starts, int worn) =>
        Assert.Equal(worn, Worn(new MotorCounters(actuator, runtimeH, starts)).Length);

    [Fact]
    public void What_never_moves_never_wears() => Assert.Empty(Worn(new MotorCounters("A/louver", 0, 0), new MotorCounters("A/heater-1", 0, 0)));

    [Fact]
    public void Every_kind_has_a_limit_with_its_source() =>
        Assert.All(Enum.GetValues<ActuatorKind>(), kind =>
        {
            WearLimit limit = MotorWear.Of(kind, true);
            Assert.NotNull(limit.Source);
            Assert.InRange(limit.UsualYears, 5, 30);
        });

    // 20,000 starts of a burner: five years. The second is told beside it, the soonest first, and the louver for itself: 375 h are 15,000 cycles of 90 s, four years, or eight months for one of 10,000 cycles.
    [Fact]
    public void It_is_told_once_for_a_kind_with_years_place_and_field_of_the_program()
    {
        Finding[] found = Of(new MotorCounters("A/heater-2", 10, 8_000), new MotorCounters("A/heater-1", 50, 20_000), new MotorCounters("A/louver", 375, 40_000));
        Assert.All(found, f => Assert.Equal(("year/motor-wear", Severity.Near), (f.Code, f.Severity)));
        Assert.Equal(["A/louver", "A/heater-1"], found.Select(f => f.Id));
        Assert.Contains("40,000 times a year and travels as far as 15,000 times open and shut", found[0].What, StringComparison.Ordinal);
        Assert.Contains("the 60,000 full cycles that a damper's motor is made for are done in about 4 years", found[0].What, StringComparison.Ordinal);
        Assert.Contains("the 10,000 of one proved to open and shut alone in 8 months; half of its kind reach 16 years", found[0].What, StringComparison.Ordinal);
        Assert.Contains("humidity purgePause, now 1 min", found[0].Mend, StringComparison.Ordinal);
        Assert.Contains("the 100,000 starts that a burner's gas valve is made for are done in about 5 years; half of its kind reach 13 years", found[1].What, StringComparison.Ordinal);
        Assert.EndsWith("Early too: A/heater-2.", found[1].What, StringComparison.Ordinal);
        Assert.Contains("heaterFire", found[1].Mend, StringComparison.Ordinal);
    }

    [Fact]
    public void A_program_without_turns_of_drying_is_not_told_to_lengthen_their_pauses()
    {
        ProgramDocument program = SampleProgram.Document();
        program = program with { Humidity = program.Humidity with { Purge = null } };
        Finding found = MotorWords.Findings([new MotorCounters("A/louver", 375, 40_000)], program, SampleProgram.Plant()).Single();
        Assert.DoesNotContain("purge", found.Mend, StringComparison.Ordinal);
    }

    private static Finding[] Of(params MotorCounters[] counted) => [.. MotorWords.Findings([.. counted], SampleProgram.Document(), SampleProgram.Plant())];
}
