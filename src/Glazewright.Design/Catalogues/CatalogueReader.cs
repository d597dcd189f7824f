using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using Glazewright.Design.Contracts;
using Glazewright.Design.Quantities;
using Glazewright.Science.Flow;

namespace Glazewright.Design.Catalogues;

/// <summary>Reads a catalogue from JSON with quantities as a builder types them.</summary>
public static class CatalogueReader
{
    private static readonly Lazy<Catalogue> s_generic = new(ReadGeneric);

    /// <summary>The embedded generic catalogue: invented entries, no maker's product.</summary>
    public static Catalogue Generic => s_generic.Value;

    /// <summary>Reads a catalogue.</summary>
    /// <param name="json">Its text; comments and trailing commas are fine.</param>
    /// <param name="catalogue">The catalogue, when the answer is true.</param>
    /// <param name="fault">What is wrong and where, when the answer is false: the first fault only.</param>
    /// <returns>True when it was understood.</returns>
    public static bool TryRead(
        string json,
        [System.Diagnostics.CodeAnalysis.NotNullWhen(true)] out Catalogue? catalogue,
        [System.Diagnostics.CodeAnalysis.NotNullWhen(false)] out string? fault)
    {
        try
        {
            catalogue = Read(json);
            fault = null;
            return true;
        }
        catch (Exception e) when (e is JsonException or FormatException or ArgumentOutOfRangeException)
        {
            catalogue = null;
            fault = e.Message;
            return false;
        }
    }

    private static Catalogue ReadGeneric()
    {
        using Stream stream = typeof(CatalogueReader).Assembly.GetManifestResourceStream("generic-catalogue.json")
            ?? throw new InvalidOperationException("The generic catalogue is not embedded.");
        using var reader = new StreamReader(stream, Encoding.UTF8);
        return Read(reader.ReadToEnd());
    }

    private static Catalogue Read(string json)
    {
        using JsonDocument document = JsonDocument.Parse(
            json, new JsonDocumentOptions { CommentHandling = JsonCommentHandling.Skip, AllowTrailingCommas = true });
        JsonElement root = document.RootElement;
        var catalogue = new Catalogue(
            Entries(root, "fans", Fan),
            Entries(root, "louvers", e => new LouverEntry(
                e.Id, e.Name, e.Of("size", QuantityKind.Length), e.Ratio("freeFraction"), e.Ratio("dischargeCoefficient"),
                e.Of("travel", QuantityKind.Duration), e.Of("power", QuantityKind.Power), e.Of("mass", QuantityKind.Mass))),
            Entries(root, "pads", Pad),
            Entries(root, "fogs", e => new FogEntry(
                e.Id, e.Name, 998 * e.Of("nozzle", QuantityKind.WaterFlow), e.Of("pressure", QuantityKind.Pressure),
                e.Ratio("evaporated"), e.Ratio("pumpEfficiency"))),
            Entries(root, "heaters", e => new HeaterEntry(
                e.Id, e.Name, e.Of("output", QuantityKind.Power), e.Ratio("efficiency"), e.Of("fan", QuantityKind.Power),
                e.Flag("sealed"), e.Flag("electric"), e.Of("throw", QuantityKind.Length), e.Of("mass", QuantityKind.Mass), Part(e))),
            Entries(root, "curtains", e => new CurtainEntry(
                e.Id, e.Name, e.Ratio("solarTransmittance"), e.Ratio("solarReflectance"), e.Ratio("emissivity"), e.Ratio("openness"),
                e.Of("travel", QuantityKind.Duration), e.Of("drive", QuantityKind.Power), e.Word("flameSpread"))),
            Entries(root, "circulation", e => new CirculationEntry(
                e.Id, e.Name, e.Of("diameter", QuantityKind.Length), e.Of("flow", QuantityKind.AirFlow), e.Of("power", QuantityKind.Power),
                e.Of("mass", QuantityKind.Mass))),
            Entries(root, "oscillating", e => new OscillatingEntry(
                e.Id, e.Name, e.Of("diameter", QuantityKind.Length), e.Of("flow", QuantityKind.AirFlow), e.Of("power", QuantityKind.Power),
                e.Of("volts", QuantityKind.Voltage), e.Number("sweepDegrees"), e.Of("mass", QuantityKind.Mass))),
            Entries(root, "pressureFans", e => new PressureFanEntry(
                e.Id, e.Name, e.Of("diameter", QuantityKind.Length), e.Of("volts", QuantityKind.Voltage),
                e.Of("filterLoss", QuantityKind.Pressure), e.Of("filterAt", QuantityKind.AirFlow), e.Of("mass", QuantityKind.Mass), Points(e))),
            Entries(root, "lamps", e => new LampEntry(
                e.Id, e.Name, e.Of("power", QuantityKind.Power), e.Number("photonsPerJoule"), e.Of("mass", QuantityKind.Mass))),
            Entries(root, "pipes", e => new PipeEntry(
                e.Id, e.Name, e.Of("outputPerFoot", QuantityKind.Power) / FootM, e.Of("massPerFoot", QuantityKind.Mass) / FootM)),
            Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(json))));
        string? twice = catalogue.Ids.GroupBy(id => id).FirstOrDefault(g => g.Count() > 1)?.Key;
        return twice is null ? catalogue : throw new FormatException($"The id '{twice}' is used twice.");
    }

    private const double FootM = 0.3048;

    private static FanEntry Fan(EntryText e) => new(
        e.Id, e.Name, e.Of("diameter", QuantityKind.Length), e.Of("frame", QuantityKind.Length), e.Of("volts", QuantityKind.Voltage),
        (int)e.Number("phases"), e.Of("start", QuantityKind.Current), e.Of("mass", QuantityKind.Mass), e.Number("soundDbA"), Points(e));

    private static PartFire? Part(EntryText e)
    {
        if (!e.Has("turndown"))
        {
            return null;
        }

        double turndown = e.Number("turndown");
        return turndown is >= 1.1 and <= 20
            ? new PartFire(1 / turndown, e.Ratio("leastEfficiency"), e.Flag("twoStage"))
            : throw new FormatException($"{e.Id}: 'turndown' is not from 1.1 to 20.");
    }

    private static PadEntry Pad(EntryText e) => new(
        e.Id,
        e.Name,
        e.Of("thickness", QuantityKind.Length),
        new PadKind(
            e.Ratio("effectiveness"), e.Of("ratedFace", QuantityKind.Speed), e.Of("loss", QuantityKind.Pressure), e.Number("lossExponent"),
            e.Of("carryOver", QuantityKind.Speed)),
        e.Of("mostFace", QuantityKind.Speed),
        e.Of("waterPerFoot", QuantityKind.WaterFlow) / FootM,
        e.Of("sumpPerSquareFoot", QuantityKind.Volume) / (FootM * FootM),
        e.Many("heights", QuantityKind.Length),
        e.Of("pumpHead", QuantityKind.Length),
        e.Ratio("pumpEfficiency"),
        e.Of("massPerSquareFoot", QuantityKind.Mass) / (FootM * FootM));

    private static EqList<FanPoint> Points(EntryText e)
    {
        EqList<double> at = e.Many("at", QuantityKind.Pressure);
        EqList<double> flow = e.Many("flow", QuantityKind.AirFlow);
        EqList<double> power = e.Many("power", QuantityKind.Power);
        if (at.Count != flow.Count || at.Count != power.Count)
        {
            throw new FormatException($"{e.Id}: at, flow and power have different lengths.");
        }

        EqList<FanPoint> points = at.Select((p, i) => new FanPoint(p, flow[i], power[i])).ToEqList();
        try
        {
            _ = FanCurve.Through(points);
        }
        catch (Exception bad) when (bad is ArgumentException)
        {
            throw new FormatException($"{e.Id}: its tested points are no fan curve (pressure must rise and flow fall from point to point): {bad.Message}", bad);
        }

        return points;
    }

    private static EqList<T> Entries<T>(JsonElement root, string name, Func<EntryText, T> read) =>
        root.TryGetProperty(name, out JsonElement list) && list.ValueKind == JsonValueKind.Array
            ? list.EnumerateArray().Select(e => read(new EntryText(e))).ToEqList()
            : EqList<T>.Empty;

    private sealed record EntryText(JsonElement Element)
    {
        public string Id => Word("id");

        public string Name => Word("name");

        public bool Has(string key) => Element.TryGetProperty(key, out _);

        public string Word(string key) =>
            Part(key).ValueKind == JsonValueKind.String ? Part(key).GetString()! : throw new FormatException($"'{key}' is not a text.");

        public double Number(string key) =>
            Part(key).ValueKind == JsonValueKind.Number ? Part(key).GetDouble() : throw new FormatException($"{Id}: '{key}' is not a number.");

        public double Ratio(string key)
        {
            double value = Number(key);
            return value is >= 0 and <= 1 ? value : throw new FormatException($"{Id}: '{key}' is not from 0 to 1.");
        }

        public bool Flag(string key) => Part(key).ValueKind switch
        {
            JsonValueKind.True => true,
            JsonValueKind.False => false,
            _ => throw new FormatException($"{Id}: '{key}' is neither true nor false."),
        };

        public double Of(string key, QuantityKind kind) => Quantity(Word(key), kind, key);

        public EqList<double> Many(string key, QuantityKind kind) =>
            Part(key).EnumerateArray().Select(e => Quantity(e.GetString() ?? "", kind, key)).ToEqList();

        private double Quantity(string text, QuantityKind kind, string key) =>
            QuantityReader.TryRead(text, kind, out Quantity quantity, out Misreading? misreading)
                ? quantity.Inside
                : throw new FormatException($"{key}: {misreading.Wrong}; {misreading.Right}");

        private JsonElement Part(string key) =>
            Element.TryGetProperty(key, out JsonElement part) ? part : throw new FormatException($"An entry has no '{key}'.");
    }
}
