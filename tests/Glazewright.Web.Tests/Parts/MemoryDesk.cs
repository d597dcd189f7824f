using Glazewright.Design.Brief;
using Glazewright.Design.Brief.Reading;
using Glazewright.Design.Contracts;
using Glazewright.Design.Document;
using Glazewright.Web.Fields;

namespace Glazewright.Web.Tests.Parts;

/// <summary>A job in memory, read again after each edit, as a window has it: for components alone.</summary>
internal sealed class MemoryDesk : IJobDesk
{
    private static readonly SiteHint s_hint = new("Test place", 42, -88, 200, -6);

    public MemoryDesk(string text)
    {
        Document = JobDocument.Read(text);
        Read();
    }

    /// <summary>Every edit in words.</summary>
    public List<string> Said { get; } = [];

    public JobDocument Document { get; private set; }

    public EqList<Fault> Faults { get; private set; } = [];

    public EqList<DefaultUsed> Defaults { get; private set; } = [];

    public UnitSystem Units => Document.Find("/units") is TextNode { Text: "metric" } ? UnitSystem.Metric : UnitSystem.Us;

    public bool IsLocked { get; init; }

    public IReadOnlyList<Offer> Offers(string pointer) => pointer == "/site/weather/file" ? [new("near.epw"), new("far.epw", "Far, EPW")] : [];

    public Task EditAsync(IReadOnlyList<Edit> edits, string what)
    {
        Assert.True(Document.TryEdit(edits, out JobDocument edited, out Fault? misfit), misfit?.Wrong);
        Document = edited;
        Said.Add(what);
        Read();
        return Task.CompletedTask;
    }

    private void Read()
    {
        ReadOutcome<Job> outcome = JobReader.Read(Document, s_hint);
        (Faults, Defaults) = (outcome.Faults, outcome.Defaults);
    }
}
