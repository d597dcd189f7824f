using Glazewright.Design.Document;
using Glazewright.Papers.Drawing;
using Glazewright.Papers.Sets;

namespace Glazewright.Papers.Answers;

/// <summary>What must be looked after for the predictions to hold, of the equipment that this range has. Intervals: common practice; the makers' own books rule.</summary>
internal static class CareList
{
    /// <summary>The care, most frequent first.</summary>
    /// <param name="source">What the papers are made from.</param>
    public static Table Table(PaperSource source) => new(
        [new("When", 34), new("What", 138)],
        [.. Of(source).Select(c => (IReadOnlyList<string>)[c.When, c.What])]);

    private static IEnumerable<(string When, string What)> Of(PaperSource source)
    {
        HouseResults[] houses = [.. source.Houses];
        bool any = houses.Length > 0;
        bool pad = houses.Any(h => h.Plant.WetWall is not null);
        bool fog = houses.Any(h => h.Plant.Fog is not null);
        bool fuel = houses.Any(h => h.Plant.Heat is { } heat && heat.Choice.Heaters.Any(x => !x.Electric));
        bool fans = houses.Any(h => h.Plant.Exhaust is not null);
        if (pad || fog)
        {
            yield return ("every week", $"{(pad ? "Wet wall: even wetting, sump and strainer, bleed open" : "")}{(pad && fog ? ". " : "")}{(fog ? "Fog: filters, drips and torn spray; pressure off before anything is touched" : "")}.");
        }

        if (houses.Any(h => h.Plant.Pressure is not null))
        {
            yield return ("every month", "Filter fan: pressure across the filter against the clean one.");
        }

        if (any)
        {
            yield return ("every month", "Alarm and backup power under load; carbon monoxide alarms; sensors against a thermometer held beside them.");
        }

        if (fans)
        {
            yield return ("twice a season", "Exhaust fans: belts, shutters, guards; louvers open to their stop before the second fan. Locked out while hands are in it.");
        }

        if (fuel)
        {
            yield return ("before the cold", "Burners, vents and combustion air by a licensed technician; gas tightness.");
        }

        if (houses.Any(h => h.Plant.Curtain is not null))
        {
            yield return ("before the cold", "Curtain: cables, drums, end switches, tears, seals at the edges.");
        }

        if (any)
        {
            yield return ("twice a year", "Covering washed outside and in (dirt is counted as in the job); gutters, drips, tapes and screws.");
            yield return ("every year", "Frame: bolts, rust, bases; doors and their seals; insect screens brushed.");
        }
    }
}
