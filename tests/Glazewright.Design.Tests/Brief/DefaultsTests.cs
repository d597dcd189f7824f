using System.Text;
using Glazewright.Design.Brief;
using Glazewright.Design.Brief.Reading;
using Glazewright.Design.Contracts;
using Glazewright.Design.Document;
using Glazewright.Design.Quantities;

namespace Glazewright.Design.Tests.Brief;

/// <summary>Every default of the code stands in an approved list: taking one out, or changing it, is seen.</summary>
public class DefaultsTests
{
    private static readonly SiteHint s_hint = new("Demo site", 41.98, -87.92, 201, -6);

    [Fact]
    public void The_defaults_of_the_shortest_job_are_the_approved_ones()
    {
        ReadOutcome<Job> outcome = JobReader.Read(JobDocument.Read(Examples.Text("three-lines.json")), s_hint);
        StringBuilder list = new();
        foreach (DefaultUsed used in outcome.Defaults)
        {
            list.Append(used.Pointer).Append(" = ").Append(used.Value).Append('\n');
        }

        Compare("defaults.approved.txt", list.ToString());
    }

    // The same for fields that only stand inside lists (openings, crops, benches, links …): the schema's own defaults.
    [Fact]
    public void The_defaults_of_the_schema_are_the_approved_ones()
    {
        StringBuilder list = new();
        List(JobReader.Describe(), "", list);
        Compare("fields.approved.txt", list.ToString());
    }

    [Fact]
    public void Every_bound_and_default_of_a_quantity_can_be_read_and_the_default_lies_inside()
    {
        int seen = 0;
        Walk(JobReader.Describe(), field =>
        {
            if (field.Shape is FieldShape.Measure m)
            {
                double low = Inside(m.Least, m.Kind);
                double high = Inside(m.Most, m.Kind);
                Assert.True(low < high, field.Key);
                if (field.Default.Length > 0)
                {
                    string typed = Assert.IsType<TextNode>(JobDocument.Read(field.Default).Root).Text;
                    Assert.InRange(Inside(typed, m.Kind), low - 1e-9, high + 1e-9);
                    seen++;
                }
            }

            Assert.EndsWith(".", field.Doc, StringComparison.Ordinal);
        });
        Assert.True(seen > 60);
    }

    private static double Inside(string text, QuantityKind kind)
    {
        Assert.True(QuantityReader.TryRead(text, kind, out Quantity quantity, out _), text);
        return quantity.Inside;
    }

    private static void Walk(FieldShape shape, Action<FieldDescription> see)
    {
        switch (shape)
        {
            case FieldShape.Group group:
                foreach (FieldDescription field in group.Fields)
                {
                    see(field);
                    Walk(field.Shape, see);
                }

                break;
            case FieldShape.Several several:
                Walk(several.Item, see);
                break;
            case FieldShape.Either either:
                Walk(either.First, see);
                Walk(either.Second, see);
                break;
        }
    }

    private static void List(FieldShape shape, string pointer, StringBuilder list)
    {
        switch (shape)
        {
            case FieldShape.Group group:
                foreach (FieldDescription field in group.Fields)
                {
                    string at = $"{pointer}/{field.Key}";
                    if (field.Shape is not FieldShape.Group)
                    {
                        list.Append(at).Append(field.IsRequired ? " required" : field.Default.Length > 0 ? $" = {field.Default}" : $" blank: {field.Blank}").Append('\n');
                    }

                    List(field.Shape, at, list);
                }

                break;
            case FieldShape.Several several:
                List(several.Item, pointer + "/*", list);
                break;
            case FieldShape.Either either:
                List(either.First, pointer, list);
                List(either.Second, pointer, list);
                break;
        }
    }

    private static void Compare(string name, string text)
    {
        string approved = Path.Combine(Path.GetDirectoryName(Examples.Folder)!, "tests", "Glazewright.Design.Tests", "Brief", name);
        string expected = File.Exists(approved) ? File.ReadAllText(approved).ReplaceLineEndings("\n") : "";
        if (expected != text)
        {
            File.WriteAllText(approved.Replace(".approved.", ".received.", StringComparison.Ordinal), text);
        }

        Assert.Equal(expected, text);
    }
}
