namespace Glazewright.Mechanics.Frames;

/// <summary>A direction in which a joint can move.</summary>
public enum JointFreedom
{
    /// <summary>Across, +x.</summary>
    Across,

    /// <summary>Up, +y.</summary>
    Up,

    /// <summary>Rotation, anticlockwise.</summary>
    Rotation,
}

/// <summary>How far a joint moved.</summary>
/// <param name="AcrossM">Along +x, m.</param>
/// <param name="UpM">Along +y, m.</param>
/// <param name="RotationRad">Anticlockwise, rad (zero at a joint where every member is pinned).</param>
public sealed record JointMovement(double AcrossM, double UpM, double RotationRad);

/// <summary>What a support gives the frame.</summary>
/// <param name="Node">Index of the joint.</param>
/// <param name="AcrossN">Force along +x, N.</param>
/// <param name="UpN">Force along +y, N.</param>
/// <param name="MomentNm">Anticlockwise moment, N·m.</param>
public sealed record JointReaction(int Node, double AcrossN, double UpN, double MomentNm);

/// <summary>A solved frame.</summary>
/// <param name="Movements">Movement of each joint.</param>
/// <param name="Reactions">Reaction of each support, in the model's order.</param>
/// <param name="Members">Forces and bent line of each member.</param>
public sealed record FrameSolution(
    IReadOnlyList<JointMovement> Movements, IReadOnlyList<JointReaction> Reactions, IReadOnlyList<MemberResult> Members);

/// <summary>What came of an analysis: a closed set of cases.</summary>
public abstract record FrameOutcome
{
    private FrameOutcome()
    {
    }

    /// <summary>Solved.</summary>
    /// <param name="Result">The result.</param>
    public sealed record Solved(FrameSolution Result) : FrameOutcome;

    /// <summary>The frame is a mechanism, or its load is past its buckling load.</summary>
    /// <param name="Node">A joint that is free to run away.</param>
    /// <param name="Freedom">Which way.</param>
    public sealed record Unstable(int Node, JointFreedom Freedom) : FrameOutcome;

    /// <summary>The second-order steps did not settle, which happens close to the buckling load.</summary>
    /// <param name="Steps">Steps taken.</param>
    public sealed record Unsettled(int Steps) : FrameOutcome;

    /// <summary>The result, when solved.</summary>
    /// <exception cref="InvalidOperationException">Not solved.</exception>
    public FrameSolution OrThrow() => this is Solved s ? s.Result : throw new InvalidOperationException($"Frame not solved: {this}.");
}
