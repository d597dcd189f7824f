using Glazewright.Design.Contracts;
using Glazewright.Design.Document;
using Glazewright.Papers.Sets;

namespace Glazewright.Papers.Answers;

/// <summary>
/// What may be said to readers other than the contractor, out of the one list of reports that the console and result.json read too: findings by the room
/// their code names, fields by name, so that a new room stays private until it is let in. What is marked confidential never passes.
/// </summary>
internal static class WhiteList
{
    private static readonly string[] FindingRooms = ["papers/", "form/", "frame/", "body/", "gains/", "duty/", "plant/", "layout/", "framing/", "light/", "program/", "year/", "services/"];
    private static readonly string[] BuildingRooms = ["papers/", "form/", "frame/", "body/", "framing/"];
    private static readonly string[] OpenFields = ["/name", "/parties", "/date", "/units", "/sheets", "/datum", "/site", "/lot", "/utilities", "/occupancy", "/band", "/houses", "/links", "/scope", "/tariffs"];

    public static IEnumerable<Finding> Findings(PaperSource source) => Findings(source, FindingRooms);

    /// <summary>What a plan reviewer or engineer must hear: all that is said of shape and structure, and of anything else what can hurt someone.</summary>
    public static IEnumerable<Finding> ForReview(PaperSource source)
    {
        HashSet<Finding> building = [.. Findings(source, BuildingRooms)];
        return Findings(source).Where(f => f.Severity == Severity.Danger || building.Contains(f));
    }

    public static IEnumerable<DefaultUsed> Defaults(PaperSource source) => source.Defaults
        .Where(d => OpenFields.Any(f => d.Pointer == f || d.Pointer.StartsWith(f + "/", StringComparison.Ordinal)));

    public static IEnumerable<string> LeftOut(PaperSource source) =>
        source.ReportsByStage().Where(r => r.Stage == PaperStage.Design).SelectMany(r => r.Report.LeftOut).Distinct();

    private static IEnumerable<Finding> Findings(PaperSource source, string[] rooms) => source.Reports()
        .SelectMany(r => r.Findings)
        .Where(f => !f.Confidential && rooms.Any(room => f.Code.StartsWith(room, StringComparison.Ordinal)));
}
