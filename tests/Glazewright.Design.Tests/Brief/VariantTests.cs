using Glazewright.Design.Brief;
using Glazewright.Design.Brief.Reading;
using Glazewright.Design.Contracts;
using Glazewright.Design.Document;

namespace Glazewright.Design.Tests.Brief;

/// <summary>Each variant of the demo is the demo with its stated change, and ends as its name says.</summary>
public class VariantTests
{
    private static readonly Dictionary<string, Edit[]> s_changes = new()
    {
        ["fault-roof-does-not-close.json"] = [Edit.Typed("/houses/1/roof/rightPitch", "9:12")],
        ["fault-curtain-over-the-eave.json"] = [Edit.Typed("/houses/0/equipment/curtainHeight", "8'-6\"")],
        ["fault-many-at-once.json"] =
        [
            new Edit("/houses/0/width", "26"),
            Edit.Removed("/houses/0/ponyWall"),
            Edit.Typed("/houses/0/ponnyWall", "2'-6\""),
            Edit.Typed("/houses/0/equipment/exhaust/0/entry", "exhaust-54-three-phase"),
            Edit.Typed("/site/snow/edition", "ASCE 7-22"),
            Edit.Typed("/houses/0/schedule/1/weeks", "wk 17-22"),
        ],
        ["finding-four-fans-one-wet-wall.json"] = [new Edit("/houses/0/equipment/exhaust", "[{ \"entry\": \"exhaust-48\", \"count\": 4 }]")],
        ["finding-second-curtain-wider-gap.json"] = [Edit.Typed("/houses/0/y", "36'-6\""), new Edit("/houses/0/equipment/curtains", "2"), Edit.Typed("/links/1/y", "37'-6\"")],
    };

    public static TheoryData<string> Names => [.. s_changes.Keys];

    [Fact]
    public void Every_variant_is_known_here() =>
        Assert.Equal(s_changes.Keys.Order(StringComparer.Ordinal), Directory.GetFiles(Path.Combine(Examples.Folder, "variants")).Select(f => Path.GetFileName(f)).Order(StringComparer.Ordinal));

    [Theory]
    [MemberData(nameof(Names))]
    public void A_variant_is_the_demo_with_its_change(string name)
    {
        Assert.Equal(Values(Examples.Edited(s_changes[name]).Root), Values(JobDocument.Read(Examples.Text("variants/" + name)).Root));
    }

    [Theory]
    [InlineData("fault-roof-does-not-close.json", "Contradiction /houses/1/roof/rightPitch")]
    [InlineData("fault-curtain-over-the-eave.json", "DoesNotFit /houses/0/equipment/curtainHeight")]
    [InlineData("fault-many-at-once.json", "Contradiction /site/wind/edition; Unit /houses/0/width; Contradiction /houses/0/equipment/exhaust/0/entry; Contradiction /houses/0/schedule/1/weeks; UnknownKey /houses/0/ponnyWall")]
    [InlineData("finding-four-fans-one-wet-wall.json", "")]
    [InlineData("finding-second-curtain-wider-gap.json", "")]
    public void A_variant_ends_as_its_name_says(string name, string faults)
    {
        ReadOutcome<Job> outcome = JobReader.Read(JobDocument.Read(Examples.Text("variants/" + name)));
        Assert.Equal(faults, string.Join("; ", outcome.Faults.Select(f => $"{f.Kind} {f.Pointer}")));
    }

    // Keys in alphabetical order and values as typed: places and comments apart.
    private static string Values(Node node) => node switch
    {
        ObjectNode o => "{" + string.Join(",", o.Members.OrderBy(m => m.Key, StringComparer.Ordinal).Select(m => m.Key + ":" + Values(m.Value))) + "}",
        ListNode l => "[" + string.Join(",", l.Items.Select(Values)) + "]",
        TextNode t => JsonText.Quote(t.Text),
        NumberNode n => n.Typed,
        FlagNode f => f.IsTrue.ToString(),
        _ => "null",
    };
}
