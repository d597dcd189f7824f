namespace Glazewright.Science.Light;

/// <summary>
/// Where one unit of diffuse light that leaves a piece is at last absorbed, after all reflections: rows by emitting piece, columns by sink. Each row sums to 1.
/// </summary>
internal sealed class Radiosity
{
    internal const int Sinks = 6;

    private Radiosity(double[,] bySink, double[,] leaving)
    {
        Leaving = leaving;
        BySink = bySink;
    }

    /// <summary>All light that leaves a piece (row) for each unit first set free on a piece (column).</summary>
    internal double[,] Leaving { get; }

    internal double[,] BySink { get; }

    /// <summary>Adds where diffuse light set free by each piece ends.</summary>
    internal void Spread(ReadOnlySpan<double> setFree, Span<double> sinks)
    {
        for (int i = 0; i < setFree.Length; i++)
        {
            double e = setFree[i];
            if (e <= 0)
            {
                continue;
            }

            for (int s = 0; s < Sinks; s++)
            {
                sinks[s] += e * BySink[i, s];
            }
        }
    }

    /// <summary>The row of a beam whose light has ended.</summary>
    internal static GainRow Row(double apertureM2, ReadOnlySpan<double> sinks, double opaqueOutsideM2) => new(
        apertureM2, sinks[(int)Sink.Cover], sinks[(int)Sink.Curtain], sinks[(int)Sink.CropPlane], sinks[(int)Sink.Opaque], sinks[(int)Sink.Frame],
        sinks[(int)Sink.Escapes], opaqueOutsideM2);

    internal static Radiosity Solve(IReadOnlyList<Piece> pieces, double[,] exchangeAreas)
    {
        int n = pieces.Count;
        int curtainBelow = IndexOfCurtain(pieces, Pieces.Below);
        int curtainAbove = IndexOfCurtain(pieces, Pieces.Above);

        // out = e + (reflect and pass) · arriving, arriving = Fᵀ out.
        var system = new double[n, n];
        for (int i = 0; i < n; i++)
        {
            int partner = i == curtainBelow ? curtainAbove : i == curtainAbove ? curtainBelow : -1;
            for (int j = 0; j < n; j++)
            {
                double arriving = exchangeAreas[j, i] / pieces[j].AreaM2;
                double fromPartner = partner < 0 ? 0 : pieces[partner].PassShare * exchangeAreas[j, partner] / pieces[j].AreaM2;
                system[i, j] = (i == j ? 1 : 0) - (pieces[i].Reflectance * arriving) - fromPartner;
            }
        }

        double[,] inverse = Inverse(system);
        var bySink = new double[n, Sinks];
        for (int e = 0; e < n; e++)
        {
            for (int i = 0; i < n; i++)
            {
                double arriving = 0;
                for (int j = 0; j < n; j++)
                {
                    arriving += exchangeAreas[j, i] / pieces[j].AreaM2 * inverse[j, e];
                }

                bySink[e, (int)pieces[i].OwnSink] += arriving * pieces[i].OwnShare;
                bySink[e, (int)Sink.Frame] += arriving * pieces[i].FrameShare;
                bySink[e, (int)Sink.Escapes] += arriving * pieces[i].EscapeShare;
            }
        }

        return new Radiosity(bySink, inverse);
    }

    private static int IndexOfCurtain(IReadOnlyList<Piece> pieces, int cell)
    {
        for (int i = 0; i < pieces.Count; i++)
        {
            if (pieces[i].IsCurtain && pieces[i].Cell == cell)
            {
                return i;
            }
        }

        return -1;
    }

    // Gauss–Jordan with row pivoting; the matrix is diagonally dominant by columns, so it has an inverse.
    private static double[,] Inverse(double[,] matrix)
    {
        int n = matrix.GetLength(0);
        var a = (double[,])matrix.Clone();
        var b = new double[n, n];
        for (int i = 0; i < n; i++)
        {
            b[i, i] = 1;
        }

        for (int c = 0; c < n; c++)
        {
            int pivot = c;
            for (int r = c + 1; r < n; r++)
            {
                if (Math.Abs(a[r, c]) > Math.Abs(a[pivot, c]))
                {
                    pivot = r;
                }
            }

            for (int k = 0; k < n && pivot != c; k++)
            {
                (a[c, k], a[pivot, k]) = (a[pivot, k], a[c, k]);
                (b[c, k], b[pivot, k]) = (b[pivot, k], b[c, k]);
            }

            double scale = 1 / a[c, c];
            for (int k = 0; k < n; k++)
            {
                a[c, k] *= scale;
                b[c, k] *= scale;
            }

            for (int r = 0; r < n; r++)
            {
                double factor = a[r, c];
                if (r == c || factor == 0)
                {
                    continue;
                }

                for (int k = 0; k < n; k++)
                {
                    a[r, k] -= factor * a[c, k];
                    b[r, k] -= factor * b[c, k];
                }
            }
        }

        return b;
    }
}
