using Glazewright.Science.Light;
using Glazewright.Science.Light.Shadows;

namespace Glazewright.Science.Tests.Light;

public class EnclosureGainsTests
{
    private static readonly EnclosureGainTable Usual = EnclosureGains.Compute(Houses.Usual(), null, SunGrid.Standard);
    private static readonly EnclosureGainTable Half = EnclosureGains.Compute(Houses.HalfOpaque(), null, SunGrid.Standard);
    private static readonly EnclosureGainTable Drawn = EnclosureGains.Compute(Houses.HalfOpaque(), Houses.Curtain, SunGrid.Standard);

    public static TheoryData<string> Tables => ["usual", "half", "drawn"];

    [Theory]
    [MemberData(nameof(Tables))]
    public void Every_row_sums_to_its_aperture(string name)
    {
        EnclosureGainTable table = Table(name);
        foreach (GainRow row in table.Beam.Append(table.Dome).Append(table.Ground).Append(table.Horizon))
        {
            Assert.Equal(row.ApertureM2, row.PartsM2, 1e-9 * row.ApertureM2);
            Assert.True(row.CoverM2 >= 0 && row.CropPlaneM2 >= 0 && row.EscapesM2 >= 0 && row.FrameM2 >= 0 && row.OpaqueM2 >= 0);
        }
    }

    // Sums of A (1 ± cos tilt)/2 and A sin tilt; 0.3 %: 36 azimuths against a half cosine.
    [Fact]
    public void Sky_ground_and_horizon_apertures_are_the_closed_forms()
    {
        double dome = 0;
        double ground = 0;
        double band = 0;
        foreach (EnclosureFace face in Houses.Usual().Faces.Where(f => f.Covering is FaceCovering.Clear))
        {
            Vector3d vector = AreaVector(face.Polygon);
            double cos = vector.Z / vector.LengthM;
            dome += vector.LengthM * (1 + cos) / 2;
            ground += vector.LengthM * (1 - cos) / 2;
            band += vector.LengthM * Math.Sqrt(1 - (cos * cos));
        }

        Assert.Equal(dome, Usual.Dome.ApertureM2, 0.003 * dome);
        Assert.Equal(ground, Usual.Ground.ApertureM2, 0.003 * ground);
        Assert.Equal(band, Usual.Horizon.ApertureM2, 0.003 * band);
    }

    // With nothing in the way the floor's share is its own area times the sun's sine, whatever the house's shape.
    [Theory]
    [InlineData(20, 30)]
    [InlineData(200, 12.5)]
    [InlineData(95, 70)]
    public void An_open_house_lights_its_floor_as_open_ground(double azimuthDeg, double elevationDeg)
    {
        List<EnclosureFace> faces = Houses.Gable(
            30, 8, 2.3, 2.9, 5.2, 4.9, Houses.Open, Houses.Open, Houses.Open, Houses.Open, Houses.Open, new FaceCovering.CropPlane(0));
        GainRow row = Row(Enclosure.Of(faces), null, azimuthDeg, elevationDeg);
        Assert.Equal(30 * 8 * Math.Sin(elevationDeg * Math.PI / 180), row.CropPlaneM2, 1e-6);
    }

    // Sun across the house, far wall opaque: the strip of floor it lights ends at the closed-form place.
    [Fact]
    public void Light_through_one_wall_lands_where_the_profile_angle_says()
    {
        var black = new FaceCovering.Opaque(0);
        List<EnclosureFace> faces = Houses.Gable(
            30, 8, 2.3, 2.9, 5.2, 4.9, Houses.Open, black, black, black, black, new FaceCovering.CropPlane(0));
        const double elevationDeg = 35;
        GainRow row = Row(Enclosure.Of(faces), null, -90, elevationDeg);
        double reachM = 2.3 / Math.Tan(elevationDeg * Math.PI / 180);
        Assert.Equal(30 * reachM * Math.Sin(elevationDeg * Math.PI / 180), row.CropPlaneM2, 1e-6);
        Assert.Equal(0, row.OpaqueM2, 1e-6);
    }

    // Mirroring house and sun across y leaves the light as it was; 0.3 %: the rays of the view factors are strewn anew.
    [Fact]
    public void A_mirrored_house_is_lit_alike()
    {
        Enclosure mirrored = Enclosure.Of([.. Houses.HalfOpaque().Faces.Select(f => f with
        {
            Polygon = [.. f.Polygon.Select(p => p with { Y = -p.Y }).Reverse()],
            Patches = [.. f.Patches.Select(d => d with { Polygon = [.. d.Polygon.Select(p => p with { Y = -p.Y }).Reverse()] })],
        })]);
        foreach (double azimuthDeg in new[] { 10.0, 140, 250 })
        {
            GainRow there = Row(mirrored, null, -azimuthDeg, 25);
            GainRow here = Half.BeamAt(azimuthDeg, 25);
            Assert.Equal(here.ApertureM2, there.ApertureM2, 1e-6 * here.ApertureM2);
            Assert.Equal(here.CropPlaneM2, there.CropPlaneM2, 0.003 * here.ApertureM2);
            Assert.Equal(here.OpaqueM2, there.OpaqueM2, 0.003 * here.ApertureM2);
        }
    }

    [Fact]
    public void A_turned_house_under_a_turned_sun_is_lit_alike()
    {
        Vector3d Turn(Vector3d p)
        {
            (double s, double c) = Math.SinCos(0.61);
            return new Vector3d((c * p.X) - (s * p.Y), (s * p.X) + (c * p.Y), p.Z);
        }

        Enclosure turned = Enclosure.Of([.. Houses.HalfOpaque().Faces.Select(f => f with
        {
            Polygon = [.. f.Polygon.Select(Turn)],
            Patches = [.. f.Patches.Select(d => d with { Polygon = [.. d.Polygon.Select(Turn)] })],
        })]);
        double turnDeg = 0.61 * 180 / Math.PI;
        GainRow there = Row(turned, null, 140 + turnDeg, 25);
        GainRow here = Half.BeamAt(140, 25);
        Assert.Equal(here.ApertureM2, there.ApertureM2, 1e-9 * here.ApertureM2);
        Assert.Equal(here.CropPlaneM2, there.CropPlaneM2, 0.003 * here.ApertureM2);
    }

    // The zenith has no bearing; a sun in the plane of a wall neither lights nor loses it, and a hair to either side nothing jumps.
    [Fact]
    public void A_sun_in_the_zenith_or_in_the_plane_of_a_face_is_no_special_case()
    {
        GainRow zenith = Row(Houses.Usual(), null, 0, 90);
        foreach (double azimuthDeg in new[] { 37.0, 90, 181.3, 300 })
        {
            GainRow again = Row(Houses.Usual(), null, azimuthDeg, 90);
            Assert.Equal(zenith.ApertureM2, again.ApertureM2, 1e-9 * zenith.ApertureM2);
            Assert.Equal(zenith.CropPlaneM2, again.CropPlaneM2, 1e-9 * zenith.ApertureM2);
        }

        // Along the ridge the side walls are seen edge on; on the horizon the floor is.
        foreach ((double azimuthDeg, double elevationDeg) in new[] { (0.0, 20.0), (180.0, 45.0), (90.0, 0.0) })
        {
            GainRow at = Row(Houses.Usual(), null, azimuthDeg, elevationDeg);
            Assert.Equal(at.ApertureM2, at.PartsM2, 1e-9 * at.ApertureM2);
            foreach (double hairDeg in new[] { -1e-7, 1e-7 })
            {
                GainRow beside = Row(Houses.Usual(), null, azimuthDeg + hairDeg, elevationDeg);
                Assert.Equal(at.ApertureM2, beside.ApertureM2, 1e-6);
                Assert.Equal(at.CropPlaneM2, beside.CropPlaneM2, 1e-5);
            }
        }
    }

    [Fact]
    public void An_invisible_curtain_changes_nothing()
    {
        var nothing = new CurtainPlane(2.1, 1, 0, 0, 0);
        foreach (double elevationDeg in new[] { 5.0, 30, 65 })
        {
            GainRow with = Row(Houses.HalfOpaque(), nothing, 80, elevationDeg);
            GainRow without = Row(Houses.HalfOpaque(), null, 80, elevationDeg);
            Assert.Equal(without.ApertureM2, with.ApertureM2, 1e-9 * without.ApertureM2);
            Assert.Equal(without.CropPlaneM2, with.CropPlaneM2, 0.004 * without.ApertureM2);
            Assert.Equal(without.EscapesM2, with.EscapesM2, 0.004 * without.ApertureM2);
        }
    }

    [Fact]
    public void A_black_curtain_darkens_the_crop_at_high_sun()
    {
        GainRow row = Row(Houses.HalfOpaque(), new CurtainPlane(2.1, 0, 0, 0, 0), 0, 90);
        Assert.InRange(row.CropPlaneM2, 0, 0.02 * row.ApertureM2);
        Assert.True(row.CurtainM2 > 0.5 * row.ApertureM2);
    }

    [Fact]
    public void Rows_between_nodes_are_close_to_rows_at_the_place()
    {
        double clearM2 = Houses.HalfOpaque().Faces.Where(f => f.Covering is FaceCovering.Clear).Sum(f => AreaVector(f.Polygon).LengthM);
        double worst = 0;
        double sum = 0;
        int count = 0;
        for (double azimuthDeg = 2.5; azimuthDeg < 360; azimuthDeg += 15)
        {
            foreach (double elevationDeg in new[] { 3.7, 12.5, 27.5, 52.5 })
            {
                GainRow exact = Row(Houses.HalfOpaque(), null, azimuthDeg, elevationDeg);
                GainRow between = Half.BeamAt(azimuthDeg, elevationDeg);
                double error = Math.Abs(between.CropPlaneM2 - exact.CropPlaneM2) / clearM2;
                worst = Math.Max(worst, error);
                sum += error;
                count++;
            }
        }

        TestContext.Current.TestOutputHelper?.WriteLine($"crop plane between nodes: worst {worst:P2}, mean {sum / count:P2} of the clear area");
        Assert.InRange(worst, 0, 0.005);
        Assert.InRange(sum / count, 0, 0.001);
    }

    [Fact]
    public void The_same_house_gives_the_same_bits()
    {
        EnclosureGainTable again = EnclosureGains.Compute(Houses.HalfOpaque(), null, SunGrid.Standard);
        Assert.Equal(Half.Beam, again.Beam);
        Assert.Equal(Half.Dome, again.Dome);
    }

    private static EnclosureGainTable Table(string name) => name switch
    {
        "usual" => Usual,
        "half" => Half,
        _ => Drawn,
    };

    // The direct computation at one direction, without the grid.
    private static GainRow Row(Enclosure enclosure, CurtainPlane? curtain, double azimuthDeg, double elevationDeg) =>
        Row(enclosure, curtain, Surroundings.None, azimuthDeg, elevationDeg);

    internal static GainRow Row(Enclosure enclosure, CurtainPlane? curtain, Surroundings around, double azimuthDeg, double elevationDeg)
    {
        List<Piece> pieces = Pieces.Of(enclosure, curtain);
        var tracer = new BeamTracer(pieces, new BarCatch(pieces, new BarPicture(enclosure), true), around);
        var traced = new TracedBeams(1, pieces.Count);
        tracer.Follow(Vector3d.Towards(azimuthDeg, elevationDeg));
        traced.Keep(0, tracer);
        traced.Spread(Radiosity.Solve(pieces, ViewFactors.ExchangeAreas(pieces, 512)));
        return traced.Sum(0, [1]).Row;
    }

    private static Vector3d AreaVector(IReadOnlyList<Vector3d> polygon) => Polygons.AreaVector(polygon);
}
