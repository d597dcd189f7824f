using Glazewright.Science.Sky;

namespace Glazewright.Design.GainTables;

/// <summary>Sun absorbed in one house at one moment, W.</summary>
/// <param name="CoverW">In the clear covering.</param>
/// <param name="CurtainW">In the curtain.</param>
/// <param name="CropPlaneW">In crop and floor.</param>
/// <param name="OpaqueW">In opaque walls and roof, inside.</param>
/// <param name="FrameW">In frame and bars.</param>
/// <param name="EscapeW">Turned away, or out again.</param>
public readonly record struct SunW(double CoverW, double CurtainW, double CropPlaneW, double OpaqueW, double FrameW, double EscapeW)
{
    /// <summary>Sum of two.</summary>
    public static SunW operator +(SunW a, SunW b) => new(
        a.CoverW + b.CoverW, a.CurtainW + b.CurtainW, a.CropPlaneW + b.CropPlaneW,
        a.OpaqueW + b.OpaqueW, a.FrameW + b.FrameW, a.EscapeW + b.EscapeW);

    /// <summary>Multiple.</summary>
    public static SunW operator *(double k, SunW a) => new(
        k * a.CoverW, k * a.CurtainW, k * a.CropPlaneW, k * a.OpaqueW, k * a.FrameW, k * a.EscapeW);
}

/// <summary>A gain set made ready for loops: absolute areas, one look-up a moment, only + − × ÷.</summary>
public sealed class GainField
{
    private readonly double _azimuthStepDeg;
    private readonly double _elevationStepDeg;
    private readonly int _azimuths;
    private readonly int _elevations;
    private readonly SunW[] _beam;
    private readonly SunW _sky;
    private readonly SunW _horizon;
    private readonly SunW _ground;

    /// <summary>Prepares a table.</summary>
    /// <param name="table">The table.</param>
    /// <param name="drawn">Curtain drawn (true) or open.</param>
    public GainField(GainTable table, bool drawn)
        : this(table, drawn ? table.CurtainDrawn : table.CurtainOpen)
    {
    }

    /// <summary>Prepares one of a table's sets.</summary>
    /// <param name="table">The table, for its steps.</param>
    /// <param name="set">The set.</param>
    public GainField(GainTable table, GainSet set)
    {
        _azimuthStepDeg = table.AzimuthStepDeg;
        _elevationStepDeg = table.ElevationStepDeg;
        _azimuths = (int)Math.Round(360 / table.AzimuthStepDeg);
        _elevations = (int)Math.Round(90 / table.ElevationStepDeg) + 1;
        _beam = [.. set.Beam.Select(Areas)];
        _sky = Areas(set.Sky);
        _horizon = Areas(set.Horizon);
        _ground = Areas(set.Ground);
    }

    /// <summary>Sun absorbed at a moment.</summary>
    /// <param name="sources">Sky of the moment, W/m².</param>
    /// <param name="sunAzimuthDeg">Sun's bearing, clockwise from true north.</param>
    /// <param name="elevationDeg">Sun's elevation; no beam when not above 0.</param>
    /// <param name="rangeBearingDeg">Bearing of +x.</param>
    /// <returns>W by where it ends.</returns>
    public SunW At(SkySources sources, double sunAzimuthDeg, double elevationDeg, double rangeBearingDeg)
    {
        SunW sum = sources.DomeWm2 * _sky + sources.HorizonWm2 * _horizon + sources.GroundWm2 * _ground;
        double fromSunWm2 = sources.FromSunWm2;
        return elevationDeg > 0 && fromSunWm2 > 0 ? sum + fromSunWm2 * Beam(sunAzimuthDeg - rangeBearingDeg, elevationDeg) : sum;
    }

    private SunW Beam(double azimuthDeg, double elevationDeg)
    {
        double place = azimuthDeg / _azimuthStepDeg;
        place -= _azimuths * Math.Floor(place / _azimuths);
        int i = Math.Min((int)place, _azimuths - 1);
        double wi = place - i;
        int next = i + 1 == _azimuths ? 0 : i + 1;
        double height = Math.Min(elevationDeg / _elevationStepDeg, _elevations - 1);
        int j = Math.Min((int)height, _elevations - 2);
        double wj = height - j;
        SunW low = (1 - wj) * _beam[i * _elevations + j] + wj * _beam[i * _elevations + j + 1];
        SunW high = (1 - wj) * _beam[next * _elevations + j] + wj * _beam[next * _elevations + j + 1];
        return (1 - wi) * low + wi * high;
    }

    private static SunW Areas(GainRow row) => row.ApertureM2
        * new SunW(row.CoverShare, row.CurtainShare, row.CropPlaneShare, row.OpaqueShare, row.FrameShare, row.EscapeShare);
}
