using Glazewright.Design.Brief;
using Glazewright.Design.Form;
using Glazewright.Design.GainTables;
using Glazewright.Design.Plant;
using Glazewright.Design.Year;
using Glazewright.Science.Climate;

namespace Glazewright.Design.Calibration;

/// <summary>A built house as a replay needs it: the climate model's sizes, what its equipment can do, and what the sun of each step of the log does inside.</summary>
internal sealed class ReplayHouse
{
    private const double FilmsM2KPerW = 0.168; // the standard films that a stated U contains
    private const double StackOverWind = 1.18;

    private ReplayHouse(HouseParameters parameters, LogSun sun)
    {
        Parameters = parameters;
        Sun = sun;
    }

    /// <summary>The model's sizes as stated.</summary>
    public HouseParameters Parameters { get; }

    /// <summary>The sun inside, a value a step.</summary>
    public LogSun Sun { get; }

    /// <summary>Cloth of the second curtain.</summary>
    public required CurtainCloth SecondCloth { get; init; }

    /// <summary>Share of the floor a drawn curtain covers.</summary>
    public double CurtainCovers { get; init; } = 0.98;

    /// <summary>Leaf area over floor area, a value a step.</summary>
    public required double[] LeafArea { get; init; }

    /// <summary>Share of the crop plane's light that leaves catch for a leaf area times k.</summary>
    public required Func<int, double, double> Covered { get; init; }

    public double DeepGroundC { get; init; } = 12;

    public double WindFactor { get; init; } = 1;

    public double RoofVentM2 { get; init; }

    public double SideVentM2 { get; init; }

    public double LampW { get; init; }

    public double LampRadiantFraction { get; init; } = 0.4;

    public double HeatersW { get; init; }

    public double RailWPerK { get; init; }

    public double GrowWPerK { get; init; }

    /// <summary>Flow by the share of the fans that run, m³/s.</summary>
    public Func<double, double> FlowM3PerS { get; init; } = _ => 0;

    /// <summary>Effectiveness of the wet wall by that share.</summary>
    public Func<double, double> Effectiveness { get; init; } = _ => 0;

    public double FogKgPerS { get; init; }

    public double FogEfficiency { get; init; } = 0.9;

    /// <summary>The model's sizes with the fitted ones put in.</summary>
    public HouseParameters With(in SizeValues v) => Parameters with
    {
        UpperClear = Parameters.UpperClear with { CoreWPerM2K = Parameters.UpperClear.CoreWPerM2K * v[FittedSize.Cover] },
        LowerClear = Parameters.LowerClear with { CoreWPerM2K = Parameters.LowerClear.CoreWPerM2K * v[FittedSize.Cover] },
        Curtain = Fitted(Parameters.Curtain, v[FittedSize.Curtain]),
        SecondCurtain = Fitted(SecondCloth, v[FittedSize.Curtain]),
        MassJPerK = v[FittedSize.Mass] * 1000 * Parameters.FloorAreaM2,
        MassSurfaceM2 = Math.Max(Parameters.MassSurfaceM2, 0.1 * Parameters.FloorAreaM2),
        LeakageWindM2 = Parameters.LeakageWindM2 * v[FittedSize.Leaks],
        LeakageStackM3PerSRootK = Parameters.LeakageStackM3PerSRootK * v[FittedSize.Leaks],
        WetFloorFraction = v[FittedSize.WetFloor],
        LeastStomatalResistanceSPerM = v[FittedSize.Stomata],
    };

    private static CurtainCloth Fitted(CurtainCloth cloth, double times) => cloth with
    {
        UpperEmissivity = Math.Min(cloth.UpperEmissivity * times, 0.95),
        LowerEmissivity = Math.Min(cloth.LowerEmissivity * times, 0.95),
        PermeabilityMPerSK = cloth.PermeabilityMPerSK * times,
    };

    /// <summary>A house by its sizes.</summary>
    public static ReplayHouse Of(PlainHouse h, HouseLog log)
    {
        double volumeM3 = h.FloorM2 * (h.BelowM + h.AboveM), leakM2 = h.LeakPerHour * volumeM3 / 3600 / 4;
        double core = 1 / Math.Max(1 / h.CoverWm2K - FilmsM2KPerW, 0.004);
        double perimeterM = 4 * Math.Sqrt(h.FloorM2);
        double cosine = Math.Clamp(1 / h.RoofShare, 0.3, 1);
        HouseParameters parameters = new()
        {
            FloorAreaM2 = h.FloorM2,
            AirBelowM3 = h.FloorM2 * h.BelowM,
            AirAboveM3 = h.FloorM2 * h.AboveM,
            UpperClear = new ShellPart
            {
                AreaM2 = h.FloorM2 * h.RoofShare,
                CoreWPerM2K = core,
                CapacityJPerM2K = h.CoverJPerM2K,
                SlopeCosine = cosine,
                SkyViewFraction = 0.5 + 0.5 * cosine,
            },
            LowerClear = new ShellPart { AreaM2 = h.FloorM2 * h.WallShare, CoreWPerM2K = core, CapacityJPerM2K = h.CoverJPerM2K },
            Curtain = Cloth(h.First),
            CurtainTravelM = h.CurtainTravelM,
            FloorToCurtainViewFraction = Math.Clamp(YearHouse.View(Math.Sqrt(h.FloorM2), Math.Sqrt(h.FloorM2), h.BelowM) + (h.WallShare < 0.2 ? 0.3 : 0), 0, 0.95),
            EdgeLossWPerK = h.EdgeWPerMK * perimeterM,
            MassSurfaceM2 = h.FloorM2,
            LeakageWindM2 = leakM2,
            LeakageStackM3PerSRootK = StackOverWind * leakM2,
            RoofVentHeightM = h.VentHeightM,
        };
        double[] leaves = new double[log.Count];
        for (int i = 0; i < leaves.Length; i++)
        {
            double days = (double)i * log.StepMinutes / 1440;
            leaves[i] = h.FirstLeafAreaIndex + (h.GrownLeafAreaIndex - h.FirstLeafAreaIndex) * Math.Min(1, days / h.LeafDays);
        }

        double units = -Math.Log(1 - Math.Min(h.PadEffectiveness, 0.99));
        return new ReplayHouse(parameters, LogSun.Of(h, log))
        {
            SecondCloth = Cloth(h.Second),
            LeafArea = leaves,
            Covered = (i, k) => 1 - Math.Exp(-0.7 * leaves[i] * k),
            DeepGroundC = h.DeepGroundC,
            WindFactor = h.WindFactor,
            RoofVentM2 = h.FloorM2 * h.RoofVentFraction,
            SideVentM2 = h.FloorM2 * h.SideVentFraction,
            LampW = h.LampsWm2 * h.FloorM2,
            HeatersW = h.HeatersWm2 * h.FloorM2,
            RailWPerK = h.RailWPerM2K * h.FloorM2,
            GrowWPerK = h.GrowWPerM2K * h.FloorM2,
            FlowM3PerS = share => share * h.FansPerHour * volumeM3 / 3600,
            Effectiveness = share => share > 0 ? 1 - Math.Exp(-units * Math.Pow(Math.Max(share, 0.05), -0.35)) : 0,
            FogKgPerS = h.FogKgPerM2H / 3600 * h.FloorM2,
        };
    }

    /// <summary>A house of a job, with the plant that was chosen for it.</summary>
    public static ReplayHouse Of(YearInput input, BuildingForm form, GainTable gains, PlantResult plant, Site site, HouseLog log)
    {
        YearHouse house = YearHouse.Build(input, form, plant);
        CropPeriod?[] crops = [.. Enumerable.Range(0, log.Count).Select(i => CropOf(input, log, i))];
        ExhaustPlant? exhaust = plant.Exhaust?.Choice;
        double[] flow = [0, .. (exhaust?.Dry ?? []).OrderBy(p => p.FansOn).Select(p => p.FlowM3PerS)];
        double effectiveness = plant.WetWall?.Choice.Effectiveness ?? 0, units = -Math.Log(1 - Math.Min(effectiveness, 0.99));
        double most = flow[^1];
        return new ReplayHouse(house.Parameters, LogSun.Of(input, gains, house, site, log))
        {
            SecondCloth = house.Parameters.SecondCurtain ?? house.Parameters.Curtain,
            CurtainCovers = house.CurtainCovers,
            LeafArea = [.. crops.Select(c => c is null ? 0 : c.LeafAreaIndex * c.PlantedFraction)],
            Covered = (i, k) => crops[i] is { } c ? c.PlantedFraction * (1 - Math.Exp(-gains.CanopyExtinctionFraction * c.LeafAreaIndex * k)) : 0,
            DeepGroundC = MeanOutside(log),
            WindFactor = house.WindFactor,
            RoofVentM2 = plant.Vents?.PassingRoofM2 ?? 0,
            SideVentM2 = plant.Vents?.PassingSideM2 ?? 0,
            LampW = plant.LampW,
            LampRadiantFraction = 0.45,
            HeatersW = (plant.Heat?.Choice.Heaters.Sum(x => x.OutputW) ?? 0) + plant.BenchPipeW,
            FlowM3PerS = Flow,
            Effectiveness = share => share > 0 && most > 0 ? 1 - Math.Exp(-units * Math.Pow(Math.Max(Flow(share) / most, 0.05), -0.35)) : 0,
            FogKgPerS = plant.Fog?.Choice.KgPerS ?? 0,
            FogEfficiency = plant.Fog?.Choice.EvaporatedFraction ?? 0.9,
        };

        double Flow(double share)
        {
            double fans = Math.Clamp(share, 0, 1) * (flow.Length - 1);
            int n = Math.Min((int)fans, flow.Length - 1), next = Math.Min(n + 1, flow.Length - 1);
            return flow[n] + (fans - n) * (flow[next] - flow[n]);
        }
    }

    private static double MeanOutside(HouseLog log)
    {
        double sum = 0;
        foreach (double c in log.Of(LoggedQuantity.OutsideTemperature))
        {
            sum += c;
        }

        return sum / log.Count;
    }

    private static CropPeriod? CropOf(YearInput input, HouseLog log, int step)
    {
        int week = Math.Min((log.At(step).DayOfYear - 1) / 7 + 1, 52);
        return input.Schedule.FirstOrDefault(p => p.FromWeek <= p.ToWeek ? week >= p.FromWeek && week <= p.ToWeek : week >= p.FromWeek || week <= p.ToWeek);
    }

    private static CurtainCloth Cloth(PlainCurtain c) => new()
    {
        UpperEmissivity = c.Emissivity,
        LowerEmissivity = c.Emissivity,
        LongWaveTransmittance = c.LongWaveTransmittance,
        PermeabilityMPerSK = c.PermeabilityMPerSK,
    };
}
