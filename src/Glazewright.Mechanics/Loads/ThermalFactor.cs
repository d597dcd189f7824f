using Glazewright.Mechanics.Guards;

namespace Glazewright.Mechanics.Loads;

/// <summary>Why a thermal factor is what it is.</summary>
public enum ThermalReason
{
    /// <summary>Greenhouse, warm all winter, thin roof, alarm or attendant: 0.85.</summary>
    GreenhouseWarmAllWinter,

    /// <summary>Warm all winter, but the roof keeps too much heat in for the greenhouse value.</summary>
    RoofKeepsHeatIn,

    /// <summary>Warm all winter, but nobody would notice a failed heater.</summary>
    NoAlarm,

    /// <summary>Kept above freezing but cooler than the greenhouse value asks at some time of winter.</summary>
    KeptCool,

    /// <summary>Without heat, or at freezing, at some time of winter.</summary>
    HeatOff,
}

/// <summary>A thermal factor with its reason.</summary>
/// <param name="Factor">Ct.</param>
/// <param name="Reason">Why.</param>
public sealed record ThermalChoice(double Factor, ThermalReason Reason);

/// <summary>What decides the thermal factor of a greenhouse roof.</summary>
/// <param name="RoofResistanceM2KPerW">Resistance from inside to outside air of the better of the two slopes, m²K/W, with the night curtain where there is one.</param>
/// <param name="ColdestKeptC">Lowest air temperature the crop schedule keeps in the snow season, °C; null when the heat is off at some time of it.</param>
/// <param name="AlarmOrAttendant">True when a temperature alarm or an attendant watches at all hours.</param>
public sealed record RoofThermal(double RoofResistanceM2KPerW, double? ColdestKeptC, bool AlarmOrAttendant);

/// <summary>Thermal factor Ct of greenhouse roofs.</summary>
public static class ThermalFactor
{
    /// <summary>Roof resistance at which the greenhouse value ends: 2.0 h·ft²·°F/Btu, in m²K/W. Read.</summary>
    public const double GreenhouseResistanceLimitM2KPerW = 2.0 * UsUnits.M2KPerWPerUsR;

    /// <summary>Temperature the greenhouse value asks for: 50 °F. From memory (footnote of table 7.3-2).</summary>
    public const double GreenhouseLeastC = 10;

    /// <summary>Thermal factor with its reason.</summary>
    /// <param name="ground">Ground snow load with its edition.</param>
    /// <param name="roof">What decides it.</param>
    /// <returns>Ct, 0.85 to 1.2.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Resistance out of 0 to 20 m²K/W, or a temperature out of −60 to 50 °C.</exception>
    /// <remarks>ASCE 7-16 table 7.3-2; ASCE 7-22 tables 7.3-2 and 7.3-3. Read at second hand.</remarks>
    public static ThermalChoice Of(GroundSnow ground, RoofThermal roof)
    {
        Require.Within(ground.PressurePa, 0, 15_000);
        Require.Within(roof.RoofResistanceM2KPerW, 0, 20);
        EditionRules rules = EditionRules.Of(ground.Edition);
        if (roof.ColdestKeptC is not double coldestC)
        {
            return new ThermalChoice(1.2, ThermalReason.HeatOff);
        }

        Require.Within(coldestC, -60, 50);
        if (coldestC <= 0)
        {
            return new ThermalChoice(1.2, ThermalReason.HeatOff);
        }

        if (coldestC < GreenhouseLeastC)
        {
            return new ThermalChoice(rules.CoolThermalFactor, ThermalReason.KeptCool);
        }

        double heated = rules.HeatedThermalFactor(ground.PressurePa, roof.RoofResistanceM2KPerW / UsUnits.M2KPerWPerUsR);
        if (roof.RoofResistanceM2KPerW >= GreenhouseResistanceLimitM2KPerW)
        {
            return new ThermalChoice(heated, ThermalReason.RoofKeepsHeatIn);
        }

        return roof.AlarmOrAttendant
            ? new ThermalChoice(0.85, ThermalReason.GreenhouseWarmAllWinter)
            : new ThermalChoice(heated, ThermalReason.NoAlarm);
    }
}
