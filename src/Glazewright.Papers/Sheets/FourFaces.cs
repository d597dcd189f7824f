using Glazewright.Design.Form;
using Glazewright.Papers.Drawing;

namespace Glazewright.Papers.Sheets;

/// <summary>Lays two long and two short views on a sheet at one scale: the short ones side by side over the long ones, or all four in a square.</summary>
internal static class FourFaces
{
    /// <summary>Where each view goes.</summary>
    /// <param name="roomMm">Room on paper.</param>
    /// <param name="shorts">Width and height of both short views, m.</param>
    /// <param name="longs">Of both long views.</param>
    /// <param name="pad">Paper round each.</param>
    /// <param name="style">Feet or metric.</param>
    /// <returns>One scale, and the boxes of the four views: shorts first.</returns>
    public static (DrawingScale Scale, IReadOnlyList<Box> BoxesMm) Lay(Box roomMm, IReadOnlyList<Box> shorts, IReadOnlyList<Box> longs, Pad pad, LengthStyle style)
    {
        Box[] all = [.. shorts, .. longs];
        bool Fits(Box shownM, DrawingScale s, double wideMm, double tallMm) =>
            shownM.Width * s.MmPerM + pad.Left + pad.Right <= wideMm && shownM.Height * s.MmPerM + pad.Top + pad.Bottom + SheetDraft.TitleMm <= tallMm;
        double halfMm = roomMm.Width / 2 - 2;
        DrawingScale square = DrawingScale.Largest(style, s => all.All(b => Fits(b, s, halfMm, roomMm.Height / 2)));

        // Heights of the rows follow what stands in them.
        double Row(IReadOnlyList<Box> some, DrawingScale s) => some.Max(b => b.Height) * s.MmPerM + pad.Top + pad.Bottom + SheetDraft.TitleMm;
        DrawingScale stacked = DrawingScale.Largest(
            style, s => shorts.All(b => Fits(b, s, halfMm, 1e6)) && longs.All(b => Fits(b, s, roomMm.Width, 1e6)) && Row(shorts, s) + longs.Sum(b => Row([b], s)) <= roomMm.Height);
        if (square.MmPerM >= stacked.MmPerM)
        {
            Box Cell(int i) => new(roomMm.Left + i % 2 * (halfMm + 4), roomMm.Top + i / 2 * roomMm.Height / 2, halfMm, roomMm.Height / 2);
            return (square, [Cell(0), Cell(1), Cell(2), Cell(3)]);
        }

        double first = Row(shorts, stacked);
        double second = Row([longs[0]], stacked);
        double third = Row([longs[1]], stacked);
        double spare = Math.Max(0, (roomMm.Height - first - second - third) / 3);
        double y2 = roomMm.Top + first + spare;
        double y3 = y2 + second + spare;
        return (stacked,
        [
            new(roomMm.Left, roomMm.Top, halfMm, first + spare), new(roomMm.Left + halfMm + 4, roomMm.Top, halfMm, first + spare),
            new(roomMm.Left, y2, roomMm.Width, second + spare), new(roomMm.Left, y3, roomMm.Width, roomMm.Bottom - y3),
        ]);
    }
}
