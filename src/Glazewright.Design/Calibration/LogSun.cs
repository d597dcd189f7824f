using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.GainTables;
using Glazewright.Design.Year;
using Glazewright.Science.Climate;
using Glazewright.Science.Sky;
using Glazewright.Science.Sun;

namespace Glazewright.Design.Calibration;

/// <summary>What the sun of each step of a log does inside, W, with the curtain open and drawn.</summary>
internal sealed class LogSun
{
    private const double UmolPerJoule = 2.05; // photosynthetic photons of global sunlight
    private const double ToAirFraction = 0.1; // caught by construction and handed to the air (Vanthoor 2011, from memory)
    private const double CoverFraction = 0.06;

    private LogSun(int count)
    {
        GlobalWm2 = new double[count];
        CoverW = new double[count];
        CropW = new double[count];
        CropDrawnW = new double[count];
        AirW = new double[count];
        OpaqueW = new double[count];
        CurtainDrawnW = new double[count];
    }

    /// <summary>Global light outside, W/m²; guessed where none is logged.</summary>
    public double[] GlobalWm2 { get; }

    public double[] CoverW { get; }

    public double[] CropW { get; }

    public double[] CropDrawnW { get; }

    public double[] AirW { get; }

    public double[] OpaqueW { get; }

    public double[] CurtainDrawnW { get; }

    /// <summary>Sun that passes the second curtain.</summary>
    public double SecondTransmittance { get; private init; } = 0.5;

    /// <summary>Sun at the crop with the second curtain alone drawn, and with both; null where only its transmittance is known.</summary>
    public double[]? CropSecondW { get; private init; }

    public double[]? CropBothW { get; private init; }

    /// <summary>Sun at the crop under the curtains as they stand, W.</summary>
    /// <param name="i">Step.</param>
    /// <param name="s">What lies under which.</param>
    public double CropUnderW(int i, CurtainShares s) => s.OpenFraction * CropW[i] + s.FirstFraction * CropDrawnW[i]
        + s.SecondFraction * (CropSecondW?[i] ?? SecondTransmittance * CropW[i]) + s.BothFraction * (CropBothW?[i] ?? SecondTransmittance * CropDrawnW[i]);

    /// <summary>Sun taken by the cloths, W: half of what the second does not pass.</summary>
    /// <param name="i">Step.</param>
    /// <param name="s">What lies under which.</param>
    public double InClothsW(int i, CurtainShares s) =>
        (s.FirstFraction + s.BothFraction) * CurtainDrawnW[i] + 0.5 * (1 - SecondTransmittance) * (s.SecondFraction * CropW[i] + s.BothFraction * CropDrawnW[i]);

    /// <summary>Share of the cover's sun that meets the air above.</summary>
    public double AboveFraction { get; private init; } = 1;

    /// <summary>A house by its sizes: one share of the light for every direction.</summary>
    public static LogSun Of(PlainHouse h, HouseLog log)
    {
        LogSun sun = new(log.Count) { SecondTransmittance = h.Second.SunTransmittance, AboveFraction = h.RoofShare / (h.RoofShare + h.WallShare) };
        ReadOnlySpan<double> global = log.Of(LoggedQuantity.OutsideRadiation), inside = log.Of(LoggedQuantity.InsideLight);
        for (int i = 0; i < log.Count; i++)
        {
            double outside = global.Length > 0 ? Math.Max(global[i], 0)
                : inside.Length > 0 ? Math.Max(inside[i], 0) / UmolPerJoule / h.SunFraction
                : Guessed(h, log, i);
            double shares = h.SunFraction * outside * h.FloorM2;
            sun.GlobalWm2[i] = outside;
            sun.CropW[i] = (1 - ToAirFraction) * shares;
            sun.AirW[i] = ToAirFraction * shares;
            sun.CropDrawnW[i] = sun.CropW[i] * h.First.SunTransmittance;
            sun.CurtainDrawnW[i] = 0.5 * shares * (1 - h.First.SunTransmittance);
            sun.CoverW[i] = CoverFraction * outside * h.FloorM2;
        }

        return sun;
    }

    /// <summary>A house of a job: global light split into beam and diffuse, each through the house's gain table.</summary>
    public static LogSun Of(YearInput input, GainTable table, YearHouse house, Site site, HouseLog log)
    {
        bool two = table is { SecondDrawn: not null, BothDrawn: not null };
        LogSun sun = new(log.Count)
        {
            AboveFraction = house.ClearAboveFraction,
            CropSecondW = two ? new double[log.Count] : null,
            CropBothW = two ? new double[log.Count] : null,
            SecondTransmittance = two ? table.SecondDrawn!.Sky.CropPlaneShare / Math.Max(table.CurtainOpen.Sky.CropPlaneShare, 1e-6) : 0.5,
        };
        GainField? second = two ? new(table, table.SecondDrawn!) : null, both = two ? new(table, table.BothDrawn!) : null;
        GainField open = new(table, drawn: false), drawn = new(table, drawn: true);
        ReadOnlySpan<double> global = log.Of(LoggedQuantity.OutsideRadiation), pressure = log.Of(LoggedQuantity.Pressure);
        double standardPa = AirMass.PressureAtPa(site.ElevationM);
        for (int i = 0; i < log.Count; i++)
        {
            double outside = sun.GlobalWm2[i] = Math.Clamp(global[i], 0, 1600);
            if (outside <= 0)
            {
                continue;
            }

            // The middle of the step that ends here.
            SunPosition at = SolarPosition.At(log.JulianDayUt(i) - log.StepMinutes / 2880.0, site.LatitudeDeg, site.LongitudeDeg, site.ElevationM, standardPa, 15, SolarPosition.DeltaTSeconds);
            double above = Extraterrestrial.NormalAtDistanceWm2(at.DistanceAu);
            BeamAndDiffuse split = DiscSplit.Split(outside, Math.Clamp(at.ZenithDeg, 0, 180), above, pressure.Length > 0 ? pressure[i] : standardPa);
            double up = Math.Cos(at.ZenithDeg * Math.PI / 180);
            SkySources sky = PerezSky.Kernel(
                split.BeamNormalWm2, split.DiffuseHorizontalWm2, outside, at.ZenithDeg, up, AirMass.RelativeKastenYoung(Math.Min(at.ZenithDeg, 90)), above, input.AlbedoFraction);
            sun.Add(
                i, open.At(sky, at.AzimuthDeg, 90 - at.ZenithDeg, input.RangeBearingDeg), drawn.At(sky, at.AzimuthDeg, 90 - at.ZenithDeg, input.RangeBearingDeg));
            if (second is not null && both is not null)
            {
                sun.CropSecondW![i] = second.At(sky, at.AzimuthDeg, 90 - at.ZenithDeg, input.RangeBearingDeg).CropPlaneW;
                sun.CropBothW![i] = both.At(sky, at.AzimuthDeg, 90 - at.ZenithDeg, input.RangeBearingDeg).CropPlaneW;
            }
        }

        return sun;
    }

    private void Add(int i, SunW open, SunW drawn)
    {
        CoverW[i] = open.CoverW;
        CropW[i] = open.CropPlaneW;
        CropDrawnW[i] = drawn.CropPlaneW;
        AirW[i] = open.FrameW;
        OpaqueW[i] = open.OpaqueW;
        CurtainDrawnW[i] = drawn.CurtainW;
    }

    private static double Guessed(PlainHouse h, HouseLog log, int i)
    {
        SunPosition at = SolarPosition.At(log.JulianDayUt(i), h.LatitudeDeg, h.LongitudeDeg, h.ElevationM, 101_325, 15, SolarPosition.DeltaTSeconds);
        return h.ClearnessFraction * Extraterrestrial.NormalAtDistanceWm2(at.DistanceAu) * Math.Max(0, Math.Cos(at.ZenithDeg * Math.PI / 180));
    }
}
