namespace Glazewright.Design.Calibration;

/// <summary>Sums the errors of some steps.</summary>
internal sealed class ScoreBook
{
    private double airSquare, air, naiveSquare, percentSquare, percent, vapourSquare, vapour;
    private int count, humid;

    /// <summary>Scores the steps that a rule picks.</summary>
    public static ScoreLine Of(string id, string name, MeasuredAir measured, ReplayedAir computed, Func<int, bool> picks)
    {
        ScoreBook book = new();
        for (int i = 0; i < computed.AirC.Length; i++)
        {
            if (measured.Counts[i] && picks(i))
            {
                book.Add(measured, computed, i);
            }
        }

        return book.Line(id, name);
    }

    private void Add(MeasuredAir measured, ReplayedAir computed, int i)
    {
        double miss = computed.AirC[i] - measured.AirC[i], naive = measured.HourMeanC[measured.HourOfDay[i]] - measured.AirC[i];
        airSquare += miss * miss;
        air += miss;
        naiveSquare += naive * naive;
        count++;
        if (!double.IsNaN(measured.Percent[i]))
        {
            double p = computed.RelativePercent[i] - measured.Percent[i], v = computed.VapourKgPerM3[i] - measured.VapourKgPerM3[i];
            percentSquare += p * p;
            percent += p;
            vapourSquare += v * v;
            vapour += v;
            humid++;
        }
    }

    private ScoreLine Line(string id, string name)
    {
        double rms = Math.Sqrt(airSquare / count);
        return new ScoreLine(
            id, name, count, rms, air / count, naiveSquare > 0 ? 1 - rms / Math.Sqrt(naiveSquare / count) : double.NaN,
            Math.Sqrt(percentSquare / humid), percent / humid, Math.Sqrt(vapourSquare / humid), vapour / humid);
    }
}
