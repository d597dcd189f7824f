using Glazewright.Science.Guards;

namespace Glazewright.Science.Crop;

/// <summary>Reference evapotranspiration of short grass outdoors.</summary>
/// <remarks>Allen, Pereira, Raes and Smith 1998, FAO Irrigation and Drainage Paper 56; equation numbers from memory, examples read at second hand.</remarks>
public static class Fao56
{
    private const double SolarConstantMjPerM2Min = 0.0820;

    /// <summary>Saturation pressure, kPa; eq. 11.</summary>
    /// <param name="airC">Temperature, °C, −50 to 60.</param>
    /// <returns>kPa.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static double SaturationKPa(double airC)
    {
        Within.Require(airC, -50, 60);
        return 0.6108 * Math.Exp(17.27 * airC / (airC + 237.3));
    }

    /// <summary>Slope of the saturation curve; eq. 13.</summary>
    /// <param name="airC">Temperature, °C, −50 to 60.</param>
    /// <returns>kPa/K.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static double SlopeKPaPerK(double airC) => 4098 * SaturationKPa(airC) / ((airC + 237.3) * (airC + 237.3));

    /// <summary>Atmospheric pressure by elevation; eq. 7.</summary>
    /// <param name="elevationM">Elevation, m, −500 to 6000.</param>
    /// <returns>kPa.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static double PressureKPa(double elevationM)
    {
        Within.Require(elevationM, -500, 6000);
        return 101.3 * Math.Pow((293 - 0.0065 * elevationM) / 293, 5.26);
    }

    /// <summary>Psychrometric constant; eq. 8.</summary>
    /// <param name="pressureKPa">Pressure, kPa, 40 to 110.</param>
    /// <returns>kPa/K.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static double PsychrometricKPaPerK(double pressureKPa)
    {
        Within.Require(pressureKPa, 40, 110);
        return 0.665e-3 * pressureKPa;
    }

    /// <summary>Vapour pressure from an aspirated psychrometer; eq. 15.</summary>
    /// <param name="dryBulbC">Dry bulb, °C, −50 to 60.</param>
    /// <param name="wetBulbC">Wet bulb, °C, up to the dry bulb.</param>
    /// <param name="pressureKPa">Pressure, kPa, 40 to 110.</param>
    /// <returns>kPa.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static double VapourOfPsychrometerKPa(double dryBulbC, double wetBulbC, double pressureKPa)
    {
        Within.Require(pressureKPa, 40, 110);
        Within.Require(wetBulbC, -50, dryBulbC);
        return SaturationKPa(wetBulbC) - 0.000662 * pressureKPa * (dryBulbC - wetBulbC);
    }

    /// <summary>Wind at 2 m from another height; eq. 47.</summary>
    /// <param name="windMPerS">Wind, m/s, 0 to 60.</param>
    /// <param name="heightM">Height of the instrument, m, 0.5 to 200.</param>
    /// <returns>m/s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static double WindAtTwoMetresMPerS(double windMPerS, double heightM)
    {
        Within.Require(windMPerS, 0, 60);
        Within.Require(heightM, 0.5, 200);
        return windMPerS * 4.87 / Math.Log(67.8 * heightM - 5.42);
    }

    /// <summary>Extraterrestrial radiation of a day; eqs 21 and 23 to 25.</summary>
    /// <param name="latitudeDeg">Latitude, °, −66 to 66.</param>
    /// <param name="dayOfYear">Day of year, 1 to 366.</param>
    /// <returns>MJ/m² day.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static double DailyExtraterrestrialMjPerM2(double latitudeDeg, int dayOfYear)
    {
        double declination = DeclinationRad(dayOfYear);
        double sunset = SunsetRad(latitudeDeg, dayOfYear);
        double latitude = latitudeDeg * Math.PI / 180;
        return 24 * 60 / Math.PI * SolarConstantMjPerM2Min * InverseDistanceRatio(dayOfYear)
            * (sunset * Math.Sin(latitude) * Math.Sin(declination)
                + Math.Cos(latitude) * Math.Cos(declination) * Math.Sin(sunset));
    }

    /// <summary>Daylight hours; eq. 34.</summary>
    /// <param name="latitudeDeg">Latitude, °, −66 to 66.</param>
    /// <param name="dayOfYear">Day of year, 1 to 366.</param>
    /// <returns>Hours.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static double DaylightH(double latitudeDeg, int dayOfYear) => 24 / Math.PI * SunsetRad(latitudeDeg, dayOfYear);

    /// <summary>Solar radiation from bright sunshine; eq. 35.</summary>
    /// <param name="sunshineH">Hours of bright sunshine, 0 to 24.</param>
    /// <param name="daylightH">Daylight hours, 0.1 to 24.</param>
    /// <param name="extraterrestrialMjPerM2">MJ/m² day, 0 to 50.</param>
    /// <returns>MJ/m² day.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static double SolarOfSunshineMjPerM2(double sunshineH, double daylightH, double extraterrestrialMjPerM2)
    {
        Within.Require(daylightH, 0.1, 24);
        Within.Require(sunshineH, 0, 24);
        Within.Require(extraterrestrialMjPerM2, 0, 50);
        return (0.25 + 0.50 * sunshineH / daylightH) * extraterrestrialMjPerM2;
    }

    /// <summary>Extraterrestrial radiation of a period shorter than a day; eqs 28 to 33.</summary>
    /// <param name="latitudeDeg">Latitude, °, −66 to 66.</param>
    /// <param name="longitudeEastDeg">Longitude, ° east.</param>
    /// <param name="zoneMeridianEastDeg">Meridian of the clock, ° east.</param>
    /// <param name="dayOfYear">Day of year, 1 to 366.</param>
    /// <param name="middleClockH">Clock time at the middle of the period, 0 to 24.</param>
    /// <param name="lengthH">Its length, h, 0.05 to 1.</param>
    /// <returns>MJ/m² in the period; 0 at night.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static double PeriodExtraterrestrialMjPerM2(
        double latitudeDeg,
        double longitudeEastDeg,
        double zoneMeridianEastDeg,
        int dayOfYear,
        double middleClockH,
        double lengthH)
    {
        Within.Require(longitudeEastDeg, -180, 180);
        Within.Require(zoneMeridianEastDeg, -180, 180);
        Within.Require(middleClockH, 0, 24);
        Within.Require(lengthH, 0.05, 1);
        double b = 2 * Math.PI * (dayOfYear - 81) / 364;
        double seasonalH = 0.1645 * Math.Sin(2 * b) - 0.1255 * Math.Cos(b) - 0.025 * Math.Sin(b);
        double hourAngle = Math.PI / 12
            * (middleClockH + 0.06667 * (longitudeEastDeg - zoneMeridianEastDeg) + seasonalH - 12);
        double sunset = SunsetRad(latitudeDeg, dayOfYear);
        double from = Math.Clamp(hourAngle - Math.PI * lengthH / 24, -sunset, sunset);
        double to = Math.Clamp(hourAngle + Math.PI * lengthH / 24, -sunset, sunset);
        double latitude = latitudeDeg * Math.PI / 180;
        double declination = DeclinationRad(dayOfYear);
        return Math.Max(
            12 * 60 / Math.PI * SolarConstantMjPerM2Min * InverseDistanceRatio(dayOfYear)
                * ((to - from) * Math.Sin(latitude) * Math.Sin(declination)
                    + Math.Cos(latitude) * Math.Cos(declination) * (Math.Sin(to) - Math.Sin(from))),
            0);
    }

    /// <summary>Solar radiation of a clear sky; eq. 37.</summary>
    /// <param name="extraterrestrialMjPerM2">MJ/m², 0 to 50.</param>
    /// <param name="elevationM">Elevation, m, −500 to 6000.</param>
    /// <returns>MJ/m² in the same period.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static double ClearSkyMjPerM2(double extraterrestrialMjPerM2, double elevationM)
    {
        Within.Require(extraterrestrialMjPerM2, 0, 50);
        Within.Require(elevationM, -500, 6000);
        return (0.75 + 2e-5 * elevationM) * extraterrestrialMjPerM2;
    }

    /// <summary>Net outgoing long-wave radiation of a day; eq. 39.</summary>
    /// <param name="highestC">Highest temperature, °C.</param>
    /// <param name="lowestC">Lowest temperature, °C.</param>
    /// <param name="vapourKPa">Vapour pressure, kPa, 0 to 10.</param>
    /// <param name="clearRatio">Solar over clear-sky radiation, 0 to 1.</param>
    /// <returns>MJ/m² day; a 24th of it for an hour.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static double NetLongWaveMjPerM2(double highestC, double lowestC, double vapourKPa, double clearRatio)
    {
        Within.Require(highestC, -60, 60);
        Within.Require(lowestC, -60, highestC);
        Within.Require(vapourKPa, 0, 10);
        Within.Require(clearRatio, 0, 1);
        double warm = Math.Pow(highestC + 273.16, 4);
        double cold = Math.Pow(lowestC + 273.16, 4);
        return 4.903e-9 * 0.5 * (warm + cold) * (0.34 - 0.14 * Math.Sqrt(vapourKPa)) * (1.35 * clearRatio - 0.35);
    }

    /// <summary>Reference evapotranspiration of a day; eq. 6.</summary>
    /// <param name="netMjPerM2">Net radiation less soil heat, MJ/m² day, −10 to 40.</param>
    /// <param name="meanC">Mean temperature, °C, −50 to 60.</param>
    /// <param name="windMPerS">Wind at 2 m, m/s, 0 to 60.</param>
    /// <param name="deficitKPa">Mean vapour pressure deficit, kPa, 0 to 15.</param>
    /// <param name="pressureKPa">Pressure, kPa, 40 to 110.</param>
    /// <returns>mm/day.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static double DailyMm(
        double netMjPerM2, double meanC, double windMPerS, double deficitKPa, double pressureKPa) =>
        ReferenceMm(netMjPerM2, meanC, windMPerS, deficitKPa, pressureKPa, 900);

    /// <summary>Reference evapotranspiration of an hour; eq. 53.</summary>
    /// <param name="netMjPerM2">Net radiation less soil heat, MJ/m² h, −10 to 40.</param>
    /// <param name="meanC">Mean temperature, °C, −50 to 60.</param>
    /// <param name="windMPerS">Wind at 2 m, m/s, 0 to 60.</param>
    /// <param name="deficitKPa">Vapour pressure deficit, kPa, 0 to 15.</param>
    /// <param name="pressureKPa">Pressure, kPa, 40 to 110.</param>
    /// <returns>mm/h.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or NaN.</exception>
    public static double HourlyMm(
        double netMjPerM2, double meanC, double windMPerS, double deficitKPa, double pressureKPa) =>
        ReferenceMm(netMjPerM2, meanC, windMPerS, deficitKPa, pressureKPa, 37);

    private static double ReferenceMm(
        double netMjPerM2, double meanC, double windMPerS, double deficitKPa, double pressureKPa, double factor)
    {
        Within.Require(netMjPerM2, -10, 40);
        Within.Require(windMPerS, 0, 60);
        Within.Require(deficitKPa, 0, 15);
        double slope = SlopeKPaPerK(meanC);
        double psychrometric = PsychrometricKPaPerK(pressureKPa);
        return (0.408 * slope * netMjPerM2 + psychrometric * factor / (meanC + 273) * windMPerS * deficitKPa)
            / (slope + psychrometric * (1 + 0.34 * windMPerS));
    }

    private static double DeclinationRad(int dayOfYear)
    {
        Within.Require(dayOfYear, 1, 366);
        return 0.409 * Math.Sin(2 * Math.PI * dayOfYear / 365 - 1.39);
    }

    private static double InverseDistanceRatio(int dayOfYear) => 1 + 0.033 * Math.Cos(2 * Math.PI * dayOfYear / 365);

    private static double SunsetRad(double latitudeDeg, int dayOfYear)
    {
        Within.Require(latitudeDeg, -66, 66);
        return Math.Acos(Math.Clamp(-Math.Tan(latitudeDeg * Math.PI / 180) * Math.Tan(DeclinationRad(dayOfYear)), -1, 1));
    }
}
