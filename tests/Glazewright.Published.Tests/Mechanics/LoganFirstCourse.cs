using Glazewright.Mechanics.Frames;
using static Glazewright.Published.Tests.Mechanics.FrameBuild;

namespace Glazewright.Published.Tests.Mechanics;

/// <summary>
/// Logan, A First Course in the Finite Element Method, 4th ed., problem 5.30: a pitched frame with fixed bases. Numbers read at
/// second hand in a public test of an open frame program. Units kip and inch.
/// </summary>
public class LoganFirstCourse
{
    [Fact]
    public void Problem_5_30_fixed_gable()
    {
        FrameModel frame = Frame(
            [(0, 0), (0, 360), (180, 480), (420, 480), (600, 360), (600, 0)],
            [(0, 1), (1, 2), (2, 3), (3, 4), (4, 5)], 30000, 12, 200, FrameSupport.Fixed(0), FrameSupport.Fixed(5));
        FrameSolution r = FrameAnalysis.FirstOrder(frame, On(new NodeLoad(2, 0, -30), new NodeLoad(3, 0, -30))).OrThrow();

        // Half of the last printed digit.
        Near(11.6877, r.Reactions[0].AcrossN, 0.00005);
        Near(-11.6877, r.Reactions[1].AcrossN, 0.00005);
        Near(30, r.Reactions[0].UpN, 1e-9);
        Near(1810.0745, Math.Abs(r.Reactions[0].MomentNm), 0.00005);
        Near(-6.66676, r.Movements[2].UpM, 0.000005);
        Near(0.0320, Math.Abs(r.Movements[2].RotationRad), 0.00005);
    }
}
