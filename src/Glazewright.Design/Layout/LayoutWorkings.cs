using Glazewright.Design.Contracts;
using Glazewright.Design.Form;

namespace Glazewright.Design.Layout;

/// <summary>Figures of Layout.</summary>
internal static class LayoutWorkings
{
    private static readonly Source Geometry = new Source.FirstPrinciples("plane geometry");

    public static StageReport Report(LayoutInput input, BuildingForm house, double benchM2, List<Finding> findings)
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

        return new StageReport(
            figures.ToEqList(),
            findings.ToEqList(),
            [
                benchM2 > 0 ? "Aisles are the free strips along the house; cross aisles and end turns are not drawn." : "No benches are typed: bench area and aisles are not known.",
                "Places are proposals on the dimension lines; headers, sills and jambs around doors, fans, louvers and wet wall are drawn but not sized; hangers, flues and pipe runs are not laid out.",
            ]);
    }
}
