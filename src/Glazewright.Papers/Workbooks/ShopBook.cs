using System.Globalization;
using Glazewright.Design.Contracts;
using Glazewright.Design.Cuts;
using Glazewright.Design.Price;
using Glazewright.Design.Takeoff;
using Glazewright.Papers.Exchange;

namespace Glazewright.Papers.Workbooks;

/// <summary>
/// Materials, marks and cuts as a workbook for shop and crew. Made from Takeoff and Cuts alone, whose records hold no cost: none can slip in.
/// </summary>
public static class ShopBook
{
    /// <summary>The workbook.</summary>
    /// <param name="takeoff">Takeoff.</param>
    /// <param name="cuts">Cut lists.</param>
    /// <param name="units">Units of the shop.</param>
    /// <returns>Bytes of an xlsx file.</returns>
    public static byte[] Bytes(TakeoffResult takeoff, CutsResult cuts, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(takeoff);
        ArgumentNullException.ThrowIfNull(cuts);
        return BookWriter.Bytes([Materials(takeoff, cuts, units), Marks(takeoff, units), Cuts(cuts, units)]);
    }

    private static BookSheet Materials(TakeoffResult takeoff, CutsResult cuts, UnitSystem units)
    {
        List<IReadOnlyList<BookCell>> rows = [Head("System", "Item", "Description", "Quantity", "Unit", "By", "From", "Have", "To buy")];
        foreach (TakeoffLine line in Purchases.Of(takeoff, cuts, units))
        {
            (double quantity, string per) = Measure.Of(line.Quantity, line.Per, units);
            int row = rows.Count + 1;
            rows.Add(
            [
                BookCell.Text(line.System.ToString()), BookCell.Text(line.Item), BookCell.Text(line.Label), BookCell.Of(quantity), BookCell.Text(per), BookCell.Text(line.By.ToString()),
                BookCell.Text(line.From), BookCell.Of(0, CellLook.Given), BookCell.Computed(At("MAX(0,D{0}-H{0})", row), Math.Max(0, quantity), CellLook.Number),
            ]);
        }

        return new BookSheet("Materials", [16, 26, 52, 12, 8, 10, 44, 10, 12], 1, rows);
    }

    private static BookSheet Marks(TakeoffResult takeoff, UnitSystem units)
    {
        string stop = units == UnitSystem.Us ? "in" : "mm";
        string mass = units == UnitSystem.Us ? "lb" : "kg";
        string run = units == UnitSystem.Us ? "ft" : "m";
        double stopInRun = units == UnitSystem.Us ? 12 : 1000;
        List<IReadOnlyList<BookCell>> rows =
            [Head("Mark", "Section", "Length", "Stop, " + stop, "Saw angle A, °", "Saw angle B, °", "Count", "Mass each, " + mass, "Run, " + run, "Mass, " + mass, "Where")];
        foreach (ShopMark mark in takeoff.Marks)
        {
            double stopLength = Measure.Stop(mark.LengthM, units);
            double each = Measure.Mass(mark.MassEachKg, units);
            int row = rows.Count + 1;
            rows.Add(
            [
                BookCell.Text(mark.Mark), BookCell.Text(mark.Section), BookCell.Text(Measure.Length(mark.LengthM, units)), BookCell.Of(stopLength), BookCell.Of(mark.AngleADeg, CellLook.Hours),
                BookCell.Of(mark.AngleBDeg, CellLook.Hours), BookCell.Of(mark.Count, CellLook.Count), BookCell.Of(each),
                BookCell.Computed(string.Create(CultureInfo.InvariantCulture, $"D{row}*G{row}/{stopInRun}"), stopLength * mark.Count / stopInRun, CellLook.Number),
                BookCell.Computed(At("G{0}*H{0}", row), mark.Count * each, CellLook.Number), BookCell.Text(mark.Where),
            ]);
        }

        int last = Math.Max(2, rows.Count);
        rows.Add(
        [
            BookCell.Text("All", CellLook.Total), BookCell.Empty, BookCell.Empty, BookCell.Empty, BookCell.Empty, BookCell.Empty,
            Sum("G", takeoff.Marks.Sum(m => m.Count)), BookCell.Empty,
            Sum("I", takeoff.Marks.Sum(m => m.Count * Measure.Stop(m.LengthM, units) / stopInRun)),
            Sum("J", takeoff.Marks.Sum(m => m.Count * Measure.Mass(m.MassEachKg, units))), BookCell.Empty,
        ]);
        return new BookSheet("Marks", [9, 22, 16, 11, 14, 14, 8, 13, 11, 12, 48], 1, rows);

        BookCell Sum(string column, double value) =>
            BookCell.Computed(string.Create(CultureInfo.InvariantCulture, $"SUM({column}2:{column}{last})"), value, CellLook.Total);
    }

    private static BookSheet Cuts(CutsResult cuts, UnitSystem units)
    {
        string per = units == UnitSystem.Us ? "ft" : "m";
        List<IReadOnlyList<BookCell>> rows =
            [Head("Section", "Pattern", "Bars cut so", "Stock, " + per, "Pieces on a bar, in order", "Pieces, " + per, "Drop of a bar, " + per, "Bought, " + per, "In pieces, " + per)];
        double bought = 0;
        double used = 0;
        foreach (SectionCuts section in cuts.Sections)
        {
            for (int p = 0; p < section.Patterns.Count; p++)
            {
                BarPattern pattern = section.Patterns[p];
                double stock = Run(pattern.StockM);
                double pieces = Run(pattern.Pieces.Sum(x => x.LengthM));
                (bought, used) = (bought + pattern.Times * stock, used + pattern.Times * pieces);
                int row = rows.Count + 1;
                rows.Add(
                [
                    BookCell.Text(section.Section), BookCell.Of(p + 1, CellLook.Count), BookCell.Of(pattern.Times, CellLook.Count), BookCell.Of(stock), BookCell.Text(InOrder(pattern, units)),
                    BookCell.Of(pieces), BookCell.Of(Run(pattern.DropM)), BookCell.Computed(At("C{0}*D{0}", row), pattern.Times * stock, CellLook.Number),
                    BookCell.Computed(At("C{0}*F{0}", row), pattern.Times * pieces, CellLook.Number),
                ]);
            }
        }

        int last = Math.Max(2, rows.Count);
        int total = rows.Count + 1;
        rows.Add(
        [
            BookCell.Text("All", CellLook.Total), BookCell.Empty, Sum("C", cuts.Sections.Sum(s => s.Patterns.Sum(p => p.Times))), BookCell.Empty, BookCell.Empty, BookCell.Empty, BookCell.Empty,
            Sum("H", bought), Sum("I", used),
        ]);
        rows.Add(
        [
            BookCell.Text("In pieces, of what is bought"), BookCell.Empty, BookCell.Empty, BookCell.Empty, BookCell.Empty, BookCell.Empty, BookCell.Empty, BookCell.Empty,
            BookCell.Computed(At("IF(H{0}>0,I{0}/H{0},0)", total), bought > 0 ? used / bought : 0, CellLook.Share),
        ]);
        return new BookSheet("Cuts", [22, 9, 12, 11, 60, 11, 16, 12, 13], 1, rows);

        double Run(double lengthM) => Measure.Of(lengthM, "m", units).Quantity;

        BookCell Sum(string column, double value) =>
            BookCell.Computed(string.Create(CultureInfo.InvariantCulture, $"SUM({column}2:{column}{last})"), value, CellLook.Total);
    }

    private static string InOrder(BarPattern pattern, UnitSystem units)
    {
        List<string> runs = [];
        for (int i = 0; i < pattern.Pieces.Count;)
        {
            CutPiece piece = pattern.Pieces[i];
            int run = 1;
            while (i + run < pattern.Pieces.Count && pattern.Pieces[i + run] == piece)
            {
                run++;
            }

            runs.Add(string.Create(CultureInfo.InvariantCulture, $"{run} × {piece.Mark} ({Measure.Length(piece.LengthM, units)})"));
            i += run;
        }

        return string.Join(", ", runs);
    }

    private static IReadOnlyList<BookCell> Head(params string[] words) => [.. words.Select(w => BookCell.Text(w, CellLook.Head))];

    private static string At(string formula, int row) => string.Format(CultureInfo.InvariantCulture, formula, row);
}
