using Glazewright.Science.Guards;

namespace Glazewright.Science.Light.Shadows;

/// <summary>A rectangle that light falls on, in cells: a level plane over the benches, a wall.</summary>
/// <remarks>Cells run along the first axis fastest. Light counts from the side that the two axes turn towards (first × second).</remarks>
public sealed class ReceivingPlane
{
    private ReceivingPlane(Vector3d origin, Vector3d alongU, Vector3d alongV, double lengthUM, double lengthVM, int cellsU, int cellsV)
    {
        Origin = origin;
        AlongU = alongU;
        AlongV = alongV;
        Normal = alongU.Cross(alongV);
        LengthUM = lengthUM;
        LengthVM = lengthVM;
        CellsU = cellsU;
        CellsV = cellsV;
    }

    /// <summary>Corner where both axes start.</summary>
    public Vector3d Origin { get; }

    /// <summary>First axis, unit.</summary>
    public Vector3d AlongU { get; }

    /// <summary>Second axis, unit.</summary>
    public Vector3d AlongV { get; }

    /// <summary>Towards the light, unit.</summary>
    public Vector3d Normal { get; }

    /// <summary>Length along the first axis, m.</summary>
    public double LengthUM { get; }

    /// <summary>Length along the second axis, m.</summary>
    public double LengthVM { get; }

    /// <summary>Cells along the first axis.</summary>
    public int CellsU { get; }

    /// <summary>Cells along the second axis.</summary>
    public int CellsV { get; }

    /// <summary>How many cells.</summary>
    public int Count => CellsU * CellsV;

    /// <summary>A plane.</summary>
    /// <param name="origin">Corner.</param>
    /// <param name="alongU">First axis, any length above 0.</param>
    /// <param name="alongV">Second axis, square to the first.</param>
    /// <param name="lengthUM">Above 0, m.</param>
    /// <param name="lengthVM">Above 0, m.</param>
    /// <param name="cellsU">1 to 4096.</param>
    /// <param name="cellsV">1 to 4096.</param>
    /// <returns>The plane.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range, or axes not square.</exception>
    public static ReceivingPlane Of(
        Vector3d origin, Vector3d alongU, Vector3d alongV, double lengthUM, double lengthVM, int cellsU, int cellsV)
    {
        Within.Require(lengthUM, 1e-6, 1e5);
        Within.Require(lengthVM, 1e-6, 1e5);
        Within.Require(cellsU, 1, 4096);
        Within.Require(cellsV, 1, 4096);
        Vector3d u = alongU.Unit();
        Vector3d v = alongV.Unit();
        Within.Require(u.Dot(v), -1e-9, 1e-9);
        return new ReceivingPlane(origin, u, v, lengthUM, lengthVM, cellsU, cellsV);
    }

    /// <summary>Middle of a cell.</summary>
    /// <param name="cell">0 to Count − 1.</param>
    /// <returns>The point.</returns>
    public Vector3d Middle(int cell) => Origin
        + (((cell % CellsU) + 0.5) * LengthUM / CellsU * AlongU)
        + (((cell / CellsU) + 0.5) * LengthVM / CellsV * AlongV);
}
