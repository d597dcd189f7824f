using Glazewright.Design.Form;
using Glazewright.Mechanics.Sections;

namespace Glazewright.Design.Frame;

/// <summary>
/// Chooses sections that the job leaves free. A member that is overworked climbs its list (by mass) to the first tube whose plastic modulus has grown
/// by its use, until all are within one or the list ends; then each is tried one step lighter.
/// </summary>
internal static class FrameSizing
{
    private const int MostRounds = 14;

    internal static TubeSection[] ByMass(IReadOnlyList<string> names) =>
        [.. names.Select(TubeNames.Of).OrderBy(s => s.MassKgPerM).ThenBy(s => s.Name, StringComparer.Ordinal)];

    /// <summary>The lightest tube of the list whose use is at most one, else the strongest.</summary>
    internal static (TubeSection Section, SpanUse Use) Span(string fixedName, Func<TubeSection, SpanUse> use)
    {
        if (fixedName.Length > 0)
        {
            TubeSection given = TubeNames.Of(fixedName);
            return (given, use(given));
        }

        (TubeSection Section, SpanUse Use)? least = null;
        foreach (TubeSection section in ByMass(TubeNames.PurlinList))
        {
            SpanUse u = use(section);
            if (u.Gaps.Count == 0 && Math.Max(u.UseFraction, u.DeflectionUse) <= 1)
            {
                return (section, u);
            }

            if (least is null || u.UseFraction < least.Value.Use.UseFraction)
            {
                least = (section, u);
            }
        }

        return least!.Value;
    }

    /// <summary>The frame's column and rafter.</summary>
    internal static TrialResult Frame(FrameInput input, TubeSection purlin, Func<FrameSections, bool, TrialResult> run)
    {
        TubeSection[] list = ByMass(TubeNames.FrameList);
        bool freeColumn = input.Choice.ColumnSection.Length == 0;
        bool freeRafter = input.Choice.RafterSection.Length == 0;
        int column = 0;
        int rafter = 0;
        FrameSections Now() => new(
            freeColumn ? list[column] : TubeNames.Of(input.Choice.ColumnSection), freeRafter ? list[rafter] : TubeNames.Of(input.Choice.RafterSection), purlin);
        bool free = freeColumn || freeRafter;
        TrialResult best = run(Now(), free);
        for (int round = 0; round < MostRounds; round++)
        {
            bool columnBad = freeColumn && Use(best, MemberRole.Column) > 1 && column < list.Length - 1;
            bool rafterBad = freeRafter && Use(best, MemberRole.Rafter) > 1 && rafter < list.Length - 1;
            if (!columnBad && !rafterBad)
            {
                break;
            }

            column = columnBad ? Climb(list, column, Use(best, MemberRole.Column)) : column;
            rafter = rafterBad ? Climb(list, rafter, Use(best, MemberRole.Rafter)) : rafter;
            best = run(Now(), true);
        }

        best = best.FirstOrderOnly ? run(Now(), false) : best;

        if (freeColumn && column > 0 && Passes(best))
        {
            column--;
            TrialResult lighter = run(Now(), true);
            best = Passes(lighter) ? lighter : best;
            column += Passes(lighter) ? 0 : 1;
        }

        if (freeRafter && rafter > 0 && Passes(best))
        {
            rafter--;
            TrialResult lighter = run(Now(), true);
            best = Passes(lighter) ? lighter : best;
        }

        return best;
    }

    internal static double Use(TrialResult r, MemberRole role) => Math.Max(r.UseOf(role), r.DeflectionUseOf(role));

    internal static bool Passes(TrialResult r) => Use(r, MemberRole.Column) <= 1 && Use(r, MemberRole.Rafter) <= 1;

    private static int Climb(TubeSection[] list, int from, double use)
    {
        double wishM3 = list[from].StrongPlasticModulusM3 * Math.Min(use, 3) * 0.9;
        int next = from + 1;
        while (next < list.Length - 1 && list[next].StrongPlasticModulusM3 < wishM3)
        {
            next++;
        }

        return next;
    }
}
