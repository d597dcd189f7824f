using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;

namespace Glazewright.Design.Year;

/// <summary>What the year of one house reads from the job.</summary>
/// <param name="House">House id.</param>
/// <param name="Pointer">JSON pointer of the house.</param>
/// <param name="RangeBearingDeg">Bearing of the house's +x, ° from true north.</param>
/// <param name="Exposure">Terrain, for the wind at the house.</param>
/// <param name="AlbedoFraction">Ground reflectance.</param>
/// <param name="Band">What counts as held.</param>
/// <param name="Schedule">Crop schedule: what is asked for.</param>
/// <param name="Tariffs">Prices of energy and water.</param>
/// <param name="AirtightnessPerHour">Air changes at 4 m/s, 1/h.</param>
/// <param name="EdgeInsulated">Slab edge insulated.</param>
/// <param name="Weather">Name of the weather year.</param>
/// <param name="Synthetic">True when the year is made from monthly normals.</param>
public sealed record YearInput(
    string House,
    string Pointer,
    double RangeBearingDeg,
    WindExposure Exposure,
    double AlbedoFraction,
    HeldBand Band,
    EqList<CropPeriod> Schedule,
    Tariffs Tariffs,
    double AirtightnessPerHour,
    bool EdgeInsulated,
    string Weather,
    bool Synthetic)
{
    /// <summary>Takes what the year of a house needs out of the job.</summary>
    /// <param name="job">The job.</param>
    /// <param name="house">House id.</param>
    /// <returns>The input.</returns>
    /// <exception cref="ArgumentException">No such house.</exception>
    public static YearInput From(Job job, string house)
    {
        int index = job.Houses.ToList().FindIndex(h => h.Id == house);
        if (index < 0)
        {
            throw new ArgumentException($"No house '{house}'.", nameof(house));
        }

        House found = job.Houses[index];
        return new YearInput(
            found.Id,
            $"/houses/{index}",
            job.Site.RangeBearingDeg,
            job.Site.Wind.Exposure,
            job.Site.Ground.AlbedoFraction,
            job.Band,
            found.Schedule,
            job.Tariffs,
            found.AirtightnessPerHour,
            found.EdgeInsulated,
            job.Site.Weather is WeatherChoice.File file ? file.Name : "synthetic year from monthly normals",
            job.Site.Weather is WeatherChoice.Normals);
    }
}
