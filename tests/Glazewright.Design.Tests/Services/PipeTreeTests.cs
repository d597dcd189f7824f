using CsCheck;
using Glazewright.Design.Form;
using Glazewright.Design.Services;

namespace Glazewright.Design.Tests.Services;

public class PipeTreeTests
{
    // Points by the millimetre: the tree takes what is nearer than a thousandth of that for one place.
    private static readonly Gen<Point2> AnyPoint = Gen.Select(Gen.Int[-40_000, 40_000], Gen.Int[-40_000, 40_000], (x, y) => new Point2(x / 1000.0, y / 1000.0));

    private static double Flat(Point2 a, Point2 b) => Math.Abs(a.UM - b.UM) + Math.Abs(a.VM - b.VM);

    // Bounds of nature: no run is shorter than the way along the walls, and branching never takes more pipe than a pipe of its own for each.
    [Fact]
    public void Every_point_is_reached_along_the_walls_and_branches_save_pipe() => Gen.Select(AnyPoint, AnyPoint.Array[1, 12], Gen.Bool).Sample((root, points, alongFirst) =>
    {
        PipeTree tree = new(root);
        int[] nodes = [.. points.Select((p, i) => tree.Join(p, "", 0, alongFirst, $"L{i}"))];
        var pieces = tree.Pieces().ToArray();
        for (int i = 0; i < points.Length; i++)
        {
            Assert.True(tree.RunM(nodes[i]) >= Flat(root, points[i]) - 1e-9);
            Assert.Equal([$"L{i}"], tree.Lines(nodes[i]));
        }

        Assert.True(pieces.Sum(p => p.LengthM) <= points.Sum(p => Flat(root, p)) + 1e-9);
        Assert.True(pieces.Sum(p => p.LengthM) >= points.Max(p => Flat(root, p)) - 1e-9);
        Assert.All(pieces, p => Assert.Equal(p.LengthM, p.Way.Zip(p.Way.Skip(1)).Sum(s => Flat(s.First, s.Second)), 1e-9));
        Assert.All(pieces.SelectMany(p => p.Way.Zip(p.Way.Skip(1))), s => Assert.True(Math.Abs(s.First.UM - s.Second.UM) < 2e-6 || Math.Abs(s.First.VM - s.Second.VM) < 2e-6));

        // What leaves the root is all there is.
        Assert.Equal(points.Length, pieces.Where(p => Flat(p.Way[0], root) < 1e-9).SelectMany(p => p.Lines).Concat(points.Select((p, i) => (p, i)).Where(p => Flat(p.p, root) < 1e-9).Select(p => $"L{p.i}")).Distinct().Count());
    });

    // By hand: 10 m along, then a branch 4 m up in its middle: 14 m of pipe; the branch's run is 5 + 4.
    [Fact]
    public void A_branch_leaves_the_pipe_where_it_is_nearest()
    {
        PipeTree tree = new(new Point2(0, 0));
        int end = tree.Join(new Point2(10, 0), "A", 0, true, "end");
        int branch = tree.Join(new Point2(5, 4), "A", 0, true, "branch", riseM: 2);
        Assert.Equal((10, 11), (tree.RunM(end), tree.RunM(branch)));
        Assert.Equal(16, tree.Pieces().Sum(p => p.LengthM), 1e-12);
        Assert.Equal(["branch", "end"], tree.Pieces().Single(p => p.Way[0] == new Point2(0, 0)).Lines);
    }
}
