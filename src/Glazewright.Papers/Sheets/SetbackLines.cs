using Glazewright.Design.Brief;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Fonts;

namespace Glazewright.Papers.Sheets;

/// <summary>Setbacks of a lot: a dashed line within each lot line that has one, with its distance.</summary>
internal static class SetbackLines
{
    private const double GapMm = 1.2;

    /// <summary>The lines and their words.</summary>
    /// <param name="lot">The lot.</param>
    /// <param name="style">How lengths are written.</param>
    /// <param name="mmPerM">Scale.</param>
    /// <param name="isRange">On the range plan, where chains stand about the houses: words on the lowest line alone.</param>
    /// <param name="taken">Where other words and dimensions stand.</param>
    public static IEnumerable<Entity> Of(Lot lot, LengthStyle style, double mmPerM, bool isRange = false, IReadOnlyList<Box>? taken = null)
    {
        if (RangePlan.LotRing(lot) is null)
        {
            yield break;
        }

        Box inside = new(lot.OriginXM + lot.SetbackEnd1M, lot.OriginYM + lot.SetbackLeftM, lot.SizeXM - lot.SetbackEnd1M - lot.SetbackEnd2M, lot.SizeYM - lot.SetbackLeftM - lot.SetbackRightM);
        if (inside.Width <= 0 || inside.Height <= 0)
        {
            yield break;
        }

        (string Side, double SetbackM, Spot From, Spot To, Spot Out)[] sides =
        [
            ("left", lot.SetbackLeftM, new(inside.Left, inside.Top), new(inside.Right, inside.Top), new(0, -1)),
            ("right", lot.SetbackRightM, new(inside.Left, inside.Bottom), new(inside.Right, inside.Bottom), new(0, 1)),
            ("end1", lot.SetbackEnd1M, new(inside.Left, inside.Top), new(inside.Left, inside.Bottom), new(-1, 0)),
            ("end2", lot.SetbackEnd2M, new(inside.Right, inside.Top), new(inside.Right, inside.Bottom), new(1, 0)),
        ];
        foreach ((string side, double setbackM, Spot from, Spot to, Spot outward) in sides.Where(s => s.SetbackM > 0))
        {
            string id = "lot/setback/" + side;
            yield return new Entity.Polyline([from, to]) { Role = Role.Setback, Source = id };
            if ((isRange && side != "left") || setbackM * mmPerM < Lettered.SmallestMm + 2 * GapMm)
            {
                continue;
            }

            // Between the lot line and its setback, as near the far end as nothing else stands; with less room the distance alone.
            Spot aside = (GapMm + Lettered.SmallestMm / 2) / mmPerM * outward;
            string length = SheetStyle.Length(setbackM, style);
            foreach (string text in (string[])[$"setback {length}", length])
            {
                if (Place(from, to, aside, Lettering.WidthMm(text, Face.Regular, Lettered.SmallestMm), mmPerM, taken ?? []) is { } at)
                {
                    yield return new Entity.Label(at, text) { Role = Role.Text, Along = Along.End, Across = Across.Middle, AngleDeg = outward.X != 0 ? 90 : 0, Paint = Paint.Of(Tone.Ink2), Masked = true, Source = id };
                    break;
                }
            }
        }
    }

    /// <summary>The setbacks in one sentence; empty without any.</summary>
    public static string Words(Lot lot, LengthStyle style)
    {
        (string Side, double SetbackM)[] sides = [("end 1", lot.SetbackEnd1M), ("end 2", lot.SetbackEnd2M), ("left", lot.SetbackLeftM), ("right", lot.SetbackRightM)];
        string told = string.Join(", ", sides.Where(s => s.SetbackM > 0).Select(s => $"{SheetStyle.Length(s.SetbackM, style)} {s.Side}"));
        return told.Length == 0 ? "" : $"Setbacks: {told}.";
    }

    private static Spot? Place(Spot from, Spot to, Spot aside, double wideMm, double mmPerM, IReadOnlyList<Box> taken)
    {
        const int Tries = 40;
        Spot along = (to - from).Unit();
        double roomMm = (to - from).Length() * mmPerM - wideMm - 4;
        for (int i = 0; i <= Tries && roomMm >= 0; i++)
        {
            Spot end = to - (2 + i * roomMm / Tries) / mmPerM * along + aside;
            Box box = SitePlan.Bounds([end + aside, end - aside, end - wideMm / mmPerM * along]);
            if (!taken.Any(t => t.Left < box.Right && box.Left < t.Right && t.Top < box.Bottom && box.Top < t.Bottom))
            {
                return end;
            }
        }

        return null;
    }
}
