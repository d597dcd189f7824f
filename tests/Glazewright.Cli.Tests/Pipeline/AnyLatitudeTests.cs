using System.Globalization;
using Glazewright.Design.Brief.Reading;
using Glazewright.Cli.Running;
using Glazewright.Cli.Tests.Commands;
using Glazewright.Design.Catalogues;
using Glazewright.Design.Contracts;
using Glazewright.Design.Form;
using Glazewright.Design.Pipeline;
using Glazewright.Design.Price;
using Glazewright.Papers.Answers;
using Glazewright.Papers.Sets;
using Glazewright.Science.Sun;

namespace Glazewright.Cli.Tests.Pipeline;

/// <summary>The whole chain where the sun does not rise for months, stands in the zenith, or shines from the north.</summary>
[Trait("Category", "Slow")]
public class AnyLatitudeTests
{
    [Theory]
    [InlineData(82.0, 12), InlineData(90.0, 12), InlineData(-90.0, 6)]
    public void Beyond_the_circles_months_are_dark_summers_bright_and_the_schedule_is_told(double latitudeDeg, int darkMonth)
    {
        PaperSource source = Make(latitudeDeg, -12);
        HouseResults house = source.Houses[0];
        Assert.Equal(darkMonth, Design.LightMaps.LightMap.DarkestMonth(house.Light.OutsideMolPerM2Day) + 1);
        Assert.Equal(0, house.Light.Months[darkMonth - 1].MeanMolPerM2Day);
        Assert.True(house.Light.Months[(darkMonth + 5) % 12].LeastMolPerM2Day > 5);
        Finding told = Assert.Single(source.Reports().SelectMany(r => r.Findings), f => f.Code == "year/no-sunrise");
        Assert.Equal(Severity.Near, told.Severity);
        Assert.All(house.Year.Hours.InsideC, t => Assert.True(float.IsFinite(t)));
        Assert.DoesNotContain(source.Reports().SelectMany(r => r.Figures), f => !double.IsFinite(f.Value));
    }

    [Fact]
    public void In_the_south_the_far_wall_looks_south_and_june_is_dark()
    {
        HouseResults house = Make(-35, 16).Houses[0];
        Assert.Equal(5, Design.LightMaps.LightMap.DarkestMonth(house.Light.OutsideMolPerM2Day));

        // The ridge runs east (bearing 90°): the left wall faces south, away from the noon sun.
        Assert.Contains(house.Light.Others, p => p.Face == FaceName.Left);
    }

    [Fact]
    public void At_the_equator_both_solstices_give_the_same_light()
    {
        // The sun passes the zenith twice a year; the default house is the same from both sides, its ridge east-west.
        HouseResults house = Make(0, 25).Houses[0];
        double ratio = house.Light.Months[5].MeanMolPerM2Day / house.Light.OutsideMolPerM2Day[5];
        Assert.Equal(ratio, house.Light.Months[11].MeanMolPerM2Day / house.Light.OutsideMolPerM2Day[11], 0.02);
    }

    private static PaperSource Make(double latitudeDeg, double meanC)
    {
        string room = Directory.CreateTempSubdirectory("glazewright-latitude-").FullName;
        string path = Path.Combine(room, "job.json");
        IEnumerable<string> months = Enumerable.Range(1, 12).Select(m => string.Create(
            CultureInfo.InvariantCulture,
            $$"""{ "mean": "{{meanC}} C", "meanMax": "{{meanC + 4}} C", "meanMin": "{{meanC - 4}} C", "dewPoint": "{{meanC - 5}} C", "wind": "4 m/s", "global": "{{Half(latitudeDeg, m):0.000}} kWh/m2" }"""));
        File.WriteAllText(path, string.Create(
            CultureInfo.InvariantCulture,
            $$"""
            { "glazewright": 1, "site": { "latitude": "{{latitudeDeg}} deg", "longitude": "0 deg", "elevation": "100 m", "weather": { "normals": [{{string.Join(", ", months)}}] } },
              "houses": [{ "width": "26 ft", "length": "48 ft" }] }
            """));
        try
        {
            IReadOnlyList<Fault> faults = JobLoading.Load(path, null, null, out LoadedJob? loaded);
            Assert.Empty(faults);
            Evaluation all = new(loaded!.Job, Ground.Of(loaded.Weather, CatalogueReader.Generic, PriceBook.Generic()), new StageRunner(), CancellationToken.None);
            return PaperSource.From(all, loaded.Defaults, "test");
        }
        finally
        {
            Directory.Delete(room, recursive: true);
        }
    }

    // Half of what reaches the top of the air in the middle of the month, kWh/m² a day.
    private static double Half(double latitudeDeg, int month) =>
        HourAngleSun.DailyExtraterrestrialFao56MJm2(latitudeDeg, (month * 30) - 15) / 3.6 / 2;
}
