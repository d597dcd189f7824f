using Glazewright.Design.Contracts;
using Glazewright.Science.Light;
using Glazewright.Science.Light.Shadows;
using Glazewright.Science.Sun;

namespace Glazewright.Design.LightMaps;

/// <summary>Pictures of one moment: which share of the direct sun reaches each spot of the map, single shadows and all.</summary>
public static class NoonPictures
{
    private const double TiltDeg = 23.44;
    private const double SpotM = 0.15;

    /// <summary>Spots are small already.</summary>
    private static readonly ScanFineness Fineness = new(4, 1);

    /// <summary>Noon and mid-morning of the solstices.</summary>
    /// <param name="scene">The house.</param>
    /// <returns>Those with the sun at least 3° up.</returns>
    internal static EqList<LightMoment> Of(LightScene scene)
    {
        List<LightMoment> moments = [];
        foreach ((string day, double declinationDeg, double hour) in new[]
        {
            ("21 December", -TiltDeg, 12.0), ("21 December", -TiltDeg, 9.5), ("21 June", TiltDeg, 12), ("21 June", TiltDeg, 9),
        })
        {
            if (At(scene, day, declinationDeg, hour) is { } moment)
            {
                moments.Add(moment);
            }
        }

        return moments.ToEqList();
    }

    private static LightMoment? At(LightScene scene, string day, double declinationDeg, double solarHour)
    {
        SunAngles sun = HourAngleSun.At(scene.Input.LatitudeDeg, declinationDeg, 15 * (solarHour - 12));
        if (sun.ElevationDeg < 3)
        {
            return null;
        }

        ReceivingPlane plane = scene.Level(
            scene.HeightM,
            Math.Clamp((int)Math.Round(scene.House.LengthM / SpotM), 4, 512),
            Math.Clamp((int)Math.Round(scene.House.WidthM / SpotM), 4, 256));
        double[] factor = new double[plane.Count];
        var towards = Vector3d.Towards(scene.Input.RangeBearingDeg - sun.AzimuthDeg, sun.ElevationDeg);
        BeamShares shares = new BeamScan(scene.Enclosure, scene.Around, plane, Fineness).Look(towards, factor);
        return new LightMoment(
            day, solarHour, sun.ElevationDeg, sun.AzimuthDeg, plane.CellsU, plane.CellsV,
            EqList.Own([.. factor.Select(f => (float)(f / towards.Z))]), shares.ArrivesFraction);
    }
}
