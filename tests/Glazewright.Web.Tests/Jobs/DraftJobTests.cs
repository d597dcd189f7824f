using Glazewright.Design.Contracts;
using Glazewright.Design.Document;
using Glazewright.Web.Jobs;

namespace Glazewright.Web.Tests.Jobs;

/// <summary>A job that is being begun on the start page.</summary>
public sealed class DraftJobTests
{
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
