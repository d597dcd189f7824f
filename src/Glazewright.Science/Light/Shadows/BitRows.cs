using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace Glazewright.Science.Light.Shadows;

/// <summary>
/// A flat picture of one bit a spot, filled with convex outlines line by line: a bit is set when its spot's middle is covered, so what overlaps counts
/// once. Kernels: no allocation after the making.
/// </summary>
internal sealed class BitRows
{
    // Stretches below this are set in two words: rounded up at both ends, they stay within 63 spots.
    private const double NarrowSpots = 62.0;

    // Words after the last line: a narrow stretch is set in two words, whether it reaches the second or not.
    private const int Spare = 2;

    private readonly ulong[] bits;
    private readonly double[] from;
    private readonly double[] to;

    internal BitRows(int lines, int words)
    {
        Lines = lines;
        Words = words;
        bits = new ulong[(lines * words) + Spare];
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

    /// <summary>Takes over the spots of a picture of the same size.</summary>
    internal void CopyFrom(BitRows other)
    {
        other.bits.CopyTo(bits, 0);
        IsEmpty = other.IsEmpty;
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
        FillSpanned([0.0]);
    }

    /// <summary>Sets the spots of the outline last spanned, once for each shift along the lines.</summary>
    /// <param name="shiftsSpots">In spots.</param>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal void FillSpanned(ReadOnlySpan<double> shiftsSpots)
    {
        IsEmpty &= FirstLine == EndLine;
        var spots = Vector256.Create(64.0 * Words);
        ref double shifts = ref MemoryMarshal.GetReference(shiftsSpots);
        for (int k = FirstLine; k < EndLine; k++)
        {
            double left = from[k];
            double right = to[k];
            if (left > right)
            {
                continue;
            }

            ref ulong row = ref bits[k * Words];
            bool narrow = right - left < NarrowSpots;
            int i = 0;
            for (; i + 4 <= shiftsSpots.Length; i += 4)
            {
                var shift = Vector256.LoadUnsafe(ref shifts, (nuint)i);
                Vector256<long> a = Held(Vector256.Create(left) + shift, spots);
                Vector256<long> b = Held(Vector256.Create(right) + shift, spots);
                if (narrow)
                {
                    SetNarrow(ref row, (uint)a.GetElement(0), (int)b.GetElement(0));
                    SetNarrow(ref row, (uint)a.GetElement(1), (int)b.GetElement(1));
                    SetNarrow(ref row, (uint)a.GetElement(2), (int)b.GetElement(2));
                    SetNarrow(ref row, (uint)a.GetElement(3), (int)b.GetElement(3));
                    continue;
                }

                Set(ref row, (int)a.GetElement(0), (int)b.GetElement(0));
                Set(ref row, (int)a.GetElement(1), (int)b.GetElement(1));
                Set(ref row, (int)a.GetElement(2), (int)b.GetElement(2));
                Set(ref row, (int)a.GetElement(3), (int)b.GetElement(3));
            }

            for (; i < shiftsSpots.Length; i++)
            {
                double shift = Unsafe.Add(ref shifts, i);
                Set(ref row, Held(left + shift, 0, 64 * Words), Held(right + shift, 0, 64 * Words));
            }
        }
    }

    // Four at a time, as whole numbers in the low half of each: a number from 0 up, added to 2^52, stands in the last bits as it is.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector256<long> Held(Vector256<double> value, Vector256<double> high) =>
        (Vector256.Ceiling(Vector256.Min(Vector256.Max(value, Vector256<double>.Zero), high)) + Vector256.Create(4503599627370496.0)).AsInt64();

    // The same for a stretch of 63 spots at most, without a question on the way: bars are a few spots wide, and where they lie no processor can guess.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static void SetNarrow(ref ulong row, uint from, int to)
    {
        ulong stretch = (1UL << (to - (int)from)) - 1;
        int at = (int)(from & 63);
        ref ulong first = ref Unsafe.Add(ref row, from >> 6);
        first |= stretch << at;
        Unsafe.Add(ref first, 1) |= stretch >> 1 >> (63 - at);
    }

    // Spots from one (inclusive) to another (exclusive) of a row.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static void Set(ref ulong row, int from, int to)
    {
        int last = to - 1;
        if (from > last)
        {
            return;
        }

        int firstWord = from >> 6;
        int lastWord = last >> 6;
        ulong head = ulong.MaxValue << (from & 63);
        ulong tail = ulong.MaxValue >> (63 - (last & 63));
        if (firstWord == lastWord)
        {
            Unsafe.Add(ref row, firstWord) |= head & tail;
            return;
        }

        Unsafe.Add(ref row, firstWord) |= head;
        for (int w = firstWord + 1; w < lastWord; w++)
        {
            Unsafe.Add(ref row, w) = ulong.MaxValue;
        }

        Unsafe.Add(ref row, lastWord) |= tail;
    }

    /// <summary>Bits from one place (inclusive) to another (exclusive) of a word.</summary>
    internal static ulong Mask(int from, int to) => (ulong.MaxValue << from) & (ulong.MaxValue >> (64 - to));
}
