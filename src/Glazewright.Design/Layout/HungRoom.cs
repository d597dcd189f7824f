using Glazewright.Design.Contracts;
using Glazewright.Design.Form;

namespace Glazewright.Design.Layout;

/// <summary>A box in the house's own axes.</summary>
/// <param name="Corner">Corner with the least coordinates, m.</param>
/// <param name="Size">Size along x, y, z, m.</param>
internal readonly record struct HungBox(Point3 Corner, Point3 Size)
{
    /// <summary>Whether two boxes share room, or come nearer than a distance to the sides and a distance up and down.</summary>
    public bool Meets(HungBox other, double besideM = 0, double overM = 0) =>
        Near(Corner.XM, Size.XM, other.Corner.XM, other.Size.XM, besideM)
        && Near(Corner.YM, Size.YM, other.Corner.YM, other.Size.YM, besideM)
        && Near(Corner.ZM, Size.ZM, other.Corner.ZM, other.Size.ZM, overM);

    private static bool Near(double a, double aSize, double b, double bSize, double apartM) =>
        a < b + bSize + apartM - 1e-6 && b < a + aSize + apartM - 1e-6;
}

/// <summary>
/// The room under the ceiling: what hangs there so far, and the free place nearest to a wanted one. Middles and undersides are whole inches, or whole
/// centimetres in a metric job, so that a crew can measure them.
/// </summary>
internal sealed class HungRoom(BuildingForm house, bool metric, double ceilingM, List<Finding> findings)
{
    /// <summary>Kept between hung pieces: hangers, guards and a hand (common practice).</summary>
    private const double BesideM = 0.15;

    private const double OverM = 0.05;
    private const double NearM = 3;
    private const double AcrossM = 0.8;
    private const double FluePipeM = 0.3;

    private readonly List<(string Id, string Label, HungBox Box)> _taken = [];
    private readonly List<HungBox> _roof = [.. RoofSteel(house)];
    private readonly double _evenM = metric ? 0.01 : 0.0254;
    private readonly double _stepM = metric ? 0.1 : 0.1016;

    /// <summary>The nearest whole inch or centimetre.</summary>
    public double Even(double lengthM) => Math.Round(lengthM / _evenM) * _evenM;

    /// <summary>The whole inch or centimetre below.</summary>
    public double Down(double lengthM) => Math.Floor(lengthM / _evenM + 1e-6) * _evenM;

    /// <summary>Takes a line, whose place is not looked for.</summary>
    public PlacedItem Fixed(PlacedItem item)
    {
        _taken.Add((item.Id, item.Label, new(item.Corner, item.Size)));
        return item;
    }

    /// <summary>Hangs a piece at the free place nearest to where it is: along the house, then aside, then lower, then anywhere; else it stays and is told.</summary>
    /// <param name="item">The piece where it is wanted.</param>
    /// <param name="leastM">Least height of its underside, m.</param>
    /// <param name="flue">A pipe goes straight up from it, between rafters and purlins.</param>
    /// <param name="fits">What else a place must keep, if one that does is free.</param>
    public PlacedItem Hang(PlacedItem item, double leastM, bool flue = false, Func<HungBox, bool>? fits = null)
    {
        Point3 wanted = EvenCorner(item.Corner, item.Size);
        Point3 corner = (fits is null ? null : Free(wanted, item.Size, leastM, flue, fits)) ?? Free(wanted, item.Size, leastM, flue, _ => true) ?? wanted;
        var box = new HungBox(corner, item.Size);
        if (_taken.Find(t => t.Box.Meets(box) || (flue && t.Box.Meets(Pipe(box)))) is { Id: not null } met)
        {
            findings.Add(new Finding(
                "layout/hung-overlap", Severity.Miss, item.Id,
                LayoutFindings.Text($"{item.Label} and {met.Label.ToLowerInvariant()} ({met.Id}) hang in the same place: no other is free under a ceiling of {ceilingM / 0.3048:0.0} ft."),
                "Fewer or smaller pieces, or more room under the ceiling.", new Source.FirstPrinciples("boxes may not share room")));
        }

        _taken.Add((item.Id, item.Label, box));
        if (flue)
        {
            if (_roof.Exists(r => r.Meets(Pipe(box))))
            {
                findings.Add(new Finding(
                    "layout/flue-meets-frame", Severity.Miss, item.Id,
                    "The vent straight up from this heater meets a rafter, purlin or tie: no place beside them is free.",
                    "Fewer pieces under the ceiling, or an offset in the vent, which carries less; a licensed fitter decides.", FlueRules.Terminals));
            }

            _taken.Add((item.Id, "its vent", Pipe(box)));
        }

        return item with { Corner = corner };
    }

    private Point3? Free(Point3 wanted, Point3 size, double leastM, bool flue, Func<HungBox, bool> fits)
    {
        double lowM = Down(Lowest(wanted, size));
        return First(wanted, size, flue, NearM, 0, fits)
            ?? First(wanted, size, flue, NearM, AcrossM, fits)
            ?? (lowM >= leastM ? First(wanted with { ZM = lowM }, size, flue, NearM, AcrossM, fits) : null)
            ?? First(wanted, size, flue, house.LengthM, house.WidthM, fits);
    }

    // Under all lines that pass here at any point along the house.
    private double Lowest(Point3 wanted, Point3 size) => _taken
        .Where(t => t.Box.Size.XM > house.LengthM / 2 || t.Box.Size.YM > house.WidthM / 2)
        .Where(t => wanted.YM < t.Box.Corner.YM + t.Box.Size.YM + BesideM && t.Box.Corner.YM < wanted.YM + size.YM + BesideM)
        .Select(t => t.Box.Corner.ZM - OverM - size.ZM).Append(wanted.ZM).Min();

    private Point3? First(Point3 wanted, Point3 size, bool flue, double alongM, double asideM, Func<HungBox, bool> fits)
    {
        foreach (double dy in Steps(asideM))
        {
            foreach (double dx in Steps(alongM))
            {
                var corner = new Point3(wanted.XM + dx, wanted.YM + dy, wanted.ZM);
                var box = new HungBox(corner, size);
                if (Inside(box) && !_taken.Exists(t => t.Box.Meets(box, BesideM, OverM)) && !(flue && (_taken.Exists(t => t.Box.Meets(Pipe(box))) || _roof.Exists(r => r.Meets(Pipe(box))))) && fits(box))
                {
                    return corner;
                }
            }
        }

        return null;
    }

    private bool Inside(HungBox box) =>
        box.Corner.XM >= 0 && box.Corner.XM + box.Size.XM <= house.LengthM && box.Corner.YM >= 0 && box.Corner.YM + box.Size.YM <= house.WidthM;

    private IEnumerable<double> Steps(double mostM)
    {
        yield return 0;
        for (int i = 1; i * _stepM <= mostM; i++)
        {
            yield return i * _stepM;
            yield return -i * _stepM;
        }
    }

    // Rafters and ties across, purlins, eaves and ridge along, each 4 in wide and as deep as wanted: what goes straight up meets them in plan.
    private static IEnumerable<HungBox> RoofSteel(BuildingForm house)
    {
        const double WideM = 0.1016;
        foreach (MemberLine m in house.Members.Where(m => m.Role is MemberRole.Rafter or MemberRole.CollarTie or MemberRole.Purlin or MemberRole.Eave or MemberRole.Ridge))
        {
            var least = new Point3(Math.Min(m.A.XM, m.B.XM) - WideM / 2, Math.Min(m.A.YM, m.B.YM) - WideM / 2, 0);
            yield return new(least, new(Math.Abs(m.A.XM - m.B.XM) + WideM, Math.Abs(m.A.YM - m.B.YM) + WideM, 100));
        }
    }

    private static HungBox Pipe(HungBox heater)
    {
        double topM = heater.Corner.ZM + heater.Size.ZM;
        return new(
            new(heater.Corner.XM + (heater.Size.XM - FluePipeM) / 2, heater.Corner.YM + (heater.Size.YM - FluePipeM) / 2, topM),
            new(FluePipeM, FluePipeM, 100));
    }

    // The middle on the grid, the underside below what was wanted.
    private Point3 EvenCorner(Point3 corner, Point3 size)
    {
        double Middle(double atM, double wideM, double roomM)
        {
            double at = Even(atM + wideM / 2) - wideM / 2;
            return at < 0 ? at + _evenM : at + wideM > roomM ? at - _evenM : at;
        }

        return new(Middle(corner.XM, size.XM, house.LengthM), Middle(corner.YM, size.YM, house.WidthM), Down(corner.ZM));
    }
}
