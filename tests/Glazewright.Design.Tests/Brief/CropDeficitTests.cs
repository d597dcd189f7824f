using Glazewright.Design.Brief;
using Glazewright.Design.Brief.Reading;
using Glazewright.Design.Contracts;
using Glazewright.Design.Document;

namespace Glazewright.Design.Tests.Brief;

/// <summary>A vapour pressure deficit in the crop schedule.</summary>
public class CropDeficitTests
{
    [Fact]
    public void A_deficit_stands_in_place_of_the_humidity()
    {
        ReadOutcome<Job> outcome = JobReader.Read(Examples.Edited(
            new Edit("/houses/0/schedule/0/day", """{ "temperature": "72 F", "vpd": "0.8 kPa" }"""),
            new Edit("/held", """{ "vpd": "2 hPa" }""")));
        Assert.True(outcome.Faults.Count == 0, string.Join("\n", outcome.Faults));
        ClimateTarget day = outcome.Value!.Houses[0].Schedule[0].Day;
        Assert.Equal((0.0, 0.8), (day.HumidityPercent, day.VpdKPa));
        Assert.Equal(0.2, outcome.Value.Band.VpdKPa, 1e-12);
        Assert.Null(Examples.Job(Examples.Demo).Houses[0].Schedule[0].Day.VpdKPa);
    }

    [Theory]
    [InlineData("""{ "temperature": "72 F", "humidity": "60 %", "vpd": "0.8 kPa" }""", "both asked")]
    [InlineData("""{ "temperature": "60 F", "vpd": "2 kPa" }""", "1.77 kPa")] // FAO-56 Annex 2, Table 2.3: 1.762 at 15.5 °C, 1.819 at 16 °C
    [InlineData("""{ "temperature": "72 F", "vpd": "0.8" }""", "0.8 has no unit")]
    [InlineData("""{ "temperature": "72 F", "vpd": "-0.8 kPa" }""", "outside")]
    public void What_cannot_be_is_a_fault_at_its_place(string day, string words)
    {
        Fault fault = Assert.Single(Examples.Faults(new Edit("/houses/0/schedule/0/day", day)));
        Assert.Equal("/houses/0/schedule/0/day/vpd", fault.Pointer);
        Assert.Contains(words, fault.Wrong + " " + fault.Right, StringComparison.Ordinal);
    }
}
