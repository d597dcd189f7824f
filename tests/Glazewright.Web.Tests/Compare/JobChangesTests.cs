using Glazewright.Design.Contracts;
using Glazewright.Design.Document;
using Glazewright.Web.Compare;

namespace Glazewright.Web.Tests.Compare;

public class JobChangesTests
{
    private const string Yard = """
        { "glazewright": 1, "name": "Yard", "houses": [
          { "id": "A", "width": "26 ft", "length": "96 ft", "roof": { "leftEave": "8 ft" } },
          { "id": "B", "width": "20 ft", "length": "64 ft" } ] }
        """;

    [Fact]
    public void A_changed_field_is_told_in_its_words_with_both_values_in_both_units()
    {
        JobChange change = Assert.Single(Between(Yard, Yard.Replace("\"26 ft\"", "\"9.5 m\"", StringComparison.Ordinal)));
        Assert.Equal("House A, width", change.What);
        Assert.Equal("/houses/0/width", change.Pointer);
        Assert.Equal("26'-0\" (7.92 m)", change.Before);
        Assert.StartsWith("9.5 m (31'", change.After, StringComparison.Ordinal);
        Assert.False(change.IsSame);
    }

    [Fact]
    public void What_is_only_typed_otherwise_says_that_it_is_the_same()
    {
        Assert.True(Assert.Single(Between(Yard, Yard.Replace("\"26 ft\"", "\"312 in\"", StringComparison.Ordinal))).IsSame);
        Assert.Empty(Between(Yard, "// a note\n" + Yard.Replace("  ", "\t", StringComparison.Ordinal)));
    }

    [Fact]
    public void A_field_that_one_leaves_out_tells_the_default_that_holds()
    {
        EqList<DefaultUsed> defaults = [new DefaultUsed("/houses/0/roof/leftEave", "7'-6\"", "")];
        JobChange change = Assert.Single(JobChanges.Of(JobDocument.Read(Yard.Replace(", \"roof\": { \"leftEave\": \"8 ft\" }", ", \"roof\": { }", StringComparison.Ordinal)), defaults, JobDocument.Read(Yard), []));
        Assert.Equal("not given: 7'-6\" (default)", change.Before);
        Assert.StartsWith("8'-0\"", change.After, StringComparison.Ordinal);
    }

    // By place every field of the second house would differ: it is the first that went.
    [Fact]
    public void Houses_are_matched_by_id_wherever_they_stand_in_the_list()
    {
        string one = """{ "glazewright": 1, "name": "Yard", "houses": [ { "id": "B", "width": "22 ft", "length": "64 ft" } ] }""";
        JobChange[] changes = [.. Between(Yard, one)];
        Assert.Equal(2, changes.Length);
        Assert.Equal(("House B, width", "20'-0\" (6.10 m)"), (changes[0].What, changes[0].Before));
        Assert.StartsWith("22'-0\"", changes[0].After, StringComparison.Ordinal);
        Assert.Equal(("House A", "not given"), (changes[1].What, changes[1].After));
        Assert.Contains("length 96 ft", changes[1].Before, StringComparison.Ordinal);
    }

    [Fact]
    public void Other_way_round_the_same_fields_differ()
    {
        string other = Yard.Replace("\"20 ft\"", "\"24 ft\"", StringComparison.Ordinal).Replace("\"name\": \"Yard\"", "\"name\": \"Yard 2\", \"units\": \"metric\"", StringComparison.Ordinal);
        JobChange[] there = [.. Between(Yard, other)];
        JobChange[] back = [.. Between(other, Yard)];
        Assert.Equal(3, there.Length);
        Assert.Equal(there.Select(c => (c.Pointer, c.Before, c.After)).Order(), back.Select(c => (c.Pointer, c.After, c.Before)).Order());
    }

    [Theory]
    [InlineData("null"), InlineData("[]"), InlineData("{ \"houses\": 3 }"), InlineData("{ \"houses\": [7, \"x\", null] }"), InlineData("not json")]
    public void A_document_that_is_no_job_is_compared_too(string text)
    {
        Assert.NotEmpty(Between(Yard, text));
        Assert.Empty(Between(text, text));
    }

    private static IReadOnlyList<JobChange> Between(string before, string after) => JobChanges.Of(JobDocument.Read(before), [], JobDocument.Read(after), []);
}
