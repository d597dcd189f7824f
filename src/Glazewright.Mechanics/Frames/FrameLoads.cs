namespace Glazewright.Mechanics.Frames;

/// <summary>Which way a spread load points and which length it is counted on.</summary>
public enum SpreadDirection
{
    /// <summary>Along +y, per metre of member (own weight).</summary>
    UpPerLength,

    /// <summary>Along +y, per metre of the member's horizontal run (snow).</summary>
    UpPerRun,

    /// <summary>Along +x, per metre of member.</summary>
    AcrossPerLength,

    /// <summary>Along +x, per metre of the member's rise.</summary>
    AcrossPerRise,

    /// <summary>Square to the member, to the left of its direction, per metre of member (wind).</summary>
    Normal,

    /// <summary>Along the member from start to end, per metre of member.</summary>
    Along,
}

/// <summary>A load on a member: a closed set of cases.</summary>
public abstract record MemberLoad
{
    private MemberLoad()
    {
    }

    /// <summary>Index of the loaded member.</summary>
    public abstract int Member { get; init; }

    /// <summary>A load spread over a part of a member, varying evenly.</summary>
    /// <param name="Member">Index of the member.</param>
    /// <param name="Direction">Which way, on which length.</param>
    /// <param name="FromNPerM">Intensity where it starts, N/m.</param>
    /// <param name="ToNPerM">Intensity where it stops, N/m.</param>
    /// <param name="FromFraction">Where it starts, as a fraction of the member's length.</param>
    /// <param name="ToFraction">Where it stops, as a fraction of the member's length.</param>
    public sealed record Spread(
        int Member, SpreadDirection Direction, double FromNPerM, double ToNPerM, double FromFraction = 0, double ToFraction = 1)
        : MemberLoad
    {
        /// <inheritdoc/>
        public override int Member { get; init; } = Member;
    }

    /// <summary>A force and a moment at a point of a member.</summary>
    /// <param name="Member">Index of the member.</param>
    /// <param name="AtFraction">Where, as a fraction of the member's length.</param>
    /// <param name="AcrossN">Force along +x, N.</param>
    /// <param name="UpN">Force along +y, N.</param>
    /// <param name="MomentNm">Anticlockwise moment, N·m.</param>
    public sealed record Point(int Member, double AtFraction, double AcrossN, double UpN, double MomentNm = 0) : MemberLoad
    {
        /// <inheritdoc/>
        public override int Member { get; init; } = Member;
    }
}

/// <summary>A load at a joint.</summary>
/// <param name="Node">Index of the joint.</param>
/// <param name="AcrossN">Force along +x, N.</param>
/// <param name="UpN">Force along +y, N.</param>
/// <param name="MomentNm">Anticlockwise moment, N·m.</param>
public sealed record NodeLoad(int Node, double AcrossN, double UpN, double MomentNm = 0);

/// <summary>Loads that act together.</summary>
/// <param name="OnNodes">Loads at joints.</param>
/// <param name="OnMembers">Loads on members.</param>
public sealed record FrameLoading(IReadOnlyList<NodeLoad> OnNodes, IReadOnlyList<MemberLoad> OnMembers)
{
    /// <summary>No load at all.</summary>
    public static FrameLoading None { get; } = new([], []);

    /// <summary>These loads times a factor.</summary>
    /// <param name="factor">The factor; 0 gives no load.</param>
    public FrameLoading Times(double factor)
    {
        if (factor == 0)
        {
            return None;
        }

        var onNodes = new NodeLoad[OnNodes.Count];
        for (int i = 0; i < onNodes.Length; i++)
        {
            NodeLoad n = OnNodes[i];
            onNodes[i] = n with { AcrossN = n.AcrossN * factor, UpN = n.UpN * factor, MomentNm = n.MomentNm * factor };
        }

        var onMembers = new MemberLoad[OnMembers.Count];
        for (int i = 0; i < onMembers.Length; i++)
        {
            onMembers[i] = OnMembers[i] switch
            {
                MemberLoad.Spread s => s with { FromNPerM = s.FromNPerM * factor, ToNPerM = s.ToNPerM * factor },
                MemberLoad.Point p => p with { AcrossN = p.AcrossN * factor, UpN = p.UpN * factor, MomentNm = p.MomentNm * factor },
                _ => throw new InvalidOperationException("A member load of an unknown kind."),
            };
        }

        return new FrameLoading(onNodes, onMembers);
    }

    /// <summary>These loads and others together.</summary>
    /// <param name="other">The others.</param>
    public FrameLoading And(FrameLoading other) =>
        new([.. OnNodes, .. other.OnNodes], [.. OnMembers, .. other.OnMembers]);
}
