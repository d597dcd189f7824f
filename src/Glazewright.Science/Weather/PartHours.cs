namespace Glazewright.Science.Weather;

/// <summary>
/// Records of half hours, quarters and the like, brought to hours. Whether such a file's radiation is that of the stamp's moment or the mean of the part before or
/// after it is not written in it; the moment at which global = direct × cos z + diffuse closes tells.
/// </summary>
internal sealed class PartHours
{
    private const double LeastGlobalWm2 = 150;
    private const double LeastCosine = 0.1;

    private readonly int perHour;

    /// <summary>Room for a year.</summary>
    /// <param name="perHour">Records an hour, 2 to 60.</param>
    public PartHours(int perHour)
    {
        this.perHour = perHour;
        Columns = [.. Enumerable.Range(0, 12).Select(_ => Filled(perHour * CommonYear.Hours))];
    }

    /// <summary>One value a record, NaN where missing; order and units as in <see cref="RawYear"/>.</summary>
    public double[][] Columns { get; }

    /// <summary>True when stamps give the start of their part (minute 0 first), false when its end (minute 60 last).</summary>
    public bool StampsStart { get; set; }

    /// <summary>Brings the records to hours: radiation as the mean of the hour, everything else as it stands at the hour's end.</summary>
    /// <param name="station">Where the sun is looked up.</param>
    /// <param name="to">The hours.</param>
    /// <returns>What was found, in words.</returns>
    public WeatherNote Gather(WeatherStation station, RawYear to)
    {
        double step = 1.0 / perHour;
        (double shiftH, double rms) = new[] { 0, step / 2, -step / 2 }
            .Select(shift => (Shift: shift, Rms: Closure(station, shift)))
            .Aggregate((a, b) => b.Rms < a.Rms - 0.25 ? b : a);
        for (int h = 0; h < CommonYear.Hours; h++)
        {
            for (int c = 0; c < Columns.Length; c++)
            {
                bool radiation = c is RawYear.Ghi or RawYear.Dni or RawYear.Dhi or RawYear.Infrared;
                to.Columns[c][h] = radiation ? Mean(Columns[c], h, shiftH) : Columns[c][At((h + 1) * perHour)];
            }
        }

        string sun = rms == 0 ? "the moment of the stamps, no sun being there to tell by" : shiftH == 0 ? "the moment of the stamps" : shiftH > 0 ? "the part that follows the stamp" : "the part that ends at the stamp";
        return new WeatherNote(FormattableString.Invariant(
            $"{perHour} records an hour: radiation is averaged over each hour, the rest taken at its end. Radiation is read as that of {sun}, where the three columns close best ({rms:0.0} W/m²)."));
    }

    // The record stamped at a moment counted in parts from the year's start; the year is a ring.
    private int At(int part)
    {
        int all = perHour * CommonYear.Hours;
        return ((part - (StampsStart ? 0 : 1)) % all + all) % all;
    }

    private double Mean(double[] values, int hour, double shiftH)
    {
        int first = hour * perHour;
        double sum = 0;
        if (shiftH == 0)
        {
            // Moments: the ends of the hour count half.
            sum = (values[At(first)] + values[At(first + perHour)]) / 2;
            for (int k = 1; k < perHour; k++)
            {
                sum += values[At(first + k)];
            }
        }
        else
        {
            for (int k = 0; k < perHour; k++)
            {
                sum += values[At(first + k + (shiftH > 0 ? 0 : 1))];
            }
        }

        return sum / perHour;
    }

    private double Closure(WeatherStation station, double shiftH)
    {
        double sum = 0;
        int n = 0;
        for (int part = 0; part < perHour * CommonYear.Hours; part++)
        {
            int i = At(part);
            double ghi = Columns[RawYear.Ghi][i];
            if (!(ghi > LeastGlobalWm2))
            {
                continue;
            }

            double timeH = ((double)part / perHour) + shiftH;
            int hour = Math.Clamp((int)Math.Floor(timeH), 0, CommonYear.Hours - 1);
            double cosine = RadiationClosure.SpencerCosZenith(station, hour, timeH - hour - 1);
            double miss = ghi - (Columns[RawYear.Dni][i] * cosine) - Columns[RawYear.Dhi][i];
            if (cosine > LeastCosine && double.IsFinite(miss))
            {
                sum += miss * miss;
                n++;
            }
        }

        return n == 0 ? 0 : Math.Sqrt(sum / n);
    }

    private static double[] Filled(int count)
    {
        var values = new double[count];
        Array.Fill(values, double.NaN);
        return values;
    }
}
