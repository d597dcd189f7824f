using Glazewright.Mechanics.Guards;

namespace Glazewright.Mechanics.Frames;

/// <summary>Guards of the frame solver: what it promises to be able to solve.</summary>
internal static class FrameDoor
{
    internal static void Check(FrameModel model)
    {
        if (model.Nodes.Count < 2 || model.Members.Count < 1)
        {
            throw new ArgumentException("A frame needs two joints and a member.", nameof(model));
        }

        foreach (FrameNode node in model.Nodes)
        {
            Require.Within(node.XM, -10_000, 10_000);
            Require.Within(node.YM, -10_000, 10_000);
        }

        for (int m = 0; m < model.Members.Count; m++)
        {
            FrameMember member = model.Members[m];
            Require.Within(member.Start, 0, model.Nodes.Count - 1);
            Require.Within(member.End, 0, model.Nodes.Count - 1);
            Require.Within(model.LengthM(m), 1e-6, 30_000);
            Require.Within(member.ElasticPa, 1e-3, 1e13);
            Require.Within(member.AreaM2, 1e-12, 1e12);
            Require.Within(member.InertiaM4, 1e-18, 1e12);
        }

        var seen = new HashSet<int>();
        foreach (FrameSupport support in model.Supports)
        {
            Require.Within(support.Node, 0, model.Nodes.Count - 1);
            Require.Finite(support.ForcedXM);
            Require.Finite(support.ForcedYM);
            Require.Finite(support.ForcedRad);
            if (!seen.Add(support.Node))
            {
                throw new ArgumentException($"Joint {support.Node} has two supports.", nameof(model));
            }
        }
    }

    internal static void Check(FrameModel model, FrameLoading loading)
    {
        foreach (NodeLoad n in loading.OnNodes)
        {
            Require.Within(n.Node, 0, model.Nodes.Count - 1);
            Require.Finite(n.AcrossN);
            Require.Finite(n.UpN);
            Require.Finite(n.MomentNm);
            if (n.MomentNm != 0 && !TakesMoment(model, n.Node))
            {
                throw new ArgumentException($"A moment at joint {n.Node}, where every member is pinned.", nameof(loading));
            }
        }

        foreach (MemberLoad load in loading.OnMembers)
        {
            Require.Within(load.Member, 0, model.Members.Count - 1);
            switch (load)
            {
                case MemberLoad.Spread s:
                    Require.Finite(s.FromNPerM);
                    Require.Finite(s.ToNPerM);
                    Require.Within(s.FromFraction, 0, 1);
                    Require.Within(s.ToFraction, s.FromFraction, 1);
                    break;
                case MemberLoad.Point p:
                    Require.Finite(p.AcrossN);
                    Require.Finite(p.UpN);
                    Require.Finite(p.MomentNm);
                    Require.Within(p.AtFraction, 0, 1);
                    break;
            }
        }
    }

    private static bool TakesMoment(FrameModel model, int node) =>
        model.Members.Any(m => (m.Start == node && !m.PinnedAtStart) || (m.End == node && !m.PinnedAtEnd))
        || model.Supports.Any(s => s.Node == node && s.HoldsRotation);
}
