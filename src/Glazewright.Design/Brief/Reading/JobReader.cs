using Glazewright.Design.Catalogues;
using Glazewright.Design.Contracts;
using Glazewright.Design.Document;
using Glazewright.Science.Weather;

namespace Glazewright.Design.Brief.Reading;

/// <summary>What is known of the place from its weather file's header, for a job that does not say.</summary>
/// <param name="Place">Name of the station.</param>
/// <param name="LatitudeDeg">North positive.</param>
/// <param name="LongitudeDeg">East positive.</param>
/// <param name="ElevationM">Above sea level, m.</param>
/// <param name="ZoneHours">Standard offset from UTC, h.</param>
/// <param name="WarmWind">Wind of the warmest daylight hours; null where the file has no directions.</param>
public sealed record SiteHint(string Place, double LatitudeDeg, double LongitudeDeg, double ElevationM, double ZoneHours, WindRose? WarmWind = null);

/// <summary>Reads the whole typed job from a document: every fault at once, every default used listed. One set of calls also makes the schema.</summary>
public static class JobReader
{
    /// <summary>Reads a job.</summary>
    /// <param name="document">The document.</param>
    /// <param name="hint">What the weather file says of the place; null when there is none.</param>
    /// <param name="catalogue">Catalogue whose ids may be named; null for the embedded generic one.</param>
    /// <returns>The job, or its faults; and the defaults used.</returns>
    public static ReadOutcome<Job> Read(JobDocument document, SiteHint? hint = null, Catalogue? catalogue = null)
    {
        ArgumentNullException.ThrowIfNull(document);
        if (document.Faults.Any(f => f.Kind == FaultKind.NotJson))
        {
            return new ReadOutcome<Job>(null, document.Faults, []);
        }

        ObjectNode tree = Migrations.Upgrade(document.Root, out EqList<Fault> versionFaults);
        if (versionFaults.Any(f => f.Kind == FaultKind.OutOfRange) || document.Root is not ObjectNode)
        {
            return new ReadOutcome<Job>(null, versionFaults, []);
        }

        ReadOutcome<Job> outcome = FieldReader.Read(tree, f => Fields(f, hint, catalogue ?? CatalogueReader.Generic));
        // The weather file gives the latitude: when the file itself is at fault, a missing latitude is not a second one.
        bool noWeather = outcome.Faults.Any(f => f.Kind != FaultKind.Missing && f.Pointer == "/site/weather/file");
        EqList<Fault> faults = [.. document.Faults, .. versionFaults, .. outcome.Faults.Where(f => !(noWeather && f is { Kind: FaultKind.Missing, Pointer: "/site/latitude" }))];
        return faults.Count == 0 ? outcome : new ReadOutcome<Job>(null, faults, outcome.Defaults);
    }

    /// <summary>The fields of the job document.</summary>
    /// <returns>Their descriptions.</returns>
    public static FieldShape.Group Describe() => FieldReader.Describe(f => Fields(f, null, CatalogueReader.Generic));

    /// <summary>The job document's JSON Schema.</summary>
    /// <returns>JSON, draft 2020-12.</returns>
    public static string Schema() => SchemaWriter.Write(Describe(), "Glazewright job, version " + Migrations.CurrentVersion.ToString(System.Globalization.CultureInfo.InvariantCulture));

    private static Job Fields(FieldReader f, SiteHint? hint, Catalogue catalogue)
    {
        f.Allow("$schema", new FieldShape.Prose(400, "", ""), "no schema is named", "Address of the schema, for an editor.");
        f.Allow(Migrations.VersionKey, new FieldShape.Whole(1, Migrations.CurrentVersion), "", "Version of this document.");
        string name = f.Words("name", "Untitled job", "Name of the job, as on the title block.", "Two-Ridge Herb Yard", 80);
        string revision = f.Words("revision", "", "Revision mark on the title block.", "B", 12);
        string date = f.DateText("date", "undated draft", "Date on the papers.");
        Contracts.UnitSystem units = f.Choice<Contracts.UnitSystem>("units", Contracts.UnitSystem.Us, "Units people read: us (feet, °F) or metric.");
        SheetPaper sheets = f.Choice<SheetPaper>("sheets", SheetPaper.Small, "Paper of the drawing sheets: small (ANSI B, metric A3) or large (ANSI D, metric A1).");
        Parties parties = f.GroupOrBlank("parties", "nobody is named", "Who the papers are from and for.", LotFields.Parties) ?? Parties.None;
        Datum datum = f.Group("datum", "What dimensions are measured to.", LotFields.Datum);
        Site site = f.Group("site", "Where it stands, and what the sky and the ground do there.", s => SiteFields.Read(s, hint));
        Lot lot = f.GroupOrBlank("lot", "no lot lines are checked", "The piece of land and its limits.", LotFields.Lot) ?? new Lot(0, 0, 0, 0, 0, 0, 0, 0, 0, 0, "");
        Utilities utilities = f.Group("utilities", "Power, gas and water at the lot.", LotFields.Utilities);
        Occupancy occupancy = f.Group("occupancy", "Who enters, and under which codes.", LotFields.Occupancy);
        HeldBand band = f.Group("held", "What counts as held.", CropFields.Band);
        HouseContext context = new(catalogue, utilities, site.Ground, LeeEnd.Of(hint?.WarmWind, site.RangeBearingDeg)) { EvenM = units == Contracts.UnitSystem.Metric ? 0.01 : 0.0254 };
        int before = f.FaultCount;
        EqList<House> houses = f.Several("houses", 1, 12, null, "Greenhouses.", h => HouseFields.Read(h, context));
        EqList<LinkBuilding> links = f.Several("links", 0, 12, "no corridor, head house or control room", "Corridors, head house, control room.", LinkFields.Read);
        Footprints.Apart(f, houses, links, readWell: f.FaultCount == before);
        EqList<ScopeLine> scope = f.Several("scope", 0, 60, "everything is ours", "Who supplies what.", MoneyFields.Scope);
        Tariffs tariffs = f.Group("tariffs", "What fuel, power and water cost.", t => MoneyFields.Tariffs(t, utilities.Fuel));
        Pricing pricing = f.Group("pricing", "How the job is priced; never leaves the contractor's own papers.", MoneyFields.Pricing);
        SharedIds(f, houses, links);
        return new Job(name, revision, date, units, datum, site, lot, utilities, occupancy, band, houses, links, scope, tariffs, pricing) { Sheets = sheets, Parties = parties };
    }

    // Houses and link buildings share one set of names: overrides and marks speak of A/…, C/….
    private static void SharedIds(FieldReader f, EqList<House> houses, EqList<LinkBuilding> links)
    {
        HashSet<string> taken = new(StringComparer.OrdinalIgnoreCase);
        IEnumerable<(string Id, string At)> all = houses.Select((h, i) => (h.Id, $"houses/{HouseFields.Text(i)}/id"))
            .Concat(links.Select((l, i) => (l.Id, $"links/{HouseFields.Text(i)}/id")));
        foreach ((string id, string at) in all)
        {
            // What the list itself has told is not told again.
            if (!taken.Add(id) && !f.IsFaulty(at))
            {
                f.AddBelow(FaultKind.Duplicate, at, $"another building has the id \"{id}\" too", "an id of its own for each house and link building");
            }
        }
    }
}
