using Glazewright.Design.Contracts;

namespace Glazewright.Design.Price;

/// <summary>The money of a job as figures: each computed by the formula it prints.</summary>
internal sealed class PriceFigures
{
    private static readonly Source Arithmetic = new Source.FirstPrinciples("bookkeeping");
    private readonly List<Figure> _all = [];

    private PriceFigures()
    {
    }

    public required Figure Hours { get; init; }

    public required Figure Labour { get; init; }

    public required Figure Direct { get; init; }

    public required Figure Overhead { get; init; }

    public required Figure Contingency { get; init; }

    public required Figure Price { get; init; }

    public required Figure Margin { get; init; }

    public required Figure Trap { get; init; }

    public required Figure Low { get; init; }

    public required Figure High { get; init; }

    public required Figure PerFloor { get; init; }

    public required Figure? PerBench { get; init; }

    /// <summary>All of them, in the order of the sum.</summary>
    public EqList<Figure> All => _all.ToEqList();

    public static PriceFigures Of(PriceInput input, EqList<SystemCost> systems, double taxedCost, PriceBook book)
    {
        List<Figure> all = [];
        Source bookSource = new Source.Catalogue(book.Name);
        Figure[] parts = [.. systems.Select(s => Keep(Figure.Observe(
            $"price/system/{Word(s.System)}", $"{Brief.ScopeWords.Headed(s.System)}: material and subcontract", Unit.Dollar, s.Cost, "Sum over its lines of quantity times unit cost", [],
            "Quantities by Takeoff and Cuts", bookSource, confidential: true)))];
        Figure material = Derive("price/material", "Material, subcontract, fees", Unit.Dollar, Term.Total(parts.Select((f, i) => Term.Of(Word(systems[i].System), f))), secret: true);
        Figure hours = Keep(Figure.Observe(
            "price/hours", "Own labour", Unit.Hour, systems.Sum(s => s.LabourHours), "Sum over lines of quantity times hours per unit", [], "Middle productivity: weather, reach and crew move it",
            bookSource, confidential: true));
        Figure labour = Derive(
            "price/labour", "Own labour", Unit.Dollar,
            Term.Of("hours", hours) * Given("rate", "Labour rate", input.Pricing.LabourPerHour, Unit.DollarPerHour, "labour"), secret: true);
        Figure taxed = Keep(Figure.Observe(
            "price/taxed", "Material that sales tax applies to", Unit.Dollar, taxedCost, "Sum over material lines", [], "Subcontract, rental, fees and freight are taken as untaxed", bookSource, confidential: true));
        Figure tax = Derive("price/tax", "Sales tax", Unit.Dollar, Term.Of("taxed", taxed) * Given("tax", "Sales tax", input.Pricing.SalesTaxFraction, Unit.Fraction, "salesTax"), secret: true);
        Figure direct = Derive("price/direct", "Direct cost", Unit.Dollar, Term.Of("material", material) + Term.Of("labour", labour) + Term.Of("sales_tax", tax), secret: true);
        Term directTerm = Term.Of("direct", direct);
        Figure overhead = Derive("price/overhead", "Overhead", Unit.Dollar, directTerm * Given("share", "Overhead on direct cost", input.Pricing.OverheadFraction, Unit.Fraction, "overhead"), secret: true);
        Figure contingency = Derive(
            "price/contingency", "Contingency", Unit.Dollar, directTerm * Given("share", "Contingency on direct cost", input.Pricing.ContingencyFraction, Unit.Fraction, "contingency"), secret: true);
        Figure cost = Derive("price/cost", "Cost", Unit.Dollar, directTerm + Term.Of("overhead", overhead) + Term.Of("contingency", contingency), secret: true);
        Term costTerm = Term.Of("cost", cost);
        Term marginTerm = Given("margin", "Margin, share of the price", input.Pricing.MarginOfPriceFraction, Unit.Fraction, "margin");

        // The working of the price would tell cost and margin: the figure the customer may see is stated, its twin with the formula is ours.
        Figure worked = Derive("price/worked", "Price, with its working", Unit.Dollar, costTerm / (1 - marginTerm), secret: true);
        Figure price = Keep(Figure.State("price/price", "Price", Unit.Dollar, worked.Value, Arithmetic));
        Figure margin = Derive("price/margin", "Margin", Unit.Dollar, Term.Of("price", worked) - costTerm, secret: true);
        Figure trap = Derive("price/mark-up-trap", "What the same percentage as a mark-up on cost would charge", Unit.Dollar, costTerm * (1 + marginTerm), secret: true);
        Figure apart = Keep(Figure.Observe(
            "price/spread-apart", "Half width of what moves each system alone", Unit.Fraction, Apart(systems, input.Pricing.LabourPerHour, direct.Value, book),
            "Root of the sum of the squared spreads of the systems' costs, over direct cost: systems taken as independent", [], "Spreads are the estimator's judgement, not statistics", bookSource, confidential: true));
        double bothFraction = Math.Sqrt((apart.Value * apart.Value) + (book.CommonSpreadFraction * book.CommonSpreadFraction));
        Figure spread = Keep(Figure.Observe(
            "price/spread", "Half width of the price band", Unit.Fraction, bothFraction,
            "Root of the sum of squares of the part that moves each system alone and the part that moves all together",
            [
                new("apart", "What moves each system alone", "price/spread-apart", apart.Value, Unit.Fraction, bookSource),
                new("common", "What moves all systems together", "", book.CommonSpreadFraction, Unit.Fraction, new Source.CommonPractice("estimating judgement: about 5 % of an estimate moves as a whole")),
            ],
            "Both parts are the estimator's judgement, not statistics; changes of scope are not in it", bookSource, confidential: true));
        Figure low = Keep(Figure.State("price/low", "Price, lower end of the band", Unit.Dollar, price.Value * (1 - spread.Value), Arithmetic));
        Figure high = Keep(Figure.State("price/high", "Price, upper end of the band", Unit.Dollar, price.Value * (1 + spread.Value), Arithmetic));
        Term priceTerm = Term.Of("price", price);
        Figure perFloor = Derive(
            "price/per-floor", "Price by floor area of all buildings", Unit.DollarPerSquareMetre,
            priceTerm / Term.Of("floor", "Floor of all buildings", input.FloorM2, Unit.SquareMetre, Arithmetic), secret: false);
        Figure? perBench = input.BenchM2 > 0
            ? Derive(
                "price/per-bench", "Price by bench area", Unit.DollarPerSquareMetre, priceTerm / Term.Of("benches", "Bench area", input.BenchM2, Unit.SquareMetre, Arithmetic), secret: false)
            : null;
        for (int i = 0; i < input.Pricing.DrawFractions.Count; i++)
        {
            Derive(
                FormattableString.Invariant($"price/draw-{i + 1}"), FormattableString.Invariant($"Payment {i + 1}"), Unit.Dollar,
                priceTerm * Given("share", "Share of the price", input.Pricing.DrawFractions[i], Unit.Fraction, FormattableString.Invariant($"draws/{i}")), secret: false);
        }

        PriceFigures figures = new()
        {
            Hours = hours,
            Labour = labour,
            Direct = direct,
            Overhead = overhead,
            Contingency = contingency,
            Price = price,
            Margin = margin,
            Trap = trap,
            Low = low,
            High = high,
            PerFloor = perFloor,
            PerBench = perBench,
        };
        figures._all.AddRange(all);
        return figures;

        Figure Keep(Figure figure)
        {
            all.Add(figure);
            return figure;
        }

        Figure Derive(string id, string label, Unit unit, Term term, bool secret) => Keep(Figure.Derive(id, label, unit, term, Arithmetic, confidential: secret));
    }

    private static Term Given(string symbol, string label, double value, Unit unit, string field) =>
        Term.Of(symbol, label, value, unit, new Source.Given($"/pricing/{field}"));

    private static double Apart(EqList<SystemCost> systems, double ratePerHour, double direct, PriceBook book)
    {
        double squares = 0;
        foreach (SystemCost system in systems)
        {
            double share = book.Spreads.FirstOrDefault(s => s.System == system.System)?.Fraction ?? 0.15;
            double money = share * (system.Cost + (system.LabourHours * ratePerHour));
            squares += money * money;
        }

        return direct > 0 ? Math.Sqrt(squares) / direct : 0;
    }

    private static string Word(Brief.ScopeSystem system) => string.Concat(system.ToString().Select((c, i) => char.IsUpper(c) && i > 0 ? $"_{char.ToLowerInvariant(c)}" : $"{char.ToLowerInvariant(c)}"));
}
