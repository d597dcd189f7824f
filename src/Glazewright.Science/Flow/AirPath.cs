using Glazewright.Science.Guards;

namespace Glazewright.Science.Flow;

/// <summary>A thing air passes on its way through a house. Closed set of cases; each loses pressure as it rises with flow.</summary>
public abstract record AirPath
{
    private AirPath()
    {
    }

    /// <summary>Pressure lost at a flow.</summary>
    /// <param name="flowM3PerS">Flow through it, m³/s; negative counts as none.</param>
    /// <param name="densityKgPerM3">Density of the air, kg/m³.</param>
    /// <returns>Pressure loss, Pa. Total: no guard, as solvers call it.</returns>
    public double LossPa(double flowM3PerS, double densityKgPerM3)
    {
        double flow = Math.Max(flowM3PerS, 0);
        return this switch
        {
            Opening opening => HeadPa(flow / (opening.AreaM2 * opening.DischargeCoefficient), densityKgPerM3),
            Louver louver => HeadPa(flow / (louver.FreeAreaM2 * louver.DischargeCoefficient), densityKgPerM3),
            Screen screen => HeadPa(
                flow / (screen.AreaM2 * (1 - screen.ClogFraction) * screen.DischargeCoefficient), densityKgPerM3),
            Pad pad => pad.Kind.LossPa(flow / pad.AreaM2, densityKgPerM3),
            Wind wind => wind.BackPressurePa,
            House house => house.LossHeadsRatio * HeadPa(flow / house.SectionM2, densityKgPerM3),
            _ => throw new InvalidOperationException("Closed set of cases."),
        };
    }

    private static double HeadPa(double speedMPerS, double densityKgPerM3) =>
        0.5 * densityKgPerM3 * speedMPerS * speedMPerS;

    /// <summary>A plain opening: vent, doorway, crack.</summary>
    public sealed record Opening : AirPath
    {
        /// <summary>A plain opening.</summary>
        /// <param name="areaM2">Clear area, m², 1e-6 to 1e5.</param>
        /// <param name="dischargeCoefficient">Discharge coefficient, 0.05 to 1.</param>
        /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
        public Opening(double areaM2, double dischargeCoefficient)
        {
            Within.Require(areaM2, 1e-6, 1e5);
            Within.Require(dischargeCoefficient, 0.05, 1);
            (AreaM2, DischargeCoefficient) = (areaM2, dischargeCoefficient);
        }

        /// <summary>Clear area, m².</summary>
        public double AreaM2 { get; }

        /// <summary>Discharge coefficient.</summary>
        public double DischargeCoefficient { get; }
    }

    /// <summary>A louver with parallel blades, somewhere between closed and open.</summary>
    public sealed record Louver : AirPath
    {
        /// <summary>A louver.</summary>
        /// <param name="frameAreaM2">Area of the frame, m², 1e-3 to 1e4.</param>
        /// <param name="openFreeFraction">Free share of the frame with the blades fully open, 0.1 to 1.</param>
        /// <param name="bladeOpenDeg">How far the blades stand open, 1 to 90°.</param>
        /// <param name="dischargeCoefficient">Discharge coefficient on the free area, 0.05 to 1.</param>
        /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
        public Louver(double frameAreaM2, double openFreeFraction, double bladeOpenDeg, double dischargeCoefficient)
        {
            Within.Require(frameAreaM2, 1e-3, 1e4);
            Within.Require(openFreeFraction, 0.1, 1);
            Within.Require(bladeOpenDeg, 1, 90);
            Within.Require(dischargeCoefficient, 0.05, 1);
            (FrameAreaM2, OpenFreeFraction, BladeOpenDeg, DischargeCoefficient) =
                (frameAreaM2, openFreeFraction, bladeOpenDeg, dischargeCoefficient);
        }

        /// <summary>Area of the frame, m².</summary>
        public double FrameAreaM2 { get; }

        /// <summary>Free share of the frame with the blades fully open.</summary>
        public double OpenFreeFraction { get; }

        /// <summary>How far the blades stand open, °.</summary>
        public double BladeOpenDeg { get; }

        /// <summary>Discharge coefficient on the free area.</summary>
        public double DischargeCoefficient { get; }

        /// <summary>
        /// Free area between the blades, m². A blade as deep as its pitch, turned by θ from closed, leaves 1 − cos θ of the pitch; what frame and
        /// blade thickness take when fully open scales it (geometry, common practice).
        /// </summary>
        public double FreeAreaM2 => FrameAreaM2 * OpenFreeFraction * (1 - Math.Cos(BladeOpenDeg * Math.PI / 180));
    }

    /// <summary>Wind that presses on the fans' outlet or sucks at the intake: the same at any flow.</summary>
    public sealed record Wind : AirPath
    {
        /// <summary>Wind against the fans.</summary>
        /// <param name="backPressurePa">Pressure at the outlet over that at the intake, Pa, 0 to 2000.</param>
        /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
        public Wind(double backPressurePa)
        {
            Within.Require(backPressurePa, 0, 2000);
            BackPressurePa = backPressurePa;
        }

        /// <summary>Pressure at the outlet over that at the intake, Pa.</summary>
        public double BackPressurePa { get; }
    }

    /// <summary>An insect screen.</summary>
    public sealed record Screen : AirPath
    {
        /// <summary>An insect screen.</summary>
        /// <param name="areaM2">Area of the cloth, m², 1e-3 to 1e5.</param>
        /// <param name="dischargeCoefficient">Measured discharge coefficient of the cloth, 0.02 to 1; porosity alone does not give it.</param>
        /// <param name="clogFraction">Share of the cloth blocked by dirt, 0 to 0.95.</param>
        /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
        public Screen(double areaM2, double dischargeCoefficient, double clogFraction)
        {
            Within.Require(areaM2, 1e-3, 1e5);
            Within.Require(dischargeCoefficient, 0.02, 1);
            Within.Require(clogFraction, 0, 0.95);
            (AreaM2, DischargeCoefficient, ClogFraction) = (areaM2, dischargeCoefficient, clogFraction);
        }

        /// <summary>Area of the cloth, m².</summary>
        public double AreaM2 { get; }

        /// <summary>Discharge coefficient of the clean cloth.</summary>
        public double DischargeCoefficient { get; }

        /// <summary>Share of the cloth blocked by dirt.</summary>
        public double ClogFraction { get; }
    }

    /// <summary>A wet wall of some area.</summary>
    public sealed record Pad : AirPath
    {
        /// <summary>A wet wall.</summary>
        /// <param name="areaM2">Face area of the pad, m², 1e-3 to 1e4.</param>
        /// <param name="kind">What pad.</param>
        /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
        public Pad(double areaM2, PadKind kind)
        {
            Within.Require(areaM2, 1e-3, 1e4);
            (AreaM2, Kind) = (areaM2, kind);
        }

        /// <summary>Face area, m².</summary>
        public double AreaM2 { get; }

        /// <summary>What pad.</summary>
        public PadKind Kind { get; }
    }

    /// <summary>The house itself, from inlet to fan.</summary>
    public sealed record House : AirPath
    {
        /// <summary>The house itself.</summary>
        /// <param name="sectionM2">Cross-section the air moves through, m², 1 to 1e5.</param>
        /// <param name="lossHeadsRatio">Velocity heads lost by entering, passing crop and benches and turning to the fans, 0 to 100; 1.5 is common practice.</param>
        /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
        public House(double sectionM2, double lossHeadsRatio)
        {
            Within.Require(sectionM2, 1, 1e5);
            Within.Require(lossHeadsRatio, 0, 100);
            (SectionM2, LossHeadsRatio) = (sectionM2, lossHeadsRatio);
        }

        /// <summary>Cross-section, m².</summary>
        public double SectionM2 { get; }

        /// <summary>Velocity heads lost.</summary>
        public double LossHeadsRatio { get; }
    }
}
