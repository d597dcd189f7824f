namespace Glazewright.Design.Program;

/// <summary>What a sensor measures.</summary>
public enum SensorQuantity
{
    /// <summary>Air temperature; error and correction in K.</summary>
    Temperature,

    /// <summary>Relative humidity; error and correction in % RH.</summary>
    Humidity,

    /// <summary>Global light, W/m².</summary>
    Light,

    /// <summary>Wind, m/s.</summary>
    Wind,

    /// <summary>Snow lies or falls: a contact.</summary>
    Snow,

    /// <summary>It rains: a contact.</summary>
    Rain,

    /// <summary>Carbon dioxide, ppm.</summary>
    CarbonDioxide,

    /// <summary>Static pressure across the fan wall, Pa.</summary>
    StaticPressure,

    /// <summary>The louver stands open: its end switch.</summary>
    LouverOpen,
}

/// <summary>Where a sensor is.</summary>
public enum SensorPlace
{
    /// <summary>Among the plants, at their height.</summary>
    Crop,

    /// <summary>Over the plants, under the curtain where there is one.</summary>
    BelowCurtain,

    /// <summary>Above the curtain; without one, high under the roof.</summary>
    AboveCurtain,

    /// <summary>Outside.</summary>
    Outside,

    /// <summary>At the machine it watches.</summary>
    Equipment,
}

/// <summary>One sensor: what it measures, where, and how far it is to be trusted.</summary>
/// <param name="Id">Sensor id (<c>A/crop-temperature</c>).</param>
/// <param name="Quantity">What it measures.</param>
/// <param name="Place">Where it is.</param>
/// <param name="LagS">Time constant with which it follows, s; 0 for at once.</param>
/// <param name="Aspirated">A fan draws air past it. Where none does, a thermometer or hygrometer in sun reads warm and dry; other sensors do not ask.</param>
/// <param name="ErrorValue">How far it reads high, in its quantity's unit (K, % RH, W/m², m/s, ppm, Pa); negative for low. The simulated sensor has it; a control box does not know it.</param>
/// <param name="CorrectionValue">What the control box adds to what it reads, in the same unit: entered after comparing with a reference.</param>
/// <param name="DriftPerYearValue">How much farther high it reads a year after it was compared, in the same unit; negative for low. It grows evenly from nothing on 1 January; left out for a sensor that does not drift.</param>
public sealed record Sensor(
    string Id, SensorQuantity Quantity, SensorPlace Place, double LagS, bool Aspirated, double ErrorValue, double CorrectionValue,
    [property: Contracts.LeftOutWhenNone] double? DriftPerYearValue = null);
