using System.Text.Json;
using CsCheck;
using Glazewright.Design.Contracts;
using Glazewright.Design.Document;

namespace Glazewright.Design.Tests.Document;

/// <summary>The raw tree: what is read, where it stands, and what is said of text that is not JSON.</summary>
public class TreeTests
{
    [Fact]
    public void Comments_trailing_commas_and_spelling_are_kept()
    {
        JobDocument document = JobDocument.Read("""
            // the yard
            {
              "width": "12'6\"", /* as measured */
              "count": 1.50,
              "list": [1, 2,],
            }
            """);
        Assert.Empty(document.Faults);
        Assert.Equal("12'6\"", Assert.IsType<TextNode>(document.Find("/width")).Text);
        Assert.Equal("1.50", Assert.IsType<NumberNode>(document.Find("/count")).Typed);
        Assert.Equal(2, Assert.IsType<ListNode>(document.Find("/list")).Items.Count);
        Assert.Equal((3, 12), (document.Find("/width")!.Place.Line, document.Find("/width")!.Place.Column));
        Assert.Equal((5, 15), (document.Find("/list/1")!.Place.Line, document.Find("/list/1")!.Place.Column));
    }

    [Theory]
    [InlineData("", 1, 1, "the document is empty")]
    [InlineData("{ \"a\": 1", 1, 9, "the document ends in the middle")]
    [InlineData("{ \"a\" 1 }", 1, 7, "behind the key \"a\" stands '1'")]
    [InlineData("{ a: 1 }", 1, 3, "'a' stands where a key belongs")]
    [InlineData("{ “a”: 1 }", 1, 3, "'“' stands where a key belongs")]
    [InlineData("{ \"w\": \"12'6\"\" }", 1, 14, "a quote mark stands right behind a text")]
    [InlineData("{ \"w\": 26ft }", 1, 8, "26f is not a number of JSON")]
    [InlineData("{ \"w\": 12'6 }", 1, 8, "12' is not a number of JSON")]
    [InlineData("{\n \"w\": wide }", 2, 7, "wide stands where a value belongs")]
    [InlineData("{ \"w\": \"wide\n }", 1, 8, "this text is not closed on its line")]
    [InlineData("{ \"a\": 1 \"b\": 2 }", 1, 10, "'\"' stands where a comma or } belongs")]
    [InlineData("[1, 2", 1, 6, "the document ends in the middle")]
    [InlineData("{} {}", 1, 4, "after the end of the document stands '{'")]
    [InlineData("{ \"a\": 01 }", 1, 8, "01 is not a number of JSON")]
    [InlineData("{ /* \"a\": 1 }", 1, 3, "the comment /* is not closed")]
    [InlineData("{ \"a\": \"\\x\" }", 1, 10, "a backslash stands before something it cannot escape")]
    public void Not_JSON_is_told_where_and_how(string text, int line, int column, string wrong)
    {
        Fault fault = Assert.Single(JobDocument.Read(text).Faults);
        Assert.Equal(FaultKind.NotJson, fault.Kind);
        Assert.Equal(wrong, fault.Wrong);
        Assert.Equal((line, column), (fault.Line, fault.Column));
        Assert.NotEqual("", fault.Right);
    }

    [Fact]
    public void A_key_twice_is_a_fault_at_the_second()
    {
        Fault fault = Assert.Single(JobDocument.Read("{ \"a\": { \"b\": 1,\n  \"b\": 2 } }").Faults);
        Assert.Equal((FaultKind.Duplicate, "/a/b", 2, 3), (fault.Kind, fault.Pointer, fault.Line, fault.Column));
    }

    [Fact]
    public void Size_and_depth_have_limits()
    {
        Assert.Single(JobDocument.Read(new string('[', 100_000)).Faults);
        Assert.Empty(JobDocument.Read(new string('[', 40) + new string(']', 40)).Faults);
        Assert.Single(JobDocument.Read("\"" + new string('x', 4_000_001) + "\"").Faults);
    }

    // Second opinion: System.Text.Json with the same freedoms. Texts are made by damaging a good one.
    [Fact]
    public void Good_and_bad_are_told_apart_as_by_the_frameworks_reader()
    {
        const string Good = "{ \"a\": [1, -2.5e3, true, null, \"x\\\"y\\u00e9\"], // c\n \"b\": { \"c\": {}, \"d\": [] }, }";
        Gen.Select(Gen.Int[0, Good.Length - 1], Gen.OneOf(((string[])["", "\"", ",", "{", "}", "]", "1", "0", "-", ".", "e", " ", "/", "\\", "n", "\n", ":"]).Select(Gen.Const).ToArray())
            .Select(c => c), Gen.Bool).Sample((at, put, take) =>
        {
            string text = Good.Remove(at, take ? 1 : 0).Insert(at, put);
            bool theirs = Accepts(text);
            EqList<Fault> ours = JobDocument.Read(text).Faults;
            Assert.True(theirs == !ours.Any(f => f.Kind == FaultKind.NotJson), $"{text}: theirs {theirs}, ours {ours}");
        }, iter: 5000);
    }

    [Fact]
    public void No_text_makes_the_reader_throw() =>
        Gen.String.Sample(text => JobDocument.Read(text), iter: 5000);

    private static bool Accepts(string text)
    {
        try
        {
            using JsonDocument document = JsonDocument.Parse(text, new JsonDocumentOptions { AllowTrailingCommas = true, CommentHandling = JsonCommentHandling.Skip, MaxDepth = 40 });
            return true;
        }
        catch (JsonException)
        {
            return false;
        }
    }
}
