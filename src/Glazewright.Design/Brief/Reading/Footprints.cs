using Glazewright.Design.Contracts;
using Glazewright.Design.Document;
using Glazewright.Design.Quantities;

namespace Glazewright.Design.Brief.Reading;

/// <summary>Two buildings cannot stand in one place: nobody can build, heat or price that.</summary>
internal static class Footprints
{
    // Walls that touch are typed from rounded dimensions: less than this is no overlap.
    private const double TouchM = 0.02;

    public static void Apart(FieldReader f, EqList<House> houses, EqList<LinkBuilding> links, bool readWell)
    {
        if (!readWell || f.IsDescribing)
        {
            return;
        }

        Foot[] all =
        [
            .. houses.Select((h, i) => new Foot($"houses/{HouseFields.Text(i)}", h.Id, h.OriginXM, h.OriginYM, h.LengthM, h.WidthM)),
            .. links.Select((l, i) => new Foot($"links/{HouseFields.Text(i)}", l.Id, l.OriginXM, l.OriginYM, l.SizeXM, l.SizeYM)),
        ];
        for (int i = 1; i < all.Length; i++)
        {
            for (int j = 0; j < i; j++)
            {
                Foot a = all[j];
                Foot b = all[i];
                double xM = Math.Min(a.XM + a.SizeXM, b.XM + b.SizeXM) - Math.Max(a.XM, b.XM);
                double yM = Math.Min(a.YM + a.SizeYM, b.YM + b.SizeYM) - Math.Max(a.YM, b.YM);
                if (xM > TouchM && yM > TouchM)
                {
                    f.AddBelow(
                        FaultKind.DoesNotFit,
                        b.At,
                        $"{b.Id} and {a.Id} stand in each other by {FeetInches.Format(xM)} along the ridges and {FeetInches.Format(yM)} across",
                        $"{b.Id} beside {a.Id}: x from {FeetInches.Format(a.XM + a.SizeXM)} or y from {FeetInches.Format(a.YM + a.SizeYM)}");
                }
            }
        }
    }

    private readonly record struct Foot(string At, string Id, double XM, double YM, double SizeXM, double SizeYM);
}
