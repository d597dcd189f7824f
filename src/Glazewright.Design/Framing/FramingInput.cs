using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Frame;

namespace Glazewright.Design.Framing;

/// <summary>What Framing reads of the job: loads and steel as Frame does, and the order of the openings, to cite them.</summary>
/// <param name="Frame">Loads and steel.</param>
/// <param name="OpeningIds">Ids of the typed openings, in the job's order.</param>
public sealed record FramingInput(FrameInput Frame, EqList<string> OpeningIds)
{
    /// <summary>Projects the job.</summary>
    /// <param name="job">The job.</param>
    /// <param name="houseId">House id.</param>
    /// <returns>Framing's input.</returns>
    /// <exception cref="ArgumentException">No such house.</exception>
    public static FramingInput From(Job job, string houseId)
    {
        FrameInput frame = FrameInput.From(job, houseId);
        return new FramingInput(frame, job.Houses.First(h => h.Id == houseId).Openings.Select(o => o.Id).ToEqList());
    }
}
