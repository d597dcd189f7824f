using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Plant;

namespace Glazewright.Design.Choices;

/// <summary>What Choices reads of the job for one house.</summary>
/// <param name="Plant">What Plant reads.</param>
/// <param name="Units">Units of the words.</param>
public sealed record ChoicesInput(PlantInput Plant, UnitSystem Units)
{
    /// <summary>Projects the job.</summary>
    /// <param name="job">The job.</param>
    /// <param name="house">House id.</param>
    /// <returns>Choices' input.</returns>
    /// <exception cref="ArgumentException">No such house.</exception>
    public static ChoicesInput From(Job job, string house) => new(PlantInput.From(job, house), job.Units);
}
