namespace Glazewright.Design.Quantities;

/// <summary>What is measured. Each kind has one unit inside, named here; a value never changes kind by itself.</summary>
public enum QuantityKind
{
    /// <summary>Length, m.</summary>
    Length,

    /// <summary>Roof pitch as rise over run, a pure ratio (9.5:12 is 0.7917).</summary>
    Pitch,

    /// <summary>Angle or bearing, °.</summary>
    Angle,

    /// <summary>Area, m².</summary>
    Area,

    /// <summary>Volume, m³.</summary>
    Volume,

    /// <summary>Mass, kg.</summary>
    Mass,

    /// <summary>Temperature, °C.</summary>
    Temperature,

    /// <summary>Difference of two temperatures, K; another kind than a temperature.</summary>
    TemperatureDifference,

    /// <summary>Air flow, m³/s.</summary>
    AirFlow,

    /// <summary>Water flow, m³/s.</summary>
    WaterFlow,

    /// <summary>Pressure of air, water or gas, Pa.</summary>
    Pressure,

    /// <summary>Vapour pressure deficit of air, kPa everywhere in the trade.</summary>
    VapourDeficit,

    /// <summary>Load on an area or soil bearing, Pa.</summary>
    AreaLoad,

    /// <summary>Load on a length, N/m.</summary>
    LineLoad,

    /// <summary>Force, N.</summary>
    Force,

    /// <summary>Strength of a material, Pa.</summary>
    Stress,

    /// <summary>Speed, m/s.</summary>
    Speed,

    /// <summary>Power or heat flow, W.</summary>
    Power,

    /// <summary>Power on an area, W/m².</summary>
    PowerDensity,

    /// <summary>Energy, J.</summary>
    Energy,

    /// <summary>Energy on an area (sun of a day or an hour), J/m².</summary>
    EnergyDensity,

    /// <summary>A share that is said in percent (humidity, margin, slope of the ground), 1 is all.</summary>
    Fraction,

    /// <summary>A pure number (effectiveness, reflectance), bare or in percent.</summary>
    Ratio,

    /// <summary>Electric tension, V.</summary>
    Voltage,

    /// <summary>Electric current, A.</summary>
    Current,

    /// <summary>Length of time, s.</summary>
    Duration,

    /// <summary>Heat through a covering (U value), W/m²K.</summary>
    Transmittance,

    /// <summary>Resistance of a covering to heat (R value), m²K/W.</summary>
    Resistance,

    /// <summary>Heat through a metre of slab edge, W/mK.</summary>
    EdgeTransmittance,

    /// <summary>Air changes, 1/h.</summary>
    AirChanges,

    /// <summary>Light of a day, mol/m²d.</summary>
    DailyLight,

    /// <summary>Light of a moment, µmol/m²s.</summary>
    PhotonFlux,

    /// <summary>Light a lamp makes from energy, µmol/J.</summary>
    PhotonEfficacy,

    /// <summary>Matter in water, mg/L.</summary>
    Concentration,

    /// <summary>Gas in air by volume, parts in a million.</summary>
    GasFraction,

    /// <summary>Money, in the job's currency.</summary>
    Money,

    /// <summary>Price of energy, money per kWh.</summary>
    MoneyPerEnergy,

    /// <summary>Price of demand, money per kW.</summary>
    MoneyPerPower,

    /// <summary>Price of fuel or water, money per m³.</summary>
    MoneyPerVolume,

    /// <summary>Labour rate, money per hour.</summary>
    MoneyPerTime,

    /// <summary>Price by length, money per m.</summary>
    MoneyPerLength,

    /// <summary>Price by area, money per m².</summary>
    MoneyPerArea,

    /// <summary>Price by weight, money per kg.</summary>
    MoneyPerMass,
}
