using Glazewright.Design.Brief;
using Glazewright.Design.Catalogues;
using Glazewright.Design.Contracts;
using Glazewright.Design.Duty;
using Glazewright.Design.Form;
using Glazewright.Design.Plant;
using Glazewright.Science.Flow;
using static Glazewright.Design.Plant.PlantWords;

namespace Glazewright.Design.Choices;

/// <summary>Each quantity the job fixes, against what is asked of it and what we would have chosen.</summary>
internal static class FixedChoices
{
    public static IEnumerable<FixedChoice> Of(
        PlantInput input, BuildingForm form, DutyResult duty, PlantResult plant, PlantResult ours, Catalogue catalogue)
    {
        EquipmentChoice e = input.Equipment;
        if (e.ExhaustFixed.Count > 0 && plant.Exhaust is { } fans)
        {
            double flow = fans.Choice.Wet[^1].FlowM3PerS;
            yield return new FixedChoice(
                "Fans: " + Counted(fans.Choice.Fans.Select(f => f.Entry)),
                Text($"{Cfm(duty.VentilationM3PerS)} cfm"),
                Text($"{Cfm(flow)} cfm at {InWg(fans.Choice.Wet[^1].StaticPa)} in. w.g."),
                flow / Math.Max(duty.VentilationM3PerS, 0.01) - 1,
                ours.Exhaust is { } x ? Text($"{Counted(x.Choice.Fans.Select(f => f.Entry))}: {Cfm(x.Choice.Wet[^1].FlowM3PerS)} cfm") : "none");
        }

        if (e.WetWallWidthM > 0 && plant.WetWall is { } pad)
        {
            double most = catalogue.Pads.First(p => p.Id == pad.Choice.Entry).MostFaceMs;
            yield return new FixedChoice(
                Text($"Wet wall {pad.Choice.WidthM / 0.3048:0.0} × {pad.Choice.HeightM / 0.3048:0.0} ft"),
                Text($"at most {Fpm(most)} fpm"),
                Text($"{Fpm(pad.Choice.FaceSpeedMs)} fpm, {100 * pad.Choice.Effectiveness:0} % effective"),
                most / pad.Choice.FaceSpeedMs - 1,
                ours.WetWall is { } x ? Text($"{x.Choice.Entry}, {x.Choice.WidthM / 0.3048:0.0} × {x.Choice.HeightM / 0.3048:0.0} ft, with the fans we would take") : "none");
        }

        if (e.FogNozzles > 0 && plant.Fog is { } fog)
        {
            yield return new FixedChoice(
                Text($"{fog.Choice.Nozzles} fog nozzles"),
                Text($"{Gph(fog.Choice.KgPerS * fog.Choice.EvaporatedFraction / Math.Max(1 + fog.Margin, 0.01))} gal/h evaporated"),
                Text($"{Gph(fog.Choice.KgPerS * fog.Choice.EvaporatedFraction)} gal/h{(fog.Choice.Cooling is { } hot && hot.WaterKgPerS < 0.99 * fog.Choice.KgPerS * fog.Choice.EvaporatedFraction ? Text($", of which the hottest day's air takes up {Gph(hot.WaterKgPerS)}") : "")}"),
                fog.Margin,
                ours.Fog is { } x ? Text($"{x.Choice.Nozzles} nozzles") : "none");
        }

        if (e.HeatersFixed.Count > 0 && plant.Heat is { } heat)
        {
            double needW = HeatAsked.Of(duty, plant.Pressure).NeedW;
            double heatW = heat.Choice.Heaters.Sum(h => h.OutputW) + e.BenchPipeW;
            yield return new FixedChoice(
                "Heaters: " + Counted(heat.Choice.Heaters.Select(h => h.Entry)),
                Text($"{KBtu(needW)} kBtu/h"),
                Text($"{KBtu(heatW)} kBtu/h; with the largest dead {FloorF(heat.Choice.OneOutHoldsOpenC)}"),
                heat.Margin,
                ours.Heat is { } x ? Counted(x.Choice.Heaters.Select(h => h.Entry)) : "none");
        }

        if (e.CirculationFixed.Count > 0 && plant.Circulation is { } air)
        {
            double need = Circulation.FlowM3PerS(Math.Max(form.FloorAreaM2, 1));
            yield return new FixedChoice(
                Text($"{air.Count} circulation fans"),
                Text($"{Cfm(need)} cfm, 2 cfm a square foot"),
                Text($"{Cfm(air.Count * air.FlowEachM3PerS)} cfm, {Mph(air.CropSpeedMs)} mph around the loop"),
                air.Count * air.FlowEachM3PerS / need - 1,
                ours.Circulation is { } x ? Text($"{x.Count}") : "none");
        }

        if (e.CurtainHeightM > 0 && plant.Curtain is { } cloth)
        {
            double mostM = Math.Min(form.Roof.LeftEaveM, form.Roof.RightEaveM);
            yield return new FixedChoice(
                Text($"Curtain at {cloth.HeightM / 0.3048:0.0} ft"),
                Text($"under the lower eave, {mostM / 0.3048:0.0} ft"),
                cloth.HeightM <= mostM ? "closes from wall to wall" : Text($"{(cloth.HeightM - mostM) / 0.0254:0} in too high: it cannot close"),
                mostM / cloth.HeightM - 1,
                ours.Curtain is { } x ? Text($"{x.HeightM / 0.3048:0.0} ft") : "none");
        }

        if (e.PositivePressurePa > 0 && plant.Pressure is { } pressure)
        {
            yield return new FixedChoice(
                "Positive pressure",
                Text($"{InWg(e.PositivePressurePa)} in. w.g."),
                Text($"{InWg(pressure.HeldPa)} in. w.g. in calm air; fails at {Mph(pressure.FailsAtWindMs)} mph"),
                pressure.HeldPa / e.PositivePressurePa - 1,
                "not sized by us: it is the job's wish");
        }
    }

    private static string Counted(IEnumerable<string> entries) =>
        string.Join(", ", entries.GroupBy(e => e).Select(g => Text($"{g.Count()} × {g.Key}")));
}
