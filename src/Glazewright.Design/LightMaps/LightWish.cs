using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Science.Weather;

namespace Glazewright.Design.LightMaps;

/// <summary>How a crop period's wish for light fares in its own months.</summary>
/// <param name="Period">The period; it wishes for light.</param>
/// <param name="DarkestMonth">The darkest of its months, 0 to 11.</param>
/// <param name="DarkestMolPerM2Day">Mean of the map then, mol/m²d.</param>
/// <param name="MonthsAsked">Months it touches.</param>
/// <param name="MonthsEnough">Those with as much as it wishes for.</param>
public sealed record LightWish(CropPeriod Period, int DarkestMonth, double DarkestMolPerM2Day, int MonthsAsked, int MonthsEnough)
{
    /// <summary>Every period that wishes for light, each in its own months.</summary>
    /// <param name="schedule">The crop schedule.</param>
    /// <param name="months">Light by month, January first.</param>
    /// <returns>In the schedule's order.</returns>
    public static IEnumerable<LightWish> Of(EqList<CropPeriod> schedule, EqList<LightMonth> months)
    {
        foreach (CropPeriod period in schedule.Where(p => p.LightWishMolPerM2Day > 0))
        {
            int[] own = [.. Months(period)];
            int darkest = own.MinBy(m => months[m].MeanMolPerM2Day);
            yield return new LightWish(
                period, darkest, months[darkest].MeanMolPerM2Day, own.Length, own.Count(m => months[m].MeanMolPerM2Day >= period.LightWishMolPerM2Day));
        }
    }

    private static IEnumerable<int> Months(CropPeriod period)
    {
        int weeks = ((period.ToWeek - period.FromWeek + 52) % 52) + 1;
        return Enumerable.Range(0, weeks)
            .Select(i => (period.FromWeek - 1 + i) % 52)
            .Select(week => CommonYear.MonthOfDay(Math.Min(364, (week * 7) + 3)) - 1)
            .Distinct();
    }
}
