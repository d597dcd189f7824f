using Glazewright.Design.Contracts;
using Glazewright.Science.Weather;

namespace Glazewright.Design.Duty;

/// <summary>Design conditions against the same statistics counted in the weather year that the house is run through.</summary>
internal static class DesignAndYear
{
    /// <summary>More than published and counted values of one station commonly differ by on the hot side (judgement).</summary>
    private const double MostApartK = 2;

    public static IEnumerable<Finding> Of(DutyFacts f)
    {
        Brief.DesignConditions c = f.Result.Conditions;
        if (c.Source is Source.Default)
        {
            yield break;
        }

        ComputedConditions year = ComputedConditions.Of(f.Weather);
        (string Label, double DesignC, double YearC, bool Cold)[] pairs =
        [
            ("99.6 % dry bulb", c.Heating996C, year.Heating996DryBulbC, true),
            ("0.4 % dry bulb", c.Cooling04C, year.Cooling04DryBulbC, false),
            ("0.4 % wet bulb", c.Evaporation04C, year.Evaporation04WetBulbC, false),
        ];
        foreach (bool worse in (bool[])[true, false])
        {
            string[] apart =
            [
                .. pairs.Where(p => Math.Abs(p.DesignC - p.YearC) > MostApartK && (p.Cold ? p.YearC < p.DesignC : p.YearC > p.DesignC) == worse)
                    .Select(p => $"{p.Label} {DutyFindings.C(p.DesignC)} against {DutyFindings.C(p.YearC)} in the year"),
            ];
            if (apart.Length > 0)
            {
                yield return new Finding(
                    worse ? "duty/year-harsher-than-design" : "duty/year-milder-than-design",
                    worse ? Severity.Near : Severity.Note,
                    f.Input.House,
                    worse
                        ? $"The weather year is harsher than the design conditions the plant is sized by: {string.Join("; ", apart)}. A typical year should be the milder one: one of the two is of another place or period."
                        : $"The weather year is milder than the design conditions the plant is sized by: {string.Join("; ", apart)}. A typical year leaves the extremes out, so the year's run does not try the plant that far.",
                    worse ? "Check the design conditions and the weather file against the place." : "Read the design days beside the year's run.",
                    c.Source);
            }
        }
    }
}
