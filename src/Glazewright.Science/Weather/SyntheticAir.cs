using Glazewright.Science.Maths;

namespace Glazewright.Science.Weather;

/// <summary>
/// Dry bulb and dew point of a synthetic year. Days' means: a smooth yearly curve plus a first-order chain with each month's spread and persistence. Within a
/// day: cosines between the low at sunrise and the high three hours after solar noon, wider on clear days. Both are corrected until the months' means and ranges
/// are the normals'. All of it our own choice of method; what it keeps is tested.
/// </summary>
internal sealed class SyntheticAir
{
    private const double HighAfterNoonH = 3;

    private SyntheticAir()
    {
    }

    public double[] DryBulbC { get; } = new double[CommonYear.Hours];

    public double[] DewPointC { get; } = new double[CommonYear.Hours];

    public static SyntheticAir Of(WeatherStation station, IReadOnlyList<MonthlyNormals> normals, double[] clearness, SeededChance chance)
    {
        double[] lag = [.. normals.Select(n => n.DailyMeanLag1Ratio)];
        double[] z = DailyChain.Of(lag, ref chance);
        double[] curve = MonthCurve.Daily([.. normals.Select(n => n.MeanC)]);
        var result = new SyntheticAir();
        var mean = new double[365];
        double[] meanShift = new double[12];
        double[] spread = [.. normals.Select(n => n.DailyMeanDeviationK)];
        double[] range = [.. normals.Select(n => n.DailyRangeK)];
        Span<double> lowHour = stackalloc double[365];
        Span<double> highHour = stackalloc double[365];
        Extremes(station, lowHour, highHour);
        var dayRange = new double[365];
        for (int round = 0; round < 12; round++)
        {
            double[] shift = MonthCurve.Daily(meanShift);
            for (int d = 0; d < 365; d++)
            {
                int m = CommonYear.MonthOfDay(d) - 1;
                mean[d] = curve[d] + shift[d] + spread[m] * z[d];
                double sunny = Math.Clamp(clearness[d] / normals[m].ClearnessRatio, 0.2, 1.6);
                dayRange[d] = range[m] * (0.35 + 0.65 * sunny);
            }

            result.Draw(mean, dayRange, lowHour, highHour);
            result.Correct(normals, meanShift, spread, range);
        }

        Round(result.DryBulbC);
        result.Moisten(normals, ref chance);
        return result;
    }

    private static void Extremes(WeatherStation station, Span<double> lowHour, Span<double> highHour)
    {
        var sun = new YearSun(station);
        double latitudeRad = Math.Clamp(station.LatitudeDeg, -89, 89) * Math.PI / 180;
        double tanLat = Elementary.Sin(latitudeRad) / Elementary.Cos(latitudeRad);
        for (int d = 0; d < 365; d++)
        {
            SunElements at = sun.ElementsAt(d * 24 + 12);
            double hourAngle = Math.IEEERemainder(at.HourAngleRad, 2 * Math.PI);
            double noonH = 12 - hourAngle * 12 / Math.PI;
            double cosSunset = Math.Clamp(-tanLat * at.SinDeclination / at.CosDeclination, -1, 1);
            double halfDayH = Math.Clamp(Elementary.Acos(cosSunset) * 12 / Math.PI, 2, 10);
            lowHour[d] = noonH - halfDayH;
            highHour[d] = noonH + HighAfterNoonH;
        }
    }

    /// <summary>Hourly dry bulb at the stamps from each day's mean and range.</summary>
    private void Draw(double[] mean, double[] range, ReadOnlySpan<double> lowHour, ReadOnlySpan<double> highHour)
    {
        for (int h = 0; h < CommonYear.Hours; h++)
        {
            int day = h / 24;
            double clock = h % 24 + 1;
            int before = (day + 364) % 365;
            int after = (day + 1) % 365;
            double low = mean[day] - 0.5 * range[day];
            double high = mean[day] + 0.5 * range[day];
            DryBulbC[h] = clock <= lowHour[day]
                ? Cosine(mean[before] + 0.5 * range[before], low, (clock + 24 - highHour[before]) / (lowHour[day] + 24 - highHour[before]))
                : clock <= highHour[day]
                    ? Cosine(low, high, (clock - lowHour[day]) / (highHour[day] - lowHour[day]))
                    : Cosine(high, mean[after] - 0.5 * range[after], (clock - highHour[day]) / (lowHour[after] + 24 - highHour[day]));
        }
    }

    private static double Cosine(double from, double to, double fraction) =>
        from + (to - from) * 0.5 * (1 - Elementary.Cos(Math.PI * Math.Clamp(fraction, 0, 1)));

    private void Correct(IReadOnlyList<MonthlyNormals> normals, double[] meanShift, double[] spread, double[] range)
    {
        var means = new double[31];
        for (int month = 1; month <= 12; month++)
        {
            int first = CommonYear.FirstDayOf(month);
            int days = CommonYear.DaysIn(month);
            double ranges = 0;
            for (int d = 0; d < days; d++)
            {
                Span<double> day = DryBulbC.AsSpan((first + d) * 24, 24);
                means[d] = MonthStatistics.Mean(day);
                double low = day[0];
                double high = day[0];
                foreach (double t in day)
                {
                    low = Math.Min(low, t);
                    high = Math.Max(high, t);
                }

                ranges += high - low;
            }

            MonthlyNormals n = normals[month - 1];
            meanShift[month - 1] += n.MeanC - MonthStatistics.Mean(means.AsSpan(0, days));
            range[month - 1] = Math.Clamp(range[month - 1] * n.DailyRangeK / Math.Max(0.1, ranges / days), 0, 40);
            double deviation = MonthStatistics.Deviation(means.AsSpan(0, days));
            spread[month - 1] = Math.Clamp(spread[month - 1] * n.DailyMeanDeviationK / Math.Max(0.05, deviation), 0, 20);
        }
    }

    /// <summary>Dew point: follows the days' departures of the dry bulb with a noise of its own, corrected to each month's mean, never above the dry bulb.</summary>
    private void Moisten(IReadOnlyList<MonthlyNormals> normals, ref SeededChance chance)
    {
        double[] lag = [.. normals.Select(n => n.DailyMeanLag1Ratio)];
        double[] z = DailyChain.Of(lag, ref chance);
        double[] base0 = MonthCurve.Daily([.. normals.Select(n => n.DewPointC)]);
        double[] dry = MonthCurve.Daily([.. normals.Select(n => n.MeanC)]);
        var shift = new double[12];
        var day = new double[365];
        for (int round = 0; round < 25; round++)
        {
            double[] moved = MonthCurve.Daily(shift);
            for (int d = 0; d < 365; d++)
            {
                double mean = MonthStatistics.Mean(DryBulbC.AsSpan(d * 24, 24));
                double spread = normals[CommonYear.MonthOfDay(d) - 1].DailyMeanDeviationK;
                day[d] = base0[d] + moved[d] + 0.9 * (mean - dry[d]) + 0.5 * spread * z[d];
            }

            for (int h = 0; h < CommonYear.Hours; h++)
            {
                // A day's value stands at its noon; straight lines between noons.
                double at = (h + 1 - 12) / 24.0;
                int from = (int)Math.Floor(at);
                double part = at - from;
                double dew = day[(from + 365) % 365] * (1 - part) + day[(from + 366) % 365] * part;
                DewPointC[h] = Math.Min(DryBulbC[h], Math.Max(-60, Math.Round(dew, 2)));
            }

            for (int month = 1; month <= 12; month++)
            {
                Span<double> hours = DewPointC.AsSpan(CommonYear.FirstDayOf(month) * 24, CommonYear.DaysIn(month) * 24);
                shift[month - 1] += normals[month - 1].DewPointC - MonthStatistics.Mean(hours);
            }
        }
    }

    private static void Round(double[] x)
    {
        for (int i = 0; i < x.Length; i++)
        {
            x[i] = Math.Round(x[i], 2);
        }
    }
}
