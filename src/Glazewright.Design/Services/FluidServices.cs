using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Plant;
using Glazewright.Science.Flow;
using Glazewright.Science.Heat;
using LotFuel = Glazewright.Design.Brief.FuelKind;
using SoldFuel = Glazewright.Science.Heat.FuelKind;

namespace Glazewright.Design.Services;

/// <summary>Gas, water and drain.</summary>
internal static class FluidServices
{
    /// <summary>Water a crop is given on a hot day, m over the planted area: 0.4 gal/ft² (common practice), share that leaches included.</summary>
    public const double IrrigationM = 0.4 * 0.003785411784 / 0.09290304;

    /// <summary>Hours irrigation runs in a day (common practice: a zone after the other in the morning).</summary>
    public const double IrrigationH = 6;

    /// <summary>Share of irrigation that runs through (common practice: 10 to 20 %).</summary>
    public const double LeachFraction = 0.15;

    /// <summary>Hours a day wet wall and fog work on the design day.</summary>
    public const double HotH = 8;

    /// <summary>A hose in use, m³/s: 5 gal/min.</summary>
    public const double HoseM3PerS = 5 * 0.003785411784 / 60;

    /// <summary>Share of the hot hours fog is on: it pulses (common practice).</summary>
    public const double FogOnFraction = 0.5;

    private const double WaterKgPerM3 = 998;

    // Air a burner takes, m³ per J of gross input: about 12.5 ft³ per 1,000 Btu with a quarter of excess (common practice).
    private const double CombustionAirM3PerJ = 12.5 * 0.0283168 / (1000 * Fuel.BtuJ);

    /// <summary>Pressure drop gas mains are sized for, Pa: 0.5 in. w.c.</summary>
    public const double GasDropPa = 0.5 * 249.08891;

    public static EqList<GasLine> Burners(ServicesInput input, EqList<PlantResult> plants) => input.Utilities.Fuel == LotFuel.None
        ? []
        : plants.SelectMany(p => (p.Heat?.Choice.Heaters ?? []).Where(h => !h.Electric)
            .Select(h => new GasLine(p.House, h.Id, h.Entry, h.OutputW, h.OutputW / h.EfficiencyFraction, h.SealedCombustion, h.OutputW / h.EfficiencyFraction * CombustionAirM3PerJ))
            .Concat(p.BenchPipeW > 0
                ? [new GasLine(p.House, $"{p.House}/boiler", "boiler of the bench pipe, 85 %", p.BenchPipeW, p.BenchPipeW / BoilerEfficiency, true, p.BenchPipeW / BoilerEfficiency * CombustionAirM3PerJ)]
                : [])).ToEqList();

    /// <summary>Efficiency of the bench pipe's boiler (common practice).</summary>
    public const double BoilerEfficiency = 0.85;

    /// <summary>What all burners take; run and pipe are measured later.</summary>
    public static GasNeed Main(ServicesInput input, EqList<GasLine> burners)
    {
        LotFuel fuel = input.Utilities.Fuel;
        double inputW = burners.Sum(b => b.InputW);
        SoldFuel sold = fuel switch
        {
            LotFuel.Propane => SoldFuel.PropaneGallon,
            LotFuel.NaturalGas => SoldFuel.NaturalGasTherm,
            _ => SoldFuel.FuelOilGallon,
        };
        double perHour = inputW * 3600 / Fuel.HeatJPerUnit(sold);
        // Vapour: natural gas 1,030 Btu/ft³ (extension table, read), propane 2,516 Btu/ft³ (from memory).
        double heatJPerM3 = fuel switch
        {
            LotFuel.NaturalGas => 1030 * Fuel.BtuJ / 0.0283168466,
            LotFuel.Propane => 2516 * Fuel.BtuJ / 0.0283168466,
            _ => Fuel.HeatJPerUnit(SoldFuel.FuelOilGallon) / 0.003785411784,
        };
        double flow = inputW / heatJPerM3;
        double leastPa = fuel switch { LotFuel.Propane => 10.5 * 249.08891, LotFuel.NaturalGas => 5 * 249.08891, _ => 0 };
        return new GasNeed(fuel, inputW, flow, perHour, input.Utilities.FuelPressurePa, leastPa, 0, 0, "")
        {
            Tank = fuel == LotFuel.Propane && input.ColdestC is { } coldestC ? PropaneTank.For(inputW, coldestC) : null,
        };
    }

    /// <summary>The burners with first sizes of their branches: by the longest run, as the main.</summary>
    public static EqList<GasLine> Branched(EqList<GasLine> burners, GasNeed main) => burners
        .Select(b => b with { Pipe = Pipe(main.Fuel, FlowM3PerS(main, b), main.RunM).Name ?? "" }).ToEqList();

    /// <summary>Gas of one burner, m³/s at standard conditions.</summary>
    public static double FlowM3PerS(GasNeed? main, GasLine burner) => main is null ? 0 : main.FlowM3PerS * burner.InputW / Math.Max(main.InputW, 1);

    /// <summary>First size of a gas pipe; empty for oil, or where none of the table serves.</summary>
    public static string PipeName(LotFuel fuel, double flowM3PerS, double longestM) => Pipe(fuel, flowM3PerS, longestM).Name ?? "";

    /// <summary>Main and branches again, now that the longest run is measured.</summary>
    public static (GasNeed Main, EqList<GasLine> Burners) Measured(GasNeed main, EqList<GasLine> burners, double longestM)
    {
        (double InsideM, string Name) pipe = Pipe(main.Fuel, main.FlowM3PerS, longestM);
        GasNeed measured = main with { RunM = longestM, PipeM = pipe.InsideM, PipeName = pipe.Name ?? "" };
        return (measured, Branched(burners, measured));
    }

    // Oil runs in tube of the burner's maker.
    private static (double InsideM, string Name) Pipe(LotFuel fuel, double flowM3PerS, double runM) => fuel is LotFuel.Oil
        ? default
        : PipeSizes.Gas(flowM3PerS, runM, GasDropPa, fuel == LotFuel.NaturalGas ? GasPipe.NaturalGasRatio : GasPipe.PropaneRatio);

    public static EqList<WaterLine> Users(ServicesInput input, EqList<PlantResult> plants)
    {
        List<WaterLine> lines = [];
        foreach (PlantResult plant in plants)
        {
            string id = plant.House;
            if (plant.WetWall?.Choice is { } pad)
            {
                double draw = pad.EvaporationKgPerS * (1 + pad.BleedFraction) / WaterKgPerM3;
                lines.Add(new WaterLine(id, $"{id}/wet-wall", "Wet wall make-up: evaporation and bleed", draw, draw * HotH * 3600, "clean; hardness sets the bleed"));
            }

            if (plant.Fog?.Choice is { } fog)
            {
                double draw = fog.KgPerS / WaterKgPerM3;
                // Fog that cools sprays through the hot hours what its design day takes; fog that moistens pulses.
                double on = fog.Cooling is { } c && fog.KgPerS * fog.EvaporatedFraction > 0 ? Math.Min(c.WaterKgPerS / (fog.KgPerS * fog.EvaporatedFraction), 1) : FogOnFraction;
                string how = fog.Cooling is null ? "half of the hot hours" : string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{100 * on:0} % of the hot hours");
                lines.Add(new WaterLine(id, $"{id}/fog", $"Fog, all nozzles on; {how}", draw, draw * on * HotH * 3600, "filtered to 5 µm, softened or RO, no standing warm lines"));
            }

            ServedHouse house = input.Houses.First(h => h.Id == id);
            double dayM3 = IrrigationM * house.PlantedFraction * house.WidthM * house.LengthM;
            if (dayM3 > 0)
            {
                lines.Add(new WaterLine(id, $"{id}/irrigation", "Irrigation allowance, 0.4 gal a square foot planted in 6 h", dayM3 / (IrrigationH * 3600), dayM3, "filtered; backflow preventer before any injector"));
            }

            lines.Add(new WaterLine(id, $"{id}/hose", "Hose bib, one in use", HoseM3PerS, HoseM3PerS * 1800, "vacuum breaker"));
        }

        return lines.Select(w => w with { Pipe = PipeSizes.Supply(w.PeakM3PerS) }).ToEqList();
    }

    public static WaterNeed Supply(ServicesInput input, EqList<WaterLine> users)
    {
        double peak = users.Sum(u => u.PeakM3PerS);
        double day = users.Sum(u => u.DayM3);
        double well = input.Utilities.WellM3PerS;
        double tank = Math.Max(peak - well, 0) * HotH * 3600;
        return new WaterNeed(peak, day, well, well * 86_400, Math.Min(tank, day), PipeSizes.Supply(peak));
    }

    public static EqList<DrainLine> Drains(ServicesInput input, EqList<PlantResult> plants)
    {
        List<DrainLine> lines = [];
        foreach (PlantResult plant in plants)
        {
            string id = plant.House;
            if (plant.WetWall?.Choice is { } pad)
            {
                double bleed = pad.EvaporationKgPerS * pad.BleedFraction / WaterKgPerM3;
                lines.Add(new DrainLine(id, $"{id}/wet-wall-bleed", "Wet wall bleed", bleed, bleed * HotH * 3600, "salts, pad dust"));
                lines.Add(new DrainLine(id, $"{id}/sump-dump", "Sump emptied in half an hour for cleaning", pad.SumpM3 / 1800, pad.SumpM3, "salts, algae, disinfectant"));
            }

            ServedHouse house = input.Houses.First(h => h.Id == id);
            double leach = LeachFraction * IrrigationM * house.PlantedFraction * house.WidthM * house.LengthM;
            if (leach > 0)
            {
                lines.Add(new DrainLine(id, $"{id}/leachate", "Run-through of irrigation", leach / (IrrigationH * 3600), leach, "fertiliser: catch or as the authority allows"));
            }

            double condensing = (plant.Heat?.Choice.Heaters ?? []).Where(h => !h.Electric && h.EfficiencyFraction > 0.9).Sum(h => h.OutputW / h.EfficiencyFraction);
            if (condensing > 0)
            {
                // A tenth of a litre for each kWh of gross input is usual; 0.16 is the most that can condense (common practice).
                double condensate = 0.1e-3 * condensing / 3.6e6;
                lines.Add(new DrainLine(id, $"{id}/condensate", "Condensate of condensing heaters", condensate, condensate * 86_400, "acid: neutraliser"));
            }
        }

        return lines.Select(d => d with { Pipe = PipeSizes.Drain(d.PeakM3PerS) }).ToEqList();
    }
}
