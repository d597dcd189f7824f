using Glazewright.Design.Brief;
using Glazewright.Design.Catalogues;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.Layout;
using Glazewright.Design.Plant;
using Glazewright.Design.Tests.Contracts;
using Glazewright.Design.Tests.Duty;

namespace Glazewright.Design.Tests.Layout;

/// <summary>
/// Gravity vents. Capacities: table 504.2(1) of the International Fuel Gas Code (NFPA 54 table 13.1(a)), rows with no lateral, read at second hand in the 2018
/// International Residential Code's copy, G2428.2(1). Heights of caps: a vent maker's and a heater maker's print of the same table. Draft: the worked
/// example of "Steam, its generation and use", eq. 24: 100 ft of gas at 500 °F in air of 60 °F draws 0.67 in of water.
/// </summary>
public class GravityVentTests
{
    private const double FootM = 0.3048;
    private const double KiloBtuW = 293.07107;

    private static (LayoutResult Layout, BuildingForm House) Run(Job job)
    {
        FormResult form = FormStage.Run(FormInput.From(job));
        PlantResult plant = PlantStage.Run(PlantInput.From(job, "A"), form.Building("A"), DesignDay.Duty(job, "A"), CatalogueReader.Generic);
        return (LayoutStage.Run(LayoutInput.From(job, "A"), form, plant), form.Building("A"));
    }

    private static Job Open(Func<EquipmentChoice, EquipmentChoice>? also = null) => DesignDay.With(TestJobs.OneHouse(), e =>
    {
        e = e with { HeatersFixed = [new FixedItem("vented-125", 2)], SealedCombustion = false };
        return also is null ? e : also(e);
    });

    [Theory]
    [InlineData(3, 6, 46)]
    [InlineData(4, 8, 94)]
    [InlineData(5, 10, 166)]
    [InlineData(6, 15, 285)]
    [InlineData(7, 20, 430)]
    [InlineData(8, 6, 370)]
    // Half way between the rows of 10 and 15 ft, and above the table its last row.
    [InlineData(5, 12.5, 176.5)]
    [InlineData(3, 30, 61)]
    [InlineData(3, 5.9, 0)]
    public void A_straight_type_B_vent_carries_what_the_code_prints(int inches, double riseFt, double publishedKBtu) =>
        Assert.Equal(publishedKBtu, GravityRules.CapacityW(inches - 3, riseFt * FootM) / KiloBtuW, 6);

    [Theory]
    [InlineData(0, 1)]
    [InlineData(6, 1)]
    [InlineData(6.5, 1.25)]
    [InlineData(8, 1.5)]
    [InlineData(9.5, 2.5)]
    [InlineData(12, 4)]
    [InlineData(13, 5)]
    [InlineData(21, 8)]
    public void The_cap_stands_above_the_roof_by_its_pitch(double over12, double publishedFt) =>
        Assert.Equal(publishedFt, GravityRules.AboveRoofM(over12 / 12) / FootM, 9);

    // Half of the last digit of the printed 0.67 in.
    [Fact]
    public void Draft_is_the_printed_example()
    {
        double pa = GravityRules.DraftPa(100 * FootM, 14.7 * 6894.757, 273.15 + (60 - 32) / 1.8, 273.15 + (500 - 32) / 1.8);
        Assert.Equal(0.67, pa / 249.08891, tolerance: 0.005);
    }

    // Thin air draws less: at 1,500 m the standard atmosphere is at 84.56 kPa (US Standard Atmosphere 1976, from memory), 0.8345 of sea level's.
    [Fact]
    public void Thin_air_draws_less()
    {
        GravityVent At(double elevationM)
        {
            Job open = Open();
            (LayoutResult layout, _) = Run(open with { Site = open.Site with { ElevationM = elevationM } });
            return layout.Flues[0].Gravity!;
        }

        Assert.Equal(84_556, At(1500).AirPa, tolerance: 30);
        Assert.Equal(0.8345, At(1500).DraftPa / At(0).DraftPa, tolerance: 5e-4);
    }

    // 125 / 0.79 = 158 kBtu/h: 5 in carries 141 at 6 ft, 155 at 8, 166 at 10.
    [Fact]
    public void The_smallest_pipe_that_carries_the_input_goes_straight_up_through_the_roof()
    {
        (LayoutResult layout, BuildingForm house) = Run(Open());
        Assert.Equal(2, layout.Flues.Count);
        Assert.All(layout.Flues, f =>
        {
            Assert.NotNull(f.Gravity);
            Assert.Equal((0.0, 0), (f.IntakeM, f.Elbows));
            Assert.True(f.Face is FaceName.RoofLeft or FaceName.RoofRight);
            Assert.True(f.Gravity.RiseM >= 6 * FootM - 1e-9);
            double pitch = f.Face == FaceName.RoofLeft ? house.Roof.LeftPitch : house.Roof.RightPitch;
            Assert.True(f.Gravity.OverRoofM >= GravityRules.AboveRoofM(pitch) - 1e-9);
            int size = (int)Math.Round(f.VentM / 0.0254) - 3;
            Assert.True(GravityRules.CapacityW(size, f.Gravity.RiseM) >= f.InputW);
            Assert.True(GravityRules.CapacityW(size - 1, f.Gravity.RiseM) < f.InputW);
            PlacedItem heater = layout.Placed.Single(p => p.Id == f.Heater);
            PlacedItem pipe = layout.Placed.Single(p => p.Id == f.Heater + "/vent");
            Assert.Equal(heater.Corner.ZM + heater.Size.ZM, pipe.Corner.ZM, 9);
            Assert.Equal(f.HeightM, pipe.Corner.ZM + pipe.Size.ZM, 9);
            Assert.Equal(f.VentM, pipe.Size.XM, 9);
        });
    }

    [Fact]
    public void Exhaust_fans_that_pull_harder_than_the_draft_are_a_danger()
    {
        (LayoutResult layout, _) = Run(Open());
        Assert.All(layout.Flues, f => Assert.True(f.Gravity!.FansPullPa > f.Gravity.DraftPa));
        Assert.Equal(2, layout.Report.Findings.Count(f => f.Code == "layout/flue-reversed" && f.Severity == Severity.Danger));
        (LayoutResult still, _) = Run(Open(e => e with { Exhaust = false, WetWall = false }));
        Assert.All(still.Flues, f => Assert.Equal(0, f.Gravity!.FansPullPa));
        Assert.DoesNotContain(still.Report.Findings, f => f.Code == "layout/flue-reversed");
    }

    // A door top at 2 m under the roof's edge asks nothing; an intake at 4 m within 10 ft lifts the cap to 4 m + 3 ft.
    [Theory]
    [InlineData(false, false, 1, 1, 5 + FootM)]
    [InlineData(false, false, 1.3, 1, 0)]
    [InlineData(false, true, 3, 1, 5 + 3 * FootM)]
    [InlineData(true, false, 3.1, 1, 0)]
    public void Openings_near_it_lift_the_cap(bool forced, bool drawn, double besideM, double highM, double leastM)
    {
        var opening = new AirOpening("louver", new Point3(0, 0, 5 - highM), new Point3(1, 0, highM), forced, drawn);
        Assert.Equal(leastM, FlueRules.LeastCapM(new Point3(1 + besideM, 0, 4), opening), 9);
    }

    [Fact]
    public void A_boiler_has_its_pipe_sized_and_says_that_it_has_no_place()
    {
        (LayoutResult layout, _) = Run(DesignDay.With(TestJobs.OneHouse(), e => e with { BenchPipeW = 30_000 }));
        FlueLine boiler = layout.Flues.Single(f => f.Unplaced);
        Assert.Equal(30_000 / 0.85, boiler.InputW, 6);
        Assert.Equal(5 * 0.0254, boiler.VentM, 9);
        Assert.Null(boiler.Face);
        Assert.Contains(layout.Report.Findings, f => f.Code == "layout/boiler-place");
        Job none = TestJobs.OneHouse();
        none = none with { Utilities = none.Utilities with { Fuel = FuelKind.None } };
        Assert.Empty(Run(DesignDay.With(none, e => e with { BenchPipeW = 30_000 })).Layout.Flues);
    }
}
