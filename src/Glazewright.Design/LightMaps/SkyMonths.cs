using Glazewright.Science.Light;
using Glazewright.Science.Sky;
using Glazewright.Science.Sun;
using Glazewright.Science.Weather;

namespace Glazewright.Design.LightMaps;

/// <summary>
/// A weather year as twelve skies: for each month the energy from every sun direction (in house coordinates), from the even sky, the horizon band and
/// the ground, Wh/m². Beam and diffuse of each hour are spread over its lit quarter hours so that the hour's energy stays.
/// </summary>
internal sealed class SkyMonths
{
    /// <summary>Quarter hours: the sun moves 3.75° at most.</summary>
    private const int StepMinutes = 15;

    private const int StepsInHour = 60 / StepMinutes;

    /// <summary>Ground with snow on it (common practice: 0.6 to 0.7).</summary>
    private const double SnowAlbedo = 0.65;

    /// <summary>Snow deeper than this hides the ground, m.</summary>
    private const double HidingSnowM = 0.03;

    private SkyMonths(int nodes)
    {
        Beam = [.. Enumerable.Range(0, 12).Select(_ => new double[nodes])];
    }

    public double[][] Beam { get; }

    public double[] Dome { get; } = new double[12];

    public double[] Horizon { get; } = new double[12];

    public double[] Ground { get; } = new double[12];

    public double[] Global { get; } = new double[12];

    public static SkyMonths Of(WeatherYear year, double rangeBearingDeg, double albedo, SunGrid grid)
    {
        WeatherStation at = year.Station;
        double pressurePa = Math.Clamp(AirMass.PressureAtPa(Math.Max(-450, at.ElevationM)), 50_000, 108_000);

        // A typical year mixes years; 2011 stands in the middle of the leap cycle, as in the expansion to minutes.
        SunYear sun = SunYear.Compute(
            2011, at.LatitudeDeg, at.LongitudeDeg, at.ZoneH, Math.Clamp(at.ElevationM, -450, 6000), pressurePa, 10, 0.5, StepMinutes);
        SkyMonths months = new(grid.Count);
        int shift = (int)Math.Round((0.5 + year.RadiationOffsetH) * StepsInHour);
        int steps = sun.Up.Length;
        for (int h = 0; h < CommonYear.Hours; h++)
        {
            int month = CommonYear.MonthOfDay(h / 24) - 1;
            double globalWh = Math.Max(0, year.GhiWhm2[h]);
            months.Global[month] += globalWh;
            if (globalWh <= 0)
            {
                continue;
            }

            int first = h * StepsInHour + shift;
            double upSum = 0;
            int lit = 0;
            for (int k = 0; k < StepsInHour; k++)
            {
                double up = sun.Up[Ring(first + k, steps)];
                upSum += up > 0 ? up : 0;
                lit += up > 0 ? 1 : 0;
            }

            double snowM = year.SnowDepthM[h];
            double groundAlbedo = snowM > HidingSnowM ? SnowAlbedo : albedo;
            double diffuseWh = Math.Min(globalWh, Math.Max(0, year.DhiWhm2[h]));
            double normalMost = 1361;
            double normalW = upSum > 0 ? Math.Min(normalMost, (globalWh - diffuseWh) * StepsInHour / upSum) : 0;
            double spreadWh = globalWh - normalW * upSum / StepsInHour;
            if (lit == 0)
            {
                months.Dome[month] += globalWh;
                months.Ground[month] += globalWh * groundAlbedo;
                continue;
            }

            for (int k = 0; k < StepsInHour; k++)
            {
                int step = Ring(first + k, steps);
                if (sun.Up[step] > 0)
                {
                    months.Add(month, sun, step, normalW, spreadWh * StepsInHour / lit, groundAlbedo, rangeBearingDeg, grid);
                }
            }
        }

        return months;
    }

    private void Add(
        int month, SunYear sun, int step, double normalW, double diffuseW, double groundAlbedo, double rangeBearingDeg, SunGrid grid)
    {
        double up = sun.Up[step];
        double elevationDeg = sun.ElevationDeg(step);
        double zenithDeg = 90 - elevationDeg;
        double distance = sun.DistanceAu[step / (24 * StepsInHour)];
        SkySources sky = PerezSky.Kernel(
            normalW, diffuseW, normalW * up + diffuseW, zenithDeg, up, AirMass.RelativeKastenYoung(zenithDeg),
            Extraterrestrial.SolarConstantWm2 / (distance * distance), groundAlbedo);
        const double hours = 1.0 / StepsInHour;
        Dome[month] += sky.DomeWm2 * hours;
        Horizon[month] += sky.HorizonWm2 * hours;
        Ground[month] += sky.GroundWm2 * hours;

        // The grid turns anticlockwise from +x, bearings clockwise from north.
        SunGridPlace place = grid.At(rangeBearingDeg - sun.AzimuthDeg(step), elevationDeg);
        double energy = sky.FromSunWm2 * hours;
        double[] beam = Beam[month];
        beam[place.Node0] += energy * place.Weight0Fraction;
        beam[place.Node1] += energy * place.Weight1Fraction;
        beam[place.Node2] += energy * place.Weight2Fraction;
        beam[place.Node3] += energy * place.Weight3Fraction;
    }

    private static int Ring(int step, int steps) => step < 0 ? step + steps : step >= steps ? step - steps : step;
}
