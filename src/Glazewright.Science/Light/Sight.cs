namespace Glazewright.Science.Light;

/// <summary>What a ray inside a convex cell meets.</summary>
internal static class Sight
{
    /// <summary>Index of the piece that a ray leaves the cell through.</summary>
    /// <param name="pieces">All pieces.</param>
    /// <param name="cell">The ray's cell.</param>
    /// <param name="start">Start, inside or on the boundary.</param>
    /// <param name="direction">Any length.</param>
    /// <param name="apartFrom">Piece the ray starts on, whose plane is left out; −1 for none.</param>
    internal static int FirstHit(IReadOnlyList<Piece> pieces, int cell, Vector3d start, Vector3d direction, int apartFrom)
    {
        double nearest = double.PositiveInfinity;
        for (int i = 0; i < pieces.Count; i++)
        {
            Piece piece = pieces[i];
            double closing = piece.Normal.Dot(direction);
            if (piece.Cell != cell || closing <= 1e-12 || (apartFrom >= 0 && SamePlane(piece, pieces[apartFrom])))
            {
                continue;
            }

            nearest = Math.Min(nearest, piece.Normal.Dot(piece.Outline[0] - start) / closing);
        }

        // Several pieces may share that plane: take the one that holds the point best.
        Vector3d hit = start + (Math.Max(0, nearest) * direction);
        int best = -1;
        double bestHold = double.NegativeInfinity;
        for (int i = 0; i < pieces.Count; i++)
        {
            Piece piece = pieces[i];
            double closing = piece.Normal.Dot(direction);
            if (piece.Cell != cell || closing <= 1e-12
                || (apartFrom >= 0 && SamePlane(piece, pieces[apartFrom]))
                || piece.Normal.Dot(piece.Outline[0] - start) / closing > nearest + 1e-7)
            {
                continue;
            }

            double hold = Polygons.Containment(piece.Outline, piece.Normal, hit);
            foreach (Vector3d[] hole in piece.Holes)
            {
                hold = Math.Min(hold, -Polygons.Containment(hole, piece.Normal, hit));
            }

            if (hold > bestHold)
            {
                bestHold = hold;
                best = i;
            }
        }

        return best;
    }

    internal static bool SamePlane(Piece a, Piece b) =>
        a.Cell == b.Cell && a.Normal.Dot(b.Normal) > 1 - 1e-9 && Math.Abs(a.Normal.Dot(b.Outline[0] - a.Outline[0])) < 1e-4;
}
