using Glazewright.Science.Climate;
using Glazewright.Science.Heat;
using Glazewright.Science.Maths;
using Glazewright.Science.Network;

namespace Glazewright.Published.Tests.Science.Standard140;

/// <summary>
/// A case as a network of the product's engine. Walls are cut into slices with their capacity in the middle; each zone has an air node and a star of long-wave exchange
/// between its faces. Films are the product's: inside those of walls, roofs and floors of the climate model, outside the wind on glass of the same and, on rough faces, the
/// Handbook's combined film less its radiation as for the night loss of walls (or, to compare, the climate model's law of opaque faces). Only the floor over open air, without wind, takes the standard's constant. Long wave outside: the
/// file's sky by view (1 + cos tilt)/2, the rest of the view at air temperature.
/// </summary>
internal sealed class BoxModel : ISteppedBox
{
    private const double RaisedFloorWPerM2K = 0.8; // Standard 140-2020, table 5-7, convection alone
    private const double SliceM = 0.026;
    private const double Kelvin = 273.15;

    // Middle of a wall in open country, power law as in the year of the product.
    public static readonly double WindAtBox = Elementary.Pow(1.35 / 10, 0.14);

    private readonly BoxCase box;
    private readonly BoxSky sky;
    private readonly List<InnerFace> inner = [];
    private readonly List<OuterFace> outer = [];
    private readonly List<(NodeId Node, double JPerK)> capacities = [];
    private readonly List<(LinkId Link, double WPerK)> conductions = [];
    private readonly (LinkId Link, double WPerK)[] airChange;
    private readonly LinkId nightFan;
    private readonly double[] sunW; // let in by the glass of a zone
    private readonly NodeId outside, skyNode;

    public BoxModel(BoxCase box, BoxSky sky)
    {
        this.box = box;
        this.sky = sky;
        sunW = new double[box.Zones.Length];
        NetworkPlan plan = new();
        (outside, skyNode) = (plan.AddBoundary("outside"), plan.AddBoundary("sky"));
        Air = [.. box.Zones.Select((_, z) => plan.AddNode($"air {z}"))];
        Star = [.. box.Zones.Select((_, z) => plan.AddNode($"faces {z}"))];
        double[] facesM2 = [.. box.Zones.Select((_, z) => box.Opaque.Sum(o => o.Zone == z || o.ZoneBehind == z ? o.AreaM2 : 0) + box.Glass.Sum(g => g.Zone == z ? g.AreaM2 : 0))];
        foreach (OpaqueFace face in box.Opaque)
        {
            Draw(plan, face, facesM2);
        }

        foreach (GlassFace glass in box.Glass)
        {
            Draw(plan, glass, facesM2);
        }

        airChange = [.. box.Zones.Select((zone, z) => (plan.Advect(outside, Air[z]), zone.VolumeM3 * box.InfiltrationPerH / 3600 * BoxCase.AirJPerM3K))];
        nightFan = plan.Advect(outside, Air[0]);
        Network = plan.Compile();
        (State, Before) = (Network.NewState(), Network.NewState());
        Array.Fill(State.TemperatureC, 20.0);
        capacities.AddRange(box.Zones.Select((zone, z) => (Air[z], zone.VolumeM3 * BoxCase.AirJPerM3K)));
        foreach ((NodeId node, double jPerK) in capacities)
        {
            State.CapacityJPerK[node.Index] = jPerK;
        }

        foreach ((LinkId link, double wPerK) in conductions.Concat(airChange))
        {
            State.LinkWPerK[link.Index] = wPerK;
        }
    }

    private CompiledNetwork Network { get; }

    private NetworkState State { get; }

    private NetworkState Before { get; }

    private NodeId[] Air { get; }

    private NodeId[] Star { get; }

    /// <summary>Sets weather, sun, gains, films and radiation of a step from the state before it.</summary>
    public void Prepare(int step)
    {
        double[] c = State.TemperatureC, rate = State.LinkWPerK, gain = State.GainW;
        c[outside.Index] = sky.OutsideC[step];
        c[skyNode.Index] = sky.SkyC[step];
        Array.Clear(gain);
        Array.Clear(sunW);
        foreach (OuterFace face in outer)
        {
            if (face.Glass is { } pane)
            {
                GlassShares light = sky.ThroughGlassWPerM2(pane.Facing, ClearGlass.Of(pane.Panes), step);
                sunW[pane.Zone] += pane.AreaM2 * light.ThroughFraction;
                gain[face.Node.Index] += pane.AreaM2 * light.OuterFraction;
                gain[face.InnerPane.Index] += pane.AreaM2 * light.InnerFraction;
            }
            else
            {
                gain[face.Node.Index] += face.AreaM2 * box.OutsideAbsorptance * sky.OnPlaneWPerM2(face.Facing, step);
            }

            double emissivity = face.Glass is null ? box.Emissivity : ClearGlass.Emissivity;
            double windMPerS = sky.WindMPerS[step] * WindAtBox;
            double ownC = c[face.Node.Index];
            double film = face.Glass is not null ? HouseFilms.OuterWPerM2K(OuterWindLaw.Gabled, windMPerS)
                : face.Facing == Facing.Floor ? RaisedFloorWPerM2K
                : box.HouseOutside ? HouseFilms.OpaqueOuterWPerM2K(ownC - sky.OutsideC[step], face.Facing == Facing.Roof ? 1 : 0, windMPerS, HouseFilms.RoughRoughnessFactor)
                : SurfaceFilm.OutdoorWPerM2K(windMPerS) - SkyExposedWall.RadiationInFilmWPerM2K;
            double skyView = face.Facing switch { Facing.Roof => 1, Facing.Floor => 0, _ => 0.5 };
            rate[face.ToAir.Index] = face.AreaM2 * (film + emissivity * (1 - skyView) * Radiation(ownC, c[outside.Index]));
            rate[face.ToSky.Index] = face.AreaM2 * emissivity * skyView * Radiation(ownC, c[skyNode.Index]);
        }

        foreach (InnerFace face in inner)
        {
            double ownC = c[face.Node.Index], above = c[Air[face.Zone].Index] - ownC;
            rate[face.ToAir.Index] = face.AreaM2 * (box.ConstantInnerFilms ? face.ConstantFilmWPerM2K : InnerFilm(face.Facing, above));
            rate[face.ToStar.Index] = face.AreaM2 * face.ExchangeFactor * Radiation(ownC, c[Star[face.Zone].Index]);
            gain[face.Node.Index] += sunW[face.Zone] * face.SunShareFraction
                + box.Zones[face.Zone].GainW * BoxCase.GainRadiantFraction * face.AreaFraction;
        }

        for (int z = 0; z < Air.Length; z++)
        {
            gain[Air[z].Index] = box.Zones[z].GainW * (1 - BoxCase.GainRadiantFraction);
        }

        double hour = (step + 1) * BoxSky.StepMinutes / 60.0 % 24;
        rate[nightFan.Index] = box.Control.NightFan(hour == 0 ? 24 : hour) ? BoxCase.NightFanM3PerH / 3600 * BoxCase.AirJPerM3K : 0;
    }

    public void Keep() => Before.CopyFrom(State);

    public void GoBack() => State.CopyFrom(Before);

    public double Step(double setPointC, double leastW, double mostW) =>
        Network.Step(State, BoxSky.StepMinutes * 60, new TrackingPlant(Air[0], Air[0], setPointC, leastW, mostW));

    public double AirC(int zone) => State.TemperatureC[Air[zone].Index];

    public double ImbalanceW(double plantW) => Network.LargestImbalanceW(State, plantW, Air[0]);

    private static double InnerFilm(Facing facing, double airAboveFaceK) => facing switch
    {
        Facing.Roof => HouseFilms.UnderRoofWPerM2K(airAboveFaceK, 1),
        Facing.Floor => HouseFilms.FloorWPerM2K(-airAboveFaceK),
        _ => HouseFilms.WallWPerM2K(airAboveFaceK),
    };

    // Standard 140-2020, table 5-9, convection alone.
    private static double ConstantFilm(Facing facing, bool isGlass) => isGlass ? 2.4 : facing == Facing.Roof ? 1.8 : 2.2;

    // σ (T1² + T2²)(T1 + T2): exact at the temperatures given.
    private static double Radiation(double oneC, double otherC)
    {
        double a = oneC + Kelvin, b = otherC + Kelvin;
        return SkyTemperature.StefanBoltzmann * (a * a + b * b) * (a + b);
    }

    private void Draw(NetworkPlan plan, OpaqueFace face, double[] facesM2)
    {
        NodeId within = plan.AddNode("inner face"), without = plan.AddNode("outer face");
        AddInner(plan, within, face.Zone, face.Facing, face.AreaM2, box.Emissivity, face.SunShareFraction, facesM2, isGlass: false);
        NodeId before = within;
        double beforeM2KPerW = 0;
        foreach (Layer layer in face.Layers)
        {
            double resistance = BuildUp.LayerM2KPerW(layer.ThicknessM, layer.ConductivityWPerMK);
            double jPerM2K = layer.ThicknessM * layer.DensityKgPerM3 * layer.SpecificHeatJPerKgK;
            int slices = jPerM2K == 0 ? 0 : Math.Max(1, jPerM2K < 20_000 ? 1 : (int)Math.Ceiling(layer.ThicknessM / SliceM));
            for (int i = 0; i < slices; i++)
            {
                NodeId slice = plan.AddNode("slice");
                capacities.Add((slice, face.AreaM2 * jPerM2K / slices));
                conductions.Add((plan.Conduct(before, slice), face.AreaM2 / (beforeM2KPerW + resistance / slices / 2)));
                (before, beforeM2KPerW) = (slice, resistance / slices / 2);
            }

            beforeM2KPerW += slices == 0 ? resistance : 0;
        }

        conductions.Add((plan.Conduct(before, without), face.AreaM2 / beforeM2KPerW));
        if (face.ZoneBehind is { } behind)
        {
            AddInner(plan, without, behind, Facing.South, face.AreaM2, box.Emissivity, 0, facesM2, isGlass: false);
        }
        else
        {
            outer.Add(new(without, face.Facing, face.AreaM2, null, without, plan.Conduct(without, outside), plan.Conduct(without, skyNode)));
        }
    }

    private void Draw(NetworkPlan plan, GlassFace glass, double[] facesM2)
    {
        NodeId outerPane = plan.AddNode("outer pane"), innerPane = plan.AddNode("inner pane");
        double betweenM2KPerW = 1 / ClearGlass.PaneWPerM2K + (glass.Panes == 2 ? 1 / ClearGlass.GapWPerM2K : 0);
        double capacityJPerK = glass.AreaM2 * ClearGlass.PaneJPerM2K * glass.Panes / 2;
        capacities.Add((outerPane, capacityJPerK));
        capacities.Add((innerPane, capacityJPerK));
        conductions.Add((plan.Conduct(outerPane, innerPane), glass.AreaM2 / betweenM2KPerW));
        AddInner(plan, innerPane, glass.Zone, glass.Facing, glass.AreaM2, ClearGlass.Emissivity, 0, facesM2, isGlass: true);
        outer.Add(new(outerPane, glass.Facing, glass.AreaM2, glass, innerPane, plan.Conduct(outerPane, outside), plan.Conduct(outerPane, skyNode)));
    }

    // Star of a box: resistance of the face's own emissivity and of its view (1 less its share of the faces, so that two equal faces see each other only).
    private void AddInner(NetworkPlan plan, NodeId node, int zone, Facing facing, double areaM2, double emissivity, double sunShare, double[] facesM2, bool isGlass)
    {
        double share = areaM2 / facesM2[zone];
        double factor = 1 / ((1 - emissivity) / emissivity + (1 - share));
        inner.Add(new(node, zone, facing, areaM2, share, factor, sunShare, ConstantFilm(facing, isGlass), plan.Conduct(node, Air[zone]), plan.Conduct(node, Star[zone])));
    }

    private sealed record InnerFace(
        NodeId Node, int Zone, Facing Facing, double AreaM2, double AreaFraction, double ExchangeFactor, double SunShareFraction,
        double ConstantFilmWPerM2K, LinkId ToAir, LinkId ToStar);

    private sealed record OuterFace(NodeId Node, Facing Facing, double AreaM2, GlassFace? Glass, NodeId InnerPane, LinkId ToAir, LinkId ToSky);
}
