using CsCheck;
using Glazewright.Mechanics.Frames;

namespace Glazewright.Mechanics.Tests.Frames;

/// <summary>Random greenhouse-like gables, unlike on both sides, with a load on every member and joint.</summary>
internal sealed record RandomGable(FrameModel Model, FrameLoading Loading)
{
    internal static Gen<RandomGable> Any { get; } =
        from leftEave in Gen.Double[2, 4]
        from rightEave in Gen.Double[2, 4]
        from rise in Gen.Double[0.5, 4]
        from leftRun in Gen.Double[2, 8]
        from rightRun in Gen.Double[2, 8]
        from inertia in Gen.Double[1e-6, 1e-5].Array[5]
        from pins in Gen.Bool.Array[2]
        from collar in Gen.Bool
        from loads in Gen.Double[-3000, 3000].Array[20]
        from fractions in Gen.Double[0.02, 0.98].Array[4]
        select Make(leftEave, rightEave, rise, leftRun, rightRun, inertia, pins, collar, loads, fractions);

    private static RandomGable Make(
        double leftEave, double rightEave, double rise, double leftRun, double rightRun, double[] inertia, bool[] pins, bool collar,
        double[] w, double[] f)
    {
        const double E = 2e11, A = 1e-3;
        double ridge = Math.Max(leftEave, rightEave) + rise;
        FrameNode[] nodes =
        [
            new(0, 0), new(0, leftEave), new(leftRun, ridge), new(leftRun + rightRun, rightEave), new(leftRun + rightRun, 0),
        ];
        var members = new List<FrameMember>
        {
            new(0, 1, E, A, inertia[0]), new(1, 2, E, A, inertia[1]), new(2, 3, E, A, inertia[2]), new(3, 4, E, A, inertia[3]),
        };
        if (collar)
        {
            members.Add(new FrameMember(1, 3, E, A, inertia[4], PinnedAtStart: true, PinnedAtEnd: true));
        }

        FrameSupport[] supports =
        [
            pins[0] ? FrameSupport.Pinned(0) : FrameSupport.Fixed(0), pins[1] ? FrameSupport.Pinned(4) : FrameSupport.Fixed(4),
        ];
        var loading = new FrameLoading(
            [new NodeLoad(1, w[0], w[1], w[2]), new NodeLoad(2, w[3], w[4]), new NodeLoad(3, w[5], w[6], w[7])],
            [
                new MemberLoad.Spread(0, SpreadDirection.Normal, w[8], w[9]),
                new MemberLoad.Spread(1, SpreadDirection.UpPerRun, w[10], w[11], Math.Min(f[0], f[1]), Math.Max(f[0], f[1])),
                new MemberLoad.Spread(2, SpreadDirection.UpPerLength, w[12], w[13]),
                new MemberLoad.Spread(2, SpreadDirection.Along, w[14], w[15]),
                new MemberLoad.Spread(3, SpreadDirection.AcrossPerRise, w[16], w[16]),
                new MemberLoad.Point(1, f[2], w[17], w[18], w[19]),
                new MemberLoad.Point(3, f[3], w[19], w[17], w[18]),
            ]);
        return new RandomGable(new FrameModel(nodes, members, supports), loading);
    }

    /// <summary>The same frame seen from behind.</summary>
    internal RandomGable Mirrored()
    {
        FrameNode[] nodes = [.. Model.Nodes.Select(n => n with { XM = -n.XM })];
        NodeLoad[] onNodes = [.. Loading.OnNodes.Select(n => n with { AcrossN = -n.AcrossN, MomentNm = -n.MomentNm })];
        MemberLoad[] onMembers =
        [
            .. Loading.OnMembers.Select(l => l switch
            {
                MemberLoad.Spread { Direction: SpreadDirection.Normal or SpreadDirection.AcrossPerLength or SpreadDirection.AcrossPerRise } s =>
                    s with { FromNPerM = -s.FromNPerM, ToNPerM = -s.ToNPerM },
                MemberLoad.Point p => p with { AcrossN = -p.AcrossN, MomentNm = -p.MomentNm },
                _ => l,
            }),
        ];
        return new RandomGable(Model with { Nodes = nodes }, new FrameLoading(onNodes, onMembers));
    }

    /// <summary>Sum of the loads: across, up, and moment about the origin, by adding slices.</summary>
    internal (double Across, double Up, double Moment) Resultant()
    {
        double across = 0, up = 0, moment = 0;
        void Add(double x, double y, double fx, double fy)
        {
            across += fx;
            up += fy;
            moment += x * fy - y * fx;
        }

        foreach (NodeLoad n in Loading.OnNodes)
        {
            Add(Model.Nodes[n.Node].XM, Model.Nodes[n.Node].YM, n.AcrossN, n.UpN);
            moment += n.MomentNm;
        }

        foreach (MemberLoad load in Loading.OnMembers)
        {
            FrameNode a = Model.Nodes[Model.Members[load.Member].Start];
            FrameNode b = Model.Nodes[Model.Members[load.Member].End];
            double length = Model.LengthM(load.Member);
            double c = (b.XM - a.XM) / length, s = (b.YM - a.YM) / length;
            if (load is MemberLoad.Point p)
            {
                Add(a.XM + c * length * p.AtFraction, a.YM + s * length * p.AtFraction, p.AcrossN, p.UpN);
                moment += p.MomentNm;
                continue;
            }

            var spread = (MemberLoad.Spread)load;
            const int Slices = 400;
            double slice = (spread.ToFraction - spread.FromFraction) * length / Slices;
            for (int i = 0; i < Slices; i++)
            {
                double share = (i + 0.5) / Slices;
                double at = spread.FromFraction * length + share * slice * Slices;
                double q = (spread.FromNPerM + share * (spread.ToNPerM - spread.FromNPerM)) * slice;
                (double fx, double fy) = spread.Direction switch
                {
                    SpreadDirection.UpPerRun => (0, q * Math.Abs(c)),
                    SpreadDirection.UpPerLength => (0.0, q),
                    SpreadDirection.AcrossPerRise => (q * Math.Abs(s), 0),
                    SpreadDirection.AcrossPerLength => (q, 0),
                    SpreadDirection.Normal => (-s * q, c * q),
                    _ => (c * q, s * q),
                };
                Add(a.XM + c * at, a.YM + s * at, fx, fy);
            }
        }

        return (across, up, moment);
    }
}
