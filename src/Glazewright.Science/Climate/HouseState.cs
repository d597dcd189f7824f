using Glazewright.Science.Network;

namespace Glazewright.Science.Climate;

/// <summary>Everything a house remembers from one step to the next. A saved state, loaded again, goes on bit for bit.</summary>
public sealed class HouseState
{
    private readonly double[] remembered = new double[HouseNodes.RememberedCount];

    internal HouseState(NetworkState network) => Network = network;

    /// <summary>Length of a saved state.</summary>
    public static int SavedLength => HouseNodes.SolvedCount + HouseNodes.RememberedCount;

    /// <summary>Air below the curtain (its mean along the house while fans pull), °C.</summary>
    public double AirBelowC => Network.TemperatureC[HouseNodes.AirBelow];

    /// <summary>Air above the curtain, °C.</summary>
    public double AirAboveC => Network.TemperatureC[HouseNodes.AirAbove];

    /// <summary>Curtain cloth, °C.</summary>
    public double CurtainC => Network.TemperatureC[HouseNodes.Curtain];

    /// <summary>Inner face of the clear shell above, °C.</summary>
    public double UpperClearInnerC => Network.TemperatureC[HouseNodes.Inner];

    /// <summary>Outer face of the clear shell above, °C.</summary>
    public double UpperClearOuterC => Network.TemperatureC[HouseNodes.Outer];

    /// <summary>Inner face of the clear shell below, °C.</summary>
    public double LowerClearInnerC => Network.TemperatureC[HouseNodes.Inner + 1];

    /// <summary>Canopy, °C.</summary>
    public double CanopyC => Network.TemperatureC[HouseNodes.Canopy];

    /// <summary>Floor surface, °C.</summary>
    public double FloorC => Network.TemperatureC[HouseNodes.Floor];

    /// <summary>Slow mass, °C.</summary>
    public double MassC => Network.TemperatureC[HouseNodes.Mass];

    /// <summary>Humidity ratio below the curtain, kg/kg dry air.</summary>
    public double HumidityRatioBelow => Water[0];

    /// <summary>Humidity ratio above the curtain, kg/kg dry air.</summary>
    public double HumidityRatioAbove => Water[1];

    /// <summary>Relative humidity below the curtain, percent, 0 to 100 (a fogged moment above saturation counts as 100).</summary>
    /// <param name="pressurePa">Barometric pressure, Pa.</param>
    public double RelativeHumidityBelowPercent(double pressurePa) =>
        Math.Min(100.0 * VapourTable.VapourPressurePa(HumidityRatioBelow, pressurePa) / VapourTable.PressurePa(AirBelowC), 100.0);

    /// <summary>Relative humidity above the curtain, percent.</summary>
    /// <param name="pressurePa">Barometric pressure, Pa.</param>
    public double RelativeHumidityAbovePercent(double pressurePa) =>
        Math.Min(100.0 * VapourTable.VapourPressurePa(HumidityRatioAbove, pressurePa) / VapourTable.PressurePa(AirAboveC), 100.0);

    /// <summary>Water lying on a surface, kg.</summary>
    /// <param name="surface">Which surface.</param>
    public double FilmKg(WetSurface surface) => Water[HouseNodes.FilmStart + (int)surface];

    /// <summary>Temperature of a ground layer, °C.</summary>
    /// <param name="layer">0 (top) to 5.</param>
    public double GroundC(int layer) => Network.TemperatureC[HouseNodes.Ground + layer];

    internal NetworkState Network { get; }

    internal Span<double> Water => remembered;

    internal Span<double> Film => remembered.AsSpan(HouseNodes.FilmStart, HouseNodes.SurfaceCount);

    internal Span<double> CarriedW => remembered.AsSpan(HouseNodes.CarriedStart, HouseNodes.SurfaceCount + 2);

    internal Span<double> SaturationPa => remembered.AsSpan(HouseNodes.SaturationStart, HouseNodes.SurfaceCount);

    internal Span<double> SaturationSlope => remembered.AsSpan(HouseNodes.SlopeStart, HouseNodes.SurfaceCount);

    /// <summary>How far the profile from intake to fans has developed: 0 stirred, 1 steady plug flow.</summary>
    internal double Profile
    {
        get => remembered[HouseNodes.ProfileAt];
        set => remembered[HouseNodes.ProfileAt] = value;
    }

    /// <summary>Writes the whole state.</summary>
    /// <param name="into">At least <see cref="SavedLength"/> long.</param>
    public void Save(Span<double> into)
    {
        Network.TemperatureC.AsSpan(0, HouseNodes.SolvedCount).CopyTo(into);
        remembered.CopyTo(into[HouseNodes.SolvedCount..]);
    }

    /// <summary>Reads a state saved before.</summary>
    /// <param name="saved">As written by <see cref="Save"/>.</param>
    public void Load(ReadOnlySpan<double> saved)
    {
        saved[..HouseNodes.SolvedCount].CopyTo(Network.TemperatureC);
        saved.Slice(HouseNodes.SolvedCount, HouseNodes.RememberedCount).CopyTo(remembered);
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

/// <summary>Places of the nodes in the house's network and of what else it remembers.</summary>
internal static class HouseNodes
{
    public const int AirBelow = 0;
    public const int AirAbove = 1;
    public const int Curtain = 2;
    public const int Inner = 3; // four shell parts: clear above, clear below, opaque above, opaque below
    public const int Outer = 7;
    public const int Canopy = 11;
    public const int Floor = 12;
    public const int Ground = 13;
    public const int Mass = 19;
    public const int SolvedCount = 20;
    public const int Outside = 20;
    public const int Sky = 21;
    public const int Deep = 22;
    public const int Intake = 23;
    public const int Latent = 24;
    public const int PartCount = 4;
    public const int SurfaceCount = 7;

    public const int FilmStart = 2;
    public const int CarriedStart = FilmStart + SurfaceCount;
    public const int SaturationStart = CarriedStart + SurfaceCount + 2;
    public const int SlopeStart = SaturationStart + SurfaceCount;
    public const int ProfileAt = SlopeStart + SurfaceCount;
    public const int RememberedCount = ProfileAt + 1;

    /// <summary>Which node a wet surface is.</summary>
    public static readonly int[] NodeOfSurface = [Inner, Inner + 1, Inner + 2, Inner + 3, Curtain, Canopy, Floor];

    /// <summary>0 where the surface meets the air below the curtain, 1 above.</summary>
    public static readonly int[] ZoneOfSurface = [1, 0, 1, 0, 0, 0, 0];
}
