using Glazewright.Design.Catalogues;
using Glazewright.Design.Contracts;

namespace Glazewright.Design.Plant;

/// <summary>The electric load list: each line with its phase and inrush, and whether it stays on when the mains fail.</summary>
internal static class LoadList
{
    /// <summary>Control box, sensors and modem, W.</summary>
    public const double ControlW = 150;

    /// <summary>Hot-water circulator and burner of the bench pipe, W.</summary>
    public const double BoilerW = 250;

    // Starting over running current of small single-phase motors (common practice: 5 to 7).
    private const double StartRatio = 6;

    public static EqList<ElectricLoad> Of(
        string house,
        MotorSupply supply,
        List<FanEntry> fans,
        Intake? intake,
        WetWallPlant? wetWall,
        FogPlant? fog,
        HeatPlant? heat,
        CurtainPlant? curtain,
        CurtainPlant? secondCurtain,
        CirculationPlant? circulation,
        (PressurePlant Plant, int Fans)? pressure,
        VentPlant? vents,
        double lampW,
        double benchPipeW,
        double dehumidifierW,
        int oscillatingFans,
        UpperFanPlant? upper,
        Catalogue catalogue)
    {
        List<ElectricLoad> loads = [];
        double serviceV = supply.ServiceV;
        void Add(string id, string label, int count, double watts, double ratedV, bool three, double startRatio, bool backup, double powerFactor = Pick.MotorPowerFactor)
        {
            double volts = supply.Volts(ratedV, three), fullLoadA = Pick.FullLoadA(watts, volts, three, powerFactor);
            loads.Add(new ElectricLoad($"{house}/{id}", label, count, watts, volts, three, fullLoadA, startRatio * fullLoadA, backup));
        }

        void AddFan(string id, string label, FanEntry fan, int count, bool backup)
        {
            double watts = fan.Points.Max(p => p.PowerW), volts = supply.Volts(fan.VoltageV, fan.Phases == 3);
            loads.Add(new ElectricLoad(
                $"{house}/{id}", label, count, watts, volts, fan.Phases == 3, Pick.FullLoadA(watts, volts, fan.Phases == 3), fan.StartA * fan.VoltageV / volts, backup));
        }

        bool first = true;
        foreach (IGrouping<string, FanEntry> group in fans.GroupBy(f => f.Id))
        {
            FanEntry fan = group.First();
            int count = group.Count();
            void AddFans(int number, bool backup) => AddFan($"{fan.Id}{(backup ? "-backup" : "")}", fan.Name, fan, number, backup);
            if (first)
            {
                AddFans(1, true);
                count--;
                first = false;
            }

            if (count > 0)
            {
                AddFans(count, false);
            }
        }

        if (intake is not null)
        {
            Add("louver", "Intake louver motors", Math.Max(intake.LouverCount, 1), intake.Louver.MotorW, 115, false, 1, true);
        }

        if (wetWall is not null)
        {
            Add("wet-wall-pump", "Wet wall pump", 1, wetWall.PumpW, 115, false, StartRatio, false);
        }

        if (fog is not null)
        {
            Add("fog-pump", "Fog pump", 1, fog.PumpW, serviceV, false, StartRatio, false);
        }

        foreach (HeaterUnit heater in heat?.Heaters ?? EqList<HeaterUnit>.Empty)
        {
            bool lead = heater.Id.EndsWith("-1", StringComparison.Ordinal);
            Add(
                heater.Id[(house.Length + 1)..], heater.Electric ? "Electric heater" : "Unit heater fan and ignition", 1,
                heater.FanW + (heater.Electric ? heater.OutputW : 0), heater.Electric ? serviceV : 115, false, heater.Electric ? 1 : StartRatio, lead, heater.Electric ? 1 : Pick.MotorPowerFactor);
        }

        if (curtain is not null)
        {
            Add("curtain-drive", "Curtain drive", curtain.Layers, curtain.DriveW, 115, false, StartRatio, false);
        }

        if (secondCurtain is not null)
        {
            Add("second-curtain-drive", "Second curtain drive", secondCurtain.Layers, secondCurtain.DriveW, 115, false, StartRatio, false);
        }

        if (upper is not null)
        {
            AddFan("upper-fans", "Upper fans", catalogue.Fans.First(f => f.Id == upper.Entry), upper.Count, false);
            Add("upper-louvers", "Inlet louvers of the upper fans", upper.Count, upper.InletMotorW, 115, false, 1, false);
        }

        if (circulation is { Count: > 0 })
        {
            Add("circulation", "Circulation fans", circulation.Count, circulation.PowerEachW, 115, false, StartRatio, true);
        }

        if (pressure is { Fans: > 0 } p)
        {
            double volts = catalogue.PressureFans.First(e => e.Id == p.Plant.Entry).VoltageV;
            Add("filter-fan", "Filter fan", p.Fans, p.Plant.PowerW / p.Fans, volts, false, StartRatio, false);
        }

        if (vents is not null)
        {
            Add("vent-drives", "Vent drives", (vents.RoofM2 > 0 ? 1 : 0) + (vents.SideM2 > 0 ? 1 : 0), 200, 115, false, StartRatio, true);
        }

        if (lampW > 0)
        {
            Add("lamps", "Lamps", 1, lampW, serviceV, false, 1.5, false, 0.95);
        }

        if (benchPipeW > 0)
        {
            Add("bench-pipe", "Boiler burner and circulator", 1, BoilerW, 115, false, StartRatio, true);
        }

        if (dehumidifierW > 0)
        {
            Add("dehumidifier", "Dehumidifier", 1, dehumidifierW, serviceV, false, StartRatio, false);
        }

        if (oscillatingFans > 0)
        {
            OscillatingEntry swept = OscillatingFans.Entry(catalogue);
            Add("oscillating", "Oscillating fans", oscillatingFans, swept.PowerW, swept.VoltageV, false, StartRatio, false);
        }

        Add("control", "Control box, sensors, alarm", 1, ControlW, 115, false, 1, true);
        return loads.ToEqList();
    }
}
