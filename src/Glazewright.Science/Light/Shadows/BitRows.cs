using System.Numerics;

namespace Glazewright.Science.Light.Shadows;

/// <summary>
/// A flat picture of one bit a spot, filled with convex outlines line by line: a bit is set when its spot's middle is covered, so what overlaps counts
/// once. Kernels: no allocation after the making.
/// </summary>
internal sealed class BitRows
{
    private readonly ulong[] bits;
    private readonly double[] from;
    private readonly double[] to;

    internal BitRows(int lines, int words)
    {
        Lines = lines;
        Words = words;
        bits = new ulong[lines * words];
        from = new double[lines];
        to = new double[lines];
    }

    internal int Lines { get; }

    internal int Words { get; }

    /// <summary>True when nothing has been filled since the last clearing.</summary>
    internal bool IsEmpty { get; private set; } = true;

    /// <summary>First line that the outline last spanned covers.</summary>
    internal int FirstLine { get; private set; }

    /// <summary>The line after the last one.</summary>
    internal int EndLine { get; private set; }

    internal void Clear()
    {
        if (!IsEmpty)
        {
            Array.Clear(bits);
            IsEmpty = true;
        }
    }

    internal ulong Word(int line, int word) => bits[(line * Words) + word];

    internal ReadOnlySpan<ulong> Line(int line) => bits.AsSpan(line * Words, Words);

    /// <summary>Where a convex outline meets each line; corners as x, y pairs in spots and lines.</summary>
    /// <param name="corners">Either sense of turning.</param>
    /// <param name="phaseX">Place of a spot's middle in the spot, 0 to 1.</param>
    /// <param name="phaseY">Place of a line in its band, 0 to 1.</param>
    internal void Span(ReadOnlySpan<double> corners, double phaseX, double phaseY)
    {
        double least = double.PositiveInfinity;
        double most = double.NegativeInfinity;
        for (int i = 1; i < corners.Length; i += 2)
        {
            least = Math.Min(least, corners[i]);
            most = Math.Max(most, corners[i]);
        }

        FirstLine = (int)Math.Clamp(Math.Ceiling(least - phaseY), 0, Lines);
        EndLine = (int)Math.Clamp(Math.Ceiling(most - phaseY), FirstLine, Lines);
        for (int k = FirstLine; k < EndLine; k++)
        {
            from[k] = double.PositiveInfinity;
            to[k] = double.NegativeInfinity;
        }

        double ax = corners[^2] - phaseX;
        double ay = corners[^1] - phaseY;
        for (int i = 0; i < corners.Length; i += 2)
        {
            double bx = corners[i] - phaseX;
            double by = corners[i + 1] - phaseY;
            double lowX = ay <= by ? ax : bx;
            double lowY = Math.Min(ay, by);
            double highY = Math.Max(ay, by);
            if (highY > lowY)
            {
                double slope = (bx - ax) / (by - ay);
                int end = (int)Math.Min(Math.Ceiling(highY), EndLine);
                for (int k = (int)Math.Max(Math.Ceiling(lowY), FirstLine); k < end; k++)
                {
                    double x = lowX + ((k - lowY) * slope);
                    from[k] = Math.Min(from[k], x);
                    to[k] = Math.Max(to[k], x);
                }
            }

            ax = bx;
            ay = by;
        }
    }

    /// <summary>First spot of the spanned outline on a line.</summary>
    internal int FirstSpot(int line) => FirstSpot(line, 64 * Words);

    /// <summary>The same on a picture of another width.</summary>
    internal int FirstSpot(int line, int spots) => (int)Math.Clamp(Math.Ceiling(from[line]), 0, spots);

    /// <summary>The spot after its last one.</summary>
    internal int EndSpot(int line) => EndSpot(line, 64 * Words);

    /// <summary>The same on a picture of another width.</summary>
    internal int EndSpot(int line, int spots) => (int)Math.Clamp(Math.Ceiling(to[line]), 0, spots);

    /// <summary>Sets the spots of a convex outline.</summary>
    internal void Fill(ReadOnlySpan<double> corners, double phaseX, double phaseY)
    {
        Span(corners, phaseX, phaseY);
        for (int k = FirstLine; k < EndLine; k++)
        {
            int a = FirstSpot(k);
            int b = EndSpot(k);
            if (a >= b)
            {
                continue;
            }

            IsEmpty = false;
            int row = k * Words;
            int first = a >> 6;
            int last = (b - 1) >> 6;
            if (first == last)
            {
                bits[row + first] |= Mask(a & 63, ((b - 1) & 63) + 1);
                continue;
            }

            bits[row + first] |= ulong.MaxValue << (a & 63);
            for (int w = first + 1; w < last; w++)
            {
                bits[row + w] = ulong.MaxValue;
            }

            bits[row + last] |= ulong.MaxValue >> (63 - ((b - 1) & 63));
        }
    }

    /// <summary>Bits from one place (inclusive) to another (exclusive) of a word.</summary>
    internal static ulong Mask(int from, int to) => (ulong.MaxValue << from) & (ulong.MaxValue >> (64 - to));

    /// <summary>How many spots are set.</summary>
    internal int Count()
    {
        int sum = 0;
        foreach (ulong word in bits)
        {
            sum += BitOperations.PopCount(word);
        }

        return sum;
    }
}
