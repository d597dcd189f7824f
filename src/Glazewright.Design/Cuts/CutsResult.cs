using Glazewright.Design.Contracts;

namespace Glazewright.Design.Cuts;

/// <summary>How the bars are cut.</summary>
/// <param name="Sections">One list a section.</param>
/// <param name="Report">Figures and findings.</param>
public sealed record CutsResult(EqList<SectionCuts> Sections, StageReport Report);

/// <summary>Cut list of one section.</summary>
/// <param name="Section">Section name.</param>
/// <param name="Patterns">Cutting patterns.</param>
/// <param name="Bars">Bars bought.</param>
/// <param name="Bound">Fewest bars (or least cost) proven possible, in the objective's unit.</param>
/// <param name="Objective">Value reached in the same unit.</param>
/// <param name="ObjectiveIs">What the objective counts, in words.</param>
/// <param name="Proven">True when the value equals the bound.</param>
/// <param name="WasteFraction">Waste over bought length, usable drops not counted as waste.</param>
public sealed record SectionCuts(
    string Section,
    EqList<BarPattern> Patterns,
    int Bars,
    double Bound,
    double Objective,
    string ObjectiveIs,
    bool Proven,
    double WasteFraction)
{
    /// <summary>Drops long enough for the rack, together, m: bought and not built in, and not waste.</summary>
    public double UsableDropM { get; init; }
}

/// <summary>One way to cut a bar, used some times.</summary>
/// <param name="StockM">Bar length, m.</param>
/// <param name="Times">How many bars are cut so.</param>
/// <param name="Pieces">Marks in cutting order.</param>
/// <param name="DropM">What is left, m.</param>
public sealed record BarPattern(double StockM, int Times, EqList<CutPiece> Pieces, double DropM);

/// <summary>A piece on a bar.</summary>
/// <param name="Mark">Shop mark.</param>
/// <param name="LengthM">Length, m.</param>
public sealed record CutPiece(string Mark, double LengthM);
