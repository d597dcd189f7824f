using Glazewright.Mechanics.Frames;

namespace Glazewright.Published.Tests.Mechanics;

/// <summary>Short ways to write frames down. Published cases keep their own units: the solver only needs them consistent.</summary>
internal static class FrameBuild
{
    internal static FrameModel Frame(
        (double X, double Y)[] nodes, (int A, int B)[] members, double e, double a, double i, params FrameSupport[] supports) =>
        new(
            [.. nodes.Select(n => new FrameNode(n.X, n.Y))],
            [.. members.Select(m => new FrameMember(m.A, m.B, e, a, i))],
            supports);

    internal static FrameLoading On(params NodeLoad[] loads) => new(loads, []);

    internal static FrameLoading On(params MemberLoad[] loads) => new([], loads);

    internal static void Near(double expected, double actual, double tolerance) =>
        Assert.True(Math.Abs(expected - actual) <= tolerance, $"expected {expected:R} ± {tolerance:R}, got {actual:R}");
}
