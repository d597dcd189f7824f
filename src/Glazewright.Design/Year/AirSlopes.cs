using Glazewright.Design.Program;

namespace Glazewright.Design.Year;

/// <summary>
/// How fast air and its humidity went when the same equipment last ran: what the next part of a minute is expected to do, also right after a switch, when the part before tells nothing.
/// </summary>
internal sealed class AirSlopes
{
    private const int Kept = 64;

    private readonly (double AirKPerS, double PercentPerS)[] kept = new (double, double)[Kept];

    /// <summary>How they last went, K/s and %/s; still where that has not been seen.</summary>
    /// <param name="soon">Tells what runs.</param>
    public ref (double AirKPerS, double PercentPerS) With(in Outlook soon) => ref kept[Place(in soon)];

    /// <summary>Nothing has been seen.</summary>
    public void Forget() => Array.Clear(kept);

    // What shares a place by chance is a poor guess, no more; Fibonacci hashing (Knuth, The Art of Computer Programming 3, 6.4).
    private static int Place(in Outlook soon) => (int)((((soon.Running << 1) | (soon.Sprays ? 1UL : 0)) * 0x9E37_79B9_7F4A_7C15UL) >> 58);
}
