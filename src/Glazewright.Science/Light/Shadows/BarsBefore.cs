namespace Glazewright.Science.Light.Shadows;

/// <summary>The share of even light from inside that bars before a clear piece catch: as of even light from outside, by reciprocity.</summary>
internal static class BarsBefore
{
    /// <summary>For each position of a house's curtain, with the parked bundles or without.</summary>
    /// <returns>One a piece for each position; 0 for pieces that are not clear.</returns>
    internal static double[][] EvenLight(Enclosure enclosure, IReadOnlyList<(List<Piece> Pieces, bool WithParked)> positions)
    {
        var picture = new BarPicture(enclosure);
        BarCatch[] bars = [.. positions.Select(p => new BarCatch(p.Pieces, picture, p.WithParked))];
        double[][] sum = [.. positions.Select(p => new double[p.Pieces.Count])];
        double[][] flux = [.. positions.Select(p => new double[p.Pieces.Count])];
        double[] caught = new double[positions.Max(p => p.Pieces.Count)];
        foreach (SkyPatch patch in picture.Any ? SkyPatches.Coarse : [])
        {
            for (int side = -1; side <= 1; side += 2)
            {
                Vector3d from = patch.Towards with { Z = side * patch.Towards.Z };
                for (int p = 0; p < bars.Length; p++)
                {
                    List<Piece> pieces = positions[p].Pieces;
                    bars[p].Of(from, caught);
                    for (int i = 0; i < pieces.Count; i++)
                    {
                        double weight = patch.IrradianceFactor * Math.Max(0, pieces[i].Normal.Dot(from));
                        sum[p][i] += weight * caught[i];
                        flux[p][i] += weight;
                    }
                }
            }
        }

        for (int p = 0; p < sum.Length; p++)
        {
            for (int i = 0; i < sum[p].Length; i++)
            {
                sum[p][i] = flux[p][i] > 0 && positions[p].Pieces[i].Covering is FaceCovering.Clear ? sum[p][i] / flux[p][i] : 0;
            }
        }

        return sum;
    }
}
