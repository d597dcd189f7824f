using System.Globalization;
using System.Text;
using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Papers.Fonts;

namespace Glazewright.Papers.Sets;

/// <summary>What the papers' lettering cannot say of the names in a job.</summary>
internal static class LetteringFindings
{
    private const int MostShown = 12;

    /// <summary>One finding for each name with characters that the embedded fonts lack.</summary>
    public static StageReport Of(Job job) => StageReport.Empty with { Findings = Names(job).SelectMany(n => Missing(n.Id, n.Called, n.Text, n.Pointer)).ToEqList() };

    private static IEnumerable<(string Id, string Called, string Text, string Pointer)> Names(Job job)
    {
        yield return ("", "name of the job", job.Name, "/name");
        yield return ("", "contractor", job.Parties.Contractor, "/parties/contractor");
        yield return ("", "customer", job.Parties.Customer, "/parties/customer");
        yield return ("", "address of the job", job.Parties.Address, "/parties/address");
        yield return ("", "number of the job", job.Parties.Number, "/parties/number");
        yield return ("", "revision mark", job.Revision, "/revision");
        yield return ("", "name of the place", job.Site.Place, "/site/place");
        for (int i = 0; i < job.Houses.Count; i++)
        {
            yield return (job.Houses[i].Id, "name of the house", job.Houses[i].Name, FormattableString.Invariant($"/houses/{i}/name"));
        }

        for (int i = 0; i < job.Links.Count; i++)
        {
            yield return (job.Links[i].Id, "name of the building", job.Links[i].Name, FormattableString.Invariant($"/links/{i}/name"));
        }

        for (int i = 0; i < job.Scope.Count; i++)
        {
            yield return ("", "note on the scope", job.Scope[i].Note, FormattableString.Invariant($"/scope/{i}/note"));
        }

        yield return ("", "authority", job.Occupancy.Authority, "/occupancy/authority");
        yield return ("", "building code", job.Occupancy.BuildingCode, "/occupancy/buildingCode");
    }

    private static IEnumerable<Finding> Missing(string id, string called, string text, string pointer)
    {
        Rune[] lacking = [.. Lettering.Undrawable(text)];
        if (lacking.Length == 0)
        {
            yield break;
        }

        string shown = string.Join(", ", lacking.Take(MostShown).Select(r => string.Create(CultureInfo.InvariantCulture, $"{r} (U+{r.Value:X4})")));
        string more = lacking.Length > MostShown ? string.Create(CultureInfo.InvariantCulture, $" and {lacking.Length - MostShown} more") : "";
        yield return new Finding(
            "papers/letters-missing",
            Severity.Near,
            id,
            $"The {called} holds characters that the papers' font lacks: {shown}{more}. PDFs show '{Lettering.Substitute}' in their place: {Lettering.Drawable(text)}",
            "Write it in Latin, Greek or Cyrillic letters too.",
            new Source.Given(pointer));
    }
}
