using CsCheck;
using Glazewright.Science.Air;
using Glazewright.Science.Crop;
using Glazewright.Science.Flow;

namespace Glazewright.Science.Tests.Flow;

public class AlongHouseTests
{
    private static readonly AirState Outside = AirState.FromWetBulb(33, 21, 97_000);

    private static AirLoad Load(double plantedM2) => new(
        SolarW: 120_000, ConductanceWPerK: 2500, OutsideC: 33, plantedM2, CropSolarWPerM2: 450, LeafAreaRatio: 2.5, SolarFactor: 0.35, DeficitWPerM2KPa: 18);

    // Without crop the march has a closed form: T_o + q/UA + (T_i − T_o − q/UA) exp(−UA/(m c)).
    [Fact]
    public void Bare_house_meets_the_closed_form() => Gen.Double[0.5, 40].Sample(flow =>
    {
        AirRun run = AlongHouse.March(Outside with { DryBulbC = 25 }, flow, Load(0));
        AirState inlet = run.Stations[0];
        double capacity = flow / inlet.VolumeM3PerKg * inlet.HeatJPerKgK;
        double settled = 33 + 120_000.0 / 2500;
        double expected = settled + (25 - settled) * Math.Exp(-2500 / capacity);
        return expected > 79 || Math.Abs(run.Stations[^1].DryBulbC - expected) < 1e-9;
    });

    [Fact]
    public void Heat_in_is_heat_out() => Gen.Select(Gen.Double[3, 40], Gen.Double[0, 200]).Sample((flow, plantedM2) =>
    {
        AirRun run = AlongHouse.March(Outside, flow, Load(plantedM2));
        double dry = flow / Outside.VolumeM3PerKg;
        double water = run.Stations[^1].HumidityRatio - Outside.HumidityRatio;
        double carried = 0;
        for (int i = 1; i < run.Stations.Count; i++)
        {
            carried += dry * run.Stations[i - 1].HeatJPerKgK * (run.Stations[i].DryBulbC - run.Stations[i - 1].DryBulbC);
        }

        return Math.Abs(120_000 - run.LossW - run.CropLatentW - carried) < 1e-3
            && Math.Abs(run.TranspirationKgPerS - dry * water) < 1e-9
            && Math.Abs(run.CropLatentW - Transpiration.LatentJPerKg * run.TranspirationKgPerS) < 1e-3;
    });

    [Fact]
    public void A_crop_cools_the_fan_end()
    {
        AirRun bare = AlongHouse.March(Outside, 12, Load(0));
        AirRun crop = AlongHouse.March(Outside, 12, Load(180));
        Assert.True(crop.Stations[^1].DryBulbC < bare.Stations[^1].DryBulbC - 1);
        Assert.True(crop.Stations[^1].HumidityRatio > bare.Stations[^1].HumidityRatio);
    }

    [Fact]
    public void Nothing_evaporates_past_saturation()
    {
        AirState damp = AirState.FromRelativeHumidity(24, 0.99, 97_000);
        AirRun run = AlongHouse.March(damp, 2, Load(200) with { SolarW = 1000, DeficitWPerM2KPa = 60, SolarFactor = 0.9 });
        Assert.All(run.Stations, s => Assert.True(s.RelativeHumidityFraction <= 1 + 1e-9));
    }

    [Fact]
    public void The_needed_flow_just_holds_the_target()
    {
        AirState pad = Outside with { DryBulbC = 24, HumidityRatio = 0.0165 };
        FlowNeed need = AlongHouse.RequiredFlow(_ => pad, Load(150), 28, 100);
        Assert.True(need.Reached);
        Assert.Equal(28, need.HottestC, 1e-4);
        Assert.True(AlongHouse.March(pad, need.FlowM3PerS * 0.98, Load(150)).HottestC > 28);
    }

    // A polar place made of normals: the hottest design hour of the year can lie far below freezing.
    [Fact]
    public void A_house_in_polar_air_needs_its_flow_too()
    {
        AirState polar = AirState.FromHumidityRatio(-42, 1e-5, 97_000);
        AirLoad load = Load(0) with { OutsideC = -42 };
        FlowNeed need = AlongHouse.RequiredFlow(_ => polar, load, -38, 100);
        Assert.True(need.Reached);
        Assert.Equal(-38, need.HottestC, 1e-4);
    }

    [Fact]
    public void A_target_below_the_outside_air_is_out_of_reach_without_a_pad()
    {
        FlowNeed need = AlongHouse.RequiredFlow(_ => Outside, Load(150), 27, 60);
        Assert.False(need.Reached);
        Assert.True(need.HottestC > 27);
    }

    [Fact]
    public void Wetter_outside_air_cannot_dry()
    {
        AirState inside = AirState.FromRelativeHumidity(18, 0.8, 97_000);
        Assert.Throws<ArgumentOutOfRangeException>(() => AlongHouse.DryingFlowM3PerS(0.01, inside, Outside));
    }
}
