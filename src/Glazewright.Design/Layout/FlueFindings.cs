using Glazewright.Design.Contracts;
using Glazewright.Design.Form;

namespace Glazewright.Design.Layout;

/// <summary>What is wrong with a vent, in words.</summary>
internal static class FlueFindings
{
    private const string Cure = "Move the heater, the door or the louvers, or go up through the roof by the maker's roof terminal; a licensed fitter decides.";

    public static void Of(FlueLine line, FormResult form, BuildingForm house, List<AirOpening> openings, List<Finding> findings)
    {
        if (line.VentM <= 0)
        {
            findings.Add(new Finding(
                "layout/flue-beyond-table", Severity.Miss, line.Heater,
                LayoutFindings.Text($"A burner of {line.InputW / 293.07107:0} kBtu/h is beyond our table of vent pipes (400): diameter and longest run are not known."),
                "Take both from the maker's table.", FlueRules.Assumed));
        }

        if (line.Face is not { } face)
        {
            string clear = line.Sealed
                ? LayoutFindings.Text($"{line.ClearM / 0.0254:0} in from doors, vents, louvers and wet wall")
                : "4 ft below or beside or 1 ft above doors and vents, and 3 ft above louvers, wet wall and filter intake within 10 ft";
            findings.Add(new Finding(
                "layout/flue-blocked", line.Sealed ? Severity.Miss : Severity.Danger, line.Heater,
                LayoutFindings.Text($"No place on any wall takes the vent terminal {line.LeastHeightM / 0.3048:0.0} ft above the floor (12 in above the snow), {clear}, off columns and braces. Flue gas near an opening comes back in: carbon monoxide kills."),
                Cure, FlueRules.Terminals));
            return;
        }

        if (line.MostM > 0 && line.EquivalentM > line.MostM + 1e-6)
        {
            findings.Add(new Finding(
                "layout/flue-too-long", Severity.Miss, line.Heater,
                LayoutFindings.Text($"The vent is {line.EquivalentM / 0.3048:0} ft with {line.Elbows} elbows at 5 ft each; {line.MostM / 0.3048:0} ft is the most we assume for {line.VentM / 0.0254:0} in pipe."),
                "Hang the heater nearer to its wall, or take the next diameter where the maker's table allows it.", FlueRules.Assumed));
        }

        Point3 at = TerminalOf(line, house);
        if (openings.Find(o => FlueRules.TooNear(at, o)) is { } inlet)
        {
            findings.Add(new Finding(
                "layout/flue-near-intake", Severity.Near, line.Heater,
                LayoutFindings.Text($"The vent ends {inlet.DistanceM(at) / 0.3048:0.0} ft from {(inlet.Name == AirOpening.ExhaustFan ? "an exhaust fan: its stream disturbs the draft" : $"a {inlet.Name} that fans draw through: flue gas can be drawn in")}. The clearance the code asks of its kind is kept; no better place was free."),
                "Ask the authority whether the opening counts as a mechanical air inlet (3 ft above within 10 ft); farther is better.", FlueRules.Terminals));
        }

        foreach ((BuildingForm other, double gapM, double from, double to) in LayoutFindings.InFront(house, form, face))
        {
            if (gapM < FlueRules.FacingM && line.AlongM > from && line.AlongM < to)
            {
                findings.Add(new Finding(
                    "layout/flue-faces-building", Severity.Near, line.Heater,
                    LayoutFindings.Text($"The vent blows at {other.Name}, {gapM / 0.3048:0.0} ft away: flue gas and ice there, and its doors and intakes are not checked here."),
                    Cure, LayoutFindings.Practice));
            }
        }
    }

    private static Point3 TerminalOf(FlueLine line, BuildingForm house) => line.Face switch
    {
        FaceName.Left => new(line.AlongM, -FlueRules.FootM, line.HeightM),
        FaceName.Right => new(line.AlongM, house.WidthM + FlueRules.FootM, line.HeightM),
        FaceName.End1 => new(-FlueRules.FootM, line.AlongM, line.HeightM),
        _ => new(house.LengthM + FlueRules.FootM, line.AlongM, line.HeightM),
    };
}
