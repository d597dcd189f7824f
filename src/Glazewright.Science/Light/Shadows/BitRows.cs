using System.Runtime.CompilerServices;

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
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal void Span(ReadOnlySpan<double> corners, double phaseX, double phaseY)
    {
        double least = corners[1];
        double most = corners[1];
        for (int i = 3; i < corners.Length; i += 2)
        {
            double y = corners[i];
            least = y < least ? y : least;
            most = y > most ? y : most;
        }

        FirstLine = Held(least - phaseY, 0, Lines);
        EndLine = Held(most - phaseY, FirstLine, Lines);
        if (FirstLine == EndLine)
        {
            return;
        }

        Array.Fill(from, double.MaxValue, FirstLine, EndLine - FirstLine);
        Array.Fill(to, double.MinValue, FirstLine, EndLine - FirstLine);
        double ax = corners[^2] - phaseX;
        double ay = corners[^1] - phaseY;
        for (int i = 0; i < corners.Length; i += 2)
        {
            double bx = corners[i] - phaseX;
            double by = corners[i + 1] - phaseY;
            if (ay < by)
            {
                Edge(ax, ay, bx, by);
            }
            else if (by < ay)
            {
                Edge(bx, by, ax, ay);
            }

            ax = bx;
            ay = by;
        }
    }

    // One edge from its lower to its upper end.
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Edge(double lowX, double lowY, double highX, double highY)
    {
        int first = Held(lowY, FirstLine, EndLine);
        int end = Held(highY, first, EndLine);
        double slope = (highX - lowX) / (highY - lowY);
        double x = lowX + ((first - lowY) * slope);
        Span<double> left = from.AsSpan(first, end - first);
        Span<double> right = to.AsSpan(first, end - first);
        for (int k = 0; k < left.Length; k++)
        {
            left[k] = x < left[k] ? x : left[k];
            right[k] = x > right[k] ? x : right[k];
            x += slope;
        }
    }

    // The next whole number up, held between two others.
    private static int Held(double value, int low, int high) => value <= low ? low : value >= high ? high : (int)Math.Ceiling(value);

    /// <summary>First spot of the spanned outline on a line.</summary>
    internal int FirstSpot(int line) => FirstSpot(line, 64 * Words);

    /// <summary>The same on a picture of another width.</summary>
    internal int FirstSpot(int line, int spots) => Held(from[line], 0, spots);

    /// <summary>The spot after its last one.</summary>
    internal int EndSpot(int line) => EndSpot(line, 64 * Words);

    /// <summary>The same on a picture of another width.</summary>
    internal int EndSpot(int line, int spots) => Held(to[line], 0, spots);

    /// <summary>Sets the spots of a convex outline.</summary>
    internal void Fill(ReadOnlySpan<double> corners, double phaseX, double phaseY)
    {
        Span(corners, phaseX, phaseY);
        FillSpanned(0);
    }

    /// <summary>Sets the spots of the outline last spanned, shifted along the lines.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal void FillSpanned(double shiftSpots)
    {
        int spots = 64 * Words;
        int row = FirstLine * Words;
        IsEmpty &= FirstLine == EndLine;
        for (int k = FirstLine; k < EndLine; k++, row += Words)
        {
            int a = Held(from[k] + shiftSpots, 0, spots);
            int last = Held(to[k] + shiftSpots, 0, spots) - 1;
            if (a > last)
            {
                continue;
            }

            int firstWord = a >> 6;
            int lastWord = last >> 6;
            ulong head = ulong.MaxValue << (a & 63);
            ulong tail = ulong.MaxValue >> (63 - (last & 63));
            if (firstWord == lastWord)
            {
                bits[row + firstWord] |= head & tail;
                continue;
            }

            bits[row + firstWord] |= head;
            for (int w = firstWord + 1; w < lastWord; w++)
            {
                bits[row + w] = ulong.MaxValue;
            }

            bits[row + lastWord] |= tail;
        }
    }

    /// <summary>Bits from one place (inclusive) to another (exclusive) of a word.</summary>
    internal static ulong Mask(int from, int to) => (ulong.MaxValue << from) & (ulong.MaxValue >> (64 - to));
}
