using Glazewright.Design.Contracts;

namespace Glazewright.Design.Brief;

/// <summary>The place: coordinates, clock, weather, design conditions, snow, wind, ground, horizon.</summary>
/// <param name="Place">Name of the place as printed.</param>
/// <param name="LatitudeDeg">North positive, −90 to 90.</param>
/// <param name="LongitudeDeg">East positive, −180 to 180.</param>
/// <param name="ElevationM">Above sea level, −430 to 6000.</param>
/// <param name="Zone">IANA zone; the standard offset is used all year.</param>
/// <param name="ZoneHours">Standard offset from UTC, h.</param>
/// <param name="RangeBearingDeg">Bearing of the ridges, end 1 to end 2, clockwise from true north.</param>
/// <param name="Weather">Where the hourly year comes from.</param>
/// <param name="Design">Design conditions; null when neither typed nor in the weather file: computed from the year, and said so.</param>
/// <param name="Snow">Ground snow.</param>
/// <param name="Wind">Wind.</param>
/// <param name="Ground">Soil, frost, albedo.</param>
/// <param name="Horizon">Skyline points, by azimuth; empty for a flat horizon.</param>
/// <param name="Neighbours">Boxes that shade: buildings, trees.</param>
public sealed record Site(
    string Place,
    double LatitudeDeg,
    double LongitudeDeg,
    double ElevationM,
    string Zone,
    double ZoneHours,
    double RangeBearingDeg,
    WeatherChoice Weather,
    DesignConditions? Design,
    SnowSite Snow,
    WindSite Wind,
    GroundSite Ground,
    EqList<HorizonPoint> Horizon,
    EqList<NeighbourBox> Neighbours);

/// <summary>Where the hourly year comes from. A closed case.</summary>
public abstract record WeatherChoice
{
    private WeatherChoice()
    {
    }

    /// <summary>A weather file, by name beside the job (or in the library) and, when typed, its content hash.</summary>
    /// <param name="Name">File name, no folders.</param>
    /// <param name="Sha256">Expected hash, hex; empty for any.</param>
    public sealed record File(string Name, string Sha256) : WeatherChoice;

    /// <summary>A synthetic year from monthly normals.</summary>
    /// <param name="Months">Twelve rows, January first.</param>
    /// <param name="Seed">Seed of the generator.</param>
    public sealed record Normals(EqList<MonthNormal> Months, int Seed) : WeatherChoice;
}

/// <summary>One month's climate normals.</summary>
/// <param name="MeanC">Mean temperature, °C.</param>
/// <param name="MeanMaxC">Mean daily maximum, °C.</param>
/// <param name="MeanMinC">Mean daily minimum, °C.</param>
/// <param name="DayToDaySdK">Standard deviation of daily means, K.</param>
/// <param name="DayToDayLag1Fraction">Lag-one autocorrelation of daily means.</param>
/// <param name="DewPointC">Mean dew point, °C.</param>
/// <param name="GlobalWhPerM2Day">Mean daily global radiation, Wh/m²d.</param>
/// <param name="ClearnessSdFraction">Standard deviation of the daily clearness index.</param>
/// <param name="WindMs">Mean wind at 10 m, m/s.</param>
public sealed record MonthNormal(
    double MeanC,
    double MeanMaxC,
    double MeanMinC,
    double DayToDaySdK,
    double DayToDayLag1Fraction,
    double DewPointC,
    double GlobalWhPerM2Day,
    double ClearnessSdFraction,
    double WindMs);

/// <summary>Design conditions of the site.</summary>
/// <param name="Heating996C">99.6 % heating dry bulb, °C.</param>
/// <param name="ExtremeMinC">Mean annual extreme minimum, °C.</param>
/// <param name="Cooling04C">0.4 % cooling dry bulb, °C.</param>
/// <param name="CoincidentWetBulbC">Its mean coincident wet bulb, °C.</param>
/// <param name="Evaporation04C">0.4 % evaporation wet bulb, °C.</param>
/// <param name="Source">Typed, from the file's header (edition), or computed from one typical year.</param>
public sealed record DesignConditions(
    double Heating996C,
    double ExtremeMinC,
    double Cooling04C,
    double CoincidentWetBulbC,
    double Evaporation04C,
    Source Source);

/// <summary>Editions of the load standard: part of every load number.</summary>
public enum LoadEdition
{
    /// <summary>ASCE/SEI 7-16: service-level ground snow with importance factor.</summary>
    Asce716,

    /// <summary>ASCE/SEI 7-22: strength-level ground snow by risk category.</summary>
    Asce722,
}

/// <summary>Ground snow with its edition.</summary>
/// <param name="GroundPa">Ground snow load, Pa, 0 to 15 000.</param>
/// <param name="Edition">The edition the number belongs to.</param>
/// <param name="WinterWindFraction">Winter wind parameter of 7-22 drifts, 0.25 to 0.65.</param>
public sealed record SnowSite(double GroundPa, LoadEdition Edition, double WinterWindFraction);

/// <summary>Terrain roughness.</summary>
public enum WindExposure
{
    /// <summary>Suburban, wooded.</summary>
    B,

    /// <summary>Open country.</summary>
    C,

    /// <summary>Flat shore.</summary>
    D,
}

/// <summary>Basic wind speed with its edition.</summary>
/// <param name="SpeedMs">Three-second gust, m/s, 0 to 100.</param>
/// <param name="Exposure">Terrain.</param>
/// <param name="TopographicFactor">Kzt, 1 on flat ground.</param>
/// <param name="Edition">Edition.</param>
public sealed record WindSite(double SpeedMs, WindExposure Exposure, double TopographicFactor, LoadEdition Edition);

/// <summary>The ground.</summary>
/// <param name="Soil">Soil in words.</param>
/// <param name="BearingPa">Presumed bearing pressure, Pa.</param>
/// <param name="FrostDepthM">Frost depth, m.</param>
/// <param name="AlbedoFraction">Reflectance without snow.</param>
public sealed record GroundSite(string Soil, double BearingPa, double FrostDepthM, double AlbedoFraction);

/// <summary>One point of the skyline.</summary>
/// <param name="AzimuthDeg">Clockwise from true north.</param>
/// <param name="ElevationDeg">Height of the skyline there.</param>
public sealed record HorizonPoint(double AzimuthDeg, double ElevationDeg);

/// <summary>A box that shades, in range axes.</summary>
/// <param name="Id">Id.</param>
/// <param name="OriginXM">Corner with the least x, m.</param>
/// <param name="OriginYM">Corner with the least y, m.</param>
/// <param name="SizeXM">Size along x, m.</param>
/// <param name="SizeYM">Size along y, m.</param>
/// <param name="HeightM">Height, m.</param>
public sealed record NeighbourBox(string Id, double OriginXM, double OriginYM, double SizeXM, double SizeYM, double HeightM);
