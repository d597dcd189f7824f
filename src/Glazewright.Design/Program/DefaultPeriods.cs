using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;

namespace Glazewright.Design.Program;

/// <summary>Crop weeks to program periods that cover the year without gap or overlap: where weeks overlap the earlier entry holds; a gap is parked frost-safe.</summary>
internal static class DefaultPeriods
{
    /// <summary>Parked: 4 °C, our default between crops, safe for wet pipes.</summary>
    public const double ParkedC = 4;
    private const double EmptyCoolC = 30;

    public static EqList<ProgramPeriod> Of(EqList<CropPeriod> schedule, HeldBand band)
    {
        var owner = new int[366];
        Array.Fill(owner, -1);
        for (int k = schedule.Count - 1; k >= 0; k--)
        {
            for (int day = 1; day <= 365; day++)
            {
                int week = Math.Min(52, (day - 1) / 7 + 1);
                CropPeriod c = schedule[k];
                bool holds = c.FromWeek <= c.ToWeek ? week >= c.FromWeek && week <= c.ToWeek : week >= c.FromWeek || week <= c.ToWeek;
                owner[day] = holds ? k : owner[day];
            }
        }

        var periods = new List<ProgramPeriod>();
        int start = 1;
        while (start <= 365 && owner[start] == owner[Before(start)])
        {
            start++;
        }

        if (start > 365)
        {
            return [Period(schedule, owner[1], 1, 365, band, 0)];
        }

        int from = start;
        for (int i = 1; i <= 365; i++)
        {
            int day = (start - 1 + i) % 365 + 1;
            if (owner[day] != owner[Before(day)])
            {
                periods.Add(Period(schedule, owner[from], from, Before(day), band, periods.Count(p => p.Id.StartsWith(IdOf(schedule, owner[from]), StringComparison.Ordinal))));
                from = day;
            }
        }

        return periods.OrderBy(p => p.FromDay).ToEqList();
    }

    private static int Before(int day) => day == 1 ? 365 : day - 1;

    private static string IdOf(EqList<CropPeriod> schedule, int k) => k < 0 ? "parked" : schedule[k].Id;

    private static ProgramPeriod Period(EqList<CropPeriod> schedule, int k, int from, int to, HeldBand band, int again)
    {
        string id = IdOf(schedule, k) + (again == 0 ? string.Empty : FormattableString.Invariant($"-{again + 1}"));
        double heatBelowK = Math.Clamp(0.33 * band.TemperatureK, 0.45, 1.0);
        double coolAboveK = Math.Clamp(0.27 * band.TemperatureK, 0.3, 2.0);
        if (k < 0)
        {
            var parked = new ClimateTarget(ParkedC, 0);
            return new ProgramPeriod(id, from, to, parked, parked, new DayMark.Sunrise(0), new DayMark.Sunset(0), 0, 20, heatBelowK);
        }

        CropPeriod c = schedule[k];
        if (c.PlantedFraction <= 0)
        {
            // Nothing grows: the target is a floor. Cooling only spares covering and benches from heat.
            coolAboveK = Math.Clamp(EmptyCoolC - Math.Min(c.Day.TemperatureC, c.Night.TemperatureC), coolAboveK, 20);
        }

        return new ProgramPeriod(id, from, to, c.Day, c.Night, c.DayStarts, c.DayEnds, c.RampMinutes, coolAboveK, heatBelowK);
    }
}
