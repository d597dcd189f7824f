using Glazewright.Science.Climate;

namespace Glazewright.Design.Calibration;

/// <summary>What was measured in the house, and which steps count for what.</summary>
internal sealed class MeasuredAir
{
    private const int SettlesHours = 24; // after a start nothing counts: the ground was guessed

    public MeasuredAir(HouseLog log, int trainEvery, int trainFrom)
    {
        AirC = log.Of(LoggedQuantity.InsideTemperature).ToArray();
        ReadOnlySpan<double> humidity = log.Of(LoggedQuantity.InsideHumidity);
        Percent = new double[log.Count];
        VapourKgPerM3 = new double[log.Count];
        HourOfDay = new int[log.Count];
        Counts = new bool[log.Count];
        Trains = new bool[log.Count];
        double[] sum = new double[24];
        int[] count = new int[24];
        int settled = 0, settles = SettlesHours * 60 / log.StepMinutes;
        for (int i = 0; i < log.Count; i++)
        {
            Percent[i] = humidity.Length > 0 ? 100 * humidity[i] : double.NaN;
            VapourKgPerM3[i] = HouseReplay.VapourKgPerM3(Percent[i] / 100 * VapourTable.PressurePa(double.IsNaN(AirC[i]) ? 20 : AirC[i]), AirC[i]);
            HourOfDay[i] = log.At(i).Hour;
            settled = log.Starts[i] ? 0 : settled + 1;
            Counts[i] = log.Whole[i] && !double.IsNaN(AirC[i]) && settled >= settles;
            Trains[i] = log.Week(i) >= trainFrom && (log.Week(i) - trainFrom) % trainEvery == 0;
            if (!double.IsNaN(AirC[i]))
            {
                sum[HourOfDay[i]] += AirC[i];
                count[HourOfDay[i]]++;
            }
        }

        HourMeanC = [.. sum.Select((s, h) => s / Math.Max(count[h], 1))];
    }

    public double[] AirC { get; }

    public double[] Percent { get; }

    public double[] VapourKgPerM3 { get; }

    public int[] HourOfDay { get; }

    /// <summary>Steps that may be scored.</summary>
    public bool[] Counts { get; }

    /// <summary>Steps of weeks that are fitted on.</summary>
    public bool[] Trains { get; }

    /// <summary>Mean of the measured air by the hour of day, of the whole log.</summary>
    public double[] HourMeanC { get; }
}
