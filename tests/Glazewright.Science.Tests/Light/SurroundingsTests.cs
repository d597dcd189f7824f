using Glazewright.Science.Light;
using Glazewright.Science.Light.Shadows;

namespace Glazewright.Science.Tests.Light;

public class SurroundingsTests
{
    private static readonly FaceCovering.Opaque Black = new(0);

    // Only the left wall (y = 0, 2.3 m high) lets light in.
    private static readonly Enclosure OneWall = Enclosure.Of(Houses.Gable(
        30, 8, 2.3, 2.9, 5.2, 4.9, Houses.Open, Black, Black, Black, Black, new FaceCovering.CropPlane(0)));

    // A long wall of height 4, gap 6 m: its shadow reaches up the house's wall to 4 − 6 tan(elevation).
    [Theory]
    [InlineData(10)]
    [InlineData(20)]
    [InlineData(30)]
    [InlineData(50)]
    public void A_long_neighbour_shades_the_wall_up_to_the_closed_form_height(double elevationDeg)
    {
        double shadowM = Math.Clamp(4 - (6 * Math.Tan(elevationDeg * Math.PI / 180)), 0, 2.3);
        GainRow row = Row(OneWall, elevationDeg, -90, Box("n", -500, 530, -10, -6, 4, 0));
        Assert.Equal(30 * (2.3 - shadowM) * Math.Cos(elevationDeg * Math.PI / 180), row.ApertureM2, 1e-6);
        Assert.Equal(row.ApertureM2, row.PartsM2, 1e-9 * Math.Max(1, row.ApertureM2));
    }

    [Fact]
    public void Overlapping_neighbours_shade_as_their_union()
    {
        GainRow one = Row(OneWall, 12, -70, Box("whole", 0, 30, -10, -6, 4, 0));
        GainRow two = Row(OneWall, 12, -70, Box("left", 0, 20, -10, -6, 4, 0), Box("right", 10, 30, -10, -6, 4, 0));
        Assert.Equal(one.ApertureM2, two.ApertureM2, 1e-6);
        Assert.Equal(one.CropPlaneM2, two.CropPlaneM2, 1e-6);
    }

    [Fact]
    public void A_neighbour_behind_the_house_takes_nothing()
    {
        GainRow alone = Row(OneWall, 20, -90);
        GainRow backed = Row(OneWall, 20, -90, Box("behind", -50, 80, 12, 20, 9, 0));
        Assert.Equal(alone, backed);
    }

    [Fact]
    public void A_neighbour_that_passes_half_takes_half()
    {
        double alone = Row(OneWall, 20, -90).ApertureM2;
        double dark = Row(OneWall, 20, -90, Box("n", 3, 20, -10, -6, 4, 0)).ApertureM2;
        double half = Row(OneWall, 20, -90, Box("n", 3, 20, -10, -6, 4, 0.5)).ApertureM2;
        double none = Row(OneWall, 20, -90, Box("n", 3, 20, -10, -6, 4, 1)).ApertureM2;
        Assert.Equal((alone + dark) / 2, half, 1e-9);
        Assert.Equal(alone, none, 1e-9);
        Assert.True(dark < alone);
    }

    // Shadows drawn on the floor and faces projected on it must tell of the same shadow.
    [Fact]
    public void Drawing_and_projection_agree_behind_a_neighbour()
    {
        Enclosure house = Houses.HalfOpaque();
        Surroundings around = Surroundings.Of([Box("n", 5, 22, -9, -4, 5, 0.3)], []);
        var floor = ReceivingPlane.Of(default, new Vector3d(1, 0, 0), new Vector3d(0, 1, 0), 30, 8, 40, 20);
        var scan = new BeamScan(house, around, floor, ScanFineness.Usual);
        double[] factor = new double[floor.Count];
        List<Piece> pieces = Pieces.Of(house, null);
        var tracer = new BeamTracer(pieces, new BarCatch(pieces, new BarPicture(house), true), around);
        var open = new BeamTracer(pieces, new BarCatch(pieces, new BarPicture(house), true), Surroundings.None);
        foreach ((double azimuthDeg, double elevationDeg) in new[] { (-90.0, 15.0), (-60, 25), (-125, 8), (-100, 40) })
        {
            var towards = Vector3d.Towards(azimuthDeg, elevationDeg);
            tracer.Follow(towards);
            open.Follow(towards);
            double direct = tracer.DirectOnCropM2;
            double whole = open.ApertureM2;
            scan.Look(towards, factor);
            Assert.Equal(direct, factor.Average() * 240, (0.003 * whole) + 0.02);
            Assert.True(tracer.ApertureM2 <= whole + 1e-9);
        }
    }

    [Fact]
    public void Light_from_below_the_skyline_does_not_come()
    {
        Surroundings hills = Surroundings.Of([], [new SkylinePoint(-90, 20), new SkylinePoint(90, 0)]);
        Assert.Equal(20, hills.SkylineDeg(270), 1e-9);
        Assert.Equal(10, hills.SkylineDeg(0), 1e-9);
        Assert.Equal(10, hills.SkylineDeg(180), 1e-9);
        Assert.Equal(0, Traced(OneWall, hills, -90, 19).ApertureM2);
        Assert.True(Traced(OneWall, hills, -90, 21).ApertureM2 > 1);
    }

    private static GainRow Row(Enclosure house, double elevationDeg, double azimuthDeg, params ShadeBody[] bodies) =>
        Traced(house, Surroundings.Of(bodies, []), azimuthDeg, elevationDeg);

    private static GainRow Traced(Enclosure house, Surroundings around, double azimuthDeg, double elevationDeg) =>
        EnclosureGainsTests.Row(house, null, around, azimuthDeg, elevationDeg);

    private static ShadeBody Box(string id, double x0, double x1, double y0, double y1, double z, double transmittance) => new(
        id,
        [
            [new(x0, y0, 0), new(x1, y0, 0), new(x1, y0, z), new(x0, y0, z)],
            [new(x1, y1, 0), new(x0, y1, 0), new(x0, y1, z), new(x1, y1, z)],
            [new(x0, y1, 0), new(x0, y0, 0), new(x0, y0, z), new(x0, y1, z)],
            [new(x1, y0, 0), new(x1, y1, 0), new(x1, y1, z), new(x1, y0, z)],
            [new(x0, y0, z), new(x1, y0, z), new(x1, y1, z), new(x0, y1, z)],
            [new(x0, y0, 0), new(x0, y1, 0), new(x1, y1, 0), new(x1, y0, 0)],
        ],
        transmittance);
}
