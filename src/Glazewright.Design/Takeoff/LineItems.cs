namespace Glazewright.Design.Takeoff;

/// <summary>Item ids that Price replaces by what Cuts really buys: their quantities in the takeoff are net of cutting.</summary>
public static class LineItems
{
    /// <summary>Frame tube, kg; the line's label is the section.</summary>
    public const string Tube = "frame/tube";

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
}
