using Glazewright.Science.Light;
using Glazewright.Science.Sky;
using Glazewright.Science.Weather;

namespace Glazewright.Bench.Convergence;

/// <summary>What a period's sky holds: energy, Wh/m².</summary>
internal sealed class StudyPeriod
{
    internal double Dome { get; set; }

    internal double Horizon { get; set; }

    internal double Ground { get; set; }
}

/// <summary>The example weather year: its sun quarter hour by quarter hour, and the same shared out to a grid's nodes as the light map does it.</summary>
internal sealed class StudyYear
{
    /// <summary>The periods that are studied.</summary>
    internal static readonly string[] Periods = ["year", "December"];

    private readonly List<(SkyQuarter Quarter, double Wh)> sun = [];

    private readonly double latitudeDeg;

    private StudyYear(WeatherYear year)
    {
        latitudeDeg = year.Station.LatitudeDeg;
        SkyQuarters.Walk(year, StudyHouse.AlbedoFraction, q =>
        {
            const double hours = 1.0 / SkyQuarters.InHour;
            for (int p = 0; p < Periods.Length; p++)
            {
                if (In(p, q.Month))
                {
                    Sky[p].Dome += q.Sources.DomeWm2 * hours;
                    Sky[p].Horizon += q.Sources.HorizonWm2 * hours;
                    Sky[p].Ground += q.Sources.GroundWm2 * hours;
                }
            }

            if (q.Sources.FromSunWm2 > 0)
            {
                sun.Add((q, q.Sources.FromSunWm2 * hours));
            }
        });
    }

    internal StudyPeriod[] Sky { get; } = [.. Periods.Select(_ => new StudyPeriod())];

    /// <summary>
    /// Towards the sun of every lit quarter hour, house axes, each in so many steps: the sun turns about the pole by 3.75° in a quarter hour. A step below the horizon
    /// stays at the quarter's own place.
    /// </summary>
    internal Vector3d[] Steps(int inQuarter)
    {
        Vector3d pole = Vector3d.Towards(StudyHouse.RangeBearingDeg, latitudeDeg);
        return [.. Towards.SelectMany(t => Enumerable.Range(0, inQuarter).Select(i =>
        {
            (double sin, double cos) = Math.SinCos((((i + 0.5) / inQuarter) - 0.5) * 3.75 * Math.PI / 180);
            Vector3d turned = (cos * t) + (sin * t.Cross(pole)) + ((1 - cos) * pole.Dot(t) * pole);
            return turned.Z > 0 ? turned : t;
        }))];
    }

    /// <summary>Towards the sun of every lit quarter hour, house axes.</summary>
    internal Vector3d[] Towards => [.. sun.Select(s => Vector3d.Towards(StudyHouse.RangeBearingDeg - s.Quarter.AzimuthDeg, Math.Max(0, s.Quarter.ElevationDeg)))];

    /// <summary>Their energy by period, Wh/m².</summary>
    internal double[][] Energy => [.. Periods.Select((_, p) => sun.Select(s => In(p, s.Quarter.Month) ? s.Wh : 0).ToArray())];

    internal static StudyYear Example()
    {
        WeatherYear year = ((WeatherReading.Read)WeatherFile.Read(File.ReadAllBytes(
            Path.Combine(RepoRoot(), "examples", "weather", "demo-continental-42N.epw.gz")))).Year;
        return new StudyYear(year);
    }

    /// <summary>The folder that holds the solution.</summary>
    internal static string RepoRoot()
    {
        for (DirectoryInfo? at = new(AppContext.BaseDirectory); at is not null; at = at.Parent)
        {
            if (File.Exists(Path.Combine(at.FullName, "Glazewright.slnx")))
            {
                return at.FullName;
            }
        }

        throw new FileNotFoundException("Glazewright.slnx");
    }

    /// <summary>Energy on a grid's nodes by period, shared bilinearly.</summary>
    internal double[][] On(SunGrid grid)
    {
        double[][] beam = [.. Periods.Select(_ => new double[grid.Count])];
        foreach ((SkyQuarter q, double wh) in sun)
        {
            SunGridPlace place = grid.At(StudyHouse.RangeBearingDeg - q.AzimuthDeg, q.ElevationDeg);
            for (int p = 0; p < Periods.Length; p++)
            {
                if (In(p, q.Month))
                {
                    beam[p][place.Node0] += wh * place.Weight0Fraction;
                    beam[p][place.Node1] += wh * place.Weight1Fraction;
                    beam[p][place.Node2] += wh * place.Weight2Fraction;
                    beam[p][place.Node3] += wh * place.Weight3Fraction;
                }
            }
        }

        return beam;
    }

    private static bool In(int period, int month) => period == 0 || month == 11;
}
