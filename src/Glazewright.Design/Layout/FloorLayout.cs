using Glazewright.Design.Brief;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;

namespace Glazewright.Design.Layout;

/// <summary>Benches as typed, and the aisles between them.</summary>
internal static class FloorLayout
{
    /// <summary>Least aisle a person with a tray passes (common practice), m.</summary>
    private const double LeastAisleM = 0.46;

    public static void Place(LayoutInput input, BuildingForm house, List<PlacedItem> placed, List<Finding> findings)
    {
        List<Bench> benches = [.. input.Benches.OrderBy(b => b.OffsetYM).ThenBy(b => b.StartXM)];
        foreach (Bench bench in benches)
        {
            placed.Add(new PlacedItem(
                $"{house.Id}/{bench.Id}", PlacedKind.Bench, "Bench", new Point3(bench.StartXM, bench.OffsetYM, 0),
                new Point3(bench.LengthM, bench.WidthM, bench.HeightM), FaceName.Floor));
            if (bench.StartXM < -1e-6 || bench.OffsetYM < -1e-6 || bench.StartXM + bench.LengthM > house.LengthM + 1e-6
                || bench.OffsetYM + bench.WidthM > house.WidthM + 1e-6)
            {
                findings.Add(new Finding(
                    "layout/bench-outside", Severity.Miss, $"{house.Id}/{bench.Id}", "The bench reaches through a wall.", "Shorten or move it.",
                    new Source.FirstPrinciples("plane geometry")));
            }
        }

        Overlaps(house, benches, findings);
        if (benches.Count == 0)
        {
            return;
        }

        double across = Math.Max(benches.Min(b => b.StartXM), house.LengthM - benches.Max(b => b.StartXM + b.LengthM));
        double widest = Math.Max(Aisles(house, benches, placed, findings), across);
        if (widest < input.MainAisleM - 0.01)
        {
            findings.Add(new Finding(
                "layout/main-aisle", Severity.Near, house.Id,
                LayoutFindings.Text($"The widest aisle, along the house or across its end, is {widest / 0.3048:0.0} ft; {input.MainAisleM / 0.3048:0.0} ft are asked for carts."),
                "Narrow a bench or leave one out.", new Source.Given($"{input.Pointer}/mainAisle")));
        }
    }

    private static void Overlaps(BuildingForm house, List<Bench> benches, List<Finding> findings)
    {
        for (int i = 0; i < benches.Count; i++)
        {
            for (int j = i + 1; j < benches.Count; j++)
            {
                Bench a = benches[i];
                Bench b = benches[j];
                bool x = a.StartXM < b.StartXM + b.LengthM - 1e-6 && b.StartXM < a.StartXM + a.LengthM - 1e-6;
                bool y = a.OffsetYM < b.OffsetYM + b.WidthM - 1e-6 && b.OffsetYM < a.OffsetYM + a.WidthM - 1e-6;
                if (x && y)
                {
                    findings.Add(new Finding(
                        "layout/benches-overlap", Severity.Miss, $"{house.Id}/{b.Id}", $"Benches {a.Id} and {b.Id} stand in each other.", "Move one.",
                        new Source.FirstPrinciples("plane geometry")));
                }
            }
        }
    }

    // Free strips along the house between the bench runs and the walls.
    private static double Aisles(BuildingForm house, List<Bench> benches, List<PlacedItem> placed, List<Finding> findings)
    {
        double at = 0;
        double widest = 0;
        int count = 0;
        bool atWall = true;
        foreach ((double from, double to) in benches.Select(b => (b.OffsetYM, b.OffsetYM + b.WidthM)).Append((house.WidthM, house.WidthM)))
        {
            double widthM = from - at;
            // A gap behind a bench at the wall is no aisle.
            bool gap = (atWall || from >= house.WidthM) && widthM < LeastAisleM;
            atWall = false;
            if (widthM > 0.2 && !gap)
            {
                count++;
                widest = Math.Max(widest, widthM);
                placed.Add(new PlacedItem(
                    $"{house.Id}/aisle-{count}", PlacedKind.Aisle, LayoutFindings.Text($"Aisle {widthM / 0.3048:0.0} ft"),
                    new Point3(0, at, 0), new Point3(house.LengthM, widthM, 0), FaceName.Floor));
                if (widthM < LeastAisleM)
                {
                    findings.Add(new Finding(
                        "layout/narrow-aisle", Severity.Near, $"{house.Id}/aisle-{count}",
                        LayoutFindings.Text($"An aisle of {widthM / 0.0254:0} in is too narrow to work in."), "Widen it to 18 in or close it.", LayoutFindings.Practice));
                }
            }

            at = Math.Max(at, to);
        }

        return widest;
    }
}
