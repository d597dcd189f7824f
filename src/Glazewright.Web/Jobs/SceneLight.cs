using System.Globalization;
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
    /// <returns>The map; null for a house without one.</returns>
    public static SceneLight? Of(LightMap map, int dayOfYear)
    {
        ArgumentNullException.ThrowIfNull(map);
        int month = new DateOnly(2026, 1, 1).AddDays(Math.Clamp(dayOfYear, 1, 365) - 1).Month - 1;
        if (map.Months.Count != 12 || map.CountX * map.CountY == 0 || map.Months[month].PointMolPerM2Day.Count != map.CountX * map.CountY)
        {
            return null;
        }

        // One scale for the year: a colour means the same in December and in June.
        double most = Math.Max(0.1, map.Months.Max(m => m.PointMolPerM2Day.Max()));
        byte[] colours = new byte[map.CountX * map.CountY * 4];
        LightMonth light = map.Months[month];
        for (int i = 0; i < light.PointMolPerM2Day.Count; i++)
        {
            int rgb = Ramp.Sequential.At(light.PointMolPerM2Day[i] / most);
            (colours[4 * i], colours[4 * i + 1], colours[4 * i + 2], colours[4 * i + 3]) = ((byte)(rgb >> 16), (byte)(rgb >> 8), (byte)rgb, 255);
        }

        string where = map.HeightM > 0 ? "at bench height" : "on the floor";
        string words = string.Create(CultureInfo.InvariantCulture, $"Light {where} on a mean day of {CultureInfo.InvariantCulture.DateTimeFormat.GetMonthName(month + 1)}: {light.MeanMolPerM2Day:0.0} mol/m² in the mean, {light.LeastMolPerM2Day:0.0} at the darkest place");
        return new SceneLight(map.CountX, map.CountY, map.HeightM, colours, most, words);
    }
}
