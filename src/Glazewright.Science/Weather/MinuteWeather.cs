using System.Runtime.CompilerServices;

namespace Glazewright.Science.Weather;

/// <summary>
/// A weather year by the minute: 525,600 values a column, minute m covering m to m + 1 minutes after 1 January 00:00 standard time, values at its middle.
/// Every hour keeps the global radiation of the hourly file exactly; real clouds within the hour are not in an hourly file, so this sun is smoother than the real one.
/// </summary>
/// <remarks>Method and what was tried: docs/methods/weather.md#to-the-minute.</remarks>
public sealed class MinuteWeather
{
    // What acts on a house day and night, and what by day.
    private readonly double[] air = new double[CommonYear.Minutes * MinuteColumn.Together], sun = new double[CommonYear.Minutes * MinuteColumn.Together];

    private const int MinutesAhead = 3 * MinuteColumn.Together;

    internal MinuteWeather()
    {
    }

    /// <summary>True when every minute has a number for what acts on a house: temperature, humidity, pressure, wind, sky and sun.</summary>
    public bool AllNumbers { get; private set; }

    /// <summary>Minutes a column.</summary>
    public static int Count => CommonYear.Minutes;

    /// <summary>Dry bulb, °C.</summary>
    public MinuteColumn DryBulbC => DryBulb;

    /// <summary>Vapour pressure, Pa, never above saturation.</summary>
    public ReadOnlySpan<double> VapourPressurePa => Vapour;

    /// <summary>Station pressure, Pa.</summary>
    public MinuteColumn PressurePa => Pressure;

    /// <summary>Humidity ratio, kg water per kg dry air.</summary>
    public MinuteColumn HumidityRatio => Humidity;

    /// <summary>Relative humidity over water, over ice below 0 °C, %, 0 to 100.</summary>
    public MinuteColumn RelativeHumidityPercent => Relative;

    /// <summary>Wet bulb, °C (<see cref="Climate.VapourTable.WetBulbC"/>).</summary>
    public MinuteColumn WetBulbC => WetBulb;

    /// <summary>Wind speed at the station's height, m/s.</summary>
    public MinuteColumn WindMs => Wind;

    /// <summary>Long-wave radiation from the sky on a horizontal plane, W/m².</summary>
    public ReadOnlySpan<double> SkyLongwaveWm2 => SkyLongwave;

    /// <summary>Temperature of a black sky of the same radiation, °C.</summary>
    public MinuteColumn SkyC => SkyTemperature;

    /// <summary>Global horizontal, W/m².</summary>
    public MinuteColumn GhiWm2 => Ghi;

    /// <summary>Direct normal, W/m²: beam on the horizontal over the cosine of the zenith angle.</summary>
    public ReadOnlySpan<double> DniWm2 => Dni;

    /// <summary>Diffuse horizontal, W/m².</summary>
    public ReadOnlySpan<double> DhiWm2 => Dhi;

    /// <summary>Cosine of the zenith angle, negative below the horizon.</summary>
    public MinuteColumn CosZenith => Up;

    /// <summary>Azimuth of the sun, degrees clockwise from north; 0 while the sun is more than 3° down.</summary>
    public MinuteColumn SunAzimuthDeg => Azimuth;

    /// <summary>Light from the sun's place, W/m² on a plane facing it: beam and the bright sky around it (<see cref="Sky.PerezSky"/>).</summary>
    public MinuteColumn FromSunWm2 => FromSun;

    /// <summary>Evenly bright sky, W/m² on the horizontal.</summary>
    public MinuteColumn DomeWm2 => Dome;

    /// <summary>Band on the horizon, W/m² on an upright wall; may be negative.</summary>
    public MinuteColumn HorizonWm2 => Horizon;

    /// <summary>Height of the sun's centre over the horizon, degrees; 0 at minutes without light.</summary>
    public MinuteColumn SunElevationDeg => Elevation;

    /// <summary>Sun's unit vector, to the east; the part upward is <see cref="CosZenith"/>.</summary>
    public MinuteColumn SunEast => East;

    /// <summary>Sun's unit vector, to the north.</summary>
    public MinuteColumn SunNorth => North;

    /// <summary>Snow that fell in each hour of the year, m of depth, 8,760 values: how much the cover of the ground grew in air up to 2 °C (rain from there on; common practice). Empty where the file records no snow.</summary>
    public ReadOnlySpan<double> SnowFallenByHourM => SnowFallen;

    /// <summary>Rain in each hour of the year, 8,760 values: 1 rain, 0 dry, not-a-number where the file does not say.</summary>
    public ReadOnlySpan<double> RainByHour => Rained;

    /// <summary>Sunrise and sunset of each day, 365 values: every run over the year begins with them, and a day rehearsed a hundred times is a hundred runs.</summary>
    public ReadOnlySpan<SunHours> SunByDay => SunDays;

    internal double[] SnowFallen { get; set; } = [];

    internal double[] Rained { get; set; } = [];

    internal SunHours[] SunDays { get; set; } = [];

    internal MinuteColumn DryBulb => new(air, 0);

    internal MinuteColumn Humidity => new(air, 1);

    internal MinuteColumn Pressure => new(air, 2);

    internal MinuteColumn Wind => new(air, 3);

    internal MinuteColumn SkyTemperature => new(air, 4);

    internal MinuteColumn Relative => new(air, 5);

    internal MinuteColumn WetBulb => new(air, 6);

    internal MinuteColumn Ghi => new(air, 7);

    internal MinuteColumn FromSun => new(sun, 0);

    internal MinuteColumn Dome => new(sun, 1);

    internal MinuteColumn Horizon => new(sun, 2);

    internal MinuteColumn Azimuth => new(sun, 3);

    internal MinuteColumn Elevation => new(sun, 4);

    internal MinuteColumn Up => new(sun, 5);

    internal MinuteColumn East => new(sun, 6);

    internal MinuteColumn North => new(sun, 7);

    internal double[] Vapour { get; } = new double[CommonYear.Minutes];

    internal double[] SkyLongwave { get; } = new double[CommonYear.Minutes];

    internal double[] Dni { get; } = new double[CommonYear.Minutes];

    internal double[] Dhi { get; } = new double[CommonYear.Minutes];

    /// <summary>What the expansion had to bend, for the report.</summary>
    public required MinuteExpansionLog Log { get; init; }

    /// <summary>
    /// Reads what the minutes to come need, so that it is in the processor's cache by then: a year's loop takes so long over a minute that the processor does not fetch ahead by itself.
    /// </summary>
    /// <param name="minute">Minute of the year.</param>
    /// <returns>Some number; keep it where it cannot be taken for unused.</returns>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public double ReachAhead(int minute)
    {
        int at = (minute * MinuteColumn.Together) + MinutesAhead;
        return at < air.Length ? air[at] + sun[at] : 0.0;
    }

    /// <summary>Expands a year.</summary>
    /// <param name="year">The hourly year.</param>
    /// <returns>All minutes of it.</returns>
    public static MinuteWeather Expand(WeatherYear year)
    {
        ArgumentNullException.ThrowIfNull(year);
        var minutes = new MinuteWeather { Log = new MinuteExpansionLog() };
        StateExpansion.Fill(year, minutes);
        minutes.SnowFallen = SnowFall.ByHourM(year.SnowDepthM, year.DryBulbC);
        minutes.Rained = [.. year.RainFraction.Span];
        SunExpansion.Fill(year, minutes);
        SkyExpansion.Fill(minutes);
        minutes.SunDays = SunHours.ByDay(minutes.CosZenith);
        minutes.AllNumbers = double.IsFinite(minutes.air.Sum()) && double.IsFinite(minutes.sun.Sum());
        return minutes;
    }
}

/// <summary>Counts of hours in which the hourly values could not all be kept.</summary>
public sealed class MinuteExpansionLog
{
    /// <summary>Hours whose radiation was spread as pure diffuse, the sun being too low for a clearness.</summary>
    public int HoursSpreadAsDiffuse { get; internal set; }

    /// <summary>Hours whose file gives more diffuse than global: the diffuse was lowered to the global.</summary>
    public int HoursWithDiffuseAboveGlobal { get; internal set; }

    /// <summary>Hours in which a beam stronger than the sky allows was turned into diffuse.</summary>
    public int HoursWithBeamCapped { get; internal set; }

    /// <summary>Energy turned from beam to diffuse over the year, Wh/m² on the horizontal.</summary>
    public double BeamTurnedToDiffuseWhm2 { get; internal set; }
}
