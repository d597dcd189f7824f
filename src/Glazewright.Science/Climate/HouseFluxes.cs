using System.Runtime.CompilerServices;

namespace Glazewright.Science.Climate;

/// <summary>What moved over one step, as solved: heat in W, water in kg/s, air in m³/s or kg/s of dry air. Losses count positive outward.</summary>
public struct HouseFluxes
{
    /// <summary>Sun absorbed, W.</summary>
    public double SunW { get; set; }

    /// <summary>Heat delivered by heaters, W.</summary>
    public double HeatW { get; set; }

    /// <summary>Lamps and motors, W.</summary>
    public double LampW { get; set; }

    /// <summary>Heat lost from the outer faces to air, ground and sky, W.</summary>
    public double ShellLossW { get; set; }

    /// <summary>Long-wave loss straight through a thin cover, W.</summary>
    public double ThroughCoverLossW { get; set; }

    /// <summary>Sensible heat lost with air, W (negative when the air brings heat).</summary>
    public double AirLossW { get; set; }

    /// <summary>Heat lost into the deep ground and at the floor's edge, W.</summary>
    public double GroundLossW { get; set; }

    /// <summary>Sensible heat taken by evaporation less what condensation gave back, W, as it was booked this step.</summary>
    public double LatentW { get; set; }

    /// <summary>Heat stored in all nodes, W.</summary>
    public double StoredW { get; set; }

    /// <summary>What the heat book misses, W: rounding only.</summary>
    public readonly double HeatResidualW
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        get => SunW + HeatW + LampW - ShellLossW - ThroughCoverLossW - AirLossW - GroundLossW - LatentW - StoredW;
    }

    /// <summary>Water the crop gave, kg/s.</summary>
    public double TranspirationKgPerS { get; set; }

    /// <summary>Water taken from an always-wet floor, kg/s.</summary>
    public double IrrigatedFloorKgPerS { get; set; }

    /// <summary>Fog that evaporated in the air, kg/s.</summary>
    public double FogEvaporatedKgPerS { get; set; }

    /// <summary>Fog that fell on leaves and floor, kg/s.</summary>
    public double FogFallenKgPerS { get; set; }

    /// <summary>Vapour let in by burners, kg/s.</summary>
    public double VapourKgPerS { get; set; }

    /// <summary>Water that a dehumidifier took out, kg/s.</summary>
    public double DriedKgPerS { get; set; }

    /// <summary>Dry air that came in from outside by every way, kg/s.</summary>
    public double OutsideAirKgPerS { get; set; }

    /// <summary>Water carried out by air, net, kg/s.</summary>
    public double AirWaterLossKgPerS { get; set; }

    /// <summary>Water that ran off or drained, kg/s.</summary>
    public double DrainedKgPerS { get; set; }

    /// <summary>Water stored in air and films, kg/s.</summary>
    public double WaterStoredKgPerS { get; set; }

    /// <summary>What the water book misses, kg/s: rounding only.</summary>
    public readonly double WaterResidualKgPerS
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        get => TranspirationKgPerS + IrrigatedFloorKgPerS + FogEvaporatedKgPerS + FogFallenKgPerS + VapourKgPerS - DriedKgPerS - AirWaterLossKgPerS - DrainedKgPerS - WaterStoredKgPerS;
    }

    /// <summary>Net water condensed on all surfaces but the floor, kg/s (negative when films dry).</summary>
    public double CondensedKgPerS { get; set; }

    /// <summary>Water evaporated by the wet wall into the intake air, kg/s.</summary>
    public double PadWaterKgPerS { get; set; }

    /// <summary>Intake air after the wet wall, °C: the cold end of the house while fans run.</summary>
    public double IntakeC { get; set; }

    /// <summary>Air at the fans, °C: the hot end while fans run; the mean when they do not.</summary>
    public double FanEndC { get; set; }

    /// <summary>Humidity ratio at the fans, kg/kg dry air.</summary>
    public double FanEndHumidityRatio { get; set; }

    /// <summary>Outdoor air through open vents, m³/s.</summary>
    public double VentM3PerS { get; set; }

    /// <summary>Outdoor air through leaks, m³/s.</summary>
    public double LeakM3PerS { get; set; }

    /// <summary>Air exchanged through the curtain each way, m³/s.</summary>
    public double CurtainExchangeM3PerS { get; set; }
}
