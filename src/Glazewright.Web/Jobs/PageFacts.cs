using Glazewright.Design.Contracts;
using Glazewright.Papers.Subjects;
using Glazewright.Web.Fields;

namespace Glazewright.Web.Jobs;

/// <summary>Findings and figures of one page, from the quick answers and, where they are there, the whole ones.</summary>
/// <param name="Findings">The gravest first.</param>
/// <param name="Figures">Of the house that is looked at and of the range, in the order of the stages.</param>
/// <param name="Others">Of buildings that are no houses.</param>
/// <param name="LeftOut">What is not computed.</param>
public sealed record PageFacts(IReadOnlyList<Finding> Findings, IReadOnlyList<Figure> Figures, IReadOnlyList<Figure> Others, IReadOnlyList<string> LeftOut)
{
    /// <summary>Picks what a page is about.</summary>
    /// <param name="plan">The page.</param>
    /// <param name="light">The quick answers.</param>
    /// <param name="whole">The whole answers of the same version, or null.</param>
    /// <param name="house">The house that is looked at, from 0.</param>
    public static PageFacts Of(JobPagePlan plan, LightResults light, WholeResults? whole, int house)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(light);
        StageReport[] reports = Reports(light, whole);
        string id = house < light.Houses.Count ? light.Houses[house].Look.House.Id : "";
        string[] others = [.. light.Form.Buildings.Where(b => b.IsHouse && b.Id != id).Select(b => b.Id)];
        bool Here(string path) => !others.Contains(path.Split('/')[0]);
        // A finding's code starts with its stage; a figure's path has it behind the house.
        Finding[] findings = [.. reports.SelectMany(r => r.Findings).Where(f => Here(f.Id) && (plan.Rooms.Count == 0 || plan.Rooms.Contains(f.Code.Split('/')[0]))).Distinct().OrderByDescending(f => f.Severity)];
        Figure[] figures = [.. reports.SelectMany(r => r.Figures).Where(f => Here(f.Id) && plan.Rooms.Contains(Room(f.Id)))];
        string[] links = [.. light.Form.Buildings.Where(b => !b.IsHouse).Select(b => b.Id)];
        bool OfLink(Figure figure) => links.Contains(figure.Id.Split('/')[0]);
        string[] leftOut = [.. reports.Where(r => r.Figures.Any(f => plan.Rooms.Contains(Room(f.Id)))).SelectMany(r => r.LeftOut).Distinct()];
        return new PageFacts(findings, [.. figures.Where(f => !OfLink(f))], [.. figures.Where(OfLink)], leftOut);
    }

    /// <summary>All findings, each once, the gravest first.</summary>
    /// <param name="light">The quick answers.</param>
    /// <param name="whole">The whole answers of the same version, or null.</param>
    public static IReadOnlyList<Finding> AllFindings(LightResults light, WholeResults? whole)
    {
        ArgumentNullException.ThrowIfNull(light);
        return [.. Reports(light, whole).SelectMany(r => r.Findings).Distinct().OrderByDescending(f => f.Severity)];
    }

    private static StageReport[] Reports(LightResults light, WholeResults? whole) =>
        [.. whole is not null && whole.Version == light.Version ? whole.Source.Reports() : Quick(light).Select(r => SubjectBlocks.InUnits(r, light.Loaded.Job.Units))];

    /// <summary>The stage that a figure's id names.</summary>
    /// <param name="id">Path id.</param>
    public static string Room(string id)
    {
        ArgumentNullException.ThrowIfNull(id);
        string[] parts = id.Split('/');
        return parts.Length > 2 && PagePlan.All.All(p => !p.Rooms.Contains(parts[0])) ? parts[1] : parts[0];
    }

    internal static IEnumerable<StageReport> Quick(LightResults light)
    {
        yield return light.Form.Report;
        foreach (HouseAnswers house in light.Houses)
        {
            yield return house.Look.Frame.Report;
            yield return house.Duty.Report;
            yield return house.Plant.Report;
            yield return house.Look.Layout.Report;
            yield return house.Program.Document.Report;
        }
    }
}
