using Glazewright.Science.Light;
using Glazewright.Science.Sky;
using Glazewright.Science.Weather;

namespace Glazewright.Design.LightMaps;

/// <summary>
/// A weather year as twelve skies: for each month the energy from every sun direction (in house coordinates), from the even sky, the horizon band and
/// the ground, Wh/m².
/// </summary>
internal sealed class SkyMonths
{
    private SkyMonths(int nodes)
    {
        Beam = [.. Enumerable.Range(0, 12).Select(_ => new double[nodes])];
    }

    public double[][] Beam { get; }

    public double[] Dome { get; } = new double[12];

    public double[] Horizon { get; } = new double[12];

    public double[] Ground { get; } = new double[12];

    public double[] Global { get; } = new double[12];

    public static SkyMonths Of(WeatherYear year, double rangeBearingDeg, double albedo, SunGrid grid, bool evenSky = false)
    {
        SkyMonths months = new(grid.Count);
        SkyQuarters.Walk(year, albedo, q => months.Add(q, rangeBearingDeg, grid), evenSky);
        for (int h = 0; h < CommonYear.Hours; h++)
        {
            months.Global[CommonYear.MonthOfDay(h / 24) - 1] += Math.Max(0, year.GhiWhm2[h]);
        }

        return months;
    }

    private void Add(in SkyQuarter q, double rangeBearingDeg, SunGrid grid)
    {
        const double hours = 1.0 / SkyQuarters.InHour;
        SkySources sky = q.Sources;
        Dome[q.Month] += sky.DomeWm2 * hours;
        Horizon[q.Month] += sky.HorizonWm2 * hours;
        Ground[q.Month] += sky.GroundWm2 * hours;
        double energy = sky.FromSunWm2 * hours;
        if (energy <= 0)
        {
            return;
        }

        // The grid turns anticlockwise from +x, bearings clockwise from north.
        SunGridPlace place = grid.At(rangeBearingDeg - q.AzimuthDeg, q.ElevationDeg);
        double[] beam = Beam[q.Month];
        beam[place.Node0] += energy * place.Weight0Fraction;
        beam[place.Node1] += energy * place.Weight1Fraction;
        beam[place.Node2] += energy * place.Weight2Fraction;
        beam[place.Node3] += energy * place.Weight3Fraction;
    }
}
