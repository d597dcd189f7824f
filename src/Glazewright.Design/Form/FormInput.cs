using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;

namespace Glazewright.Design.Form;

/// <summary>What Form reads of the job: shapes only, no crop, no equipment, no prices.</summary>
/// <param name="Houses">Houses.</param>
/// <param name="Links">Link buildings.</param>
/// <param name="RangeBearingDeg">Bearing of +x.</param>
/// <param name="LatitudeDeg">For the noon shadow between houses.</param>
/// <param name="Lot">Lot lines and setbacks.</param>
public sealed record FormInput(
    EqList<HouseShape> Houses, EqList<LinkBuilding> Links, double RangeBearingDeg, double LatitudeDeg, Lot Lot)
{
    /// <summary>Projects the job.</summary>
    /// <param name="job">The job.</param>
    /// <returns>Form's input.</returns>
    public static FormInput From(Job job) => new(
        job.Houses.Select(h => new HouseShape(
            h.Id,
            h.Name,
            h.OriginXM,
            h.OriginYM,
            h.WidthM,
            h.LengthM,
            h.Roof,
            h.BayCount,
            h.PonyWallM,
            h.Coverings,
            h.PonyWallCovering,
            h.Openings,
            h.Frame.CollarTieHeightM,
            h.Frame.PurlinSpacingM,
            h.Frame.StockLengthsM.Max())).ToEqList(),
        job.Links,
        job.Site.RangeBearingDeg,
        job.Site.LatitudeDeg,
        job.Lot);
}

/// <summary>A house's shape.</summary>
/// <param name="Id">House id.</param>
/// <param name="Name">As printed.</param>
/// <param name="OriginXM">Corner end 1 / left.</param>
/// <param name="OriginYM">Corner end 1 / left.</param>
/// <param name="WidthM">Across.</param>
/// <param name="LengthM">Along.</param>
/// <param name="Roof">Roof.</param>
/// <param name="BayCount">Bays.</param>
/// <param name="PonyWallM">Pony wall.</param>
/// <param name="Coverings">Covering by face.</param>
/// <param name="PonyWallCovering">Covering of the pony wall.</param>
/// <param name="Openings">Openings.</param>
/// <param name="CollarTieHeightM">Collar tie, 0 for none.</param>
/// <param name="PurlinSpacingM">Greatest purlin spacing.</param>
/// <param name="LongestStockM">Longest stock tube: purlins run over as many bays as it allows.</param>
public sealed record HouseShape(
    string Id,
    string Name,
    double OriginXM,
    double OriginYM,
    double WidthM,
    double LengthM,
    RoofProfile Roof,
    int BayCount,
    double PonyWallM,
    EqList<FaceCovering> Coverings,
    CoverChoice PonyWallCovering,
    EqList<Opening> Openings,
    double CollarTieHeightM,
    double PurlinSpacingM,
    double LongestStockM);
