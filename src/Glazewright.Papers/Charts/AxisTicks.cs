using System.Globalization;

namespace Glazewright.Papers.Charts;

/// <summary>Round numbers for an axis.</summary>
public sealed record AxisTicks(double Low, double High, double Step)
{
    /// <summary>An axis that holds the values, with about <paramref name="wanted"/> steps of 1, 2, 2.5 or 5 times a power of ten.</summary>
    public static AxisTicks Over(double low, double high, int wanted = 5)
    {
        if (!(high > low))
        {
            high = low + 1;
        }

        double raw = (high - low) / Math.Max(1, wanted);
        double power = Math.Pow(10, Math.Floor(Math.Log10(raw)));
        double lead = raw / power;
        double step = power * (lead <= 1 ? 1 : lead <= 2 ? 2 : lead <= 2.5 ? 2.5 : lead <= 5 ? 5 : 10);
        return new AxisTicks(step * Math.Floor(low / step + 1e-9), step * Math.Ceiling(high / step - 1e-9), step);
    }

    /// <summary>The ticks, from low to high.</summary>
    public IReadOnlyList<double> Values()
    {
        int count = (int)Math.Round((High - Low) / Step);
        return [.. Enumerable.Range(0, count + 1).Select(i => Low + i * Step)];
    }

    /// <summary>A tick as text, with the decimals its step needs.</summary>
    public string Text(double value)
    {
        int decimals = Math.Max(0, (int)Math.Ceiling(-Math.Log10(Step) - 1e-9));
        if (Math.Abs(Step * Math.Pow(10, decimals) - Math.Round(Step * Math.Pow(10, decimals))) > 1e-6)
        {
            decimals++;
        }

        string text = Math.Abs(value) >= 10_000
            ? value.ToString("#,0", CultureInfo.InvariantCulture)
            : value.ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
        return text.Replace("-", "−", StringComparison.Ordinal);
    }
}
