using System.Collections.Concurrent;
using Glazewright.Design.Contracts;
using Glazewright.Science.Shape;

namespace Glazewright.Design.Shape;

/// <summary>Scores the grid, then walks from the best of each cover set to finer steps. The same shapes in the same order for any number of threads.</summary>
internal static class ShapeSearch
{
    private const int SeedsEach = 4;
    private static readonly double[] s_fractions = [0.5, 0.5, 0.25, 0.25, 0.125, 0.125];

    public static List<ShapeCell> Run(EqList<ShapeField> fields, ShapeSpace space, int threads, CancellationToken cancel)
    {
        List<GableSection> grid = space.Grid();
        List<(int Field, int Set, GableSection Section)> asked = [];
        for (int field = 0; field < fields.Count; field++)
        {
            for (int set = 0; set < fields[field].Sets.Count; set++)
            {
                foreach (GableSection section in grid)
                {
                    asked.Add((field, set, section));
                }
            }
        }

        List<ShapeCell> cells = [.. Score(fields, asked, threads, cancel)];
        if (cells.Count > 0)
        {
            Refine(fields, space, cells, threads, cancel);
        }

        return cells;
    }

    private static void Refine(EqList<ShapeField> fields, ShapeSpace space, List<ShapeCell> cells, int threads, CancellationToken cancel)
    {
        List<ShapeCell> seeds = [.. cells
            .GroupBy(c => (c.Field, c.Set))
            .SelectMany(g => g.Order(Comparer<ShapeCell>.Create(ShapeRanking.Compare)).Take(SeedsEach))];
        HashSet<(int, int, GableSection)> known = [.. cells.Select(c => (c.Field, c.Set, c.Section))];
        foreach (double fraction in s_fractions)
        {
            List<(int Field, int Set, GableSection Section)> asked = [];
            List<(int Seed, int Index)> whose = [];
            for (int i = 0; i < seeds.Count; i++)
            {
                foreach (GableSection s in space.Around(seeds[i].Section, fraction))
                {
                    if (known.Add((seeds[i].Field, seeds[i].Set, s)))
                    {
                        whose.Add((i, asked.Count));
                        asked.Add((seeds[i].Field, seeds[i].Set, s));
                    }
                }
            }

            ShapeCell[] scored = Score(fields, asked, threads, cancel);
            cells.AddRange(scored);
            foreach ((int seed, int index) in whose)
            {
                if (ShapeRanking.Compare(scored[index], seeds[seed]) < 0)
                {
                    seeds[seed] = scored[index];
                }
            }
        }
    }

    /// <summary>Scores shapes side by side, each into its own place.</summary>
    public static ShapeCell[] Score(
        EqList<ShapeField> fields, List<(int Field, int Set, GableSection Section)> asked, int threads, CancellationToken cancel)
    {
        ShapeCell[] cells = new ShapeCell[asked.Count];
        if (asked.Count == 0)
        {
            return cells;
        }

        ParallelOptions options = new() { MaxDegreeOfParallelism = Math.Max(1, threads), CancellationToken = cancel };
        Parallel.ForEach(Partitioner.Create(0, asked.Count, 64), options, range =>
        {
            // Bins and points are the same for every bearing, so one room serves all.
            SectionLight.Bench room = fields[0].Room();
            for (int i = range.Item1; i < range.Item2; i++)
            {
                cells[i] = fields[asked[i].Field].Score(asked[i].Field, asked[i].Set, asked[i].Section, room);
            }
        });
        return cells;
    }
}
