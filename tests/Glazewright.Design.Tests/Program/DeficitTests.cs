using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Program;
using Glazewright.Design.Tests.Year;
using Glazewright.Design.Year;
using Glazewright.Science.Climate;
using Glazewright.Science.Crop;

namespace Glazewright.Design.Tests.Program;

/// <summary>A vapour pressure deficit in place of a humidity: faults, what the box does by it, what the year counts.</summary>
public class DeficitTests
{
    private static ProgramDocument With(ClimateTarget day, ClimateTarget night)
    {
        ProgramDocument d = SampleProgram.Document();
        return d with { Periods = [d.Periods[0] with { Day = day, Night = night, RampMinutes = 0 }] };
    }

    private static int AskedPerMille(ProgramDocument document, int insideCentiC)
    {
        Bench bench = new Bench(document).Set(Reading.InsideTemperature, insideCentiC).Run(5);
        return bench.Program.TargetOf(bench.State).HumidityPerMille;
    }

    // Saturation pressures of FAO-56, Annex 2, Table 2.3: 20 °C 2.338 kPa, 25 °C 3.168 kPa, 30 °C 4.243 kPa. A deficit of 1 kPa is the humidity 1 − 1/e.
    [Theory]
    [InlineData(2000, 2.338)]
    [InlineData(2500, 3.168)]
    [InlineData(3000, 4.243)]
    public void It_is_the_humidity_of_the_moments_temperature(int insideCentiC, double saturationKPa)
    {
        ProgramDocument one = With(new ClimateTarget(25, 0, 1), new ClimateTarget(25, 0, 1));
        Assert.Equal(1000 * (1 - (1 / saturationKPa)), AskedPerMille(one, insideCentiC), 3.0);
    }

    [Fact]
    public void The_same_humidity_is_dry_in_warm_air_and_damp_in_cool()
    {
        // 65 %: at 30 °C a deficit of 1.49 kPa, at 17 °C one of 0.68.
        ProgramDocument asked = With(new ClimateTarget(22, 0, 1.0), new ClimateTarget(22, 0, 1.0));
        Bench warm = new Bench(asked).Set(Reading.InsideTemperature, 3000).Set(Reading.OutsideTemperature, 2900).Run(300);
        Assert.Equal(ReasonCode.Fogging, warm.Why("A/fog"));
        Bench cool = new Bench(asked).Set(Reading.InsideTemperature, 1700).Set(Reading.OutsideTemperature, 1500).Set(Reading.OutsideHumidity, 300).Run(300);
        Assert.Contains(cool.Commands, c => (ReasonCode)c.Reason == ReasonCode.Drying || ((ReasonCode)c.Reason is ReasonCode.NotWith or ReasonCode.WaitsFor && cool.Program.TargetOf(cool.State).HumidityPerMille < 590));
        Assert.NotEqual(ReasonCode.Fogging, cool.Why("A/fog"));
    }

    [Fact]
    public void In_a_house_far_too_cold_it_asks_no_desert()
    {
        ProgramDocument asked = With(new ClimateTarget(24, 0, 1.5), new ClimateTarget(24, 0, 1.5));
        Assert.Equal(300, AskedPerMille(asked, 1000));
        Assert.Equal(300, AskedPerMille(asked, -2000));
        // Without any temperature the target's own serves: 1 − 1.5 / 2.985 kPa (FAO-56, Annex 2, Table 2.3 at 24 °C: 2.984).
        Bench blind = new Bench(asked).Set(Reading.InsideTemperature, int.MinValue).Set(Reading.UpperTemperature, int.MinValue).Run(5);
        Assert.Equal(1000 * (1 - (1.5 / 2.984)), blind.Program.TargetOf(blind.State).HumidityPerMille, 3.0);
    }

    [Fact]
    public void It_ramps_from_night_to_day_and_a_humidity_takes_over_at_once()
    {
        ProgramDocument d = With(new ClimateTarget(22, 0, 1.2), new ClimateTarget(22, 0, 0.6));
        d = d with { Periods = [d.Periods[0] with { RampMinutes = 60 }] };
        Bench half = new Bench(d).Set(Reading.InsideTemperature, 2200).Set(Reading.TimeOfDay, (6 * 3_600_000) + 1_800_000).Run(5);
        Assert.Equal(1000 * (1 - (0.9 / Fao56.SaturationKPa(22))), half.Program.TargetOf(half.State).HumidityPerMille, 5.0);
        ProgramDocument mixed = d with { Periods = [d.Periods[0] with { Night = new ClimateTarget(22, 80) }] };
        Bench night = new Bench(mixed).Set(Reading.TimeOfDay, 3 * 3_600_000).Run(5);
        Assert.Equal(800, night.Program.TargetOf(night.State).HumidityPerMille);
    }

    [Fact]
    public void Both_at_once_and_more_than_air_can_lack_are_faults()
    {
        EqList<Fault> faults = Assert.IsType<ProgramCompilation.Faulty>(ProgramCompiler.Compile(With(new ClimateTarget(20, 60, 0.8), new ClimateTarget(15, 0, 2)))).Faults;
        Assert.Equal(["/periods/0/day/vpdKPa", "/periods/0/night/vpdKPa"], faults.Select(f => f.Pointer));
        Assert.All(faults, f => Assert.Equal(FaultKind.Contradiction, f.Kind));
        Assert.Contains("1.71 kPa", faults[1].Wrong, StringComparison.Ordinal); // 1.705 kPa in FAO-56, Annex 2, Table 2.3 at 15 °C
        EqList<Fault> low = Assert.IsType<ProgramCompilation.Faulty>(ProgramCompiler.Compile(With(new ClimateTarget(20, 0, -1), new ClimateTarget(20, 0, double.NaN)))).Faults;
        Assert.Equal(["/periods/0/day/vpdKPa", "/periods/0/night/vpdKPa"], low.Select(f => f.Pointer));
    }

    [Fact]
    public void A_file_keeps_it_and_leaves_it_out_where_none_is()
    {
        ProgramDocument asked = With(new ClimateTarget(22, 0, 0.8), new ClimateTarget(18, 80)) with { Report = StageReport.Empty };
        string text = ProgramJson.Write(asked);
        Assert.Equal(1, text.Split("vpdKPa").Length - 1);
        Assert.Equal(asked, Assert.IsType<ProgramReading.Read>(ProgramJson.Read(text)).Document);
        string all = string.Join('\n', ControlNarrative.Of(asked, UnitSystem.Us).SelectMany(p => p.Lines));
        Assert.Contains("71.6 °F and 0.8 kPa of vapour pressure deficit from sunrise", all, StringComparison.Ordinal);
        Assert.Contains("at least 30 %", all, StringComparison.Ordinal);
    }

    [Fact]
    public void What_it_means_at_the_targets_temperature_serves_the_designs()
    {
        Assert.Equal(100 * (1 - (0.8 / 2.338)), new ClimateTarget(20, 0, 0.8).HumidityAtTargetPercent, 0.1);
        Assert.Equal(65, new ClimateTarget(20, 65).HumidityAtTargetPercent);
        Assert.True(new ClimateTarget(20, 0, 0.8).AsksHumidity);
        Assert.False(new ClimateTarget(20, 0).AsksHumidity);
    }

    // A house that holds 22 ± 1 °C: asking for the deficit that its humidity means counts about the same hours; a band of nothing holds none.
    [Fact]
    public void The_year_counts_it_within_its_band()
    {
        CropPeriod crop = YearScenes.Input.Schedule[0];
        CropPeriod asks = crop with { Day = new ClimateTarget(crop.Day.TemperatureC, 0, 0.9), Night = new ClimateTarget(crop.Night.TemperatureC, 0, 0.5) };
        YearInput input = YearScenes.Input with { Schedule = [asks, .. YearScenes.Input.Schedule.Skip(1)] };
        YearResult wide = YearScenes.Run(input: input), narrow = YearScenes.Run(input: input with { Band = input.Band with { VpdKPa = 0.05 } });
        HeldCounters w = wide.Held, n = narrow.Held;
        Assert.Equal(w.HumidityAskedH, w.HeldHumidityH + w.TooWetH + w.TooDryH, 1e-6);
        Assert.True(w.HumidityAskedH > 8000);
        Assert.True(n.HeldHumidityH < 0.5 * w.HeldHumidityH, $"{n.HeldHumidityH} of {w.HeldHumidityH}");
        Assert.Equal(w.HeldTemperatureH, n.HeldTemperatureH);
        // Counted again from a replayed day: the deficit of every minute against the ramped target.
        DayReplay day = DayReplay.Of(input, YearScenes.Form, YearScenes.Gains, YearScenes.Plant, YearScenes.Program, YearScenes.Weather, wide, 100);
        Assert.All(day.Minutes.Skip(720).Take(60), m => Assert.Equal(100 * (1 - (0.9 / Fao56.SaturationKPa(m.InsideC))), m.TargetRhPercent, 0.5));
        Assert.Contains("0.18 kPa where a vapour pressure deficit is asked", wide.Report.Findings.Single(f => f.Code == "year/held").What, StringComparison.Ordinal);
    }

    // Drying by a deficit: with the program asking 0.9 kPa the house is drier in its damp hours than with nothing asked.
    [Fact]
    public void Drying_by_a_deficit_dries()
    {
        ProgramPeriod p = YearScenes.Program.Periods[0];
        ProgramDocument Asks(ClimateTarget day, ClimateTarget night) => YearScenes.Program with
        {
            Periods = [p with { Day = day, Night = night }],
            Humidity = YearScenes.Program.Humidity with { Drying = [new ActuatorSetting("A/louver", 1), new ActuatorSetting("A/fan-1", 1)] },
        };
        double Mean(YearResult r) => r.Hours.InsideRhPercent.Average(x => (double)x);
        YearResult dry = YearScenes.Run(Asks(p.Day with { HumidityPercent = 0, VpdKPa = 0.9 }, p.Night with { HumidityPercent = 0, VpdKPa = 0.6 }));
        YearResult free = YearScenes.Run(Asks(p.Day with { HumidityPercent = 0 }, p.Night with { HumidityPercent = 0 }));
        Assert.True(Mean(dry) < Mean(free) - 1, $"{Mean(dry)} and {Mean(free)}");
    }
}
