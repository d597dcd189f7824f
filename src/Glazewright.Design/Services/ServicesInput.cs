using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;

namespace Glazewright.Design.Services;

/// <summary>What Services reads of the job.</summary>
/// <param name="Utilities">Power, fuel and water at the lot.</param>
/// <param name="Houses">Houses.</param>
public sealed record ServicesInput(Utilities Utilities, EqList<ServedHouse> Houses)
{
    /// <summary>Projects the job.</summary>
    /// <param name="job">The job.</param>
    /// <returns>Services' input.</returns>
    public static ServicesInput From(Job job) => new(
        job.Utilities,
        job.Houses.Select(h => new ServedHouse(
            h.Id,
            h.WidthM,
            h.LengthM,
            h.Schedule.Select(p => p.PlantedFraction).DefaultIfEmpty(0).Max(),
            h.Equipment.BenchPipeW)).ToEqList());
}

/// <summary>What Services reads of a house.</summary>
/// <param name="Id">House id.</param>
/// <param name="WidthM">Width, m.</param>
/// <param name="LengthM">Length, m.</param>
/// <param name="PlantedFraction">Largest planted share of the floor.</param>
/// <param name="BenchPipeW">Hot-water pipe, W.</param>
public sealed record ServedHouse(string Id, double WidthM, double LengthM, double PlantedFraction, double BenchPipeW);
