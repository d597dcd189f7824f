using Glazewright.Design.Body;
using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.Frame;
using Glazewright.Design.Layout;
using Glazewright.Design.LightMaps;
using Glazewright.Science.Weather;

namespace Glazewright.Design.Shape;

/// <summary>Looks at a shape again with the full light map: ends, members, openings, neighbours, skyline.</summary>
public static class ShapeRechecks
{
    /// <summary>A recheck in the job's own surroundings. Members keep the sections sized for the drawn shape; equipment overhead is left out.</summary>
    /// <param name="job">The job.</param>
    /// <param name="house">House id.</param>
    /// <param name="frames">Frames of the houses as drawn.</param>
    /// <param name="weather">Hourly year.</param>
    /// <returns>The recheck.</returns>
    public static ShapeRecheck ByLightMap(Job job, string house, EqList<FrameResult> frames, WeatherYear weather) => (shape, cancel) =>
    {
        Job changed = Changed(job, house, shape);
        FormResult form = FormStage.Run(FormInput.From(changed));
        LightMap map = LightMapStage.Run(
            LightInput.From(changed, house), form, BodyStage.Run(form, frames), new LayoutResult(house, [], 0, StageReport.Empty), weather, cancel);
        return new ShapeFullLight(map.Months.Select(m => m.MeanMolPerM2Day).ToEqList(), map.Months.Select(m => m.EvennessRatio).ToEqList());
    };

    /// <summary>The job with a house given another shape.</summary>
    /// <param name="job">The job.</param>
    /// <param name="house">House id.</param>
    /// <param name="shape">The shape.</param>
    /// <returns>The changed job.</returns>
    public static Job Changed(Job job, string house, ShapeCandidate shape)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(shape);
        return job with
        {
            Site = job.Site with { RangeBearingDeg = shape.RangeBearingDeg },
            Houses = job.Houses.Select(h => h.Id == house ? h with { Roof = shape.Roof, Coverings = Coverings(h, shape) } : h).ToEqList(),
        };
    }

    private static EqList<FaceCovering> Coverings(House house, ShapeCandidate shape) =>
        house.Coverings.Select(c => shape.Coverings.FirstOrDefault(s => s.Face == c.Face) ?? c).ToEqList();
}
