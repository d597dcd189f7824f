using Glazewright.Cli.Running;
using Glazewright.Design.Brief.Reading;
using Glazewright.Design.Brief;
using Glazewright.Design.Catalogues;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.Pipeline;
using Glazewright.Design.Price;

namespace Glazewright.Cli.Tests.Pipeline;

/// <summary>An edit stops spreading where the output did not change; what is computed never depends on what was kept.</summary>
public class EvaluationTests
{
    private static readonly LoadedJob Loaded = Load();
    private static readonly Ground OnGround = Ground.Of(Loaded.Weather, CatalogueReader.Generic, PriceBook.Generic());

    [Fact]
    public void A_price_edit_runs_price_and_nothing_else()
    {
        StageRunner runner = new();
        _ = Evaluate(Loaded.Job, runner).Price;
        Dictionary<string, int> before = new(runner.Runs);
        Job dearer = Loaded.Job with { Pricing = Loaded.Job.Pricing with { LabourPerHour = 61 } };
        _ = Evaluate(dearer, runner).Price;
        Assert.Equal(before["price"] + 1, runner.Runs["price"]);
        Assert.All(before.Where(r => r.Key != "price"), r => Assert.Equal(r.Value, runner.Runs[r.Key]));
    }

    [Fact]
    public void An_edit_of_one_house_leaves_the_other_houses_duty_alone_when_they_share_nothing()
    {
        StageRunner runner = new();
        _ = Evaluate(Loaded.Job, runner).Program("B");
        _ = Evaluate(Loaded.Job, runner).Program("A");
        int duties = runner.Runs["duty"];
        House a = Loaded.Job.Houses[0];
        Job edited = Loaded.Job with
        {
            Houses = [a with { Schedule = a.Schedule.Select(p => p with { Night = p.Night with { TemperatureC = p.Night.TemperatureC + 1 } }).ToEqList() }, Loaded.Job.Houses[1]],
        };
        _ = Evaluate(edited, runner).Program("B");
        Assert.Equal(duties, runner.Runs["duty"]);
        _ = Evaluate(edited, runner).Program("A");
        Assert.Equal(duties + 1, runner.Runs["duty"]);
    }

    /// <summary>An alternate's difference against the price of the job edited by hand, cut lists and all. A heater cuts no hole in a wall: to the dollar. A fan does: what is bought of tube and sheet follows the net lengths, not new cut lists.</summary>
    [Theory]
    [InlineData("A", "One heater more, for when one is dead", 0.01)]
    [InlineData("B", "One heater more, for when one is dead", 0.01)]
    [InlineData("B", "One heater fewer", 0.01)]
    [InlineData("A", "One fan more of the largest", 300)]
    public void An_alternate_costs_what_the_edited_job_costs(string house, string label, double withinDollar)
    {
        StageRunner runner = new();
        Evaluation quoted = Evaluate(Loaded.Job, runner);
        PricedAlternate told = quoted.Alternates.Value.All.Single(a => a.House == house && a.Label == label);
        var plant = quoted.Plant(house).Value;
        Job edited = Loaded.Job with
        {
            Houses = Loaded.Job.Houses.Select(h => h.Id != house ? h : h with
            {
                Equipment = label.Contains("heater", StringComparison.Ordinal)
                    ? h.Equipment with { HeatersFixed = [new FixedItem(plant.Heat!.Choice.Heaters[0].Entry, plant.Heat.Choice.Heaters.Count + (label.Contains("fewer", StringComparison.Ordinal) ? -1 : 1))] }
                    : h.Equipment with
                    {
                        ExhaustFixed = plant.Exhaust!.Choice.Fans.GroupBy(f => f.Entry).Select(g => new FixedItem(g.Key, g.Count() + (g.Key == plant.Exhaust.Choice.Fans.MaxBy(f => f.DiameterM)!.Entry ? 1 : 0))).ToEqList(),
                        WetWallEntry = plant.WetWall!.Choice.Entry,
                        WetWallWidthM = plant.WetWall.Choice.WidthM,
                        WetWallHeightM = plant.WetWall.Choice.HeightM,
                    },
            }).ToEqList(),
        };
        double price = Evaluate(edited, runner).Price.Value.Quote.Price;
        Assert.True(told.IsWhole);
        Assert.Equal(price - quoted.Price.Value.Quote.Price, told.DifferencePrice, withinDollar);
        Assert.NotEqual(0, told.DifferencePrice, 100.0);
    }

    [Fact]
    [Trait("Category", "Slow")]
    public void A_thousand_random_edits_give_the_same_answers_fresh_and_incremental()
    {
        Random chance = new(20261);
        StageRunner kept = new();
        Job job = Loaded.Job;
        for (int i = 0; i < 1000; i++)
        {
            job = Edit(job, chance);
            string incremental = Hashes(Evaluate(job, kept));
            if (i % 100 == 99)
            {
                Assert.Equal(Hashes(Evaluate(job, new StageRunner())), incremental);
            }
        }

        // The test would prove nothing if the memory were never used.
        Assert.True(kept.Runs["price"] < 500);
        Assert.True(kept.Runs["gain-table"] < 100);
    }

    private static string Hashes(Evaluation all) =>
        string.Join(' ', all.Form.Hash.Hex, all.Body.Hash.Hex, all.Takeoff.Hash.Hex, all.Cuts.Hash.Hex, all.Price.Hash.Hex, all.Layout("A").Hash.Hex, all.Program("B").Hash.Hex);

    // Small palettes, so that edits are undone now and then and the memory is asked for what it has.
    private static Job Edit(Job job, Random chance)
    {
        House a = job.Houses[0];
        House b = job.Houses[1];
        int pick = chance.Next(2);
        return chance.Next(8) switch
        {
            0 => job with { Pricing = job.Pricing with { LabourPerHour = pick == 0 ? 58 : 61 } },
            1 => job with { Pricing = job.Pricing with { MarginOfPriceFraction = pick == 0 ? 0.14 : 0.16 } },
            2 => job with { Houses = [a with { Frame = a.Frame with { KerfM = pick == 0 ? 0.003 : 0.004 } }, b] },
            3 => job with { Houses = [a with { Name = pick == 0 ? "House A" : "North house" }, b] },
            4 => job with { Houses = [a, b with { AirtightnessPerHour = pick == 0 ? 0.7 : 0.9 }] },
            5 => job with { Tariffs = job.Tariffs with { WaterPerM3 = pick == 0 ? 1.58 : 2 } },
            6 => job with { Houses = [a, b with { Equipment = b.Equipment with { FogNozzles = pick == 0 ? 24 : 30 } }] },
            _ => job with { Houses = [a with { Roof = pick == 0 ? Loaded.Job.Houses[0].Roof : Steeper(a) }, b] },
        };
    }

    private static RoofProfile Steeper(House house) =>
        ((RoofSolution.Closed)RoofSolver.Solve(
            new RoofWish(Loaded.Job.Houses[0].Roof.LeftEaveM, null, Loaded.Job.Houses[0].Roof.RidgeOffsetM, 0.52, Loaded.Job.Houses[0].Roof.RightPitch),
            house.WidthM)).Profile;

    private static Evaluation Evaluate(Job job, StageRunner runner) => new(job, OnGround, runner);

    private static LoadedJob Load()
    {
        DirectoryInfo? root = new(AppContext.BaseDirectory);
        while (root is not null && !File.Exists(Path.Combine(root.FullName, "Glazewright.slnx")))
        {
            root = root.Parent;
        }

        IReadOnlyList<Fault> faults = JobLoading.Load(Path.Combine(root!.FullName, "examples", "two-ridge-herb-yard.json"), null, null, out LoadedJob? loaded);
        return faults.Count == 0 ? loaded! : throw new InvalidOperationException(string.Join("\n", faults));
    }
}
