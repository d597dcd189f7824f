using System.Globalization;
using Glazewright.Papers.Subjects;

namespace Glazewright.Web.Fields;

/// <summary>A page of a job.</summary>
/// <param name="Key">Its word in addresses.</param>
/// <param name="Title">Its title.</param>
/// <param name="Blocks">Its inputs, in order.</param>
/// <param name="Subject">What its picture and figures are about; null for the papers, which are about all.</param>
/// <param name="Rooms">First words of the ids of its figures and findings: the stages it is about.</param>
public sealed record JobPagePlan(string Key, string Title, IReadOnlyList<FieldBlock> Blocks, JobSubject? Subject, params IReadOnlyList<string> Rooms);

/// <summary>Fields that stand together.</summary>
/// <param name="Heading">Their heading; empty for none.</param>
/// <param name="At">Pointer of what holds them; <c>{h}</c> stands for the house that is looked at.</param>
/// <param name="Keys">Their keys, or none for the whole thing as a folded group.</param>
public sealed record FieldBlock(string Heading, string At, params IReadOnlyList<string> Keys)
{
    /// <summary>Whether they stand in the middle of the page, in a form of their own, and not among its inputs.</summary>
    public bool IsInMiddle { get; init; }

    /// <summary>The pointers for a house.</summary>
    /// <param name="house">Its place in the job, from 0.</param>
    public IEnumerable<string> Pointers(int house)
    {
        string at = At.Replace("{h}", house.ToString(CultureInfo.InvariantCulture), StringComparison.Ordinal);
        return Keys.Count == 0 ? [at] : Keys.Select(k => $"{at}/{k}");
    }
}

/// <summary>Which fields stand on which page, in the order of the job.</summary>
public static class PagePlan
{
    /// <summary>The pages.</summary>
    public static IReadOnlyList<JobPagePlan> All { get; } =
    [
        new("brief", "Brief",
        [
            new("Job", "", "name", "revision", "date", "units"), new("", "", "parties"),
            new("Place", "/site", "place", "latitude", "longitude", "elevation", "zone"),
            new("", "/site/weather"), new("", "/site/design"),
            new("Crop and climate", "/houses/{h}", "schedule"), new("", "/held"),
            new("Who comes in", "/occupancy"), new("Power, gas, water", "/utilities"), new("", "/lot"),
        ], JobSubject.Brief, "duty"),
        new("shape", "Shape & sun",
        [
            new("House", "/houses/{h}", "name", "width", "length", "bays", "ponyWall"),
            new("Roof: four of five", "/houses/{h}/roof", "leftEave", "rightEave", "ridgeOffset", "leftPitch", "rightPitch"),
            new("", "/houses/{h}", "shapeWishes"),
            new("Where it stands", "/site", "bearing"), new("", "/houses/{h}", "x", "y"),
            new("Inside", "/houses/{h}", "mainAisle", "benches", "openings"), new("Around", "/site", "neighbours", "horizon"), new("", "", "links"),
        ], JobSubject.Shape, "form", "light", "gain"),
        new("frame", "Frame",
        [
            new("Loads", "/site", "snow", "wind", "ground"),
            new("Frame", "/houses/{h}/frame", "rafter", "column", "collarTie", "pierDiameter", "pierDepth"), new("", "/houses/{h}", "frame", "bays"), new("", "", "datum"),
        ], JobSubject.Frame, "frame", "body", "framing"),
        new("covering", "Covering", [new("Covering", "/houses/{h}/covering", "all", "roof-left", "roof-right", "left", "right", "end-1", "end-2", "pony-wall", "dirt", "ageing", "condensation", "insideReflectance"), new("", "/houses/{h}", "ponyWall", "edgeInsulated", "airtightness")], JobSubject.Covering, "cover", "gain"),
        new("plant", "Climate plant",
        [
            new("Air", "/houses/{h}/equipment", "exhaust", "fanEnd", "temperatureRise", "shade", "wetWall", "fog", "roofVents", "sideVents", "insectScreen"),
            new("Heat", "/houses/{h}/equipment", "heaters", "heaterFire", "benchPipe", "sealedCombustion"),
            new("Curtains", "/houses/{h}/equipment", "curtains", "curtainCloth", "curtainHeight", "secondCurtain"),
            new("Moving air, and more", "/houses/{h}/equipment", "upperFans", "circulation", "oscillatingFans", "positivePressure", "dehumidifier", "lamps", "co2"),
            new("", "/houses/{h}", "openings", "airtightness"),
        ], JobSubject.Plant, "duty", "plant", "layout"),
        new("program", "Program", [new("Climate asked for", "/houses/{h}", "schedule"), new("What counts as held", "/held", "temperature", "humidity"), new("Also written from", "/houses/{h}/equipment", "co2", "secondCurtain", "sealedCombustion"), new("", "/houses/{h}", "program") { IsInMiddle = true }], JobSubject.Program, "program"),
        new("year", "Year", [new("Climate asked for", "/houses/{h}", "schedule"), new("", "/site/weather"), new("What energy costs", "/tariffs", "fuel", "power", "demand", "water")], JobSubject.Year, "year"),
        new("materials", "Materials & cuts", [new("Stock and saw", "/houses/{h}/frame", "stock", "kerf"), new("Who supplies what", "", "scope")], JobSubject.Materials, "takeoff", "cuts"),
        new("price", "Price", [new("How the job is priced", "", "pricing"), new("", "", "tariffs", "scope")], JobSubject.Price, "price"),
        new("papers", "Papers", [new("Title block", "", "name", "parties", "revision", "date", "sheets", "scope")], null),
    ];

    /// <summary>A page by its word; the first for any other.</summary>
    /// <param name="key">Its word.</param>
    public static JobPagePlan Of(string? key) => All.FirstOrDefault(p => p.Key == key) ?? All[0];

    /// <summary>Where a field stands.</summary>
    /// <param name="pointer">JSON pointer.</param>
    /// <returns>Its page and the house it belongs to; null for a field that stands on no page yet.</returns>
    public static (JobPagePlan Page, int House)? Find(string pointer)
    {
        ArgumentNullException.ThrowIfNull(pointer);
        string[] keys = pointer.Split('/');
        int house = keys.Length > 2 && keys[1] == "houses" && int.TryParse(keys[2], NumberStyles.None, CultureInfo.InvariantCulture, out int at) ? at : 0;
        return All.Where(p => p.Blocks.Any(b => b.Pointers(house).Any(h => pointer == h || pointer.StartsWith(h + "/", StringComparison.Ordinal)))).Select(p => ((JobPagePlan, int)?)(p, house)).FirstOrDefault();
    }
}
