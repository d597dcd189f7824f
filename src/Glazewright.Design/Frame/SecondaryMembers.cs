using Glazewright.Design.Form;
using Glazewright.Mechanics.Checks;
using Glazewright.Mechanics.Loads;
using Glazewright.Mechanics.Sections;

namespace Glazewright.Design.Frame;

/// <summary>How hard a purlin or girt works, and when.</summary>
internal sealed record SpanUse(string Name, MemberRole Role, double UseFraction, string Combination, double DeflectionM, double SpanM, IReadOnlyList<CheckGap> Gaps)
{
    internal double DeflectionUse => DeflectionM * DeflectionLimit.Greenhouse.SpanOverRatio / SpanM;
}

/// <summary>
/// Purlins and girts as simple spans of one bay, LRFD. A purlin stands square to its slope and carries the part of the weight along the slope in its
/// weak axis, over the whole bay, with no help from the sheet. Roof wind is the frame's own pressure, at least 16 psf: not the edge and corner zones.
/// </summary>
internal static class SecondaryMembers
{
    private const double Gravity = 9.80665;

    internal static SpanUse Purlin(FrameInput input, FrameLoadSite site, TubeSection section, double spacingM, bool left)
    {
        double angleRad = (left ? site.Section.LeftAngleDeg : site.Section.RightAngleDeg) * Math.PI / 180;
        double cosine = Math.Cos(angleRad);
        double sine = Math.Sin(angleRad);
        double deadN = (left ? site.LeftRoofDeadPa : site.RightRoofDeadPa) * spacingM + section.MassKgPerM * Gravity;
        double hungN = (input.Choice.CollateralPa + input.Choice.CropLoadPa) * cosine * spacingM;
        double liveN = RoofLiveLoad.GreenhousePa * cosine * spacingM;
        double snowN = cosine * spacingM * site.Snow.Cases.Max(c => left ? c.Left.UniformPa + c.Left.SurchargePa : c.Right.UniformPa + c.Right.SurchargePa);
        (double inwardPa, double outwardPa) = RoofWind(site, left);
        MemberCapacity capacity = TubeCheck.CapacityOf(
            section, FrameTrial.SteelOf(input, section), new MemberLengths(site.BayM, site.BayM, site.BayM), DesignMethod.Lrfd);
        var worst = new Worst(capacity, site.BayM);
        foreach (LoadCombination c in LoadCombinations.Of(site.Snow.Edition, DesignMethod.Lrfd))
        {
            double weightN = c.DeadFactor * deadN + c.CollateralFactor * hungN + c.RoofLiveFactor * liveN + c.FactorFor(site.Snow) * snowN;
            foreach (double windPa in c.WindFactor == 0 ? (double[])[0] : [inwardPa, outwardPa])
            {
                worst.Try(FrameWords.Combination(c, null, null), weightN * cosine + c.WindFactor * windPa * spacingM, weightN * sine, 0, 0);
            }

            if (c is { RoofLiveFactor: 1.6, WindFactor: 0 })
            {
                double restN = c.DeadFactor * deadN + c.CollateralFactor * hungN;
                double personN = 1.6 * RoofLiveLoad.PersonN;
                worst.Try(FrameWords.WithPerson(c), restN * cosine, restN * sine, personN * cosine, personN * sine);
            }
        }

        double serviceSnow = site.Snow.Edition == LoadEdition.Asce722 ? 0.7 : 1.0;
        double serviceN = (deadN + hungN + Math.Max(liveN, serviceSnow * snowN)) * cosine;
        double windServiceN = FrameService.ServiceWindFactor * Math.Max(inwardPa, -outwardPa) * spacingM;
        double sag = SimpleSpan.Of(
            site.BayM, Math.Max(serviceN, windServiceN), 0, capacity.Steel.ElasticPa, section.StrongInertiaM4).DeflectionM;
        return new SpanUse(left ? "purlin-left" : "purlin-right", MemberRole.Purlin, worst.Use, worst.Name, sag, site.BayM, capacity.Gaps);
    }

    internal static SpanUse Girt(FrameInput input, FrameLoadSite site, TubeSection section, double spacingM, bool left)
    {
        return Girt(input, site, section, spacingM, site.BayM, left ? site.LeftWallDeadPa : site.RightWallDeadPa, false, left ? "girt-left" : "girt-right").Use;
    }

    /// <summary>A girt of any wall as a simple span.</summary>
    internal static (SpanUse Use, double WindPa) Girt(
        FrameInput input, FrameLoadSite site, TubeSection section, double spacingM, double spanM, double deadPa, bool nearCorner, string name)
    {
        // Effective wind area: span times the larger of spacing and a third of the span.
        double areaM2 = spanM * Math.Max(spacingM, spanM / 3);
        WallPressures p = WallCladdingWind.On(site.WindSite, Math.Min(18, site.Section.MeanRoofHeightM), areaM2, nearCorner, Enclosure.Enclosed);
        double deadN = deadPa * spacingM + section.MassKgPerM * Gravity;
        MemberCapacity capacity = TubeCheck.CapacityOf(section, FrameTrial.SteelOf(input, section), new MemberLengths(spanM, spanM, spanM), DesignMethod.Lrfd);
        var worst = new Worst(capacity, spanM);
        foreach (LoadCombination c in LoadCombinations.Of(site.Snow.Edition, DesignMethod.Lrfd).Where(c => c.WindFactor == 1))
        {
            worst.Try(FrameWords.Combination(c, null, null), c.WindFactor * p.InwardPa * spacingM, c.DeadFactor * deadN, 0, 0);
            worst.Try(FrameWords.Combination(c, null, null), c.WindFactor * p.OutwardPa * spacingM, c.DeadFactor * deadN, 0, 0);
        }

        double servicePa = FrameService.ServiceWindFactor * Math.Max(p.InwardPa, -p.OutwardPa);
        double sag = SimpleSpan.Of(spanM, servicePa * spacingM, 0, capacity.Steel.ElasticPa, section.StrongInertiaM4).DeflectionM;
        return (new SpanUse(name, MemberRole.Girt, worst.Use, worst.Name, sag, spanM, capacity.Gaps), Math.Max(p.InwardPa, -p.OutwardPa));
    }

    /// <summary>Widest spacing that the members of a role really have on a slope or wall, m.</summary>
    internal static double SpacingM(double lengthM, double wishM) => lengthM / Math.Max(1, Math.Ceiling(lengthM / wishM - 1e-9));

    private static (double InwardPa, double OutwardPa) RoofWind(FrameLoadSite site, bool left)
    {
        double least = WallCladdingWind.LeastPa;
        double[] on = [.. site.Wind.OfType<WindCase.Pressures>().Select(p => left ? p.LeftRoofPa : p.RightRoofPa)];
        return (Math.Max(least, on.Max()), Math.Min(-least, on.Min()));
    }

    private sealed class Worst(MemberCapacity capacity, double spanM)
    {
        internal double Use { get; private set; } = -1;

        internal string Name { get; private set; } = "";

        internal void Try(string name, double strongNPerM, double weakNPerM, double strongPointN, double weakPointN)
        {
            SpanResult strong = SimpleSpan.Of(spanM, strongNPerM, strongPointN, capacity.Steel.ElasticPa, capacity.Section.StrongInertiaM4);
            SpanResult weak = SimpleSpan.Of(spanM, weakNPerM, weakPointN, capacity.Steel.ElasticPa, capacity.Section.WeakInertiaM4);
            double use = TubeCheck.Of(capacity, new MemberForces(0, strong.MomentNm, weak.MomentNm, strong.ShearN)).LargestRatio;
            if (use > Use)
            {
                Use = use;
                Name = name;
            }
        }
    }
}
