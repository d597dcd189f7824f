using Glazewright.Design.Catalogues;
using Glazewright.Design.Contracts;
using Glazewright.Design.Duty;
using Glazewright.Design.Form;
using Glazewright.Design.Layout;
using Glazewright.Design.Plant;
using Glazewright.Science.Air;
using Glazewright.Science.Flow;

namespace Glazewright.Design.Behaviour;

/// <summary>Fans, louvers, wind and fog.</summary>
internal static class AirBehaviour
{
    /// <summary>Pressure coefficients of a fan wall in the wind and an intake in its lee (common practice).</summary>
    public const double WindAgainstRatio = 0.7 + 0.3;

    /// <summary>Air turns back behind a step for about six of its heights (textbook: five to seven).</summary>
    private const double ReattachRatio = 6;

    public static ExhaustBehaviour? Exhaust(
        PlantInput input, BuildingForm form, DutyResult duty, PlantResult plant, LayoutResult layout, Catalogue catalogue)
    {
        if (plant.Exhaust?.Choice is not { } fans || fans.Wet.Count == 0)
        {
            return null;
        }

        AirState outside = duty.Air.Summer;
        double density = outside.DensityKgPerM3;
        List<FanEntry> entries = [.. fans.Fans.Select(f => catalogue.Fans.First(e => e.Id == f.Entry))];
        FanGroup[] groups = [.. entries.GroupBy(f => f.Id).Select(g => new FanGroup(Pick.Curve(g.First().Points, density), g.Count()))];
        double flow = fans.Wet[^1].FlowM3PerS;
        double needed = ExhaustSizing.NeededM3PerS(duty);
        Intake intake = ExhaustSizing.Settle(
            input, form, catalogue, entries, Intake.For(input, form, catalogue, needed, density), needed, density).Intake;
        FlowAt Point(double openDeg, double windMs, List<AirPath> path)
        {
            FanSystem.TryFind(groups, path, density, out var p);
            return new FlowAt(openDeg, windMs, p.FlowM3PerS, p.StaticPa, p.BeyondTested);
        }

        AirPath Louver(double angleDeg) => new AirPath.Louver(Math.Max(fans.LouverGrossM2, 0.01), intake.Louver.FreeFraction, angleDeg, intake.Louver.DischargeCoefficient);
        EqList<FlowAt> byAngle = ((double[])[30, 45, 60, 90]).Select(angle => Point(
            angle, 0, [Louver(angle), .. intake.Dry(0).Where(p => p.Name != "intake louvers").Select(p => p.Path)])).ToEqList();
        EqList<FlowAt> byWind = Steps.WindsMs(input.Metric).Select(windMs => Point(
            90, windMs, [.. intake.Wet(0).Select(p => p.Path), new AirPath.Wind(WindAgainstRatio * 0.5 * density * windMs * windMs)])).ToEqList();
        DesignDayRun day = DesignDayAir.Of(outside, duty, fans.Wet, plant.WetWall?.Choice, plant.Fog?.Choice);
        IReadOnlyList<AirState> stations = day.Run.Stations;
        double wayM = input.Equipment.FanFace is FaceName.End1 or FaceName.End2 ? form.LengthM : form.WidthM;
        EqList<AirAt> along = Enumerable.Range(0, 5).Select(q =>
        {
            AirState s = stations[q * (stations.Count - 1) / 4];
            return new AirAt(wayM * q / 4, s.DryBulbC, s.RelativeHumidityFraction);
        }).ToEqList();
        double upper = UpperFans.ClothOf(plant.Curtain, plant.SecondCurtain) is { } cloth ? UpperFans.NeededM3PerS(form, duty, cloth, density) : 0;
        int upperFans = UpperFans.Of(UpperFans.ToSize, input, form, duty, UpperFans.ClothOf(plant.Curtain, plant.SecondCurtain), catalogue, density)?.Count ?? 0;
        return new ExhaustBehaviour(
            byAngle, byWind, flow / form.VolumeM3 * 3600, along, Farthest(day.Inlet, flow, duty.Air.Load, input.Equipment.TemperatureRiseK) * wayM,
            DeadCorner(form, input, layout), upper, upperFans);
    }

    // A longer house of the same section at the same air: loads grow with length.
    private static double Farthest(AirState inlet, double flow, AirLoad load, double riseK)
    {
        double Rise(double k) => AlongHouse.March(
            inlet, flow, load with { SolarW = k * load.SolarW, ConductanceWPerK = k * load.ConductanceWPerK, PlantedM2 = k * load.PlantedM2 }).HottestC - inlet.DryBulbC;
        return Rise(5) < riseK ? 5 : Rise(0.05) > riseK ? 0 : Science.Roots.Bracketed.Find(k => Rise(k) - riseK, 0.05, 5, 1e-4).Argument;
    }

    private static double DeadCorner(BuildingForm form, PlantInput input, LayoutResult layout)
    {
        FaceName wall = LayoutInput.Opposite(input.Equipment.FanFace);
        bool end = wall is FaceName.End1 or FaceName.End2;
        double wallM = end ? form.WidthM : form.LengthM;
        (double From, double To)[] open = [.. layout.Placed.Where(p => p.Face == wall && p.Kind is PlacedKind.WetWall or PlacedKind.Louver)
            .Select(p => end ? (p.Corner.YM, p.Corner.YM + p.Size.YM) : (p.Corner.XM, p.Corner.XM + p.Size.XM))];
        if (open.Length == 0)
        {
            return 0;
        }

        double step = Math.Max(Math.Max(open.Min(o => o.From), wallM - open.Max(o => o.To)), 0);
        return Math.Min(ReattachRatio * step, end ? form.LengthM : form.WidthM);
    }

    // More than any house's air takes.
    private const double MostKgPerS = 50;

    public static FogBehaviour? Fog(BuildingForm form, DutyResult duty, PlantResult plant, LayoutResult layout)
    {
        if (plant.Fog?.Choice is not { } fog)
        {
            return null;
        }

        // Large drops of the spray, nine tenths of the water in smaller ones (common practice by pressure).
        double dropM = fog.PressurePa switch { >= 10e6 => 20e-6, >= 5e6 => 30e-6, >= 2e6 => 50e-6, _ => 150e-6 };
        AirState air = duty.Air.Summer;
        double flow = plant.FansOnDesignDay?.FlowM3PerS ?? 0.5 * form.VolumeM3 / 3600;
        flow = fog.Cooling?.FlowM3PerS ?? flow;
        air = DesignDayAir.Inlet(air, plant.WetWall?.Choice);
        double density = air.DensityKgPerM3;
        AirState damp = AirState.FromRelativeHumidity(Math.Clamp(air.DryBulbC, 5, 45), 0.8, air.PressurePa);
        DropletFate here = Droplet.Fate(dropM, Math.Clamp(air.DryBulbC - air.WetBulbC, 0.05, 40), density);
        DropletFate there = Droplet.Fate(dropM, Math.Clamp(damp.DryBulbC - damp.WetBulbC, 0.05, 40), density);
        PlacedItem[] lines = [.. layout.Placed.Where(p => p.Kind == PlacedKind.FogLine)];
        double cropM = layout.Placed.Where(p => p.Kind == PlacedKind.Bench).Select(p => p.Size.ZM).DefaultIfEmpty(0).Max() + 0.3;
        double acrossM = lines.Where(l => l.IsFogAtIntake).Sum(l => l.Size.XM + l.Size.YM);
        double lineM = lines.Sum(l => l.Size.XM + l.Size.YM) - acrossM;
        double room = FogHold.All(air, Math.Clamp(flow, 0.01, 1e4), duty.Air.Load, MostKgPerS, FogSizing.DampestFraction).WaterKgPerS;
        double stayS = form.VolumeM3 / flow;
        double taken = Math.Min(fog.KgPerS * fog.EvaporatedFraction, room) / fog.KgPerS;
        return new FogBehaviour(
            dropM, here.LifetimeS, here.FallM, there.LifetimeS, there.FallM, lines.Length > 0 ? Math.Max(lines[0].Corner.ZM - cropM, 0) : 0, lines.Length,
            fog.Nozzles > fog.IntakeNozzles ? lineM / (fog.Nozzles - fog.IntakeNozzles) : 0,
            fog.IntakeNozzles > 0 ? acrossM / fog.IntakeNozzles : 0, room, taken * (1 - Math.Exp(-stayS / Math.Max(here.LifetimeS, 1e-6))));
    }
}
