using Glazewright.Science.Climate;
using Glazewright.Science.Heat;

namespace Glazewright.Published.Tests.Science.Standard140;

/// <summary>
/// A light box as the greenhouse model itself: roof and walls as its opaque shell, the glass as its clear shell below, no curtain, no crop, dry air, the floor's timber and
/// insulation as its ground with outside air under it. Its own are the outer films, the lumped shell (half of the capacity inside, half outside), long wave by views of floor and
/// ceiling, and radiant gains on the floor alone. Concrete with its capacity inside and a second zone it cannot be given: the cases from 900 on are left to the network.
/// </summary>
internal sealed class HouseBox : ISteppedBox
{
    private const double FloorToCeilingViewFraction = 0.494; // 8 m × 6 m, 2.7 m apart
    private const double DryHumidityRatio = 0.0002;

    private readonly BoxCase box;
    private readonly BoxSky sky;
    private readonly HouseModel model;
    private readonly HouseState state;
    private readonly double[] kept = new double[HouseState.SavedLength], tried = new double[HouseState.SavedLength];
    private HouseForcing forcing;

    public HouseBox(BoxCase box, BoxSky sky)
    {
        this.box = box;
        this.sky = sky;
        GlassFace glass = box.Glass[0];
        Layer[] floor = Face(Facing.Floor).Layers;
        Layer timber = floor[0], under = floor[1];
        GroundLayer top = new(timber.ThicknessM / 2, timber.ConductivityWPerMK, timber.DensityKgPerM3 * timber.SpecificHeatJPerKgK);
        GroundLayer fill = new(under.ThicknessM / 4, under.ConductivityWPerMK, 1e4); // the least capacity the model takes
        model = new HouseModel(new HouseParameters
        {
            FloorAreaM2 = Face(Facing.Floor).AreaM2,
            AirBelowM3 = box.Zones[0].VolumeM3 / 2,
            AirAboveM3 = box.Zones[0].VolumeM3 / 2,
            UpperClear = ShellPart.None,
            LowerClear = new ShellPart
            {
                AreaM2 = box.Glass.Sum(g => g.AreaM2),
                CoreWPerM2K = 1 / (glass.Panes / ClearGlass.PaneWPerM2K + (glass.Panes - 1) / ClearGlass.GapWPerM2K),
                CapacityJPerM2K = glass.Panes * ClearGlass.PaneJPerM2K,
                InnerEmissivity = ClearGlass.Emissivity,
                OuterEmissivity = ClearGlass.Emissivity,
            },
            UpperOpaque = Opaque(Facing.Roof, Face(Facing.Roof).AreaM2) with { SkyViewFraction = 1, SlopeCosine = 1 },
            LowerOpaque = Opaque(Facing.North, Walls.Sum(w => w.AreaM2)),
            FloorToCurtainViewFraction = FloorToCeilingViewFraction,
            FloorEmissivity = box.Emissivity,
            Ground = [top, top, fill, fill, fill, fill],
            FastMassJPerM2K = 0,
            LeakageBaseM3PerS = box.Zones[0].VolumeM3 * box.InfiltrationPerH / 3600,
        });
        state = model.NewState(20, 0.01, 20, PressurePa);
    }

    // 1650 m.
    private static double PressurePa { get; } = Glazewright.Science.Air.StandardAtmosphere.PressurePa(1650);

    private IEnumerable<OpaqueFace> Walls => box.Opaque.Where(o => o.Facing is not (Facing.Roof or Facing.Floor));

    public void Prepare(int step)
    {
        double sunW = 0, keptW = 0;
        foreach (GlassFace glass in box.Glass)
        {
            GlassShares light = sky.ThroughGlassWPerM2(glass.Facing, ClearGlass.Of(glass.Panes), step);
            sunW += glass.AreaM2 * light.ThroughFraction;
            keptW += glass.AreaM2 * (light.OuterFraction + light.InnerFraction);
        }

        forcing = new HouseForcing
        {
            OutsideC = sky.OutsideC[step],
            OutsideHumidityRatio = DryHumidityRatio,
            PressurePa = PressurePa,
            WindMPerS = sky.WindMPerS[step] * BoxModel.WindAtBox,
            SkyC = sky.SkyC[step],
            DeepGroundC = sky.OutsideC[step],
            SunLowerClearW = keptW,
            SunFloorW = sunW * Face(Facing.Floor).SunShareFraction,
            SunUpperOpaqueInnerW = sunW * Face(Facing.Roof).SunShareFraction,
            SunLowerOpaqueInnerW = sunW * Walls.Sum(w => w.SunShareFraction),
            SunUpperOpaqueOuterW = box.OutsideAbsorptance * Face(Facing.Roof).AreaM2 * sky.OnPlaneWPerM2(Facing.Roof, step),
            SunLowerOpaqueOuterW = box.OutsideAbsorptance * Walls.Sum(w => w.AreaM2 * sky.OnPlaneWPerM2(w.Facing, step)),
            Co2Ppm = 420,
            LampW = box.Zones[0].GainW,
            LampRadiantFraction = BoxCase.GainRadiantFraction,
        };
    }

    public void Keep() => state.Save(kept);

    public void GoBack() => state.Load(kept);

    // The step is linear in the heat, so two trials tell the heat that lands on the set point.
    public double Step(double setPointC, double leastW, double mostW)
    {
        const double trialW = 1000;
        state.Save(tried);
        double withoutC = Try(0), withC = 0;
        if (leastW < mostW)
        {
            state.Load(tried);
            withC = Try(trialW);
        }

        double plantW = leastW < mostW ? Math.Clamp((setPointC - withoutC) / (withC - withoutC) * trialW, leastW, mostW) : 0;
        state.Load(tried);
        Try(plantW);
        return plantW;
    }

    public double AirC(int zone) => state.AirBelowC;

    public double ImbalanceW(double plantW) => Math.Abs(model.LastFluxes.HeatResidualW);

    private double Try(double heatW)
    {
        forcing.HeatW = heatW;
        forcing.HeatAboveFraction = 0.5;
        model.Step(state, in forcing, BoxSky.StepMinutes * 60);
        return state.AirBelowC;
    }

    private OpaqueFace Face(Facing facing) => box.Opaque.First(o => o.Facing == facing);

    private ShellPart Opaque(Facing facing, double areaM2)
    {
        Layer[] layers = Face(facing).Layers;
        return new ShellPart
        {
            AreaM2 = areaM2,
            CoreWPerM2K = 1 / layers.Sum(l => BuildUp.LayerM2KPerW(l.ThicknessM, l.ConductivityWPerMK)),
            CapacityJPerM2K = layers.Sum(l => l.ThicknessM * l.DensityKgPerM3 * l.SpecificHeatJPerKgK),
            InnerEmissivity = box.Emissivity,
            OuterEmissivity = box.Emissivity,
            OuterRoughnessFactor = HouseFilms.RoughRoughnessFactor,
        };
    }
}
