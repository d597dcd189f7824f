using Glazewright.Design.Brief;
using Glazewright.Design.Brief.Reading;
using Glazewright.Design.Contracts;
using Glazewright.Design.Duty;
using Glazewright.Design.Form;
using Glazewright.Design.Plant;
using Glazewright.Science.Air;
using Glazewright.Science.Weather;

namespace Glazewright.Design.Tests.Duty;

public class DesignAirTests
{
    private static readonly Job Demo = TestJobs.OneHouse();
    private static readonly DutyResult Result = DesignDay.Duty(Demo);

    [Fact]
    public void Moisture_of_the_closed_night_closes()
    {
        NightBalance b = Result.Air.Balance;
        Assert.True(b.TranspirationKgPerS > 0);
        Assert.Equal(b.TranspirationKgPerS, b.LeakedKgPerS + b.CondensationKgPerS, 1e-6 * b.TranspirationKgPerS + 1e-9);
        Assert.InRange(b.House.RelativeHumidityFraction, 0.2, 1);
        Assert.True(b.CoverC < b.House.DewPointC == b.CondensationKgPerS > 0);
    }

    // A tighter house is damper and drips more; a warmer covering drips less.
    [Fact]
    public void Tightness_makes_the_night_wetter()
    {
        Job tight = Demo with { Houses = [.. Demo.Houses.Select(h => h with { AirtightnessPerHour = 0.2 })] };
        Job leaky = Demo with { Houses = [.. Demo.Houses.Select(h => h with { AirtightnessPerHour = 2 })] };
        NightBalance dense = DesignDay.Duty(tight).Air.Balance;
        NightBalance open = DesignDay.Duty(leaky).Air.Balance;
        Assert.True(dense.House.HumidityRatio > open.House.HumidityRatio);
        Assert.True(dense.CondensationKgPerS >= open.CondensationKgPerS);
    }

    [Fact]
    public void Every_design_day_has_a_source_and_the_typed_ones_are_told_so()
    {
        Assert.Equal(5, Result.Air.Days.Count);
        Assert.Equal(4, Result.Air.Days.Count(d => d.Source is Source.Given));
        Assert.All(Result.Air.Days, d => Assert.True(d.WetBulbC <= d.DryBulbC + 1e-6));
        Assert.Equal(Demo.Site.Design!.Heating996C, Result.Air.Days[0].DryBulbC);
        Assert.Equal(Demo.Site.Design.Evaporation04C, Result.Air.Days[3].WetBulbC, 1e-9);
    }

    // Wind alone sets the leakage of a house as warm as outside; the stated number holds at 4 m/s and 20 K.
    [Fact]
    public void Stated_air_changes_hold_in_their_own_weather_and_grow_with_wind_and_warmth()
    {
        Assert.Equal(0.7, NightLosses.ChangesPerHour(0.7, 20, 4), 1e-12);
        Assert.True(NightLosses.ChangesPerHour(0.7, 40, 4) > 0.7);
        double calm = NightLosses.ChangesPerHour(0.7, 40, 0);
        Assert.InRange(calm, 0.3, 0.7);
        Assert.Equal(2 * NightLosses.ChangesPerHour(0.7, 0, 3), NightLosses.ChangesPerHour(0.7, 0, 6), 1e-12);
    }

    [Fact]
    public void Night_skies_cover_every_path_of_the_loss()
    {
        NightSkies skies = Result.Air.Skies;
        Assert.Equal(Result.Losses.Select(l => l.Id), skies.Paths.Select(p => p.Id));
        Assert.Equal(Result.HeatLossW, skies.Paths.Sum(p => p.PracticeW), 1e-6 * Result.HeatLossW);
        PathNight roof = skies.Paths.First(p => p.Id.Contains("roof-left", StringComparison.Ordinal));
        PathNight wall = skies.Paths.First(p => p.Id.EndsWith("/left/cover", StringComparison.Ordinal));
        Assert.True(roof.ClearW / roof.PracticeW > wall.ClearW / wall.PracticeW);
        Assert.True(skies.SkyC < Result.Conditions.Heating996C - 10);
    }

    // The balance's terms add up to what its flow takes off.
    [Fact]
    public void Ventilation_terms_close()
    {
        VentilationCompared v = Result.Air.Ventilation;
        Assert.Equal(v.BalanceTerms[^1].WPerM2, v.BalanceTerms.SkipLast(1).Sum(t => t.WPerM2), 1e-9);
        // The flow was sought for the rise: what it carries is its own heat, within the vapour's share of the specific heat along the way.
        Assert.Equal(v.BalanceTerms[^1].WPerM2, v.BalanceWPerM2, 0.03 * Math.Abs(v.BalanceWPerM2));
    }

    [Fact]
    public void The_summer_way_starts_outside_and_keeps_the_wet_bulb_over_the_pad()
    {
        PlantResult plant = Year.YearScenes.Plant;
        AirWay way = AirStory.Summer(Result, plant);
        AirStep pad = way.Steps[0];
        Assert.Equal(AirAct.WetWall, pad.Act);
        Assert.Equal(Result.Air.Summer, pad.States[0]);
        Assert.Equal(pad.States[0].WetBulbC, pad.States[^1].WetBulbC, 1e-4);
        Assert.Equal(pad.States[^1], way.Steps[1].States[0]);
        Assert.True(AirStory.WetDay(Result, plant).Steps[^1].States[0].WetBulbC > way.Steps[^1].States[0].WetBulbC);
    }

    [Fact]
    public void The_winter_way_warms_without_water_and_then_takes_the_crops()
    {
        AirWay way = AirStory.WinterNight(Result);
        Assert.Equal(way.Steps[0].States[0].HumidityRatio, way.Steps[0].States[1].HumidityRatio);
        Assert.Equal(Result.NightTargetC, way.Steps[0].States[1].DryBulbC, 1e-6);
        Assert.Equal(Result.Air.Balance.LeakedKgPerS, way.Steps[1].WaterKgPerS, 1e-9);
    }

    // 31 °C and 95 % at noon in June: the heat has to go with the air, and the air wants water.
    [Fact]
    public void A_damp_noon_wish_is_told_with_what_it_takes()
    {
        Finding finding = Findings(31, 95).First(f => f.Code == "duty/damp-day-wish");
        Assert.Contains("cfm", finding.What, StringComparison.Ordinal);
        Assert.Contains("fans off", finding.What, StringComparison.Ordinal);
        Assert.DoesNotContain(Findings(31, 60), f => f.Code == "duty/damp-day-wish");
    }

    // 20 °C and 60 % has a wet bulb of 15 °C; the design day's outside air has 23.7.
    [Fact]
    public void A_wish_below_the_outside_wet_bulb_is_told_with_the_best_possible()
    {
        Finding finding = Findings(20, 60).First(f => f.Code == "duty/day-wish-below-wet-bulb");
        Assert.Contains("best possible", finding.What, StringComparison.Ordinal);
        Assert.DoesNotContain(Findings(34, 80), f => f.Code == "duty/day-wish-below-wet-bulb");
    }

    // Without fans there is no fan end: what is told is that openings bring in outside air as it is.
    [Fact]
    public void A_house_without_fans_is_not_told_of_its_fan_end()
    {
        Job job = Demo with { Houses = [.. Demo.Houses.Select(h => h with { Equipment = h.Equipment with { Exhaust = false } })] };
        EqList<Finding> found = DesignDay.Duty(job).Report.Findings;
        Assert.DoesNotContain(found, f => f.What.Contains("fan end", StringComparison.Ordinal));
        Assert.Contains(found, f => f.Code == "duty/never-above-below-outside");
        Assert.DoesNotContain(DesignDay.Duty(Demo).Report.Findings, f => f.Code == "duty/never-above-below-outside");
    }

    // The wind of the year's warm hours onto the one end is the wind away from the other: just one of them may be told to look into it.
    [Fact]
    public void Fans_that_look_into_the_wind_of_warm_hours_are_told()
    {
        bool[] told = [.. new[] { FaceName.End1, FaceName.End2 }.Select(end => DesignDay.Duty(Demo with
        {
            Houses = [.. Demo.Houses.Select(h => h with { Equipment = h.Equipment with { FanFace = end } })],
        }).Report.Findings.Any(f => f.Code == "duty/fans-face-the-wind"))];
        double push = WindRose.WarmDaylight(DesignDay.Year)!.PushM2PerS2(Demo.Site.RangeBearingDeg);
        Assert.Equal([push < 0, push > 0], told);
        Assert.Equal(push > 0, LeeEnd.Of(WindRose.WarmDaylight(DesignDay.Year), Demo.Site.RangeBearingDeg).IsEnd1);
    }

    private static IEnumerable<Finding> Findings(double dayC, double humidityPercent)
    {
        Job job = Demo with
        {
            Houses = [.. Demo.Houses.Select(h => h with { Schedule = h.Schedule.Select(p => p with { Day = new ClimateTarget(dayC, humidityPercent) }).ToEqList() })],
        };
        return DesignDay.Duty(job).Report.Findings;
    }
}
