namespace Glazewright.Science.Weather;

/// <summary>Where the wind comes from over chosen hours of a year, and how hard it blows onto a wall.</summary>
public sealed class WindRose
{
    /// <summary>Number of sectors, each 22.5° wide, the first centred on north.</summary>
    public const int Sectors = 16;

    /// <summary>Hours of daylight, the warmest of the year, that <see cref="WarmDaylight"/> looks at: those in which a house asks for its fans (our choice).</summary>
    public const int WarmHours = 1000;

    private const double CalmMs = 0.5;
    private const double LeastSunWhm2 = 20;

    private readonly double[] fromDeg, speedMs; // hours that are not calm
    private readonly int hours;

    private WindRose(int hours, double[] fromDeg, double[] speedMs)
    {
        this.hours = hours;
        this.fromDeg = fromDeg;
        this.speedMs = speedMs;
    }

    /// <summary>Share of hours with less than 0.5 m/s.</summary>
    public double CalmFraction => hours > 0 ? 1 - fromDeg.Length / (double)hours : 0;

    /// <summary>The wind of a year's warmest daylight hours.</summary>
    /// <param name="year">The year.</param>
    /// <returns>The rose; null where the year has no wind direction of its own (missing throughout, or made from normals).</returns>
    public static WindRose? WarmDaylight(WeatherYear year)
    {
        ArgumentNullException.ThrowIfNull(year);
        if (year.Provenance.Kind == WeatherOrigin.Synthetic || year.Gaps.Any(g => g.Field == "Wind direction" && g.Hours == CommonYear.Hours))
        {
            return null;
        }

        int[] warm = [.. Enumerable.Range(0, CommonYear.Hours).Where(h => year.GhiWhm2[h] > LeastSunWhm2)
            .OrderByDescending(h => year.DryBulbC[h]).ThenBy(h => h).Take(WarmHours)];
        return Of([.. warm.Select(h => year.WindFromDeg[h])], [.. warm.Select(h => year.WindMs[h])]);
    }

    /// <summary>The wind of given hours.</summary>
    /// <param name="windFromDeg">Direction it comes from, degrees from north.</param>
    /// <param name="windMs">Speed, m/s, ≥ 0.</param>
    /// <exception cref="ArgumentException">The two differ in length.</exception>
    public static WindRose Of(IReadOnlyList<double> windFromDeg, IReadOnlyList<double> windMs)
    {
        ArgumentNullException.ThrowIfNull(windFromDeg);
        ArgumentNullException.ThrowIfNull(windMs);
        if (windFromDeg.Count != windMs.Count)
        {
            throw new ArgumentException("As many directions as speeds.", nameof(windMs));
        }

        int[] blows = [.. Enumerable.Range(0, windMs.Count).Where(h => windMs[h] >= CalmMs)];
        return new WindRose(windMs.Count, [.. blows.Select(h => windFromDeg[h])], [.. blows.Select(h => windMs[h])]);
    }

    /// <summary>Share of all hours in which the wind comes from a sector.</summary>
    /// <param name="sector">0 (north) to 15, clockwise.</param>
    public double ShareFraction(int sector) => hours > 0 ? fromDeg.Count(d => SectorOf(d) == sector) / (double)hours : 0;

    /// <summary>Mean speed of the wind from a sector, m/s; 0 where none comes.</summary>
    /// <param name="sector">0 (north) to 15, clockwise.</param>
    public double MeanMs(int sector) => speedMs.Where((_, i) => SectorOf(fromDeg[i]) == sector).DefaultIfEmpty(0).Average();

    /// <summary>The sector most hours come from.</summary>
    public int MostlyFrom => Enumerable.Range(0, Sectors).MaxBy(ShareFraction);

    /// <summary>Share of all hours in which the wind comes from within 45° of where a wall looks.</summary>
    /// <param name="outwardDeg">Where the wall looks, degrees from north.</param>
    public double OntoFraction(double outwardDeg) => hours > 0 ? fromDeg.Count(d => Math.Cos((d - outwardDeg) * Math.PI / 180) >= Math.Sqrt(0.5) - 1e-12) / (double)hours : 0;

    /// <summary>Mean speed of the wind that comes onto a wall (within 45°), m/s; 0 where none does.</summary>
    /// <param name="outwardDeg">Where the wall looks, degrees from north.</param>
    public double OntoMs(double outwardDeg) =>
        speedMs.Where((_, i) => Math.Cos((fromDeg[i] - outwardDeg) * Math.PI / 180) >= Math.Sqrt(0.5) - 1e-12).DefaultIfEmpty(0).Average();

    /// <summary>Mean over all hours of speed² × cosine to the wall, m²/s²: above 0 where wind presses on the wall more than it sucks at it.</summary>
    /// <param name="outwardDeg">Where the wall looks, degrees from north.</param>
    public double PushM2PerS2(double outwardDeg)
    {
        double sum = 0;
        for (int i = 0; i < fromDeg.Length; i++)
        {
            sum += speedMs[i] * speedMs[i] * Math.Cos((fromDeg[i] - outwardDeg) * Math.PI / 180);
        }

        return hours > 0 ? sum / hours : 0;
    }

    /// <summary>Name of a sector as weather services print it: N, NNE, NE …</summary>
    /// <param name="sector">0 (north) to 15, clockwise.</param>
    public static string Name(int sector) =>
        ((string[])["N", "NNE", "NE", "ENE", "E", "ESE", "SE", "SSE", "S", "SSW", "SW", "WSW", "W", "WNW", "NW", "NNW"])[sector];

    private static int SectorOf(double directionDeg) => (int)Math.Floor((directionDeg + 360.0 / Sectors / 2) / (360.0 / Sectors)) % Sectors;
}
