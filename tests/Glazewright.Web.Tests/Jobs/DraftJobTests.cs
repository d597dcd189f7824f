using Glazewright.Design.Contracts;
using Glazewright.Design.Document;
using Glazewright.Store.Library;
using Glazewright.Web.Fields;
using Glazewright.Web.Jobs;

namespace Glazewright.Web.Tests.Jobs;

/// <summary>A job that is being begun on the start page.</summary>
public sealed class DraftJobTests
{
    // "Demo site" alone did not say which file, of which years, how far off.
    [Fact]
    public async Task A_year_is_offered_with_place_kind_years_and_distance()
    {
        await using Desk desk = new();
        await desk.InitializeAsync();
        DraftJob draft = new(desk.Weather);
        await draft.LookAsync();
        Offer before = Assert.Single(draft.YearsTold, o => o.Name == "demo-continental-42N.epw.gz");
        Assert.Matches("^Demo site · 42[.]0° N 87[.]9° W · EPW of TMY3-derived( · (months of )?[0-9]{4}( to [0-9]{4})?)?$", before.Words);
        await draft.EditAsync([Edit.Typed("/site/latitude", "42.98 deg"), Edit.Typed("/site/longitude", "87.92 W")], "place");
        // One degree of a meridian, 111.19 km on a sphere of 6,371 km.
        Assert.EndsWith(" · 69 mi from the site", Assert.Single(draft.YearsTold, o => o.Name == before.Name).Words, StringComparison.Ordinal);
        await draft.EditAsync([Edit.Typed("/units", "metric")], "units");
        Assert.EndsWith(" · 111 km from the site", Assert.Single(draft.YearsTold, o => o.Name == before.Name).Words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_design_day_file_of_the_years_name_belongs_to_the_job_being_begun()
    {
        await using Desk desk = new();
        await desk.InitializeAsync();
        DraftJob draft = new(desk.Weather);
        await draft.LookAsync();
        await draft.TakeStationAsync("demo-continental-42N.epw.gz");
        Assert.False(await draft.TakeDesignAsync(LibraryKind.DesignDays, "elsewhere.ddy"));
        Assert.True(await draft.TakeDesignAsync(LibraryKind.DesignDays, "Demo-continental-42N.ddy"));
        Assert.Equal("Demo-continental-42N.ddy", ((TextNode)draft.Document.Find("/site/weather/designDays")!).Text);
        // Another year takes its own.
        await draft.TakeStationAsync("other.epw");
        Assert.Null(draft.Document.Find("/site/weather/designDays"));
    }

    // 88.3 typed in the American Midwest lies in Asia: "a weather file of a station near it" helps nobody there.
    [Fact]
    public async Task A_western_longitude_without_its_sign_is_asked_for()
    {
        await using Desk desk = new();
        await desk.InitializeAsync();
        DraftJob draft = new(desk.Weather);
        await draft.LookAsync();
        await draft.EditAsync([Edit.Typed("/site/latitude", "41.9 deg"), Edit.Typed("/site/longitude", "88.3 deg")], "place");
        Fault fault = Assert.Single(draft.Faults, f => f.Kind == FaultKind.NotFound);
        Assert.Equal(("/site/longitude", "did you mean -88.3 (west)?"), (fault.Pointer, fault.Right));
        await draft.EditAsync([Edit.Typed("/site/longitude", "88.3 W")], "place");
        Assert.DoesNotContain(draft.Faults, f => f.Kind == FaultKind.NotFound);
        await draft.EditAsync([Edit.Typed("/site/longitude", "10 deg")], "place");
        Assert.Contains(draft.Faults, f => f.Pointer == "/site/weather/file");
    }
}
