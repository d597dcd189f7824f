using System.Buffers.Binary;
using System.Text.Json;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Papers.Gltf;
using Glazewright.Papers.Sets;
using Glazewright.Papers.Solids;
using Glazewright.Papers.Tests.Ifc;
using Glazewright.Papers.Tests.Solids;

namespace Glazewright.Papers.Tests.Gltf;

/// <summary>
/// Pictures in three dimensions: read by the Khronos glTF validator 2.0.0-dev.3.10 (npm, Apache-2.0) under Node without an issue of any severity, and by a small reader of our own that follows nodes,
/// accessors and indices and holds volumes, places and names against the solids.
/// </summary>
public class GlbTests
{
    private const string Script = """
        const validator = require(process.argv[1]), fs = require('fs');
        (async () => {
            const answers = [];
            for (const path of process.argv.slice(2)) answers.push(await validator.validateBytes(new Uint8Array(fs.readFileSync(path)), { maxIssues: 20 }));
            console.log(JSON.stringify(answers));
        })();
        """;

    private static readonly Dictionary<string, Func<PaperSource>> Samples = new()
    {
        ["yard"] = () => SolidSamples.Yard(),
        ["awkward"] = () => SolidSamples.Yard(UnitSystem.Metric, 10, SolidSamples.Awkward),
        ["long"] = SolidSamples.Long,
        ["tiny"] = SolidSamples.Tiny,
        ["none"] = () => SolidSamples.Yard(houses: 0),
        ["nothing"] = () => SolidSamples.Yard(houses: 0) is { } none ? none with { Form = none.Form with { Buildings = [] } } : null!,
    };

    public static TheoryData<string> All { get; } = [.. Samples.Keys];

    [Fact]
    public void The_validator_has_nothing_to_say()
    {
        string? home = NodeRun.Library("gltf-validator", "index.js");
        Assert.SkipWhen(home is null, "gltf-validator is not fetched: run eng/fetch-references. Nobody else has read the three-dimensional picture.");
        using JsonDocument? told = NodeRun.Try(Script, home!, ".glb", [.. Samples.Values.Select(s => Bytes(s()))]);
        Assert.SkipWhen(told is null, "No Node on this machine: nobody else has read the three-dimensional picture.");
        foreach (JsonElement report in told!.RootElement.EnumerateArray())
        {
            JsonElement issues = report.GetProperty("issues");
            Assert.Equal(
                "0 0 0 0 ",
                string.Concat(((string[])["numErrors", "numWarnings", "numInfos", "numHints"]).Select(n => issues.GetProperty(n).GetInt32() + " ")));
        }
    }

    [Theory, MemberData(nameof(All))]
    public void Every_part_is_a_node_as_large_and_where_it_was_built(string sample)
    {
        RangeSolids solids = RangeSolids.Of(Samples[sample]());
        Dictionary<string, (double VolumeM3, double[] Box)> bodies = Bodies(GlbWriter.Bytes(solids, "9"));
        SolidPart[] parts = [.. solids.Buildings.SelectMany(b => b.Parts)];
        Assert.Equal(parts.Select(p => p.Id).Order(StringComparer.Ordinal), bodies.Keys.Order(StringComparer.Ordinal));
        foreach (SolidPart part in parts)
        {
            // Tubes have sharp corners in pictures, discs 24 sides.
            double builtM3 = part.Shape.Prisms.Sum(p => p.Profile switch
            {
                Profile.Tube t => (t with { CornerM = 0 }).AreaM2 * (p.End.AtM - p.Start.AtM),
                Profile.Disc d => 12 * Math.Sin(Math.PI / 12) * d.RadiusM * d.RadiusM * (p.End.AtM - p.Start.AtM),
                _ => p.VolumeM3,
            });
            Assert.Equal(builtM3, bodies[part.Id].VolumeM3, 2e-4 * builtM3 + 1e-6);
        }
    }

    // x is east and -z north: the far end of a house lies at the range's bearing from its near end.
    [Fact]
    public void The_range_lies_at_its_bearing()
    {
        PaperSource source = SolidSamples.Yard();
        Dictionary<string, (double VolumeM3, double[] Box)> bodies = Bodies(Bytes(source));
        double[] near = Middle(bodies["A/frame-01/column-left/pier"].Box);
        double[] far = Middle(bodies["A/frame-14/column-left/pier"].Box);
        double azimuth = Math.Atan2(far[0] - near[0], -(far[2] - near[2])) * 180 / Math.PI;
        Assert.Equal(source.Job.Site.RangeBearingDeg, (azimuth + 360) % 360, 1e-3);

        // The left wall is on the right hand of somebody who looks along the bearing.
        double[] right = Middle(bodies["A/frame-01/column-right/pier"].Box);
        double toLeft = Math.Atan2(right[0] - near[0], -(right[2] - near[2])) * 180 / Math.PI;
        Assert.Equal((source.Job.Site.RangeBearingDeg + 270) % 360, (toLeft + 360) % 360, 1e-3);
        Assert.Equal(source.Form.Building("A").Roof.RidgeM, bodies.Where(b => b.Key.Contains("rafter", StringComparison.Ordinal)).Max(b => b.Value.Box[4]), 1e-4);
    }

    [Fact]
    public void Nodes_form_a_tree_of_range_building_system_and_part()
    {
        PaperSource source = SolidSamples.Yard(name: SolidSamples.Awkward);
        using JsonDocument json = Parts(Bytes(source)).Json;
        JsonElement[] nodes = [.. json.RootElement.GetProperty("nodes").EnumerateArray()];
        Assert.Equal(SolidSamples.Awkward, nodes[0].GetProperty("name").GetString());
        string[] Children(JsonElement node) => [.. node.GetProperty("children").EnumerateArray().Select(c => nodes[c.GetInt32()].GetProperty("name").GetString()!)];
        Assert.Equal(source.Form.Buildings.Select(b => b.Id), Children(nodes[0]));
        JsonElement house = nodes.First(n => n.GetProperty("name").GetString() == "A");
        Assert.Equal(["A/ground", "A/frame", "A/covering", "A/doors", "A/equipment"], Children(house));
        Assert.True(json.RootElement.GetProperty("meshes").GetArrayLength() < nodes.Length / 3, "parts alike share a mesh");
    }

    [Fact]
    public void The_file_is_the_same_twice() => Assert.Equal(Bytes(SolidSamples.Yard()), Bytes(SolidSamples.Yard()));

    private static byte[] Bytes(PaperSource source) => GlbWriter.Bytes(RangeSolids.Of(source), source.Version);

    private static double[] Middle(double[] box) => [(box[0] + box[3]) / 2, (box[1] + box[4]) / 2, (box[2] + box[5]) / 2];

    private static (JsonDocument Json, byte[] Bin) Parts(byte[] file)
    {
        int json = BinaryPrimitives.ReadInt32LittleEndian(file.AsSpan(12));
        return (JsonDocument.Parse(file.AsMemory(20, json)), 20 + json < file.Length ? file[(28 + json)..] : []);
    }

    private static Dictionary<string, (double VolumeM3, double[] Box)> Bodies(byte[] file)
    {
        (JsonDocument json, byte[] bin) = Parts(file);
        using (json)
        {
            JsonElement root = json.RootElement;
            JsonElement[] nodes = [.. root.GetProperty("nodes").EnumerateArray()];
            Dictionary<string, (double, double[])> bodies = [];
            Walk(0, p => p);
            return bodies;

            void Walk(int index, Func<Point3, Point3> outer)
            {
                JsonElement node = nodes[index];
                double[] t = Numbers(node, "translation", [0, 0, 0]);
                double[] q = Numbers(node, "rotation", [0, 0, 0, 1]);
                Point3 v = new(q[0], q[1], q[2]);
                Point3 Place(Point3 p)
                {
                    // p + 2w(v × p) + 2v × (v × p)
                    Point3 c = 2 * v.Cross(p);
                    return outer(p + q[3] * c + v.Cross(c) + new Point3(t[0], t[1], t[2]));
                }

                if (node.TryGetProperty("mesh", out JsonElement mesh))
                {
                    bodies.Add(node.GetProperty("name").GetString()!, Body(root, bin, mesh.GetInt32(), Place));
                }

                foreach (JsonElement child in node.TryGetProperty("children", out JsonElement children) ? children.EnumerateArray() : default)
                {
                    Walk(child.GetInt32(), Place);
                }
            }
        }
    }

    private static (double, double[]) Body(JsonElement root, byte[] bin, int mesh, Func<Point3, Point3> place)
    {
        JsonElement primitive = root.GetProperty("meshes")[mesh].GetProperty("primitives")[0];
        (JsonElement points, int at) = Accessor(primitive.GetProperty("attributes").GetProperty("POSITION").GetInt32());
        (JsonElement indices, int from) = Accessor(primitive.GetProperty("indices").GetInt32());
        bool isShort = indices.GetProperty("componentType").GetInt32() == 5123;
        Point3[] corners = [.. Enumerable.Range(0, points.GetProperty("count").GetInt32()).Select(i => place(new(Float(at + 12 * i), Float(at + 12 * i + 4), Float(at + 12 * i + 8))))];
        double six = 0;
        double[] box = [.. Enumerable.Repeat(double.PositiveInfinity, 3), .. Enumerable.Repeat(double.NegativeInfinity, 3)];
        foreach (Point3 p in corners)
        {
            double[] of = [p.XM, p.YM, p.ZM];
            for (int i = 0; i < 3; i++)
            {
                (box[i], box[i + 3]) = (Math.Min(box[i], of[i]), Math.Max(box[i + 3], of[i]));
            }
        }

        for (int i = 0; i < indices.GetProperty("count").GetInt32(); i += 3)
        {
            six += (Corner(i) - corners[0]).Dot((Corner(i + 1) - corners[0]).Cross(Corner(i + 2) - corners[0]));
        }

        return (six / 6, box);

        Point3 Corner(int i) => corners[isShort ? BinaryPrimitives.ReadUInt16LittleEndian(bin.AsSpan(from + 2 * i)) : (int)BinaryPrimitives.ReadUInt32LittleEndian(bin.AsSpan(from + 4 * i))];

        float Float(int offset) => BinaryPrimitives.ReadSingleLittleEndian(bin.AsSpan(offset));

        (JsonElement, int) Accessor(int index)
        {
            JsonElement accessor = root.GetProperty("accessors")[index];
            return (accessor, accessor.GetProperty("byteOffset").GetInt32() + root.GetProperty("bufferViews")[accessor.GetProperty("bufferView").GetInt32()].GetProperty("byteOffset").GetInt32());
        }
    }

    private static double[] Numbers(JsonElement node, string name, double[] otherwise) =>
        node.TryGetProperty(name, out JsonElement list) ? [.. list.EnumerateArray().Select(v => v.GetDouble())] : otherwise;
}
