using System.Globalization;
using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Cuts;
using Glazewright.Design.Price;
using Glazewright.Design.Takeoff;
using Glazewright.Papers.Drawing;

namespace Glazewright.Papers.Sets;

/// <summary>Lists as comma-separated values: materials, cuts, sheets for the shop; the price for the contractor.</summary>
internal static class ShopLists
{
    private static readonly string[] MaterialHead = ["system", "item", "what", "quantity", "per", "supplied by", "from"];
    private static readonly string[] MemberHead = ["mark", "section", "count", "length", "length m", "saw angle A deg", "saw angle B deg", "mass each kg", "where"];
    private static readonly string[] CutHead = ["section", "pattern", "bars", "stock m", "order on bar", "mark", "length", "length m", "drop m"];
    private static readonly string[] SheetHead = ["mark", "covering", "zone", "count", "module m", "length", "length m", "last trimmed to m"];
    private static readonly string[] PriceHead = ["system", "item", "what", "quantity", "per", "unit cost", "cost", "labour h", "supplied by"];

    public static byte[] Materials(TakeoffResult takeoff) => CsvText.Bytes(
        MaterialHead,
        takeoff.Lines.Select(l => (IReadOnlyList<string>)[Word(l.System), l.Item, l.Label, CsvText.Number(l.Quantity, 3), l.Per, Word(l.By), l.From]));

    public static byte[] Members(TakeoffResult takeoff, UnitSystem units) => CsvText.Bytes(
        MemberHead,
        takeoff.Marks.Select(m => (IReadOnlyList<string>)[
            m.Mark, m.Section, Whole(m.Count), Length(m.LengthM, units), CsvText.Number(m.LengthM, 4), CsvText.Number(m.AngleADeg, 2), CsvText.Number(m.AngleBDeg, 2), CsvText.Number(m.MassEachKg, 2), m.Where,
        ]));

    public static byte[] Cuts(CutsResult cuts, UnitSystem units)
    {
        List<IReadOnlyList<string>> rows = [];
        foreach (SectionCuts section in cuts.Sections)
        {
            for (int p = 0; p < section.Patterns.Count; p++)
            {
                BarPattern pattern = section.Patterns[p];
                for (int i = 0; i < pattern.Pieces.Count; i++)
                {
                    CutPiece piece = pattern.Pieces[i];
                    rows.Add([
                        section.Section, Whole(p + 1), Whole(pattern.Times), CsvText.Number(pattern.StockM, 4), Whole(i + 1), piece.Mark, Length(piece.LengthM, units), CsvText.Number(piece.LengthM, 4), CsvText.Number(pattern.DropM, 4),
                    ]);
                }
            }
        }

        return CsvText.Bytes(CutHead, rows);
    }

    public static byte[] Sheets(TakeoffResult takeoff, UnitSystem units) => CsvText.Bytes(
        SheetHead,
        takeoff.Sheets.Select(s => (IReadOnlyList<string>)[
            s.Mark, s.CoverKind, s.Zone, Whole(s.Count), CsvText.Number(s.ModuleM, 4), Length(s.LengthM, units), CsvText.Number(s.LengthM, 4), CsvText.Number(s.TrimmedWidthM, 4),
        ]));

    public static byte[] Price(PriceResult price) => CsvText.Bytes(
        PriceHead,
        price.Lines.Select(l => (IReadOnlyList<string>)[
            Word(l.System), l.Item, l.Label, CsvText.Number(l.Quantity, 3), l.Per, CsvText.Number(l.UnitCost, 4), CsvText.Number(l.Cost, 2), CsvText.Number(l.LabourHours, 2), Word(l.By),
        ]));

    private static string Length(double lengthM, UnitSystem units) =>
        LengthText.Of(lengthM, units == UnitSystem.Us ? LengthStyle.FeetInches : LengthStyle.Millimetres);

    private static string Whole(int number) => number.ToString(CultureInfo.InvariantCulture);

    private static string Word(ScopeSystem system) => system.ToString();

    private static string Word(ScopeBy by) => by.ToString();
}
