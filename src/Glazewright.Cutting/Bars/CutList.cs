namespace Glazewright.Cutting.Bars;

/// <summary>Turns a packing of sizes back into sticks with marks, in the order of the saw.</summary>
internal static class CutList
{
    /// <summary>Runs of sticks cut alike.</summary>
    /// <param name="problem">The problem as given.</param>
    /// <param name="stocks">The stocks the packing's numbers mean.</param>
    /// <param name="sizes">Cut length of each size, longest first.</param>
    /// <param name="packing">How often each pattern is cut.</param>
    /// <returns>Runs; marks are handed out in the order of the demands.</returns>
    public static List<CutRun> Write(CutProblem problem, IReadOnlyList<StockLength> stocks, int[] sizes, Packing packing)
    {
        Queue<(string Mark, int Count)>[] waiting = Array.ConvertAll(sizes, size => new Queue<(string, int)>(
            problem.Demands.Where(d => d.LengthTicks == size && d.Count > 0).Select(d => (d.Mark, d.Count))));
        (string Mark, int Left)[] open = new (string, int)[sizes.Length];
        List<CutRun> runs = [];
        (Pattern Pattern, int Times)[] ordered = [.. InSawOrder(packing, stocks)];
        Pattern[] setUps = [.. ordered.Select(run => run.Pattern).Where(pattern => !ordered.Any(other => pattern.IsPartOf(other.Pattern)))];
        foreach ((Pattern pattern, int times) in ordered.OrderBy(run => SetUpOf(run.Pattern)))
        {
            int setUp = SetUpOf(pattern) + 1;
            StockLength stock = stocks[pattern.Stock];
            for (int stick = 0; stick < times; stick++)
            {
                List<CutPiece> pieces = [];
                for (int i = 0; i < sizes.Length; i++)
                {
                    for (int n = 0; n < pattern.Counts[i]; n++)
                    {
                        pieces.Add(new CutPiece(NextMark(i), sizes[i]));
                    }
                }

                if (runs.Count > 0 && runs[^1].SetUp == setUp && runs[^1].Pattern.Pieces.SequenceEqual(pieces))
                {
                    runs[^1] = runs[^1] with { Sticks = runs[^1].Sticks + 1 };
                }
                else
                {
                    runs.Add(new CutRun(setUp, 1, Cut(problem.Saw, stock, pieces)));
                }
            }
        }

        return runs;

        int SetUpOf(Pattern pattern) => Array.FindIndex(setUps, full => full.Equals(pattern) || pattern.IsPartOf(full));

        string NextMark(int i)
        {
            if (open[i].Left == 0)
            {
                open[i] = waiting[i].Dequeue();
            }

            open[i].Left--;
            return open[i].Mark;
        }
    }

    private static IEnumerable<(Pattern Pattern, int Times)> InSawOrder(Packing packing, IReadOnlyList<StockLength> stocks) =>
        packing.Runs
            .OrderByDescending(run => stocks[run.Pattern.Stock].LengthTicks)
            .ThenBy(run => run.Pattern.Stock)
            .ThenByDescending(run => run.Times)
            .ThenByDescending(run => run.Pattern.Counts, Comparer<int[]>.Create((a, b) => a.AsSpan().SequenceCompareTo(b)));

    /// <summary>The saw parts the last piece from the drop too; where there is no room for the whole kerf, the blade takes what is left.</summary>
    private static CutPattern Cut(SawRules saw, StockLength stock, List<CutPiece> pieces)
    {
        int left = stock.LengthTicks - saw.EndTrimTicks - pieces.Sum(piece => piece.LengthTicks);
        int kerf = Math.Min(left, pieces.Count * saw.KerfTicks);
        int drop = left - kerf;
        return new CutPattern(stock, pieces, kerf, drop, drop > 0 && drop >= saw.MinUsableDropTicks);
    }
}
