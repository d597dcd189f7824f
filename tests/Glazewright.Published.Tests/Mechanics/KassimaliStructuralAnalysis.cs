using Glazewright.Mechanics.Frames;
using static Glazewright.Published.Tests.Mechanics.FrameBuild;

namespace Glazewright.Published.Tests.Mechanics;

/// <summary>
/// Kassimali, Structural Analysis, 3rd ed., example 13.14: continuous beam, three spans of 20 ft, supports settle. The exact set
/// was computed with an independent stiffness program; the book's own set (read) rounds early. Units kip and inch.
/// </summary>
public class KassimaliStructuralAnalysis
{
    private static FrameSolution Solve()
    {
        FrameModel beam = Frame(
            [(0, 0), (240, 0), (480, 0), (720, 0)], [(0, 1), (1, 2), (2, 3)], 29000, 100, 7800,
            FrameSupport.Pinned(0),
            new FrameSupport(1, false, true, false, ForcedYM: -0.625),
            new FrameSupport(2, false, true, false, ForcedYM: -1.5),
            new FrameSupport(3, false, true, false, ForcedYM: -0.75));
        const double W = -2.0 / 12;
        return FrameAnalysis.FirstOrder(beam, On(
            new MemberLoad.Spread(0, SpreadDirection.UpPerLength, W, W),
            new MemberLoad.Spread(1, SpreadDirection.UpPerLength, W, W),
            new MemberLoad.Spread(2, SpreadDirection.UpPerLength, W, W))).OrThrow();
    }

    [Fact]
    public void Example_13_14_settled_beam_exact_set()
    {
        FrameSolution r = Solve();
        Near(-1.181, r.Reactions[0].UpN, 0.0005);
        Near(122.542, r.Reactions[1].UpN, 0.0005);
        Near(-61.540, r.Reactions[2].UpN, 0.0005);
        Near(60.180, r.Reactions[3].UpN, 0.0005);
    }

    // The book carries about three digits through differences of large numbers: 0.1 kip on reactions of 60 to 120.
    [Fact]
    public void Example_13_14_as_printed()
    {
        FrameSolution r = Solve();
        Near(-1.098, r.Reactions[0].UpN, 0.1);
        Near(122.373, r.Reactions[1].UpN, 0.2);
        Near(-61.451, r.Reactions[2].UpN, 0.1);
        Near(60.176, r.Reactions[3].UpN, 0.1);
    }
}
