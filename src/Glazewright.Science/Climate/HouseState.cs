using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Glazewright.Science.Climate;

/// <summary>Everything a house remembers from one step to the next. A saved state, loaded again, goes on bit for bit.</summary>
public sealed class HouseState
{
    internal PerNode Temperature;
    internal PerSurface Film; // kg
    internal PerSurface CarriedW; // latent heat that a surface's temperature is still owed
    internal PerSurface SaturationPa, SaturationSlope; // at the temperatures of the surfaces and of the air below
    internal double SaturationAbovePa, SlopeAbove; // at the temperature of the air above
    internal double WaterBelow, WaterAbove; // humidity ratios
    internal double CarriedBelowW, CarriedAboveW; // of the airs

    /// <summary>How far the profile from intake to fans has developed: 0 stirred, 1 steady plug flow.</summary>
    internal double Profile;

    internal HouseState()
    {
    }

    /// <summary>Length of a saved state.</summary>
    public static int SavedLength => HouseNodes.SolvedCount + 4 * PerSurface.Lanes + 5;

    /// <summary>Air below the curtain (its mean along the house while fans pull), °C.</summary>
    public double AirBelowC => Temperature.AirBelow;

    /// <summary>Air above the curtain, °C.</summary>
    public double AirAboveC => Temperature.AirAbove;

    /// <summary>Curtain cloth, °C.</summary>
    public double CurtainC => Temperature.Curtain;

    /// <summary>Inner face of the clear shell above, °C.</summary>
    public double UpperClearInnerC => Temperature.Inner[0];

    /// <summary>Outer face of the clear shell above, °C.</summary>
    public double UpperClearOuterC => Temperature.Outer[0];

    /// <summary>Inner face of the clear shell below, °C.</summary>
    public double LowerClearInnerC => Temperature.Inner[1];

    /// <summary>Canopy, °C.</summary>
    public double CanopyC => Temperature.Canopy;

    /// <summary>Floor surface, °C.</summary>
    public double FloorC => Temperature.Floor;

    /// <summary>Slow mass, °C.</summary>
    public double MassC => Temperature.Mass;

    /// <summary>Humidity ratio below the curtain, kg/kg dry air.</summary>
    public double HumidityRatioBelow => WaterBelow;

    /// <summary>Humidity ratio above the curtain, kg/kg dry air.</summary>
    public double HumidityRatioAbove => WaterAbove;

    /// <summary>Relative humidity below the curtain, percent, 0 to 100 (a fogged moment above saturation counts as 100).</summary>
    /// <param name="pressurePa">Barometric pressure, Pa.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public double RelativeHumidityBelowPercent(double pressurePa) =>
        double.MinNative(100.0 * WaterBelow * pressurePa / ((0.621945 + WaterBelow) * SaturationBelowPa), 100.0);

    /// <summary>Relative humidity above the curtain, percent.</summary>
    /// <param name="pressurePa">Barometric pressure, Pa.</param>
    public double RelativeHumidityAbovePercent(double pressurePa) =>
        double.MinNative(100.0 * WaterAbove * pressurePa / ((0.621945 + WaterAbove) * SaturationAbovePa), 100.0);

    /// <summary>Water lying on a surface, kg.</summary>
    /// <param name="surface">Which surface.</param>
    public double FilmKg(WetSurface surface) => Film[(int)surface];

    /// <summary>Temperature of a ground layer, °C.</summary>
    /// <param name="layer">0 (top) to 5.</param>
    public double GroundC(int layer) => Temperature.Ground[layer];

    /// <summary>Writes the whole state.</summary>
    /// <param name="into">At least <see cref="SavedLength"/> long.</param>
    public void Save(Span<double> into)
    {
        Temperature.Row.CopyTo(into);
        into = into[HouseNodes.SolvedCount..];
        Span<double> film = Film, carried = CarriedW, pressure = SaturationPa, slope = SaturationSlope;
        film.CopyTo(into);
        carried.CopyTo(into[PerSurface.Lanes..]);
        pressure.CopyTo(into[(2 * PerSurface.Lanes)..]);
        slope.CopyTo(into[(3 * PerSurface.Lanes)..]);
        into = into[(4 * PerSurface.Lanes)..];
        (into[0], into[1], into[2], into[3], into[4]) = (WaterBelow, WaterAbove, CarriedBelowW, CarriedAboveW, Profile);
    }

    /// <summary>The same state for a part of the house: temperatures and humidities stay, what is counted in kg or W is shared out.</summary>
    /// <param name="share">Share of the house, above 0.</param>
    internal HouseState Part(double share)
    {
        HouseState part = new()
        {
            Temperature = Temperature,
            Film = Film,
            CarriedW = CarriedW,
            SaturationPa = SaturationPa,
            SaturationSlope = SaturationSlope,
            WaterBelow = WaterBelow,
            WaterAbove = WaterAbove,
            CarriedBelowW = CarriedBelowW * share,
            CarriedAboveW = CarriedAboveW * share,
            Profile = Profile,
        };
        for (int s = 0; s < HouseNodes.SurfaceCount; s++)
        {
            part.Film[s] *= share;
            part.CarriedW[s] *= share;
        }

        part.KeepAirSaturation();
        return part;
    }

    /// <summary>Reads a state saved before.</summary>
    /// <param name="saved">As written by <see cref="Save"/>.</param>
    public void Load(ReadOnlySpan<double> saved)
    {
        saved[..HouseNodes.SolvedCount].CopyTo(Temperature.Row);
        saved = saved[HouseNodes.SolvedCount..];
        saved[..HouseNodes.SurfaceCount].CopyTo(Film);
        saved.Slice(PerSurface.Lanes, PerSurface.Lanes).CopyTo(CarriedW);
        saved.Slice(2 * PerSurface.Lanes, PerSurface.Lanes).CopyTo(SaturationPa);
        saved.Slice(3 * PerSurface.Lanes, PerSurface.Lanes).CopyTo(SaturationSlope);
        saved = saved[(4 * PerSurface.Lanes)..];
        (WaterBelow, WaterAbove, CarriedBelowW, CarriedAboveW, Profile) = (saved[0], saved[1], saved[2], saved[3], saved[4]);
        KeepAirSaturation();
    }

    /// <summary>Saturation pressure at the temperature of the air below the curtain, Pa.</summary>
    public double SaturationBelowPa => SaturationPa[PerSurface.Lanes - 1];

    internal double SlopeBelow => SaturationSlope[PerSurface.Lanes - 1];

    internal void KeepAirSaturation()
    {
        SaturationPa[PerSurface.Lanes - 1] = VapourTable.PressurePa(Temperature.AirBelow, out SaturationSlope[PerSurface.Lanes - 1]);
        SaturationAbovePa = VapourTable.PressurePa(Temperature.AirAbove, out SlopeAbove);
    }

    /// <summary>Saturation at all surfaces and in both airs.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal void KeepSaturation()
    {
        SaturationPa.Shell = VapourTable.PressurePa(Temperature.Inner.Four, out Vector256<double> slope);
        SaturationSlope.Shell = slope;
        SaturationPa.Inside = VapourTable.PressurePa(Temperature.Inside, out slope);
        SaturationSlope.Inside = slope;
        SaturationAbovePa = VapourTable.PressurePa(Temperature.AirAbove, out SlopeAbove);
    }
}

/// <summary>Surfaces that can be wet.</summary>
public enum WetSurface
{
    /// <summary>Inner face of the clear shell above.</summary>
    UpperClear,

    /// <summary>Inner face of the clear shell below.</summary>
    LowerClear,

    /// <summary>Inner face of the opaque shell above.</summary>
    UpperOpaque,

    /// <summary>Inner face of the opaque shell below.</summary>
    LowerOpaque,

    /// <summary>Underside of the curtain.</summary>
    Curtain,

    /// <summary>Leaves.</summary>
    Canopy,

    /// <summary>Floor.</summary>
    Floor,
}

/// <summary>How many of each the house's network has.</summary>
internal static class HouseNodes
{
    public const int SolvedCount = 20;
    public const int PartCount = 4; // clear above, clear below, opaque above, opaque below
    public const int SurfaceCount = 7;
}
