using System.Globalization;
using Glazewright.Mechanics.Loads;

namespace Glazewright.Design.Frame;

/// <summary>Words of the frame stage.</summary>
internal static class FrameWords
{
    /// <summary>What no number of this stage covers: a short head, a colon, and the particulars (drawings print the heads).</summary>
    internal static readonly string[] NotChecked =
    [
        "Connections: knee, ridge, collar tie, base plate, purlin clips, welds and bolts, tube walls at them.",
        "Uplift anchorage: anchor bolts, embedment, pier pull-out and its soil.",
        "Foundations: bearing, lateral load and moment on piers, frost, settlement.",
        "Bracing along the house: rod, cable or portal bracing, purlin and girt bracing of the frames.",
        "End walls: end frames, pull of curtain wires and cables; posts and framing of openings beyond simple spans.",
        "Erection: stability and wind while partly built or partly sheeted.",
        "Sheets, panels and fasteners: their strength, and the edge and corner zones of wind on roof sheets, purlins and fasteners.",
        "Snow and rain from elsewhere: drift and sliding from other roofs, partial snow on continuous purlins, ponding, rain.",
        "Other loads: earthquake, flood, moving loads, fatigue, fire, corrosion loss of wall.",
    ];

    internal const string Preliminary = "Preliminary, not for construction: for review and sealing by a licensed engineer under the code adopted locally.";

    internal static string Combination(LoadCombination c, SnowCase? snow, WindCase? wind)
    {
        string detail = string.Join("; ", new[] { snow is null ? "" : Snow(snow.Kind), wind is null ? "" : Wind(wind) }.Where(t => t.Length > 0));
        return detail.Length == 0 ? $"{c.Name} [{c.Clause}]" : $"{c.Name} [{c.Clause}]: {detail}";
    }

    internal static string WithPerson(LoadCombination c) => $"{c.Name} [{c.Clause}]: a person (100 lb) at midspan";

    internal static string Thermal(ThermalReason reason) => reason switch
    {
        ThermalReason.GreenhouseWarmAllWinter => "heated greenhouse, thin roof, warm all winter, alarm or attendant",
        ThermalReason.RoofKeepsHeatIn => "the roof with its curtain keeps too much heat in for the greenhouse value",
        ThermalReason.NoAlarm => "warm all winter, but no alarm or attendant at all hours",
        ThermalReason.KeptCool => "the schedule keeps it below 50 °F (10 °C) at some time of the snow season",
        _ => "no heat, or freezing, at some time of the snow season",
    };

    internal static string Edition(LoadEdition edition) => edition == LoadEdition.Asce716 ? "ASCE/SEI 7-16" : "ASCE/SEI 7-22";

    internal static string Feet(double metres)
    {
        double inches = Math.Round(metres / 0.0254);
        return string.Create(CultureInfo.InvariantCulture, $"{Math.Floor(inches / 12):0}'-{inches % 12:0}\" ({metres:0.00} m)");
    }

    internal static string Psf(double pa) => string.Create(CultureInfo.InvariantCulture, $"{pa / 47.880259:0.0} psf ({pa / 1000:0.00} kPa)");

    internal static string Pounds(double n) => string.Create(CultureInfo.InvariantCulture, $"{n / 4.4482216:#,0} lb ({n / 1000:0.0} kN)");

    internal static string Fahrenheit(double c) => string.Create(CultureInfo.InvariantCulture, $"{c * 1.8 + 32:0.#} °F ({c:0.#} °C)");

    internal static string Snow(SnowCaseKind kind) => kind switch
    {
        SnowCaseKind.Balanced => "balanced snow",
        SnowCaseKind.RainOnSnow => "rain on snow",
        SnowCaseKind.LowSlopeLeast => "least snow of low slopes",
        SnowCaseKind.DriftedToRight => "snow drifted to the right slope",
        _ => "snow drifted to the left slope",
    };

    internal static string Wind(WindCase wind)
    {
        string from = wind.From switch
        {
            WindFrom.Left => "wind from the left",
            WindFrom.Right => "wind from the right",
            _ => "wind along the ridge",
        };
        return wind is WindCase.Pressures p
            ? $"{from}, {(p.InternalPressure ? "pressure" : "suction")} inside{(p.RoofUpper ? ", upper roof value" : "")}"
            : $"least {from}";
    }
}
