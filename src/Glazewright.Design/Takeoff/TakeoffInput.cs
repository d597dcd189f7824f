using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;

namespace Glazewright.Design.Takeoff;

/// <summary>What Takeoff reads of the job: who supplies what, foundations, benches, link buildings and the lot's services. No price, no crop.</summary>
/// <param name="Units">Decides the shop's step and the modules of sheets.</param>
/// <param name="Houses">Houses.</param>
/// <param name="Links">Link buildings.</param>
/// <param name="Scope">Who supplies each system; a system not named is by us.</param>
/// <param name="Fuel">Fuel at the lot.</param>
/// <param name="PoleDistanceM">Distance to the pole, m.</param>
public sealed record TakeoffInput(
    UnitSystem Units,
    EqList<TakeoffHouse> Houses,
    EqList<LinkBuilding> Links,
    EqList<ScopeLine> Scope,
    FuelKind Fuel,
    double PoleDistanceM)
{
    /// <summary>Projects the job.</summary>
    /// <param name="job">The job.</param>
    /// <returns>Takeoff's input.</returns>
    public static TakeoffInput From(Job job) => new(
        job.Units,
        job.Houses.Select(h => new TakeoffHouse(
            h.Id, h.Frame.PierDiameterM, h.Frame.PierDepthM, h.Frame.PurlinSpacingM, h.EdgeInsulated, h.Benches)).ToEqList(),
        job.Links,
        job.Scope,
        job.Utilities.Fuel,
        job.Utilities.PoleDistanceM);
}

/// <summary>What Takeoff reads of a house beside its form.</summary>
/// <param name="Id">House id.</param>
/// <param name="PierDiameterM">Pier diameter, m.</param>
/// <param name="PierDepthM">Pier depth, m.</param>
/// <param name="PurlinSpacingM">Greatest purlin spacing, m.</param>
/// <param name="EdgeInsulated">Slab edge insulated.</param>
/// <param name="Benches">Bench runs.</param>
public sealed record TakeoffHouse(
    string Id, double PierDiameterM, double PierDepthM, double PurlinSpacingM, bool EdgeInsulated, EqList<Bench> Benches);
