using Glazewright.Mechanics.Guards;

namespace Glazewright.Mechanics.Loads;

/// <summary>How a building lets wind in (ASCE 7 section 26.2).</summary>
public enum Enclosure
{
    /// <summary>Enclosed: GCpi ±0.18.</summary>
    Enclosed,

    /// <summary>Partially enclosed (one side mostly open): GCpi ±0.55.</summary>
    PartiallyEnclosed,
}

/// <summary>Where the wind comes from, looking at the section.</summary>
public enum WindFrom
{
    /// <summary>From the left, square to the ridge.</summary>
    Left,

    /// <summary>From the right, square to the ridge.</summary>
    Right,

    /// <summary>Along the ridge.</summary>
    End,
}

/// <summary>One wind case on a frame: a closed set.</summary>
public abstract record WindCase
{
    private WindCase()
    {
    }

    /// <summary>Where the wind comes from.</summary>
    public abstract WindFrom From { get; init; }

    /// <summary>Net pressures, positive toward the surface from outside, Pa.</summary>
    /// <param name="From">Where the wind comes from.</param>
    /// <param name="RoofUpper">True for the windward roof's coefficient toward pressure.</param>
    /// <param name="InternalPressure">True for internal pressure, false for internal suction.</param>
    /// <param name="LeftWallPa">On the left wall.</param>
    /// <param name="LeftRoofPa">On the left slope.</param>
    /// <param name="RightRoofPa">On the right slope.</param>
    /// <param name="RightWallPa">On the right wall.</param>
    public sealed record Pressures(
        WindFrom From, bool RoofUpper, bool InternalPressure, double LeftWallPa, double LeftRoofPa, double RightRoofPa, double RightWallPa)
        : WindCase
    {
        /// <inheritdoc/>
        public override WindFrom From { get; init; } = From;
    }

    /// <summary>The least wind of the standard: a push across, on the height of wall and of roof.</summary>
    /// <param name="From">Left or right.</param>
    /// <param name="WallPa">On the wall's height, Pa.</param>
    /// <param name="RoofPa">On the roof's height, Pa.</param>
    public sealed record LeastPush(WindFrom From, double WallPa, double RoofPa) : WindCase
    {
        /// <inheritdoc/>
        public override WindFrom From { get; init; } = From;
    }
}

/// <summary>Wind on the frames of a gable by the directional procedure (main wind-force resisting system).</summary>
public static class GableWind
{
    private const double LeastWallPa = 16 * UsUnits.PaPerPsf;
    private const double LeastRoofPa = 8 * UsUnits.PaPerPsf;
    private const double AlwaysRoofFactor = -0.18;

    /// <summary>Internal pressure coefficient.</summary>
    /// <param name="enclosure">Enclosure.</param>
    /// <returns>0.18 or 0.55; both signs act. ASCE 7 table 26.13-1. Read.</returns>
    public static double InternalFactor(Enclosure enclosure) => enclosure == Enclosure.Enclosed ? 0.18 : 0.55;

    /// <summary>Every wind case of a typical interior frame.</summary>
    /// <param name="site">The site, with the edition.</param>
    /// <param name="section">The section.</param>
    /// <param name="enclosure">Enclosure.</param>
    /// <returns>
    /// Square to the ridge from each side with both roof coefficients and both internal pressures; along the ridge with the suction of the zone
    /// within a roof height of the windward end, which the first interior frames stand in; and the least push from each side.
    /// </returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range.</exception>
    /// <remarks>
    /// ASCE 7 sections 27.1.5 and 27.3, the same figures in both editions. Windward wall with the velocity pressure at its eave. Torsional cases
    /// and edge zones of cladding are not among them.
    /// </remarks>
    public static IReadOnlyList<WindCase> On(WindSite site, GableSection section, Enclosure enclosure)
    {
        section.Check();
        double meanPa = VelocityPressure.DirectedPa(site, section.MeanRoofHeightM);
        double internalPa = InternalFactor(enclosure) * meanPa;
        var cases = new List<WindCase>();
        foreach (WindFrom from in (WindFrom[])[WindFrom.Left, WindFrom.Right])
        {
            Square(cases, site, section, from, meanPa, internalPa);
        }

        Endwise(cases, section, meanPa, internalPa);
        cases.Add(new WindCase.LeastPush(WindFrom.Left, LeastWallPa, LeastRoofPa));
        cases.Add(new WindCase.LeastPush(WindFrom.Right, LeastWallPa, LeastRoofPa));
        return cases;
    }

    private static void Square(
        List<WindCase> cases, WindSite site, GableSection section, WindFrom from, double meanPa, double internalPa)
    {
        bool fromLeft = from == WindFrom.Left;
        double g = PressureCoefficients.GustFactor;
        double heightRatio = section.MeanRoofHeightM / section.WidthM;
        double eavePa = VelocityPressure.DirectedPa(site, fromLeft ? section.LeftEaveM : section.RightEaveM);
        double windwardWallPa = g * PressureCoefficients.WindwardWallFactor * eavePa;
        double leewardWallPa = g * PressureCoefficients.LeewardWall(section.WidthM / section.LengthM) * meanPa;
        double windwardDeg = fromLeft ? section.LeftAngleDeg : section.RightAngleDeg;
        double leewardDeg = fromLeft ? section.RightAngleDeg : section.LeftAngleDeg;
        double windwardRunM = fromLeft ? section.LeftRunM : section.RightRunM;
        foreach (bool upper in (bool[])[false, true])
        {
            double windwardRoofPa = g * meanPa * Windward(section, windwardDeg, windwardRunM, heightRatio, upper);
            double leewardRoofPa = g * meanPa * Leeward(section, leewardDeg, windwardRunM, heightRatio, upper);
            foreach (bool inside in (bool[])[false, true])
            {
                double insidePa = inside ? internalPa : -internalPa;
                cases.Add(fromLeft
                    ? new WindCase.Pressures(
                        from, upper, inside, windwardWallPa - insidePa, windwardRoofPa - insidePa, leewardRoofPa - insidePa, leewardWallPa - insidePa)
                    : new WindCase.Pressures(
                        from, upper, inside, leewardWallPa - insidePa, leewardRoofPa - insidePa, windwardRoofPa - insidePa, windwardWallPa - insidePa));
            }
        }
    }

    private static double Windward(GableSection section, double angleDeg, double runM, double heightRatio, bool upper)
    {
        if (angleDeg < 10)
        {
            return upper ? AlwaysRoofFactor : MeanOverZones(section, 0, runM, heightRatio);
        }

        RoofPair pair = PressureCoefficients.WindwardRoof(Math.Min(90, angleDeg), heightRatio);
        return upper ? pair.UpperFactor : pair.LowerFactor;
    }

    private static double Leeward(GableSection section, double angleDeg, double windwardRunM, double heightRatio, bool upper)
    {
        if (angleDeg < 10)
        {
            return upper ? AlwaysRoofFactor : MeanOverZones(section, windwardRunM, section.WidthM, heightRatio);
        }

        return PressureCoefficients.LeewardRoof(Math.Min(90, angleDeg), heightRatio);
    }

    // A slope below 10° has zones by distance from the windward edge; a frame case carries their mean over the slope.
    private static double MeanOverZones(GableSection section, double fromM, double toM, double heightRatio)
    {
        double h = section.MeanRoofHeightM;
        double[] edges = [fromM, .. new[] { 0.5 * h, h, 2 * h }.Where(e => e > fromM && e < toM), toM];
        double sum = 0;
        for (int i = 0; i + 1 < edges.Length; i++)
        {
            double middleM = (edges[i] + edges[i + 1]) / 2;
            sum += (edges[i + 1] - edges[i]) * PressureCoefficients.FlowAlongRoof(middleM / h, heightRatio);
        }

        return sum / (toM - fromM);
    }

    private static void Endwise(List<WindCase> cases, GableSection section, double meanPa, double internalPa)
    {
        double g = PressureCoefficients.GustFactor;
        double wallPa = g * PressureCoefficients.SideWallFactor * meanPa;
        double suction = PressureCoefficients.FlowAlongRoof(0, section.MeanRoofHeightM / section.LengthM);
        foreach (bool upper in (bool[])[false, true])
        {
            double roofPa = g * meanPa * (upper ? AlwaysRoofFactor : suction);
            foreach (bool inside in (bool[])[false, true])
            {
                double insidePa = inside ? internalPa : -internalPa;
                cases.Add(new WindCase.Pressures(
                    WindFrom.End, upper, inside, wallPa - insidePa, roofPa - insidePa, roofPa - insidePa, wallPa - insidePa));
            }
        }
    }
}
