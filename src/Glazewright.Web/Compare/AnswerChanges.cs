using System.Globalization;
using Glazewright.Design.Contracts;
using Glazewright.Design.LightMaps;
using Glazewright.Design.Year;
using Glazewright.Papers.Sets;
using Glazewright.Web.Fields;
using Glazewright.Web.Jobs;

namespace Glazewright.Web.Compare;

/// <summary>One number of two jobs, as it is shown.</summary>
/// <param name="Id">Path id of the figure, or a short name.</param>
/// <param name="Label">What it is.</param>
/// <param name="Before">Of the first job.</param>
/// <param name="After">Of the second.</param>
/// <param name="Difference">Second less first with its sign; empty where they are shown alike.</param>
/// <param name="Share">The difference as a share of the first; empty where that says nothing.</param>
/// <param name="IsBetter">Whether the second is better; null where neither is.</param>
public sealed record NumberChange(string Id, string Label, string Before, string After, string Difference, string Share, bool? IsBetter = null)
{
    /// <summary>Makes one.</summary>
    /// <param name="id">Its id.</param>
    /// <param name="label">What it is.</param>
    /// <param name="unit">Unit of both values.</param>
    /// <param name="beforeValue">SI value of the first.</param>
    /// <param name="afterValue">SI value of the second.</param>
    /// <param name="units">The reader's units.</param>
    /// <param name="moreIsBetter">True, false, or null where neither is.</param>
    public static NumberChange Of(string id, string label, Unit unit, double beforeValue, double afterValue, UnitSystem units, bool? moreIsBetter = null)
    {
        Shown one = Shown.Of(beforeValue, unit, units);
        Shown other = Shown.Of(afterValue, unit, units);
        if (one.Text == other.Text)
        {
            return new NumberChange(id, label, one.Text, other.Text, "", "");
        }

        string sign = afterValue > beforeValue ? "+" : "";
        // A share of a temperature hangs on where its zero is.
        bool hasShare = unit is not (Unit.Celsius or Unit.Fraction or Unit.PercentHumidity or Unit.Degree) && Math.Abs(beforeValue) > 1e-9 * Math.Abs(afterValue);
        string share = hasShare ? string.Create(CultureInfo.InvariantCulture, $"{(afterValue - beforeValue) / Math.Abs(beforeValue) * 100:+0.0;−0.0;0.0} %") : "";
        return new NumberChange(id, label, one.Text, other.Text, sign + Shown.Of(afterValue - beforeValue, unit == Unit.Celsius ? Unit.Kelvin : unit, units).Text, share, moreIsBetter is { } more ? more == afterValue > beforeValue : null);
    }
}

/// <summary>Numbers of one page that differ.</summary>
/// <param name="Title">The page.</param>
/// <param name="Numbers">The numbers.</param>
public sealed record PageChanges(string Title, IReadOnlyList<NumberChange> Numbers);

/// <summary>What differs between the answers of two jobs.</summary>
/// <param name="Pages">Figures that differ, by page.</param>
/// <param name="OnlyBefore">Figures that the first alone has, in words.</param>
/// <param name="OnlyAfter">Figures that the second alone has.</param>
/// <param name="Gone">Findings that the first alone has.</param>
/// <param name="Come">Findings that the second alone has.</param>
/// <param name="Both">Findings that both have with other numbers: as the first tells it, and as the second does.</param>
public sealed record AnswerChanges(
    IReadOnlyList<PageChanges> Pages, IReadOnlyList<string> OnlyBefore, IReadOnlyList<string> OnlyAfter, IReadOnlyList<Finding> Gone, IReadOnlyList<Finding> Come, IReadOnlyList<(Finding Before, Finding After)> Both)
{
    /// <summary>Compares reports.</summary>
    /// <param name="before">Of the first job.</param>
    /// <param name="after">Of the second.</param>
    /// <param name="units">The reader's units.</param>
    public static AnswerChanges Of(IEnumerable<StageReport> before, IEnumerable<StageReport> after, UnitSystem units)
    {
        StageReport[] one = [.. before];
        StageReport[] other = [.. after];
        Dictionary<string, Figure> known = one.SelectMany(r => r.Figures).DistinctBy(f => f.Id).ToDictionary(f => f.Id);
        Figure[] now = [.. other.SelectMany(r => r.Figures).DistinctBy(f => f.Id)];
        HashSet<string> ids = [.. now.Select(f => f.Id)];
        ILookup<string, string[]> alike = now.ToLookup(f => f.Label, f => f.Id.Split('/'));
        PageChanges[] pages =
        [
            .. now.Where(f => known.TryGetValue(f.Id, out Figure? was) && was.Unit == f.Unit)
                .Select(f => (Figure: f, Change: NumberChange.Of(f.Id, Told(f, alike[f.Label]), f.Unit, known[f.Id].Value, f.Value, units)))
                .Where(c => c.Change.Difference.Length > 0)
                .GroupBy(c => PageOf(c.Figure.Id)).OrderBy(g => g.Key)
                .Select(g => new PageChanges(g.Key < PagePlan.All.Count ? PagePlan.All[g.Key].Title : "More", [.. g.Select(c => c.Change)])),
        ];
        Finding[] findings = [.. one.SelectMany(r => r.Findings).DistinctBy(Key)];
        Finding[] later = [.. other.SelectMany(r => r.Findings).DistinctBy(Key)];
        return new AnswerChanges(
            pages,
            [.. known.Values.Where(f => !ids.Contains(f.Id)).Select(f => Alone(f, units))],
            [.. now.Where(f => !known.ContainsKey(f.Id)).Select(f => Alone(f, units))],
            [.. findings.ExceptBy(later.Select(Key), Key).OrderByDescending(f => f.Severity)],
            [.. later.ExceptBy(findings.Select(Key), Key).OrderByDescending(f => f.Severity)],
            [.. later.Join(findings, Key, Key, (now, was) => (Before: was, After: now)).Where(f => f.Before.What != f.After.What).OrderByDescending(f => f.After.Severity)]);
    }

    /// <summary>The numbers one asks for first, whether they differ or not: the first from the quick answers, the rest once the whole job is computed on both sides.</summary>
    /// <param name="before">Reports of the first.</param>
    /// <param name="after">Reports of the second.</param>
    /// <param name="wholes">Both wholes, or null.</param>
    /// <param name="house">Id of the house that is looked at; both have it.</param>
    /// <param name="units">The reader's units.</param>
    public static IReadOnlyList<NumberChange> Keys(IEnumerable<StageReport> before, IEnumerable<StageReport> after, (PaperSource Before, PaperSource After)? wholes, string house, UnitSystem units)
    {
        (string Id, bool? More)[] asked = [($"{house}/form/floor-area", null), ($"{house}/duty/heat-loss", false), ($"{house}/duty/ventilation", null), ($"{house}/plant/connected-power", false), ("price/price", false), ("price/per-floor", false)];
        Figure[] one = [.. before.SelectMany(r => r.Figures)];
        Figure[] other = [.. after.SelectMany(r => r.Figures)];
        List<NumberChange> keys = [];
        foreach ((string id, bool? more) in asked)
        {
            if (Array.Find(one, f => f.Id == id) is { } was && Array.Find(other, f => f.Id == id) is { } now)
            {
                keys.Add(NumberChange.Of(id, now.Label, now.Unit, was.Value, now.Value, units, more));
            }
        }

        if (wholes is { } both && both.Before.Houses.FirstOrDefault(h => h.Form.Id == house) is { } then && both.After.Houses.FirstOrDefault(h => h.Form.Id == house) is { } later)
        {
            keys.AddRange(Light(then, later, units));
            keys.AddRange(YearComparison.Of(then.Year, later.Year).Where(c => !c.Id.Contains('/', StringComparison.Ordinal)).Select(c => NumberChange.Of(c.Id, c.Label + ", year", c.Unit, c.BeforeValue, c.AfterValue, units, c.MoreIsBetter)));
        }

        return keys;
    }

    /// <summary>What the quick stages said.</summary>
    /// <param name="light">The quick answers.</param>
    public static IEnumerable<StageReport> Quick(LightResults light)
    {
        ArgumentNullException.ThrowIfNull(light);
        return PageFacts.Quick(light);
    }

    private static IEnumerable<NumberChange> Light(HouseResults before, HouseResults after, UnitSystem units)
    {
        if (before.Light.Months.Count != 12 || after.Light.Months.Count != 12 || after.Light.OutsideMolPerM2Day.Count != 12)
        {
            yield break;
        }

        int dark = LightMap.DarkestMonth(after.Light.OutsideMolPerM2Day);
        foreach (int month in (int[])[dark, (dark + 6) % 12])
        {
            string name = CultureInfo.InvariantCulture.DateTimeFormat.GetMonthName(month + 1);
            yield return NumberChange.Of($"light/{month + 1}/mean", $"Light at the crop in {name}", Unit.MolPerSquareMetreDay, before.Light.Months[month].MeanMolPerM2Day, after.Light.Months[month].MeanMolPerM2Day, units, true);
            yield return NumberChange.Of($"light/{month + 1}/least", $"The darkest place in {name}", Unit.MolPerSquareMetreDay, before.Light.Months[month].LeastMolPerM2Day, after.Light.Months[month].LeastMolPerM2Day, units, true);
        }
    }

    private static int PageOf(string id)
    {
        string room = PageFacts.Room(id);
        int page = PagePlan.All.TakeWhile(p => !p.Rooms.Contains(room)).Count();
        return page;
    }

    // Figures of one name are told apart by the parts of their paths that differ.
    private static string Told(Figure figure, IEnumerable<string[]> alike)
    {
        string[] path = figure.Id.Split('/');
        string apart = string.Join(' ', path.Where((part, i) => alike.Any(o => o.ElementAtOrDefault(i) != part)));
        return apart.Length > 0 ? $"{apart}: {figure.Label}" : figure.Label;
    }

    private static string Alone(Figure figure, UnitSystem units) => $"{figure.Label} ({figure.Id.Replace('/', ' ')}): {Shown.Of(figure.Value, figure.Unit, units).Text}";

    private static (string, string) Key(Finding finding) => (finding.Code, finding.Id);
}
