namespace Glazewright.Design.Framing;

/// <summary>What a stick of a wall is.</summary>
internal enum StickKind
{
    /// <summary>Column of a frame: carries what comes, is checked by Frame.</summary>
    Column,

    /// <summary>Whole post of an end wall.</summary>
    Post,

    /// <summary>What is left of a post over or under a hole.</summary>
    Stub,

    /// <summary>Upright beside a hole.</summary>
    Jamb,

    /// <summary>Over a hole.</summary>
    Header,

    /// <summary>Under a hole.</summary>
    Sill,
}

/// <summary>A stick of a wall, from middle to middle of what it leans on.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Id">Path id, or the post's.</param>
/// <param name="AtM">v of a horizontal's edge at its hole; u of an upright's middle, m.</param>
/// <param name="FromM">Start along itself, m: u of a horizontal, v of an upright.</param>
/// <param name="ToM">End, m.</param>
/// <param name="WidthM">Size across itself in the wall, m; 0 for horizontals, whose size is chosen later.</param>
/// <param name="Hole">Index of its hole; −1 for columns, posts and stubs.</param>
/// <param name="StartOn">Index of the stick its start leans on; −1 for the ground.</param>
/// <param name="EndOn">Index of the stick its end leans on; −1 for the roof.</param>
internal sealed record Stick(StickKind Kind, string Id, double AtM, double FromM, double ToM, double WidthM, int Hole, int StartOn, int EndOn)
{
    internal bool IsUpright => Kind is not (StickKind.Header or StickKind.Sill);

    internal double SpanM => ToM - FromM;
}

/// <summary>
/// Sticks that frame the holes of a wall. A hole alone between two uprights gets a header and a sill from upright to upright and short jambs between them; any
/// other gets jambs from floor to roof, as far as no other hole is in their way, with header and sill between them. A post or column beside a hole is its
/// jamb; jambs that would run into each other are one. What is left of a post over and under its hole stands on header and sill.
/// </summary>
internal sealed class WallGrid
{
    private const double LeastStubM = 0.3;

    private readonly WallFace _wall;
    private readonly double _jambM;
    private readonly string _name;
    private readonly List<Stick> _sticks = [];
    private readonly Dictionary<(int Hole, bool Head), int> _across = [];
    private readonly (int Left, int Right)[] _beside;

    private WallGrid(WallFace wall, string name, double jambM)
    {
        (_wall, _name, _jambM) = (wall, name, jambM);
        _beside = [.. wall.Holes.Select(_ => (-1, -1))];
    }

    internal IReadOnlyList<Stick> Sticks => _sticks;

    /// <summary>Left and right upright of each hole, by index.</summary>
    internal IReadOnlyList<(int Left, int Right)> Beside => _beside;

    /// <summary>Header (true) or sill of a hole; −1 when it has none.</summary>
    internal int Across(int hole, bool head) => _across.GetValueOrDefault((hole, head), -1);

    /// <summary>Frames a wall.</summary>
    /// <param name="wall">The wall.</param>
    /// <param name="name">Path id of the wall, for jambs.</param>
    /// <param name="jambM">Size of a jamb along the wall, m.</param>
    internal static WallGrid Of(WallFace wall, string name, double jambM)
    {
        WallGrid grid = new(wall, name, jambM);
        HashSet<string> cut = [.. wall.Holes.SelectMany(h => h.PostsCut)];
        foreach (Upright u in wall.Uprights.Where(u => !cut.Contains(u.Id)))
        {
            grid._sticks.Add(new Stick(u.IsColumn ? StickKind.Column : StickKind.Post, u.Id, u.UM, 0, wall.TopM(u.UM), u.WidthM, -1, -1, -1));
        }

        int fixedCount = grid._sticks.Count;

        // Headers and sills take their places in the list first, so that uprights can lean on them.
        for (int h = 0; h < wall.Holes.Count; h++)
        {
            WallHole hole = wall.Holes[h];
            grid._across[(h, true)] = grid.Put(new Stick(StickKind.Header, hole.Id + "/header", hole.HeadVM, 0, 0, 0, h, -1, -1));
            if (hole.HasSill)
            {
                grid._across[(h, false)] = grid.Put(new Stick(StickKind.Sill, hole.Id + "/sill", hole.SillVM, 0, 0, 0, h, -1, -1));
            }
        }

        bool[] alone = [.. wall.Holes.Select((_, h) => grid.IsAlone(h, fixedCount))];
        for (int h = 0; h < wall.Holes.Count; h++)
        {
            grid._beside[h] = (grid.Jamb(h, -1, alone[h]), grid.Jamb(h, 1, alone[h]));
        }

        grid.Join(fixedCount, alone);
        grid.Stubs();
        return grid;
    }

    private int Put(Stick stick)
    {
        _sticks.Add(stick);
        return _sticks.Count - 1;
    }

    private int Fixed(double uM, int side, int count)
    {
        int best = -1;
        for (int i = 0; i < count; i++)
        {
            double ahead = side * (_sticks[i].AtM - uM);
            if (ahead >= -_sticks[i].WidthM / 2 && (best < 0 || ahead < side * (_sticks[best].AtM - uM)))
            {
                best = i;
            }
        }

        return best;
    }

    // No post cut and no other hole between the uprights on both sides.
    private bool IsAlone(int h, int count)
    {
        WallHole hole = _wall.Holes[h];
        int left = Fixed(hole.FromUM, -1, count);
        int right = Fixed(hole.ToUM, 1, count);
        if (left < 0 || right < 0 || hole.PostsCut.Count > 0)
        {
            return false;
        }

        double from = _sticks[left].AtM;
        double to = _sticks[right].AtM;
        return !_wall.Uprights.Any(u => u.UM > from + 1e-6 && u.UM < to - 1e-6)
            && !_wall.Holes.Where((other, k) => k != h && other.Spans(from, to)).Any();
    }

    private int Jamb(int h, int side, bool alone)
    {
        WallHole hole = _wall.Holes[h];
        double edge = side < 0 ? hole.FromUM : hole.ToUM;
        double at = edge + side * _jambM / 2;
        int near = _sticks.FindIndex(s => s.Kind is StickKind.Column or StickKind.Post && Math.Abs(s.AtM - at) < (s.WidthM + _jambM) / 2 - 0.001);
        if (near >= 0)
        {
            return near;
        }

        (double foot, int footOn) = (0, -1);
        (double head, int headOn) = (_wall.TopM(at), -1);
        if (alone)
        {
            (head, headOn) = (hole.HeadVM, Across(h, true));
            (foot, footOn) = hole.HasSill ? (hole.SillVM, Across(h, false)) : (0, -1);
        }
        else
        {
            for (int k = 0; k < _wall.Holes.Count; k++)
            {
                WallHole other = _wall.Holes[k];
                if (k == h || !other.Spans(at - _jambM / 2, at + _jambM / 2))
                {
                    continue;
                }

                if (other.HeadVM <= hole.FootVM + 0.001 && other.HeadVM > foot)
                {
                    (foot, footOn) = (other.HeadVM, Across(k, true));
                }
                else if (other.HasSill && other.SillVM >= hole.HeadVM - 0.001 && other.SillVM < head)
                {
                    (head, headOn) = (other.SillVM, Across(k, false));
                }
            }
        }

        // One jamb where two would run into each other: in the middle of a narrow gap, or at the outer of two edges.
        int twin = _sticks.FindIndex(s => s.Kind == StickKind.Jamb && Math.Abs(s.AtM - at) < _jambM - 0.001 && s.FromM < head - 0.01 && s.ToM > foot + 0.01);
        if (twin >= 0)
        {
            Stick other = _sticks[twin];
            bool facing = _beside.Any(b => side < 0 ? b.Right == twin : b.Left == twin);
            double place = facing ? (other.AtM + at) / 2 : side < 0 ? Math.Min(other.AtM, at) : Math.Max(other.AtM, at);
            _sticks[twin] = other with
            {
                AtM = place,
                FromM = Math.Min(other.FromM, foot),
                ToM = Math.Max(other.ToM, head),
                StartOn = foot < other.FromM ? footOn : other.StartOn,
                EndOn = head > other.ToM ? headOn : other.EndOn,
            };
            return twin;
        }

        return Put(new Stick(StickKind.Jamb, "", at, foot, head, _jambM, h, footOn, headOn));
    }

    // Jambs get their names from the wall's start; headers and sills their ends.
    private void Join(int fixedCount, bool[] alone)
    {
        int number = 0;
        foreach (int i in Enumerable.Range(0, _sticks.Count).Where(i => _sticks[i].Kind == StickKind.Jamb).OrderBy(i => _sticks[i].AtM).ThenBy(i => _sticks[i].FromM).ToList())
        {
            _sticks[i] = _sticks[i] with { Id = FormattableString.Invariant($"{_name}/jamb-{++number}") };
        }

        for (int h = 0; h < _wall.Holes.Count; h++)
        {
            WallHole hole = _wall.Holes[h];
            (int left, int right) = alone[h] ? (Fixed(hole.FromUM, -1, fixedCount), Fixed(hole.ToUM, 1, fixedCount)) : _beside[h];
            foreach (int i in (int[])[Across(h, true), Across(h, false)])
            {
                if (i >= 0)
                {
                    _sticks[i] = _sticks[i] with { FromM = _sticks[left].AtM, ToM = _sticks[right].AtM, StartOn = left, EndOn = right };
                }
            }
        }
    }

    private void Stubs()
    {
        foreach (Upright post in _wall.Uprights)
        {
            int[] holes = [.. Enumerable.Range(0, _wall.Holes.Count).Where(h => _wall.Holes[h].PostsCut.Contains(post.Id)).OrderBy(h => _wall.Holes[h].FootVM)];
            if (holes.Length == 0)
            {
                continue;
            }

            (double foot, int footOn, int number) = (0, -1, 0);
            foreach (int h in holes)
            {
                if (_wall.Holes[h].HasSill)
                {
                    Stub(post, foot, _wall.Holes[h].SillVM, footOn, Across(h, false), ref number);
                }

                (foot, footOn) = (_wall.Holes[h].HeadVM, Across(h, true));
            }

            Stub(post, foot, _wall.TopM(post.UM), footOn, -1, ref number);
        }
    }

    // Too short to matter, or in a jamb's place: none.
    private void Stub(Upright post, double foot, double head, int footOn, int headOn, ref int number)
    {
        bool taken = _sticks.Exists(s => s.Kind == StickKind.Jamb && Math.Abs(s.AtM - post.UM) < (s.WidthM + post.WidthM) / 2 && s.FromM < head && s.ToM > foot);
        if (head - foot >= LeastStubM && !taken)
        {
            Put(new Stick(StickKind.Stub, FormattableString.Invariant($"{post.Id}/stub-{++number}"), post.UM, foot, head, post.WidthM, -1, footOn, headOn));
        }
    }
}
