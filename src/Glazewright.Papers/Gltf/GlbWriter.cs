using System.Buffers.Binary;
using System.Globalization;
using System.Text;
using System.Text.Json;
using Glazewright.Design.Form;
using Glazewright.Papers.Solids;

namespace Glazewright.Papers.Gltf;

/// <summary>
/// Writes the range as a picture in three dimensions (glTF 2.0, ISO/IEC 12113:2022, binary form): metres, y up, x east, z south. Nodes are named as our paths in a tree of range,
/// building, system, part; parts alike share a mesh. Members of the format from memory; the Khronos validator reads the file in the tests.
/// </summary>
public static class GlbWriter
{
    private const uint Magic = 0x46546C67;
    private const uint JsonChunk = 0x4E4F534A;
    private const uint BinChunk = 0x004E4942;

    private static readonly JsonWriterOptions Plain = new() { Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>The file.</summary>
    /// <param name="solids">The range.</param>
    /// <param name="version">Version of the program.</param>
    /// <returns>The same solids give the same bytes.</returns>
    public static byte[] Bytes(RangeSolids solids, string version)
    {
        ArgumentNullException.ThrowIfNull(solids);
        GltfScene scene = GltfScene.Of(solids);
        byte[] json = Json(scene, version);
        byte[] bin = scene.Meshes.Bytes();
        int jsonRoom = (json.Length + 3) / 4 * 4;
        int total = 12 + 8 + jsonRoom + (bin.Length > 0 ? 8 + bin.Length : 0);
        byte[] file = new byte[total];
        Span<byte> at = file;
        BinaryPrimitives.WriteUInt32LittleEndian(at, Magic);
        BinaryPrimitives.WriteUInt32LittleEndian(at[4..], 2);
        BinaryPrimitives.WriteUInt32LittleEndian(at[8..], (uint)total);
        BinaryPrimitives.WriteUInt32LittleEndian(at[12..], (uint)jsonRoom);
        BinaryPrimitives.WriteUInt32LittleEndian(at[16..], JsonChunk);
        json.CopyTo(at[20..]);
        at.Slice(20 + json.Length, jsonRoom - json.Length).Fill((byte)' ');
        if (bin.Length > 0)
        {
            at = at[(20 + jsonRoom)..];
            BinaryPrimitives.WriteUInt32LittleEndian(at, (uint)bin.Length);
            BinaryPrimitives.WriteUInt32LittleEndian(at[4..], BinChunk);
            bin.CopyTo(at[8..]);
        }

        return file;
    }

    private static byte[] Json(GltfScene scene, string version)
    {
        using MemoryStream stream = new();
        using (Utf8JsonWriter json = new(stream, Plain))
        {
            json.WriteStartObject();
            json.WriteStartObject("asset");
            json.WriteString("version", "2.0");
            json.WriteString("generator", "Glazewright " + version);
            json.WriteEndObject();
            json.WriteNumber("scene", 0);
            json.WriteStartArray("scenes");
            json.WriteStartObject();
            json.WriteString("name", scene.Nodes[0].Name);
            json.WriteStartArray("nodes");
            json.WriteNumberValue(0);
            json.WriteEndArray();
            json.WriteEndObject();
            json.WriteEndArray();
            json.WriteStartArray("nodes");
            foreach (GltfNode node in scene.Nodes)
            {
                Write(json, node);
            }

            json.WriteEndArray();
            scene.Meshes.Write(json);
            json.WriteEndObject();
        }

        return stream.ToArray();
    }

    private static void Write(Utf8JsonWriter json, GltfNode node)
    {
        json.WriteStartObject();
        json.WriteString("name", node.Name);
        if (node.Mesh >= 0)
        {
            json.WriteNumber("mesh", node.Mesh);
        }

        if (node.Children.Count > 0)
        {
            json.WriteStartArray("children");
            foreach (int child in node.Children)
            {
                json.WriteNumberValue(child);
            }

            json.WriteEndArray();
        }

        if (node.Origin != default)
        {
            Numbers(json, "translation", node.Origin.XM, node.Origin.YM, node.Origin.ZM);
        }

        if (node.Turn is { } q && q != Turn.None)
        {
            Numbers(json, "rotation", q.X, q.Y, q.Z, q.W);
        }

        if (node.Extras.Count > 0)
        {
            json.WriteStartObject("extras");
            foreach ((string key, string value) in node.Extras)
            {
                json.WriteString(key, value);
            }

            json.WriteEndObject();
        }

        json.WriteEndObject();
    }

    internal static void Numbers(Utf8JsonWriter json, string name, params ReadOnlySpan<double> values)
    {
        json.WriteStartArray(name);
        foreach (double value in values)
        {
            json.WriteRawValue((Math.Round(value, 8) + 0.0).ToString("0.########", CultureInfo.InvariantCulture), skipInputValidation: true);
        }

        json.WriteEndArray();
    }

    // A range is compared bit by bit with the corners it covers: the shortest text that reads back as the same float.
    internal static void Floats(Utf8JsonWriter json, string name, params ReadOnlySpan<float> values)
    {
        json.WriteStartArray(name);
        foreach (float value in values)
        {
            json.WriteNumberValue(value + 0f);
        }

        json.WriteEndArray();
    }
}
