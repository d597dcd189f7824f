using Glazewright.Design.Contracts;
using Glazewright.Design.Document;
using Glazewright.Design.Quantities;
using Glazewright.Web.Fields;

namespace Glazewright.Web.Tests.Fields;

public class FieldTests
{
    public static TheoryData<string> Pointers => [.. PagePlan.All.SelectMany(p => p.Blocks).SelectMany(b => b.Pointers(0)).Distinct()];

    [Theory]
    [MemberData(nameof(Pointers))]
    public void Every_field_of_a_page_is_one_of_the_job_document(string pointer) => Assert.NotNull(FieldMap.Find(pointer));

    [Fact]
    public void Every_part_of_the_job_document_stands_on_a_page()
    {
        FieldShape.Group root = Design.Brief.Reading.JobReader.Describe();
        string[] whole = [.. root.Fields.Select(f => f.Key).Where(k => k is not ("$schema" or "glazewright" or "houses" or "site"))];
        Assert.All(whole, k => Assert.True(PagePlan.Find("/" + k) is not null || (root.Fields.First(f => f.Key == k).Shape as FieldShape.Group)?.Fields.All(f => PagePlan.Find($"/{k}/{f.Key}") is not null) == true, k));
        FieldShape.Group house = (FieldShape.Group)((FieldShape.Several)root.Fields.First(f => f.Key == "houses").Shape).Item;
        Assert.Equal(["id"], Missing(house, "/houses/0").Order(StringComparer.Ordinal));
        Assert.Empty(Missing((FieldShape.Group)root.Fields.First(f => f.Key == "site").Shape, "/site"));
    }

    private static IEnumerable<string> Missing(FieldShape.Group group, string at) =>
        group.Fields.Where(f => PagePlan.Find($"{at}/{f.Key}") is null && (f.Shape as FieldShape.Group)?.Fields.Any(g => PagePlan.Find($"{at}/{f.Key}/{g.Key}") is not null) != true).Select(f => f.Key);

    [Fact]
    public void A_field_is_found_inside_lists_and_choices()
    {
        Assert.IsType<FieldShape.Measure>(FieldMap.Find("/houses/3/benches/7/offset")!.Shape);
        Assert.IsType<FieldShape.Whole>(FieldMap.Find("/houses/0/equipment/exhaust/1/count")!.Shape);
        Assert.Null(FieldMap.Find("/houses/0/nothing/like/it"));
        Assert.Null(FieldMap.Find("/houses/x/width"));
    }

    [Fact]
    public void Places_are_said_in_words()
    {
        JobDocument job = JobDocument.Read("""{ "houses": [{ "benches": [{ "id": "north" }] }] }""");
        Assert.Equal("House 1, bench north, offset", FieldMap.Path("/houses/0/benches/0/offset", job));
        Assert.Equal("Site, design, cooling 04", FieldMap.Path("/site/design/cooling04", job));
        Assert.Equal("Left eave", FieldMap.Words("leftEave"));
        Assert.Equal("CO₂", FieldMap.Words("co2"));
    }

    [Theory]
    [InlineData("26", QuantityKind.Length, UnitSystem.Us, "26 ft"), InlineData("26", QuantityKind.Length, UnitSystem.Metric, "26 m"), InlineData(" 12'6\" ", QuantityKind.Length, UnitSystem.Metric, "12'6\"")]
    [InlineData("9.5", QuantityKind.Pitch, UnitSystem.Us, "9.5:12"), InlineData("1,200", QuantityKind.Money, UnitSystem.Us, "$1,200"), InlineData("65", QuantityKind.Fraction, UnitSystem.Us, "65 %")]
    [InlineData("0.1", QuantityKind.Pressure, UnitSystem.Us, "0.1"), InlineData("5", QuantityKind.TemperatureDifference, UnitSystem.Us, "5 F°"), InlineData("3 degrees", QuantityKind.TemperatureDifference, UnitSystem.Metric, "3 C"), InlineData("-4", QuantityKind.Temperature, UnitSystem.Us, "-4 °F")]
    [InlineData("wide", QuantityKind.Length, UnitSystem.Us, "wide"), InlineData("26 ft", QuantityKind.Length, UnitSystem.Metric, "26 ft")]
    public void A_bare_number_takes_the_unit_beside_the_field_unless_that_is_a_guess(string typed, QuantityKind kind, UnitSystem units, string stored)
    {
        Edit edit = Assert.IsType<Edit>(Typing.EditOf("/a", new FieldShape.Measure(kind, "", ""), typed, isThere: false, units));
        Assert.Equal(Edit.Typed("/a", stored), edit);
    }

    [Theory]
    [InlineData("/tariffs/fuel", "propane", "2.35", "2.35 $/gal"), InlineData("/tariffs/fuel", "propane", "$2.35", "2.35 $/gal"), InlineData("/tariffs/fuel", "oil", "2.35 per gallon", "2.35 $/gal")]
    [InlineData("/tariffs/fuel", "natural-gas", "1.2", "1.2 $/therm"), InlineData("/tariffs/fuel", "natural-gas", "$1.20 a therm", "1.20 $/therm"), InlineData("/tariffs/fuel", "propane", "$2.35/gal", "2.35 $/gal")]
    [InlineData("/tariffs/power", "propane", "0.14", "0.14 $/kWh"), InlineData("/tariffs/power", "propane", "$0.14", "0.14 $/kWh"), InlineData("/tariffs/power", "none", "$.14 per kWh", ".14 $/kWh"), InlineData("/tariffs/water", "propane", "6", "6 $/kgal")]
    public void A_price_is_taken_in_the_unit_it_is_told_in_and_echoed(string pointer, string fuel, string typed, string stored)
    {
        JobDocument job = JobDocument.Read($$"""{ "utilities": { "fuel": "{{fuel}}" } }""");
        FieldShape shape = FieldMap.Find(pointer)!.Shape;
        Assert.Equal(Edit.Typed(pointer, stored), Typing.EditOf(pointer, shape, typed, isThere: false, UnitSystem.Us, job));
        (string words, bool isRight) = Typing.EchoOf(pointer, shape, typed, UnitSystem.Us, job);
        Assert.True(isRight, words);
        Assert.Contains(stored[(stored.IndexOf(' ', StringComparison.Ordinal) + 1)..], words, StringComparison.Ordinal);
        Assert.Equal(stored[(stored.IndexOf(' ', StringComparison.Ordinal) + 1)..], Typing.UnitBeside(pointer, shape, UnitSystem.Us, job));
    }

    [Theory]
    [InlineData("/site/bearing", "north-south", "0 deg"), InlineData("/site/bearing", "N-S", "0 deg"), InlineData("/site/bearing", "E - W", "90 deg"), InlineData("/site/bearing", "97", "97 deg")]
    [InlineData("/site/longitude", "88.3 W", "88.3 W"), InlineData("/held/temperature", "3 degrees", "3 F"), InlineData("/houses/0/schedule/0/day/temperature", "72°", "72 F")]
    public void Words_are_taken_for_what_they_say(string pointer, string typed, string stored)
    {
        FieldShape shape = FieldMap.Find(pointer)!.Shape;
        Assert.Equal(Edit.Typed(pointer, stored), Typing.EditOf(pointer, shape, typed, isThere: false, UnitSystem.Us));
        Assert.True(Typing.EchoOf(pointer, shape, typed, UnitSystem.Us, null).IsRight);
    }

    [Theory]
    [InlineData("Nov-May", "wk 44-22", "wk 44-22: October 29 to June 3, the whole weeks nearest to it"), InlineData("November to May", "wk 44-22", ""), InlineData("Nov 1 - May 15", "wk 44-19", ""), InlineData("weeks 2 to 17", "wk 2-17", "wk 2-17: January 8 to April 29")]
    [InlineData("year round", "all year", "all year: January 1 to December 31")]
    public void Months_and_dates_are_kept_as_whole_weeks_and_echoed(string typed, string stored, string echo)
    {
        const string pointer = "/houses/0/schedule/0/weeks";
        FieldShape shape = FieldMap.Find(pointer)!.Shape;
        Assert.Equal(Edit.Typed(pointer, stored), Typing.EditOf(pointer, shape, typed, isThere: false, UnitSystem.Us));
        (string words, bool isRight) = Typing.EchoOf(pointer, shape, typed, UnitSystem.Us, null);
        Assert.True(isRight);
        Assert.Equal(echo.Length == 0 ? words : echo, words);
    }

    [Theory]
    [InlineData("winter"), InlineData("11/1-5/15"), InlineData("May 5")]
    public void Weeks_that_are_not_understood_stay_as_typed_and_are_told(string typed)
    {
        const string pointer = "/houses/0/schedule/0/weeks";
        FieldShape shape = FieldMap.Find(pointer)!.Shape;
        Assert.Equal(Edit.Typed(pointer, typed), Typing.EditOf(pointer, shape, typed, isThere: false, UnitSystem.Us));
        (string words, bool isRight) = Typing.EchoOf(pointer, shape, typed, UnitSystem.Us, null);
        Assert.False(isRight);
        Assert.Contains("Right: ", words, StringComparison.Ordinal);
    }

    [Fact]
    public void A_difference_is_called_one_and_a_hundredth_share_is_unsure()
    {
        Assert.Equal(("a difference of 3 F° (1.667 K)", true), Typing.EchoOf("/held/temperature", FieldMap.Find("/held/temperature")!.Shape, "3F", UnitSystem.Us, null));
        FieldShape humidity = FieldMap.Find("/houses/0/schedule/0/day/humidity")!.Shape;
        Assert.Equal(("0.7 %: less than one in a hundred. For 0.7 of the whole type 70 %.", false), Typing.EchoOf("/x", humidity, "0.7", UnitSystem.Us, null));
        Assert.Equal(("70 %", true), Typing.EchoOf("/x", humidity, "70", UnitSystem.Us, null));
        Assert.Equal("'65-70' is a range. Right: one number, as 45 %", Typing.EchoOf("/x", humidity, "65-70", UnitSystem.Us, null).Words);
    }

    // The saw's kerf said "ft" beside a default of 1/8 in.
    [Fact]
    public void A_length_below_a_foot_is_in_inches_or_millimetres()
    {
        FieldShape.Measure kerf = Assert.IsType<FieldShape.Measure>(FieldMap.Find("/houses/0/frame/kerf")!.Shape);
        Assert.Equal(("in", "mm"), (Typing.UsualUnit(kerf, UnitSystem.Us), Typing.UsualUnit(kerf, UnitSystem.Metric)));
        Assert.Equal(Edit.Typed("/a", "1/8 in"), Typing.EditOf("/a", kerf, "1/8 in", isThere: false, UnitSystem.Us));
        Assert.Equal(Edit.Typed("/a", "0.125 in"), Typing.EditOf("/a", kerf, "0.125", isThere: false, UnitSystem.Us));
        Assert.Equal(Edit.Typed("/a", "3 mm"), Typing.EditOf("/a", kerf, "3", isThere: false, UnitSystem.Metric));
        Assert.StartsWith("1/8\"", Typing.Echo("0.125", kerf, UnitSystem.Us).Words, StringComparison.Ordinal);
        Assert.Equal("ft", Typing.UsualUnit((FieldShape.Measure)FieldMap.Find("/houses/0/width")!.Shape, UnitSystem.Us));
    }

    // "X" and "Y" of a lot say nothing to who builds: along and across the ridges, with the wind it is.
    [Theory]
    [InlineData("90 deg", "More is to the east, less to the west.", "More is to the north, less to the south.", "West to east."), InlineData("0 deg", "More is to the north, less to the south.", "More is to the west, less to the east.", "South to north.")]
    [InlineData("350 deg", "More is to the north, less to the south.", "More is to the west, less to the east.", "South to north."), InlineData(null, "More is to the east, less to the west.", "More is to the north, less to the south.", "West to east.")]
    public void Places_on_the_lot_are_told_by_the_compass(string? bearing, string along, string across, string size)
    {
        JobDocument job = JobDocument.Read(bearing is null ? "{}" : $$"""{ "site": { "bearing": "{{bearing}}" } }""");
        Assert.Equal((along, across, size, ""), (CompassHelp.Of("/lot/x", job), CompassHelp.Of("/houses/1/y", job), CompassHelp.Of("/lot/sizeX", job), CompassHelp.Of("/lot/fall", job)));
        Assert.Equal("Lot, size across the ridges", FieldMap.Path("/lot/sizeY", job));
    }

    // A bare 4 at the lamps of a US job was 4 kBtu/h; lamps and dehumidifiers are told in kW there, heat is not.
    [Fact]
    public void Electric_power_is_in_kilowatts_everywhere()
    {
        string Unit(string key) => Typing.UsualUnit((FieldShape.Measure)FieldMap.Find("/houses/0/equipment/" + key)!.Shape, UnitSystem.Us);
        Assert.Equal(("kW", "kW", "kBtu/h"), (Unit("lamps"), Unit("dehumidifier"), Unit("benchPipe")));
    }

    [Fact]
    public void Every_usual_unit_is_read_back()
    {
        foreach (QuantityKind kind in Enum.GetValues<QuantityKind>())
        {
            foreach (UnitSystem units in Enum.GetValues<UnitSystem>())
            {
                (string words, bool isRight) = Typing.Echo("2", kind, units);
                Assert.True(isRight == (Typing.UsualUnit(kind, units).Length > 0 || kind == QuantityKind.Ratio), $"{kind} {units}: {words}");
            }
        }
    }

    [Fact]
    public void An_emptied_field_goes_out_and_its_default_holds()
    {
        FieldShape shape = new FieldShape.Measure(QuantityKind.Length, "", "");
        Assert.Equal(Edit.Removed("/a"), Typing.EditOf("/a", shape, "  ", isThere: true, UnitSystem.Us));
        Assert.Null(Typing.EditOf("/a", shape, "", isThere: false, UnitSystem.Us));
    }

    [Theory]
    [InlineData("12", "12"), InlineData("many", "\"many\""), InlineData("1e9", "\"1e9\""), InlineData("99999999999", "\"99999999999\"")]
    public void A_count_is_a_number_and_anything_else_is_kept_for_the_reader_to_tell(string typed, string json) =>
        Assert.Equal(json, Typing.EditOf("/a", new FieldShape.Whole(1, 9), typed, isThere: true, UnitSystem.Us)!.Json);
}
