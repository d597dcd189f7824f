namespace Glazewright.Science.Network;

/// <summary>A node of a thermal network: its place in the arrays of <see cref="NetworkState"/>.</summary>
/// <param name="Index">Position, from 0 in the order of adding.</param>
public readonly record struct NodeId(int Index);

/// <summary>A link of a thermal network: its place in the link arrays of <see cref="NetworkState"/>.</summary>
/// <param name="Index">Position, from 0 in the order of adding.</param>
public readonly record struct LinkId(int Index);

/// <summary>
/// The shape of a thermal network while it is being drawn: nodes with a heat capacity (0 is allowed where something is
/// connected), boundary nodes of given temperature, conductances, and directed advections. <see cref="Compile"/> fixes it.
/// </summary>
public sealed class NetworkPlan
{
    private readonly List<(string Name, bool Boundary)> nodes = [];
    private readonly List<(int From, int To, bool Advection)> links = [];

    /// <summary>Adds a node whose temperature is solved for.</summary>
    /// <param name="name">Name shown in books and faults.</param>
    public NodeId AddNode(string name)
    {
        nodes.Add((name, false));
        return new NodeId(nodes.Count - 1);
    }

    /// <summary>Adds a node whose temperature is given at every step.</summary>
    /// <param name="name">Name shown in books and faults.</param>
    public NodeId AddBoundary(string name)
    {
        nodes.Add((name, true));
        return new NodeId(nodes.Count - 1);
    }

    /// <summary>Joins two nodes by a conductance, W/K; heat flows from warm to cold.</summary>
    /// <param name="from">Flux counts positive leaving here.</param>
    /// <param name="to">Flux counts positive arriving here.</param>
    /// <exception cref="ArgumentException">Unknown node, a node joined to itself, or two boundaries.</exception>
    public LinkId Conduct(NodeId from, NodeId to) => Add(from, to, advection: false);

    /// <summary>
    /// A stream of fluid from one node into another, W/K (mass flow × specific heat): the receiver gains rate × (T_from − T_to),
    /// as the same stream leaves the receiver at the receiver's temperature; the giver feels nothing by this link.
    /// </summary>
    /// <param name="from">Where the stream comes from.</param>
    /// <param name="to">Where it arrives; a solved node.</param>
    /// <exception cref="ArgumentException">Unknown node, a stream into itself or into a boundary.</exception>
    public LinkId Advect(NodeId from, NodeId to)
    {
        if (to.Index >= 0 && to.Index < nodes.Count && nodes[to.Index].Boundary)
        {
            throw new ArgumentException($"A stream must arrive at a solved node, not at the boundary {nodes[to.Index].Name}.", nameof(to));
        }

        return Add(from, to, advection: true);
    }

    /// <summary>Fixes the shape and works out the order of elimination once.</summary>
    public CompiledNetwork Compile() => new(nodes, links);

    private LinkId Add(NodeId from, NodeId to, bool advection)
    {
        if (from.Index < 0 || from.Index >= nodes.Count || to.Index < 0 || to.Index >= nodes.Count || from == to)
        {
            throw new ArgumentException("A link joins two different nodes of this plan.", nameof(to));
        }

        if (nodes[from.Index].Boundary && nodes[to.Index].Boundary)
        {
            throw new ArgumentException("A link between two boundaries moves no solved node.", nameof(to));
        }

        links.Add((from.Index, to.Index, advection));
        return new LinkId(links.Count - 1);
    }
}
