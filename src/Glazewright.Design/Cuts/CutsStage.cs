using Glazewright.Cutting.Bars;
using Glazewright.Cutting.Sheets;
using Glazewright.Design.Contracts;
using Glazewright.Design.Takeoff;
using PlacedSheet = Glazewright.Cutting.Sheets.SheetPiece;
using SheetPiece = Glazewright.Design.Takeoff.SheetPiece;

namespace Glazewright.Design.Cuts;

/// <summary>Cuts: how every section and sheet is cut from stock, with a proved bound.</summary>
public static class CutsStage
{
    /// <summary>Raise when results change.</summary>
    public const int Version = 2;

    /// <summary>Makes the cut lists.</summary>
    /// <param name="input">Stock and saw.</param>
    /// <param name="takeoff">Marks and sheets.</param>
    /// <param name="cancel">Looked at between sections and in the search for each.</param>
    /// <returns>One list a section, tube first, then sheet kinds.</returns>
    public static CutsResult Run(CutsInput input, TakeoffResult takeoff, CancellationToken cancel)
    {
        ShopTick tick = ShopTick.For(input.Units);
        List<SectionCuts> sections = [];
        List<Figure> figures = [];
        List<Finding> findings = [];
        foreach (var section in takeoff.Marks.GroupBy(mark => mark.Section))
        {
            cancel.ThrowIfCancellationRequested();
            CutProblem problem = new(
                [.. section.Select(mark => new CutDemand(mark.Mark, tick.Nearest(mark.LengthM), mark.Count))],
                Stocks(input.StockLengthsM, tick),
                new SawRules(KerfRule.BetweenPieces, tick.Up(input.KerfM), tick.Up(CutsRules.EndTrimM), tick.Up(CutsRules.UsableDropM)),
                new CutCosts(tick.Nearest(CutsRules.SetUpM), tick.Nearest(CutsRules.HandlingM)));
            Add(section.Key, problem, 0);
        }

        foreach (var kind in takeoff.Sheets.GroupBy(sheet => sheet.CoverKind))
        {
            cancel.ThrowIfCancellationRequested();
            CoverBuying buying = CoverBuying.Of(kind.Key, input.Units);
            if (buying.Form == CoverForm.Sheet)
            {
                CutProblem problem = new(
                    SheetOrder.Lengths(Sheets(kind, tick), buying.Rules),
                    Stocks(CutsRules.SheetLengthsM(input.Units), tick),
                    new SawRules(KerfRule.BetweenPieces, tick.Up(CutsRules.SheetKerfM), 0, tick.Up(CutsRules.UsableDropM)),
                    CutCosts.MetalOnly);
                Add(kind.Key, problem, buying.ModuleM);
            }
            else if (buying.Form == CoverForm.Panel && ShortPanels(kind, tick) is { } problem)
            {
                Add(ShortPanelSection(kind.Key), problem, buying.ModuleM);
            }
        }

        return new CutsResult(sections.ToEqList(), new StageReport(figures.ToEqList(), findings.ToEqList(), EqList.Create<string>(
        [
            "Kerf rule: n − 1, the saw passes between pieces; both mill ends of tube are squared first (1/2 in a stick). Pieces as long as the stock are taken as delivered: check them square.",
            "Mitred pieces are cut at their long points; one mitre is not nested in the next. Usable drops are listed, not credited.",
            "Panels of 8 ft and more are made to length by the mill; shorter pieces are cut from longer panels of any length.",
        ])));

        void Add(string name, CutProblem problem, double moduleM)
        {
            CutAnswer answer = BarCutter.CutStoppably(problem, cancel);
            List<(StockLength Stock, CutDemand Demand, bool IsSpecial)> uncut = answer is CutAnswer.Missed missed
                ? [.. missed.TooLong.Select(t => Uncut(problem, t.Demand))]
                : [];
            SectionCuts section = Section(name, problem, answer.Plan, uncut, tick);
            sections.Add(section);
            figures.AddRange(CutsWorkings.Figures(section, answer.Plan, tick, moduleM));
            double dropShare = CutsWorkings.DropShare(section, answer.Plan, tick);
            if (dropShare > CutsRules.ManyDropsFraction)
            {
                findings.Add(CutsWorkings.ManyDrops(section, dropShare));
            }

            findings.AddRange(uncut.Where(u => u.IsSpecial).Select(u => CutsWorkings.TooLong(name, u.Demand, tick)));
        }
    }

    /// <summary>Name of the cut list of a panel kind's short pieces.</summary>
    /// <param name="kind">Cover kind id.</param>
    /// <returns>Section name.</returns>
    public static string ShortPanelSection(string kind) => $"{kind}, short pieces";

    /// <summary>Pieces too short for the mill, to be cut from panels made to the length of some of them end to end; null when there are none.</summary>
    private static CutProblem? ShortPanels(IEnumerable<SheetPiece> pieces, ShopTick tick)
    {
        CutDemand[] demands = [.. pieces.Where(p => p.LengthM < CutsRules.ShortestPanelM - 1e-6).Select(p => new CutDemand(p.Mark, tick.Nearest(p.LengthM), p.Count))];
        int kerf = tick.Up(CutsRules.PanelKerfM);
        int least = tick.Nearest(CutsRules.ShortestPanelM);
        int most = tick.Nearest(CutsRules.LongestCutPanelM);
        SortedSet<int> lengths = demands.Length == 0 ? [] : [least];
        foreach (int length in demands.Select(d => d.LengthTicks))
        {
            for (int n = 1; (n * length) + ((n - 1) * kerf) <= most; n++)
            {
                lengths.Add(Math.Max(least, (n * length) + ((n - 1) * kerf)));
            }
        }

        return demands.Length == 0
            ? null
            : new CutProblem(demands, Stocks(lengths, tick), new SawRules(KerfRule.BetweenPieces, kerf, 0, least), CutCosts.MetalOnly);
    }

    /// <summary>A piece that no trimmed stick gives: taken as delivered when it is just the stock's length, else ordered specially.</summary>
    private static (StockLength Stock, CutDemand Demand, bool IsSpecial) Uncut(CutProblem problem, CutDemand demand)
    {
        StockLength? whole = problem.Stocks.Where(stock => stock.LengthTicks >= demand.LengthTicks).MinBy(stock => stock.LengthTicks);
        return whole is null ? (new StockLength("special", demand.LengthTicks, demand.LengthTicks), demand, true) : (whole, demand, false);
    }

    private static SectionCuts Section(
        string name, CutProblem problem, CutPlan plan, List<(StockLength Stock, CutDemand Demand, bool IsSpecial)> uncut, ShopTick tick)
    {
        List<BarPattern> patterns =
        [
            .. uncut.Select(u => new BarPattern(
                tick.Metres(u.Stock.LengthTicks),
                u.Demand.Count,
                [new CutPiece(u.Demand.Mark, tick.Metres(u.Demand.LengthTicks))],
                tick.Metres(u.Stock.LengthTicks - u.Demand.LengthTicks))),
            .. plan.Runs.Select(run => new BarPattern(
                tick.Metres(run.Pattern.Stock.LengthTicks),
                run.Sticks,
                run.Pattern.Pieces.Select(piece => new CutPiece(piece.Mark, tick.Metres(piece.LengthTicks))).ToEqList(),
                tick.Metres(run.Pattern.DropTicks))),
        ];
        long uncutTicks = uncut.Sum(u => (long)u.Demand.Count * (u.Stock.LengthTicks + problem.Costs.HandlingCents));
        double stockM = patterns.Sum(p => p.Times * p.StockM);
        double piecesM = patterns.Sum(p => p.Times * p.Pieces.Sum(piece => piece.LengthM));
        double usableM = tick.Metres(plan.UsableDropTicks);
        bool metalOnly = problem.Costs == CutCosts.MetalOnly;
        return new SectionCuts(
            name,
            patterns.ToEqList(),
            patterns.Sum(p => p.Times),
            tick.Metres(plan.Bound.TotalCents + uncutTicks),
            tick.Metres(plan.TotalCents + uncutTicks),
            metalOnly
                ? "length of stock bought"
                : FormattableString.Invariant($"length of stock bought, and {tick.Said(CutsRules.HandlingM)} for each bar handled and {tick.Said(CutsRules.SetUpM)} for each saw set-up"),
            plan.IsProvedBest,
            stockM > 0 ? Math.Max(0, stockM - piecesM - usableM) / stockM : 0)
        {
            UsableDropM = usableM,
        };
    }

    private static StockLength[] Stocks(EqList<double> lengthsM, ShopTick tick) => Stocks(lengthsM.Select(m => tick.Nearest(m)).Distinct(), tick);

    private static StockLength[] Stocks(IEnumerable<int> lengths, ShopTick tick) =>
        [.. lengths.Select(steps =>
            new StockLength(FormattableString.Invariant($"{tick.Metres(steps):0.000} m"), steps, steps))];

    private static List<PlacedSheet> Sheets(IEnumerable<SheetPiece> pieces, ShopTick tick) =>
        [.. pieces.SelectMany(s => Enumerable.Repeat(
            new PlacedSheet(s.Mark, 0, tick.Nearest(s.TrimmedWidthM), 0, tick.Nearest(s.LengthM), s.TrimmedWidthM < s.ModuleM - 1e-6, false), s.Count))];
}
