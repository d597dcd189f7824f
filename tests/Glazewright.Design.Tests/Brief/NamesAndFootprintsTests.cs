using Glazewright.Design.Brief;
using Glazewright.Design.Brief.Reading;
using Glazewright.Design.Contracts;
using Glazewright.Design.Document;

namespace Glazewright.Design.Tests.Brief;

/// <summary>Names that no paper can carry, ids that no disk tells apart, buildings that stand in each other.</summary>
public class NamesAndFootprintsTests
{
    private static readonly SiteHint s_hint = new("Demo site", 41.98, -87.92, 201, -6);

    [Theory]
    [InlineData("\\u202E", "reading direction (U+202E)")]
    [InlineData("\\u2067", "reading direction (U+2067)")]
    [InlineData("\\ud800", "half of a character (U+D800)")]
    [InlineData("\\udc00 and more", "half of a character (U+DC00)")]
    [InlineData("\\u0007", "control characters")]
    [InlineData("\\u2028", "not seen (U+2028)")]
    public void A_name_with_a_character_that_is_not_seen_is_a_fault_at_its_place(string typed, string said)
    {
        Fault[] faults = [.. Faults($$"""{ "glazewright": 1, "name": "Yard {{typed}}", "houses": [{ "width": "20 ft", "length": "48 ft" }] }""")];
        Assert.Equal("/name", Assert.Single(faults).Pointer);
        Assert.Contains(said, faults[0].Wrong, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("דרך ירק")]
    [InlineData("温室")]
    [InlineData("می\u200Cخواهم")]
    [InlineData("🌱 yard")]
    public void Names_of_any_script_are_taken(string name) =>
        Assert.Empty(Faults($$"""{ "glazewright": 1, "name": "{{name}}", "houses": [{ "width": "20 ft", "length": "48 ft" }] }"""));

    [Theory]
    [InlineData("")]
    [InlineData("   ")]
    public void A_blank_name_is_a_fault(string name)
    {
        Fault fault = Assert.Single(Faults($$"""{ "glazewright": 1, "name": "{{name}}", "houses": [{ "width": "20 ft", "length": "48 ft" }] }"""));
        Assert.Equal("/name", fault.Pointer);
        Assert.Contains("blank", fault.Wrong, StringComparison.Ordinal);
    }

    [Fact]
    public void Ids_that_differ_by_capitals_alone_are_one_id()
    {
        Fault[] faults = [.. Faults("""{ "glazewright": 1, "houses": [{ "id": "a", "width": "20 ft", "length": "48 ft" }, { "id": "A", "width": "20 ft", "length": "48 ft" }] }""")];
        Assert.Contains(faults, f => f is { Kind: FaultKind.Duplicate, Pointer: "/houses/1/id" });
    }

    [Fact]
    public void Houses_in_each_other_are_a_fault_that_says_where_there_is_room()
    {
        Fault fault = Assert.Single(Faults("""{ "glazewright": 1, "houses": [{ "width": "20 ft", "length": "48 ft" }, { "width": "20 ft", "length": "48 ft", "x": "10 ft", "y": "15 ft" }] }"""));
        Assert.Equal((FaultKind.DoesNotFit, "/houses/1"), (fault.Kind, fault.Pointer));
        Assert.Contains("38'-0\" along the ridges and 5'-0\" across", fault.Wrong, StringComparison.Ordinal);
        Assert.Contains("x from 48'-0\" or y from 20'-0\"", fault.Right, StringComparison.Ordinal);
    }

    [Fact]
    public void Houses_that_touch_are_none() =>
        Assert.Empty(Faults("""{ "glazewright": 1, "houses": [{ "width": "20 ft", "length": "48 ft" }, { "width": "20 ft", "length": "48 ft", "y": "20 ft" }] }"""));

    private static IEnumerable<Fault> Faults(string json) => JobReader.Read(JobDocument.Read(json), s_hint).Faults.Where(f => f.Pointer != "/site/weather/file");
}
