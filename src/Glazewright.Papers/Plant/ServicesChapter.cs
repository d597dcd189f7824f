using System.Globalization;
using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Quantities;
using Glazewright.Design.Services;
using Glazewright.Papers.Answers;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Exchange;
using Glazewright.Papers.Reports;
using Glazewright.Papers.Sets;

namespace Glazewright.Papers.Plant;

/// <summary>What electrician, gas fitter, plumber and controls technician price from.</summary>
internal static class ServicesChapter
{
    public static IEnumerable<Block> Of(PaperSource source)
    {
        ServicesResult services = source.Services;
        if (services.Electric.Count == 0)
        {
            yield break;
        }

        bool us = source.Job.Units == UnitSystem.Us;
        Said said = new(source.Job.Units);
        yield return new Block.NewPage();
        yield return new Block.Heading(1, "Services of the range");
        yield return new Block.Lead(Lead(services, said));
        yield return new Block.Caution(
            "By licensed trades",
            "First sizes to price from. Electric, gas and plumbing design and work are by licensed trades under the codes adopted locally. Wet location: GFCI, corrosion-proof boxes, a disconnect in sight of each motor, lock-out. A generator only behind a transfer switch: back-feed kills line crews. Carbon monoxide alarm wherever fuel is burnt.");
        yield return new Block.Heading(2, "Electric load list");
        yield return new Block.TableOf(Loads(services, us));
        yield return new Block.Paragraph(
            "Amperes each, for sizing conductors: by the motor table for standard sizes (NEC 430.248 and 430.250, read at second hand; rows with a motor size), else running power over voltage, power factor 0.8 and √3 on three phases. Circuit: 1.25 × that. Size from the power drawn × 0.68 efficiency ÷ 1.15 service factor. The nameplate of what is bought rules.",
            Quiet: true);
        if (services.Power is { } power)
        {
            yield return new Block.TableOf(PowerTable(power, source.Job.Utilities));
            yield return new Block.Paragraph(
                $"Louver, curtain and vent motors count a quarter (minutes an hour); cooling and heating do not add up, and the larger is taken with a quarter of its own largest motor and of what is on for hours (lamps, lights, electric heat, head-house equipment). Allowances: a 40 W work light each {(us ? "215 ft²" : "20 m²")} of house and {(us ? "54 ft²" : "5 m²")} of other rooms; a receptacle of 180 VA each {(us ? "39 ft" : "12 m")} of long wall, {(us ? "13 ft" : "4 m")} round head house and control room; {(us ? "2.8 W/ft²" : "30 W/m²")} of heat pump there; 1.4 kW of water heater at a wash or toilet room. Backup list: one heater, circulation, first fan with its louver, control and alarm, started one after another.",
                Quiet: true);
        }

        foreach (Block block in PanelChapter.Of(source))
        {
            yield return block;
        }

        if (services.GasMain is { } gas)
        {
            yield return new Block.NewPage();
            yield return new Block.Heading(2, "Gas or oil");
            yield return new Block.TableOf(Burners(services, said));
            yield return new Block.Paragraph(Gas(gas, said, us));
        }

        foreach (Block block in VentChapter.Of(source))
        {
            yield return block;
        }

        yield return new Block.Heading(2, "Water and drain");
        yield return new Block.TableOf(Water(services, us));
        if (services.Supply is { } supply)
        {
            yield return new Block.Paragraph(
                $"All at once {Flow(supply.PeakM3PerS, us)}, {Volume(supply.DayM3, us)} on the design day; supply {Flow(supply.WellM3PerS, us)}."
                + (supply.TankM3 > 0 ? $" A tank of {Volume(supply.TankM3, us)} carries eight peak hours and fills at night." : "")
                + $" First sizes, to price from: supplies at {(us ? "5 ft/s" : "1.5 m/s")}{(supply.Pipe.Length > 0 ? $", the main {supply.Pipe}" : "")}; drains half full at {(us ? "1/4 in a foot" : "2 %")} of fall. The plumber sizes pipe, traps, vents and backflow by the local code.");
        }

        yield return new Block.Heading(2, "Controls points");
        yield return new Block.TableOf(Points(services));
        int Sum(Func<PointLine, int> of) => services.Points.Sum(of);
        static int Spare(int n) => (int)Math.Ceiling(1.25 * n);
        yield return new Block.Paragraph(string.Create(
            CultureInfo.InvariantCulture,
            $"Points {Sum(p => p.DigitalOut)} digital out, {Sum(p => p.DigitalIn)} digital in, {Sum(p => p.AnalogIn)} analog in, {Sum(p => p.AnalogOut)} analog out; with a quarter spare {Spare(Sum(p => p.DigitalOut))}, {Spare(Sum(p => p.DigitalIn))}, {Spare(Sum(p => p.AnalogIn))}, {Spare(Sum(p => p.AnalogOut))}. Hard-wired beside the program, not in this count: high limits, flame safeguard and gas valve, low-water cut-off, independent low-temperature alarm, fan guards and emergency stops, hand-off-auto switches."));
    }

    private static string Lead(ServicesResult services, Said said)
    {
        List<string> parts = [];
        if (services.Power is { } p)
        {
            parts.Add($"{Whole(p.DemandA)} A of electric demand"
                + (p.ServiceA > 0 ? $" ({Whole(p.ServiceA)} A service)" : "")
                + (p.GeneratorVa > 0 ? $", a {Whole(p.GeneratorVa / 1000)} kVA standby set" : ""));
        }

        if (services.GasMain is { } gas)
        {
            parts.Add($"{said.Text(gas.InputW, Unit.Watt)} of fuel");
        }

        if (services.Supply is { } w)
        {
            parts.Add($"{said.Text(w.DayM3, Unit.WaterCubicMetre)} of water on the design day");
        }

        return "The range asks " + Said.Listed(parts) + ".";
    }

    private static Table Loads(ServicesResult services, bool us) => new(
        [
            new Column("House", 16), new Column("Load", 49), new Column("No.", 10, Along.End), new Column("W each", 16, Along.End), new Column(us ? "Motor hp" : "Motor kW", 14, Along.End), new Column("V, phases", 18, Along.End),
            new Column("A each", 14, Along.End), new Column("Start A", 14, Along.End), new Column("Season", 21),
        ],
        [
            .. services.Electric.Select(l => (IReadOnlyList<string>)
            [
                l.House, l.Label + (l.Backup ? " (backup)" : ""), Whole(l.Count), Whole(l.RunningW), Motor(l.MotorHp, us),
                $"{Whole(l.VoltageV)}, {(l.ThreePhase ? "3" : "1")}", One(l.CurrentA), One(l.StartA), ServicesCsv.Season(l.Season),
            ]),
        ]);

    internal static Table PowerTable(PowerNeed p, Utilities lot) => new(
        [new Column("Service and generator", 96), new Column("", 76, Along.End)],
        [
            ["Connected", $"{One(p.ConnectedW / 1000)} kW"],
            ["Demand while cooling / while heating", $"{One(p.SummerVa / 1000)} / {One(p.WinterVa / 1000)} kVA"],
            ["Current the service must carry, mean of the legs", $"{Whole(p.DemandA)} A at {Whole(lot.ServiceV)} V, {(lot.Phase == Phase.Three ? "three-phase" : "single-phase")}"],
            ["Smallest standard service / the lot has", $"{(p.ServiceA > 0 ? Whole(p.ServiceA) : "more than 1,200")} / {(p.HasA > 0 ? Whole(p.HasA) : "not said")} A"],
            ["Voltage drop over the run to the pole", $"{One(100 * p.DropFraction)} %"],
            ["Backup list running", $"{One(p.BackupW / 1000)} kW, {One(p.BackupVa / 1000)} kVA"],
            [$"Most while {(p.StartId.Length > 0 ? p.StartId : "nothing")} starts last", $"{One(p.StartVa / 1000)} kVA"],
            ["Standby set", p.GeneratorVa > 0 ? $"{Whole(p.GeneratorVa / 1000)} kVA" : "beyond usual sets"],
        ]);

    internal static Table Burners(ServicesResult services, Said said) => new(
        [new Column("House", 16), new Column("Burner", 50), new Column("Input", 28, Along.End), new Column("Branch, first size", 30, Along.End), new Column("Combustion", 20), new Column("Combustion air", 28, Along.End)],
        [.. services.Gas.Select(g => (IReadOnlyList<string>)[g.House, g.Entry, said.Text(g.InputW, Unit.Watt), g.Pipe, g.Sealed ? "sealed" : "open", said.Text(g.AirM3PerS, Unit.CubicMetrePerSecond)])]);

    internal static string Gas(GasNeed gas, Said said, bool us)
    {
        string hour = gas.Fuel == FuelKind.NaturalGas ? (us ? $"{One(gas.PerHour)} therms an hour" : $"{One(gas.FlowM3PerS * 3600)} m³ an hour") : us ? $"{One(gas.PerHour)} gal an hour" : $"{One(gas.PerHour * UnitTable.GallonM3 * 1000)} L an hour";
        string pipe = gas.PipeName.Length > 0
            ? $" A first size of the main: {gas.PipeName} steel pipe over {said.Round(gas.RunM, Unit.Metre)} at 0.5 in. w.c. of drop (fuel gas code's low-pressure equation)."
            : "";
        string pressure = gas is { LeastPa: > 0, HasPa: > 0 } ? $" At the building {Column(gas.HasPa)}; such burners ask {Column(gas.LeastPa)} at the inlet." : "";
        string tank = gas.Tank is { } t
            ? $" Tank by the supplier; our estimate: {(t.Count == 1 ? "one" : Whole(t.Count))} of {Volume(t.WaterM3, us)}, vaporising {said.Text(t.VaporisesW, Unit.Watt)} at {said.Text(t.ColdestC, Unit.Celsius)} a fifth full, {Whole(t.SupplyDays)} days of supply with all burners on half of the day; NFPA 58 distances (usually {(us ? "10 ft to 500 gal, 25 ft above" : "3 m to 1,900 L, 7.6 m above")}) to buildings and lot lines."
            : "";
        string Column(double pa) => us ? $"{One(pa / 249.09)} in. w.c." : $"{pa.ToString("0", CultureInfo.InvariantCulture)} Pa";
        return $"All burners on: {said.Text(gas.InputW, Unit.Watt)}, {hour}.{pipe}{pressure}{tank} Sediment trap, shut-off and leak test at each burner.";
    }

    internal static Table Water(ServicesResult services, bool us) => new(
        [new Column("House", 16), new Column("What", 58), new Column("Peak", 22, Along.End), new Column("Design day", 23, Along.End), new Column("Pipe", 17, Along.End), new Column("Water", 36)],
        [
            .. services.Water.Select(w => (IReadOnlyList<string>)[w.House, w.Label, Flow(w.PeakM3PerS, us), Volume(w.DayM3, us), w.Pipe, w.Quality]),
            .. services.Drains.Select(d => (IReadOnlyList<string>)[d.House, "Drain: " + d.Label, Flow(d.PeakM3PerS, us), Volume(d.DayM3, us), d.Pipe, d.Carries]),
        ]);

    internal static Table Points(ServicesResult services) => new(
        [
            new Column("House", 16), new Column("What", 44), new Column("No.", 11, Along.End), new Column("DO", 10, Along.End), new Column("DI", 10, Along.End), new Column("AI", 10, Along.End),
            new Column("AO", 10, Along.End), new Column("Points", 61),
        ],
        [.. services.Points.Select(p => (IReadOnlyList<string>)[p.House, p.Label, Whole(p.Count), Whole(p.DigitalOut), Whole(p.DigitalIn), Whole(p.AnalogIn), Whole(p.AnalogOut), p.Why])]);

    internal static string Flow(double flowM3PerS, bool us) => us ? $"{One(flowM3PerS * 60 / UnitTable.GallonM3)} gpm" : $"{One(flowM3PerS * 60_000)} L/min";

    internal static string Volume(double volumeM3, bool us) => us ? $"{Whole(volumeM3 / UnitTable.GallonM3)} gal" : $"{Whole(volumeM3 * 1000)} L";

    private static string Motor(double sizeHp, bool us) => sizeHp switch
    {
        0 => "–",
        _ when !us => (0.7457 * sizeHp).ToString("0.##", CultureInfo.InvariantCulture),
        < 0.2 => "1/6",
        < 0.3 => "1/4",
        < 0.4 => "1/3",
        _ => sizeHp.ToString("0.##", CultureInfo.InvariantCulture),
    };

    private static string One(double value) => value.ToString("#,0.0", CultureInfo.InvariantCulture);

    private static string Whole(double value) => value.ToString("#,0", CultureInfo.InvariantCulture);
}
