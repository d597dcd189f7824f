namespace Glazewright.Science.Light;

/// <summary>What became of beams of many directions, a row each; sums run in the order of the rows, whoever filled them.</summary>
internal sealed class TracedBeams(int directions, int surfaces, int pieces)
{
    private readonly GainRow[] rows = new GainRow[directions];
    private readonly double[] direct = new double[directions];
    private readonly double[] bySurface = new double[directions * surfaces];
    private readonly double[] setFree = new double[directions * pieces];

    /// <summary>Traces a beam and keeps what became of it.</summary>
    internal void Keep(int row, BeamTracer tracer, Vector3d towards)
    {
        rows[row] = tracer.Trace(towards);
        direct[row] = tracer.DirectOnCropM2;
        tracer.AddSurfaces(1, bySurface.AsSpan(row * surfaces, surfaces));
        tracer.SetFreeM2.CopyTo(setFree.AsSpan(row * pieces));
    }

    /// <summary>Weighted sum of rows from one on.</summary>
    internal SummedBeams Sum(int first, ReadOnlySpan<double> weights)
    {
        GainRow row = default;
        double onCrop = 0;
        var absorbed = new double[surfaces];
        var free = new double[pieces];
        for (int k = 0; k < weights.Length; k++)
        {
            double weight = weights[k];
            row += weight * rows[first + k];
            onCrop += weight * direct[first + k];
            Add(weight, bySurface.AsSpan((first + k) * surfaces, surfaces), absorbed);
            Add(weight, setFree.AsSpan((first + k) * pieces, pieces), free);
        }

        return new SummedBeams(row, onCrop, absorbed, free);
    }

    /// <summary>The table of a grid whose nodes are the first rows, one row for the zenith.</summary>
    internal EnclosureGainTable Table(SunGrid grid, IReadOnlyList<string> ids, SummedBeams dome, SummedBeams horizon, SummedBeams ground)
    {
        int suns = grid.Count - grid.Azimuths + 1;
        return new EnclosureGainTable(
            grid, ids, Spread(rows, 1), dome.Row, horizon.Row, ground.Row, Spread(bySurface, surfaces), dome.BySurface, horizon.BySurface, ground.BySurface,
            Spread(direct, 1), dome.DirectOnCropM2, new LightSetFree(Spread(setFree, pieces), dome.SetFree, horizon.SetFree, ground.SetFree));

        T[] Spread<T>(T[] from, int width)
        {
            var all = new T[grid.Count * width];
            Array.Copy(from, all, suns * width);
            for (int node = suns; node < grid.Count; node++)
            {
                Array.Copy(from, (suns - 1) * width, all, node * width, width);
            }

            return all;
        }
    }

    private static void Add(double weight, ReadOnlySpan<double> part, double[] sum)
    {
        for (int i = 0; i < sum.Length; i++)
        {
            sum[i] += weight * part[i];
        }
    }
}

/// <summary>A weighted sum of beams.</summary>
/// <param name="Row">Where they end.</param>
/// <param name="DirectOnCropM2">What of them meets the crop plane unscattered.</param>
/// <param name="BySurface">Absorbed by each surface's own material.</param>
/// <param name="SetFree">Diffuse light set free by each piece.</param>
internal sealed record SummedBeams(GainRow Row, double DirectOnCropM2, double[] BySurface, double[] SetFree);
