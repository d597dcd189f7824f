using Glazewright.Science.Climate;
using Glazewright.Science.Maths;

namespace Glazewright.Science.Weather;

/// <summary>
/// Everything but the sun: straight lines between the stamps in temperature, vapour pressure (not relative humidity), logarithm of pressure and wind speed.
/// The first hour of the year joins the last: the year is a ring.
/// </summary>
internal static class StateExpansion
{
    public static void Fill(WeatherYear year, MinuteWeather to)
    {
        double[] vapour = new double[CommonYear.Hours];
        double[] lnPressure = new double[CommonYear.Hours];
        for (int h = 0; h < CommonYear.Hours; h++)
        {
            vapour[h] = WeatherMoisture.SaturationPa(year.DewPointC[h]);
            lnPressure[h] = Elementary.Log(year.PressurePa[h]);
        }

        MinuteColumn dryBulb = to.DryBulb, pressures = to.Pressure, winds = to.Wind;
        MinuteColumn relative = to.Relative, humidity = to.Humidity, wetBulb = to.WetBulb, sky = to.SkyTemperature;
        Lines(year.DryBulbC.Span, (m, value) => dryBulb.Set(m, value));
        Lines(vapour, (m, value) => to.Vapour[m] = value);
        Lines(lnPressure, (m, value) => pressures.Set(m, value));
        Lines(year.WindMs.Span, (m, value) => winds.Set(m, value));
        // The infrared column is computed by its makers from the values at the stamp, though the format calls it the hour's energy: it is interpolated like the temperature it follows.
        Lines(year.HorizontalInfraredWhm2.Span, (m, value) => to.SkyLongwave[m] = value);
        for (int m = 0; m < CommonYear.Minutes; m++)
        {
            // A chord over the convex saturation curve lies above it: between two foggy hours the line would be supersaturated.
            double saturatedPa = WeatherMoisture.SaturationPa(dryBulb[m]), e = Math.Min(to.Vapour[m], saturatedPa);
            double pressure = Elementary.Exp(pressures[m]);
            to.Vapour[m] = e;
            relative.Set(m, 100 * e / saturatedPa);
            pressures.Set(m, pressure);
            humidity.Set(m, WeatherMoisture.HumidityRatio(e, pressure));
            wetBulb.Set(m, VapourTable.WetBulbC(dryBulb[m], humidity[m], pressure));
            sky.Set(m, Math.Sqrt(Math.Sqrt(to.SkyLongwave[m] / SkyInfrared.SigmaWm2K4)) - 273.15);
        }

    }

    /// <summary>Values at the stamps (ends of the hours) joined by straight lines, taken at the middles of the minutes.</summary>
    private static void Lines(ReadOnlySpan<double> atStamp, Action<int, double> to)
    {
        double before = atStamp[^1];
        for (int h = 0; h < CommonYear.Hours; h++)
        {
            double after = atStamp[h];
            double slope = (after - before) / 60;
            int m = h * 60;
            for (int k = 0; k < 60; k++)
            {
                to(m + k, before + slope * (k + 0.5));
            }

            before = after;
        }
    }
}
