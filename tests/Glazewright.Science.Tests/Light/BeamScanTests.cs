using Glazewright.Science.Light;
using Glazewright.Science.Light.Shadows;

namespace Glazewright.Science.Tests.Light;

public class BeamScanTests
{
    private static readonly Vector3d Up = new(0, 0, 1);

    // Black right side; the sun stands across the house on that side. The floor is lit only where its ray passes below the ridge on the left slope:
    // y < ridge y − ridge z / tan(elevation).
    [Theory]
    [InlineData(60)]
    [InlineData(66)]
    [InlineData(75)]
    public void The_shadow_of_an_opaque_roof_ends_at_the_closed_form_place(double elevationDeg)
    {
        var black = new FaceCovering.Opaque(0);
        Enclosure house = Enclosure.Of(Houses.Gable(
            30, 8, 2.3, 2.9, 5.2, 4.9, Houses.Open, black, Houses.Open, black, Houses.Open, new FaceCovering.CropPlane(0)));
        ReceivingPlane floor = Level(0, 30, 8, 1, 2000);
        double[] factor = new double[floor.Count];
        new BeamScan(house, Surroundings.None, floor, new ScanFineness(1, 1)).Look(Vector3d.Towards(90, elevationDeg), factor);
        double edgeM = 5.2 - (4.9 / Math.Tan(elevationDeg * Math.PI / 180));
        int last = Array.FindLastIndex(factor, f => f > 0);
        Assert.Equal(edgeM, (last + 1) * 0.004, 0.0041);
        Assert.Equal(Math.Sin(elevationDeg * Math.PI / 180), factor[last - 1], 1e-12);
        Assert.Equal(0, factor[last + 1]);
    }

    // A level bar of depth d and width w across the sun's plane: its shadow on a level floor is w + d / tan(elevation) wide (plane geometry).
    [Theory]
    [InlineData(0.05, 0.10, 30)]
    [InlineData(0.05, 0.35, 30)]
    [InlineData(0.10, 0.05, 65)]
    public void The_shadow_of_a_bar_has_the_closed_form_width(double widthM, double depthM, double elevationDeg)
    {
        ShadeBar bar = ShadeBar.FourSided(new(2, 4, 2), new(28, 4, 2), Up, widthM, depthM);
        var towards = Vector3d.Towards(-90, elevationDeg);
        double expected = widthM + (depthM / Math.Tan(elevationDeg * Math.PI / 180));
        ShadowOnLevel shadow = ShadowOnLevel.Of(bar, towards, 0)!.Value;
        Assert.Equal(expected, shadow.WidthM, 1e-12);
        Assert.Equal(26, shadow.LengthM, 1e-12);
        Assert.Equal(4 + (2 / Math.Tan(elevationDeg * Math.PI / 180)), shadow.CentreYM, 1e-12);

        Enclosure house = Open([bar]);
        ReceivingPlane floor = Level(0, 30, 10, 1, 10);
        double[] factor = new double[10];
        BeamShares shares = new BeamScan(house, Surroundings.None, floor, new ScanFineness(256, 64)).Look(towards, factor);

        // One of 2,560 lines more or less.
        Assert.Equal(expected * 26 / 300, shares.FrameFraction, 0.0004);
        Assert.Equal(1, shares.SumFraction, 1e-12);
    }

    // A round tube of diameter D square to the light throws a shadow of D / sin(elevation) when it lies across, of D when it points along.
    [Fact]
    public void Round_tubes_shade_by_their_diameter()
    {
        var across = new ShadeBar(new(2, 4, 2), new(28, 4, 2), new(0, 0.03, 0), new(0, 0, 0.03), BarShape.Round);
        var along = new ShadeBar(new(4, 1, 2), new(4, 9, 2), new(0.03, 0, 0), new(0, 0, 0.03), BarShape.Round);
        var towards = Vector3d.Towards(-90, 40);
        Assert.Equal(0.06 / Math.Sin(40 * Math.PI / 180), ShadowOnLevel.Of(across, towards, 0)!.Value.WidthM, 1e-12);
        Assert.Equal(0.06, ShadowOnLevel.Of(along, towards, 0)!.Value.WidthM, 1e-12);
    }

    // Drawn shadows against single rays through every bar's body: 300 cells, each by 64 rays. The bound is the noise of 64 rays a cell (a cell half in shade: 0.5/√64 = 0.06).
    [Theory]
    [InlineData(-90, 20)]
    [InlineData(-35, 12)]
    [InlineData(10, 55)]
    [InlineData(120, 33)]
    [InlineData(77, 88)]
    public void Drawn_shadows_agree_with_single_rays(double azimuthDeg, double elevationDeg)
    {
        Enclosure house = Framed();
        Surroundings around = Surroundings.Of([Neighbour()], [new SkylinePoint(0, 3)]);
        ReceivingPlane plane = Level(0.8, 30, 8, 30, 10);
        double[] drawn = new double[plane.Count];
        var towards = Vector3d.Towards(azimuthDeg, elevationDeg);
        new BeamScan(house, around, plane, new ScanFineness(64, 2)).Look(towards, drawn);
        var rays = new RayReference(house, around);
        double sum = 0;
        double worst = 0;
        for (int k = 0; k < plane.Count; k++)
        {
            double cell = 0;
            for (int i = 0; i < 64; i++)
            {
                // Another place in each cell: frames stand on the cells' edges.
                int n = (k * 64) + i;
                double u = (k % 30) + ((0.5 + (n * 0.7548776662)) % 1);
                double v = (k / 30 * 0.8) + (0.8 * ((0.5 + (n * 0.5698402910)) % 1));
                cell += rays.At(new Vector3d(u, v, 0.8), Up, towards) / 64;
            }

            sum += cell;
            worst = Math.Max(worst, Math.Abs(cell - drawn[k]));
        }

        double level = Math.Sin(elevationDeg * Math.PI / 180);
        Assert.Equal(sum / plane.Count, drawn.Average(), 0.004 * level);
        Assert.InRange(worst, 0, 0.13 * level);
    }

    // One truth for light and gain: what the map's scan brings to the floor is what the gain table says meets the crop plane unscattered.
    [Fact]
    public void The_floor_s_light_is_the_gain_table_s_direct_light()
    {
        Enclosure house = Framed();
        EnclosureGainTable table = EnclosureGains.Compute(house, null, SunGrid.Standard);
        var scan = new BeamScan(house, Surroundings.None, Level(0, 30, 8, 30, 10), new ScanFineness(32, 1));
        double[] factor = new double[300];
        double dome = 0;
        for (int i = 0; i < SkyDome.Usual.Directions.Count; i++)
        {
            scan.Look(SkyDome.Usual.Directions[i], factor);
            dome += SkyDome.Usual.IrradianceFactors[i] * factor.Average() * 240;
        }

        Assert.Equal(table.DomeDirectOnCropM2, dome, 0.003 * table.DomeDirectOnCropM2);
        for (int node = 8; node < table.Grid.Count; node += 97)
        {
            scan.Look(table.Grid.Direction(node), factor);
            Assert.Equal(table.BeamDirectOnCropM2[node], factor.Average() * 240, (0.02 * table.Beam[node].ApertureM2) + 0.05);
        }
    }

    [Fact]
    public void Rows_still_close_with_bars_inside()
    {
        EnclosureGainTable table = EnclosureGains.Compute(Framed(), Houses.Curtain, SunGrid.Standard);
        Assert.All(table.Beam.Append(table.Dome).Append(table.Horizon).Append(table.Ground), r => Assert.Equal(r.ApertureM2, r.PartsM2, 1e-9 * Math.Max(1, r.ApertureM2)));
        Assert.Contains(table.Beam, r => r.FrameM2 > 0);
    }

    [Fact]
    public void Shares_sum_to_one_from_every_side()
    {
        Enclosure house = Framed();
        foreach (ReceivingPlane plane in new[]
        {
            Level(0.8, 30, 8, 20, 8),
            ReceivingPlane.Of(new(0, 8, 0), new(1, 0, 0), Up, 30, 2.9, 20, 4),
        })
        {
            var scan = new BeamScan(house, Surroundings.Of([Neighbour()], []), plane, ScanFineness.Usual);
            double[] factor = new double[plane.Count];
            for (int node = 0; node < SunGrid.Standard.Count; node += 23)
            {
                Vector3d towards = SunGrid.Standard.Direction(node);
                double facing = plane.Normal.Dot(towards);
                BeamShares shares = scan.Look(towards, factor);
                Assert.Equal(facing > 1e-6 ? 1 : 0, shares.SumFraction, 1e-9);
                Assert.Equal(shares.ArrivesFraction * Math.Max(0, facing), factor.Average(), 1e-9);
            }
        }
    }

    [Fact]
    public void A_mirrored_house_has_a_mirrored_map()
    {
        ReceivingPlane plane = Level(0.8, 30, 8, 20, 8);
        double[] one = new double[plane.Count];
        double[] two = new double[plane.Count];
        new BeamScan(Framed(), Surroundings.None, plane, new ScanFineness(32, 4)).Look(Vector3d.Towards(-60, 30), one);
        new BeamScan(Framed(mirrored: true), Surroundings.None, plane, new ScanFineness(32, 4)).Look(Vector3d.Towards(-120, 30), two);
        for (int k = 0; k < plane.Count; k++)
        {
            Assert.Equal(one[k], two[(k / 20 * 20) + 19 - (k % 20)], 0.01);
        }
    }

    // No allocation in the loop.
    [Fact]
    public void Looking_allocates_nothing()
    {
        var scan = new BeamScan(Framed(), Surroundings.Of([Neighbour()], []), Level(0.8, 30, 8, 20, 8), ScanFineness.Usual);
        double[] factor = new double[160];
        Assert.Equal(0, LeastAllocated.InRounds(5, 20, () => scan.Look(Vector3d.Towards(-60, 30), factor)));
    }

    // Spot to a parallel rectangle with one corner above it (Howell's catalogue of configuration factors, B-3; from memory), and the contour of a wall.
    [Theory]
    [InlineData(2, 3, 1.5)]
    [InlineData(0.4, 8, 0.7)]
    public void A_spot_sees_a_rectangle_by_the_closed_form(double a, double b, double c)
    {
        double x = a / c;
        double y = b / c;
        double expected = ((x / Math.Sqrt(1 + (x * x)) * Math.Atan(y / Math.Sqrt(1 + (x * x))))
            + (y / Math.Sqrt(1 + (y * y)) * Math.Atan(x / Math.Sqrt(1 + (y * y))))) / (2 * Math.PI);
        Assert.Equal(expected, FormFactor.ToPolygon(default, Up, [new(0, 0, c), new(a, 0, c), new(a, b, c), new(0, b, c)]), 1e-12);
    }

    // A closed room: a spot on the floor sees all of it.
    [Fact]
    public void A_spot_s_form_factors_sum_to_one()
    {
        List<Piece> pieces = Pieces.Of(Houses.HalfOpaque(), null);
        var spot = new Vector3d(11, 3, 0.8);
        double sum = pieces.Sum(p =>
        {
            Vector3d[] seen = Polygons.CutByPlane(p.Outline, spot, Up);
            return (seen.Length == 0 ? 0 : FormFactor.ToPolygon(spot, Up, seen))
                - p.Holes.Sum(h => Polygons.CutByPlane(h, spot, Up) is { Length: > 0 } cut ? FormFactor.ToPolygon(spot, Up, cut) : 0);
        });
        Assert.Equal(1, sum, 1e-9);
    }

    // In a closed house a cell sees the house and nothing else; a map in the floor or in a wall sees all but its own surface, which does not shine on itself.
    [Fact]
    public void A_cell_s_room_sums_to_one_and_leaves_its_own_surface_out()
    {
        var light = new HouseLight(Houses.HalfOpaque(), null, Surroundings.None);
        foreach (ReceivingPlane plane in new[]
        {
            Level(0.8, 30, 8, 12, 5),
            Level(0, 30, 8, 12, 5),
            ReceivingPlane.Of(new(0, 8, 0), new(1, 0, 0), Up, 30, 2.9, 12, 4),
        })
        {
            RoomLight room = light.On(plane);
            Assert.All(Enumerable.Range(0, plane.Count), k => Assert.Equal(1, room.SeenFraction(k), 1e-9));
        }
    }

    private static ReceivingPlane Level(double heightM, double length, double width, int u, int v) =>
        ReceivingPlane.Of(new Vector3d(0, 0, heightM), new Vector3d(1, 0, 0), new Vector3d(0, 1, 0), length, width, u, v);

    private static Enclosure Open(IReadOnlyList<ShadeBar> bars) => Enclosure.Of(
        Houses.Gable(30, 10, 3, 3, 5, 5, Houses.Open, Houses.Open, Houses.Open, Houses.Open, Houses.Open, new FaceCovering.CropPlane(0)), bars);

    /// <summary>The half opaque house with frames, purlins, ties, round posts and a heater that overlap and touch.</summary>
    internal static Enclosure Framed(bool mirrored = false)
    {
        List<ShadeBar> bars = [];
        for (int i = 0; i <= 10; i++)
        {
            double x = Math.Clamp(3.0 * i, 0.03, 29.97);
            bars.Add(ShadeBar.FourSided(new(x, 0.05, 2.2), new(x, 5.2, 4.82), Up, 0.05, 0.10));
            bars.Add(ShadeBar.FourSided(new(x, 7.95, 2.8), new(x, 5.2, 4.82), Up, 0.05, 0.10));
            bars.Add(ShadeBar.FourSided(new(x, 2.4, 3.3), new(x, 7.2, 3.3), Up, 0.05, 0.05));
            bars.Add(new ShadeBar(new(x, 0.04, 0), new(x, 0.04, 2.3), new(0.03, 0, 0), new(0, 0.03, 0), BarShape.Round));
        }

        foreach (double y in new[] { 1.0, 2.0, 3.0, 4.0, 6.0, 7.0 })
        {
            double z = y < 5.2 ? 2.2 + (y / 5.2 * 2.6) : 2.8 + ((8 - y) / 2.8 * 2.0);
            bars.Add(ShadeBar.FourSided(new(0, y, z), new(30, y, z), new(0, -0.4, 1), 0.06, 0.04));
        }

        bars.Add(ShadeBar.Box(new(20, 1, 1.8), new(0.9, 0.7, 0.7)) with { Cause = ShadeCause.Equipment });
        bars.Add(ShadeBar.FourSided(new(9.2, 0.2, 2.1), new(9.2, 7.8, 2.1), Up, 0.1, 0.15) with { Cause = ShadeCause.Curtain });
        Enclosure house = Houses.HalfOpaque();
        return mirrored
            ? Enclosure.Of([.. house.Faces.Select(Turned)], [.. bars.Select(b => b with { A = Flip(b.A), B = Flip(b.B), HalfWidth = FlipWay(b.HalfWidth), HalfDepth = FlipWay(b.HalfDepth) })])
            : Enclosure.Of(house.Faces, bars);
    }

    private static EnclosureFace Turned(EnclosureFace f) => f with
    {
        Polygon = [.. f.Polygon.Select(Flip).Reverse()],
        Patches = [.. f.Patches.Select(p => p with { Polygon = [.. p.Polygon.Select(Flip).Reverse()] })],
    };

    private static Vector3d Flip(Vector3d p) => p with { X = 30 - p.X };

    private static Vector3d FlipWay(Vector3d p) => p with { X = -p.X };

    private static ShadeBody Neighbour()
    {
        Vector3d P(double x, double y, double z) => new(3 + (x * 17), -10 + (y * 5), z * 4);
        return new ShadeBody(
            "n",
            [
                [P(0, 0, 0), P(1, 0, 0), P(1, 0, 1), P(0, 0, 1)],
                [P(1, 1, 0), P(0, 1, 0), P(0, 1, 1), P(1, 1, 1)],
                [P(0, 1, 0), P(0, 0, 0), P(0, 0, 1), P(0, 1, 1)],
                [P(1, 0, 0), P(1, 1, 0), P(1, 1, 1), P(1, 0, 1)],
                [P(0, 0, 1), P(1, 0, 1), P(1, 1, 1), P(0, 1, 1)],
                [P(0, 0, 0), P(0, 1, 0), P(1, 1, 0), P(1, 0, 0)],
            ],
            0.3);
    }
}
