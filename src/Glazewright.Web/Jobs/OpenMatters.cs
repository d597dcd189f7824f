using System.Globalization;
using Glazewright.Design.Contracts;
using Glazewright.Store.Jobs;
using Glazewright.Web.Fields;

namespace Glazewright.Web.Jobs;

/// <summary>Something that is open when a job goes out of the house.</summary>
/// <param name="Words">What, as a sentence.</param>
/// <param name="Short">The same for a note: a few words.</param>
/// <param name="Address">Where it is mended; empty where there is no such page.</param>
public sealed record OpenMatter(string Words, string Short, string Address);

/// <summary>What is open of one kind.</summary>
/// <param name="Heading">What and how many: "2 findings of danger".</param>
/// <param name="Matters">Each.</param>
public sealed record OpenKind(string Heading, IReadOnlyList<OpenMatter> Matters);

/// <summary>What is open of a job whose status is to rise: faults, findings that can hurt someone, answers or papers that are not of the job as it is. It is told, and forbids nothing.</summary>
public static class OpenMatters
{
    /// <summary>How many of a kind are shown, and noted.</summary>
    public const int MostShown = 5;

    /// <summary>What is open.</summary>
    /// <param name="view">What the window shows.</param>
    /// <param name="whole">What was computed of the job behind the page, or null.</param>
    /// <param name="papersOf">Version that papers were last made of; null where none ever were.</param>
    /// <param name="status">The status that is to be set.</param>
    /// <returns>By kind, the gravest first; none where the status does not rise.</returns>
    public static IReadOnlyList<OpenKind> Of(SessionView view, WholeResults? whole, int? papersOf, JobStatus status)
    {
        ArgumentNullException.ThrowIfNull(view);
        if (status <= view.Job.Status || status < JobStatus.Quoted)
        {
            return [];
        }

        List<OpenKind> open = [];
        int version = view.Job.Version;
        if (view.Faults.Count > 0)
        {
            open.Add(new OpenKind(Count(view.Faults.Count, "fault", "faults"), [.. view.Faults.Select(f => FaultOf(view, f))]));
        }

        WholeResults? same = whole is not null && view.Light is { } light && whole.Version == light.Version ? whole : null;
        OpenMatter[] dangers = view.Light is null ? [] : [.. PageFacts.AllFindings(view.Light, same).Where(f => f.Severity == Severity.Danger).Select(f => DangerOf(view, f))];
        if (dangers.Length > 0)
        {
            open.Add(new OpenKind(Count(dangers.Length, "finding of danger", "findings of danger"), dangers));
        }

        if (view.Faults.Count == 0 && (view.Light?.Version != version || same is null))
        {
            open.Add(new OpenKind("Not everything is computed of the job as it is", [new OpenMatter("What the year, the materials and the price would find is not known yet.", "year, materials and price not computed", $"/jobs/{view.Job.Id}/year")]));
        }

        if (papersOf is { } made && made != version)
        {
            string told = string.Create(CultureInfo.InvariantCulture, $"papers of version {made}, job at {version}");
            open.Add(new OpenKind("Papers older than the job", [new OpenMatter(string.Create(CultureInfo.InvariantCulture, $"The papers that were made last are of version {made}; the job is at version {version}."), told, $"/jobs/{view.Job.Id}/papers#make")]));
        }

        return open;
    }

    /// <summary>What was known, for the note beside the version.</summary>
    /// <param name="open">What is open.</param>
    /// <param name="status">The status that was set.</param>
    /// <param name="by">Who set it.</param>
    public static string Note(IReadOnlyList<OpenKind> open, JobStatus status, string by)
    {
        ArgumentNullException.ThrowIfNull(open);
        string known = string.Join("; ", open.Select(k =>
            $"{char.ToLowerInvariant(k.Heading[0])}{k.Heading[1..]} ({string.Join(", ", k.Matters.Take(MostShown).Select(m => m.Short))}{(k.Matters.Count > MostShown ? " and more" : "")})"));
        return $"Set to {Word(status)} by {by}, knowing: {known}.";
    }

    /// <summary>A status in words.</summary>
    /// <param name="status">The status.</param>
    public static string Word(JobStatus status) => status.ToString().ToLowerInvariant();

    private static OpenMatter FaultOf(SessionView view, Fault fault)
    {
        string where = fault.Pointer.Length == 0 ? "The document" : FieldMap.Path(fault.Pointer, view.Document);
        string address = PagePlan.Find(fault.Pointer) is { } place ? $"{Page(view, place.Page, place.House)}#{FieldMap.ElementId(fault.Pointer)}" : "";
        return new OpenMatter($"{where}: {FaultWords.Wrong(fault)}", where, address);
    }

    private static OpenMatter DangerOf(SessionView view, Finding finding)
    {
        string room = finding.Code.Split('/')[0];
        int house = view.Light!.Houses.Select((h, i) => (h.Look.House.Id, i)).FirstOrDefault(h => h.Id == finding.Id.Split('/')[0]).i;
        string address = PagePlan.All.FirstOrDefault(p => p.Rooms.Contains(room)) is { } page ? $"{Page(view, page, house)}#findings" : "";
        return new OpenMatter(finding.Id.Length > 0 ? $"{finding.Id}: {finding.What}" : finding.What, $"{finding.Code} {finding.Id}".Trim(), address);
    }

    private static string Page(SessionView view, JobPagePlan page, int house) =>
        string.Create(CultureInfo.InvariantCulture, $"/jobs/{view.Job.Id}/{page.Key}{(house > 0 ? $"?house={house}" : "")}");

    private static string Count(int count, string one, string many) => string.Create(CultureInfo.InvariantCulture, $"{count} {(count == 1 ? one : many)}");
}
