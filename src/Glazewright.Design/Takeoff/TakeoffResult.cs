using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;

namespace Glazewright.Design.Takeoff;

/// <summary>Everything that must be bought or made, by quantity.</summary>
/// <param name="Marks">Frame members grouped into shop marks.</param>
/// <param name="Sheets">Glazing sheets and panels to length.</param>
/// <param name="Lines">All material and work lines.</param>
/// <param name="Report">Figures and findings.</param>
public sealed record TakeoffResult(EqList<ShopMark> Marks, EqList<SheetPiece> Sheets, EqList<TakeoffLine> Lines, StageReport Report);

/// <summary>Identical members under one mark, given after grouping.</summary>
/// <param name="Mark">Mark (<c>R-01</c>).</param>
/// <param name="Section">Section name.</param>
/// <param name="LengthM">Cut length, m.</param>
/// <param name="AngleADeg">Saw angle at end A.</param>
/// <param name="AngleBDeg">Saw angle at end B.</param>
/// <param name="Count">How many.</param>
/// <param name="MassEachKg">Mass each, kg.</param>
/// <param name="Where">Which members, in words.</param>
public sealed record ShopMark(
    string Mark, string Section, double LengthM, double AngleADeg, double AngleBDeg, int Count, double MassEachKg, string Where);

/// <summary>Glazing sheets or panels of one length.</summary>
/// <param name="Mark">Mark (<c>S-01</c>, <c>P-01</c>).</param>
/// <param name="CoverKind">Cover kind id.</param>
/// <param name="Zone">Cover zone they go on.</param>
/// <param name="ModuleM">Module width, m.</param>
/// <param name="LengthM">Length, m.</param>
/// <param name="Count">How many.</param>
/// <param name="TrimmedWidthM">Width of the last one when it is trimmed, m; else the module.</param>
public sealed record SheetPiece(
    string Mark, string CoverKind, string Zone, double ModuleM, double LengthM, int Count, double TrimmedWidthM);

/// <summary>One line of the takeoff.</summary>
/// <param name="Item">Price-book item id.</param>
/// <param name="Label">What it is.</param>
/// <param name="System">System it belongs to.</param>
/// <param name="Quantity">How much.</param>
/// <param name="Per">Unit in words (<c>m</c>, <c>m²</c>, <c>each</c>, <c>h</c>).</param>
/// <param name="From">Where the quantity comes from, in words.</param>
/// <param name="By">Who supplies it.</param>
public sealed record TakeoffLine(
    string Item, string Label, ScopeSystem System, double Quantity, string Per, string From, ScopeBy By);
