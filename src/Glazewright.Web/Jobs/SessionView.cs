using Glazewright.Design.Contracts;
using Glazewright.Design.Document;
using Glazewright.Store.Jobs;

namespace Glazewright.Web.Jobs;

/// <summary>What a window shows of its job at one moment; replaced as a whole, so that a page never sees half an edit.</summary>
/// <param name="Job">The job as saved.</param>
/// <param name="Document">Its document.</param>
/// <param name="Faults">What is wrong with it.</param>
/// <param name="Defaults">What holds where it does not say.</param>
/// <param name="Light">The last answers that could be computed; null before the first.</param>
/// <param name="IsWorking">True while newer answers are on their way.</param>
/// <param name="Notice">What the window is told, or empty: another's edit, an edit that did not fit.</param>
/// <param name="Clash">Two edits of one field that wait for a word; null mostly.</param>
/// <param name="Undo">What would be undone, or empty.</param>
/// <param name="Redo">What would be done again, or empty.</param>
public sealed record SessionView(
    StoredJob Job, JobDocument Document, EqList<Fault> Faults, EqList<DefaultUsed> Defaults, LightResults? Light, bool IsWorking, string Notice, EditClash? Clash, string Undo, string Redo)
{
    /// <summary>Whether the answers shown belong to an earlier state of the job.</summary>
    public bool IsStale => Light is not null && (Light.Version != Job.Version || Faults.Count > 0);

    /// <summary>Readers' units, also while the job has faults.</summary>
    public UnitSystem Units => Document.Find("/units") is TextNode { Text: "metric" } ? UnitSystem.Metric : UnitSystem.Us;
}

/// <summary>Another window saved the same field first: its value stands, ours waits here.</summary>
/// <param name="What">What ours is, in words.</param>
/// <param name="Ours">Our edits.</param>
/// <param name="Theirs">What the other saved, in words.</param>
public sealed record EditClash(string What, IReadOnlyList<Edit> Ours, string Theirs);
