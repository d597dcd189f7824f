using System.Globalization;
using Glazewright.Design.Contracts;

namespace Glazewright.Design.Calibration.Reading;

/// <summary>Lays readings on even steps: what slides is interpolated, what is switched is held; gaps are filled and told.</summary>
internal static class LogGrid
{
    private const double LongestFillHours = 24;
    private const int MostSteps = 1_200_000;

    public static HouseLog? Lay(ColumnMap map, LogClock clock, List<LogSeries> series, List<Fault> faults, List<LogNote> notes)
    {
        LogSeries? inside = series.FirstOrDefault(s => s.Quantity == LoggedQuantity.InsideTemperature);
        foreach (LoggedQuantity needed in (LoggedQuantity[])[LoggedQuantity.OutsideTemperature, LoggedQuantity.OutsideHumidity, LoggedQuantity.InsideTemperature])
        {
            if (series.All(s => s.Quantity != needed) && (needed == LoggedQuantity.InsideTemperature || map.Constants.All(c => c.Quantity != needed)))
            {
                faults.Add(new Fault(FaultKind.Missing, "/tables", "", 0, 0, $"{QuantityTraits.Of(needed).Word} is not logged", "a column for it: a house cannot be fitted without"));
            }
        }

        foreach (LogSeries none in series.Where(s => s.Utc.Length < 2))
        {
            faults.Add(new Fault(FaultKind.Missing, "/tables", "", 0, 0, $"{none.Name} has no readings with a stamp", "two readings or more"));
        }

        if (faults.Count > 0 || inside is null)
        {
            return null;
        }

        series = [.. series.Select(s => LogDoubts.Sieve(s, notes))];
        double first = Math.Ceiling(series.Max(s => s.Utc[0])), last = series.Min(s => s.Utc[^1]);
        double median = Median(inside.Utc);
        int step = (int)Math.Clamp(Math.Round(median), 1, 60);
        if (median > 90)
        {
            faults.Add(new Fault(FaultKind.OutOfRange, "/tables", "", 0, 0, string.Create(CultureInfo.InvariantCulture, $"readings are {median:0} minutes apart"), "readings every 1 to 60 minutes"));
            return null;
        }

        double span = (last - first) / step + 1;
        if (!(span * step >= 3 * 7 * 1440) || span > MostSteps)
        {
            string days = (Math.Max(0, last - first) / 1440).ToString("0.0", CultureInfo.InvariantCulture);
            faults.Add(new Fault(FaultKind.OutOfRange, "/tables", "", 0, 0, $"the tables have {days} days in common", "three weeks or more, so that some weeks are fitted on and others scored"));
            return null;
        }

        int count = (int)span;
        double[]?[] values = new double[QuantityTraits.All.Count][];
        bool[] whole = new bool[count], starts = new bool[count];
        Array.Fill(whole, true);
        List<Gapped> told = [];
        foreach (IGrouping<LoggedQuantity, LogSeries> group in series.GroupBy(s => s.Quantity))
        {
            double[] sum = new double[count];
            foreach (LogSeries one in group)
            {
                double[] laid = One(one, first, step, whole, starts, told);
                for (int i = 0; i < count; i++)
                {
                    sum[i] += laid[i] / group.Count();
                }
            }

            values[(int)group.Key] = sum;
        }

        foreach (IGrouping<string, Gapped> table in told.GroupBy(g => g.Table))
        {
            double longest = table.Max(g => g.Minutes);
            string anew = longest > LongestFillHours * 60 ? $"; after gaps above {LongestFillHours:0} h the house starts anew and a day is not scored" : "";
            notes.Add(new LogNote("log/gaps", string.Create(
                CultureInfo.InvariantCulture,
                $"{table.Key}: {table.Count()} columns have gaps, up to {table.Max(g => g.Gaps)} and {table.Max(g => g.Percent):0.0} % of the time, the longest {longest / 60:0.0} h. Weather was interpolated over them, equipment held as it was before, and nothing in them is scored{anew}")));
        }

        foreach (MappedConstant constant in map.Constants)
        {
            values[(int)constant.Quantity] = new double[count];
            Array.Fill(values[(int)constant.Quantity]!, constant.Value);
            notes.Add(new LogNote("log/constant", string.Create(CultureInfo.InvariantCulture, $"{QuantityTraits.Of(constant.Quantity).Word} is not logged and held at {constant.Value:0.###} (SI)")));
        }

        foreach (AssumedThermostat t in map.Thermostats)
        {
            notes.Add(new LogNote("log/assumed", string.Create(CultureInfo.InvariantCulture, $"{QuantityTraits.Of(t.Quantity).Word} is not logged: a thermostat on the computed air is assumed, nothing at {t.NoneAtC:0.#} °C, full at {t.FullAtC:0.#} °C; the score is partly a score of that")));
        }

        starts[0] = true;
        return new HouseLog(map.Name, clock, first, step, values, whole, starts, notes.ToEqList());
    }

    private static double[] One(LogSeries s, double first, int step, bool[] whole, bool[] starts, List<Gapped> told)
    {
        QuantityTraits traits = QuantityTraits.Of(s.Quantity);
        bool measured = s.Quantity is LoggedQuantity.InsideTemperature or LoggedQuantity.InsideHumidity;
        double[] laid = new double[whole.Length];
        double typical = Math.Max(Median(s.Utc), step), nearMinutes = 2.5 * typical, longest = 0;
        int at = 0, filled = 0, gaps = 0;
        bool inGap = false;
        for (int i = 0; i < laid.Length; i++)
        {
            double now = first + (double)i * step;
            while (at + 1 < s.Utc.Length && s.Utc[at + 1] <= now)
            {
                at++;
            }

            double before = s.Utc[at], after = at + 1 < s.Utc.Length ? s.Utc[at + 1] : before, apart = after - before;
            double part = apart > 0 ? Math.Clamp((now - before) / apart, 0, 1) : 0;
            // A switch that was off and one that was on have nothing between them; nor has a pipe that stood still.
            bool holds = traits.State || s.Values[at] <= HousePipes.Off;
            laid[i] = holds ? s.Values[at] : s.Values[at] + part * (s.Values[Math.Min(at + 1, s.Values.Length - 1)] - s.Values[at]);
            bool gap = apart > nearMinutes && now > before && now < after;
            if (gap)
            {
                filled++;
                gaps += inGap ? 0 : 1;
                longest = Math.Max(longest, apart);
                whole[i] &= measured;
                laid[i] = measured ? double.NaN : laid[i];
            }
            else if (inGap && !measured && s.Utc[Math.Max(at, 1)] - s.Utc[Math.Max(at, 1) - 1] > LongestFillHours * 60)
            {
                starts[i] = true;
            }

            inGap = gap;
        }

        if (filled > 0)
        {
            told.Add(new Gapped(s.Table, gaps, 100.0 * filled / laid.Length, longest));
        }

        return laid;
    }

    private static double Median(double[] utc)
    {
        if (utc.Length < 2)
        {
            return double.PositiveInfinity;
        }

        double[] steps = new double[utc.Length - 1];
        for (int i = 0; i < steps.Length; i++)
        {
            steps[i] = utc[i + 1] - utc[i];
        }

        Array.Sort(steps);
        return steps[steps.Length / 2];
    }

    private readonly record struct Gapped(string Table, int Gaps, double Percent, double Minutes);
}
