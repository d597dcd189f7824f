namespace Glazewright.Mechanics.Frames;

/// <summary>The equations of a frame: which freedom is which unknown, the stiffness, and the way back to member forces.</summary>
internal sealed class FrameSystem
{
    private readonly FrameModel model;
    private readonly int[] equationOf;
    private readonly int[] freedomOf;
    private readonly double[] forced;
    private readonly int[] profile;
    private readonly (double LengthM, double Cosine, double Sine)[] axes;
    private readonly double[][,] whole;
    private readonly double[][,] condensed;
    private readonly double[][,] global;
    private SkylineMatrix? factors;

    internal FrameSystem(FrameModel model)
    {
        this.model = model;
        FrameDoor.Check(model);
        equationOf = new int[3 * model.Nodes.Count];
        forced = new double[3 * model.Nodes.Count];
        bool[] held = Held();
        freedomOf = new int[held.Count(h => !h)];
        int next = 0;
        foreach (int node in NodeOrder.ReverseCuthillMcKee(model))
        {
            for (int d = 0; d < 3; d++)
            {
                int freedom = 3 * node + d;
                equationOf[freedom] = held[freedom] ? -1 : next;
                if (!held[freedom])
                {
                    freedomOf[next++] = freedom;
                }
            }
        }

        profile = Profile();
        axes = [.. Enumerable.Range(0, model.Members.Count).Select(Axis)];
        whole = new double[model.Members.Count][,];
        condensed = new double[model.Members.Count][,];
        global = new double[model.Members.Count][,];
    }

    /// <summary>Builds and factors the stiffness; the axial forces, if any, add their geometric stiffness.</summary>
    /// <param name="axialTensionsN">Tension of each member, N, or null for first order.</param>
    /// <returns>Null when stable, else where it is not.</returns>
    internal FrameOutcome.Unstable? Factor(double[]? axialTensionsN)
    {
        factors = new SkylineMatrix(profile);
        for (int m = 0; m < model.Members.Count; m++)
        {
            SetStiffness(m, axialTensionsN is null ? 0 : axialTensionsN[m]);
            double[,] k = global[m];
            for (int i = 0; i < 6; i++)
            {
                int row = Equation(m, i);
                for (int j = 0; row >= 0 && j <= i; j++)
                {
                    int column = Equation(m, j);
                    if (column >= 0)
                    {
                        factors.Add(row, column, k[i, j]);
                    }
                }
            }
        }

        int bad = factors.Factor();
        return bad < 0 ? null : new FrameOutcome.Unstable(freedomOf[bad] / 3, (JointFreedom)(freedomOf[bad] % 3));
    }

    internal SystemResult Solve(FrameLoading loading)
    {
        FrameDoor.Check(model, loading);
        LocalLoads[] loads = LoadsByMember(loading);
        var endLoads = new double[model.Members.Count][];
        var right = new double[factors!.Size];
        foreach (NodeLoad n in loading.OnNodes)
        {
            AddTo(right, 3 * n.Node, n.AcrossN);
            AddTo(right, 3 * n.Node + 1, n.UpN);
            AddTo(right, 3 * n.Node + 2, n.MomentNm);
        }

        for (int m = 0; m < model.Members.Count; m++)
        {
            endLoads[m] = EndLoads(m, loads[m]);
            double[] turned = ToGlobal(m, endLoads[m]);
            for (int i = 0; i < 6; i++)
            {
                double value = turned[i];
                for (int j = 0; j < 6; j++)
                {
                    value -= global[m][i, j] * forced[Freedom(m, j)];
                }

                AddTo(right, Freedom(m, i), value);
            }
        }

        factors.Solve(right);
        var movement = (double[])forced.Clone();
        for (int e = 0; e < right.Length; e++)
        {
            movement[freedomOf[e]] = right[e];
        }

        return BackSubstitute(loading, loads, endLoads, movement);
    }

    private SystemResult BackSubstitute(FrameLoading loading, LocalLoads[] loads, double[][] endLoads, double[] movement)
    {
        var endForces = new double[model.Members.Count][];
        var localMovement = new double[model.Members.Count][];
        var given = new double[movement.Length];
        for (int m = 0; m < model.Members.Count; m++)
        {
            double[,] k = condensed[m];
            double[] f = endLoads[m];
            var u = new double[6];
            for (int i = 0; i < 6; i++)
            {
                u[i] = movement[Freedom(m, i)];
            }

            u = ToLocal(m, u);
            var ends = new double[6];
            for (int i = 0; i < 6; i++)
            {
                ends[i] = -f[i];
                for (int j = 0; j < 6; j++)
                {
                    ends[i] += k[i, j] * u[j];
                }
            }

            endForces[m] = ends;
            localMovement[m] = u;
            double[] turned = ToGlobal(m, ends);
            for (int i = 0; i < 6; i++)
            {
                given[Freedom(m, i)] += turned[i];
            }
        }

        foreach (NodeLoad n in loading.OnNodes)
        {
            given[3 * n.Node] -= n.AcrossN;
            given[3 * n.Node + 1] -= n.UpN;
            given[3 * n.Node + 2] -= n.MomentNm;
        }

        return new SystemResult(movement, given, endForces, localMovement, loads);
    }

    private bool[] Held()
    {
        var held = new bool[forced.Length];
        // A joint where every member is pinned has no rotation of its own; without this its row would be empty.
        Array.Fill(held, true);
        for (int node = 0; node < model.Nodes.Count; node++)
        {
            held[3 * node] = held[3 * node + 1] = false;
        }

        foreach (FrameMember m in model.Members)
        {
            held[3 * m.Start + 2] &= m.PinnedAtStart;
            held[3 * m.End + 2] &= m.PinnedAtEnd;
        }

        foreach (FrameSupport s in model.Supports)
        {
            Hold(3 * s.Node, s.HoldsX, s.ForcedXM);
            Hold(3 * s.Node + 1, s.HoldsY, s.ForcedYM);
            Hold(3 * s.Node + 2, s.HoldsRotation, s.ForcedRad);
        }

        return held;

        void Hold(int freedom, bool holds, double by)
        {
            held[freedom] |= holds;
            forced[freedom] = holds ? by : 0;
        }
    }

    private int[] Profile()
    {
        var first = new int[freedomOf.Length];
        for (int e = 0; e < first.Length; e++)
        {
            first[e] = e;
        }

        for (int m = 0; m < model.Members.Count; m++)
        {
            int lowest = int.MaxValue;
            for (int i = 0; i < 6; i++)
            {
                int e = Equation(m, i);
                lowest = e >= 0 ? Math.Min(lowest, e) : lowest;
            }

            for (int i = 0; i < 6; i++)
            {
                int e = Equation(m, i);
                if (e >= 0)
                {
                    first[e] = Math.Min(first[e], lowest);
                }
            }
        }

        return first;
    }

    private LocalLoads[] LoadsByMember(FrameLoading loading)
    {
        var byMember = new List<MemberLoad>[model.Members.Count];
        for (int m = 0; m < byMember.Length; m++)
        {
            byMember[m] = [];
        }

        foreach (MemberLoad load in loading.OnMembers)
        {
            byMember[load.Member].Add(load);
        }

        var local = new LocalLoads[byMember.Length];
        for (int m = 0; m < local.Length; m++)
        {
            (double lengthM, double cosine, double sine) = axes[m];
            local[m] = LocalLoads.Of(byMember[m], lengthM, cosine, sine);
        }

        return local;
    }

    private void SetStiffness(int m, double tensionN)
    {
        FrameMember member = model.Members[m];
        whole[m] = BeamElement.Stiffness(member.ElasticPa, member.AreaM2, member.InertiaM4, axes[m].LengthM, tensionN);
        condensed[m] = whole[m];
        if (member.PinnedAtStart || member.PinnedAtEnd)
        {
            condensed[m] = (double[,])whole[m].Clone();
            Release(member, condensed[m], new double[6]);
        }

        global[m] = ToGlobal(m, condensed[m]);
    }

    private double[] EndLoads(int m, LocalLoads loads)
    {
        FrameMember member = model.Members[m];
        var f = new double[6];
        loads.AddEquivalentEndForces(axes[m].LengthM, f);
        if (member.PinnedAtStart || member.PinnedAtEnd)
        {
            Release(member, (double[,])whole[m].Clone(), f);
        }

        return f;
    }

    private static void Release(FrameMember member, double[,] k, double[] f)
    {
        if (member.PinnedAtStart)
        {
            BeamElement.Release(k, f, 2);
        }

        if (member.PinnedAtEnd)
        {
            BeamElement.Release(k, f, 5);
        }
    }

    private (double LengthM, double Cosine, double Sine) Axis(int m)
    {
        FrameNode a = model.Nodes[model.Members[m].Start];
        FrameNode b = model.Nodes[model.Members[m].End];
        double lengthM = model.LengthM(m);
        return (lengthM, (b.XM - a.XM) / lengthM, (b.YM - a.YM) / lengthM);
    }

    private double[] ToGlobal(int m, double[] v)
    {
        (_, double c, double s) = axes[m];
        return [c * v[0] - s * v[1], s * v[0] + c * v[1], v[2], c * v[3] - s * v[4], s * v[3] + c * v[4], v[5]];
    }

    private double[] ToLocal(int m, double[] v)
    {
        (_, double c, double s) = axes[m];
        return [c * v[0] + s * v[1], -s * v[0] + c * v[1], v[2], c * v[3] + s * v[4], -s * v[3] + c * v[4], v[5]];
    }

    private double[,] ToGlobal(int m, double[,] k)
    {
        (_, double c, double s) = axes[m];
        var turned = (double[,])k.Clone();
        for (int first = 0; first < 6; first += 3)
        {
            for (int j = 0; j < 6; j++)
            {
                (double along, double normal) = (turned[first, j], turned[first + 1, j]);
                turned[first, j] = c * along - s * normal;
                turned[first + 1, j] = s * along + c * normal;
            }
        }

        for (int first = 0; first < 6; first += 3)
        {
            for (int i = 0; i < 6; i++)
            {
                (double along, double normal) = (turned[i, first], turned[i, first + 1]);
                turned[i, first] = c * along - s * normal;
                turned[i, first + 1] = s * along + c * normal;
            }
        }

        return turned;
    }

    private int Freedom(int m, int i) => 3 * (i < 3 ? model.Members[m].Start : model.Members[m].End) + i % 3;

    private int Equation(int m, int i) => equationOf[Freedom(m, i)];

    private void AddTo(double[] right, int freedom, double value)
    {
        int e = equationOf[freedom];
        if (e >= 0)
        {
            right[e] += value;
        }
    }
}

/// <summary>Raw numbers of one solution.</summary>
internal sealed record SystemResult(
    double[] Movement, double[] Given, double[][] EndForces, double[][] LocalMovement, LocalLoads[] Loads);
