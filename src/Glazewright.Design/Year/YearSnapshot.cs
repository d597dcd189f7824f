using Glazewright.Design.Contracts;

namespace Glazewright.Design.Year;

/// <summary>Everything that a year remembers at a midnight: a day run again from it is the year's day bit for bit.</summary>
/// <param name="House">Temperatures and water of the house model.</param>
/// <param name="Equipment">Positions, wetting and what sensors show.</param>
/// <param name="Program">Memory of the control box.</param>
public sealed record YearSnapshot(EqList<double> House, EqList<double> Equipment, EqList<int> Program);
