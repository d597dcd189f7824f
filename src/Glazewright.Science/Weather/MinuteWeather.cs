namespace Glazewright.Science.Weather;

/// <summary>
/// A weather year by the minute: 525,600 values a column, minute m covering m to m + 1 minutes after 1 January 00:00 standard time, values at its middle.
/// Every hour keeps the global radiation of the hourly file exactly; real clouds within the hour are not in an hourly file, so this sun is smoother than the real one.
/// </summary>
/// <remarks>Method and what was tried: docs/methods/weather.md#to-the-minute.</remarks>
public sealed class MinuteWeather
{
    internal MinuteWeather()
    {
    }

    /// <summary>True when every minute has a number for what acts on a house: temperature, humidity, pressure, wind, sky and sun.</summary>
    public bool AllNumbers { get; private set; }

    /// <summary>Minutes a column.</summary>
    public static int Count => CommonYear.Minutes;

    /// <summary>Dry bulb, °C.</summary>
    public ReadOnlySpan<double> DryBulbC => DryBulb;

    /// <summary>Vapour pressure, Pa, never above saturation.</summary>
    public ReadOnlySpan<double> VapourPressurePa => Vapour;

    /// <summary>Station pressure, Pa.</summary>
    public ReadOnlySpan<double> PressurePa => Pressure;

    /// <summary>Humidity ratio, kg water per kg dry air.</summary>
    public ReadOnlySpan<double> HumidityRatio => Humidity;

    /// <summary>Relative humidity over water, over ice below 0 °C, %, 0 to 100.</summary>
    public ReadOnlySpan<double> RelativeHumidityPercent => Relative;

    /// <summary>Wet bulb, °C (<see cref="Climate.VapourTable.WetBulbC"/>).</summary>
    public ReadOnlySpan<double> WetBulbC => WetBulb;

    /// <summary>Wind speed at the station's height, m/s.</summary>
    public ReadOnlySpan<double> WindMs => Wind;

    /// <summary>Long-wave radiation from the sky on a horizontal plane, W/m².</summary>
    public ReadOnlySpan<double> SkyLongwaveWm2 => SkyLongwave;

    /// <summary>Temperature of a black sky of the same radiation, °C.</summary>
    public ReadOnlySpan<double> SkyC => SkyTemperature;

    /// <summary>Global horizontal, W/m².</summary>
    public ReadOnlySpan<double> GhiWm2 => Ghi;

    /// <summary>Direct normal, W/m²: beam on the horizontal over the cosine of the zenith angle.</summary>
    public ReadOnlySpan<double> DniWm2 => Dni;

    /// <summary>Diffuse horizontal, W/m².</summary>
    public ReadOnlySpan<double> DhiWm2 => Dhi;

    /// <summary>Cosine of the zenith angle, negative below the horizon.</summary>
    public ReadOnlySpan<double> CosZenith => Up;

    /// <summary>Azimuth of the sun, degrees clockwise from north; 0 while the sun is more than 3° down.</summary>
    public ReadOnlySpan<double> SunAzimuthDeg => Azimuth;

    /// <summary>Light from the sun's place, W/m² on a plane facing it: beam and the bright sky around it (<see cref="Sky.PerezSky"/>).</summary>
    public ReadOnlySpan<double> FromSunWm2 => FromSun;

    /// <summary>Evenly bright sky, W/m² on the horizontal.</summary>
    public ReadOnlySpan<double> DomeWm2 => Dome;

    /// <summary>Band on the horizon, W/m² on an upright wall; may be negative.</summary>
    public ReadOnlySpan<double> HorizonWm2 => Horizon;

    /// <summary>Height of the sun's centre over the horizon, degrees; 0 at minutes without light.</summary>
    public ReadOnlySpan<double> SunElevationDeg => Elevation;

    /// <summary>Sun's unit vector, to the east; the part upward is <see cref="CosZenith"/>.</summary>
    public ReadOnlySpan<double> SunEast => East;

    /// <summary>Sun's unit vector, to the north.</summary>
    public ReadOnlySpan<double> SunNorth => North;

    /// <summary>Snow that fell in each hour of the year, m of depth, 8,760 values: how much the cover of the ground grew in air up to 2 °C (rain from there on; common practice). Empty where the file records no snow.</summary>
    public ReadOnlySpan<double> SnowFallenByHourM => SnowFallen;

    /// <summary>Rain in each hour of the year, 8,760 values: 1 rain, 0 dry, not-a-number where the file does not say.</summary>
    public ReadOnlySpan<double> RainByHour => Rained;

    internal double[] SnowFallen { get; set; } = [];

    internal double[] Rained { get; set; } = [];

    internal double[] FromSun { get; } = new double[CommonYear.Minutes];

    internal double[] Dome { get; } = new double[CommonYear.Minutes];

    internal double[] Horizon { get; } = new double[CommonYear.Minutes];

    internal double[] Elevation { get; } = new double[CommonYear.Minutes];

    internal double[] East { get; } = new double[CommonYear.Minutes];

    internal double[] North { get; } = new double[CommonYear.Minutes];

    internal double[] DryBulb { get; } = new double[CommonYear.Minutes];

    internal double[] Vapour { get; } = new double[CommonYear.Minutes];

    internal double[] Pressure { get; } = new double[CommonYear.Minutes];

    internal double[] Humidity { get; } = new double[CommonYear.Minutes];

    internal double[] WetBulb { get; } = new double[CommonYear.Minutes];

    internal double[] Relative { get; } = new double[CommonYear.Minutes];

    internal double[] Wind { get; } = new double[CommonYear.Minutes];

    internal double[] SkyLongwave { get; } = new double[CommonYear.Minutes];

    internal double[] SkyTemperature { get; } = new double[CommonYear.Minutes];

    internal double[] Ghi { get; } = new double[CommonYear.Minutes];

    internal double[] Dni { get; } = new double[CommonYear.Minutes];

    internal double[] Dhi { get; } = new double[CommonYear.Minutes];

    internal double[] Up { get; } = new double[CommonYear.Minutes];

    internal double[] Azimuth { get; } = new double[CommonYear.Minutes];

    /// <summary>What the expansion had to bend, for the report.</summary>
    public required MinuteExpansionLog Log { get; init; }

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
        minutes.AllNumbers = minutes.LooksThrough();
        return minutes;
    }

    private bool LooksThrough()
    {
        double[][] columns = [DryBulb, Humidity, WetBulb, Pressure, Wind, SkyTemperature, Ghi, FromSun, Dome, Horizon, Up, Azimuth, Elevation, East, North];
        return columns.All(column => double.IsFinite(column.Sum()));
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
