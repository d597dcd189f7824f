using Glazewright.Design.Contracts;
using Glazewright.Design.Program;
using Glazewright.Design.Year;
using Glazewright.Science.Climate;
using Glazewright.Science.Weather;

namespace Glazewright.Design.Tests.Year;

/// <summary>Snow of the weather file reaches the curtain's rule, and what that does.</summary>
public class SnowYearTests
{
    private static readonly Lazy<MinuteWeather> s_snowy = new(() => MinuteWeather.Expand(Snowy()));
    private static readonly Lazy<YearResult> s_held = new(() => YearScenes.Run(Opens(true), weather: s_snowy.Value));

    // Ten centimetres on each tenth evening of December to March, gone by the next; air as it is.
    private static WeatherYear Snowy()
    {
        WeatherYear year = YearScenes.MakeWeather(42);
        double[] depth = new double[8760];
        for (int day = 0; day < 365; day++)
        {
            if (day is < 90 or >= 335 && day % 10 == 0)
            {
                Array.Fill(depth, 0.10, (24 * day) + 18, Math.Min(48, 8760 - (24 * day) - 18));
            }
        }

        return year with { SnowDepthM = new HourlyColumn(depth) };
    }

    private static ProgramDocument Opens(bool forSnow) => YearScenes.Program with { Curtain = YearScenes.Program.Curtain! with { HoldOpenOnSnow = forSnow } };

    private static double Of(YearResult r, string name) => r.Report.Figures.Single(f => f.Id == "A/year/" + name).Value;

    [Fact]
    public void A_snowy_year_holds_the_curtain_open_and_burns_more()
    {
        YearResult held = s_held.Value, never = YearScenes.Run(Opens(false), weather: s_snowy.Value);
        Assert.True(Of(held, "snow") > 100);
        Assert.InRange(Of(held, "snow-held-open"), 10, Of(held, "snow"));
        Assert.True(held.HeatJ > never.HeatJ, $"{held.HeatJ} and {never.HeatJ}");
        Assert.Contains(held.Report.Findings, f => f.Code == "year/snow");
        Assert.DoesNotContain(never.Report.Findings, f => f.Code == "year/snow");
        Assert.Equal(0, held.Held.FrostH); // opening in steps lets no frost down on a heated crop
    }

    [Fact]
    public void The_curtain_opens_in_steps_when_it_begins_and_is_drawn_again_when_it_has_melted()
    {
        // Day 10: snow from 18:00.
        ProgramDocument program = Opens(true);
        DayReplay day = DayReplay.Of(YearScenes.Input, YearScenes.Form, YearScenes.Gains, YearScenes.Plant, program, s_snowy.Value, s_held.Value, 10);
        int curtain = day.Actuators.ToList().IndexOf("A/curtain");
        int first = (int)day.Spells.First(s => s.Actuator == curtain && s.Because.Contains("snow", StringComparison.Ordinal)).FromMinute;
        Assert.InRange(first, (18 * 60) + 1, (18 * 60) + 10);
        double[] drawn = [.. day.Minutes.Select(m => m.CurtainFraction)];
        Assert.True(drawn[first - 1] > 0.9 && drawn[(23 * 60) + 30] == 0, $"{drawn[first - 1]} and {drawn[(23 * 60) + 30]}");
        for (int m = first; m < 1440; m++)
        {
            Assert.True(drawn[m] >= drawn[m - 1] - 0.101, $"minute {m}: {drawn[m - 1]} to {drawn[m]}");
        }

        // Nights later it is drawn as ever.
        DayReplay later = DayReplay.Of(YearScenes.Input, YearScenes.Form, YearScenes.Gains, YearScenes.Plant, program, s_snowy.Value, s_held.Value, 14);
        Assert.True(later.Minutes[1400].CurtainFraction > 0.9);
    }

    [Fact]
    public void Without_a_record_the_year_says_so_and_is_as_with_the_rule_off()
    {
        YearResult unknown = YearScenes.Run(Opens(true)), off = YearScenes.Run(Opens(false));
        Assert.Equal(off.Hours, unknown.Hours);
        Assert.Contains(unknown.Report.LeftOut, w => w.Contains("records no snow", StringComparison.Ordinal));
        Assert.DoesNotContain(off.Report.LeftOut, w => w.Contains("records no snow", StringComparison.Ordinal));
        Assert.DoesNotContain(unknown.Report.Findings, f => f.Code == "year/snow");
    }

    [Fact]
    public void Without_a_snow_sensor_nothing_opens()
    {
        ProgramDocument blind = Opens(false) with { Sensors = SensorPoints.Usual("A").Where(s => s.Quantity != SensorQuantity.Snow).ToEqList() };
        Assert.Equal(YearScenes.Run(Opens(false), weather: s_snowy.Value).Hours, YearScenes.Run(blind, weather: s_snowy.Value).Hours);
    }

    // 10 cm of fresh snow, 10 kg/m², over 15 °C under a roof of U 3.0 to the snow (core 4.8, inner film 0.125): 45 W/m² melt 0.485 kg/m²h, gone in 20.6 h.
    [Fact]
    public void It_melts_by_the_heat_under_the_roof()
    {
        double[] fallen = new double[8760];
        fallen[0] = 0.10;
        ShellPart roof = ShellPart.None with { AreaM2 = 100, CoreWPerM2K = 4.8 };
        var snow = new YearSnow(fallen, roof, YearScenes.Program);
        int minute = 0;
        for (; minute < 60; minute++)
        {
            snow.Step(minute, -10, -1, 60); // nothing melts yet
        }

        Assert.Equal(10, snow.RoofKgPerM2, 1e-9);
        Assert.True(snow.IsTold);
        while (snow.RoofKgPerM2 > 0)
        {
            snow.Step(minute++, -10, 15, 60);
        }

        Assert.Equal(10 / (3.0 * 15 * 3600 / 334_000), (minute - 60) / 60.0, 0.1);
        Assert.False(snow.IsTold);
    }
}
