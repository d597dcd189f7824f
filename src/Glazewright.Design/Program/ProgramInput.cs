using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;

namespace Glazewright.Design.Program;

/// <summary>What the program is written from, beside the plant: the wish.</summary>
/// <param name="House">House id.</param>
/// <param name="Schedule">Crop schedule.</param>
/// <param name="Band">What counts as held: thresholds stay inside it.</param>
/// <param name="SealedCombustion">False when heaters take their air from the house.</param>
/// <param name="Changes">Values that the technician changes.</param>
public sealed record ProgramInput(string House, EqList<CropPeriod> Schedule, HeldBand Band, bool SealedCombustion, EqList<ProgramChange> Changes)
{
    /// <summary>Projects the job.</summary>
    /// <param name="job">The job.</param>
    /// <param name="house">House id.</param>
    /// <returns>The program's input for that house.</returns>
    public static ProgramInput From(Job job, string house)
    {
        ArgumentNullException.ThrowIfNull(job);
        House h = job.Houses.First(x => x.Id == house);
        return new ProgramInput(house, h.Schedule, job.Band, h.Equipment.SealedCombustion, h.ProgramChanges);
    }
}
