using Glazewright.Science.Light;
using Glazewright.Science.Light.Shadows;

namespace Glazewright.Science.Tests.Light;

/// <summary>
/// The slow way: one ray at a time from a point towards the light, met with every bar's body and every neighbour, out through whichever piece it leaves by.
/// Shares no code with the drawn shadows but the house's pieces.
/// </summary>
internal sealed class RayReference(Enclosure enclosure, Surroundings surroundings)
{
    private readonly List<Piece> pieces = Pieces.Of(enclosure, null);

    /// <summary>Unscattered light at a point from a beam, over beam-normal irradiance.</summary>
    internal double At(Vector3d point, Vector3d normal, Vector3d towards)
    {
        if (normal.Dot(towards) <= 0 || surroundings.Hides(towards) || enclosure.Bars.Any(b => Meets(b, point, towards)))
        {
            return 0;
        }

        Piece exit = pieces[new CellPlanes(pieces, Pieces.Below).Exit(point, towards, Closing(towards), -1)];
        return exit.Covering is FaceCovering.Clear clear
            ? normal.Dot(towards) * clear.At(exit.Normal, towards).TransmittanceFraction
                * (1 - clear.CaughtFraction(exit.Normal, towards)) * (1 - clear.Optics.HazeFraction) * surroundings.Passing(point, towards)
            : 0;
    }

    private double[] Closing(Vector3d towards)
    {
        var planes = new CellPlanes(pieces, Pieces.Below);
        return [.. Enumerable.Range(0, planes.Count).Select(g => planes.Normal(g).Dot(towards))];
    }

    private static bool Meets(ShadeBar bar, Vector3d from, Vector3d towards)
    {
        Vector3d along = bar.B - bar.A;
        double length = along.LengthM;
        Vector3d axis = along.Unit();
        Vector3d middle = 0.5 * (bar.A + bar.B);
        if (bar.Shape == BarShape.Round)
        {
            // Nearest approach of the ray to the axis.
            Vector3d across = axis.Cross(towards);
            double gap = Math.Abs(across.Unit().Dot(middle - from));
            double radius = bar.HalfWidth.LengthM;
            if (gap >= radius)
            {
                return false;
            }

            Vector3d flat = towards - (axis.Dot(towards) * axis);
            double t = flat.Dot(middle - from) / flat.Dot(flat);
            double place = axis.Dot(from + (t * towards) - bar.A);
            return t > 0 && place > 0 && place < length;
        }

        double enter = double.NegativeInfinity;
        double leave = double.PositiveInfinity;
        foreach ((Vector3d direction, double half) in new[]
        {
            (axis, length / 2), (bar.HalfWidth.Unit(), bar.HalfWidth.LengthM), (bar.HalfDepth.Unit(), bar.HalfDepth.LengthM),
        })
        {
            double offset = direction.Dot(middle - from);
            double speed = direction.Dot(towards);
            if (Math.Abs(speed) < 1e-12)
            {
                if (Math.Abs(offset) > half)
                {
                    return false;
                }

                continue;
            }

            enter = Math.Max(enter, Math.Min((offset - half) / speed, (offset + half) / speed));
            leave = Math.Min(leave, Math.Max((offset - half) / speed, (offset + half) / speed));
        }

        return leave > Math.Max(enter, 0);
    }
}
