using Glazewright.Science.Light;

namespace Glazewright.Science.Tests.Light;

public class PointLightTests
{
    // Black right side; the sun stands across the house on that side. A floor point is lit only if its ray passes below the ridge on the left slope:
    // y < ridge y − ridge z / tan(elevation).
    [Theory]
    [InlineData(60)]
    [InlineData(66)]
    [InlineData(75)]
    public void The_shadow_of_an_opaque_roof_ends_at_the_closed_form_place(double elevationDeg)
    {
        var black = new FaceCovering.Opaque(0);
        var light = new PointLight(Enclosure.Of(Houses.Gable(
            30, 8, 2.3, 2.9, 5.2, 4.9, Houses.Open, black, Houses.Open, black, Houses.Open, new FaceCovering.CropPlane(0))), Surroundings.None);
        double edgeM = 5.2 - (4.9 / Math.Tan(elevationDeg * Math.PI / 180));
        Vector3d[] points = [new(15, edgeM - 0.001, 0), new(15, edgeM + 0.001, 0)];
        double[] factor = new double[2];
        light.FromBeam(points, 90, elevationDeg, factor);
        Assert.Equal(Math.Sin(elevationDeg * Math.PI / 180), factor[0], 1e-12);
        Assert.Equal(0, factor[1]);
    }

    // Two ways to one number: rays from the floor, and faces projected on the floor. 1 % of the aperture for 3200 points of the R2
    // sequence: rows of a plain grid would run along the shadow's edge.
    [Fact]
    public void Points_over_the_floor_add_up_to_the_gain_table_s_direct_light()
    {
        Enclosure house = Houses.HalfOpaque();
        EnclosureGainTable table = EnclosureGains.Compute(house, null, SunGrid.Standard);
        var light = new PointLight(house, Surroundings.None);
        Vector3d[] points = [.. Enumerable.Range(0, 3200).Select(i => new Vector3d(30 * (i * 0.7548776662 % 1), 8 * (i * 0.5698402910 % 1), 0))];
        double[] factor = new double[points.Length];
        light.FromEvenSky(points, factor);
        Assert.Equal(table.DomeDirectOnCropM2, factor.Average() * 240, 0.01 * table.DomeDirectOnCropM2);
        for (int node = 8; node < table.Grid.Count; node += 97)
        {
            light.FromBeam(points, node % 72 * 5.0, table.Grid.ElevationsDeg[node / 72], factor);
            Assert.Equal(table.BeamDirectOnCropM2[node], factor.Average() * 240, 0.01 * table.Beam[node].ApertureM2 + 0.05);
        }
    }
}
