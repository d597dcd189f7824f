using Glazewright.Design.Contracts;

namespace Glazewright.Design.Behaviour;

/// <summary>What one way of cooling holds in a month.</summary>
/// <param name="HeldH">Hours in which the air at the fans is no hotter than the wish and the allowed rise, h.</param>
/// <param name="HumidHeldH">Of these, hours in which the mean humidity is also within ten points of the wish, h; all of them where no humidity is wished.</param>
/// <param name="WaterM3">Water drawn, m³: pad with bleed-off, fog as sprayed.</param>
public sealed record WayHeld(double HeldH, double HumidHeldH, double WaterM3);

/// <summary>One month of the weather year.</summary>
/// <param name="Month">1 to 12.</param>
/// <param name="AskedH">Hours in which the shut house would pass the wish, h.</param>
/// <param name="PadDropK">Mean drop of the air's temperature through the pad in those hours, K.</param>
/// <param name="Fans">Fans alone.</param>
/// <param name="Pad">Fans, and the wet wall when they do not hold.</param>
/// <param name="Fog">Fans, and the fog when they do not hold.</param>
/// <param name="Both">Fans, then the wet wall or the fog, then both together.</param>
public sealed record SeasonMonth(int Month, double AskedH, double PadDropK, WayHeld Fans, WayHeld Pad, WayHeld Fog, WayHeld Both);

/// <summary>What a season asks for beside fans. A closed case.</summary>
public enum SeasonWay
{
    /// <summary>Fans alone.</summary>
    Neither,

    /// <summary>Wet wall.</summary>
    Pad,

    /// <summary>Fog.</summary>
    Fog,

    /// <summary>Wet wall and fog.</summary>
    Both,
}

/// <summary>Wet wall, fog, both or neither, by month of the weather year.</summary>
/// <param name="PadInHouse">The house has a wet wall; else one of 80 % effectiveness is supposed.</param>
/// <param name="FogInHouse">The house has fog; else one that fills half of what the design day's air can take is supposed.</param>
/// <param name="Months">January first.</param>
/// <param name="Advice">What to have.</param>
/// <param name="Reason">Why, in words.</param>
/// <param name="Figures">Hours of the year, with their working.</param>
public sealed record SeasonResult(
    bool PadInHouse, bool FogInHouse, EqList<SeasonMonth> Months, SeasonWay Advice, string Reason, EqList<Figure> Figures);
