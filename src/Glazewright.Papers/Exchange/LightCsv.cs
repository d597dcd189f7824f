using Glazewright.Design.Contracts;
using Glazewright.Design.LightMaps;
using Glazewright.Papers.Sets;

namespace Glazewright.Papers.Exchange;

/// <summary>Light as data: every cell by month, and the year by hour.</summary>
public static class LightCsv
{
    private static readonly string[] Months = ["jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"];

    /// <summary>Daily light of every cell of every mapped plane.</summary>
    /// <param name="house">The house.</param>
    /// <param name="units">Places in feet or metres.</param>
    /// <returns>One row a cell: plane, place, twelve months in mol/m² a day.</returns>
    public static string Cells(HouseResults house, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(house);
        string per = units == UnitSystem.Us ? "ft" : "m";
        CsvText table = new(["plane", $"along_{per}", $"across_or_up_{per}", .. Months.Select(m => m + "_mol_per_m2_day")]);
        LightMap light = house.Light;
        Plane(light.HeightM > 0 ? "bench height" : "floor", light.CountX, light.CountY, house.Form.LengthM, house.Form.WidthM, light.Months);
        if (light.Drawn is { } drawn)
        {
            Plane((light.HeightM > 0 ? "bench height" : "floor") + " with the curtain drawn", light.CountX, light.CountY, house.Form.LengthM, house.Form.WidthM, drawn.Months);
        }

        foreach (LightPlane plane in light.Others)
        {
            Plane(plane.Name, plane.CountU, plane.CountV, plane.LengthUM, plane.LengthVM, plane.Months);
        }

        return table.ToString();

        void Plane(string name, int countU, int countV, double lengthUM, double lengthVM, EqList<LightMonth> months)
        {
            double toShown = units == UnitSystem.Us ? 1 / 0.3048 : 1;
            for (int k = 0; k < countU * countV && months.Count == 12; k++)
            {
                table.Cell(name)
                    .Cell(((k % countU) + 0.5) * lengthUM / countU * toShown, 2)
                    .Cell(((k / countU) + 0.5) * lengthVM / countV * toShown, 2);
                foreach (LightMonth month in months)
                {
                    table.Cell(month.PointMolPerM2Day[k], 2);
                }

                table.End();
            }
        }
    }

    /// <summary>The year's hours.</summary>
    /// <param name="house">The house.</param>
    /// <returns>One row an hour of the common year, as the weather file counts them: outside, mean of the map, darkest place, µmol/m²s.</returns>
    public static string Hours(HouseResults house)
    {
        ArgumentNullException.ThrowIfNull(house);
        CsvText table = new("month", "day", "hour_ending", "outside_umol_per_m2_s", "mean_umol_per_m2_s", "darkest_place_umol_per_m2_s");
        LightCarpet carpet = house.Light.Carpet;
        DateTime day = new(2011, 1, 1, 0, 0, 0, DateTimeKind.Unspecified);
        for (int h = 0; h < carpet.Mean.Count; h++)
        {
            DateTime at = day.AddHours(h);
            table.Cell(at.Month).Cell(at.Day).Cell(at.Hour + 1).Cell(carpet.Outside[h], 0).Cell(carpet.Mean[h], 0).Cell(carpet.Darkest[h], 0).End();
        }

        return table.ToString();
    }
}
