using Glazewright.Design.Contracts;
using Glazewright.Science.Shape;

namespace Glazewright.Design.Shape;

/// <summary>How one wish fares.</summary>
/// <param name="Wish">Which.</param>
/// <param name="Asked">What was asked, in words.</param>
/// <param name="IsMet">The choice meets it.</param>
/// <param name="MetAlone">Shapes that meet it, whatever the others.</param>
/// <param name="MetByRest">Shapes that meet all other wishes.</param>
/// <param name="Got">What the choice has, in words.</param>
/// <param name="WouldTake">What it would take, in words; empty when met.</param>
public sealed record ShapeWishResult(ShapeWish Wish, string Asked, bool IsMet, int MetAlone, int MetByRest, string Got, string WouldTake);

/// <summary>What the shape finder found.</summary>
/// <param name="House">House id.</param>
/// <param name="WinterMonth">The dark month, 0 January.</param>
/// <param name="SummerMonth">The bright month.</param>
/// <param name="OutsideWinterMolPerM2Day">Outdoors in the dark month.</param>
/// <param name="OutsideSummerMolPerM2Day">Outdoors in the bright month.</param>
/// <param name="Looked">Shapes computed.</param>
/// <param name="Meeting">Shapes that meet every wish.</param>
/// <param name="Drawn">The contractor's choice.</param>
/// <param name="Best">The finder's choice.</param>
/// <param name="Checked">The best twenty, the finder's choice first.</param>
/// <param name="Front">Shapes that no other beats in winter light, summer light and glazing together, by winter light.</param>
/// <param name="Winter">Rank agreement of section and full map for the dark month, the drawn shape among them; null without full maps or with fewer than five shapes.</param>
/// <param name="Summer">The same for the bright month.</param>
/// <param name="Wishes">How each wish fares.</param>
/// <param name="Report">Findings and what is left out.</param>
public sealed record ShapeResult(
    string House,
    int WinterMonth,
    int SummerMonth,
    double OutsideWinterMolPerM2Day,
    double OutsideSummerMolPerM2Day,
    int Looked,
    int Meeting,
    ShapeCheck Drawn,
    ShapeCheck Best,
    EqList<ShapeCheck> Checked,
    EqList<ShapeScore> Front,
    RankAgreement? Winter,
    RankAgreement? Summer,
    EqList<ShapeWishResult> Wishes,
    StageReport Report);
