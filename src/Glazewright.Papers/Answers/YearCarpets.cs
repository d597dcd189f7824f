using Glazewright.Design.Contracts;
using Glazewright.Design.Year;
using Glazewright.Papers.Charts;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Reports;

namespace Glazewright.Papers.Answers;

/// <summary>What the program did in the year, day by hour: humidity, exhaust air and curtains.</summary>
public static class YearCarpets
{
    private const double TallMm = 52;

    /// <summary>The carpets, each with its caption; of a house without fans or curtain only what it has.</summary>
    /// <param name="year">The year.</param>
    /// <param name="units">Units of the reader.</param>
    /// <returns>None for a year without hours.</returns>
    public static IReadOnlyList<Block.Picture> Of(YearResult year, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(year);
        HourColumns of = year.Hours;
        if (of.InsideC.Count == 0 || of.InsideC.Count % 24 != 0)
        {
            return [];
        }

        List<Block.Picture> all = [Draw("humidity", "humidity at the crop", "% RH", of.InsideRhPercent, 1, 40, 10, 7)];
        if (of.AirFlowM3PerS.Any(v => v > 0))
        {
            Shown one = Shown.Of(1, Unit.CubicMetrePerSecond, units);
            double toShown = one.Value;
            double step = Even(of.AirFlowM3PerS.Max() * toShown / 5);
            all.Add(Draw("exhaust", "exhaust air, mean of the hour", one.Unit, of.AirFlowM3PerS, toShown, step, step, 5));
        }

        foreach ((string id, string what, IReadOnlyList<float>? drawn) in (ReadOnlySpan<(string, string, IReadOnlyList<float>?)>)[
            ("curtain", "curtain drawn", of.CurtainFraction), ("second-curtain", "second curtain drawn", of.SecondCurtainFraction)])
        {
            if (drawn is not null && drawn.Any(v => v > 0))
            {
                all.Add(Draw(id, what, "%", drawn, 100, 20, 20, 5));
            }
        }

        return all;

        Block.Picture Draw(string id, string what, string unit, IReadOnlyList<float> values, double toShown, double low, double step, int count)
        {
            Sheet carpet = CarpetPlot.Draw(
                $"{id}-{year.House}", $"House {year.House}: {what}", unit, [.. values.Select(v => v * toShown)], CarpetPlot.Even(Ramp.Sequential, low, step, count), Said.WidthMm, TallMm);
            return new Block.Picture(carpet, $"House {year.House}: {what}. Each column is a day, each row an hour (standard time).");
        }
    }

    // A step of one or two leading digits, so that the key can be read.
    private static double Even(double step)
    {
        double size = Math.Pow(10, Math.Floor(Math.Log10(step)));
        double lead = step / size;
        return (lead <= 1 ? 1 : lead <= 2 ? 2 : lead <= 2.5 ? 2.5 : lead <= 5 ? 5 : 10) * size;
    }
}
