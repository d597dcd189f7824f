using Glazewright.Design.Contracts;
using Glazewright.Design.GainTables;
using Glazewright.Science.Light;
using Glazewright.Science.Light.Shadows;
using Glazewright.Science.Sun;

namespace Glazewright.Design.LightMaps;

/// <summary>Which member throws the largest shadow on the map at noon of a solstice, and how that shadow moves through the day.</summary>
internal static class ShadowDays
{
    private const double TiltDeg = 23.44;

    public static EqList<ShadowTrack> Of(LightScene scene)
    {
        List<ShadowTrack> tracks = [];
        foreach ((string day, double declinationDeg) in new[] { ("21 December", -TiltDeg), ("21 June", TiltDeg) })
        {
            NamedBar[] members = [.. scene.Bars.Where(b => b.Bar.Cause == ShadeCause.Frame)];
            (NamedBar Bar, ShadowMoment Moment)? largest = null;
            foreach (NamedBar bar in members)
            {
                if (At(scene, bar.Bar, declinationDeg, 12) is { } moment && moment.WidthM * moment.LengthM > (largest is { } l ? l.Moment.WidthM * l.Moment.LengthM : 0) + 1e-9)
                {
                    largest = (bar, moment);
                }
            }

            if (largest is { } found)
            {
                ShadowMoment[] moments =
                    [.. Enumerable.Range(6, 13).Select(h => At(scene, found.Bar.Bar, declinationDeg, h)).OfType<ShadowMoment>()];
                tracks.Add(new ShadowTrack(day, found.Bar.Id, EqList.Own(moments)));
            }
        }

        return tracks.ToEqList();
    }

    /// <summary>Broadest member shadow at noon of a declination, m; 0 when none falls on the map.</summary>
    public static double BroadestNoonM(LightScene scene, double declinationDeg) => scene.Bars
        .Where(b => b.Bar.Cause == ShadeCause.Frame)
        .Max(b => At(scene, b.Bar, declinationDeg, 12)?.WidthM) ?? 0;

    // Null with the sun low or the shadow's middle off the map.
    private static ShadowMoment? At(LightScene scene, ShadeBar bar, double declinationDeg, double solarHour)
    {
        SunAngles sun = HourAngleSun.At(scene.Input.LatitudeDeg, declinationDeg, 15 * (solarHour - 12));
        if (sun.ElevationDeg < 3)
        {
            return null;
        }

        var towards = Vector3d.Towards(scene.Input.RangeBearingDeg - sun.AzimuthDeg, sun.ElevationDeg);
        if (ShadowOnLevel.Of(bar, towards, scene.HeightM) is not { } shadow)
        {
            return null;
        }

        return shadow.CentreXM >= 0 && shadow.CentreXM <= scene.House.LengthM && shadow.CentreYM >= 0 && shadow.CentreYM <= scene.House.WidthM
            ? new ShadowMoment(solarHour, shadow.WidthM, shadow.LengthM, shadow.CentreXM, shadow.CentreYM)
            : null;
    }
}
