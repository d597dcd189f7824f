using System.Globalization;
using System.Text;

namespace Glazewright.Science.Shape;

/// <summary>
/// Two statements of common practice about noon sun on 21 June in a house with an east-west ridge 30 ft wide, computed for latitudes, eave heights and
/// coverings. All closed forms of <see cref="NoonReach"/>, northern hemisphere; the same latitudes hold south of the equator for 21 December.
/// </summary>
public static class PracticeStatements
{
    /// <summary>Metres in a foot.</summary>
    private const double FootM = 0.3048;

    private const double WidthM = 30 * FootM;
    private static readonly double[] s_latitudesDeg = [25, 30, 35, 40, 42, 45, 50, 55, 60];
    private static readonly double[] s_eavesFt = [6, 8, 10, 12];
    private static readonly double[] s_pitches = [4, 6, 8, 10];

    /// <summary>Depth of the strip without direct sun along the far wall: ridge in the middle, opaque far slope, both eaves alike.</summary>
    /// <param name="latitudeDeg">North, 24 to 90.</param>
    /// <param name="eaveM">Eaves, m.</param>
    /// <param name="pitchRatio">Both slopes, rise over run.</param>
    /// <returns>m on the floor.</returns>
    public static double MiddleRidgeStripM(double latitudeDeg, double eaveM, double pitchRatio) =>
        NoonReach.DarkStripM(GableSection.Closed(WidthM, eaveM, eaveM, WidthM / 2, pitchRatio), JuneNoonDeg(latitudeDeg), 0);

    /// <summary>How far up the far wall the sun comes under the ridge of 3:12 over 24 ft and 9.5:12 behind; below 0 it falls short of the wall.</summary>
    /// <param name="latitudeDeg">North, 24 to 90.</param>
    /// <param name="nearEaveM">South eave, m; the north eave closes 1.25 ft (0.381 m) higher.</param>
    /// <returns>m over the floor.</returns>
    public static double LongSlopeReachM(double latitudeDeg, double nearEaveM) =>
        NoonReach.UnderRidgeM(LongSlope(nearEaveM), JuneNoonDeg(latitudeDeg));

    /// <summary>The house of the second statement.</summary>
    /// <param name="nearEaveM">South eave, m.</param>
    /// <returns>Its section.</returns>
    public static GableSection LongSlope(double nearEaveM)
    {
        double ridgeM = nearEaveM + (24 * FootM * 3 / 12);
        return new GableSection(WidthM, nearEaveM, ridgeM - (6 * FootM * 9.5 / 12), 24 * FootM, ridgeM).Checked();
    }

    /// <summary>Latitude at which the second statement gives a wanted reach.</summary>
    /// <param name="nearEaveM">South eave, m.</param>
    /// <param name="reachM">Up the far wall, m.</param>
    /// <returns>Degrees north.</returns>
    public static double LongSlopeLatitudeDeg(double nearEaveM, double reachM)
    {
        NoonSunAngle.TryLatitude(
            NoonReach.ProfileForReachDeg(LongSlope(nearEaveM), reachM), NoonSunAngle.SolsticeDeclinationDeg, true, 0, out double latitudeDeg);
        return latitudeDeg;
    }

    /// <summary>Latitude at which the first statement gives a wanted depth.</summary>
    /// <param name="eaveM">Eaves, m.</param>
    /// <param name="pitchRatio">Both slopes, rise over run.</param>
    /// <param name="stripM">Depth, m, less than half the width.</param>
    /// <returns>Degrees north.</returns>
    public static double MiddleRidgeLatitudeDeg(double eaveM, double pitchRatio, double stripM)
    {
        double ridgeM = eaveM + (WidthM / 2 * pitchRatio);
        double profileDeg = Math.Atan2(ridgeM, (WidthM / 2) - stripM) * 180 / Math.PI;
        NoonSunAngle.TryLatitude(profileDeg, NoonSunAngle.SolsticeDeclinationDeg, true, 0, out double latitudeDeg);
        return latitudeDeg;
    }

    /// <summary>Both statements as tables in Markdown, feet; printed in docs/methods/shape.md.</summary>
    /// <returns>The text, lines ended by \\n.</returns>
    public static string Tables()
    {
        StringBuilder text = new();
        text.Append("Depth in ft of the strip along the north wall without direct sun (floor, 21 June, noon), ridge in the middle, opaque north slope.\n\n");
        Head(text, "eaves, pitch", "10 ft at");
        foreach (double eave in s_eavesFt)
        {
            foreach (double pitch in s_pitches)
            {
                Row(text, $"{eave:0} ft, {pitch:0}:12", l => MiddleRidgeStripM(l, eave * FootM, pitch / 12) / FootM, MiddleRidgeLatitudeDeg(eave * FootM, pitch / 12, 10 * FootM));
            }
        }

        text.Append("\nHow far in ft the noon sun of 21 June comes up the north wall: 3:12 over 24 ft, opaque 9.5:12 over 6 ft. In brackets: it misses the wall and leaves so many ft of floor before it dark.\n\n");
        Head(text, "south eave", "4 ft at");
        foreach (double eave in s_eavesFt)
        {
            Row(text, $"{eave:0} ft", l => LongSlopeReachM(l, eave * FootM) / FootM, LongSlopeLatitudeDeg(eave * FootM, 4 * FootM), l => NoonReach.DarkStripM(LongSlope(eave * FootM), JuneNoonDeg(l), 0) / FootM);
        }

        text.Append("\nThe same wall with a clear 9.5:12 north slope: lit height in ft, from the floor (or where it begins) to the eave.\n\n");
        Head(text, "south eave", "whole wall");
        foreach (double eave in s_eavesFt)
        {
            GableSection house = LongSlope(eave * FootM);
            Row(
                text,
                $"{eave:0} ft",
                l => NoonReach.OnFarWall(house, new ClearParts(0, true, true), JuneNoonDeg(l)).HighM / FootM,
                null);
        }

        return text.ToString();
    }

    private static double JuneNoonDeg(double latitudeDeg)
    {
        Guards.Within.Require(latitudeDeg, 24, 90);
        return NoonSunAngle.ProfileDeg(latitudeDeg, NoonSunAngle.SolsticeDeclinationDeg, 180);
    }

    private static void Head(StringBuilder text, string first, string last) =>
        text.Append("| ").Append(first).Append(" | ").AppendJoin(" | ", s_latitudesDeg.Select(l => Number(l, "0") + "° N")).Append(" | ").Append(last)
            .Append(" |\n|---").Append(string.Concat(Enumerable.Repeat("|---:", s_latitudesDeg.Length + 1))).Append("|\n");

    private static void Row(StringBuilder text, FormattableString first, Func<double, double> value, double? latitudeDeg, Func<double, double>? shortBy = null) =>
        text.Append("| ").Append(first.ToString(CultureInfo.InvariantCulture)).Append(" | ").AppendJoin(" | ", s_latitudesDeg.Select(l => value(l) < 0 && shortBy is not null ? $"({Number(shortBy(l), "0.0")})" : Number(value(l), "0.0")))
            .Append(" | ").Append(latitudeDeg is double at ? Number(at, "0.0") + "° N" : "yes").Append(" |\n");

    private static string Number(double value, string form)
    {
        string text = value.ToString(form, CultureInfo.InvariantCulture);
        return text is "-0.0" or "-0" ? text[1..] : text.Replace('-', '−');
    }
}
