using Glazewright.Design.Frame;
using Glazewright.Mechanics.Checks;
using Glazewright.Mechanics.Loads;
using Glazewright.Mechanics.Sections;

namespace Glazewright.Design.Framing;

/// <summary>What a stick is checked for, unfactored.</summary>
/// <param name="WindPa">Wind on wall parts of its own area, Pa: the larger way.</param>
/// <param name="AreaM2">Effective wind area, m².</param>
/// <param name="IsNearCorner">In the end zone of the wall.</param>
/// <param name="Wind">Wind across the wall, N and N/m.</param>
/// <param name="Weight">Weight on a horizontal between its supports, N and N/m.</param>
/// <param name="WeightSpanM">Its longest span under weight, m.</param>
/// <param name="AxialN">Weight down an upright, N.</param>
internal sealed record StickDemand(double WindPa, double AreaM2, bool IsNearCorner, StickLoad Wind, StickLoad Weight, double WeightSpanM, double AxialN);

/// <summary>How hard a stick works in a tube.</summary>
/// <param name="Section">The tube.</param>
/// <param name="SpanM">Span across the wall, m.</param>
/// <param name="Demand">What it is checked for.</param>
/// <param name="Combination">Governing combination.</param>
/// <param name="WindMomentNm">Factored moment of the wind there, amplified, N·m.</param>
/// <param name="WeightMomentNm">Factored moment of the weight, N·m.</param>
/// <param name="AxialN">Factored compression, N.</param>
/// <param name="ShearN">Factored shear, N.</param>
/// <param name="Capacity">Strengths.</param>
/// <param name="StrengthUse">Demand over strength.</param>
/// <param name="SagM">Deflection at service that governs, m.</param>
/// <param name="SagSpanM">Span it is of, m.</param>
/// <param name="SagLimitRatio">Span over the deflection allowed.</param>
internal sealed record StickUse(
    TubeSection Section, double SpanM, StickDemand Demand, string Combination, double WindMomentNm, double WeightMomentNm, double AxialN, double ShearN, MemberCapacity Capacity,
    double StrengthUse, double SagM, double SagSpanM, double SagLimitRatio)
{
    internal double DeflectionUse => SagM * SagLimitRatio / SagSpanM;

    internal double Use => Math.Max(StrengthUse, DeflectionUse);
}

/// <summary>
/// Sticks of a wall as simple spans, LRFD: wind bends them the strong way (the deep side of the tube stands across the wall), weight bends horizontals the
/// weak way and presses uprights, whose bending it amplifies by 1/(1 − P/Pe). AISC 360-16 chapters E, F, G, H1 and appendix 8 (B1 with Cm = 1; from memory).
/// </summary>
internal static class StickCheck
{
    /// <summary>A head or sill sags by no more than its span over this, so that doors and shutters move (common practice).</summary>
    internal const double WeightSpanOverRatio = 240;

    // Longer members fail by their moments; strengths need no more.
    private const double LongestM = 60;

    internal static readonly TubeSection[] List = FrameSizing.ByMass(
    [
        "tube-2x2x0.120", "tube-3x2x0.120", "tube-4x2x0.120", "tube-4x2x0.188", "tube-6x2x0.188", "tube-6x3x0.188", "tube-6x4x0.188", "tube-8x4x0.188", "tube-8x4x0.250",
        "tube-8x6x0.250", "tube-10x6x0.250", "tube-10x6x0.375",
    ]);

    internal static StickUse Of(FrameInput input, LoadEdition edition, Stick stick, TubeSection section, StickDemand demand)
    {
        double spanM = stick.SpanM;
        Steel steel = FrameTrial.SteelOf(input, section);
        double lengthM = Math.Min(spanM, LongestM);
        MemberCapacity capacity = TubeCheck.CapacityOf(section, steel, new MemberLengths(lengthM, lengthM, lengthM), DesignMethod.Lrfd);
        PointSpanResult wind = PointLoadSpan.Of(spanM, demand.Wind.Strips, demand.Wind.Points, steel.ElasticPa, section.StrongInertiaM4);
        PointSpanResult weight = PointLoadSpan.Of(demand.WeightSpanM, demand.Weight.Strips, demand.Weight.Points, steel.ElasticPa, section.WeakInertiaM4);
        double eulerN = Math.PI * Math.PI * steel.ElasticPa * section.StrongInertiaM4 / (spanM * spanM);
        StickUse? worst = null;
        foreach (LoadCombination c in LoadCombinations.Of(edition, DesignMethod.Lrfd))
        {
            double axialN = c.DeadFactor * demand.AxialN;
            double more = 1 / Math.Max(1 - axialN / eulerN, 0.01);
            double strong = c.WindFactor * Math.Abs(wind.MomentNm) * more;
            double weak = c.DeadFactor * Math.Abs(weight.MomentNm);
            double shearN = Math.Max(c.WindFactor * wind.ShearN, c.DeadFactor * weight.ShearN);
            Utilisation u = TubeCheck.Of(capacity, new MemberForces(-axialN, strong, weak, shearN));
            if (worst is null || u.LargestRatio > worst.StrengthUse)
            {
                worst = new StickUse(
                    section, spanM, demand, FrameWords.Combination(c, null, null), strong, weak, axialN, shearN, capacity, u.LargestRatio, 0, spanM, DeflectionLimit.Greenhouse.SpanOverRatio);
            }
        }

        double windSagM = FrameService.ServiceWindFactor * Math.Abs(wind.DeflectionM);
        double weightSagM = Math.Abs(weight.DeflectionM);
        StickUse use = capacity.Gaps.Contains(CheckGap.ThinWalls) ? worst! with { StrengthUse = 99 } : worst!;
        return windSagM * DeflectionLimit.Greenhouse.SpanOverRatio / spanM >= weightSagM * WeightSpanOverRatio / demand.WeightSpanM
            ? use with { SagM = windSagM }
            : use with { SagM = weightSagM, SagSpanM = demand.WeightSpanM, SagLimitRatio = WeightSpanOverRatio };
    }

    /// <summary>Pressure on a stick by its own area.</summary>
    internal static (double WindPa, double AreaM2) Wind(FrameLoadSite site, double spanM, double ownM2, bool nearCorner)
    {
        double areaM2 = Math.Max(ownM2, spanM * spanM / 3);
        WallPressures p = WallCladdingWind.On(site.WindSite, Math.Min(18, site.Section.MeanRoofHeightM), areaM2, nearCorner, Enclosure.Enclosed);
        return (Math.Max(p.InwardPa, -p.OutwardPa), areaM2);
    }

    /// <summary>Width of the end zone of a wall, m: a tenth of the least plan size or 0.4 of the mean roof height, the smaller; at least 4 % of the least size and 0.9 m (ASCE 7 figure 30.3-1; from memory).</summary>
    internal static double EndZoneM(double leastSizeM, double meanHeightM) =>
        Math.Max(Math.Min(0.1 * leastSizeM, 0.4 * meanHeightM), Math.Max(0.04 * leastSizeM, 0.9));
}
