namespace Glazewright.Design.Services;

/// <summary>What a circuit puts on each of its legs, VA, in the two seasons that never run together.</summary>
internal readonly record struct LegLoad(int Poles, double CoolingVa, double HeatingVa);

/// <summary>Circuits onto legs: the largest first onto the least loaded, then single moves and swaps while they help.</summary>
internal static class LegBalance
{
    private const int MostPasses = 60;

    /// <summary>First leg of each circuit; it takes that and the following ones, round the legs.</summary>
    /// <param name="loads">The circuits.</param>
    /// <param name="system">The legs.</param>
    /// <param name="already">What stands on each leg before, cooling and heating, VA.</param>
    public static int[] Assign(IReadOnlyList<LegLoad> loads, PanelSystem system, IReadOnlyList<(double CoolingVa, double HeatingVa)> already)
    {
        int n = system.Legs;
        var sums = new (double C, double H)[n];
        for (int leg = 0; leg < n; leg++)
        {
            sums[leg] = already.Count > leg ? already[leg] : default;
        }

        int[] starts = new int[loads.Count];
        int[] order = [.. Enumerable.Range(0, loads.Count).OrderByDescending(i => loads[i].Poles).ThenByDescending(i => Math.Max(loads[i].CoolingVa, loads[i].HeatingVa)).ThenBy(i => i)];
        foreach (int i in order)
        {
            starts[i] = Free(loads[i], system).MinBy(s => Rise(sums, loads[i], s, n));
            Put(sums, loads[i], starts[i], n, 1);
        }

        for (int pass = 0; pass < MostPasses && (Move(loads, system, sums, starts) | Swap(loads, system, sums, starts)); pass++)
        {
        }

        return starts;
    }

    /// <summary>Largest over mean leg, less one; 0 without load.</summary>
    public static double Imbalance(IReadOnlyList<double> legVa)
    {
        double mean = legVa.Count == 0 ? 0 : legVa.Sum() / legVa.Count;
        return mean > 0 ? legVa.Max() / mean - 1 : 0;
    }

    private static IEnumerable<int> Free(LegLoad load, PanelSystem system) => load.Poles switch
    {
        1 => Enumerable.Range(0, system.Legs).Where(system.TakesOnePole),
        _ when load.Poles == system.Legs => [0],
        _ => Enumerable.Range(0, system.Legs),
    };

    private static double Cost((double C, double H)[] sums) => sums.Sum(s => s.C * s.C + s.H * s.H);

    private static double Rise((double C, double H)[] sums, LegLoad load, int start, int n)
    {
        double rise = 0;
        for (int p = 0; p < load.Poles; p++)
        {
            (double c, double h) = sums[(start + p) % n];
            rise += load.CoolingVa * (2 * c + load.CoolingVa) + load.HeatingVa * (2 * h + load.HeatingVa);
        }

        return rise;
    }

    private static void Put((double C, double H)[] sums, LegLoad load, int start, int n, int sign)
    {
        for (int p = 0; p < load.Poles; p++)
        {
            ref (double C, double H) sum = ref sums[(start + p) % n];
            sum = (sum.C + sign * load.CoolingVa, sum.H + sign * load.HeatingVa);
        }
    }

    private static bool Move(IReadOnlyList<LegLoad> loads, PanelSystem system, (double C, double H)[] sums, int[] starts)
    {
        bool moved = false;
        for (int i = 0; i < loads.Count; i++)
        {
            Put(sums, loads[i], starts[i], system.Legs, -1);
            int best = Free(loads[i], system).MinBy(s => Rise(sums, loads[i], s, system.Legs));
            if (Rise(sums, loads[i], best, system.Legs) < Rise(sums, loads[i], starts[i], system.Legs) - 1e-6)
            {
                starts[i] = best;
                moved = true;
            }

            Put(sums, loads[i], starts[i], system.Legs, 1);
        }

        return moved;
    }

    private static bool Swap(IReadOnlyList<LegLoad> loads, PanelSystem system, (double C, double H)[] sums, int[] starts)
    {
        bool swapped = false;
        for (int i = 0; i < loads.Count; i++)
        {
            for (int k = i + 1; k < loads.Count; k++)
            {
                if (loads[i].Poles != loads[k].Poles || starts[i] == starts[k])
                {
                    continue;
                }

                double before = Cost(sums);
                Exchange(i, k);
                if (Cost(sums) < before - 1e-6)
                {
                    swapped = true;
                }
                else
                {
                    Exchange(i, k);
                }
            }
        }

        return swapped;

        void Exchange(int i, int k)
        {
            Put(sums, loads[i], starts[i], system.Legs, -1);
            Put(sums, loads[k], starts[k], system.Legs, -1);
            (starts[i], starts[k]) = (starts[k], starts[i]);
            Put(sums, loads[i], starts[i], system.Legs, 1);
            Put(sums, loads[k], starts[k], system.Legs, 1);
        }
    }
}
