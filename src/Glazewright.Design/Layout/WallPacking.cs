namespace Glazewright.Design.Layout;

/// <summary>A piece and where it was put on its wall.</summary>
/// <param name="Index">Which of the pieces asked for.</param>
/// <param name="Place">Where.</param>
internal readonly record struct Put(int Index, WallPlace Place);

/// <summary>
/// Square pieces on a wall: spread evenly when that goes, else packed from the left in every order of their sizes, one over another where the roof
/// allows. Packed in a given order each piece takes the first free place, and no packing in that order ends sooner.
/// </summary>
internal static class WallPacking
{
    private const int MostOrders = 220;

    /// <summary>Finds places for all pieces and takes them; null, and nothing taken, when they do not all fit.</summary>
    public static List<Put>? TryAll(WallPlan wall, IReadOnlyList<double> sizesM, bool clear = true) =>
        sizesM.Count == 0 ? [] : Spread(wall, sizesM, clear) ?? Packed(wall, sizesM, clear);

    /// <summary>Whether they fit, in whatever way; takes nothing.</summary>
    public static bool Fits(WallPlan wall, IReadOnlyList<double> sizesM) => sizesM.Count == 0 || Packed(wall.Copy(), sizesM, true) is not null;

    /// <summary>How many of like pieces fit, up to a number.</summary>
    public static int Most(WallPlan wall, double sizeM, int wanted)
    {
        for (int n = Math.Min(wanted, 2 * (int)Math.Floor(wall.LengthM / sizeM)); n > 0; n--)
        {
            if (Fits(wall, [.. Enumerable.Repeat(sizeM, n)]))
            {
                return n;
            }
        }

        return 0;
    }

    // Largest first, as they have the fewest places; each as near its even share of the wall as it can.
    private static List<Put>? Spread(WallPlan wall, IReadOnlyList<double> sizesM, bool clear)
    {
        WallPlan trial = wall.Copy();
        List<Put> puts = [];
        int[] order = [.. Enumerable.Range(0, sizesM.Count).OrderByDescending(i => sizesM[i]).ThenBy(i => i)];
        for (int i = 0; i < order.Length; i++)
        {
            double size = sizesM[order[i]];
            double middleM = wall.LengthM * (Slot(i, order.Length) + 0.5) / order.Length;
            if (trial.Near(size, size, middleM, [Sill(wall, size)], clear) is not { } place)
            {
                return null;
            }

            trial.Add(place);
            puts.Add(new Put(order[i], place));
        }

        puts.ForEach(p => wall.Add(p.Place));
        return puts;
    }

    private static List<Put>? Packed(WallPlan wall, IReadOnlyList<double> sizesM, bool clear)
    {
        int[] bySize = [.. Enumerable.Range(0, sizesM.Count).OrderByDescending(i => sizesM[i]).ThenBy(i => i)];
        for (int pairs = 0; pairs <= sizesM.Count / 2; pairs++)
        {
            // Like pieces stand over each other, the largest first.
            List<(double SizeM, int[] Indices)> columns = [];
            int made = 0;
            for (int i = 0; i < bySize.Length; i++)
            {
                bool pair = made < pairs && i + 1 < bySize.Length && Math.Abs(sizesM[bySize[i]] - sizesM[bySize[i + 1]]) < 1e-9;
                columns.Add((sizesM[bySize[i]], pair ? [bySize[i], bySize[i + 1]] : [bySize[i]]));
                (made, i) = pair ? (made + 1, i + 1) : (made, i);
            }

            if (made < pairs)
            {
                break;
            }

            if (columns.Sum(c => c.SizeM + wall.Module.GapM) - wall.Module.GapM > wall.LengthM - 2 * wall.Module.EdgeM + 1e-9)
            {
                continue;
            }

            foreach (int[] order in Orders(columns))
            {
                if (LeftToRight(wall, [.. order.Select(i => columns[i])], clear) is { } puts)
                {
                    puts.ForEach(p => wall.Add(p.Place));
                    return puts;
                }
            }
        }

        return null;
    }

    private static List<Put>? LeftToRight(WallPlan wall, List<(double SizeM, int[] Indices)> columns, bool clear)
    {
        List<Put> puts = [];
        double at = 0;
        foreach ((double size, int[] indices) in columns)
        {
            double heightM = indices.Length * size + (indices.Length - 1) * wall.Module.GapM;
            double sillM = Sill(wall, heightM);
            if (wall.First(at, size, heightM, sillM, clear) is not { } place)
            {
                return null;
            }

            for (int k = 0; k < indices.Length; k++)
            {
                puts.Add(new Put(indices[k], new WallPlace(place.UM, sillM + k * (size + wall.Module.GapM), size, size)));
            }

            at = place.UM + size + wall.Module.GapM;
        }

        return puts;
    }

    /// <summary>The usual sill, lower where the eave asks for it, never below the least.</summary>
    public static double Sill(WallPlan wall, double heightM) =>
        Math.Max(Math.Min(wall.Module.SillM, wall.Module.StepM * Math.Floor((wall.LowEaveM - 0.1 - heightM) / wall.Module.StepM)), wall.Module.LeastSillM);

    // Different orders of the columns by size and height; past a bound only the first ones.
    private static IEnumerable<int[]> Orders(List<(double SizeM, int[] Indices)> columns)
    {
        int[][] kinds = [.. Enumerable.Range(0, columns.Count).GroupBy(i => (columns[i].SizeM, columns[i].Indices.Length)).Select(g => g.ToArray())];
        int[] left = [.. kinds.Select(k => k.Length)];
        var now = new int[columns.Count];
        int given = 0;

        IEnumerable<int[]> Fill(int depth)
        {
            if (depth == now.Length)
            {
                given++;
                yield return [.. now];
                yield break;
            }

            for (int k = 0; k < kinds.Length && given < MostOrders; k++)
            {
                if (left[k] == 0)
                {
                    continue;
                }

                now[depth] = kinds[k][^left[k]];
                left[k]--;
                foreach (int[] order in Fill(depth + 1))
                {
                    yield return order;
                }

                left[k]++;
            }
        }

        return Fill(0);
    }

    // Big ones towards the middle, small ones outward: the order of slots from the centre.
    private static int Slot(int index, int count)
    {
        int half = index / 2;
        int middle = (count - 1) / 2;
        return index % 2 == 0 ? Math.Max(middle - half, 0) : Math.Min(middle + half + 1, count - 1);
    }
}
