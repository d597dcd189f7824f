using BenchmarkDotNet.Attributes;
using Glazewright.Design.Brief;
using Glazewright.Design.Brief.Reading;
using Glazewright.Design.Document;
using Glazewright.Design.Quantities;

namespace Glazewright.Bench.Document;

/// <summary>What a page does at every keystroke: read a quantity, edit the text, read the whole job again.</summary>
[MemoryDiagnoser]
public class JobReading
{
    private string _text = "";
    private JobDocument _document = JobDocument.Read("{}");

    /// <summary>Loads the demo job.</summary>
    [GlobalSetup]
    public void Load()
    {
        string? folder = AppContext.BaseDirectory;
        while (folder is not null && !File.Exists(Path.Combine(folder, "Glazewright.slnx")))
        {
            folder = Path.GetDirectoryName(folder);
        }

        _text = File.ReadAllText(Path.Combine(folder ?? ".", "examples", "two-ridge-herb-yard.json"));
        _document = JobDocument.Read(_text);
    }

    /// <summary>One length.</summary>
    [Benchmark]
    public bool Length() => QuantityReader.TryRead("12'-6 1/2\"", QuantityKind.Length, out _, out _);

    /// <summary>The tree of the demo.</summary>
    [Benchmark]
    public JobDocument Tree() => JobDocument.Read(_text);

    /// <summary>The typed job of the demo.</summary>
    [Benchmark]
    public ReadOutcome<Job> Job() => JobReader.Read(_document);

    /// <summary>An edit of one field.</summary>
    [Benchmark]
    public bool EditOne() => _document.TryEdit([Edit.Typed("/houses/0/width", "27 ft")], out _, out _);
}
