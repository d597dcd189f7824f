namespace Glazewright.Science.Light;

/// <summary>What became of beams of many directions, a row each, up to where they ended or were scattered; sums run in the order of the rows, whoever filled them.</summary>
internal sealed class TracedBeams(int directions, int pieces)
{
    private readonly GainRow[] rows = new GainRow[directions];
    private readonly double[] direct = new double[directions];
    private readonly double[] sinks = new double[directions * Radiosity.Sinks];
    private readonly double[] setFree = new double[directions * pieces];
    private readonly double[] onBars = new double[directions * pieces];

    /// <summary>Keeps what a tracer has followed.</summary>
    internal void Keep(int row, BeamTracer tracer)
    {
        rows[row] = new GainRow(tracer.ApertureM2, 0, 0, 0, 0, 0, 0, tracer.OpaqueOutsideM2);
        direct[row] = tracer.DirectOnCropM2;
        tracer.SinksM2.CopyTo(sinks.AsSpan(row * Radiosity.Sinks));
        tracer.SetFreeM2.CopyTo(setFree.AsSpan(row * pieces));
        tracer.OnBarsFraction.CopyTo(onBars.AsSpan(row * pieces));
    }

    /// <summary>Share of a beam that bars catch behind a piece.</summary>
    internal double OnBarsFraction(int row, int piece) => onBars[(row * pieces) + piece];

    /// <summary>Lets the scattered light of every row end too.</summary>
    internal void Spread(Radiosity radiosity)
    {
        for (int i = 0; i < directions; i++)
        {
            Span<double> ends = sinks.AsSpan(i * Radiosity.Sinks, Radiosity.Sinks);
            radiosity.Spread(setFree.AsSpan(i * pieces, pieces), ends);
            rows[i] = Radiosity.Row(rows[i].ApertureM2, ends, rows[i].OpaqueOutsideM2);
        }
    }

    /// <summary>Weighted sum of rows from one on.</summary>
    internal SummedBeams Sum(int first, ReadOnlySpan<double> weights)
    {
        GainRow row = default;
        double onCrop = 0;
        var free = new double[pieces];
        for (int k = 0; k < weights.Length; k++)
        {
            double weight = weights[k];
            row += weight * rows[first + k];
            onCrop += weight * direct[first + k];
            for (int i = 0; i < pieces; i++)
            {
                free[i] += weight * setFree[((first + k) * pieces) + i];
            }
        }

        return new SummedBeams(row, onCrop, free);
    }

    /// <summary>The table of a grid whose nodes are the first rows, one row for the zenith.</summary>
    internal EnclosureGainTable Table(SunGrid grid, SummedBeams dome, SummedBeams horizon, SummedBeams ground)
    {
        int suns = grid.Count - grid.Azimuths + 1;
        return new EnclosureGainTable(
            grid, ByNode(rows, 1), dome.Row, horizon.Row, ground.Row, ByNode(direct, 1), dome.DirectOnCropM2,
            new LightSetFree(ByNode(setFree, pieces), dome.SetFree, horizon.SetFree, ground.SetFree));

        T[] ByNode<T>(T[] from, int width)
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
}

/// <summary>A weighted sum of beams.</summary>
/// <param name="Row">Where they end.</param>
/// <param name="DirectOnCropM2">What of them meets the crop plane unscattered.</param>
/// <param name="SetFree">Diffuse light set free by each piece.</param>
internal sealed record SummedBeams(GainRow Row, double DirectOnCropM2, double[] SetFree);
