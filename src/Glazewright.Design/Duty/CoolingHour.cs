using Glazewright.Design.GainTables;
using Glazewright.Science.Sky;
using Glazewright.Science.Sun;
using Glazewright.Science.Weather;

namespace Glazewright.Design.Duty;

/// <summary>The hour whose sun sizes the fans.</summary>
/// <param name="Hour">Hour of the year, from 0.</param>
/// <param name="GlobalWm2">Global horizontal, W/m².</param>
/// <param name="Sun">Where the sun's watts end, before any shade.</param>
/// <param name="ElevationDeg">Sun's elevation.</param>
/// <param name="Candidates">How many hours were hot enough to be asked.</param>
internal sealed record CoolingHour(int Hour, double GlobalWm2, SunW Sun, double ElevationDeg, int Candidates)
{
    /// <summary>Hours within this of the year's own 0.4 % dry bulb count as hot, K.</summary>
    public const double HotWithinK = 4;

    // A year without leap day; the sun's place differs by up to 0.1° between years.
    private const int SunYear = 2011;

    public int Day => Hour / 24;

    /// <summary>Absorbed inside in all: crop plane, frame, opaque walls, curtain, W.</summary>
    public double InsideW => Sun.CropPlaneW + Sun.FrameW + Sun.OpaqueW + Sun.CurtainW;

    private double HeatW(double inwardFraction) => InsideW + inwardFraction * Sun.CoverW;

    /// <summary>Of the hot hours of the weather year, the one whose sun brings the most heat into this house.</summary>
    public static CoolingHour Find(DutyInput input, GainTable table, WeatherYear year, double inwardFraction)
    {
        double hotC = ExceededIn(year, 0.004) - HotWithinK;
        var field = new GainField(table, drawn: false);
        CoolingHour? best = null;
        int candidates = 0;
        for (int hour = 0; hour < CommonYear.Hours; hour++)
        {
            if (year.DryBulbC[hour] < hotC || year.GhiWhm2[hour] < 50)
            {
                continue;
            }

            candidates++;
            CoolingHour here = At(input, field, year, hour);
            if (best is null || here.HeatW(inwardFraction) > best.HeatW(inwardFraction))
            {
                best = here;
            }
        }

        return (best ?? At(input, field, year, BrightestHour(year))) with { Candidates = candidates };
    }

    internal static CoolingHour At(DutyInput input, GainField field, WeatherYear year, int hour)
    {
        int day = hour / 24;
        int month = CommonYear.MonthOfDay(day);
        double clockH = hour % 24 + 1 + year.RadiationOffsetH;
        double julian = JulianDay.Of(SunYear, month, day - CommonYear.FirstDayOf(month) + 1, clockH, year.Station.ZoneH);
        SunPosition sun = SolarPosition.At(
            julian, input.LatitudeDeg, input.LongitudeDeg, input.ElevationM, year.PressurePa[hour], year.DryBulbC[hour], SolarPosition.DeltaTSeconds);
        SkySources sky = PerezSky.Sources(
            Math.Min(year.DniWhm2[hour], 1500),
            Math.Min(year.DhiWhm2[hour], 1500),
            sun.ZenithDeg,
            Extraterrestrial.NormalWm2(day + 1),
            input.AlbedoFraction);
        SunW ends = field.At(sky, sun.AzimuthDeg, sun.ElevationDeg, input.RangeBearingDeg);
        return new CoolingHour(hour, year.GhiWhm2[hour], ends, sun.ElevationDeg, 1);
    }

    private static double ExceededIn(WeatherYear year, double fraction)
    {
        double[] dry = year.DryBulbC.Span.ToArray();
        Array.Sort(dry);
        return dry[(int)Math.Round((1 - fraction) * dry.Length)];
    }

    private static int BrightestHour(WeatherYear year)
    {
        int best = 0;
        for (int hour = 1; hour < CommonYear.Hours; hour++)
        {
            best = year.GhiWhm2[hour] > year.GhiWhm2[best] ? hour : best;
        }

        return best;
    }
}
