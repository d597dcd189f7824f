namespace Glazewright.Mechanics.Sections;

/// <summary>Which rules a tube is checked by.</summary>
public enum TubeStandard
{
    /// <summary>Structural tube (HSS): AISC 360.</summary>
    Structural,

    /// <summary>Tube formed of gauge sheet: AISI S100.</summary>
    Gauge,
}
