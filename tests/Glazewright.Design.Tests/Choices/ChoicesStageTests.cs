using Glazewright.Design.Brief;
using Glazewright.Design.Catalogues;
using Glazewright.Design.Choices;
using Glazewright.Design.Contracts;
using Glazewright.Design.Duty;
using Glazewright.Design.Form;
using Glazewright.Design.Plant;
using Glazewright.Design.Price;
using Glazewright.Design.Tests.Duty;

namespace Glazewright.Design.Tests.Choices;

public class ChoicesStageTests
{
    private static (ChoicesResult Choices, PlantResult Plant, DutyResult Duty) Run(Job job)
    {
        BuildingForm form = FormStage.Run(FormInput.From(job)).Building("A");
        DutyResult duty = DesignDay.Duty(job);
        PlantResult plant = PlantStage.Run(PlantInput.From(job, "A"), form, duty, CatalogueReader.Generic);
        return (ChoicesStage.Run(ChoicesInput.From(job, "A"), form, duty, plant, CatalogueReader.Generic), plant, duty);
    }

    private static Alternative The(ChoicesResult c, string label) => c.Alternatives.Single(a => a.Label.StartsWith(label, StringComparison.Ordinal));

    [Fact]
    public void The_first_is_the_plant_as_chosen()
    {
        (ChoicesResult choices, PlantResult plant, _) = Run(TestJobs.OneHouse());
        Alternative chosen = choices.Alternatives[0];
        Assert.Equal(plant.Exhaust!.Choice.Wet[^1].FlowM3PerS, chosen.FlowM3PerS, 1e-9);
        Assert.Equal(plant.Heat!.Choice.Heaters.Sum(h => h.OutputW), chosen.HeatW, 1e-6);
        Assert.Equal(plant.Heat.Choice.OneOutHoldsOpenC, chosen.OneOutC, 1e-9);
        Assert.Empty(choices.Fixed);
    }

    // Nature's order: fewer fans, hotter; no water, hottest; pad and fog cooler than the pad alone; a second curtain saves, none costs.
    [Fact]
    public void Alternatives_go_the_way_nature_has_them()
    {
        (ChoicesResult choices, _, DutyResult duty) = Run(TestJobs.OneHouse());
        Alternative chosen = choices.Alternatives[0];
        Assert.True(The(choices, "One fan fewer").HottestC > chosen.HottestC);
        Assert.True(The(choices, "One fan more").HottestC < chosen.HottestC + 0.5);
        Assert.True(The(choices, "Neither").HottestC > The(choices, "Fog alone").HottestC);
        Assert.True(The(choices, "Neither").HottestC > duty.Air.Summer.DryBulbC);
        Assert.True(The(choices, "Wet wall and fog").HottestC < chosen.HottestC);
        Assert.Equal(0, The(choices, "Neither").WaterKgPerS);
        Assert.True(The(choices, "Two curtains").NightLossW < chosen.NightLossW && chosen.NightLossW < The(choices, "No curtain").NightLossW);
        Alternative electric = The(choices, "Electric");
        Assert.Equal(0, electric.NightFuelW);
        Assert.Equal(chosen.NightLossW, electric.NightPowerW, 1);
        Assert.True(chosen.NightFuelW > chosen.NightLossW);
        Assert.Equal(duty.Conditions.Heating996C, The(choices, "Hot-water").OneOutC, 1e-9);
        Assert.True(The(choices, "One heater more").OneOutC >= chosen.OneOutC);
    }

    // What we would take passes our own findings: sealed burners beside fans, and a pad named by its kind.
    [Fact]
    public void What_we_would_take_is_sealed_and_names_its_pad()
    {
        Job job = DesignDay.With(TestJobs.OneHouse(), e => e with { WetWall = true, WetWallEntry = "pad-4", WetWallWidthM = 2.4, WetWallHeightM = 0.9, SealedCombustion = false, HeatersFixed = [new FixedItem("vented-125", 1)] });
        (ChoicesResult choices, PlantResult plant, _) = Run(job);
        FixedChoice heat = choices.Fixed.Single(f => f.What.StartsWith("Heaters", StringComparison.Ordinal));
        Assert.DoesNotContain("vented", heat.Ours, StringComparison.Ordinal);
        FixedChoice pad = choices.Fixed.Single(f => f.What.StartsWith("Wet wall", StringComparison.Ordinal));
        Assert.StartsWith("pad-", pad.Ours, StringComparison.Ordinal);
        Finding fans = plant.Report.Findings.Single(f => f.Code == "plant/fans-short");
        Assert.Equal("Enlarge the pad.", fans.Mend);
        Assert.Contains("A fan more gains little against it.", fans.What, StringComparison.Ordinal);
    }

    [Fact]
    public void A_fixed_choice_says_what_it_holds_and_by_how_much_it_falls_short()
    {
        Job job = DesignDay.With(TestJobs.OneHouse(), e => e with { ExhaustFixed = [new FixedItem("exhaust-24", 1)], HeatersFixed = [new FixedItem("electric-10", 1)], CurtainHeightM = 2.59 });
        (ChoicesResult choices, PlantResult plant, DutyResult duty) = Run(job);
        FixedChoice fans = choices.Fixed.Single(f => f.What.StartsWith("Fans", StringComparison.Ordinal));
        Assert.Equal(plant.Exhaust!.Choice.Wet[^1].FlowM3PerS / duty.VentilationM3PerS - 1, fans.MarginFraction!.Value, 1e-9);
        Assert.True(fans.MarginFraction < -0.3);
        Assert.Contains("cfm", fans.Ours, StringComparison.Ordinal);
        Assert.True(choices.Fixed.Single(f => f.What.StartsWith("Heaters", StringComparison.Ordinal)).MarginFraction < -0.5);
        Assert.Contains("cannot close", choices.Fixed.Single(f => f.What.StartsWith("Curtain", StringComparison.Ordinal)).Holds, StringComparison.Ordinal);
    }

    // What the job types beside fans and heaters has its row too.
    [Fact]
    public void Pipe_vents_gas_dryer_lamps_and_cloth_have_their_rows()
    {
        Job job = DesignDay.With(TestJobs.OneHouse(), e => e with
        {
            Exhaust = false,
            WetWall = false,
            Heaters = false,
            BenchPipeW = 10_000,
            RoofVentFraction = 0.1,
            SideVentFraction = 0.1,
            DehumidifierW = 3000,
            Co2Ppm = 900,
            LampW = 6400,
            OscillatingFans = 1,
            InsectScreenPorosityFraction = 0.3,
        });
        (ChoicesResult choices, PlantResult plant, DutyResult duty) = Run(job);
        FixedChoice Row(string start) => choices.Fixed.Single(f => f.What.StartsWith(start, StringComparison.Ordinal));
        Assert.Equal(10_000 / HeatAsked.Of(duty, null).NeedW - 1, Row("Bench pipe").MarginFraction!.Value, 1e-9);
        Assert.Contains("×", Row("Bench pipe").Ours, StringComparison.Ordinal);
        Assert.Contains("exhaust", Row("Vents").Ours, StringComparison.Ordinal);
        Assert.Equal(3000 * 2 / 3.6e6 / duty.NightMoistureKgPerS - 1, Row("Dehumidifier").MarginFraction!.Value, 1e-9);
        Assert.StartsWith("20 lamps", Row("20 lamps").What, StringComparison.Ordinal); // 6,400 W over 320 W
        Assert.Null(Row("Insect cloth").MarginFraction);
        Assert.NotNull(Row("Carbon dioxide").MarginFraction);
        Assert.NotNull(Row("1 oscillating fan").MarginFraction);
        Assert.NotNull(plant.Vents);
    }

    // By hand: a second curtain is its cloth, wire and drive, by price and hours of the book.
    [Fact]
    public void First_cost_is_quantity_times_price_and_hours()
    {
        (ChoicesResult choices, _, _) = Run(TestJobs.OneHouse());
        Job job = TestJobs.OneHouse();
        PriceBook book = PriceBook.Generic();
        Alternative two = The(choices, "Two curtains");
        double more = ChoiceCosts.Of(two, job.Pricing, book).Cost - ChoiceCosts.Of(choices.Alternatives[0], job.Pricing, book).Cost;
        double cloth = choices.Alternatives[0].Lines.Single(l => l.Item == "curtain/cloth").Quantity;
        double wire = choices.Alternatives[0].Lines.Single(l => l.Item == "curtain/wire").Quantity;
        double byHand = cloth * (22 + 0.05 * 58) + wire * (2.4 + 0.012 * 58) + 4900 + 22 * 58;
        Assert.Equal(byHand, more, 0.01);
        Assert.All(choices.Alternatives, a => Assert.Empty(ChoiceCosts.Of(a, job.Pricing, book).WithoutPrice));
    }
}
