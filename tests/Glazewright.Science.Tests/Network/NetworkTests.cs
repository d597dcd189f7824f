using CsCheck;
using Glazewright.Science.Network;
using MathNet.Numerics.LinearAlgebra;

namespace Glazewright.Science.Tests.Network;

public class NetworkTests
{
    private sealed record Drawing(int Nodes, (int From, int To, bool Stream, double Rate)[] Links, double[] Capacity, double[] Start, double[] Gain);

    private static readonly Gen<Drawing> AnyDrawing =
        from n in Gen.Int[1, 9]
        from links in Gen.Select(Gen.Int[0, n], Gen.Int[0, n], Gen.Bool, Gen.Double[0, 50], (a, b, s, r) => (a, b, s, r)).Array[n, 4 * n]
        from capacity in Gen.Double[1e3, 1e6].Array[n]
        from start in Gen.Double[-40, 60].Array[n + 1]
        from gain in Gen.Double[-500, 500].Array[n]
        select new Drawing(n, [.. links.Where(l => l.a != l.b)], capacity, start, gain);

    // The last node is the boundary; streams into it are turned round.
    private static (CompiledNetwork Network, NetworkState State) Build(Drawing d)
    {
        NetworkPlan plan = new();
        NodeId[] ids = [.. Enumerable.Range(0, d.Nodes).Select(i => plan.AddNode($"n{i}")), plan.AddBoundary("outside")];
        foreach ((int from, int to, bool stream, _) in d.Links)
        {
            _ = stream && to != d.Nodes ? plan.Advect(ids[from], ids[to]) : plan.Conduct(ids[from], ids[to]);
        }

        CompiledNetwork network = plan.Compile();
        NetworkState state = network.NewState();
        d.Capacity.CopyTo(state.CapacityJPerK, 0);
        d.Start.CopyTo(state.TemperatureC, 0);
        d.Gain.CopyTo(state.GainW, 0);
        d.Links.Select(l => l.Rate).ToArray().CopyTo(state.LinkWPerK, 0);
        return (network, state);
    }

    [Fact]
    public void One_step_equals_a_dense_solution_by_a_general_library() =>
        AnyDrawing.Sample(
            d =>
            {
                (CompiledNetwork network, NetworkState state) = Build(d);
                Matrix<double> a = Matrix<double>.Build.Dense(d.Nodes, d.Nodes);
                Vector<double> b = Vector<double>.Build.Dense(d.Nodes);
                for (int i = 0; i < d.Nodes; i++)
                {
                    a[i, i] = d.Capacity[i] / 60;
                    b[i] = d.Capacity[i] / 60 * d.Start[i] + d.Gain[i];
                }

                foreach ((int from, int to, bool stream, double rate) in d.Links)
                {
                    Feed(to, from, rate);
                    if (!(stream && to != d.Nodes))
                    {
                        Feed(from, to, rate);
                    }
                }

                network.Step(state, 60);
                Vector<double> dense = a.Solve(b);
                for (int i = 0; i < d.Nodes; i++)
                {
                    Assert.Equal(dense[i], state.TemperatureC[i], 1e-9 * (1 + Math.Abs(dense[i])));
                }

                void Feed(int into, int source, double rate)
                {
                    if (into == d.Nodes)
                    {
                        return;
                    }

                    a[into, into] += rate;
                    if (source == d.Nodes)
                    {
                        b[into] += rate * d.Start[source];
                    }
                    else
                    {
                        a[into, source] -= rate;
                    }
                }
            },
            iter: 500);

    [Fact]
    public void Books_close_at_every_node_for_both_schemes() =>
        Gen.Select(AnyDrawing, Gen.Double[1, 3600]).Sample(
            p =>
            {
                foreach (TimeScheme scheme in Enum.GetValues<TimeScheme>())
                {
                    (CompiledNetwork network, NetworkState state) = Build(p.Item1);
                    for (int i = 0; i < 5; i++)
                    {
                        network.Step(state, p.Item2, scheme);
                        double scaleW = state.FluxW.Concat(state.GainW).Concat(state.StoredW).Max(Math.Abs);
                        Assert.True(network.LargestImbalanceW(state) <= 1e-9 * (1 + scaleW));
                    }
                }
            },
            iter: 300);

    [Fact]
    public void A_plant_lands_on_its_set_point_or_stands_at_its_limit()
    {
        NetworkPlan plan = new();
        NodeId air = plan.AddNode("air"), wall = plan.AddNode("wall"), outside = plan.AddBoundary("outside");
        LinkId film = plan.Conduct(air, wall), skin = plan.Conduct(wall, outside);
        CompiledNetwork network = plan.Compile();
        NetworkState state = network.NewState();
        state.CapacityJPerK[wall.Index] = 5e5;
        state.LinkWPerK[film.Index] = 40;
        state.LinkWPerK[skin.Index] = 10;
        state.TemperatureC[wall.Index] = 10;
        state.TemperatureC[air.Index] = 10;
        double strongW = network.Step(state, 60, new TrackingPlant(air, air, 20, -5000, 5000));
        Assert.Equal(20.0, state.TemperatureC[air.Index], 1e-12);
        Assert.True(network.LargestImbalanceW(state, strongW, air) < 1e-9);
        double weakW = network.Step(state, 60, new TrackingPlant(air, air, 40, -5000, 100));
        Assert.Equal(100.0, weakW);
        Assert.True(state.TemperatureC[air.Index] < 20);
        Assert.True(network.LargestImbalanceW(state, weakW, air) < 1e-9);
    }

    [Fact]
    public void A_drawing_that_cannot_be_is_refused()
    {
        NetworkPlan plan = new();
        NodeId air = plan.AddNode("air"), outside = plan.AddBoundary("outside"), sky = plan.AddBoundary("sky");
        Assert.Throws<ArgumentException>(() => plan.Conduct(air, air));
        Assert.Throws<ArgumentException>(() => plan.Conduct(outside, sky));
        Assert.Throws<ArgumentException>(() => plan.Advect(air, outside));
        Assert.Throws<ArgumentException>(() => plan.Conduct(air, new NodeId(7)));
    }

    [Fact]
    public void A_step_allocates_nothing()
    {
        (CompiledNetwork network, NetworkState state) = Build(new Drawing(
            3, [(0, 1, false, 5), (1, 2, true, 9), (2, 3, false, 3), (0, 3, false, 1)], [1e4, 2e4, 3e4], [20, 10, 5, 0], [100, 0, 0]));
        network.Step(state, 60);
        network.Step(state, 60, TimeScheme.SecondOrder);
        Assert.Equal(0, LeastAllocated.InRounds(5, 200, () =>
        {
            network.Step(state, 60);
            network.Step(state, 60, TimeScheme.SecondOrder);
        }));
    }
}
