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

    private readonly LinkPlace[] places;
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
        places = new LinkPlace[links.Count];
        for (int link = 0; link < places.Length; link++)
        {
            int rowFrom = order.RowOfNode[linkFrom[link]], rowTo = order.RowOfNode[linkTo[link]];
            places[link] = (rowFrom, rowTo, linkIsAdvection[link]) switch
            {
                ( >= 0, >= 0, false) => new(LinkKind.Both, rowFrom, rowTo, order.PlaceOf(rowFrom, rowTo), order.PlaceOf(rowTo, rowFrom)),
                ( >= 0, >= 0, true) => new(LinkKind.Stream, rowFrom, rowTo, 0, order.PlaceOf(rowTo, rowFrom)),
                ( >= 0, < 0, _) => new(LinkKind.ToBoundary, rowFrom, linkTo[link], 0, 0),
                _ => new(LinkKind.ToBoundary, rowTo, linkFrom[link], 0, 0),
            };
        }
    }

    private enum LinkKind
    {
        Both,
        Stream,
        ToBoundary,
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

    private void Factorise(NetworkState state, double perS)
    {
        double[] a = matrix;
        Array.Clear(a);
        int[] nodeOfRow = order.NodeOfRow;
        for (int row = 0; row < nodeOfRow.Length; row++)
        {
            a[row] = state.CapacityJPerK[nodeOfRow[row]] * perS;
        }

        double[] rates = state.LinkWPerK;
        for (int link = 0; link < places.Length; link++)
        {
            double rate = rates[link];
            ref readonly LinkPlace place = ref places[link];
            switch (place.Kind)
            {
                case LinkKind.Both:
                    a[place.RowFrom] += rate;
                    a[place.RowTo] += rate;
                    a[place.FromTo] -= rate;
                    a[place.ToFrom] -= rate;
                    break;
                case LinkKind.Stream:
                    a[place.RowTo] += rate;
                    a[place.ToFrom] -= rate;
                    break;
                default:
                    a[place.RowFrom] += rate;
                    break;
            }
        }

        int rows = nodeOfRow.Length, toUpper = rows, toLower = rows + order.LaterRow.Length, next = 0;
        int[] start = order.LaterStart, target = order.UpdateTarget;
        for (int k = 0; k < rows; k++)
        {
            double inverse = 1.0 / a[k];
            pivotInverse[k] = inverse;
            int first = start[k], last = start[k + 1];
            for (int i = first; i < last; i++)
            {
                double factor = a[toLower + i] * inverse;
                a[toLower + i] = factor;
                for (int j = first; j < last; j++)
                {
                    a[target[next++]] -= factor * a[toUpper + j];
                }
            }
        }
    }

    private void FillRightSide(NetworkState state, double perS, double[] fromC)
    {
        int[] nodeOfRow = order.NodeOfRow;
        for (int row = 0; row < nodeOfRow.Length; row++)
        {
            int node = nodeOfRow[row];
            rightSide[row] = state.CapacityJPerK[node] * perS * fromC[node] + state.GainW[node];
        }

        double[] rates = state.LinkWPerK;
        for (int link = 0; link < places.Length; link++)
        {
            ref readonly LinkPlace place = ref places[link];
            if (place.Kind == LinkKind.ToBoundary)
            {
                rightSide[place.RowFrom] += rates[link] * fromC[place.RowTo];
            }
        }
    }

    private void Solve(double[] right, double[] into)
    {
        double[] a = matrix;
        int rows = pivotInverse.Length, toUpper = rows, toLower = rows + order.LaterRow.Length;
        int[] start = order.LaterStart, later = order.LaterRow;
        for (int k = 0; k < rows; k++)
        {
            double value = right[k];
            for (int i = start[k]; i < start[k + 1]; i++)
            {
                right[later[i]] -= a[toLower + i] * value;
            }
        }

        for (int k = rows - 1; k >= 0; k--)
        {
            double value = right[k];
            for (int i = start[k]; i < start[k + 1]; i++)
            {
                value -= a[toUpper + i] * into[later[i]];
            }

            into[k] = value * pivotInverse[k];
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

    private void BookFluxes(NetworkState state, double keep, double weight)
    {
        double[] temperatureC = state.TemperatureC, flux = state.FluxW, rates = state.LinkWPerK;
        for (int link = 0; link < flux.Length; link++)
        {
            double nowW = rates[link] * (temperatureC[linkFrom[link]] - temperatureC[linkTo[link]]) * weight;
            flux[link] = keep == 0.0 ? nowW : flux[link] * keep + nowW;
        }
    }

    // RowTo holds the boundary's node where the link ends on one.
    private readonly record struct LinkPlace(LinkKind Kind, int RowFrom, int RowTo, int FromTo, int ToFrom);
}
