namespace Glazewright.Science.Weather;

/// <summary>
/// Columns in another unit than the format's, told by magnitudes that no place on Earth has in the right one. What is told is converted and said; what cannot
/// be told (a wind in knots at a calm place) is left. The limits are our own choice: docs/methods/weather.md#units.
/// </summary>
internal static class UnitSlips
{
    private const int FewestValues = 100;

    // Radiation: the 99th percentile of all hours is 400 to 1300 (global), 200 to 1200 (direct), 150 to 750 Wh/m² (diffuse) between the polar circles.
    private static readonly (int Column, string Name, double LeastWhm2, double MostWhm2)[] s_sun =
    [
        (RawYear.Ghi, "Global radiation", 400, 1250), (RawYear.Dni, "Direct radiation", 330, 1180), (RawYear.Dhi, "Diffuse radiation", 210, 740),
    ];

    private static readonly (string Unit, double Factor)[] s_energies = [("kJ/m²", 1 / 3.6), ("MJ/m²", 1000 / 3.6), ("kWh/m²", 1000)];

    private static readonly (string Unit, double Pa)[] s_pressures = [("Pa", 1), ("hPa (mbar)", 100), ("kPa", 1000), ("mmHg", 133.322), ("inHg", 3386.39)];

    // Airports report whole knots: in each unit the values cluster at multiples of a knot. Spread: rounding to 0.1 before and after a conversion.
    private static readonly (string Unit, double MsPerUnit, double SpreadUnits)[] s_speeds = [("km/h", 1 / 3.6, 0.24), ("knots", 1852 / 3600.0, 0.15), ("mph", 0.44704, 0.17)];

    public static void Mend(RawYear raw, WeatherStation station, List<WeatherNote> notes)
    {
        Temperatures(raw, notes);
        Pressure(raw, station, notes);
        Wind(raw, notes);
        foreach ((int column, string name, double least, double most) in s_sun)
        {
            double[] x = raw.Columns[column];
            double[] sorted = Sorted(x);
            double high = Quantile(sorted, 0.99);
            if (sorted.Length < FewestValues || high <= 0 || (high >= least && high <= most))
            {
                continue;
            }

            foreach ((string unit, double factor) in s_energies)
            {
                if (high * factor >= least && high * factor <= most)
                {
                    Convert(x, v => v * factor);
                    notes.Add(WeatherWords.Converted(name, unit, "Wh/m²", high, high * factor));
                    break;
                }
            }
        }
    }

    private static void Temperatures(RawYear raw, List<WeatherNote> notes)
    {
        double[] dry = raw.Columns[RawYear.DryBulb];
        double[] dew = raw.Columns[RawYear.DewPoint];
        double[] sorted = Sorted(dry);
        // No station has a tenth of its hours above 45 °C; in °F nearly every one has.
        double warm = Quantile(sorted, 0.9);
        if (sorted.Length >= FewestValues && warm is > 45 and <= 115)
        {
            Fahrenheit(dry, "Dry bulb", warm, notes);
        }
        else if (sorted.Length >= FewestValues && warm is > 230 and < 320 && sorted[0] > 180)
        {
            Kelvin(dry, "Dry bulb", warm, notes);
        }

        double[] moist = Sorted(dew);
        double damp = Quantile(moist, 0.9);
        if (moist.Length < FewestValues)
        {
            return;
        }

        if (damp is > 200 and < 320 && moist[0] > 150)
        {
            Kelvin(dew, "Dew point", damp, notes);
        }
        else if (AboveDryShare(dry, dew, 0, 1) > 0.2 && AboveDryShare(dry, dew, 32, 1 / 1.8) < 0.05)
        {
            Fahrenheit(dew, "Dew point", damp, notes);
        }
    }

    // Share of hours whose dew point would lie above the dry bulb.
    private static double AboveDryShare(double[] dryC, double[] dew, double zero, double scale)
    {
        int above = 0, both = 0;
        for (int h = 0; h < dew.Length; h++)
        {
            if (!double.IsNaN(dryC[h]) && !double.IsNaN(dew[h]))
            {
                both++;
                above += (dew[h] - zero) * scale > dryC[h] + 1 ? 1 : 0;
            }
        }

        return both == 0 ? 0 : (double)above / both;
    }

    private static void Fahrenheit(double[] x, string name, double seen, List<WeatherNote> notes)
    {
        Convert(x, v => (v - 32) / 1.8);
        notes.Add(WeatherWords.Converted(name, "°F", "°C", seen, (seen - 32) / 1.8));
    }

    private static void Kelvin(double[] x, string name, double seen, List<WeatherNote> notes)
    {
        Convert(x, v => v - 273.15);
        notes.Add(WeatherWords.Converted(name, "K", "°C", seen, seen - 273.15));
    }

    private static void Pressure(RawYear raw, WeatherStation station, List<WeatherNote> notes)
    {
        double[] x = raw.Columns[RawYear.Pressure];
        double[] sorted = Sorted(x);
        double middle = Quantile(sorted, 0.5);
        if (sorted.Length < FewestValues || middle <= 0)
        {
            return;
        }

        double wantedFactor = WeatherMoisture.StandardPressurePa(station.ElevationM) / middle;
        foreach ((string unit, double pa) in s_pressures)
        {
            double factor = pa / raw.PressureUnitPa;
            if (Math.Abs(factor - 1) > 1e-9 && Math.Abs(Math.Log(factor / wantedFactor)) < 0.12)
            {
                Convert(x, v => v * factor);
                notes.Add(WeatherWords.Converted("Station pressure", unit, "Pa", middle / raw.PressureUnitPa, middle * factor));
                return;
            }
        }
    }

    private static void Wind(RawYear raw, List<WeatherNote> notes)
    {
        const double WindiestMs = 10;
        double[] x = raw.Columns[RawYear.Wind];
        double[] blowing = [.. Sorted(x).Where(v => v > 0)];
        double mean = blowing.Length < FewestValues ? 0 : blowing.Average();
        if (mean <= WindiestMs)
        {
            return;
        }

        (string Unit, double MsPerUnit, double SpreadUnits)[] fitting = [.. s_speeds.Where(s => KnotShare(blowing, 1852 / 3600.0 / s.MsPerUnit, s.SpreadUnits) > 0.95)];
        if (fitting.Length == 1)
        {
            double factor = fitting[0].MsPerUnit;
            Convert(x, v => v * factor);
            notes.Add(WeatherWords.Converted("Wind speed", fitting[0].Unit, "m/s", mean, mean * factor));
            return;
        }

        notes.Add(WeatherWords.WindUnitUnknown(mean, s_speeds.Select(s => (s.Unit, mean * s.MsPerUnit))));
    }

    private static double KnotShare(double[] values, double knot, double spread) =>
        (double)values.Count(v => Math.Abs(v - Math.Round(v / knot) * knot) <= spread) / values.Length;

    private static void Convert(double[] x, Func<double, double> to)
    {
        for (int h = 0; h < x.Length; h++)
        {
            x[h] = to(x[h]);
        }
    }

    private static double[] Sorted(double[] x)
    {
        double[] sorted = [.. x.Where(v => !double.IsNaN(v))];
        Array.Sort(sorted);
        return sorted;
    }

    private static double Quantile(double[] sorted, double fraction) => sorted.Length == 0 ? 0 : sorted[(int)(fraction * (sorted.Length - 1))];
}
