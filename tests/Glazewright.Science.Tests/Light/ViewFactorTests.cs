using Glazewright.Science.Light;

namespace Glazewright.Science.Tests.Light;

public class ViewFactorTests
{
    // Cube: opposite faces 0.199825, adjacent 0.200044 (Howell's catalogue C-11 and C-14, closed forms; from memory). 0.003: rays.
    [Fact]
    public void A_cube_has_the_known_factors()
    {
        List<Piece> pieces = Pieces.Of(Box(1, 1, 1), null);
        double[,] exchange = ViewFactors.ExchangeAreas(pieces, EnclosureGains.Rays);
        for (int i = 0; i < 6; i++)
        {
            for (int j = 0; j < 6; j++)
            {
                bool same = i == j;
                bool opposite = pieces[i].Normal.Dot(pieces[j].Normal) < -0.5;
                Assert.Equal(same ? 0 : opposite ? 0.199825 : 0.200044, exchange[i, j], 0.003);
            }
        }
    }

    // Parallel rectangles 2 × 3 at distance 1 and their closed form (Howell's catalogue C-11).
    [Fact]
    public void Opposite_rectangles_follow_the_closed_form()
    {
        List<Piece> pieces = Pieces.Of(Box(2, 3, 1), null);
        double[,] exchange = ViewFactors.ExchangeAreas(pieces, EnclosureGains.Rays);
        int floor = pieces.FindIndex(p => p.Normal.Z < -0.5);
        int roof = pieces.FindIndex(p => p.Normal.Z > 0.5);
        const double x = 2;
        const double y = 3;
        double expected = 2 / (Math.PI * x * y) * (Math.Log(Math.Sqrt((1 + (x * x)) * (1 + (y * y)) / (1 + (x * x) + (y * y))))
            + (x * Math.Sqrt(1 + (y * y)) * Math.Atan(x / Math.Sqrt(1 + (y * y))))
            + (y * Math.Sqrt(1 + (x * x)) * Math.Atan(y / Math.Sqrt(1 + (x * x))))
            - (x * Math.Atan(x)) - (y * Math.Atan(y)));
        Assert.Equal(expected, exchange[floor, roof] / pieces[floor].AreaM2, 0.003);
    }

    // Two rectangles at right angles with an edge of length 3 in common, 2 and 1 deep (Howell's catalogue C-14, closed form; from memory).
    [Fact]
    public void Rectangles_at_right_angles_follow_the_closed_form()
    {
        List<Piece> pieces = Pieces.Of(Box(2, 3, 1), null);
        double[,] exchange = ViewFactors.ExchangeAreas(pieces, EnclosureGains.Rays);
        int floor = pieces.FindIndex(p => p.Normal.Z < -0.5);
        int wall = pieces.FindIndex(p => p.Normal.X > 0.5);
        const double h = 1 / 3.0;
        const double w = 2 / 3.0;
        const double h2 = h * h;
        const double w2 = w * w;
        double both = Math.Sqrt(h2 + w2);
        double expected = 1 / (Math.PI * w) * ((w * Math.Atan(1 / w)) + (h * Math.Atan(1 / h)) - (both * Math.Atan(1 / both))
            + (0.25 * (Math.Log((1 + w2) * (1 + h2) / (1 + w2 + h2))
                + (w2 * Math.Log(w2 * (1 + w2 + h2) / ((1 + w2) * (w2 + h2))))
                + (h2 * Math.Log(h2 * (1 + h2 + w2) / ((1 + h2) * (h2 + w2)))))));
        Assert.Equal(expected, exchange[floor, wall] / pieces[floor].AreaM2, 0.003);
    }

    [Fact]
    public void A_face_without_area_is_refused_by_name()
    {
        List<EnclosureFace> faces = [.. Houses.Usual().Faces];
        faces.Add(new EnclosureFace("sliver", [new(0, 0, 0), new(10, 0, 0), new(20, 0, 0)], Houses.Open, []));
        Assert.Contains("sliver", Assert.Throws<ArgumentException>(() => Enclosure.Of(faces)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Exchange_is_reciprocal_and_closed_with_a_curtain_and_a_door()
    {
        List<Piece> pieces = Pieces.Of(Houses.HalfOpaque(), Houses.Curtain);
        double[,] exchange = ViewFactors.ExchangeAreas(pieces, EnclosureGains.Rays);
        for (int i = 0; i < pieces.Count; i++)
        {
            double sum = 0;
            for (int j = 0; j < pieces.Count; j++)
            {
                Assert.Equal(exchange[i, j], exchange[j, i], 1e-12);
                sum += exchange[i, j];
                if (pieces[i].Cell != pieces[j].Cell)
                {
                    Assert.Equal(0, exchange[i, j]);
                }
            }

            Assert.Equal(pieces[i].AreaM2, sum, 1e-9 * pieces[i].AreaM2);
        }
    }

    [Fact]
    public void A_body_with_a_missing_face_is_refused() =>
        Assert.Throws<ArgumentException>(() => Enclosure.Of([.. Houses.Usual().Faces.Skip(1)]));

    [Fact]
    public void A_hollow_roof_is_refused() =>
        Assert.Throws<ArgumentException>(() => Enclosure.Of(Houses.Gable(
            10, 8, 3, 3, 4, 2, Houses.Open, Houses.Open, Houses.Open, Houses.Open, Houses.Open, Houses.Crop)));

    [Fact]
    public void A_door_outside_its_wall_is_refused()
    {
        List<EnclosureFace> faces = [.. Houses.Usual().Faces];
        faces[0] = faces[0] with
        {
            Patches = [new EnclosurePatch("door", [new(29, 0, 0), new(31, 0, 0), new(31, 0, 2), new(29, 0, 2)], Houses.Open)],
        };
        Assert.Throws<ArgumentException>(() => Enclosure.Of(faces));
    }

    internal static Enclosure Box(double x, double y, double z)
    {
        var black = new FaceCovering.Opaque(0);
        return Enclosure.Of(
        [
            new("y0", [new(0, 0, 0), new(x, 0, 0), new(x, 0, z), new(0, 0, z)], black, []),
            new("y1", [new(x, y, 0), new(0, y, 0), new(0, y, z), new(x, y, z)], black, []),
            new("x0", [new(0, y, 0), new(0, 0, 0), new(0, 0, z), new(0, y, z)], black, []),
            new("x1", [new(x, 0, 0), new(x, y, 0), new(x, y, z), new(x, 0, z)], black, []),
            new("floor", [new(0, 0, 0), new(0, y, 0), new(x, y, 0), new(x, 0, 0)], black, []),
            new("roof", [new(0, 0, z), new(x, 0, z), new(x, y, z), new(0, y, z)], black, []),
        ]);
    }
}
