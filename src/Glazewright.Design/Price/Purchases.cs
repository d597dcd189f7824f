using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Cuts;
using Glazewright.Design.Takeoff;

namespace Glazewright.Design.Price;

/// <summary>Turns the takeoff's net lines of tube and sheet into what the cut lists really buy.</summary>
public static class Purchases
{
    /// <summary>The lines as bought.</summary>
    /// <param name="takeoff">Takeoff.</param>
    /// <param name="cuts">Cut lists.</param>
    /// <param name="units">Units of the words.</param>
    /// <returns>The takeoff's lines in their order; a tube or sheet line with a cut list has the bought quantity.</returns>
    public static EqList<TakeoffLine> Of(TakeoffResult takeoff, CutsResult cuts, UnitSystem units) => takeoff.Lines.Select(line =>
    {
        if (line.System == ScopeSystem.Panels && ShortPanels(line, takeoff, cuts) is { } panels)
        {
            return panels;
        }

        SectionCuts? section = cuts.Sections.FirstOrDefault(s => s.Section == line.Label);
        if (section is null)
        {
            return line;
        }

        double stockM = section.Patterns.Sum(p => p.Times * p.StockM);
        double? perM = line.Item == LineItems.Tube
            ? takeoff.Marks.Where(m => m.Section == section.Section).Select(m => (double?)(m.MassEachKg / m.LengthM)).FirstOrDefault()
            : line.Item == LineItems.Sheet(line.Label)
                ? takeoff.Sheets.Where(s => s.CoverKind == section.Section).Select(s => (double?)s.ModuleM).FirstOrDefault()
                : null;
        return perM is { } each
            ? line with { Quantity = stockM * each, From = $"{section.Bars} pieces of stock, {LineBook.Say(units == UnitSystem.Us, stockM)}, by the cut list" }
            : line;
    }).ToEqList();

    /// <summary>A panel line with what its short pieces lose when they are cut from longer panels.</summary>
    private static TakeoffLine? ShortPanels(TakeoffLine line, TakeoffResult takeoff, CutsResult cuts)
    {
        SheetPiece? of = takeoff.Sheets.FirstOrDefault(s => LineItems.Panel(s.CoverKind) == line.Item);
        SectionCuts? section = of is null ? null : cuts.Sections.FirstOrDefault(s => s.Section == CutsStage.ShortPanelSection(of.CoverKind));
        return section is null
            ? null
            : line with { Quantity = line.Quantity + (of!.ModuleM * section.Patterns.Sum(p => p.Times * (p.StockM - p.Pieces.Sum(piece => piece.LengthM)))) };
    }

    /// <summary>True when we pay for a line.</summary>
    /// <param name="by">Who supplies it.</param>
    /// <returns>True for our own scope and allowances.</returns>
    public static bool IsOurs(ScopeBy by) => by is ScopeBy.Us or ScopeBy.Allowance;
}
