using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Mechanics.Loads;

namespace Glazewright.Design.Layout;

/// <summary>Figures of Layout.</summary>
internal static class LayoutWorkings
{
    private static readonly Source Geometry = new Source.FirstPrinciples("plane geometry");

    public static StageReport Report(LayoutInput input, BuildingForm house, double benchM2, List<FlueLine> flues, List<Finding> findings)
    {
        List<Figure> figures = [];
        if (input.Benches.Count > 0)
        {
            Term[] runs = [.. input.Benches.Select((b, i) =>
                Term.Of($"w{i + 1}", $"Width of {b.Id}", b.WidthM, Unit.Metre, new Source.Given($"{input.Pointer}/benches/{i}/width"))
                    * Term.Of($"l{i + 1}", $"Length of {b.Id}", b.LengthM, Unit.Metre, new Source.Given($"{input.Pointer}/benches/{i}/length")))];
            Figure bench = Figure.Derive($"{input.House}/layout/bench-area", "Bench area", Unit.SquareMetre, Term.Total(runs), Geometry);
            figures.Add(bench);
            figures.Add(Figure.Derive(
                $"{input.House}/layout/bench-share", "Bench over floor", Unit.Fraction,
                Term.Of("bench", bench) / Term.Of("floor", "Floor", house.FloorAreaM2, Unit.SquareMetre, Geometry), Geometry));
        }

        Flues(input, flues, figures);
        return new StageReport(
            figures.ToEqList(),
            findings.ToEqList(),
            [
                benchM2 > 0 ? "Aisles are the free strips along the house; cross aisles and end turns are not drawn." : "No benches are typed: bench area and aisles are not known.",
                "Places are proposals on the dimension lines; hangers and pipe runs are not laid out.",
                .. flues.Count > 0
                    ? (string[])["Vents of heaters are a first proposal: pipe sizes and longest runs of direct vents are assumptions until the maker's table replaces them, gravity vents are sized by the fuel gas code's table for a straight pipe (offsets and elbows carry less). A boiler's vent is sized, not laid out. Not checked: gas meters and regulators, walks (2.1 m, 7 ft above public ones), ribs of panels, pieces that hang in a pipe's way inside, drifted snow, openings of other buildings, wind."]
                    : [],
            ]);
    }

    private static void Flues(LayoutInput input, List<FlueLine> flues, List<Figure> figures)
    {
        if (flues.Count == 0)
        {
            return;
        }

        var depth = Figure.Derive(
            $"{input.House}/layout/snow-depth", "Depth of the ground snow", Unit.Metre,
            Term.Of("p", "Ground snow", input.GroundSnowPa, Unit.AreaLoad, new Source.Given("/site/snow/ground"))
                / Term.Of("g", "Its weight density", SnowDensity.NPerM3(input.GroundSnowPa), Unit.None, new Source.Standard("ASCE 7-16", "equation 7.7-1, N/m³", Source.Mark.Read)),
            new Source.FirstPrinciples("load over density"), "Undrifted.");
        figures.Add(depth);
        figures.Add(Figure.Derive(
            $"{input.House}/layout/vent-least-height", "Least height of a vent terminal", Unit.Metre,
            Term.Of("d", depth) + Term.Of("a", "Above the snow", FlueRules.AboveSnowM, Unit.Metre, FlueRules.Terminals), FlueRules.Terminals,
            "Drifts and shovelled or fan-blown snow are deeper."));
        foreach (FlueLine f in flues)
        {
            string id = $"{input.House}/layout/{f.Heater[(f.Heater.LastIndexOf('/') + 1)..]}";
            if (f.Gravity is { } g)
            {
                Gravity(id, f, g, figures);
                continue;
            }

            figures.Add(Figure.Derive(
                $"{id}-vent-clearance", "Direct vent: least distance to air openings", Unit.Metre,
                Term.Of("c", "By kind and input", f.ClearM, Unit.Metre, FlueRules.Terminals), FlueRules.Terminals, "The maker's instructions and the adopted code govern."));
            if (f.Face is null)
            {
                continue;
            }

            figures.Add(Figure.Derive(
                $"{id}-vent-length", "Equivalent length of the vent", Unit.Metre,
                Term.Of("l", "Run", f.RunM, Unit.Metre, Geometry)
                    + Term.Of("n", "Elbows", f.Elbows, Unit.Count, Geometry) * Term.Of("e", "An elbow as straight pipe", FlueRules.ElbowM, Unit.Metre, FlueRules.Assumed),
                FlueRules.Assumed, "Carbon monoxide: the maker's table and a licensed fitter decide size and length."));
        }
    }

    private static void Gravity(string id, FlueLine f, GravityVent g, List<Figure> figures)
    {
        var rise = Figure.Derive(
            $"{id}-vent-rise", "Rise of the gravity vent", Unit.Metre,
            Term.Of("c", "Cap above the floor", f.HeightM, Unit.Metre, GravityRules.Roof) - Term.Of("h", "Flue collar above the floor", f.HeightM - g.RiseM, Unit.Metre, Geometry),
            Geometry, "The highest of: above the roof by its pitch, 6 ft (1.8 m) above the collar, above openings and neighbours near it.");
        figures.Add(rise);
        figures.Add(Figure.Derive(
            $"{id}-vent-load", "Fuel input over what the pipe carries", Unit.Fraction,
            Term.Of("i", "Input", f.InputW, Unit.Watt, Geometry) / Term.Of("m", "Carried at that rise", g.CapacityW, Unit.Watt, GravityRules.Table), GravityRules.Table,
            "Type B, straight, between the table's rows by straight lines; inputs at sea-level rating."));
        figures.Add(Figure.Derive(
            $"{id}-vent-draft", "Theoretical draft", Unit.Pascal,
            Term.Of("k", "Pressure of outside air over its gas constant, times gravity", GravityRules.DraftPa(1, g.AirPa, GravityRules.OutsideK, double.PositiveInfinity) * GravityRules.OutsideK, Unit.None, GravityRules.Draft)
                * Term.Of("H", rise)
                * (Term.Of("a", "1 over outside temperature (10 °C)", 1 / GravityRules.OutsideK, Unit.None, GravityRules.Draft)
                    - Term.Of("b", "1 over mean gas temperature (150 °C, common practice)", 1 / GravityRules.GasK, Unit.None, GravityRules.Draft)),
            GravityRules.Draft, "Without friction, at the elevation of the site: the most there can be."));
    }
}
