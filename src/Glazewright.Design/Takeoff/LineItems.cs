namespace Glazewright.Design.Takeoff;

/// <summary>Item ids that other stages ask for. Those of tube, sheet and panel Price replaces by what Cuts really buys: their quantities in the takeoff are net of cutting.</summary>
public static class LineItems
{
    /// <summary>Frame tube, kg; the line's label is the section.</summary>
    public const string Tube = "frame/tube";

    /// <summary>Joint of ridge, eave or tie: counted as it is.</summary>
    public const string Knee = "frame/knee";

    /// <summary>Clip of a member along on a frame: counted as it is.</summary>
    public const string Clip = "frame/clip";

    /// <summary>Joint of an opening's framing: counted as it is.</summary>
    public const string OpeningJoint = "frame/opening-joint";

    /// <summary>Base plate: counted as it is.</summary>
    public const string Base = "frame/base";

    /// <summary>Rod-braced bay: counted as it is.</summary>
    public const string Bracing = "frame/bracing";

    /// <summary>Glazing sheet by kind: <c>glazing/</c> and the kind; the line's label is the kind.</summary>
    public const string SheetPrefix = "glazing/sheet-";

    /// <summary>Item of a sheet kind.</summary>
    /// <param name="kind">Cover kind id.</param>
    /// <returns>Price-book item id.</returns>
    public static string Sheet(string kind) => SheetPrefix + kind;

    /// <summary>Item of a panel kind.</summary>
    /// <param name="kind">Cover kind id.</param>
    /// <returns>Price-book item id.</returns>
    public static string Panel(string kind) => $"panels/{kind}";

    /// <summary>Fan item by its size in whole half-feet (6 in steps).</summary>
    /// <param name="diameterM">Diameter, m.</param>
    /// <returns>Price-book item id (<c>cooling/fan-36</c>).</returns>
    public static string Fan(double diameterM) =>
        FormattableString.Invariant($"cooling/fan-{Math.Clamp((int)Math.Round(diameterM / 0.1524), 2, 12) * 6}");

    /// <summary>Vent pipe item by diameter: listed sealed pipe of a direct vent, or type B.</summary>
    /// <param name="gravity">Type B.</param>
    /// <param name="diameterM">Diameter, m; zero (the maker's) counts as 8 in.</param>
    /// <returns>Price-book item id (<c>heating/b-vent-5</c>).</returns>
    public static string Vent(bool gravity, double diameterM) =>
        FormattableString.Invariant($"heating/{(gravity ? "b-vent" : "vent-pipe")}-{(diameterM > 0 ? Math.Clamp((int)Math.Round(diameterM / 0.0254), 3, 8) : 8)}");
}
