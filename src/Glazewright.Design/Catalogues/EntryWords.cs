using System.Globalization;
using Glazewright.Design.Quantities;

namespace Glazewright.Design.Catalogues;

/// <summary>What an entry of the catalogue is, in a line for a list to choose from: nobody knows it by its id.</summary>
public static class EntryWords
{
    /// <summary>A heater: heat in and out, efficiency, where its air comes from.</summary>
    /// <param name="heater">The entry.</param>
    public static string Of(HeaterEntry heater)
    {
        ArgumentNullException.ThrowIfNull(heater);
        string output = Both(QuantityKind.Power, heater.OutputW);
        return heater.Electric
            ? $"electric, {output} of heat"
            : string.Create(CultureInfo.InvariantCulture, $"{QuantityFormat.In(QuantityKind.Power, heater.OutputW / heater.EfficiencyFraction, UnitFamily.Customary)} in, {output} out, {100 * heater.EfficiencyFraction:0.#} %")
                + (heater.Sealed ? ", combustion air from outside" : ", combustion air from the house");
    }

    /// <summary>An exhaust fan: diameter, flow at no pressure, phases.</summary>
    /// <param name="fan">The entry.</param>
    public static string Of(FanEntry fan)
    {
        ArgumentNullException.ThrowIfNull(fan);
        double freeM3PerS = fan.Points.Max(p => p.FlowM3PerS);
        return $"{Inches(fan.DiameterM)}, {Both(QuantityKind.AirFlow, freeM3PerS)} at least pressure{(fan.Phases == 3 ? ", three-phase" : ", single-phase")}";
    }

    /// <summary>A circulation fan: diameter and flow.</summary>
    /// <param name="fan">The entry.</param>
    public static string Of(CirculationEntry fan)
    {
        ArgumentNullException.ThrowIfNull(fan);
        return $"{Inches(fan.DiameterM)}, {Both(QuantityKind.AirFlow, fan.FlowM3PerS)}";
    }

    private static string Inches(double m) => string.Create(CultureInfo.InvariantCulture, $"{m / UnitTable.InchM:0.#} in ({m:0.##} m) across");

    private static string Both(QuantityKind kind, double inside) => $"{QuantityFormat.In(kind, inside, UnitFamily.Customary)} ({QuantityFormat.In(kind, inside, UnitFamily.Metric)})";
}
