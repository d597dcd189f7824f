using Glazewright.Design.Contracts;
using Glazewright.Design.Plant;
using Glazewright.Design.Year;
using Glazewright.Papers.Reports;
using Glazewright.Papers.Sets;

namespace Glazewright.Papers.Answers;

/// <summary>How it is cooled, how it is heated, what happens when a heater dies.</summary>
internal static class PlantAnswers
{
    public static QuestionAnswered Cooling(PaperSource source, HouseResults house)
    {
        if (house.Plant.Exhaust is not Answer<ExhaustPlant> answer || answer.Choice.Fans.Count == 0 || answer.Choice.Dry.Count == 0)
        {
            return NoFans(source, house);
        }

        Said said = new(source.Job.Units);
        ExhaustPlant exhaust = answer.Choice;
        OperatingPoint all = exhaust.Dry[^1];
        string fans = Said.Listed(exhaust.Fans.GroupBy(f => Math.Round(f.DiameterM, 4)).OrderByDescending(g => g.Key).Select(g => $"{g.Count()} × {Diameter(source, g.Key)}"));
        string sentence = $"House {house.Form.Id}: {fans} exhaust fans move {said.Round(all.FlowM3PerS, Unit.CubicMetrePerSecond)} at {said.Text(all.StaticPa, Unit.Pascal)} of static pressure: {said.Text(exhaust.HouseSpeedMs, Unit.MetrePerSecond)} through the house, {said.Round(exhaust.FanFaceSpeedMs, Unit.MetrePerSecond)} at the fan faces.";
        List<Block> blocks = [];
        List<BigFigure> figures =
        [
            said.Big("Air moved, all fans on", all.FlowM3PerS, Unit.CubicMetrePerSecond, $"asked for by the design day: {said.Round(house.Duty.VentilationM3PerS, Unit.CubicMetrePerSecond)} by {(house.Duty.VentilationRuleM3PerS >= house.Duty.VentilationBalanceM3PerS ? "the factor rule" : "the heat balance")}", Of(answer)),
            said.Big("Air speed through the house", exhaust.HouseSpeedMs, Unit.MetrePerSecond, "the speed a plant feels, not that at the fan face"),
        ];
        if (house.Plant.WetWall is Answer<WetWallPlant> pad)
        {
            WetWallPlant wall = pad.Choice;
            figures.Add(new BigFigure("Air speed through the wet wall", Speed(source, wall.FaceSpeedMs), source.Job.Units == UnitSystem.Us ? "ft/min" : "m/s", $"{Size(source, wall.WidthM)} × {Size(source, wall.HeightM)} pad", Of(pad)));
            sentence += $" The wet wall cools the air {Said.Percent(wall.Effectiveness)} % of the way to its wet bulb.";
            if (pad is Answer<WetWallPlant>.Missed missed)
            {
                blocks.Add(new Block.Paragraph("Wet wall: " + missed.Limit));
            }
        }

        // A plant sized for its design day is no promise: the year's run says what it holds.
        HeldCounters held = house.Year.Held;
        figures.Add(new BigFigure("Hours too warm", Said.Hours(held.TooWarmH), "h", "in the simulated year", Said.Share(held.TotalH > 0 ? 1 - held.TooWarmH / held.TotalH : 1)));
        blocks.Insert(0, new Block.Figures(figures));
        if (answer is Answer<ExhaustPlant>.Missed short_)
        {
            blocks.Add(new Block.Paragraph("Fans: " + short_.Limit));
        }

        if (house.Plant.Fog is Answer<FogPlant> fog)
        {
            blocks.Add(new Block.Paragraph($"Fog: {fog.Choice.Nozzles} nozzles spray up to {said.Text(fog.Choice.KgPerS, Unit.KilogramPerSecond)}, of which {Said.Percent(fog.Choice.EvaporatedFraction)} % evaporates before it falls."));
        }

        Standing standing = Said.Worst(figures.Select(f => f.Standing));
        if (house.Plant.Report.Findings.FirstOrDefault(f => f.Code == "plant/never-above-missed") is { } hot)
        {
            standing = Said.Worst([standing, Standing.Miss]);
            sentence += " On the design day that does not keep the fan end below your limit.";
            blocks.Add(new Block.Paragraph("Design day: " + hot.What));
        }

        if (house.Plant.Upper is { } upper)
        {
            blocks.Add(new Block.Paragraph($"Upper fans: {upper.Count} move {said.Round(upper.FlowM3PerS, Unit.CubicMetrePerSecond)} through the space above the drawn curtain."));
        }

        if (held.TooWarmH >= 0.5)
        {
            sentence += $" In the simulated year it is too warm in {Said.Hours(held.TooWarmH)} of {Said.Hours(held.TotalH)} hours.";
        }

        string wet = (house.Plant.WetWall is null ? "" : ", wet wall") + (house.Plant.Fog is { } line ? $", {line.Choice.Nozzles} fog nozzles" : "") + (house.Plant.Upper is { Count: var above } ? $", {above} upper fan{(above == 1 ? "" : "s")}" : "");
        return new QuestionAnswered($"How is house {house.Form.Id} cooled?", $"{fans} fans, {said.Round(all.FlowM3PerS, Unit.CubicMetrePerSecond)}{wet}", sentence, standing, blocks);
    }

    public static QuestionAnswered Heat(PaperSource source, HouseResults house)
    {
        if (house.Plant.Heat is not Answer<HeatPlant> answer || answer.Choice.Heaters.Count == 0)
        {
            return NoHeaters(source, house);
        }

        Said said = new(source.Job.Units);
        HeatPlant heat = answer.Choice;
        double outputW = heat.Heaters.Sum(h => h.OutputW) + house.Plant.BenchPipeW;
        string outside = said.Round(house.Duty.Conditions.Heating996C, Unit.Celsius);
        string drawn = house.Plant.Curtain is null ? "" : $" ({said.Text(house.Duty.HeatLossDrawnW, Unit.Watt)} with the curtain drawn)";
        string sentence = $"House {house.Form.Id} loses {said.Text(house.Duty.HeatLossW, Unit.Watt)}{drawn} at {outside} outside; {heat.Heaters.Count} {(heat.Heaters.Count == 1 ? "heater gives" : "heaters give")} {said.Text(outputW, Unit.Watt)}{(house.Plant.BenchPipeW > 0 ? " with the bench pipe" : "")}.";
        if (house.Plant.Report.Figures.FirstOrDefault(f => f.Id == $"{house.Form.Id}/plant/heat-asked") is { } asked)
        {
            sentence += $" With the filter fan's air they are asked for {said.Text(asked.Value, Unit.Watt)}.";
        }

        string open = said.Floor(heat.OneOutHoldsOpenC, Unit.Celsius);
        string holds = house.Plant.Curtain is null ? open : $"{said.Floor(heat.OneOutHoldsC, Unit.Celsius)} with the curtain drawn, {open} open";
        if (heat.Heaters.Count > 1)
        {
            sentence += $" With the largest one out the rest hold {holds} on that night.";
        }

        double nightC = house.Duty.NightTargetC;
        List<BigFigure> figures =
        [
            said.Big("Heat loss on the design night", house.Duty.HeatLossW, Unit.Watt, $"{outside} outside, {said.Round(nightC, Unit.Celsius)} inside{(house.Plant.Curtain is null ? "" : ", curtain open")}"),
            said.Big("Heaters give", outputW, Unit.Watt, "", Of(answer)),
            said.BigFloor(heat.Heaters.Count > 1 ? "One heater out holds" : "The only heater out holds", heat.OneOutHoldsOpenC, Unit.Celsius, $"{(house.Plant.Curtain is null ? "" : "curtain open; ")}at the same outside temperature, no wind allowance", heat.OneOutHoldsOpenC < 2 ? Standing.Miss : heat.OneOutHoldsOpenC < nightC - 1 ? Standing.Near : Standing.Held),
            said.Big("Frost-safe loss at the coldest night of an average year", house.Duty.FrostLossW, Unit.Watt, said.Round(house.Duty.Conditions.ExtremeMinC, Unit.Celsius) + " outside, just above freezing inside", outputW >= house.Duty.FrostLossW ? Standing.Held : Standing.Miss),
        ];
        List<Block> blocks = [new Block.Figures(figures)];
        if (answer is Answer<HeatPlant>.Missed missed)
        {
            blocks.Add(new Block.Paragraph("Heaters: " + missed.Limit));
        }

        if (heat.Heaters.Any(h => !h.Electric && !h.SealedCombustion))
        {
            blocks.Add(new Block.Caution("Open combustion in a tight house", "An exhaust fan can draw flue gas back into the house: carbon monoxide kills, and traces of ethylene harm the crop first. Use sealed combustion, or have the safety chain hard-wired by a licensed installer."));
        }

        return new QuestionAnswered($"Heat for house {house.Form.Id}, and if a heater dies?", $"{said.Text(house.Duty.HeatLossW, Unit.Watt)} at {outside}; {(heat.Heaters.Count > 1 ? "one heater out" : "the heater out")} holds {holds}", sentence, Said.Worst(figures.Select(f => f.Standing)), blocks);
    }

    // A house without a system is told so: a question that vanishes would look like one that was answered.
    private static QuestionAnswered NoFans(PaperSource source, HouseResults house)
    {
        Said said = new(source.Job.Units);
        string id = house.Form.Id;
        List<string> others = [];
        if (house.Plant.Vents is { } vents)
        {
            others.Add($"{said.Text(vents.RoofM2 + vents.SideM2, Unit.SquareMetre)} of vents");
        }

        if (house.Plant.Fog is not null)
        {
            others.Add("fog");
        }

        string sentence = others.Count > 0
            ? $"House {id} has no exhaust fans: {Said.Listed(others)}. The design day asks for {said.Round(house.Duty.VentilationM3PerS, Unit.CubicMetrePerSecond)} of air; what vents draw without fans hangs on wind and warmth: see the plant's paper."
            : $"House {id} has no fans, vents, wet wall or fog: nothing cools it. The design day asks for {said.Round(house.Duty.VentilationM3PerS, Unit.CubicMetrePerSecond)} of air.";
        bool warm = house.Year.Held.TooWarmH >= 0.5;
        List<Block> blocks = [new Block.Figures([
            said.Big("Hottest air at the crop", house.Year.Extremes.HighestC, Unit.Celsius, $"with {said.Text(house.Year.Extremes.OutsideAtHighestC, Unit.Celsius)} outside"),
            new BigFigure("Hours too warm", Said.Hours(house.Year.Held.TooWarmH), "h", "in the simulated year", warm ? Standing.Miss : Standing.Held),
        ])];
        return new QuestionAnswered($"How is house {id} cooled?", others.Count > 0 ? $"no fans; {Said.Listed(others)}" : "not at all: none was asked for", sentence, warm ? Standing.Miss : Standing.None, blocks);
    }

    private static QuestionAnswered NoHeaters(PaperSource source, HouseResults house)
    {
        Said said = new(source.Job.Units);
        string id = house.Form.Id;
        string outside = said.Round(house.Duty.Conditions.Heating996C, Unit.Celsius);
        bool piped = house.Plant.BenchPipeW > 0;
        string loss = said.Text(house.Duty.HeatLossW, Unit.Watt);
        // The one boiler out leaves nothing.
        double holdsC = Math.Min(house.Duty.Conditions.Heating996C, house.Duty.NightTargetC);
        string holds = said.Floor(holdsC, Unit.Celsius);
        string sentence = $"House {id} has no heaters: {(piped ? $"the bench pipe alone gives {said.Text(house.Plant.BenchPipeW, Unit.Watt)}" : "nothing heats it")}. It loses {loss} at {outside} outside.{(piped ? $" One boiler warms the pipe; with it out the house comes to {holds} on that night." : "")}";
        bool cold = house.Year.Held.TooColdH >= 0.5;
        List<BigFigure> figures =
        [
            said.Big("Heat loss on the design night", house.Duty.HeatLossW, Unit.Watt, $"{outside} outside, {said.Round(house.Duty.NightTargetC, Unit.Celsius)} inside"),
            said.Big("Coldest air at the crop", house.Year.Extremes.LowestC, Unit.Celsius, $"with {said.Text(house.Year.Extremes.OutsideAtLowestC, Unit.Celsius)} outside"),
            new BigFigure("Hours too cold", Said.Hours(house.Year.Held.TooColdH), "h", "in the simulated year", cold ? Standing.Miss : Standing.Held),
        ];
        Standing standing = cold ? Standing.Miss : Standing.None;
        if (piped)
        {
            figures.Insert(1, said.Big("The bench pipe gives", house.Plant.BenchPipeW, Unit.Watt, "", house.Plant.BenchPipeW < house.Duty.HeatLossW ? Standing.Miss : Standing.Held));
            figures.Add(said.BigFloor("The boiler out holds", holdsC, Unit.Celsius, "on the design night", holdsC < 2 ? Standing.Miss : Standing.Near));
            standing = Said.Worst(figures.Select(f => f.Standing));
        }

        return new QuestionAnswered($"Heat for house {id}, and if a heater dies?", piped ? $"{loss} at {outside}; bench pipe only, the boiler out holds {holds}" : "none: no heat was asked for", sentence, standing, [new Block.Figures(figures)]);
    }

    private static Standing Of<T>(Answer<T> answer) => answer is Answer<T>.Met ? Standing.Held : Standing.Miss;

    private static string Diameter(PaperSource source, double diameterM) => source.Job.Units == UnitSystem.Us
        ? FormattableString.Invariant($"{diameterM / 0.0254:0} in")
        : FormattableString.Invariant($"{1000 * diameterM:0} mm");

    private static string Speed(PaperSource source, double speedMs) => source.Job.Units == UnitSystem.Us
        ? FormattableString.Invariant($"{speedMs / 0.00508:0}")
        : FormattableString.Invariant($"{speedMs:0.00}");

    private static string Size(PaperSource source, double lengthM) => Drawing.LengthText.Of(lengthM, Sheets.SheetStyle.Lengths(source.Job));
}
