using Glazewright.Design.Contracts;
using Glazewright.Design.Plant;
using Glazewright.Design.Program;

namespace Glazewright.Design.Services;

/// <summary>Inputs and outputs of the control box, counted from the program's machines and the sensors they need.</summary>
internal static class ControlPoints
{
    /// <summary>Spare points to leave (common practice).</summary>
    public const double SpareFraction = 0.25;

    public static EqList<PointLine> Of(EqList<PlantResult> plants, EqList<ProgramDocument> programs)
    {
        List<PointLine> lines = [];
        foreach (PlantResult plant in plants)
        {
            string id = plant.House;
            EqList<Actuator> actuators = programs.FirstOrDefault(p => p.House == id)?.Actuators ?? [];
            foreach (IGrouping<ActuatorKind, Actuator> kind in actuators.GroupBy(a => a.Kind))
            {
                (string label, int digitalOut, int digitalIn, string why) = Kind(kind.Key);
                int n = kind.Count();
                HashSet<string> twoStage = [.. (plant.Heat?.Choice.Heaters ?? []).Where(h => h.Part is { TwoStage: true }).Select(h => h.Id)];
                int low = kind.Count(a => twoStage.Contains(a.Id)), part = kind.Count(a => a.LeastFraction is not null) - low;
                lines.Add(new PointLine(
                    id, label, n, n * digitalOut + low, n * digitalIn, 0, part, $"{why}{(low > 0 ? "; high fire" : "")}{(part > 0 ? "; signal of the fire, 0 to 10 V or 4 to 20 mA" : "")}"));
            }

            lines.AddRange(Sensors(id, programs.FirstOrDefault(p => p.House == id)?.Sensors ?? DefaultSensors.Of(id, new DefaultStages(plant))));
            if (plant.Pressure is not null)
            {
                lines.Add(new PointLine(id, "House pressure", 1, 0, 0, 1, 1, "sensor and speed or damper of the filter fan") { Item = "controls/pressure" });
            }

            if (plant.WetWall is not null)
            {
                lines.Add(new PointLine(id, "Sump level and flow over the pad", 1, 0, 2, 0, 0, "low water stops the pump") { Item = "controls/level" });
            }
        }

        if (plants.Count > 0)
        {
            bool snow = programs.Any(p => (p.Sensors ?? []).Any(s => s.Quantity == SensorQuantity.Snow));
            lines.Add(new PointLine(
                "range", "Outdoor station", 1, 0, snow ? 2 : 1, 5, 0, $"temperature, humidity, sun, wind speed and direction; rain contact{(snow ? "; snow contact" : string.Empty)}")
            { Item = snow ? "controls/outside-snow" : "controls/outside" });
            lines.Add(new PointLine("range", "Mains, generator, water pressure, alarm", 1, 1, 4, 0, 0, "mains lost, generator on, water low, fire or CO alarm; alarm out"));
        }

        return lines.ToEqList();
    }

    // Sensors of a house as its program lists them; those outside are the range's station.
    private static IEnumerable<PointLine> Sensors(string id, EqList<Sensor> all)
    {
        Sensor? At(Reading reading) => all.FirstOrDefault(s => SensorPoints.ReadingOf(s.Quantity, s.Place) == reading);
        Sensor[] station = [.. new[] { At(Reading.InsideTemperature), At(Reading.InsideHumidity) }.OfType<Sensor>()];
        if (station.Length > 0)
        {
            bool drawn = station.Any(s => s.Aspirated);
            string what = string.Join(" and ", station.Select(s => SensorPoints.Words(s.Quantity)));
            yield return new PointLine(
                id, drawn ? "Aspirated sensor station" : "Sensor station", 1, 0, drawn ? 1 : 0, station.Length, 0, $"{what} at the crop{(drawn ? "; its fan proved" : "; in sun it reads warm and dry")}")
            { Item = "controls/sensor" };
        }

        foreach ((Reading reading, string label, string why, string item) in new[]
        {
            (Reading.SecondTemperature, "Second temperature sensor", "against a sensor that drifts", "controls/temperature"),
            (Reading.UpperTemperature, "Temperature above the curtain", "cold air is let down slowly", "controls/temperature"),
            (Reading.StaticPressure, "Static pressure across the fan wall", "suction that says the intake is stuck", "controls/pressure"),
            (Reading.Co2, "Carbon dioxide", "at the crop; nothing is dosed without it", "controls/co2"),
        })
        {
            if (At(reading) is not null)
            {
                yield return new PointLine(id, label, 1, 0, 0, 1, 0, why) { Item = item };
            }
        }
    }

    private static (string Label, int DigitalOut, int DigitalIn, string Why) Kind(ActuatorKind kind) => kind switch
    {
        ActuatorKind.Fan => ("Exhaust fan", 1, 1, "start; current proves it runs"),
        ActuatorKind.UpperFan => ("Upper fans", 1, 1, "start, inlets with them; current"),
        ActuatorKind.Louver => ("Intake louver", 2, 2, "open and close; end switches: proved open before the second fan stage"),
        ActuatorKind.WetWallPump => ("Wet wall pump", 1, 1, "start; current"),
        ActuatorKind.Fog => ("Fog", 1, 1, "start; pressure reached"),
        ActuatorKind.Heater => ("Heater", 1, 1, "call; burner fault. High limit and flame safeguard stay hard-wired"),
        ActuatorKind.BenchPipe => ("Bench pipe", 1, 1, "pump; low-water fault"),
        ActuatorKind.Curtain => ("Curtain", 2, 2, "open and close; limit switches"),
        ActuatorKind.SecondCurtain => ("Second curtain", 2, 2, "open and close; limit switches"),
        ActuatorKind.Circulation => ("Circulation fans", 1, 1, "start; current"),
        ActuatorKind.PressureFan => ("Filter fan", 1, 1, "start; current. Off in the exhaust mode"),
        ActuatorKind.RoofVent or ActuatorKind.SideVent => (kind == ActuatorKind.RoofVent ? "Roof vent" : "Side vent", 2, 2, "open and close; end switches"),
        ActuatorKind.Dehumidifier => ("Dehumidifier", 1, 1, "call; fault"),
        ActuatorKind.Co2Valve => ("CO₂ valve", 1, 1, "open; high level, 5,000 ppm, hard-wired"),
        _ => ("Lamps", 1, 0, "contactor"),
    };
}
