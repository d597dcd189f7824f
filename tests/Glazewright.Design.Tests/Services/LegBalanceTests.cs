using CsCheck;
using Glazewright.Design.Brief;
using Glazewright.Design.Services;

namespace Glazewright.Design.Tests.Services;

public class LegBalanceTests
{
    private static readonly PanelSystem Split = PanelSystem.Of(Phase.Single, 240, false);
    private static readonly PanelSystem Wye = PanelSystem.Of(Phase.Three, 208, false);
    private static readonly PanelSystem Delta = PanelSystem.Of(Phase.Three, 240, false);

    private static double[] Legs(LegLoad[] loads, int[] starts, int n, Func<LegLoad, double> of)
    {
        double[] sums = new double[n];
        for (int i = 0; i < loads.Length; i++)
        {
            for (int p = 0; p < loads[i].Poles; p++)
            {
                sums[(starts[i] + p) % n] += of(loads[i]);
            }
        }

        return sums;
    }

    // Model: every way to share up to nine circuits between two legs. Largest-first is within 7/6 of the best fuller leg (Graham 1969, textbook), and moves only help.
    [Fact]
    public void Two_legs_are_within_a_sixth_of_the_best() => Gen.Double[10, 2000].Array[1, 9].Sample(
        va =>
        {
            LegLoad[] loads = [.. va.Select(v => new LegLoad(1, v, v))];
            double ours = Legs(loads, LegBalance.Assign(loads, Split, []), 2, l => l.CoolingVa).Max();
            double best = Enumerable.Range(0, 1 << va.Length).Min(mask =>
            {
                double a = va.Where((_, i) => (mask >> i & 1) == 1).Sum();
                return Math.Max(a, va.Sum() - a);
            });
            Assert.True(ours <= best * 7 / 6 + 1e-6, $"{ours} against {best}");
        },
        iter: 300);

    [Fact]
    public void Same_loads_on_any_system_stand_on_legs_that_it_has_and_none_on_the_high_leg() =>
        Gen.Select(Gen.Int[1, 3], Gen.Double[0, 2000], Gen.Double[0, 2000], (p, c, h) => new LegLoad(p, c, h)).Array[0, 24].Sample(
            loads =>
            {
                foreach (PanelSystem system in new[] { Wye, Delta })
                {
                    int[] starts = LegBalance.Assign(loads, system, []);
                    Assert.Equal(starts, LegBalance.Assign(loads, system, []));
                    Assert.All(loads.Zip(starts), x => Assert.True(x.Second is >= 0 and < 3 && (x.First.Poles < 3 || x.Second == 0) && (x.First.Poles > 1 || system.TakesOnePole(x.Second))));
                    Assert.Equal(loads.Sum(l => l.Poles * l.HeatingVa), Legs(loads, starts, 3, l => l.HeatingVa).Sum(), 1e-6);
                }
            },
            iter: 300);

    // Two loads of summer and two of winter: each season is even only when the pairs are split, not when all four are dealt in turn by size.
    [Fact]
    public void Seasons_are_evened_each_for_itself()
    {
        LegLoad[] loads = [new(1, 1000, 0), new(1, 0, 900), new(1, 800, 0), new(1, 0, 700)];
        int[] starts = LegBalance.Assign(loads, Split, []);
        Assert.NotEqual(starts[0], starts[2]);
        Assert.NotEqual(starts[1], starts[3]);
    }

    [Fact]
    public void What_stands_on_a_leg_before_is_counted() => Assert.Equal([1], LegBalance.Assign([new LegLoad(1, 100, 100)], Split, [(500, 0), (0, 0)]));

    [Fact]
    public void Imbalance_of_nothing_is_nothing()
    {
        Assert.Equal(0, LegBalance.Imbalance([0, 0]));
        Assert.Equal(0.5, LegBalance.Imbalance([300, 100]), 1e-12);
    }

    // Spaces: no space twice, and each number stands on the leg its row has.
    [Fact]
    public void Every_circuit_has_spaces_of_its_own_on_its_legs() =>
        Gen.Select(Gen.Int[2, 3], Gen.Select(Gen.Int[1, 3], Gen.Int[0, 2]).Array[1, 40]).Sample(
            (legs, asks) =>
            {
                PanelSpaces spaces = new(legs);
                HashSet<int> taken = [];
                foreach ((int poles, int start) in asks)
                {
                    int[] numbers = [.. spaces.Take(Math.Min(poles, legs), start % legs).Number.Split(',').Select(int.Parse)];
                    Assert.All(numbers, n => Assert.True(taken.Add(n)));
                    Assert.Equal(start % legs, (numbers[0] - 1) / 2 % legs);
                    Assert.All(numbers.Skip(1).Zip(numbers), x => Assert.Equal(x.Second + 2, x.First));
                }

                Assert.Equal(taken.Count, spaces.Used);
                Assert.True(spaces.ToBuy() >= taken.Max() && spaces.Used <= (1 - PanelSpaces.SpareFraction) * spaces.ToBuy() + 1e-9);
            },
            iter: 300);
}
