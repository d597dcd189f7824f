namespace Glazewright.Design.Brief;

/// <summary>What a curtain is there for.</summary>
public enum CurtainPurpose
{
    /// <summary>Keeps heat in at night.</summary>
    Energy,

    /// <summary>Keeps sun out by day.</summary>
    Shade,

    /// <summary>Darkens for short days.</summary>
    Blackout,
}

/// <summary>A second curtain with its own cloth, drive and command; it hangs under the first.</summary>
/// <param name="Purpose">What it is there for.</param>
/// <param name="Entry">Catalogue id of the cloth.</param>
/// <param name="BelowM">How far under the first it hangs, m.</param>
/// <param name="SolarTransmittanceFraction">Sun let through: typed, or the cloth's.</param>
/// <param name="SolarReflectanceFraction">Sun turned back.</param>
/// <param name="EmissivityFraction">Long-wave emissivity, both sides.</param>
/// <param name="OpennessFraction">Open area of the weave.</param>
/// <param name="DarkFrom">A blackout is drawn from here.</param>
/// <param name="DarkTo">Until here.</param>
public sealed record SecondCurtain(
    CurtainPurpose Purpose,
    string Entry,
    double BelowM,
    double SolarTransmittanceFraction,
    double SolarReflectanceFraction,
    double EmissivityFraction,
    double OpennessFraction,
    DayMark DarkFrom,
    DayMark DarkTo);
