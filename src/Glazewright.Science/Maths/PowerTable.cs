using System.Runtime.CompilerServices;

namespace Glazewright.Science.Maths;

/// <summary>
/// x to a fixed power between 0 and 1 for loops that need it to some digits only: straight pieces, 64 to an octave, from 1/1024 to 1024, found from the bits of x without a division.
/// The chords lie below the curve by at most 8e-6 of it (|e (e − 1)| / (8 · 64²): 6.8e-6 for a cube root; test: PowerTableTests). Continuous and rising.
/// </summary>
/// <remarks>Only + − × and integer operations: the same bits on every processor. Below 1/1024 a straight line to 0; above 1024 the power at 1024; NaN gives 0.</remarks>
internal sealed class PowerTable
{
    private const double Least = 1.0 / 1024;
    private const double Most = 1024.0;
    private const int DroppedBits = 46; // of 52: six bits stay, 64 pieces to an octave
    private const int Octaves = 20;

    private static readonly int First = (int)(BitConverter.DoubleToInt64Bits(Least) >> DroppedBits);

    private readonly Piece[] pieces = new Piece[Octaves * 64];
    private readonly double atMost, slopeAtZero;

    /// <summary>Makes the table.</summary>
    /// <param name="exponent">Above 0, below 1.</param>
    public PowerTable(double exponent)
    {
        for (int i = 0; i < pieces.Length; i++)
        {
            double from = Node(i), to = Node(i + 1), value = Elementary.Pow(from, exponent);
            pieces[i] = new Piece(value, (Elementary.Pow(to, exponent) - value) / (to - from));
        }

        atMost = Elementary.Pow(Most, exponent);
        slopeAtZero = pieces[0].Value / Least;
    }

    /// <summary>The power of x.</summary>
    /// <param name="x">Any number, not negative for a meaning.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public double Of(double x)
    {
        long bits = BitConverter.DoubleToInt64Bits(x);
        uint at = (uint)((int)(bits >> DroppedBits) - First);
        Piece[] all = pieces;
        if (at < (uint)all.Length)
        {
            ref readonly Piece piece = ref all[at];
            return piece.Value + piece.Slope * (x - BitConverter.Int64BitsToDouble(bits >> DroppedBits << DroppedBits));
        }

        return AtTheEdges(x);
    }

    private double AtTheEdges(double x) => x >= Most ? atMost : x > 0.0 ? x * slopeAtZero : 0.0;

    private static double Node(int piece) => BitConverter.Int64BitsToDouble((long)(First + piece) << DroppedBits);

    private readonly record struct Piece(double Value, double Slope);
}
