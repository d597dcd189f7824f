using Glazewright.Cutting.Bars;
using Glazewright.Cutting.Guards;

namespace Glazewright.Cutting.Sheets;

/// <summary>Turns placed sheets into lengths to cut from stock.</summary>
public static class SheetOrder
{
    /// <summary>Demands of full-width lengths for <see cref="BarCutter"/>.</summary>
    /// <param name="pieces">Placed pieces, of one module.</param>
    /// <param name="rules">The module's rules.</param>
    /// <returns>
    /// One demand for each length, longest first, its mark the marks of the pieces of that length. Trim pieces of one length share a sheet where ripping is
    /// allowed (first fit decreasing over the width); a panel's trims take a panel each.
    /// </returns>
    /// <exception cref="ArgumentOutOfRangeException">A piece wider than the module.</exception>
    public static IReadOnlyList<CutDemand> Lengths(IReadOnlyList<SheetPiece> pieces, SheetRules rules)
    {
        foreach (SheetPiece piece in pieces)
        {
            Within.Require(piece.WidthTicks, 1, rules.CoverTicks);
        }

        List<CutDemand> demands = [];
        foreach (IGrouping<int, SheetPiece> length in pieces.GroupBy(piece => piece.LengthTicks).OrderByDescending(group => group.Key))
        {
            int full = length.Count(piece => !piece.IsTrimmed);
            int[] trims = [.. length.Where(piece => piece.IsTrimmed).Select(piece => piece.WidthTicks).OrderDescending()];
            demands.Add(new CutDemand(Marks(length), length.Key, full + (rules.MayRip ? Ripped(trims, rules) : trims.Length)));
        }

        return demands;
    }

    private static int Ripped(int[] trims, SheetRules rules)
    {
        List<int> room = [];
        foreach (int trim in trims)
        {
            int sheet = room.FindIndex(left => left >= trim);
            if (sheet < 0)
            {
                sheet = room.Count;
                room.Add(rules.CoverTicks);
            }

            room[sheet] -= trim + rules.RipKerfTicks;
        }

        return room.Count;
    }

    private static string Marks(IEnumerable<SheetPiece> pieces) => string.Join(' ', pieces.Select(piece => piece.Mark).Distinct());
}
