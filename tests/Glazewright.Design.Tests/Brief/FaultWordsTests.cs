using Glazewright.Design.Brief;
using Glazewright.Design.Brief.Reading;
using Glazewright.Design.Contracts;
using Glazewright.Design.Document;
using Glazewright.Design.Quantities;

namespace Glazewright.Design.Tests.Brief;

/// <summary>What a fault advises must itself be right, and one mistake is told once.</summary>
public class FaultWordsTests
{
    private const string Size = "\"width\": \"24 ft\", \"length\": \"60 ft\"";
    private static readonly SiteHint Station = new("Station", 44.47, -73.15, 101, -5);

    [Fact]
    public void What_a_missing_latitude_is_told_to_be_is_a_latitude()
    {
        Fault fault = Assert.Single(Read("""{ "weather": { "normals": [] } }""", null).Faults, f => f.Pointer == "/site/latitude");
        string advised = fault.Right.Split('"')[3];
        Assert.True(QuantityReader.TryRead(advised, QuantityKind.Angle, out Quantity latitude, out _), advised);
        Assert.InRange(latitude.Inside, -90, 90);
    }

    [Theory]
    [InlineData("a/b.epw"), InlineData(""), InlineData("  "), InlineData("..")]
    public void A_weather_file_that_cannot_be_one_is_one_fault_at_its_place(string file) =>
        Assert.Equal("/site/weather/file", Assert.Single(Read($"{{ \"weather\": {{ \"file\": \"{file}\" }} }}", null).Faults).Pointer);

    [Theory]
    [InlineData("lat", "latitude"), InlineData("lon", "longitude"), InlineData("lng", "longitude"), InlineData("long", "longitude"), InlineData("elev", "elevation"), InlineData("Elevaton", "elevation")]
    public void Short_names_of_the_site_are_understood(string typed, string meant) =>
        Assert.Equal($"did you mean \"{meant}\"?", Unknown(Read($"{{ \"{typed}\": \"1\", \"weather\": {{ \"file\": \"x.epw\" }} }}", Station), "/site/" + typed).Right);

    [Fact]
    public void A_known_key_at_the_wrong_level_is_told_where_it_belongs()
    {
        string text = $$"""
            { "glazewright": 1, "latitude": "44 deg", "site": { "weather": { "file": "x.epw" }, "bays": "8 ft", "rooms": [] },
              "houses": [ { "id": "A", {{Size}}, "pitch": "3:12", "fuel": "propane" } ] }
            """;
        ReadOutcome<Job> outcome = JobReader.Read(JobDocument.Read(text), Station);
        Assert.Equal("\"latitude\" belongs under site", Unknown(outcome, "/latitude").Right);
        Assert.Equal("\"rooms\" belongs under links[]", Unknown(outcome, "/site/rooms").Right);
        Assert.Contains("houses[]", Unknown(outcome, "/site/bays").Right, StringComparison.Ordinal);
        Assert.Equal("did you mean houses[].roof.leftPitch or houses[].roof.rightPitch?", Unknown(outcome, "/houses/0/pitch").Right);
        Assert.Equal("\"fuel\" belongs under tariffs or utilities", Unknown(outcome, "/houses/0/fuel").Right);
    }

    [Theory]
    [InlineData("\"id\": \"A\",", "\"id\": \"A\",", "/houses/1/id"), InlineData("", "\"id\": \"A\",", "/houses/1/id"), InlineData("\"id\": \"B\",", "", "/houses/1/id")]
    public void A_doubled_id_is_one_fault_at_the_second_house(string first, string second, string pointer)
    {
        string text = $$"""{ "glazewright": 1, "site": { "weather": { "file": "x.epw" } }, "houses": [ { {{first}} {{Size}} }, { {{second}} {{Size}}, "y": "40 ft" } ] }""";
        Fault fault = Assert.Single(JobReader.Read(JobDocument.Read(text), Station).Faults);
        Assert.Equal((FaultKind.Duplicate, pointer), (fault.Kind, fault.Pointer));
    }

    [Theory]
    [InlineData("300 ft", false), InlineData("1599 m", false), InlineData("1602 m", true), InlineData("4900 m", true)]
    public void A_place_a_mile_above_its_station_is_a_fault(string elevation, bool wrong)
    {
        EqList<Fault> faults = Read($"{{ \"elevation\": \"{elevation}\", \"weather\": {{ \"file\": \"x.epw\" }} }}", Station).Faults;
        Assert.Equal(wrong ? 1 : 0, faults.Count);
        Assert.All(faults, f => Assert.Equal((FaultKind.Contradiction, "/site/elevation"), (f.Kind, f.Pointer)));
    }

    // 45° N: 11.9 MJ/m² a day reach the top of the air on 15 January, 41.9 on 21 June (FAO-56 eq. 21, computed with another program): 3.3 and 11.6 kWh/m².
    [Theory]
    [InlineData(45, "1.2", "5.5", ""), InlineData(45, "0", "5.5", "0"), InlineData(45, "5.5", "1.2", "0"), InlineData(45, "1.2", "0.1", "5"), InlineData(85, "0", "5.5", "")]
    [InlineData(85, "0.5", "5.5", "0"), InlineData(90, "0", "5.5", ""), InlineData(-45, "5.5", "1.2", ""), InlineData(-45, "1.2", "5.5", "5")]
    public void Normals_with_sun_that_cannot_be_are_faults_at_their_month(double latitudeDeg, string january, string june, string faultyMonths)
    {
        double[] sky = [.. Enumerable.Range(1, 12).Select(m => Science.Sun.HourAngleSun.DailyExtraterrestrialFao56MJm2(latitudeDeg, (m * 30) - 15) / 7.2)];
        string Month(int m) => FormattableString.Invariant(
            $$"""{ "mean": "5 C", "meanMax": "9 C", "meanMin": "1 C", "dewPoint": "0 C", "wind": "3 m/s", "global": "{{(m == 0 ? january : m == 5 ? june : sky[m].ToString("0.000", System.Globalization.CultureInfo.InvariantCulture))}} kWh/m2" }""");
        EqList<Fault> faults = Read(
            FormattableString.Invariant($"{{ \"latitude\": \"{latitudeDeg} deg\", \"longitude\": \"0 deg\", \"weather\": {{ \"normals\": [{string.Join(", ", Enumerable.Range(0, 12).Select(Month))}] }} }}"), null).Faults;
        string[] expected = faultyMonths.Length == 0 ? [] : [$"/site/weather/normals/{faultyMonths}/global"];
        Assert.Equal(expected, faults.Select(f => f.Pointer));
    }

    private static Fault Unknown(ReadOutcome<Job> outcome, string pointer) =>
        Assert.Single(outcome.Faults, f => f.Kind == FaultKind.UnknownKey && f.Pointer == pointer);

    private static ReadOutcome<Job> Read(string site, SiteHint? hint) =>
        JobReader.Read(JobDocument.Read($$"""{ "glazewright": 1, "site": {{site}}, "houses": [ { "id": "A", {{Size}} } ] }"""), hint);
}
