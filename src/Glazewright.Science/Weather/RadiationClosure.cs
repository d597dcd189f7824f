using Glazewright.Science.Maths;

namespace Glazewright.Science.Weather;

/// <summary>
/// Does global = direct × cos z + diffuse hold, and for which place of the sun within the hour? Half an hour wrong either way gives an rms near
/// 26 W/m² where a sound file has 0 to 5, so this finds a wrong time zone, longitude or stamp convention at once. The sun here is Spencer's series
/// (1971, Search 2:172; from memory), because makers of typical years split their columns with a sun of that kind: on it files close to about 1 W/m²
/// where the true ephemeris leaves 2 to 3.
/// </summary>
/// <param name="StatedOffsetH">Hours from stamp to the sun's place that the year is read with.</param>
/// <param name="StatedRmsWm2">Rms of the closure there, W/m²; 0 when no hour qualifies.</param>
/// <param name="BestOffsetH">Offset that closes best, in whole minutes, −1 to 1 h.</param>
/// <param name="BestRmsWm2">Rms there, W/m².</param>
/// <param name="HoursUsed">Hours with global above 150 Wh/m² and cos z above 0.1 at the stated offset.</param>
/// <param name="Verdict">What follows from it.</param>
public sealed record RadiationClosure(
    double StatedOffsetH, double StatedRmsWm2, double BestOffsetH, double BestRmsWm2, int HoursUsed, ClosureVerdict Verdict)
{
    private const double LeastGlobalWhm2 = 150;
    private const double LeastCosine = 0.1;

    /// <summary>Cosine of the zenith angle by Spencer's series of declination and equation of time.</summary>
    internal static double SpencerCosZenith(WeatherStation station, int hour, double offsetH)
    {
        double b = 2 * Math.PI * (hour / 24) / 365;
        double declination = 0.006918 - 0.399912 * Elementary.Cos(b) + 0.070257 * Elementary.Sin(b) - 0.006758 * Elementary.Cos(2 * b) + 0.000907 * Elementary.Sin(2 * b)
            - 0.002697 * Elementary.Cos(3 * b) + 0.00148 * Elementary.Sin(3 * b);
        double equationMin = 229.18 * (0.000075 + 0.001868 * Elementary.Cos(b) - 0.032077 * Elementary.Sin(b) - 0.014615 * Elementary.Cos(2 * b) - 0.040849 * Elementary.Sin(2 * b));
        double clockH = hour % 24 + 1 + offsetH;
        double hourAngle = (clockH - 12 + equationMin / 60 + (station.LongitudeDeg - 15 * station.ZoneH) / 15) * (Math.PI / 12);
        double sinLat = Elementary.Sin(station.LatitudeDeg * Math.PI / 180);
        double cosLat = Elementary.Cos(station.LatitudeDeg * Math.PI / 180);
        return sinLat * Elementary.Sin(declination) + cosLat * Elementary.Cos(declination) * Elementary.Cos(hourAngle);
    }

    /// <summary>Computes the closure of a year, and searches −1 to +1 h for the best one.</summary>
    /// <param name="year">The year.</param>
    /// <returns>Rms in W/m² at the stated and at the best offset.</returns>
    /// <remarks>docs/methods/weather.md#closure.</remarks>
    public static RadiationClosure Of(WeatherYear year)
    {
        ArgumentNullException.ThrowIfNull(year);
        (double statedRms, int used) = Rms(year, year.RadiationOffsetH);
        double best = 0;
        double bestRms = double.PositiveInfinity;
        for (int quarter = -4; quarter <= 4; quarter++)
        {
            Keep(quarter * 0.25);
        }

        double coarse = best;
        for (int minute = -14; minute <= 14; minute++)
        {
            Keep(Math.Clamp(coarse + minute / 60.0, -1, 1));
        }

        // One minute more or less is within the rounding of the rows: the stated offset stands unless another is plainly better.
        if (statedRms <= bestRms + 0.25)
        {
            best = year.RadiationOffsetH;
            bestRms = statedRms;
        }

        ClosureVerdict verdict = used < 200 ? ClosureVerdict.TooLittleSun
            : statedRms <= 6 ? ClosureVerdict.Closes
            : bestRms < 0.6 * statedRms && Math.Abs(best - year.RadiationOffsetH) > 0.1 ? ClosureVerdict.ClosesElsewhere
            : ClosureVerdict.DoesNotClose;
        return new RadiationClosure(year.RadiationOffsetH, statedRms, best, bestRms, used, verdict);

        void Keep(double offsetH)
        {
            (double rms, int n) = Rms(year, offsetH);
            if (n > 0 && rms < bestRms)
            {
                best = offsetH;
                bestRms = rms;
            }
        }
    }

    private static (double RmsWm2, int Hours) Rms(WeatherYear year, double offsetH)
    {
        double sum = 0;
        int n = 0;
        for (int h = 0; h < CommonYear.Hours; h++)
        {
            double ghi = year.GhiWhm2[h];
            if (ghi <= LeastGlobalWhm2)
            {
                continue;
            }

            double cosZenith = SpencerCosZenith(year.Station, h, offsetH);
            if (cosZenith > LeastCosine)
            {
                double miss = ghi - year.DniWhm2[h] * cosZenith - year.DhiWhm2[h];
                sum += miss * miss;
                n++;
            }
        }

        return (n == 0 ? 0 : Math.Sqrt(sum / n), n);
    }
}

/// <summary>What the closure says.</summary>
public enum ClosureVerdict
{
    /// <summary>Closes within 6 W/m² where the year is read.</summary>
    Closes,

    /// <summary>Closes much better with the sun elsewhere: the stamps do not mean what they should.</summary>
    ClosesElsewhere,

    /// <summary>Does not close well anywhere: the three columns are of different origin, or wrong.</summary>
    DoesNotClose,

    /// <summary>Fewer than 200 hours to judge by.</summary>
    TooLittleSun,
}
