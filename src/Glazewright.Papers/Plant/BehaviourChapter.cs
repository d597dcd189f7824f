using System.Globalization;
using Glazewright.Design.Behaviour;
using Glazewright.Design.Contracts;
using Glazewright.Design.Plant;
using Glazewright.Papers.Answers;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Reports;
using Glazewright.Papers.Sets;

namespace Glazewright.Papers.Plant;

/// <summary>The plant away from its one sizing point: wind, half-open louvers, dead corners, fog drops, mixing, curtain gaps, pressure, other kinds.</summary>
internal static class BehaviourChapter
{
    public static IEnumerable<Block> Of(PaperSource source, HouseResults house)
    {
        BehaviourResult b = house.Behaviour;
        Said said = new(source.Job.Units);
        bool us = source.Job.Units == UnitSystem.Us;
        if (b.Exhaust is { } x)
        {
            foreach (Block block in Exhaust(x, house.Plant, said, us))
            {
                yield return block;
            }
        }

        foreach (Block block in WetWallChapter.Of(source, house))
        {
            yield return block;
        }

        if (b.Fog is { } fog)
        {
            yield return new Block.Heading(2, "Fog");
            yield return new Block.Paragraph(
                $"Drops of {Whole(fog.DropM * 1e6)} µm are gone after {One(fog.LifeS)} s in the design day's air, {said.Text(fog.FallM, Unit.Metre)} below the nozzle; in air of 80 % humidity after {One(fog.DampLifeS)} s and {said.Text(fog.DampFallM, Unit.Metre)}. The nozzles hang {said.Text(fog.HeightM, Unit.Metre)} over the crop{(Math.Max(fog.FallM, fog.DampFallM) > fog.HeightM ? ": in damp air it gets wet, so stop the fog before 80 %" : "")}. {Whole(house.Plant.Fog?.Choice.Nozzles ?? 0)} nozzles on {fog.Lines} line{(fog.Lines == 1 ? "" : "s")}{(fog.SpacingM > 0 ? $", a nozzle each {said.Text(fog.SpacingM, Unit.Metre)} along the house" : "")}{(fog.IntakeSpacingM > 0 ? $", each {said.Text(fog.IntakeSpacingM, Unit.Metre)} across the intake" : "")}. Through the house the air can take at most {said.Text(fog.RoomKgPerS, Unit.KilogramPerSecond)} with {(house.Plant.Exhaust is null ? "half an air change an hour" : (house.Plant.Fog?.Choice.Cooling is { FansOn: > 0 } cool ? Whole(cool.FansOn) + (cool.FansOn == 1 ? " fan" : " fans") : "all fans") + " on")}; {Said.Percent(fog.VentedFraction)} % of the spray is taken up before {(house.Plant.Exhaust is null ? "that air leaves" : "the fans draw it out")}.{Hottest(house, said)}");
        }

        if (b.Season is { } season)
        {
            foreach (Block block in SeasonChapter.Of(season, house, said))
            {
                yield return block;
            }
        }

        if (b.Combustion is { } air)
        {
            yield return new Block.Heading(2, "Combustion air of heaters with gravity vents");
            yield return new Block.Paragraph(
                $"Danger: exhaust fans or a tight house draw flue gas back in; carbon monoxide kills. Take sealed heaters. Where the authority allows gravity vents: room for {said.Round(air.InputW, Unit.Watt)} of input {said.Round(air.RoomNeededM3, Unit.CubicMetre)}, the house has {said.Round(air.RoomM3, Unit.CubicMetre)}{(air.RoomEnough ? ", which does not count in a tight or exhausted house" : ": too little")}. Two openings, high and low, free area each: {Free(air.OutdoorM2, us)} straight outdoors or by upright duct, {Free(air.LevelDuctM2, us)} by level duct, {Free(air.IndoorM2, us)} to another room. US fuel gas code from memory: a licensed fitter and the adopted edition decide.");
        }

        if (b.Mixing is { } m)
        {
            yield return new Block.Heading(2, "Heat and mixing");
            yield return new Block.Paragraph(
                $"The loop of circulation fans is {said.Round(m.LoopM, Unit.Metre)} long: one turn takes {Whole(m.TurnS)} s, the house is mixed after about {One(m.MixS / 60)} min. On the design night the air comes back to the heater about {said.Text(m.SpreadK, Unit.Kelvin)} cooler than it left. A fan throws {said.Round(m.ThrowM, Unit.Metre)} and hands over after {said.Round(m.SpacingM, Unit.Metre)}{(m.SpacingM > m.ThrowM ? ": too far" : "")}. Instead of the heaters, {said.Round(m.PipeM, Unit.Metre)} of bench pipe would carry that night. A momentum estimate: prove it with smoke.");
        }

        if (house.Plant.Oscillating is { } o)
        {
            yield return new Block.Heading(2, "Oscillating fans over the crop");
            yield return new Block.TableOf(new Table(
                [new Column("Wish", 66), new Column("Reach", 30, Along.End), new Column("Floor one sweeps", 38, Along.End), new Column("Fans for this floor", 38, Along.End)],
                [
                    [$"Jet passing by: {said.Text(OscillatingPlant.PeakMs, Unit.MetrePerSecond)}", said.Text(o.RadiusM, Unit.Metre), said.Text(o.CoveredEachM2, Unit.SquareMetre), Whole(o.NeededByPeak)],
                    [$"Mean over a sweep: {said.Text(OscillatingPlant.MeanMs, Unit.MetrePerSecond)}", said.Text(o.MeanRadiusM, Unit.Metre), said.Text(o.CoveredByMeanM2, Unit.SquareMetre), Whole(o.NeededByMean)],
                ]));
            yield return new Block.Paragraph(
                $"{Whole(o.Count)} in the job, {said.Text(o.FlowEachM3PerS, Unit.CubicMetrePerSecond)} and {Whole(o.PowerEachW)} W each. The {(o.NeededByMean > o.NeededByPeak ? "mean" : "peak")} governs: {Whole(o.Needed)}{(o.Count >= o.Needed ? ", which are there" : o.Count >= Math.Min(o.NeededByPeak, o.NeededByMean) ? ": the other wish is held" : ": too few for either wish")}. At the far end of the peak's reach a leaf feels {said.Text(o.EdgePeakMs, Unit.MetrePerSecond)} while the jet points there and {said.Text(o.EdgeMeanMs, Unit.MetrePerSecond)} on average. Free jet without foliage: the best case; the circulation loop's own speed comes beside it. Its steps are among the calculations.");
        }

        if (b.Curtain is { } c)
        {
            yield return new Block.Heading(2, "Curtain opened by a gap");
            yield return new Block.TableOf(new Table(
                [
                    new Column("Gap along the house", 34), new Column("Air that trades places, night", 38, Along.End), new Column("Below the cloth", 25, Along.End), new Column("Above it", 25, Along.End),
                    new Column("Below, sunny morning", 25, Along.End), new Column("Above it", 25, Along.End),
                ],
                [
                    .. c.Night.Zip(c.Morning, (g, m) => (IReadOnlyList<string>)
                    [
                        g.GapM > 0 ? us ? $"{Whole(g.GapM / 0.0254)} in" : $"{Whole(1000 * g.GapM)} mm" : "drawn", said.Round(g.FlowM3PerS, Unit.CubicMetrePerSecond), said.Text(g.BelowC, Unit.Celsius), said.Text(g.AboveC, Unit.Celsius),
                        said.Text(m.BelowC, Unit.Celsius), said.Text(m.AboveC, Unit.Celsius),
                    ]),
                ]));
            yield return new Block.Paragraph(
                $"On the design night with the heat the drawn house asks; fully open that heat holds {said.Text(c.HalfOpenC, Unit.Celsius)}. Drawing {(c.Two is null ? "it" : "both")} saves {Said.Percent(c.NightSavedFraction)} % that night. By warmth alone a gap passes little air: what is felt when a cloth opens comes from fans and from the cold air that drops at once. The morning: as cold, heaters off, {Whole(c.MorningSunWm2)} W/m² of sun on the cloth; a gap lets sun through and, where the space above is the colder, warmth out; fully open the house comes to {said.Text(c.MorningOpenC, Unit.Celsius)}. Warm air above stays there unless fans stir it down.{Cloth(house.Plant)} Parked it is about {said.Text(c.StackM, Unit.Metre)} wide, {Said.Percent(c.StackShadeFraction)} % of the floor in its shade from above. Keep heaters, flues and lamps out of its clearance; open it slowly and in steps.");
        }

        if (b.Curtain?.Two is { } two)
        {
            yield return new Block.Heading(2, "Two curtains, each alone and both");
            yield return new Block.TableOf(new Table(
                [new Column("Drawn", 44), new Column("Saved on the design night", 64, Along.End), new Column("Sun kept from the crop", 64, Along.End)],
                [
                    ["the first", Said.Percent(two.FirstSavedFraction) + " %", Said.Percent(two.FirstShadeFraction) + " %"],
                    ["the second", Said.Percent(two.SecondSavedFraction) + " %", Said.Percent(two.SecondShadeFraction) + " %"],
                    ["both", Said.Percent(two.BothSavedFraction) + " %", Said.Percent(two.BothShadeFraction) + " %"],
                ]));
            yield return new Block.Paragraph(
                "By the trade's resistance of a cloth with still air, one after the other; what a weave leaves open passes as if there were no cloth. Each has its own drive and command; the bundles park one under the other at the same frame.");
        }

        if (b.Pressure is { } p)
        {
            yield return new Block.Heading(2, "Filter-fan pressure in wind");
            yield return new Block.TableOf(new Table(
                [new Column("Wind", 30), new Column("House over still air", 46, Along.End), new Column("Over the windward wall", 48, Along.End), new Column("Leaks in unfiltered", 48, Along.End)],
                [.. p.ByWind.Select(w => (IReadOnlyList<string>)[said.Text(w.WindMs, Unit.MetrePerSecond), said.Text(w.HousePa, Unit.Pascal), said.Text(w.LeastPa, Unit.Pascal), said.Round(w.UnfilteredM3PerS, Unit.CubicMetrePerSecond)])]));
            yield return new Block.Paragraph(
                $"With one door open {said.Text(p.DoorOpenPa, Unit.Pascal)} are left in calm air. Insect cloth for its air: {said.Text(p.ScreenM2, Unit.SquareMetre)} at 0.03 in. w.g. clean, doubled for dirt. A mode of its own: off while exhaust fans run.");
        }

        if (b.Kinds.Count > 0)
        {
            yield return new Block.Heading(2, "Other kinds of equipment");
            yield return new Block.TableOf(new Table(
                [new Column("Kind", 32), new Column("Size", 48), new Column("What it does", 52), new Column("Mind", 40)],
                [.. b.Kinds.Select(k => (IReadOnlyList<string>)[k.Kind + (k.InJob ? " (in the job)" : ""), k.Size, k.Holds, k.Caution])]));
        }
    }

    private static IEnumerable<Block> Exhaust(ExhaustBehaviour x, PlantResult plant, Said said, bool us)
    {
        yield return new Block.Heading(2, "Fans, louvers and wind");
        int rows = Math.Max(x.ByAngle.Count, x.ByWind.Count);
        yield return new Block.TableOf(new Table(
            [
                new Column("Louvers open", 26), new Column(plant.WetWall is null ? "Air" : "Air, pad off", 30, Along.End), new Column("Static", 28, Along.End),
                new Column("Wind on the fan wall", 32, Along.End), new Column("Air, design day", 28, Along.End), new Column("Static", 28, Along.End),
            ],
            [
                .. Enumerable.Range(0, rows).Select(i => (IReadOnlyList<string>)
                [
                    .. i < x.ByAngle.Count ? [Whole(x.ByAngle[i].OpenDeg) + "°", Flow(x.ByAngle[i], said), said.Text(x.ByAngle[i].StaticPa, Unit.Pascal)] : (string[])["", "", ""],
                    .. i < x.ByWind.Count ? [said.Text(x.ByWind[i].WindMs, Unit.MetrePerSecond), Flow(x.ByWind[i], said), said.Text(x.ByWind[i].StaticPa, Unit.Pascal)] : (string[])["", "", ""],
                ]),
            ]));
        yield return new Block.Paragraph("* past the fans' last tested point: a guess, motors run hot. Wind square on the fans with the intake in its lee, pressure coefficients 0.7 and −0.3 (common practice).", Quiet: true);
        yield return new Block.TableOf(new Table(
            [new Column("From the intake", 40), .. x.Along.Select(_ => new Column("", 26, Along.End))],
            [
                ["Distance", .. x.Along.Select(a => said.Round(a.FromIntakeM, Unit.Metre))],
                ["Temperature", .. x.Along.Select(a => said.Text(a.DryBulbC, Unit.Celsius))],
                ["Relative humidity", .. x.Along.Select(a => Said.Percent(a.HumidityFraction) + " %")],
            ]));
        string rise = us ? "14 F°" : "8 K";
        string upper = plant.Upper is { } u
            ? $" Above a drawn shade {Whole(u.Count)} upper fan{(u.Count == 1 ? "" : "s")} with an inlet in the other gable move {said.Round(u.FlowM3PerS, Unit.CubicMetrePerSecond)}, {Whole(u.Count * u.PowerEachW)} W; {said.Round(u.NeededM3PerS, Unit.CubicMetrePerSecond)} keep that space within {rise} of outside on the hottest design day."
            : x.UpperFans > 0
                ? $" Under a drawn shade the space above it takes {said.Round(x.UpperM3PerS, Unit.CubicMetrePerSecond)} to stay within {rise} of outside: {Whole(x.UpperFans)} small upper fan{(x.UpperFans == 1 ? "" : "s")} (upperFans in the job), or a roof vent."
                : "";
        yield return new Block.Paragraph(
            $"{Whole(x.ChangesPerHour)} air changes an hour with all fans on. The allowed rise is used up after {said.Round(x.FarthestM, Unit.Metre)} at this air speed. "
            + (x.DeadCornerM > 0.5 ? $"Beside the intake's openings air stands or turns back for about {said.Round(x.DeadCornerM, Unit.Metre)}: no young plants there, or spread the openings." : "The intake's openings reach nearly from wall to wall: no dead corner to speak of.")
            + upper + (plant.InsectClothM2 > 0 ? $" Insect cloth: {said.Round(plant.InsectClothM2, Unit.SquareMetre)} with its frame, in a box before the intake (vents have it at their own size); wash it when the fans' pressure has risen." : "") + Sound(plant, us));
    }

    private static string Cloth(PlantResult plant) => plant.Curtain is { } c
        ? $" The cloth {c.Entry} lets {Said.Percent(c.SolarTransmittanceFraction)} % of the sun through and throws {Said.Percent(c.SolarReflectanceFraction)} % back, {Said.Percent(c.OpennessFraction)} % of its weave is open; drawn for shade it keeps {Said.Percent(1 - c.SolarTransmittanceFraction)} % of the sun from the crop."
        : "";

    private static string Sound(PlantResult plant, bool us)
    {
        Figure? Of(string id) => plant.Report.Figures.FirstOrDefault(f => f.Id == $"{plant.House}/plant/{id}");
        return Of("fan-sound") is { } one && Of("fan-sound-outside") is { } all
            ? $" The loudest fan makes {Whole(one.Value)} dB(A) at {(us ? "5 ft" : "1.5 m")}, all together some {Whole(all.Value)} dB(A) at {(us ? "50 ft" : "15 m")} in the open."
            : "";
    }

    private static string Hottest(HouseResults house, Said said) => house.Plant.Fog?.Choice.Cooling is { } c
        ? $" On the hottest design day {(c.FansOn > 0 ? $"{Whole(c.FansOn)} of {Whole(house.Plant.Exhaust?.Choice.Fans.Count ?? 0)} fans and " : "")}{said.Text(c.WaterKgPerS, Unit.KilogramPerSecond)} of fog{(c.IntakeFraction > 0.005 ? $", {Said.Percent(c.IntakeFraction)} % of it at the intake," : "")} {(c.WaterKgPerS > 0 ? "bring" : "leave")} the hottest air to {said.Text(c.HottestC, Unit.Celsius)} and {Said.Percent(c.DampestFraction)} % relative humidity{(c.Reached ? "" : $", not at the {said.Text(c.WishC, Unit.Celsius)} wished")}{(c.FansOn > 0 && c.FansOn < (house.Plant.Exhaust?.Choice.Fans.Count ?? 0) ? "; more fans would draw in more hot air" : "")}."
        : house.Plant.Exhaust is null ? " Without exhaust fans the fog is counted to moisten alone: what it cools hangs on wind and warmth."
        : " Fans and wet wall hold the hottest design day alone: the fog is there to moisten.";

    private static string Flow(FlowAt at, Said said) => said.Round(at.FlowM3PerS, Unit.CubicMetrePerSecond) + (at.BeyondTested ? " *" : "");

    // Combustion-air openings are small: in whole square feet the least of them would read 0.
    private static string Free(double areaM2, bool us) => us ? $"{Whole(Math.Ceiling(areaM2 / 0.00064516 - 1e-6))} in²" : $"{Whole(Math.Ceiling(areaM2 * 1e4 - 1e-6))} cm²";

    private static string One(double value) => double.IsFinite(value) ? value.ToString("0.0", CultureInfo.InvariantCulture) : "endless";

    private static string Whole(double value) => double.IsFinite(value) ? value.ToString("#,0", CultureInfo.InvariantCulture) : "endless";
}
