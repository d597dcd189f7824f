using Glazewright.Science.Network;

namespace Glazewright.Published.Tests.Science;

/// <summary>
/// VDI 6007-1 (two-capacity room), test cases 1, 3 and 7: inputs and hourly answers read at second hand, in an open Modelica library of the
/// buildings-simulation community that carries them. Tolerances: temperatures 0.15 K (the guideline's own limit of about 0.1 K plus the
/// rounding of the printed tenth), power 1.5 W (its own limit of 1 W plus rounding).
/// </summary>
public class Vdi6007Part1
{
    private sealed record Room(double OuterInsideR, double OuterC, double OuterRestR, double InnerR, double InnerC);

    private static readonly Room Heavy = new(0.00436791293674, 1600848.94, 0.03895919557, 0.000595693407511, 14836354.6282);
    private static readonly Room Light = new(0.00404935160802, 47900, 0.039330865, 0.003237138, 7297100);

    // Hour endings of day 1, 10 and 60 as printed.
    private static readonly (int Day, int Hour, double AirC)[] Case1 =
    [
        (1, 7, 27.7), (1, 12, 28.8), (1, 18, 30.0), (1, 19, 24.5), (1, 24, 24.5),
        (10, 1, 37.7), (10, 7, 43.0), (10, 12, 43.8), (10, 18, 44.7), (10, 19, 39.1), (10, 24, 38.8),
        (60, 1, 49.9), (60, 7, 54.9), (60, 12, 55.5), (60, 18, 56.2), (60, 19, 50.6), (60, 24, 50.0),
    ];

    private static readonly (int Day, int Hour, double AirC)[] Case3 =
    [
        (1, 7, 30.2), (1, 12, 32.4), (1, 18, 34.7), (1, 19, 26.9), (1, 24, 26.6),
        (10, 7, 50.9), (10, 12, 52.3), (10, 18, 53.7), (10, 19, 45.8), (10, 24, 44.7),
        (60, 7, 55.7), (60, 12, 56.9), (60, 18, 58.1), (60, 19, 50.1), (60, 24, 48.9),
    ];

    private static readonly (int Day, int Hour, double PlantW)[] Case7 =
    [
        (1, 7, 500), (1, 8, 500), (1, 9, 500), (1, 10, 500), (1, 11, 500), (1, 12, 481), (1, 13, 426.5), (1, 15, 324), (1, 18, 186.5),
        (1, 19, -500), (1, 21, -500), (1, 24, -500), (10, 6, -500), (10, 7, -142), (10, 12, -278), (10, 18, -404),
        (60, 7, -149), (60, 12, -284), (60, 18, -408),
    ];

    [Fact]
    public void Case_1_heavy_room_with_convective_heat() => FreeFloat(Heavy, Case1);

    [Fact]
    public void Case_3_light_room_with_convective_heat() => FreeFloat(Light, Case3);

    [Fact]
    public void Case_7_limited_plant_tracks_a_set_point()
    {
        Built b = Build(Heavy);
        Dictionary<(int Day, int Hour), double> hourly = [];
        for (int minute = 0; minute < 60 * 1440; minute++)
        {
            int hour = minute / 60 % 24;
            bool day = hour is >= 6 and < 18;
            b.State.GainW[b.OuterSurface.Index] = day ? 1000.0 * 10.5 / 86.0 : 0.0;
            b.State.GainW[b.InnerSurface.Index] = day ? 1000.0 * 75.5 / 86.0 : 0.0;
            double plantW = b.Network.Step(b.State, 60, new TrackingPlant(b.Air, b.Air, day ? 27.0 : 22.0, -500, 500));
            (int, int) key = (minute / 1440 + 1, hour + 1);
            hourly[key] = hourly.GetValueOrDefault(key) + plantW / 60.0;
        }

        Assert.All(Case7, c => Assert.Equal(c.PlantW, hourly[(c.Day, c.Hour)], 1.5));
    }

    private static void FreeFloat(Room room, (int Day, int Hour, double AirC)[] printed)
    {
        Built b = Build(room);
        Dictionary<(int Day, int Hour), double> hourly = [];
        for (int minute = 0; minute < 60 * 1440; minute++)
        {
            int hour = minute / 60 % 24;
            b.State.GainW[b.Air.Index] = hour is >= 6 and < 18 ? 1000.0 : 0.0;
            b.Network.Step(b.State, 60);
            (int, int) key = (minute / 1440 + 1, hour + 1);
            hourly[key] = hourly.GetValueOrDefault(key) + b.State.TemperatureC[b.Air.Index] / 60.0;
        }

        Assert.All(printed, p => Assert.Equal(p.AirC, hourly[(p.Day, p.Hour)], 0.15));
    }

    private sealed record Built(CompiledNetwork Network, NetworkState State, NodeId Air, NodeId OuterSurface, NodeId InnerSurface);

    private static Built Build(Room room)
    {
        NetworkPlan plan = new();
        NodeId air = plan.AddNode("air"), outerSurface = plan.AddNode("outer wall, inside"), outer = plan.AddNode("outer wall");
        NodeId innerSurface = plan.AddNode("inner mass, surface"), inner = plan.AddNode("inner mass"), outside = plan.AddBoundary("outside");
        (LinkId Link, double WPerK)[] links =
        [
            (plan.Conduct(air, outerSurface), 2.7 * 10.5),
            (plan.Conduct(air, innerSurface), 2.24 * 75.5),
            (plan.Conduct(outerSurface, innerSurface), 5.0 * 10.5),
            (plan.Conduct(outerSurface, outer), 1.0 / room.OuterInsideR),
            (plan.Conduct(outer, outside), 1.0 / (room.OuterRestR + 1.0 / (25.0 * 10.5))),
            (plan.Conduct(innerSurface, inner), 1.0 / room.InnerR),
        ];
        CompiledNetwork network = plan.Compile();
        NetworkState state = network.NewState();
        Array.Fill(state.TemperatureC, 22.0);
        state.CapacityJPerK[outer.Index] = room.OuterC;
        state.CapacityJPerK[inner.Index] = room.InnerC;
        foreach ((LinkId link, double wPerK) in links)
        {
            state.LinkWPerK[link.Index] = wPerK;
        }

        return new Built(network, state, air, outerSurface, innerSurface);
    }
}
