using System.Globalization;
using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Document;
using Glazewright.Design.Form;
using Glazewright.Design.Shape;

namespace Glazewright.Web.Jobs;

/// <summary>What putting a found shape into a job writes: its roof, the coverings that differ, and the bearing where the ridge was turned.</summary>
public static class ShapeEdits
{
    /// <summary>The edits.</summary>
    /// <param name="document">The job as it is.</param>
    /// <param name="index">Place of the house in the job, from 0.</param>
    /// <param name="job">The job, typed.</param>
    /// <param name="shape">The shape.</param>
    /// <param name="units">Units to write in.</param>
    public static IReadOnlyList<Edit> Of(JobDocument document, int index, Job job, ShapeCandidate shape, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(document);
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(shape);
        House house = job.Houses[index];
        string at = string.Create(CultureInfo.InvariantCulture, $"/houses/{index}/covering/");
        return
        [
            .. RoofDrag.Edits(document, index, shape.Roof, units),
            .. from cover in shape.Coverings
               where house.Coverings.Any(c => c.Face == cover.Face && c.Cover.Kind != cover.Cover.Kind)
               select Edit.Typed(at + Key(cover.Face), cover.Cover.Kind),
            .. Math.Abs(shape.RangeBearingDeg - job.Site.RangeBearingDeg) > 1e-6 ? (Edit[])[Edit.Typed("/site/bearing", string.Create(CultureInfo.InvariantCulture, $"{(shape.RangeBearingDeg % 360 + 360) % 360:0.###} deg"))] : [],
        ];
    }

    private static string Key(FaceName face) => face switch { FaceName.Left => "left", FaceName.Right => "right", FaceName.RoofLeft => "roof-left", FaceName.RoofRight => "roof-right", FaceName.End1 => "end-1", _ => "end-2" };
}
