using AngleSharp.Dom;
using Bunit;
using Glazewright.Design.Document;
using Glazewright.Web.Fields;
using Glazewright.Web.Parts;

namespace Glazewright.Web.Tests.Parts;

/// <summary>A field by itself: what each shape of field shows, and which edit typing makes. What a whole page does with it, browser tests say.</summary>
public sealed class FieldComponentTests : BunitContext
{
    private const string Yard = "{ \"glazewright\": 1, \"site\": { \"weather\": { \"file\": \"near.epw\" } }, \"houses\": [{ \"width\": \"26 ft\", \"length\": \"96 ft\" }] }";

    [Fact]
    public void A_bare_number_is_saved_with_the_unit_beside_the_field_and_the_same_text_again_is_no_edit()
    {
        MemoryDesk desk = new(Yard);
        IRenderedComponent<FieldView> field = Field(desk, "/houses/0/width");
        Assert.Equal("ft", field.Find(".unit").TextContent);
        Assert.EndsWith("(7.92 m)", field.Find(".echo").TextContent, StringComparison.Ordinal);
        field.Find("input").Input("30");
        Assert.StartsWith("30", field.Find(".echo").TextContent, StringComparison.Ordinal);
        Assert.Equal("26 ft", Text(desk, "/houses/0/width"));
        field.Find("input").Change("30");
        Assert.Equal("30 ft", Text(desk, "/houses/0/width"));
        Assert.Equal(["House 1, width: 30"], desk.Said);
        field.Find("input").Change("30 ft");
        Assert.Single(desk.Said);
    }

    [Fact]
    public void A_number_whose_unit_is_a_guess_is_saved_as_typed_and_its_fault_stands_at_the_field()
    {
        MemoryDesk desk = new(Yard);
        IRenderedComponent<FieldView> field = Field(desk, "/houses/0/equipment/positivePressure");
        Assert.Empty(field.FindAll(".unit"));
        field.Find("input").Change("3");
        Assert.Equal("3", Text(desk, "/houses/0/equipment/positivePressure"));
        Assert.Equal("true", field.Find("input").GetAttribute("aria-invalid"));
        string id = field.Find("input").Id!;
        Assert.Contains(id + "-fault", field.Find("input").GetAttribute("aria-describedby")!, StringComparison.Ordinal);
        Assert.Contains("Right:", field.Find($"#{id}-fault").TextContent, StringComparison.Ordinal);
        field.Find("input").Change("");
        Assert.Null(desk.Document.Find("/houses/0/equipment/positivePressure"));
        Assert.Empty(desk.Faults);
        Assert.Contains("(default)", field.Find(".help").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void A_choice_offers_its_default_and_keeps_a_word_that_is_none_of_its_own()
    {
        MemoryDesk desk = new(Yard.Replace("\"length\"", "\"equipment\": { \"fanEnd\": \"north\" }, \"length\"", StringComparison.Ordinal));
        IRenderedComponent<FieldView> field = Field(desk, "/houses/0/equipment/fanEnd");
        IElement[] options = [.. field.FindAll("option")];
        Assert.Equal("", options[0].GetAttribute("value"));
        Assert.True(options.Single(o => o.TextContent == "north").HasAttribute("selected"));
        field.Find("select").Change("end-1");
        Assert.Equal("end-1", Text(desk, "/houses/0/equipment/fanEnd"));
        Assert.DoesNotContain(field.FindAll("option"), o => o.TextContent == "north");
        field.Find("select").Change("");
        Assert.Null(desk.Document.Find("/houses/0/equipment/fanEnd"));
    }

    // A browser shows the first of a list as chosen where nothing is: then "missing" stood beside a heater.
    [Fact]
    public void Nothing_chosen_is_seen_and_entries_say_what_they_are()
    {
        MemoryDesk desk = new(Yard.Replace("\"length\"", "\"equipment\": { \"heaters\": [{}], \"exhaust\": [{}] }, \"length\"", StringComparison.Ordinal));
        IRenderedComponent<FieldView> field = Field(desk, "/houses/0/equipment/heaters/0/entry");
        IElement[] options = [.. field.FindAll("option")];
        Assert.Equal(("", "choose one …", true), (options[0].GetAttribute("value"), options[0].TextContent, options[0].HasAttribute("selected")));
        Assert.All(options[1..], o => Assert.Matches(@"^[\w.-]+: (electric, |.* in, ).*kBtu/h \(.* kW\)", o.TextContent));
        Assert.StartsWith("■ This is not given yet.", field.Find(".fault").TextContent, StringComparison.Ordinal);
        field.Find("select").Change(options[1].GetAttribute("value"));
        Assert.DoesNotContain(field.FindAll("option"), o => o.TextContent == "choose one …");
        Assert.All(Field(desk, "/houses/0/equipment/exhaust/0/entry").FindAll("option").Skip(1), o => Assert.Matches(@"\d in \(.* m\) across, .* cfm", o.TextContent));
    }

    [Fact]
    public void Beds_on_the_ground_are_a_choice_and_an_added_bench_needs_nothing_typed()
    {
        MemoryDesk desk = new(Yard);
        IRenderedComponent<FieldView> field = Field(desk, "/houses/0/benches");
        Assert.Equal(["default: usual", "usual", "none", "these pieces"], field.FindAll("select option").Select(o => o.TextContent));
        field.Find("select").Change("none");
        Assert.Equal("none", Text(desk, "/houses/0/benches"));
        field.Find("select").Change("[]");
        Assert.Empty(desk.Faults);
    }

    [Fact]
    public void A_flag_is_yes_no_or_left_out()
    {
        MemoryDesk desk = new(Yard);
        IRenderedComponent<FieldView> field = Field(desk, "/houses/0/edgeInsulated");
        Assert.Equal(["default: yes", "yes", "no"], field.FindAll("option").Select(o => o.TextContent));
        field.Find("select").Change("false");
        Assert.IsType<FlagNode>(desk.Document.Find("/houses/0/edgeInsulated"));
        Assert.True(field.FindAll("option")[2].HasAttribute("selected"));
    }

    [Fact]
    public void Names_of_a_library_are_offered_and_a_locked_job_takes_no_typing()
    {
        IRenderedComponent<FieldView> field = Field(new MemoryDesk(Yard) { IsLocked = true }, "/site/weather/file");
        Assert.Equal(["near.epw", "far.epw"], field.FindAll("datalist option").Select(o => o.GetAttribute("value")));
        Assert.Equal(field.Find("datalist").Id, field.Find("input").GetAttribute("list"));
        Assert.True(field.Find("input").HasAttribute("disabled"));
    }

    [Fact]
    public void A_list_begins_with_a_word_and_each_of_its_things_can_be_added_and_taken_out()
    {
        MemoryDesk desk = new(Yard);
        IRenderedComponent<FieldView> field = Field(desk, "/houses/0/openings");
        Assert.Equal("none given", field.Find(".count").TextContent);
        field.FindAll("button").Last().Click();
        Assert.Equal("1", field.Find(".count").TextContent);
        // An opening without a kind is a fault: the list opens, and stays open when it is mended.
        Assert.True(field.Find("details").HasAttribute("open"));
        Assert.Equal("■ 2", field.Find("summary .miss").TextContent);
        field.Find("#" + FieldMap.ElementId("/houses/0/openings/0/kind")).Change("window");
        field.Find("#" + FieldMap.ElementId("/houses/0/openings/0/face")).Change("left");
        Assert.Empty(desk.Faults);
        Assert.True(field.Find("details").HasAttribute("open"));
        field.FindAll("button").Single(b => b.TextContent.StartsWith("Take out", StringComparison.Ordinal)).Click();
        Assert.Equal("none given", field.Find(".count").TextContent);
        Assert.EndsWith(": taken out", desk.Said[^1], StringComparison.Ordinal);
    }

    private IRenderedComponent<FieldView> Field(MemoryDesk desk, string pointer) => Render<FieldView>(p => p.Add(f => f.Desk, desk).Add(f => f.Pointer, pointer));

    private static string Text(MemoryDesk desk, string pointer) => Typing.Text(desk.Document.Find(pointer), desk.Document);
}
