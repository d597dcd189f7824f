using Glazewright.Design.Brief;
using Glazewright.Design.Brief.Reading;
using Glazewright.Design.Contracts;
using Glazewright.Design.Document;

namespace Glazewright.Design.Tests.Brief;

/// <summary>A longitude without its sign put sun and clock ten hours apart in silence: a place far from its weather station is a fault.</summary>
public class PlaceTests
{
    private static readonly SiteHint Station = new("Station", 44.47, -73.15, 101, -5);

    [Theory]
    [InlineData("44.5 deg", "-73.2 deg"), InlineData("44.5 N", "73.2 W")]
    public void A_place_near_its_station_is_taken_signed_or_with_compass_letters(string latitude, string longitude)
    {
        ReadOutcome<Job> outcome = Read(latitude, longitude);
        Assert.Empty(outcome.Faults);
        Assert.Equal(-73.2, outcome.Value!.Site.LongitudeDeg, 9);
    }

    [Theory]
    [InlineData("44.5 deg", "73.2 deg"), InlineData("44.5 N", "73.2 E"), InlineData("-44.5 deg", "-73.2 deg"), InlineData("30 deg", "-120 deg")]
    public void A_place_far_from_its_station_is_a_fault_that_names_the_station(string latitude, string longitude)
    {
        Fault fault = Assert.Single(Read(latitude, longitude).Faults, f => f.Wrong.Contains("km from", StringComparison.Ordinal));
        Assert.Equal(FaultKind.Contradiction, fault.Kind);
        Assert.Contains("-73.15 deg", fault.Right, StringComparison.Ordinal);
    }

    [Fact]
    public void Never_above_less_than_the_target_is_a_fault()
    {
        string text = """
            { "glazewright": 1, "site": { "weather": { "file": "x.epw" } },
              "houses": [ { "id": "A", "width": "24 ft", "length": "60 ft", "schedule": [ { "id": "s", "day": { "temperature": "68 F" }, "neverAbove": "60 F" } ] } ] }
            """;
        Assert.Contains(JobReader.Read(JobDocument.Read(text), Station).Faults, f => f.Pointer == "/houses/0/schedule/0/neverAbove");
    }

    private static ReadOutcome<Job> Read(string latitude, string longitude) => JobReader.Read(
        JobDocument.Read($$"""{ "glazewright": 1, "site": { "latitude": "{{latitude}}", "longitude": "{{longitude}}", "weather": { "file": "x.epw" } }, "houses": [ { "id": "A", "width": "24 ft", "length": "60 ft" } ] }"""),
        Station);
}
