using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using Glazewright.Design.Contracts;
using Glazewright.Design.GainTables;
using Glazewright.Science.Climate;
using Glazewright.Science.Maths;
using Glazewright.Science.Weather;

namespace Glazewright.Design.Year;

/// <summary>Sun absorbed in each part of the house, minute by minute, through its gain tables.</summary>
internal sealed class YearSun
{
    private const int Parts = 5; // cover, curtain, crop plane, opaque walls, frame
    private const double OuterAbsorptance = 0.4; // light-coloured panel, weathered (common practice)

    private readonly double[] open, drawn;
    private readonly double[]? second, both; // with a second curtain that moves by itself
    private readonly double[] openDiffuse, drawnDiffuse, secondDiffuse, bothDiffuse; // three rows of Parts: dome, horizon, ground
    private readonly int azimuths, elevations;
    private readonly double perAzimuthDeg, perElevationDeg, bearingDeg, bearingSine, bearingCosine, albedo, extinction;
    private readonly double domeAboveM2, domeBelowM2, groundAboveM2, groundBelowM2; // opaque faces, by what they see, × absorptance
    private readonly double clearAbove, opaqueAbove;
    private readonly OpaqueFace[] faces;
    private readonly MinuteWeather weather;
    private double leavesOf = double.NaN, leavesCover;

    public YearSun(YearInput input, GainTable table, YearHouse house, MinuteWeather weather)
    {
        this.weather = weather;
        clearAbove = house.ClearAboveFraction;
        opaqueAbove = house.OpaqueAboveFraction;
        faces = [.. house.OpaqueFaces];
        bearingDeg = input.RangeBearingDeg - (360 * Math.Floor(input.RangeBearingDeg / 360));
        bearingSine = Elementary.Sin(bearingDeg * (Math.PI / 180));
        bearingCosine = Elementary.Cos(bearingDeg * (Math.PI / 180));
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
        second = table.SecondDrawn is { } alone ? Flatten(alone.Beam) : null;
        both = table.BothDrawn is { } pair ? Flatten(pair.Beam) : null;
        secondDiffuse = table.SecondDrawn is { } x ? Flatten([x.Sky, x.Horizon, x.Ground]) : [];
        bothDiffuse = table.BothDrawn is { } y ? Flatten([y.Sky, y.Horizon, y.Ground]) : [];
        domeAboveM2 = faces.Sum(f => OuterAbsorptance * f.AboveM2 * (1 + f.NormalZ) / 2);
        domeBelowM2 = faces.Sum(f => OuterAbsorptance * f.BelowM2 * (1 + f.NormalZ) / 2);
        groundAboveM2 = faces.Sum(f => OuterAbsorptance * f.AboveM2 * (1 - f.NormalZ) / 2);
        groundBelowM2 = faces.Sum(f => OuterAbsorptance * f.BelowM2 * (1 - f.NormalZ) / 2);
        if (open.Length != azimuths * elevations * Parts)
        {
            throw new ArgumentException("The gain table's rows do not match its steps.", nameof(table));
        }
    }

    /// <summary>Puts the sun of a minute into the forcing; not to be asked in the dark.</summary>
    /// <param name="minute">Minute of the year.</param>
    /// <param name="curtainFraction">How far the curtain is drawn.</param>
    /// <param name="secondFraction">How far the second curtain is drawn.</param>
    /// <param name="plantedFraction">Share of the floor that is crop.</param>
    /// <param name="leafAreaIndex">Leaf area over planted area.</param>
    /// <param name="forcing">The sun fields are set.</param>
    [MethodImpl(MethodImplOptions.NoInlining)]
    public void Into(int minute, double curtainFraction, double secondFraction, double plantedFraction, double leafAreaIndex, ref HouseForcing forcing)
    {
        double fromSun = weather.FromSunWm2[minute], dome = weather.DomeWm2[minute], horizon = weather.HorizonWm2[minute], ground = weather.GhiWm2[minute] * albedo;
        Absorbed now = default;
        double uncovered = 1 - curtainFraction, secondShare = 0, bothShare = 0;
        if (second is not null)
        {
            CurtainShares shares = CurtainShares.Of(curtainFraction, secondFraction);
            (uncovered, curtainFraction, secondShare, bothShare) = (shares.OpenFraction, shares.FirstFraction, shares.SecondFraction, shares.BothFraction);
        }

        Diffuse(openDiffuse, uncovered, dome, horizon, ground, ref now);
        Beam beam = default;
        if (fromSun > 0)
        {
            beam = Place(fromSun, weather.SunAzimuthDeg[minute] - bearingDeg, weather.SunElevationDeg[minute]);
            beam.Add(open, uncovered, ref now);
        }

        if (curtainFraction > 0)
        {
            Diffuse(drawnDiffuse, curtainFraction, dome, horizon, ground, ref now);
            if (fromSun > 0)
            {
                beam.Add(drawn, curtainFraction, ref now);
            }
        }

        if (secondShare > 0)
        {
            Diffuse(secondDiffuse, secondShare, dome, horizon, ground, ref now);
            if (fromSun > 0)
            {
                beam.Add(second!, secondShare, ref now);
            }
        }

        if (bothShare > 0)
        {
            Diffuse(bothDiffuse, bothShare, dome, horizon, ground, ref now);
            if (fromSun > 0)
            {
                beam.Add(both!, bothShare, ref now);
            }
        }

        if (leafAreaIndex != leavesOf)
        {
            leavesOf = leafAreaIndex;
            leavesCover = 1 - Elementary.Exp(-extinction * leafAreaIndex);
        }

        double covered = plantedFraction * leavesCover;
        Vector256<double> absorbed = Vector256.MaxNative(now.Four, Vector256<double>.Zero);
        double clear = absorbed.ToScalar(), crop = absorbed.GetElement(2), opaque = absorbed.GetElement(3), frame = double.MaxNative(now.Frame, 0);
        forcing.SunUpperClearW = clear * clearAbove;
        forcing.SunLowerClearW = clear * (1 - clearAbove);
        forcing.SunCurtainW = absorbed.GetElement(1);
        forcing.SunCanopyW = crop * covered;
        forcing.SunFloorW = crop * (1 - covered);
        forcing.SunUpperOpaqueInnerW = opaque * opaqueAbove;
        forcing.SunLowerOpaqueInnerW = opaque * (1 - opaqueAbove);
        forcing.SunAirAboveW = frame * clearAbove;
        forcing.SunAirBelowW = frame * (1 - clearAbove);
        Opaque(minute, fromSun, dome, ground, ref forcing);
    }

    /// <summary>What crop and floor would take with every curtain open, W: the light above a drawn one.</summary>
    /// <param name="minute">Minute of the year.</param>
    public double AboveCurtainW(int minute)
    {
        double global = weather.GhiWm2[minute], fromSun = weather.FromSunWm2[minute];
        if (global <= 0)
        {
            return 0;
        }

        Absorbed now = default;
        Diffuse(openDiffuse, 1, weather.DomeWm2[minute], weather.HorizonWm2[minute], global * albedo, ref now);
        if (fromSun > 0)
        {
            Place(fromSun, weather.SunAzimuthDeg[minute] - bearingDeg, weather.SunElevationDeg[minute]).Add(open, 1, ref now);
        }

        return Math.Max(now.Four.GetElement(2), 0);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static void Diffuse(double[] rows, double share, double dome, double horizon, double ground, ref Absorbed now)
    {
        ReadOnlySpan<double> all = rows.AsSpan(0, 3 * Parts);
        now.Four += share * (dome * Vector256.Create(all) + horizon * Vector256.Create(all[Parts..]) + ground * Vector256.Create(all[(2 * Parts)..]));
        now.Frame += share * (dome * all[Parts - 1] + horizon * all[2 * Parts - 1] + ground * all[3 * Parts - 1]);
    }

    // Between four rows of the table, which is read by the sun's place over the house.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private Beam Place(double wm2, double azimuthDeg, double elevationDeg)
    {
        // Both are within a turn.
        azimuthDeg = azimuthDeg < 0 ? azimuthDeg + 360 : azimuthDeg;
        double a = azimuthDeg * perAzimuthDeg, e = double.MaxNative(elevationDeg, 0) * perElevationDeg;
        int i = double.ConvertToIntegerNative<int>(a), j = Math.Min(double.ConvertToIntegerNative<int>(e), elevations - 2);
        double fa = a - i, fe = double.MinNative(e - j, 1);
        i = i >= azimuths ? i - azimuths : i;
        int next = i + 1 >= azimuths ? 0 : i + 1;
        return new Beam((i * elevations + j) * Parts, (next * elevations + j) * Parts, (1 - fa) * (1 - fe) * wm2, fa * (1 - fe) * wm2, (1 - fa) * fe * wm2, fa * fe * wm2);
    }

    // House axes: x along the bearing, y 90° to its left.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private void Opaque(int minute, double fromSun, double dome, double ground, ref HouseForcing forcing)
    {
        double above = dome * domeAboveM2 + ground * groundAboveM2, below = dome * domeBelowM2 + ground * groundBelowM2;
        if (fromSun > 0)
        {
            double up = weather.CosZenith[minute], east = weather.SunEast[minute], north = weather.SunNorth[minute];
            double x = north * bearingCosine + east * bearingSine, y = north * bearingSine - east * bearingCosine;
            foreach (ref readonly OpaqueFace face in faces.AsSpan())
            {
                double facing = face.NormalX * x + face.NormalY * y + face.NormalZ * up;
                double wm2 = facing > 0 ? OuterAbsorptance * fromSun * facing : 0;
                above += wm2 * face.AboveM2;
                below += wm2 * face.BelowM2;
            }
        }

        forcing.SunUpperOpaqueOuterW = above;
        forcing.SunLowerOpaqueOuterW = below;
    }

    private readonly record struct Beam(int At, int NextAt, double Weight, double NextWeight, double UpperWeight, double NextUpperWeight)
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public void Add(double[] rows, double share, ref Absorbed now)
        {
            ReadOnlySpan<double> here = rows.AsSpan(At, 2 * Parts), next = rows.AsSpan(NextAt, 2 * Parts);
            now.Four += share * (Weight * Vector256.Create(here) + NextWeight * Vector256.Create(next)
                + UpperWeight * Vector256.Create(here[Parts..]) + NextUpperWeight * Vector256.Create(next[Parts..]));
            now.Frame += share * (Weight * here[Parts - 1] + NextWeight * next[Parts - 1] + UpperWeight * here[2 * Parts - 1] + NextUpperWeight * next[2 * Parts - 1]);
        }
    }

    /// <summary>W absorbed: cover, curtain, crop plane and opaque walls side by side, then the frame.</summary>
    private struct Absorbed
    {
        public Vector256<double> Four;
        public double Frame;
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
