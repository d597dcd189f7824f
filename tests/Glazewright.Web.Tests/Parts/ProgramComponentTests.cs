using Bunit;
using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Program;
using Glazewright.Web.Parts;

namespace Glazewright.Web.Tests.Parts;

/// <summary>The form of a program's changes by itself, on a small program of its own.</summary>
public sealed class ProgramComponentTests : BunitContext
{
    private const string Yard = "{ \"glazewright\": 1, \"site\": { \"weather\": { \"file\": \"near.epw\" } }, \"houses\": [{ \"width\": \"26 ft\", \"length\": \"96 ft\" }] }";

    private static readonly ProgramDocument s_program = new(
        "A",
        [new ProgramPeriod("herbs", 1, 365, new ClimateTarget(22, 65), new ClimateTarget(17, 75), new DayMark.Sunrise(0), new DayMark.Sunset(0), 60, 0.5, 0.5)],
        [new Actuator("A/louver", ActuatorKind.Louver, 0, 0, 60, ""), new Actuator("A/fan-1", ActuatorKind.Fan, 60, 120, 0, ""), new Actuator("A/fan-2", ActuatorKind.Fan, 60, 120, 0, "")],
        [Stage("cool-1", 0.2, "A/fan-1"), Stage("cool-2", 0.7, "A/fan-2")],
        [],
        new HumidityControl(6, 4, [], 2, 6, 4, 90, [], 40, 20),
        null, null, [], [new Alarm("too-cold", Reading.InsideTemperature, 2, null, 600)], StageReport.Empty);

    [Fact]
    public void Only_what_the_house_has_is_shown_and_motors_have_travel_or_least_times()
    {
        IRenderedComponent<ProgramChanges> form = Form(new MemoryDesk(Yard));
        Assert.Equal(["cooling", "periods", "motors", "alarms"], form.FindAll("[data-part]").Select(p => p.GetAttribute("data-part")));
        Assert.Equal(["motors/louver/travel", "motors/fan-1/minOn", "motors/fan-1/minOff", "motors/fan-2/minOn", "motors/fan-2/minOff"], form.FindAll("[data-part=motors] [data-value]").Select(v => v.GetAttribute("data-value")));
        Assert.Equal(["alarms//tooColdBelow", "alarms//tooColdDelay"], form.FindAll("[data-part=alarms] [data-value]").Select(v => v.GetAttribute("data-value")));
        Assert.Equal("brings on louver, fan-2", form.FindAll("[data-part=cooling] legend .of")[1].TextContent);
        Assert.Equal("1.26 F°", form.Find("[data-value='cooling/fan-2/onAt'] input").GetAttribute("placeholder"));
    }

    [Fact]
    public void What_is_typed_is_listed_with_what_is_written_and_an_empty_field_takes_it_back()
    {
        MemoryDesk desk = new(Yard.Replace("\"glazewright\": 1,", "\"glazewright\": 1, \"units\": \"metric\",", StringComparison.Ordinal));
        IRenderedComponent<ProgramChanges> form = Form(desk);
        form.Find("[data-value='cooling/fan-2/delay'] input").Change("90");
        form.Find("[data-value='motors/fan-1/minOn'] input").Change("2 min");
        form.Render();
        Assert.Equal("2 values are changed:", form.Find("[data-changed]").TextContent);
        Assert.Equal("90 s", form.Find("[data-value='cooling/fan-2/delay'] input").GetAttribute("value"));
        Assert.StartsWith("cooling stages, fan-2: how long past it before it acts: 90 s (written: 60 s)", Line(form.FindAll(".changes li")[0].TextContent), StringComparison.Ordinal);
        Assert.Equal("1 changed", form.Find("[data-part=motors] .count").TextContent);
        Assert.True(form.Find("[data-part=motors]").HasAttribute("open"));
        form.Find("[data-value='motors/fan-1/minOn'] input").Change("");
        form.Find("[data-value='cooling/fan-2/delay'] button").Click();
        form.Render();
        Assert.Equal("Nothing is changed.", form.Find("[data-changed]").TextContent);
        Assert.DoesNotContain("program", desk.Document.Text, StringComparison.Ordinal);
        // Opened by a change it stays open.
        Assert.True(form.Find("[data-part=motors]").HasAttribute("open"));
    }

    [Fact]
    public void What_has_nothing_to_change_is_marked_and_a_fault_without_a_field_stands_above()
    {
        MemoryDesk desk = new(Yard.Replace("\"length\"", "\"program\": { \"cooling\": [{ \"id\": \"pump\", \"delay\": \"60 s\" }, { \"id\": \"fan-1\", \"delay\": \"soon\" }], \"stages\": 3 }, \"length\"", StringComparison.Ordinal));
        IRenderedComponent<ProgramChanges> form = Form(desk);
        Assert.Contains("nothing to change", form.FindAll(".changes li")[0].TextContent, StringComparison.Ordinal);
        Assert.Contains("means nothing here", form.Find(".program > div > .fault").TextContent, StringComparison.Ordinal);
        Assert.Single(form.FindAll(".program > div > .fault"));
        Assert.Equal("true", form.Find("[data-value='cooling/fan-1/delay'] input").GetAttribute("aria-invalid"));
        form.FindAll("button").Single(b => b.TextContent == "Take all back").Click();
        form.Render();
        Assert.Empty(desk.Faults);
        Assert.Empty(form.FindAll(".changes"));
    }

    private IRenderedComponent<ProgramChanges> Form(MemoryDesk desk) => Render<ProgramChanges>(p => p.Add(f => f.Program, s_program).Add(f => f.House, 0).Add(f => f.Desk, desk));

    private static ControlStage Stage(string id, double onAtK, string fan) => new(id, onAtK, onAtK - 0.5, 60, [new ActuatorSetting("A/louver", 1), new ActuatorSetting(fan, 1)]);

    private static string Line(string text) => string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}
