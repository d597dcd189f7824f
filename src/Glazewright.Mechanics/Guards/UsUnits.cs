namespace Glazewright.Mechanics.Guards;

/// <summary>The American units in which the load standards print their formulae, as exact SI factors.</summary>
public static class UsUnits
{
    /// <summary>Metres in a foot (exact).</summary>
    public const double MPerFt = 0.3048;

    /// <summary>Metres in an inch (exact).</summary>
    public const double MPerIn = 0.0254;

    /// <summary>Newtons in a pound-force (exact).</summary>
    public const double NPerLbf = 4.4482216152605;

    /// <summary>Newtons in a kip.</summary>
    public const double NPerKip = 1000 * NPerLbf;

    /// <summary>Pascals in a pound per square foot.</summary>
    public const double PaPerPsf = NPerLbf / (MPerFt * MPerFt);

    /// <summary>Pascals in a kip per square inch.</summary>
    public const double PaPerKsi = NPerKip / (MPerIn * MPerIn);

    /// <summary>Newton-metres in a kip-inch.</summary>
    public const double NMPerKipIn = NPerKip * MPerIn;

    /// <summary>Metres per second in a mile per hour (exact).</summary>
    public const double MPerSPerMph = 0.44704;

    /// <summary>Weight density, N/m³, of a pound per cubic foot.</summary>
    public const double NPerM3PerPcf = PaPerPsf / MPerFt;

    /// <summary>Thermal resistance, m²K/W, of one h·ft²·°F/Btu.</summary>
    public const double M2KPerWPerUsR = 0.17611018368230;

    /// <summary>Kilograms per metre in a pound per foot.</summary>
    public const double KgPerMPerLbPerFt = 0.45359237 / MPerFt;
}
