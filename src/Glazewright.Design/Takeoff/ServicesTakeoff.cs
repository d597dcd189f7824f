using Glazewright.Design.Body;
using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.Plant;
using Glazewright.Design.Services;
using Glazewright.Science.Optics;

namespace Glazewright.Design.Takeoff;

/// <summary>Controls, power, water, gas, permits and what the job costs as a whole. Lengths of pipe are those of the ways that Services leads, of circuits those of the panel schedules.</summary>
internal static class ServicesTakeoff
{
    private static readonly Dictionary<string, string> s_sensors = new()
    {
        ["controls/sensor"] = "Sensor station: temperature and humidity, aspirated",
        ["controls/temperature"] = "Temperature sensor, shielded",
        ["controls/pressure"] = "Pressure sensor across a wall, with tubing",
        ["controls/co2"] = "Carbon dioxide sensor",
        ["controls/level"] = "Level and flow switches of the wet wall",
        ["controls/outside"] = "Outdoor station: temperature, humidity, sun, wind, rain",
        ["controls/outside-snow"] = "Outdoor station: temperature, humidity, sun, wind, rain, snow",
    };

    public static void Controls(LineBook book, EqList<PlantResult> plants, EqList<PointLine> points)
    {
        foreach (PlantResult plant in plants)
        {
            string id = plant.House;
            book.Add(ScopeSystem.Controls, "controls/box", "Control box, wired and tested", 1, "each", id);
            book.Add(ScopeSystem.Controls, "controls/point", "Output with hand-off-auto switch", plant.Loads.Count, "each", $"{id}: lines of the load list");
        }

        foreach (IGrouping<(string House, string Item), PointLine> sensors in points.Where(p => p.Item.Length > 0).GroupBy(p => (p.House, p.Item)))
        {
            book.Add(
                ScopeSystem.Controls, sensors.Key.Item, s_sensors[sensors.Key.Item], sensors.Sum(p => p.Count), "each",
                sensors.Key.House == "range" ? "range" : $"{sensors.Key.House}: {string.Join(", ", sensors.Select(p => p.Label.ToLowerInvariant()).Distinct())}");
        }

        if (plants.Count > 0)
        {
            book.Add(ScopeSystem.Controls, "controls/alarm", "Independent alarm: high, low, power, water, CO; dialler with battery", 1, "each", "range");
        }
    }

    public static void Electrical(LineBook book, TakeoffInput input, FormResult form, EqList<PlantResult> plants, EqList<PanelSchedule> panels)
    {
        double feederM = panels.FirstOrDefault(p => p.Id == "main")?.Feeder.RunM ?? input.PoleDistanceM;
        foreach (PlantResult plant in plants)
        {
            book.Add(ScopeSystem.Electrical, "electrical/disconnect", "Disconnect in sight, connection", plant.Loads.Sum(l => l.Count), "each", $"{plant.House}: loads");
        }

        foreach (PanelSchedule panel in panels)
        {
            // Lights and receptacles with their wire are in the price a square metre below.
            Circuit[] circuits = [.. panel.Circuits.Where(c => c.Kind is not (LoadKind.Lights or LoadKind.Receptacles or LoadKind.Feeder))];
            book.Add(ScopeSystem.Electrical, "electrical/circuit", "Branch circuit with breaker", circuits.Length, "each", $"panel {panel.Id}: its schedule but lights and receptacles");
            book.Add(ScopeSystem.Electrical, "electrical/conduit", "Conduit and wire", circuits.Sum(c => c.RunM), "m", $"panel {panel.Id}: runs of these circuits");
        }

        foreach (BuildingForm b in form.Buildings)
        {
            book.Add(ScopeSystem.Electrical, "electrical/general", "Lights, receptacles (GFCI), bonding", b.FloorAreaM2, "m²", b.Id);
        }

        book.Add(ScopeSystem.Electrical, "electrical/feeder", "Feeder in trench from the pole", feederM, "m", feederM > input.PoleDistanceM ? "distance to the pole, and from the meter to the main panel" : "distance to the pole");
        book.Add(ScopeSystem.Electrical, "electrical/panel", "Main and house panels, surge protection, generator inlet with transfer switch", panels.Count, "each", panels.Count == 1 ? "the house's main panel" : "main and one a house");
    }

    public static void Plumbing(LineBook book, TakeoffInput input, FormResult form, ServicePlan plan)
    {
        Led(book, plan);
        foreach (TakeoffHouse house in input.Houses)
        {
            book.Add(ScopeSystem.Plumbing, "plumbing/irrigation", "Irrigation to benches: header, filter, valves", house.Benches.Sum(b => b.WidthM * b.LengthM), "m²", $"{house.Id}: bench area");
        }

        int wet = input.Links.SelectMany(l => l.Rooms).Count(r => Has(r, "wash") || Has(r, "toilet"));
        book.Add(ScopeSystem.Plumbing, "plumbing/fixture", "Sink or toilet, supply, waste, vent", wet, "each", "wash and toilet rooms");
        if (form.Buildings.Count > 0)
        {
            book.Add(ScopeSystem.Plumbing, "plumbing/entry", "Water entry: backflow preventer, filter, meter, injector", 1, "each", "range");
        }
    }

    // Pipe, bibs and drains as Services leads them.
    private static void Led(LineBook book, ServicePlan plan)
    {
        foreach (UtilityKind utility in (UtilityKind[])[UtilityKind.Water, UtilityKind.Drain, UtilityKind.Fuel])
        {
            (string item, string label) = utility switch
            {
                UtilityKind.Water => ("plumbing/main", "Water main, valves, drain-down"),
                UtilityKind.Drain => ("plumbing/drain", "Floor drain line to where it may go"),
                _ => ("plumbing/gas", "Gas line with regulator and shut-off"),
            };
            foreach (var at in plan.Pieces.Where(p => p.Utility == utility).GroupBy(p => p.House))
            {
                book.Add(ScopeSystem.Plumbing, item, label, at.Sum(p => p.LengthM), "m", at.Key.Length > 0 ? $"{at.Key}: ways on the plan" : "outside the houses: ways on the plan");
            }

            if (utility == UtilityKind.Water)
            {
                foreach (var at in plan.Points.Where(p => p.Utility == utility && p.Kind == TapKind.HoseBib).GroupBy(p => p.House))
                {
                    book.Add(ScopeSystem.Plumbing, "plumbing/bib", "Hose bib with vacuum breaker", at.Count(), "each", $"{at.Key}: every corner of the floor within {book.Length(TapPlaces.HoseM)} of hose");
                }
            }
        }
    }

    public static void Whole(LineBook book, FormResult form, BodyResult body)
    {
        if (form.Buildings.Count == 0)
        {
            return;
        }

        double floorM2 = form.Buildings.Sum(b => b.FloorAreaM2);
        double envelopeM2 = form.Buildings.SelectMany(b => b.Faces).Where(f => f.Name != FaceName.Floor).Sum(f => f.ExposedM2);
        double tubeKg = body.Members.Sum(m => m.CutLengthM * m.MassPerM);

        double coverKg = form.Buildings.SelectMany(b => b.Faces).SelectMany(f => f.Zones)
            .Sum(zone => zone.GrossM2 * (GenericCovers.TryFind(zone.Cover.Kind, out GenericCover? cover) ? cover.MassKgPerM2 : 3));
        double freightKg = (tubeKg + coverKg) * 1.25;
        book.Add(ScopeSystem.Permits, "permits/permit", "Building permit and plan review", floorM2, "m²", "all floors");
        book.Add(ScopeSystem.Permits, "permits/engineer", "Licensed engineer: review and seal, soils letter", 1, "each", "range");
        book.Add(ScopeSystem.General, "general/mobilise", "Mobilise, fence, office, power and toilet on site", 1, "each", "range");
        book.Add(ScopeSystem.General, "general/lift", "Lift and telehandler on site", Math.Ceiling(envelopeM2 / TakeoffRules.EnvelopePerLiftDayM2), "day", $"envelope over {book.Area(TakeoffRules.EnvelopePerLiftDayM2)} a day");
        book.Add(ScopeSystem.General, "general/freight", "Freight, unloaded", Math.Ceiling(freightKg / TakeoffRules.TruckLoadKg * 4) / 4, "load",
            $"{book.Mass(freightKg)} of tube, covering and a quarter for the rest");
        book.Add(ScopeSystem.General, "general/clean", "Clean up, punch list, hand over, train", floorM2, "m²", "all floors");
    }

    private static bool Has(Room room, string word) => room.Name.Contains(word, StringComparison.OrdinalIgnoreCase);
}
