using Glazewright.Design.Contracts;

namespace Glazewright.Design.Calibration;

/// <summary>The log by the hour, and errors by the hour of day.</summary>
internal static class LogHours
{
    public static EqList<LogHour> Of(HouseLog log, LogSun sun, MeasuredAir m, ReplayedAir c)
    {
        int each = Math.Max(1, 60 / log.StepMinutes);
        LogHour[] hours = new LogHour[(log.Count + each - 1) / each];
        for (int h = 0; h < hours.Length; h++)
        {
            int from = h * each, to = Math.Min(from + each, log.Count);
            hours[h] = new LogHour(
                CalibrationWords.Stamp(log.At(from)), log.Week(from), m.Trains[from], Mean(from, to, i => m.AirC[i]), Mean(from, to, i => c.AirC[i]), Mean(from, to, i => m.Percent[i]),
                Mean(from, to, i => c.RelativePercent[i]), Mean(from, to, i => log.Of(LoggedQuantity.OutsideTemperature)[i]), Mean(from, to, i => sun.GlobalWm2[i]));
        }

        return EqList.Own(hours);
    }

    public static EqList<HourError> ByHour(MeasuredAir m, ReplayedAir c)
    {
        double[] sum = new double[24], square = new double[24], percent = new double[24];
        int[] count = new int[24], humid = new int[24];
        for (int i = 0; i < c.AirC.Length; i++)
        {
            if (!m.Counts[i] || m.Trains[i])
            {
                continue;
            }

            int h = m.HourOfDay[i];
            double miss = c.AirC[i] - m.AirC[i], wet = c.RelativePercent[i] - m.Percent[i];
            sum[h] += miss;
            square[h] += miss * miss;
            count[h]++;
            percent[h] += double.IsNaN(wet) ? 0 : wet;
            humid[h] += double.IsNaN(wet) ? 0 : 1;
        }

        return Enumerable.Range(0, 24).Where(h => count[h] > 0)
            .Select(h => new HourError(h, count[h], sum[h] / count[h], Math.Sqrt(square[h] / count[h]), humid[h] > 0 ? percent[h] / humid[h] : double.NaN)).ToEqList();
    }

    private static double Mean(int from, int to, Func<int, double> value)
    {
        double sum = 0;
        int count = 0;
        for (int i = from; i < to; i++)
        {
            double v = value(i);
            sum += double.IsNaN(v) ? 0 : v;
            count += double.IsNaN(v) ? 0 : 1;
        }

        return count > 0 ? sum / count : double.NaN;
    }
}
