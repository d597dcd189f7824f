using System.Globalization;
using System.Security.Cryptography;
using System.Text;

namespace Glazewright.Science.Weather;

/// <summary>
/// A year made up from twelve months of normals and a seed, for a place without a weather file. It keeps the months' means, daily ranges, day-to-day spread
/// and persistence; its weeks are invented, its extremes mean nothing, and every output that rests on it says so.
/// </summary>
public static class SyntheticYear
{
    /// <summary>Label for every output.</summary>
    public const string Label = "synthetic year from monthly normals (not measured)";

    /// <summary>Makes the year.</summary>
    /// <param name="station">Place; the sun and the standard pressure come from it.</param>
    /// <param name="normals">Twelve months, January first.</param>
    /// <param name="seed">Any number; the same seed gives the same year.</param>
    /// <param name="prevailingWindFromDeg">Direction the wind mostly comes from, degrees from north, 0 to 360; normals seldom give it.</param>
    /// <returns>A complete year with origin <see cref="WeatherOrigin.Synthetic"/>.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not twelve months, or a normal outside its range.</exception>
    /// <remarks>Method and its checks: docs/methods/weather.md#synthetic-year.</remarks>
    public static WeatherYear Make(WeatherStation station, IReadOnlyList<MonthlyNormals> normals, ulong seed, double prevailingWindFromDeg)
    {
        ArgumentNullException.ThrowIfNull(station);
        ArgumentNullException.ThrowIfNull(normals);
        Guards.Within.Require(normals.Count, 12, 12);
        Guards.Within.Require(prevailingWindFromDeg, 0, 360);
        Guards.Within.Require(station.LatitudeDeg, -90, 90);
        Guards.Within.Require(station.LongitudeDeg, -180, 180);
        Guards.Within.Require(station.ElevationM, -450, 6000);
        foreach (MonthlyNormals month in normals)
        {
            month.RequireSane();
        }

        var root = new SeededChance(seed);
        double[] clearness = SyntheticSun.DailyClearness(station, normals, new SeededChance(root.NextBits()));
        SyntheticSun sun = SyntheticSun.Of(station, normals, clearness);
        SyntheticAir air = SyntheticAir.Of(station, normals, clearness, new SeededChance(root.NextBits()));
        SyntheticWind wind = SyntheticWind.Of(normals, new SeededChance(root.NextBits()), prevailingWindFromDeg);
        double[] pressure = Pressure(station, new SeededChance(root.NextBits()));
        double[] cover = CoverGuess.From(station, sun.GhiWhm2, NaNs());
        return Assemble(station, normals, seed, prevailingWindFromDeg, sun, air, wind, pressure, cover);
    }

    private static WeatherYear Assemble(
        WeatherStation station, IReadOnlyList<MonthlyNormals> normals, ulong seed, double prevailingWindFromDeg,
        SyntheticSun sun, SyntheticAir air, SyntheticWind wind, double[] pressure, double[] cover)
    {
        var rh = new double[CommonYear.Hours];
        var infrared = new double[CommonYear.Hours];
        for (int h = 0; h < CommonYear.Hours; h++)
        {
            cover[h] = Math.Round(cover[h]);
            rh[h] = Math.Round(100 * WeatherMoisture.SaturationPa(air.DewPointC[h]) / WeatherMoisture.SaturationPa(air.DryBulbC[h]), 1);
            infrared[h] = Math.Round(SkyInfrared.ClarkAllenWm2(air.DryBulbC[h], air.DewPointC[h], cover[h]), 1);
        }

        return new WeatherYear
        {
            Station = station,
            Provenance = new WeatherProvenance(WeatherOrigin.Synthetic, Label, Hash(station, normals, seed, prevailingWindFromDeg), []),
            Conditions = new HeaderConditions.None(),
            DryBulbC = new HourlyColumn(air.DryBulbC),
            DewPointC = new HourlyColumn(air.DewPointC),
            RhPercent = new HourlyColumn(rh),
            PressurePa = new HourlyColumn(pressure),
            GhiWhm2 = new HourlyColumn(sun.GhiWhm2),
            DniWhm2 = new HourlyColumn(sun.DniWhm2),
            DhiWhm2 = new HourlyColumn(sun.DhiWhm2),
            HorizontalInfraredWhm2 = new HourlyColumn(infrared),
            WindMs = new HourlyColumn(wind.SpeedMs),
            WindFromDeg = new HourlyColumn(wind.FromDeg),
            OpaqueCoverTenths = new HourlyColumn(cover),
            SnowDepthM = new HourlyColumn(NaNs()),
            Gaps = [],
            Notes =
            [
                new WeatherNote("A synthetic year: made from monthly normals with a fixed seed. Months are right on average; no single day, hot spell or frost in it was ever measured. Use given design conditions for sizing."),
            ],
        };
    }

    /// <summary>Standard pressure with slow swings of 600 Pa (our choice, mid-latitudes).</summary>
    private static double[] Pressure(WeatherStation station, SeededChance chance)
    {
        double mean = WeatherMoisture.StandardPressurePa(station.ElevationM);
        var pressure = new double[CommonYear.Hours];
        double x = chance.NextNormal();
        for (int h = 0; h < pressure.Length; h++)
        {
            x = 0.985 * x + 0.1726 * chance.NextNormal();
            pressure[h] = Math.Round(mean + 600 * x);
        }

        return pressure;
    }

    private static double[] NaNs()
    {
        var x = new double[CommonYear.Hours];
        Array.Fill(x, double.NaN);
        return x;
    }

    private static string Hash(WeatherStation station, IReadOnlyList<MonthlyNormals> normals, ulong seed, double prevailingWindFromDeg)
    {
        var text = new StringBuilder();
        text.Append(CultureInfo.InvariantCulture, $"synthetic 1|{station.LatitudeDeg:R}|{station.LongitudeDeg:R}|{station.ZoneH:R}|{station.ElevationM:R}|{seed}|{prevailingWindFromDeg:R}");
        foreach (MonthlyNormals n in normals)
        {
            text.Append(CultureInfo.InvariantCulture, $"|{n.MeanC:R},{n.DailyRangeK:R},{n.DailyMeanDeviationK:R},{n.DailyMeanLag1Ratio:R},{n.DewPointC:R},{n.ClearnessRatio:R},{n.DailyClearnessDeviationRatio:R},{n.DailyClearnessLag1Ratio:R},{n.DiffuseFraction:R},{n.WindMs:R},{n.WindDeviationMs:R}");
        }

        return Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text.ToString())));
    }
}
