using CsCheck;
using Glazewright.Design.Contracts;
using Glazewright.Design.Document;
using Glazewright.Design.Quantities;
using Json.Schema;

namespace Glazewright.Design.Tests.Document;

/// <summary>One reading function reads, collects faults and defaults, and describes itself as a schema.</summary>
public class FieldReaderTests
{
    private enum Cover
    {
        ClearSheet,
        Panel76,
    }

    private sealed record Shed(
        string Id, double WidthM, double? EaveM, double Pitch, Cover Cover, int Bays, bool Heated, double InsideC, TimeOfDay Opens, YearSpan Weeks, EqList<double> StockM, WordOrList<string> Fans, EqList<string> Doors, double Share);

    private static Shed ReadShed(FieldReader f) => new(
        f.IdText("S", "Id of the shed."),
        f.LengthM("width", "6 ft", "200 ft", null, "Width across the ridge."),
        f.LengthMOrBlank("eave", "3 ft", "30 ft", "solved from the others", "Eave height."),
        f.PitchRatio("pitch", "6:12", "Roof pitch."),
        f.Choice<Cover>("cover", Cover.ClearSheet, "Covering."),
        f.Whole("bays", 1, 50, 3, "Number of bays."),
        f.Flag("heated", true, "Heated in winter."),
        f.Group("climate", "Climate.", c => c.TemperatureC("inside", "-10 C", "45 C", "62 F", "Air temperature.")),
        f.Time("opens", "sunrise", "When it opens."),
        f.Span("weeks", "all year", "When it is used."),
        f.Quantities("stock", QuantityKind.Length, "6 ft", "60 ft", 1, 4, ["24 ft"], "Stock lengths."),
        f.WordOrSeveral("fans", ["size", "none"], "size", 5, "Fans.", i => i.Words("entry", null, "Catalogue entry.", "fan-36")),
        f.Several("doors", 0, 3, "no doors", "Doors.", d => d.IdText("door", "Id of the door.")),
        f.Fraction("share", "0 %", "100 %", "45 %", "Share of the floor in crop."));

    private static ReadOutcome<Shed> Read(string json)
    {
        JobDocument document = JobDocument.Read(json);
        Assert.Empty(document.Faults);
        return FieldReader.Read(Assert.IsType<ObjectNode>(document.Root), ReadShed);
    }

    [Fact]
    public void What_is_left_out_holds_its_default_and_is_listed()
    {
        ReadOutcome<Shed> outcome = Read("{ \"width\": \"26'-0\\\"\" }");
        Assert.Empty(outcome.Faults);
        Shed shed = outcome.Value!;
        Assert.Equal(("S", 7.9248, 0.5, Cover.ClearSheet, 3, true), (shed.Id, Math.Round(shed.WidthM, 9), shed.Pitch, shed.Cover, shed.Bays, shed.Heated));
        Assert.Null(shed.EaveM);
        Assert.Equal(16.666666, shed.InsideC, 1e-5);
        Assert.Equal(7.3152, shed.StockM[0], 1e-12);
        Assert.Equal("size", shed.Fans.Word);
        string[] pointers = [.. outcome.Defaults.Select(d => d.Pointer)];
        Assert.Equal(["/id", "/eave", "/pitch", "/cover", "/bays", "/heated", "/climate/inside", "/opens", "/weeks", "/stock", "/fans", "/doors", "/share"], pointers);
        Assert.Contains(outcome.Defaults, d => d is { Pointer: "/eave", Value: "solved from the others" });
    }

    [Fact]
    public void What_is_given_is_read_and_not_listed()
    {
        ReadOutcome<Shed> outcome = Read("""
            { "id": "A1", "width": "8 m", "eave": "7'-6\"", "pitch": "9.5:12", "cover": "Panel 76", "bays": 13, "heated": false, "climate": { "inside": "20 C" }, "opens": "06:30",
              "weeks": "wk 2-17", "stock": ["20 ft", "24 ft"], "fans": [ { "entry": "fan-36" } ], "doors": [ { "id": "d1" } ], "share": "60 %" }
            """);
        Assert.Empty(outcome.Faults);
        Assert.Empty(outcome.Defaults);
        Shed shed = outcome.Value!;
        Assert.Equal((Cover.Panel76, 13, 20.0, 2.286), (shed.Cover, shed.Bays, shed.InsideC, shed.EaveM));
        Assert.Equal(["fan-36"], shed.Fans.Items);
        Assert.Equal(["d1"], shed.Doors);
    }

    [Fact]
    public void Every_fault_is_told_at_once_with_place_id_and_cure()
    {
        ReadOutcome<Shed> outcome = Read("""
            { "id": "A1",
              "widht": "26 ft",
              "eave": 7.5,
              "pitch": "75 deg",
              "cover": "clear-shet",
              "bays": 0.5,
              "heated": "yes",
              "climate": { "inside": "88 C", "wet": 1 },
              "opens": "dawn", "weeks": "wk 60",
              "stock": [],
              "fans": "many", "doors": [ { "id": "d" }, { "id": "d" }, 5 ],
              "share": "45" }
            """);
        Assert.Null(outcome.Value);
        string[] told = [.. outcome.Faults.Select(f => $"{f.Kind} {f.Pointer} {f.Line}: {f.Wrong} | {f.Right}")];
        Assert.Equal(
            [
                "Missing /width 1: \"width\" is missing | \"width\": \"12'6\\\"\"",
                "Unit /eave 3: 7.5 has no unit | 7.5 ft or 7.5 m",
                "OutOfRange /pitch 4: 75 deg (44.78:12) is outside what such a field can hold | 0:12 (0 deg) to 60 deg (20.78:12)",
                "UnknownChoice /cover 5: \"clear-shet\" is not one of the words for \"cover\" | did you mean \"clear-sheet\"? (clear-sheet, panel-76)",
                "OutOfRange /bays 6: 0.5 is not a whole number from 1 to 50 | a whole number from 1 to 50",
                "WrongType /heated 7: a text stands where true or false belongs | true or false, without quotes",
                "OutOfRange /climate/inside 8: 88 °C (190.4 °F) is outside what such a field can hold | -10 °C (14.0 °F) to 45 °C (113.0 °F); did you mean 88 °F?",
                "UnknownKey /climate/wet 8: \"wet\" means nothing here | known here: inside",
                "Unit /opens 9: 'dawn' is not a time of day | 06:30 or 6:30 pm or sunrise+0:30",
                "Unit /weeks 9: 'wk 60' is not a stretch of the year (weeks run from 1 to 52) | wk 2-17, Nov-May, Nov 1 to May 15, 05-18 to 06-30 or all year",
                "OutOfRange /stock 10: \"stock\" is empty | 1 to 4 items",
                "UnknownChoice /fans 11: \"many\" is not one of the words for \"fans\" | size, none",
                "Duplicate /doors/1/id 11: the id \"d\" is taken by another in this list | an id of its own",
                "WrongType /doors/2 11: a number stands where an object { } belongs | { … }",
                "Unit /share 12: 45 has no unit | 45 %",
                "UnknownKey /widht 2: \"widht\" means nothing here | did you mean \"width\"?",
            ],
            told);
        Assert.All(outcome.Faults.Where(f => !f.Pointer.StartsWith("/doors/", StringComparison.Ordinal)), f => Assert.Equal("A1", f.Id));
    }

    [Fact]
    public void The_schema_accepts_what_the_reader_accepts_and_refuses_unknown_keys()
    {
        JsonSchema schema = JsonSchema.FromText(SchemaWriter.Write(FieldReader.Describe(ReadShed), "Shed"));
        Assert.True(Valid(schema, "{ \"width\": \"26 ft\" }"));
        Assert.True(Valid(schema, "{ \"width\": \"26 ft\", \"eave\": null, \"fans\": [ { \"entry\": \"fan-36\" } ], \"climate\": { \"inside\": \"62 F\" } }"));
        Assert.True(Valid(schema, "{ \"width\": \"26 ft\", \"fans\": \"none\", \"stock\": [\"24 ft\"] }"));
        Assert.False(Valid(schema, "{ }"));
        Assert.False(Valid(schema, "{ \"width\": 26 }"));
        Assert.False(Valid(schema, "{ \"width\": \"26 ft\", \"widht\": \"26 ft\" }"));
        Assert.False(Valid(schema, "{ \"width\": \"26 ft\", \"cover\": \"tin\" }"));
        Assert.False(Valid(schema, "{ \"width\": \"26 ft\", \"bays\": 0 }"));
        Assert.False(Valid(schema, "{ \"width\": \"26 ft\", \"fans\": \"many\" }"));
    }

    [Fact]
    public void Random_trees_never_throw_and_always_end_in_a_value_or_faults()
    {
        string[] keys = ["id", "width", "eave", "pitch", "cover", "bays", "heated", "climate", "inside", "opens", "weeks", "stock", "fans", "doors", "share", "x"];
        string[] leaves = ["null", "true", "1", "-1e9", "\"\"", "\"26 ft\"", "\"88 F\"", "\"size\"", "[]", "{}", "\"6:12\"", "\"sunset\"", "\"½\""];
        Gen<string> key = Gen.OneOf(keys.Select(Gen.Const).ToArray());
        Gen<string> json = Gen.OneOf(leaves.Select(Gen.Const).ToArray());
        for (int depth = 0; depth < 3; depth++)
        {
            Gen<string> inner = json;
            Gen<string> list = inner.Array[0, 3].Select(items => $"[{string.Join(",", items)}]");
            Gen<string> group = Gen.Select(key, inner).Array[0, 6].Select(pairs => "{" + string.Join(",", pairs.DistinctBy(p => p.Item1).Select(p => $"\"{p.Item1}\":{p.Item2}")) + "}");
            json = Gen.OneOf(inner, list, group);
        }

        Gen.Select(key, json).Array[0, 8].Sample(pairs =>
        {
            ReadOutcome<Shed> outcome = Read("{" + string.Join(",", pairs.DistinctBy(p => p.Item1).Select(p => $"\"{p.Item1}\":{p.Item2}")) + "}");
            Assert.True(outcome.Faults.Count > 0 || outcome.Value is not null);
        }, iter: 3000);
    }

    [Theory]
    [InlineData("widht", "width", 1), InlineData("kitten", "sitting", 3), InlineData("", "abc", 3), InlineData("ca", "abc", 3), InlineData("bays", "bays", 0)]
    public void Distance_between_words(string a, string b, int distance) => Assert.Equal(distance, NearestWord.Distance(a, b));

    private static bool Valid(JsonSchema schema, string json)
    {
        using System.Text.Json.JsonDocument document = System.Text.Json.JsonDocument.Parse(json);
        return schema.Evaluate(document.RootElement).IsValid;
    }
}
