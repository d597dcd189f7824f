using Glazewright.Science.Light;
using Glazewright.Science.Light.Shadows;

namespace Glazewright.Science.Tests.Light;

/// <summary>
/// The light's error falls as theory says when directions, rays, cells and view-factor rays grow: the claim of the pictures in docs/methods/sun-and-light.md, on a small house.
/// A slope of s means error ∝ N^−s, from the first level to the third; between levels the error must fall. Bounds are theory's slope with room for three levels that are not yet far out;
/// those for the view factors and the levels of sun and cells were chosen after a first result.
/// </summary>
public class ConvergenceTests
{
    /// <summary>Many rays, so that directions alone are at fault.</summary>
    private static readonly ScanFineness Fine = new(16, 1);

    // Linear between nodes: h², that is 1/N in two angles, where steps are finer than shadows; less where they are not. A share that leans to one node would give 1/√N. The truth has no grid.
    [Fact]
    public void Sun_directions_fall_towards_one_over_their_number()
    {
        (double AzimuthDeg, double ElevationDeg, double Wh)[] sun = [.. Path()];
        Enclosure house = BeamScanTests.Framed();
        ReceivingPlane plane = Plane(20, 8);
        double[] exact = Light(house, plane, Fine, [.. sun.Select(s => Vector3d.Towards(s.AzimuthDeg, s.ElevationDeg))], [.. sun.Select(s => s.Wh)]);
        Falls("sun directions", 0.65, 1.25, [.. ((int[])[9, 18, 36]).Select(e =>
        {
            SunGrid grid = SunGrid.Even(2 * e, e);
            double[] beam = new double[grid.Count];
            foreach ((double azimuthDeg, double elevationDeg, double wh) in sun)
            {
                SunGridPlace at = grid.At(azimuthDeg, elevationDeg);
                beam[at.Node0] += wh * at.Weight0Fraction;
                beam[at.Node1] += wh * at.Weight1Fraction;
                beam[at.Node2] += wh * at.Weight2Fraction;
                beam[at.Node3] += wh * at.Weight3Fraction;
            }

            int[] lit = [.. Enumerable.Range(0, grid.Count).Where(i => beam[i] > 0)];
            return (lit.Length, Rms(Light(house, plane, Fine, [.. lit.Select(grid.Direction)], [.. lit.Select(i => beam[i])]), exact));
        })]);
    }

    // Lines at even distances across shadows: an edge is misplaced by a line at most, so the error goes with 1/lines.
    [Fact]
    public void Rays_fall_with_one_over_their_lines()
    {
        double[] exact = Sky(64);
        Falls("lines a cell", 0.75, 1.35, [.. ((int[])[2, 4, 8]).Select(lines => (lines, Rms(Sky(lines), exact)))]);

        double[] Sky(int lines) => Light(
            BeamScanTests.Framed(), Plane(20, 8), new ScanFineness(lines, 1), [.. SkyDome.Usual.Directions], [.. SkyDome.Usual.IrradianceFactors]);
    }

    // Middles of cells: h², that is 1/N, for light that is smooth over the plane. One whole wall shines alone: no door's edge, no errors of opposite sign.
    [Fact]
    public void The_scattered_mean_falls_with_one_over_the_cells()
    {
        Enclosure house = Houses.Usual();
        var light = new HouseLight(house, null, Surroundings.None);
        double[] free = new double[Pieces.Of(house, null).Count];
        free[0] = 1;
        double exact = light.On(Plane(320, 192)).MeanIrradiance(free);
        Falls("cells", 0.8, 1.2, [.. ((int[])[1, 2, 4]).Select(k =>
            (240 * k * k, Math.Abs((light.On(Plane(20 * k, 12 * k)).MeanIrradiance(free) / exact) - 1)))]);
    }

    // Halton points in four dimensions against edges: between the 1/√N of chance and the 1/N of a smooth integrand. Closed form of opposite rectangles (Howell's catalogue C-11; from memory).
    [Fact]
    public void View_factors_fall_faster_than_by_chance()
    {
        double[] size = [2, 3, 1];
        List<Piece> pieces = Pieces.Of(ViewFactorTests.Box(size[0], size[1], size[2]), null);
        Falls("view-factor rays", 0.5, 1, [.. ((int[])[128, 2048, 32_768]).Select(rays =>
        {
            double[,] exchange = ViewFactors.ExchangeAreas(pieces, rays);
            double sum = 0;
            foreach (Piece piece in pieces)
            {
                int i = pieces.IndexOf(piece);
                int j = pieces.FindIndex(p => p.Normal.Dot(piece.Normal) < -0.5);
                int axis = Math.Abs(piece.Normal.X) > 0.5 ? 0 : Math.Abs(piece.Normal.Y) > 0.5 ? 1 : 2;
                double off = (exchange[i, j] / piece.AreaM2) - Opposite(size[(axis + 1) % 3] / size[axis], size[(axis + 2) % 3] / size[axis]);
                sum += off * off / pieces.Count;
            }

            return (rays, Math.Sqrt(sum));
        })]);
    }

    private static void Falls(string what, double leastSlope, double mostSlope, (int Count, double Error)[] levels)
    {
        double slope = Math.Log(levels[0].Error / levels[^1].Error) / Math.Log((double)levels[^1].Count / levels[0].Count);
        TestContext.Current.TestOutputHelper?.WriteLine(FormattableString.Invariant(
            $"{what}: {string.Join("; ", levels.Select(l => FormattableString.Invariant($"{l.Count}: {l.Error:0.000000}")))}; slope {slope:0.00}"));
        Assert.All(levels.Zip(levels.Skip(1)), pair => Assert.True(pair.Second.Error < pair.First.Error));
        Assert.InRange(slope, leastSlope, mostSlope);
    }

    // The sun over a clear year at 42° north for a house that looks south by its left side: every ninth day, every six minutes.
    private static IEnumerable<(double AzimuthDeg, double ElevationDeg, double Wh)> Path()
    {
        const double latitude = 42 * Math.PI / 180;
        for (int day = 3; day < 365; day += 9)
        {
            double declination = 23.45 * Math.PI / 180 * Math.Sin(2 * Math.PI * (284 + day) / 365);
            for (int minute = 3; minute < 1440; minute += 6)
            {
                (double sin, double cos) = Math.SinCos((minute - 720) * Math.PI / 720);
                double south = (cos * Math.Cos(declination) * Math.Sin(latitude)) - (Math.Sin(declination) * Math.Cos(latitude));
                double west = sin * Math.Cos(declination);
                double up = (Math.Sin(latitude) * Math.Sin(declination)) + (Math.Cos(latitude) * Math.Cos(declination) * cos);
                if (up > 0.02)
                {
                    yield return ((Math.Atan2(-south, -west) * 180 / Math.PI) + 8, Math.Asin(up) * 180 / Math.PI, Math.Exp(-0.3 / up));
                }
            }
        }
    }

    private static double[] Light(Enclosure house, ReceivingPlane plane, ScanFineness fineness, Vector3d[] towards, double[] weights)
    {
        double[] sum = new double[plane.Count];
        LightTable.Build(house, Surroundings.None, plane, fineness, towards, CancellationToken.None).AddTo(weights, sum);
        return sum;
    }

    private static double Rms(double[] light, double[] exact) => Math.Sqrt(light.Zip(exact, (a, b) => ((a / b) - 1) * ((a / b) - 1)).Average());

    private static ReceivingPlane Plane(int along, int across) => ReceivingPlane.Of(new(0, 0, 0.8), new(1, 0, 0), new(0, 1, 0), 30, 8, along, across);

    private static double Opposite(double x, double y)
    {
        double x2 = 1 + (x * x);
        double y2 = 1 + (y * y);
        return 2 / (Math.PI * x * y) * (Math.Log(Math.Sqrt(x2 * y2 / (x2 + y2 - 1)))
            + (x * Math.Sqrt(y2) * Math.Atan(x / Math.Sqrt(y2))) + (y * Math.Sqrt(x2) * Math.Atan(y / Math.Sqrt(x2)))
            - (x * Math.Atan(x)) - (y * Math.Atan(y)));
    }
}
