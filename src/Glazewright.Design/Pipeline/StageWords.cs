namespace Glazewright.Design.Pipeline;

/// <summary>What a stage does, for whoever watches.</summary>
public static class StageWords
{
    /// <summary>The words.</summary>
    /// <param name="progress">The stage that starts or ends.</param>
    public static string Of(StageProgress progress)
    {
        string what = progress.Stage switch
        {
            "form" => "Shapes",
            "frame" => "Frame: snow, wind, sections",
            "body" => "Members",
            "inside-views" => "What faces see of each other",
            "gain-table" => "Where the sun's heat goes",
            "fitted-light" or "gain-table-fitted" => "The same past the equipment",
            "duty" => "Design days",
            "plant" => "Climate equipment",
            "layout" => "Where it sits",
            "framing" => "Headers, sills, jambs",
            "framed-body" => "Members with holes framed",
            "light-map" => "Light on the benches",
            "program" => "Control program",
            "year" => "A year, minute by minute",
            "rehearsals" => "Failures on the hardest days",
            "takeoff" => "Takeoff",
            "cuts" => "Cut lists",
            "price" => "Price",
            _ => progress.Stage,
        };
        return $"{what}{(progress.Scope.Length > 0 ? $", house {progress.Scope}" : "")}{(progress.Ended ? ": done" : "")}";
    }
}
