using Glazewright.Mechanics.Frames;
using static Glazewright.Published.Tests.Mechanics.FrameBuild;

namespace Glazewright.Published.Tests.Mechanics;

/// <summary>
/// Second-order benchmarks. Case 1: AISC 360-16 Commentary C2.1, pin-ended W14×48 with lateral load (values read, bending
/// only). Cantilever: AISC Design Guide 25, prismatic member, closed form (formula read at second hand, numbers computed from it). Units kip, inch.
/// </summary>
public class AiscBenchmarkColumns
{
    // The closed form of the same case gives 268.89, 313.52, 375.41 and 0.22460, 0.26106, 0.31159: the print rounds some and cuts others.
    // So the closed form is met to 150 ppm (a sine in eight cubic pieces), the print to one unit of its last digit.
    [Theory]
    [InlineData(0, 235, 0.197), InlineData(150, 269, 0.224), InlineData(300, 313, 0.261), InlineData(450, 375, 0.311)]
    public void Commentary_case_1(double axialK, double momentKIn, double deflectionIn)
    {
        const double E = 29000, I = 484, L = 336, W = 0.2 / 12;
        FrameModel column = Frame(
            [(0, 0), (L, 0)], [(0, 1)], E, 1e4, I, FrameSupport.Pinned(0), new FrameSupport(1, false, true, false));
        var loading = new FrameLoading(
            [new NodeLoad(1, -axialK, 0)], [new MemberLoad.Spread(0, SpreadDirection.UpPerLength, -W, -W)]);
        MemberResult m = FrameAnalysis.SecondOrder(column, loading, 8).OrThrow().Members[0];
        double moment = m.LargestMoment().MomentNm;
        double bow = Math.Abs(m.LargestBow().BowM);

        double u = L / 2 * Math.Sqrt(axialK / (E * I));
        double secant = 1 / Math.Cos(u);
        double closedMoment = W * L * L / 8 * (u == 0 ? 1 : 2 * (secant - 1) / (u * u));
        double closedBow = 5 * W * L * L * L * L / (384 * E * I) * (u == 0 ? 1 : 12 * (2 * secant - u * u - 2) / (5 * u * u * u * u));
        Near(closedMoment, moment, 150e-6 * closedMoment);
        Near(closedBow, bow, 150e-6 * closedBow);
        Near(momentKIn, moment, 1);
        Near(deflectionIn, bow, 0.001);
    }

    [Theory]
    [InlineData(0.0, 0.3957, 1960), InlineData(0.1, 0.4391, 2138.9), InlineData(0.2, 0.4933, 2361.9)]
    [InlineData(0.3, 0.5630, 2648.1), InlineData(0.4, 0.6560, 3028.9), InlineData(0.5, 0.7860, 3561.0)]
    [InlineData(0.6, 0.9811, 4358.0), InlineData(0.67, 1.1879, 5202.3)]
    public void Design_Guide_25_cantilever(double alpha, double tipIn, double baseKIn)
    {
        const double E = 29500, I = 2150, L = 196, H = 10;
        double axialK = alpha * Math.PI * Math.PI * E * I / (L * L) / 4;
        FrameModel column = Frame([(0, 0), (0, L)], [(0, 1)], E, 1e7, I, FrameSupport.Fixed(0));
        FrameSolution r = FrameAnalysis.SecondOrder(column, On(new NodeLoad(1, H, -axialK)), 8).OrThrow();

        // Half of the last printed digit, and 20 ppm for eight pieces of a curve that is a sine.
        Near(tipIn, r.Movements[1].AcrossM, 0.00005 + 20e-6 * tipIn);
        Near(baseKIn, Math.Abs(r.Reactions[0].MomentNm), 0.05 + 20e-6 * baseKIn);
    }

    [Fact]
    public void Past_the_Euler_load_the_frame_is_unstable()
    {
        const double E = 29500, I = 2150, L = 196;
        double eulerK = Math.PI * Math.PI * E * I / (L * L) / 4;
        FrameModel column = Frame([(0, 0), (0, L)], [(0, 1)], E, 1e7, I, FrameSupport.Fixed(0));
        Assert.IsType<FrameOutcome.Solved>(FrameAnalysis.SecondOrder(column, On(new NodeLoad(1, 10, -0.99 * eulerK)), 8));
        Assert.IsType<FrameOutcome.Unstable>(FrameAnalysis.SecondOrder(column, On(new NodeLoad(1, 10, -1.01 * eulerK)), 8));
    }
}
