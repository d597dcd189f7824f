using CsCheck;
using Glazewright.Design.Document;

namespace Glazewright.Design.Tests.Document;

/// <summary>Edits change their field and nothing else of the text.</summary>
public class EditTests
{
    private const string Yard = """
        {
          "glazewright": 1, // ours
          "houses": [
            { "id": "A", "width": "26 ft" },
            { "id": "B" }
          ],
          "site": {},
        }
        """;

    [Fact]
    public void A_value_is_replaced_where_it_stands() =>
        Assert.Equal(Yard.Replace("26 ft", "12'6\\\"", StringComparison.Ordinal), Edited(Edit.Typed("/houses/0/width", "12'6\"")));

    [Fact]
    public void A_new_key_stands_behind_the_last() =>
        Assert.Equal(Yard.Replace("\"B\" }", "\"B\", \"width\": \"20 ft\" }", StringComparison.Ordinal), Edited(Edit.Typed("/houses/1/width", "20 ft")));

    [Fact]
    public void A_new_key_in_an_empty_object_and_objects_on_the_way_are_made() =>
        Assert.Equal(Yard.Replace("{},", "{ \"snow\": { \"ground\": \"35 psf\" } },", StringComparison.Ordinal), Edited(Edit.Typed("/site/snow/ground", "35 psf")));

    [Fact]
    public void An_item_is_appended() =>
        Assert.Equal(Yard.Replace("{ \"id\": \"B\" }", "{ \"id\": \"B\" },\n    { \"id\": \"C\" }", StringComparison.Ordinal), Edited(new Edit("/houses/-", "{ \"id\": \"C\" }")));

    [Fact]
    public void A_field_is_taken_out_with_its_comma()
    {
        Assert.Equal(Yard.Replace("\"id\": \"A\", ", "", StringComparison.Ordinal), Edited(Edit.Removed("/houses/0/id")));
        Assert.Equal(Yard.Replace(", \"width\": \"26 ft\"", "", StringComparison.Ordinal), Edited(Edit.Removed("/houses/0/width")));
    }

    [Theory]
    [InlineData("", "1"), InlineData("houses", "1"), InlineData("/houses/7", "1"), InlineData("/glazewright/x", "1"), InlineData("/houses/0/nothing", null), InlineData("/site", "{ broken")]
    public void An_edit_that_does_not_fit_leaves_the_document_alone(string pointer, string? json)
    {
        JobDocument document = JobDocument.Read(Yard);
        Assert.False(document.TryEdit([new Edit(pointer, json)], out JobDocument edited, out var fault));
        Assert.Same(document, edited);
        Assert.NotNull(fault);
    }

    [Fact]
    public void What_was_typed_is_found_again_whatever_it_was() =>
        Gen.Select(Gen.String, Gen.String[Gen.Char.AlphaNumeric, 1, 8], Gen.Int[0, 3]).Sample((typed, key, where) =>
        {
            string pointer = where switch { 0 => "/" + key, 1 => $"/houses/0/{key}", 2 => $"/site/{key}/deeper/{key}x", _ => $"/houses/1/{key}/x" };
            JobDocument document = JobDocument.Read(Yard);
            Assert.True(document.TryEdit([Edit.Typed(pointer, typed)], out JobDocument edited, out _));
            Assert.Equal(typed, Assert.IsType<TextNode>(edited.Find(pointer)).Text);
            Assert.True(edited.TryEdit([Edit.Removed(pointer)], out JobDocument without, out _));
            Assert.Null(without.Find(pointer));
            Assert.Contains("// ours", without.Text, StringComparison.Ordinal);
        });

    private static string Edited(Edit edit)
    {
        Assert.True(JobDocument.Read(Yard).TryEdit([edit], out JobDocument edited, out _));
        Assert.Empty(edited.Faults);
        return edited.Text;
    }
}
