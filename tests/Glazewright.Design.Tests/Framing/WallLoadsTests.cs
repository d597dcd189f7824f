using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.Framing;

namespace Glazewright.Design.Tests.Framing;

public class WallLoadsTests
{
    private static WallHole Hole(string id, double u, double v, double wide, double high, HoleFill fill = HoleFill.HeadAndSill, params string[] cut) =>
        new(id, id, u, u + wide, v, v + high, fill, 0, 0, 0, cut.ToEqList());

    private static WallFace Wall(double lengthM, double[] postsUM, WallHole[] holes, params Point2[] line) => new(
        lengthM, [.. postsUM.Select((u, i) => new Upright($"post-{i}", u, 0.05, false))], holes, line.Length > 0 ? line : [new(0, 3), new(lengthM, 3)]);

    private static (WallGrid Grid, Dictionary<string, StickLoad> Loads) Solve(WallFace wall)
    {
        WallGrid grid = WallGrid.Of(wall, "w", 0.05);
        StickLoad[] loads = WallLoads.OnePascal(wall, grid);
        return (grid, grid.Sticks.Select((s, i) => (s.Id, Load: loads[i])).ToDictionary(p => p.Id, p => p.Load));
    }

    [Fact]
    public void Door_alone_between_posts_hangs_on_a_header_from_post_to_post()
    {
        // Half the leaf, half the metre of wall over it, and the heads of two jambs that take half of 1 m (less half a jamb) of wall beside them.
        (WallGrid grid, Dictionary<string, StickLoad> loads) = Solve(Wall(3, [0, 3], [Hole("d", 1, 0, 1, 2)]));
        StickLoad header = loads["d/header"];
        double jambM2 = (1 - 0.025) / 2 * 2;
        Assert.Equal(1.0 + 1.5 + jambM2, header.TotalN, 1e-9);
        Assert.Equal(2, grid.Sticks.Count(s => s.Kind == StickKind.Jamb && s.FromM == 0 && s.ToM == 2));
        Assert.Equal(loads["post-0"].TotalN, loads["post-1"].TotalN, 1e-9);

        // A post takes the header's end and half of the wall up to the jamb.
        Assert.Equal(header.TotalN / 2 + jambM2, loads["post-0"].TotalN, 1e-9);
    }

    [Fact]
    public void Posts_cut_by_a_hole_bring_their_wind_to_header_sill_and_so_to_the_jambs()
    {
        WallFace wall = Wall(8, [0, 2, 4, 6, 8], [Hole("pad", 1.5, 0.8, 5, 1.4, HoleFill.HeadAndSill, "post-1", "post-2", "post-3")]);
        (WallGrid grid, Dictionary<string, StickLoad> loads) = Solve(wall);
        Assert.DoesNotContain(grid.Sticks, s => s.Id is "post-1" or "post-2" or "post-3");

        // Stub over the hole at 4 m: 2 m of wall, 0.8 m high, half of it to the header.
        Assert.Equal(2 * 0.8, loads["post-2/stub-2"].TotalN, 1e-9);
        SpanPointNear(loads["pad/header"], 4 - 1.475, 0.8);
        double stubsN = loads["pad/header"].Points.Sum(p => p.ForceN);
        Assert.Equal(5 * 0.7 + stubsN, loads["pad/header"].TotalN, 1e-9);

        // Both jambs run from floor to roof and take what header and sill bring.
        Stick jamb = grid.Sticks.First(s => s.Kind == StickKind.Jamb);
        Assert.Equal((0.0, 3.0), (jamb.FromM, jamb.ToM));
        Assert.Equal(2, loads[jamb.Id].Points.Count);
        (double startN, double endN) = WallLoads.Ends(5.05, loads["pad/header"]);
        Assert.Equal(loads["pad/header"].TotalN, startN + endN, 1e-9);
    }

    private static void SpanPointNear(StickLoad load, double atM, double forceN) =>
        Assert.Contains(load.Points, p => Math.Abs(p.AtM - atM) < 1e-9 && Math.Abs(p.ForceN - forceN) < 1e-9);

    [Fact]
    public void Curtain_in_guides_gives_its_wind_to_the_jambs_alone()
    {
        (WallGrid grid, Dictionary<string, StickLoad> loads) = Solve(Wall(6, [0, 3, 6], [Hole("roll", 1, 0, 4, 2.5, HoleFill.Jambs, "post-1")]));
        string jamb = grid.Sticks.First(s => s.Kind == StickKind.Jamb).Id;
        Assert.Equal(loads["roll/header"].Points.Sum(p => p.ForceN), loads["roll/header"].TotalN, 1e-9);
        Assert.Contains(loads[jamb].Strips, s => s.LineNPerM > 2 && s.ToM - s.FromM > 2.4);
    }

    /// <summary>Every part of the wall leans on something once: what lies between a hole and the middle of its jambs (half a jamb's width) is all that may be missing.</summary>
    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    public void Wind_on_the_wall_is_all_taken_once(int which)
    {
        Point2[] gable = [new(0, 2.3), new(5, 4.8), new(8, 2.55)];
        WallFace wall = which switch
        {
            0 => Wall(8, [0, 2, 4, 6, 8], [Hole("a", 0.6, 0.6, 0.8, 0.8), Hole("b", 4.5, 0.6, 1, 1)], gable),
            1 => Wall(8, [0, 2, 4, 6, 8], [Hole("door", 0.7, 0, 1.8, 2.1, HoleFill.HeadAndSill, "post-1"), Hole("pad", 3.1, 0.75, 4.2, 1.8, HoleFill.HeadAndSill, "post-2", "post-3")], gable),
            2 => Wall(8, [0, 2, 4, 6, 8],
            [
                Hole("l1", 2.7, 0.3, 0.9, 0.9), Hole("l2", 3.76, 0.3, 0.9, 0.9, HoleFill.HeadAndSill, "post-2"), Hole("l3", 2.7, 1.37, 0.9, 0.9),
                Hole("l4", 3.76, 1.37, 0.9, 0.9, HoleFill.HeadAndSill, "post-2"), Hole("low", 6.4, 0.6, 0.9, 0.9), Hole("high", 6.6, 1.68, 0.5, 0.5),
            ], gable),
            3 => Wall(8, [0, 2, 4, 6, 8], [Hole("roll", 2.3, 0, 3.4, 2.6, HoleFill.Jambs, "post-2")], gable),
            _ => Wall(8, [0, 2, 4, 6, 8], [], gable),
        };
        WallGrid grid = WallGrid.Of(wall, "w", 0.05);
        StickLoad[] loads = WallLoads.OnePascal(wall, grid);
        double own = loads.Sum(l => l.TotalN - l.Points.Sum(p => p.ForceN));
        double toFloor = wall.Holes.Where(h => !h.HasSill && h.Fill == HoleFill.HeadAndSill).Sum(h => h.WidthM * h.HeadVM / 2);
        double beyond = Enumerable.Range(0, grid.Sticks.Count).Where(i => !grid.Sticks[i].IsUpright && !WallLoads.HasStubs(grid, i))
            .Sum(i => WallLoads.Beyond(wall, grid, i).Where(b => IsOpen(grid, i, b)).Sum(b => (b.ToM - b.FromM) * b.HighM / 2));
        double area = 5 * (2.3 + 4.8) / 2 + 3 * (4.8 + 2.55) / 2;
        Assert.InRange((own + toFloor + beyond) / area, 0.965, 1.0 + 1e-6);

        // Its ends bring the rest to ground, roof and whole posts: nothing is lost on the way.
        double leaving = 0;
        for (int i = 0; i < grid.Sticks.Count; i++)
        {
            (double startN, double endN) = WallLoads.Ends(grid.Sticks[i].SpanM, loads[i]);
            leaving += (grid.Sticks[i].StartOn < 0 ? startN : 0) + (grid.Sticks[i].EndOn < 0 ? endN : 0);
        }

        Assert.Equal(own, leaving, 1e-6);
    }

    // Nothing but floor or roof beyond: no other sill or header halves it.
    private static bool IsOpen(WallGrid grid, int stick, (double FromM, double ToM, double HighM) part)
    {
        Stick s = grid.Sticks[stick];
        double middle = s.FromM + (part.FromM + part.ToM) / 2;
        double there = s.AtM + (s.Kind == StickKind.Header ? part.HighM : -part.HighM);
        return !grid.Sticks.Any(o => !o.IsUpright && o != s && o.FromM < middle && o.ToM > middle && Math.Abs(o.AtM - there) < 1e-6);
    }

    [Fact]
    public void Jambs_that_would_meet_are_one_and_those_over_a_lower_hole_stand_on_its_header()
    {
        WallFace wall = Wall(8, [0, 8], [Hole("a", 1, 0.5, 1, 1), Hole("b", 2.06, 0.5, 1, 1), Hole("c", 4, 0.5, 1.5, 1), Hole("d", 4.4, 1.7, 0.6, 0.6)]);
        WallGrid grid = WallGrid.Of(wall, "w", 0.05);
        Assert.Equal(grid.Beside[0].Right, grid.Beside[1].Left);
        Assert.Equal(2.03, grid.Sticks[grid.Beside[0].Right].AtM, 1e-9);
        Stick over = grid.Sticks[grid.Beside[3].Left];
        Assert.Equal("c/header", grid.Sticks[over.StartOn].Id);
        Assert.Equal(1.5, over.FromM, 1e-9);
    }
}
