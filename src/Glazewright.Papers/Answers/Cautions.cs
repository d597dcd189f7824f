using Glazewright.Design.Brief;
using Glazewright.Papers.Reports;
using Glazewright.Papers.Sets;

namespace Glazewright.Papers.Answers;

/// <summary>The cautions the trade carries, those that belong to this job.</summary>
internal static class Cautions
{
    public static Block Weather(PaperSource source)
    {
        bool synthetic = source.Houses.Any(h => h.Year.Synthetic);
        string year = string.Join("; ", source.Houses.Select(h => h.Year.Weather).Distinct());
        string text = "A typical year leaves the extremes out: the coldest night and the hottest week of ten years are not in it. The design days stand beside it where heat and air are sized. "
            + "Everything here is predicted under these conditions: the crop as scheduled, the equipment maintained, sensors true, the weather of this year. It is not a warranty.";
        return new Block.Caution(
            synthetic ? "Synthetic weather" : "What these predictions rest on",
            (synthetic ? "The weather year is synthetic: made from monthly normals with a fixed seed, not measured. " : "") + $"Weather: {year}. " + text);
    }

    public static Block People(PaperSource source) => new Block.Caution(
        "People come in",
        FormattableString.Invariant($"With {(source.Job.Occupancy.Visitors == Visitors.Customers ? "customers" : "pupils")} inside it is no mere farm building: risk category {source.Job.Occupancy.RiskCategory}, exits, door widths and accessible routes are for the plan reviewer to settle before anything is ordered."));

    public static IEnumerable<Block> Of(PaperSource source)
    {
        yield return new Block.Caution("Structure", "Structural results are for review and sealing by a licensed engineer under the code adopted locally; loads are to be confirmed with the authority having jurisdiction.");
        if (source.Houses.Any(h => h.Plant.Fog is not null))
        {
            yield return new Block.Caution("High-pressure fog", "A jet from a fog line goes through skin: an injection wound looks small and is a hospital case at once. Rated tube, relief, bleed-down, a guarded pump room.");
        }

        if (source.Houses.Any(h => h.Plant.Fog is not null || h.Plant.WetWall is not null))
        {
            yield return new Block.Caution("Water", "Warm standing water breeds Legionella: treat and bleed pad and fog water, drain lines that stand warm, keep spray out of people's way.");
        }

        if (source.Houses.Any(h => h.Plant.Heat is { } heat && heat.Choice.Heaters.Any(x => !x.Electric)))
        {
            yield return new Block.Caution("Fuel gas and carbon monoxide", "Gas work, combustion air and flues are for a licensed installer; carbon monoxide alarms where people work; high limits and flame safeguards are hard-wired, outside any program.");
        }

        yield return new Block.Caution("Electricity and moving parts", "Wet places: licensed electrician, ground-fault protection, a disconnect in sight of each motor. Guards on fans, lock-out before reaching in. A generator without a transfer switch kills line workers.");
        yield return new Block.Caution("Building it", "Work at height and falling through sheet; brace the frame before sheeting it and stop in wind; call the utilities before digging; shore trenches; dust and zinc fume when cutting and welding.");
    }
}
