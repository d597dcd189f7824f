using Glazewright.Science.Guards;

namespace Glazewright.Science.Light;

/// <summary>Nodes of sun direction in house coordinates: azimuth anticlockwise from +x in even steps, elevations finer near the horizon.</summary>
/// <remarks>Node index = elevation index × number of azimuths + azimuth index. Values between nodes are bilinear in the two angles.</remarks>
public sealed class SunGrid
{
    private readonly double[] elevationsDeg;

    private SunGrid(int azimuths, double[] elevationsDeg)
    {
        Azimuths = azimuths;
        this.elevationsDeg = elevationsDeg;
    }

    /// <summary>72 azimuths; 0 to 10° by 2.5°, then by 5° to the zenith.</summary>
    public static SunGrid Standard { get; } = new(
        72, [0, 2.5, 5, 7.5, 10, 15, 20, 25, 30, 35, 40, 45, 50, 55, 60, 65, 70, 75, 80, 85, 90]);

    /// <summary>A grid of even steps in both angles.</summary>
    /// <param name="azimuths">How many azimuths, 4 to 360.</param>
    /// <param name="elevationSteps">Steps from the horizon to the zenith, 2 to 180.</param>
    /// <returns>The grid.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range.</exception>
    public static SunGrid Even(int azimuths, int elevationSteps)
    {
        Within.Require(azimuths, 4, 360);
        Within.Require(elevationSteps, 2, 180);
        return new SunGrid(azimuths, [.. Enumerable.Range(0, elevationSteps + 1).Select(i => 90.0 * i / elevationSteps)]);
    }

    /// <summary>How many azimuths.</summary>
    public int Azimuths { get; }

    /// <summary>Elevation nodes, degrees, rising from 0 to 90.</summary>
    public ReadOnlySpan<double> ElevationsDeg => elevationsDeg;

    /// <summary>How many nodes.</summary>
    public int Count => Azimuths * elevationsDeg.Length;

    /// <summary>Unit vector towards the sun at a node.</summary>
    /// <param name="node">0 to Count − 1.</param>
    /// <returns>Unit vector in house coordinates.</returns>
    public Vector3d Direction(int node) =>
        Vector3d.Towards(node % Azimuths * 360.0 / Azimuths, elevationsDeg[node / Azimuths]);

    /// <summary>Four nodes and their weights around a direction.</summary>
    /// <param name="houseAzimuthDeg">Any finite value.</param>
    /// <param name="elevationDeg">Clamped to 0..90.</param>
    /// <returns>Weights that sum to 1.</returns>
    public SunGridPlace At(double houseAzimuthDeg, double elevationDeg)
    {
        double place = houseAzimuthDeg * Azimuths / 360.0;
        double turned = place - (Azimuths * Math.Floor(place / Azimuths));
        int a0 = Math.Min((int)turned, Azimuths - 1);
        double wa = turned - a0;
        int a1 = a0 + 1 == Azimuths ? 0 : a0 + 1;

        double e = Math.Clamp(elevationDeg, 0, 90);
        int row = 1;
        while (row < elevationsDeg.Length - 1 && e > elevationsDeg[row])
        {
            row++;
        }

        double we = (e - elevationsDeg[row - 1]) / (elevationsDeg[row] - elevationsDeg[row - 1]);
        int low = (row - 1) * Azimuths;
        int high = row * Azimuths;
        return new SunGridPlace(
            low + a0, low + a1, high + a0, high + a1,
            (1 - we) * (1 - wa), (1 - we) * wa, we * (1 - wa), we * wa);
    }
}

/// <summary>Four nodes with weights.</summary>
/// <param name="Node0">Lower elevation, first azimuth.</param>
/// <param name="Node1">Lower elevation, second azimuth.</param>
/// <param name="Node2">Upper elevation, first azimuth.</param>
/// <param name="Node3">Upper elevation, second azimuth.</param>
/// <param name="Weight0Fraction">Of node 0.</param>
/// <param name="Weight1Fraction">Of node 1.</param>
/// <param name="Weight2Fraction">Of node 2.</param>
/// <param name="Weight3Fraction">Of node 3.</param>
public readonly record struct SunGridPlace(
    int Node0, int Node1, int Node2, int Node3,
    double Weight0Fraction, double Weight1Fraction, double Weight2Fraction, double Weight3Fraction);
