using BenchmarkDotNet.Attributes;
using Glazewright.Mechanics.Frames;

namespace Glazewright.Bench;

/// <summary>The frame solver on a pinned gable with collar tie: the loop the frame stage runs for every combination.</summary>
[MemoryDiagnoser]
public class FrameBench
{
    private readonly FrameModel frame = new(
        [new(0, 0), new(0, 2.3), new(5, 4.8), new(8, 2.6), new(8, 0), new(3, 3.8), new(6, 4.07)],
        [
            new(0, 1, 2e11, 1e-3, 2e-6), new(1, 5, 2e11, 1e-3, 2e-6), new(5, 2, 2e11, 1e-3, 2e-6), new(2, 6, 2e11, 1e-3, 2e-6), new(6, 3, 2e11, 1e-3, 2e-6),
            new(3, 4, 2e11, 1e-3, 2e-6), new(5, 6, 2e11, 1e-3, 2e-6, true, true),
        ],
        [FrameSupport.Pinned(0), FrameSupport.Pinned(4)]);

    private readonly FrameLoading loading = new(
        [],
        [.. Enumerable.Range(1, 4).Select(m => (MemberLoad)new MemberLoad.Spread(m, SpreadDirection.UpPerRun, -3000, -3000))]);

    /// <summary>First order.</summary>
    [Benchmark]
    public FrameOutcome FirstOrder() => FrameAnalysis.FirstOrder(frame, loading);

    /// <summary>Second order, two pieces a member.</summary>
    [Benchmark]
    public FrameOutcome SecondOrder() => FrameAnalysis.SecondOrder(frame, loading, 2);
}
