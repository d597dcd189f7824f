using Glazewright.Design.Contracts;
using Glazewright.Design.Program;

namespace Glazewright.Design.Tests.Program;

/// <summary>The narrative speaks of what the house has.</summary>
public class NarrativeTests
{
    private static string Text(ProgramDocument d) => string.Join('\n', ControlNarrative.Of(d, UnitSystem.Us).SelectMany(p => p.Lines));

    [Theory]
    [InlineData(ActuatorKind.WetWallPump, "wet-wall sump")]
    [InlineData(ActuatorKind.WetWallPump, "no water on the wet wall")]
    [InlineData(ActuatorKind.Fog, "fog pump")]
    [InlineData(ActuatorKind.Fog, "bleed-down of the fog line")]
    [InlineData(ActuatorKind.BenchPipe, "Low-water cut-off of boiler")]
    public void Water_is_spoken_of_where_there_is_some(ActuatorKind kind, string words)
    {
        ProgramDocument all = SampleProgram.Document();
        Assert.NotNull(all.ColdAir);
        ProgramDocument with = all with { Actuators = [.. all.Actuators.Where(a => a.Kind is not (ActuatorKind.WetWallPump or ActuatorKind.Fog or ActuatorKind.BenchPipe)), all.Actuators[0] with { Id = "A/it", Kind = kind }] };
        ProgramDocument without = with with { Actuators = with.Actuators.Where(a => a.Kind != kind).ToEqList() };
        Assert.Contains(words, Text(with), StringComparison.Ordinal);
        Assert.DoesNotContain(words, Text(without), StringComparison.Ordinal);
    }

    [Fact]
    public void It_says_what_the_hand_may_and_what_comes_after_a_power_cut()
    {
        string text = Text(SampleProgram.Document());
        Assert.Contains("Interlocks, least times and stops by sensors hold for the hand as well", text, StringComparison.Ordinal);
        Assert.Contains("5 s longer than the one named before it", text, StringComparison.Ordinal);
    }

    // A dehumidifier throws no air out: what the air outside is like does not bind it. Without a curtain the second sensor serves.
    [Fact]
    public void Drying_by_machine_knows_no_outside_air()
    {
        ProgramDocument all = SampleProgram.Document();
        ProgramDocument machine = all with
        {
            Actuators = [.. all.Actuators.Where(a => a.Kind != ActuatorKind.Curtain), all.Actuators[0] with { Id = "A/dryer", Kind = ActuatorKind.Dehumidifier }],
            Humidity = all.Humidity with { Drying = [new ActuatorSetting("A/dryer", 1)] },
        };
        Assert.DoesNotContain("as much vapour", Text(machine), StringComparison.Ordinal);
        Assert.Contains("the second one, then the one under the roof serves", Text(machine), StringComparison.Ordinal);
        ProgramDocument aired = machine with { Humidity = all.Humidity with { Drying = [new ActuatorSetting(all.Actuators[0].Id, 1)] } };
        Assert.Contains("as much vapour", Text(aired), StringComparison.Ordinal);
    }
}
