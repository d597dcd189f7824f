using Glazewright.Design.Contracts;
using Glazewright.Science.Crop;

namespace Glazewright.Design.Duty;

/// <summary>Figures of Duty.</summary>
internal static class DutyWorkings
{
    private static readonly Source FirstLaw = new Source.FirstPrinciples("steady heat balance");
    private static readonly Source Ep406 = new Source.Standard("ANSI/ASABE EP406", "summer ventilation, factor method", Source.Mark.FromMemory);
    private static readonly Source Quick = new Source.Paper("Baille, Baille and Laury 1994, Scientia Horticulturae 59", "quick transpiration form", Source.Mark.FromMemory);

    public static StageReport Report(DutyFacts facts)
    {
        List<Figure> figures = [];
        Conditions(facts, figures);
        Losses(facts, figures);
        Gains(facts, figures);
        Ventilation(facts, figures);
        Moisture(facts, figures);
        return new StageReport(
            figures.ToEqList(),
            DutyFindings.Of(facts).ToEqList(),
            [
                "Design-day loss is steady: no heat from the ground or from benches, no sun, shared walls taken at one temperature on both sides.",
                "U-values are the trade's heating values with their films and an ordinary sky; what wind and sky make of them on the design night stands beside them in plant.pdf, with the curtain open.",
                "Openings are counted closed; doors standing open in sales weeks are not in the loss.",
                "Cooling takes the sun of one hour of the weather year and the design temperatures of another statistic: cautious, not coincident.",
                "Night moisture counts transpiration only, before anything condenses on the covering.",
            ]);
    }

    private static void Conditions(DutyFacts f, List<Figure> figures)
    {
        Brief.DesignConditions c = f.Result.Conditions;
        string caution = c.Source is Source.Default ? "Computed from one typical year, which leaves the extremes out: 5 to 7 F° (3 to 4 K) too mild is usual." : "";
        void State(string name, string label, double value) =>
            figures.Add(Figure.State($"{f.Input.House}/duty/{name}", label, Unit.Celsius, value, c.Source, caution));
        State("heating-99.6", "99.6 % heating dry bulb", c.Heating996C);
        State("extreme-minimum", "Mean annual extreme minimum", c.ExtremeMinC);
        State("cooling-0.4", "0.4 % cooling dry bulb", c.Cooling04C);
        State("cooling-wet-bulb", "Wet bulb that goes with it", c.CoincidentWetBulbC);
        Term elevation = Term.Of("elevation", "Elevation", f.Input.ElevationM, Unit.Metre, new Source.Given("/site/elevation"));
        figures.Add(Figure.Derive(
            $"{f.Input.House}/duty/pressure", "Barometric pressure", Unit.Barometer,
            101_325.0 * Term.Pow(1.0 - 2.25577e-5 * elevation, 5.2559),
            new Source.Standard("ASHRAE Handbook—Fundamentals 2017, ch. 1", "eq. (3)", Source.Mark.FromMemory)));
    }

    private static void Losses(DutyFacts f, List<Figure> figures)
    {
        string house = f.Input.House;
        List<Figure> parts = [];
        foreach (LossLine line in f.Result.Losses)
        {
            parts.Add(LossFigure(f, line));
        }

        figures.AddRange(parts);
        Figure total = Figure.Derive(
            $"{house}/duty/loss-factor", "Heat loss factor, curtain open", Unit.WattPerKelvin,
            Term.Total(parts.Select((p, i) => Term.Of($"k{i + 1}", p))), FirstLaw);
        figures.Add(total);
        Figure drawn = total;
        if (f.Input.Curtains > 0)
        {
            Term above = Term.Of("above", "Loss factor of the shell above the curtain", f.AboveWPerK, Unit.WattPerKelvin, FirstLaw);
            Term cloth = Term.Of("cloth", "Curtain area", f.Form.FloorAreaM2, Unit.SquareMetre, new Source.FirstPrinciples("the floor's area"));
            Term r = Term.Of(
                "r", "Resistance of cloth and still air, m²K/W", HeatPaths.CurtainM2KPerW * f.Input.Layers, Unit.None,
                new Source.CommonPractice("0.17 m²K/W a curtain: what tables of U with and without a curtain imply (from memory)"));
            drawn = Figure.Derive(
                f.Input.SecondOpennessFraction is null ? $"{house}/duty/loss-factor-drawn" : $"{house}/duty/loss-factor-first-drawn",
                f.Input.SecondOpennessFraction is null ? "Heat loss factor, curtain drawn" : "Heat loss factor, the first curtain drawn", Unit.WattPerKelvin,
                Term.Of("total", total) - above + 1.0 / (1.0 / above + r / cloth), FirstLaw);
            figures.Add(drawn);
            if (f.Input.SecondOpennessFraction is { } openness)
            {
                Term first = Term.Of("first", "The same shell under the first curtain", DutyStage.CurtainedWPerK(f.AboveWPerK, f.Form.FloorAreaM2, 1), Unit.WattPerKelvin, FirstLaw);
                Term open = Term.Of("open", "Open area of the second cloth", openness, Unit.Fraction, new Source.Given($"{f.Input.Pointer}/equipment/secondCurtain"));
                drawn = Figure.Derive(
                    $"{house}/duty/loss-factor-drawn", "Heat loss factor, both curtains drawn", Unit.WattPerKelvin,
                    Term.Of("total", total) - above + open * first + (1.0 - open) / (1.0 / first + r / cloth), FirstLaw);
                figures.Add(drawn);
            }
        }

        Term night = Term.Of(
            "inside", $"Warmest night target in the cold weeks ({f.ColdCrop.Crop})", f.Result.NightTargetC, Unit.Celsius,
            new Source.Given($"{f.Input.Pointer}/schedule"));
        Term cold = Term.Of("outside", "99.6 % heating dry bulb", f.Result.Conditions.Heating996C, Unit.Celsius, f.Result.Conditions.Source);
        Term difference = Term.Max(night - cold, 0.0);
        figures.Add(Figure.Derive($"{house}/duty/heat-loss", "Heat loss on the 99.6 % night, curtain open", Unit.Watt, Term.Of("total", total) * difference, FirstLaw));
        figures.Add(Figure.Derive($"{house}/duty/heat-loss-drawn", "Heat loss on the 99.6 % night, curtain drawn", Unit.Watt, Term.Of("drawn", drawn) * difference, FirstLaw));
        Term extreme = Term.Of("outside", "Mean annual extreme minimum", f.Result.Conditions.ExtremeMinC, Unit.Celsius, f.Result.Conditions.Source);
        figures.Add(Figure.Derive(
            $"{house}/duty/frost-loss", "Heat that keeps it at 2 °C (36 °F) on the year's coldest night", Unit.Watt,
            Term.Of("total", total) * Term.Max(2.0 - extreme, 0.0), FirstLaw));
    }

    private static Figure LossFigure(DutyFacts f, LossLine line)
    {
        string id = $"{f.Input.House}/duty/loss/{line.Id[(f.Input.House.Length + 1)..]}";
        if (line.Id.EndsWith("/infiltration", StringComparison.Ordinal))
        {
            return Figure.Derive(
                id, "Leaking air", Unit.WattPerKelvin,
                Term.Of("volume", "Volume", f.Form.VolumeM3, Unit.CubicMetre, new Source.FirstPrinciples("plane geometry"))
                    * Term.Of("changes", "Air changes by leakage", f.Input.AirtightnessPerHour, Unit.PerHour, new Source.Given($"{f.Input.Pointer}/airtightness"))
                    / 3600.0
                    * Term.Of("heat", "Heat of air by volume, J/m³K", HeatPaths.AirHeatJPerM3K(f.Result.PressurePa), Unit.None, new Source.FirstPrinciples("density × specific heat of dry air at 5 °C and the site's pressure")),
                FirstLaw);
        }

        if (line.Id.EndsWith("/perimeter", StringComparison.Ordinal))
        {
            return Figure.Derive(
                id, "Slab edge", Unit.WattPerKelvin,
                Term.Of("perimeter", "Perimeter against outdoor air", line.AreaM2, Unit.Metre, new Source.FirstPrinciples("plane geometry"))
                    * Term.Of("f", "Perimeter factor, W/mK", line.UWPerM2K, Unit.None, new Source.Standard("State energy code WAC 51-11C", "table A106.1", Source.Mark.Read)),
                new Source.CommonPractice("perimeter rule; soil and gravel floors take the slab's value"));
        }

        return Figure.Derive(
            id, $"Loss factor of {line.Id}", Unit.WattPerKelvin,
            Term.Of("area", "Exposed net area", line.AreaM2, Unit.SquareMetre, new Source.FirstPrinciples("plane geometry"))
                * Term.Of("u", "U-value", line.UWPerM2K, Unit.WattPerSquareMetreKelvin, new Source.CommonPractice("greenhouse heating tables for this covering; openings closed")),
            FirstLaw);
    }

    private static void Gains(DutyFacts f, List<Figure> figures)
    {
        string house = f.Input.House;
        Source table = new Source.FirstPrinciples("gain table of this house: each direction's light followed to where it ends");
        Term Inside(string symbol, string label, double value) => Term.Of(symbol, label, value, Unit.Watt, table);
        Term shade = Term.Of("shade", "Shade counted", f.Input.ShadeFraction, Unit.Fraction, new Source.Given($"{f.Input.Pointer}/equipment/shade"));
        Figure solar = Figure.Derive(
            $"{house}/duty/solar-gain", "Sun kept inside at the cooling hour", Unit.Watt,
            (1.0 - shade) * (Inside("inside", "Absorbed by crop, floor, frame and opaque walls", f.Hour.InsideW)
                + Term.Of("inward", "Share of the covering's own heat that flows in", f.InwardFraction, Unit.Fraction, new Source.FirstPrinciples("covering absorbs at mid-thickness"))
                * Inside("cover", "Absorbed in the covering", f.Hour.Sun.CoverW)),
            FirstLaw,
            $"Hour {f.Hour.Hour % 24 + 1} of day {f.Hour.Day + 1}, {f.Hour.GlobalWm2:0} W/m² outside: the sunniest of {f.Hour.Candidates} hot hours in the weather year.");
        figures.Add(solar);
        Term planted = Term.Of("planted", "Planted share of the floor", f.HotCrop.PlantedFraction, Unit.Fraction, new Source.Given($"{f.Input.Pointer}/schedule"));
        Figure stored = Figure.Derive(
            $"{house}/duty/stored", "Heat that floor and benches store at that hour", Unit.Watt,
            (0.1 * planted + 0.3 * (1.0 - planted)) * (1.0 - shade) * Inside("crop_plane", "Absorbed at the crop plane", f.Hour.Sun.CropPlaneW),
            new Source.Standard("FAO Irrigation and Drainage Paper 56", "soil heat a tenth of net radiation under grass (eq. 45); three tenths bare, common practice", Source.Mark.FromMemory));
        figures.Add(stored);
        Figure latent = Figure.Observe(
            $"{house}/duty/crop-latent", "Heat the crop turns into vapour", Unit.Watt, f.Run.CropLatentW,
            "Quick transpiration form at each slice's own humidity, summed from intake to fans",
            [
                Input("sun", "Sun on top of the crop", f.CropWm2, Unit.WattPerSquareMetre),
                Input("planted", "Planted area", f.Load.PlantedM2, Unit.SquareMetre),
                Input("lai", "Leaf area per planted area", f.HotCrop.LeafAreaIndex, Unit.None),
                Input("a", "A", DutyStage.CropSolarFactor, Unit.None),
                Input("b", "B, W/m²kPa", DutyStage.CropDayWPerM2KPa, Unit.None),
            ],
            "Well-watered crop, middle of the published species; ±30 %",
            Quick);
        figures.Add(latent);
        figures.Add(Figure.Derive(
            $"{house}/duty/transpiration", "Transpiration then", Unit.KilogramPerSecond,
            Term.Of("latent", latent) / Term.Of("lambda", "Latent heat, J/kg", Transpiration.LatentJPerKg, Unit.None, new Source.Standard("FAO Irrigation and Drainage Paper 56", "λ", Source.Mark.ReadSecondHand)),
            FirstLaw));
        figures.Add(Figure.Derive(
            $"{house}/duty/sensible-gain", "Sun less what is stored and what the crop turns into vapour", Unit.Watt, Term.Of("solar", solar) - Term.Of("stored", stored) - Term.Of("latent", latent), FirstLaw));
    }

    private static void Ventilation(DutyFacts f, List<Figure> figures)
    {
        string house = f.Input.House;
        Term floor = Term.Of("floor", "Floor", f.Form.FloorAreaM2, Unit.SquareMetre, new Source.FirstPrinciples("plane geometry"));
        Term pressure = Term.Of("pressure", "Barometric pressure", f.Result.PressurePa, Unit.Barometer, Ep406);
        Term lux = Term.Of(
            "lux", "Light at the crop, lux", f.Rule.LightFactor * 53_800, Unit.None,
            new Source.CommonPractice("110 lux for each W/m² absorbed at the crop plane, less the shade counted"));
        Term rise = Term.Of("rise", "Rise allowed", Math.Clamp(f.Input.TemperatureRiseK, 1, 15), Unit.Kelvin, new Source.Given($"{f.Input.Pointer}/equipment/temperatureRise"));
        Term length = Term.Of("length", "Intake to fans", Math.Max(f.Form.LengthM, 1), Unit.Metre, new Source.FirstPrinciples("length of the house"));
        figures.Add(Figure.Derive(
            $"{house}/duty/ventilation-rule", "Ventilation by the factor rule", Unit.CubicMetrePerSecond,
            0.04064 * floor * Term.Max(101_325.0 / pressure * (lux / 53_800.0) * (7 / 1.8 / rise), Term.Max(10.0 / Term.Sqrt(length / 0.3048), 1.0)),
            Ep406,
            "Knows nothing of covering, crop or walls; other rules in print say 10 to 12 cfm/ft²."));
        figures.Add(Figure.Observe(
            $"{house}/duty/ventilation-balance", "Ventilation by the energy and moisture balance", Unit.CubicMetrePerSecond, f.Need.FlowM3PerS,
            "Air marched from intake to fans in 40 slices: sun in, transpiration at each slice's humidity, losses out; the least flow whose hottest slice stays within the rise",
            [
                Input("solar", "Sun kept inside less what is stored", f.Load.SolarW, Unit.Watt),
                Input("intake", "Air at the intake", f.Inlet.DryBulbC, Unit.Celsius),
                Input("outside", "Outside", f.Outside.DryBulbC, Unit.Celsius),
                Input("walls", "Through faces and edge", f.Load.ConductanceWPerK, Unit.WattPerKelvin),
                Input("rise", "Rise allowed", f.Input.TemperatureRiseK, Unit.Kelvin),
            ],
            f.Input.WetWall
                ? $"No mixing along the house; pad effectiveness taken as {DutyStage.AssumedPadEffectiveness:0.00} until Plant chooses the pad"
                : "No mixing along the house",
            FirstLaw));
        figures.Add(Figure.Derive(
            $"{house}/duty/ventilation", "Ventilation later stages use", Unit.CubicMetrePerSecond,
            Term.Max(Term.Of("rule", figures[^2]), Term.Of("balance", figures[^1])),
            new Source.CommonPractice("the larger of both methods")));
        figures.Add(Figure.Observe(
            $"{house}/duty/intake-temperature", "Air at the intake on the design day", Unit.Celsius, f.Inlet.DryBulbC,
            f.Input.WetWall ? "Along the wet-bulb line by the assumed effectiveness" : "Outside air", [], "0.4 % dry bulb with its coincident wet bulb",
            FirstLaw));
        figures.Add(Figure.Observe(
            $"{house}/duty/fan-end-temperature", "Air at the fans on the design day", Unit.Celsius, f.Run.Stations[^1].DryBulbC,
            "Last slice of the march at the ventilation above", [], "One hour of sun with the 0.4 % temperatures", FirstLaw));
    }

    private static void Moisture(DutyFacts f, List<Figure> figures)
    {
        string house = f.Input.House;
        Figure latent = Figure.Observe(
            $"{house}/duty/night-latent", "Night transpiration, heat a square metre of crop", Unit.WattPerSquareMetre, f.NightLatentWm2,
            "Quick transpiration form without sun",
            [
                Input("vpd", "Vapour pressure deficit at the night target", f.Night.VapourDeficitPa, Unit.Pascal),
                Input("lai", "Leaf area per planted area", f.ColdCrop.LeafAreaIndex, Unit.None),
                Input("b", "B, W/m²kPa", DutyStage.CropNightWPerM2KPa, Unit.None),
            ],
            "±50 % at night", Quick);
        figures.Add(latent);
        figures.Add(Figure.Derive(
            $"{house}/duty/night-moisture", "Moisture to remove at night", Unit.KilogramPerSecond,
            Term.Of("latent", latent)
                * Term.Of("planted", "Planted share of the floor", f.ColdCrop.PlantedFraction, Unit.Fraction, new Source.Given($"{f.Input.Pointer}/schedule"))
                * Term.Of("floor", "Floor", f.Form.FloorAreaM2, Unit.SquareMetre, new Source.FirstPrinciples("plane geometry"))
                / 2.45e6,
            FirstLaw));
        if (f.DryingNight.HumidityRatio < f.Night.HumidityRatio - 1e-4 && f.Result.NightMoistureKgPerS > 0)
        {
            figures.Add(Figure.Derive(
                $"{house}/duty/drying-air", "Outside air that carries it away on a damp night", Unit.CubicMetrePerSecond,
                Term.Of("moisture", figures[^1])
                    / (Term.Of("inside", "Humidity ratio at the night target", f.Night.HumidityRatio, Unit.HumidityRatio, FirstLaw)
                        - Term.Of("outside", $"Humidity ratio outside at {f.DryingNight.DryBulbC:0.0} °C, the damp end of heating nights", f.DryingNight.HumidityRatio, Unit.HumidityRatio, new Source.CommonPractice("ninth of ten heating nights by dew point")))
                    * Term.Of("volume", "Volume of outside air, m³/kg", f.DryingNight.VolumeM3PerKg, Unit.None, FirstLaw),
                FirstLaw));
        }
    }

    private static WorkingInput Input(string symbol, string label, double value, Unit unit) =>
        new(symbol, label, "", value, unit, FirstLaw);
}
