using Glazewright.Cutting.Bars;
using Glazewright.Design.Contracts;
using Glazewright.Design.Takeoff;

namespace Glazewright.Design.Cuts;

/// <summary>Figures and findings of Cuts.</summary>
internal static class CutsWorkings
{
    private static readonly Source GilmoreGomory = new Source.Paper(
        "P. C. Gilmore and R. E. Gomory, A linear programming approach to the cutting-stock problem, Operations Research", "9 (1961) 849 and 11 (1963) 863", Source.Mark.FromMemory);

    public static IEnumerable<Figure> Figures(SectionCuts section, CutPlan plan, ShopTick tick, double moduleM)
    {
        string at = $"cuts/{section.Section}";
        double boughtM = section.Patterns.Sum(p => p.Times * p.StockM);
        double piecesM = section.Patterns.Sum(p => p.Times * p.Pieces.Sum(piece => piece.LengthM));
        Figure bought = Observed($"{at}/bought", "Stock bought", Unit.Metre, boughtM, section, plan);
        yield return bought;
        yield return Figure.State($"{at}/pieces", "Pieces to cut", Unit.Metre, piecesM, new Source.FirstPrinciples("sum of the cut lengths"));
        double sticksM = tick.Metres(plan.Bound.SticksCents);
        double setUpsM = tick.Metres(plan.Bound.SetUpsCents);
        yield return Figure.Derive(
            $"{at}/bound", "What no cut list can beat", Unit.Metre,
            Term.Of("sticks_bound", "Bound on stock and handling of the pieces that are cut", sticksM, Unit.Metre, GilmoreGomory)
                + Term.Of("set_ups_bound", "Bound on set-ups: fewest patterns that show every length", setUpsM, Unit.Metre, new Source.FirstPrinciples("counting"))
                + Term.Of("whole_sticks", "Pieces of stock length or longer, bought as they are, with handling", Math.Round(section.Bound - sticksM - setUpsM, 9), Unit.Metre, new Source.FirstPrinciples("counting")),
            GilmoreGomory);
        yield return Observed($"{at}/objective", "What this list comes to", Unit.Metre, section.Objective, section, plan);
        yield return Figure.Observe(
            $"{at}/waste", "Waste of bought length, usable drops apart", Unit.Fraction, section.WasteFraction, "Kerf, squared ends and drops shorter than the rack takes, over the bought length",
            [], "Usable drops are not waste", new Source.FirstPrinciples("bookkeeping of the cut list"));
        yield return Figure.Observe(
            $"{at}/drops", "Usable drops, share of bought length", Unit.Fraction, DropShare(section, plan, tick), "Drops long enough for the rack, over the bought length",
            [], "Counted as bought, not as waste", new Source.FirstPrinciples("bookkeeping of the cut list"));
        if (moduleM > 0)
        {
            yield return Figure.Derive(
                $"{at}/area", "Sheet bought", Unit.SquareMetre,
                Term.Of("bought", bought) * Term.Of("module", "Sheet width", moduleM, Unit.Metre, new Source.CommonPractice("stock width of sheet")),
                new Source.FirstPrinciples("length times width"));
        }
    }

    /// <summary>Usable drops over bought length.</summary>
    public static double DropShare(SectionCuts section, CutPlan plan, ShopTick tick)
    {
        double boughtM = section.Patterns.Sum(p => p.Times * p.StockM);
        return boughtM > 0 ? tick.Metres(plan.UsableDropTicks) / boughtM : 0;
    }

    public static Finding ManyDrops(SectionCuts section, double dropShare) => new(
        "cuts/many-drops",
        Severity.Near,
        section.Section,
        $"{Shown.Of(dropShare, Unit.Fraction, UnitSystem.Us).Text} of the {section.Section} bought ends as drops on the rack, paid for and not built in.",
        "Ask for a stock length near a multiple of the pieces, or shift the bays to suit the stock.",
        new Source.CommonPractice("drops above a tenth of the tube are worth another stock length"));

    public static Finding TooLong(string section, CutDemand demand, ShopTick tick) => new(
        "cuts/too-long",
        Severity.Near,
        demand.Mark,
        FormattableString.Invariant($"{demand.Mark} of {section} is {tick.Metres(demand.LengthTicks):0.000} m: longer than any stock length, {demand.Count} to be ordered specially or spliced."),
        "Add a longer stock length, or a splice with its own check.",
        new Source.CommonPractice("stock lengths of the mill"));

    private static Figure Observed(string id, string label, Unit unit, double value, SectionCuts section, CutPlan plan) => Figure.Observe(
        id,
        label,
        unit,
        value,
        plan.Bound.Method switch
        {
            BoundMethod.LengthOnly => "First fit decreasing meets the length bound",
            BoundMethod.LinearProgram => "Column generation, diving and integer program over the patterns found; bound from the dual in whole numbers",
            _ => "Integer program over every pattern a cheaper list could hold",
        },
        [],
        $"Objective: {section.ObjectiveIs}. The bound is the sum of two bounds: proved, and loose where set-ups count",
        GilmoreGomory);
}
