using System.Diagnostics;
using System.Globalization;
using System.Text;
using System.Text.Json;
using Glazewright.Design.Contracts;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Dxf;
using Glazewright.Papers.Sets;
using Glazewright.Papers.Sheets;
using Glazewright.Papers.Tests.Drawing;
using Glazewright.Papers.Tests.Sets;
using Jint;

namespace Glazewright.Papers.Tests.Dxf;

/// <summary>
/// Drawing files as two other programs' readers see them: ezdxf 0.18 (Debian, MIT; strict reading and audit) and dxf-parser 1.1.2 (npm, MIT). Counts of entities by type and the box round
/// all lines must be ours.
/// </summary>
public class DxfTests
{
    private const string Script = """
        import sys, json, collections, ezdxf
        from ezdxf.lldxf.encoding import decode_dxf_unicode
        doc = ezdxf.readfile(sys.argv[1])
        audit = doc.audit()
        xs, ys = [], []
        def lines(entities):
            for e in entities:
                if e.dxftype() == 'INSERT':
                    lines(e.virtual_entities())
                elif e.dxftype() == 'LWPOLYLINE':
                    for p in e.get_points('xy'):
                        xs.append(p[0]); ys.append(p[1])
        lines(doc.modelspace())
        print(json.dumps({'errors': len(audit.errors), 'fixes': len(audit.fixes), 'units': doc.header['$INSUNITS'],
            'counts': collections.Counter(e.dxftype() for e in doc.modelspace()), 'box': [min(xs), min(ys), max(xs), max(ys)],
            'texts': sorted(decode_dxf_unicode(e.dxf.text) for e in doc.modelspace().query('TEXT'))}))
        """;

    public static TheoryData<UnitSystem> Both { get; } = [UnitSystem.Us, UnitSystem.Metric];

    [Theory, MemberData(nameof(Both))]
    public void A_strict_reader_finds_nothing_to_mend_and_the_same_drawing(UnitSystem units)
    {
        foreach (Sheet sheet in Sheets(units))
        {
            using JsonDocument read = ByEzdxf(DxfWriter.Bytes(sheet, units));
            JsonElement told = read.RootElement;
            Assert.Equal(0, told.GetProperty("errors").GetInt32());
            Assert.Equal(0, told.GetProperty("fixes").GetInt32());
            Assert.Equal(units == UnitSystem.Us ? 1 : 4, told.GetProperty("units").GetInt32());
            DxfScene scene = Scene(sheet, units);
            Assert.Equal(Counts(scene), told.GetProperty("counts").EnumerateObject().ToDictionary(p => p.Name, p => p.Value.GetInt32()));
            double[] box = [.. told.GetProperty("box").EnumerateArray().Select(v => v.GetDouble())];
            Assert.All(Box(scene).Zip(box), p => Assert.Equal(p.First, p.Second, 2e-6));
            Assert.Equal(
                scene.Marks.Select(m => m.Mark).OfType<Mark.Words>().Select(w => w.Text).Order(StringComparer.Ordinal),
                told.GetProperty("texts").EnumerateArray().Select(t => t.GetString()!).Order(StringComparer.Ordinal));
        }
    }

    [Theory, MemberData(nameof(Both))]
    public void A_second_reader_counts_the_same(UnitSystem units)
    {
        string? library = Library();
        Assert.SkipWhen(library is null, "dxf-parser is not fetched: run eng/fetch-references.");
        using Engine engine = new();
        engine.Execute("var module={exports:{}},exports=module.exports;var console={log:function(){},warn:function(){},error:function(){}};");
        engine.Execute(File.ReadAllText(library!));
        engine.Execute("var P=module.exports.DxfParser||module.exports.default||module.exports;"
            + "function kinds(text){var d=new P().parseSync(text);var c={};d.entities.forEach(function(e){c[e.type]=(c[e.type]||0)+1});"
            + "return JSON.stringify({counts:c,layers:Object.keys(d.tables.layer.layers).length,blocks:Object.keys(d.blocks).length});}");
        foreach (Sheet sheet in Sheets(units))
        {
            using JsonDocument told = JsonDocument.Parse(engine.Invoke("kinds", Encoding.ASCII.GetString(DxfWriter.Bytes(sheet, units))).AsString());
            DxfScene scene = Scene(sheet, units);
            Dictionary<string, int> ours = Counts(scene);

            // This reader knows no hatches and passes over them.
            ours.Remove("HATCH");
            Dictionary<string, int> theirs = told.RootElement.GetProperty("counts").EnumerateObject().ToDictionary(p => p.Name, p => p.Value.GetInt32());
            theirs.Remove("HATCH");
            Assert.Equal(ours, theirs);
            Assert.Equal(scene.Blocks.Count + 2, told.RootElement.GetProperty("blocks").GetInt32());
        }
    }

    // A view's lines are as long as the building: the plan's outline in inches is the house's length over 0.0254.
    [Fact]
    public void Lengths_are_true()
    {
        PaperSource source = SampleSource.Make(UnitSystem.Us);
        Sheet plan = HousePlan.Draw(source, source.Houses[0], "A-1");
        double longest = Scene(plan, UnitSystem.Us).Marks.Select(m => m.Mark).OfType<Mark.Lines>().Where(l => l.Role == Role.Cut)
            .SelectMany(l => l.Points.Zip(l.Points.Skip(1), (a, b) => (b - a).Length())).Max();
        Assert.Equal(source.Houses[0].Form.LengthM / 0.0254, longest, 1.0);
    }

    [Fact]
    public void Handles_are_used_once_and_the_file_is_the_same_twice()
    {
        Sheet sheet = Sheets(UnitSystem.Us)[0];
        byte[] bytes = DxfWriter.Bytes(sheet, UnitSystem.Us);
        Assert.Equal(bytes, DxfWriter.Bytes(sheet, UnitSystem.Us));
        string[][] pairs = [.. Encoding.ASCII.GetString(bytes).Split("\r\n").Chunk(2).Where(p => p.Length == 2)];
        int seed = Array.FindIndex(pairs, p => p[1] == "$HANDSEED") + 1;
        string[] handles = [.. pairs.Where((p, i) => i != seed && p[0].Trim() is "5" or "105").Select(p => p[1])];
        Assert.Equal(handles.Length, handles.Distinct().Count());
        Assert.True(handles.Max(h => int.Parse(h, NumberStyles.HexNumber, CultureInfo.InvariantCulture)) < int.Parse(pairs[seed][1], NumberStyles.HexNumber, CultureInfo.InvariantCulture));
    }

    [Fact]
    public void Parts_that_repeat_are_blocks()
    {
        PaperSource source = SampleSource.Make(UnitSystem.Us);
        DxfScene scene = Scene(HousePlan.Draw(source, source.Houses[0], "A-1"), UnitSystem.Us);
        Assert.NotEmpty(scene.Blocks);
        Assert.All(scene.Blocks, b => Assert.True(scene.Placed.Count(p => p.Block == b.Block.Name) >= 2));
    }

    private static Sheet[] Sheets(UnitSystem units)
    {
        PaperSource source = SampleSource.Make(units);
        return
        [
            RangePlan.Draw(source, "G-1"), HousePlan.Draw(source, source.Houses[0], "A-1"), HouseSection.Draw(source, source.Houses[0], "A-2"), WallSheet.Air(source, source.Houses[0], "M-1"),
            Samples.Section(),
        ];
    }

    private static DxfScene Scene(Sheet sheet, UnitSystem units) => DxfScene.Of(sheet, units == UnitSystem.Us ? 1 / 0.0254 : 1000);

    private static Dictionary<string, int> Counts(DxfScene scene)
    {
        Dictionary<string, int> counts = scene.Marks.Select(m => m.Mark).Select(m => m switch
        {
            Mark.Lines { Points.Count: >= 2 } => "LWPOLYLINE",
            Mark.Curve c => Math.Abs(c.SweepDeg) >= 360 ? "CIRCLE" : "ARC",
            Mark.Words => "TEXT",
            Mark.Area { Paint: not Paint.Named { Tone: Tone.Sheet } } => "HATCH",
            _ => "",
        }).Where(t => t.Length > 0).GroupBy(t => t).ToDictionary(g => g.Key, g => g.Count());
        if (scene.Placed.Count > 0)
        {
            counts["INSERT"] = scene.Placed.Count;
        }

        return counts;
    }

    private static double[] Box(DxfScene scene)
    {
        Spot[] points =
        [
            .. scene.Marks.Select(m => m.Mark).OfType<Mark.Lines>().SelectMany(l => l.Points),
            .. scene.Placed.SelectMany(p => scene.Blocks.Single(b => b.Block.Name == p.Block).Block.Marks.OfType<Mark.Lines>().SelectMany(l => l.Points).Select(s => new Spot(s.X + p.X, s.Y + p.Y))),
        ];
        return [points.Min(p => p.X), points.Min(p => p.Y), points.Max(p => p.X), points.Max(p => p.Y)];
    }

    private static JsonDocument ByEzdxf(byte[] bytes)
    {
        string folder = Directory.CreateTempSubdirectory("glazewright-dxf-").FullName;
        try
        {
            string file = Path.Combine(folder, "drawing.dxf");
            File.WriteAllBytes(file, bytes);

            // Debian's own interpreter: its packages are not on another one's path.
            string python = File.Exists("/usr/bin/python3") ? "/usr/bin/python3" : "python3";
            Process? run = null;
            try
            {
                run = Process.Start(new ProcessStartInfo(python, ["-c", Script, file]) { RedirectStandardOutput = true, RedirectStandardError = true });
            }
            catch (System.ComponentModel.Win32Exception)
            {
                Assert.Skip("No python3 on this machine: nobody else has read the drawing file.");
            }

            using (run)
            {
                string said = run!.StandardOutput.ReadToEnd();
                string wrong = run.StandardError.ReadToEnd();
                run.WaitForExit();
                Assert.SkipWhen(wrong.Contains("No module named 'ezdxf'", StringComparison.Ordinal), "python3-ezdxf is not on this machine: nobody else has read the drawing file.");
                Assert.True(run.ExitCode == 0, wrong);
                return JsonDocument.Parse(said);
            }
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static string? Library()
    {
        for (DirectoryInfo? folder = new(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            string path = Path.Combine(folder.FullName, "artifacts", "references", "dxf-parser", "package", "dist", "dxf-parser.js");
            if (File.Exists(path))
            {
                return path;
            }
        }

        return null;
    }
}
