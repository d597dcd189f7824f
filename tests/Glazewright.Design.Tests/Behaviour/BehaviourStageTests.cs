using Glazewright.Design.Behaviour;
using Glazewright.Design.Brief;
using Glazewright.Design.Catalogues;
using Glazewright.Design.Choices;
using Glazewright.Design.Contracts;
using Glazewright.Design.Duty;
using Glazewright.Design.Form;
using Glazewright.Design.Layout;
using Glazewright.Design.Pipeline;
using Glazewright.Design.Plant;
using Glazewright.Design.Tests.Duty;
using Glazewright.Science.Flow;

namespace Glazewright.Design.Tests.Behaviour;

public class BehaviourStageTests
{
    private sealed record Scene(BehaviourResult Result, PlantResult Plant, DutyResult Duty, BuildingForm Form);

    private static Scene Run(Func<EquipmentChoice, EquipmentChoice> change)
    {
        Job job = DesignDay.With(TestJobs.OneHouse(), change);
        FormResult form = FormStage.Run(FormInput.From(job));
        DutyResult duty = DesignDay.Duty(job);
        PlantResult plant = PlantStage.Run(PlantInput.From(job, "A"), form.Building("A"), duty, CatalogueReader.Generic);
        LayoutResult layout = LayoutStage.Run(LayoutInput.From(job, "A"), form, plant);
        return new Scene(BehaviourStage.Run(PlantInput.From(job, "A"), form.Building("A"), duty, plant, layout, CatalogueReader.Generic), plant, duty, form.Building("A"));
    }

    /// <summary>US fuel gas code, sections 304.5 and 304.6, from memory: an appliance of 200,000 Btu/h.</summary>
    [Fact]
    public void Open_flues_take_the_codes_room_and_openings()
    {
        CombustionAir air = CombustionAir.For(58_614.2, 200);
        const double In2 = 0.00064516;
        Assert.Equal(10_000, air.RoomNeededM3 / 0.0283168, 1.0);
        Assert.Equal(50, air.OutdoorM2 / In2, 0.01);
        Assert.Equal(100, air.LevelDuctM2 / In2, 0.01);
        Assert.Equal(200, air.IndoorM2 / In2, 0.01);
        Assert.Equal(100, CombustionAir.For(10_000, 200).IndoorM2 / In2, 0.01);
        Assert.False(air.RoomEnough);
        Assert.Null(Run(e => e).Result.Combustion);
        Assert.True(Run(e => e with { SealedCombustion = false }).Result.Combustion!.InputW > 0);
    }

    [Fact]
    public void Louvers_that_open_less_and_wind_that_blows_more_leave_less_air()
    {
        Scene s = Run(e => e);
        ExhaustBehaviour x = s.Result.Exhaust!;
        for (int i = 1; i < x.ByAngle.Count; i++)
        {
            Assert.True(x.ByAngle[i].FlowM3PerS > x.ByAngle[i - 1].FlowM3PerS);
            Assert.True(x.ByAngle[i].StaticPa < x.ByAngle[i - 1].StaticPa);
        }

        for (int i = 1; i < x.ByWind.Count; i++)
        {
            Assert.True(x.ByWind[i].FlowM3PerS < x.ByWind[i - 1].FlowM3PerS);
        }

        Assert.Equal(s.Plant.Exhaust!.Choice.Dry[^1].FlowM3PerS, x.ByAngle[^1].FlowM3PerS, 1e-6);
        Assert.Equal(s.Plant.Exhaust.Choice.Wet[^1].FlowM3PerS, x.ByWind[0].FlowM3PerS, 1e-6);
    }

    // Fans that fall short, with a screen: the table's first row is still the plant's own point, through the same louvers and cloth.
    [Theory]
    [InlineData(true), InlineData(false)]
    public void The_table_of_wind_begins_at_the_plants_point_whatever_the_job_fixes(bool fallsShort)
    {
        Scene s = Run(e => e with
        {
            ExhaustFixed = [new FixedItem("exhaust-24", fallsShort ? 1 : 2), new FixedItem(fallsShort ? "exhaust-36" : "exhaust-54", fallsShort ? 1 : 3)],
            InsectScreenPorosityFraction = 0.35,
        });
        Assert.Equal(s.Plant.Exhaust!.Choice.Dry[^1].FlowM3PerS, s.Result.Exhaust!.ByAngle[^1].FlowM3PerS, 1e-6);
        Assert.Equal(s.Plant.Exhaust.Choice.Wet[^1].FlowM3PerS, s.Result.Exhaust.ByWind[0].FlowM3PerS, 1e-6);
    }

    // A roof vent without side vents breathes by itself (before, it was told to pass nothing); both together pass more than either.
    [Fact]
    public void Roof_vents_alone_are_not_nothing()
    {
        Scene s = Run(e => e with { RoofVentFraction = 0.2, SideVentFraction = 0 });
        KindSized roof = s.Result.Kinds[0];
        double stack = Openings.OneSidedM3PerS(0.2 * s.Form.FloorAreaM2, 0.6, 0.65, s.Duty.Air.Summer.DryBulbC + 4, s.Duty.Air.Summer.DryBulbC, 0.09, 0);
        Assert.True(stack > 0.5);
        Assert.StartsWith(PlantWords.Cfm(stack) + " cfm by warmth alone", roof.Holds, StringComparison.Ordinal);
        Assert.Contains("roof alone", roof.Size, StringComparison.Ordinal);
    }

    // On a mountain a cubic metre of air carries less heat: the same loop brings it back colder.
    [Fact]
    public void Thin_air_comes_back_colder()
    {
        Scene low = Run(e => e);
        double sea = low.Duty.PressurePa;
        MixingBehaviour At(double pressurePa)
        {
            DutyResult duty = low.Duty with { PressurePa = pressurePa };
            return HeatBehaviour.Mixing(low.Form, duty, low.Plant, CatalogueReader.Generic)!;
        }

        Assert.Equal(At(sea).SpreadK / 0.8, At(0.8 * sea).SpreadK, 1e-9);
    }

    // The same balance by another way: the fan end of the table is that of the side-by-side, and a house of the farthest length warms by just the rise.
    [Fact]
    public void Air_along_the_house_ends_where_the_comparison_says()
    {
        Scene s = Run(e => e);
        AirAt[] along = [.. s.Result.Exhaust!.Along];
        Assert.Equal(5, along.Length);
        Assert.Equal(0, along[0].FromIntakeM);
        Assert.Equal(s.Form.LengthM, along[^1].FromIntakeM, 1e-9);
        bool reaches = along[^1].DryBulbC - along[0].DryBulbC <= 4 + 1e-6;
        Assert.Equal(reaches, s.Result.Exhaust.FarthestM >= s.Form.LengthM - 1e-3);
        Assert.True(along.Zip(along.Skip(1)).All(p => p.Second.DryBulbC > p.First.DryBulbC));
    }

    // Heat is conserved: what goes in leaves below and above; a wider gap cools below and warms above.
    [Fact]
    public void A_wider_gap_cools_below_warms_above_and_loses_no_heat()
    {
        Scene s = Run(e => e);
        CurtainBehaviour c = s.Result.Curtain!;
        double above = DutyStage.Above(s.Duty.Losses, s.Form, s.Plant.Curtain!.HeightM);
        double outsideC = s.Duty.Conditions.Heating996C;
        foreach (GapAt gap in c.Night)
        {
            double lost = (s.Duty.LossWPerK - above) * (gap.BelowC - outsideC) + above * (gap.AboveC - outsideC);
            Assert.Equal(s.Duty.HeatLossDrawnW, lost, 1e-6 * lost);
        }

        Assert.Equal(s.Duty.NightTargetC, c.Night[0].BelowC, 1e-6);
        for (int i = 1; i < c.Night.Count; i++)
        {
            Assert.True(c.Night[i].BelowC < c.Night[i - 1].BelowC && c.Night[i].AboveC > c.Night[i - 1].AboveC);
        }

        Assert.True(c.HalfOpenC < c.Night[^1].BelowC);
    }

    // The morning's two balances, put back by hand: sun in, out through both shells, between them the cloth that is drawn and, while below is the warmer, the air that trades places.
    [Fact]
    public void On_a_sunny_morning_a_gap_warms_below()
    {
        Scene s = Run(e => e);
        CurtainBehaviour c = s.Result.Curtain!;
        CurtainPlant cloth = s.Plant.Curtain!;
        double above = DutyStage.Above(s.Duty.Losses, s.Form, cloth.HeightM), below = s.Duty.LossWPerK - above, outsideC = s.Duty.Conditions.Heating996C;
        double clothM2 = SmallSystems.WidthAtM(s.Form, cloth.HeightM) * s.Form.LengthM;
        foreach (GapAt gap in c.Morning)
        {
            double open = gap.GapM * s.Form.LengthM / clothM2;
            double sun = c.MorningSunWm2 * clothM2 * (0.6 * (open + (1 - open) * cloth.SolarTransmittanceFraction) + (1 - open) * (1 - cloth.SolarTransmittanceFraction - cloth.SolarReflectanceFraction));
            double lost = below * (gap.BelowC - outsideC) + above * (gap.AboveC - outsideC);
            Assert.Equal(sun, lost, 1e-6 * sun);
        }

        for (int i = 1; i < c.Morning.Count; i++)
        {
            Assert.True(c.Morning[i].BelowC > c.Morning[i - 1].BelowC);
        }
    }

    [Fact]
    public void Fog_falls_farther_in_damp_air_and_finer_fog_less()
    {
        FogBehaviour fine = Run(e => e with { Fog = true, FogEntry = "fog-3000" }).Result.Fog!;
        FogBehaviour coarse = Run(e => e with { Fog = true, FogEntry = "mist-60" }).Result.Fog!;
        Assert.True(coarse.FallM > 10 * fine.FallM);
        Assert.True(fine.RoomKgPerS > 0 && fine.VentedFraction is > 0 and <= 1);
        FogBehaviour dry = Run(e => e with { Fog = true, WetWall = false }).Result.Fog!;
        Assert.True(dry.RoomKgPerS > fine.RoomKgPerS && dry.DampFallM > dry.FallM && dry.FallM < 1);
    }

    // What the fog is counted to cool with must fit into the air that is told to take it.
    [Fact]
    public void The_air_takes_what_the_hottest_day_counts_on()
    {
        Scene s = Run(e => e with { Fog = true, WetWall = false });
        FogCooling cooling = s.Plant.Fog!.Choice.Cooling!;
        Assert.True(cooling.WaterKgPerS > 0 && cooling.WaterKgPerS <= s.Result.Fog!.RoomKgPerS);
        Assert.True(s.Result.Fog.VentedFraction <= s.Plant.Fog.Choice.EvaporatedFraction + 1e-9);
    }

    [Fact]
    public void Wind_and_an_open_door_take_the_pressure_away()
    {
        PressureBehaviour p = Run(e => e with { PositivePressurePa = 5 }).Result.Pressure!;
        Assert.Equal(5, p.ByWind[0].HousePa, 1e-6);
        Assert.Equal(0, p.ByWind[0].UnfilteredM3PerS, 1e-9);
        Assert.True(p.ByWind[^1].LeastPa < 0 && p.ByWind[^1].UnfilteredM3PerS > 0);
        Assert.True(p.DoorOpenPa < 0.5);
    }

    [Fact]
    public void Other_kinds_are_sized_and_the_result_has_a_hash()
    {
        Scene s = Run(e => e with { LampW = 4500, RoofVentFraction = 0.2, SideVentFraction = 0.2, PositivePressurePa = 3, Fog = true });
        Assert.Equal(["Roof and side vents", "Hot-water pipe", "Lamps", "A second curtain", "CO₂ dosing", "Dehumidifier"], s.Result.Kinds.Select(k => k.Kind));
        Assert.Equal(2, s.Result.Kinds.Count(k => k.InJob));
        Assert.Equal(Canonical.Hash(s.Result), Canonical.Hash(Run(e => e with { LampW = 4500, RoofVentFraction = 0.2, SideVentFraction = 0.2, PositivePressurePa = 3, Fog = true }).Result));
    }

    [Fact]
    public void A_house_without_systems_has_no_behaviour_of_them()
    {
        BehaviourResult none = Run(e => e with { Exhaust = false, WetWall = false, Heaters = false, Curtains = 0, Circulation = false }).Result;
        Assert.Null(none.Exhaust);
        Assert.Null(none.Fog);
        Assert.Null(none.Mixing);
        Assert.Null(none.Curtain);
        Assert.Null(none.Pressure);
    }
}
