using Glazewright.Published.Tests.Weather;
using Glazewright.Science.Sky;
using Glazewright.Science.Weather;

namespace Glazewright.Published.Tests.Science.Standard140;

/// <summary>
/// Denver's typical year as it acts on the box in steps of ten minutes: the product's reader, its expansion to the minute, its sky sources on planes. Station 725650 is the
/// one the standard's 2020 edition ships (named in the case sheets).
/// </summary>
internal sealed class BoxSky
{
    public const int StepMinutes = 10;
    public const int Steps = CommonYear.Minutes / StepMinutes;
    private const double Albedo = 0.2;

    private static readonly Lazy<BoxSky> Denver = new(() => new BoxSky(WeatherCases.ReadOrSkip("USA_CO_Denver.Intl.AP.725650_TMY3.epw.gz")));

    private readonly double[][] sun = new double[6][], diffuse = new double[6][];
    private readonly float[][] cosine = new float[6][];

    private BoxSky(WeatherYear year)
    {
        MinuteWeather minutes = MinuteWeather.Expand(year);
        for (int f = 0; f < 6; f++)
        {
            (sun[f], diffuse[f], cosine[f]) = (new double[Steps], new double[Steps], new float[Steps]);
        }

        for (int step = 0; step < Steps; step++)
        {
            int m = step * StepMinutes + StepMinutes / 2;
            OutsideC[step] = minutes.DryBulbC[m];
            SkyC[step] = minutes.SkyC[m];
            WindMPerS[step] = minutes.WindMs[m];
            if (minutes.GhiWm2[m] > 0)
            {
                Light(minutes, m, step);
            }
        }
    }

    public double[] OutsideC { get; } = new double[Steps];

    public double[] SkyC { get; } = new double[Steps];

    public double[] WindMPerS { get; } = new double[Steps];

    /// <summary>The year, or the test is skipped loudly.</summary>
    public static BoxSky OrSkip()
    {
        _ = WeatherCases.FileOrSkip("USA_CO_Denver.Intl.AP.725650_TMY3.epw.gz");
        return Denver.Value;
    }

    /// <summary>All light on a plane, W/m².</summary>
    public double OnPlaneWPerM2(Facing facing, int step) => sun[(int)facing][step] + diffuse[(int)facing][step];

    /// <summary>What glass lets through and keeps, W/m²: the sun and the sky around it by their angle, the rest as diffuse light.</summary>
    public GlassShares ThroughGlassWPerM2(Facing facing, ClearGlass glass, int step)
    {
        double beam = sun[(int)facing][step], rest = diffuse[(int)facing][step];
        GlassShares even = glass.Diffuse, shares = beam > 0 ? glass.At(cosine[(int)facing][step]) : default;
        return new(
            beam * shares.ThroughFraction + rest * even.ThroughFraction,
            beam * shares.OuterFraction + rest * even.OuterFraction,
            beam * shares.InnerFraction + rest * even.InnerFraction);
    }

    private void Light(MinuteWeather minutes, int m, int step)
    {
        SkySources sources = new(minutes.FromSunWm2[m], 0, minutes.DomeWm2[m], minutes.HorizonWm2[m], minutes.GhiWm2[m] * Albedo);
        (double east, double north, double up) = (minutes.SunEast[m], minutes.SunNorth[m], minutes.CosZenith[m]);
        foreach (Facing facing in Enum.GetValues<Facing>())
        {
            double towards = facing switch
            {
                Facing.Roof => up,
                Facing.North => north,
                Facing.South => -north,
                Facing.East => east,
                Facing.West => -east,
                _ => 0,
            };
            if (facing == Facing.Floor)
            {
                continue; // the standard lets no sun under the floor
            }

            TiltedLight light = PerezSky.OnPlane(sources, up > 0 ? towards : 0, facing == Facing.Roof ? 0 : 90);
            sun[(int)facing][step] = light.BeamWm2;
            diffuse[(int)facing][step] = Math.Max(0, light.DomeWm2 + light.HorizonWm2) + light.GroundWm2;
            cosine[(int)facing][step] = (float)Math.Max(0, towards);
        }
    }
}
