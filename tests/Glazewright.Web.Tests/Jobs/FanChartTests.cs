using Glazewright.Design.Catalogues;
using Glazewright.Design.Contracts;
using Glazewright.Design.Plant;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Plant;
using Glazewright.Papers.Reports;
using Glazewright.Science.Flow;
using Glazewright.Web.Jobs;

namespace Glazewright.Web.Tests.Jobs;

public sealed class FanChartTests(Desk desk) : IClassFixture<Desk>
{
    [Fact]
    public async Task The_points_where_fans_and_house_meet_lie_on_the_drawn_curves()
    {
        JobSession window = await desk.WindowAsync((await desk.JobAsync()).Id);
        HouseAnswers house = window.View!.Light!.Houses[0];
        ExhaustPlant plant = house.Plant.Exhaust!.Choice;
        double density = house.Duty.Air.Summer.DensityKgPerM3;
        Assert.True(plant.Fans.Count > 1);

        // The density is that of the sizing: the curves at it give the sizing's own points.
        FanCurve[] curves = [.. plant.Fans.Select(f => FanCurve.Through(CatalogueReader.Generic.Fans.First(e => e.Id == f.Entry).Points).AtDensity(density))];
        Assert.All(plant.Wet, p => Assert.Equal(p.FlowM3PerS, curves.Take(p.FansOn).Sum(c => c.At(p.StaticPa).FlowM3PerS), p.FlowM3PerS * 1e-3));

        Block.Picture picture = FanChart.Of("A", plant, density, CatalogueReader.Generic, UnitSystem.Us, 190)!;
        Entity.Polyline[] lines = [.. picture.Drawing.OnPaper.OfType<Entity.Polyline>().Where(l => l.Role == Role.Curve)];
        Assert.Equal(plant.Fans.Count + 1, lines.Length);
        Spot[] points = [.. picture.Drawing.OnPaper.OfType<Entity.Fill>().Select(f => new Spot(f.Rings[0].Average(p => p.X), f.Rings[0].Average(p => p.Y)))];
        Assert.Equal(plant.Wet.Count, points.Length);
        for (int n = 0; n < points.Length; n++)
        {
            Assert.InRange(FromMm(points[n], lines[n]), 0, 0.2);
            Assert.InRange(FromMm(points[n], lines[^1]), 0, 1e-6);
        }

        Assert.Equal(plant.Wet.Count, picture.Numbers!.Rows.Count);
        Assert.Null(FanChart.Of("A", plant with { Fans = [plant.Fans[0] with { Entry = "no-such-fan" }] }, density, CatalogueReader.Generic, UnitSystem.Us, 190));
        Assert.Null(FanChart.Of("A", plant with { Fans = [] }, density, CatalogueReader.Generic, UnitSystem.Us, 190));
    }

    private static double FromMm(Spot spot, Entity.Polyline line) => line.Points.Zip(line.Points.Skip(1)).Min(s =>
    {
        (double dx, double dy) = (s.Second.X - s.First.X, s.Second.Y - s.First.Y);
        double along = Math.Clamp(((spot.X - s.First.X) * dx + (spot.Y - s.First.Y) * dy) / Math.Max(1e-12, dx * dx + dy * dy), 0, 1);
        return Math.Sqrt(Math.Pow(spot.X - s.First.X - along * dx, 2) + Math.Pow(spot.Y - s.First.Y - along * dy, 2));
    });
}
