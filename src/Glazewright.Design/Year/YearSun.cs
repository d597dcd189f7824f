using Glazewright.Design.Contracts;
using Glazewright.Design.GainTables;
using Glazewright.Science.Climate;
using Glazewright.Science.Maths;
using Glazewright.Science.Sky;
using Glazewright.Science.Weather;

namespace Glazewright.Design.Year;

/// <summary>Sun absorbed in each part of the house, minute by minute, through its gain tables.</summary>
internal sealed class YearSun
{
    private const int Parts = 5; // cover, curtain, crop plane, opaque walls, frame
    private const double OuterAbsorptance = 0.4; // light-coloured panel, weathered (common practice)
    private const double SolarConstantWm2 = 1361;

    private readonly double[] open, drawn;
    private readonly double[] openDiffuse, drawnDiffuse; // three rows of Parts: dome, horizon, ground
    private readonly int azimuths, elevations;
    private readonly double perAzimuthDeg, perElevationDeg, bearingDeg, albedo, extinction;
    private readonly YearHouse house;
    private readonly MinuteWeather weather;
    private readonly double[] now = new double[Parts];

    public YearSun(YearInput input, GainTable table, YearHouse house, MinuteWeather weather)
    {
        this.house = house;
        this.weather = weather;
        bearingDeg = input.RangeBearingDeg;
        albedo = input.AlbedoFraction;
        extinction = table.CanopyExtinctionFraction;
        perAzimuthDeg = 1 / table.AzimuthStepDeg;
        perElevationDeg = 1 / table.ElevationStepDeg;
        azimuths = (int)(360 * perAzimuthDeg + 0.5);
        elevations = (int)(90 * perElevationDeg + 0.5) + 1;
        open = Flatten(table.CurtainOpen.Beam);
        drawn = Flatten(table.CurtainDrawn.Beam);
        openDiffuse = Flatten([table.CurtainOpen.Sky, table.CurtainOpen.Horizon, table.CurtainOpen.Ground]);
        drawnDiffuse = Flatten([table.CurtainDrawn.Sky, table.CurtainDrawn.Horizon, table.CurtainDrawn.Ground]);
        if (open.Length != azimuths * elevations * Parts)
        {
            throw new ArgumentException("The gain table's rows do not match its steps.", nameof(table));
        }
    }

    /// <summary>Puts the sun of a minute into the forcing.</summary>
    /// <param name="minute">Minute of the year.</param>
    /// <param name="curtainFraction">How far the curtain is drawn.</param>
    /// <param name="plantedFraction">Share of the floor that is crop.</param>
    /// <param name="leafAreaIndex">Leaf area over planted area.</param>
    /// <param name="forcing">The sun fields are set.</param>
    public void Into(int minute, double curtainFraction, double plantedFraction, double leafAreaIndex, ref HouseForcing forcing)
    {
        double global = weather.GhiWm2[minute];
        if (global <= 0)
        {
            forcing.SunUpperClearW = forcing.SunLowerClearW = forcing.SunUpperOpaqueInnerW = forcing.SunLowerOpaqueInnerW = 0;
            forcing.SunUpperOpaqueOuterW = forcing.SunLowerOpaqueOuterW = forcing.SunCurtainW = forcing.SunCanopyW = forcing.SunFloorW = 0;
            forcing.SunAirBelowW = forcing.SunAirAboveW = 0;
            return;
        }

        double up = weather.CosZenith[minute];
        double zenithDeg = Elementary.Acos(up) * (180 / Math.PI);
        double massAir = 1 / (Math.Max(up, 0) + 0.50572 * Elementary.Pow(Math.Max(96.07995 - Math.Min(zenithDeg, 90), 0.1), -1.6364));
        double outsideAir = SolarConstantWm2 * (1 + 0.033 * Elementary.Cos(2 * Math.PI / 365 * (minute / 1440)));
        SkySources sky = PerezSky.Kernel(weather.DniWm2[minute], weather.DhiWm2[minute], global, zenithDeg, up, massAir, outsideAir, albedo);
        double houseAzimuthDeg = weather.SunAzimuthDeg[minute] - bearingDeg;
        houseAzimuthDeg -= 360 * Math.Floor(houseAzimuthDeg / 360);

        Array.Clear(now);
        if (sky.FromSunWm2 > 0)
        {
            AddBeam(sky.FromSunWm2, houseAzimuthDeg, 90 - zenithDeg, curtainFraction);
        }

        AddDiffuse(0, sky.DomeWm2, curtainFraction);
        AddDiffuse(Parts, sky.HorizonWm2, curtainFraction);
        AddDiffuse(2 * Parts, sky.GroundWm2, curtainFraction);

        double covered = plantedFraction * (1 - Elementary.Exp(-extinction * leafAreaIndex));
        double crop = Math.Max(now[2], 0);
        forcing.SunUpperClearW = Math.Max(now[0], 0) * house.ClearAboveFraction;
        forcing.SunLowerClearW = Math.Max(now[0], 0) * (1 - house.ClearAboveFraction);
        forcing.SunCurtainW = Math.Max(now[1], 0);
        forcing.SunCanopyW = crop * covered;
        forcing.SunFloorW = crop * (1 - covered);
        forcing.SunUpperOpaqueInnerW = Math.Max(now[3], 0) * house.OpaqueAboveFraction;
        forcing.SunLowerOpaqueInnerW = Math.Max(now[3], 0) * (1 - house.OpaqueAboveFraction);
        forcing.SunAirAboveW = Math.Max(now[4], 0) * house.ClearAboveFraction;
        forcing.SunAirBelowW = Math.Max(now[4], 0) * (1 - house.ClearAboveFraction);
        Opaque(in sky, up, houseAzimuthDeg, ref forcing);
    }

    private void AddBeam(double wm2, double azimuthDeg, double elevationDeg, double curtain)
    {
        double a = azimuthDeg * perAzimuthDeg, e = Math.Max(elevationDeg, 0) * perElevationDeg;
        int i = (int)a, j = Math.Min((int)e, elevations - 2);
        double fa = a - i, fe = Math.Min(e - j, 1);
        i = i >= azimuths ? i - azimuths : i;
        int next = i + 1 >= azimuths ? 0 : i + 1;
        int p00 = (i * elevations + j) * Parts, p10 = (next * elevations + j) * Parts, p01 = p00 + Parts, p11 = p10 + Parts;
        double w00 = (1 - fa) * (1 - fe) * wm2, w10 = fa * (1 - fe) * wm2, w01 = (1 - fa) * fe * wm2, w11 = fa * fe * wm2;
        for (int k = 0; k < Parts; k++)
        {
            double whenOpen = w00 * open[p00 + k] + w10 * open[p10 + k] + w01 * open[p01 + k] + w11 * open[p11 + k];
            double value = whenOpen;
            if (curtain > 0)
            {
                double whenDrawn = w00 * drawn[p00 + k] + w10 * drawn[p10 + k] + w01 * drawn[p01 + k] + w11 * drawn[p11 + k];
                value += curtain * (whenDrawn - whenOpen);
            }

            now[k] += value;
        }
    }

    private void AddDiffuse(int row, double wm2, double curtain)
    {
        for (int k = 0; k < Parts; k++)
        {
            now[k] += wm2 * (openDiffuse[row + k] + curtain * (drawnDiffuse[row + k] - openDiffuse[row + k]));
        }
    }

    // House axes: x along the bearing, y 90° to its left; azimuth counts clockwise from x.
    private void Opaque(in SkySources sky, double up, double houseAzimuthDeg, ref HouseForcing forcing)
    {
        double flat = Math.Sqrt(Math.Max(1 - up * up, 0)), turn = houseAzimuthDeg * (Math.PI / 180);
        double x = flat * Elementary.Cos(turn), y = -flat * Elementary.Sin(turn);
        double above = 0, below = 0;
        foreach (OpaqueFace face in house.OpaqueFaces.Span)
        {
            double facing = Math.Max(face.NormalX * x + face.NormalY * y + face.NormalZ * up, 0);
            double wm2 = OuterAbsorptance * (sky.FromSunWm2 * facing + sky.DomeWm2 * (1 + face.NormalZ) / 2 + sky.GroundWm2 * (1 - face.NormalZ) / 2);
            above += wm2 * face.AboveM2;
            below += wm2 * face.BelowM2;
        }

        forcing.SunUpperOpaqueOuterW = above;
        forcing.SunLowerOpaqueOuterW = below;
    }

    private static double[] Flatten(EqList<GainRow> rows)
    {
        double[] flat = new double[rows.Count * Parts];
        for (int r = 0; r < rows.Count; r++)
        {
            GainRow row = rows[r];
            flat[r * Parts] = row.ApertureM2 * row.CoverShare;
            flat[r * Parts + 1] = row.ApertureM2 * row.CurtainShare;
            flat[r * Parts + 2] = row.ApertureM2 * row.CropPlaneShare;
            flat[r * Parts + 3] = row.ApertureM2 * row.OpaqueShare;
            flat[r * Parts + 4] = row.ApertureM2 * row.FrameShare;
        }

        return flat;
    }
}
