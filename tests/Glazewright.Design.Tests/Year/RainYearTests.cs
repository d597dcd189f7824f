using Glazewright.Design.Contracts;
using Glazewright.Design.Plant;
using Glazewright.Design.Program;
using Glazewright.Design.Year;
using Glazewright.Science.Weather;

namespace Glazewright.Design.Tests.Year;

/// <summary>Rain of the weather file holds vents back, and what that does.</summary>
public class RainYearTests
{
    private static readonly PlantResult s_vented = YearScenes.Plant with { Exhaust = null, WetWall = null, Vents = new VentPlant(0.2 * YearScenes.Form.FloorAreaM2, 0.1 * YearScenes.Form.FloorAreaM2, 180) };
    private static readonly ProgramDocument s_program = ProgramStage.Run(ProgramInput.From(YearScenes.Job, "A"), s_vented);
    private static readonly Lazy<MinuteWeather> s_wet = new(() => MinuteWeather.Expand(Rainy(h => h / 24 % 3 == 0 && h % 24 is >= 11 and < 15 ? 1 : 0)));
    private static readonly Lazy<YearResult> s_rained = new(() => YearScenes.Run(s_program, s_vented, s_wet.Value));

    private static WeatherYear Rainy(Func<int, double> of) => YearScenes.MakeWeather(42) with { RainFraction = new HourlyColumn([.. Enumerable.Range(0, 8760).Select(of)]) };

    private static double Of(YearResult r, string name) => r.Report.Figures.Single(f => f.Id == "A/year/" + name).Value;

    [Fact]
    public void Rain_at_noon_holds_the_roof_vents_and_warms_the_house()
    {
        YearResult wet = s_rained.Value, dry = YearScenes.Run(s_program, s_vented, MinuteWeather.Expand(Rainy(_ => 0)));
        Assert.Equal(122 * 4, Of(wet, "rain"), 1e-9);
        Assert.InRange(Of(wet, "rain-held"), 50, 122 * 4.2); // ten minutes of calm after it
        Assert.InRange(Of(wet, "rain-held-warm"), 10, Of(wet, "rain-held"));
        Assert.True(wet.Held.TooWarmKh > 1.01 * dry.Held.TooWarmKh, $"{wet.Held.TooWarmKh} and {dry.Held.TooWarmKh}; held {Of(wet, "rain-held")}, warm {Of(wet, "rain-held-warm")}");
        Assert.Equal((0.0, 0.0), (Of(dry, "rain"), Of(dry, "rain-held")));
        Assert.Contains(wet.Report.Findings, f => f.Code == "year/rain");
        Assert.DoesNotContain(dry.Report.Findings, f => f.Code == "year/rain");
    }

    [Fact]
    public void A_file_that_does_not_say_is_told_and_is_a_dry_one()
    {
        YearResult unknown = YearScenes.Run(s_program, s_vented), dry = YearScenes.Run(s_program, s_vented, MinuteWeather.Expand(Rainy(_ => 0)));
        Assert.Equal(dry.Hours, unknown.Hours);
        Assert.Contains(unknown.Report.LeftOut, w => w.Contains("records no rain", StringComparison.Ordinal));
        Assert.DoesNotContain(dry.Report.LeftOut, w => w.Contains("records no rain", StringComparison.Ordinal));
        YearResult half = YearScenes.Run(s_program, s_vented, MinuteWeather.Expand(Rainy(h => h < 4000 ? double.NaN : h % 24 == 12 ? 1 : 0)));
        Assert.Contains("4,760 of the year's 8,760 hours", half.Report.Findings.Single(f => f.Code == "year/rain").What, StringComparison.Ordinal);
        // A house of fans has nothing that rain holds back.
        Assert.DoesNotContain(YearScenes.Run(weather: s_wet.Value).Report.LeftOut, w => w.Contains("rain", StringComparison.OrdinalIgnoreCase));
    }

    // A house that reads the rain keeps its thermometer's error: 2 K high holds winter nights 2 K colder.
    [Fact]
    public void The_other_sensors_stay_as_they_are()
    {
        YearResult high = YearScenes.Run(
            s_program with { Sensors = s_program.Sensors!.Select(s => s is { Quantity: SensorQuantity.Temperature, Place: SensorPlace.Crop } ? s with { ErrorValue = 2 } : s).ToEqList() }, s_vented, s_wet.Value);
        double Night(YearResult r) => Enumerable.Range(0, 60).Average(d => Enumerable.Range(0, 5).Average(h => (double)r.Hours.InsideC[(24 * d) + h]));
        Assert.InRange(Night(s_rained.Value) - Night(high), 1.7, 2.3);
    }

    // 1 July is day 181; day 183 is the next with rain, from 11:00 to 15:00.
    [Fact]
    public void The_day_again_says_why_and_for_how_long()
    {
        DayReplay day = DayReplay.Of(YearScenes.Input, YearScenes.Form, YearScenes.Gains, s_vented, s_program, s_wet.Value, s_rained.Value, 183);
        int roof = day.Actuators.ToList().IndexOf("A/roof-vent");
        CommandSpell[] rain = [.. day.Spells.Where(s => s.Actuator == roof && s.Because.Contains(": rain: not over 10 %", StringComparison.Ordinal))];
        Assert.NotEmpty(rain);
        // The box acts on the minute before or on this one; after the last drop it waits ten minutes.
        Assert.InRange(rain.Min(s => s.FromMinute), 11 * 60, (11 * 60) + 30);
        Assert.InRange(rain.Max(s => s.ToMinute), (15 * 60) + 8, (15 * 60) + 12);
        Assert.Equal(
            s_rained.Value.Hours.InsideC.Skip(183 * 24).Take(24).Select(x => (double)x), Enumerable.Range(0, 24).Select(h => (double)(float)day.Minutes.Skip(60 * h).Take(60).Average(m => m.InsideC)), (a, b) => Math.Abs(a - b) < 0.11);
    }
}
