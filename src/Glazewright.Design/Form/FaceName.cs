namespace Glazewright.Design.Form;

/// <summary>
/// Faces of a building in its own axes: x along the ridge from end 1 to end 2, y across from left to right, z up.
/// Left and right are as on the section, which is drawn looking from end 2 towards end 1. Compass words are derived.
/// </summary>
public enum FaceName
{
    /// <summary>Side wall at y = 0.</summary>
    Left,

    /// <summary>Side wall at y = width.</summary>
    Right,

    /// <summary>End wall at x = 0.</summary>
    End1,

    /// <summary>End wall at x = length.</summary>
    End2,

    /// <summary>Roof slope that rises from the left eave.</summary>
    RoofLeft,

    /// <summary>Roof slope that rises from the right eave.</summary>
    RoofRight,

    /// <summary>The floor.</summary>
    Floor,
}
