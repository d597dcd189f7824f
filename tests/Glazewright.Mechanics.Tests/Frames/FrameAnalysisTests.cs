using CsCheck;
using Glazewright.Mechanics.Frames;

namespace Glazewright.Mechanics.Tests.Frames;

public class FrameAnalysisTests
{
    private static FrameSolution Solve(RandomGable g) => FrameAnalysis.FirstOrder(g.Model, g.Loading).OrThrow();

    private static bool Close(double a, double b, double scale, double tolerance = 1e-7) => Math.Abs(a - b) <= tolerance * (scale + 1);

    [Fact]
    public void Reactions_hold_the_loads() => RandomGable.Any.Sample(g =>
    {
        FrameSolution r = Solve(g);
        (double across, double up, double moment) = g.Resultant();
        double sumX = 0, sumY = 0, sumM = 0;
        foreach (JointReaction reaction in r.Reactions)
        {
            FrameNode n = g.Model.Nodes[reaction.Node];
            sumX += reaction.AcrossN;
            sumY += reaction.UpN;
            sumM += reaction.MomentNm + n.XM * reaction.UpN - n.YM * reaction.AcrossN;
        }

        // The slices of a spread that varies evenly leave 1e-5 of its moment.
        return Close(across, -sumX, 1e4, 1e-6) && Close(up, -sumY, 1e4, 1e-6) && Close(moment, -sumM, 1e5, 1e-5);
    }, iter: 200);

    [Fact]
    public void Twice_the_load_gives_twice_the_moment() => RandomGable.Any.Sample(g =>
    {
        FrameSolution one = Solve(g);
        FrameSolution two = Solve(g with { Loading = g.Loading.Times(2) });
        return one.Members.Zip(two.Members).All(p =>
            Close(2 * p.First.At(p.First.LengthM / 3).MomentNm, p.Second.At(p.First.LengthM / 3).MomentNm, 1e4));
    }, iter: 100);

    [Fact]
    public void Loads_add_up() => Gen.Select(RandomGable.Any, Gen.Double[-2, 2]).Sample((g, factor) =>
    {
        var first = new FrameLoading(g.Loading.OnNodes, []);
        var second = new FrameLoading([], g.Loading.OnMembers).Times(factor);
        IReadOnlyList<FrameOutcome> parts = FrameAnalysis.FirstOrder(g.Model, [first, second, first.And(second)]);
        for (int n = 0; n < g.Model.Nodes.Count; n++)
        {
            double sum = parts[0].OrThrow().Movements[n].UpM + parts[1].OrThrow().Movements[n].UpM;
            if (!Close(sum, parts[2].OrThrow().Movements[n].UpM, 1, 1e-8))
            {
                return false;
            }
        }

        return true;
    }, iter: 100);

    [Fact]
    public void The_mirrored_frame_moves_mirrored() => RandomGable.Any.Sample(g =>
    {
        FrameSolution a = Solve(g);
        FrameSolution b = Solve(g.Mirrored());
        return a.Movements.Zip(b.Movements).All(p =>
                Close(p.First.AcrossM, -p.Second.AcrossM, 1, 1e-8) && Close(p.First.UpM, p.Second.UpM, 1, 1e-8))
            && a.Members.Zip(b.Members).All(p => Close(
                Math.Abs(p.First.LargestMoment().MomentNm), Math.Abs(p.Second.LargestMoment().MomentNm), 1e4));
    }, iter: 100);

    // Betti: the work of one loading on the movements of another is the same both ways round.
    [Fact]
    public void Work_is_reciprocal() => Gen.Select(RandomGable.Any, Gen.Double[-2000, 2000].Array[4]).Sample((g, f) =>
    {
        NodeLoad[] p = [new(1, f[0], f[1])];
        NodeLoad[] q = [new(3, f[2], f[3])];
        IReadOnlyList<FrameOutcome> r = FrameAnalysis.FirstOrder(g.Model, [new FrameLoading(p, []), new FrameLoading(q, [])]);
        JointMovement atQ = r[0].OrThrow().Movements[3];
        JointMovement atP = r[1].OrThrow().Movements[1];
        return Close(f[2] * atQ.AcrossM + f[3] * atQ.UpM, f[0] * atP.AcrossM + f[1] * atP.UpM, 10, 1e-7);
    }, iter: 100);

    [Fact]
    public void Cutting_members_in_pieces_changes_nothing_at_first_order() => RandomGable.Any.Sample(g =>
    {
        FrameSolution whole = Solve(g);
        Refinement refinement = Refinement.Split(g.Model, 3);
        FrameSolution fine = FrameAnalysis.FirstOrder(refinement.Fine, refinement.Split(g.Loading)).OrThrow();
        return whole.Movements.Zip(fine.Movements).All(p => Close(p.First.UpM, p.Second.UpM, 1, 1e-8))
            && whole.Members.Select((m, i) => (m, i)).All(x =>
                Close(x.m.At(x.m.LengthM / 3).OffsetM, fine.Members[3 * x.i].At(fine.Members[3 * x.i].LengthM).OffsetM, 1, 1e-8));
    }, iter: 100);

    [Fact]
    public void A_diagram_ends_where_the_end_forces_say() => RandomGable.Any.Sample(g => Solve(g).Members.All(m =>
    {
        MemberStation end = m.Stations().Last();
        return Close(end.MomentNm, m.Ends.EndMomentNm, 1e4) && Close(end.ShearN, -m.Ends.EndNormalN, 1e4)
            && Close(end.TensionN, m.Ends.EndAlongN, 1e4) && Close(end.BowM, 0, 1, 1e-9);
    }), iter: 200);

    [Fact]
    public void Light_load_makes_second_order_first_order() => RandomGable.Any.Sample(g =>
    {
        FrameLoading light = g.Loading.Times(1e-6);
        FrameSolution a = FrameAnalysis.FirstOrder(g.Model, light).OrThrow();
        FrameSolution b = FrameAnalysis.SecondOrder(g.Model, light).OrThrow();
        return a.Movements.Zip(b.Movements).All(p => Close(p.First.AcrossM, p.Second.AcrossM, 1e-3, 1e-8));
    }, iter: 50);

    [Fact]
    public void Squashing_columns_sways_the_frame_more()
    {
        var frame = new FrameModel(
            [new(0, 0), new(0, 3), new(6, 3), new(6, 0)],
            [new(0, 1, 2e11, 1e-3, 2e-6), new(1, 2, 2e11, 1e-3, 2e-6), new(2, 3, 2e11, 1e-3, 2e-6)],
            [FrameSupport.Pinned(0), FrameSupport.Pinned(3)]);
        var loading = new FrameLoading([new NodeLoad(1, 1000, -20_000), new NodeLoad(2, 0, -20_000)], []);
        double first = FrameAnalysis.FirstOrder(frame, loading).OrThrow().Movements[1].AcrossM;
        double second = FrameAnalysis.SecondOrder(frame, loading).OrThrow().Movements[1].AcrossM;
        Assert.InRange(second / first, 1.05, 2);
    }

    [Fact]
    public void A_mechanism_is_told_not_solved()
    {
        var fourBar = new FrameModel(
            [new(0, 0), new(0, 3), new(6, 3), new(6, 0)],
            [new(0, 1, 2e11, 1e-3, 2e-6, false, true), new(1, 2, 2e11, 1e-3, 2e-6, true, true), new(2, 3, 2e11, 1e-3, 2e-6, true, false)],
            [FrameSupport.Pinned(0), FrameSupport.Pinned(3)]);
        FrameOutcome outcome = FrameAnalysis.FirstOrder(fourBar, new FrameLoading([new NodeLoad(1, 1, 0)], []));
        Assert.IsType<FrameOutcome.Unstable>(outcome);
    }

    [Fact]
    public void Nonsense_is_refused()
    {
        var frame = new FrameModel(
            [new(0, 0), new(1, 0)], [new(0, 1, 1, 1, 1)], [FrameSupport.Fixed(0)]);
        Assert.Throws<ArgumentOutOfRangeException>(() => FrameAnalysis.FirstOrder(frame, new FrameLoading([new NodeLoad(2, 1, 0)], [])));
        Assert.Throws<ArgumentOutOfRangeException>(() => FrameAnalysis.FirstOrder(frame, new FrameLoading([new NodeLoad(1, double.NaN, 0)], [])));
        Assert.Throws<ArgumentOutOfRangeException>(() => FrameAnalysis.FirstOrder(
            frame with { Nodes = [new(0, 0), new(0, 0)] }, FrameLoading.None));
        Assert.Throws<ArgumentException>(() => FrameAnalysis.FirstOrder(
            frame with { Supports = [FrameSupport.Fixed(0), FrameSupport.Pinned(0)] }, FrameLoading.None));
        var pinned = new FrameModel(
            [new(0, 0), new(1, 0), new(0, 1)],
            [new(0, 1, 1, 1, 1, true, true), new(2, 1, 1, 1, 1, true, true)], [FrameSupport.Pinned(0), FrameSupport.Pinned(2)]);
        Assert.Throws<ArgumentException>(() => FrameAnalysis.FirstOrder(pinned, new FrameLoading([new NodeLoad(1, 0, 0, 5)], [])));
    }

    [Fact]
    public void No_load_moves_nothing()
    {
        var frame = new FrameModel([new(0, 0), new(1, 0)], [new(0, 1, 1e9, 1e-3, 1e-6)], [FrameSupport.Fixed(0)]);
        FrameSolution r = FrameAnalysis.SecondOrder(frame, FrameLoading.None).OrThrow();
        Assert.Equal(0, r.Movements[1].UpM);
        Assert.Equal(0, r.Members[0].LargestBow().BowM);
    }
}
