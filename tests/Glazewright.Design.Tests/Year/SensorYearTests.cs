using Glazewright.Design.Contracts;
using Glazewright.Design.Program;
using Glazewright.Design.Year;

namespace Glazewright.Design.Tests.Year;

/// <summary>The year goes by what its sensors show.</summary>
public class SensorYearTests
{
    private static readonly Lazy<YearResult> s_base = new(() => YearScenes.Run());

    private static YearResult Run(Func<Sensor, Sensor> change) =>
        YearScenes.Run(YearScenes.Program with { Sensors = SensorPoints.Usual("A").Select(change).ToEqList() });

    private static YearResult Crop(Func<Sensor, Sensor> change) =>
        Run(s => s is { Quantity: SensorQuantity.Temperature, Place: SensorPlace.Crop } ? change(s) : s);

    private static double NightMeanC(YearResult r) =>
        Enumerable.Range(0, 365).Where(d => d is < 60 or > 330).Average(d => Enumerable.Range(0, 5).Average(h => (double)r.Hours.InsideC[(24 * d) + h]));

    [Fact]
    public void The_usual_sensors_listed_are_the_year_without_a_list()
    {
        YearResult listed = Run(s => s);
        Assert.Equal(s_base.Value.Held, listed.Held);
        Assert.Equal(s_base.Value.Hours, listed.Hours);
    }

    // In a winter night the program holds what its thermometer shows: one that reads 2 K high keeps the house 2 K colder.
    [Fact]
    public void A_thermometer_that_reads_high_keeps_the_house_cold()
    {
        YearResult high = Crop(s => s with { ErrorValue = 2 });
        Assert.InRange(NightMeanC(s_base.Value) - NightMeanC(high), 1.8, 2.2);
        Assert.True(high.FuelJ < 0.95 * s_base.Value.FuelJ);
        Assert.True(high.Held.HeldTemperatureH < s_base.Value.Held.HeldTemperatureH - 500);
        Assert.Contains("F° (2 K) high", Assert.Single(high.Report.Findings, f => f.Code == "year/sensors").What, StringComparison.Ordinal);
        Assert.DoesNotContain(s_base.Value.Report.Findings, f => f.Code == "year/sensors");
    }

    [Fact]
    public void Its_correction_in_the_box_mends_it()
    {
        YearResult mended = Crop(s => s with { ErrorValue = 2, CorrectionValue = -2 });
        Assert.Equal(s_base.Value.Held.HeldTemperatureH, mended.Held.HeldTemperatureH, 0.01 * s_base.Value.Held.HeldTemperatureH);
        Assert.Equal(s_base.Value.FuelJ, mended.FuelJ, 0.005 * s_base.Value.FuelJ);
        Assert.DoesNotContain(mended.Report.Findings, f => f.Code == "year/sensors");
    }

    // Without a fan it reads warm in sun: more fan hours by day, the same nights.
    [Fact]
    public void Without_a_fan_it_calls_the_fans_too_early()
    {
        YearResult bare = Crop(s => s with { Aspirated = false });
        double Fans(YearResult r) => r.Motors.Where(m => m.Actuator.StartsWith("A/fan-", StringComparison.Ordinal)).Sum(m => m.RuntimeH);
        Assert.True(Fans(bare) > 1.02 * Fans(s_base.Value), $"{Fans(bare)} of {Fans(s_base.Value)}");
        Assert.Equal(NightMeanC(s_base.Value), NightMeanC(bare), 0.1);
        Assert.Contains("no fan draws air past", Assert.Single(bare.Report.Findings, f => f.Code == "year/sensors").What, StringComparison.Ordinal);
    }

    [Fact]
    public void A_slow_thermometer_overshoots()
    {
        YearResult slow = Crop(s => s with { LagS = 900 });
        Assert.True(slow.Held.HeldTemperatureH < s_base.Value.Held.HeldTemperatureH - 50, $"{slow.Held.HeldTemperatureH} of {s_base.Value.Held.HeldTemperatureH}");
    }

    [Fact]
    public void A_day_run_again_is_the_years_day_with_any_sensors()
    {
        ProgramDocument program = YearScenes.Program with
        {
            Sensors = SensorPoints.Usual("A").Select(s => s.Quantity is SensorQuantity.Temperature or SensorQuantity.Humidity
                ? s with { Aspirated = false, LagS = 240, ErrorValue = -0.4, DriftPerYearValue = 1.5 }
                : s.Quantity is SensorQuantity.Light or SensorQuantity.Wind ? s with { LagS = 30 } : s).ToEqList(),
        };
        YearResult year = YearScenes.Run(program);
        DayReplay day = DayReplay.Of(YearScenes.Input, YearScenes.Form, YearScenes.Gains, YearScenes.Plant, program, YearScenes.Weather, year, 170);
        for (int h = 0; h < 24; h++)
        {
            double sum = 0; // as the year adds
            for (int m = 0; m < 60; m++)
            {
                sum += day.Minutes[(60 * h) + m].InsideC;
            }

            Assert.Equal(year.Hours.InsideC[(24 * 170) + h], (float)(sum / 60));
        }
    }

    // By hand: a thermometer that has drifted 3 K high on the last day holds the nights of late December 3 · 350/365 = 2.9 K colder, and those of early January by 3 · 10/365 = 0.1 K.
    [Fact]
    public void A_thermometer_that_drifts_is_off_by_the_year_s_end()
    {
        YearResult drifts = Crop(s => s with { DriftPerYearValue = 3 });
        double Colder(int from, int to) => Enumerable.Range(from, to - from).Average(d => Enumerable.Range(0, 5).Average(h => (double)s_base.Value.Hours.InsideC[(24 * d) + h] - drifts.Hours.InsideC[(24 * d) + h]));
        Assert.Equal(3.0 * 10 / 365, Colder(5, 16), 0.12);
        Assert.Equal(3.0 * 350 / 365, Colder(342, 359), 0.25);
        Assert.Contains("which drifts 5.4 F° (3 K) high by the year's end", Assert.Single(drifts.Report.Findings, f => f.Code == "year/sensors").What, StringComparison.Ordinal);
        Assert.Contains(drifts.Report.LeftOut, w => w.Contains("those that drift", StringComparison.Ordinal));
        Assert.Contains(s_base.Value.Report.LeftOut, w => w.Contains("none of them is said to drift", StringComparison.Ordinal));
    }

    // A hygrometer that drifts high calls for drying that is not needed, and a drift of nothing is no drift.
    [Fact]
    public void A_hygrometer_that_drifts_dries_more_as_the_year_goes()
    {
        ProgramDocument written = ProgramStage.Run(ProgramInput.From(YearScenes.Job, "A"), YearScenes.Plant);
        YearResult Humid(double? drift) => YearScenes.Run(written with
        {
            Sensors = written.Sensors!.Select(s => s is { Quantity: SensorQuantity.Humidity, Place: SensorPlace.Crop } ? s with { DriftPerYearValue = drift } : s).ToEqList(),
        });
        YearResult still = Humid(null), high = Humid(8);
        double Dryer(int from, int to) => Enumerable.Range(24 * from, 24 * (to - from)).Average(h => (double)still.Hours.InsideRhPercent[h] - high.Hours.InsideRhPercent[h]);
        Assert.True(Dryer(240, 310) > Dryer(60, 130) + 0.5, $"{Dryer(60, 130)} then {Dryer(240, 310)}");
        Assert.Equal(still.Hours, Humid(0).Hours);
    }

    // 800 W/m², 26.85 °C (300 K), 1 m/s: with their 1.2 kg/m³ and 1004 J/kgK X = 800 / (1.2 · 1004 · 300 · 1) = 2.213e-3, 0.13 + 373.40 X = 0.957 K
    // (Nakamura and Mahrt 2005, coefficients second-hand); the model's own density and specific heat are within half a percent of that.
    [Fact]
    public void The_suns_error_is_the_published_ones()
    {
        Assert.Equal(0.957, RadiationError.OfK(800, 26.85, 1, 101_325), 0.005);
        Assert.Equal(RadiationError.OfK(800, 26.85, RadiationError.LeastSpeedMs, 101_325), RadiationError.OfK(800, 26.85, 0, 101_325));
        Assert.Equal(0, RadiationError.OfK(0, 20, 1, 101_325));
        // 25 °C and 60 % shown by a hygrometer 2 K warmer: 60 · 31.67 / 35.65 hPa (saturation pressures at 25 and 27 °C, FAO-56 Annex 2, Table 2.3: 3.168 and 3.565 kPa).
        Assert.Equal(60 * 3.168 / 3.565, RadiationError.Percent(60, 25, 2), 0.1);
    }
}
