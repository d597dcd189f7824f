using Glazewright.Science.Guards;

namespace Glazewright.Science.Shape;

/// <summary>
/// The cross-section of a gable house with unequal sides. "Near" is the side that faces the equator, "far" the other; y runs from the near wall (0) to the
/// far wall (width), z up from the floor.
/// </summary>
/// <param name="WidthM">Across, m.</param>
/// <param name="NearEaveM">Eave on the equator's side, m.</param>
/// <param name="FarEaveM">Eave on the pole's side, m.</param>
/// <param name="RidgeOffsetM">Ridge from the near wall, m.</param>
/// <param name="RidgeM">Ridge height, m.</param>
public readonly record struct GableSection(double WidthM, double NearEaveM, double FarEaveM, double RidgeOffsetM, double RidgeM)
{
    /// <summary>Rise over run of the near slope.</summary>
    public double NearPitchRatio => (RidgeM - NearEaveM) / RidgeOffsetM;

    /// <summary>Rise over run of the far slope.</summary>
    public double FarPitchRatio => (RidgeM - FarEaveM) / (WidthM - RidgeOffsetM);

    /// <summary>Length of the near slope, m.</summary>
    public double NearSlopeM => Math.Sqrt((RidgeOffsetM * RidgeOffsetM) + ((RidgeM - NearEaveM) * (RidgeM - NearEaveM)));

    /// <summary>Length of the far slope, m.</summary>
    public double FarSlopeM
    {
        get
        {
            double run = WidthM - RidgeOffsetM;
            return Math.Sqrt((run * run) + ((RidgeM - FarEaveM) * (RidgeM - FarEaveM)));
        }
    }

    /// <summary>Area of the section, m².</summary>
    public double AreaM2 => (RidgeOffsetM * (NearEaveM + RidgeM) / 2) + ((WidthM - RidgeOffsetM) * (FarEaveM + RidgeM) / 2);

    /// <summary>A section from eaves, ridge place and pitch of the near slope; the far slope closes it.</summary>
    /// <param name="widthM">0.5 to 200 m.</param>
    /// <param name="nearEaveM">0 to 30 m.</param>
    /// <param name="farEaveM">0 to 30 m.</param>
    /// <param name="ridgeOffsetM">Between the walls, m.</param>
    /// <param name="nearPitchRatio">Rise over run, 0 to 4.</param>
    /// <returns>The section.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range, or a ridge below the far eave.</exception>
    public static GableSection Closed(double widthM, double nearEaveM, double farEaveM, double ridgeOffsetM, double nearPitchRatio)
    {
        Within.Require(nearPitchRatio, 0, 4);
        return new GableSection(widthM, nearEaveM, farEaveM, ridgeOffsetM, nearEaveM + (ridgeOffsetM * nearPitchRatio)).Checked();
    }

    /// <summary>The same, when it is a house: walls, a ridge between them and not below either eave.</summary>
    /// <returns>This section.</returns>
    /// <exception cref="ArgumentOutOfRangeException">It is not.</exception>
    public GableSection Checked()
    {
        Within.Require(WidthM, 0.5, 200);
        Within.Require(NearEaveM, 0, 30);
        Within.Require(FarEaveM, 0, 30);
        Within.Require(RidgeOffsetM, 1e-6 * WidthM, (1 - 1e-6) * WidthM);
        Within.Require(RidgeM, Math.Max(NearEaveM, FarEaveM), 120);
        return this;
    }
}

/// <summary>Which parts of a section let the sun in.</summary>
/// <param name="NearWallFromM">The near wall is clear from this height up, m; at or above its eave the whole wall is opaque.</param>
/// <param name="NearSlope">The near slope is clear.</param>
/// <param name="FarSlope">The far slope is clear.</param>
public readonly record struct ClearParts(double NearWallFromM, bool NearSlope, bool FarSlope);
