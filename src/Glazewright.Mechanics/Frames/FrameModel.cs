namespace Glazewright.Mechanics.Frames;

/// <summary>A joint of a plane frame. x runs across, y up.</summary>
/// <param name="XM">Across, m.</param>
/// <param name="YM">Up, m.</param>
public sealed record FrameNode(double XM, double YM);

/// <summary>A straight prismatic member from one joint to another; bending and axial strain, no shear strain.</summary>
/// <param name="Start">Index of the joint where its local axis starts.</param>
/// <param name="End">Index of the joint where it ends.</param>
/// <param name="ElasticPa">Young's modulus, Pa.</param>
/// <param name="AreaM2">Area, m².</param>
/// <param name="InertiaM4">Second moment in the frame's plane, m⁴.</param>
/// <param name="PinnedAtStart">True when its start cannot take a moment.</param>
/// <param name="PinnedAtEnd">True when its end cannot take a moment.</param>
public sealed record FrameMember(
    int Start, int End, double ElasticPa, double AreaM2, double InertiaM4, bool PinnedAtStart = false, bool PinnedAtEnd = false);

/// <summary>What holds a joint, and how far it is forced to move there.</summary>
/// <param name="Node">Index of the joint.</param>
/// <param name="HoldsX">Held across.</param>
/// <param name="HoldsY">Held up and down.</param>
/// <param name="HoldsRotation">Held against rotation.</param>
/// <param name="ForcedXM">Forced movement across, m, where held.</param>
/// <param name="ForcedYM">Forced movement up, m, where held (a settlement is negative).</param>
/// <param name="ForcedRad">Forced rotation, rad, anticlockwise, where held.</param>
public sealed record FrameSupport(
    int Node, bool HoldsX, bool HoldsY, bool HoldsRotation, double ForcedXM = 0, double ForcedYM = 0, double ForcedRad = 0)
{
    /// <summary>A pin.</summary>
    public static FrameSupport Pinned(int node) => new(node, true, true, false);

    /// <summary>A fixed base.</summary>
    public static FrameSupport Fixed(int node) => new(node, true, true, true);
}

/// <summary>A plane frame: joints, members and supports.</summary>
/// <param name="Nodes">The joints.</param>
/// <param name="Members">The members.</param>
/// <param name="Supports">The supports, at most one a joint.</param>
public sealed record FrameModel(
    IReadOnlyList<FrameNode> Nodes, IReadOnlyList<FrameMember> Members, IReadOnlyList<FrameSupport> Supports)
{
    /// <summary>Length of a member, m.</summary>
    public double LengthM(int member)
    {
        FrameNode a = Nodes[Members[member].Start];
        FrameNode b = Nodes[Members[member].End];
        return Math.Sqrt((b.XM - a.XM) * (b.XM - a.XM) + (b.YM - a.YM) * (b.YM - a.YM));
    }
}
