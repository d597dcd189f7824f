using System.Globalization;
using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using Glazewright.Design.Contracts;
using Glazewright.Papers.Answers;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Erection;
using Glazewright.Papers.Reports;
using Glazewright.Papers.Sets;
using UglyToad.PdfPig;

namespace Glazewright.Papers.Tests.Sets;

public partial class PaperWriterTests
{
    [Fact]
    public void Paths_are_unique_and_the_contents_page_names_every_file()
    {
        IReadOnlyList<PaperFile> files = Written(SampleSource.Make());
        Assert.Equal(files.Count, files.Select(f => f.Path).Distinct(StringComparer.OrdinalIgnoreCase).Count());
        Assert.Equal("contents.html", files[0].Path);
        string contents = Text(files[0]);
        Assert.All(files.Skip(1), f => Assert.Contains($"href=\"{f.Path}\"", contents));
        // What is folded away stands by its folder, each once.
        string grower = contents[contents.IndexOf("For the grower", StringComparison.Ordinal)..contents.IndexOf("For the plan reviewer", StringComparison.Ordinal)];
        Assert.Equal(1, grower.Split("<h3>Drawings</h3>").Length - 1);
        Assert.True(grower.IndexOf("<h3>Drawings</h3>", StringComparison.Ordinal) < grower.IndexOf("drawings/plan.svg", StringComparison.Ordinal));
        Assert.Superset(
            new HashSet<string> { "answers.pdf", "review.pdf", "model/range.ifc", "model/range.glb", "drawings.pdf", "model/range.ifc", "model/range.glb", "drawings/plan.svg", "drawings/section-A.svg", "drawings/section-B.svg", "shop/materials.csv", "shop/cuts.csv", "contractor/result.json" },
            files.Select(f => f.Path).ToHashSet());
    }

    // The contractor's own numbers are searched in every other file, in all the ways a number may be written, in what a PDF shows and in its properties.
    [Theory]
    [InlineData(UnitSystem.Us), InlineData(UnitSystem.Metric)]
    public void No_cost_margin_or_rate_stands_in_a_file_for_others(UnitSystem units)
    {
        IReadOnlyList<PaperFile> files = Written(SampleSource.Make(units));
        string[] secrets =
        [
            .. SampleSource.Secrets.SelectMany(Spellings), "9.13", "4.17", "14.37", "0.0913", "0.0417", "0.1437", "1780", "1,780", "685000", "685,000",
        ];
        foreach (PaperFile file in files)
        {
            string text = Readable(file);
            string[] found = [.. secrets.Where(s => Regex.IsMatch(text, $@"(?<![\d.,]){Regex.Escape(s)}(?![\d])"))];
            if (file.Readers.Count == 0)
            {
                continue;
            }

            Assert.True(found.Length == 0, $"{file.Path} says {string.Join(" and ", found)}");
            Assert.DoesNotMatch(Confidences(), text);
        }

        // The search finds them where they are allowed, so it can fail.
        string own = string.Concat(files.Where(f => f.Readers.Count == 0).Select(Readable));
        Assert.Contains("58.37", own);
        Assert.Contains("71345.67", own.Replace(",", "", StringComparison.Ordinal));
        Assert.Contains("margin", own);
    }

    // A set is what its reader's white lists name: the same bytes as in the whole package, but for the book of sheets and the contents page.
    [Fact]
    public void A_set_holds_its_readers_files_and_no_others()
    {
        PaperSource source = SampleSource.Make();
        IReadOnlyList<PaperFile> whole = Written(source);
        foreach (PaperReader reader in PaperReaders.All)
        {
            IReadOnlyList<PaperFile> set = PaperWriter.Write(source, reader, TestContext.Current.CancellationToken);
            Assert.Equal(whole.Where(f => f.Readers.Contains(reader)).Select(f => f.Path), set.Select(f => f.Path));
            Assert.DoesNotContain(set, f => f.Path.StartsWith("contractor/", StringComparison.Ordinal));
            foreach (PaperFile file in set.Where(f => f.Path is not ("drawings.pdf" or "contents.html")))
            {
                Assert.True(file.Bytes.Span.SequenceEqual(whole.Single(f => f.Path == file.Path).Bytes.Span), file.Path);
            }

            int sheets = set.Count(f => f.Path.StartsWith("drawings/", StringComparison.Ordinal) && f.Path.EndsWith(".svg", StringComparison.Ordinal));
            using PdfDocument book = PdfDocument.Open(set.Single(f => f.Path == "drawings.pdf").Bytes.ToArray());
            Assert.Equal(sheets, book.NumberOfPages);
            string contents = Text(set[0]);
            Assert.All(whole.Where(f => !f.Readers.Contains(reader)), f => Assert.DoesNotContain(f.Path, contents));
        }
    }

    [Fact]
    public void The_same_source_gives_the_same_bytes()
    {
        IReadOnlyList<PaperFile> first = Written(SampleSource.Make());
        Thread.Sleep(1100);
        IReadOnlyList<PaperFile> second = Written(SampleSource.Make());
        Assert.Equal(first.Count, second.Count);
        Assert.All(first.Zip(second), p => Assert.True(p.First.Bytes.Span.SequenceEqual(p.Second.Bytes.Span), p.First.Path));
    }

    [Theory]
    [InlineData(UnitSystem.Us, 2, "Two-Ridge Herb Yard", "2031-05-06")]
    [InlineData(UnitSystem.Metric, 1, "", "")]
    [InlineData(UnitSystem.Us, 10, "🌱 \"quoted\" / \\ <b> & ירק", "soon")]
    [InlineData(UnitSystem.Us, 0, "Nothing yet", "")]
    public void No_page_has_clashing_texts(UnitSystem units, int houses, string name, string date)
    {
        PaperSource source = SampleSource.Make(units, houses, name.Length == 0 ? new string('n', 500) : name, date);
        foreach (Report report in (Report[])[AnswersReport.Of(source), BasisReport.Of(source), ReviewReport.Of(source), GrowerReport.Of(source), QuoteReport.Of(source)!, CalculationReport.Of(source), CrewReport.Of(source)])
        {
            Assert.All(ReportSetting.Of(report).Pages, p => Assert.Empty(TextClashes.On(p)));
        }

        IReadOnlyList<PaperFile> files = Written(source);
        Assert.All(files.Where(f => f.Path.EndsWith(".svg", StringComparison.Ordinal)), f => XDocument.Parse(Text(f)));
    }

    [Fact]
    public void The_answers_say_what_they_rest_on()
    {
        PaperSource source = SampleSource.Make();
        string text = Readable(Written(source).Single(f => f.Path == "answers.pdf"));
        Assert.Contains("predicted under these conditions", text);
        Assert.Contains("not a warranty", text);
        Assert.Contains("A typical year leaves the extremes out", text);
        Assert.Contains("Preliminary, not for construction", text);
        Assert.Contains("Legionella", text);
        Assert.Contains("$698,000", text);
        Assert.All(source.Houses[0].Frame.NotChecked, n => Assert.Contains(n, text));
        Assert.DoesNotContain("synthetic", text, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public void A_synthetic_year_is_called_so_in_every_paper_that_speaks_of_the_year()
    {
        PaperSource source = SampleSource.Make();
        PaperSource synthetic = source with
        {
            Houses = source.Houses.Select(h => h with { Year = h.Year with { Synthetic = true, Weather = "synthetic year from monthly normals, seed 7" } }).ToEqList(),
        };
        IReadOnlyList<PaperFile> files = Written(synthetic);
        foreach (string path in (string[])["answers.pdf", "basis.pdf", "contractor/result.json", "contents.html"])
        {
            Assert.Contains("synthetic", Readable(files.Single(f => f.Path == path)), StringComparison.OrdinalIgnoreCase);
        }
    }

    [Fact]
    public void Result_json_carries_every_figure_and_a_derived_one_can_be_recomputed()
    {
        PaperSource source = SampleSource.Make();
        using JsonDocument json = JsonDocument.Parse(ResultFile.Bytes(source));
        JsonElement[] figures = [.. json.RootElement.GetProperty("figures").EnumerateArray()];
        Assert.Equal(source.Reports().SelectMany(r => r.Figures).Select(f => f.Id), figures.Select(f => f.GetProperty("id").GetString()));
        JsonElement floor = figures.Single(f => f.GetProperty("id").GetString() == "A/form/floor-area");
        Assert.Equal("width * length", floor.GetProperty("working").GetProperty("formula").GetString());
        double product = 1;
        foreach (JsonElement input in floor.GetProperty("working").GetProperty("inputs").EnumerateArray())
        {
            product *= input.GetProperty("value").GetDouble();
        }

        Assert.Equal(product, floor.GetProperty("value").GetDouble(), 1e-9);
        Assert.Equal("2,704 ft²", floor.GetProperty("shown").GetString());
        Assert.True(figures.Single(f => f.GetProperty("id").GetString() == "price/labour-rate").GetProperty("confidential").GetBoolean());
    }

    private static IReadOnlyList<PaperFile> Written(PaperSource source) => PaperWriter.Write(source, TestContext.Current.CancellationToken);

    private static IEnumerable<string> Spellings(double value)
    {
        // Whole dollars of a rate are too common a number to look for.
        string[] formats = value > 1000 ? ["0.##", "0.00", "#,0.##", "#,0.00", "0", "#,0"] : ["0.##", "0.00"];
        foreach (string format in formats)
        {
            yield return value.ToString(format, CultureInfo.InvariantCulture);
        }
    }

    private static string Readable(PaperFile file)
    {
        // What a drawing says is its texts; where its lines run are numbers of paper that may be any.
        if (file.Path.EndsWith(".svg", StringComparison.Ordinal))
        {
            XElement drawing = XDocument.Parse(Text(file)).Root!;
            return string.Join(' ', drawing.DescendantNodesAndSelf().OfType<XText>().Select(t => t.Value)
                .Concat(drawing.DescendantsAndSelf().Attributes().Where(a => a.Name.LocalName is "aria-label" or "id" or "title").Select(a => a.Value)));
        }

        // The same for a drawing file: its words and names.
        if (file.Path.EndsWith(".dxf", StringComparison.Ordinal))
        {
            return string.Join(' ', Text(file).Split("\r\n").Chunk(2).Where(p => p.Length == 2 && p[0].Trim() is "1" or "2" or "3" or "8").Select(p => p[1]));
        }

        // A building model: its strings and values. Where corners lie are numbers of shape that may be any, and so are the numbers of its lines.
        if (file.Path.EndsWith(".ifc", StringComparison.Ordinal))
        {
            return Regex.Replace(string.Join('\n', Text(file).Split('\n').Where(l => !Regex.IsMatch(l, @"^#\d+=IFC(CARTESIANPOINT|DIRECTION|EXTRUDEDAREASOLID)\("))), @"#\d+", "");
        }

        // A picture in three dimensions: its names and extras; the rest is triangles.
        if (file.Path.EndsWith(".glb", StringComparison.Ordinal))
        {
            int length = BitConverter.ToInt32(file.Bytes.Span[12..16]);
            using JsonDocument scene = JsonDocument.Parse(file.Bytes.Slice(20, length));
            return string.Join(' ', scene.RootElement.GetProperty("nodes").EnumerateArray().Select(n => n.GetProperty("name").GetString() + " " + (n.TryGetProperty("extras", out JsonElement extras) ? extras.GetRawText() : "")));
        }

        // Every part of a workbook: hidden sheets, comments and properties too. Tags are taken out, so that numbers stand alone.
        if (file.Path.EndsWith(".xlsx", StringComparison.Ordinal))
        {
            using System.IO.Compression.ZipArchive book = new(new MemoryStream(file.Bytes.ToArray()));
            return string.Join(' ', book.Entries.Select(e =>
            {
                using StreamReader part = new(e.Open());
                return e.FullName + " " + Regex.Replace(part.ReadToEnd(), "<[^>]*>", " ");
            }));
        }

        if (!file.Path.EndsWith(".pdf", StringComparison.Ordinal))
        {
            return Text(file);
        }

        using PdfDocument pdf = PdfDocument.Open(file.Bytes.ToArray());
        StringBuilder text = new();
        text.Append(pdf.Information.Title).Append(' ').Append(pdf.Information.Subject).Append(' ').Append(pdf.Information.Keywords).Append(' ');
        foreach (UglyToad.PdfPig.Content.Page page in pdf.GetPages())
        {
            text.AppendJoin(' ', page.GetWords().Select(w => w.Text)).Append(' ');
        }

        return text.ToString();
    }

    private static string Text(PaperFile file) => Encoding.UTF8.GetString(file.Bytes.Span);

    // "margin:" and "margin-top:" are style sheets' words.
    [GeneratedRegex(@"\bmargins?\b(?![:-])|\bmark-?up\b|\boverhead\b|\bcontingency\b|\blabour rate", RegexOptions.IgnoreCase)]
    private static partial Regex Confidences();
}
