using Glazewright.Design.Brief;
using Glazewright.Design.Catalogues;
using Glazewright.Design.Contracts;
using Glazewright.Science.Flow;

namespace Glazewright.Design.Plant;

/// <summary>Figures of Plant.</summary>
internal static class PlantWorkings
{
    private static readonly Source Geometry = new Source.FirstPrinciples("plane geometry");
    internal static readonly Source Balance = new Source.FirstPrinciples("balance of flow, heat or water");

    public static StageReport Report(PlantFacts f)
    {
        List<Figure> figures = [];
        AirFigures(f, figures);
        figures.AddRange(FanSound.Figures(f));
        WaterFigures(f, figures);
        HeatFigures(f, figures);
        OtherFigures(f, figures);
        PowerFigures(f, figures);
        return new StageReport(
            figures.ToEqList(),
            PlantFindings.Of(f).ToEqList(),
            [
                "Equipment is generic: every flow, loss and power is to be confirmed with the supplier's tested data.",
                "Fans are sized at full speed in still outside air; the plant report shows what wind on the fan wall leaves of them.",
                "Duct, water pipe and wire sizes, sumps and conduits are not sized; the gas main has a first size only.",
                "Roof and side vents are areas; what they move by warmth and wind is told simply in the plant report, by the hour in the year.",
            ]);
    }

    private static void AirFigures(PlantFacts f, List<Figure> figures)
    {
        if (f.Run is null || f.Intake is null)
        {
            return;
        }

        string house = f.Input.House;
        foreach ((string mode, EqList<OperatingPoint> points) in new[] { ("dry", f.Run.Dry), ("wet", f.Run.Wet) })
        {
            foreach (OperatingPoint p in points)
            {
                EqList<WorkingInput> inputs =
                [
                    Input("static", "Static pressure across the fans", p.StaticPa, Unit.Pascal),
                    Input("density", "Density of outside air, kg/m³", f.Outside.DensityKgPerM3, Unit.None),
                    Input("louver", "Louver free area", f.Intake.LouverFreeM2, Unit.SquareMetre),
                    Input("pad", "Pad", f.Intake.PadM2, Unit.SquareMetre),
                    Input("section", "Section of the house", f.Intake.SectionM2, Unit.SquareMetre),
                ];
                figures.Add(Figure.Observe(
                    $"{house}/plant/flow-{mode}-{p.FansOn}",
                    $"Air with {p.FansOn} of {f.Run.Fans.Count} fans, pad {(mode == "wet" ? "running" : "off")}",
                    Unit.CubicMetrePerSecond, p.FlowM3PerS,
                    "Static pressure at which the fans' curves at this air density move just the air whose loss through louvers, pad, screen and house is that pressure; bracketed root",
                    inputs, "Straight lines between tested points; no wind", new Source.Catalogue(string.Join(", ", f.Run.Fans.Select(e => e.Id).Distinct()))));
            }
        }

        OperatingPoint all = f.Run.Wet[^1];
        figures.Add(Figure.Observe(
            $"{house}/plant/static-all", "Static pressure with all fans on", Unit.Pascal, all.StaticPa, "Same root", [],
            "No wind", Balance));
        Term flow = Term.Of("flow", figures.Last(x => x.Id.EndsWith($"flow-wet-{f.Run.Fans.Count}", StringComparison.Ordinal)));
        Term section = Term.Of("section", "Section of the house", Math.Max(f.Form.SectionAreaM2, 1), Unit.SquareMetre, Geometry);
        figures.Add(Figure.Derive($"{house}/plant/house-speed", "Air speed through the house, all fans on", Unit.MetrePerSecond, flow / section, Balance));
        Term faces = Term.Of(
            "faces", "Area of the fan faces", f.Run.Fans.Sum(e => Math.PI / 4 * e.DiameterM * e.DiameterM), Unit.SquareMetre, Geometry);
        figures.Add(Figure.Derive($"{house}/plant/fan-face-speed", "Air speed at the fan faces", Unit.MetrePerSecond, flow / faces, Balance));
        Term gross = Term.Of("gross", "Louver frames", f.Intake.LouverGrossM2, Unit.SquareMetre, f.Intake.LouverTyped ? new Source.Given($"{f.Input.Pointer}/openings") : new Source.Catalogue(f.Intake.Louver.Id));
        Term free = Term.Of("free", "Free share of the frame", f.Intake.Louver.FreeFraction, Unit.Fraction, new Source.Catalogue(f.Intake.Louver.Id));
        figures.Add(Figure.Derive($"{house}/plant/louver-free", "Free area of the intake louvers", Unit.SquareMetre, gross * free, Geometry));
        figures.Add(Figure.Derive(
            $"{house}/plant/ventilation-margin", "Air over what is asked, less one", Unit.Fraction,
            flow / Term.Of("needed", "Ventilation asked by Duty", f.NeededM3PerS, Unit.CubicMetrePerSecond, Balance) - 1.0, Balance));
        if (f.WetWall is { } pad)
        {
            Term width = Term.Of("width", "Pad width", pad.WidthM, Unit.Metre, f.Input.Equipment.WetWallWidthM > 0 ? new Source.Given($"{f.Input.Pointer}/equipment/wetWall/width") : Balance);
            Term height = Term.Of("height", "Pad height", pad.HeightM, Unit.Metre, f.Input.Equipment.WetWallHeightM > 0 ? new Source.Given($"{f.Input.Pointer}/equipment/wetWall/height") : new Source.Catalogue(pad.Entry));
            Term through = Term.Of("flow", figures.Last(x => x.Id.EndsWith($"flow-wet-{pad.Running(f.Run.Wet).FansOn}", StringComparison.Ordinal)));
            figures.Add(Figure.Derive($"{house}/plant/pad-face-speed", $"Face speed through the pad, {PlantWords.Running(pad, f.Run.Fans.Count)}", Unit.MetrePerSecond, through / (width * height), Balance));
            Term speed = Term.Of("speed", figures[^1]);
            Term rated = Term.Of("rated", "Rated face speed", f.Intake.Pad!.Kind.RatedFaceMPerS, Unit.MetrePerSecond, new Source.Catalogue(pad.Entry));
            // 1 − (1 − η₀)^((u/u₀)^−0.35), by the logarithm: the term language has powers with constant exponents only.
            Term units = Term.Of("units", "Transfer units at the rated speed, −ln(1 − effectiveness there)", -Math.Log(1 - f.Intake.Pad.Kind.EffectivenessAtRated), Unit.None, new Source.Catalogue(pad.Entry));
            figures.Add(Figure.Derive(
                $"{house}/plant/pad-effectiveness", "Saturation effectiveness of the pad", Unit.Fraction,
                1.0 - Term.Exp(0.0 - units * Term.Pow(speed / rated, -0.35)),
                new Source.CommonPractice("transfer units of a corrugated pad fall with face speed to the power 0.35")));
            Term outside = Term.Of("outside", "Outside on the design day", f.Outside.DryBulbC, Unit.Celsius, f.Duty.Conditions.Source);
            figures.Add(Figure.Derive(
                $"{house}/plant/design-day-intake", "Air behind the pad on the design day", Unit.Celsius,
                outside - Term.Of("effectiveness", figures[^1]) * (outside - Term.Of("wet_bulb", "Wet bulb", f.Outside.WetBulbC, Unit.Celsius, f.Duty.Conditions.Source)), Balance));
        }
    }

    private static void WaterFigures(PlantFacts f, List<Figure> figures)
    {
        string house = f.Input.House;
        WetWallWorkings.Add(f, figures);
        if (f.Fog is { } fog)
        {
            Term nozzles = Term.Of("nozzles", "Nozzles", fog.Nozzles, Unit.Count, f.Input.Equipment.FogNozzles > 0 ? new Source.Given($"{f.Input.Pointer}/equipment/fog/nozzles") : Balance);
            Term each = Term.Of("each", "One nozzle", fog.KgPerS / fog.Nozzles, Unit.KilogramPerSecond, new Source.Catalogue(fog.Entry));
            figures.Add(Figure.Derive($"{house}/plant/fog-water", "Fog, all nozzles on", Unit.KilogramPerSecond, nozzles * each, Balance));
            Term share = Term.Of("share", "Share that evaporates", fog.EvaporatedFraction, Unit.Fraction, new Source.Catalogue(fog.Entry));
            figures.Add(Figure.Derive(
                $"{house}/plant/fog-cooling", "Heat the fog takes up", Unit.Watt, Term.Of("water", figures[^1]) * share * 2.45e6, Balance,
                "Stops at saturation: damp air takes up less."));
            figures.Add(Figure.Observe(
                $"{house}/plant/fog-need", "Water asked of the fog, evaporated", Unit.KilogramPerSecond, f.FogAsked.NeedKgPerS,
                "The larger of what keeps a dry sunny day damp and what the hottest design day takes",
                [
                    Input("damp", "A quarter of the ventilation brought from 20 °C and a dew point of 2 °C to the dampest day target, less the crop's own water", f.FogAsked.HumidityKgPerS, Unit.KilogramPerSecond),
                    Input("hot", "Hottest design day", f.FogAsked.Cooling?.WaterKgPerS ?? 0, Unit.KilogramPerSecond),
                ],
                "The dry sunny day is common practice", Balance));
            if (fog.Cooling is { } cooling)
            {
                figures.Add(Figure.Observe(
                    $"{house}/plant/fog-hottest", "Hottest air on the hottest design day, fog on", Unit.Celsius, cooling.HottestC,
                    "Air marched from intake to fans with sun, crop, walls and fog; of the fan stages that hold the wish the one that takes the least water, else the coolest",
                    [
                        Input("wish", "Never over, or the day target and the rise allowed", cooling.WishC, Unit.Celsius),
                        Input("fans", "Fans on", cooling.FansOn, Unit.Count),
                        Input("air", "Their air", cooling.FlowM3PerS, Unit.CubicMetrePerSecond),
                        Input("water", "Fog that evaporates", cooling.WaterKgPerS, Unit.KilogramPerSecond),
                        Input("intake", "Share of it at the intake", cooling.IntakeFraction, Unit.Fraction),
                        Input("dampest", "Dampest air; fog stops at 92 %", cooling.DampestFraction, Unit.Fraction),
                    ],
                    "Behind the fog at the intake; drops all evaporate on the way", Balance));
            }

            figures.Add(Figure.Derive(
                $"{house}/plant/fog-pump", "Fog pump", Unit.ElectricWatt,
                Term.Of("water", "Fog, all nozzles on", fog.KgPerS, Unit.KilogramPerSecond, Balance) / 998.0
                    * Term.Of("pressure", "Line pressure", fog.PressurePa, Unit.LinePressure, new Source.Catalogue(fog.Entry))
                    / Term.Of("efficiency", "Pump efficiency", f.Catalogue.Fogs.First(e => e.Id == fog.Entry).PumpEfficiency, Unit.Fraction, new Source.Catalogue(fog.Entry)),
                Balance));
        }
    }

    private static void HeatFigures(PlantFacts f, List<Figure> figures)
    {
        if (f.Heat is not { } heat)
        {
            return;
        }

        string house = f.Input.House;
        Term pipe = Term.Of("pipe", "Hot-water pipe under the benches", f.Input.Equipment.BenchPipeW, Unit.Watt, new Source.Given($"{f.Input.Pointer}/equipment/benchPipe"));
        Term[] each = [.. heat.Heaters.Select((h, i) => Term.Of($"h{i + 1}", h.Id, h.OutputW, Unit.Watt, new Source.Catalogue(h.Entry)))];
        Figure total = Figure.Derive($"{house}/plant/heat-output", "Heat of all heaters and pipe", Unit.Watt, Term.Total([.. each, pipe]), Balance);
        figures.Add(total);
        double needW = f.HeatAsked.NeedW;
        if (needW > 0)
        {
            if (f.HeatAsked.FilterWPerK > 0)
            {
                Term own = Term.Of("loss", "Larger of the 99.6 % and the frost-safe loss of the house, curtain open", Math.Max(f.Duty.HeatLossW, f.Duty.FrostLossW), Unit.Watt, Balance);
                Term filter = Term.Of("filter", "Heat for the filter fan's air, less the infiltration it takes the place of", needW - own.Value, Unit.Watt, Balance);
                figures.Add(Figure.Derive($"{house}/plant/heat-asked", "Heat asked of the heaters, filter fan's air included", Unit.Watt, own + filter, Balance));
            }

            figures.Add(Figure.Derive(
                $"{house}/plant/heat-margin", "Heat over what is asked, less one", Unit.Fraction,
                Term.Of("output", total)
                    / Term.Of("asked", "Larger of the 99.6 % and the frost-safe loss, curtain open, filter fan's air included", needW, Unit.Watt, Balance) - 1.0, Balance));
        }

        Figure left = Figure.Derive(
            $"{house}/plant/heat-one-out", "Heat left when the largest heater, or the bench pipes' boiler, is dead", Unit.Watt,
            Term.Of("output", total) - Term.Of("largest", "Largest single source", HeatSizing.LargestW(heat.Heaters, f.Input.Equipment.BenchPipeW), Unit.Watt, Balance), Balance);
        figures.Add(left);
        void Holds(string name, string how, double lossWPerK) => figures.Add(Figure.Derive(
            $"{house}/plant/{name}", $"Temperature that holds then on the 99.6 % night, curtain {how}", Unit.Celsius,
            Term.Min(
                Term.Of("outside", "99.6 % heating dry bulb", f.Duty.Conditions.Heating996C, Unit.Celsius, f.Duty.Conditions.Source)
                    + Term.Of("left", left) / Term.Of("loss", $"Heat loss factor, curtain {how}, filter fan's air included", lossWPerK, Unit.WattPerKelvin, Balance),
                Term.Of("target", "Night target", f.Duty.NightTargetC, Unit.Celsius, new Source.Given($"{f.Input.Pointer}/schedule"))),
            Balance));
        Holds("one-out-holds", "drawn", f.HeatAsked.LossDrawnWPerK);
        Holds("one-out-holds-open", "open", f.HeatAsked.LossWPerK);
    }

    private static void OtherFigures(PlantFacts f, List<Figure> figures)
    {
        string house = f.Input.House;
        if (f.Curtain is { } curtain)
        {
            Term length = Term.Of("length", "Length of the house", f.Form.LengthM, Unit.Metre, Geometry);
            Term width = Term.Of("width", "Width of the section at the curtain", SmallSystems.WidthAtM(f.Form, curtain.HeightM), Unit.Metre, Geometry);
            figures.Add(Figure.Derive($"{house}/plant/curtain-area", "Curtain, each cloth", Unit.SquareMetre, length * width, Geometry));
        }

        if (f.SecondCurtain is { } second)
        {
            Term length = Term.Of("length", "Length of the house", f.Form.LengthM, Unit.Metre, Geometry);
            Term width = Term.Of("width", "Width of the section at the second curtain", SmallSystems.WidthAtM(f.Form, second.HeightM), Unit.Metre, Geometry);
            figures.Add(Figure.Derive($"{house}/plant/second-curtain-area", "Second curtain", Unit.SquareMetre, length * width, Geometry));
        }

        if (f.Upper is { } upper && f.Curtain is { } above)
        {
            Term absorbed = Term.Of("absorbed", "Share of the sun the drawn cloth turns into heat", UpperFans.AbsorbedFraction(above), Unit.Fraction, new Source.Catalogue(above.Entry));
            Term gain = Term.Of("sun", "Sun kept inside on the hottest design day", f.Duty.SolarGainW, Unit.Watt, Balance);
            Term rise = Term.Of("rise", "Rise over outside", UpperFans.RiseK, Unit.Kelvin, new Source.FirstPrinciples("our judgement: cloth and films bring about a third of it down"));
            Term lost = Term.Of("lost", "Loss of the shell above the cloth", UpperFans.LossWPerK(f.Form, f.Duty, above), Unit.WattPerKelvin, Balance);
            figures.Add(Figure.Derive(
                $"{house}/plant/upper-air", "Air asked of the upper fans", Unit.CubicMetrePerSecond,
                Term.Max(absorbed * gain / rise - lost, Term.Of("none", "Nothing", 0, Unit.WattPerKelvin, Balance))
                    / (Term.Of("density", "Density of outside air, kg/m³", f.Outside.DensityKgPerM3, Unit.None, Balance) * 1006.0),
                Balance, "All that the cloth absorbs goes into the air above it"));
            figures.Add(Figure.Derive(
                $"{house}/plant/upper-flow", "Air the upper fans move", Unit.CubicMetrePerSecond,
                Term.Of("count", "Fans", upper.Count, Unit.Count, f.Input.Equipment.UpperFans is { Count: > 0 } ? new Source.Given($"{f.Input.Pointer}/equipment/upperFans/count") : Balance)
                    * Term.Of("each", "One fan through its inlet, at its curve", upper.FlowEachM3PerS, Unit.CubicMetrePerSecond, new Source.Catalogue(upper.Entry)), Balance));
        }

        if (f.Circulation is { Count: > 0 } circulation)
        {
            figures.Add(Figure.Derive(
                $"{house}/plant/circulation-need", "Air the circulation fans should move", Unit.CubicMetrePerSecond,
                Term.Of("floor", "Floor", f.Form.FloorAreaM2, Unit.SquareMetre, Geometry) * 0.01016,
                new Source.CommonPractice("2 cfm a square foot of floor (extension pages, read)")));
            figures.Add(Figure.Derive(
                $"{house}/plant/circulation-flow", "Air they move", Unit.CubicMetrePerSecond,
                Term.Of("count", "Fans", circulation.Count, Unit.Count, Balance) * Term.Of("each", "One fan", circulation.FlowEachM3PerS, Unit.CubicMetrePerSecond, new Source.Catalogue(circulation.Entry)), Balance));
            figures.Add(Figure.Observe(
                $"{house}/plant/crop-speed", "Mean air speed around the loop", Unit.MetrePerSecond, circulation.CropSpeedMs,
                "Thrust of the fans against the drag of walls and leaves",
                [Input("drag", "Drag area", f.DragAreaM2, Unit.SquareMetre)],
                "First estimate of our own, not checked against measurement; corners can stand still", Balance));
        }

        if (f.Input.Equipment.OscillatingFans > 0)
        {
            figures.AddRange(Swept(f, house));
        }

        if (f.Pressure is { } pressure)
        {
            figures.Add(Figure.Observe(
                $"{house}/plant/held-pressure", "Positive pressure held in calm air", Unit.Pascal, pressure.HeldPa,
                "The pressure asked, by damper or speed control, when the filter fans can; else that at which they bring just what leaks and a door crack let out",
                [
                    Input("changes", "Leakage, air changes in a 4 m/s wind, taken as at 1 Pa", f.Input.AirtightnessPerHour, Unit.PerHour),
                    Input("crack", "Open crack", SmallSystems.ReliefM2, Unit.SquareMetre),
                    Input("fans", "Filter fans", f.PressureFans, Unit.Count),
                ],
                "Doors shut, clean filter, no wind", new Source.Standard("ASTM E779 power law", "n = 0.65", Source.Mark.FromMemory)));
            figures.Add(Figure.Observe(
                $"{house}/plant/filter-air", "Air the filter fans bring at that pressure", Unit.CubicMetrePerSecond, pressure.FlowM3PerS,
                "Leaks by the power law and a door crack as an orifice, at the pressure held", [Input("held", "Pressure held", pressure.HeldPa, Unit.Pascal)],
                "Speed-controlled or dampered fans, assumed; motor power is kept as unthrottled", new Source.Standard("ASTM E779 power law", "n = 0.65", Source.Mark.FromMemory)));
            figures.Add(Figure.Observe(
                $"{house}/plant/pressure-fails-at", "Wind at which it fails", Unit.MetrePerSecond, pressure.FailsAtWindMs,
                "Windward pressure 0.7 × ½ρv² equals the held pressure", [], "Open ground", new Source.CommonPractice("windward wall coefficient 0.6 to 0.8")));
        }
    }

    private static void PowerFigures(PlantFacts f, List<Figure> figures)
    {
        string house = f.Input.House;
        Term[] Lines(bool backupOnly) => [.. f.Loads.Where(l => l.Backup || !backupOnly).Select((l, i) =>
            Term.Of($"w{i + 1}", l.Label, l.Count * l.RunningW, Unit.ElectricWatt, Balance))];
        figures.Add(Figure.Derive($"{house}/plant/connected-power", "Electric load connected", Unit.ElectricWatt, Term.Total(Lines(false)), Balance));
        figures.Add(Figure.Derive(
            $"{house}/plant/backup-power", "Stays on when the mains fail, running", Unit.ElectricWatt, Term.Total(Lines(true)),
            new Source.CommonPractice("one heater, circulation, first fan stage with its louver, control and alarm")));
        double inrushA = f.Loads.Where(l => l.Backup).Select(l => l.StartA).DefaultIfEmpty(0).Max();
        figures.Add(Figure.Observe(
            $"{house}/plant/backup-inrush", "Largest start among them", Unit.Ampere, inrushA, "Largest starting current of the backup list", [],
            "One motor at a time", new Source.CommonPractice("small motors start at 5 to 7 times their running current")));
        Utilities lot = f.Input.Utilities;
        Term volts = Term.Of("volts", "Service voltage", lot.ServiceV, Unit.None, new Source.Given("/utilities/voltage"));
        Term phases = Term.Of("root", "√3 on three phases, 1 on one", lot.Phase == Phase.Three ? Math.Sqrt(3) : 1, Unit.None, Balance);
        figures.Add(Figure.Derive(
            $"{house}/plant/connected-current", "Current with everything on", Unit.Ampere,
            Term.Of("power", figures.First(x => x.Id.EndsWith("/connected-power", StringComparison.Ordinal))) / (volts * phases * 0.8), new Source.CommonPractice("power factor 0.8")));
    }

    internal static WorkingInput Input(string symbol, string label, double value, Unit unit) =>
        new(symbol, label, "", value, unit, Balance);

    private static IEnumerable<Figure> Swept(PlantFacts f, string house)
    {
        OscillatingEntry fan = OscillatingFans.Entry(f.Catalogue);
        OscillatingPlant swept = OscillatingFans.Of(f.Input.Equipment.OscillatingFans, f.Form, f.Catalogue);
        Source entry = new Source.Catalogue(fan.Id);
        Source jet = new Source.Standard("ASHRAE Fundamentals, Space Air Diffusion", "K of a round free opening", Source.Mark.FromMemory);
        Source spread = new Source.Standard("Free round jet, textbooks", "spreading rate", Source.Mark.FromMemory);
        Figure Reach(string id, string label, double radiusM, double axisMs) => Figure.Observe(
            $"{house}/plant/{id}", label, Unit.Metre, radiusM, "Free round jet, u = 5.7 Q / (√A x), to the speed on its axis, no farther than the house is long",
            [Input("flow", "One fan", fan.FlowM3PerS, Unit.CubicMetrePerSecond), Input("diameter", "Diameter", fan.DiameterM, Unit.Metre), Input("axis", "Speed on the axis", axisMs, Unit.MetrePerSecond)],
            "No foliage or walls in the jet: a best case", jet);
        Figure Floor(string id, string label, double areaM2, double radiusM) => Figure.Observe(
            $"{house}/plant/{id}", label, Unit.SquareMetre, areaM2, "Sector about the middle line, cut off at the walls",
            [Input("reach", "Reach", radiusM, Unit.Metre), Input("arc", "Arc", fan.SweepDeg, Unit.Degree), Input("width", "Width", f.Form.WidthM, Unit.Metre)], "Aimed along the house", Geometry);
        Figure Count(string id, string label, int count, Figure area) => Figure.Observe(
            $"{house}/plant/{id}", label, Unit.Count, count, "Floor over what one sweeps, up to a whole fan",
            [Input("floor", "Floor", f.Form.FloorAreaM2, Unit.SquareMetre), Input("one", "One sweeps", area.Value, Unit.SquareMetre)], "No overlap counted", Geometry);
        yield return Reach("oscillating-radius", "Reach of one oscillating fan for the wished peak", swept.RadiusM, OscillatingPlant.PeakMs);
        Figure peak = Floor("oscillating-area", "Floor it sweeps at that reach", swept.CoveredEachM2, swept.RadiusM);
        yield return peak;
        yield return Count("oscillating-by-peak", "Oscillating fans for the wished peak", swept.NeededByPeak, peak);
        var ratio = Figure.Observe(
            $"{house}/plant/oscillating-ratio", "Mean over a sweep to peak", Unit.Fraction, SweptJet.MeanToPeakRatio(fan.SweepDeg),
            "Profile of the jet over the arc", [Input("arc", "Arc", fan.SweepDeg, Unit.Degree)], "Even turning; half speed at 0.086 of the distance; beside the loop's own speed", spread);
        yield return ratio;
        var axis = Figure.Derive(
            $"{house}/plant/oscillating-axis", "Speed on the axis that leaves the least mean", Unit.MetrePerSecond,
            Term.Of("u", "Least mean", OscillatingPlant.MeanMs, Unit.MetrePerSecond, new Source.CommonPractice("0.2 to 0.5 m/s at the crop")) / Term.Of("r", ratio), spread);
        yield return axis;
        yield return Reach("oscillating-mean-radius", "Reach of one oscillating fan for the least mean", swept.MeanRadiusM, axis.Value);
        Figure mean = Floor("oscillating-mean-area", "Floor it sweeps at that reach", swept.CoveredByMeanM2, swept.MeanRadiusM);
        yield return mean;
        yield return Count("oscillating-by-mean", "Oscillating fans for the least mean", swept.NeededByMean, mean);
        yield return Figure.Derive(
            $"{house}/plant/oscillating-flow", "Air all oscillating fans move", Unit.CubicMetrePerSecond,
            Term.Of("count", "Fans", swept.Count, Unit.Count, Balance) * Term.Of("each", "One fan", fan.FlowM3PerS, Unit.CubicMetrePerSecond, entry), Balance);
    }
}
