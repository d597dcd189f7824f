using Glazewright.Science.Light;
using Glazewright.Science.Light.Shadows;

namespace Glazewright.Science.Tests.Light;

/// <summary>Light on a plane below a drawn curtain.</summary>
public class CurtainLightTests
{
    private static readonly FaceCovering Black = new FaceCovering.Opaque(0);

    // All light comes through the roof, so through the cloth: what goes through its holes is the open house's beam times the openness, cell by cell.
    [Theory]
    [InlineData(-60, 30)]
    [InlineData(100, 55)]
    public void The_beam_below_is_the_beam_above_times_the_openness(double azimuthDeg, double elevationDeg)
    {
        Enclosure house = Enclosure.Of(Houses.Gable(
            30, 8, 2.3, 2.9, 5.2, 4.9, Black, Black, Houses.Clear("polycarbonate-16-triple"), Houses.Clear("polycarbonate-16-triple"), Black, new FaceCovering.CropPlane(0)));
        ReceivingPlane plane = Level(0.8);
        double[] open = new double[plane.Count];
        double[] drawn = new double[plane.Count];
        var towards = Vector3d.Towards(azimuthDeg, elevationDeg);
        new BeamScan(house, Surroundings.None, plane, ScanFineness.Usual).Look(towards, open);
        BeamShares shares = new BeamScan(house, Surroundings.None, plane, ScanFineness.Usual, Houses.Curtain).Look(towards, drawn);
        for (int k = 0; k < plane.Count; k++)
        {
            Assert.Equal(open[k] * 0.45 * 0.3, drawn[k], 1e-12);
        }

        Assert.True(open.Max() > 0.1);
        Assert.Equal(1, shares.SumFraction, 1e-9);
        Assert.True(shares.CurtainFraction > 0);
    }

    // Walls below the cloth are not behind it.
    [Fact]
    public void What_enters_below_the_cloth_keeps_all_its_light()
    {
        Enclosure house = Enclosure.Of(Houses.Gable(
            30, 8, 2.3, 2.9, 5.2, 4.9, Houses.Open, Houses.Open, Black, Black, Houses.Open, new FaceCovering.CropPlane(0)));
        ReceivingPlane plane = Level(0);
        double[] drawn = new double[plane.Count];

        // At 10° across the house the left wall's light falls on y below 2.1 / tan 10° from the part under the cloth: the whole floor.
        new BeamScan(house, Surroundings.None, plane, ScanFineness.Usual, new CurtainPlane(2.1, 0, 0.3, 0.3, 0)).Look(Vector3d.Towards(-90, 10), drawn);
        Assert.All(drawn, f => Assert.Equal(Math.Sin(10 * Math.PI / 180), f, 1e-9));
    }

    // A cloth that does nothing changes nothing; a cloth takes what the gain table says it takes. The sum of the even sky's light on the floor is the gain table's crop plane,
    // straight, scattered and reflected; the mark for a floor's mean is 1 %.
    [Theory]
    [InlineData(1, 0, 0)]
    [InlineData(0.45, 0.35, 0.7)]
    [InlineData(0.2, 0.6, 1)]
    public void The_floor_below_has_what_the_gain_table_gives_the_crop_plane(double transmittance, double reflectance, double scatter)
    {
        Enclosure house = Houses.HalfOpaque();
        var curtain = new CurtainPlane(2.1, transmittance, reflectance, reflectance, scatter);
        var light = new HouseLight(house, curtain, Surroundings.None);
        EnclosureGainTable table = light.Gains(SunGrid.Even(4, 2), null);
        ReceivingPlane floor = Level(0);
        RoomLight room = light.On(floor);
        double[] cells = new double[floor.Count];
        room.Irradiance([.. table.SetFree.DomeM2], cells);
        LightTable.Build(house, curtain, Surroundings.None, floor, ScanFineness.Usual, SkyDome.Usual.Directions, CancellationToken.None)
            .AddTo([.. SkyDome.Usual.IrradianceFactors], cells);
        double absorbedM2 = 0.8 * cells.Average() * 240;
        Assert.Equal(table.Dome.CropPlaneM2, absorbedM2, 0.01 * table.Dome.CropPlaneM2);
        if (transmittance == 1)
        {
            GainRow open = new HouseLight(house, null, Surroundings.None).Gains(SunGrid.Even(4, 2), null).Dome;
            Assert.Equal(open.CropPlaneM2, table.Dome.CropPlaneM2, 0.01 * open.CropPlaneM2);
        }
    }

    // Every cell sees the cloth and what is below it, nothing else.
    [Fact]
    public void A_cell_below_sees_its_own_room()
    {
        RoomLight room = new HouseLight(Houses.HalfOpaque(), Houses.Curtain, Surroundings.None).On(Level(0.8));
        Assert.All(Enumerable.Range(0, 60), k => Assert.Equal(1, room.SeenFraction(k), 1e-9));
    }

    [Fact]
    public void A_plane_above_the_cloth_is_refused() => Assert.Throws<ArgumentOutOfRangeException>(
        () => new BeamScan(Houses.HalfOpaque(), Surroundings.None, Level(2.2), ScanFineness.Usual, Houses.Curtain));

    private static ReceivingPlane Level(double heightM) =>
        ReceivingPlane.Of(new Vector3d(0, 0, heightM), new Vector3d(1, 0, 0), new Vector3d(0, 1, 0), 30, 8, 20, 3);
}
