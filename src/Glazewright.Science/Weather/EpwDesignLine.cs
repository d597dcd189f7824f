using System.Globalization;

namespace Glazewright.Science.Weather;

/// <summary>
/// Reads the DESIGN CONDITIONS header of an EPW file. Three layouts occur: the 2001 handbook's (HEATING, COOLING), the 2009 one
/// (Heating, Cooling, Extremes with the highest wet bulb fourth) and the 2017 one (that wet bulb gone from there). The last two are told apart by what
/// the numbers must satisfy, not by the name, since writers name editions freely. Layouts: read from the headers of 28 public files.
/// </summary>
internal static class EpwDesignLine
{
    /// <summary>Gumbel factor of a 20-year return value: −√6/π (0.5772 + ln ln(20/19)).</summary>
    private const double Gumbel20 = 1.8658;

    public static HeaderConditions Parse(string line)
    {
        string[] fields = line.Split(',');
        if (fields.Length < 3 || fields[1].Trim() is "0" or "")
        {
            return new HeaderConditions.None();
        }

        string edition = fields[2].Trim();
        int heating = IndexOf(fields, "Heating");
        int cooling = IndexOf(fields, "Cooling");
        int extremes = IndexOf(fields, "Extremes");
        if (heating < 0 || cooling < heating)
        {
            return new HeaderConditions.Unreadable("no Heating and Cooling groups");
        }

        double[] cold = Numbers(fields, heating + 1, cooling);
        double[] hot = Numbers(fields, cooling + 1, extremes < 0 ? fields.Length : extremes);
        DesignConditions? values = extremes < 0 ? Of2001(edition, cold, hot) : OfLater(edition, cold, hot, Numbers(fields, extremes + 1, fields.Length));
        return values is null
            ? new HeaderConditions.Unreadable($"the numbers of '{edition}' do not fit a known layout")
            : Plausible(values) ? new HeaderConditions.Printed(values) : new HeaderConditions.Unreadable($"the numbers of '{edition}' contradict each other");
    }

    private static DesignConditions? OfLater(string edition, double[] cold, double[] hot, double[] extremes)
    {
        if (cold.Length < 15 || hot.Length < 16 || extremes.Length < 15)
        {
            return null;
        }

        int at = ReturnsFit(extremes, 3) ? 3 : ReturnsFit(extremes, 4) ? 4 : -1;
        return at < 0 ? null : new DesignConditions
        {
            Edition = edition,
            ColdestMonth = (int)cold[0],
            Heating996DryBulbC = cold[1],
            Heating99DryBulbC = cold[2],
            ColdestMonthWind1PctMs = cold[11],
            WindAtHeating996Ms = cold[13],
            HottestMonth = (int)hot[0],
            HottestMonthDailyRangeK = hot[1],
            Cooling04DryBulbC = hot[2],
            Cooling04WetBulbC = hot[3],
            Cooling1DryBulbC = hot[4],
            Cooling1WetBulbC = hot[5],
            Cooling2DryBulbC = hot[6],
            Cooling2WetBulbC = hot[7],
            Evaporation04WetBulbC = hot[8],
            Evaporation04DryBulbC = hot[9],
            WindAtCooling04Ms = hot[14],
            Wind1PctMs = extremes[0],
            MeanAnnualMinC = extremes[at],
            MeanAnnualMaxC = extremes[at + 1],
            Return20YearMinC = extremes[at + 8],
            Return20YearMaxC = extremes[at + 9],
            Return20YearPrinted = true,
        };
    }

    private static DesignConditions? Of2001(string edition, double[] cold, double[] hot) =>
        cold.Length < 17 || hot.Length < 20 ? null : new DesignConditions
        {
            Edition = edition,
            ColdestMonth = 0,
            Heating996DryBulbC = cold[0],
            Heating99DryBulbC = cold[1],
            ColdestMonthWind1PctMs = cold[7],
            WindAtHeating996Ms = cold[9],
            HottestMonth = 0,
            HottestMonthDailyRangeK = hot[^1],
            Cooling04DryBulbC = hot[0],
            Cooling04WetBulbC = hot[1],
            Cooling1DryBulbC = hot[2],
            Cooling1WetBulbC = hot[3],
            Cooling2DryBulbC = hot[4],
            Cooling2WetBulbC = hot[5],
            Evaporation04WetBulbC = hot[6],
            Evaporation04DryBulbC = hot[7],
            WindAtCooling04Ms = cold[11],
            Wind1PctMs = cold[2],
            MeanAnnualMaxC = cold[13],
            MeanAnnualMinC = cold[14],
            Return20YearMaxC = cold[13] + Gumbel20 * cold[15],
            Return20YearMinC = cold[14] - Gumbel20 * cold[16],
            Return20YearPrinted = false,
        };

    /// <summary>Mean low, mean high, two deviations, then low/high of 5, 10, 20, 50 years: lows fall, highs rise.</summary>
    private static bool ReturnsFit(double[] x, int at)
    {
        if (x.Length < at + 12 || !(x[at + 2] >= 0) || !(x[at + 3] >= 0))
        {
            return false;
        }

        double low = x[at];
        double high = x[at + 1];
        for (int i = at + 4; i < at + 12; i += 2)
        {
            if (!(x[i] <= low) || !(x[i + 1] >= high))
            {
                return false;
            }

            low = x[i];
            high = x[i + 1];
        }

        return low < high;
    }

    public static bool Plausible(DesignConditions v) =>
        double.IsFinite((v.ColdestMonthWind1PctMs ?? 0) + v.WindAtHeating996Ms + v.WindAtCooling04Ms + v.HottestMonthDailyRangeK + (v.Wind1PctMs ?? 0)
            + (v.Return20YearMinC ?? 0) + (v.Return20YearMaxC ?? 0))
        && v.Heating996DryBulbC <= v.Heating99DryBulbC && v.Heating99DryBulbC < v.Cooling2DryBulbC
        && v.Cooling2DryBulbC <= v.Cooling1DryBulbC && v.Cooling1DryBulbC <= v.Cooling04DryBulbC
        && v.Cooling04WetBulbC <= v.Cooling04DryBulbC && v.Evaporation04WetBulbC <= v.Evaporation04DryBulbC
        && v.Evaporation04WetBulbC >= v.Cooling04WetBulbC - 0.11
        && !(v.MeanAnnualMinC > v.Heating99DryBulbC) && !(v.MeanAnnualMaxC < v.Cooling1DryBulbC)
        && !double.IsNaN((v.MeanAnnualMinC ?? 0) + (v.MeanAnnualMaxC ?? 0));

    private static int IndexOf(string[] fields, string key) =>
        Array.FindIndex(fields, f => f.Trim().Equals(key, StringComparison.OrdinalIgnoreCase));

    /// <summary>A field that is no number ends the group's use: NaN fails every later test.</summary>
    private static double[] Numbers(string[] fields, int from, int to)
    {
        var numbers = new double[Math.Max(0, to - from)];
        for (int i = 0; i < numbers.Length; i++)
        {
            numbers[i] = double.TryParse(fields[from + i], NumberStyles.Float, CultureInfo.InvariantCulture, out double x) && double.IsFinite(x) ? x : double.NaN;
        }

        return numbers;
    }
}
