using Glazewright.Science.Maths;

namespace Glazewright.Science.Weather;

/// <summary>
/// Wind of a synthetic year: an hourly chain (correlation 0.85 from hour to hour, our choice) bent to a Weibull distribution with the month's mean and deviation, a
/// little stronger in the afternoon. Shape from mean and deviation after Justus (1978): k = (σ/v̄)^−1.086 (from memory).
/// </summary>
internal sealed class SyntheticWind
{
    private const double HourLag = 0.85;

    private SyntheticWind()
    {
    }

    public double[] SpeedMs { get; } = new double[CommonYear.Hours];

    public double[] FromDeg { get; } = new double[CommonYear.Hours];

    public static SyntheticWind Of(IReadOnlyList<MonthlyNormals> normals, SeededChance chance, double prevailingFromDeg)
    {
        var wind = new SyntheticWind();
        double z = chance.NextNormal();
        double turn = chance.NextNormal();
        double fresh = Math.Sqrt(1 - HourLag * HourLag);
        for (int month = 1; month <= 12; month++)
        {
            MonthlyNormals n = normals[month - 1];
            int from = CommonYear.FirstDayOf(month) * 24;
            int to = CommonYear.FirstDayOf(month + 1) * 24;
            double shape = Math.Clamp(Elementary.Pow(n.WindDeviationMs / n.WindMs, -1.086), 0.8, 8);
            for (int h = from; h < to; h++)
            {
                z = HourLag * z + fresh * chance.NextNormal();
                turn = 0.97 * turn + 0.243 * chance.NextNormal();
                double below = Math.Clamp(NormalShareBelow(z), 1e-6, 1 - 1e-6);
                double afternoon = 1 + 0.2 * Elementary.Cos((h % 24 + 1 - 15) * Math.PI / 12);
                wind.SpeedMs[h] = Elementary.Pow(-Elementary.Log(1 - below), 1 / shape) * afternoon;
                double deg = prevailingFromDeg + 60 * turn;
                wind.FromDeg[h] = Math.Round(deg - 360 * Math.Floor(deg / 360));
            }

            Fit(wind.SpeedMs.AsSpan(from, to - from), n);
        }

        return wind;
    }

    /// <summary>Mean exactly, deviation by a few rounds of stretching about the mean with the floor at calm.</summary>
    private static void Fit(Span<double> speeds, MonthlyNormals n)
    {
        for (int round = 0; round < 20; round++)
        {
            double mean = MonthStatistics.Mean(speeds);
            double deviation = MonthStatistics.Deviation(speeds);
            double stretch = n.WindDeviationMs / Math.Max(0.01, deviation);
            foreach (ref double v in speeds)
            {
                v = Math.Max(0, n.WindMs + (v - mean) * stretch);
            }
        }

        double scale = n.WindMs / MonthStatistics.Mean(speeds);
        foreach (ref double v in speeds)
        {
            v = Math.Round(v * scale, 2);
        }
    }

    /// <summary>Share of a normal distribution below z: Abramowitz and Stegun (1964) 26.2.17, error below 7.5e-8 (from memory).</summary>
    private static double NormalShareBelow(double z)
    {
        double x = Math.Abs(z);
        double t = 1 / (1 + 0.2316419 * x);
        double tail = Elementary.Exp(-0.5 * x * x) * 0.3989422804014327
            * t * (0.319381530 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
        return z >= 0 ? 1 - tail : tail;
    }
}
