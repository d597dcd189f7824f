using Glazewright.Science.Light;

namespace Glazewright.Bench.Convergence;

/// <summary>A box of 2 × 3 × 1 whose opposite sides see each other by a closed form: a truth from outside for the view factors.</summary>
internal static class ClosedBox
{
    private static readonly double[] Size = [2, 3, 1];

    /// <summary>Root of the mean square error of the three pairs of opposite sides.</summary>
    internal static double RmsError(int rays)
    {
        List<Piece> pieces = Pieces.Of(Box(), null);
        double[,] exchange = ViewFactors.ExchangeAreas(pieces, rays);
        double sum = 0;
        for (int axis = 0; axis < 3; axis++)
        {
            double a = Size[(axis + 1) % 3] / Size[axis];
            double b = Size[(axis + 2) % 3] / Size[axis];
            double off = (exchange[2 * axis, (2 * axis) + 1] / pieces[2 * axis].AreaM2) - Opposite(a, b);
            sum += off * off;
        }

        return Math.Sqrt(sum / 3);
    }

    // Equal parallel rectangles (Howell's catalogue of configuration factors, C-11; from memory).
    private static double Opposite(double x, double y)
    {
        double x2 = 1 + (x * x);
        double y2 = 1 + (y * y);
        return 2 / (Math.PI * x * y) * (Math.Log(Math.Sqrt(x2 * y2 / (x2 + y2 - 1)))
            + (x * Math.Sqrt(y2) * Math.Atan(x / Math.Sqrt(y2))) + (y * Math.Sqrt(x2) * Math.Atan(y / Math.Sqrt(x2)))
            - (x * Math.Atan(x)) - (y * Math.Atan(y)));
    }

    private static Enclosure Box()
    {
        var black = new FaceCovering.Opaque(0);
        const double x = 2;
        const double y = 3;
        const double z = 1;
        return Enclosure.Of(
        [
            new("x0", [new(0, y, 0), new(0, 0, 0), new(0, 0, z), new(0, y, z)], black, []),
            new("x1", [new(x, 0, 0), new(x, y, 0), new(x, y, z), new(x, 0, z)], black, []),
            new("y0", [new(0, 0, 0), new(x, 0, 0), new(x, 0, z), new(0, 0, z)], black, []),
            new("y1", [new(x, y, 0), new(0, y, 0), new(0, y, z), new(x, y, z)], black, []),
            new("z0", [new(0, 0, 0), new(0, y, 0), new(x, y, 0), new(x, 0, 0)], black, []),
            new("z1", [new(0, 0, z), new(x, 0, z), new(x, y, z), new(0, y, z)], black, []),
        ]);
    }
}
