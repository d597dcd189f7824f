using Glazewright.Design.Contracts;
using Glazewright.Science.Shape;

namespace Glazewright.Design.Shape;

/// <summary>Findings of the shape finder, and what it leaves out.</summary>
internal static class ShapeFindings
{
    private static readonly Source s_geometry = new Source.FirstPrinciples("plane geometry of the noon sun");
    private static readonly Source s_section = new Source.FirstPrinciples("light through the section of a long house");
    private static readonly Source s_drip = new Source.CommonPractice("below about 6:12 a clear slope drips on the crop and keeps snow");

    public static StageReport Of(ShapeInput input, ShapeResult r, bool none, double[] outside)
    {
        string id = input.House + "/roof";
        List<Finding> findings = [];
        if (none)
        {
            findings.Add(new Finding(
                "shape/none", Severity.Miss, id,
                $"No roof keeps every slope between {ShapeWords.Pitch(input.Wishes.WaterPitchRatio, input.Units)} and {ShapeWords.Pitch(input.Wishes.SteepestPitchRatio, input.Units)} under a ridge of {ShapeWords.Length(input.RidgeAtMostM, input.Units)}: the drawn shape stands.",
                "A higher ridge, lower eaves or a flatter least pitch.", s_geometry));
        }

        foreach (ShapeWishResult wish in r.Wishes.Where(w => !w.IsMet))
        {
            string alone = wish.MetAlone == 0
                ? "No shape within the limits meets it"
                : FormattableString.Invariant($"{wish.MetAlone} of {r.Looked} shapes meet it, none together with all other wishes");
            string limits = wish.MetByRest > 0 && r.Meeting == 0 ? " This wish alone stands in the way: the others can be met." : "";
            findings.Add(new Finding(
                "shape/wish-missed", Severity.Miss, id,
                $"Wish missed: {wish.Asked}; the nearest shape has {wish.Got}. {alone}.{limits}", $"It would take {wish.WouldTake}.", s_geometry));
        }

        if (outside[input.LatitudeDeg >= 0 ? 11 : 5] < 0.5)
        {
            findings.Add(new Finding(
                "shape/polar-night", Severity.Near, id,
                $"{ShapeWords.Month(input.LatitudeDeg >= 0 ? 11 : 5)} has no light outdoors at this latitude; shapes are ranked by {ShapeWords.Month(r.WinterMonth)}, the darkest month that has.",
                "Lamps, or an empty house in those months.", s_section));
        }

        if (Math.Abs(input.LatitudeDeg) < NoonSunAngle.SolsticeDeclinationDeg)
        {
            findings.Add(new Finding(
                "shape/tropics", Severity.Note, id,
                "In the tropics the noon sun stands on either side of the house in turn: an opaque slope away from the equator faces it for part of the year.", "", s_geometry));
        }

        ShapeScore drawn = r.Drawn.Score;
        if (drawn.Missed.HasFlag(ShapeWish.Shed))
        {
            findings.Add(new Finding(
                "shape/drawn-flat", Severity.Near, id,
                $"The drawn roof has a clear slope flatter than {ShapeWords.Pitch(input.Wishes.ShedPitchRatio, input.Units)}: condensate drips, snow and dirt stay.",
                $"The finder's choice has {ShapeWords.Pitch(r.Best.Score.Shape.Section.NearPitchRatio, input.Units)}.", s_drip));
        }

        return new StageReport(
            [],
            findings.ToEqList(),
            [
                "The section takes the house as endless and alone: end walls, neighbours, skyline and single members are in the full map only.",
                "The full map keeps the sections sized for the drawn shape and leaves equipment overhead out; another shape has to be sized before it is built.",
                "Snow that slides off, drifts and wind on a steeper or higher roof are the frame stage's: design the chosen shape with glazewright design.",
            ]);
    }
}
