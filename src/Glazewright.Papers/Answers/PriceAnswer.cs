using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Price;
using Glazewright.Papers.Reports;
using Glazewright.Papers.Sets;

namespace Glazewright.Papers.Answers;

/// <summary>What does it cost? Reads the quote alone: costs, margins and rates never come into this file.</summary>
internal static class PriceAnswer
{
    public static QuestionAnswered? Of(PaperSource source)
    {
        QuoteResult quote = source.Price.Quote;
        if (!(quote.Price > 0))
        {
            return null;
        }

        Said said = new(source.Job.Units);
        Shown perFloor = said.Of(quote.PricePerFloorM2, Unit.DollarPerSquareMetre);
        string area = source.Job.Units == UnitSystem.Us ? "ft²" : "m²";
        List<BigFigure> figures =
        [
            new("Price", Said.Money(quote.Price), "", $"{Said.Money(quote.LowPrice)} to {Said.Money(quote.HighPrice)} until quotes are in"),
            new("For each " + area + " of floor", "$" + (perFloor with { Decimals = 0 }).Number, ""),
        ];
        if (quote.PricePerBenchM2 > 0)
        {
            figures.Add(new("For each " + area + " of bench", "$" + (said.Of(quote.PricePerBenchM2, Unit.DollarPerSquareMetre) with { Decimals = 0 }).Number, ""));
        }

        string without = Said.Listed(quote.Scope.Where(s => s.By is ScopeBy.Excluded or ScopeBy.Owner or ScopeBy.OtherTrade).Select(s => ScopeWords.Of(s.System)));
        string sentence = $"{Said.Money(quote.Price)}, give or take: {Said.Money(quote.LowPrice)} to {Said.Money(quote.HighPrice)}.{(without.Length > 0 ? $" Not in it: {without}." : "")}";
        List<Block> blocks = [new Block.Figures(figures)];
        if (quote.Scope.Count > 0)
        {
            blocks.Add(new Block.Bullets([
                .. quote.Scope.GroupBy(s => s.By).OrderBy(g => g.Key).Select(g =>
                    $"{By(g.Key)}: {Systems(g)}."),
            ]));
        }

        if (quote.Draws.Count > 0)
        {
            blocks.Add(new Block.Paragraph($"Payments: {Said.Listed(quote.Draws.Select(Said.Money))}. The price is good for {quote.ValidDays} days from the date of a signed quote; this page is not one."));
        }

        return new QuestionAnswered("What does it cost to build?", $"{Said.Money(quote.Price)} ({Said.Money(quote.LowPrice)} to {Said.Money(quote.HighPrice)})", sentence, Standing.None, blocks);
    }

    /// <summary>Systems with their notes, in one line.</summary>
    internal static string Systems(IEnumerable<ScopeLine> lines) => string.Join(", ", lines.OrderBy(s => s.System).Select(s => ScopeWords.Of(s.System) + (s.Note.Length > 0 ? $" ({s.Note})" : "")));

    internal static string By(ScopeBy by) => by switch
    {
        ScopeBy.Us => "By us",
        ScopeBy.Owner => "By you",
        ScopeBy.OtherTrade => "By other trades",
        ScopeBy.Excluded => "Not in the job",
        _ => "By us as an allowance, settled later",
    };
}
