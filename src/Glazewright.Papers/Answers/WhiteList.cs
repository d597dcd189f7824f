using Glazewright.Design.Contracts;
using Glazewright.Design.Document;
using Glazewright.Papers.Sets;

namespace Glazewright.Papers.Answers;

/// <summary>What may be said to readers other than the contractor: named stages and fields only, so that a new one stays private until it is let in.</summary>
internal static class WhiteList
{
    private static readonly string[] FindingRooms = ["form/", "frame/", "body/", "gains/", "duty/", "plant/", "layout/", "light/", "program/", "year/"];
    private static readonly string[] OpenFields = ["/name", "/date", "/units", "/datum", "/site", "/lot", "/utilities", "/occupancy", "/band", "/houses", "/links", "/scope", "/tariffs"];

    public static IEnumerable<Finding> Findings(PaperSource source) => OpenReports(source)
        .SelectMany(r => r.Findings)
        .Where(f => FindingRooms.Any(room => f.Code.StartsWith(room, StringComparison.Ordinal)));

    public static IEnumerable<DefaultUsed> Defaults(PaperSource source) => source.Defaults
        .Where(d => OpenFields.Any(f => d.Pointer == f || d.Pointer.StartsWith(f + "/", StringComparison.Ordinal)));

    public static IEnumerable<string> LeftOut(PaperSource source) => OpenReports(source).SelectMany(r => r.LeftOut).Distinct();

    private static IEnumerable<StageReport> OpenReports(PaperSource source)
    {
        yield return source.Form.Report;
        foreach (HouseResults house in source.Houses)
        {
            yield return house.Frame.Report;
            yield return house.Gains.Report;
            yield return house.Duty.Report;
            yield return house.Plant.Report;
            yield return house.Layout.Report;
            yield return house.Light.Report;
            yield return house.Program.Report;
            yield return house.Year.Report;
        }
    }
}
