using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.Layout;

namespace Glazewright.Design.Takeoff;

/// <summary>A sheet or panel where it lies on its face.</summary>
/// <param name="Zone">Cover zone it lies in.</param>
/// <param name="FromUM">Nearer edge along the eave or floor, m.</param>
/// <param name="WidthM">Width it covers, m.</param>
/// <param name="FromVM">Its lowest point up the face, m.</param>
/// <param name="ReachM">Length it covers up the face, without what is trimmed away, m.</param>
/// <param name="LengthM">Length it is cut to, m.</param>
public sealed record CoverPiece(string Zone, double FromUM, double WidthM, double FromVM, double ReachM, double LengthM);

/// <summary>Where the sheets and panels of the takeoff lie.</summary>
public static class CoverPlaces
{
    /// <summary>The pieces of a building in the order of its faces and zones.</summary>
    /// <param name="building">The building.</param>
    /// <param name="form">The range it stands in.</param>
    /// <param name="layouts">Layouts of all houses: what stands in a face parts its sheets.</param>
    /// <param name="units">Which modules are bought.</param>
    /// <returns>The pieces; none for glass and film, which are bought by area.</returns>
    public static EqList<CoverPiece> Of(BuildingForm building, FormResult form, EqList<LayoutResult> layouts, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(building);
        ArgumentNullException.ThrowIfNull(form);
        ShopTick tick = ShopTick.For(units);
        return CoverTakeoff.Placed(building, form, layouts, units).Select(p => new CoverPiece(
            p.Zone.Id,
            tick.Metres(p.Piece.FromAcrossTicks),
            tick.Metres(p.Piece.WidthTicks),
            tick.Metres(p.Piece.FromAlongTicks),
            tick.Metres(p.Piece.LengthTicks - p.Buying.Rules.EndAllowanceTicks),
            tick.Metres(p.Piece.LengthTicks))).ToEqList();
    }
}
