using Glazewright.Design.Brief;
using Glazewright.Design.Catalogues;
using Glazewright.Design.Duty;
using Glazewright.Design.Form;
using Glazewright.Science.Flow;

namespace Glazewright.Design.Plant;

/// <summary>Upper fans: what a drawn cloth absorbs stays above it and has to go, or it comes down through the cloth.</summary>
internal static class UpperFans
{
    /// <summary>How much warmer than outside the air above the cloth may get, K: our judgement; cloth and films bring about a third of it down.</summary>
    public const double RiseK = 8;

    /// <summary>Asks for as many of the smallest fan as it takes.</summary>
    public static FixedItem ToSize { get; } = new("", 0);

    private const double HeatJPerKgK = 1006;

    /// <summary>The cloth that is drawn in sun: the second where it is there to shade, else the first.</summary>
    public static CurtainPlant? ClothOf(CurtainPlant? first, CurtainPlant? second) => second is { Purpose: CurtainPurpose.Shade } ? second : first;

    /// <summary>Share of the sun that a cloth turns into heat.</summary>
    public static double AbsorbedFraction(CurtainPlant cloth) => Math.Max(1 - cloth.SolarTransmittanceFraction - cloth.SolarReflectanceFraction, 0.05);

    /// <summary>Heat that the shell above the cloth loses for each kelvin over outside, W/K.</summary>
    public static double LossWPerK(BuildingForm form, DutyResult duty, CurtainPlant cloth) => DutyStage.Above(duty.Losses, form, cloth.HeightM);

    /// <summary>Outside air that keeps the space above a drawn cloth within <see cref="RiseK"/> of outside, m³/s.</summary>
    public static double NeededM3PerS(BuildingForm form, DutyResult duty, CurtainPlant cloth, double densityKgPerM3) =>
        Math.Max(AbsorbedFraction(cloth) * duty.SolarGainW / RiseK - LossWPerK(form, duty, cloth), 0) / (densityKgPerM3 * HeatJPerKgK);

    /// <summary>The smallest fan that the lot's power runs.</summary>
    public static FanEntry Smallest(PlantInput input, Catalogue catalogue) => catalogue.Fans
        .Where(f => f.Phases == 1 || input.Utilities.Phase == Phase.Three)
        .OrderBy(f => f.DiameterM).ThenBy(f => f.Phases).ThenBy(f => f.Id, StringComparer.Ordinal).First();

    /// <summary>Sizes them, or takes the job's; null where none is wanted or there is no curtain to be above.</summary>
    public static UpperFanPlant? Of(FixedItem? asked, PlantInput input, BuildingForm form, DutyResult duty, CurtainPlant? cloth, Catalogue catalogue, double densityKgPerM3)
    {
        if (asked is null || cloth is null)
        {
            return null;
        }

        FanEntry fan = asked.Entry.Length > 0
            ? Pick.ById(catalogue.Fans, asked.Entry, e => e.Id, $"{input.Pointer}/equipment/upperFans/entry")
            : Smallest(input, catalogue);
        FanCurve curve = Pick.Curve(fan.Points, densityKgPerM3);
        (double FlowM3PerS, double PowerW, bool Beyond) Through(LouverEntry l)
        {
            FanSystem.TryFind([new FanGroup(curve, 1)], [new AirPath.Louver(l.SizeM * l.SizeM, l.FreeFraction, 90, l.DischargeCoefficient)], densityKgPerM3, out var p);
            return (p.FlowM3PerS, p.PowerW, p.BeyondTested);
        }

        // An inlet for each fan: the smallest no smaller than the fan that keeps it within its tested points.
        LouverEntry[] bySize = [.. catalogue.Louvers.OrderBy(l => l.SizeM)];
        LouverEntry inlet = Array.Find(bySize, l => l.SizeM >= fan.DiameterM && !Through(l).Beyond) ?? bySize[^1];
        (double FlowM3PerS, double PowerW, bool Beyond) point = Through(inlet);
        double needed = NeededM3PerS(form, duty, cloth, densityKgPerM3);
        int count = asked.Count > 0 ? asked.Count : Math.Max((int)Math.Ceiling(needed / Math.Max(point.FlowM3PerS, 1e-6) - 1e-9), 1);
        return new UpperFanPlant(
            fan.Id, count, fan.DiameterM, fan.FrameM, point.FlowM3PerS, point.PowerW, needed, inlet.Id, inlet.SizeM, inlet.MotorW);
    }
}
