using Glazewright.Design.Form;

namespace Glazewright.Design.Services;

/// <summary>Pipe as a tree from its entry: each new point is joined to the nearest pipe that is there, along the walls.</summary>
internal sealed class PipeTree(Point2 root)
{
    private readonly List<Node> _nodes = [new Node(root, -1, "", "", 0)];

    /// <summary>Joins a point to the nearest pipe of its scope.</summary>
    /// <param name="to">The point.</param>
    /// <param name="scope">House, or empty outside.</param>
    /// <param name="start">Where the scope's pipe begins.</param>
    /// <param name="alongFirst">Turn after the way along the ridges, else after the way across.</param>
    /// <param name="line">Whose flow it draws; empty for none.</param>
    /// <param name="riseM">Pipe up or down to what is served, m.</param>
    /// <returns>Index of its node.</returns>
    public int Join(Point2 to, string scope, int start, bool alongFirst, string line = "", double riseM = 0)
    {
        (int child, Point2 from) = Nearest(to, scope, start);
        int at = child == start && Same(from, _nodes[start].At) ? start : Split(child, from);
        bool corner = Math.Abs(from.UM - to.UM) > Tiny && Math.Abs(from.VM - to.VM) > Tiny;
        if (corner)
        {
            at = Add(alongFirst ? new Point2(to.UM, from.VM) : new Point2(from.UM, to.VM), at, scope, "", 0);
        }

        // A point on the pipe has a node of its own: it may draw, and rise.
        return Same(from, to) && line.Length == 0 ? at : Add(to, at, scope, line, riseM);
    }

    /// <summary>Pipe from the entry to a node, m.</summary>
    public double RunM(int node) => node <= 0 ? 0 : LengthM(node) + RunM(_nodes[node].Parent);

    /// <summary>Lines that a node's pipe feeds.</summary>
    public IReadOnlyList<string> Lines(int node) => Below()[node];

    /// <summary>Pieces between branches: nodes from the entry's side on.</summary>
    public IEnumerable<(string Scope, IReadOnlyList<Point2> Way, double LengthM, IReadOnlyList<string> Lines, int End)> Pieces()
    {
        List<int>[] children = [.. _nodes.Select(_ => new List<int>())];
        for (int i = 1; i < _nodes.Count; i++)
        {
            children[_nodes[i].Parent].Add(i);
        }

        IReadOnlyList<string>[] below = Below();
        bool Through(int i) => i > 0 && children[i].Count == 1 && _nodes[i].Line.Length == 0 && _nodes[children[i][0]].Scope == _nodes[i].Scope;
        for (int i = 1; i < _nodes.Count; i++)
        {
            if (Through(i))
            {
                continue;
            }

            List<Point2> way = [_nodes[i].At];
            double lengthM = LengthM(i);
            int p = _nodes[i].Parent;
            while (Through(p))
            {
                way.Add(_nodes[p].At);
                lengthM += LengthM(p);
                p = _nodes[p].Parent;
            }

            way.Add(_nodes[p].At);
            way.Reverse();
            if (lengthM > Tiny)
            {
                yield return (_nodes[i].Scope, way, lengthM, below[i], i);
            }
        }
    }

    private const double Tiny = 1e-6;

    private IReadOnlyList<string>[] Below()
    {
        SortedSet<string>[] sets = [.. _nodes.Select(n => n.Line.Length == 0 ? new SortedSet<string>(StringComparer.Ordinal) : new SortedSet<string>([n.Line], StringComparer.Ordinal))];

        // A split puts a younger node above an older one, so the way up is walked for each.
        for (int i = 1; i < _nodes.Count; i++)
        {
            if (_nodes[i].Line.Length > 0)
            {
                for (int p = _nodes[i].Parent; p >= 0; p = _nodes[p].Parent)
                {
                    sets[p].Add(_nodes[i].Line);
                }
            }
        }

        return [.. sets.Select(s => (IReadOnlyList<string>)[.. s])];
    }

    private (int Child, Point2 From) Nearest(Point2 to, string scope, int start)
    {
        (int best, Point2 from) = (start, _nodes[start].At);
        double bestM = Flat(from, to);
        for (int i = 1; i < _nodes.Count; i++)
        {
            if (_nodes[i].Scope != scope || i == start)
            {
                continue;
            }

            (Point2 a, Point2 b) = (_nodes[i].At, _nodes[_nodes[i].Parent].At);
            Point2 near = new(
                Math.Clamp(to.UM, Math.Min(a.UM, b.UM), Math.Max(a.UM, b.UM)),
                Math.Clamp(to.VM, Math.Min(a.VM, b.VM), Math.Max(a.VM, b.VM)));
            if (Flat(near, to) < bestM - Tiny)
            {
                (best, from, bestM) = (i, near, Flat(near, to));
            }
        }

        return (best, from);
    }

    // The pipe above a node opened at a point: at its end that node itself, unless it is one that is served, which keeps its own end.
    private int Split(int child, Point2 at)
    {
        Node node = _nodes[child];
        if (Same(at, node.At) && node.Line.Length == 0)
        {
            return child;
        }

        if (Same(at, _nodes[node.Parent].At))
        {
            return node.Parent;
        }

        int middle = Add(at, node.Parent, node.Scope, "", 0);
        _nodes[child] = node with { Parent = middle };
        return middle;
    }

    private int Add(Point2 at, int parent, string scope, string line, double riseM)
    {
        _nodes.Add(new Node(at, parent, scope, line, riseM));
        return _nodes.Count - 1;
    }

    private double LengthM(int node) => Flat(_nodes[node].At, _nodes[_nodes[node].Parent].At) + _nodes[node].RiseM;

    private static double Flat(Point2 a, Point2 b) => Math.Abs(a.UM - b.UM) + Math.Abs(a.VM - b.VM);

    private static bool Same(Point2 a, Point2 b) => Flat(a, b) < Tiny;

    private sealed record Node(Point2 At, int Parent, string Scope, string Line, double RiseM);
}
