using System.Runtime.CompilerServices;

namespace Glazewright.Science.Maths;

/// <summary>
/// A smooth curve for loops that need it to some digits only: straight pieces, 64 to an octave, from 1/1024 to 1024, found from the bits of x without a division.
/// The chords of a power between 0 and 1 lie below the curve by at most 8e-6 of it (|e (e − 1)| / (8 · 64²): 6.8e-6 for a cube root; test: OctaveTableTests). Continuous.
/// </summary>
/// <remarks>Only + − × and integer operations between the ends: the same bits on every processor.</remarks>
internal sealed class OctaveTable
{
    private const double Least = 1.0 / 1024;
    private const double Most = 1024.0;
    private const int DroppedBits = 46; // of 52: six bits stay, 64 pieces to an octave
    private const int Octaves = 20;

    private static readonly int First = (int)(BitConverter.DoubleToInt64Bits(Least) >> DroppedBits);

    private readonly Piece[] pieces = new Piece[Octaves * 64];
    private readonly Func<double, double> atTheEdges;

    /// <summary>Makes the table.</summary>
    /// <param name="curve">The curve from 1/1024 to 1024.</param>
    /// <param name="atTheEdges">What it is below and above, and for what is no number.</param>
    public OctaveTable(Func<double, double> curve, Func<double, double> atTheEdges)
    {
        this.atTheEdges = atTheEdges;
        for (int i = 0; i < pieces.Length; i++)
        {
            double from = Node(i), to = Node(i + 1), value = curve(from);
            pieces[i] = new Piece(value, (curve(to) - value) / (to - from));
        }
    }

    /// <summary>x to a power: below 1/1024 a straight line to 0, above 1024 what it is there, for NaN 0.</summary>
    /// <param name="exponent">Above 0, below 1.</param>
    public static OctaveTable OfPower(double exponent)
    {
        double atMost = Elementary.Pow(Most, exponent), slopeAtZero = Elementary.Pow(Least, exponent) / Least;
        return new OctaveTable(x => Elementary.Pow(x, exponent), x => x >= Most ? atMost : x > 0.0 ? x * slopeAtZero : 0.0);
    }

    /// <summary>The curve at x.</summary>
    /// <param name="x">Any number.</param>
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

        return atTheEdges(x);
    }

    private static double Node(int piece) => BitConverter.Int64BitsToDouble((long)(First + piece) << DroppedBits);

    private readonly record struct Piece(double Value, double Slope);
}
