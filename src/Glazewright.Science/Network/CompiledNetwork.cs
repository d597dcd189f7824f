using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace Glazewright.Science.Network;

/// <summary>
/// A thermal network whose shape is fixed: C dT/dt = Σ G (T_j − T) + Σ W (T_from − T) + gain at every solved node, stepped
/// implicitly. The matrix is an M-matrix (row sums ≥ 0), so it is factorised without pivoting in an order found once
/// (least degree first). A step allocates nothing. Not to be shared between threads: the factor is kept inside.
/// </summary>
public sealed class CompiledNetwork
{
    private const double Gamma = 0.29289321881345247560; // 1 − 1/√2

    private readonly string[] names;
    private readonly bool[] isBoundary;
    private readonly int[] linkFrom, linkTo;
    private readonly bool[] linkIsAdvection;
    private readonly EliminationOrder order;

    private readonly LinkPlace[] innerLinks; // both ends solved, conductances first, then streams
    private readonly LinkPlace[] edgeLinks; // one end on a boundary
    private readonly int conductanceCount;
    private readonly double[] matrix; // pivots, then the rows of U, then the columns of L
    private readonly double[] pivotInverse;
    private readonly double[] rightSide, solution, response, stage, stageBase;

    internal CompiledNetwork(List<(string Name, bool Boundary)> nodes, List<(int From, int To, bool Advection)> links)
    {
        names = [.. nodes.Select(n => n.Name)];
        isBoundary = [.. nodes.Select(n => n.Boundary)];
        linkFrom = [.. links.Select(l => l.From)];
        linkTo = [.. links.Select(l => l.To)];
        linkIsAdvection = [.. links.Select(l => l.Advection)];
        order = EliminationOrder.Find(isBoundary, links);

        matrix = new double[order.MatrixLength];
        pivotInverse = new double[order.RowCount];
        rightSide = new double[order.RowCount];
        solution = new double[order.RowCount];
        response = new double[order.RowCount];
        stage = new double[order.RowCount];
        stageBase = new double[nodes.Count];
        List<LinkPlace> conductances = [], streams = [], edges = [];
        for (int link = 0; link < links.Count; link++)
        {
            int rowFrom = order.RowOfNode[linkFrom[link]], rowTo = order.RowOfNode[linkTo[link]];
            if (rowFrom < 0 || rowTo < 0)
            {
                edges.Add(rowFrom < 0 ? new(link, rowTo, linkFrom[link], 0, 0) : new(link, rowFrom, linkTo[link], 0, 0));
            }
            else
            {
                (linkIsAdvection[link] ? streams : conductances)
                    .Add(new(link, rowFrom, rowTo, order.PlaceOf(rowFrom, rowTo), order.PlaceOf(rowTo, rowFrom)));
            }
        }

        conductanceCount = conductances.Count;
        innerLinks = [.. conductances, .. streams];
        edgeLinks = [.. edges];
    }

    /// <summary>Number of nodes, boundaries counted.</summary>
    public int NodeCount => names.Length;

    /// <summary>Number of links.</summary>
    public int LinkCount => linkFrom.Length;

    /// <summary>Name of a node.</summary>
    /// <param name="node">The node.</param>
    public string NameOf(NodeId node) => names[node.Index];

    /// <summary>A fresh state: all zero.</summary>
    public NetworkState NewState() => new(names.Length, linkFrom.Length);

    /// <summary>Takes one step.</summary>
    /// <param name="state">Temperatures in and out; rates and gains hold over the step; fluxes are booked into it.</param>
    /// <param name="stepS">Step, s, above 0.</param>
    /// <param name="scheme">Order in time.</param>
    public void Step(NetworkState state, double stepS, TimeScheme scheme = TimeScheme.ImplicitEuler)
    {
        double[] temperatureC = state.TemperatureC;
        double perS = 1.0 / stepS;
        if (scheme == TimeScheme.ImplicitEuler)
        {
            Factorise(state, perS);
            FillRightSide(state, perS, temperatureC);
            Solve(rightSide, solution);
            BookStored(state, perS, solution);
            BookFluxes(state, 0.0, 1.0);
            return;
        }

        double stagePerS = perS / Gamma;
        Factorise(state, stagePerS);
        FillRightSide(state, stagePerS, temperatureC);
        Solve(rightSide, stage);
        temperatureC.CopyTo(stageBase, 0);
        for (int row = 0; row < stage.Length; row++)
        {
            int node = order.NodeOfRow[row];
            stageBase[node] = temperatureC[node] + (1.0 - Gamma) / Gamma * (stage[row] - temperatureC[node]);
        }

        FillRightSide(state, stagePerS, stageBase);
        Solve(rightSide, solution);
        temperatureC.CopyTo(stageBase, 0); // the old temperatures, for what was stored
        Scatter(stage, temperatureC);
        BookFluxes(state, 0.0, 1.0 - Gamma);
        stageBase.CopyTo(temperatureC, 0);
        BookStored(state, perS, solution);
        BookFluxes(state, 1.0, Gamma);
    }

    /// <summary>
    /// Takes one implicit Euler step with a plant that holds a set point where its limits let it: the system is linear in the plant's
    /// power, so the power that lands on the set point is found exactly and clamped.
    /// </summary>
    /// <param name="state">As in <see cref="Step(NetworkState, double, TimeScheme)"/>.</param>
    /// <param name="stepS">Step, s, above 0.</param>
    /// <param name="plant">The plant; both its nodes are solved nodes.</param>
    /// <returns>The plant's power over the step, W.</returns>
    public double Step(NetworkState state, double stepS, in TrackingPlant plant)
    {
        double perS = 1.0 / stepS;
        Factorise(state, perS);
        FillRightSide(state, perS, state.TemperatureC);
        Solve(rightSide, solution);

        int tracked = order.RowOfNode[plant.Tracked.Index];
        Array.Clear(rightSide);
        rightSide[order.RowOfNode[plant.Into.Index]] = 1.0;
        Solve(rightSide, response);
        double wantedW = (plant.SetPointC - solution[tracked]) / response[tracked];
        double plantW = Math.Min(Math.Max(wantedW, plant.LowestW), plant.HighestW);
        for (int row = 0; row < solution.Length; row++)
        {
            solution[row] += plantW * response[row];
        }

        BookStored(state, perS, solution);
        BookFluxes(state, 0.0, 1.0);
        return plantW;
    }

    /// <summary>Greatest imbalance of a solved node in the books of the last step, W: links in − links out + gains − stored.</summary>
    /// <param name="state">A state just stepped.</param>
    /// <param name="plantW">Power of a tracking plant, W.</param>
    /// <param name="plantInto">Node that took it, or null.</param>
    public double LargestImbalanceW(NetworkState state, double plantW = 0.0, NodeId? plantInto = null)
    {
        double worstW = 0.0;
        for (int node = 0; node < names.Length; node++)
        {
            if (isBoundary[node])
            {
                continue;
            }

            double sumW = state.GainW[node] - state.StoredW[node] + (plantInto is { } p && p.Index == node ? plantW : 0.0);
            for (int link = 0; link < linkFrom.Length; link++)
            {
                sumW += linkTo[link] == node ? state.FluxW[link] : 0.0;
                sumW -= linkFrom[link] == node && !linkIsAdvection[link] ? state.FluxW[link] : 0.0;
            }

            worstW = Math.Max(worstW, Math.Abs(sumW));
        }

        return worstW;
    }

    // The loops below take references once: their indices come from the plan compiled above and never leave the arrays.
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Factorise(NetworkState state, double perS)
    {
        Array.Clear(matrix);
        ref double a = ref MemoryMarshal.GetArrayDataReference(matrix);
        int[] nodeOfRow = order.NodeOfRow;
        double[] capacity = state.CapacityJPerK;
        for (int row = 0; row < nodeOfRow.Length; row++)
        {
            Unsafe.Add(ref a, row) = capacity[nodeOfRow[row]] * perS;
        }

        double[] rates = state.LinkWPerK;
        LinkPlace[] inner = innerLinks;
        for (int i = 0; i < inner.Length; i++)
        {
            ref readonly LinkPlace place = ref inner[i];
            double rate = rates[place.Link];
            Unsafe.Add(ref a, place.RowTo) += rate;
            Unsafe.Add(ref a, place.ToFrom) -= rate;
            if (i < conductanceCount)
            {
                Unsafe.Add(ref a, place.RowFrom) += rate;
                Unsafe.Add(ref a, place.FromTo) -= rate;
            }
        }

        LinkPlace[] edges = edgeLinks;
        for (int i = 0; i < edges.Length; i++)
        {
            Unsafe.Add(ref a, edges[i].RowFrom) += rates[edges[i].Link];
        }

        int rows = nodeOfRow.Length;
        ref double upper = ref Unsafe.Add(ref a, rows);
        ref double lower = ref Unsafe.Add(ref a, rows + order.LaterRow.Length);
        ref int target = ref MemoryMarshal.GetArrayDataReference(order.UpdateTarget);
        int[] start = order.LaterStart;
        for (int k = 0; k < rows; k++)
        {
            double inverse = 1.0 / Unsafe.Add(ref a, k);
            pivotInverse[k] = inverse;
            int first = start[k], last = start[k + 1];
            for (int i = first; i < last; i++)
            {
                double factor = Unsafe.Add(ref lower, i) * inverse;
                Unsafe.Add(ref lower, i) = factor;
                for (int j = first; j < last; j++)
                {
                    Unsafe.Add(ref a, target) -= factor * Unsafe.Add(ref upper, j);
                    target = ref Unsafe.Add(ref target, 1);
                }
            }
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void FillRightSide(NetworkState state, double perS, double[] fromC)
    {
        int[] nodeOfRow = order.NodeOfRow;
        double[] capacity = state.CapacityJPerK, gain = state.GainW, rates = state.LinkWPerK, right = rightSide;
        for (int row = 0; row < nodeOfRow.Length; row++)
        {
            int node = nodeOfRow[row];
            right[row] = capacity[node] * perS * fromC[node] + gain[node];
        }

        LinkPlace[] edges = edgeLinks;
        for (int i = 0; i < edges.Length; i++)
        {
            right[edges[i].RowFrom] += rates[edges[i].Link] * fromC[edges[i].RowTo];
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Solve(double[] right, double[] into)
    {
        int rows = pivotInverse.Length;
        ref double upper = ref Unsafe.Add(ref MemoryMarshal.GetArrayDataReference(matrix), rows);
        ref double lower = ref Unsafe.Add(ref upper, order.LaterRow.Length);
        ref double x = ref MemoryMarshal.GetArrayDataReference(into);
        ref double b = ref MemoryMarshal.GetArrayDataReference(right);
        ref int later = ref MemoryMarshal.GetArrayDataReference(order.LaterRow);
        int[] start = order.LaterStart;
        for (int k = 0; k < rows; k++)
        {
            double value = Unsafe.Add(ref b, k);
            for (int i = start[k]; i < start[k + 1]; i++)
            {
                Unsafe.Add(ref b, Unsafe.Add(ref later, i)) -= Unsafe.Add(ref lower, i) * value;
            }
        }

        for (int k = rows - 1; k >= 0; k--)
        {
            double value = Unsafe.Add(ref b, k);
            for (int i = start[k]; i < start[k + 1]; i++)
            {
                value -= Unsafe.Add(ref upper, i) * Unsafe.Add(ref x, Unsafe.Add(ref later, i));
            }

            Unsafe.Add(ref x, k) = value * pivotInverse[k];
        }
    }

    private void Scatter(double[] from, double[] temperatureC)
    {
        for (int row = 0; row < from.Length; row++)
        {
            temperatureC[order.NodeOfRow[row]] = from[row];
        }
    }

    private void BookStored(NetworkState state, double perS, double[] newC)
    {
        for (int row = 0; row < newC.Length; row++)
        {
            int node = order.NodeOfRow[row];
            state.StoredW[node] = state.CapacityJPerK[node] * perS * (newC[row] - state.TemperatureC[node]);
            state.TemperatureC[node] = newC[row];
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void BookFluxes(NetworkState state, double keep, double weight)
    {
        ref double temperature = ref MemoryMarshal.GetArrayDataReference(state.TemperatureC);
        double[] flux = state.FluxW, rates = state.LinkWPerK;
        int[] from = linkFrom, to = linkTo;
        for (int link = 0; link < flux.Length && link < rates.Length && link < from.Length && link < to.Length; link++)
        {
            double nowW = rates[link] * (Unsafe.Add(ref temperature, from[link]) - Unsafe.Add(ref temperature, to[link])) * weight;
            flux[link] = keep == 0.0 ? nowW : flux[link] * keep + nowW;
        }
    }

    // Where a link's rate goes in the matrix; RowTo holds the boundary's node where the link ends on one.
    private readonly record struct LinkPlace(int Link, int RowFrom, int RowTo, int FromTo, int ToFrom);
}
