using Glazewright.Design.Contracts;
using Glazewright.Design.Quantities;
using Glazewright.Design.Form;
using Glazewright.Design.Layout;
using Glazewright.Design.Services;

namespace Glazewright.Papers.Exchange;

/// <summary>What the other trades price from, as data.</summary>
public static class ServicesCsv
{
    /// <summary>The electric load list.</summary>
    /// <param name="services">Services.</param>
    /// <returns>One row a line.</returns>
    public static string Electric(ServicesResult services)
    {
        ArgumentNullException.ThrowIfNull(services);
        CsvText table = new(
            "house", "id", "load", "count", "running_W_each", "motor_hp", "volts", "phases", "full_load_A_each", "current_from", "start_A_each", "starting",
            "season", "demand_share", "circuit_least_A", "backup");
        foreach (LoadLine l in services.Electric)
        {
            table.Cell(l.House).Cell(l.Id).Cell(l.Label).Cell(l.Count).Cell(l.RunningW, 0).Cell(l.MotorHp, 3).Cell(l.VoltageV, 0).Cell(l.ThreePhase ? 3 : 1)
                .Cell(l.CurrentA, 2).Cell(l.ByTable ? "motor table" : l.Kind is LoadKind.Lights or LoadKind.Receptacles or LoadKind.Appliance ? "allowance" : "power and power factor 0.8").Cell(l.StartA, 1).Cell(l.Starting)
                .Cell(Season(l.Season)).Cell(l.DemandFraction, 2).Cell(l.CircuitA, 2).Cell(l.Backup ? "yes" : "no").End();
        }

        return table.ToString();
    }

    /// <summary>Panels and their circuits; the first row of a panel is what feeds it.</summary>
    /// <param name="services">Services.</param>
    /// <param name="units">Feet or metres of run.</param>
    /// <returns>One row a circuit.</returns>
    public static string Panel(ServicesResult services, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(services);
        double length = units == UnitSystem.Us ? 1 / 0.3048 : 1;
        CsvText table = new(
            "panel", "circuit", "feeds", "count", "poles", "legs", "volts", "breaker_A", "breaker_rule", "leg_A_VA", "leg_B_VA", "leg_C_VA", "current_A", "least_ampacity_A", "ampacity_A",
            "material", "sets", "conductors", "size_AWG_or_kcmil", "size_mm2", "ground_AWG", units == UnitSystem.Us ? "run_ft" : "run_m", units == UnitSystem.Us ? "run_for_drop_ft" : "run_for_drop_m", "drop_percent", "drop_limit_percent",
            "heavier_than_AWG", "gfci", "backup", "season", "note", units == UnitSystem.Us ? "conduit_trade_in" : "conduit_designator_mm");
        foreach (PanelSchedule panel in services.Panels)
        {
            FeederRun feeder = panel.Feeder;
            int legs = panel.CoolingLegVa.Count;
            EqList<double> worst = panel.CoolingLegVa.Max() >= panel.HeatingLegVa.Max() ? panel.CoolingLegVa : panel.HeatingLegVa;
            table.Cell(panel.Id).Cell("feeder").Cell($"from {feeder.From}; {panel.Place}").Cell(1).Cell(legs).Cell("ABC"[..legs]).Cell(panel.System).Cell(panel.MainA, 0)
                .Cell("430.24, 215.2, 220.60");
            Legs(table, worst).Cell(feeder.DemandA, 1).Cell(feeder.DemandA, 1).Cell(feeder.AmpacityA, 1).Cell(feeder.Material).Cell(feeder.Sets).Cell(legs + 1).Cell(feeder.WireName)
                .Cell(feeder.WireMm2, 1).Cell(feeder.GroundName).Cell(length * feeder.RunM, 0).Cell(length * feeder.RunM, 0).Cell(100 * feeder.DropFraction, 2).Cell("").Cell(feeder.UpsizedFrom).Cell("").Cell("").Cell("")
                .Cell(string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{panel.SpacesUsed} of {panel.Spaces} spaces; fullest leg {100 * panel.ImbalanceFraction:0.0} % over the mean")).Cell("").End();
            foreach (Circuit c in panel.Circuits)
            {
                table.Cell(panel.Id).Cell(c.Number).Cell(c.Label).Cell(c.Kind == LoadKind.Feeder ? 1 : c.Count).Cell(c.Poles).Cell(c.Legs).Cell(c.NominalV, 0).Cell(c.BreakerA, 0).Cell(c.BreakerRule);
                Legs(table, c.LegVa).Cell(c.CurrentA, 2).Cell(c.LeastA, 2).Cell(c.AmpacityA, 1).Cell("copper").Cell(c.Kind == LoadKind.Feeder ? c.Count : 1).Cell(c.Wires).Cell(c.WireName)
                    .Cell(c.WireMm2, 1).Cell(c.GroundName).Cell(length * c.RunM, 0).Cell(length * c.DropRunM, 0).Cell(100 * c.DropFraction, 2).Cell(100 * c.LimitFraction, 2).Cell(c.UpsizedFrom).Cell(c.Gfci ? "yes" : "no")
                    .Cell(c.Backup ? "yes" : "no").Cell(Season(c.Season)).Cell(c.Note)
                    .Cell(c.ConduitInches.Length == 0 ? "" : units == UnitSystem.Us ? c.ConduitInches : c.ConduitDesignatorMm.ToString(System.Globalization.CultureInfo.InvariantCulture)).End();
            }
        }

        return table.ToString();
    }

    private static CsvText Legs(CsvText table, EqList<double> legVa)
    {
        for (int leg = 0; leg < 3; leg++)
        {
            table = leg < legVa.Count ? table.Cell(legVa[leg], 0) : table.Cell("");
        }

        return table;
    }

    /// <summary>The burners.</summary>
    /// <param name="services">Services.</param>
    /// <param name="units">Units of heat and air.</param>
    /// <returns>One row a burner.</returns>
    public static string Gas(ServicesResult services, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(services);
        bool us = units == UnitSystem.Us;
        CsvText table = new("house", "id", "entry", us ? "input_kBtu_per_h" : "input_kW", us ? "output_kBtu_per_h" : "output_kW", "combustion", us ? "combustion_air_cfm" : "combustion_air_m3_per_h", "branch_first_size");
        double heat = us ? 1 / 293.07107 : 0.001;
        double air = us ? 1 / 0.00047194745 : 3600;
        foreach (GasLine g in services.Gas)
        {
            table.Cell(g.House).Cell(g.Id).Cell(g.Entry).Cell(heat * g.InputW, 1).Cell(heat * g.OutputW, 1).Cell(g.Sealed ? "sealed" : "open").Cell(air * g.AirM3PerS, 1).Cell(g.Pipe).End();
        }

        return table.ToString();
    }

    /// <summary>Vent and combustion-air pipes of heaters.</summary>
    /// <param name="layouts">Where things sit, house by house.</param>
    /// <param name="units">Units of heat and length.</param>
    /// <returns>One row a heater; empty cells where no place was found or our table ends.</returns>
    public static string Vents(IReadOnlyList<LayoutResult> layouts, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(layouts);
        bool us = units == UnitSystem.Us;
        string pipe = us ? "in" : "mm";
        string length = us ? "ft" : "m";
        CsvText table = new(
            "house", "id", us ? "input_kBtu_per_h" : "input_kW", "combustion", $"vent_{pipe}", $"intake_{pipe}", "wall", $"along_{length}", $"terminal_height_{length}", $"least_height_{length}", $"run_{length}",
            "elbows", $"equivalent_{length}", $"assumed_most_{length}", "slopes", $"fall_{pipe}", $"clearance_asked_{length}", "nearest_opening", $"nearest_{length}",
            us ? "type_b_carries_kBtu_per_h" : "type_b_carries_kW", us ? "draft_in_wg" : "draft_Pa", us ? "fans_pull_in_wg" : "fans_pull_Pa");
        double heat = us ? 1 / 293.07107 : 0.001;
        double across = us ? 1 / 0.0254 : 1000;
        double along = us ? 1 / 0.3048 : 1;
        double column = us ? 1 / 249.08891 : 1;
        foreach (LayoutResult layout in layouts)
        {
            foreach (FlueLine f in layout.Flues)
            {
                table.Cell(layout.House).Cell(f.Heater).Cell(heat * f.InputW, 1).Cell(f.Sealed ? "direct vent" : "gravity vent, air from the house");
                _ = f.VentM > 0 ? table.Cell(across * f.VentM, 0) : table.Cell("");
                _ = f.IntakeM > 0 ? table.Cell(across * f.IntakeM, 0) : table.Cell("");
                table.Cell(f.Face is { } face ? Wall(face) : f.Unplaced ? "not in the job" : "no place found");
                foreach (double lengthM in (double[])[f.AlongM, f.HeightM])
                {
                    _ = f.Face is null ? table.Cell("") : table.Cell(along * lengthM, 2);
                }

                table.Cell(along * f.LeastHeightM, 2);
                _ = f.Face is null ? table.Cell("").Cell("").Cell("") : table.Cell(along * f.RunM, 1).Cell(f.Elbows).Cell(along * f.EquivalentM, 1);
                _ = f.MostM > 0 ? table.Cell(along * f.MostM, 0) : table.Cell("");
                table.Cell(f.Gravity is not null ? "upright" : f.Condensing ? "back to the heater" : "to the terminal");
                _ = f.Face is null ? table.Cell("") : table.Cell(across * f.FallM, 1);
                table.Cell(along * f.ClearM, 2).Cell(f.Nearest);
                _ = f.Nearest.Length == 0 ? table.Cell("") : table.Cell(along * f.NearestM, 1);
                _ = f.Gravity is { } g ? table.Cell(heat * g.CapacityW, 1).Cell(column * g.DraftPa, us ? 3 : 1).Cell(column * g.FansPullPa, us ? 3 : 1) : table.Cell("").Cell("").Cell("");
                table.End();
            }
        }

        return table.ToString();
    }

    internal static string Wall(FaceName face) => face switch { FaceName.End1 => "end 1", FaceName.End2 => "end 2", FaceName.Left => "left", FaceName.Right => "right", FaceName.RoofLeft => "roof, left", _ => "roof, right" };

    /// <summary>Water users and what runs off.</summary>
    /// <param name="services">Services.</param>
    /// <param name="units">Gallons or litres.</param>
    /// <returns>One row a user or drain.</returns>
    public static string Water(ServicesResult services, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(services);
        bool us = units == UnitSystem.Us;
        CsvText table = new("house", "id", "way", "what", us ? "peak_gpm" : "peak_L_per_min", us ? "design_day_gal" : "design_day_L", "pipe_first_size", "quality");
        double volume = us ? 1 / UnitTable.GallonM3 : 1000;
        foreach (WaterLine w in services.Water)
        {
            table.Cell(w.House).Cell(w.Id).Cell("supply").Cell(w.Label).Cell(60 * volume * w.PeakM3PerS, 2).Cell(volume * w.DayM3, 0).Cell(w.Pipe).Cell(w.Quality).End();
        }

        foreach (DrainLine d in services.Drains)
        {
            table.Cell(d.House).Cell(d.Id).Cell("drain").Cell(d.Label).Cell(60 * volume * d.PeakM3PerS, 2).Cell(volume * d.DayM3, 0).Cell(d.Pipe).Cell(d.Carries).End();
        }

        return table.ToString();
    }

    /// <summary>Taps, drains and served machines with their pipe, then the pipe between branches.</summary>
    /// <param name="services">Services.</param>
    /// <param name="units">Feet or metres.</param>
    /// <returns>One row a point, then one a piece of pipe.</returns>
    public static string Ways(ServicesResult services, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(services);
        bool us = units == UnitSystem.Us;
        string unit = us ? "ft" : "m";
        double length = us ? 1 / 0.3048 : 1;
        CsvText table = new("row", "utility", "house", "id", "what", $"x_{unit}", $"y_{unit}", $"z_{unit}", "pipe_first_size", $"run_from_entry_{unit}", $"length_{unit}", "place");
        foreach (UtilityEntry e in services.Plan.Entries)
        {
            At(table.Cell("entry").Cell(Utility(e.Utility)).Cell("").Cell("").Cell(e.Words), e.At).Cell("").Cell(0, 1).Cell("").Cell(e.IsDefault ? "default" : "job").End();
        }

        foreach (UtilityPoint p in services.Plan.Points)
        {
            At(table.Cell("point").Cell(Utility(p.Utility)).Cell(p.House).Cell(p.Id).Cell(p.Label), p.At).Cell(p.Pipe).Cell(length * p.RunM, 1).Cell("").Cell(p.IsDefault ? "default" : "layout").End();
        }

        foreach (PipePiece p in services.Plan.Pieces)
        {
            At(table.Cell("pipe").Cell(Utility(p.Utility)).Cell(p.House).Cell("").Cell("to"), p.Way[^1]).Cell(p.Pipe).Cell("").Cell(length * p.LengthM, 1).Cell("").End();
        }

        return table.ToString();

        CsvText At(CsvText row, Glazewright.Design.Form.Point3 at) => row.Cell(length * at.XM, 2).Cell(length * at.YM, 2).Cell(length * at.ZM, 2);
    }

    private static string Utility(UtilityKind utility) => utility.ToString().ToLowerInvariant();

    /// <summary>Controls points.</summary>
    /// <param name="services">Services.</param>
    /// <returns>One row a kind of machine or sensor.</returns>
    public static string Points(ServicesResult services)
    {
        ArgumentNullException.ThrowIfNull(services);
        CsvText table = new("house", "what", "count", "digital_out", "digital_in", "analog_in", "analog_out", "points");
        foreach (PointLine p in services.Points)
        {
            table.Cell(p.House).Cell(p.Label).Cell(p.Count).Cell(p.DigitalOut).Cell(p.DigitalIn).Cell(p.AnalogIn).Cell(p.AnalogOut).Cell(p.Why).End();
        }

        return table.ToString();
    }

    internal static string Season(LoadSeason season) => season switch { LoadSeason.Cooling => "cooling", LoadSeason.Heating => "heating", LoadSeason.ExhaustOff => "exhaust off", _ => "always" };
}
