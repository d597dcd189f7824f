using Glazewright.Design.Contracts;

namespace Glazewright.Design.Form;

/// <summary>Finds where walls of different buildings stand against each other: two-dimensional clipping in the common plane.</summary>
internal static class SharedFaces
{
    /// <summary>How far two planes may be apart and still be one wall, m.</summary>
    private const double SamePlaneM = 0.02;

    public static List<SharedPiece> Find(IReadOnlyList<RawFace> faces)
    {
        List<SharedPiece> pieces = [];
        foreach (RawFace a in faces)
        {
            if (Math.Abs(a.Plane.Normal.ZM) > 1e-6)
            {
                continue;
            }

            foreach (RawFace b in faces)
            {
                bool facing = a.Plane.Normal.Dot(b.Plane.Normal) < -1 + 1e-9;
                bool one = Math.Abs((b.Plane.Origin - a.Plane.Origin).Dot(a.Plane.Normal)) <= SamePlaneM;
                if (!facing || !one || Building(a) == Building(b))
                {
                    continue;
                }

                IReadOnlyList<Point2> other = Polygons.CounterClockwise([.. b.Outline.Select(p => a.Plane.On(b.Plane.At(p)))]);
                IReadOnlyList<Point2> common = Polygons.Common(a.Outline, other);
                if (common.Count > 0)
                {
                    pieces.Add(new SharedPiece(a.Id, b.Id, common.ToEqList(), Polygons.AreaM2(common)));
                }
            }
        }

        return pieces;
    }

    private static string Building(RawFace face) => face.Id[..face.Id.IndexOf('/', StringComparison.Ordinal)];
}
