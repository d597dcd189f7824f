using Glazewright.Design.Contracts;
using Glazewright.Design.Plant;
using Glazewright.Design.Program;
using Glazewright.Design.Year;
using Glazewright.Science.Climate;

namespace Glazewright.Design.Tests.Year;

/// <summary>Carbon dioxide, dehumidifier, lamps and pipe in the year: closed forms first, then what they do to a house.</summary>
public class OtherKindsYearTests
{
    private static readonly Lazy<YearResult> Plain = new(() => YearScenes.Run());
    private static readonly PlantResult Gassed = YearScenes.Plant with { Co2 = new Co2Plant(900, 3e-3 / 3.6) };
    private static readonly ProgramDocument GasProgram = With(new Actuator("A/co2-valve", ActuatorKind.Co2Valve, 30, 30, 0, "")) with
    {
        Co2 = new Co2Control("A/co2-valve", 900, 60, 100, ["A/fan-1", "A/fan-2"]),
    };

    private static readonly Lazy<YearResult> Gas = new(() => YearScenes.Run(GasProgram, Gassed, input: Priced));

    private static YearInput Priced => YearScenes.Input with { Tariffs = YearScenes.Input.Tariffs with { Co2PerKg = 0.4 } };

    // A steady source in a ventilated room: c = c_out + G / (Q k), any textbook of ventilation.
    [Fact]
    public void Steady_carbon_dioxide_is_the_closed_form()
    {
        double k = YearCo2.KgPerM3Ppm(20, 101_325);
        Assert.Equal(1.83e-6, k, 0.005e-6); // density of the gas at 20 °C, handbook tables: 1.83 kg/m³
        YearCo2 gas = new();
        for (int i = 0; i < 3000; i++)
        {
            gas.Step(800, 0.5, k, 4e-4, 0, 60);
        }

        Assert.Equal(420 + 4e-4 / (0.5 * k), gas.Ppm, 1e-6);
    }

    // Without a source the level falls as e^(−n t).
    [Fact]
    public void Carbon_dioxide_decays_with_the_air_changes()
    {
        YearCo2 gas = new() { Ppm = 1200 };
        for (int i = 0; i < 1800; i++)
        {
            gas.Step(800, 0.4, YearCo2.KgPerM3Ppm(20, 101_325), 0, 0, 1);
        }

        Assert.Equal(420 + 780 * Math.Exp(-0.4 / 800 * 1800), gas.Ppm, 0.3);
    }

    // A crop in a sealed house draws the level to its compensation point, never below; a full canopy takes 5 g/m²h at 420 ppm in 300 W/m² (common practice).
    [Fact]
    public void The_crop_s_uptake_is_that_of_practice_and_stops_at_the_compensation_point()
    {
        double most = YearCo2.MostUptakeKgPerS(100, 300);
        Assert.Equal(0.5 / 3600, most * 370 / 670, 1e-9);
        Assert.InRange(950.0 / 1250 / (370.0 / 670), 1.3, 1.4);
        YearCo2 gas = new();
        for (int i = 0; i < 20_000; i++)
        {
            gas.Step(300, 0, YearCo2.KgPerM3Ppm(20, 101_325), 0, most, 60);
            Assert.True(gas.Ppm >= 50);
        }

        Assert.Equal(50.0, gas.Ppm, 0.1);
    }

    [Fact]
    public void A_dosed_house_uses_gas_by_day_and_pays_for_it()
    {
        YearResult r = Gas.Value;
        Assert.True(r.Co2Kg > 50, $"{r.Co2Kg}");
        Assert.Equal(r.Co2Kg, r.Months.Sum(m => m.Co2Kg), 1e-9 * r.Co2Kg);
        Assert.Equal(r.Co2Kg, r.Motors.Single(m => m.Actuator == "A/co2-valve").RuntimeH * 3600 * Gassed.Co2!.DoseKgPerS, 1e-6 * r.Co2Kg);
        double withoutGas = r.Months.Sum(m => m.Cost - 0.4 * m.Co2Kg);
        Assert.Equal(withoutGas + 0.4 * r.Co2Kg, r.Cost, 1e-6 * r.Cost);
        Assert.Equal(r.Cost, r.Report.Figures.Single(f => f.Id == "A/year/cost").Value, 1e-6 * r.Cost);
        Assert.InRange(r.EnergyClosureFraction, 0, 1e-6);
        // Leaves close a little in rich air: less water is given off.
        Assert.True(r.TranspiredKg < Plain.Value.TranspiredKg);
    }

    [Fact]
    public void A_dosed_day_runs_again_bit_for_bit()
    {
        DayReplay day = DayReplay.Of(Priced, YearScenes.Form, YearScenes.Gains, Gassed, GasProgram, YearScenes.Weather, Gas.Value, 120);
        for (int h = 0; h < 24; h++)
        {
            double sum = 0;
            for (int m = h * 60; m < (h + 1) * 60; m++)
            {
                sum += day.Minutes[m].InsideRhPercent;
            }

            Assert.Equal(Gas.Value.Hours.InsideRhPercent[120 * 24 + h], (float)(sum / 60));
        }

        Assert.Contains(day.Spells, s => s.Because.Contains("dosing", StringComparison.Ordinal));
    }

    [Fact]
    public void A_dehumidifier_takes_water_power_and_wet_hours()
    {
        ProgramDocument program = With(new Actuator("A/dehumidifier", ActuatorKind.Dehumidifier, 300, 300, 0, ""));
        program = program with { Humidity = program.Humidity with { Drying = [new ActuatorSetting("A/dehumidifier", 1)], DryAbovePercent = 4, DryDeadbandPercent = 3 } };
        YearResult r = YearScenes.Run(program, YearScenes.Plant with { Dehumidifier = new DehumidifierPlant(6000, 6000 * 2 / 3.6e6) });
        double hours = r.Motors.Single(m => m.Actuator == "A/dehumidifier").RuntimeH;
        Assert.True(hours > 100);
        Assert.InRange(r.DriedKg, 0.1 * hours * 12, 1.2 * hours * 12);
        Assert.True(r.Held.TooWetH < 0.9 * Plain.Value.Held.TooWetH, $"{r.Held.TooWetH} of {Plain.Value.Held.TooWetH}");
        Assert.True(r.PowerJ > Plain.Value.PowerJ + 0.9 * hours * 3600 * 6000);
        Assert.InRange(r.EnergyClosureFraction, 0, 1e-6);
        Assert.InRange(r.WaterClosureFraction, 0, 1e-6);
    }

    // Rated at 20 °C and 80 % (11.7 g/kg); air as dry as the coil (5.4 g/kg at 5 °C, saturated) gives nothing.
    [Theory]
    [InlineData(0.0117, 1), InlineData(0.0054, 0), InlineData(0.003, 0), InlineData(0.00855, 0.5)]
    public void A_dehumidifier_s_coil(double humidityRatio, double share) => Assert.Equal(share, DehumidifierCoil.ShareOfRated(humidityRatio), 1e-9);

    // Photons: watts × µmol/J × time over the planted floor; 14 h about noon, held off by light outside.
    [Fact]
    public void Lamps_give_the_light_their_hours_say()
    {
        ProgramDocument program = With(new Actuator("A/lamps", ActuatorKind.Lamps, 600, 600, 0, "")) with { Lamps = new LampControl("A/lamps", [14], 250) };
        PlantResult plant = YearScenes.Plant with { LampW = 5000, LampUmolPerJ = 2.2 };
        YearResult r = YearScenes.Run(program, plant);
        double hours = r.Motors.Single(m => m.Actuator == "A/lamps").RuntimeH, cropM2 = YearScenes.Form.FloorAreaM2 * YearScenes.Input.Schedule[0].PlantedFraction;
        double mol = Enumerable.Range(0, 12).Sum(m => r.Months[m].LampMolPerM2Day * Glazewright.Science.Weather.CommonYear.DaysIn(m + 1));
        Assert.Equal(5000 * 2.2e-6 * hours * 3600 / cropM2, mol, 1e-6 * mol);
        Assert.InRange(hours, 1000, 14 * 365);
    }

    [Fact]
    public void Sunlight_at_the_crop_is_a_part_of_the_sun_s()
    {
        for (int m = 0; m < 12; m++)
        {
            double outside = 0;
            int first = Enumerable.Range(0, m).Sum(i => Glazewright.Science.Weather.CommonYear.DaysIn(i + 1)) * 1440, minutes = Glazewright.Science.Weather.CommonYear.DaysIn(m + 1) * 1440;
            for (int i = first; i < first + minutes; i++)
            {
                outside += YearScenes.Weather.GhiWm2[i] * 60 * 2.018e-6 / (minutes / 1440);
            }

            Assert.InRange(Plain.Value.Months[m].SunMolPerM2Day, 0.05 * outside, outside);
        }

        Assert.True(Plain.Value.Months[6].SunMolPerM2Day > Plain.Value.Months[11].SunMolPerM2Day);
    }

    // First order with 2,500 s: after an hour of a steady call the pipe gives 1 − e^(−3600/2500) of its output (implicit steps lag by a step at most).
    [Fact]
    public void A_pipe_warms_and_cools_with_its_lag()
    {
        ProgramDocument program = With(new Actuator("A/bench-pipe", ActuatorKind.BenchPipe, 0, 0, 0, ""));
        PlantResult plant = YearScenes.Plant with { BenchPipeW = 10_000 };
        YearPlant act = new(program, plant, YearHouse.Build(YearScenes.Input, YearScenes.Form, plant));
        Command[] commands = new Command[program.Actuators.Count];
        HouseForcing f = default;
        double heatJ = 0, fuelJ = 0;
        for (int minute = 0; minute < 6000; minute++)
        {
            commands[^1] = new Command(minute < 60 ? 10_000 : 0, 0, 0, 0, 0);
            act.Act(commands, true, 60, false, ref f);
            heatJ += act.HeatW * 60;
            fuelJ += act.FuelW * 60;
            if (minute == 59)
            {
                Assert.Equal(10_000 * (1 - Math.Exp(-3600 / 2500.0)), act.HeatW, 150.0);
            }
        }

        Assert.Equal(10_000.0 * 3600, heatJ, 1.0);
        Assert.Equal(heatJ / 0.85, fuelJ, 1.0);
    }

    private static ProgramDocument With(Actuator more) => YearScenes.Program with { Actuators = [.. YearScenes.Program.Actuators, more] };
}
