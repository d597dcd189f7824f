using Glazewright.Design.Contracts;
using Glazewright.Design.LightMaps;
using Glazewright.Papers.Charts;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Svg;
using Glazewright.Web.Jobs;

namespace Glazewright.Web.Tests.Jobs;

[Trait("Category", "Slow")]
public sealed class SceneLightTests(Desk desk) : IClassFixture<Desk>
{
    [Fact]
    public async Task A_months_map_has_a_colour_a_cell_on_one_scale_for_the_year()
    {
        JobSession window = await desk.WindowAsync((await desk.JobAsync()).Id);
        LightMap map = window.Evaluate(window.View!.Light!.Loaded, CancellationToken.None).LightMap("A").Value;
        SceneLight december = SceneLight.Of(map, 355)!;
        SceneLight june = SceneLight.Of(map, 172)!;
        Assert.Equal(map.CountX * map.CountY * 4, december.Colours.Length);
        Assert.Equal(december.MostMolPerM2Day, june.MostMolPerM2Day);
        Assert.Equal(map.Months.Max(m => m.PointMolPerM2Day.Max()), june.MostMolPerM2Day);
        Assert.Contains("December", december.Words, StringComparison.Ordinal);
        Assert.Equal(december.Words, SceneLight.Of(map, 336)!.Words);

        // Dark is little: December is darker than June in every cell, and a cell's colour is that of its share of the most.
        for (int i = 0; i < map.CountX * map.CountY; i++)
        {
            Assert.True(Grey(december, i) <= Grey(june, i), $"cell {i}");
        }

        int rgb = Ramp.Sequential.At(map.Months[5].PointMolPerM2Day[7] / june.MostMolPerM2Day);
        Assert.Equal((rgb >> 16, (rgb >> 8) & 255, rgb & 255), (june.Colours[28], june.Colours[29], june.Colours[30]));
        Assert.Null(SceneLight.Of(map with { Months = EqList<LightMonth>.Empty }, 355));
    }

    // Benches shade the floor: it is darker in every month, on the same scale, and in a grid of its own.
    [Fact]
    public async Task The_floor_has_a_map_of_its_own_below_benches_on_the_same_scale()
    {
        JobSession window = await desk.WindowAsync((await desk.JobAsync()).Id);
        LightMap map = window.Evaluate(window.View!.Light!.Loaded, CancellationToken.None).LightMap("A").Value;
        LightPlane floor = SceneLight.FloorOf(map)!;
        (SceneLight bench, SceneLight below) = (SceneLight.Of(map, 172)!, SceneLight.Of(map, 172, onFloor: true)!);
        Assert.Equal((floor.CountU, floor.CountV, 0.0), (below.Columns, below.Rows, below.HeightM));
        Assert.Equal(floor.CountU * floor.CountV * 4, below.Colours.Length);
        Assert.Equal(bench.MostMolPerM2Day, below.MostMolPerM2Day);
        Assert.True(floor.Months[5].MeanMolPerM2Day < map.Months[5].MeanMolPerM2Day);
        Assert.Contains("on the floor, below and between the benches", below.Words, StringComparison.Ordinal);
        int rgb = Ramp.Sequential.At(floor.Months[5].PointMolPerM2Day[3] / below.MostMolPerM2Day);
        Assert.Equal((rgb >> 16, (rgb >> 8) & 255, rgb & 255), (below.Colours[12], below.Colours[13], below.Colours[14]));
        Assert.Null(SceneLight.FloorOf(map with { Others = EqList<LightPlane>.Empty }));
        Assert.Equal(bench, SceneLight.Of(map with { Others = EqList<LightPlane>.Empty }, 172, onFloor: true)! with { Colours = bench.Colours });
    }

    [Fact]
    public void Bars_are_as_long_as_their_shares_and_tell_their_numbers()
    {
        Sheet sheet = LevelBars.Draw("bars", "Costs, $", [new("glass", 1, "$200"), new("steel", 0.25, "$50"), new("fans", 0, "$0")], 100);
        double[] lengths = [.. sheet.OnPaper.OfType<Entity.Fill>().Select(f => f.Rings[0].Max(p => p.X) - f.Rings[0].Min(p => p.X))];
        Assert.Equal(3, lengths.Length);
        Assert.Equal(0.25, lengths[1] / lengths[0], 9);
        Assert.True(lengths[2] < 0.5);
        Assert.Contains("steel: $50", SvgWriter.InPage(sheet), StringComparison.Ordinal);
    }

    private static int Grey(SceneLight map, int cell) => map.Colours[4 * cell] * 3 + map.Colours[4 * cell + 1] * 6 + map.Colours[4 * cell + 2];
}
