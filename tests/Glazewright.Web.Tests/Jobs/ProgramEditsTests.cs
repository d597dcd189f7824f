using Glazewright.Design.Brief.Reading;
using Glazewright.Design.Contracts;
using Glazewright.Design.Document;
using Glazewright.Design.Program;
using Glazewright.Store.Jobs;
using Glazewright.Web.Fields;
using Glazewright.Web.Jobs;

namespace Glazewright.Web.Tests.Jobs;

/// <summary>Changes of the control program, as a page writes them and takes them back.</summary>
public sealed class ProgramEditsTests(Desk desk) : IClassFixture<Desk>
{
    private static readonly ProgramPart s_cooling = ProgramParts.Of("cooling");
    private static readonly ProgramPart s_humidity = ProgramParts.Of("humidity");
    private static readonly JobDocument s_plain = JobDocument.Read("{ \"glazewright\": 1, \"houses\": [{ \"width\": \"26 ft\" }, { \"width\": \"20 ft\" }] }");

    // "4" where "4 min" was written became four seconds, unseen.
    [Fact]
    public void A_written_time_is_in_the_unit_of_a_bare_number_and_a_few_seconds_for_minutes_are_unsure()
    {
        ProgramField delay = ProgramParts.All.Single(p => p.Key == "cooling").Fields.Single(f => f.Key == "delay");
        Assert.Equal(("240 s (4 min)", "60 s"), (ProgramEdits.Written(delay, 240, UnitSystem.Us), ProgramEdits.Written(delay, 60, UnitSystem.Us)));
        Assert.Equal(("4 s, where 240 s (4 min) is written. For minutes type 4 min.", false), ProgramEdits.Echo(delay, "4", 240, UnitSystem.Us));
        Assert.True(ProgramEdits.Echo(delay, "4 min", 240, UnitSystem.Us).IsRight);
        Assert.True(ProgramEdits.Echo(delay, "4", 5, UnitSystem.Us).IsRight);
    }

    // What a field says it takes, it takes: typed, both ends are no fault, in either units.
    [Theory]
    [InlineData(UnitSystem.Us, "0 F°", "54 F°")]
    [InlineData(UnitSystem.Metric, "0 K", "30 K")]
    public void Both_ends_of_a_range_are_in_the_reader_s_units_and_taken(UnitSystem units, string least, string most)
    {
        Assert.Equal((least, most), ProgramEdits.Range(Field(s_cooling, "onAt"), units));
        Assert.Equal(("0 s", "24 h"), ProgramEdits.Range(Field(s_cooling, "delay"), units));
        Assert.Contains(JobReader.Read(Set(s_plain, s_cooling, "fan-2", "onAt", "30.01 K")).Faults, f => f.Pointer.StartsWith("/houses/1/program", StringComparison.Ordinal));
        foreach (ProgramPart part in ProgramParts.All)
        {
            foreach (ProgramField field in part.Fields)
            {
                (string from, string to) = ProgramEdits.Range(field, units);
                foreach (string end in new[] { from, to })
                {
                    JobDocument typed = Set(s_plain, part, part.IsNamed ? "fan-2" : "", field.Key, end);
                    Assert.DoesNotContain(JobReader.Read(typed).Faults, f => f.Pointer.StartsWith("/houses/1/program", StringComparison.Ordinal));
                }
            }
        }
    }

    [Fact]
    public void The_first_change_of_a_stage_brings_its_name_and_the_second_stands_beside_it()
    {
        JobDocument one = Set(s_plain, s_cooling, "fan-2", "onAt", "1.5 F°");
        JobDocument two = Set(one, s_cooling, "fan-2", "delay", "90");
        JobDocument three = Set(two, s_humidity, "", "fogCeiling", "80");
        Assert.Equal(
            [("fan-2", "onAt", "1.5 F°", "/houses/1/program/cooling/0/onAt"), ("fan-2", "delay", "90 s", "/houses/1/program/cooling/0/delay"), ("", "fogCeiling", "80 %", "/houses/1/program/humidity/fogCeiling")],
            ProgramEdits.Of(three, 1).Select(c => (c.Name, c.Field.Key, c.Typed, c.Pointer)));
        Assert.Equal("fan-2", Typing.Text(three.Find("/houses/1/program/cooling/0/id"), three));
        Assert.Empty(ProgramEdits.Of(three, 0));
        Assert.Empty(ProgramEdits.Set(three, 1, s_cooling, "fan-2", Field(s_cooling, "delay"), "90 s", UnitSystem.Us));
        Assert.Equal("2 min", ProgramEdits.Of(Set(three, s_cooling, "fan-2", "delay", "2 min"), 1)[1].Typed);
    }

    [Fact]
    public void Taking_back_leaves_nothing_empty_and_the_text_as_it_was()
    {
        JobDocument one = Set(s_plain, s_cooling, "fan-2", "onAt", "1.5 F°");
        JobDocument two = Set(one, s_cooling, "fan-2", "delay", "90 s");
        JobDocument other = Set(two, s_cooling, "fan-1", "delay", "70 s");
        JobDocument left = Back(other, "fan-2", "onAt");
        Assert.Equal(["fan-2", "fan-1"], ProgramEdits.Of(left, 1).Select(c => c.Name));
        left = Back(left, "fan-2", "delay");
        Assert.Equal("fan-1", Assert.Single(ProgramEdits.Of(left, 1)).Name);
        Assert.Equal("/houses/1/program/cooling/0/delay", ProgramEdits.Of(left, 1)[0].Pointer);
        // An empty field is as written: the whole section goes with the last change.
        Assert.Equal(s_plain.Text, Set(left, s_cooling, "fan-1", "delay", " ").Text);
        Assert.Empty(ProgramEdits.Set(s_plain, 1, s_cooling, "fan-1", Field(s_cooling, "delay"), "", UnitSystem.Us));
    }

    [Fact]
    public async Task A_change_is_answered_and_undone_and_one_that_is_no_program_stands_at_its_field()
    {
        StoredJob job = await desk.JobAsync(Desk.Example("two-ridge-herb-yard.json"));
        JobSession window = await desk.WindowAsync(job.Id);
        ProgramDocument written = window.View!.Light!.Houses[0].Program.Document;
        string first = s_cooling.Names(written)[0];
        async Task TypeAsync(string field, string typed)
        {
            Assert.True(await window.EditAsync(ProgramEdits.Set(window.Document, 0, s_cooling, first, Field(s_cooling, field), typed, UnitSystem.Us), field));
            await window.Settled;
        }

        await TypeAsync("delay", "77 s");
        Assert.Equal(77, window.View.Light!.Houses[0].Program.Document.Cooling[0].DelayS);
        Assert.Equal(written, window.View.Light!.Houses[0].Program.Written);
        Assert.Contains(PageFacts.Of(PagePlan.Of("program"), window.View.Light!, null, 0).Findings, f => f.Code == "program/changed");

        await TypeAsync("offAt", "9 K");
        Fault fault = Assert.Single(window.Faults);
        Assert.Equal("/houses/0/program/cooling/0/offAt", fault.Pointer);
        Assert.True(fault.Line > 1);
        Assert.True(window.View!.IsStale);
        Assert.Equal("program", PagePlan.Find(fault.Pointer)!.Value.Page.Key);

        Assert.True(await window.UndoAsync());
        await window.Settled;
        Assert.Empty(window.Faults);
        Assert.True(await window.UndoAsync());
        await window.Settled;
        Assert.Equal(Desk.Example("two-ridge-herb-yard.json"), window.Document.Text);
        Assert.Equal(written, window.View!.Light!.Houses[0].Program.Document);
        Assert.True(await window.RedoAsync());
        await window.Settled;
        Assert.Equal(77, window.View!.Light!.Houses[0].Program.Document.Cooling[0].DelayS);
    }

    private static ProgramField Field(ProgramPart part, string key) => part.Fields.First(f => f.Key == key);

    private static JobDocument Set(JobDocument document, ProgramPart part, string name, string field, string typed) => Edited(document, ProgramEdits.Set(document, 1, part, name, Field(part, field), typed, UnitSystem.Us));

    private static JobDocument Back(JobDocument document, string name, string field) => Edited(document, ProgramEdits.TakeBack(document, 1, ProgramEdits.Of(document, 1).Single(c => c.Name == name && c.Field.Key == field)));

    private static JobDocument Edited(JobDocument document, IReadOnlyList<Edit> edits)
    {
        Assert.True(document.TryEdit(edits, out JobDocument edited, out Fault? fault), fault?.Wrong);
        return edited;
    }
}
