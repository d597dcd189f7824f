namespace Glazewright.Cutting.Sheets;

/// <summary>A corner of a face. Across the ribs, and along them; ticks.</summary>
/// <param name="AcrossTicks">Across the ribs, ticks.</param>
/// <param name="AlongTicks">Along the ribs, ticks.</param>
public readonly record struct FacePoint(long AcrossTicks, long AlongTicks);

/// <summary>A rectangular opening in a face; ticks.</summary>
/// <param name="FromAcrossTicks">First edge across the ribs.</param>
/// <param name="ToAcrossTicks">Last edge across the ribs.</param>
/// <param name="FromAlongTicks">Lower edge along the ribs.</param>
/// <param name="ToAlongTicks">Upper edge along the ribs.</param>
public readonly record struct FaceOpening(long FromAcrossTicks, long ToAcrossTicks, long FromAlongTicks, long ToAlongTicks);

/// <summary>A plane face to be covered by sheets or panels whose ribs or joints all run the same way.</summary>
/// <param name="Mark">Mark of the face: its pieces are marked from it.</param>
/// <param name="Outline">Corners of a convex outline, in order, three or more.</param>
/// <param name="Openings">Openings; one that crosses a whole sheet parts that sheet in two.</param>
public sealed record SheetFace(string Mark, IReadOnlyList<FacePoint> Outline, IReadOnlyList<FaceOpening> Openings);

/// <summary>Where the cut sheet of a face goes when the face is no whole number of sheets wide.</summary>
public enum TrimPlace
{
    /// <summary>Whole sheets from the first edge; the trim sheet comes last.</summary>
    Last,

    /// <summary>The same trim sheet at both edges (one module is given up when the two would be too narrow).</summary>
    BothEdges,
}

/// <summary>How sheets stand on a face.</summary>
/// <param name="CoverTicks">Width that one sheet or panel covers between joint centres, ticks.</param>
/// <param name="Trim">Where the trim sheet goes.</param>
/// <param name="MinTrimTicks">Narrowest trim sheet worth fixing, ticks; a narrower one takes half of its neighbour's module too.</param>
/// <param name="EndAllowanceTicks">Added to each piece's length for trimming in place, ticks.</param>
/// <param name="MayRip">True for sheet: several trims of one length come out of one sheet. False for panel: a ripped joint edge is lost.</param>
/// <param name="RipKerfTicks">Width of one ripping cut, ticks.</param>
public sealed record SheetRules(
    int CoverTicks, TrimPlace Trim, int MinTrimTicks, int EndAllowanceTicks, bool MayRip, int RipKerfTicks);

/// <summary>One sheet or panel on a face.</summary>
/// <param name="Mark">Face mark and number.</param>
/// <param name="FromAcrossTicks">Where it starts across the ribs.</param>
/// <param name="WidthTicks">Width it covers; less than the module for a trim sheet.</param>
/// <param name="FromAlongTicks">Its lowest point along the ribs.</param>
/// <param name="LengthTicks">Rough length, over the highest and lowest point with the end allowance.</param>
/// <param name="IsTrimmed">True when it is ripped to width.</param>
/// <param name="IsShaped">True when an end is not square, or an opening is cut into it.</param>
public sealed record SheetPiece(
    string Mark, long FromAcrossTicks, int WidthTicks, long FromAlongTicks, int LengthTicks, bool IsTrimmed, bool IsShaped);
