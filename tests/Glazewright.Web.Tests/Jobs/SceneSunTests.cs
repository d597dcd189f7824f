using Glazewright.Design.Brief;
using Glazewright.Design.Brief.Reading;
using Glazewright.Design.Document;
using Glazewright.Web.Jobs;

namespace Glazewright.Web.Tests.Jobs;

/// <summary>The sun of the view in three dimensions.</summary>
public class SceneSunTests
{
    // NREL/TP-560-34302, appendix A.5: 17 October 2003, 12:30:30 at zone −7, 39.742476°, −105.1786°, 1830.14 m: zenith 50.11162°, azimuth 194.34024°.
    // Another year (2026) and the refraction of sea level move the sun there by less than 0.3° (a day's step of declination is 0.4° then; leap years shift a quarter of it).
    [Fact]
    public void It_stands_where_the_published_example_has_it()
    {
        Site site = SomeSite() with { LatitudeDeg = 39.742476, LongitudeDeg = -105.1786, ElevationM = 1830.14, ZoneHours = -7 };
        SceneSun sun = SceneSun.Of(site, dayOfYear: 290, clockH: 12 + 30.5 / 60);
        Assert.Equal(90 - 50.11162, sun.ElevationDeg, 0.3);
        Assert.Equal(194.34024, sun.AzimuthDeg, 0.3);
    }

    [Fact]
    public void Its_vector_is_east_up_and_south()
    {
        (double x, double y, double z) = new SceneSun(30, 90).Toward;
        Assert.Equal(Math.Sqrt(0.75), x, 1e-12);
        Assert.Equal(0.5, y, 1e-12);
        Assert.Equal(0, z, 1e-12);
        Assert.True(new SceneSun(10, 180).Toward.Z > 0.98);
        Assert.Equal("south-west", new SceneSun(10, 220).From);
        Assert.Equal("north", new SceneSun(10, 350).From);
    }

    private static Site SomeSite()
    {
        LoadedJob.Read(JobDocument.Read(Desk.Example("polder-salad-house.json")), null, [], out _, out LoadedJob? loaded);
        return loaded!.Job.Site;
    }
}
