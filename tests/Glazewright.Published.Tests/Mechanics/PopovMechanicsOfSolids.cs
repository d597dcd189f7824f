using Glazewright.Mechanics.Frames;
using static Glazewright.Published.Tests.Mechanics.FrameBuild;

namespace Glazewright.Published.Tests.Mechanics;

/// <summary>Popov, Engineering Mechanics of Solids, example 2.14: three bars to one joint. Read at second hand.</summary>
public class PopovMechanicsOfSolids
{
    [Fact]
    public void Example_2_14_three_bars()
    {
        double out30 = 200 * Math.Tan(Math.PI / 6);
        var frame = new FrameModel(
            [new(-out30, 0), new(0, 0), new(out30, 0), new(0, -200)],
            [
                new(0, 3, 3000, 10, 1, true, true), new(1, 3, 3000, 10, 1, true, true), new(2, 3, 3000, 10, 1, true, true),
            ],
            [FrameSupport.Pinned(0), FrameSupport.Pinned(1), FrameSupport.Pinned(2)]);
        FrameSolution r = FrameAnalysis.FirstOrder(frame, On(new NodeLoad(3, 0, -200))).OrThrow();
        Near(86.9929, r.Members[1].At(0).TensionN, 0.00005);
        Near(65.2447, r.Members[0].At(0).TensionN, 0.00005);
        Near(-0.579953, r.Movements[3].UpM, 0.0000005);
    }
}
