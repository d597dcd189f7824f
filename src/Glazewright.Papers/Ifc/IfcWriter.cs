using System.Globalization;
using Glazewright.Design.Brief;
using Glazewright.Design.Form;
using Glazewright.Papers.Solids;

namespace Glazewright.Papers.Ifc;

/// <summary>
/// Writes the range as a building model (IFC4, ISO 16739-1:2018, as an ISO 10303-21 text): project, site, a building and storey each, elements with bodies,
/// openings, types, quantities, materials. Entities and attributes from memory; read by an independent parser in the tests.
/// </summary>
public static class IfcWriter
{
    private const string Undated = "2000-01-01";

    /// <summary>The file.</summary>
    /// <param name="solids">The range.</param>
    /// <param name="job">The job: site, name, date.</param>
    /// <param name="version">Version of the program.</param>
    /// <returns>ASCII; the same solids and job give the same bytes.</returns>
    public static byte[] Bytes(RangeSolids solids, Job job, string version)
    {
        ArgumentNullException.ThrowIfNull(solids);
        ArgumentNullException.ThrowIfNull(job);
        StepFile file = new();
        string Id(string path) => $"'{IfcIds.Of(job.Name, path)}'";
        double bearing = job.Site.RangeBearingDeg * Math.PI / 180;
        string north = file.Add($"IFCDIRECTION(({StepText.Real(Math.Cos(bearing))},{StepText.Real(Math.Sin(bearing))}))");
        string world = file.Axes(new(0, 0, 0), new(0, 0, 1), new(1, 0, 0));
        string context = file.Add($"IFCGEOMETRICREPRESENTATIONCONTEXT($,'Model',3,1.0E-5,{world},{north})");
        string body = file.Add($"IFCGEOMETRICREPRESENTATIONSUBCONTEXT('Body','Model',*,*,*,*,{context},$,.MODEL_VIEW.,$)");
        string axis = file.Add($"IFCGEOMETRICREPRESENTATIONSUBCONTEXT('Axis','Model',*,*,*,*,{context},$,.GRAPH_VIEW.,$)");
        string name = job.Name.Length > 0 ? job.Name : "Unnamed job";
        bool dated = DateOnly.TryParseExact(job.Date, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out _);
        string told = $"{(job.Date.Length > 0 ? "Papers of " + job.Date : "Undated draft")}. Preliminary, not for construction: connections, bracing, end walls and foundations are not checked.";
        string project = file.Add($"IFCPROJECT({Id("project")},$,{StepText.Label(name)},{StepText.Quote(told)},$,{StepText.Label(job.Revision)},'Preliminary',({context}),{Units(file)})");
        string sitePlace = file.Add($"IFCLOCALPLACEMENT($,{world})");
        string site = file.Add(
            $"IFCSITE({Id("site")},$,{StepText.Label(job.Site.Place.Length > 0 ? job.Site.Place : "Site")},$,$,{sitePlace},$,$,.ELEMENT.,{Angle(job.Site.LatitudeDeg)},{Angle(job.Site.LongitudeDeg)},{StepText.Real(job.Site.ElevationM)},$,$)");
        file.Add($"IFCRELAGGREGATES({Id("project#sites")},$,$,$,{project},({site}))");
        IfcBuildingWriter writer = new(file, body, axis, sitePlace, Id);
        List<string> buildings = [.. solids.Buildings.Select(writer.Add)];
        if (buildings.Count > 0)
        {
            file.Add($"IFCRELAGGREGATES({Id("site#buildings")},$,$,$,{site},{StepFile.List(buildings)})");
        }

        writer.Types();
        return file.Bytes(name, told, (dated ? job.Date : Undated) + "T00:00:00", version);
    }

    private static string Units(StepFile file) => file.Add("IFCUNITASSIGNMENT(" + StepFile.List(
        ((string Kind, string Prefix, string Name)[])
        [
            ("LENGTHUNIT", "$", "METRE"), ("AREAUNIT", "$", "SQUARE_METRE"), ("VOLUMEUNIT", "$", "CUBIC_METRE"), ("PLANEANGLEUNIT", "$", "RADIAN"), ("MASSUNIT", ".KILO.", "GRAM"),
        ],
        u => file.Add($"IFCSIUNIT(*,.{u.Kind}.,{u.Prefix},.{u.Name}.)")) + ")");

    // Degrees, minutes, seconds and millionths, each with the sign of the whole.
    private static string Angle(double deg)
    {
        long all = (long)Math.Round(Math.Abs(deg) * 3600e6);
        int sign = deg < 0 ? -1 : 1;
        return string.Create(CultureInfo.InvariantCulture, $"({sign * (all / 3_600_000_000)},{sign * (all / 60_000_000 % 60)},{sign * (all / 1_000_000 % 60)},{sign * (all % 1_000_000)})");
    }
}
