using Glazewright.Science.Guards;

namespace Glazewright.Science.Shape;

/// <summary>Where direct sun lies on the far wall, heights in m.</summary>
/// <param name="LowM">Lowest lit height.</param>
/// <param name="HighM">Highest lit height; equal to the lowest when nothing is lit.</param>
public readonly record struct LitWall(double LowM, double HighM)
{
    /// <summary>True when any of the wall is lit.</summary>
    public bool IsLit => HighM > LowM;
}

/// <summary>
/// Closed forms for one profile angle: how far up the far wall the sun reaches, how deep the strip before it stays without direct sun, and both solved the
/// other way round. A ray that meets the far wall at height z and rises at the profile angle passes the ridge line at z + (width − offset)·tan ψ: below the
/// ridge it comes through the near slope or wall, above it through the far slope.
/// </summary>
/// <remarks>Plane trigonometry. Members, covering thickness and the sun's half degree are left out (docs/methods/shape.md).</remarks>
public static class NoonReach
{
    /// <summary>The lit part of the far wall.</summary>
    /// <param name="section">The section.</param>
    /// <param name="clear">Which parts let the sun in.</param>
    /// <param name="profileDeg">Profile angle from the near horizon, −90 to 180; at or below 0, and from 90 on (sun overhead or behind the far wall), nothing is lit.</param>
    /// <returns>The span from the lowest to the highest lit height.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static LitWall OnFarWall(GableSection section, ClearParts clear, double profileDeg)
    {
        section.Checked();
        Within.Require(clear.NearWallFromM, 0, 30);
        Within.Require(profileDeg, -90, 180);
        if (profileDeg is <= 0 or >= 90)
        {
            return default;
        }

        double tangent = Math.Tan(profileDeg * Math.PI / 180);
        double fall = section.WidthM * tangent;
        double sill = Math.Min(clear.NearWallFromM, section.NearEaveM) - fall;
        double eave = section.NearEaveM - fall;
        double ridge = section.RidgeM - ((section.WidthM - section.RidgeOffsetM) * tangent);
        double low = double.PositiveInfinity;
        double high = double.NegativeInfinity;
        Take(true, sill, eave);
        Take(clear.NearSlope, eave, ridge);
        Take(clear.FarSlope, ridge, section.FarEaveM);
        return high > low ? new LitWall(low, high) : default;

        void Take(bool lets, double from, double to)
        {
            from = Math.Clamp(from, 0, section.FarEaveM);
            to = Math.Clamp(to, 0, section.FarEaveM);
            if (lets && to > from)
            {
                low = Math.Min(low, from);
                high = Math.Max(high, to);
            }
        }
    }

    /// <summary>
    /// How far up the far wall the sun reaches under the ridge, opaque far slope: ridge − (width − offset)·tan ψ. Below 0 it falls short of the wall;
    /// it is not held to the eave.
    /// </summary>
    /// <param name="section">The section.</param>
    /// <param name="profileDeg">Above 0 to below 90.</param>
    /// <returns>m over the floor.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static double UnderRidgeM(GableSection section, double profileDeg)
    {
        section.Checked();
        return section.RidgeM - ((section.WidthM - section.RidgeOffsetM) * Tangent(profileDeg));
    }

    /// <summary>Depth of the strip before the far wall that the noon sun misses, at a height, under an opaque far slope and a clear near slope.</summary>
    /// <param name="section">The section.</param>
    /// <param name="profileDeg">Above 0 to 180: from 90 on all that lies behind the ridge is dark, and beyond 90 the sun's own side is the far one.</param>
    /// <param name="heightM">0 to the ridge: floor or bench top.</param>
    /// <returns>m, 0 to the width.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static double DarkStripM(GableSection section, double profileDeg, double heightM)
    {
        section.Checked();
        Within.Require(profileDeg, 1e-9, 180);
        Within.Require(heightM, 0, section.RidgeM);

        // cot ψ is 0 overhead and negative beyond: the shadow's edge then falls before the ridge.
        double cotangent = Math.Cos(profileDeg * Math.PI / 180) / Math.Max(1e-12, Math.Sin(profileDeg * Math.PI / 180));
        return Math.Clamp(section.WidthM - section.RidgeOffsetM - ((section.RidgeM - heightM) * cotangent), 0, section.WidthM);
    }

    /// <summary>Ridge height that brings the sun a wanted way up the far wall under an opaque far slope.</summary>
    /// <param name="widthM">Above 0 to 200 m.</param>
    /// <param name="ridgeOffsetM">0 to the width, m.</param>
    /// <param name="reachM">0 to 30 m.</param>
    /// <param name="profileDeg">Above 0 to below 90.</param>
    /// <returns>m.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static double RidgeForReachM(double widthM, double ridgeOffsetM, double reachM, double profileDeg)
    {
        Within.Require(widthM, 1e-3, 200);
        Within.Require(ridgeOffsetM, 0, widthM);
        Within.Require(reachM, 0, 30);
        return reachM + ((widthM - ridgeOffsetM) * Tangent(profileDeg));
    }

    /// <summary>Ridge offset that brings the sun a wanted way up the far wall under an opaque far slope, the ridge height kept.</summary>
    /// <param name="widthM">Above 0 to 200 m.</param>
    /// <param name="ridgeM">0 to 120 m.</param>
    /// <param name="reachM">0 to 30 m.</param>
    /// <param name="profileDeg">Above 0 to below 90.</param>
    /// <returns>m from the near wall; below 0 any offset does, above the width none (reach above the ridge).</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static double OffsetForReachM(double widthM, double ridgeM, double reachM, double profileDeg)
    {
        Within.Require(widthM, 1e-3, 200);
        Within.Require(ridgeM, 0, 120);
        Within.Require(reachM, 0, 30);
        return widthM - ((ridgeM - reachM) / Tangent(profileDeg));
    }

    /// <summary>Highest profile angle at which the sun reaches a wanted way up the far wall under an opaque far slope.</summary>
    /// <param name="section">The section.</param>
    /// <param name="reachM">0 to the ridge, m.</param>
    /// <returns>Degrees, 0 to 90.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static double ProfileForReachDeg(GableSection section, double reachM)
    {
        section.Checked();
        Within.Require(reachM, 0, section.RidgeM);
        return Math.Atan2(section.RidgeM - reachM, section.WidthM - section.RidgeOffsetM) * 180 / Math.PI;
    }

    private static double Tangent(double profileDeg)
    {
        Within.Require(profileDeg, 1e-9, 90 - 1e-9);
        return Math.Tan(profileDeg * Math.PI / 180);
    }
}
