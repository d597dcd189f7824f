namespace Glazewright.Science.Network;

/// <summary>
/// What changes in a network: temperatures, capacities, link rates, gains, and the fluxes of the last step as solved. The
/// arrays are the caller's to fill between steps; one thread works on a state at a time.
/// </summary>
public sealed class NetworkState
{
    internal NetworkState(int nodeCount, int linkCount)
    {
        TemperatureC = new double[nodeCount];
        CapacityJPerK = new double[nodeCount];
        GainW = new double[nodeCount];
        StoredW = new double[nodeCount];
        LinkWPerK = new double[linkCount];
        FluxW = new double[linkCount];
    }

    /// <summary>Temperature of every node, °C: given at boundaries, solved elsewhere.</summary>
    public double[] TemperatureC { get; }

    /// <summary>Heat capacity of every node, J/K, ≥ 0; boundaries ignore it.</summary>
    public double[] CapacityJPerK { get; }

    /// <summary>Heat put into every node over the step, W.</summary>
    public double[] GainW { get; }

    /// <summary>Rate of every link, W/K, ≥ 0.</summary>
    public double[] LinkWPerK { get; }

    /// <summary>Flux of every link over the last step as it was solved, W: positive from → to; for a stream, what the receiver gained.</summary>
    public double[] FluxW { get; }

    /// <summary>Heat stored in every node over the last step, W: capacity × change ÷ step.</summary>
    public double[] StoredW { get; }

    /// <summary>Copies all numbers of another state of the same network.</summary>
    /// <param name="other">The state to copy.</param>
    public void CopyFrom(NetworkState other)
    {
        other.TemperatureC.CopyTo(TemperatureC, 0);
        other.CapacityJPerK.CopyTo(CapacityJPerK, 0);
        other.GainW.CopyTo(GainW, 0);
        other.StoredW.CopyTo(StoredW, 0);
        other.LinkWPerK.CopyTo(LinkWPerK, 0);
        other.FluxW.CopyTo(FluxW, 0);
    }
}

/// <summary>How a step is taken in time. Both are L-stable: no ringing however fast a node is against the step.</summary>
public enum TimeScheme
{
    /// <summary>Implicit Euler: first order, one solution a step.</summary>
    ImplicitEuler,

    /// <summary>Two-stage diagonally implicit Runge–Kutta, γ = 1 − 1/√2 (Alexander 1977, SIAM J. Numer. Anal. 14:1006; from memory): second order, one factorisation, two solutions.</summary>
    SecondOrder,
}

/// <summary>A heater or cooler that tracks a set point on one node within its limits.</summary>
/// <param name="Tracked">The node whose temperature is wanted.</param>
/// <param name="Into">The node that takes the plant's heat (the tracked node for an air heater).</param>
/// <param name="SetPointC">Wanted temperature at the end of the step, °C.</param>
/// <param name="LowestW">Least power, W (negative cools).</param>
/// <param name="HighestW">Most power, W.</param>
public readonly record struct TrackingPlant(NodeId Tracked, NodeId Into, double SetPointC, double LowestW, double HighestW);
