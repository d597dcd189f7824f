using Glazewright.Design.Brief.Reading;
using Glazewright.Design.Contracts;
using Glazewright.Design.Document;
using Glazewright.Science.Weather;
using Glazewright.Web.Fields;
using Glazewright.Web.Tests.Browser;
using Glazewright.Web.Tests.Jobs;

namespace Glazewright.Web.Tests.Fields;

/// <summary>Every field of the job document, and whatever people type into it: it is told with what would be right, or it is a text like any other; the document stays one and can be taken back.</summary>
public class BadInputTests
{
    private static readonly WeatherYear s_year = ((WeatherReading.Read)WeatherFile.Read(File.ReadAllBytes(Path.Combine(RunningServer.Root, "examples", "weather", "demo-continental-42N.epw.gz")))).Year;

    // Text in a number, another kind's unit, units mixed, far too large, negative, not a number, another script's digits, markup, JSON, half a pair of surrogates, a whole job.
    private static readonly string[] s_bad =
    [
        "wide", "26 parsecs", "26 ft 3 kg", "1e400", "9999999999999999999999", "-9999999", "NaN", "∞", "٢٦", "26 ft ft", "<script>alert(1)</script>", "{}", "[", "null", "\"", "\\", "\u0001\t", "\ud800",
        new string('9', 2000), Desk.Example("two-ridge-herb-yard.json"),
    ];

    [Fact]
    public void Every_field_takes_every_bad_text_without_a_crash_and_says_what_would_be_right()
    {
        JobDocument job = JobDocument.Read(Desk.Example("three-lines.json"));
        (string Pointer, FieldShape Shape)[] fields = [.. Leaves(JobReader.Describe(), "", []).Select(f => (f.Pointer, f.Shape))];
        Assert.True(fields.Length > 200, $"only {fields.Length} fields");
        List<string> wrong = [];
        foreach ((string pointer, FieldShape shape, Edit[] lists) in Leaves(JobReader.Describe(), "", []))
        {
            Assert.True(job.TryEdit(lists, out JobDocument made, out Fault? unfit), $"{pointer}: {unfit?.Wrong}");
            foreach (string typed in s_bad)
            {
                string shown = typed.Length > 30 ? typed[..30] : typed;
                Edit? edit = Typing.EditOf(pointer, shape, typed, isThere: false, UnitSystem.Us);
                if (edit is null)
                {
                    continue;
                }

                if (!made.TryEdit([edit], out JobDocument edited, out _))
                {
                    wrong.Add($"{pointer}: '{shown}' does not get into the document");
                    continue;
                }

                EqList<Fault> faults = LoadedJob.Read(edited, s_year, [], out _, out LoadedJob? loaded);
                bool isText = shape is FieldShape.Prose;
                if (!isText && !faults.Any(f => f.Pointer == pointer))
                {
                    wrong.Add($"{pointer}: '{shown}' is taken without a word");
                }

                wrong.AddRange(faults.Where(f => f.Wrong.Length == 0 || f.Right.Length == 0).Select(f => $"{pointer}: '{shown}' is told without what would be right: {f.Wrong}"));
                wrong.AddRange(faults.Where(f => f.Wrong.Length + f.Right.Length > 700).Select(f => $"{pointer}: '{shown}' is told in {f.Wrong.Length + f.Right.Length} letters"));
                if (edited.Find(pointer) is null || (loaded is null) != (faults.Count > 0))
                {
                    wrong.Add($"{pointer}: '{shown}' is lost");
                }
            }
        }

        Assert.True(wrong.Count == 0, $"{wrong.Count}\n" + string.Join("\n", wrong.Take(40)));
    }

    [Fact]
    public void An_empty_field_is_left_out_and_never_a_value()
    {
        Assert.All(Leaves(JobReader.Describe(), "", []), field => Assert.All((string[])["", " ", "\t\n"], typed =>
        {
            Assert.Null(Typing.EditOf(field.Pointer, field.Shape, typed, isThere: false, UnitSystem.Metric));
            Assert.Equal(Edit.Removed(field.Pointer), Typing.EditOf(field.Pointer, field.Shape, typed, isThere: true, UnitSystem.Metric));
        }));
    }

    // Each list on the way is made with one thing in it.
    private static IEnumerable<(string Pointer, FieldShape Shape, Edit[] Lists)> Leaves(FieldShape shape, string at, Edit[] lists)
    {
        switch (shape)
        {
            case FieldShape.Group group:
                return group.Fields.Where(f => f.Key is not ("$schema" or "glazewright")).SelectMany(f => Leaves(f.Shape, JsonPointer.Append(at, f.Key), lists));
            case FieldShape.Several { Item: FieldShape.Group item }:
                return Leaves(item, at + "/0", at == "/houses" ? lists : [.. lists, new Edit(at, "[{}]")]);
            case FieldShape.Several:
                return [];
            case FieldShape.Either { First: FieldShape.Measure first }:
                return [(at, first, lists)];
            case FieldShape.Either { First: FieldShape.Choice, Second: FieldShape.Several { Item: FieldShape.Group item } }:
                return Leaves(item, at + "/0", [.. lists, new Edit(at, "[{}]")]);
            case FieldShape.Either either:
                return [(at, either.First, lists)];
            default:
                return [(at, shape, lists)];
        }
    }
}
