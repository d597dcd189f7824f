using Glazewright.Design.Contracts;
using Glazewright.Design.Duty;
using Glazewright.Design.Plant;
using Glazewright.Design.Program;
using Glazewright.Science.Weather;

namespace Glazewright.Design.Year;

/// <summary>Figures of the year.</summary>
internal static class YearWorkings
{
    private const string Method = "House model and control program run together, 525,600 steps of one minute after 30 days of warming up; counted minute by minute";
    private const string Limits = "One typical year, one mean air below and one above the curtain; the sun within an hour is smoother than real clouds";
    private const string Caution = "A typical year leaves the extremes out: see the design days.";

    private static readonly Source Model =
        new Source.Paper("Two-zone greenhouse climate model after published correlations", "docs/methods/climate-model.md", Source.Mark.FromMemory);

    private static readonly Source Sum = new Source.FirstPrinciples("counting and adding");

    public static StageReport Report(YearResult r, YearRun run, YearInput input, DutyResult duty, PlantResult plant, ProgramDocument program)
    {
        List<Figure> figures = [];
        EqList<WorkingInput> inputs =
        [
            new("band_k", "Half width of the temperature band", "/held/temperature", input.Band.TemperatureK, Unit.Kelvin, new Source.Given("/held/temperature")),
            new("band_rh", "Half width of the humidity band", "/held/humidity", input.Band.HumidityPercent, Unit.PercentHumidity, new Source.Given("/held/humidity")),
            .. input.Schedule.Any(p => p.Day.VpdKPa > 0 || p.Night.VpdKPa > 0)
                ? (EqList<WorkingInput>)[new("band_vpd", "Half width of the band of the vapour pressure deficit, kPa", "/held/vpd", input.Band.VpdKPa, Unit.None, new Source.Given("/held/vpd"))]
                : [],
            new("air_changes", "Air changes by leakage at 4 m/s", $"{input.Pointer}/airtightness", input.AirtightnessPerHour, Unit.PerHour, new Source.Given($"{input.Pointer}/airtightness")),
        ];

        Figure Observe(string name, string label, Unit unit, double value)
        {
            Figure figure = Figure.Observe($"{r.House}/year/{name}", label, unit, value, Method, inputs, Limits, Model, Caution);
            figures.Add(figure);
            return figure;
        }

        Figure Derive(string name, string label, Unit unit, Term term)
        {
            Figure figure = Figure.Derive($"{r.House}/year/{name}", label, unit, term, Sum, Caution);
            figures.Add(figure);
            return figure;
        }

        HeldCounters h = r.Held;
        Figure total = Observe("hours", "Hours counted", Unit.Hour, h.TotalH);
        Figure jointly = Observe("held-hours", "Hours with all targets held", Unit.Hour, h.HeldJointlyH);
        Derive("held", "Share of hours with all targets held", Unit.Fraction, Term.Of("held", jointly) / Term.Of("total", total));
        Figure temperature = Observe("held-temperature-hours", "Hours with the temperature held", Unit.Hour, h.HeldTemperatureH);
        Derive("held-temperature", "Share of hours with the temperature held", Unit.Fraction, Term.Of("held", temperature) / Term.Of("total", total));
        Observe("humidity-asked-hours", "Hours with a humidity asked for", Unit.Hour, h.HumidityAskedH);
        Observe("held-humidity-hours", "Hours with the humidity held", Unit.Hour, h.HeldHumidityH);
        Observe("too-warm", "Hours too warm", Unit.Hour, h.TooWarmH);
        Observe("too-warm-plant", "Hours too warm with every cooling stage on", Unit.Hour, h.WarmFreeCoolingLimitH);
        Observe("too-cold", "Hours too cold", Unit.Hour, h.TooColdH);
        Observe("too-cold-plant", "Hours too cold with every heater on", Unit.Hour, h.ColdPlantLimitH);
        Observe("too-cold-fans", "Hours too cold within ten minutes of an exhaust fan", Unit.Hour, run.ColdAfterFansH);
        Observe("too-wet", "Hours too wet", Unit.Hour, h.TooWetH);
        Observe("too-dry", "Hours too dry", Unit.Hour, h.TooDryH);
        Observe("above-never", "Hours above the temperature never to be exceeded", Unit.Hour, h.AboveNeverH);
        if (plant.Exhaust is { Choice.Fans.Count: > 0 })
        {
            Observe("too-warm-hot-end", "Hours too warm at the hot end of the house (the mean while no fan runs)", Unit.Hour, run.Ends.TooWarmH);
            Observe("too-cold-cold-end", "Hours too cold at its cold end", Unit.Hour, run.Ends.TooColdH);
            Observe("above-never-hot-end", "Hours above the temperature never to be exceeded at its hot end", Unit.Hour, run.Ends.AboveNeverH);
        }

        Observe("frost", "Hours at or below freezing", Unit.Hour, h.FrostH);
        Observe("condensation", "Hours with water on the covering", Unit.Hour, h.CondensationH);
        Observe("leaf-wet", h.LeafWetH > 0 ? "Hours with water on leaves" : "Hours with water on leaves (the model shows none; dew at sunrise on a real crop is not excluded)", Unit.Hour, h.LeafWetH);
        Observe("lowest", "Coldest minute inside", Unit.Celsius, r.Extremes.LowestC);
        Observe("highest", "Hottest minute inside while something grows", Unit.Celsius, r.Extremes.HighestC);
        Observe("outside-at-lowest", "Outside air in the coldest minute", Unit.Celsius, r.Extremes.OutsideAtLowestC);
        Observe("outside-at-highest", "Outside air in the hottest minute", Unit.Celsius, r.Extremes.OutsideAtHighestC);
        Observe("transpired", "Water the crop gave to the air", Unit.WaterCubicMetre, r.TranspiredKg / 1000);
        Observe("condensed", "Water condensed on covering and curtain", Unit.WaterCubicMetre, r.CondensedKg / 1000);
        Figure sunMol = Observe("sun-light", "Sunlight absorbed at the crop's plane, mol/m² a day, mean of the year", Unit.None, Days(r, m => m.SunMolPerM2Day));
        Observe("sun-light-darkest", "The same in its darkest month, mol/m² a day", Unit.None, r.Months.Min(m => m.SunMolPerM2Day));
        if (plant.LampW > 0)
        {
            Figure lampMol = Observe("lamp-light", "Light of the lamps over the planted floor, mol/m² a day, mean of the year", Unit.None, Days(r, m => m.LampMolPerM2Day));
            Derive("light", "Light at the crop, mol/m² a day, mean of the year", Unit.None, Term.Of("sun", sunMol) + Term.Of("lamps", lampMol));
        }

        if (run.Snow is { IsRecorded: true, OpensCurtains: true } snow)
        {
            Observe("snow", "Hours with new snow on the roof", Unit.Hour, snow.LainH);
            Observe("snow-held-open", "Of them, hours dark and cold with the curtain held open", Unit.Hour, snow.HeldOpenH);
        }

        if (run.Rain is { HoldsVents: true, KnownH: > 0 } rain)
        {
            Observe("rain", "Hours of rain in the weather file", Unit.Hour, rain.RainedH);
            Observe("rain-held", "Hours in which rain kept a vent from opening as far as was asked", Unit.Hour, rain.HeldH);
            Observe("rain-held-warm", "Of them, hours in which the air was too warm", Unit.Hour, rain.TooWarmH);
        }

        if (plant.Dehumidifier is not null)
        {
            Observe("dried", "Water the dehumidifier took out", Unit.Kilogram, r.DriedKg);
        }

        Observe("heat", "Heat delivered", Unit.Joule, r.HeatJ);
        Observe("energy-books", "Error of the energy books over heat turned over", Unit.None, r.EnergyClosureFraction);
        Observe("water-books", "Error of the water books over water turned over", Unit.None, r.WaterClosureFraction);
        Observe("peak", "Peak quarter-hour demand", Unit.ElectricWatt, r.PeakPowerW);
        Observe("frost-fans", "Hours at or below freezing within ten minutes of an exhaust fan", Unit.Hour, run.FrostAfterFansH);
        Observe("winter-fan-loss", "Heat carried out by exhaust fans with outside air more than 18 F° (10 K) below the target", Unit.Joule, run.WinterFanAirJ);
        Observe("filter-fan-loss", "Heat that the filter fan's air takes", Unit.Joule, run.FilterFanJ);
        Wear(r, plant, program, Observe, Derive);
        Balance(run.Balance, Observe, Derive);
        Costs(r, input, Observe, Derive);
        return new StageReport(figures.ToEqList(), YearWords.Findings(r, run, input, duty, plant, program).ToEqList(), YearWords.LeftOut(input, run, plant));
    }

    // Of motors that are worn out before their kind is old.
    private static void Wear(
        YearResult r, PlantResult plant, ProgramDocument program, Func<string, string, Unit, double, Figure> observe, Func<string, string, Unit, Term, Figure> derive)
    {
        foreach (WornMotor motor in MotorWear.Worn(r.Motors, program, plant))
        {
            string id = motor.Motor.Id[(r.House.Length + 1)..];
            Figure does = motor.ByTravel
                ? observe($"cycles-{id}", $"Travel of {id} a year, times open and shut", Unit.Count, motor.Cycles)
                : observe($"starts-{id}", $"Starts of {id} a year", Unit.Count, motor.Starts);
            derive(
                $"wear-{id}", $"Years until {id} has done what its kind is made for", Unit.None,
                Term.Of("life", $"What {motor.Limit.Part} is made for", motor.ByTravel ? motor.Limit.LifeCycles : motor.Limit.LifeStarts, Unit.Count, motor.Limit.Source) / Term.Of("a_year", does));
        }
    }

    private static void Balance(in HeatBalance b, Func<string, string, Unit, double, Figure> observe, Func<string, string, Unit, Term, Figure> derive)
    {
        Figure sun = observe("sun", "Sun absorbed in the house", Unit.Joule, b.SunJ);
        Figure heat = observe("balance-heat", "Heat delivered, as the balance counts it", Unit.Joule, b.HeatJ);
        Figure lamps = observe("lamp-heat", "Heat of lamps and circulation fans", Unit.Joule, b.LampJ);
        Figure shell = observe("shell-loss", "Heat lost through the shell", Unit.Joule, b.ShellJ);
        Figure fans = observe("fan-loss", "Sensible heat lost with air while exhaust fans ran", Unit.Joule, b.FanAirJ);
        Figure leaks = observe("leak-loss", "Sensible heat lost with air the rest of the time (leaks, vents, filter fan)", Unit.Joule, b.OtherAirJ);
        Figure ground = observe("ground-loss", "Heat lost to the ground and at the floor's edge", Unit.Joule, b.GroundJ);
        Figure latent = observe("evaporation-heat", "Heat taken by evaporation less what condensation gave back", Unit.Joule, b.LatentJ);
        Figure stored = observe("stored-heat", "Heat left in the ground and the house at the year's end", Unit.Joule, b.StoredJ);
        derive(
            "heat-balance", "What the year's heat balance misses", Unit.Joule,
            Term.Of("sun", sun) + Term.Of("heat", heat) + Term.Of("lamps", lamps) - Term.Of("shell", shell) - Term.Of("fans", fans)
                - Term.Of("leaks", leaks) - Term.Of("ground", ground) - Term.Of("latent", latent) - Term.Of("stored", stored));
    }

    private static double Days(YearResult r, Func<YearMonth, double> value) => r.Months.Select((m, i) => value(m) * CommonYear.DaysIn(i + 1)).Sum() / YearTargets.Days;

    private static Figure Co2Cost(
        YearResult r, YearInput input, Func<string, string, Unit, double, Figure> observe, Func<string, string, Unit, Term, Figure> derive)
    {
        Figure gas = observe("co2", "Carbon dioxide dosed", Unit.Kilogram, r.Co2Kg);
        return derive(
            "co2-cost", "Cost of carbon dioxide", Unit.Dollar,
            Term.Of("co2", gas) * Term.Of("co2_price", "Carbon dioxide, money a kilogram", input.Tariffs.Co2PerKg, Unit.None, new Source.Given("/tariffs/co2")));
    }

    private static void Costs(
        YearResult r, YearInput input, Func<string, string, Unit, double, Figure> observe, Func<string, string, Unit, Term, Figure> derive)
    {
        static Term Price(string symbol, string label, double value, Unit unit, string field) =>
            Term.Of(symbol, label, value, unit, new Source.Given($"/tariffs/{field}"));

        Figure fuel = observe("fuel", "Fuel, gross", Unit.Joule, r.FuelJ);
        Figure power = observe("power", "Electric energy", Unit.ElectricJoule, r.PowerJ);
        Figure water = observe("water", "Water of wet wall and fog", Unit.Kilogram, r.WaterKg);
        Figure peaks = observe("monthly-peaks", "Sum of the twelve monthly quarter-hour peaks", Unit.ElectricWatt, r.Months.Sum(m => m.PeakPowerW));
        Term spread = Price("spread", "Half width of the price band", input.Tariffs.SpreadFraction, Unit.Fraction, "spread");
        Figure fuelCost = derive("fuel-cost", "Fuel cost", Unit.Dollar, Term.Of("fuel", fuel) / 1e9 * Price("fuel_price", "Fuel, money a gigajoule of gross heat", 1e9 * input.Tariffs.FuelPerJoule, Unit.None, "fuel"));
        Figure powerCost = derive("power-cost", "Power cost", Unit.Dollar, Term.Of("power", power) / 3.6e6 * Price("power_price", "Power, money a kilowatt-hour", 3.6e6 * input.Tariffs.PowerPerJoule, Unit.None, "power"));
        Figure demandCost = derive("demand-cost", "Demand charge", Unit.Dollar, Term.Of("peaks", peaks) / 1000 * Price("demand_price", "Demand, money a kilowatt and month", 1000 * input.Tariffs.DemandPerWattMonth, Unit.None, "demand"));
        Figure waterCost = derive("water-cost", "Water cost", Unit.Dollar, Term.Of("water", water) / 1000 * Price("water_price", "Water, money a cubic metre", input.Tariffs.WaterPerM3, Unit.None, "water"));
        Term energy = Term.Of("fuel_cost", fuelCost) + Term.Of("power_cost", powerCost) + Term.Of("demand_cost", demandCost) + Term.Of("water_cost", waterCost);
        Figure cost = derive(
            "cost", r.Co2Kg > 0 ? "Energy, water and carbon dioxide for the year" : "Energy and water for the year", Unit.Dollar,
            r.Co2Kg > 0 ? energy + Term.Of("co2_cost", Co2Cost(r, input, observe, derive)) : energy);
        derive("cost-low", "The same, low end of the price band", Unit.Dollar, Term.Of("cost", cost) * (1 - spread));
        derive("cost-high", "The same, high end of the price band", Unit.Dollar, Term.Of("cost", cost) * (1 + spread));
        observe("worst-month-cost", "Dearest month", Unit.Dollar, r.Months[r.WorstMonth - 1].Cost);
    }
}
