using Glazewright.Science.Network;

namespace Glazewright.Science.Climate;

/// <summary>
/// The climate of one greenhouse: air below and above the curtain, cloth, four shell parts with an inner and an outer face, canopy, floor, layered
/// ground, slow mass; water in both airs and on seven surfaces. A step freezes the coefficients at the last state, solves all temperatures in one
/// implicit linear system (<see cref="CompiledNetwork"/>), then both humidities together. Heat that the humidity solution moved differently from
/// what the temperatures were told is carried into the next step, so both books close.
/// </summary>
/// <remarks>Equations and sources: docs/methods/climate-model.md. One thread works on a model at a time.</remarks>
public sealed partial class HouseModel
{
    private readonly HouseParameters house;
    private readonly CompiledNetwork network;
    private readonly ShellPart[] parts;
    private readonly double upperShare, lowerShare; // of clear area in the shell above and below, for radiation
    private readonly Links link;
    private HouseFluxes fluxes;

    /// <summary>Builds the model of a house.</summary>
    /// <param name="house">Sizes and properties.</param>
    /// <exception cref="ArgumentOutOfRangeException">A size out of range.</exception>
    public HouseModel(HouseParameters house)
    {
        house.Check();
        this.house = house;
        parts = [house.UpperClear, house.LowerClear, house.UpperOpaque, house.LowerOpaque];
        upperShare = ShareOf(house.UpperClear.AreaM2, house.UpperOpaque.AreaM2);
        lowerShare = ShareOf(house.LowerClear.AreaM2, house.LowerOpaque.AreaM2);
        NetworkPlan plan = new();
        link = new Links(plan);
        network = plan.Compile();
    }

    /// <summary>What moved over the last step.</summary>
    public ref readonly HouseFluxes LastFluxes => ref fluxes;

    /// <summary>Number of transfer units of heat along the house in the last step, for <see cref="PadToFan"/>.</summary>
    public double TransferUnits { get; private set; }

    /// <summary>A state at rest: everything at one temperature, air at one relative humidity, ground sliding to its deep temperature.</summary>
    /// <param name="temperatureC">Temperature of air and all surfaces, °C.</param>
    /// <param name="relativeHumidityFraction">0 to 1.</param>
    /// <param name="deepGroundC">Temperature below the last layer, °C.</param>
    /// <param name="pressurePa">Barometric pressure, Pa.</param>
    public HouseState NewState(double temperatureC, double relativeHumidityFraction, double deepGroundC, double pressurePa)
    {
        HouseState state = new(network.NewState());
        Array.Fill(state.Network.TemperatureC, temperatureC);
        double depthM = 0.0, totalM = house.Ground.Sum(g => g.ThicknessM);
        for (int layer = 0; layer < HouseParameters.GroundLayerCount; layer++)
        {
            double middleM = depthM + house.Ground[layer].ThicknessM / 2.0;
            state.Network.TemperatureC[HouseNodes.Ground + layer] = temperatureC + (deepGroundC - temperatureC) * middleM / totalM;
            depthM += house.Ground[layer].ThicknessM;
        }

        double vapourPa = relativeHumidityFraction * VapourTable.PressurePa(temperatureC);
        state.Water[0] = state.Water[1] = 0.621945 * vapourPa / (pressurePa - vapourPa);
        KeepSaturation(state);
        SetFixedCapacities(state.Network);
        return state;
    }

    /// <summary>Takes one step of any length.</summary>
    /// <param name="state">The house; changed in place.</param>
    /// <param name="forcing">What acts over the step.</param>
    /// <param name="stepS">Step, s, above 0 (a minute in the year, 1 to 5 s in replays).</param>
    public void Step(HouseState state, in HouseForcing forcing, double stepS)
    {
        NetworkState net = state.Network;
        Drive drive = Drive.From(in forcing, state, house, stepS);
        SetBoundaries(net, in drive, in forcing);
        SetShell(net, in drive, in forcing);
        SetInside(net, in drive, in forcing);
        SetAir(net, in drive);
        SetGains(net, state, in drive, in forcing);
        SetLatent(net, state, in drive, in forcing, stepS);
        SetIntake(state, ref drive, in forcing, stepS);
        network.Step(net, stepS);
        KeepSaturation(state);
        SolveHumidity(state, in drive, in forcing, stepS);
        BookHeat(net, in drive, in forcing);
    }

    private static double ShareOf(double clearM2, double opaqueM2) => clearM2 + opaqueM2 > 0.0 ? clearM2 / (clearM2 + opaqueM2) : 1.0;

    private static void KeepSaturation(HouseState state)
    {
        Span<double> pressure = state.SaturationPa, slope = state.SaturationSlope;
        for (int s = 0; s < HouseNodes.SurfaceCount; s++)
        {
            pressure[s] = VapourTable.PressurePa(state.Network.TemperatureC[HouseNodes.NodeOfSurface[s]], out slope[s]);
        }
    }

    private void SetFixedCapacities(NetworkState net)
    {
        double[] c = net.CapacityJPerK;
        double total = house.AirBelowM3 + house.AirAboveM3, fast = house.FastMassJPerM2K * house.FloorAreaM2;
        c[HouseNodes.AirBelow] = fast * house.AirBelowM3 / total; // the air itself is added each step
        c[HouseNodes.AirAbove] = fast * house.AirAboveM3 / total;
        c[HouseNodes.Curtain] = Math.Max(house.Curtain.CapacityJPerM2K * house.FloorAreaM2, 10.0);
        for (int p = 0; p < HouseNodes.PartCount; p++)
        {
            c[HouseNodes.Inner + p] = c[HouseNodes.Outer + p] = Math.Max(parts[p].CapacityJPerM2K * parts[p].AreaM2 / 2.0, 1.0);
        }

        c[HouseNodes.Floor] = house.Ground[0].CapacityJPerM3K * Math.Min(house.Ground[0].ThicknessM * 0.1, 0.005) * house.FloorAreaM2;
        for (int layer = 0; layer < HouseParameters.GroundLayerCount; layer++)
        {
            c[HouseNodes.Ground + layer] = house.Ground[layer].CapacityJPerM3K * house.Ground[layer].ThicknessM * house.FloorAreaM2;
        }

        c[HouseNodes.Mass] = Math.Max(house.MassJPerK, 1.0);

        double[] rate = net.LinkWPerK;
        for (int p = 0; p < HouseNodes.PartCount; p++)
        {
            rate[link.Core + p] = parts[p].CoreWPerM2K * parts[p].AreaM2;
        }

        rate[link.Ground] = house.FloorAreaM2 / (house.Ground[0].ThicknessM / 2.0 / house.Ground[0].ConductivityWPerMK);
        for (int layer = 1; layer <= HouseParameters.GroundLayerCount; layer++)
        {
            GroundLayer above = house.Ground[layer - 1];
            double r = above.ThicknessM / 2.0 / above.ConductivityWPerMK;
            r += layer < HouseParameters.GroundLayerCount ? house.Ground[layer].ThicknessM / 2.0 / house.Ground[layer].ConductivityWPerMK : 0.0;
            rate[link.Ground + layer] = house.FloorAreaM2 / r;
        }

        rate[link.Edge] = house.EdgeLossWPerK;
        rate[link.MassAir] = Math.Max(5.5 * house.MassSurfaceM2, 0.01);
    }

    /// <summary>The links of the network, by their first place where they come in groups of four or seven.</summary>
    private sealed class Links
    {
        public readonly int Core, OuterAir, OuterSky, OuterGround, InnerAir, Ground, Edge, MassAir;
        public readonly int FloorAir, CanopyAir, CurtainBelow, CurtainAbove, Exchange;
        public readonly int FloorParts, CanopyParts, CurtainParts, FloorCurtain, CanopyCurtain, CanopyFloor, LowerPair, UpperPair, WallRoof;
        public readonly int FloorSky, CanopySky, CurtainSky;
        public readonly int OutsideBelow, OutsideAbove, IntakeBelow, BelowAbove, AboveBelow, Latent;
        public readonly int Count;

        public Links(NetworkPlan plan)
        {
            string[] names =
            [
                "air below", "air above", "curtain", "clear above, inner", "clear below, inner", "opaque above, inner", "opaque below, inner",
                "clear above, outer", "clear below, outer", "opaque above, outer", "opaque below, outer", "canopy", "floor",
                "ground 1", "ground 2", "ground 3", "ground 4", "ground 5", "ground 6", "mass",
            ];
            NodeId[] n = [.. names.Select(plan.AddNode), .. new[] { "outside", "sky", "deep ground", "intake" }.Select(plan.AddBoundary),
                .. Enumerable.Range(0, HouseNodes.SurfaceCount).Select(i => plan.AddBoundary($"vapour at surface {i}"))];
            int[] airOfPart = [HouseNodes.AirAbove, HouseNodes.AirBelow, HouseNodes.AirAbove, HouseNodes.AirBelow];

            int Join(int a, int b) => plan.Conduct(n[a], n[b]).Index;
            int Four(Func<int, int> a, Func<int, int> b)
            {
                int first = Join(a(0), b(0));
                for (int p = 1; p < HouseNodes.PartCount; p++)
                {
                    Join(a(p), b(p));
                }

                return first;
            }

            Core = Four(p => HouseNodes.Inner + p, p => HouseNodes.Outer + p);
            OuterAir = Four(p => HouseNodes.Outer + p, _ => HouseNodes.Outside);
            OuterSky = Four(p => HouseNodes.Outer + p, _ => HouseNodes.Sky);
            OuterGround = Four(p => HouseNodes.Outer + p, _ => HouseNodes.Outside);
            InnerAir = Four(p => HouseNodes.Inner + p, p => airOfPart[p]);
            Ground = Join(HouseNodes.Floor, HouseNodes.Ground);
            for (int layer = 1; layer <= HouseParameters.GroundLayerCount; layer++)
            {
                Join(HouseNodes.Ground + layer - 1, layer < HouseParameters.GroundLayerCount ? HouseNodes.Ground + layer : HouseNodes.Deep);
            }

            Edge = Join(HouseNodes.Ground + 2, HouseNodes.Outside);
            MassAir = Join(HouseNodes.Mass, HouseNodes.AirBelow);
            FloorAir = Join(HouseNodes.Floor, HouseNodes.AirBelow);
            CanopyAir = Join(HouseNodes.Canopy, HouseNodes.AirBelow);
            CurtainBelow = Join(HouseNodes.Curtain, HouseNodes.AirBelow);
            CurtainAbove = Join(HouseNodes.Curtain, HouseNodes.AirAbove);
            Exchange = Join(HouseNodes.AirBelow, HouseNodes.AirAbove);
            FloorParts = Four(_ => HouseNodes.Floor, p => HouseNodes.Inner + p);
            CanopyParts = Four(_ => HouseNodes.Canopy, p => HouseNodes.Inner + p);
            CurtainParts = Four(_ => HouseNodes.Curtain, p => HouseNodes.Inner + p);
            FloorCurtain = Join(HouseNodes.Floor, HouseNodes.Curtain);
            CanopyCurtain = Join(HouseNodes.Canopy, HouseNodes.Curtain);
            CanopyFloor = Join(HouseNodes.Canopy, HouseNodes.Floor);
            LowerPair = Join(HouseNodes.Inner + 1, HouseNodes.Inner + 3);
            UpperPair = Join(HouseNodes.Inner, HouseNodes.Inner + 2);
            WallRoof = Join(HouseNodes.Inner + 1, HouseNodes.Inner);
            Join(HouseNodes.Inner + 1, HouseNodes.Inner + 2);
            Join(HouseNodes.Inner + 3, HouseNodes.Inner);
            Join(HouseNodes.Inner + 3, HouseNodes.Inner + 2);
            FloorSky = Join(HouseNodes.Floor, HouseNodes.Sky);
            CanopySky = Join(HouseNodes.Canopy, HouseNodes.Sky);
            CurtainSky = Join(HouseNodes.Curtain, HouseNodes.Sky);
            OutsideBelow = plan.Advect(n[HouseNodes.Outside], n[HouseNodes.AirBelow]).Index;
            OutsideAbove = plan.Advect(n[HouseNodes.Outside], n[HouseNodes.AirAbove]).Index;
            IntakeBelow = plan.Advect(n[HouseNodes.Intake], n[HouseNodes.AirBelow]).Index;
            BelowAbove = plan.Advect(n[HouseNodes.AirBelow], n[HouseNodes.AirAbove]).Index;
            AboveBelow = plan.Advect(n[HouseNodes.AirAbove], n[HouseNodes.AirBelow]).Index;
            Latent = Join(HouseNodes.NodeOfSurface[0], HouseNodes.Latent);
            for (int s = 1; s < HouseNodes.SurfaceCount; s++)
            {
                Count = Join(HouseNodes.NodeOfSurface[s], HouseNodes.Latent + s) + 1;
            }
        }
    }
}
