namespace Glazewright.Mechanics.Frames;

/// <summary>Forces and deflection at a point of a member.</summary>
/// <param name="AtM">Distance from the member's start, m.</param>
/// <param name="TensionN">Axial force, N; tension is positive.</param>
/// <param name="ShearN">Shear, N; positive pushes the start side to the left of the member's direction.</param>
/// <param name="MomentNm">Bending moment, N·m; positive stretches the right side of the member's direction (the underside of a member drawn left to right).</param>
/// <param name="OffsetM">Movement square to the member, to its left, m.</param>
/// <param name="BowM">That movement measured from the line between the moved ends, m.</param>
public sealed record MemberStation(double AtM, double TensionN, double ShearN, double MomentNm, double OffsetM, double BowM);

/// <summary>The six end forces on a member in its own axes (along from start to end; normal to the left of that).</summary>
/// <param name="StartAlongN">At the start, along, N.</param>
/// <param name="StartNormalN">At the start, normal, N.</param>
/// <param name="StartMomentNm">At the start, anticlockwise, N·m.</param>
/// <param name="EndAlongN">At the end, along, N.</param>
/// <param name="EndNormalN">At the end, normal, N.</param>
/// <param name="EndMomentNm">At the end, anticlockwise, N·m.</param>
public sealed record MemberEndForces(
    double StartAlongN, double StartNormalN, double StartMomentNm, double EndAlongN, double EndNormalN, double EndMomentNm);

/// <summary>A solved member.</summary>
public sealed class MemberResult
{
    private readonly DiagramPart[] parts;
    private readonly double startOffsetM;
    private readonly double chordSlopeRad;

    internal MemberResult(double lengthM, MemberEndForces ends, DiagramPart[] parts)
    {
        LengthM = lengthM;
        Ends = ends;
        this.parts = parts;
        startOffsetM = parts[0].OffsetM(0);
        chordSlopeRad = (parts[^1].OffsetM(parts[^1].LengthM) - startOffsetM) / lengthM;
    }

    /// <summary>Length, m.</summary>
    public double LengthM { get; }

    /// <summary>End forces in the member's axes.</summary>
    public MemberEndForces Ends { get; }

    /// <summary>Forces and deflection at a point; just after a point load that stands there.</summary>
    /// <param name="atM">Distance from the start, m, 0 to the length.</param>
    /// <exception cref="ArgumentOutOfRangeException">Off the member.</exception>
    public MemberStation At(double atM)
    {
        Guards.Require.Within(atM, 0, LengthM);
        int i = parts.Length - 1;
        while (i > 0 && parts[i].StartM > atM)
        {
            i--;
        }

        return Station(parts[i], atM - parts[i].StartM);
    }

    /// <summary>Every point where axial force, shear or moment can be extreme: ends, load edges (both sides), zero shear.</summary>
    public IEnumerable<MemberStation> Stations()
    {
        foreach (DiagramPart part in parts)
        {
            yield return Station(part, 0);
            foreach (double root in part.ZeroShear())
            {
                yield return Station(part, root);
            }

            yield return Station(part, part.LengthM);
        }
    }

    /// <summary>The station of largest moment, whichever its sign.</summary>
    public MemberStation LargestMoment() => Largest(Stations(), s => Math.Abs(s.MomentNm));

    /// <summary>The station where the member departs most from the line between its moved ends.</summary>
    public MemberStation LargestBow() => Largest(BowStations(), s => Math.Abs(s.BowM));

    private static MemberStation Largest(IEnumerable<MemberStation> stations, Func<MemberStation, double> size)
    {
        MemberStation? best = null;
        foreach (MemberStation s in stations)
        {
            if (best is null || size(s) > size(best))
            {
                best = s;
            }
        }

        return best!;
    }

    private IEnumerable<MemberStation> BowStations()
    {
        const int Looks = 8;
        foreach (DiagramPart part in parts)
        {
            yield return Station(part, 0);
            for (int i = 0; i < Looks; i++)
            {
                double low = part.LengthM * i / Looks;
                double high = part.LengthM * (i + 1) / Looks;
                double atLow = part.SlopeRad(low) - chordSlopeRad;
                if (atLow * (part.SlopeRad(high) - chordSlopeRad) < 0)
                {
                    for (int halving = 0; halving < 50; halving++)
                    {
                        double middle = (low + high) / 2;
                        bool sameSide = (part.SlopeRad(middle) - chordSlopeRad) * atLow > 0;
                        (low, high) = sameSide ? (middle, high) : (low, middle);
                    }

                    yield return Station(part, low);
                }
            }

            yield return Station(part, part.LengthM);
        }
    }

    private MemberStation Station(DiagramPart part, double s)
    {
        double atM = Math.Min(LengthM, part.StartM + s);
        double offsetM = part.OffsetM(s);
        return new MemberStation(
            atM, part.TensionN(s), part.ShearN(s), part.MomentNm(s), offsetM, offsetM - startOffsetM - chordSlopeRad * atM);
    }
}
