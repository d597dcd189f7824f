using System.Globalization;
using System.Text;

namespace Glazewright.Mechanics.Loads;

/// <summary>The basic combinations, without earthquake, rain, fluid and soil.</summary>
public static class LoadCombinations
{
    /// <summary>The combinations of an edition and a method.</summary>
    /// <param name="edition">The edition.</param>
    /// <param name="method">The method.</param>
    /// <returns>Each combination once for roof live load and once for snow where the standard says "or".</returns>
    /// <remarks>
    /// ASCE 7-16 and 7-22 sections 2.3.1 and 2.4.1; the two uplift combinations and the 7-22 snow factors read, the rest from memory. Live load here
    /// is crop that comes and goes; its companion factor is 1.0 with snow or wind. Collateral is left out of the uplift combinations, since
    /// nobody promises that it hangs there.
    /// </remarks>
    public static IReadOnlyList<LoadCombination> Of(LoadEdition edition, DesignMethod method)
    {
        (double principal, double companion, double asd) = EditionRules.Of(edition).SnowFactors;
        return method == DesignMethod.Lrfd
            ?
            [
                Make(edition, method, "2.3.1(1)", 1.4, 1.4, 0, 0, 0, 0),
                Make(edition, method, "2.3.1(2)", 1.2, 1.2, 1.6, 0.5, 0, 0),
                Make(edition, method, "2.3.1(2)", 1.2, 1.2, 1.6, 0, companion, 0),
                Make(edition, method, "2.3.1(3)", 1.2, 1.2, 1.0, 1.6, 0, 0),
                Make(edition, method, "2.3.1(3)", 1.2, 1.2, 0, 1.6, 0, 0.5),
                Make(edition, method, "2.3.1(3)", 1.2, 1.2, 1.0, 0, principal, 0),
                Make(edition, method, "2.3.1(3)", 1.2, 1.2, 0, 0, principal, 0.5),
                Make(edition, method, "2.3.1(4)", 1.2, 1.2, 1.0, 0.5, 0, 1.0),
                Make(edition, method, "2.3.1(4)", 1.2, 1.2, 1.0, 0, companion, 1.0),
                Make(edition, method, "2.3.1(5)", 0.9, 0, 0, 0, 0, 1.0),
            ]
            :
            [
                Make(edition, method, "2.4.1(1)", 1, 1, 0, 0, 0, 0),
                Make(edition, method, "2.4.1(2)", 1, 1, 1, 0, 0, 0),
                Make(edition, method, "2.4.1(3)", 1, 1, 0, 1, 0, 0),
                Make(edition, method, "2.4.1(3)", 1, 1, 0, 0, asd, 0),
                Make(edition, method, "2.4.1(4)", 1, 1, 0.75, 0.75, 0, 0),
                Make(edition, method, "2.4.1(4)", 1, 1, 0.75, 0, 0.75 * asd, 0),
                Make(edition, method, "2.4.1(5)", 1, 1, 0, 0, 0, 0.6),
                Make(edition, method, "2.4.1(6)", 1, 1, 0.75, 0.75, 0, 0.45),
                Make(edition, method, "2.4.1(6)", 1, 1, 0.75, 0, 0.75 * asd, 0.45),
                Make(edition, method, "2.4.1(7)", 0.6, 0, 0, 0, 0, 0.6),
            ];
    }

    private static LoadCombination Make(
        LoadEdition edition, DesignMethod method, string number, double dead, double collateral, double live, double roofLive, double snow,
        double wind)
    {
        var name = new StringBuilder();
        Term(name, dead, collateral == 0 ? "D" : "(D+C)");
        Term(name, live, "L");
        Term(name, roofLive, "Lr");
        Term(name, snow, "S");
        Term(name, wind, "W");
        string clause = $"ASCE {(edition == LoadEdition.Asce716 ? "7-16" : "7-22")} {number}";
        return new LoadCombination(name.ToString(), edition, method, clause, dead, collateral, live, roofLive, snow, wind);
    }

    private static void Term(StringBuilder name, double factor, string symbol)
    {
        if (factor == 0)
        {
            return;
        }

        name.Append(name.Length == 0 ? "" : " + ");
        name.Append(factor == 1 ? "" : factor.ToString("0.###", CultureInfo.InvariantCulture)).Append(symbol);
    }
}
