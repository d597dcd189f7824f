namespace Glazewright.Design.Contracts;

/// <summary>What a figure is measured in (SI inside; how it is shown is <see cref="Shown"/>'s business).</summary>
public enum Unit
{
    /// <summary>A pure number.</summary>
    None,

    /// <summary>A share of one, shown in percent.</summary>
    Fraction,

    /// <summary>A count of things.</summary>
    Count,

    /// <summary>Length, m.</summary>
    Metre,

    /// <summary>Area, m².</summary>
    SquareMetre,

    /// <summary>Volume, m³.</summary>
    CubicMetre,

    /// <summary>Angle, °.</summary>
    Degree,

    /// <summary>Temperature, °C.</summary>
    Celsius,

    /// <summary>Temperature difference, K.</summary>
    Kelvin,

    /// <summary>Relative humidity, %.</summary>
    PercentHumidity,

    /// <summary>Humidity ratio, kg/kg dry air.</summary>
    HumidityRatio,

    /// <summary>Air or vapour pressure, Pa.</summary>
    Pascal,

    /// <summary>Pressure of the atmosphere, Pa.</summary>
    Barometer,

    /// <summary>Pressure of water in a line, Pa.</summary>
    LinePressure,

    /// <summary>Load on an area, Pa.</summary>
    AreaLoad,

    /// <summary>Force, N.</summary>
    Newton,

    /// <summary>Moment, N·m.</summary>
    NewtonMetre,

    /// <summary>Power or heat flow, W.</summary>
    Watt,

    /// <summary>Electric power, W (shown in kW in both systems).</summary>
    ElectricWatt,

    /// <summary>Electric energy, J (shown in kWh).</summary>
    ElectricJoule,

    /// <summary>Heat energy, J.</summary>
    Joule,

    /// <summary>Heat loss factor, W/K.</summary>
    WattPerKelvin,

    /// <summary>U value, W/m²K.</summary>
    WattPerSquareMetreKelvin,

    /// <summary>Heat or radiation flux, W/m².</summary>
    WattPerSquareMetre,

    /// <summary>Air flow, m³/s.</summary>
    CubicMetrePerSecond,

    /// <summary>Speed, m/s.</summary>
    MetrePerSecond,

    /// <summary>Water mass flow, kg/s.</summary>
    KilogramPerSecond,

    /// <summary>Mass, kg.</summary>
    Kilogram,

    /// <summary>Water volume, m³ (shown in gallons or m³).</summary>
    WaterCubicMetre,

    /// <summary>Light a day, mol/m²d.</summary>
    MolPerSquareMetreDay,

    /// <summary>Time, h.</summary>
    Hour,

    /// <summary>Air changes, 1/h.</summary>
    PerHour,

    /// <summary>Money.</summary>
    Dollar,

    /// <summary>Money on an area, $/m².</summary>
    DollarPerSquareMetre,

    /// <summary>Money a labour hour, $/h.</summary>
    DollarPerHour,

    /// <summary>Electric current, A.</summary>
    Ampere,
}
