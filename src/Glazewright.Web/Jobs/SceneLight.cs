using System.Globalization;
using Glazewright.Design.Form;
using Glazewright.Design.LightMaps;
using Glazewright.Papers.Charts;

namespace Glazewright.Web.Jobs;

/// <summary>The light map of a month as it lies in the view in three dimensions.</summary>
/// <param name="Columns">Cells along the house.</param>
/// <param name="Rows">Cells across.</param>
/// <param name="HeightM">Its height, m.</param>
/// <param name="Colours">Red, green, blue and 255 of each cell, along fastest, the left wall first.</param>
/// <param name="MostMolPerM2Day">What the lightest colour stands for: the most of any cell and month, mol/m²d.</param>
/// <param name="Words">What it shows, in a sentence.</param>
public sealed record SceneLight(int Columns, int Rows, double HeightM, byte[] Colours, double MostMolPerM2Day, string Words)
{
    /// <summary>The map of the month that a day lies in.</summary>
    /// <param name="map">The house's light.</param>
    /// <param name="dayOfYear">1 to 365.</param>
    /// <param name="onFloor">On the floor below and between the benches, where it was mapped too, in place of bench height.</param>
    /// <returns>The map; null for a house without one.</returns>
    public static SceneLight? Of(LightMap map, int dayOfYear, bool onFloor = false)
    {
        ArgumentNullException.ThrowIfNull(map);
        LightPlane? floor = onFloor ? FloorOf(map) : null;
        int month = new DateOnly(2026, 1, 1).AddDays(Math.Clamp(dayOfYear, 1, 365) - 1).Month - 1;
        if (map.Months.Count != 12 || map.CountX * map.CountY == 0 || map.Months[month].PointMolPerM2Day.Count != map.CountX * map.CountY)
        {
            return null;
        }

        // One scale for the year and for both heights: a colour means the same in December and in June, on the floor and at the benches.
        double most = Math.Max(0.1, map.Months.Max(m => m.PointMolPerM2Day.Max()));
        (int columns, int rows, double heightM) = floor is null ? (map.CountX, map.CountY, map.HeightM) : (floor.CountU, floor.CountV, 0);
        byte[] colours = new byte[columns * rows * 4];
        LightMonth light = floor is null ? map.Months[month] : floor.Months[month];
        for (int i = 0; i < light.PointMolPerM2Day.Count; i++)
        {
            int rgb = Ramp.Sequential.At(Math.Min(1, light.PointMolPerM2Day[i] / most));
            (colours[4 * i], colours[4 * i + 1], colours[4 * i + 2], colours[4 * i + 3]) = ((byte)(rgb >> 16), (byte)(rgb >> 8), (byte)rgb, 255);
        }

        string where = heightM > 0 ? "at bench height" : floor is null ? "on the floor" : "on the floor, below and between the benches,";
        string words = string.Create(CultureInfo.InvariantCulture, $"Light {where} on a mean day of {CultureInfo.InvariantCulture.DateTimeFormat.GetMonthName(month + 1)}: {light.MeanMolPerM2Day:0.0} mol/m² in the mean, {light.LeastMolPerM2Day:0.0} at the darkest place");
        return new SceneLight(columns, rows, heightM, colours, most, words);
    }

    /// <summary>The floor's own map, where benches stand above it; null where the map lies on the floor already, or there is none.</summary>
    /// <param name="map">The house's light.</param>
    public static LightPlane? FloorOf(LightMap? map) => map?.Others.FirstOrDefault(p => p.Face == FaceName.Floor && p.Months.Count == 12 && p.Months[0].PointMolPerM2Day.Count == p.CountU * p.CountV && p.CountU > 0);
}
