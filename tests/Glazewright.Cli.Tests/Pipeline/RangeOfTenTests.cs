using System.Globalization;
using Glazewright.Cli.Running;
using Glazewright.Cli.Tests.Commands;
using Glazewright.Design.Brief;
using Glazewright.Design.Brief.Reading;
using Glazewright.Design.Catalogues;
using Glazewright.Design.Contracts;
using Glazewright.Design.Pipeline;
using Glazewright.Design.Price;
using Glazewright.Design.Takeoff;
using Glazewright.Papers.Sets;

namespace Glazewright.Cli.Tests.Pipeline;

/// <summary>A range of ten equal houses far enough apart to leave each other's steel alone: ten times the parts of one, and a package that knows them all.</summary>
public class RangeOfTenTests
{
    [Fact]
    public void Ten_equal_houses_take_ten_times_the_steel_and_the_sheets_of_one()
    {
        Evaluation one = Evaluate(Load(1)), ten = Evaluate(Load(10));
        Assert.Equal(10, ten.Form.Value.Buildings.Count);
        Assert.Equal(ByLength(one.Takeoff.Value, 10), ByLength(ten.Takeoff.Value, 1));
        Assert.Equal(10 * one.Takeoff.Value.Sheets.Sum(s => s.Count), ten.Takeoff.Value.Sheets.Sum(s => s.Count));

        // All of it is on the cut lists: nothing is lost on the way.
        Assert.Equal(
            ten.Takeoff.Value.Marks.Sum(m => m.Count),
            ten.Cuts.Value.Sections.Where(s => ten.Takeoff.Value.Marks.Any(m => m.Section == s.Section)).Sum(s => s.Patterns.Sum(p => p.Times * p.Pieces.Count)));

        // Cutting together may save stock, buying more may not cost more than buying ten times.
        Assert.InRange(ten.Price.Value.Quote.Price, 5 * one.Price.Value.Quote.Price, 10 * one.Price.Value.Quote.Price);
        Assert.Equal(10 * one.Alternates.Value.All.Count, ten.Alternates.Value.All.Count);
        Assert.Equal(ten.Job.Houses.Select(h => h.Id), ten.Alternates.Value.All.Select(a => a.House).Distinct());
        Assert.Equal(one.Alternates.Value.All.Select(a => a.Label), ten.Alternates.Value.All.Where(a => a.House == "J").Select(a => a.Label));
    }

    [Fact]
    [Trait("Category", "Slow")]
    public void The_package_of_ten_houses_holds_the_papers_of_each()
    {
        LoadedJob loaded = Load(10);
        Evaluation all = Evaluate(loaded);
        all.Everything(2);
        PaperSource source = PaperSource.From(all, loaded.Defaults, "test");
        string[] files = [.. PaperWriter.Write(source, CancellationToken.None).Select(f => f.Path)];
        Assert.Equal(files.Length, files.Distinct().Count());
        foreach (string house in loaded.Job.Houses.Select(h => h.Id))
        {
            Assert.Superset(
                new HashSet<string> { $"control/program-{house}.json", $"control/year-{house}.csv", $"light/cells-{house}.csv", $"drawings/section-{house}.svg", $"drawings/foundation-{house}.dxf" },
                files.ToHashSet());
        }
    }

    private static SortedDictionary<(string, double), int> ByLength(TakeoffResult takeoff, int times) => new(takeoff.Marks
        .GroupBy(m => (m.Section, Math.Round(m.LengthM, 3))).ToDictionary(g => g.Key, g => times * g.Sum(m => m.Count)));

    private static Evaluation Evaluate(LoadedJob loaded) => new(loaded.Job, Ground.Of(loaded.Weather, CatalogueReader.Generic, PriceBook.Generic()), new StageRunner());

    private static LoadedJob Load(int houses)
    {
        IEnumerable<string> each = Enumerable.Range(0, houses).Select(k => string.Create(
            CultureInfo.InvariantCulture, $$"""{ "id": "{{(char)('A' + k)}}", "width": "20 ft", "length": "32 ft", "x": "0 ft", "y": "{{100 * k}} ft" }"""));
        string room = Directory.CreateTempSubdirectory("glazewright-ten-").FullName;
        try
        {
            string path = Path.Combine(room, "ten.json");
            File.WriteAllText(path, $$"""{ "glazewright": 1, "houses": [{{string.Join(", ", each)}}] }""");
            IReadOnlyList<Fault> faults = JobLoading.Load(path, Shell.Example("weather/demo-continental-42N.epw.gz"), null, out LoadedJob? loaded);
            Assert.Empty(faults);
            return loaded!;
        }
        finally
        {
            Directory.Delete(room, recursive: true);
        }
    }
}
