using Glazewright.Science.Guards;

namespace Glazewright.Science.Light;

/// <summary>
/// Unscattered light at points inside a house: a ray from each point towards the light finds the face it comes through. What the covers scatter and what
/// is reflected inside is not here; the gain table has it as a whole.
/// </summary>
public sealed class PointLight
{
    private readonly List<Piece> pieces;
    private readonly CellPlanes planes;
    private readonly Surroundings surroundings;

    /// <summary>Prepares a house.</summary>
    /// <param name="enclosure">The house.</param>
    /// <param name="surroundings">What stands around it.</param>
    public PointLight(Enclosure enclosure, Surroundings surroundings)
    {
        ArgumentNullException.ThrowIfNull(enclosure);
        ArgumentNullException.ThrowIfNull(surroundings);
        this.surroundings = surroundings;
        pieces = Pieces.Of(enclosure, null);
        planes = new CellPlanes(pieces, Pieces.Below);
    }

    /// <summary>Light on a level spot at each point from a beam of unit normal irradiance.</summary>
    /// <param name="points">Inside the house, m.</param>
    /// <param name="houseAzimuthDeg">Anticlockwise from +x.</param>
    /// <param name="elevationDeg">0 to 90.</param>
    /// <param name="horizontalFactor">Filled: horizontal irradiance over beam-normal irradiance, one a point.</param>
    /// <exception cref="ArgumentOutOfRangeException">Out of range, or too little room.</exception>
    public void FromBeam(ReadOnlySpan<Vector3d> points, double houseAzimuthDeg, double elevationDeg, Span<double> horizontalFactor)
    {
        Within.RequireFinite(houseAzimuthDeg);
        Within.Require(elevationDeg, 0, 90);
        Within.Require(horizontalFactor.Length, points.Length, points.Length);
        horizontalFactor.Clear();
        Add(points, Vector3d.Towards(houseAzimuthDeg, elevationDeg), 1, horizontalFactor);
    }

    /// <summary>Light on a level spot at each point from an even sky of unit horizontal irradiance.</summary>
    /// <param name="points">Inside the house, m.</param>
    /// <param name="horizontalFactor">Filled: horizontal irradiance inside over outside, one a point.</param>
    /// <exception cref="ArgumentOutOfRangeException">Too little room.</exception>
    public void FromEvenSky(ReadOnlySpan<Vector3d> points, Span<double> horizontalFactor)
    {
        Within.Require(horizontalFactor.Length, points.Length, points.Length);
        horizontalFactor.Clear();
        foreach (SkyPatch patch in SkyPatches.UpperHalf)
        {
            Add(points, patch.Towards, patch.IrradianceFactor, horizontalFactor);
        }
    }

    private void Add(ReadOnlySpan<Vector3d> points, Vector3d towards, double strength, Span<double> sum)
    {
        if (surroundings.Hides(towards))
        {
            return;
        }

        Span<double> passes = stackalloc double[pieces.Count];
        Span<double> closing = stackalloc double[planes.Count];
        for (int i = 0; i < pieces.Count; i++)
        {
            double cosine = pieces[i].Normal.Dot(towards);
            passes[i] = cosine > 1e-9 && pieces[i].Covering is FaceCovering.Clear clear
                ? strength * towards.Z * clear.Optics.AtCosine(cosine).TransmittanceFraction
                    * (1 - clear.CaughtFraction(pieces[i].Normal, towards)) * (1 - clear.Optics.HazeFraction)
                : 0;
        }

        for (int g = 0; g < planes.Count; g++)
        {
            closing[g] = planes.Normal(g).Dot(towards);
        }

        for (int k = 0; k < points.Length; k++)
        {
            double share = passes[planes.Exit(points[k], towards, closing, -1)];
            sum[k] += share > 0 ? share * surroundings.Passing(points[k], towards) : 0;
        }
    }
}
