using Glazewright.Design.Catalogues;
using Glazewright.Design.Contracts;
using Glazewright.Design.Duty;
using Glazewright.Design.Form;
using Glazewright.Design.GainTables;
using Glazewright.Design.Plant;
using Glazewright.Science.Flow;
using Glazewright.Science.Roots;

namespace Glazewright.Design.Behaviour;

/// <summary>Mixing, curtain and filter-fan pressure.</summary>
internal static class HeatBehaviour
{
    /// <summary>Pressure coefficient of an end wall that the wind blows along (common practice).</summary>
    private const double EndInWind = -0.5;

    /// <summary>Sun on the cloth of a cold sunny morning, W/m², and the share of the crop's part that warms the air: our choices.</summary>
    private const double MorningSunWm2 = 250;
    private const double SensibleFraction = 0.6;

    // Heat of the house's own air on the design night, at the site's pressure: on a mountain a sixth less air is in a cubic metre.
    private static double AirJPerM3K(DutyResult duty) => duty.PressurePa / (287.05 * (duty.NightTargetC + 273.15)) * 1006;

    public static MixingBehaviour? Mixing(BuildingForm form, DutyResult duty, PlantResult plant, Catalogue catalogue)
    {
        if (plant.Circulation is not { Count: > 0 } fans || fans.CropSpeedMs <= 0)
        {
            return null;
        }

        double loopM = 2 * Math.Max(form.LengthM - 6, 3);
        double turnS = loopM / fans.CropSpeedMs;
        double lowEaveM = Math.Min(form.Roof.LeftEaveM, form.Roof.RightEaveM);
        double eachWay = fans.CropSpeedMs * form.WidthM * lowEaveM / 2;
        double night = HeatAsked.Of(duty, plant.Pressure).LossDrawnWPerK * Math.Max(duty.NightTargetC - duty.Conditions.Heating996C, 0);
        double diameterM = catalogue.Circulation.First(c => c.Id == fans.Entry).DiameterM;
        return new MixingBehaviour(
            loopM, turnS, 3 * turnS, night / (AirJPerM3K(duty) * eachWay), Circulation.ThrowDiametersRatio * diameterM, fans.SpacingM, night / catalogue.Pipes[0].OutputWPerM);
    }

    public static CurtainBehaviour? Curtain(BuildingForm form, DutyResult duty, PlantResult plant, bool metric = false)
    {
        if (plant.Curtain is not { } cloth)
        {
            return null;
        }

        double curtainM = cloth.HeightM;
        double above = DutyStage.Above(duty.Losses, form, curtainM);
        double below = duty.LossWPerK - above;
        double through = plant.SecondCurtain is null
            ? form.FloorAreaM2 / (cloth.Layers * HeatPaths.CurtainM2KPerW)
            : Through(above, duty.LossDrawnWPerK - below); // both, as Duty has them
        double outsideC = duty.Conditions.Heating996C;
        double heatW = duty.HeatLossDrawnW;
        double airJPerM3K = AirJPerM3K(duty);

        // Heat at what the drawn house asks: below and above the cloth settle by the cloth's conductance and the air that trades places.
        GapAt At(double gapM)
        {
            (double BelowC, double AboveC, double Flow) Settle(double flow)
            {
                double between = through + airJPerM3K * flow;
                double series = above > 0 ? 1 / (1 / between + 1 / above) : 0;
                double belowC = outsideC + heatW / (below + series);
                return (belowC, above > 0 ? outsideC + series / above * (belowC - outsideC) : belowC, flow);
            }

            double Trade(double flow)
            {
                (double b, double a, _) = Settle(flow);
                return Openings.SlotExchangeM3PerS(gapM, form.LengthM, Math.Clamp(b, -40, 80), Math.Clamp(a, -60, 80));
            }

            double flow = gapM > 0 ? Bracketed.Find(f => Trade(f) - f, 0, Math.Max(Trade(0), 1e-6), 1e-6).Argument : 0;
            (double belowC, double aboveC, _) = Settle(flow);
            return new GapAt(gapM, flow, belowC, aboveC);
        }

        // A cold sunny morning, heaters off: the cloth takes up sun and warms the space above; below gets what the cloth lets through, and all of it in the gap.
        double clothM2 = Math.Max(SmallSystems.WidthAtM(form, curtainM) * form.LengthM, 1);
        HouseCurtain drawn = plant.SecondCurtain is { } under ? HouseCurtain.Over(Light(cloth), Light(under)) : Light(cloth);
        double absorbed = Math.Max(1 - drawn.TransmittanceFraction - drawn.ReflectanceFraction, 0.05);
        GapAt InSun(double openFraction, double gapM)
        {
            double sunW = MorningSunWm2 * clothM2;
            double belowW = SensibleFraction * sunW * (openFraction + (1 - openFraction) * drawn.TransmittanceFraction);
            double aboveW = sunW * (1 - openFraction) * absorbed;
            (double BelowC, double AboveC) Settle(double flow)
            {
                double between = (1 - openFraction) * through + airJPerM3K * flow;
                double overAboveK = (aboveW * (below + between) + belowW * between) / Math.Max((above + between) * (below + between) - between * between, 1e-9);
                double overBelowK = (belowW + between * overAboveK) / Math.Max(below + between, 1e-9);
                return (outsideC + overBelowK, outsideC + overAboveK);
            }

            double Trade(double flow)
            {
                (double b, double a) = Settle(flow);
                return Openings.SlotExchangeM3PerS(gapM, form.LengthM, Math.Clamp(b, -40, 80), Math.Clamp(a, -60, 80));
            }

            double most = Trade(0);
            double flow = gapM > 0 && most > 0 ? Bracketed.Find(f => Trade(f) - f, 0, most, 1e-6).Argument : 0;
            (double belowC, double aboveC) = Settle(flow);
            return new GapAt(gapM, flow, belowC, aboveC);
        }

        // Fully open the whole house is one space.
        double openC = outsideC + SensibleFraction * MorningSunWm2 * clothM2 / Math.Max(duty.LossWPerK, 1e-9);

        // Cloth packs to about a twelfth of its width (common practice: 1 in a foot).
        double stackM = SmallSystems.WidthAtM(form, curtainM) / 12;
        return new CurtainBehaviour(
            duty.HeatLossW > 0 ? 1 - duty.HeatLossDrawnW / duty.HeatLossW : 0,
            Steps.GapsM(metric).Select(At).ToEqList(),
            outsideC + heatW / duty.LossWPerK,
            stackM,
            stackM / form.WidthM,
            plant.SecondCurtain is { } second ? Two(form, duty, above, cloth, second, drawn) : null)
        {
            Morning = Steps.GapsM(metric).Select(gapM => InSun(Math.Min(gapM * form.LengthM / clothM2, 1), gapM)).ToEqList(),
            MorningOpenC = openC,
            MorningSunWm2 = MorningSunWm2,
        };
    }

    // What stands between below and the shell above when they are a conductance together.
    private static double Through(double aboveWPerK, double drawnWPerK) => aboveWPerK > drawnWPerK ? aboveWPerK * drawnWPerK / (aboveWPerK - drawnWPerK) : 1e9;

    private static TwoCurtains Two(BuildingForm form, DutyResult duty, double above, CurtainPlant first, CurtainPlant second, HouseCurtain pair)
    {
        double one = DutyStage.CurtainedWPerK(above, form.FloorAreaM2, 1);
        double alone = second.OpennessFraction * above + (1 - second.OpennessFraction) * one;
        double Saves(double drawn) => duty.LossWPerK > 0 ? (above - drawn) / duty.LossWPerK : 0;
        return new TwoCurtains(
            Saves(one), Saves(alone), duty.LossWPerK > 0 ? 1 - duty.LossDrawnWPerK / duty.LossWPerK : 0,
            1 - first.SolarTransmittanceFraction, 1 - second.SolarTransmittanceFraction, 1 - pair.TransmittanceFraction);
    }

    private static HouseCurtain Light(CurtainPlant c) => new(c.HeightM, c.SolarTransmittanceFraction, c.SolarReflectanceFraction, c.OpennessFraction);

    public static PressureBehaviour? Pressure(PlantInput input, BuildingForm form, DutyResult duty, PlantResult plant)
    {
        if (plant.Pressure is not { } fan)
        {
            return null;
        }

        double density = duty.Air.Summer.DensityKgPerM3;
        Leakage leakage = Leakage.Through(form.VolumeM3 * input.AirtightnessPerHour / 3600, SmallSystems.LeakageReferencePa, 0.65);

        // Leaks by exposed area: windward, leeward, both sides, roof; coefficients of a low building (common practice).
        double areaM2 = form.Faces.Where(f => f.Name != FaceName.Floor).Sum(f => f.ExposedM2);
        double Share(params FaceName[] faces) => areaM2 > 0 ? form.Faces.Where(f => faces.Contains(f.Name)).Sum(f => f.ExposedM2) / areaM2 : 0.2;
        WallLeak[] walls = areaM2 > 0
            ? [new(Share(FaceName.Left), 0.7), new(Share(FaceName.Right), -0.3), new(Share(FaceName.End1, FaceName.End2), EndInWind), new(Share(FaceName.RoofLeft, FaceName.RoofRight), -0.4)]
            : [new(1, 0.7)];
        OpenCrack sweep = new(SmallSystems.ReliefM2, SmallSystems.ReliefCoefficient, EndInWind);
        EqList<PressureAt> byWind = Steps.WindsMs(input.Metric).Select(windMs =>
        {
            PressureInWind p = PositivePressure.InWind(fan.FlowM3PerS, leakage, walls, sweep, windMs, density);
            return new PressureAt(windMs, p.HousePa, p.LeastOverWallPa, p.UnfilteredM3PerS);
        }).ToEqList();
        double doorPa = Bracketed.Find(
            p => leakage.FlowM3PerS(Math.Max(p, 0)) + Openings.OrificeM3PerS(2, 0.61, Math.Max(p, 0), density) - fan.FlowM3PerS, 0, 500, 1e-6).Argument;
        double coefficient = Intake.ScreenCoefficientOf(input.Equipment.InsectScreenPorosityFraction > 0 ? input.Equipment.InsectScreenPorosityFraction : 0.35);
        return new PressureBehaviour(byWind, doorPa, fan.FlowM3PerS / (coefficient * Math.Sqrt(2 * Intake.ScreenTargetPa / density)));
    }
}
