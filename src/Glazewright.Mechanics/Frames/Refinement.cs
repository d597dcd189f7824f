namespace Glazewright.Mechanics.Frames;

/// <summary>A frame whose members are cut in equal pieces, and the way back.</summary>
internal sealed class Refinement
{
    private readonly FrameModel coarse;

    private Refinement(FrameModel coarse, FrameModel fine, int pieces)
    {
        this.coarse = coarse;
        Fine = fine;
        Pieces = pieces;
    }

    internal FrameModel Fine { get; }

    internal int Pieces { get; }

    internal static Refinement Whole(FrameModel model) => new(model, model, 1);

    internal static Refinement Split(FrameModel model, int pieces)
    {
        if (pieces == 1)
        {
            return Whole(model);
        }

        var nodes = new List<FrameNode>(model.Nodes);
        var members = new List<FrameMember>(model.Members.Count * pieces);
        foreach (FrameMember member in model.Members)
        {
            FrameNode a = model.Nodes[member.Start];
            FrameNode b = model.Nodes[member.End];
            int from = member.Start;
            for (int p = 0; p < pieces; p++)
            {
                bool last = p == pieces - 1;
                int to = last ? member.End : nodes.Count;
                if (!last)
                {
                    double t = (p + 1.0) / pieces;
                    nodes.Add(new FrameNode(a.XM + t * (b.XM - a.XM), a.YM + t * (b.YM - a.YM)));
                }

                members.Add(member with
                {
                    Start = from,
                    End = to,
                    PinnedAtStart = p == 0 && member.PinnedAtStart,
                    PinnedAtEnd = last && member.PinnedAtEnd,
                });
                from = to;
            }
        }

        return new Refinement(model, new FrameModel(nodes, members, model.Supports), pieces);
    }

    /// <summary>The joint of the coarse frame nearest behind a joint of the fine one.</summary>
    internal int CoarseNode(int fineNode)
    {
        if (fineNode < coarse.Nodes.Count)
        {
            return fineNode;
        }

        return coarse.Members[(fineNode - coarse.Nodes.Count) / (Pieces - 1)].Start;
    }

    internal FrameLoading Split(FrameLoading loading)
    {
        if (Pieces == 1)
        {
            return loading;
        }

        var onMembers = new List<MemberLoad>();
        foreach (MemberLoad load in loading.OnMembers)
        {
            int first = load.Member * Pieces;
            switch (load)
            {
                case MemberLoad.Point p:
                    int piece = Math.Min(Pieces - 1, (int)(p.AtFraction * Pieces));
                    onMembers.Add(p with { Member = first + piece, AtFraction = Math.Min(1, p.AtFraction * Pieces - piece) });
                    break;
                case MemberLoad.Spread s:
                    AddSpread(onMembers, s, first);
                    break;
            }
        }

        return new FrameLoading(loading.OnNodes, onMembers);
    }

    private void AddSpread(List<MemberLoad> onMembers, MemberLoad.Spread s, int first)
    {
        double width = s.ToFraction - s.FromFraction;
        for (int p = 0; p < Pieces; p++)
        {
            double from = Math.Max(s.FromFraction, (double)p / Pieces);
            double to = Math.Min(s.ToFraction, (p + 1.0) / Pieces);
            if (to <= from)
            {
                continue;
            }

            onMembers.Add(s with
            {
                Member = first + p,
                FromNPerM = s.FromNPerM + (s.ToNPerM - s.FromNPerM) * (from - s.FromFraction) / width,
                ToNPerM = s.FromNPerM + (s.ToNPerM - s.FromNPerM) * (to - s.FromFraction) / width,
                FromFraction = Math.Clamp(from * Pieces - p, 0, 1),
                ToFraction = Math.Clamp(to * Pieces - p, 0, 1),
            });
        }
    }
}
