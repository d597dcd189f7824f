using Glazewright.Design.Form;
using Glazewright.Science.Climate;
using Glazewright.Science.Flow;

namespace Glazewright.Design.Plant;

/// <summary>What roof and side vents pass by themselves: warmth of 4 K and a wind of 2 m/s, each alone and both.</summary>
/// <param name="StackM3PerS">By warmth alone.</param>
/// <param name="WindM3PerS">By wind alone.</param>
/// <param name="Alone">Only the roof or only the side opens: air comes and goes by the same openings.</param>
internal sealed record VentAir(double StackM3PerS, double WindM3PerS, bool Alone)
{
    /// <summary>How much warmer than outside the house is taken, K.</summary>
    public const double WarmerK = 4;

    /// <summary>Wind taken, m/s.</summary>
    public const double BreezeMs = 2;

    /// <summary>Both at once, in quadrature.</summary>
    public double BothM3PerS => Openings.TogetherM3PerS(StackM3PerS, WindM3PerS);

    private const double VentCoefficient = 0.6;

    /// <summary>Air through an opening with an insect screen of its own size over that of the bare one: both losses in series.</summary>
    /// <param name="porosityFraction">Open share of the cloth; 0 for none.</param>
    /// <returns>0 to 1.</returns>
    public static double ScreenedFraction(double porosityFraction) => porosityFraction > 0
        ? 1 / Math.Sqrt(1 + Math.Pow(VentCoefficient / Intake.ScreenCoefficientOf(porosityFraction), 2))
        : 1;

    /// <summary>For the vents of a house, behind their screen where there is one.</summary>
    /// <param name="vents">The vents.</param>
    /// <param name="form">The house.</param>
    /// <param name="outsideC">Outside air, °C.</param>
    public static VentAir Of(VentPlant vents, BuildingForm form, double outsideC) => Of(vents.PassingRoofM2, vents.PassingSideM2, form, outsideC);

    /// <summary>For vents of given areas.</summary>
    /// <param name="roofM2">Roof vents, m².</param>
    /// <param name="sideM2">Side vents, m².</param>
    /// <param name="form">The house.</param>
    /// <param name="outsideC">Outside air, °C.</param>
    public static VentAir Of(double roofM2, double sideM2, BuildingForm form, double outsideC)
    {
        double riseM = Math.Max(form.Roof.RidgeM - Math.Min(form.Roof.LeftEaveM, form.Roof.RightEaveM) / 2, 0.3);
        double outC = Math.Clamp(outsideC, -60, 55);
        bool alone = roofM2 <= 0 || sideM2 <= 0;
        double OneSided(double insideC, double windMs) => Openings.OneSidedM3PerS(
            Math.Max(roofM2, sideM2), roofM2 > 0 ? HouseParameters.UsualRoofVentHeightM : HouseParameters.UsualSideVentHeightM,
            HouseParameters.UsualVentDischargeFactor, insideC, outC, HouseParameters.UsualVentWindFactor, windMs);
        return alone
            ? new VentAir(OneSided(outC + WarmerK, 0), OneSided(outC, BreezeMs), true)
            : new VentAir(Openings.Stack(sideM2, roofM2, riseM, VentCoefficient, outC + WarmerK, outC).FlowM3PerS, Openings.WindM3PerS(0.3, Math.Min(sideM2, roofM2), BreezeMs), false);
    }
}
