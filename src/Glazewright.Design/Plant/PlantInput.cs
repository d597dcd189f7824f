using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;

namespace Glazewright.Design.Plant;

/// <summary>What Plant reads of the job for one house.</summary>
/// <param name="House">House id.</param>
/// <param name="Pointer">JSON pointer of the house.</param>
/// <param name="Equipment">Equipment wanted, fixed or to be sized.</param>
/// <param name="Utilities">Power, gas and water at the lot.</param>
/// <param name="Schedule">Crop schedule.</param>
/// <param name="AirtightnessPerHour">Air changes by leakage at 4 m/s, 1/h.</param>
/// <param name="ElevationM">Elevation of the place, m: burners give less in thin air.</param>
/// <param name="Metric">The job is metric: a single-phase lot of 230 V has one leg of it.</param>
public sealed record PlantInput(
    string House, string Pointer, EquipmentChoice Equipment, Utilities Utilities, EqList<CropPeriod> Schedule, double AirtightnessPerHour, bool Metric = false,
    double ElevationM = 0)
{
    /// <summary>Projects the job.</summary>
    /// <param name="job">The job.</param>
    /// <param name="house">House id.</param>
    /// <returns>Plant's input.</returns>
    /// <exception cref="ArgumentException">No such house.</exception>
    public static PlantInput From(Job job, string house)
    {
        int index = job.Houses.ToList().FindIndex(h => h.Id == house);
        if (index < 0)
        {
            throw new ArgumentException($"No house '{house}'.", nameof(house));
        }

        Brief.House h = job.Houses[index];
        return new PlantInput(h.Id, $"/houses/{index}", h.Equipment, job.Utilities, h.Schedule, h.AirtightnessPerHour, job.Units == UnitSystem.Metric, job.Site.ElevationM);
    }
}
