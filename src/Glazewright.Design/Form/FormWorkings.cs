using Glazewright.Design.Contracts;

namespace Glazewright.Design.Form;

/// <summary>Figures and findings of Form.</summary>
internal static class FormWorkings
{
    /// <summary>Obliquity of the ecliptic: declination at the solstices, ° (Astronomical Almanac; from memory).</summary>
    private const double SolsticeDeclinationDeg = 23.44;

    private static readonly Source Plane = new Source.FirstPrinciples("plane geometry");

    public static StageReport Report(FormInput input, EqList<BuildingForm> buildings, List<SharedPiece> shared)
    {
        List<Figure> figures = [];
        foreach (BuildingForm b in buildings)
        {
            Add(figures, input, b);
        }

        List<Finding> findings = [.. FormFindings.Lot(input, buildings), .. FormFindings.Overlaps(buildings), .. FormFindings.Pitches(buildings)];
        findings.AddRange(FormFindings.Shadows(input, buildings, SolsticeDeclinationDeg));
        return new StageReport(
            figures.ToEqList(),
            findings.ToEqList(),
            [
                "Walls and roofs are taken as planes through the dimension lines; sheet thickness, overhangs and gutters are not modelled.",
                "Link buildings are plain gable boxes; their inside walls carry no heat or light.",
            ]);
    }

    private static void Add(List<Figure> figures, FormInput input, BuildingForm b)
    {
        int index = input.Houses.ToList().FindIndex(h => h.Id == b.Id);
        string at = index >= 0 ? $"/houses/{index}" : $"/links/{input.Links.ToList().FindIndex(l => l.Id == b.Id)}";
        Term width = Term.Of("width", "Width", b.WidthM, Unit.Metre, new Source.Given($"{at}/width"));
        Term length = Term.Of("length", "Length", b.LengthM, Unit.Metre, new Source.Given($"{at}/length"));
        Term leftEave = Term.Of("eave_left", "Left eave", b.Roof.LeftEaveM, Unit.Metre, new Source.Given($"{at}/roof/leftEave"));
        Term rightEave = Term.Of("eave_right", "Right eave", b.Roof.RightEaveM, Unit.Metre, new Source.Given($"{at}/roof/rightEave"));
        Term offset = Term.Of("ridge_offset", "Ridge from the left wall", b.Roof.RidgeOffsetM, Unit.Metre, new Source.Given($"{at}/roof/ridgeOffset"));
        Term pitch = Term.Of("pitch_left", "Left pitch", b.Roof.LeftPitch, Unit.None, new Source.Given($"{at}/roof/leftPitch"));

        Figure Derive(string name, string label, Unit unit, Term term)
        {
            Figure figure = Figure.Derive($"{b.Id}/form/{name}", label, unit, term, Plane);
            figures.Add(figure);
            return figure;
        }

        Figure floor = Derive("floor-area", "Floor area", Unit.SquareMetre, width * length);
        Figure ridge = Derive("ridge-height", "Ridge height", Unit.Metre, leftEave + offset * pitch);
        Term ridgeTerm = Term.Of("ridge", ridge);
        Figure section = Derive(
            "section-area",
            "Cross-section",
            Unit.SquareMetre,
            offset * (leftEave + ridgeTerm) / 2 + (width - offset) * (rightEave + ridgeTerm) / 2);
        Derive("volume", "Enclosed volume", Unit.CubicMetre, Term.Of("section", section) * length);
        Term leftSlope = Term.Sqrt(offset * offset + (ridgeTerm - leftEave) * (ridgeTerm - leftEave));
        Term rightSlope = Term.Sqrt((width - offset) * (width - offset) + (ridgeTerm - rightEave) * (ridgeTerm - rightEave));
        Figure left = Derive("slope-left", "Left slope, eave to ridge", Unit.Metre, leftSlope);
        Figure right = Derive("slope-right", "Right slope, eave to ridge", Unit.Metre, rightSlope);
        Derive("roof-area", "Roof area", Unit.SquareMetre, (Term.Of("slope_left", left) + Term.Of("slope_right", right)) * length);
        double exposedM2 = b.Faces.Where(f => f.Name != FaceName.Floor).Sum(f => f.ExposedM2);
        figures.Add(Figure.Observe(
            $"{b.Id}/form/exposed-area",
            "Walls and roof against outdoor air",
            Unit.SquareMetre,
            exposedM2,
            "Areas of walls and roof slopes less the pieces clipped against other buildings",
            [.. b.Faces.Where(f => f.Name != FaceName.Floor).Select(f => new WorkingInput(
                f.Name.ToString(), f.Id, f.Id, f.ExposedM2, Unit.SquareMetre, Plane))],
            "Planes through the dimension lines",
            Plane));
        if (b.IsHouse)
        {
            Derive(
                "exposed-to-floor",
                "Exposed surface over floor",
                Unit.None,
                Term.Of("exposed", figures[^1]) / Term.Of("floor", floor));
        }
    }
}
