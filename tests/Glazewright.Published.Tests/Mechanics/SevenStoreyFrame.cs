using Glazewright.Mechanics.Frames;
using static Glazewright.Published.Tests.Mechanics.FrameBuild;

namespace Glazewright.Published.Tests.Mechanics;

/// <summary>
/// Seven-storey, two-bay frame with rigid floors: verification problem 1 of a general structural program's manual (1997), read in a
/// public verification script with its geometry. The published frame has floors that do not stretch: here each beam gets a very
/// large area, which leaves 1e-5 of difference. Units kip, inch.
/// </summary>
public class SevenStoreyFrame
{
    private static readonly double[] Storeys = [162, 162, 156, 156, 156, 156, 156];
    private static readonly (double A, double I)[] Outer = [W246, W246, W246, W211, W211, W176, W176];
    private static readonly (double A, double I)[] Inner = [W287, W287, W287, W246, W246, W211, W211];
    private static readonly double[] BeamInertia = [5120, 5120, 4020, 4020, 3330, 3330, 3330];

    private static (double A, double I) W176 => (51.7, 2150);

    private static (double A, double I) W211 => (62.1, 2670);

    private static (double A, double I) W246 => (72.3, 3230);

    private static (double A, double I) W287 => (84.4, 3910);

    [Fact]
    public void Static_push()
    {
        const double E = 29500;
        var nodes = new List<FrameNode>();
        double height = 0;
        for (int floor = 0; floor <= 7; floor++)
        {
            nodes.AddRange([new(0, height), new(360, height), new(720, height)]);
            height += floor < 7 ? Storeys[floor] : 0;
        }

        var members = new List<FrameMember>();
        for (int line = 0; line < 3; line++)
        {
            for (int storey = 0; storey < 7; storey++)
            {
                (double a, double i) = line == 1 ? Inner[storey] : Outer[storey];
                members.Add(new FrameMember(3 * storey + line, 3 * storey + 3 + line, E, a, i));
            }
        }

        for (int floor = 1; floor <= 7; floor++)
        {
            members.Add(new FrameMember(3 * floor, 3 * floor + 1, E, 1e8, BeamInertia[floor - 1]));
            members.Add(new FrameMember(3 * floor + 1, 3 * floor + 2, E, 1e8, BeamInertia[floor - 1]));
        }

        double[] pushK = [2.5, 5, 7.5, 10, 12.5, 15, 20];
        var loading = new FrameLoading([.. pushK.Select((k, i) => new NodeLoad(3 * (i + 1), k, 0))], []);
        var frame = new FrameModel(nodes, members, [FrameSupport.Fixed(0), FrameSupport.Fixed(1), FrameSupport.Fixed(2)]);
        FrameSolution r = FrameAnalysis.FirstOrder(frame, loading).OrThrow();

        // Half of the last printed digit.
        Near(1.45076, r.Movements[21].AcrossM, 0.000005);
        Near(69.99, Math.Abs(r.Reactions[0].UpN), 0.005);
        Near(2324.68, Math.Abs(r.Reactions[0].MomentNm), 0.005);
    }
}
