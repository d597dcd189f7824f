using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Papers.Drawing;

namespace Glazewright.Papers.Sheets;

/// <summary>What all sheets of a job have in common.</summary>
internal static class SheetStyle
{
    public const string Preliminary =
        "Preliminary, not for construction. Structure is for review and sealing by a licensed engineer under the code adopted locally; loads to be confirmed with the authority having jurisdiction.";

    public static LengthStyle Lengths(Job job) => job.Units == UnitSystem.Us ? LengthStyle.FeetInches : LengthStyle.Millimetres;

    public static SheetSize Size(Job job) => (job.Units, job.Sheets) switch
    {
        (UnitSystem.Us, SheetPaper.Small) => SheetSize.AnsiB,
        (UnitSystem.Us, _) => SheetSize.AnsiD,
        (_, SheetPaper.Small) => SheetSize.A3,
        _ => SheetSize.A1,
    };

    public static IReadOnlyList<Entity> Border(Job job, string title, string number, string scale, params string[] notes) =>
        Furniture.Border(Size(job), new TitleText(
            (job.Name.Length > 0 ? job.Name : "Unnamed job") + (job.Parties.Number.Length > 0 ? " · no. " + job.Parties.Number : ""),
            job.Parties.Address.Length > 0 ? job.Parties.Address : job.Site.Place,
            title,
            number,
            scale,
            job.Date.Length > 0 ? job.Date : null,
            job.Revision.Length > 0 ? job.Revision : "draft",
            notes)
        { By = job.Parties.Contractor });

    /// <summary>The slope of a roof side as the trade writes it: 6:12, or degrees in metric jobs.</summary>
    public static string Pitch(double riseOverRun, LengthStyle style) => style == LengthStyle.FeetInches
        ? FormattableString.Invariant($"{12 * riseOverRun:0.##}:12")
        : FormattableString.Invariant($"{Math.Atan(riseOverRun) * 180 / Math.PI:0.#}°");

    /// <summary>A length in running text, where millimetres must say so.</summary>
    public static string Length(double lengthM, LengthStyle style) => LengthText.Of(lengthM, style) + (style == LengthStyle.Millimetres ? " mm" : "");

    /// <summary>Compass word of a wall.</summary>
    public static string Facing(BuildingForm building, FaceName face) => Compass.Word(building.Face(face).AzimuthDeg);

    public static Spot Flat(Point3 p) => new(p.XM, p.YM);
}
