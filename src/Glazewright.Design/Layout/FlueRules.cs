using Glazewright.Design.Contracts;
using Glazewright.Design.Form;

namespace Glazewright.Design.Layout;

/// <summary>Pipe sizes and clearances of vents by fuel input. The maker's table and the adopted code replace all of them.</summary>
internal static class FlueRules
{
    public const double FootM = 0.3048;
    public const double ElbowM = 5 * FootM;
    public const double AboveSnowM = FootM;
    public const double FacingM = 10 * FootM;

    /// <summary>Fall of a level run over its length: 1/4 in a foot.</summary>
    public const double SlopeRatio = 1.0 / 48;

    private const double KiloBtuPerHourW = 293.07107;
    private const double ForcedAboveM = 3 * FootM;
    private const double ForcedWithinM = 10 * FootM;
    private const double BesideM = 4 * FootM;

    public static Source Assumed { get; } = new Source.CommonPractice("vent pipe sizes of unit heaters, an assumption of ours: the maker's table replaces it");

    public static Source Terminals { get; } = new Source.Standard(
        "NFPA 54 / IFGC", "through-the-wall vent terminals, as makers' clearance tables quote it", Source.Mark.ReadSecondHand);

    public static Source Slope { get; } = new Source.Standard("NFPA 54 / IFGC", "slope of vent connectors, 1/4 in a foot", Source.Mark.FromMemory);

    /// <summary>Diameter of the vent and the longest equivalent length it may have, m; zero above 400 kBtu/h.</summary>
    public static (double DiameterM, double MostM) Pipe(double inputW) => (inputW / KiloBtuPerHourW) switch
    {
        <= 120.0001 => (4 * 0.0254, 30 * FootM),
        <= 200.0001 => (5 * 0.0254, 40 * FootM),
        <= 400.0001 => (6 * 0.0254, 50 * FootM),
        _ => (0, 0),
    };

    /// <summary>Least distance from a direct-vent terminal to an air opening, m.</summary>
    public static double DirectVentM(double inputW) => (inputW / KiloBtuPerHourW) switch
    {
        <= 10.0001 => 6 * 0.0254,
        <= 50.0001 => 9 * 0.0254,
        _ => 12 * 0.0254,
    };

    /// <summary>Whether a direct-vent terminal at a point keeps its rule to an opening.</summary>
    public static bool Keeps(Point3 at, AirOpening opening, double inputW) =>
        !(opening.Forced && NearForced(at, opening)) && opening.DistanceM(at) >= DirectVentM(inputW) - 1e-6;

    /// <summary>
    /// Height a gravity vent's cap must have for an opening, m: 1 ft above one less than 4 ft beside it, 3 ft above one within 10 ft that fans blow or draw air
    /// in by (louvers and wet wall counted too: our reading, the safe side); zero when it is far enough.
    /// </summary>
    public static double LeastCapM(Point3 at, AirOpening opening)
    {
        double beside = opening.LevelM(at);
        return (opening.Forced || opening.Drawn) && beside < ForcedWithinM - 1e-6 ? opening.ToZM + ForcedAboveM
            : beside < BesideM - 1e-6 ? opening.ToZM + FootM
            : 0;
    }

    /// <summary>Near enough to a drawn or forced inlet, or to an exhaust fan's stream (4 ft, common practice), to take another place where one is free.</summary>
    public static bool TooNear(Point3 at, AirOpening opening) =>
        ((opening.Drawn || opening.Forced) && NearForced(at, opening)) || (opening.Name == AirOpening.ExhaustFan && opening.DistanceM(at) < BesideM - 1e-6);

    /// <summary>Within 10 ft of an opening and less than 3 ft above it.</summary>
    public static bool NearForced(Point3 at, AirOpening opening) =>
        opening.LevelM(at) < ForcedWithinM - 1e-6 && at.ZM < opening.ToZM + ForcedAboveM - 1e-6;
}

/// <summary>Something air goes in by: a box in the house's own axes.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Corner">Least corner, m.</param>
/// <param name="Size">Size, m.</param>
/// <param name="Forced">A fan blows air in here.</param>
/// <param name="Drawn">Exhaust fans draw air in here.</param>
internal sealed record AirOpening(string Name, Point3 Corner, Point3 Size, bool Forced, bool Drawn)
{
    public const string ExhaustFan = "exhaust fan";

    public double FromZM => Corner.ZM;

    public double ToZM => Corner.ZM + Size.ZM;

    /// <summary>Distance in plan, m.</summary>
    public double LevelM(Point3 at) => double.Hypot(Off(at.XM, Corner.XM, Size.XM), Off(at.YM, Corner.YM, Size.YM));

    /// <summary>Distance straight, m.</summary>
    public double DistanceM(Point3 at) => double.Hypot(LevelM(at), Off(at.ZM, Corner.ZM, Size.ZM));

    private static double Off(double at, double from, double size) => Math.Max(Math.Max(from - at, at - from - size), 0);
}
