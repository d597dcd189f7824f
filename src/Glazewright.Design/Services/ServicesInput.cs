using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;

namespace Glazewright.Design.Services;

/// <summary>What Services reads of the job.</summary>
/// <param name="Utilities">Power, fuel and water at the lot.</param>
/// <param name="Houses">Houses.</param>
/// <param name="Links">Head house, corridors, control room.</param>
/// <param name="Metric">The job's units are metric.</param>
public sealed record ServicesInput(Utilities Utilities, EqList<ServedHouse> Houses, EqList<ServedLink> Links, bool Metric)
{
    /// <summary>Mean annual extreme minimum outside, °C; null where neither the job nor the weather file gives it.</summary>
    public double? ColdestC { get; init; }

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
            h.Equipment.BenchPipeW)).ToEqList(),
        job.Links.Select(l => new ServedLink(
            l.Id,
            l.Kind,
            l.Name,
            l.SizeXM,
            l.SizeYM,
            l.Kind == LinkKind.ControlRoom || l.Rooms.Any(r => Has(r, "control")),
            l.Rooms.Any(r => Has(r, "wash") || Has(r, "toilet")))).ToEqList(),
        job.Units == UnitSystem.Metric)
    {
        ColdestC = job.Site.Design?.ExtremeMinC,
    };

    private static bool Has(Room room, string word) => room.Name.Contains(word, StringComparison.OrdinalIgnoreCase);
}

/// <summary>What Services reads of a house.</summary>
/// <param name="Id">House id.</param>
/// <param name="WidthM">Width, m.</param>
/// <param name="LengthM">Length, m.</param>
/// <param name="PlantedFraction">Largest planted share of the floor.</param>
/// <param name="BenchPipeW">Hot-water pipe, W.</param>
public sealed record ServedHouse(string Id, double WidthM, double LengthM, double PlantedFraction, double BenchPipeW);

/// <summary>What Services reads of a head house, corridor or control room.</summary>
/// <param name="Id">Id.</param>
/// <param name="Kind">Kind.</param>
/// <param name="Name">As printed.</param>
/// <param name="SizeXM">Size along range x, m.</param>
/// <param name="SizeYM">Size along range y, m.</param>
/// <param name="HasControlRoom">It is a control room or has one.</param>
/// <param name="WetRooms">It has a wash or toilet room.</param>
public sealed record ServedLink(string Id, LinkKind Kind, string Name, double SizeXM, double SizeYM, bool HasControlRoom, bool WetRooms);
