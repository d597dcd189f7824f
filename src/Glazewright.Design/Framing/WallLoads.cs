using Glazewright.Mechanics.Checks;

namespace Glazewright.Design.Framing;

/// <summary>What bends a stick: even loads over its parts, and what leans on it, from its start.</summary>
/// <param name="Strips">Even loads, N/m.</param>
/// <param name="Points">Forces, N.</param>
internal sealed record StickLoad(IReadOnlyList<SpanStrip> Strips, IReadOnlyList<SpanPoint> Points)
{
    internal double TotalN => Strips.Sum(s => s.LineNPerM * (s.ToM - s.FromM)) + Points.Sum(p => p.ForceN);

    internal StickLoad Times(double factor) => new(
        [.. Strips.Select(s => s with { LineNPerM = factor * s.LineNPerM })], [.. Points.Select(p => p with { ForceN = factor * p.ForceN })]);
}

/// <summary>
/// Wind of 1 Pa on a wall, followed through its sticks. Over and under a hole the covering spans up and down, half to the header or sill and half to what is
/// beyond, unless stubs of posts stand there; everywhere else it spans sideways, half to each upright. What fills a hole gives its wind to header and sill,
/// or to the jambs. Every stick is a simple span whose ends lean on others.
/// </summary>
internal static class WallLoads
{
    private const double NearM = 0.001;
    private const int SlopeParts = 8;
    private const int MostRounds = 200;

    /// <summary>Wind on each stick for 1 Pa: its own and what leans on it.</summary>
    internal static StickLoad[] OnePascal(WallFace wall, WallGrid grid)
    {
        SpanStrip[][] own = [.. grid.Sticks.Select((s, i) => s.IsUpright ? OnUpright(wall, grid, i) : OnAcross(wall, grid, i))];
        return Follow(grid, own);
    }

    /// <summary>Adds to each stick what the ends of others bring it.</summary>
    internal static StickLoad[] Follow(WallGrid grid, SpanStrip[][] own)
    {
        IReadOnlyList<Stick> sticks = grid.Sticks;
        StickLoad[] loads = [.. own.Select(s => new StickLoad(s, []))];

        // Ends bring forces that change as forces come: in pinwheels round and round, less each time.
        for (int round = 0; round < MostRounds; round++)
        {
            List<SpanPoint>[] points = [.. sticks.Select(_ => new List<SpanPoint>())];
            for (int i = 0; i < sticks.Count; i++)
            {
                (double startN, double endN) = Ends(sticks[i].SpanM, loads[i]);
                Bring(sticks[i].StartOn, sticks[i].AtM, startN, sticks[i].FromM);
                Bring(sticks[i].EndOn, sticks[i].AtM, endN, sticks[i].ToM);

                // A horizontal meets an upright at its own height, an upright a horizontal at its own place along the wall.
                void Bring(int on, double atM, double forceN, double endM)
                {
                    if (on >= 0 && forceN != 0)
                    {
                        Stick to = sticks[on];
                        double there = Math.Clamp(atM - to.FromM, 0, to.SpanM);
                        points[on].Add(new SpanPoint(there, forceN));
                    }
                }
            }

            StickLoad[] next = [.. loads.Select((l, i) => l with { Points = points[i] })];
            double change = next.Zip(loads).Max(p => Math.Abs(p.First.Points.Sum(x => x.ForceN) - p.Second.Points.Sum(x => x.ForceN)));
            loads = next;
            if (change < 1e-9)
            {
                break;
            }
        }

        return loads;
    }

    /// <summary>What the ends of a simple span bring.</summary>
    internal static (double StartN, double EndN) Ends(double spanM, StickLoad load)
    {
        double endN = load.Strips.Sum(s => s.LineNPerM * (s.ToM - s.FromM) * (s.FromM + s.ToM) / 2 / spanM) + load.Points.Sum(p => p.ForceN * p.AtM / spanM);
        return (load.TotalN - endN, endN);
    }

    /// <summary>Clear wall over a header or under a sill, in parts along it: from, to, height, m from its start.</summary>
    internal static IEnumerable<(double FromM, double ToM, double HighM)> Beyond(WallFace wall, WallGrid grid, int stick)
    {
        Stick s = grid.Sticks[stick];
        bool head = s.Kind == StickKind.Header;
        int[] others =
        [
            .. Enumerable.Range(0, grid.Sticks.Count).Where(k => grid.Sticks[k].Kind == (head ? StickKind.Sill : StickKind.Header)
                && (head ? grid.Sticks[k].AtM > s.AtM - NearM : grid.Sticks[k].AtM < s.AtM + NearM) && grid.Sticks[k].Hole != s.Hole),
        ];
        double[] breaks =
        [
            .. others.SelectMany(k => (double[])[grid.Sticks[k].FromM, grid.Sticks[k].ToM]).Concat(wall.LineVM.Select(p => p.UM))
                .Where(u => u > s.FromM + NearM && u < s.ToM - NearM).Append(s.FromM).Append(s.ToM).Distinct().Order(),
        ];
        for (int i = 1; i < breaks.Length; i++)
        {
            double middle = (breaks[i - 1] + breaks[i]) / 2;
            double[] at = [.. others.Where(k => grid.Sticks[k].FromM < middle && grid.Sticks[k].ToM > middle).Select(k => grid.Sticks[k].AtM)];
            if (at.Length > 0 || !head)
            {
                double other = at.Length == 0 ? 0 : head ? at.Min() : at.Max();
                yield return (breaks[i - 1] - s.FromM, breaks[i] - s.FromM, Math.Abs(other - s.AtM));
                continue;
            }

            // Under a slope, in steps.
            double stepM = (breaks[i] - breaks[i - 1]) / SlopeParts;
            for (int k = 0; k < SlopeParts; k++)
            {
                double from = breaks[i - 1] + k * stepM;
                yield return (from - s.FromM, from + stepM - s.FromM, Math.Max(0, wall.TopM(from + stepM / 2) - s.AtM));
            }
        }
    }

    /// <summary>Whether stubs of posts stand on a header or under a sill.</summary>
    internal static bool HasStubs(WallGrid grid, int stick) => grid.Sticks.Any(s => s.Kind == StickKind.Stub && (s.StartOn == stick || s.EndOn == stick));

    private static SpanStrip[] OnAcross(WallFace wall, WallGrid grid, int stick)
    {
        Stick s = grid.Sticks[stick];
        WallHole hole = wall.Holes[s.Hole];
        List<SpanStrip> strips = [];
        if (hole.Fill == HoleFill.HeadAndSill)
        {
            double from = Math.Clamp(hole.FromUM - s.FromM, 0, s.SpanM);
            double to = Math.Clamp(hole.ToUM - s.FromM, from, s.SpanM);
            strips.Add(new SpanStrip(from, to, (hole.HeadVM - hole.FootVM) / 2));
        }

        if (!HasStubs(grid, stick))
        {
            strips.AddRange(Beyond(wall, grid, stick).Where(b => b.HighM > NearM).Select(b => new SpanStrip(b.FromM, b.ToM, b.HighM / 2)));
        }

        return [.. strips];
    }

    private static SpanStrip[] OnUpright(WallFace wall, WallGrid grid, int stick)
    {
        Stick s = grid.Sticks[stick];
        if (s.Kind == StickKind.Column)
        {
            return [];
        }

        double[] breaks =
        [
            .. grid.Sticks.SelectMany(o => o.IsUpright ? (double[])[o.FromM, o.ToM] : [o.AtM]).Concat(wall.Holes.Select(h => h.FootVM))
                .Where(v => v > s.FromM + NearM && v < s.ToM - NearM).Append(s.FromM).Append(s.ToM).Distinct().Order(),
        ];
        List<SpanStrip> strips = [];
        for (int i = 1; i < breaks.Length; i++)
        {
            double middle = (breaks[i - 1] + breaks[i]) / 2;
            double wideM = Side(wall, grid, stick, middle, -1) + Side(wall, grid, stick, middle, 1);
            if (wideM > 0)
            {
                strips.Add(new SpanStrip(breaks[i - 1] - s.FromM, breaks[i] - s.FromM, wideM));
            }
        }

        return [.. strips];
    }

    // Width of wall on one side that leans on an upright at a height.
    private static double Side(WallFace wall, WallGrid grid, int stick, double vM, int side)
    {
        Stick s = grid.Sticks[stick];
        double edge = s.AtM + side * (s.WidthM / 2 + NearM);
        if (edge < 0 || edge > wall.LengthM)
        {
            return 0;
        }

        // The rough opening stands off a post by some packing.
        for (int h = 0; h < wall.Holes.Count; h++)
        {
            WallHole hole = wall.Holes[h];
            bool mine = (side < 0 ? grid.Beside[h].Right : grid.Beside[h].Left) == stick && vM > hole.FootVM && vM < hole.HeadVM;
            if (mine || hole.Holds(edge, vM))
            {
                return hole.Fill == HoleFill.Jambs ? hole.WidthM / 2 : 0;
            }
        }

        if (SpansUp(grid, edge, vM))
        {
            return 0;
        }

        double next = grid.Sticks.Where(o => o != s && o.IsUpright && o.FromM <= vM && o.ToM >= vM && side * (o.AtM - s.AtM) > 0)
            .Select(o => Math.Abs(o.AtM - s.AtM)).DefaultIfEmpty(side < 0 ? s.AtM : wall.LengthM - s.AtM).Min();

        // A wedge that ends at the roof line leans on the upright alone: the rafter's help is not counted.
        double roofM = ToRoofM(wall, s.AtM, vM, side);
        return roofM < next ? roofM : next / 2;
    }

    // How far it is sideways to where the covering ends at a height.
    private static double ToRoofM(WallFace wall, double uM, double vM, int side)
    {
        double nearest = double.PositiveInfinity;
        for (int i = 1; i < wall.LineVM.Count; i++)
        {
            (Form.Point2 a, Form.Point2 b) = (wall.LineVM[i - 1], wall.LineVM[i]);
            if (a.VM > vM == b.VM > vM)
            {
                continue;
            }

            double ahead = side * (a.UM + (vM - a.VM) / (b.VM - a.VM) * (b.UM - a.UM) - uM);
            nearest = ahead > 0 ? Math.Min(nearest, ahead) : nearest;
        }

        return nearest;
    }

    // Over a header or under a sill without stubs.
    private static bool SpansUp(WallGrid grid, double uM, double vM)
    {
        int below = -1;
        int above = -1;
        for (int k = 0; k < grid.Sticks.Count; k++)
        {
            Stick o = grid.Sticks[k];
            if (o.IsUpright || o.FromM > uM || o.ToM < uM)
            {
                continue;
            }

            if (o.Kind == StickKind.Header && o.AtM <= vM && (below < 0 || o.AtM > grid.Sticks[below].AtM))
            {
                below = k;
            }
            else if (o.Kind == StickKind.Sill && o.AtM >= vM && (above < 0 || o.AtM < grid.Sticks[above].AtM))
            {
                above = k;
            }
        }

        return (below >= 0 && !HasStubs(grid, below)) || (above >= 0 && !HasStubs(grid, above));
    }
}
