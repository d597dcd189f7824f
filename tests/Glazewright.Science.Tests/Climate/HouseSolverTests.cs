using Glazewright.Science.Climate;
using Glazewright.Science.Network;

namespace Glazewright.Science.Tests.Climate;

/// <summary>The written-out elimination against the general network (itself checked against dense solutions of a general library) with the same links.</summary>
public class HouseSolverTests
{
    [Fact]
    public void A_day_of_everything_is_the_general_network_s_day() => Compare(TestHouses.TripleWall, 0, 2 * 1440);

    [Fact]
    public void A_house_without_opaque_parts_too() => Compare(TestHouses.Glass with { MassJPerK = 2e7, MassSurfaceM2 = 90 }, 300, 1440);

    [Fact]
    public void A_film_roof_that_lets_long_wave_through_too() =>
        Compare(TestHouses.TripleWall with { UpperClear = TestHouses.Glass.UpperClear with { LongWaveTransmittance = 0.4 } }, 700, 1440);

    private static void Compare(HouseParameters house, int fromMinute, int minutes)
    {
        HouseModel model = new(house);
        HouseState s = model.NewState(14, 0.75, 9, 101_325);
        NetworkPlan plan = new();
        NodeId[] nodes = [.. Enumerable.Range(0, HouseNodes.SolvedCount).Select(i => plan.AddNode($"{i}"))];
        NodeId outside = plan.AddBoundary("outside"), sky = plan.AddBoundary("sky"), deep = plan.AddBoundary("deep"), intake = plan.AddBoundary("intake");
        NodeId[] old = [.. Enumerable.Range(0, HouseNodes.SurfaceCount).Select(i => plan.AddBoundary($"old {i}"))];
        const int Inner = 0, Outer = 4, Cloth = 8, Canopy = 9, Floor = 10, Below = 11, Above = 12, Mass = 13, Ground = 14;
        List<Func<HouseRates, double>> rates = [];
        void Join(NodeId a, NodeId b, Func<HouseRates, double> rate)
        {
            plan.Conduct(a, b);
            rates.Add(rate);
        }

        for (int i = 0; i < HouseNodes.PartCount; i++)
        {
            int p = i;
            Join(nodes[Inner + p], nodes[Outer + p], g => g.Core[p]);
            Join(nodes[Outer + p], outside, g => g.OuterAir[p] + g.OuterGround[p]);
            Join(nodes[Outer + p], sky, g => g.OuterSky[p]);
            Join(nodes[Inner + p], nodes[p is 0 or 2 ? Above : Below], g => g.InnerAir[p]);
            Join(nodes[Floor], nodes[Inner + p], g => g.FloorParts[p]);
            Join(nodes[Canopy], nodes[Inner + p], g => g.CanopyParts[p]);
            Join(nodes[Cloth], nodes[Inner + p], g => g.CurtainParts[p]);
        }

        Join(nodes[Inner + 1], nodes[Inner + 3], g => g.LowerPair);
        Join(nodes[Inner], nodes[Inner + 2], g => g.UpperPair);
        Join(nodes[Inner + 1], nodes[Inner], g => g.WallRoof);
        Join(nodes[Inner + 1], nodes[Inner + 2], g => g.WallRoofOpaque);
        Join(nodes[Inner + 3], nodes[Inner], g => g.WallOpaqueRoof);
        Join(nodes[Inner + 3], nodes[Inner + 2], g => g.WallOpaqueRoofOpaque);
        Join(nodes[Floor], nodes[Cloth], g => g.FloorCurtain);
        Join(nodes[Canopy], nodes[Cloth], g => g.CanopyCurtain);
        Join(nodes[Canopy], nodes[Floor], g => g.CanopyFloor);
        Join(nodes[Floor], sky, g => g.FloorSky);
        Join(nodes[Canopy], sky, g => g.CanopySky);
        Join(nodes[Cloth], sky, g => g.CurtainSky);
        Join(nodes[Floor], nodes[Below], g => g.FloorAir);
        Join(nodes[Canopy], nodes[Below], g => g.CanopyAir);
        Join(nodes[Cloth], nodes[Below], g => g.CurtainBelow);
        Join(nodes[Cloth], nodes[Above], g => g.CurtainAbove);
        Join(nodes[Mass], nodes[Below], g => g.MassAir);
        Join(nodes[Below], nodes[Above], g => g.Exchange);
        Join(nodes[Floor], nodes[Ground], g => g.FloorGround);
        for (int i = 0; i < 5; i++)
        {
            int layer = i;
            Join(nodes[Ground + layer], nodes[Ground + layer + 1], g => g.Below[layer]);
        }

        Join(nodes[Ground + 5], deep, g => g.Deep);
        Join(nodes[Ground + 2], outside, g => g.Edge);
        int[] surfaceNode = [Inner, Inner + 1, Inner + 2, Inner + 3, Cloth, Canopy, Floor];
        for (int i = 0; i < HouseNodes.SurfaceCount; i++)
        {
            int surface = i;
            Join(nodes[surfaceNode[surface]], old[surface], g => g.Latent[surface]);
        }

        void Stream(NodeId a, NodeId b, Func<HouseRates, double> rate)
        {
            plan.Advect(a, b);
            rates.Add(rate);
        }

        Stream(outside, nodes[Below], g => g.OutsideBelow);
        Stream(outside, nodes[Above], g => g.OutsideAbove);
        Stream(intake, nodes[Below], g => g.IntakeBelow);
        Stream(nodes[Below], nodes[Above], g => g.Upward);
        Stream(nodes[Above], nodes[Below], g => g.Downward);
        CompiledNetwork network = plan.Compile();
        NetworkState general = network.NewState();
        for (int minute = fromMinute; minute < fromMinute + minutes; minute++)
        {
            HouseForcing f = HouseModelTests.AnyMinute(minute);
            double stepS = minute % 7 == 0 ? 20 : 60;
            PerNode before = s.Temperature;
            model.Step(s, in f, stepS);
            (PerNode capacity, PerNode gain) = model.LastTerms;
            before.Row.CopyTo(general.TemperatureC);
            capacity.Row.CopyTo(general.CapacityJPerK);
            gain.Row.CopyTo(general.GainW);
            general.TemperatureC[outside.Index] = f.OutsideC;
            general.TemperatureC[sky.Index] = f.SkyC;
            general.TemperatureC[deep.Index] = f.DeepGroundC;
            general.TemperatureC[intake.Index] = model.LastFluxes.IntakeC;
            for (int i = 0; i < HouseNodes.SurfaceCount; i++)
            {
                general.TemperatureC[old[i].Index] = before.Row[surfaceNode[i]];
            }

            for (int i = 0; i < rates.Count; i++)
            {
                general.LinkWPerK[i] = rates[i](model.LastRates);
            }

            network.Step(general, stepS);
            PerNode after = s.Temperature;
            (after.AirBelow, after.AirAbove) = model.LastMeansC; // the network gives the airs' means (AirPairTests: their ends)
            for (int i = 0; i < HouseNodes.SolvedCount; i++)
            {
                if (capacity.Row[i] > 1.0 || i == Mass)
                {
                    Assert.Equal(general.TemperatureC[i], after.Row[i], 1e-8);
                }
            }
        }
    }
}
