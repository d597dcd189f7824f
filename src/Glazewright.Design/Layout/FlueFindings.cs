using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.Plant;

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
                LayoutFindings.Text($"A burner of {line.InputW / 293.07107:0} kBtu/h is beyond our table of vent pipes (400 kBtu/h): diameter and longest run are not known."),
                "Take both from the maker's table.", FlueRules.Assumed));
        }

        if (line.Face is not { } face)
        {
            findings.Add(new Finding(
                "layout/flue-blocked", Severity.Miss, line.Heater,
                LayoutFindings.Text($"No place on any wall takes the vent terminal {line.LeastHeightM / 0.3048:0.0} ft above the floor (12 in above the snow), {line.ClearM / 0.0254:0} in from doors, vents, louvers and wet wall, off posts, girts, braces and the frames of openings. Flue gas near an opening comes back in: carbon monoxide kills."),
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

        if (line.AtJoint)
        {
            findings.Add(new Finding(
                "layout/flue-at-joint", Severity.Near, line.Heater,
                "The vent or its combustion-air pipe goes through a joint of the covering: no place beside one keeps the clearances and the steel. A profile that is cut leaks and no longer holds its sheets.",
                "Another width of sheet there, a frame of its own around both pipes, or move the heater.", LayoutFindings.Practice));
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

    public static void OfGravity(FlueLine line, BuildingForm house, PlantResult plant, List<AirOpening> openings, List<Finding> findings)
    {
        GravityVent g = line.Gravity!;
        if (line.VentM <= 0)
        {
            findings.Add(new Finding(
                "layout/flue-beyond-table", Severity.Miss, line.Heater,
                LayoutFindings.Text($"A burner of {line.InputW / 293.07107:0} kBtu/h is beyond the {g.CapacityW / 293.07107:0} kBtu/h that 8 in type B vent carries at a rise of {g.RiseM / 0.3048:0.0} ft."),
                "Smaller heaters, or a vent calculated by the fitter.", GravityRules.Table));
        }

        if (g.FansPullPa > g.DraftPa)
        {
            findings.Add(new Finding(
                "layout/flue-reversed", Severity.Danger, line.Heater,
                LayoutFindings.Text($"All exhaust fans pull the house {Column(g.FansPullPa)} below outside; warm gas {g.RiseM / 0.3048:0.0} ft high draws with {Column(g.DraftPa)} at most: air comes down the vent and flue gas into the house. Carbon monoxide kills."),
                "Sealed combustion. No interlock makes a gravity vent safe in a house with exhaust fans.", GravityRules.Draft));
        }

        if (g.OverRoofM > GravityRules.BraceM)
        {
            findings.Add(new Finding(
                "layout/flue-tall", Severity.Near, line.Heater,
                LayoutFindings.Text($"The vent stands {g.OverRoofM / 0.3048:0.0} ft above the roof for what is near it and for its own draft: it wants bracing, and sliding snow pushes it."),
                "A heater nearer to the ridge or to another wall.", LayoutFindings.Practice));
        }

        if (plant.Curtain is not null)
        {
            findings.Add(new Finding(
                "layout/flue-through-curtain", Severity.Near, line.Heater,
                "The vent passes the curtain's plane: the cloth needs a fixed, fire-safe opening around the pipe, and cannot be drawn across it.",
                "Sealed combustion out by a wall, or the heater outside the curtain's travel.", LayoutFindings.Practice));
        }

        if (plant.Vents is { RoofM2: > 0 })
        {
            findings.Add(new Finding(
                "layout/flue-roof-vents", Severity.Near, line.Heater,
                "The house has roof vents whose places are not in the job: the cap stands 4 ft beside or 1 ft above any that is open.",
                "Keep vents away from the heaters' corners.", GravityRules.Roof));
        }

        var cap = new Point3(line.AlongM, g.AcrossM, line.HeightM);
        if (openings.Find(o => o.Name == AirOpening.ExhaustFan && o.DistanceM(cap) < 4 * FlueRules.FootM) is not null)
        {
            findings.Add(new Finding(
                "layout/flue-near-intake", Severity.Near, line.Heater, "The vent ends less than 4 ft from an exhaust fan: its stream disturbs the draft.",
                "Put the heater at the other end.", LayoutFindings.Practice));
        }
    }

    public static void OfBoiler(FlueLine line, List<Finding> findings) => findings.Add(new Finding(
        "layout/boiler-place", Severity.Near, line.Heater,
        LayoutFindings.Text($"The boiler of the bench pipes ({line.InputW / 293.07107:0} kBtu/h in) has no place in the job: its vent is sized and priced by an allowance of pipe, not laid out. A boiler room with its own air is usual."),
        "Let the fitter place boiler and vent by the maker's table.", FlueRules.Assumed));

    private static Point3 TerminalOf(FlueLine line, BuildingForm house) => line.Face switch
    {
        FaceName.Left => new(line.AlongM, 0, line.HeightM),
        FaceName.Right => new(line.AlongM, house.WidthM, line.HeightM),
        FaceName.End1 => new(0, line.AlongM, line.HeightM),
        _ => new(house.LengthM, line.AlongM, line.HeightM),
    };

    // Pressure as flue and fan papers give it, SI behind it.
    private static string Column(double pressurePa) => LayoutFindings.Text($"{pressurePa / 249.08891:0.000} in. w.g. ({pressurePa:0} Pa)");
}
