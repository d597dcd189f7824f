using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.Layout;
using Glazewright.Design.Plant;

namespace Glazewright.Design.Takeoff;

/// <summary>The climate plant of one house.</summary>
internal static class EquipmentTakeoff
{
    /// <summary>Books the plant.</summary>
    /// <param name="book">The lines.</param>
    /// <param name="plant">The plant.</param>
    /// <param name="house">The house.</param>
    /// <param name="layout">Where things sit: a wet wall that found no place is not bought; null counts what Plant chose.</param>
    public static void Book(LineBook book, PlantResult plant, BuildingForm house, LayoutResult? layout = null)
    {
        Cooling(book, layout is { Placed.Count: > 0 } && !layout.Placed.Any(p => p.Kind == PlacedKind.WetWall) ? plant with { WetWall = null } : plant, house);
        Heating(book, plant, house);
        string id = house.Id;
        if (plant.Curtain is { } curtain)
        {
            book.Add(ScopeSystem.Curtain, "curtain/cloth", "Curtain cloth with seals", curtain.AreaM2 * curtain.Layers * 1.08, "m²", $"{id}: area drawn × layers, 8 % for seals and hems");
            book.Add(ScopeSystem.Curtain, "curtain/wire", "Support wire and end fixings",
                curtain.Layers * Math.Ceiling(house.WidthM / TakeoffRules.CurtainWireM) * house.LengthM, "m", $"{id}: every {book.Size(TakeoffRules.CurtainWireM)}");
            book.Add(ScopeSystem.Curtain, "curtain/drive", "Curtain drive, shafts, limit switches", curtain.Layers, "each", id);
        }

        if (plant.SecondCurtain is { } second)
        {
            book.Add(ScopeSystem.Curtain, "curtain/cloth", "Cloth of the second curtain with seals", second.AreaM2 * 1.08, "m²", $"{id}: {second.Entry}, area drawn, 8 % for seals and hems");
            book.Add(ScopeSystem.Curtain, "curtain/wire", "Support wire and end fixings",
                Math.Ceiling(house.WidthM / TakeoffRules.CurtainWireM) * house.LengthM, "m", $"{id}: every {book.Size(TakeoffRules.CurtainWireM)}");
            book.Add(ScopeSystem.Curtain, "curtain/drive", "Curtain drive, shafts, limit switches", 1, "each", id);
        }

        if (plant.Circulation is { } air)
        {
            book.Add(ScopeSystem.AirAndLamps, "air/circulation-fan", "Circulation fan, guarded, hung", air.Count, "each", $"{id}: {air.Entry}");
        }

        if (plant.Oscillating is { } swept)
        {
            book.Add(ScopeSystem.AirAndLamps, "air/oscillating-fan", "Oscillating fan, guarded, hung", swept.Count, "each", $"{id}: {swept.Entry}");
        }

        book.Add(ScopeSystem.AirAndLamps, "air/lamp", "Lamp fixture, wet location", plant.LampCount, "each", FormattableString.Invariant($"{id}: lamp power over {plant.LampEachW:0} W"));
        if (plant.Dehumidifier is { } dryer)
        {
            book.Add(ScopeSystem.AirAndLamps, "air/dehumidifier", "Dehumidifier, hung, with drain", dryer.PowerW / 1000, "kW", $"{id}: electric power");
        }

        if (plant.Co2 is not null)
        {
            book.Add(ScopeSystem.AirAndLamps, "air/co2-set", "Carbon dioxide: regulator, valve, line, analyser, high-level alarm", 1, "each", $"{id}; tank by the gas supplier");
        }
    }

    private static void Cooling(LineBook book, PlantResult plant, BuildingForm house)
    {
        string id = house.Id;
        if (plant.Exhaust?.Choice is { } exhaust)
        {
            foreach (IGrouping<string, FanUnit> size in exhaust.Fans.GroupBy(fan => LineItems.Fan(fan.DiameterM)))
            {
                book.Add(ScopeSystem.Cooling, size.Key, $"Exhaust fan {book.Size(size.First().DiameterM)} with shutter and guard", size.Count(), "each",
                    $"{id}: {size.First().Entry}");
            }

            book.Add(ScopeSystem.Cooling, "cooling/louver", "Motor louver with end switch", exhaust.LouverGrossM2, "m²", $"{id}: frame size");
        }

        if (plant.InsectClothM2 > 0)
        {
            book.Add(ScopeSystem.Cooling, "cooling/insect-cloth", "Insect cloth with frame, before intake and vents", plant.InsectClothM2, "m²", $"{id}: sized clean at 0.03 in. w.g., in a box before the intake; vents' own size");
        }

        if (plant.Upper is { } upper)
        {
            book.Add(ScopeSystem.Cooling, LineItems.Fan(upper.DiameterM), $"Exhaust fan {book.Size(upper.DiameterM)} with shutter and guard", upper.Count, "each", $"{id}: upper, {upper.Entry}");
            book.Add(ScopeSystem.Cooling, "cooling/louver", "Motor louver with end switch", upper.Count * upper.InletSizeM * upper.InletSizeM, "m²", $"{id}: upper, frame size");
        }

        if (plant.WetWall?.Choice is { } wall)
        {
            book.Add(ScopeSystem.Cooling, "cooling/pad", "Wet wall: pad, header, gutter, frame", wall.WidthM * wall.HeightM, "m²", $"{id}: {wall.Entry}");
            book.Add(ScopeSystem.Cooling, "cooling/pad-pump", "Wet wall pump, sump, bleed", 1, "each", id);
        }

        if (plant.Fog?.Choice is { } fog)
        {
            book.Add(ScopeSystem.Cooling, "cooling/fog-nozzle", "Fog nozzle with rated line and hangers", fog.Nozzles, "each", $"{id}: {fog.Entry}");
            (string item, string label) = fog.PressurePa switch
            {
                < 1e6 => ("cooling/mist-station", "Mist station: filter, valve, regulator"),
                < 10e6 => ("cooling/fog-pump-1000", "Fog pump station 1,000 psi: filter, relief, guard"),
                _ => ("cooling/fog-pump-3000", "Fog pump station 3,000 psi: filter, relief, guard"),
            };
            book.Add(ScopeSystem.Cooling, item, label, 1, "each", id);
        }

        if (plant.Pressure is { } pressure)
        {
            book.Add(ScopeSystem.Cooling, "cooling/filter-fan", "Filter fan with filter box and damper", pressure.Fans, "each", $"{id}: {pressure.Entry}");
        }

        if (plant.Vents is { } vents)
        {
            book.Add(ScopeSystem.Cooling, "cooling/vent", "Roof and side vent with drive", vents.RoofM2 + vents.SideM2, "m²", id);
        }
    }

    private static void Heating(LineBook book, PlantResult plant, BuildingForm house)
    {
        string id = house.Id;
        if (plant.Heat?.Choice is { } heat)
        {
            book.Add(ScopeSystem.Heating, "heating/unit-heater", "Unit heater, hung, with thermostat", heat.Heaters.Count, "each",
                $"{id}: {string.Join(", ", heat.Heaters.Select(h => h.Entry).Distinct())}");
            book.Add(ScopeSystem.Heating, "heating/kilowatt", "Unit heater, by output", heat.Heaters.Sum(h => h.RatedW > 0 ? h.RatedW : h.OutputW) / 1000, "kW", id);
            HeaterUnit[] low = [.. heat.Heaters.Where(h => h.Part is { TwoStage: true })], part = [.. heat.Heaters.Where(h => h.Part is { TwoStage: false })];
            if (low.Length > 0)
            {
                book.Add(ScopeSystem.Heating, "heating/two-stage", "Low and high fire: two-stage gas valve, over a unit heater of one stage", low.Length, "each", id);
            }

            if (part.Length > 0)
            {
                book.Add(ScopeSystem.Heating, "heating/modulating", "Modulating gas valve and combustion fan with signal, over a unit heater of one stage", part.Length, "each", id);
            }
        }

        if (plant.BenchPipeW > 0)
        {
            book.Add(ScopeSystem.Heating, "heating/boiler", "Boiler, pump, expansion, controls", 1, "each", id);
            book.Add(ScopeSystem.Heating, "heating/bench-pipe", "Hot-water pipe under benches", plant.BenchPipeM, "m",
                $"{id}: output over {book.Output(plant.BenchPipeWPerM)}");
        }
    }

    /// <summary>Vent and combustion-air pipes of the fuel burners, with elbows and what ends them.</summary>
    public static void Vents(LineBook book, LayoutResult layout)
    {
        foreach (FlueLine f in layout.Flues.Where(f => f.Face is not null || f.Unplaced))
        {
            string size = f.VentM > 0 ? book.Size(f.VentM) : "of the maker's size";
            if (f.Gravity is not null)
            {
                book.Add(ScopeSystem.Heating, LineItems.Vent(true, f.VentM), $"Type B vent, double wall, {size}", f.RunM, "m", $"{f.Heater}: collar to cap");
                book.Add(ScopeSystem.Heating, "heating/vent-cap", "Roof flashing, storm collar and listed cap", 1, "each", f.Heater);
                continue;
            }

            double runM = f.Unplaced ? TakeoffRules.BoilerVentM : f.RunM;
            int elbows = f.Unplaced ? TakeoffRules.BoilerVentElbows : f.Elbows;
            string from = f.Unplaced ? $"{f.Heater}: an allowance, its place is not known" : $"{f.Heater}: collar to terminal";
            book.Add(ScopeSystem.Heating, LineItems.Vent(false, f.VentM), $"Vent pipe, listed, sealed, {size}", runM, "m", from);
            book.Add(ScopeSystem.Heating, "heating/air-pipe", "Combustion-air pipe", runM, "m", $"{f.Heater}: beside the vent");
            book.Add(ScopeSystem.Heating, "heating/vent-elbow", "Elbow of vent or combustion-air pipe", 2 * elbows, "each", f.Unplaced ? $"{f.Heater}: an allowance" : $"{f.Heater}: both pipes");
            book.Add(ScopeSystem.Heating, "heating/vent-terminal", "Wall thimble and terminals of vent and air", 1, "each", f.Heater);
        }
    }
}
