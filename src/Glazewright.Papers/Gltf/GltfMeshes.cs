using System.Buffers.Binary;
using System.Text.Json;
using Glazewright.Design.Form;
using Glazewright.Papers.Solids;

namespace Glazewright.Papers.Gltf;

/// <summary>Meshes and materials of a scene, each once: one buffer with all corners, then all normals, then all indices.</summary>
internal sealed class GltfMeshes
{
    private const int Floats = 5126;
    private const int Shorts = 5123;
    private const int Ints = 5125;
    private readonly Dictionary<(SolidShape Shape, SolidLook Look), int> _index = [];
    private readonly List<(SolidMesh Mesh, int Material)> _meshes = [];
    private readonly List<SolidLook> _looks = [];

    /// <summary>Index of the mesh of a shape with a look.</summary>
    public int Of(SolidShape shape, SolidLook look)
    {
        if (_index.TryGetValue((shape, look), out int known))
        {
            return known;
        }

        int material = _looks.IndexOf(look);
        if (material < 0)
        {
            material = _looks.Count;
            _looks.Add(look);
        }

        _meshes.Add((SolidMesh.Of(shape), material));
        return _index[(shape, look)] = _meshes.Count - 1;
    }

    /// <summary>The buffer.</summary>
    public byte[] Bytes()
    {
        int points = _meshes.Sum(m => m.Mesh.Points.Count);
        byte[] buffer = new byte[24 * points + _meshes.Sum(m => Room(m.Mesh))];
        int point = 0;
        int normal = 12 * points;
        int index = 24 * points;
        foreach ((SolidMesh mesh, _) in _meshes)
        {
            for (int i = 0; i < mesh.Points.Count; i++, point += 12, normal += 12)
            {
                Put(buffer.AsSpan(point), mesh.Points[i]);
                Put(buffer.AsSpan(normal), mesh.Normals[i]);
            }

            int at = index;
            foreach (int corner in mesh.Triangles)
            {
                if (IsShort(mesh))
                {
                    BinaryPrimitives.WriteUInt16LittleEndian(buffer.AsSpan(at), (ushort)corner);
                    at += 2;
                }
                else
                {
                    BinaryPrimitives.WriteUInt32LittleEndian(buffer.AsSpan(at), (uint)corner);
                    at += 4;
                }
            }

            index += Room(mesh);
        }

        return buffer;
    }

    /// <summary>Meshes, materials, accessors, views and the buffer; nothing when there is no mesh, for empty lists are not allowed.</summary>
    public void Write(Utf8JsonWriter json)
    {
        if (_meshes.Count == 0)
        {
            return;
        }

        json.WriteStartArray("meshes");
        for (int i = 0; i < _meshes.Count; i++)
        {
            json.WriteStartObject();
            json.WriteStartArray("primitives");
            json.WriteStartObject();
            json.WriteStartObject("attributes");
            json.WriteNumber("POSITION", 3 * i);
            json.WriteNumber("NORMAL", 3 * i + 1);
            json.WriteEndObject();
            json.WriteNumber("indices", 3 * i + 2);
            json.WriteNumber("material", _meshes[i].Material);
            json.WriteEndObject();
            json.WriteEndArray();
            json.WriteEndObject();
        }

        json.WriteEndArray();
        Materials(json);
        Accessors(json);
    }

    private void Materials(Utf8JsonWriter json)
    {
        json.WriteStartArray("materials");
        foreach (SolidLook look in _looks)
        {
            json.WriteStartObject();
            json.WriteString("name", look.Name);
            json.WriteStartObject("pbrMetallicRoughness");
            GlbWriter.Numbers(json, "baseColorFactor", Linear(look.Rgb >> 16), Linear(look.Rgb >> 8), Linear(look.Rgb), look.OpaqueFraction);
            json.WriteNumber("metallicFactor", 0);
            json.WriteNumber("roughnessFactor", 0.8);
            json.WriteEndObject();
            if (look.OpaqueFraction < 1)
            {
                json.WriteString("alphaMode", "BLEND");
            }

            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private void Accessors(Utf8JsonWriter json)
    {
        int points = _meshes.Sum(m => m.Mesh.Points.Count);
        (int point, int index) = (0, 0);
        json.WriteStartArray("accessors");
        foreach ((SolidMesh mesh, _) in _meshes)
        {
            int count = mesh.Points.Count;
            Accessor(json, 0, 12 * point, Floats, count, "VEC3", () =>
            {
                GlbWriter.Floats(json, "min", mesh.Points.Min(p => (float)p.XM), mesh.Points.Min(p => (float)p.YM), mesh.Points.Min(p => (float)p.ZM));
                GlbWriter.Floats(json, "max", mesh.Points.Max(p => (float)p.XM), mesh.Points.Max(p => (float)p.YM), mesh.Points.Max(p => (float)p.ZM));
            });
            Accessor(json, 1, 12 * point, Floats, count, "VEC3", null);
            Accessor(json, 2, index, IsShort(mesh) ? Shorts : Ints, mesh.Triangles.Count, "SCALAR", null);
            point += count;
            index += Room(mesh);
        }

        json.WriteEndArray();
        json.WriteStartArray("bufferViews");
        View(json, 0, 12 * points, stride: true);
        View(json, 12 * points, 12 * points, stride: true);
        View(json, 24 * points, index, stride: false);
        json.WriteEndArray();
        json.WriteStartArray("buffers");
        json.WriteStartObject();
        json.WriteNumber("byteLength", 24 * points + index);
        json.WriteEndObject();
        json.WriteEndArray();
    }

    private static void Accessor(Utf8JsonWriter json, int view, int offset, int component, int count, string type, Action? range)
    {
        json.WriteStartObject();
        json.WriteNumber("bufferView", view);
        json.WriteNumber("byteOffset", offset);
        json.WriteNumber("componentType", component);
        json.WriteNumber("count", count);
        json.WriteString("type", type);
        range?.Invoke();
        json.WriteEndObject();
    }

    private static void View(Utf8JsonWriter json, int offset, int length, bool stride)
    {
        json.WriteStartObject();
        json.WriteNumber("buffer", 0);
        json.WriteNumber("byteOffset", offset);
        json.WriteNumber("byteLength", length);
        if (stride)
        {
            json.WriteNumber("byteStride", 12);
        }

        json.WriteNumber("target", stride ? 34962 : 34963);
        json.WriteEndObject();
    }

    // 65,535 stands for a restart, so it is no index.
    private static bool IsShort(SolidMesh mesh) => mesh.Points.Count <= 65_535;

    // Each run of indices starts at a whole number of words.
    private static int Room(SolidMesh mesh) => ((IsShort(mesh) ? 2 : 4) * mesh.Triangles.Count + 3) / 4 * 4;

    private static void Put(Span<byte> to, Point3 p)
    {
        BinaryPrimitives.WriteSingleLittleEndian(to, (float)p.XM);
        BinaryPrimitives.WriteSingleLittleEndian(to[4..], (float)p.YM);
        BinaryPrimitives.WriteSingleLittleEndian(to[8..], (float)p.ZM);
    }

    // Colours of the house look are sRGB (IEC 61966-2-1); factors are linear.
    private static double Linear(int part)
    {
        double c = (part & 0xFF) / 255.0;
        return Math.Round(c <= 0.04045 ? c / 12.92 : Math.Pow((c + 0.055) / 1.055, 2.4), 5);
    }
}
