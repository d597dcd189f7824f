using Glazewright.Design.Contracts;

namespace Glazewright.Design.Calibration;

/// <summary>Scores of the weeks that were not fitted on, apart by what the house was doing: a pooled number hides errors that cancel.</summary>
internal static class CalibrationScores
{
    public static EqList<ScoreLine> ByRegime(HouseLog log, LogSun sun, MeasuredAir m, ReplayedAir c)
    {
        List<ScoreLine> lines = [Line("all", "all hours", _ => true), Line("night", "nights, lamps off", i => Dark(log, sun, i)), Line("sun", "sun above 300 W/m²", i => sun.GlobalWm2[i] > 300)];
        if (log.Has(LoggedQuantity.Lamps))
        {
            lines.Add(Line("lamps", "nights, lamps on", i => sun.GlobalWm2[i] <= 2 && log.Of(LoggedQuantity.Lamps)[i] > 0.05));
        }

        if (log.Has(LoggedQuantity.RoofVents) || log.Has(LoggedQuantity.SideVents))
        {
            lines.Add(Line("vents-open", "vents above half", i => Vents(log, i) > 0.5));
            lines.Add(Line("vents-shut", "vents shut", i => Vents(log, i) < 0.02));
        }

        if (log.Has(LoggedQuantity.Curtain) || log.Has(LoggedQuantity.SecondCurtain))
        {
            foreach (ScreenState state in Enum.GetValues<ScreenState>())
            {
                lines.Add(Line("night-" + ScreenStates.Id(state), "nights, vents shut, " + ScreenStates.Name(state), i => Dark(log, sun, i) && Vents(log, i) < 0.02 && ScreenStates.Of(log, i) == state));
            }
        }

        if (log.Has(LoggedQuantity.Fans))
        {
            lines.Add(Line("fans", "all fans on", i => log.Of(LoggedQuantity.Fans)[i] >= 0.99));
        }

        return lines.Where(l => l.Count > 0).ToEqList();

        ScoreLine Line(string id, string name, Func<int, bool> picks) => ScoreBook.Of(id, name, m, c, i => !m.Trains[i] && picks(i));
    }

    /// <summary>No sun and no lamps.</summary>
    public static bool Dark(HouseLog log, LogSun sun, int i) => sun.GlobalWm2[i] <= 2 && (!log.Has(LoggedQuantity.Lamps) || log.Of(LoggedQuantity.Lamps)[i] < 0.05);

    /// <summary>The widest of the vents.</summary>
    public static double Vents(HouseLog log, int i) => Math.Max(
        log.Has(LoggedQuantity.RoofVents) ? log.Of(LoggedQuantity.RoofVents)[i] : 0, log.Has(LoggedQuantity.SideVents) ? log.Of(LoggedQuantity.SideVents)[i] : 0);
}

/// <summary>How many curtains are closed.</summary>
internal enum ScreenState
{
    /// <summary>None.</summary>
    Open,

    /// <summary>The first.</summary>
    One,

    /// <summary>Both, or the second.</summary>
    Two,
}

/// <summary>Screen states of a log.</summary>
internal static class ScreenStates
{
    /// <summary>The state at a step; null in between.</summary>
    public static ScreenState? Of(HouseLog log, int i)
    {
        double first = log.Has(LoggedQuantity.Curtain) ? log.Of(LoggedQuantity.Curtain)[i] : 0;
        double second = log.Has(LoggedQuantity.SecondCurtain) ? log.Of(LoggedQuantity.SecondCurtain)[i] : 0;
        return second >= 0.05 ? first > 0.9 ? ScreenState.Two : null : first > 0.9 ? ScreenState.One : first < 0.05 ? ScreenState.Open : null;
    }

    public static string Id(ScreenState state) => state switch { ScreenState.Open => "open", ScreenState.One => "one", _ => "two" };

    public static string Name(ScreenState state) => state switch { ScreenState.Open => "curtains open", ScreenState.One => "one curtain", _ => "two curtains" };
}
