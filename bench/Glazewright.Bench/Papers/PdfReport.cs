using BenchmarkDotNet.Attributes;
using Glazewright.Papers.Charts;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Reports;

namespace Glazewright.Bench.Papers;

/// <summary>A report of a table over many pages, and a year's carpet: layout and writing together.</summary>
[MemoryDiagnoser]
public class PdfReport
{
    private readonly double[] hours = [.. Enumerable.Range(0, 8760).Select(h => 20 + 8 * Math.Sin(h / 24.0 * 0.017) + 5 * Math.Sin(h * 0.26))];
    private Report report = null!;

    /// <summary>Rows of the table.</summary>
    [Params(40, 1000)]
    public int Rows { get; set; }

    /// <summary>Makes the blocks.</summary>
    [GlobalSetup]
    public void Blocks() => report = new Report("t", "t", "t", null, SheetSize.Letter, [
        new Block.Heading(1, "Year"),
        new Block.Picture(Carpet(), "Carpet"),
        new Block.TableOf(new Table([new("Part", 90), new("Count", 30, Along.End)], [.. Enumerable.Range(0, Rows).Select(i => (IReadOnlyList<string>)[$"Part {i}", "3"])])),
    ]);

    /// <summary>Sets and writes the report.</summary>
    [Benchmark]
    public byte[] Written() => ReportSetting.Pdf(report);

    /// <summary>Draws the carpet.</summary>
    [Benchmark]
    public Sheet Carpet() => CarpetPlot.Draw("c", "c", "°C", hours, CarpetPlot.Even(Ramp.Sequential, 10, 3, 9), 172, 58);
}
