using Glazewright.Design.Form;
using Glazewright.Papers.Solids;

namespace Glazewright.Papers.Gltf;

/// <summary>A unit quaternion.</summary>
/// <param name="X">First of the vector.</param>
/// <param name="Y">Second.</param>
/// <param name="Z">Third.</param>
/// <param name="W">Scalar.</param>
internal readonly record struct Turn(double X, double Y, double Z, double W)
{
    /// <summary>No turn.</summary>
    public static readonly Turn None = new(0, 0, 0, 1);

    /// <summary>The turn that brings the axes x, y, z to three square unit vectors (Shepperd 1978: the largest of the four first).</summary>
    public static Turn To(Point3 x, Point3 y, Point3 z)
    {
        double trace = x.XM + y.YM + z.ZM;
        double[] of = [1 + 2 * x.XM - trace, 1 + 2 * y.YM - trace, 1 + 2 * z.ZM - trace, 1 + trace];
        int most = Array.IndexOf(of, of.Max());
        double s = 2 * Math.Sqrt(of[most]);
        (double a, double b, double c) = (y.ZM - z.YM, z.XM - x.ZM, x.YM - y.XM);
        (double d, double e, double f) = (x.YM + y.XM, z.XM + x.ZM, y.ZM + z.YM);
        Turn q = most switch
        {
            0 => new Turn(s / 4, d / s, e / s, a / s),
            1 => new Turn(d / s, s / 4, f / s, b / s),
            2 => new Turn(e / s, f / s, s / 4, c / s),
            _ => new Turn(a / s, b / s, c / s, s / 4),
        };
        return q.W < -1e-12 ? new Turn(-q.X, -q.Y, -q.Z, -q.W) : q;
    }
}

/// <summary>A node of the tree.</summary>
internal sealed record GltfNode(string Name, int Mesh, Point3 Origin, Turn? Turn, IReadOnlyList<(string Key, string Value)> Extras)
{
    public List<int> Children { get; } = [];
}

/// <summary>The tree of nodes, range first, and the meshes they show.</summary>
internal sealed record GltfScene(IReadOnlyList<GltfNode> Nodes, GltfMeshes Meshes)
{
    public static GltfScene Of(RangeSolids solids)
    {
        List<GltfNode> nodes = [];
        GltfMeshes meshes = new();

        // Range axes (x at the bearing, y a quarter turn left of it, z up) to x east, y up, z south.
        double b = solids.BearingDeg * Math.PI / 180;
        Turn turn = Turn.To(new(Math.Sin(b), 0, -Math.Cos(b)), new(-Math.Cos(b), 0, -Math.Sin(b)), new(0, 1, 0));
        GltfNode range = Add(null, new GltfNode(solids.Name.Length > 0 ? solids.Name : "Unnamed job", -1, default, turn, [("caution", "Preliminary, not for construction.")]));
        foreach (BuildingSolids building in solids.Buildings)
        {
            BuildingForm form = building.Form;
            GltfNode top = Add(range, new GltfNode(form.Id, -1, form.Origin, Turn.To(form.AlongX, form.AlongY, new(0, 0, 1)), [("label", form.Name)]));
            foreach (IGrouping<string, SolidPart> system in building.Parts.GroupBy(p => System(p.Kind)))
            {
                GltfNode group = Add(top, new GltfNode($"{form.Id}/{system.Key}", -1, default, null, []));
                foreach (SolidPart part in system)
                {
                    SolidFrame f = part.Frame;
                    (string, string)[] extras = [.. ((string Key, string Value)[])[("label", part.Label), ("mark", part.Mark)]];
                    Add(group, new GltfNode(
                        part.Id, meshes.Of(part.Shape, SolidLook.Of(part.Kind)), f.Origin, Turn.To(f.AlongX, f.AlongY, f.AlongZ), [.. extras.Where(e => e.Item2.Length > 0)]));
                }
            }
        }

        return new GltfScene(nodes, meshes);

        GltfNode Add(GltfNode? parent, GltfNode node)
        {
            parent?.Children.Add(nodes.Count);
            nodes.Add(node);
            return node;
        }
    }

    private static string System(SolidKind kind) => kind switch
    {
        SolidKind.Member => "frame",
        SolidKind.Cover => "covering",
        SolidKind.Leaf => "doors",
        SolidKind.Equipment => "equipment",
        _ => "ground",
    };
}
