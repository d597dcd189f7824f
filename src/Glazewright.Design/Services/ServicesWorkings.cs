using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using static Glazewright.Design.Plant.PlantWords;

namespace Glazewright.Design.Services;

/// <summary>Figures and findings of Services.</summary>
internal static class ServicesWorkings
{
    private static readonly Source Sum = new Source.FirstPrinciples("sum of the load list");
    private static readonly Source Code = new Source.Standard("NEC", "tables 430.248 and 430.250; 430.24, 220.60", Source.Mark.ReadSecondHand);
    private static readonly Source Practice = new Source.CommonPractice("the trade's first sizing of services, for licensed trades to confirm");

    public static StageReport Report(ServicesInput input, FormResult form, ServicesResult r)
    {
        List<Figure> figures = [];
        List<Finding> findings = [];
        Power(input, r, figures, findings);
        PanelWorkings.Add(input, r, figures, findings);
        Gas(input, r, figures, findings);
        Water(input, r, figures, findings);
        PlanWorkings.Add(input, form, r, figures, findings);
        findings.Add(new Finding(
            "services/licensed-trades", Severity.Note, "",
            "Services are first sizes to price from. Electric, gas and plumbing design and work are by licensed trades under the codes adopted locally.", "", Practice));
        return new StageReport(
            figures.ToEqList(),
            findings.ToEqList(),
            [
                "Services: not chosen are raceways and boxes, starters and overloads (by the nameplate), fault current and the breakers' interrupting rating, grounding electrodes, lightning and surge protection, transfer switch wiring; traps, vents, cleanouts and pressure loss of pipes.",
                "Services: pipes, bibs and drains are placed by rule: along walls, the aisle and the ends of houses, under benches; what is buried there is not known. Supply to wash rooms and the line from the outlet to where drains may go are not counted.",
                "Services: lights, receptacles, water heater and the head house's heat pump are allowances by rule; well and irrigation pumps, coolers and tools with plugs of their own are not in the load list.",
                "Services: conductors and voltage drops take direct-current resistance at 75 °C; starting dips are not computed.",
                "Services: motor sizes are taken from the power drawn; nameplates of what is bought replace them.",
            ]);
    }

    private static void Power(ServicesInput input, ServicesResult r, List<Figure> figures, List<Finding> findings)
    {
        if (r.Power is not { } power)
        {
            return;
        }

        Utilities lot = input.Utilities;
        Figure Demand(string id, string label, LoadSeason season)
        {
            // Unit.None: apparent power, VA, has no unit of its own among figures.
            Term[] terms = [.. r.Electric.Where(l => l.CountsIn(season)).Select((l, i) =>
                Term.Of($"s{i + 1}", $"{l.House}: {l.Label}, VA × demand", l.DemandFraction * l.SizingVa, Unit.None, l.ByTable ? Code : Sum))];
            return Figure.Derive(id, label, Unit.None, Term.Total(terms), Sum);
        }

        Figure summer = Demand("services/summer-demand", "Demand while cooling, VA", LoadSeason.Cooling);
        Figure winter = Demand("services/winter-demand", "Demand while heating, VA", LoadSeason.Heating);
        double root = lot.Phase == Phase.Three ? Math.Sqrt(3) : 1;
        figures.Add(summer);
        figures.Add(winter);
        Term Quarter(string symbol, string season, LoadSeason of) => Term.Of(
            symbol, $"{season}: a quarter of its largest motor and of what is on for hours, VA", PowerServices.Demand(r.Electric, of).QuarterVa, Unit.None, Code);
        Figure demand = Figure.Derive(
            "services/demand", "Current the service must carry", Unit.Ampere,
            Term.Max(
                Term.Of("summer", summer) + Quarter("sq", "Cooling", LoadSeason.Cooling),
                Term.Of("winter", winter) + Quarter("wq", "Heating", LoadSeason.Heating))
                / (Term.Of("volts", "Service voltage", lot.ServiceV, Unit.None, new Source.Given("/utilities/voltage"))
                    * Term.Of("root", "√3 on three phases, 1 on one", root, Unit.None, Sum)),
            Code, "Cooling and heating never run together (NEC 220.60); lights, receptacles and head house are allowances.");
        figures.Add(demand);
        figures.Add(Figure.Observe(
            "services/generator-start", "Most the backup list draws while it starts, VA", Unit.None, power.StartVa,
            "All of the backup list at its sizing current, the one with the largest start at its starting current, started last",
            [new WorkingInput("running", "Backup list at sizing currents, VA", "", power.BackupVa, Unit.None, Sum)],
            "One motor at a time, by the program's delays; a set with a stated motor-starting rating may be smaller", Practice));
        if (lot.ServiceA > 0)
        {
            bool over = power.DemandA > lot.ServiceA;
            findings.Add(new Finding(
                "services/electric-service", over ? Severity.Miss : power.DemandA > 0.8 * lot.ServiceA ? Severity.Near : Severity.Note, "",
                Text($"The range asks {power.DemandA:0} A of the lot's {lot.ServiceA:0} A ({power.SummerVa / 1000:0.0} kVA while cooling, {power.WinterVa / 1000:0.0} while heating), allowances for lights, receptacles and head house among them. Voltage drop over the run to the pole about {100 * power.DropFraction:0.0} %."),
                over ? (power.ServiceA > 0 ? Text($"A {power.ServiceA:0} A service, or fewer loads at once.") : "A service by the utility's engineer, or fewer loads at once.") : power.DropFraction > ServiceRun.LimitFraction ? "A nearer transformer or parallel cables: 2 % to the panel leaves 3 % for the branches." : "",
                Code));
        }

        if (power.StartId.Length > 0)
        {
            findings.Add(new Finding(
                "services/generator", Severity.Note, power.StartId,
                power.GeneratorVa > 0
                    ? Text($"The backup list runs on {power.BackupVa / 1000:0.0} kVA; {power.StartVa / 1000:0.0} kVA while {power.StartId} starts last: a {power.GeneratorVa / 1000:0} kVA set, behind a transfer switch.")
                    : Text($"The backup list needs {power.StartVa / 1000:0.0} kVA while {power.StartId} starts: more than usual standby sets give."),
                "Start one motor after another; test it monthly under load.", Practice));
        }

    }

    private static void Gas(ServicesInput input, ServicesResult r, List<Figure> figures, List<Finding> findings)
    {
        if (r.GasMain is not { } gas)
        {
            return;
        }

        figures.Add(Figure.Derive(
            "services/fuel-input", "Fuel input with all burners on", Unit.Watt,
            Term.Total([.. r.Gas.Select((b, i) => Term.Of($"b{i + 1}", $"{b.Id}: output over efficiency", b.InputW, Unit.Watt, new Source.Catalogue(b.Entry)))]), Sum));
        string fuel = FuelWords.Of(gas.Fuel);
        string amount = gas.Fuel switch
        {
            FuelKind.NaturalGas => Text($"{gas.FlowM3PerS * 3600 / 0.0283168466:0} ft³/h"),
            FuelKind.Propane => Text($"{gas.PerHour:0.0} gal/h ({gas.FlowM3PerS * 3600 / 0.0283168466:0} ft³/h of vapour)"),
            _ => Text($"{gas.PerHour:0.0} gal/h"),
        };
        bool low = gas.LeastPa > 0 && gas.HasPa > 0 && gas.HasPa < gas.LeastPa;
        findings.Add(new Finding(
            "services/gas", low ? Severity.Near : Severity.Note, "",
            Text($"All burners on: {KBtu(gas.InputW)} kBtu/h of {fuel}, {amount}.{(gas.PipeName.Length > 0 ? Text($" A first size of the main: {gas.PipeName} steel for {gas.RunM / 0.3048:0} ft at 0.5 in. w.c. of drop.") : "")}{(gas.HasPa > 0 && gas.LeastPa > 0 ? Text($" {gas.HasPa / 249.08891:0.0} in. w.c. at the building; such burners ask {gas.LeastPa / 249.08891:0.0} in. w.c. at the inlet.") : "")}"),
            low ? "A regulator of higher outlet pressure by the gas company." : "Leak test, sediment trap and shut-off at each burner, by a licensed fitter" + (input.Utilities.Fuel == FuelKind.Propane ? "; a tank must vaporise this in the coldest night." : "."),
            new Source.Standard("International Fuel Gas Code 2018", "low-pressure equation and table 402.4", Source.Mark.Read)));
        if (gas.Fuel == FuelKind.Propane)
        {
            findings.Add(new Finding(
                "services/propane-tank", Severity.Note, "",
                (gas.Tank is { } tank
                    ? Text($"Propane for {KBtu(gas.InputW)} kBtu/h at {tank.ColdestC * 1.8 + 32:0} °F: our estimate is {(tank.Count == 1 ? "one tank" : Text($"{tank.Count} tanks"))} of {tank.WaterM3 / 0.003785411784:0} gal, which vaporise {KBtu(tank.VaporisesW)} kBtu/h a fifth full and last {tank.SupplyDays:0} days from filled with all burners on half of the day.")
                    : Text($"Propane for {KBtu(gas.InputW)} kBtu/h{(input.ColdestC is { } c ? Text($" at {c * 1.8 + 32:0} °F: tanks of up to 1,000 gal do not vaporise it, a vaporiser or more tanks are wanted.") : ": the coldest outside is not known here, so no tank is estimated.")}"))
                    + " Tanks are by the supplier.",
                "The supplier sizes, sets and fills by NFPA 58: usually 10 ft from buildings and lot lines for 125 gal to 500 gal, 25 ft for 501 gal to 2,000 gal, farther from air intakes and other sources of ignition; a pad clear of snow slides and machines.",
                new Source.CommonPractice("vaporisation of above-ground tanks by diameter and length; NFPA 58 distances from memory: the edition adopted and the supplier govern")));
        }
    }

    private static void Water(ServicesInput input, ServicesResult r, List<Figure> figures, List<Finding> findings)
    {
        if (r.Supply is not { } supply)
        {
            return;
        }

        figures.Add(Figure.Derive(
            "services/water-day", "Water on the design day", Unit.WaterCubicMetre,
            Term.Total([.. r.Water.Select((w, i) => Term.Of($"w{i + 1}", $"{w.House}: {w.Label}", w.DayM3, Unit.WaterCubicMetre, Practice))]), Practice));
        const double GallonM3 = 0.003785411784;
        bool dry = supply.WellM3PerS > 0 && supply.DayM3 > supply.WellDayM3;
        bool peak = supply.WellM3PerS > 0 && supply.PeakM3PerS > supply.WellM3PerS;
        if (supply.WellM3PerS > 0)
        {
            findings.Add(new Finding(
                "services/water-supply", dry ? Severity.Miss : peak ? Severity.Near : Severity.Note, "",
                Text($"All users at once draw {supply.PeakM3PerS * 60 / GallonM3:0.0} gpm and {supply.DayM3 / GallonM3:N0} gal on the design day; the well gives {supply.WellM3PerS * 60 / GallonM3:0.0} gpm, {supply.WellDayM3 / GallonM3:N0} gal a day."),
                dry ? "More supply: a tank does not help where the day's total is missing." : peak ? Text($"A tank of {supply.TankM3 / GallonM3:N0} gal that fills at night, with its own pump.") : "",
                Practice));
        }

        double drainDayM3 = r.Drains.Sum(d => d.DayM3);
        if (drainDayM3 > 0)
        {
            findings.Add(new Finding(
                "services/drain", input.Utilities.DrainTo.Length == 0 ? Severity.Near : Severity.Note, "",
                Text($"About {drainDayM3 / GallonM3:N0} gal a day run off in the worst case ({(r.Drains.Any(d => d.Id.EndsWith("/sump-dump", StringComparison.Ordinal)) ? "bleed, run-through of irrigation, an emptied sump" : "run-through of irrigation, condensate and wash water")}){(input.Utilities.DrainTo.Length > 0 ? Text($", to: {input.Utilities.DrainTo}") : "; the job does not say where to")}."),
                input.Utilities.DrainTo.Length == 0 ? "Ask the authority where salty and fertilised water may go." : "", Practice));
        }
    }
}
