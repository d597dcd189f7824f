namespace Glazewright.Science.Weather;

/// <summary>
/// Whether it rained, hour by hour, from what a weather file has: the depth of liquid precipitation and, in EPW, codes of the weather seen. Columns and codes as in the EPW data dictionary (read):
/// the second and third digit of the nine tell rain, showers, squalls, drizzle and their freezing kinds, 9 for none; they hold only where an observation was made.
/// </summary>
internal sealed class RainRecord
{
    private const int RainDigit = 1;
    private const int DrizzleDigit = 2;
    private const int None = '9';

    /// <summary>A depth over several hours is laid into its last ones, a millimetre in each: our choice, the file does not say which were wet.</summary>
    private const double MillimetresAnHour = 1;

    private readonly double[] _depthMm = Filled();
    private readonly double[] _spanH = Filled();
    private readonly double[] _seen = Filled(); // 1 rain, 0 none, by the codes

    /// <summary>Takes a record's depth.</summary>
    /// <param name="hour">0 to 8,759.</param>
    /// <param name="depthMm">NaN where missing.</param>
    /// <param name="spanH">Hours it fell in; NaN or 0 where not said.</param>
    public void Depth(int hour, double depthMm, double spanH)
    {
        // Parts of an hour add up.
        _depthMm[hour] = double.IsNaN(_depthMm[hour]) ? depthMm : double.IsNaN(depthMm) ? _depthMm[hour] : _depthMm[hour] + depthMm;
        _spanH[hour] = spanH;
    }

    /// <summary>Takes a record's codes of the weather seen.</summary>
    /// <param name="hour">0 to 8,759.</param>
    /// <param name="observed">Someone looked.</param>
    /// <param name="codes">Nine digits; the leading zero may be lost. Anything else is no observation.</param>
    public void Seen(int hour, bool observed, ReadOnlySpan<byte> codes)
    {
        if (!observed || codes.Length is < 8 or > 9 || codes.ContainsAnyExceptInRange((byte)'0', (byte)'9'))
        {
            return;
        }

        int lost = 9 - codes.Length;
        bool rain = codes[RainDigit - lost] < None || codes[DrizzleDigit - lost] < None;
        _seen[hour] = rain || _seen[hour] == 1 ? 1 : 0;
    }

    /// <summary>The year: 1 rain, 0 dry, NaN where the file does not say. Depths that are 0 in every hour say nothing.</summary>
    public double[] ByHour()
    {
        bool measured = Array.Exists(_depthMm, d => d > 0);
        double[] rain = new double[_depthMm.Length];
        for (int h = 0; h < rain.Length; h++)
        {
            rain[h] = !double.IsNaN(_seen[h]) ? _seen[h] : measured && !double.IsNaN(_depthMm[h]) ? 0 : double.NaN;
        }

        for (int h = 0; h < rain.Length; h++)
        {
            if (_depthMm[h] > 0)
            {
                int hours = _spanH[h] is > 1 and <= 24 ? (int)Math.Min(_spanH[h], Math.Ceiling(_depthMm[h] / MillimetresAnHour)) : 1;
                for (int k = 0; k < hours; k++)
                {
                    // The year is a ring.
                    rain[(h - k + rain.Length) % rain.Length] = 1;
                }
            }
        }

        return rain;
    }

    private static double[] Filled()
    {
        var values = new double[CommonYear.Hours];
        Array.Fill(values, double.NaN);
        return values;
    }
}
